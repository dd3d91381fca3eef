// SPDX-License-Identifier: MIT
/// Divides a list of leaves where it changes from the leaves that are there to those that are wanting. Most catalogues
/// say only what is wanting, so a list may begin with it.
///
///   list    = leaves , { [ "imperfect" , [ ":" ] ] , wanting , leaves , [ ")" ] } ;
///   wanting = [ "(" ] , ( wanting word | "missing" | "without" | "except" | "excepting" | "less"
///             | "but" , [ "for" ] | "save" , [ "for" ] ) , [ ":" ] ;
///             (* wanting word: leaf/leaf_words.hpp *)
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/leaf_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A part of a list of leaves.
struct ListPassage {
  TextSpan text{};
  bool wanting{}; ///< true for leaves that the copy lacks
};

/// Returns true between the items of a list.
[[nodiscard]] constexpr bool is_between_items(char32_t c) noexcept { return is_space(c) || c == ',' || c == ';'; }

/// Finds the passages of a list, from the first to the last.
class ListPassages {
  TextCursor cursor_;
  ListPassage passage_{}; // the one that is being looked through, as if the text ended with it
  std::size_t close_{0};  // the next closing parenthesis, when it was last looked for
  bool in_parentheses_{false};

  /// Returns the text without blanks and a full stop at its end.
  static std::string_view sentence(std::string_view text) noexcept {
    std::size_t end = 0; // after the last character that is not a blank
    for (std::size_t at = 0; at < text.size();) {
      auto const c = decode(text, at);
      at += c.bytes;
      if (!is_space(c.value)) end = at;
    }
    text = text.substr(0, end);
    if (text.ends_with('.') && !text.ends_with("..")) text.remove_suffix(1);
    return text;
  }
  /// Returns true for a word after which leaves are wanting.
  [[nodiscard]] static bool begins_wanting(std::string_view word) noexcept {
    return is_wanting_word(word) || equal_in_any_case(word, "missing") || equal_in_any_case(word, "without") ||
           equal_in_any_case(word, "except") || equal_in_any_case(word, "excepting") ||
           equal_in_any_case(word, "less") || equal_in_any_case(word, "but") || equal_in_any_case(word, "save");
  }
  /// Ends the passage at `to` and begins the next one at `from`. Returns the one that has ended.
  ListPassage turn(std::size_t to, std::size_t from, bool wanting) noexcept {
    ListPassage const ended{{passage_.text.from, to}, passage_.wanting};
    passage_ = {{from, cursor_.text().size()}, wanting};
    return ended;
  }
  /// Returns where a remark in parentheses ends that only says which of the wanting leaves are blank: (G4 blank).
  [[nodiscard]] std::optional<std::size_t> end_of_remark(std::size_t from) noexcept {
    auto const text = cursor_.text();
    if (close_ < from) close_ = text.find(')', from);
    if (close_ == text.npos || !text.substr(from, close_ - from).ends_with(" blank")) return std::nullopt;
    return close_ + 1;
  }

public:
  explicit ListPassages(std::string_view text) : cursor_{sentence(text)} { passage_.text = {0, cursor_.text().size()}; }

  /// Returns the next passage, which may be empty, or no value at the end of the text.
  std::optional<ListPassage> next() noexcept {
    auto const size = cursor_.text().size();
    while (true) {
      cursor_.take_while(is_between_items);
      if (cursor_.at_end()) break;
      auto const from = cursor_.at();
      auto const whole = cursor_.take_until(is_between_items);
      auto word = whole;
      bool const opens = word.starts_with('(');
      if (opens) word.remove_prefix(1);
      while (word.ends_with(':') || word.ends_with('.')) word.remove_suffix(1);
      if (begins_wanting(word)) {
        in_parentheses_ = opens;
        return turn(from, cursor_.at(), true);
      }
      if (equal_in_any_case(word, "imperfect")) return turn(from, cursor_.at(), passage_.wanting);
      if (!passage_.wanting) continue;
      if (auto const end = opens ? end_of_remark(from) : std::nullopt) {
        cursor_.go_to(*end);
        return turn(from, *end, true);
      }
      if (in_parentheses_ && whole.ends_with(')') && whole.find('(') == whole.npos) {
        in_parentheses_ = false;
        return turn(cursor_.at() - 1, cursor_.at(), false);
      }
    }
    if (passage_.text.from >= size && !passage_.wanting) return std::nullopt;
    return turn(size, size, false);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
