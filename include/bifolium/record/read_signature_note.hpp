// SPDX-License-Identifier: MIT
/// Reads the note in which a catalogue gives the signatures: "Signatures: A⁸ B-O⁸ P⁴.", "Signatures (in Hebrew
/// numerals): 1-32⁴", "Collation: 8vo: A-H⁴; 32 leaves: p. [1-2] 3-62 [63-64]; $3 signed". The word before the colon
/// and the script in parentheses do not belong to the formula. The text after the formula may contain pages, the
/// signing and prose.
///
/// Rules: DCRMR 6.215.44 (DCRM(B) 7B9).
#pragma once

#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/formula_heading.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>

#include <algorithm>

namespace bifolium {
inline namespace v0 {

/// A note of signatures.
struct SignatureNote {
  Formula formula;                     ///< the formula; columns of its warnings are those of the note
  std::optional<std::string> script{}; ///< `in Hebrew numerals`, `right to left`, if one is named
  std::optional<Pagination> pages{};   ///< the pages stated after the formula, if they can be read
  std::optional<Signing> signing{};    ///< the signing stated after the formula, if it can be read
  TextSpan formula_at{};               ///< the note without its first words

  /// Moves its places from a text of characters into the text with the references. Readers of statements call it.
  void move_back(TextOfCharacters const& text) {
    formula.move_back(text);
    formula_at = text.original(formula_at);
  }
  friend bool operator==(SignatureNote const&, SignatureNote const&) = default;
};

namespace detail {
/// The first words of a note, up to the colon: the number of their bytes, and the script that they name.
struct NoteHead {
  std::size_t bytes{};
  std::optional<TextSpan> script{};
};
inline NoteHead note_head(std::string_view text) {
  TextCursor cursor{text};
  cursor.take_blanks();
  if (!take_formula_heading(cursor)) return {};
  cursor.take_blanks();
  NoteHead head;
  if (cursor.take('(')) {
    auto const from = cursor.at();
    cursor.take_until([](char32_t c) { return c == ')'; });
    head.script = {from, cursor.at()};
    if (!cursor.take(')')) return {};
    cursor.take_blanks();
  }
  if (!cursor.take(':') && !head.script) return {};
  cursor.take_blanks();
  head.bytes = cursor.at();
  return head;
}
/// Returns the text with a blank in place of each character of a part, so that lines and columns stay the same.
inline std::string with_blanks(std::string_view text, TextSpan part) {
  std::string result{text.substr(0, part.from)};
  for (auto i = part.from; i < part.to; i += decode(text, i).bytes) result += text[i] == '\n' ? '\n' : ' ';
  result.append(text.substr(part.to));
  return result;
}
/// Reads a statement of signing without brackets after the formula: $3(-H3) signed.
inline std::optional<Signing> signing_after(Formula const& formula, Limits const& limits) {
  std::string_view const tail = formula.tail();
  auto const from = tail.find('$');
  if (from == tail.npos) return std::nullopt;
  auto end = tail.find('.', from); // a full stop that a blank follows
  while (end != tail.npos && blank_at(tail, end + 1) == 0) end = tail.find('.', end + 1);
  end = (std::min)(end, tail.size());
  auto const read = read_signing(tail.substr(from, end - from), formula.letters(), limits);
  return read ? std::optional{*read} : std::nullopt;
}
inline Expected<SignatureNote> read_note_characters(std::string_view text, Dialect dialect, Limits const& limits) {
  if (is_too_long(text, limits)) return too_long(limits);
  auto const head = note_head(text);
  auto const formula = read_formula(with_blanks(text, {0, head.bytes}), dialect, limits);
  if (!formula) return formula.error();
  SignatureNote note{*formula, {}, {}, {}, {head.bytes, text.size()}};
  if (head.script) note.script = std::string{head.script->of(text)};
  if (auto pages = pagination_of(note.formula, limits)) note.pages = *pages;
  if (auto signing = signing_of(note.formula, limits))
    note.signing = *signing;
  else
    note.signing = signing_after(note.formula, limits);
  return note;
}
} // namespace detail

/// Reads a note of signatures, or a formula without words before it. A full stop at the end does not belong to it.
/// Errors: those of read_formula, with the column in the note. `pages` and `signing` have no value if they reach a
/// limit.
[[nodiscard]] inline Expected<SignatureNote> read_signature_note(std::string_view text, Dialect dialect = {},
                                                                 Limits const& limits = {}) {
  return read_characters(
      text, [&](std::string_view plain) { return detail::read_note_characters(plain, dialect, limits); },
      TextOfCharacters::Escapes::kept);
}

} // namespace v0
} // namespace bifolium
