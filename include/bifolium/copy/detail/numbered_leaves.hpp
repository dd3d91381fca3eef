// SPDX-License-Identifier: MIT
/// Leaves that a number alone names. After a word for leaves it counts in the book, f. 3 or leaves v-vii, and after a leaf
/// in the gathering of that leaf, B3,6. A gathering can have a number for its name, too, and 2r can be the recto of leaf 2,
/// so what the book has as a gathering is that unless a word before it says something else; what could be either is doubted.
#pragma once

#include <bifolium/copy/detail/leaf_runs.hpp>
#include <bifolium/copy/detail/pair_words.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class NumberedLeaves {
  ListSoFar& list_;
  LeafRuns& runs_;
  static constexpr auto most_figure = LeafRuns::most_figure;

  /// Returns true if a number alone, or two, can be leaves after the last item: 3 in B2,3.
  [[nodiscard]] bool are_next(std::int64_t from, std::int64_t to) const {
    if (list_.figures == FiguresAfter::of_book) return from >= 1 && from <= to && to <= list_.book.leaves();
    int most = 0;
    auto const& beside = *list_.beside;
    auto const first = leaf_of_figure(list_.book, beside, from, most);
    auto const last = leaf_of_figure(list_.book, beside, to, most);
    return first && last && beside < *first && *first <= *last;
  }
  /// Reads leaves that are named by a number alone, or two, after another leaf.
  std::optional<Error> next(std::string_view word, std::int64_t from, std::int64_t to) {
    if (list_.figures == FiguresAfter::of_book) return by_number(word, from, to);
    auto const first = runs_.figure_end(*list_.beside, from, word);
    if (!first) return first.error();
    auto const last = runs_.figure_end(*list_.beside, to, word);
    if (!last) return last.error();
    if (!(*list_.beside < *first->leaf)) return list_.error(Problem::run_goes_backwards, word);
    auto const wrong = runs_.between(word, *first, *last, from != to);
    if (!wrong) list_.counts.add(FlatCounts::Form::leaves, list_.leaves.item_from(), word);
    return wrong;
  }
  /// Reads numbers with sides after a leaf of the same gathering: the 4v of B3r, 4v. Returns no value if it has no such leaf.
  std::optional<std::optional<Error>> next_sides(std::string_view word, std::string_view head,
                                                 std::optional<std::string_view> tail) {
    auto const first = number_and_side(head);
    bool const may = list_.figures == FiguresAfter::of_leaf && first && first->side != LeafSide::not_said;
    if (!may || names_gathering(list_.book, head)) return std::nullopt;
    int most = 0;
    auto const leaf = leaf_of_figure(list_.book, *list_.beside, first->number, most);
    if (!leaf || *leaf < *list_.beside) return std::nullopt;
    runs_.begin_item(false, false);
    auto const from = runs_.figure_end(*list_.beside, first->number, tail ? head : word, first->side);
    auto const to = tail ? runs_.second_end(*from, *tail, word) : from;
    if (!to) return std::optional{to.error()};
    auto const wrong = runs_.between(word, *from, *to, tail.has_value());
    if (!wrong) list_.counts.add(FlatCounts::Form::leaves, list_.leaves.item_from(), word);
    return wrong;
  }

