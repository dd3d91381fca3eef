// SPDX-License-Identifier: MIT
/// Names of gatherings in a text about leaves. Many names are also something else: in a book numbered from 1 to 200, 21
/// could be leaf 1 of 2; 2r is a gathering or the recto of leaf 2; (*) is a mark or * in parentheses; [red star] has a
/// blank in it. What the book has decides, so readers ask here before they take a word for anything else.
#pragma once

#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/read_signature.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true if the book has a gathering with this signature, in a run or inserted.
[[nodiscard]] inline bool has_gathering(IdealCopy const& book, Signature const& mark) {
  return book.find(mark) || book.find_inserted(mark);
}
/// Returns the signature that a name is. A letter is not multiplied by 1: 1r is the recto of leaf 1, and *1r of leaf 1 of
/// gathering *.
[[nodiscard]] constexpr std::optional<Signature> mark_of_name(std::string_view text, Letters letters) {
  auto const mark = signature_of_text(text, letters);
  if (!mark || mark->multiple() != 1 || !(mark->is_letter() || mark->mark() == Mark::symbol)) return mark;
  for (std::size_t i = 0; i + 1 < text.size(); ++i) {
    bool const begins = i == 0 || !(is_digit(text[i - 1]) || text[i - 1] == '^');
    if (text[i] == '1' && begins && !is_digit(text[i + 1])) return std::nullopt;
  }
  return mark;
}
/// Returns true if the text is the name of a gathering of the book.
[[nodiscard]] inline bool names_gathering(IdealCopy const& book, std::string_view text) {
  auto const mark = mark_of_name(text, book.letters());
  return mark && has_gathering(book, *mark);
}

/// Finds where names in brackets and quotation marks end: [red star], "G & H". Names are looked for from the first to the last.
class EnclosedNames {
  char32_t open_{}; // a mark that nothing closes before `to_`, so that a row of such marks is looked through once
  std::size_t to_{};

public:
  /// Returns where the name ends that begins with a bracket or a quotation mark at byte `at`, or 0 if nothing closes it.
  [[nodiscard]] constexpr std::size_t end_of(std::string_view text, std::size_t at) noexcept {
    auto const open = decode(text, at);
    auto end = at + open.bytes;
    if (open.value == open_ && end < to_) end = to_;
    while (end < text.size() && end - at < widest_name) {
      auto const c = decode(text, end);
      end += c.bytes;
      if (open.value == '[' ? c.value == ']' : ends_quotation(open.value, c.value)) return end;
      if (open.value == '[' && c.value == '[') return 0;
    }
    open_ = open.value, to_ = end;
    return 0;
  }
};
/// Takes the text before the first character outside names in brackets and quotation marks for which `ends(character)`
/// is true, or the rest of the text, and returns it.
template <class Ends> constexpr std::string_view take_until_beside_names(TextCursor& cursor, Ends ends) noexcept {
  auto const from = cursor.at();
  EnclosedNames names;
  for (bool opens = true; !cursor.at_end();) { // whether a quotation mark would open a name
    auto const c = cursor.character();
    if (ends(c.value)) break;
    bool const encloses = c.value == '[' || (opens && opens_quotation(c.value));
    auto const end = encloses ? names.end_of(cursor.text(), cursor.at()) : 0;
    opens = end == 0 && (c.value >= 0x80 || !(is_latin_letter(cursor.peek()) || is_digit(cursor.peek())));
    end == 0 ? cursor.skip(c.bytes) : cursor.go_to(end);
  }
  return cursor.text().substr(from, cursor.at() - from);
}
/// Returns the position of the last full point outside such names, as between the leaves of [col.x]1.4, or npos.
[[nodiscard]] constexpr std::size_t last_point(std::string_view text) noexcept {
  auto found = std::string_view::npos;
  for (TextCursor cursor{text};; cursor.skip(1)) {
    take_until_beside_names(cursor, [](char32_t c) { return c == '.'; });
    if (cursor.at_end()) return found;
    found = cursor.at();
  }
}

} // namespace detail
} // namespace v0
} // namespace bifolium
