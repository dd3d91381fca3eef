// SPDX-License-Identifier: MIT
/// Paper is counted in quires, reams, bundles and bales, and none of these words means one fixed number: a quire has 24
/// or 25 sheets, a ream has 480, 500 or 516, and a ream from the mill has 472, of which 432 are good. So the library
/// has no default. The caller names the count, asks which counts were in use at a place and time, or calculates in
/// sheets. A number of sheets divided into reams, quires and loose sheets always adds up to the same number again.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/optional_number.hpp>
#include <bifolium/paper/sheet_size.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// The number of sheets in a ream and in a quire: `reams::of_500`, or a count of your own such as `ReamCount{500, 25}`.
/// A quire of more sheets than the ream, or more good sheets than it has, is an error where sheets are counted by it.
struct ReamCount {
  std::int32_t ream{};  ///< number of sheets in a ream
  std::int32_t quire{}; ///< number of sheets in a quire; a ream need not have a whole number of quires
  std::int32_t good{};  ///< number of sheets that can be printed on; fewer if the ream includes damaged outside quires
  Region region{};      ///< the region for which the count is reported
  YearRange years{};    ///< the years of the sources; an open end is the end of the century
  Trust trust{};        ///< whether the source was read or the count is from memory
  char const* name{""}; ///< the name in the trade; empty if it has none
  char const* source{""}; ///< the source and what it says; empty if there is none

  constexpr ReamCount() = default;
  /// Makes a count from the sheets in a ream and in a quire, with optional facts about the count. If `good_sheets` is
  /// not given, all sheets are good. Precondition: it fits.
  constexpr ReamCount(std::int32_t sheets_in_ream, std::int32_t sheets_in_quire,
                      OptionalNumber<std::int32_t> good_sheets = std::nullopt, Region reported_in = {},
                      YearRange reported = {}, Trust how_sure = {}, char const* trade_name = "",
                      char const* read_in = "")
      : ream{sheets_in_ream}, quire{sheets_in_quire}, good{good_sheets.value_or(sheets_in_ream)}, region{reported_in},
        years{reported}, trust{how_sure}, name{trade_name}, source{read_in} {}
  /// The same of numbers of wider types, of which each must fit; no other numbers are taken.
  template <class Ream, class Quire, class... Facts>
  requires(detail::ChangesAs<Ream, std::int32_t> ||
           detail::ChangesAs<Quire, std::int32_t>) constexpr ReamCount(Ream sheets_in_ream, Quire sheets_in_quire,
                                                                       Facts... facts)
      : ReamCount{detail::unchanged<std::int32_t>(sheets_in_ream), detail::unchanged<std::int32_t>(sheets_in_quire),
                  facts...} {}
  /// Refuses a plain number in place of a count: the compiler stops with a sentence that says what to write.
  template <class Number>
  requires std::is_arithmetic_v<Number>
  constexpr ReamCount(Number const&) {
    static_assert(detail::never<Number>,
                  "a ream has no fixed number of sheets: write reams::of_500, or ReamCount{500, 25} for a ream of 500 "
                  "sheets in quires of 25");
  }
  /// Refuses a text with a sentence.
  template <detail::TextGiven Text> constexpr ReamCount(Text const&) {
    static_assert(detail::never<Text>, "a text is not a count of the ream: write reams::of_500, or ReamCount{500, 25}");
  }

  friend constexpr bool operator==(ReamCount const& a, ReamCount const& b) noexcept {
    return a.ream == b.ream && a.quire == b.quire && a.good == b.good;
  }
};

/// The counts of a ream that the trade used.
namespace reams {
/// The ream of writing paper: 480 sheets.
inline constexpr ReamCount of_480{
    480,          24,
    480,          Region::britain,
    {1590, 1904}, Trust::published,
    "short ream", "20 quires of 24: writing quire of MSS. of 1590-1620 and 1682, Tabart 1804, Martin 1904"};
/// The ream of printing paper: 500 sheets.
inline constexpr ReamCount of_500{
    500,           25,
    500,           Region::europe,
    {1590, 1904},  Trust::published,
    "ream of 500", "20 quires of 25: printing quire of MSS. of 1590-1620 and 1682, Tabart 1804, Martin 1904"};
/// The perfect ream of 516 sheets, made up for the printer: all sheets can be printed on.
inline constexpr ReamCount of_516{
    516,
    24,
    516,
    Region::britain,
    {1800, 1900},
    Trust::published,
    "perfect ream",
    "Savage, Dictionary of the Art of Printing (1841), s.v. Perfect Paper: 21 1/2 quires of 24"};
/// The ream as it left the mill: 472 sheets, with a quire of damaged sheets at the top and at the bottom.
inline constexpr ReamCount from_mill{472,
                                     24,
                                     432,
                                     Region::britain,
                                     {1801, 1841},
                                     Trust::published,
                                     "ream from the mill",
                                     "Savage (1841): 18 inside quires of 24 and 2 outside quires of 20"};
/// The French ream.
inline constexpr ReamCount rame{
    500, 25, 500, Region::france, {1701, 1900}, Trust::from_memory, "rame", "20 mains of 25; no publication was seen"};
/// The German ream of printing paper: 500 sheets.
inline constexpr ReamCount ries_printing{500,
                                         25,
                                         500,
                                         Region::germany,
                                         {1701, 1877},
                                         Trust::published,
                                         "Ries Druckpapier",
                                         "Nelkenbrecher (1890), p. 368: 20 Buch of 25"};
/// The German ream of writing paper.
inline constexpr ReamCount ries_writing{480,
                                        24,
                                        480,
                                        Region::germany,
                                        {1701, 1877},
                                        Trust::published,
                                        "Ries Schreibpapier",
                                        "Nelkenbrecher (1890), p. 368: 20 Buch of 24"};
/// The German ream of 1000 sheets, from 1877.
inline constexpr ReamCount neuries{1000,         100,
                                   1000,         Region::germany,
                                   {1877, 1900}, Trust::published,
                                   "Neuries",    "Nelkenbrecher (1890), p. 368: 10 Buch of 100, from 1877"};
} // namespace reams

