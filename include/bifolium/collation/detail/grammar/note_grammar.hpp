// SPDX-License-Identifier: MIT
/// Reads words in a parenthesis after a run. They are stored unchanged. What they say is not counted, so there is a
/// warning if they look like a change. There is none for "K8 blank" and for words that do not concern the leaves.
#pragma once

#include <bifolium/collation/detail/grammar/added_leaves.hpp>
#include <bifolium/collation/detail/words/change_signs.hpp>
#include <bifolium/collation/detail/words/stored_words.hpp>
#include <bifolium/collation/detail/words/words_of_change.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

template <class Sink> class NoteGrammar : protected AddedLeaves<Sink> {
protected:
  using Base = AddedLeaves<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::sink_, Base::runs_, Base::text_, Base::at, Base::cursor, Base::word,
      Base::is_word, Base::leaf_name, Base::take_count, Base::not_understood, Base::within, Base::letters_,
      Base::deleted_before, Base::blanks_said, Base::named_in_words;
  using typename Base::Blanks, typename Base::DeletedBefore;
  using Kind = Change::Kind;

  /// Stores the words from byte `from` to `to`, without the blanks after them, with a doubt if they look like a change or
  /// are `doubted` for another reason, unless the doubt is `told` already. Returns false if they are not UTF-8.
  constexpr bool note(std::uint32_t from, std::uint32_t to, ChangeForm::Separator separator, DeletedBefore deleted = {},
                      bool doubted = false, bool told = false) {
    for (auto k = from; k < to;) {
      auto const c = static_cast<unsigned char>(text_[k]) < 0x80 ? CodePoint{0, 1} : decode(text_, k);
      if (c.malformed) return fail(Problem::not_utf8, k, k);
      k += c.bytes;
    }
    // (<sup>-A1), (<sup>r</sup>+1): without the markup it would be a change
    auto const text = text_.substr(from, to - from);
    bool const item = separator != ChangeForm::Separator::opens;
    auto const is_change = [&](std::string_view words) {
      return ChangeSigns{words, this->dialect_, WordsInText{words}}.are_changes(item);
    };
    if (may_have_markup(text) && with_stored_words(text, is_change))
      return fail(Problem::change_not_understood, from, to);
    while (to > from && blank_before(text_, to) != 0) to -= static_cast<std::uint32_t>(blank_before(text_, to));
    bool const changes = looks_like_change(from, to, deleted); // it keeps the leaves that the words call blank
    if (!told && (changes || doubted)) warn(Problem::text_not_read, from, to);
    FoundChange change;
    change.kind = Kind::note;
    change.gathering = this->last_gathering().gathering;
    change.from = from;
    change.to = to;
    change.form = {runs_.size() - 1, separator, false};
    return this->add_change(change);
  }
  /// Returns the reader that tells changes from words, for the text before byte `end`.
  [[nodiscard]] constexpr ChangeSigns signs(std::uint32_t end) {
    return {text_.substr(0, end), this->dialect_, words_in_text()};
  }
  /// Returns the kinds of words that the text has. They are looked for when the first parenthesis asks.
  [[nodiscard]] constexpr WordsInText words_in_text() {
    if (!looked_) has_ = WordsInText{text_}, looked_ = true;
    return has_;
  }
  /// Returns true if the text contains ±. Without it no letter outside parentheses begins a change (A3 ±), so letters
  /// need not be looked at.
  [[nodiscard]] constexpr bool has_cancel_sign() noexcept {
    if (!looked_for_sign_) has_sign_ = text_.find("\xC2\xB1") != text_.npos, looked_for_sign_ = true;
    return has_sign_;
  }
  /// Forgets what the text has: it is another text now.
  constexpr void look_again() noexcept { looked_ = looked_for_sign_ = false; }
  /// Reads words up to the next comma or semicolon. They begin with a letter or figure, not with a quotation mark
  /// ('1').
  constexpr bool words(ChangeState& s, std::uint32_t from, bool signed_here, bool doubted = false) {
    auto const& t = s.c.token;
    bool const quoted = t.is(TokenKind::quote) && s.any && closes_quotation(s);
    bool const wordy =
        quoted || t.is(TokenKind::letter) || t.is(TokenKind::figure) || t.is(TokenKind::open_round) ||
        (t.is(TokenKind::open_square) && is_latin_letter(at(t.to))) || !linking_word_at(text_, t.from).empty() ||
        (static_cast<unsigned char>(at(t.from)) > 0x80 && !(t.is(TokenKind::quote) && opens_quotation(t.value)));
    if (signed_here || (s.any && ((!s.separated && !quoted) || !wordy))) return not_understood(s, from);
    // −E7 to F2: the end of a range is not a remark
    if (auto const w = word(s.c); s.list && this->is_range_word(w)) {
      auto const last = leaf_name(within(s, t.from + static_cast<std::uint32_t>(w.size())), s.end);
      if (last.found && last.leaf > 0) return not_understood(s, from);
    }
    // (A1 + 8 blank): the plus may have been meant for "and"
    doubted = doubted || (s.after(Kind::insertion) && !s.previous.named && t.spaced &&
                          is_digit(at(this->before_blanks(t.from) - 1)) && !says_leaves(word(s.c)));
    auto const begin = t.from;
    auto to = s.end;
    int open = 0; // a bracket must be closed within the words
    for (auto c = s.c; !c.ended() && open >= 0; c.take()) {
      if (c.at(TokenKind::comma) || c.at(TokenKind::semicolon)) {
        to = c.token.from;
        break;
      }
      open += c.at(TokenKind::open_square) ? 1 : c.at(TokenKind::close_square) ? -1 : 0;
    }
    if (open != 0) return not_understood(s, from);
    return item_of_words(s, begin, to, doubted);
  }
  /// Reads "K7,8 blank" after a semicolon, or after a comma if K7 is deleted already: a remark about leaves that a list
  /// before it has named. Returns false if something else is there.
  constexpr bool blanks_after_list(ChangeState& s) {
    if (!s.any || (!s.semicolon && !names_deleted(s))) return false;
    auto const begin = s.c.token.from;
    auto to = s.end;
    for (auto c = s.c; !c.ended(); c.take()) {
      bool const change = c.at(TokenKind::comma) && (is_loss(c.ahead()) || c.ahead().is(TokenKind::plus));
      if (!change && !c.at(TokenKind::semicolon)) continue;
      to = c.token.from;
      break;
    }
    bool const clear = with_stored_words(text_.substr(begin, to - begin), [&](std::string_view words) {
      bool deleted = true;
      auto const said = BlankWords{words, letters_}.read([&](BlankNamed const& one) {
        if (s.semicolon) return;
        auto const of = one.gathering_named ? named_in_words(one.gathering, words, begin, to) : std::nullopt;
        deleted = deleted && of && one.leaf > 0 && one.leaf <= of->leaves && this->is_out(*of, one.leaf);
      });
      return said == BlanksSaid::leaves && deleted;
    });
    return clear && item_of_words(s, begin, to);
  }
  /// Stores what has the sign of a change, but changes no leaf of the formula, as words with a doubt. In (−J) and (+W) it is
  /// the letter that the alphabet has not or has, and not a gathering; in (E4 + 2 plates) no leaves are added, since plates are
  /// not leaves of the gatherings.
  constexpr bool no_leaf_changed(ChangeState& s, std::uint32_t from, std::uint32_t to) {
    return item_of_words(s, from, to, true);
  }
  constexpr bool resolve(NamedLeaf const& name, Target& target, std::uint32_t from) {
    if (name.gathering_named) {
      auto const found = this->find(name.key);
      if (!found) {
        bool const inserted = this->is_inserted(name.key);
        return fail(inserted ? Problem::change_in_insertion : Problem::no_such_gathering, from, name.end);
      }
      target = *found;
      bool const last = target.gathering.run + 1 == runs_.size(); // directly after its run it is meant
      if (target.other_series && !last) warn(Problem::name_of_several, from, name.end);
    }
    if (name.leaf > target.leaves || (name.leaf < 1 && !name.whole))
      return fail(Problem::no_such_leaf, from, name.end, target.leaves);
    if (name.letter_l) warn(Problem::letter_read_as_figure, from, name.end);
    return true;
  }
  /// Returns true if the words say that a signature is not used which the formula counts: A-K⁸ (E omitted), A-K⁸ (no E).
  [[nodiscard]] constexpr bool omits_gathering(std::uint32_t from, std::uint32_t to) {
    if (!words_in_text().omission) return false;
    bool omits = false, named = false;
    for (auto c = cursor(from, to); !c.ended(); c.take()) {
      auto const w = word_at(text_.substr(0, to), c.token.from);
      omits = omits || is_word_of_omission(w);
      auto const next = w.empty() ? c : cursor(c.token.from + w.size(), to);
      omits = omits ||
              (equal_in_any_case(w, "not") && equal_in_any_case(word_at(text_.substr(0, to), next.token.from), "used"));
      bool const no = equal_in_any_case(w, "no");
      auto const name = leaf_name(no ? next : c, to);
      // without J, U and W, a book has the signatures of the formula
      bool const other =
          std::string_view{"IJUVWijuvw"}.find(at(no ? next.token.from : c.token.from)) != std::string_view::npos;
      bool const counted = name.found && name.gathering_named && !other && this->find(name.key);
      if (counted && no) return true;
      named = named || counted;
      if (!w.empty()) c = cursor(c.token.from + w.size() - 1, to);
    }
    return omits && named;
  }
  [[nodiscard]] static constexpr bool ends_item(Token const& t) noexcept {
    switch (t.kind) {
    case TokenKind::end:
    case TokenKind::comma:
    case TokenKind::semicolon:
    case TokenKind::point:
    case TokenKind::question:
    case TokenKind::equals:
    case TokenKind::open_square:
    case TokenKind::plus:
      return true;
    default:
      return is_loss(t);
    }
  }

private:
  WordsInText has_{};
  bool looked_{false}, has_sign_{false}, looked_for_sign_{false};

  /// Returns true if the leaf at the cursor is named with its gathering, and deleted or cancelled already.
  [[nodiscard]] constexpr bool names_deleted(ChangeState const& s) {
    if (!s.list) return false;
    auto const name = leaf_name(s.c, s.end);
    if (!name.found || !name.gathering_named || name.leaf < 1) return false;
    auto const target = this->find(name.key);
    return target && name.leaf <= target->leaves && this->is_out(*target, name.leaf);
  }
  /// Stores words that are an item of a parenthesis.
  constexpr bool item_of_words(ChangeState& s, std::uint32_t begin, std::uint32_t to, bool doubted = false) {
    auto const separator = s.any ? ChangeForm::Separator::comma : ChangeForm::Separator::opens;
    if (!note(begin, to, separator, deleted_before(s), doubted)) return false;
    s.previous = FoundChange{};
    s.previous.kind = Kind::note;
    s.deletions = 0;
    s.any = s.after_words = true;
    s.c = within(s, to);
    return true;
  }
  [[nodiscard]] static constexpr bool says_leaves(std::string_view w) noexcept {
    return w == "leaf" || w == "leaves" || w == "unsigned" || w == "unnumbered";
  }
  /// Returns true if the quotation marks are closed within the parenthesis: (±A7 '*A7').
  [[nodiscard]] constexpr bool closes_quotation(ChangeState const& s) const {
    auto c = s.c;
    auto const open = c.token.value;
    for (c.take(); !c.ended() && !c.at(TokenKind::comma) && !c.at(TokenKind::semicolon); c.take())
      if (c.at(TokenKind::quote) && (c.token.value == open || !opens_quotation(c.token.value))) return true;
    return false;
  }
  /// Returns true for words that are only a leaf, or contain a sign or a word of change: they may be a change in
  /// another notation. Also for words about blank leaves if it is not clear which leaves are meant.
  [[nodiscard]] constexpr bool looks_like_change(std::uint32_t from, std::uint32_t to, DeletedBefore deleted) {
    auto const blanks = blanks_said(from, to, deleted);
    if (blanks == Blanks::clear) return this->says_of_gatherings(from, to, true); // K8 blank: most words say this
    if (blanks == Blanks::unclear || blanks == Blanks::with_change) return true;
    auto const begin = cursor(from, to);
    if (auto const name = leaf_name(begin, to); name.found) {
      auto c = cursor(name.end, to);
      if (name.whole) static_cast<void>(take_count(c, false)); // b⁴?
      if (c.at(TokenKind::question) && (!name.whole || c.token.from != name.end)) c.take();
      while (this->take_joint(c, to)) { // 2.8
        auto const next = leaf_name(c, to);
        if (!next.found) break;
        c = cursor(next.end, to);
        if (this->is_star(c)) c.take(); // C3, C3*
      }
      if (c.ended()) return true;
    }
    if (auto c = begin; !c.at(TokenKind::letter) && !c.is_flat_figure()) { // «G4: a sign that was misread
      while (!c.ended() && !c.at(TokenKind::letter) && !c.is_flat_figure()) c.take();
      if (auto const name = leaf_name(c, to); name.found && name.leaf > 0) return true;
    }
    auto const words = text_.substr(from, to - from);
    if (may_be_raised(words))
      for (TokenCursor c{words}; !c.ended(); c.take())
        if (c.token.is_raised_figure()) return true; // alternate B⁴
    return says_change(words) || omits_gathering(from, to) || this->says_of_gatherings(from, to, false) ||
           this->says_of_leaves(from, to) || this->adds_leaves(from, to);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
