// SPDX-License-Identifier: MIT
/// Reads gatherings that are numbered in Roman numerals. I-K⁸ is a run of letters and I-II⁸ a run of numbers. So the
/// numerals must begin with I or continue such a run, and one end must have two letters or more; I-V¹⁰ is a run of
/// numbers if VI follows, and otherwise of letters, with a doubt. There is always a warning.
#pragma once

#include <bifolium/collation/detail/grammar/joint_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class RomanRunGrammar : protected JointGrammar<Sink> {
protected:
  using Base = JointGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::begun, Base::last_, Base::part_, Base::dialect_, Base::at, Base::c_, Base::roman_,
      Base::after_word, Base::take_count, Base::shared_until_, Base::word, Base::begin;

  /// Reads a run that is numbered in Roman numerals: I-II¹⁰, iii². Returns false if there is none.
  constexpr bool roman_run() {
    bool const may_begin = (!begun() || part_) && (c_.token.value | 0x20U) == 'i';
    if (!roman_ && !may_begin) return false;
    auto const first = numeral(c_);
    if (first.value == 0) return false;
    auto const from = c_.token.from;
    auto c = after_word(c_);
    auto last = first;
    if (c.touches(TokenKind::dash)) {
      c.take();
      last = numeral(c);
      if (last.value <= first.value || is_small(at(from)) != is_small(at(c.token.from))) return false;
      c = after_word(c);
    }
    bool const continues = roman_ && begun() && !part_ && last_.last.multiple + 1 == first.value;
    bool const begins = first.value == 1 && last.value > 1 && (!begun() || part_);
    if (!continues && !begins) return false;
    bool const may_be_letters = !continues && last.letters < 2; // I-V
    auto count = take_count(c, dialect_.flat_counts);
    if (!count.found() && c.at(TokenKind::close_square)) { // [I-II]⁸
      auto p = c;
      p.take();
      count = take_count(p, dialect_.flat_counts);
      if (count.sound()) shared_until_ = count.end;
    }
    if (!count.sound()) return false;
    if (may_be_letters && !goes_on_after(c, last.value)) return false;
    FoundRun run;
    run.first = SignatureKey::of(Mark::number, 0, first.value);
    run.last = SignatureKey::of(Mark::number, 0, last.value);
    run.gatherings = std::int64_t{last.value} - first.value + 1;
    run.leaves = count.cycle;
    begin(run);
    warn(Problem::roman_numbers, from, count.end);
    this->doubt_counts(run.leaves, run.gatherings, true, from, count.end);
    c_ = c;
    if (!this->add_run(run, from, count.end)) return false;
    roman_ = true;
    return true;
  }

private:
  struct Numeral {
    std::uint32_t value{}; // 0 if there is none
    std::size_t letters{};
  };
  /// Returns true if the next numeral is the next number, of two letters or more.
  [[nodiscard]] constexpr bool goes_on_after(TokenCursor c, std::uint32_t value) const noexcept {
    while (is_separator(c.token)) c.take();
    auto const next = numeral(c);
    return next.value == value + 1 && next.letters > 1;
  }
  /// Returns the letters at the cursor if together they are a Roman numeral.
  [[nodiscard]] constexpr Numeral numeral(TokenCursor const& c) const noexcept {
    auto const w = word(c);
    auto const found = roman_numeral(w);
    if (!found || found->bytes != w.size() || found->value > 9999) return {};
    return {static_cast<std::uint32_t>(found->value), w.size()};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
