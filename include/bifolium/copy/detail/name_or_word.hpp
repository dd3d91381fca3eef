// SPDX-License-Identifier: MIT
/// What a word of a list is that can be a name or something else: & and e join leaves and are gatherings, six is a number
/// and leaf s9, in A 1 the figure is the leaf and in A 1 leaf it counts leaves. The words beside it decide; what stays
/// unclear is taken for one of them and doubted.
#pragma once

#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/detail/state_words.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>
#include <bifolium/copy/detail/words_like_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true if a number alone is at the cursor that counts something: 2 leaves, 6 plates.
[[nodiscard]] inline bool counts_something(TextCursor cursor) {
  cursor.take_until(is_between_items);
  if (!cursor.take_blanks()) return false;
  auto const word = cursor.take_until(is_between_items);
  auto const letters = TextCursor{word}.take_letters();
  bool const counted = letters.size() > 1 && (letters.size() == word.size() || word.substr(letters.size()) == ".");
  return counted && !is_joining_word(word) && !state_of(word) && !is_word_before_state(word) && !is_word_of_run(word);
}

class NameOrWord {
  ListSoFar& list_;
  bool roman_{false}; // the last item is a leaf with a Roman numeral

  /// Returns the next word of the list that joins nothing.
  [[nodiscard]] static std::string_view next_word(TextCursor after) noexcept {
    after.take_while(is_between_items);
    auto word = take_until_beside_names(after, is_between_items);
    if (!is_joining_word(word)) return word;
    after.take_while(is_between_items);
    return take_until_beside_names(after, is_between_items);
  }

  /// Takes a word for the side of the leaf before it. A letter alone may be the name of a gathering.
  [[nodiscard]] bool take_side(TextCursor& cursor) const {
    auto c = cursor;
    auto const said = c.take_until([](char32_t one) { return is_between_items(one) || is_dash(one); });
    auto const bare = said.find_first_of("()") == said.npos ? without_point(said) : said;
    if (bare.size() < 2 || side_word(said) == LeafSide::not_said || names_gathering(list_.book, said)) return false;
    return cursor = c, true;
  }

public:
  explicit NameOrWord(ListSoFar& list) : list_{list} {}

