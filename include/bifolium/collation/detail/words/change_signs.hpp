// SPDX-License-Identifier: MIT
/// Decides from the text alone whether the contents of a parenthesis are changes or words: they are changes if they
/// begin with a sign (−A8), a word for one (lacks A8) or a leaf before a sign (A3+1), or if such a text comes after
/// words (A1 blank, −A8). Words are asked a second time as they will be written, without markup: what is written must
/// be read the same.
#pragma once

#include <bifolium/collation/detail/words/cancel_words.hpp>
#include <bifolium/collation/detail/words/words_of_change.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ChangeSigns : LeafReader {
  CancelReader cancels_;
  WordsInText has_;

public:
  /// `has`: the kinds of words that the text has.
  constexpr ChangeSigns(std::string_view text, Dialect dialect, WordsInText has) noexcept
      : LeafReader{text, dialect}, cancels_{text, dialect}, has_{has} {}

  /// Returns true at the sign of a change.
  [[nodiscard]] static constexpr bool begins_with_sign(TokenCursor const& in) noexcept {
    bool const equated = in.at(TokenKind::open_square) && in.ahead().is(TokenKind::equals);
    return in.at(TokenKind::plus) || in.at(TokenKind::equals) || is_loss(in.token) || equated;
  }
  /// Returns true if ± comes after a leaf or after its list: (A3 ±), (B1.8±). The cursor is after the first leaf.
  [[nodiscard]] static constexpr bool sign_follows(TokenCursor const& leaf) {
    auto c = leaf;
    // only a short list, because this is called for each leaf of a list
    for (int n = 0; n < 16 && (c.at(TokenKind::point) || c.at(TokenKind::comma) || c.is_flat_figure()); ++n) c.take();
    if (!c.at(TokenKind::plus_minus)) return false;
    c.take();
    return c.ended() || c.at(TokenKind::comma) || c.at(TokenKind::semicolon);
  }
  /// Returns true for a word that replaces the sign of a deletion.
  [[nodiscard]] static constexpr bool is_loss_before(std::string_view w) noexcept {
    auto const says = absence_word(w).says;
    return says == Absence::without || says == Absence::wanting;
  }
  /// Returns true if a word replaces the sign of a deletion: less K8, wants A1.
  [[nodiscard]] constexpr bool begins_with_loss(TokenCursor const& c, std::uint32_t end) const {
    return has_.absence && is_loss_before(word(c)) &&
           leaf_name(cursor(c.token.from + word(c).size(), end), end).leaf > 0;
  }
  /// Returns true if a plus joins leaves that are called blank: F7+8 blank, F7 + F8 blank. It does where a leaf of the same
  /// series follows, or a figure that is higher; "A3+2 blank leaves" and "A3+χ1 blank" are insertions. (common practice, no
  /// source)
  [[nodiscard]] constexpr bool joins_blanks(TokenCursor const& in, std::uint32_t end) const {
    auto name = leaf_name(in, end);
    auto c = cursor(name.found ? name.end : end, end);
    if (name.leaf < 1 || !c.at(TokenKind::plus)) return false;
    while (c.at(TokenKind::plus) || take_joint(c, end)) {
      if (c.at(TokenKind::plus)) c.take();
      auto const next = leaf_name(c, end);
      bool const named = next.gathering_named && name.gathering_named && same_series(name.key, next.key, text_);
      if (next.leaf < 1 || !(named || (!next.gathering_named && next.leaf > name.leaf))) return false;
      name.leaf = next.leaf;
      if (named) name.key = next.key;
      c = cursor(next.end, end);
    }
    for (auto w = word_at(text_.substr(0, end), c.token.from); is_linking_word(w) || is_doubting_word(w);
         w = word_at(text_.substr(0, end), c.token.from))
      c = cursor(c.token.from + w.size(), end);
    if (c.at(TokenKind::open_round) || c.at(TokenKind::open_square)) c.take();
    auto const blank = word(c);
    auto const unit = word(cursor(c.token.from + blank.size(), end));
    return is_blank_word(blank) && !equal_in_any_case(unit, "leaf") && !equal_in_any_case(unit, "leaves");
  }
  /// Reads words that say that leaves are cancels: A1 a cancel.
  [[nodiscard]] constexpr CancelWords cancels(TokenCursor const& c, std::uint32_t end) const {
    return has_.cancel ? cancels_.find(c, end) : CancelWords{};
  }
  /// Returns true if the contents of a parenthesis, from `in` to `end`, are changes.
  [[nodiscard]] constexpr bool are_changes(TokenCursor const& in, std::uint32_t end) const {
    if (begins_with_sign(in) || begins_with_loss(in, end)) return true;
    auto const name = leaf_name(in, end);
    return begins_with_change(in, name, end) || (name.found && changes_follow(cursor(name.end, end), end));
  }
  /// Returns true if these words are changes, all of them or, of an item in a parenthesis, their beginning.
  [[nodiscard]] constexpr bool are_changes(bool item) const {
    auto const end = static_cast<std::uint32_t>(text_.size());
    auto const in = cursor(0);
    if (!item) return are_changes(in, end);
    return begins_with_sign(in) || begins_with_change(in, leaf_name(in, end), end);
  }

private:
  /// Returns true at a leaf before the sign of a change, and at words about cancels. `name` is the leaf at the cursor, if
  /// there is one.
  [[nodiscard]] constexpr bool begins_with_change(TokenCursor const& in, NamedLeaf const& name,
                                                  std::uint32_t end) const {
    auto const next = cursor(name.found ? name.end : end, end);
    return (next.at(TokenKind::plus) && !joins_blanks(in, end)) || next.at(TokenKind::equals) ||
           (name.found && sign_follows(next)) || cancels(in, end).said != CancelWord::none;
  }
  /// Returns true if a change comes after words: (A1 blank, −A8).
  [[nodiscard]] constexpr bool changes_follow(TokenCursor c, std::uint32_t end) const {
    while (!c.ended()) {
      bool const separator = c.at(TokenKind::comma) || c.at(TokenKind::semicolon);
      c.take();
      if (!separator) continue;
      if (auto const name = leaf_name(c, end); name.found && name.leaf > 0) { // A1 blank, A3+1
        auto const plus = cursor(name.end, end);
        if (plus.touches(TokenKind::plus) && !plus.ahead().spaced && !joins_blanks(c, end)) return true;
        if (cancels(c, end).said != CancelWord::none) return true; // A1 blank, A8 a cancel
      }
      if (!is_loss(c.token) && !c.at(TokenKind::plus)) continue;
      auto sign = c;
      sign.take();
      if (leaf_name(sign, end).found) return true;
    }
    return false;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
