// SPDX-License-Identifier: MIT
/// Reads the format as a record or a dealer states it: `8vo`, `gr. in-8°`, `demy 8vo`, `4to in 8s`, `8° (4s)`, `4to and
/// 8vo`, `8°?`. Words about the size of the paper come before the format, the leaves of the gatherings after it, and a
/// book may have two formats. fold/read_format.hpp reads a format alone, and fold/read_gathered.hpp
/// the leaves of the gatherings.
#pragma once

#include <bifolium/core/character_references.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/fold/read_gathered.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The content of a statement of format.
struct FormatStatement {
  std::vector<Format> formats{};      ///< one format, or two if the book has sheets of both
  std::string paper{};                ///< words before the format about the paper or the size: demy, royal, gr., small
  std::optional<int> gatherings_of{}; ///< leaves of the gatherings if all have one number: 8 in `4to in 8s`
  std::optional<Cycle> gathered{};    ///< the same, and several that alternate: 8 and 4 in `12° (8/4)`
  bool probable{};                    ///< true if there is a question mark, or a word such as `perhaps`
  std::vector<TextSpan> unread{};     ///< text that does not belong to the format

  /// Moves its places from a text of characters into the text with the references. Readers of statements call it.
  void move_back(TextOfCharacters const& text) {
    for (auto& span : unread) span = text.original(span);
  }
  friend bool operator==(FormatStatement const& a, FormatStatement const& b) {
    return a.formats == b.formats && a.paper == b.paper && a.gathered == b.gathered && a.probable == b.probable;
  }
};

