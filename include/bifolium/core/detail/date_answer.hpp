// SPDX-License-Identifier: MIT
/// The answer of a statement of date. A statement may give a year three times: as it is printed on the book, as the cataloguer
/// supplied it in brackets, and as a correction. The years are collected in these three groups, and the first group that is
/// not empty, corrections first, is the answer. What belongs to no answer is listed as unread, so that nothing is lost in silence.
#pragma once

#include <bifolium/core/detail/date_lookahead.hpp>
#include <bifolium/core/stated_date.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The years found so far, in their groups.
class DateAnswer : protected DateLookahead {
  std::optional<Item> plain_{}, bracket_{}, correction_{};
  std::optional<Item> other_calendar_{}; // the last year of another era or calendar, or one that may be

  /// Lists years that are not the answer as unread, in the order of the text, with the words before them: `printed 1590,
  /// reprinted 1641`.
  constexpr void tell_other_years(TextSpan span) {
    auto& unread = date_.unread;
    auto at = unread.size();
    while (at > 0 && unread[at - 1].from > span.from) --at;
    auto end = at > 0 ? after_blanks(unread[at - 1].to) : span.to;
    if (byte(end) == ',') end = after_blanks(end + 1);
    if (at > 0 && end == span.from) {
      unread[at - 1].to = span.to;
      return;
    }
    unread.push_back(span);
    for (auto i = unread.size() - 1; i > at; --i) unread[i] = unread[i - 1];
    unread[at] = span;
  }
  /// Returns true if the text names a month in which a year that begins in spring still has its old number, or a style.
  [[nodiscard]] constexpr bool year_begins_in_spring() const {
    for (auto const& span : date_.unread)
      for (auto at = span.from; at < span.to; at += point(at).bytes) {
        if (at > 0 && word_goes_on(at - 1)) continue;
        auto const month = month_at(at);
        if (month > 0 && month <= months_before_spring) return true;
        auto style = cursor(at);
        if (style.take_in_any_case("n.s.") || style.take_in_any_case("o.s.")) return true;
      }
    return false;
  }
  /// Returns true if the year in brackets can be the one printed: the same, by another beginning of the year (28 Jan. 1648
  /// [1649]), or by the Hijra (AH 1221 [1806]), whose years have 354.37 days (from memory).
  [[nodiscard]] constexpr bool is_same_year(YearRange printed, YearRange bracketed) const {
    if (printed.meets(bracketed)) return true;
    if (bracketed == printed.to + 1 && year_begins_in_spring()) return true;
    auto const hijra = static_cast<int>(622 + (printed.from - 1) * 0.970224);
    return printed.is_one_year() && printed.from < 1400 && YearRange{hijra - 1, hijra + 1}.meets(bracketed);
  }
  /// Returns true if the years in brackets are a part of a range of several years that is printed: 1641-45 [v. 1, 1645].
  [[nodiscard]] constexpr bool is_part_of_range() const {
    if (!plain_ || !bracket_ || !plain_->joined || plain_->clipped) return false;
    auto const &all = plain_->written, &part = bracket_->written;
    return (all.to > all.from + 1 || plain_->ends) && all.from <= part.from && part.to <= all.to && part != all;
  }
  /// Returns true if a year of ours is printed and the one in brackets is its number in another calendar: 1786 (1201 H.),
  /// 1799 (an VII).
  [[nodiscard]] constexpr bool is_of_other_calendar() const {
    if (!plain_ || !bracket_ || plain_->clipped || !plain_->era.empty() || plain_->republic) return false;
    bool const of_creation = bracket_->clipped && !bracket_->written.is_one_year(); // [5567] 1807
    return !bracket_->era.empty() || of_creation || (bracket_->republic && plain_->written.meets(bracket_->written));
  }

  /// The first years of printing: a lower number is of another era. Estimated.
  static constexpr int first_of_print = 1400;
  /// Returns true if the two years after a stroke are those in which one year of another calendar falls, 5567 [1806/07],
  /// and not one year that begins in spring.
  [[nodiscard]] constexpr bool runs_over_two(Item const& ours) const {
    if (!other_calendar_) return false;
    auto const& other = *other_calendar_;
    bool const clipped = other.clipped && other.written.is_one_year() && other.written.meets(ours.written);
    return !clipped;
  }

protected:
  std::size_t told_{}; // the text up to here is read or listed as unread
  bool no_date_{};     // a word says that there is none
  StatedDate date_{};

