// SPDX-License-Identifier: MIT
/// The leaves of which a word after them says that they are wanting: A-L, E8 and F1 are lacking. It is said of the last
/// name, and of those that "and" joins to it, so the names are looked for from the beginning of the passage: from its end
/// nobody can tell whether e is a name or joins two. A parenthesis round them says more clearly what is meant.
#pragma once

#include <bifolium/copy/detail/content_words.hpp>
#include <bifolium/copy/detail/pair_words.hpp>
#include <bifolium/copy/detail/passage_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words between leaves and the word that says that they are wanting: A1 is lacking. In any case of letters they would be names.
inline constexpr std::string_view words_before_wanting_after[]{"is",   "are", "also", "both", "ist",
                                                               "sind", "est", "sont", "sono"};

/// Returns true if & or e before the cursor joins something after it: before a comma or at the end it is a gathering.
[[nodiscard]] inline bool joins_something(TextCursor after) noexcept {
  after.take_blanks();
  return !after.at_end() && after.peek() != ',' && after.peek() != ';';
}
/// Returns where the leaves begin of which a word at `to` is said: the last of the passage, and those that "and" joins
/// to it.
[[nodiscard]] inline std::size_t group_before(std::string_view text, std::size_t from, std::size_t to) noexcept {
  TextCursor c{text.substr(0, to), from};
  auto group = to;
  bool named = true, joined = false; // whether a leaf is named; "and" comes before
  bool content = false;              // the word before is title or the like
  while (true) {
    c.take_while(is_between_items);
    if (c.at_end()) return group;
    auto const here = c.at();
    auto const word = take_until_beside_names(c, is_between_items);
    auto dash = TextCursor{word};
    bool const run =
        (word.size() > 1 && is_word_of_run(word)) || (dash.take_dash() && dash.at_end()); // a is a gathering
    if (run || (joins_leaves(word) && (word.size() > 1 || joins_something(c)))) {
      joined = true;
      continue;
    }
    TextCursor side{word}; // A1 recto-A3 verso
    bool const of_run = side_word(side.take_until(is_dash)) != LeafSide::not_said && side.at() > 1;
    auto after = c;
    after.take_blanks();
    auto const next = without_point(after.take_until(is_between_items));
    bool const parted = here > 0 && before_blanks(text, here) > 0 && text[before_blanks(text, here) - 1] == ',';
    bool const of = named && !joined && !parted && group < here && is_row(word, words_before_gathering) &&
                    (word == "of" || word == "von" || is_noun(next, gathering_noun_rows, NounUse::in_list));
    if (of) { // Bll. 3-6 der Lage B
      joined = true;
      continue;
    }
    bool const counts =
        whole_number(word, most_leaves_in_gathering) &&
        (is_noun(next, leaf_noun_rows, NounUse::in_list) || is_row(next, first_words) || is_row(next, last_words));
    bool const article = (word == "a" || word == "A") && is_row(next, words_after_a); // A blank leaf (L4)
    bool const of_title = content && is_row(word, words_beside_contents);             // title page
    content = is_content_word(word);
    bool const first = counts || article || is_row(word, words_for_from) || is_row(word, words_before_run) ||
                       (begins_name(word) && !of_title) || is_plural_blank_word(word);
    bool const beside = !first && (of_run || of_title || is_row(word, words_for_on) || is_beside_leaf(word));
    if (!beside && named && !joined) group = here, named = false;
    if (!beside && !first) named = true;
    joined = joined && (beside || first);
  }
}
/// Returns where the leaves end before "is wanting", "are also wanting".
[[nodiscard]] inline std::size_t end_before_wanting(std::string_view text, std::size_t to) noexcept {
  for (bool any = true; any;) {
    while (to > 0 && (text[to - 1] == ',' || blank_before(text, to) != 0)) // the beginning is not looked at each time
      to = text[to - 1] == ',' ? to - 1 : before_blanks(text, to);
    any = false;
    for (std::string_view const one : words_before_wanting_after)
      if (text.substr(0, to).ends_with(one) && blank_before(text, to - one.size()) != 0) to -= one.size(), any = true;
  }
  return to;
}
/// Returns how many parentheses more a word opens than it closes: 1 for (G4 and ((*)4, none for (*)4.
[[nodiscard]] inline int opened_in(std::string_view word) noexcept {
  int open = 0;
  for (char const c : word) open += c == '(' ? 1 : c == ')' ? -1 : 0;
  return open;
}
/// Returns true for a word with which a parenthesis closes. The marks )( and :) close none.
[[nodiscard]] inline bool closes_parenthesis(std::string_view word) noexcept {
  return word.ends_with(')') && !word.ends_with(":)") && opened_in(word) < 0;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