namespace detail {
/// Words before a format, in small letters and without full stops: about the paper, the size and the shape; doubts; and that
/// it is another one. (common practice, no source)
inline constexpr char const* words_of_paper[]{
    "demy",      "royal",    "roy",    "crown",    "cr",      "imperial", "imp",    "medium", "med",       "median",
    "regal",     "foolscap", "f'cap",  "fcap",     "fcp",     "cap",      "post",   "pott",   "pot",       "elephant",
    "atlas",     "super",    "sup",    "large",    "lge",     "lg",       "small",  "sm",     "sml",       "great",
    "grand",     "gr",       "groß",   "gross",    "klein",   "kl",       "petit",  "pet",    "pt",        "p",
    "g",         "max",      "maximo", "maj",      "majori",  "min",      "minori", "tall",   "square",    "sq",
    "narrow",    "narr",     "broad",  "thick",    "long",    "double",   "dbl",    "extra",  "thin",      "lex",
    "lexikon",   "lexicon",  "schmal", "hoch",     "breit",   "carré",    "raisin", "jésus",  "colombier", "soleil",
    "couronne",  "tellière", "écu",    "cavalier", "piccolo", "picc",     "grande", "gran",   "mayor",     "menor",
    "marquilla", "stor",     "liten",  "lille",    "format",  "size",     "in",     "en",     "a"};
inline constexpr char const* words_of_format_doubt[]{"perhaps",    "probably",   "prob",  "possibly",   "poss",
                                                     "presumably", "apparently", "wohl",  "vermutlich", "vielleicht",
                                                     "peut-être",  "forse",      "quizá", "?"};
inline constexpr char const* words_of_denial[]{"not",   "no",    "non",   "neither", "never", "kein",
                                               "keine", "nicht", "weder", "pas",     "ni",    "ikke"};
/// Returns true if a word is in a row, in capitals or small letters, with punctuation after it or without.
template <std::size_t N> constexpr bool is_word_of(char const* const (&row)[N], std::string_view word) noexcept {
  while (word.size() > 1 && (word.back() == '.' || word.back() == ',' || word.back() == ':')) word.remove_suffix(1);
  for (auto const* const one : row)
    if (equal_in_any_case(one, word)) return true;
  return false;
}
/// Takes what joins two formats: and, or, &, a comma or a stroke. After a comma or a stroke a format must follow.
inline bool take_word_between_formats(TextCursor& cursor) {
  if (cursor.take_word("and") || cursor.take_word("or") || cursor.take_word("et") || cursor.take_word("und") ||
      cursor.take('&'))
    return true;
  auto look = cursor;
  if (!look.take(',') && !look.take('/')) return false;
  look.take_blanks();
  auto const next = format_at_start(look.rest());
  if (!next || next->bytes == 0) return false;
  cursor = look;
  return true;
}
/// Takes the shape of a format after it: 8vo, oblong; 8vo (oblong).
inline void take_shape_after(TextCursor& cursor, Format& format) {
  auto look = cursor;
  look.take_blanks();
  bool const round = look.take('(');
  if (!round && !look.take(',')) return;
  look.take_blanks();
  FormatScan scan{look.rest()};
  auto const shape = scan.shape();
  if (!shape || format.shape() != Shape::usual) return;
  look.skip(scan.at());
  bool const ends =
      round ? look.take(')') : look.at_end() || look.peek() == ',' || look.peek() == ';' || look.peek() == '.';
  if (!ends) return;
  format = format.with(*shape);
  cursor = look;
}
inline Expected<FormatStatement> read_format_characters(std::string_view text) {
  FormatStatement read;
  TextCursor cursor{text};
  cursor.take_blanks();
  auto const begin = cursor.at();
  std::size_t blank = begin; // the first after the cursor, which is looked for once a word
  while (true) {
    cursor.take_blanks();
    if (auto const found = format_at_start(cursor.rest()); found && found->bytes > 0) {
      read.formats.push_back(found->format);
      cursor.skip(found->bytes);
    } else if (read.formats.empty()) {
      auto const from = cursor.at();
      bool whole = false;
      if (blank <= from) {
        auto const to_blank = TextCursor{text, from}.take_until(is_space);
        blank = from + to_blank.size();
        whole = is_word_of(words_of_format_doubt, to_blank); // peut-être
      }
      while (!cursor.at_end() && !is_space(cursor.character().value) && (whole || cursor.peek() != '-')) cursor.skip(1);
      if (cursor.at_end()) return cursor.error_from(begin, Problem::unknown_format);
      auto const word = text.substr(from, cursor.at() - from);
      if (is_word_of(words_of_denial, word)) return cursor.error_from(begin, Problem::format_denied);
      if (auto const other = read_format(word)) // quart-octavo
        read.formats.push_back(*other);
      else if (is_word_of(words_of_format_doubt, word))
        read.probable = true;
      else if (is_word_of(words_of_paper, word))
        read.paper.append(read.paper.empty() ? "" : " ").append(word);
      else if (!read.unread.empty() && from <= read.unread.back().to + 1) // the next of several words
        read.unread.back().to = cursor.at();
      else
        read.unread.push_back({from, cursor.at()});
      static_cast<void>(cursor.take('-')); // Gr.-8°
      continue;
    }
    take_shape_after(cursor, read.formats.back());
    read.probable = cursor.take('?') || read.probable;
    if (auto const found = take_gathered(cursor, read.formats.back()); found.counts.problem != Problem::none)
      return cursor.error(found.counts.problem, found.text, found.counts.limit());
    else if (found.counts.found() && !read.gathered) {
      read.gathered = found.counts.leaves;
      if (read.gathered->size() == 1) read.gatherings_of = read.gathered->term(0);
    }
    cursor.take_blanks();
    if (read.formats.size() == 2 || !take_word_between_formats(cursor)) break;
  }
  cursor.take_blanks();
  while (cursor.take('.') || cursor.take(':') || cursor.take(')')) cursor.take_blanks();
  if (!cursor.at_end()) read.unread.push_back({cursor.at(), text.size()});
  return read;
}
} // namespace detail

/// Reads a statement of format. Words before the format about paper and size are stored, other words are listed in `unread`.
/// Error: unknown_format if no format is named; format_denied if the words say that it is not the one named; zero_leaf_count, leaf_count_too_high and cycle_too_long for gatherings that there cannot be.
[[nodiscard]] inline Expected<FormatStatement> read_format_statement(std::string_view text) {
  return read_characters(text, detail::read_format_characters);
}

} // namespace v0
} // namespace bifolium
