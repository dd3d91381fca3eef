// SPDX-License-Identifier: MIT
// Finds how a sheet was folded, from the pages of its formes or from what leaves show; and misprints in formes.
#include <bifolium/core/message.hpp>
#include <bifolium/drawing/forme_svg.hpp>
#include <bifolium/evidence/folding_weights.hpp>
#include <bifolium/explain/explain_foldings.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/fold/find_foldings.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>

#include "support/arguments.hpp"
#include "support/draw_sheets.hpp"
#include "support/observed.hpp"

#include <algorithm>
#include <cstddef>
#include <iostream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

constexpr auto usage =
    "usage: find_fold [FILE]          the simplest folding that gives these pages, and what the pages cannot show\n"
    "       find_fold --all [FILE]    all foldings found, the simplest first, each with its price\n"
    "       find_fold --scheme [FILE] the text of the first folding, which 'show_formes -' and 'fold_a_sheet -' read\n"
    "       find_fold --misprints [FILE]   single corrections that would make the folding simpler\n"
    "The input is the output of show_formes, or a part of it, from FILE or standard input: a line outer, inner or "
    "forme (the\n"
    "only one of its sheet), then the rows of pages, the far one first. One forme is enough. Without such a line it is "
    "an outer\n"
    "one, unless it has a simpler attested folding as another. ↓ or v after a page: its head is near; if no page has "
    "it, the heads\n"
    "are unknown. A page written ? is illegible.\n"
    "The input can also be the evidence of leaves of a gathering; the foldings that agree with it are written in "
    "groups:\n"
    "    gathering of 8\n"
    "    1 head-of-gutter vertical; 2 absent; 1.8 conjugate; 2 bolt head 3; 5 deckle tail; 3 disjunct\n"
    "    4-6 vertical; 8 hole at tail fore-edge\n"
    "  --year 1671 --place Amsterdam   where and when the book was printed: of several foldings those come first that\n"
    "                       were more common there and then\n"
    "  --svg FILE           draws the formes of the first folding; several sheets become FILE-1.svg, FILE-2.svg\n"
    "  --printed            the pages are those of printed paper, the left-right mirror of the forme\n"
    "  --reads right-to-left|left-to-right   the direction of the book; by default right to left only if that is "
    "simpler\n"
    "  --long-side far-near|left-right       how the long side of the paper lay in the diagram\n"
    "  --dearer N           with --all: the greatest price above that of the first folding; 15 by default\n"
    "A price adds up what is done: 10 for a fold, 15 more for one beside the middle, 5 more for a part turned "
    "underneath, 15 for a\n"
    "cut, 10 for a single leaf. The cheapest folding is the simplest.\n";

/// Printed paper becomes the forme that printed it.
void mirror(std::vector<SeenForme>& formes) {
  for (auto& forme : formes) {
    auto const columns = static_cast<std::size_t>(forme.columns);
    for (std::size_t row = 0; row < forme.pages.size(); row += columns)
      std::reverse(forme.pages.begin() + static_cast<std::ptrdiff_t>(row),
                   forme.pages.begin() + static_cast<std::ptrdiff_t>(row + columns));
  }
}

/// The scheme of a folding in the words of the table, unless its pages begin elsewhere.
std::string text_of(FoundFolding const& found) {
  if (found.attested && found.scheme == found.attested->scheme()) return std::string{found.attested->text()};
  return write_scheme(found.scheme);
}

/// Whether the first folding is attested, and simpler than the other's or as simple as one that is not attested.
bool is_likelier(Expected<std::vector<FoundFolding>> const& one, Expected<std::vector<FoundFolding>> const& other) {
  if (!one || !other) return one && !other;
  auto const &first = one->front(), &second = other->front();
  if (!first.attested) return false;
  return first.price < second.price || (first.price == second.price && !second.attested);
}

/// Finds the foldings; takes one forme without a heading for the outer one, unless as an inner or an only one it has an
/// attested folding that is simpler.
Expected<std::vector<FoundFolding>> foldings(std::vector<SeenForme>& formes, bool headed, FindRules const& rules) {
  auto found = find_foldings(formes, rules);
  if (headed || formes.size() != 1) return found;
  auto best = Side::outer;
  for (auto const side : {Side::only, Side::inner}) {
    formes[0].side = side;
    auto other = find_foldings(formes, rules);
    if (is_likelier(other, found)) found = std::move(other), best = side;
  }
  formes[0].side = best;
  return found;
}

