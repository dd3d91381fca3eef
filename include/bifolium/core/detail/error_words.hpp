// SPDX-License-Identifier: MIT
/// Writes an error into a buffer of fixed size. It is used where a std::string is not possible: in a constant
/// expression, and while an exception is made.
#pragma once

#include <bifolium/core/problem.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/core/utf8.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The sentence of a problem with `{found}` and `{limit}` filled in, and the noun of the number in singular or plural. A text longer than the buffer is cut; a test
/// checks that no sentence is that long.
class ErrorWords {
  char text_[512]{};
  std::size_t size_{};

  /// Replaces `'{found}'` if there is no text to quote: removes the opening quotation mark.
  constexpr void add_instead_of_quotation(bool in_text) {
    if (size_ > 0 && text_[size_ - 1] == '\'') --size_;
    add(in_text ? "the end of the text" : "the value");
  }

public:
  constexpr ErrorWords() = default;

  constexpr ErrorWords& add(std::string_view piece) {
    for (std::size_t i = 0; i < piece.size() && size_ < sizeof text_; ++i) text_[size_++] = piece[i];
    return *this;
  }
  constexpr ErrorWords& add(std::int64_t number) {
    char digits[20]{};
    std::size_t at = sizeof digits;
    auto rest = number < 0 ? 0 - static_cast<std::uint64_t>(number) : static_cast<std::uint64_t>(number);
    do digits[--at] = static_cast<char>('0' + rest % 10);
    while ((rest /= 10) != 0);
    if (number < 0) add("-");
    return add({digits + at, sizeof digits - at});
  }
  /// Adds a text that somebody else wrote, as it can be shown.
  constexpr ErrorWords& add_found(std::string_view found) {
    for (std::size_t at = 0; at < found.size(); at += decode(found, at).bytes) add(shown_character(found, at));
    return *this;
  }
  /// Adds `line 2, column 14: `. If there is no text and the sentence does not name the field, adds the name of the
  /// field.
  constexpr ErrorWords& add_place(Problem problem, std::optional<TextPlace> place, std::string_view found) {
    if (place)
      add("line ").add(std::int64_t{place->line}).add(", column ").add(std::int64_t{place->column}).add(": ");
    else if (!found.empty() && sentence(problem).find("{found}") == std::string_view::npos)
      add("'").add_found(found).add("': ");
    return *this;
  }
  constexpr ErrorWords& add_sentence(Problem problem, std::int64_t limit, std::string_view found, bool in_text) {
    for (auto rest = sentence(problem); !rest.empty();) {
      auto const open = rest.find('{');
      add(rest.substr(0, open));
      if (open == std::string_view::npos) break;
      auto const close = rest.find('}', open);
      auto const name = rest.substr(open + 1, close - open - 1);
      rest.remove_prefix(close + 1);
      if (name == "limit") {
        add(limit);
      } else if (auto const many = name.find('|'); many != std::string_view::npos) { // {leaf|leaves}
        add(limit == 1 ? name.substr(0, many) : name.substr(many + 1));
      } else if (!found.empty()) {
        add_found(found);
      } else {
        add_instead_of_quotation(in_text);
        if (rest.starts_with('\'')) rest.remove_prefix(1);
      }
    }
    return *this;
  }

  [[nodiscard]] constexpr std::string_view view() const noexcept { return {text_, size_}; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
