// SPDX-License-Identifier: MIT
/// Reads changes that are written in words: (M8 blank and wanting). There is always a warning, since the words may mean that
/// one copy lacks the leaf.
///
///   wanting = [ "?" ] , ( leaf , { join , leaf } | counted from the end ) , is wanting
///           | ( loss word | wanting word ) , [ [ "the" ] , blank word ] , ( counted from the end , [ blank word ] , [ leaf ]
///             | leaf , { join , leaf } ) , [ is wanting ] ;
///   counted from the end = [ "the" ] , ( "last" | "final" ) , [ number ] , [ leaf word ] ;
///   loss word = "less" | "minus" | "without" ;
///   is wanting = ( wanting word | "deleted" | "removed" | "excised" | blank word | "and" | "&" | "," | "?" | is )
///              , { is wanting } ;
///   wanting word = "want" | "wants" | "wanting" | "lack" | "lacks" | "lacking" ;
///
/// Leaves that are deleted already may be named again in words: A⁴(−A1) B-C⁴; lacking A1, presumably blank. This is kept as
/// a note; where the words name others too, lacking A1, B2, these are deleted. (common practice, no source)
#pragma once

#include <bifolium/collation/detail/grammar/change_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

template <class Sink> class WantingGrammar : protected ChangeGrammar<Sink> {
protected:
  using Base = ChangeGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::text_, Base::at, Base::cursor, Base::word, Base::leaf_name, Base::c_;
  using Kind = Change::Kind;

  /// Reads the contents of a parenthesis that says in words that leaves are wanting. Returns false if it says something
  /// else. `again`: it is read only if one of these leaves is deleted already. `listed`: leaves may follow a word of loss
  /// directly; otherwise this is a change, lacks A1, which changes() reads.
  constexpr bool leaves_wanting(std::uint32_t from, std::uint32_t end, bool again = false, bool listed = false) {
    if (!this->words_in_text().absence) return false;
    Wanting found;
    found.c = cursor(from, end);
    if (found.c.at(TokenKind::question)) found.doubtful = true, found.c.take();
    bool const lacks = ChangeSigns::is_loss_before(word(found.c)); // lacks the last leaf
    if (lacks) {
      found.c = past_word(found.c, word(found.c), end), take_blank_before(found, end);
      auto const leaves = after_leaf_word(found.c, end);
      listed = listed || leaves.token.from != found.c.token.from;
      found.c = leaves;
    }
    bool const signed_so = lacks && !again && !listed && found.blank_to == 0;
    if (!take_last(found, end, lacks) && (signed_so || !take_leaves(found, end))) return false;
    auto const words = found.c.token.from;
    if (!take_words(found, end, lacks)) return false;
    if (are_deleted(found)) return this->note(from, end, ChangeForm::Separator::opens, {}, true);
    if (again && !is_one_deleted(found)) return false;
    warn(Problem::wanting_read_as_deletion, from, end);
    if (!found.page.empty())
      warn(Problem::page_read_as_leaf, static_cast<std::uint32_t>(found.page.from),
           static_cast<std::uint32_t>(found.page.to));
    ChangeState s;
    s.end = end;
    for (std::size_t i = 0; i < found.all.size(); ++i) {
      auto const& one = found.all[i];
      auto const target = one.target();
      if (is_deleted(one)) continue; // it is said a second time
      if (!this->take_out(target, one.leaf, one.leaf, from, words)) return true;
      if (!this->add_leaves(-1, from, words)) return true;
      FoundChange change;
      change.kind = Kind::deletion;
      change.gathering = target.gathering;
      change.first = change.last = one.leaf;
      change.doubtful = found.doubtful;
      this->send(s, change, from, words);
    }
    if (found.blank_to != 0 && !this->failed_)
      this->note(found.blank_from, found.blank_to, ChangeForm::Separator::comma, this->deleted_before(s));
    return true;
  }

  /// Returns the cursor after a word, in a text that ends at byte `end`.
  [[nodiscard]] constexpr TokenCursor past_word(TokenCursor const& c, std::string_view w, std::uint32_t end) const {
    return cursor(c.token.from + w.size(), end);
  }
  /// Returns the cursor after "leaf" or "the leaves", if the name of a leaf follows: lacking leaves A1, B2.
  [[nodiscard]] constexpr TokenCursor after_leaf_word(TokenCursor const& begin, std::uint32_t end) const {
    auto c = begin;
    if (word(c) == "the") c = past_word(c, word(c), end);
    auto const w = word(c);
    if (w != "leaf" && w != "leaves") return begin;
    c = past_word(c, w, end);
    return leaf_name(c, end).leaf > 0 ? c : begin;
  }
  /// Returns true if a leaf of the book is named at the cursor and only a blank stands before it: lacking A1 B2.
  [[nodiscard]] constexpr bool is_leaf_beside(TokenCursor const& c, std::uint32_t end) {
    if (!c.token.spaced || c.token.raised() || c.is_flat_figure()) return false;
    auto const name = leaf_name(c, end);
    if (!name.found || !name.gathering_named || name.leaf < 1) return false;
    auto const of = this->find(name.key);
    return of && name.leaf <= of->leaves;
  }

private:
  struct Wanting {
    struct Leaf { // without initialisers, as SmallList requires
      std::int64_t index, ordinal;
      std::uint32_t run;
      int leaves, leaf;
      [[nodiscard]] constexpr Target target() const { return {{run, index}, ordinal, leaves, false}; }
    };
    TokenCursor c{};
    SmallList<Leaf, 64> all;
    std::uint32_t blank_from{}, blank_to{};
    TextSpan page{}; // the first page that is named in the place of a leaf
    bool doubtful{};

    constexpr void add(Target const& in, int leaf) {
      all.push_back({in.gathering.index, in.ordinal, in.gathering.run, in.leaves, leaf});
    }
  };

  /// Returns true if the leaf is deleted, and is no cancel.
  [[nodiscard]] constexpr bool is_deleted(typename Wanting::Leaf const& one) const {
    auto cancel = one.target();
    cancel.ordinal = this->as_cancelled(cancel.ordinal);
    return this->is_out(one.target(), one.leaf) && !this->is_out(cancel, one.leaf);
  }
  [[nodiscard]] constexpr bool is_one_deleted(Wanting const& found) const {
    for (std::size_t i = 0; i < found.all.size(); ++i)
      if (is_deleted(found.all[i])) return true;
    return false;
  }
  [[nodiscard]] constexpr bool are_deleted(Wanting const& found) const {
    for (std::size_t i = 0; i < found.all.size(); ++i)
      if (!is_deleted(found.all[i])) return false;
    return found.all.size() > 0;
  }
  /// Takes "the blank" before the leaves: lacks the blank K8.
  constexpr void take_blank_before(Wanting& found, std::uint32_t end) const {
    auto c = found.c;
    if (word(c) == "the") c = past_word(c, word(c), end);
    auto const w = word(c);
    if (!is_blank_word(w)) return;
    found.blank_from = c.token.from;
    found.blank_to = c.token.from + static_cast<std::uint32_t>(w.size());
    c = past_word(c, w, end);
    auto const leaf = word(c);
    found.c = leaf == "leaf" || leaf == "leaves" ? past_word(c, leaf, end) : c;
  }
  /// Takes "last leaf" or "last two leaves"; after "lacks" also "final blank leaf K8", where the leaf that is named is
  /// meant. Returns false if there is no such text.
  constexpr bool take_last(Wanting& found, std::uint32_t end, bool lacks) {
    auto& c = found.c;
    if (!c.at(TokenKind::letter)) return false;
    TextCursor text{text_.substr(0, end), c.token.from};
    auto const last = take_counted_leaves(text);
    auto const target = this->last_gathering();
    if (!last || last->first || last->leaves > target.leaves) return false;
    c = cursor(text.at(), end);
    if (lacks && last->leaves == 1) {
      take_blank_before(found, end);
      auto named = c;
      if (named.at(TokenKind::comma)) named.take();
      if (leaf_name(named, end).leaf > 0) return c = named, take_leaves(found, end);
    }
    for (int n = last->leaves; n-- > 0;) found.add(target, target.leaves - n);
    return true;
  }
  constexpr bool take_leaves(Wanting& found, std::uint32_t end) {
    auto& c = found.c;
    auto target = this->last_gathering();
    for (;;) {
      auto const name = leaf_name(c, end);
      if (!name.found || name.whole || name.leaf < 1) return found.all.size() > 0;
      if (name.gathering_named) {
        auto const named = this->find(name.key);
        if (!named) return false;
        target = *named;
      }
      auto const from = c.token.from;
      c = cursor(name.end, end);
      if (auto const page = this->take_page(c, name, end); page != 0 && found.page.empty()) found.page = {from, page};
      auto last = name.leaf;
      if (auto const to = this->range_end(c, end, name); to.found) last = to.leaf, c = cursor(to.end, end);
      if (last > target.leaves) return false;
      for (auto leaf = name.leaf; leaf <= last; ++leaf) found.add(target, leaf);
      auto next = c;
      if (!this->take_joint(next, end) && !is_leaf_beside(next, end)) return true;
      if (!leaf_name(next, end).found) return true;
      c = next;
    }
  }
  /// Takes the words after the leaves. Returns true if they say that the leaves are wanting, and perhaps blank.
  constexpr bool take_words(Wanting& found, std::uint32_t end, bool wanting) const {
    std::uint32_t both = 0; // where "both" stands, directly before
    bool doubting = false;  // "probably" stands directly before
    for (auto& c = found.c; !c.ended();) {
      auto const w = word(c);
      bool const stop = c.at(TokenKind::point) && c.ahead().is(TokenKind::end); // (K8 wanting.)
      if (stop || c.at(TokenKind::comma) || c.at(TokenKind::question) || this->is_and_sign(c.token)) {
        found.doubtful = found.doubtful || c.at(TokenKind::question);
        c.take();
        continue;
      }
      auto const says = absence_word(w).says;
      bool const gone = says == Absence::wanting || says == Absence::removed;
      bool const blank = is_blank_word(w), perhaps = is_doubting_word(w);
      bool const both_of_them = w == "both" || w == "all";
      if (!gone && !blank && !perhaps && w != "and" && !is_linking_word(w)) return false;
      if (gone && doubting) found.doubtful = true; // and not in "presumably blank, lacking"
      doubting = perhaps;
      if (blank) {
        found.blank_from = both != 0 ? both : c.token.from;
        found.blank_to = c.token.from + static_cast<std::uint32_t>(w.size());
      }
      both = both_of_them ? c.token.from : 0;
      wanting = wanting || gone;
      c = past_word(c, w, end);
      if (blank && c.touches(TokenKind::point)) found.blank_to = c.token.to, c.take(); // bl.
      if (perhaps && c.touches(TokenKind::point)) c.take();                            // prob.
    }
    return wanting;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
