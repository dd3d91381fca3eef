// SPDX-License-Identifier: MIT
/// What stands in a parenthesis behind a run: leaves deleted (-A4), cancelled (±B2) or inserted (A3+χ1.2), what a leaf is
/// identical with [=B2], and words. A list goes on with the last sign: (-A1,4). A leaf that the gathering does not have,
/// or that has gone already, is an error; words are kept as words, and warned of where they look like a change.
#pragma once

#include <bifolium/collation/detail/scan_insertion.hpp>
#include <bifolium/collation/detail/scan_note.hpp>
#include <bifolium/leaf/named_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class ChangeScanner {
  ScanState<Sink>& book_;
  std::size_t i_{0}, end_{0};
  Target current_{};                                  // the gathering that a figure alone speaks of
  ScannedChange::Kind op_{ScannedChange::Kind::note}; // the sign that holds for a list
  ScannedChange previous_{}, last_gone_{};            // the last change; the last deletion or cancel
  bool any_{false}, list_{false}, gone_{false}, after_words_{false};
  // what stood before the change that is read now
  ScannedChange::Joint joint_{};
  bool separated_{false}, spaced_{false}, semicolon_{false};

public:
  constexpr explicit ChangeScanner(ScanState<Sink>& book) noexcept : book_{book} {}

  /// The inside of a parenthesis that changes leaves, from byte `from` to `end`.
  constexpr bool changes(std::size_t from, std::size_t end) {
    i_ = from;
    end_ = end;
    current_ = book_.last_gathering();
    for (;;) {
      separators();
      if (i_ >= end_) break;
      if (!one_change()) return false;
    }
    return any_ || book_.fail(Problem::change_not_understood, from, end);
  }

