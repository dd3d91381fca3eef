// SPDX-License-Identifier: MIT
/// Reads a statement of date. The reader looks for years and for words about years, and skips everything else: day and
/// month, the text of the imprint. It collects years in three groups - corrections, years in brackets, printed years -
/// and the first group that is not empty is the answer.
#pragma once

#include <bifolium/core/detail/date_lookahead.hpp>
#include <bifolium/core/stated_date.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class DateReader : DateLookahead {
  std::size_t at_{}, told_{}; // told_: the text up to here is read or listed as unread
  std::optional<Item> plain_{}, bracket_{}, correction_{};
  std::optional<TextSpan> era_{}; // the last word or sign for another era that may be of the year after it
  bool no_date_{};
  StatedDate date_{};

  /// Adds what the words before the item say, and makes its years as wide as all of it says.
  constexpr void settle(Item& read, bool several) {
    read.years = read.doubled ? YearRange{read.written.to} : read.written;
    read.about = read.about || said_.about, read.probable = read.probable || said_.probable;
    read.open_after = read.open_after || said_.not_before, read.open_before = read.open_before || said_.not_after;
    if ((read.probable || read.about) && !several) read.years = read.years.widened(5);
    if (read.open_after) read.years.to = read.written.to + 50;
    if (read.open_before) read.years.from = read.written.from - 50;
    if (said_.bare_c && read.written.from >= 1790)
      date_.warn(error(Problem::circa_or_copyright, {said_.c_at, read.at.to}));
  }
  /// Adds a word after the years, or a word or sign before them, for another era. Years counted from the creation are
  /// read already.
  constexpr void settle_era(Item& read, bool several) const {
    if (read.clipped && several) return;
    constexpr int printing = 1440; // since then initials may stand before a year, and one after it
    bool const early = read.written.from < printing || read.clipped;
    bool const stop = several && byte(read.at.to) == '.'; // 2nd cent. B.C.
    auto const after = era_at(after_blanks(read.at.to + (stop ? 1 : 0)), true);
    bool const initial = after.size() < 2 || (after.size() == 2 && byte(after.to - 1) == '.');
    if (!after.empty() && (early || !initial)) read.era = {read.at.from, after.to};
    bool const adjoins = era_ && era_->to <= read.at.from && after_blanks(era_->to) == read.at.from;
    auto const letters = adjoins ? cursor(era_->from).take_letters().size() : 0; // none of a sign, few of initials
    if (adjoins && (early || letters == 0 || letters > 3)) read.era = {era_->from, read.at.to};
    if (read.era.to > read.at.to) read.at.to = read.era.to;
  }
  /// Reads 1725, 1715-16, 1725/6 or 1727 or 1728, with the question mark or the rest of the range after it.
  [[nodiscard]] constexpr Expected<std::optional<Item>> item() {
    auto const first = atom(at_);
    if (!first) return std::optional<Item>{};
    Item read{.written = first->years,
              .at = {at_, first->to},
              .roman = first->roman,
              .clipped = first->clipped,
              .republic = said_.republic};
    if (first->initial) date_.warn(error(Problem::year_clipped, {at_, first->to}, first->years.from));
    bool several = first->several;
    depth_ += first->opened;
    date_.supplied = date_.supplied || first->parted;
    auto to = first->to;
    while (true) {
      if (auto const end = remark(read, after_blanks(to), several)) {
        to = end;
        continue;
      }
      auto const joined_by = joint(to);
      auto const second = joined_by.to > 0 ? second_year(joined_by, *first) : std::nullopt;
      if (!second) break;
      if (said_.republic && second->digits == 4) { // an XII-1804: one year, in two calendars
        if (!joined_by.word) to = joined_by.to;
        break;
      }
      if (second->years.from < first->years.from || (read.joined && second->years.to < read.written.to)) {
        if (joined_by.word) break;
        return error(Problem::impossible_years, {at_, second->to});
      }
      read.doubled =
          joined_by.slash && !read.joined && first->years.is_one_year() && second->years == first->years.to + 1;
      read.written = read.written.joined(second->years);
      read.joined = true, several = several || second->several, read.about = read.about || joined_by.about;
      date_.supplied = date_.supplied || joined_by.brackets;
      depth_ += joined_by.opened + second->opened, to = second->to;
    }
    if (first->century && !read.joined && said_.half == DateWord::other)
      if (auto const part = part_after_century(to); part.to > 0)
        read.written = part_of_century(first->years.from - 1, part.says), to = part.to;
    read.at.to = to;
    settle(read, several);
    settle_era(read, several);
    return std::optional{read};
  }

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
  /// Adds an item to its group.
  constexpr void keep(Item const& read) {
    tell(said_.republic && said_.from < read.at.from ? said_.from : read.at.from, read.at.to);
    bool const of_part =
        (said_.colophon || said_.preface) && plain_; // 1607 (colophon: 1608): nobody corrects the title
    if (of_part && said_.preface) {
      said_ = {};
      return tell_other_years(read.at);
    }
    auto& heap = said_.correction ? correction_ : depth_ > 0 && !of_part ? bracket_ : plain_;
    auto const is_open = [](Item const& item) { return item.open_before || item.open_after; };
    // one of the two is of another era, or of the calendar of the Republic beside the same year of ours
    bool const of_republic = heap && heap->republic != read.republic && heap->years.meets(read.years);
    bool const of_era = heap && (heap->era.empty() != read.era.empty() || of_republic);
    bool const ours = read.era.empty() && !read.republic;
    if (!heap || said_.correction || heap->clipped || (of_era && ours)) {
      if (of_republic && !said_.correction) tell_other_years(heap->at);
      heap = read;
    } else if (of_era)
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
      if (!same && !said_.between) date_.warn(error(Problem::several_dates, read.at));
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
  constexpr void say(WordAt const& word) {
    bool told = true;
    switch (word.says) {
    case DateWord::about:
      said_.about = true;
      said_.bare_c = word.words == "c" && is_digit(byte(word.to)) && byte(word.to - 1) != '.';
      said_.c_at = at_;
      break;
    case DateWord::correction:
      said_.correction = true;
      break;
    case DateWord::between:
      said_.between = true;
      break;
    case DateWord::not_before:
      said_.not_before = true;
      break;
    case DateWord::to: // bis 1641; after a year the range has taken it
      if (word.words != "bis" || !stands_before_year(word.to)) return pass(word);
      said_.not_after = true;
      break;
    case DateWord::not_after:
      said_.not_after = true;
      break;
    case DateWord::no_date:
      no_date_ = true;
      break;
    case DateWord::reprinted:
      said_.reprinted = true;
      break;
    case DateWord::republic:
      said_.republic = true, said_.from = at_, told = false;
      break;
    case DateWord::our_era:
      told = stands_before_year(word.to) || after_blanks(told_) == at_;
      break;
    case DateWord::colophon:
      said_.colophon = true, told = false;
      break;
    case DateWord::preface:
      said_.preface = true, told = false;
      break;
    case DateWord::century:
      said_.century = true;
      break;
    case DateWord::early_half:
    case DateWord::late_half:
    case DateWord::middle_half:
    case DateWord::first_quarter:
    case DateWord::second_quarter:
    case DateWord::third_quarter:
    case DateWord::fourth_quarter:
      said_.half = word.says;
      break;
    default:
      told = false;
    }
    if (told) tell(at_, word.to);
    at_ = word.to;
  }
  /// Leaves a word unread.
  constexpr void pass(WordAt const& word) { at_ = word.to; }
  /// Skips a word or digits that do not concern the years.
  constexpr void pass_over() {
    auto const start = at_;
    while (at_ < text_.size() && (word_goes_on(at_) || is_digit(text_[at_]))) at_ += point(at_).bytes;
    if (at_ == start) at_ += point(at_).bytes;
  }
  constexpr void bracket(bool opens) {
    depth_ = opens ? (depth_ > 0 ? depth_ : 0) + 1 : depth_ > 0 ? depth_ - 1 : 0;
    said_ = {};
    ++at_;
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
    return all.to > all.from + 1 && all.from <= part.from && part.to <= all.to && part != all;
  }
  /// Returns true if a year of ours is printed and the one in brackets is its number in another calendar: 1786 (1201 H.),
  /// 1799 (an VII).
  [[nodiscard]] constexpr bool is_of_other_calendar() const {
    if (!plain_ || !bracket_ || plain_->clipped || !plain_->era.empty() || plain_->republic) return false;
    return !bracket_->era.empty() || (bracket_->republic && plain_->written.meets(bracket_->written));
  }
  [[nodiscard]] constexpr Expected<StatedDate> answer() {
    tell(text_.size(), text_.size());
    bool const in_bracket = bracket_ && !is_part_of_range() && !is_of_other_calendar();
    auto const* best = correction_ ? &*correction_ : in_bracket ? &*bracket_ : plain_ ? &*plain_ : nullptr;
    if (best == nullptr) {
      if (no_date_) return static_cast<StatedDate&&>(date_);
      return error(Problem::not_years, date_.unread.empty() ? TextSpan{0, text_.size()} : date_.unread.front());
    }
    if (!best->era.empty()) return error(Problem::other_era, best->era);
    date_.years = best->years, date_.written = best->written;
    if (bracket_ && !correction_ && best != &*bracket_) tell_other_years(bracket_->at);
    date_.corrected = correction_.has_value();
    date_.supplied = date_.supplied || best == (bracket_ ? &*bracket_ : nullptr);
    date_.probable = best->probable, date_.approximate = best->about, date_.double_dated = best->doubled;
    date_.open = best->open_before || best->open_after;
    auto const* printed = plain_ && !plain_->clipped ? &*plain_ : correction_ && bracket_ ? &*bracket_ : nullptr;
    if (printed != nullptr && printed != best) date_.printed = printed->written;
    if (best->clipped) date_.warn(error(Problem::year_clipped, best->at, best->written.from));
    if (!correction_ && bracket_ && bracket_->era.empty() && printed != nullptr && printed->era.empty() &&
        !is_same_year(printed->written, bracket_->written))
      date_.warn(error(Problem::date_numerals_differ, bracket_->at, printed->written.from));
    return static_cast<StatedDate&&>(date_);
  }

public:
  constexpr explicit DateReader(std::string_view text) : DateLookahead{text} {}

  constexpr Expected<StatedDate> read() {
    while (true) {
      at_ = after_blanks(at_);
      if (at_ == text_.size()) return answer();
      char const c = text_[at_];
      if (c == '[' || c == '(' || c == ']' || c == ')') {
        if (c != '(' || roman_atom(at_) == std::nullopt) {
          bracket(c == '[' || c == '(');
          continue;
        }
      }
      if (c == '=') {
        said_.correction = true;
        ++at_;
        continue;
      }
      if (auto const minus = minus_at(at_, told_); !minus.empty()) {
        era_ = minus, at_ = minus.to;
        continue;
      }
      if (auto const era = era_at(at_, false); !era.empty()) { // before the word: the A of A.H. is also one
        era_ = era, at_ = era.to;
        continue;
      }
      if (auto const known = word(at_); known.to > 0) { // this test comes before numerals, because mid is not a numeral
        say(known);
        continue;
      }
      if (c == '?' && (is_digit(byte(at_ + 1)) || imprint_numeral_after(at_ + 1) > 0)) { // ?1641
        said_.probable = true;
        ++at_;
        continue;
      }
      auto const found = item();
      if (!found) return found.error();
      if (*found) {
        at_ = (*found)->at.to;
        keep(**found);
      } else
        pass_over();
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
