// SPDX-License-Identifier: MIT
/// Reads a run of gatherings that is inserted: (A3+a-b⁴). It is one insertion for each of them, at the same place, so that each
/// can be named. A dash may also be the minus of a change: A1+a -b4 inserts a and deletes b4 if the formula has a gathering b.
///
///   inserted run = signature , dash , signature , count | "[" , signature , dash , signature , "]" , count ;
#pragma once

#include <bifolium/collation/detail/grammar/lacking_grammar.hpp>
#include <bifolium/collation/detail/scan/inserted_run_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class InsertedRunGrammar : protected LackingGrammar<Sink> {
protected:
  using Base = LackingGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::text_, Base::dialect_, Base::cursor;

  constexpr bool not_understood(ChangeState const& s, std::uint32_t from) {
    return fail(Problem::change_not_understood, from, s.end);
  }
  /// Takes a-b⁴ or [a-b]⁴, gatherings that are inserted together. Returns false if there is no run: A1+a -b4 inserts a
  /// and deletes leaf b4 if the formula has a gathering b.
  constexpr bool take_run(ChangeState const& s, TokenCursor& c, FoundElement& run) {
    if (!dash_before_separator(c.token.from, s.end)) return false;
    InsertedRunReader const reader{text_.substr(0, s.end), dialect_};
    auto p = c;
    FoundElement found;
    bool taken = reader.take(p, found);
    if (!taken && c.at(TokenKind::open_square)) {
      p = c;
      taken = reader.take_in_brackets(p, found);
    }
    if (!taken) return false;
    if (found.first_counted && found.gatherings == 1) return false; // a⁴-a4: the gathering lacks a leaf
    bool const spaced = this->is_blank_at(found.first.end);
    if ((spaced || found.problem != Problem::none) && this->find(found.last.key)) return false;
    c = p;
    run = found;
    run.end = c.token.from;
    return true;
  }
  /// Checks a run as RunGrammar does, and that it can be inserted.
  constexpr bool check_run(FoundElement const& run) {
    if (run.problem != Problem::none) return fail(run.problem, run.from, run.end);
    if (!run.count.found()) return fail(Problem::no_leaf_count, run.from, run.end);
    if (!this->check_count(run)) return false;
    if (is_hebrew_alphabet(run)) return fail(Problem::order_not_known, run.from, run.end);
    if (run.gatherings > most_inserted_gatherings)
      return fail(Problem::too_many_inserted, run.from, run.end, most_inserted_gatherings);
    doubt_inserted(run);
    return true;
  }
  constexpr void doubt_inserted(FoundElement const& e) {
    FoundRun run;
    run.first = e.first.key, run.last = e.last.key;
    run.gatherings = e.gatherings;
    if (e.apart) warn(Problem::count_apart, e.from, e.end);
    this->doubt_counts(e.count.cycle, e.gatherings, true, e.from, e.end);
    this->doubt_marks(e, run, false);
  }

private:
  /// Returns true if a dash comes before the next separator. Without one there is no run, and most insertions have
  /// none.
  [[nodiscard]] constexpr bool dash_before_separator(std::uint32_t from, std::uint32_t end) const noexcept {
    bool name = false; // within [par.]
    for (auto c = cursor(from, end); !c.ended() && !c.at(TokenKind::plus); c.take()) {
      if (c.at(TokenKind::dash)) return true;
      if (!name && is_separator(c.token)) return false;
      name = c.at(TokenKind::open_square) || (name && !c.at(TokenKind::close_square));
    }
    return false;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
