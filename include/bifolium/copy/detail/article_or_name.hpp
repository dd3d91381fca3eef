// SPDX-License-Identifier: MIT
/// A letter that is an article before a word for leaves, and the gathering of that name: a leaf, a blank, i fogli. A quire
/// that is wanting has no such word after its name, so beside one the letter is an article; and c. before a number of leaves
/// is circa. What is then not named is not a leaf of the list (common practice, no source).
#pragma once

#include <bifolium/copy/detail/count_before_names.hpp>
#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ArticleOrName {
  ListSoFar& list_;

  /// Returns true if the name of a leaf comes after the words at the cursor, which is then there: leaf (a3), gathering: C.
  [[nodiscard]] bool take_to_name(TextCursor& cursor) const {
    auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one) || one == ')' || one == '.'; };
    for (int words = 0; words < most_words_before_name; ++words) {
      auto const word = cursor.take_until([](char32_t one) { return is_between_items(one) || one == ':'; });
      if (!is_row(without_point(word), words_after_a)) return false;
      while (cursor.take_blanks() || cursor.take(':') || cursor.take(',')) continue;
      auto name = cursor;
      static_cast<void>(name.take('('));
      auto const first = take_until_beside_names(name, ends);
      if (names_gathering(list_.book, first) || find_reference(list_.book, first)) return true;
    }
    return false;
  }
  /// Takes "a blank" after the name of a leaf and a comma, which says of it that it is blank: lacks K8, a blank.
  [[nodiscard]] bool take_apposition(TextCursor& cursor, std::size_t from) const {
    auto const before = list_.text.substr(0, from).find_last_not_of(' ');
    bool const after_comma = before != std::string_view::npos && list_.text[before] == ',';
    auto c = cursor;
    if (!after_comma || !list_.has_leaves() || !is_blank_word(c.take_until(is_between_items))) return false;
    auto next = c;
    if (next.take_blanks() && next.take_until(is_between_items) == "leaf") c = next;
    next = c;
    next.take_blanks();
    if (!next.at_end() && next.peek() != ',' && next.peek() != ';') return false;
    cursor = c;
    return true;
  }

public:
  explicit ArticleOrName(ListSoFar& list) : list_{list} {}

  /// Takes an article and the words for leaves after it, or finds that they name none. Returns false for anything else.
  bool take(TextCursor& cursor, std::optional<Error>& wrong) {
    if (cursor.peek(1) != ' ' && cursor.peek(1) != '.') return false;
    auto const from = cursor.at();
    auto c = cursor;
    auto const word = c.take_until(is_between_items);
    if (!c.take_blanks()) return false;
    auto after = c;
    auto const noun = after.take_until(is_between_items);
    if (word == "c." && cursor.peek(3) != ' ' && c.at_digit()) { // c. 10 leaves
      bool const count = after.take_blanks() && is_counted(after.take_until(is_between_items));
      if (count) wrong = list_.error(Problem::leaves_not_named, noun);
      return count;
    }
    if (word == "a" && take_apposition(c, from)) return cursor = c, true;
    bool const article = word == "a" || word == "A";
    if (!article && !names_gathering(list_.book, word)) return false;
    bool const pointed = noun.size() > 1 && is_leaf_noun(noun) && !names_gathering(list_.book, noun) &&
                         without_point(noun) != "leaf" && without_point(noun) != "leaves";
    bool const gathering = names_gathering(list_.book, word);
    if (gathering && (word == "i" || word == "a" || word == "e") && pointed && after.take_blanks() &&
        after.at_digit()) { // i ff. 3 e 5
      if (word != "i") list_.doubt(word, Problem::name_in_two_ways);
      cursor = c;
      return true;
    }
    if (!article) return false;
    if (!is_row(without_point(noun), words_after_a) &&
        !(noun.ends_with(':') && is_row(noun.substr(0, noun.size() - 1), words_after_a)))
      return false;
    if (take_to_name(c)) return cursor = c, true;
    wrong = list_.error(Problem::leaves_not_named, noun);
    return true;
  }

private:
  [[nodiscard]] static bool is_counted(std::string_view word) noexcept {
    while (word.ends_with(')') || word.ends_with(':') || word.ends_with('.')) word.remove_suffix(1);
    return is_noun(word, gathering_noun_rows, NounUse::in_list) ||
           (word.size() > 1 && is_noun(word, leaf_noun_rows, NounUse::in_list));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
