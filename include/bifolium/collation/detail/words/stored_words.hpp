// SPDX-License-Identifier: MIT
/// The words of a formula as they are stored: notes, labels, the statement of signing, the text after the gatherings.
/// They will be written in other notations, so they must not contain tags, which are text in HTML: "fol.
/// 12<sup>v</sup>" becomes "fol. 12v", and the 2 of "pp. <sup>2</sup>1-44" a raised figure. Markup without angle
/// brackets (^{v}) is text everywhere and stays; but it is closed where a tag ends its style, because the tag is gone.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/character_references.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/markup.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Takes the markup out of words. They are kept in a vector, which more compilers can evaluate than a string.
class MarkupRemover {
  std::vector<char> words_{};
  MarkupKind style_{MarkupKind::ends}; // of the text that comes next; `ends` for text on the line
  std::string_view shut_{};            // what closes it, if no tag began it
  std::size_t opened_{};               // the size of the words when it began
  bool one_word_{true}, one_before_{}; // whether there are only letters so far; and were before ^{
  bool tag_in_word_{};                 // a tag was left out of the first word, or at its end

  constexpr void shorten(std::size_t size) { // vector::resize could make it longer, of which g++ 12 warns
    words_.erase(words_.begin() + static_cast<std::ptrdiff_t>(size), words_.end());
  }
  constexpr void append(std::string_view more) { words_.insert(words_.end(), more.begin(), more.end()); }
  /// Returns the number of bytes of ^{ or of its like at the end of the words.
  [[nodiscard]] constexpr std::size_t opens_last() const noexcept {
    return words().ends_with("^{") ? 2 : words().ends_with("\xC3\x9Bp") ? 3 : 0;
  }
  /// Returns the markup at a byte. A brace is markup if it ends a style that began before some text.
  [[nodiscard]] constexpr std::optional<Markup> markup(std::string_view text, std::size_t i) const {
    bool const brace = text[i] == '}' && style_ != MarkupKind::ends && words_.size() != opened_;
    return brace ? std::optional{Markup{MarkupKind::ends, 1}} : markup_at(text, i);
  }
  /// Returns true for markup that ends a style that has not begun: it is text.
  [[nodiscard]] constexpr bool is_stray(Markup found) const noexcept {
    return found.kind == MarkupKind::ends && style_ == MarkupKind::ends;
  }
  /// Leaves a tag out.
  constexpr void leave_out(MarkupKind kind) {
    if (auto const open = opens_last(); open != 0 && !shut_.empty())
      shorten(words_.size() - open), one_word_ = one_before_;
    else
      append(shut_);
    tag_in_word_ = one_word_;
    style_ = kind;
    shut_ = {};
    opened_ = words_.size();
  }
  constexpr void add_lowered(int digit) {
    char bytes[4]{};
    append({bytes, encode(subscript(digit), bytes)});
  }
  /// Adds a character of ASCII or one byte of another. A first word with a tag in it was read as letters; without the
  /// tag a figure directly after it would be the count of a name, so a blank comes between them.
  constexpr void add(char c) {
    if (c == ' ' && words_.empty()) return; // &nbsp;
    bool const counts = is_digit(c) || c == '^' || static_cast<unsigned char>(c) >= 0x80;
    if (counts && tag_in_word_ && one_word_ && words_.size() > 1) words_.push_back(' ');
    one_word_ = one_word_ && is_latin_letter(c);
    if (is_digit(c) && style_ == MarkupKind::raises && shut_.empty())
      append(raised(c - '0').view());
    else if (is_digit(c) && style_ == MarkupKind::lowers)
      add_lowered(c - '0');
    else
      words_.push_back(c);
    if (c == '>' || c == ';') join_at_end();
  }
  /// Reads the tag or entity that an entity made (a text was escaped twice), or that was made where another was left out
  /// in the middle of it: the words will be written and read again.
  constexpr void join_at_end() {
    for (bool joined = true; joined && words_.size() > 1;) {
      auto const size = words_.size();
      auto const from = words().find_last_of("<&", size - 2);
      joined = false;
      if (from == std::string_view::npos || size - from > longest_tag) return;
      if (auto const entity = entity_at(words(), from); entity && entity->bytes == size - from) {
        shorten(from);
        if (entity->character != ' ' || from != 0) words_.push_back(entity->character);
        joined = entity->character == '>';
      } else if (auto const one = character_reference_at(words(), from);
                 one && !one->malformed && one->bytes == size - from) {
        char character[4]{};
        shorten(from);
        append({character, encode(one->value, character)});
      } else if (auto const tag = markup_at(words(), from); tag && tag->bytes == size - from && !is_stray(*tag)) {
        shorten(from);
        leave_out(tag->kind);
      }
    }
  }

public:
  constexpr explicit MarkupRemover(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
      auto const found = markup(text, i);
      bool const tag = text[i] == '<' || (text[i] == '}' && shut_.empty());
      if (found && tag && !is_stray(*found)) {
        i += found->bytes;
        leave_out(found->kind);
        continue;
      }
      if (found) {
        style_ = found->kind;
        one_before_ = one_word_;
        shut_ = found->kind == MarkupKind::ends ? "" : text[i] == '^' ? "}" : "\xC3\x9Bs";
      }
      auto const entity = entity_at(text, i);
      add(entity ? entity->character : text[i]);
      i += entity ? entity->bytes : 1;
    }
    for (auto size = words_.size();; size = words_.size()) { // markup at the end has nothing in it
      while (!words_.empty() && std::string_view{" \t\r\n"}.find(words_.back()) != std::string_view::npos)
        words_.pop_back();
      shorten(words_.size() - opens_last());
      if (words_.size() == size) break;
    }
  }
  /// Returns the words without markup.
  [[nodiscard]] constexpr std::string_view words() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return {words_.data(), words_.size()};
  }
  std::string_view words() && = delete; // it would look at what goes
};
/// Returns what `use` makes of the words as they are stored. Only a text with markup needs memory for them.
template <class Use> [[nodiscard]] constexpr auto with_stored_words(std::string_view text, Use use) {
  if (!may_have_markup(text)) return use(text);
  MarkupRemover const removed{text};
  return use(removed.words());
}
/// Returns the words as they are stored, without tags and entities, and without blanks at the end.
[[nodiscard]] inline std::string stored_words(std::string_view text) {
  if (!may_have_markup(text)) { // nothing to take out but blanks
    auto const from = text.find_first_not_of(' ');
    if (from == text.npos) return {};
    return std::string{text.substr(from, text.find_last_not_of(" \t\r\n") + 1 - from)};
  }
  MarkupRemover const removed{text};
  return std::string{removed.words()};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