private:
  constexpr void separators() {
    joint_ = ScannedChange::Joint::apart;
    separated_ = !any_;
    spaced_ = semicolon_ = false;
    for (;;) {
      auto const next = book_.skip(i_);
      if (next != i_) {
        spaced_ = separated_ = true; // blanks part the leaves of a list as commas do
        i_ = next;
        continue;
      }
      char const c = book_.at(i_);
      if (i_ >= end_) break;
      if (c == '.') joint_ = ScannedChange::Joint::conjugate;
      semicolon_ = semicolon_ || c == ';';
      std::size_t bytes = 1;
      if (c != ',' && c != ';' && c != '.') {
        bytes = any_ && book_.is_any(i_, {"& "})       ? 1U
                : any_ && book_.is_any(i_, {"&amp; "}) ? 5U
                : book_.is_any(i_, {"and "})           ? 3U
                                                       : 0U;
        if (bytes == 0) break;
      }
      separated_ = true;
      i_ += bytes;
    }
    if (after_words_) joint_ = ScannedChange::Joint::apart; // a full stop is one of the words
    after_words_ = false;
  }
  /// The sign of a change at this place: taken, and whether there was one.
  constexpr bool sign(ScannedChange::Kind& kind) {
    bool cancels = false;
    if (auto const bytes = book_.sign_of_loss(i_, cancels); bytes != 0)
      kind = cancels ? ScannedChange::Kind::cancel : ScannedChange::Kind::deletion, i_ += bytes;
    else if (book_.at(i_) == '+')
      kind = ScannedChange::Kind::insertion, ++i_;
    else
      return false;
    i_ = book_.skip(i_);
    return true;
  }
  constexpr void send(ScannedChange change) {
    change.stands_after = book_.runs_ - 1;
    if (!any_) change.joint = ScannedChange::Joint::opens;
    book_.sink_.change(change);
    previous_ = change;
    any_ = true;
    if (change.kind == ScannedChange::Kind::deletion || change.kind == ScannedChange::Kind::cancel)
      last_gone_ = change, gone_ = true;
  }
  /// Nothing more belongs to the item that ended at `k`.
  [[nodiscard]] constexpr bool ends_item(std::size_t k) const {
    k = book_.skip(k);
    char const c = k < end_ ? book_.at(k) : ',';
    return c == ',' || c == ';' || c == '.' || c == '?' || c == '=' || c == '[' || c == '+' ||
           is_minus(book_.code(k)) || book_.code(k) == 0xB1;
  }
  constexpr bool one_change() {
    auto const from = i_;
    bool const bracket = book_.at(i_) == '[' && book_.at(book_.skip(i_ + 1)) == '=';
    if (bracket || book_.at(i_) == '=') {
      i_ = book_.skip((bracket ? book_.skip(i_ + 1) : i_) + 1);
      return identity(from, bracket, 0);
    }
    auto kind = op_;
    bool const signed_here = sign(kind);
    if (signed_here && kind == ScannedChange::Kind::insertion) {
      // what fills the place of a leaf stands directly behind it: -B3+χ1
      if (!separated_ && previous_.kind == ScannedChange::Kind::insertion)
        return book_.fail(Problem::change_not_understood, from, end_);
      auto const after = !gone_ || previous_.kind == ScannedChange::Kind::insertion ? -1
                         : last_gone_.leaf == 0                                     ? current_.leaves
                                                                                    : last_gone_.leaf;
      return insertion(current_, after, after >= 0, from);
    }
    auto const name = of_named_leaves(leaf_name(book_, i_, end_));
    auto const behind = book_.skip(name.end);
    // (±D2, D3 blank): the second leaf has words of its own
    bool const remark = name.found && behind != name.end && behind < end_ && book_.is_word(behind) &&
                        !book_.is_any(behind, {"and ", "to ", "through "});
    bool const listed = list_ && separated_ && !signed_here && !remark;
    if (name.found && !signed_here && behind < end_) {
      // A3+1: the leaf it follows, then what is inserted; but the 8 of -A1.8 +χ1.2 belongs to the list
      bool const of_list = listed && !name.gathering_named && !spaced_;
      bool const plus = book_.at(behind) == '+' && !book_.is_any(behind, {"+-", "+/-"});
      if ((plus && !of_list) || (book_.at(behind) == '=' && !listed)) {
        if (!separated_) return book_.fail(Problem::change_not_understood, from, end_);
        auto target = current_;
        if (!resolve(name, target, i_, name.end)) return false;
        current_ = target;
        i_ = book_.skip(behind + 1);
        if (!plus) { // the leaf on the left; a gathering is one only if it has no other
          if (name.whole && target.leaves != 1) return book_.fail(Problem::change_not_understood, from, end_);
          return identity(from, false, name.whole ? 1 : name.leaf);
        }
        return insertion(target, name.whole ? target.leaves : name.leaf, false, from);
      }
    }
    bool const leaves = kind == ScannedChange::Kind::deletion || kind == ScannedChange::Kind::cancel;
    if (name.found && leaves &&
        (signed_here || (listed && (!name.whole || last_gone_.leaf == 0) && (!semicolon_ || ends_item(name.end)))))
      return list_of_leaves(kind, name, signed_here);
    // words: they go to the next comma or semicolon, and begin as words do (a quotation mark would begin a mark: '1')
    auto const c = book_.code(i_);
    bool const word =
        is_latin_letter(book_.at(i_)) || is_digit(book_.at(i_)) || c == '(' || (c > 0x80 && !opens_quotation(c));
    if (signed_here || (any_ && (!separated_ || !word))) return book_.fail(Problem::change_not_understood, from, end_);
    auto stop = i_;
    int open = 0; // brackets: one that does not close among its words would with what comes behind them
    while (stop < end_ && open >= 0 && book_.at(stop) != ',' && book_.at(stop) != ';') {
      open += book_.at(stop) == '[' ? 1 : book_.at(stop) == ']' ? -1 : 0;
      std::size_t bytes = 0; // the semicolon of &lt; parts nothing
      entity(book_.view(), stop, bytes);
      stop += bytes == 0 ? 1 : bytes;
    }
    if (open != 0) return book_.fail(Problem::change_not_understood, from, end_);
    if (stop > end_) stop = end_;
    auto const change = scan_note(book_, i_, stop, any_ ? ScannedChange::Joint::apart : ScannedChange::Joint::opens);
    if (!change) return false;
    previous_ = *change;
    any_ = after_words_ = true;
    i_ = stop;
    return true;
  }
  /// (±'gg3') behind 'gg3.4': a leaf of that, though it stands there as a mark.
  [[nodiscard]] constexpr LeafName of_named_leaves(LeafName name) const {
    if (!name.found || !name.whole || name.signature.mark() != Mark::printed) return name;
    auto const of = named_leaves(book_.last_.first), one = named_leaves(name.signature);
    auto const place = one.first - of.first;
    if (of.count < 2 || one.count != 1 || one.stem != of.stem || place < 0 || place >= of.count) return name;
    for (std::size_t k = 0; k < of.stem; ++k)
      if (name.signature.text()[k] != book_.last_.first.text()[k]) return name;
    name.signature = book_.last_.first;
    name.whole = false;
    name.leaf = place + 1;
    return name;
  }
  /// One leaf of a list, or the leaves to another: -D2-4.
  constexpr bool list_of_leaves(ScannedChange::Kind kind, LeafName const& name, bool signed_here) {
    op_ = kind;
    if (!resolve(name, current_, i_, name.end)) return false;
    if (!one_leaf(name, any_ && list_ && !signed_here)) return false;
    i_ = name.end;
    if (name.whole) { // ±B⁸: the whole gathering, with the count it has
      auto const count = CountScanner{book_.view().substr(0, end_)}.scan(i_, false, false);
      if (count.found() && count.problem == Problem::none && count.cycle.size() == 1 &&
          count.cycle.term(0) == current_.leaves)
        i_ = count.end;
    }
    auto const dash = book_.skip(i_);
    auto const to =
        dash < end_ && is_dash(book_.code(dash)) ? book_.skip(dash + decode(book_.view(), dash).bytes) : end_;
    if (!name.whole && to < end_ && is_digit(book_.at(to))) {
      auto const last = leaf_name(book_, to, end_);
      if (last.found && !last.gathering_named && last.leaf > name.leaf) {
        joint_ = ScannedChange::Joint::apart;
        for (auto next = last; next.leaf = previous_.leaf + 1, next.leaf <= last.leaf;) {
          if (!resolve(next, current_, i_, last.end)) return false;
          if (!one_leaf(next, false)) return false;
        }
        i_ = last.end;
      }
    }
    if (book_.at(i_) == '?' && i_ < end_) ++i_;
    list_ = true;
    return true;
  }
  constexpr bool resolve(LeafName const& name, Target& target, std::size_t from, std::size_t to) {
    if (name.gathering_named) {
      auto const found = book_.known_.find(book_, name.signature, book_.runs_, book_.last_);
      if (!found) return book_.fail(Problem::no_such_gathering, from, to);
      target = *found;
    }
    if (name.leaf > target.leaves || (name.leaf < 1 && !name.whole))
      return book_.fail(Problem::no_such_leaf, from, to, target.leaves);
    if (name.letter_l) book_.warn(Problem::letter_read_as_figure, from, to);
    return true;
  }
  constexpr bool one_leaf(LeafName const& name, bool in_list) {
    ScannedChange change;
    change.kind = op_;
    change.joint = any_ && previous_.kind == op_ ? joint_ : ScannedChange::Joint::apart;
    change.gathering = current_.gathering;
    change.leaf = name.leaf;
    change.doubtful = name.end < end_ && book_.at(name.end) == '?';
    if (!book_.take_out(current_, name.leaf, i_, name.end)) return false;
    if (in_list && previous_.kind == op_ && previous_.gathering == current_.gathering && !name.whole) {
      bool const pair = previous_.leaf + name.leaf == current_.leaves + 1;
      if (pair && joint_ == ScannedChange::Joint::apart && !name.gathering_named)
        book_.warn(Problem::joined_leaves_listed_apart, i_, name.end);
      if (!pair && joint_ == ScannedChange::Joint::conjugate)
        book_.warn(Problem::apart_leaves_listed_joined, i_, name.end);
    }
    if (op_ == ScannedChange::Kind::deletion && !book_.add_leaves(-(name.whole ? current_.leaves : 1), i_, name.end))
      return false;
    send(change);
    return true;
  }
  /// Behind the sign of equality: one leaf, or several in a list. `leaf` is that on the left of the sign, if one stands there.
  constexpr bool identity(std::size_t from, bool bracket, int leaf) {
    bool const of_change = leaf == 0 && any_ && previous_.kind != ScannedChange::Kind::note &&
                           (previous_.kind != ScannedChange::Kind::identity || previous_.of_change);
    if (!of_change) op_ = ScannedChange::Kind::identity, list_ = false;
    auto const gathering = of_change ? previous_.gathering : current_.gathering;
    for (bool first = true;; first = false) {
      auto const name = leaf_name(book_, i_, end_);
      bool const no_such_leaf = (name.leaf == 0 && !name.whole) || name.leaf > most_leaves_in_gathering;
      if (!name.found || no_such_leaf) return book_.fail(Problem::change_not_understood, from, end_);
      ScannedChange change;
      change.kind = ScannedChange::Kind::identity;
      change.joint = first ? ScannedChange::Joint::apart : joint_;
      change.named = name.gathering_named;
      change.name = name.signature;
      if (!first && !change.named) change.named = previous_.named, change.name = previous_.name;
      change.name_leaf = name.leaf;
      change.of_change = of_change;
      change.gathering = gathering;
      change.leaf = first ? leaf : 0;
      auto const at = i_;
      i_ = name.end;
      if (i_ < end_ && book_.at(i_) == '?') change.doubtful = true, ++i_;
      book_.identity_named(change, at, name.end);
      send(change);
      char const c = i_ < end_ ? book_.at(i_) : ')';
      if (c == ']' || (c != '.' && c != ',')) break;
      auto const next = book_.skip(i_ + 1);
      auto const more = leaf_name(book_, next, end_);
      bool const goes_on = more.found && (bracket || (!more.gathering_named && next == i_ + 1 && ends_item(more.end)));
      if (!goes_on) break;
      joint_ = c == '.' ? ScannedChange::Joint::conjugate : ScannedChange::Joint::apart;
      i_ = next;
    }
    if (bracket) i_ = book_.skip(i_);
    bool const closed = i_ < end_ && book_.at(i_) == ']';
    if (bracket && !closed) return book_.fail(Problem::bracket_not_closed, from, i_);
    if (closed) ++i_;
    if (auto const k = book_.skip(i_); k < end_ && (!ends_item(k) || book_.at(k) == '=')) // A=v 1
      return book_.fail(Problem::change_not_understood, from, end_);
    return true;
  }
  constexpr bool insertion(Target const& target, int after, bool fills, std::size_t from) {
    ScannedChange change;
    change.joint = ScannedChange::Joint::apart;
    if (!InsertionScanner<Sink>{book_}.scan(i_, end_, target, after, fills, from, change)) return false;
    op_ = ScannedChange::Kind::insertion;
    list_ = false;
    send(change);
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
