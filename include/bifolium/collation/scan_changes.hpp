// SPDX-License-Identifier: MIT
/// What stands in a parenthesis behind a run: leaves deleted (-A4), cancelled (±B2) or inserted (A3+χ1.2), what a leaf is
/// identical with [=B2], and words. A list goes on with the last sign: (-A1,4). A leaf that the gathering does not have,
/// or that has gone already, is an error; words are kept as words.
#pragma once

#include <bifolium/collation/leaf_name.hpp>
#include <bifolium/collation/scan_state.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class ChangeScanner {
  ScanState<Sink>& book_;

public:
  constexpr explicit ChangeScanner(ScanState<Sink>& book) noexcept : book_{book} {}

  /// The inside of a parenthesis that changes leaves, from byte `i` to `end`.
  constexpr bool changes(std::size_t i, std::size_t end) {
    auto const begin = i;
    auto current = book_.last_gathering();
    auto op = Change::Kind::note;
    bool any = false, list = false, after_words = false;
    Change previous{};
    auto const send = [&](Change change) {
      change.stands_after = book_.runs_ - 1;
      if (!any) change.joint = Change::Joint::opens;
      book_.sink_.change(change);
      previous = change;
      any = true;
    };
    while (i < end) {
      auto joint = Change::Joint::apart;
      bool separated = !any, spaced = false;
      for (;;) {
        auto const next = book_.skip(i);
        if (next != i) {
          spaced = true;
          i = next;
          separated = true; // blanks part the leaves of a list as commas do
          continue;
        }
        char const c = book_.at(i);
        if (c == '.' && i < end) joint = Change::Joint::conjugate;
        if (c != ',' && c != ';' && c != '.' && !(c == '&' && any && book_.at(i + 1) == ' ')) {
          if (!book_.is_any(i, {"and "})) break;
          i += 3;
          separated = true;
          continue;
        }
        separated = true;
        ++i;
      }
      if (i >= end) break;
      if (after_words) joint = Change::Joint::apart; // a full stop is one of the words
      after_words = false;
      auto const from = i;
      auto const c = book_.code(i);
      // the sign of the change
      bool sign = true;
      if (c == 0xB1)
        op = Change::Kind::cancel, i += 2;
      else if (book_.is_any(i, {"+-", "-+"}))
        op = Change::Kind::cancel, i += 2;
      else if (book_.is_any(i, {"+/-", "-/+"}))
        op = Change::Kind::cancel, i += 3;
      else if (is_minus(c))
        op = Change::Kind::deletion, i += decode(book_.view(), i).bytes;
      else if (c == '+')
        op = Change::Kind::insertion, ++i;
      else if (c == '=')
        op = Change::Kind::identity, ++i;
      else if (c == '[' && book_.at(book_.skip(i + 1)) == '=')
        op = Change::Kind::identity, i = book_.skip(i + 1) + 1;
      else
        sign = false;
      i = book_.skip(i);

      if (sign && op == Change::Kind::identity) {
        auto const name = leaf_name(book_, i, end);
        if (!name.found) return book_.fail(Problem::change_not_understood, from, end);
        Change change;
        change.kind = op;
        change.joint = joint;
        change.named = name.gathering_named;
        change.name = name.signature;
        change.name_leaf = name.leaf;
        change.of_change = any;
        change.gathering = any ? previous.gathering : current.gathering;
        i = name.end;
        change.doubtful = book_.at(i) == '?' && i < end;
        if (change.doubtful) ++i;
        if (book_.at(i) == ']' && i < end) ++i;
        send(change);
        list = false;
        continue;
      }
      if (sign && op == Change::Kind::insertion) {
        bool const placed = any && (previous.kind == Change::Kind::deletion || previous.kind == Change::Kind::cancel);
        if (!insertion(i, end, current,
                       !placed              ? -1
                       : previous.leaf == 0 ? current.leaves
                                            : previous.leaf,
                       joint, send, from))
          return false;
        list = false;
        continue;
      }
      auto const name = leaf_name(book_, i, end);
      if (name.found && !sign && book_.at(book_.skip(name.end)) == '+' && name.end < end &&
          !book_.is_any(book_.skip(name.end), {"+-", "+/-"})) {
        // A3+1: the leaf it follows, then what is inserted
        auto target = current;
        if (!resolve(name, target, i, name.end)) return false;
        i = book_.skip(book_.skip(name.end) + 1);
        op = Change::Kind::insertion;
        if (!insertion(i, end, target, name.whole ? target.leaves : name.leaf, joint, send, from)) return false;
        current = target;
        list = false;
        continue;
      }
      bool const leaves = op == Change::Kind::deletion || op == Change::Kind::cancel;
      if (name.found && leaves && (sign || (list && separated)) && (!name.whole || sign)) {
        if (!resolve(name, current, i, name.end)) return false;
        if (!one_leaf(op, current, name, joint, previous, any && list && !sign, i, send)) return false;
        i = name.end;
        // -D2-4: to the last of several
        if (auto const to = book_.skip(i); !name.whole && is_dash(book_.code(to)) &&
                                           is_digit(book_.at(book_.skip(to + decode(book_.view(), to).bytes)))) {
          auto const last = leaf_name(book_, book_.skip(to + decode(book_.view(), to).bytes), end);
          if (last.found && !last.gathering_named && last.leaf > name.leaf) {
            for (auto leaf = name.leaf + 1; leaf <= last.leaf; ++leaf) {
              auto next = last;
              next.leaf = leaf;
              if (!resolve(next, current, i, last.end)) return false;
              if (!one_leaf(op, current, next, Change::Joint::apart, previous, false, i, send)) return false;
            }
            i = last.end;
          }
        }
        if (book_.at(i) == '?' && i < end) ++i;
        list = true;
        continue;
      }
      // words: they go to the next comma or semicolon
      if (sign || (any && !separated && !spaced)) return book_.fail(Problem::change_not_understood, from, end);
      auto stop = i;
      while (stop < end && book_.at(stop) != ',' && book_.at(stop) != ';') ++stop;
      note(i, stop, any ? Change::Joint::apart : Change::Joint::opens, any);
      any = after_words = true;
      i = stop;
    }
    if (!any) return book_.fail(Problem::change_not_understood, begin, end);
    return true;
  }
  constexpr void note(std::size_t from, std::size_t to, Change::Joint joint, bool within = true) {
    while (to > from && (book_.at(to - 1) == ' ' || book_.at(to - 1) == '\n' || book_.at(to - 1) == '\r' ||
                         book_.at(to - 1) == '\t'))
      --to;
    Change change;
    change.kind = Change::Kind::note;
    change.joint = within ? joint : Change::Joint::opens;
    change.stands_after = book_.runs_ - 1;
    change.gathering = book_.last_gathering().gathering;
    book_.sink_.note(change, from, to);
  }

