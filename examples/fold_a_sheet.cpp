// SPDX-License-Identifier: MIT
// Makes a sheet to print on both sides, cut and fold, and says in words how.
#include <bifolium/core/message.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/fold.hpp>

#include "support/arguments.hpp"
#include "support/scheme_given.hpp"
#include "support/wrong.hpp"

#include <iostream>
#include <string>

using namespace bifolium;

namespace {

constexpr auto usage =
    "usage: fold_a_sheet SCHEME --out DIR [--paper a4|letter] [--duplex long-edge|short-edge] [--right-to-left]\n"
    "Writes SCHEME.html into the directory DIR, which must exist: front and back of each sheet, then the steps. Print\n"
    "this file from a browser at its true size, on both sides, with the page turned about the edge in --duplex\n"
    "(long-edge by default). The sides are also written separately, as SCHEME-N-front.svg and SCHEME-N-back.svg for "
    "each\n"
    "sheet N, and the steps are printed in words. SCHEME is an attested scheme by its id or by a usual name, such\n"
    "as 8_octavo, octavo or '12°' (show_formes --list lists them), or - for the text of one on standard input.\n"
    "       fold_a_sheet --cancel --out DIR [--paper ...] [--duplex ...]\n"
    "Writes cancel-front.svg and cancel-back.svg: a sheet with a mistake, and the leaf to paste to its stub.\n";

/// Writes PATH-front.svg and PATH-back.svg.
void write_both(std::string const& path, SheetToFold const& sides) {
  support::write_file(path + "-front.svg", sides.front);
  support::write_file(path + "-back.svg", sides.back);
}

int make_sheet(support::Arguments given) {
  bool const cancel = given.has("--cancel");
  auto const directory = given.needed("--out"), paper = given.choice("--paper", {"a4", "letter"}),
             duplex = given.choice("--duplex", {"long-edge", "short-edge"});
  if (auto const code = given.settled(usage, cancel ? 0 : 1, cancel ? 0 : 1)) return *code;
  auto const size = paper == "a4" ? PageSize::a4 : PageSize::letter;
  auto const turned = duplex == "long-edge" ? Duplex::long_edge : Duplex::short_edge;
  if (cancel) {
    write_both(directory + "/cancel", cancel_to_paste(size, turned));
    return support::all_done;
  }
  auto const text = support::scheme_given(given.words()[0]);
  if (!text) return support::wrong_usage;
  auto const read = read_scheme(*text);
  if (!read) {
    support::tell(support::with_identifier(read.error()));
    return support::unreadable;
  }
  auto const scheme = given.has("--right-to-left") ? mirrored(*read) : *read;
  for (int sheet = 0; sheet < scheme.sheets(); ++sheet) {
    auto const sides = sheet_to_fold(scheme, sheet, size, turned);
    if (!sides) {
      support::tell(support::with_identifier(sides.error()));
      return support::unreadable;
    }
    write_both(directory + "/" + std::string{scheme.id()} + "-" + std::to_string(sheet + 1), *sides);
  }
  support::write_file(directory + "/" + std::string{scheme.id()} + ".html", *printable_html(scheme, size, turned));
  std::cout
      << "Cut each sheet out along its frame. Lay it before you with the front up, its upper edge away from you\n"
         "(far); the line of print at that edge says which it is. Do this in order:\n\n"
      << *explain_steps(scheme) << "\nEvery page must then be upright, with the numbers in order from 1"
      << (scheme.reads() == Reads::right_to_left ? ", with the spine on the right.\n"
                                                 : ", with the spine on the left.\n")
      << "Cut with a steel rule on a board, your fingers away from the blade; children use scissors. The folds at "
         "head and\n"
         "fore-edge (the bolts) are slit with a paper knife, away from the body.\n"
         "Do this with the printed sheet only: never cut, fold or press an original, and in a reading room ask "
         "first.\n";
  return support::all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return support::run([&] {
    return make_sheet({argument_count, arguments, {"--right-to-left", "--cancel"}, {"--out", "--paper", "--duplex"}});
  });
}
