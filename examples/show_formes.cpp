// SPDX-License-Identifier: MIT
// Shows where the pages of a scheme are in its formes, as the type lies on the stone.
#include <bifolium/core/letters_apart.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/drawing/forme_svg.hpp>
#include <bifolium/drawing/sheet_svg.hpp>
#include <bifolium/explain/forme_text.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/fold/scheme_names.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include "support/arguments.hpp"
#include "support/draw_sheets.hpp"
#include "support/scheme_given.hpp"
#include "support/wrong.hpp"

#include <iostream>
#include <string>

using namespace bifolium;

namespace {

constexpr auto usage =
    "usage: show_formes SCHEME        the formes of a scheme, by its id or by a usual name: 12_common, octavo,\n"
    "                                 8vo, '12°', 'folio in sixes', 'half-sheet of octavo', '18° in two signatures'\n"
    "       show_formes -             the same for the text of a scheme on standard input\n"
    "       show_formes ... --text    the text of the scheme instead: change it, and give it to 'show_formes -'\n"
    "       show_formes ... --svg FILE   also draws them; several sheets become FILE-1.svg, FILE-2.svg\n"
    "       show_formes ... --paper FILE [--sheet NAME]   draws the sheet as paper, held against the light: chain "
    "lines,\n"
    "                                 marks, deckle, and the part of them in each leaf; chancery by default\n"
    "       show_formes ... --right-to-left   the same for a book read from right to left\n"
    "       show_formes --list        the ids of all schemes, one a line\n"
    "       show_formes --list --long the same with a description, the attestation and the source\n"
    "Formes are shown as the type lies on the stone, far row first; ↓ follows a page whose head points\n"
    "to the compositor. Printed paper shows the mirror image.\n";

int list(bool with_sources) {
  for (auto const scheme : Attested::all()) {
    std::cout << scheme.id();
    if (with_sources)
      std::cout << '\t' << scheme.what() << '\t' << to_words(scheme.attestation()) << '\t' << scheme.source();
    std::cout << '\n';
  }
  return support::all_done;
}

/// The sentence for a name that no sheet has, with one that is spelt nearly so.
std::string no_sheet_message(std::string const& name) {
  auto text = "no sheet of paper is called '" + name + "'";
  int least = 1 + static_cast<int>(name.size()) / 4; // one letter in four may be wrong
  std::string_view likely;
  for (auto const& sheet : find_sheets({}))
    if (auto const apart = letters_apart(name, sheet.name); apart < least) least = apart, likely = sheet.name;
  if (!likely.empty()) return text.append("; is it '").append(likely).append("'?");
  return text + "; some that are known: chancery, median, pot, foolscap, crown, demy, medium, royal, imperial";
}

/// Says which scheme is shown for the name of a format that was folded in several ways. Below 16° one way was the usual one.
void tell_others(std::string const& name) {
  auto const shown = find_scheme(name);
  auto const format = read_format(name);
  auto const leaves = format ? format->leaves_to_sheet() : std::nullopt;
  if (!shown || !leaves || *leaves < 16) return;
  std::string others;
  for (auto const id : ids_of_schemes(*leaves))
    if (id != shown->id()) others.append(others.empty() ? "; others: " : ", ").append(id);
  if (!others.empty())
    support::tell(name + " is shown as " + std::string{shown->id()} + ", " + std::string{shown->what()} + others);
}

int show(support::Arguments const& given) {
  bool const listing = given.has("--list");
  if (auto const code = given.settled(usage, listing ? 0 : 1, listing ? 0 : 1)) return *code;
  if (listing) return list(given.has("--long"));

  auto const text = support::scheme_given(given.words()[0]);
  if (!text) return support::wrong_usage;
  if (given.value("--sheet") && !given.value("--paper")) {
    support::tell("--sheet names the paper that --paper draws: give --paper FILE too");
    return support::wrong_usage;
  }
  auto const sheet_name = given.value("--sheet").value_or("chancery");
  auto const sheets = find_sheets({.name = sheet_name});
  if (sheets.empty()) {
    support::tell(no_sheet_message(sheet_name));
    return support::wrong_usage;
  }
  tell_others(given.words()[0]);
  auto scheme = read_scheme(*text);
  if (scheme && given.has("--right-to-left")) scheme = mirrored(*scheme);
  auto const folded = scheme ? fold(*scheme) : Expected<Fold<>>{scheme.error()};
  if (!folded) {
    support::tell(support::with_identifier(folded.error()));
    return support::unreadable;
  }
  if (given.has("--text"))
    std::cout << (given.has("--right-to-left") ? write_scheme(*scheme) : *text);
  else
    std::cout << forme_text(impose(*folded));
  auto const formes = given.value("--svg"), paper = given.value("--paper");
  if (formes) support::draw_sheets(*scheme, *formes, [&](int sheet) { return *forme_svg(*scheme, sheet); });
  if (paper)
    support::draw_sheets(*scheme, *paper,
                         [&](int sheet) { return *sheet_svg(*scheme, *sheets.begin(), countermark_mould, sheet); });
  return support::all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return support::run([&] {
    return show({argument_count,
                 arguments,
                 {"--list", "--long", "--right-to-left", "--text"},
                 {"--svg", "--paper", "--sheet"}});
  });
}
