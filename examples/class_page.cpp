// SPDX-License-Identifier: MIT
// Makes a page for a class: a sheet that folds in the browser, joined to its formes, paper, gatherings and openings.
#include <bifolium/collation.hpp>
#include <bifolium/drawing/class_page.hpp>
#include <bifolium/fold.hpp>

#include "support/arguments.hpp"
#include "support/program.hpp"
#include "support/scheme_given.hpp"
#include "support/wrong.hpp"

#include <iostream>
#include <string>

using namespace bifolium;

namespace {

constexpr auto usage =
    "usage: class_page SCHEME --out FILE [--paper a4|letter] [--duplex long-edge|short-edge] [--right-to-left]\n"
    "       class_page FORMULA --out FILE [--paper ...] [--duplex ...]\n"
    "Writes one page of HTML without other files: open it in a browser, or print it for the sheets to fold. "
    "SCHEME\n"
    "is an attested scheme by its id or by a usual name, such as octavo (show_formes --list lists them), or - for "
    "the\n"
    "text of one on standard input. FORMULA is a collation formula with its format, such as '8°: A-C8 D4'.\n";

int from_formula(std::string const& text, std::string const& file, ClassPageOptions options) {
  auto const formula = read_formula(text, dialects::bmc);
  if (!formula) {
    support::tell("formula, " + support::with_identifier(formula.error()));
    return support::unreadable;
  }
  auto const page = class_page(*formula, text, options);
  if (!page) {
    support::tell(support::with_identifier(page.error()));
    return support::unreadable;
  }
  support::write_file(file, *page);
  return support::all_done;
}

int make_page(support::Arguments given) {
  auto const file = given.needed("--out"), paper = given.choice("--paper", {"a4", "letter"}),
             duplex = given.choice("--duplex", {"long-edge", "short-edge"});
  if (auto const code = given.settled(usage, 1, 1)) return *code;
  ClassPageOptions const options{paper == "a4" ? PageSize::a4 : PageSize::letter,
                                 duplex == "long-edge" ? Duplex::long_edge : Duplex::short_edge};
  auto const& asked = given.words()[0];
  bool const scheme_named = asked == "-" || find_scheme(asked);
  if (!scheme_named && (asked.find(':') != std::string::npos || read_formula(asked, dialects::bmc)))
    return from_formula(asked, file, options);
  auto const text = support::scheme_given(asked);
  if (!text) return support::wrong_usage;
  auto const read = read_scheme(*text);
  auto const page = read ? class_page(given.has("--right-to-left") ? mirrored(*read) : *read, options)
                         : Expected<std::string>{read.error()};
  if (!page) {
    support::tell(support::with_identifier(page.error()));
    return support::unreadable;
  }
  support::write_file(file, *page);
  return support::all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return support::run([&] {
    return make_page({argument_count, arguments, {"--right-to-left"}, {"--out", "--paper", "--duplex"}});
  });
}
