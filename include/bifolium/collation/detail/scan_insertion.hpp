// SPDX-License-Identifier: MIT
/// What stands behind the plus of an insertion: 1, 8*, χ1.2, χ1,2, *C1, A⁸, "c3". A figure alone is a number of leaves,
/// one with a star the place; behind a name a figure is a leaf and a raised figure makes it a gathering.
#pragma once

#include <bifolium/collation/detail/leaf_name.hpp>
#include <bifolium/collation/detail/scan_state.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class InsertionScanner {
  ScanState<Sink>& book_;

  /// Leaves without a name of their own, of one piece of paper, +1.2, or each by itself, +1,2: 1 has been read, and a list
  /// goes on from it.
  constexpr void join_listed(std::size_t& i, std::size_t end, ScannedChange& change) const {
    auto k = i;
    int leaves = 1;
    char const joint = k < end ? book_.at(k) : '\0';
    if (joint != '.' && joint != ',') return;
    while (k + 1 < end && book_.at(k) == joint && book_.at(k + 1) == '1' + leaves && leaves < 9) ++leaves, k += 2;
    char const c = k < end ? book_.at(k) : ')';
    if (leaves == 1 || is_digit(c) || c == '.' || c == '+' || c == '*' || c == '=') return; // 2+1: another leaf
    i = k;
    change.added = leaves;
    if (joint == '.') change.joined = ScannedChange::Joined::conjugate;
  }

public:
  constexpr explicit InsertionScanner(ScanState<Sink>& book) noexcept : book_{book} {}

  /// Reads from byte `i`, before `end`, what is inserted into `target` behind leaf `after`; -1 when no leaf was named.
  /// `fills`: it takes the place of a leaf that has gone.
  constexpr bool scan(std::size_t& i, std::size_t end, Target const& target, int after, bool fills, std::size_t from,
                      ScannedChange& change) {
    change.kind = ScannedChange::Kind::insertion;
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
    if (digits != i && !is_latin_letter(behind) && behind != '^' && behind != '<' &&
        (behind != '[' || book_.at(digits + 1) == '=') && static_cast<unsigned char>(behind) < 0x80) {
      auto const value = figure();
      if (value < 1 || value > most_leaves_in_gathering) return book_.fail(Problem::change_not_understood, from, end);
      if (behind == '*') {
        ++i;
        change.place_named = true;
        if (after < 0) after = value;
        change.name_leaf = value;
      } else {
        change.added = value;
        if (value == 1) join_listed(i, end, change);
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
        change.joined = ScannedChange::Joined::gathering;
        change.added = count.cycle.term(0);
        i = count.end;
      } else if (scan.signature.mark() == Mark::number && !scan.signature.is_quoted()) {
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
          change.joined = conjugate ? ScannedChange::Joined::conjugate : ScannedChange::Joined::apart;
        }
        if (i + 1 < end && change.added == 1 && is_dash(book_.code(i))) { // χ1-4
          auto const next = i + decode(book_.view(), i).bytes;
          if (next < end && is_digit(book_.at(next))) {
            i = next;
            previous = figure();
            if (previous <= first) return book_.fail(Problem::change_not_understood, from, i);
            change.added = previous - first + 1;
          }
        }
        if (change.added == 1 && first % 2 == 0 && book_.dialect().flat_counts)
          book_.warn(Problem::inserted_leaf_or_gathering, from, i, first);
        if (first < 1 || previous > most_leaves_in_gathering)
          return book_.fail(Problem::change_not_understood, from, end);
      }
      if (after < 0) book_.warn(Problem::place_not_stated, from, i), after = target.leaves;
    }
    if (after > target.leaves) return book_.fail(Problem::no_such_leaf, from, i, target.leaves);
    change.leaf = after;
    bool const disjunct = change.named && change.joined == ScannedChange::Joined::apart;
    if (change.added > 1 && after == target.leaves && !fills && !disjunct)
      book_.warn(Problem::pair_after_last_leaf, from, i);
    if (!book_.add_leaves(change.added, from, i)) return false;
    if (change.joined == ScannedChange::Joined::gathering) ++book_.gatherings_inserted_;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
