// SPDX-License-Identifier: MIT
/// Keeps what the reader of a field says, with the name of the field: its value and text, what it left unread, and what
/// it doubts. Every reader of record/, collation/, core/ and paper/ tells these in its own way, and a finding needs all
/// of them in one.
#pragma once

#include <bifolium/book/detail/reading/stated_beside.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/text_cursor.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FieldReader {
protected:
  FieldTexts const& texts_;
  Limits const& limits_;
  Description book_{};
  StatedBeside beside_{};

  void unread(Field field, Error const& error, std::string_view text, std::size_t from = 0) {
    book_.unread.push_back({field, error, std::string{text}, from});
  }
  /// Text beside the value of a field. `text` is the text of the field.
  void rest(Field field, std::string_view text, TextSpan span) {
    rest(field, text, span, places_[static_cast<std::size_t>(field)].place(text, span.from));
  }
  /// The same, for words of which the place is known.
  void rest(Field field, std::string_view text, TextSpan span, TextPlace at) {
    auto const words = trimmed(text, span, " ,;.:");
    if (words.empty()) return;
    at = place_after(at, place_in(span.of(text), words.from - span.from));
    book_.unread.push_back(
        {field, error_at(Problem::trailing_text, at, words.of(text)), std::string{words.of(text)}, words.from, true});
  }
  /// Two rules of a grammar can doubt the same words, or words and a part of them. They are told once.
  void drop_repeated_rests() {
    auto& unread = book_.unread;
    std::vector<std::uint32_t> order;
    for (std::uint32_t i = 0; i < unread.size(); ++i)
      if (unread[i].rest) order.push_back(i);
    auto const key = [&](std::uint32_t i) { // of two that begin together the longer one comes first
      auto const& one = unread[i];
      return std::array{static_cast<std::size_t>(one.field), one.from, ~one.text.size()};
    };
    merge_sort(order, [&](std::uint32_t a, std::uint32_t b) { return key(a) < key(b); });
    std::size_t to = 0; // where the words that are told end
    for (std::size_t i = 0; i < order.size(); ++i) {
      auto& one = unread[order[i]];
      bool const first = i == 0 || one.field != unread[order[i - 1]].field;
      auto const end = one.from + one.text.size();
      if (!first && end <= to)
        one.text.clear();
      else
        to = first || end > to ? end : to;
    }
    std::erase_if(unread, [](UnreadField const& one) { return one.rest && one.text.empty(); });
  }
  void doubt(Field field, std::vector<Error> const& warnings) {
    for (auto const& one : warnings) book_.doubts.push_back({field, one});
  }
  /// The text of a value, which is that of a field or a part of it.
  struct Part {
    std::string_view text{};
    std::size_t from{};
    TextPlace at{};
  };
  static Part part(std::string_view text, TextSpan span) {
    return {span.of(text), span.from, place_in(text, span.from)};
  }
  template <class T> static Stated<T> stated(T value, Part const& part) {
    return {static_cast<T&&>(value), std::string{part.text}, part.at, {}, part.from};
  }
  template <class T> static Stated<T> stated(T value, std::string_view text) {
    return stated(static_cast<T&&>(value), Part{text});
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

  FieldReader(FieldTexts const& texts, Conventions const& conventions, Limits const& limits)
      : texts_{texts}, limits_{limits} {
    book_.conventions = conventions;
  }

private:
  PlaceCounter places_[field_count]{}; // what is beside a value is told in the order of the text
};

} // namespace detail
} // namespace v0
} // namespace bifolium