private:
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
  template <class Send>
  constexpr bool one_leaf(Change::Kind kind, Target const& target, LeafName const& name, Change::Joint joint,
                          Change const& previous, bool in_list, std::size_t from, Send&& send) {
    Change change;
    change.kind = kind;
    change.joint = joint;
    change.gathering = target.gathering;
    change.leaf = name.leaf;
    if (!book_.take_out(target, name.leaf, from, name.end)) return false;
    if (in_list && previous.kind == kind && previous.gathering == target.gathering && !name.whole) {
      bool const pair = previous.leaf + name.leaf == target.leaves + 1;
      if (pair && joint == Change::Joint::apart && !name.gathering_named)
        book_.warn(Problem::joined_leaves_listed_apart, from, name.end);
      if (!pair && joint == Change::Joint::conjugate) book_.warn(Problem::apart_leaves_listed_joined, from, name.end);
    }
    if (kind == Change::Kind::deletion && !book_.add_leaves(-(name.whole ? target.leaves : 1), from, name.end))
      return false;
    send(change);
    return true;
  }
  /// What stands behind the plus: 1, 8*, χ1.2, χ1,2, *C1, A⁸, "c3". `after` is -1 when no leaf was named.
  template <class Send>
  constexpr bool insertion(std::size_t& i, std::size_t end, Target const& target, int after, Change::Joint joint,
                           Send&& send, std::size_t from) {
    Change change;
    change.kind = Change::Kind::insertion;
    change.joint = joint;
    change.gathering = target.gathering;
    change.added = 1;
    auto const figure = [&] {
      int value = 0;
      for (; i < end && is_digit(book_.at(i)); ++i)
        value = value > most_leaves_in_gathering ? value : value * 10 + (book_.at(i) - '0');
      return value;
    };
    auto digits = i;
    while (digits < end && is_digit(book_.at(digits))) ++digits;
    char const behind = digits < end ? book_.at(digits) : '\0';
    if (digits != i && !is_latin_letter(behind) && (behind != '[' || book_.at(digits + 1) == '=') &&
        static_cast<unsigned char>(behind) < 0x80) {
      auto const value = figure();
      if (value < 1 || value > most_leaves_in_gathering) return book_.fail(Problem::change_not_understood, from, end);
      if (behind == '*') {
        ++i;
        change.place_named = true;
        if (after < 0) after = value;
        change.name_leaf = value;
      } else {
        change.added = value;
        if (after < 0) book_.warn(Problem::place_not_stated, from, i), after = target.leaves;
      }
    } else {
      auto const scan = book_.signatures(end).scan(i);
      if (!scan || is_plus(scan.signature)) return book_.fail(Problem::change_not_understood, from, end);
      change.named = true;
      change.name = scan.signature;
      i = scan.end;
      auto const count = CountScanner{book_.view().substr(0, end)}.scan(i, false, false);
      if (count.found()) {
        if (count.problem != Problem::none) return book_.fail(count.problem, from, count.end, most_leaves_in_gathering);
        change.joined = Change::Joined::gathering;
        change.added = count.cycle.term(0);
        i = count.end;
      } else if (scan.signature.mark() == Mark::number && !scan.signature.is_quoted() && !scan.inferred) {
        if (scan.signature.multiple() > most_leaves_in_gathering)
          return book_.fail(Problem::change_not_understood, from, end);
        change.added = static_cast<int>(scan.signature.multiple()); // a figure alone is how many
        change.named = false;
        change.name = Signature{};
      } else if (is_digit(book_.at(i)) && i < end) {
        auto const first = figure();
        auto previous = first;
        change.name_leaf = first;
        while (i + 1 < end && (book_.at(i) == '.' || book_.at(i) == ',') && is_digit(book_.at(i + 1))) {
          auto const conjugate = book_.at(i) == '.';
          ++i;
          auto const next = figure();
          if (next != previous + 1) return book_.fail(Problem::change_not_understood, from, i);
          previous = next;
          ++change.added;
          change.joined = conjugate ? Change::Joined::conjugate : Change::Joined::apart;
        }
        if (first < 1 || previous > most_leaves_in_gathering)
          return book_.fail(Problem::change_not_understood, from, end);
      }
      if (after < 0) book_.warn(Problem::place_not_stated, from, i), after = target.leaves;
    }
    if (after > target.leaves) return book_.fail(Problem::no_such_leaf, from, i, target.leaves);
    change.leaf = after;
    if (change.added > 1 && after == target.leaves && change.joined == Change::Joined::conjugate)
      book_.warn(Problem::pair_after_last_leaf, from, i);
    if (!book_.add_leaves(change.added, from, i)) return false;
    if (change.joined == Change::Joined::gathering) ++book_.gatherings_inserted_;
    send(change);
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