namespace detail {
inline constexpr ReamCount const* ream_counts[]{&reams::of_480,       &reams::of_500, &reams::of_516,
                                                &reams::from_mill,    &reams::rame,   &reams::ries_printing,
                                                &reams::ries_writing, &reams::neuries};
}

/// Calls `act` with each count that is reported for the region in some of the years, in the order of the list above.
template <class Act> constexpr void each_ream_count(YearRange years, Region region, Act act) {
  for (auto const* count : detail::ream_counts)
    if (count->years.from <= years.to && years.from <= count->years.to &&
        (region == Region::anywhere || count->region == region || count->region == Region::europe))
      act(*count);
}

/// A number of sheets divided into reams, quires and loose sheets.
struct PaperCount {
  std::int64_t reams{};  ///< whole reams
  std::int64_t quires{}; ///< whole quires after the reams
  std::int64_t loose{};  ///< loose sheets after the quires
  friend constexpr bool operator==(PaperCount, PaperCount) = default;
};

namespace detail {
/// Returns what is wrong with a count that no ream can have.
constexpr std::optional<Error> what_is_wrong(ReamCount const& by) {
  if (by.ream <= 0 || by.quire <= 0 || by.good <= 0) return error_in_field(Problem::not_positive, "ream");
  if (by.quire > by.ream) return error_in_field(Problem::quire_above_ream, "ream", by.ream);
  if (by.good > by.ream) return error_in_field(Problem::too_many_good_sheets, "ream", by.ream);
  return {};
}
/// Refuses, before sheets are counted by it, a count that no ream can have.
constexpr void must_count(std::int64_t sheets, ReamCount const& by) {
  if (sheets < 0) broken("the number of sheets must not be less than zero");
  if (what_is_wrong(by))
    broken("a ream must have at least one sheet, and its quires and its good sheets must not be more than the ream");
}
} // namespace detail

/// Divides sheets into reams, quires and loose sheets. Preconditions: `sheets` is at least 0; a ream, its quire and its
/// good sheets are from 1 to the sheets of the ream.
/// Example: `counted(1234, reams::of_500).reams == 2`.
constexpr PaperCount counted(std::int64_t sheets, ReamCount const& by) {
  detail::must_count(sheets, by);
  auto const rest = sheets % by.ream;
  return {sheets / by.ream, rest / by.quire, rest % by.quire};
}
/// Returns the number of sheets in reams, quires and loose sheets together. Errors: negative_count; result_too_large; not_positive,
/// quire_above_ream and too_many_good_sheets for a count that no ream can have.
constexpr Expected<std::int64_t> sheets_in(PaperCount const& count, ReamCount const& by) {
  if (auto const error = detail::what_is_wrong(by)) return *error;
  if (count.reams < 0) return error_in_field(Problem::negative_count, "reams", count.reams);
  if (count.quires < 0) return error_in_field(Problem::negative_count, "quires", count.quires);
  if (count.loose < 0) return error_in_field(Problem::negative_count, "loose", count.loose);
  auto const in_reams = checked_multiply(count.reams, by.ream), in_quires = checked_multiply(count.quires, by.quire);
  auto const both = in_reams && in_quires ? checked_add(*in_reams, *in_quires) : std::nullopt;
  auto const all = both ? checked_add(*both, count.loose) : std::nullopt;
  if (!all) return error_in_field(Problem::result_too_large, "");
  return *all;
}

/// Returns the exact number of reams to buy for a number of sheets to print on. Outside quires (Savage's cording quires
/// of twenty damaged sheets) are paid for but not printed on. Preconditions: those of `counted`.
constexpr Fraction reams_to_buy(std::int64_t sheets, ReamCount const& by) {
  detail::must_count(sheets, by);
  return Fraction{sheets, by.good};
}