public:
  NumberedLeaves(ListSoFar& list, LeafRuns& runs) : list_{list}, runs_{runs} {}

  /// Reads leaves by their numbers in the book.
  std::optional<Error> by_number(std::string_view word, std::int64_t from, std::int64_t to) {
    if (from < 1 || to > list_.book.leaves()) return list_.error(Problem::reference_not_in_book, word);
    if (to < from) return list_.error(Problem::run_goes_backwards, word);
    LeafSpan const leaves[]{span_of_numbers(list_.book, from, to)};
    list_.leaves.place(leaves);
    list_.counts.add(FlatCounts::Form::leaves, list_.leaves.item_from(), word);
    list_.last = leaves[0].last;
    list_.figures = FiguresAfter::of_book;
    return {};
  }
  /// Takes leaves that are counted in a gathering: leaves 3-6 of B, Bl. 3 und 6 der Lage B. Calls `placed` after each.
  template <class Placed> bool take_of_gathering(TextCursor& cursor, Placed placed, std::optional<Error>& wrong) {
    auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one); };
    auto const figure = [&](TextCursor& c) -> std::optional<std::int64_t> {
      auto const word = c.take_until(ends);
      if (is_roman_numeral(word)) return roman_numeral(word)->value;
      return whole_number(word, most_figure);
    };
    struct Numbers {
      std::string_view word{};
      std::int64_t from{}, to{};
      bool joined{};
    };
    auto c = cursor;
    auto noun = c.take_until(is_between_items);
    if (is_article(noun) && c.take_blanks()) noun = c.take_until(is_between_items);
    if (!is_leaf_noun(noun) || !c.take_blanks()) return false;
    std::vector<Numbers> all;
    auto end = c;
    for (bool joined = false; all.empty() || joined || c.at() > end.at();) {
      auto const from = c.at();
      auto const first = figure(c);
      if (!first) break;
      auto last = first;
      auto dash = c;
      dash.take_blanks();
      if (dash.take_dash()) dash.take_blanks(), last = figure(dash), c = dash;
      if (!last) return false;
      all.push_back({list_.text.substr(from, c.at() - from), *first, *last, joined});
      end = c;
      c.take_blanks();
      bool const parted = c.take(',');
      c.take_blanks();
      auto next = c;
      joined = is_joining_word(next.take_until(is_between_items)) && next.take_blanks();
      if (joined) c = next;
      if (!joined && !parted) break;
    }
    c = end;
    auto const name = all.empty() ? std::string_view{} : take_gathering_after(c, list_.book);
    if (name.empty()) return false;
    bool const of_number = whole_number(name, most_figure) && list_.text.substr(end.at(), c.at() - end.at()).size() < 6;
    if (of_number) return false; // leaf 3 of 8
    runs_.begin_item(false, false);
    auto const gathering = runs_.end_of_run(name, list_.last);
    if (!gathering || gathering->leaf || gathering->numbers.count() < 1) return false;
    auto const begin = *list_.book.leaf_of_number(gathering->numbers.from);
    for (auto const& one : all) {
      list_.leaves.begin_item();
      auto const first = runs_.figure_end(begin, one.from, one.word);
      auto const last = runs_.figure_end(begin, one.to, one.word);
      wrong = !first  ? first.error()
              : !last ? last.error()
                      : runs_.between(one.word, *first, *last, one.from != one.to);
      if (wrong) break;
      list_.counts.add(FlatCounts::Form::leaves, list_.leaves.item_from(), one.word);
      placed(one.word, one.joined);
    }
    list_.figures = FiguresAfter::none;
    cursor = c;
    return true;
  }
  /// Reads one leaf, or those from one to another: by number if they can be numbers, else by name. `tail` is the last of
  /// them. `word_for_leaves` is the first letter of the word before them, of f. 3 or leaf 3, or a zero byte.
  std::optional<Error> read(std::string_view word, std::string_view head, std::optional<std::string_view> tail,
                            char word_for_leaves, bool leaf_said) {
    bool const numbered = head.starts_with("f.");
    bool const after_leaf = list_.figures == FiguresAfter::of_leaf && !numbered;
    auto const number = [&](std::string_view one) -> std::optional<std::int64_t> {
      bool const next =
          after_leaf && is_roman_leaf(one) && !names_gathering(list_.book, one) && !find_reference(list_.book, one);
      bool const roman = next || (word_for_leaves != '\0' && is_roman_folio(list_.book, one)); // A1, ij
      return roman ? std::optional{std::int64_t{roman_numeral(one)->value}} : whole_number(one, most_figure);
    };
    auto const from = number(numbered ? head.substr(2) : head);
    auto const to = tail ? number(*tail) : from;
    bool const roman = from && is_latin_letter(head[0]) && !numbered && word_for_leaves != '\0';
    if (roman && find_reference(list_.book, head)) list_.doubt(word, Problem::leaf_or_word); // f. xij, or x2
    if (roman) return !to ? list_.error(Problem::not_a_reference, word) : by_number(word, *from, *to);
    if (numbered) return !from || !to ? list_.error(Problem::not_a_reference, word) : by_number(word, *from, *to);
    bool const side = tail && side_word(*tail) != LeafSide::not_said; // f. 3r-v
    bool const said =
        word_for_leaves != '\0' && number_and_side(head) && (side || number_and_side(tail.value_or(head)));
    if (!from && !said)
      if (auto const read = next_sides(word, head, tail)) return *read;
    runs_.begin_item(leaf_said, said);
    bool const named =
        (from || said) && names_gathering(list_.book, head) && names_gathering(list_.book, tail.value_or(head));
    if (said && named && word_for_leaves == 'l') list_.doubt(word, Problem::name_in_two_ways); // leaf 2r
    if (!from || list_.figures == FiguresAfter::none) return runs_.run(word, head, tail);
    // the 6 of B3,6, or a gathering 6
    bool const either = named && !said;
    if (either && !(to && are_next(*from, *to))) return runs_.run(word, head, tail);
    if (!to) return list_.error(Problem::not_a_reference, word);
    if (either) list_.doubt(word, Problem::name_in_two_ways);
    return next(word, *from, *to);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
