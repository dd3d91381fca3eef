// SPDX-License-Identifier: MIT
/// The words of a formula as they are stored: notes, labels, the statement of signing, the text after the gatherings.
/// They will be written in other notations, so they must not contain tags, which are text in HTML: "fol.
/// 12<sup>v</sup>" becomes "fol. 12v", and the 2 of "pp. <sup>2</sup>1-44" a raised figure. Markup without angle
/// brackets (^{v}) is text everywhere and stays; but it is closed where a tag ends its style, because the tag is gone.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/markup.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Takes the markup out of words.
class MarkupRemover {
  std::string words_{};
  MarkupKind style_{MarkupKind::ends}; // of the text that comes next; `ends` for text on the line
  std::string_view shut_{};            // what closes it, if no tag began it
  std::size_t opened_{};               // the size of the words when it began
  bool one_word_{true}, one_before_{}; // whether there are only letters so far; and were before ^{
  bool tag_in_word_{};                 // a tag was left out of the first word, or at its end

  /// Returns the number of bytes of ^{ or of its like at the end of the words.
  [[nodiscard]] std::size_t opens_last() const noexcept {
    std::string_view const words{words_};
    return words.ends_with("^{") ? 2 : words.ends_with("\xC3\x9Bp") ? 3 : 0;
  }
  /// Returns the markup at a byte. A brace is markup if it ends a style that began before some text.
  [[nodiscard]] Markup markup(std::string_view text, std::size_t i) const {
    bool const brace = text[i] == '}' && style_ != MarkupKind::ends && words_.size() != opened_;
    return brace ? Markup{MarkupKind::ends, 1} : markup_at(text, i);
  }
  /// Leaves a tag out.
  void leave_out(MarkupKind kind) {
    if (auto const open = opens_last(); open != 0 && !shut_.empty())
      words_.resize(words_.size() - open), one_word_ = one_before_;
    else
      words_ += shut_;
    tag_in_word_ = one_word_;
    style_ = kind;
    shut_ = {};
    opened_ = words_.size();
  }
  void add_lowered(int digit) {
    char bytes[4]{};
    words_.append(bytes, encode(subscript(digit), bytes));
  }
  /// Adds a character of ASCII or one byte of another. A first word with a tag in it was read as letters; without the
  /// tag a figure directly after it would be the count of a name, so a blank comes between them.
  void add(char c) {
    bool const counts = is_digit(c) || c == '^' || static_cast<unsigned char>(c) >= 0x80;
    if (counts && tag_in_word_ && one_word_ && words_.size() > 1) words_ += ' ';
    one_word_ = one_word_ && is_latin_letter(c);
    if (is_digit(c) && style_ == MarkupKind::raises && shut_.empty())
      words_ += raised(c - '0').view();
    else if (is_digit(c) && style_ == MarkupKind::lowers)
      add_lowered(c - '0');
    else
      words_ += c;
  }

public:
  explicit MarkupRemover(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
      auto const found = markup(text, i);
      bool const tag = text[i] == '<' || (text[i] == '}' && shut_.empty());
      bool const stray = found.kind == MarkupKind::ends && style_ == MarkupKind::ends;
      if (found.bytes != 0 && tag && !stray) {
        i += found.bytes;
        leave_out(found.kind);
        continue;
      }
      if (found.bytes != 0) {
        style_ = found.kind;
        one_before_ = one_word_;
        shut_ = found.kind == MarkupKind::ends ? "" : text[i] == '^' ? "}" : "\xC3\x9Bs";
      }
      std::size_t bytes = 0;
      auto const c = entity_at(text, i, bytes);
      add(bytes == 0 ? text[i] : c);
      i += bytes == 0 ? 1 : bytes;
    }
    for (auto size = words_.size();; size = words_.size()) { // markup at the end has nothing in it
      while (!words_.empty() && std::string_view{" \t\r\n"}.find(words_.back()) != std::string_view::npos)
        words_.pop_back();
      words_.resize(words_.size() - opens_last());
      if (words_.size() == size) break;
    }
  }
  /// Returns the words.
  [[nodiscard]] std::string take() && { return static_cast<std::string&&>(words_); }
};
/// Returns the words as they are stored, without tags and entities, and without blanks at the end.
[[nodiscard]] inline std::string stored_words(std::string_view text) { return MarkupRemover{text}.take(); }

} // namespace detail
} // namespace v0
} // namespace bifolium
