// SPDX-License-Identifier: MIT
/// Gatherings: a run is taken with its count, or with the count it shares with a later run, or with the eight leaves that
/// an omitted count stands for; and what is doubtful about it is told. A run that is wholly plain takes the short way of
/// collation/detail/scan_plain.hpp, which leads to the same result.
#pragma once

#include <bifolium/collation/detail/scan_numbers.hpp>
#include <bifolium/collation/detail/scan_state.hpp>
#include <bifolium/leaf/named_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> struct GatheringScanner : ScanState<Sink> {
  using State = ScanState<Sink>;
  using State::at, State::code, State::skip, State::fail, State::warn, State::add_run;
  using State::at_, State::depth_, State::error_, State::failed_, State::leaves_, State::gatherings_, State::runs_,
      State::last_, State::sink_, State::text_, State::dialect_, State::alphabet_;

  bool part_{false}; // a semicolon since the last run
  PlainRun plain_{};
  std::uint32_t plain_run_{0xFFFFFFFE}; // which run plain_ is
  bool last_is_plain_{false};           // last_ has no signatures yet: they are in plain_
  // the highest place reached by the plain capitals and the plain small letters
  std::int64_t highest_[2]{};
  // gatherings that share the next count
  std::size_t shared_until_{0}, barren_until_{0};
  Cycle shared_{};
  std::int64_t sharing_{0};

  using State::State;

  /// The last run as a whole, where it was plain and only its letters were kept.
  constexpr void spell_out_last() {
    if (!last_is_plain_) return;
    last_is_plain_ = false;
    last_.first = Signature::letter(plain_.first, plain_.first_multiple, dialect_.letters);
    last_.last = plain_.ranged ? Signature::letter(plain_.last, plain_.last_multiple, dialect_.letters) : last_.first;
    last_.leaves = Cycle{plain_.leaves};
    last_.first_inferred = last_.last_inferred = last_.imperfect = false;
    last_.unsigned_throughout = depth_ > 0;
  }
  /// (-A1) behind a plain run that has the gathering A; false leaves it to parenthesis().
  constexpr bool plain_deletion() {
    if (plain_run_ + 1 != runs_) return false;
    auto const found = PlainScanner{text_, at_}.scan_deletion();
    if (found.end == 0 || is_small(found.letter) != is_small(plain_.first) || found.leaf < 1 ||
        found.leaf > plain_.leaves)
      return false;
    auto const rank = [&](char letter, std::uint32_t multiple) {
      return (std::int64_t{multiple} - 1) * alphabet_.size() + alphabet_.place(small_letter(letter) - 'a' + 1);
    };
    auto const index = rank(found.letter, found.multiple) - rank(plain_.first, plain_.first_multiple);
    if (!alphabet_.has(small_letter(found.letter) - 'a' + 1) || index < 0 || index >= last_.gatherings) return false;
    auto const from = at_ + 1 + decode(text_, at_ + 1).bytes;
    if (!this->take_out({{runs_ - 1, index}, gatherings_ - last_.gatherings + index, plain_.leaves}, found.leaf, from,
                        found.end - 1))
      return true; // and failed_ says so
    leaves_ -= 1;
    sink_.plain_deletion({runs_ - 1, index}, found.leaf);
    at_ = found.end;
    return true;
  }
  /// The plain run at this place, if it is one and nothing before it bears on it; false leaves it to gathering().
  constexpr bool plain_gathering() {
    if (sharing_ != 0 || shared_until_ > at_ || (!last_is_plain_ && last_.first.series() != 0)) return false;
    auto const found = PlainScanner{text_, at_}.scan(dialect_.flat_counts);
    if (found.end == 0) return false;
    auto const letter = [](char c) { return small_letter(c) - 'a' + 1; };
    if (!alphabet_.has(letter(found.first)) || !alphabet_.has(letter(found.last))) return false;
    auto const in_small_letters = is_small(found.first);
    if (in_small_letters != is_small(found.last)) return false;
    auto const size = alphabet_.size();
    auto const first = (std::int64_t{found.first_multiple} - 1) * size + alphabet_.place(letter(found.first));
    auto const last = (std::int64_t{found.last_multiple} - 1) * size + alphabet_.place(letter(found.last));
    auto& highest = highest_[in_small_letters ? 1 : 0];
    bool const new_part = part_ && runs_ > 0;
    // a backward run, one written A-A (which is longer than its mark), a letter met before: the full scanner says so
    if (last < first || (found.ranged && last == first) || (!new_part && first <= highest)) return false;
    if (new_part && is_small(at(found.end + 1)) && is_small(at(found.end + 2)))
      return false; // words may follow: ; K8 blank
    auto const sum = checked_add(leaves_, (last - first + 1) * found.leaves);
    if (!sum) return false;
    if (new_part) highest_[0] = highest_[1] = 0;
    highest = last;
    plain_ = found;
    plain_run_ = runs_;
    last_is_plain_ = true;
    last_.gatherings = last - first + 1;
    last_.begins_part = new_part;
    part_ = false;
    leaves_ = *sum;
    this->known_.remember_plain(runs_, gatherings_, last_.gatherings, found.leaves, at_);
    gatherings_ += last_.gatherings;
    ++runs_;
    at_ = found.end;
    sink_.plain_run(found, last_.gatherings, new_part, depth_ > 0, dialect_.letters);
    return true;
  }
  constexpr bool gathering(bool unsigned_first = false) {
    Element e;
    auto const from = at_;
    if (!ElementScanner{*this}.scan(from, e)) {
      if (e.problem != Problem::none) return fail(e.problem, from, e.end);
      return fail(e.first.problem == Problem::no_signature ? Problem::unknown_mark : e.first.problem, e.first.end,
                  e.first.end + 12,
                  e.first.problem == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple}
                                                                : std::int64_t{Signature::longest_text});
    }
    if (!e.count.found() && e.first.signature.mark() == Mark::number) part_numbers(e);
    Run run;
    run.first = e.first.signature;
    run.last = e.last.signature;
    run.gatherings = e.gatherings;
    run.first_inferred = e.first.inferred || unsigned_first;
    run.last_inferred = e.single || e.gatherings == 1 ? run.first_inferred : e.last.inferred;
    run.unsigned_throughout = depth_ > 0;
    run.begins_part = part_ && runs_ > 0;
    part_ = false;
    keep_series(run);
    if (!count(e, run)) return false;
    at_ = e.end;
    doubts(e, run);
    return add_run(run, from, from, e.end);
  }
  /// 1-210 312: where the numbers go on from the run before, they say where the count begins.
  constexpr void part_numbers(Element& e) {
    if (!dialect_.flat_counts || dialect_.omitted == Omitted::eight || e.first.inferred || !is_digit(at(e.from)))
      return;
    bool const known = runs_ > 0 && last_.last.mark() == Mark::number && !last_.last.is_quoted();
    auto found = NumberScanner{*this}.scan(e.from, known ? last_.last.multiple() + 1 : 1, known);
    if (found.leaves == 0 && known && part_) found = NumberScanner{*this}.scan(e.from, 1, false);
    if (found.leaves == 0) return;
    e.first.signature = Signature::number(found.first);
    e.last.signature = Signature::number(found.last);
    e.gatherings = std::int64_t{found.last} - found.first + 1;
    e.single = !found.ranged;
    e.count.cycle = Cycle{found.leaves};
    e.end = found.end;
    e.by_sequence = true;
  }
  constexpr bool count(Element& e, Run& run) {
    if (e.count.found()) {
      if (e.count.problem != Problem::none)
        return fail(e.count.problem, e.from, e.count.end,
                    e.count.problem == Problem::cycle_too_long ? std::int64_t{Cycle::most_terms}
                                                               : std::int64_t{most_leaves_in_gathering});
      run.leaves = e.count.cycle;
      if (e.single && e.count.hyphen) { // m1-3: leaves 1 to 3 of one gathering
        auto const a = run.leaves.term(0), b = run.leaves.term(run.leaves.size() - 1);
        if (run.leaves.size() == 2 && a < b) {
          run.leaves = Cycle{b - a + 1};
          warn(Problem::leaves_read_as_count, e.from, e.end, b - a + 1);
        }
      }
      if (sharing_ > 0 && shared_until_ >= e.end && run.leaves.size() > 1) run.leaves = run.leaves.turned(sharing_);
      if (e.end >= shared_until_) sharing_ = 0;
      if (e.apart) warn(Problem::count_apart, e.from, e.end);
      return true;
    }
    if (auto const named = named_leaves(run.first); e.single && named.count > 0) {
      run.leaves = Cycle{named.count};
      return true;
    }
    if (shared_until_ <= e.end) {
      shared_until_ = 0;
      sharing_ = 0;
      bool const only_bracket = dialect_.omitted != Omitted::next;
      if (e.end >= barren_until_ && !(only_bracket && depth_ == 0)) {
        auto const shared = ElementScanner{*this}.shared(e.end, only_bracket);
        shared_ = shared.cycle;
        shared_until_ = shared.until;
        barren_until_ = shared.reached;
      }
    }
    if (shared_until_ > e.end) {
      run.leaves = shared_.turned(sharing_);
      if (shared_.size() == 1) run.leaves = shared_;
      sharing_ += run.gatherings;
      return true;
    }
    if (dialect_.omitted == Omitted::eight) {
      run.leaves = Cycle{8};
      warn(Problem::count_supplied, e.from, e.end, 8);
      return true;
    }
    bool const digits = is_digit(at(e.end));
    if (digits) return fail(Problem::flat_count, e.from, e.end + 3);
    return fail(run.first.mark() == Mark::number && e.end - e.from > 1 ? Problem::flat_numbers : Problem::no_leaf_count,
                e.from, e.end);
  }
  /// A raised figure rules the rest of its series: ²a-b⁸ c⁶ - unless the main series goes on at just this letter.
  constexpr void keep_series(Run& run) {
    if (run.first.is_latin() && run.first.series() == 0 && last_.first.series() != 0 && !run.begins_part &&
        run.first.duplicate() == Duplicate::none && run.first.beside() == Beside::nothing) {
      auto const as_last = run.first.in_series(last_.last.series());
      if (as_last.same_series_as(last_.last) && run.first.rank(alphabet_) == last_.last.rank(alphabet_) + 1 &&
          highest_[run.first.mark() == Mark::small_letter ? 1 : 0] + 1 != run.first.rank(alphabet_)) {
        run.first = as_last;
        run.last = run.last.in_series(as_last.series());
      }
    }
  }
  /// A letter of the main series that the letters so far have reached.
  [[nodiscard]] constexpr bool comes_again(Run const& run) const {
    return run.first.is_latin() && run.first.series() == 0 && run.first.duplicate() == Duplicate::none &&
           run.first.beside() == Beside::nothing &&
           run.first.rank(alphabet_) <= highest_[run.first.mark() == Mark::small_letter ? 1 : 0];
  }
  constexpr void doubts(Element const& e, Run const& run) {
    if (run.begins_part) highest_[0] = highest_[1] = 0;
    for (std::size_t i = 0; i < run.leaves.size(); ++i)
      if (run.leaves.term(i) % 2 != 0 && run.leaves.term(i) != 1) warn(Problem::odd_gathering, e.from, e.end);
    for (std::size_t i = 0; i < run.leaves.size(); ++i)
      if (run.leaves.term(i) > thick_gathering) warn(Problem::very_thick_gathering, e.from, e.end, run.leaves.term(i));
    if (run.leaves.size() > 1 && run.gatherings % static_cast<std::int64_t>(run.leaves.size()) != 0 && e.count.found())
      warn(Problem::alternation_over_odd_run, e.from, e.end, run.gatherings);
    if (!e.single) {
      if (run.gatherings == 1) warn(Problem::run_of_one, e.from, e.end);
      if (e.first.glyph_outside || e.last.glyph_outside) warn(Problem::letter_not_in_alphabet, e.from, e.end);
    } else if (e.first.glyph_outside && (run.first.letter_number() == Alphabet::w || comes_again(run)))
      warn(Problem::letter_not_in_alphabet, e.from, e.end);
    if (e.first.flat_prefix) warn(Problem::duplicate_read_flat, e.from, e.end);
    if (e.by_sequence) warn(Problem::numbers_read_by_sequence, e.from, e.end);
    if (e.read_flat) warn(Problem::series_read_flat, e.from, e.end);
    if (run.first.is_latin() && run.first.series() == 0 && run.first.duplicate() == Duplicate::none &&
        run.first.beside() == Beside::nothing) {
      auto& highest = highest_[run.first.mark() == Mark::small_letter ? 1 : 0];
      if (comes_again(run)) warn(Problem::series_starts_again, e.from, e.end);
      auto const reached = run.last.rank(alphabet_);
      highest = reached > highest ? reached : highest;
    }
  }
  /// The bare name of a symbol with a count: par⁴. It is a name, although the brackets are missing.
  constexpr bool named(std::size_t end, CountScan const& count) {
    if (end - at_ > Signature::longest_text) return fail(Problem::mark_too_long, at_, end, Signature::longest_text);
    Run run;
    run.first = run.last = Signature::text(Mark::name, text_.data() + at_, end - at_);
    run.leaves = Cycle{count.cycle.term(0)};
    run.unsigned_throughout = depth_ > 0;
    run.begins_part = part_ && runs_ > 0;
    part_ = false;
    warn(Problem::name_without_brackets, at_, count.end);
    if (!add_run(run, at_, at_, count.end)) return false;
    this->known_.remember_name(runs_ - 1, end - at_);
    at_ = count.end;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