/// A unit larger than the ream in which paper was sold.
struct PaperLot {
  char const* name{""};   ///< the name in the trade; empty if it has none
  std::int32_t sheets{};  ///< number of sheets in one lot
  char const* source{""}; ///< the source, and the lot in smaller units; empty if there is none
  /// Compares the sheets, as counts of a ream are compared.
  friend constexpr bool operator==(PaperLot const& a, PaperLot const& b) noexcept { return a.sheets == b.sheets; }
};
/// The units of the trade above the ream: bundles and bales.
namespace lots {
/// The bundle: two reams of 500 sheets.
inline constexpr PaperLot bundle{"bundle", 1000, "two reams of 500 (GNU units 2.22, definitions of 2022)"};
/// The perfect bundle: two perfect reams of 516 sheets.
inline constexpr PaperLot perfect_bundle{"perfect bundle", 1032, "Savage (1841): 43 quires of 24"};
/// The bale: ten reams of 500 sheets.
inline constexpr PaperLot bale{"bale", 5000, "ten reams of 500 (GNU units 2.22, definitions of 2022)"};
/// The short bundle: two reams of 480 sheets.
inline constexpr PaperLot short_bundle{"short bundle", 960, "two reams of 480 (Wikipedia, Units of paper quantity)"};
/// The short bale: ten reams of 480 sheets.
inline constexpr PaperLot short_bale{"short bale", 4800, "ten reams of 480 (Wikipedia, Units of paper quantity)"};
/// The printer's bale: ten perfect reams of 516 sheets.
inline constexpr PaperLot printers_bale{"printer's bale", 5160,
                                        "ten reams of 516 (Wikipedia, Units of paper quantity)"};
/// The German bale of writing paper: ten reams of 480 sheets.
inline constexpr PaperLot ballen_writing{"Ballen Schreibpapier", 4800, "Nelkenbrecher (1890), p. 368: ten Ries of 480"};
/// The German bale of printing paper: ten reams of 500 sheets.
inline constexpr PaperLot ballen_printing{"Ballen Druckpapier", 5000, "Nelkenbrecher (1890), p. 368: ten Ries of 500"};
} // namespace lots

/// The number of sheets that are signed with one alphabet of 23 letters: 368 pages in octavo. German publishers set
/// their prices by this unit (Goldfriedrich, Geschichte des Deutschen Buchhandels II).
inline constexpr std::int64_t sheets_in_alphabet = 23;
/// A number of sheets divided into whole alphabets and sheets.
struct AlphabetCount {
  std::int64_t alphabets{}; ///< whole alphabets of 23 sheets
  std::int64_t sheets{};    ///< sheets after the alphabets, 0 to 22
  friend constexpr bool operator==(AlphabetCount, AlphabetCount) = default;
};
/// Divides sheets into alphabets and sheets. Precondition: `sheets` is at least 0.
constexpr AlphabetCount in_alphabets(std::int64_t sheets) {
  if (sheets < 0) broken("the number of sheets must not be less than zero");
  return {sheets / sheets_in_alphabet, sheets % sheets_in_alphabet};
}
/// Returns the exact price of an alphabet if `sheets` sheets cost `price`. The printed tables of Halle give up to two
/// Pfennig less; they seem to round the price of a sheet down to tenths first (inferred, because their decimals cannot
/// be read). Errors: not_positive, negative_count, result_too_large.
constexpr Expected<Fraction> price_of_alphabet(std::int64_t price, std::int64_t sheets) {
  if (price < 0) return error_in_field(Problem::negative_count, "price", price);
  if (sheets <= 0) return error_in_field(Problem::not_positive, "sheets", sheets);
  auto const all = checked_multiply(Fraction{price, sheets}, Fraction{sheets_in_alphabet});
  if (!all) return error_in_field(Problem::result_too_large, "");
  return *all;
}

/// Number of grammes in a pound avoirdupois, exact since 1959.
inline constexpr Fraction grammes_in_pound{45'359'237, 100'000};

/// Returns the weight of paper in grammes per square metre, exactly. `grammes` is the weight of a ream of `sheets`
/// sheets; the sides are in millimetres. Errors: not_positive, result_too_large.
constexpr Expected<Fraction> grammes_per_square_metre(Fraction grammes, std::int64_t sheets, Fraction one_side,
                                                      Fraction other_side) {
  Fraction const zero{};
  if (grammes <= zero) return error_in_field(Problem::not_positive, "grammes");
  if (sheets <= 0) return error_in_field(Problem::not_positive, "sheets", sheets);
  if (one_side <= zero) return error_in_field(Problem::not_positive, "one_side");
  if (other_side <= zero) return error_in_field(Problem::not_positive, "other_side");
  auto const area = checked_multiply(one_side, other_side);
  auto const all = area ? checked_multiply(*area, Fraction{sheets}) : std::nullopt;
  auto const each = all ? checked_divide(grammes, *all) : std::nullopt;
  auto const result = each ? checked_multiply(*each, Fraction{1'000'000}) : std::nullopt;
  if (!result) return error_in_field(Problem::result_too_large, "");
  return *result;
}

} // namespace v0
} // namespace bifolium