  /// Returns true if a word such as & or e is a gathering, and does not join the leaves before it and after it. It joins if
  /// leaves come before it and after it and no comma parts it from those after it, but a list of leaves that are there may
  /// go from z to & and to 2a. What could be either is doubted. A letter that joins nothing is always a name.
  bool is_gathering(std::string_view word, TextCursor after) {
    after.take_blanks();
    bool const parted = after.at_end() || after.peek() == ',' || after.peek() == ';' || list_.leaves.empty();
    bool const letter = word.size() == 1 && word != "&";
    if (parted && letter) return true;
    auto const mark = mark_of_name(word, list_.book.letters());
    auto const named = mark ? list_.book.find(*mark) : std::nullopt;
    if (!named || parted) return named.has_value();
    if (!list_.wanting && list_.book.numbers_of(named->gathering).from == list_.leaves.last().to + 1) return true;
    list_.doubt(word, Problem::name_in_two_ways);
    return !list_.wanting;
  }
  /// Returns true if a word before the cursor, which can also be a leaf with a Roman numeral, is not one. What is neither
  /// clearly one nor clearly the other is doubted, and is a leaf. Among other leaves with Roman numerals it is a leaf.
  [[nodiscard]] bool is_no_leaf(std::string_view word, TextCursor after, std::optional<Error>& wrong) {
    if (is_joining_word(word)) return false;
    auto const like = word_like_leaf(word);
    if (!like || names_gathering(list_.book, word)) return roman_ = names_roman_leaf(list_.book, word), false;
    auto const next = next_word(after);
    bool const leaf = find_reference(list_.book, word).has_value(), first = list_.leaves.empty() && !list_.begun;
    if (leaf && (roman_ || names_roman_leaf(list_.book, next))) return roman_ = true, false;
    bool const blank = after.take_blanks();
    bool const goes_on = blank && !after.at_end() && !is_between_items(after.character().value);
    bool const names = !next.empty() && (names_gathering(list_.book, next) || find_reference(list_.book, next));
    // the copy lacks what comes after the passage, or another word says how it is
    bool const of_copy = after.at_end() ? after.at() < list_.text.size() : goes_on && !names;
    bool const pointed = word.ends_with('.');
    if (*like == WordLikeLeaf::copy && first && !list_.wanting && (of_copy || pointed)) {
      if (leaf && names) list_.doubt(word, Problem::leaf_or_word);
      return true;
    }
    if (*like >= WordLikeLeaf::number && first && !list_.wanting && after.at_end() && of_copy) return true;
    if (*like == WordLikeLeaf::of && first && list_.wanting && goes_on) return true;
    if (*like == WordLikeLeaf::number && goes_on && !names &&
        counts_something(TextCursor{list_.text, list_.position(word)})) {
      wrong = list_.error(Problem::leaves_not_named, word);
      return true;
    }
    if (leaf) list_.doubt(word, Problem::leaf_or_word);
    return false;
  }
  /// Returns the name of a leaf with the word for its side, A1 verso, B3-5 (recto) or verso of A1, or no value.
  [[nodiscard]] std::optional<std::string_view> with_side(std::string_view word, bool number,
                                                          TextCursor& cursor) const {
    if (word.empty()) return std::nullopt;
    auto const from = list_.position(word);
    auto c = cursor;
    if (side_word(word) != LeafSide::not_said && word.size() > 3) { // verso of A1
      bool const of = c.take_blanks() && c.take_until(is_between_items) == "of" && c.take_blanks();
      auto const leaf = of ? take_until_beside_names(c, is_between_items) : std::string_view{};
      auto const all = list_.text.substr(from, c.at() - from);
      if (leaf.empty() || !find_reference(list_.book, all)) return std::nullopt;
      return cursor = c, all;
    }
    TextCursor dash{word};
    take_until_beside_names(dash, is_dash);
    auto const end = dash.take_dash() ? dash.rest() : word;
    bool const may = !end.empty() && (is_digit(end.back()) || std::string_view{"ijx"}.find(end.back()) != end.npos);
    if (!may || !c.take_blanks()) return std::nullopt;
    if (!take_side(c) || names_gathering(list_.book, word)) return std::nullopt;
    auto const leaf =
        number || end.size() < word.size() ? std::nullopt : std::optional{find_reference(list_.book, word)};
    if (leaf && (!*leaf || (*leaf)->side != LeafSide::not_said)) return std::nullopt;
    if (c.take_dash()) { // A1 verso-A3 recto
      take_until_beside_names(c, is_between_items);
      auto side = c;
      if (side.take_blanks() && take_side(side)) c = side;
    }
    return cursor = c, list_.text.substr(from, c.at() - from);
  }
  /// Returns the name of a leaf with a blank before its figure, A 1, or no value. It ends before a dash or the end of the
  /// item. After "A 1 leaf" the figure is a number of leaves.
  [[nodiscard]] std::optional<std::string_view> with_blank(std::string_view word, TextCursor& cursor) const {
    if (!names_gathering(list_.book, word) || !is_latin_letter(word.back())) return std::nullopt;
    auto c = cursor;
    if (!c.take_blanks() || !c.at_digit() || counts_something(c)) return std::nullopt;
    auto const figure = take_until_beside_names(c, is_between_items);
    TextCursor digit{figure};
    auto const digits = digit.take_number(ReferenceScan::most_figure);
    auto const head = figure.substr(0, digit.at());
    bool const alone = digit.at_end() || is_dash(digit.character().value);
    if (!digits || !alone || names_gathering(list_.book, head) || names_gathering(list_.book, figure))
      return std::nullopt;
    auto const from = list_.position(word);
    auto const all = list_.text.substr(from, list_.position(figure) + figure.size() - from);
    if (!find_reference(list_.book, list_.text.substr(from, list_.position(figure) + head.size() - from)))
      return std::nullopt;
    cursor = c;
    return all;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
