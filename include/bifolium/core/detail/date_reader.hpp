// SPDX-License-Identifier: MIT
/// Reads a statement of date. Nobody writes dates by a grammar: a day, the words of the imprint or a printer may stand beside
/// the year. So the reader looks for years and for words about years, and skips everything else.
#pragma once

#include <bifolium/core/detail/date_answer.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class DateReader : DateAnswer {
  std::size_t at_{};
  std::optional<TextSpan> era_{}; // the last word or sign for another era that may be of the year after it

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
  /// Returns true if a comma parts the text from `from` to `to` from what stands before or after it.
  [[nodiscard]] constexpr bool stands_at_comma(std::size_t from, std::size_t to) const {
    auto const before = before_blanks(text_, from);
    return byte(to) == ',' || (before > 0 && text_[before - 1] == ',');
  }
  /// Reads 1725, 1715-16, 1725/6 or 1727 or 1728, with the question mark or the rest of the range after it.
  [[nodiscard]] constexpr Expected<std::optional<Item>> item() {
    auto const first = atom(at_);
    if (!first) return std::optional<Item>{};
    Item read{.written = first->years,
              .at = {at_, first->to},
              .roman = first->roman,
              .clipped = first->clipped,
              .republic = said_.republic,
              .copyright = said_.bare_c && stands_at_comma(said_.c_at, first->to),
              .part = said_.preface    ? DateWord::preface
                      : said_.colophon ? DateWord::colophon
                                       : DateWord::other};
    if (first->with_day) date_.warn(error(Problem::year_with_day, {at_, first->to}, first->years.from));
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
    if (auto const part = part_after(read.at.to); part.to > 0) read.part = part.says, read.at.to = part.to;
    return std::optional{read};
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
      said_.colophon = true, said_.part = {at_, word.to}, told = false;
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
    said_ = opens ? Said{.part = said_.part, .colophon = said_.colophon, .preface = said_.preface}
                  : Said{}; // colophon (1608)
    ++at_;
  }

public:
  constexpr explicit DateReader(std::string_view text) : DateAnswer{text} {}

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
