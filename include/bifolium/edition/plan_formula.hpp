// SPDX-License-Identifier: MIT
/// The collation formula that a plan would have, if its book were printed so: preliminaries as π where they make one
/// gathering and a, b, c ... where they make more, the text A to Z and on in doubled letters, the end matter signed on. The
/// formula is read by the reader of formulas, so it can be counted, referred to and written in any notation.
#pragma once

#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/edition/arrangement.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Sets down runs of gatherings, one signed after another.
class PlanFormulaText {
  SheetMakeUp const& by_;
  std::string text_{};

  static void put_signature(std::string& text, std::int64_t number, bool small) {
    constexpr auto letters = "ABCDEFGHIKLMNOPQRSTVXYZ", small_letters = "abcdefghiklmnopqrstvxyz";
    if (number >= 23) text += std::to_string(number / 23 + 1);
    text += (small ? small_letters : letters)[number % 23];
  }
  void run(std::int64_t& next, std::int64_t gatherings, bool small, std::string const& leaves) {
    if (gatherings == 0) return;
    text_ += ' ';
    put_signature(text_, next, small);
    if (gatherings > 1) text_ += '-', put_signature(text_, next + gatherings - 1, small);
    text_.append("^").append(leaves);
    next += gatherings;
  }

public:
  PlanFormulaText(SheetMakeUp const& by) : by_{by} { text_ = std::to_string(by.leaves_to_sheet) + "°:"; }
  /// The gatherings of one matter: those the scheme fills, alternating as it does, then the last ones.
  void matter(std::int64_t leaves, std::int64_t& next, bool small) {
    auto const units = leaves / by_.leaves();
    std::string cycle = std::to_string(by_.sizes[0]);
    bool alike = true;
    for (std::size_t g = 1; g < static_cast<std::size_t>(by_.gathering_count); ++g) {
      alike = alike && by_.sizes[g] == by_.sizes[0];
      cycle += "/" + std::to_string(by_.sizes[g]);
    }
    run(next, units * by_.gathering_count, small, alike ? std::to_string(by_.sizes[0]) : cycle);
    auto rest = static_cast<int>(leaves % by_.leaves());
    for (std::size_t g = 0; rest > 0; ++g) {
      int const size = rest < by_.sizes[g] ? rest : by_.sizes[g];
      run(next, 1, small, std::to_string(size));
      rest -= size;
    }
  }
  void pi(std::int64_t leaves) { text_.append(" pi^").append(std::to_string(leaves)); }
  [[nodiscard]] std::string const& text() const noexcept { return text_; }
};

} // namespace detail

/// The formula of a plan made from that scheme. Its leaves are those of the plan, and the sheets it is reckoned to take are
/// those of the plan but for cancels. Allocates. error: multiple_too_high and the like, for books beyond all signing.
inline Expected<Formula> formula_of(Plan const& plan, SheetMakeUp const& by) {
  detail::PlanFormulaText text{by};
  auto const [preliminaries, body, end, cancels] = plan.leaves_of;
  std::int64_t small = 0, capital = 0;
  if (preliminaries != 0 && detail::gatherings_of(preliminaries, by) == 1)
    text.pi(preliminaries);
  else
    text.matter(preliminaries, small, true);
  text.matter(body, capital, false);
  text.matter(end, capital, false);
  return read_formula(text.text());
}

} // namespace v0
} // namespace bifolium
