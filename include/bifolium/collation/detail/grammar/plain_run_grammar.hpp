// SPDX-License-Identifier: MIT
/// Reads plain runs byte by byte: A-K⁸, 2B4, L². A run is plain if nothing before or after it changes what it means,
/// and if nothing in it is doubtful. Most runs are plain. RunGrammar reads all others; it could read plain ones with
/// the same result, but takes longer.
#pragma once

#include <bifolium/collation/detail/resolve/resolver.hpp>
#include <bifolium/collation/detail/scan/scan_plain.hpp>
#include <bifolium/collation/detail/scan/shared_count.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class PlainRunGrammar : protected Resolver<Sink>, protected SharedCount {
protected:
  using Base = Resolver<Sink>;
  using Base::fail, Base::warn, Base::begun, Base::last_, Base::part_, Base::dialect_, Base::failed_;
  using SharedCount::alphabet_, SharedCount::text_, SharedCount::at;

  TokenCursor c_;     // position of the grammar
  int depth_{0};      // number of open brackets around runs
  bool roman_{false}; // the last run was numbered in Roman numerals

  constexpr PlainRunGrammar(std::string_view text, Dialect dialect, Limits const& limits, Sink& sink)
      : Base{text, dialect, limits, sink}, SharedCount{text, dialect}, c_{text}, scanner_{text, dialect} {}

  /// Takes all plain runs with one blank between them. Returns true if there was one.
  constexpr bool plain() {
    auto from = c_.token.from;
    std::size_t end = 0;
    while (plain_run(from, end) && at(end) == ' ' && (is_latin_letter(at(end + 1)) || is_digit(at(end + 1))))
      from = static_cast<std::uint32_t>(end + 1);
    if (end == 0) return false;
    c_ = TokenCursor{text_, end};
    return !failed_;
  }
  /// Reads one plain run, letter , [ dash , letter ] , count. Returns false and takes nothing if the run is not plain;
  /// then gathering() reads it, as it reads a run that gives a doubt.
  constexpr bool plain_run(std::uint32_t from, std::size_t& end) {
    if (!this->shares_nothing(from) || last_.last.raised() || roman_) return false;
    auto const plain = scanner_.run(from);
    if (plain.end == 0 || plain.is_odd() || plain.is_outside() || words_follow(plain.end)) return false;
    auto run = plain.found();
    run.begins_part = part_ && begun();
    auto& reached = this->reached(run.first);
    if (!PlainScanner::follows(run.begins_part ? 0 : reached, plain)) return false;
    if (run.begins_part) this->begin_part();
    reached = plain.last.rank;
    part_ = false;
    run.unsigned_throughout = depth_ > 0;
    end = plain.end;
    return this->add_run(run, from, static_cast<std::uint32_t>(end));
  }

private:
  PlainScanner scanner_;

  /// Returns true if words after a plain run concern it: A-H4, in eights; after a semicolon, K8 blank.
  [[nodiscard]] constexpr bool words_follow(std::size_t end) const noexcept {
    auto const after = after_blanks(static_cast<std::uint32_t>(end) + (at(end) == ',' ? 1U : 0U));
    auto const next = at(after);
    if (at(end) == ',' && may_begin_counts(next, at(after + 1)) && is_small(at(after + 1))) return true;
    if (at(end) == ' ') {
      if ((next == 't' || may_begin_counts(next, at(after + 1))) && is_small(at(after + 1))) return true;
      // A8 - Z8, A-D⁸ ⁴
      auto const lead = static_cast<unsigned char>(next);
      bool const tens =
          lead == 0xC2 && static_cast<unsigned char>(at(after + 2)) >= 0xC2; // ¹⁰; ² before a letter is a series
      if (next == ',' || next == '-' || lead == 0xE2 || tens) return true;
    }
    bool const leaves_joined = next == '&' && is_blank_at(after + 1); // A1 & K8 blank
    bool const article =
        next == 'a' && is_blank_at(after + 1) && is_small(at(this->after_blanks(after + 1)));    // B2 a cancel
    bool const list = at(end) == ',' && is_digit(at(after + (is_latin_letter(next) ? 1U : 0U))); // D8, E8 wanting
    return part_ && begun() && (leaves_joined || article || list || (is_small(next) && is_small(at(after + 1))));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
