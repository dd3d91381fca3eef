// SPDX-License-Identifier: MIT
/// The pieces of which statements of pages consist: figures arabic and roman, raised ones, units, quotation marks, words; and
/// where in the text each stands. Statement and extent share them.
#pragma once

#include <bifolium/record/pagination.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PaginationScanner {
protected:
  std::string_view text_;
  std::size_t at_{};
  bool extent_;
  bool ranges_{}; ///< a run from - to was met: lone numbers are then single pages
  bool unit_seen_{};
  Pagination read_{};

  struct Figure {
    std::int64_t value{-1};
    Numerals numerals{};
  };
  static constexpr std::int64_t most = 9999999;

  [[nodiscard]] char byte(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  [[nodiscard]] bool begins(std::string_view word) const { return text_.substr(at_).starts_with(word); }
  bool take(std::string_view word) { return begins(word) ? (at_ += word.size(), true) : false; }
  /// A word, not the head of a longer one.
  bool take_word(std::string_view word) {
    if (!begins(word) || is_latin_letter(byte(word.size()))) return false;
    at_ += word.size();
    return true;
  }
  void blanks() {
    while (at_ < text_.size()) {
      auto const point = decode(text_, at_);
      if (!is_blank(point.value) && point.value != '\n' && point.value != '\r') return;
      at_ += point.bytes;
    }
  }
  bool dash() {
    if (at_ >= text_.size()) return false;
    auto const point = decode(text_, at_);
    if (!is_dash(point.value)) return false;
    at_ += point.bytes;
    return true;
  }
  Figure figure() {
    std::int64_t n = 0;
    auto const from = at_;
    for (; is_digit(byte()); ++at_) n = n > most ? n : n * 10 + (byte() - '0');
    if (at_ > from) return {n, Numerals::arabic};
    auto const roman = roman_numeral(text_.substr(at_));
    if (roman.bytes == 0 || is_latin_letter(byte(roman.bytes))) return {};
    at_ += roman.bytes;
    return {roman.value, Numerals::roman};
  }
  [[nodiscard]] Error error(Problem problem, std::size_t from) const {
    return error_at(problem, 1, column_of(text_, from), text_.data() + from, text_.size() - from);
  }
  void warn(Problem problem, std::size_t from) {
    read_.warnings.push_back(error_at(problem, 1, column_of(text_, from), text_.data() + from, at_ - from));
  }

  /// "pp.", "p.", "leaves": true with by_leaf set. Longer words first.
  bool unit() {
    struct Unit {
      std::string_view word;
      bool by_leaf;
    };
    for (auto const& [word, by_leaf] :
         {Unit{"pages", false}, Unit{"pp.", false}, Unit{"p.", false}, Unit{"leaves", true}, Unit{"leaf", true},
          Unit{"foll.", true}, Unit{"fol.", true}, Unit{"Bl.", true}, Unit{"ll.", true}, Unit{"ff.", true},
          Unit{"f.", true}, Unit{"l.", true}})
      if (take(word)) {
        read_.by_leaf = by_leaf;
        return unit_seen_ = true;
      }
    return false;
  }
  void quotation_mark() {
    if (at_ >= text_.size()) return;
    auto const point = decode(text_, at_);
    if (is_quotation_mark(point.value)) at_ += point.bytes;
  }
  struct Quoted {
    Figure number;
    int series{};
  };
  Quoted quoted() {
    quotation_mark();
    auto const series = raised();
    auto const number = figure();
    quotation_mark();
    return {number, series};
  }
  int raised() {
    int series = 0;
    while (at_ < text_.size() && superscript_digit(decode(text_, at_).value) >= 0) {
      series = series > 99 ? series : series * 10 + superscript_digit(decode(text_, at_).value);
      at_ += decode(text_, at_).bytes;
    }
    return series > 99 ? 99 : series;
  }

  PaginationScanner(std::string_view text, bool extent) : text_{text}, extent_{extent} {}
};

} // namespace detail
} // namespace v0
} // namespace bifolium
