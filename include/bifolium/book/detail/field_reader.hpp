// SPDX-License-Identifier: MIT
/// Keeps what the reader of a field says, with the name of the field: its value and text, what it left unread, and what
/// it doubts. Every reader of record/, collation/, core/ and paper/ tells these in its own way, and a finding needs all
/// of them in one.
#pragma once

#include <bifolium/book/detail/stated_beside.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FieldReader {
protected:
  FieldTexts const& texts_;
  Description book_{};
  StatedBeside beside_{};

  void unread(Field field, Error const& error, std::string_view text, std::size_t from = 0) {
    book_.unread.push_back({field, error, std::string{text}, from});
  }
  /// Text beside the value of a field.
  void rest(Field field, std::string_view text, TextSpan span) {
    span = trimmed(text, span, " ,;.:");
    if (span.empty()) return;
    for (auto const& one : book_.unread) // two rules of a grammar can doubt the same words
      if (one.field == field && one.rest && one.from == span.from && one.text == span.of(text)) return;
    auto const error = TextCursor{text}.error(Problem::trailing_text, span);
    book_.unread.push_back({field, error, std::string{span.of(text)}, span.from, true});
  }
  void doubt(Field field, std::vector<Error> const& warnings, std::string_view text) {
    for (auto const& one : warnings) book_.doubts.push_back({field, one, std::string{text}});
  }
  template <class T> static Stated<T> stated(T value, std::string_view text, TextPlace at = {}) {
    return {static_cast<T&&>(value), std::string{text}, at};
  }
  /// The field, if there is a text and it can be read.
  template <class T, class Read>
  void read(Field field, std::string_view text, std::optional<Stated<T>>& to, Read reader) {
    if (text.empty()) return;
    if (Expected<T> const value = reader(text))
      to = stated(T{*value}, text);
    else
      unread(field, value.error(), text);
  }

  FieldReader(FieldTexts const& texts, Conventions const& conventions) : texts_{texts} {
    book_.conventions = conventions;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
