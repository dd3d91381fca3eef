// SPDX-License-Identifier: MIT
/// The extent that a catalogue states - "[8], 205, [3] p.", "[2], 152 leaves", "50 Bl." - against the formula. Brackets
/// hold pages without numbers; "[i.e. 271]" corrects the number before it. Catalogues often leave out a blank at the end,
/// so two pages or a leaf fewer than the formula is told apart from a contradiction. The arithmetic is shown.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/core/utf8.hpp>

namespace bifolium {
inline namespace v0 {

/// An extent: so many pages or leaves.
struct Extent {
  std::int64_t number{};
  bool in_leaves{};
  std::string sum{}; ///< "8 + 205 + 3"
};

/// Reads an extent. Roman numerals count as figures; plates and what follows are left alone.
/// error: not_an_extent, number_too_large.
[[nodiscard]] inline Expected<Extent> read_extent(std::string_view text) {
  Extent extent;
  bool any = false;
  std::int64_t last = 0;
  std::size_t at = 0;
  auto const fail = [&](Problem problem) {
    return error_at(problem, 1, column_of(text, at), text.data() + at, text.size() - at);
  };
  auto const begins = [&](std::string_view word) { return text.substr(at).starts_with(word); };
  auto const figure = [&]() -> std::int64_t {
    std::int64_t n = 0;
    auto const from = at;
    for (; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at)
      n = n > 9999999 ? n : n * 10 + (text[at] - '0');
    if (at > from) return n;
    std::int64_t before = 0;
    for (; at < text.size(); ++at) {
      std::int64_t value = 0;
      switch (text[at] >= 'A' && text[at] <= 'Z' ? text[at] - 'A' + 'a' : text[at]) {
      case 'i':
      case 'j':
        value = 1;
        break;
      case 'v':
        value = 5;
        break;
      case 'x':
        value = 10;
        break;
      case 'l':
        value = 50;
        break;
      case 'c':
        value = 100;
        break;
      case 'd':
        value = 500;
        break;
      case 'm':
        value = 1000;
        break;
      default:
        break;
      }
      if (value == 0 || n > 9999999) break;
      n += before > 0 && value > before ? value - 2 * before : value;
      before = value;
    }
    return at > from ? n : -1;
  };
  auto const settle = [&] {
    if (!any) return;
    if (!extent.sum.empty()) extent.sum += " + ";
    extent.sum += std::to_string(last);
    extent.number += last;
  };
  while (at < text.size()) {
    if (text[at] == ' ' || text[at] == ',' || text[at] == ';' || text[at] == '+') {
      ++at;
      continue;
    }
    if (any && (begins("p.") || begins("pages") || begins("leaves") || begins("leaf") || begins("Bl.") ||
                begins("ll.") || begins("ff.") || begins("l."))) {
      settle();
      extent.in_leaves = text[at] != 'p';
      if (extent.number > 99999999) return fail(Problem::number_too_large);
      return extent;
    }
    bool const bracket = text[at] == '[';
    if (bracket) ++at;
    bool const corrects = bracket && begins("i.e.");
    if (corrects) at += 4;
    while (at < text.size() && text[at] == ' ') ++at;
    auto const n = figure();
    if (n < 0 || (corrects && !any)) return fail(Problem::not_an_extent);
    if (n > 9999999) return fail(Problem::number_too_large);
    if (at < text.size() && bracket && text[at] == '+') ++at; // [48+] p.: imperfect
    if (bracket && (at >= text.size() || text[at] != ']')) return fail(Problem::not_an_extent);
    if (bracket) ++at;
    if (at < text.size() && is_dash(decode(text, at).value)) { // 337-340: from here to there
      at += decode(text, at).bytes;
      auto const to = figure();
      if (to < n) return fail(Problem::not_an_extent);
      settle();
      last = to - n + 1;
    } else {
      if (!corrects) settle();
      last = n;
    }
    any = true;
  }
  return fail(any ? Problem::text_ends : Problem::not_an_extent);
}

/// How an extent stands to a formula.
enum class ExtentAgrees : std::uint8_t {
  agrees,           ///< to the page, or with the blank verso at the end not counted
  last_not_counted, ///< a blank leaf at the end was not counted
  contradicts
};
struct ExtentCompared {
  ExtentAgrees verdict{};
  std::string words{}; ///< the arithmetic
};

/// Compares the formula with an extent.
[[nodiscard]] inline ExtentCompared compare_extent(Formula const& formula, Extent const& extent) {
  auto const leaves = leaf_count(formula);
  auto const pages = extent.in_leaves ? 2 * extent.number : extent.number;
  auto const short_by = 2 * leaves - pages;
  ExtentCompared result{short_by == 0 || short_by == 1  ? ExtentAgrees::agrees
                        : short_by > 1 && short_by <= 3 ? ExtentAgrees::last_not_counted
                                                        : ExtentAgrees::contradicts,
                        {}};
  result.words = extent.sum + " = " + std::to_string(extent.number) + (extent.in_leaves ? " leaves" : " pages") +
                 "; the formula has " + std::to_string(leaves) + " leaves, " + std::to_string(2 * leaves) + " pages: ";
  result.words += result.verdict == ExtentAgrees::agrees ? "agrees"
                  : result.verdict == ExtentAgrees::last_not_counted
                      ? "agrees if a blank leaf at the end was not counted"
                      : "contradicts";
  return result;
}

} // namespace v0
} // namespace bifolium
