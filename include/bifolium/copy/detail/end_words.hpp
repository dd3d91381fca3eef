// SPDX-License-Identifier: MIT
/// Words for the leaves at the ends of a book, in the languages of catalogues: le dernier feuillet, les 2 derniers ff., first
/// and last leaves, first two and last quires, final blank (common practice, no source). Copies lose leaves at the ends most
/// often, and catalogues seldom look up what these are called.
#pragma once

#include <bifolium/copy/detail/bound_words.hpp>
#include <bifolium/copy/detail/state_words.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Articles without a blank after them.
inline constexpr char const* elided_articles[]{"l'", "l’", "dell'", "dell’"};

/// Leaves at the beginning or the end of a book, or at both, as words name them.
struct EndsOfBook {
  int first{}, last{};
  bool gatherings{};  ///< true if gatherings are counted, and not leaves
  bool before_name{}; ///< true for "the final blank K8": a name follows, and says which leaf is meant
};
/// One of the ends. In "first and last leaves" the unit of the first is that of the last.
struct EndOfBook {
  enum class Unit : std::uint8_t { none, leaves, gatherings };
  int number{1};
  bool first{};
  Unit unit{};
};
/// Takes the first or the last leaves or gatherings, in any language: le dernier feuillet, la última hoja blanca, the first
/// quire, fol. ultimum.
[[nodiscard]] inline std::optional<EndOfBook> take_end_of_book(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto const take = [&](auto is) {
    auto next = c;
    auto const word = next.take_until(is_between_items);
    if (word.empty() || !is(word)) return false;
    next.take_blanks();
    c = next;
    return true;
  };
  auto const is_blank = [](std::string_view word) { return is_blank_word(without_point(word)); };
  auto const is_leaves = [](std::string_view word) { return is_leaf_noun(word); };
  auto const is_counted = [](std::string_view word) {
    return is_noun(without_point(word), leaf_noun_rows, NounUse::in_list);
  }; // 2 cc
  EndOfBook end;
  auto const is_number = [&](std::string_view word) {
    auto const found = number_beside_leaves(word);
    if (found) end.number = *found;
    return found.has_value();
  };
  static_cast<void>(take(is_article) || take([](std::string_view word) { return word == "i"; }));
  for (std::string_view const elided : elided_articles)
    if (c.take(elided)) break;
  bool const before = take(is_leaves); // fol. ultimum
  static_cast<void>(!before && take(is_number));
  end.first = take([](std::string_view word) { return is_row(word, first_words); });
  if (!end.first && !take([](std::string_view word) { return is_row(word, last_words); })) return std::nullopt;
  static_cast<void>(end.number == 1 && take(is_number)); // ff. ultima duo
  bool const blank = take(is_blank), leaf = before || take(is_counted);
  if (blank || leaf)
    end.unit = EndOfBook::Unit::leaves;
  else if (take([](std::string_view word) {
             return is_noun(without_point(word), gathering_noun_rows, NounUse::in_list);
           }))
    end.unit = EndOfBook::Unit::gatherings;
  if (end.unit != EndOfBook::Unit::none) { // hoja blanca, hoja en blanco
    auto const here = c;
    if (!(take([](std::string_view word) { return word == "en"; }) && take(is_blank))) c = here, take(is_blank);
  }
  cursor = c;
  return end;
}
/// Takes a number of leaves or gatherings at an end of the book: 2 leaves at end, 3 Bl. am Anfang, une carte in fine.
[[nodiscard]] inline std::optional<EndOfBook> take_number_at_end(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto word = c.take_until(is_between_items);
  if (is_article(word) && c.take_blanks()) word = c.take_until(is_between_items);
  auto const number = number_beside_leaves(word);
  if (!number || !c.take_blanks()) return std::nullopt;
  EndOfBook end{*number};
  auto noun = c.take_until(is_between_items);
  if (!is_leaf_noun(noun) && is_blank_word(without_point(noun)) && c.take_blanks())
    noun = c.take_until(is_between_items);
  if (is_noun(without_point(noun), gathering_noun_rows, NounUse::in_list))
    end.unit = EndOfBook::Unit::gatherings;
  else if (is_noun(without_point(noun), leaf_noun_rows, NounUse::in_list) || is_blank_word(without_point(noun)))
    end.unit = EndOfBook::Unit::leaves;
  else
    return std::nullopt;
  if (!c.take_blanks()) return std::nullopt;
  auto const first = take_place_of_book(c);
  if (!first) return std::nullopt;
  end.first = *first;
  cursor = c;
  return end;
}
/// Returns true before what does not belong to the words for an end of the book: another item, a remark, or the state of
/// the leaves. Anything else may say which leaf is meant.
[[nodiscard]] inline bool ends_item(TextCursor look) {
  if (look.at_end() || look.peek() == '(' || is_between_items(look.character().value)) return true;
  for (int words = 0; words < 4; ++words) { // which is supplied, in facsimile
    auto const word = look.take_until(is_between_items);
    if (words == 0 && is_joining_word(word)) return true;
    if (state_of(word)) return true;
    if (!is_word_before_state(word) || !look.take_blanks()) return false;
  }
  return false;
}
/// Takes "the last two leaves", "first and last leaves", "final blank" or "the last quire". If there is none, takes nothing
/// and returns no value.
[[nodiscard]] inline std::optional<EndsOfBook> take_ends_of_book(TextCursor& cursor) {
  auto c = cursor;
  auto end = take_number_at_end(c);
  if (!end) end = take_end_of_book(c);
  if (!end) return std::nullopt;
  EndsOfBook ends;
  (end->first ? ends.first : ends.last) = end->number;
  auto other = c;
  if (end->first && is_joining_word(other.take_until(is_between_items)) && other.take_blanks()) {
    auto const last = take_end_of_book(other);
    bool const one_unit = last && (end->unit == EndOfBook::Unit::none || end->unit == last->unit);
    if (one_unit && !last->first && last->unit != EndOfBook::Unit::none)
      ends.last = last->number, end = last, c = other;
  }
  if (end->unit == EndOfBook::Unit::none) return std::nullopt;
  ends.gatherings = end->unit == EndOfBook::Unit::gatherings;
  ends.before_name = !ends_item(c);
  cursor = c;
  return ends;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
