// SPDX-License-Identifier: MIT
/// Words after which leaves are named again in other words: the last leaf, i. e. L4; drei Blätter, d. h. A1-3 (common practice, no
/// source). Some are letters with points that are also gatherings; before the names of leaves, nobody writes gatherings so.
#pragma once

#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// English, then German, French, Italian, Spanish, Latin and Dutch. Those that begin with a letter and a point are such words only
/// in small letters.
inline constexpr char const* that_is_phrases[]{
    "i. e.",        "i.e.",     "that is to say", "that is",  "namely",    "viz.",        "viz",
    "d. h.",        "d.h.",     "d. i.",          "d.i.",     "das heißt", "das heisst",  "das ist",
    "nämlich",      "und zwar", "c.-à-d.",        "c.-a-d.",  "c. à d.",   "c.à.d.",      "c'est-à-dire",
    "c’est-à-dire", "à savoir", "savoir",         "cioè",     "ossia",     "vale a dire", "es decir",
    "o sea",        "esto es",  "id est",         "scilicet", "scil.",     "videlicet",   "nempe",
    "d. w. z.",     "d.w.z.",   "dat wil zeggen", "te weten", "namelijk",  "cioe\u0300"};

/// Takes such words, with a colon or a comma and the blanks after them. Returns true if they were taken.
[[nodiscard]] inline bool take_that_is(TextCursor& cursor) noexcept {
  if (!begins_phrase(cursor) && cursor.peek() != 'o') return false; // o sea
  auto const first = small_letter(cursor.peek());
  for (auto const* const row : that_is_phrases) {
    if (small_letter(row[0]) != first) continue;
    std::string_view const phrase{row};
    auto c = cursor;
    auto const take = [&](std::string_view one) { return phrase[1] == '.' ? c.take(one) : c.take_in_any_case(one); };
    if (!take(phrase)) { // the point at the end of a sentence is of no list
      bool const last = phrase.ends_with('.') && take(phrase.substr(0, phrase.size() - 1)) && c.at_end();
      if (!last) continue;
    }
    bool const colon = c.take(':') || c.take(',');
    bool const ended = c.at_end() || colon || is_between_items(c.character().value);
    if (!ended) continue;
    c.take_blanks();
    cursor = c;
    return true;
  }
  return false;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