  constexpr explicit DateAnswer(std::string_view text) : DateLookahead{text} {}
  /// Lists the text from the last listed position up to `from` as unread, unless it is only punctuation.
  constexpr void tell(std::size_t from, std::size_t to) {
    auto const is_punctuation = [&](std::size_t i) {
      auto const c = point(i).value;
      return c < 0x80 ? !is_latin_letter(static_cast<char>(c)) && !is_digit(static_cast<char>(c))
                      : is_blank(c) || is_dash(c) || is_quotation_mark(c);
    };
    auto first = told_, last = told_;
    for (auto i = told_; i < from; i += point(i).bytes)
      if (!is_punctuation(i))
        last = i + point(i).bytes;
      else if (last == told_)
        first = i + point(i).bytes;
    if (last > first) date_.unread.push_back({first, last});
    if (to > told_) told_ = to;
  }
  /// Adds an item to its group.
  constexpr void keep(Item const& read) {
    if (read.part == DateWord::colophon && !said_.part.empty()) tell(said_.part.from, said_.part.to);
    tell(said_.republic && said_.from < read.at.from ? said_.from : read.at.from, read.at.to);
    bool const of_part = read.part != DateWord::other && plain_; // 1607 (colophon: 1608): nobody corrects the title
    bool const of_preface = read.part == DateWord::preface;
    if (of_part && of_preface && plain_->part != DateWord::preface) {
      said_ = {};
      return tell_other_years(read.at);
    }
    auto& heap = said_.correction ? correction_ : depth_ > 0 && !of_part ? bracket_ : plain_;
    auto const is_open = [](Item const& item) { return item.open_before || item.open_after; };
    // one of the two is of another era, or of the calendar of the Republic beside the same year of ours
    bool const of_republic = heap && heap->republic != read.republic && heap->years.meets(read.years);
    bool const of_era = heap && (heap->era.empty() != read.era.empty() || of_republic);
    bool const ours = read.era.empty() && !read.republic;
    if (!ours || read.clipped || read.written.from < first_of_print) other_calendar_ = read;
    if (heap && heap->part == DateWord::preface && !of_preface) { // preface 1605, title 1607
      tell_other_years(heap->at);
      heap = read;
    } else if (heap && heap->copyright && !read.copyright && !said_.correction) { // c1649, 1650
      tell_other_years(heap->at);
      heap = read;
    } else if (!heap || said_.correction || heap->clipped || (of_era && ours)) {
      if (of_republic && !said_.correction) tell_other_years(heap->at);
      heap = read;
    } else if (of_era || (read.copyright && !heap->copyright))
      tell_other_years(read.at);
    else if (said_.reprinted && &heap == &plain_)
      tell_other_years(heap->at), heap = read;
    else if (read.clipped)
      return;
    else if (is_open(*heap) && is_open(read) && heap->open_before != read.open_before &&
             heap->years.meets(read.years)) {
      heap->years = {heap->open_after ? heap->written.from : read.written.from,
                     heap->open_before ? heap->written.to : read.written.to}; // not before ... and not after
      heap->written = heap->years, heap->open_before = heap->open_after = false;
    } else {
      bool const same = heap->years == read.years;
      // MDCL [1650]-MDCLII: the supplied first year and what goes on from it
      bool const goes_on = read.joined && heap->written.is_one_year() && heap->written.from == read.written.from;
      if (goes_on) heap->joined = heap->ends = true;
      if (!same && !goes_on && !said_.between) date_.warn(error(Problem::several_dates, read.at));
      heap->written = heap->written.joined(read.written), heap->years = heap->years.joined(read.years);
      heap->probable = heap->probable || read.probable, heap->about = heap->about || read.about;
      heap->doubled = heap->doubled && same, heap->roman = heap->roman && read.roman;
    }
    if (date_.read.empty()) date_.read = read.at;
    date_.read.to = read.at.to;
    bool const between = said_.between;
    said_ = {};
    said_.between = between;
  }
  /// Returns the date of the first group that is not empty.
  [[nodiscard]] constexpr Expected<StatedDate> answer() {
    tell(text_.size(), text_.size());
    bool const in_bracket = bracket_ && !is_part_of_range() && !is_of_other_calendar();
    auto const* best = correction_ ? &*correction_ : in_bracket ? &*bracket_ : plain_ ? &*plain_ : nullptr;
    if (best == nullptr) {
      if (no_date_) return static_cast<StatedDate&&>(date_);
      return error(Problem::not_years, date_.unread.empty() ? TextSpan{0, text_.size()} : date_.unread.front());
    }
    if (!best->era.empty()) return error(Problem::other_era, best->era);
    bool const two_years = best->doubled && runs_over_two(*best);
    date_.years = best->years, date_.written = best->written;
    if (two_years && !best->open_before) --date_.years->from;
    if (bracket_ && !correction_ && best != &*bracket_) tell_other_years(bracket_->at);
    date_.corrected = correction_.has_value();
    date_.supplied = date_.supplied || best == (bracket_ ? &*bracket_ : nullptr);
    date_.probable = best->probable, date_.approximate = best->about, date_.double_dated = best->doubled && !two_years;
    date_.open = best->open_before || best->open_after;
    auto const* printed = plain_ && !plain_->clipped ? &*plain_ : correction_ && bracket_ ? &*bracket_ : nullptr;
    if (printed != nullptr && printed != best) date_.printed = printed->written;
    if (best->clipped) date_.warn(error(Problem::year_clipped, best->at, best->written.from));
    if (!correction_ && bracket_ && bracket_->era.empty() && printed != nullptr && printed->era.empty() &&
        !is_same_year(printed->written, bracket_->written))
      date_.warn(error(Problem::date_numerals_differ, bracket_->at, printed->written.from));
    return static_cast<StatedDate&&>(date_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
