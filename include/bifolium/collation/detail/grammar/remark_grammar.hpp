// SPDX-License-Identifier: MIT
/// Reads words about a leaf that are not in parentheses: A-K⁸; K8 blank. Without the parentheses only the words show where the
/// remark begins, since a leaf is written as a gathering of so many leaves is. A remark is a note, with a warning, because it is
/// not sure where it ends.
#pragma once

#include <bifolium/collation/detail/grammar/stated_numbers.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class RemarkGrammar : protected StatedNumbers<Sink> {
protected:
  using Base = StatedNumbers<Sink>;
  using Base::Base;
  using Base::warn, Base::text_, Base::at, Base::cursor, Base::word, Base::c_, Base::leaf_name, Base::is_word,
      Base::after_word;

  /// Reads words about a leaf that are not in parentheses: A-K⁸; K8 blank. Returns false if there are none.
  constexpr bool remark() {
    auto const from = c_.token.from;
    if (at(from) == '(' && (at(from + 1) == '-' || static_cast<unsigned char>(at(from + 1)) == 0xE2))
      return false;     // (−K8)
    auto figure = from; // K8 and a word: most text here is neither
    while (figure - from < 47 && (is_latin_letter(at(figure)) || is_digit(at(figure)) || at(figure) == '-')) ++figure;
    // A-K, in eights: words after a comma are not about the leaf before it, unless it is a list
    bool const ends = at(figure) == ',' || at(figure) == ';' || at(figure) == ':';
    bool const list = at(figure) == ',' && may_be_leaf(this->after_blanks(figure + 1));
    if (ends && !list && this->is_blank_at(figure + 1)) return false;
    while (figure < text_.size() && figure - from < 48 && !this->is_blank_at(figure)) ++figure;
    auto const next = this->after_blanks(figure);
    bool const sign = at(next) == '&' && this->is_blank_at(next + 1);
    bool const article = at(next) == 'a' && this->is_blank_at(next + 1); // B2 a cancel
    if (figure == from || (!list && !sign && !article && (!is_small(at(next)) || !is_small(at(next + 1)))))
      return false;
    auto const size = static_cast<std::uint32_t>(text_.size());
    bool const opens = at(from) == '(' && figure - from < 48;
    if (opens && text_.substr(from, figure - from).find(')') == text_.npos) return false; // (last leaf blank)
    auto const name = leaf_name(c_, size);
    if (!name.found || !name.gathering_named || name.leaf < 1) return false;
    auto const target = this->find(name.key);
    if (!target || name.leaf > target->leaves) return false;
    auto c = cursor(name.end);
    auto const range = this->range_end(c, size, name);
    if (range.found) c = cursor(range.end);
    bool const several = take_joined_leaves(c, list) || range.found;
    auto const w = word(c);
    bool const words = c.token.spaced && !w.empty() && is_small(w[0]) && (article || is_word(c.token.from)) &&
                       !this->is_range_word(w) && w != "and";
    bool const of_several =
        is_blank_word(w) || is_wanting_word(w) || w == "are" || w == "both" || cancel_word(w) != CancelWord::none;
    if (!words || (several && !of_several)) return false;
    for (; !c.ended(); c.take()) {
      auto const& t = c.token;
      if (is_separator(t) || t.is(TokenKind::open_round) || t.is(TokenKind::close_round) ||
          t.is(TokenKind::open_square) || t.is(TokenKind::close_square))
        break;
    }
    if (this->signs(c.token.from).cancels(c_, c.token.from).said != CancelWord::none) { // B2 a cancel
      warn(Problem::change_outside_parentheses, from, c.token.from);
      c_ = c;
      return this->changes(from, c.token.from);
    }
    if (article) return false;
    c_ = c;
    if (this->leaves_wanting(from, c.token.from)) return true;
    this->note(from, c.token.from, ChangeForm::Separator::opens, {}, true);
    return true;
  }
  /// Reads a remark after a dash: A-K⁸ -- K8 blank. Returns false if there is none.
  constexpr bool dashed_remark() {
    auto const before = c_;
    while (c_.at(TokenKind::dash)) c_.take();
    if (remark()) return true;
    c_ = before;
    return false;
  }

private:
  /// Returns true if a leaf may begin at this byte, after a comma: 8, E8.
  [[nodiscard]] constexpr bool may_be_leaf(std::uint32_t i) const noexcept {
    return is_digit(at(i)) || (is_latin_letter(at(i)) && is_digit(at(i + 1)));
  }
  /// Takes the leaves that are joined to one before them: A1 and E8 blank; E7, 8 wanting if it is a `list`. Returns true if
  /// there are any. Longer lists are not taken: they would be looked at again from each of their leaves.
  [[nodiscard]] constexpr bool take_joined_leaves(TokenCursor& c, bool list) {
    constexpr int longest_list = 32;
    auto const end = static_cast<std::uint32_t>(text_.size());
    for (int taken = 0; taken < longest_list; ++taken) {
      auto next = c;
      if ((is_separator(c.token) && !(list && c.at(TokenKind::comma))) || !this->take_joint(next, end))
        return taken > 0;
      auto const name = leaf_name(next, end);
      if (!name.found || name.whole || name.leaf < 1) return taken > 0;
      auto const after = cursor(name.end);
      auto const unit = is_blank_word(word(after)) && word(after) != "Bl" ? after_word(after) : after;
      if (!name.gathering_named && is_unit_of_leaves(word(unit))) return taken > 0; // K8, 2 blank leaves; K8, 80 Bl.
      auto const range = this->range_end(after, end, name);
      c = range.found ? cursor(range.end) : after;
    }
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
