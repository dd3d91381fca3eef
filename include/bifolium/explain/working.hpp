// SPDX-License-Identifier: MIT
/// Writes how a bill was calculated, line by line: the given numbers, the results, and the assumptions.
#pragma once

#include <bifolium/edition/bill.hpp>
#include <bifolium/edition/plan_formula.hpp>

#include <string>
#include <utility>

namespace bifolium {
inline namespace v0 {
/// Returns the words for a matter: "preliminaries", "text", "end matter", "cancels".
constexpr std::string_view to_words(Matter matter) noexcept {
  return matter == Matter::end_matter ? "end matter" : identifier(matter);
}

namespace detail {

class WorkingWriter {
  Bill const& bill_;
  std::string text_{};

  template <class... Parts> void put(Parts const&... parts) { ((text_ += parts), ...); }
  static std::string number(std::int64_t n) { return std::to_string(n); }
  /// Writes a fraction as people say it, 12 3/5, and one that nobody says, such as 66 71/125, as about 66.57.
  static std::string number(Fraction n) {
    constexpr int finest = 24; // sheets of formats and quires have parts as small
    if (n.denominator() <= finest) return std::string{to_text(n).view()};
    auto const whole = n.floor();
    auto const part = (n - Fraction{whole}) * Fraction{100} + Fraction{1, 2};
    if (part >= Fraction{100}) return "about " + number(whole + 1);
    auto const digits = number(part.floor());
    return "about " + number(whole) + (digits.size() < 2 ? ".0" : ".") + digits;
  }
  template <class Number> static std::string number(Number n, char const* one, char const* many) {
    return number(n) + " " + (n > Number{0} && n <= Number{1} ? one : many);
  }

  template <class Number> static std::string from_to(Range<Number> const& range) {
    return range.is_exact() ? "" : " (" + number(range.low) + " to " + number(range.high) + ")";
  }

  void arrangement() {
    auto const& plan = bill_.plan;
    put(number(plan.leaves(), "leaf", "leaves"), " (", number(plan.blank_pages, "page", "pages"), " blank) in ",
        number(plan.gatherings, "gathering, ", "gatherings, "), number(plan.leaves_to_sheet, "leaf", "leaves"),
        " to the sheet: ", number(plan.sheets_a_copy(), "sheet", "sheets"), " a copy\n");
    for (auto const& working : plan) {
      if (working.leaves == plan.leaves_to_sheet && !working.is_shared()) {
        put("  ", number(working.times, "sheet", "sheets"),
            working.kind == Working::Kind::one_side ? " of one forme, the other side blank\n" : " of two formes\n");
        continue;
      }
      put("  ", number(working.times), " x ", number(working.leaves, "leaf", "leaves"));
      if (working.kind == Working::Kind::turned || working.kind == Working::Kind::repeated)
        put(working.kind == Working::Kind::turned ? " from one forme, " : " from two formes, ",
            number(plan.leaves_to_sheet / working.leaves, "copy", "copies"), " to the sheet", set_again(working));
      if (working.kind == Working::Kind::cut_first) put(" on paper cut before printing, two formes");
      if (working.kind == Working::Kind::one_side)
        put(" on paper cut before printing, one forme, the other side blank");
      if (working.kind == Working::Kind::sheet) put(", a sheet of two formes");
      if (working.is_shared()) shares(working);
      put("\n");
    }
    put(number(plan.formes(), "forme", "formes"), "\n");
  }
  /// Says how often the pages of a working are set, if more than once.
  [[nodiscard]] std::string set_again(Working const& working) const {
    auto const settings = bill_.plan.settings(working);
    if (settings == 1) return {};
    return settings == 2 ? ", each page set twice" : ", each page set " + number(settings) + " times";
  }
  void shares(Working const& working) {
    char const* before = ": ";
    for (std::size_t m = 0; m < matters; ++m)
      if (working.shares[m] != 0) {
        put(before, number(working.shares[m]), " of ", to_words(static_cast<Matter>(m)));
        before = " and ";
      }
    put(" worked together: inferred, not observed");
    if (working.is_equally_shared()) put("; equal shares need positive evidence");
  }
  [[nodiscard]] static std::string_view name_of(ReamCount const& ream) {
    std::string_view const name{ream.name ? ream.name : ""};
    return name.empty() ? "ream" : name;
  }
  /// Says how many cancels may be printed on blank leaves, which the least number of sheets supposes.
  [[nodiscard]] std::string on_blanks(std::int64_t cancels) const {
    auto const blank = bill_.plan.blank_leaves;
    if (blank == 0) return {};
    if (blank >= cancels) return "; none where blank leaves are used";
    return "; only " + number(cancels - blank) + " where blank leaves are used";
  }
  void paper() {
    auto const& sheets = bill_.sheets;
    put(number(bill_.edition.copies, "copy", "copies"), " and ", number(bill_.overs),
        " over: ", number(sheets.stated, "sheet", "sheets"));
    if (!sheets.is_exact())
      put(" (", number(sheets.low), " without overs and without an odd half-sheet; ", number(sheets.high),
          " if every part of a sheet takes a whole one)");
    put("\n");
    if (auto const cancels = bill_.edition.cancel_leaves; cancels != 0)
      put("  ", number(cancels, "cancel", "cancels"), " counted as paper of its own, several to the sheet",
          on_blanks(cancels), "\n");
    if (bill_.paper)
      put("  ", number(bill_.paper->reams, "ream, ", "reams, "), number(bill_.paper->quires, "quire, ", "quires, "),
          number(bill_.paper->loose, "sheet", "sheets"), ", by the ", name_of(*bill_.edition.ream), ": ",
          number(bill_.edition.ream->ream), " in quires of ", number(bill_.edition.ream->quire), "\n");
    if (bill_.paper && bill_.reams_to_buy && bill_.edition.ream->good != bill_.edition.ream->ream)
      put("  of a ream ", number(bill_.edition.ream->good), " are good: ", number(*bill_.reams_to_buy, "ream", "reams"),
          " to be bought\n");
    if (bill_.kilogrammes)
      put("  weight ", number(bill_.kilogrammes->stated), " kg", from_to(*bill_.kilogrammes), "\n");
  }
  void money() {
    if (bill_.paper_cost)
      put("  paper costs ", number(bill_.paper_cost->stated), from_to(*bill_.paper_cost), " in the smallest unit\n");
    if (bill_.forme_cost) put("  formes cost ", number(*bill_.forme_cost), "\n");
    if (bill_.press_cost) put("  presswork costs ", number(*bill_.press_cost), "\n");
    if (bill_.total_cost) put("  together ", number(bill_.total_cost->stated), from_to(*bill_.total_cost), "\n");
  }
  void press() {
    auto const& work = bill_.presswork;
    auto const& terms = bill_.edition.press;
    put(number(work.impressions, "impression", "impressions"), ", one side of one sheet each (", number(work.perfected),
        " perfected): ", number(work.tokens, "token", "tokens"), " of ", number(terms.token.impressions), "; ",
        number(work.clock_hours, "hour", "hours"), " by the clock at ",
        number(terms.rate.impressions, "impression", "impressions"), " an hour",
        terms.crew == Crew::half_press ? " for two men; one man alone makes half as many" : "", "\n");
    put("  ", number(work.days, "day", "days"), " of ", number(terms.hours_a_day, "hour", "hours"), " on ",
        number(terms.presses, "press", "presses"), "; ", number(work.days_of_pay, "day", "days"), " of pay at ",
        number(terms.tokens_a_day, "token", "tokens"), " a day\n");
  }

public:
  explicit WorkingWriter(Bill const& bill) : bill_{bill} {}
  std::string whole() {
    arrangement();
    paper();
    money();
    press();
    return std::move(text_);
  }
};

} // namespace detail

/// Writes how a bill was calculated, in several lines. The function allocates memory.
inline std::string working(Bill const& bill) { return detail::WorkingWriter{bill}.whole(); }

/// Writes the collation formula of the book of a bill, as `formula_of` does for a plan. The function allocates memory.
/// Error: multiple_too_high if a gathering is after the last possible signature.
inline Expected<std::string> formula_of(Bill const& bill) {
  return formula_of(bill.plan, make_up(bill.edition.scheme));
}

} // namespace v0
} // namespace bifolium
