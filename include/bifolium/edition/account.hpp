// SPDX-License-Identifier: MIT
/// An account read backwards: the paper of an edition is stated and the number of copies is not. Each way of counting a ream
/// gives a range of copies that take just that paper, or none. The last unit that the account names is taken as started: 34
/// reams are more than 33 and at most 34; 34 reams and 5 quires are more than 4 quires over and at most 5; loose sheets are
/// exact. Where a ream has outside quires (472 sheets, of which 432 are good), the low end counts the good sheets alone and
/// the high end all of them.
#pragma once

#include <bifolium/edition/bill.hpp>

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// Paper as an account states it.
struct PaperOfAccount {
  Fraction reams{};                     ///< 34, or 34 1/2; a whole number where quires or loose sheets follow
  std::optional<std::int64_t> quires{}; ///< beyond the reams, where the account names them
  std::optional<std::int64_t> loose{};  ///< sheets beyond the quires, where the account names them
};

/// The reams by which an account is read unless others are named: 472, 480, 500 and 516 sheets.
inline constexpr std::array reams_of_accounts{reams::from_mill, reams::of_480, reams::of_500, reams::of_516};

/// The copies that take the paper of an account, by one ream.
struct CopiesOfAccount {
  ReamCount ream{};                         ///< how the paper is counted
  std::int64_t least{}, most{};             ///< copies wanted, both included
  std::int64_t overs_least{}, overs_most{}; ///< copies above them, for the least and for the most
  Range<std::int64_t> sheets{};             ///< of the account: low and high as above, stated as it says
  friend constexpr bool operator==(CopiesOfAccount const&, CopiesOfAccount const&) = default;
};

namespace detail {

/// Sheets of an account, the low end not below 1. None where they do not fit.
constexpr std::optional<Range<std::int64_t>> sheets_of_account(PaperOfAccount const& paper, ReamCount const& by) {
  auto const in = [&](std::int32_t sheets_of_ream) {
    Fits fits;
    auto sum = fits(checked_multiply(paper.reams, Fraction{sheets_of_ream}));
    sum = fits(checked_add(sum, Fraction{fits(checked_multiply(paper.quires.value_or(0), by.quire))}));
    sum = fits(checked_add(sum, Fraction{paper.loose.value_or(0)}));
    return fits.all() ? std::optional{sum} : std::nullopt;
  };
  auto const good = in(by.printable()), all = in(by.ream);
  if (!good || !all) return std::nullopt;
  auto const unit = paper.loose    ? Fraction{1}
                    : paper.quires ? Fraction{by.quire}
                                   : Fraction{by.printable(), paper.reams.denominator()};
  auto const before = checked_subtract(*good, unit);
  if (!before) return std::nullopt;
  auto const low = before->floor() + 1;
  return Range<std::int64_t>{low < 1 ? 1 : low, all->floor(), all->floor()};
}

/// Copies by the sheets they take.
class CopiesOfPaper {
  Edition const& edition_;
  Plan const& plan_;

public:
  /// More copies than any account has.
  static constexpr std::int64_t most = 1'000'000'000'000;

  constexpr CopiesOfPaper(Edition const& edition, Plan const& plan) : edition_{edition}, plan_{plan} {}
  [[nodiscard]] constexpr std::optional<std::int64_t> overs(std::int64_t copies) const {
    return overs_of(copies, edition_.overs_percent, edition_.overplus);
  }
  /// The most copies, from 0, that take at most so many sheets: more copies take no less paper.
  [[nodiscard]] constexpr std::int64_t within(std::int64_t sheets) const {
    std::int64_t low = 0, high = most;
    while (low < high) {
      auto const copies = low + (high - low + 1) / 2;
      auto const over = overs(copies);
      auto const given_out = over ? checked_add(copies, *over) : std::nullopt;
      auto const taken = given_out ? plan_.sheets_for(*given_out) : std::nullopt;
      if (taken && *taken <= sheets)
        low = copies;
      else
        high = copies - 1;
    }
    return low;
  }
};

constexpr std::optional<Error> what_is_wrong(PaperOfAccount const& paper) {
  if (paper.reams < Fraction{}) return error_in_field(Problem::negative_count, "reams");
  if (paper.quires.value_or(0) < 0) return error_in_field(Problem::negative_count, "quires");
  if (paper.loose.value_or(0) < 0) return error_in_field(Problem::negative_count, "loose");
  if ((paper.quires || paper.loose) && !paper.reams.is_whole()) return error_in_field(Problem::not_a_number, "reams");
  if (paper.reams == Fraction{} && paper.quires.value_or(0) == 0 && paper.loose.value_or(0) == 0)
    return error_in_field(Problem::not_positive, "reams");
  return {};
}

} // namespace detail

/// The copies that take the paper of an account, with the overs of the edition, for each of the reams by which there are any;
/// empty where no number of copies agrees with the account by any of them. The edition's own copies and ream are not looked
/// at, and more than 10^12 copies are not looked for. Allocates. error: as `reckon`; negative_count, not_positive (no paper),
/// not_a_number (part of a ream, and quires after it), result_too_large.
inline Expected<std::vector<CopiesOfAccount>> copies_of_account(Edition edition, Plan const& plan,
                                                                PaperOfAccount const& paper,
                                                                std::span<ReamCount const> reams = reams_of_accounts) {
  if (auto const error = detail::what_is_wrong(paper)) return *error;
  edition.copies = 1;
  if (auto const bill = reckon(edition, plan); !bill) return bill.error();
  if (plan.sheets_a_copy() == Fraction{}) return error_in_field(Problem::nothing_to_print, "plan");
  detail::CopiesOfPaper const copies{edition, plan};
  std::vector<CopiesOfAccount> all;
  for (auto const& ream : reams) {
    if (ream.ream <= 0 || ream.quire <= 0 || ream.printable() <= 0)
      return error_in_field(Problem::not_positive, "ream");
    auto const sheets = detail::sheets_of_account(paper, ream);
    if (!sheets) return error_in_field(Problem::result_too_large, "reams");
    auto const least = copies.within(sheets->low - 1) + 1, most = copies.within(sheets->high);
    if (most == detail::CopiesOfPaper::most) return error_in_field(Problem::result_too_large, "reams");
    if (most < least) continue;
    all.push_back({ream, least, most, *copies.overs(least), *copies.overs(most), *sheets});
  }
  return all;
}

} // namespace v0
} // namespace bifolium
