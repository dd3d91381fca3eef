// SPDX-License-Identifier: MIT
/// Works back from an account: the paper of an edition is stated, and the number of copies is not. Each way of counting
/// a ream gives a range of copies that take exactly this paper, or none. The last unit that the account names may be a
/// started one. 34 reams are more than 33 and at most 34; 34 reams and 5 quires are more than 34 reams and 4 quires and
/// at most 34 reams and 5 quires; loose sheets are exact. If a ream has outside quires (472 sheets, of which 432 are
/// good), the lower end of the range counts only the good sheets and the upper end counts all.
#pragma once

#include <bifolium/core/optional_number.hpp>
#include <bifolium/edition/bill.hpp>

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The paper of an edition as an account states it.
struct PaperOfAccount {
  Fraction reams{};                      ///< 34, or 34 1/2; a whole number if quires or loose sheets follow
  OptionalNumber<std::int64_t> quires{}; ///< quires after the reams, if the account names them
  OptionalNumber<std::int64_t> loose{};  ///< sheets after the quires, if the account names them
  friend constexpr bool operator==(PaperOfAccount const&, PaperOfAccount const&) = default;
};

/// The reams by which an account is read if the caller names none: 472, 480, 500 and 516 sheets.
inline constexpr std::array reams_of_accounts{reams::from_mill, reams::of_480, reams::of_500, reams::of_516};

/// The copies that take the paper of an account, for one count of the ream.
struct CopiesOfAccount {
  ReamCount ream{};                         ///< the count of the ream
  std::int64_t least{}, most{};             ///< the least and the greatest number of copies
  std::int64_t overs_least{}, overs_most{}; ///< copies printed above these numbers
  /// sheets of the account: `stated` as it says, `low` and `high` as explained above
  Range<std::int64_t> sheets{};
  friend constexpr bool operator==(CopiesOfAccount const&, CopiesOfAccount const&) = default;
};

namespace detail {

/// Returns the sheets of an account, with a lower end of at least 1, or no value if they do not fit in 64 bits.
constexpr std::optional<Range<std::int64_t>> sheets_of_account(PaperOfAccount const& paper, ReamCount const& by) {
  Fits fits;
  auto const after =
      fits(checked_add(fits(checked_multiply(paper.quires.value_or(0), by.quire)), paper.loose.value_or(0)));
  auto const in = [&](std::int32_t sheets_of_ream) {
    return fits(checked_add(fits(floor_of_product(paper.reams, Fraction{sheets_of_ream})), after));
  };
  // the sheets without the last unit, which may be started; with quires or loose sheets the reams are whole
  auto const& reams = paper.reams;
  auto const before =
      paper.quires || paper.loose
          ? fits(checked_subtract(in(by.good), paper.loose ? 1 : by.quire))
          : fits(floor_of_product(Fraction{reams.numerator() - 1}, Fraction{by.good, reams.denominator()}));
  auto const low = fits(checked_add(before, 1)), high = in(by.ream);
  return fits.all() ? std::optional{Range<std::int64_t>{low < 1 ? 1 : low, high, high}} : std::nullopt;
}

/// Finds numbers of copies by the sheets that they take.
class CopiesOfPaper {
  Edition const& edition_;
  Plan const& plan_;

public:
  /// A number of copies that no account reaches.
  static constexpr std::int64_t most = 1'000'000'000'000;

  constexpr CopiesOfPaper(Edition const& edition, Plan const& plan) : edition_{edition}, plan_{plan} {}
  [[nodiscard]] constexpr std::optional<std::int64_t> overs(std::int64_t copies) const {
    return overs_of(copies, edition_.overs_percent, edition_.overplus);
  }
  /// Returns the greatest number of copies, from 0, that takes at most `sheets` sheets. It relies on the fact that more
  /// copies never take less paper, and that overs and sheets have no value only if they do not fit in 64 bits.
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

/// Returns the sheets that an account states by a count of the ream, those of outside quires included; a part of a sheet
/// is not counted. Errors: negative_count, not_positive (no paper), not_a_number (a part of a ream with quires after it),
/// result_too_large; not_positive, quire_above_ream and too_many_good_sheets for a count that no ream can have.
/// Example: `sheets_stated({.reams = 34, .quires = 10, .loose = 5}, reams::of_500) == 17255`.
constexpr Expected<std::int64_t> sheets_stated(PaperOfAccount const& paper, ReamCount const& by) {
  if (auto const error = detail::what_is_wrong(paper)) return *error;
  if (auto const error = detail::what_is_wrong(by)) return *error;
  auto const sheets = detail::sheets_of_account(paper, by);
  if (!sheets) return error_in_field(Problem::result_too_large, "reams");
  return sheets->stated;
}

/// Returns the numbers of copies that take the paper of an account, including the overs of the edition, one element for
/// each count of the ream that gives any. The result is empty if no number of copies agrees with the account. The
/// copies and the ream in `edition` are ignored. Numbers above 10^12 are not searched. The function allocates memory.
/// Errors: those of `reckon` and of `sheets_stated`.
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
    if (auto const error = detail::what_is_wrong(ream)) return *error;
    auto const sheets = detail::sheets_of_account(paper, ream);
    if (!sheets) return error_in_field(Problem::result_too_large, "reams");
    auto const least = copies.within(sheets->low - 1) + 1, most = copies.within(sheets->high);
    if (most == detail::CopiesOfPaper::most) return error_in_field(Problem::result_too_large, "reams");
    if (most < least) continue;
    auto const overs_least = copies.overs(least), overs_most = copies.overs(most);
    if (!overs_least || !overs_most) return error_in_field(Problem::result_too_large, "reams");
    all.push_back({ream, least, most, *overs_least, *overs_most, *sheets});
  }
  return all;
}

/// Returns the greatest number of copies, including 0, that can be printed on so many sheets, above which the overs of
/// the edition are printed too. The copies in `edition` are ignored. Numbers above 10^12 are not searched. Errors: those
/// of `reckon`; negative_count, nothing_to_print (a plan without paper), result_too_large.
/// Example: `copies_within({.scheme = schemes::octavo, .pages = 16}, reckon({.scheme = schemes::octavo, .pages = 16,
/// .copies = 1})->plan, 500) == 500`.
constexpr Expected<std::int64_t> copies_within(Edition edition, Plan const& plan, std::int64_t sheets) {
  if (sheets < 0) return error_in_field(Problem::negative_count, "sheets", sheets);
  edition.copies = 1;
  if (auto const bill = reckon(edition, plan); !bill) return bill.error();
  if (plan.sheets_a_copy() == Fraction{}) return error_in_field(Problem::nothing_to_print, "plan");
  auto const most = detail::CopiesOfPaper{edition, plan}.within(sheets);
  if (most == detail::CopiesOfPaper::most) return error_in_field(Problem::result_too_large, "sheets");
  return most;
}

} // namespace v0
} // namespace bifolium