int answer(support::Arguments const& given, std::vector<SeenForme> formes, bool headed, FindRules const& rules) {
  auto const found = foldings(formes, headed, rules);
  auto const side = formes[0].side;
  if (side != Side::outer && !headed)
    support::tell(std::string{"read as "} + (side == Side::inner ? "an inner forme" : "the only forme of its sheet") +
                  ": write outer, inner or forme above the rows to say which it is");
  if (given.has("--misprints")) {
    auto const misprints = find_misprints(formes, rules);
    if (!misprints) return support::tell(message(misprints.error())), support::unreadable;
    std::cout << explain_misprints(*misprints);
    return support::all_done;
  }
  if (!found) {
    auto const problem = found.error().problem;
    bool const contradict = problem == Problem::pages_not_backed || problem == Problem::heads_not_backed ||
                            problem == Problem::illegible_head_to_tail;
    support::tell(message(found.error()) + (contradict ? "; find_fold --misprints looks for the mistake" : ""));
    return support::unreadable;
  }
  if (given.has("--scheme"))
    std::cout << text_of(found->front());
  else if (given.has("--all"))
    for (auto const& one : *found) std::cout << one.price << '\t' << folding_words(one) << '\n';
  else
    std::cout << explain_foldings(*found);
  bool attested = false;
  for (auto const& one : *found) attested = attested || one.attested;
  if (!given.has("--scheme") && !attested)
    support::tell("no attested scheme gives these pages; find_fold --misprints looks for a mistake in them");
  if (auto const file = given.value("--svg"))
    support::draw_sheets(found->front().scheme, *file,
                         [&](int sheet) { return *forme_svg(found->front().scheme, sheet); });
  return support::all_done;
}

/// The first word of the text that is not in a remark.
std::string_view first_word(std::string_view text) {
  while (!text.empty() && (static_cast<unsigned char>(text[0]) <= ' ' || text[0] == '#'))
    text.remove_prefix(text[0] == '#' ? std::min(text.find('\n'), text.size()) : 1);
  return text.substr(0, text.find_first_of(" \t\r\n"));
}
/// Whether the text of formes begins with a line that says which forme it is, or which sheet.
bool is_heading(std::string_view word) { return !word.empty() && is_latin_letter(word[0]); }
bool is_of_leaves(std::string_view word) { return word == "gathering" || word == "Gathering" || word == "GATHERING"; }

/// How common each way of folding was, of books gathered so in that place and year.
FoldingWeights common(std::vector<SeenGathering> const& gatherings, LeafEvidence book) {
  auto const first = gatherings.front().leaves, last = gatherings.back().leaves;
  book.gathering_leaves = first;
  if (last != first) book.alternating_with = last;
  auto const observed = observe(book);
  return observed ? folding_weights(*observed) : weights_by_price();
}

int answer_leaves(support::Arguments const& given, std::string const& text, LeafEvidence const& book) {
  auto const gatherings = read_seen_leaves(text);
  if (!gatherings) return support::tell(message(gatherings.error())), support::unreadable;
  auto const left = foldings_showing(*gatherings, {}, common(*gatherings, book));
  if (!left) return support::tell(message(left.error())), support::unreadable;
  constexpr std::size_t everything = 100000, usual = 8;
  std::cout << explain_foldings_left(*left, gatherings->size(), given.has("--all") ? everything : usual);
  return support::all_done;
}

int find(support::Arguments given) {
  FindRules rules;
  if (given.has("--reads"))
    rules.reads = given.choice("--reads", {"left-to-right", "right-to-left"}) == "right-to-left" ? Reads::right_to_left
                                                                                                 : Reads::left_to_right;
  if (given.has("--long-side"))
    rules.long_side =
        given.choice("--long-side", {"far-near", "left-right"}) == "far-near" ? Axis::far_near : Axis::left_right;
  if (auto const dearer = given.number("--dearer", 0, 100)) rules.dearer = static_cast<int>(*dearer);
  if (given.has("--all")) rules.most = 100;
  if (auto const code = given.settled(usage, 0, 1)) return *code;
  LeafEvidence book;
  if (auto const year = given.value("--year")) {
    auto const years = support::read_years(*year);
    if (!years) return support::tell("--year, " + message(years.error())), support::wrong_usage;
    book.year = *years;
  }
  if (auto const place = given.value("--place")) {
    auto const read = read_place(*place);
    if (!read) return support::tell("--place, " + message(read.error())), support::wrong_usage;
    for (auto const& doubt : read->warnings()) support::tell("--place, " + message(doubt));
    book.place = read->region();
  }
  support::Input input{given.words().empty() ? "-" : given.words()[0]};
  auto const text = support::whole_text(input);
  if (is_of_leaves(first_word(text))) return answer_leaves(given, text, book);
  if (first_word(text).empty()) throw support::Failure{"the input is empty: write the rows of a forme"};
  auto formes = read_formes(text);
  if (!formes) {
    bool const neither = formes.error().problem == Problem::not_a_forme && formes.error().place->line == 1;
    support::tell(message(formes.error()) +
                  (neither ? "; what leaves show begins with a line such as gathering of 8" : ""));
    return support::unreadable;
  }
  if (given.has("--printed")) mirror(*formes);
  return answer(given, *formes, is_heading(first_word(text)), rules);
}

} // namespace

int main(int argument_count, char** arguments) {
  return support::run([&] {
    return find({argument_count,
                 arguments,
                 {"--all", "--scheme", "--misprints", "--printed"},
                 {"--svg", "--reads", "--long-side", "--dearer", "--year", "--place"}});
  });
}
