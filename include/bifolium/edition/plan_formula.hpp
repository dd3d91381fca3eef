// SPDX-License-Identifier: MIT
/// Writes the collation formula of a plan: preliminaries as π if they are one gathering and as a, b, c ... if they are
/// more, the text as A to Z and then in doubled letters, the end matter signed after it. The text is in the notation of
/// `write_formula`; `read_formula` reads it, and then it can be counted, referred to and written in other notations.
#pragma once

#include <bifolium/core/raised.hpp>
#include <bifolium/edition/arrange.hpp>
#include <bifolium/leaf/write_signature.hpp>

#include <string>
#include <utility>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Writes runs of gatherings, one signed after another.
class PlanFormulaText {
  SheetMakeUp const& by_;
  std::string text_;
  std::int64_t beyond_{}; // the first multiple that no signature has

  void sign(std::int64_t number, char first) {
    constexpr Alphabet letters;
    auto const multiple = number / letters.size() + 1;
    if (multiple > Signature::highest_multiple) {
      beyond_ = multiple;
      return;
    }
    auto const letter = letters.at(static_cast<int>(number % letters.size()) + 1);
    auto const signature =
        Signature::letter(static_cast<char>(first + letter - 1), static_cast<std::uint32_t>(multiple));
    text_.append(to_text(signature).view());
  }
  void count(int leaves) { text_.append(raised(leaves).view()); }
  /// Writes gatherings of one size. The first has the next signature of its alphabet, which begins with A or a. Their
  /// leaf counts follow.
  void run(std::int64_t& next, std::int64_t gatherings, char first) {
    text_ += ' ';
    sign(next, first);
    if (gatherings > 1) text_ += '-', sign(next + gatherings - 1, first);
    next += gatherings;
  }
  /// Writes the gatherings of one matter: those that the scheme fills, alternating as in the scheme, then the last
  /// ones.
  void matter(std::int64_t leaves, std::int64_t& next, char first) {
    if (auto const filled = leaves / by_.leaves(); filled > 0) {
      run(next, filled * by_.gathering_count, first);
      auto const of_fold = static_cast<std::size_t>(by_.gathering_count);
      bool alike = true;
      for (std::size_t g = 1; g < of_fold; ++g) alike = alike && by_.sizes[g] == by_.sizes[0];
      for (std::size_t g = 0; g < (alike ? 1 : of_fold); ++g) {
        if (g != 0) text_ += '/';
        count(by_.sizes[g]);
      }
    }
    auto rest = static_cast<int>(leaves % by_.leaves());
    for (std::size_t g = 0; rest > 0; ++g) {
      int const size = rest < by_.sizes[g] ? rest : by_.sizes[g];
      run(next, 1, first);
      count(size);
      rest -= size;
    }
  }

public:
  explicit PlanFormulaText(SheetMakeUp const& by) : by_{by}, text_{std::to_string(by.leaves_to_sheet)} {
    text_.append("°:");
  }
  Expected<std::string> whole(Plan const& plan) {
    auto const [preliminaries, body, end, cancels] = plan.leaves_of;
    std::int64_t small_letters = 0, capital = 0;
    if (preliminaries != 0 && gatherings_of(preliminaries, by_) == 1) {
      text_.append(" π");
      count(static_cast<int>(preliminaries));
    } else
      matter(preliminaries, small_letters, 'a');
    matter(body, capital, 'A');
    matter(end, capital, 'A');
    if (beyond_ == 0) return std::move(text_);
    return error_in_field(Problem::multiple_too_high, std::to_string(beyond_), Signature::highest_multiple);
  }
};

} // namespace detail

/// Returns the formula of a plan that was made from this scheme. The formula has the leaves of the plan and its sheets,
/// except those of cancels. The function allocates memory. Error: multiple_too_high if a gathering is after the last
/// possible signature.
inline Expected<std::string> formula_of(Plan const& plan, SheetMakeUp const& by) {
  return detail::PlanFormulaText{by}.whole(plan);
}

} // namespace v0
} // namespace bifolium
