// SPDX-License-Identifier: MIT
/// A signature found at a place of a text: its key (leaf/signature_key.hpp), the bytes it takes, and what its reader
/// saw of how it was written.
#pragma once

#include <bifolium/core/problem.hpp>
#include <bifolium/leaf/markup.hpp>
#include <bifolium/leaf/signature_key.hpp>
#include <bifolium/leaf/token_cursor.hpp>

namespace bifolium {
inline namespace v0 {

/// A signature found in a text, or why there was none.
struct FoundSignature {
  SignatureKey key{};   ///< the signature
  std::uint32_t from{}; ///< position of its first byte
  std::uint32_t end{};  ///< position of the byte after it; if there is no signature, of the byte that is wrong
  bool inferred{};      ///< true if it is in square brackets: the gathering is unsigned and the signature inferred
  bool flat_prefix{};   ///< true if a π or χ that is not raised comes before another mark
  bool glyph_outside{}; ///< true for J, U or W in an alphabet without it
  bool multiplied{};    ///< true if a number comes before the mark: 2A, which may mean ²A
  bool capitals{};      ///< true if the letter is doubled in capitals: AA, not Aa
  bool one_letter{};    ///< true for a Hebrew number of one letter
  bool count_inside{};  ///< true if a raised number follows inside the quotation marks
  Problem problem{Problem::no_signature}; ///< the reason why there is no signature; Problem::none if there is one
  /// Returns true if there is a signature.
  constexpr explicit operator bool() const noexcept { return problem == Problem::none; }
};

namespace detail {

/// What every reader of marks has: the text, the alphabet, and the words for having found a mark or not.
class MarkReader {
protected:
  std::string_view text_; ///< the text that is read
  Letters letters_;       ///< letters used beside the 23

public:
  /// The text must outlive the reader. `added`: letters used beside the 23.
  constexpr MarkReader(std::string_view text, Letters added) noexcept : text_{text}, letters_{added} {}

protected:
  /// The byte at that place; a zero byte after the end of the text.
  [[nodiscard]] constexpr char at(std::size_t i) const noexcept { return i < text_.size() ? text_[i] : '\0'; }
  /// The token touches what comes before it and is that letter, on the line.
  static constexpr bool is_letter(TokenCursor const& c, char glyph) noexcept {
    return c.touches(TokenKind::letter) && !c.token.raised() && static_cast<char>(c.token.value) == glyph;
  }
  /// No signature, and why.
  static constexpr FoundSignature fail(Problem problem, std::uint32_t at) noexcept {
    FoundSignature found;
    found.problem = problem;
    found.from = found.end = at;
    return found;
  }
  /// A signature and the bytes it takes.
  static constexpr FoundSignature done(SignatureKey key, std::uint32_t from, std::uint32_t end) noexcept {
    FoundSignature found;
    found.key = key;
    found.from = from;
    found.end = end;
    found.problem = Problem::none;
    return found;
  }
  /// A symbol, name or printed mark: the text from `from` to `to`.
  constexpr FoundSignature text_mark(Mark mark, std::uint32_t from, std::uint32_t to, std::uint32_t end,
                                     std::uint32_t multiple) const noexcept {
    auto found = done(SignatureKey::of(mark, 0, multiple), from, end);
    found.key.text_from = from;
    found.key.text_size = static_cast<std::uint8_t>(to - from < 255 ? to - from : 255);
    detail::MarkText const words{text_.substr(from, to - from)};
    if (to - from > 254 || words.too_long() || words.size == 0) return fail(Problem::mark_too_long, from);
    std::string_view const plain{words.bytes, words.size};
    if (may_have_markup(plain)) // &amp;lt; and &lt;sup&gt; would be written &lt; and <sup>: another mark
      for (std::size_t i = 0; i < words.size; ++i)
        if (entity_at(plain, i) || markup_at(plain, i)) return fail(Problem::unknown_mark, from);
    bool const marked = may_have_markup(text_.substr(from, to - from));
    for (auto k = from; k < to;) {
      auto const c = static_cast<unsigned char>(text_[k]) < 0x80 ? CodePoint{0, 1} : decode(text_, k);
      if (c.malformed) return fail(Problem::not_utf8, k);
      if (marked && markup_at(text_, k)) return fail(Problem::unknown_mark, k);
      k += c.bytes;
    }
    return found;
  }
};

} // namespace detail

} // namespace v0
} // namespace bifolium
