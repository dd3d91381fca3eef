// SPDX-License-Identifier: MIT
/// Gives the number printed on a page, and the pages on which a number is printed. A reader who is given "p. 207" looks
/// for a printed number; the book may have it twice, or where 197 should be.
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/leaf/alphabet.hpp>
#include <bifolium/leaf/roman.hpp>
#include <bifolium/record/pagination.hpp>

#include <optional>
#include <string>

namespace bifolium {
inline namespace v0 {

/// The number of one page.
struct PrintedNumber {
  Numbering numbering{Numbering::none}; ///< whether the number is printed
  Numerals numerals{};                  ///< the numerals of its run
  std::uint8_t series{};                ///< the sequence of its run: 2 for a second sequence, otherwise 0
  bool starred{};                       ///< true if the numbers of its run have a star: *57
  std::optional<std::int64_t> number{}; ///< the number as printed or as inferred, if the page has one
  /// the correct number, by the order of the pages, if the page has a number
  std::optional<std::int64_t> should_be{};
  bool doubtful{}; ///< true if its run has a mistake, and the statement does not say where
  /// Returns true if the page has another number than the order of the pages requires.
  [[nodiscard]] constexpr bool misprinted() const noexcept { return number != should_be; }
  friend constexpr bool operator==(PrintedNumber const&, PrintedNumber const&) = default;
};

namespace detail {

/// Returns true if the misprinted number belongs to this run. If several runs have the number, the first is meant.
constexpr bool is_of_run(Misprint const& misprint, PageRun const& run) noexcept {
  return run.numbering == Numbering::printed && misprint.numerals == run.numerals && misprint.series == run.series &&
         !run.starred && run.first <= misprint.should_be && misprint.should_be <= run.last;
}
/// Returns the index of the run that has the misprinted page.
inline std::size_t run_of(Misprint const& misprint, Pagination const& pagination) {
  std::size_t run = 0;
  while (run < pagination.runs.size() && !is_of_run(misprint, pagination.runs[run])) ++run;
  return run;
}
inline PrintedNumber number_in_run(Pagination const& pagination, std::size_t run, std::int64_t index) {
  auto const& here = pagination.runs[run];
  if (here.numbering == Numbering::none) return {};
  PrintedNumber result{here.numbering,     here.numerals,      here.series,    here.starred,
                       here.first + index, here.first + index, !here.regular()};
  if (index + 1 == here.count)
    result.number = result.should_be = here.last; // the statement always gives the last number
  for (auto const& misprint : pagination.misprints)
    if (misprint.should_be == result.should_be && is_of_run(misprint, here) && run_of(misprint, pagination) == run) {
      result.number = misprint.printed;
      break;
    }
  return result;
}
/// Returns the page, in its run from 0, of a number that counts in the unit of the run.
constexpr std::int64_t page_in_run(PageRun const& run, std::int64_t index) noexcept {
  return run.unit == PageUnit::leaves ? 2 * index : run.unit == PageUnit::columns ? index / 2 : index;
}

} // namespace detail

/// Returns the number of page `page`, where pages count from 1, or no value if the statement has no such page. The
/// verso of a numbered leaf has no number. If a page has two columns, the number of the first is returned.
[[nodiscard]] inline std::optional<PrintedNumber> printed_number(Pagination const& pagination, std::int64_t page) {
  if (page < 1) return std::nullopt;
  auto index = page - 1;
  for (std::size_t r = 0; r < pagination.runs.size(); ++r) {
    auto const& run = pagination.runs[r];
    if (index >= run.pages()) {
      index -= run.pages();
      continue;
    }
    if (run.unit == PageUnit::leaves && index % 2 == 1) return PrintedNumber{};
    auto const in_unit = run.unit == PageUnit::leaves ? index / 2 : run.unit == PageUnit::columns ? 2 * index : index;
    return detail::number_in_run(pagination, r, in_unit);
  }
  return std::nullopt;
}
/// Returns the number of the page that a reference means, or no value if the statement has no such page. A reference
/// without a side means the recto.
[[nodiscard]] inline std::optional<PrintedNumber> printed_number(IdealCopy const& book, Pagination const& pagination,
                                                                 Reference const& reference) {
  auto const page = page_of_book(book, reference);
  return page ? printed_number(pagination, *page) : std::nullopt;
}

/// A page that has a number, or should have it.
struct NumberedPage {
  std::int64_t page{};   ///< the page, counting all pages from 1; of a numbered leaf, the recto
  PrintedNumber bears{}; ///< the number of this page
  friend constexpr bool operator==(NumberedPage const&, NumberedPage const&) = default;
};
/// Returns all pages that have a number or should have it, in order. There can be none, one, or several if numbers are
/// repeated, a second sequence begins, or another page has the number by mistake.
[[nodiscard]] inline std::vector<NumberedPage> pages_numbered(Pagination const& pagination, std::int64_t number,
                                                              Numerals numerals = Numerals::arabic) {
  struct Wanted {
    std::size_t run;
    std::int64_t number;
  };
  std::vector<Wanted> misprinted; // pages that have the number by mistake, in the order of the runs
  for (auto const& misprint : pagination.misprints)
    if (misprint.printed == number && misprint.numerals == numerals)
      misprinted.push_back({detail::run_of(misprint, pagination), misprint.should_be});
  std::vector<NumberedPage> found;
  std::int64_t before = 0;
  for (std::size_t r = 0; r < pagination.runs.size(); before += pagination.runs[r++].pages()) {
    auto const& run = pagination.runs[r];
    if (run.numbering == Numbering::none || run.numerals != numerals) continue;
    auto const first_of_run = found.size();
    auto const add = [&](std::int64_t wanted) {
      if (wanted < run.first || wanted > run.last) return;
      // in a run with a mistake the last number is certain, and the others are counted from the first
      auto const index = wanted == run.last ? run.count - 1 : wanted - run.first;
      if (index < 0 || index >= run.count) return;
      NumberedPage const page{before + detail::page_in_run(run, index) + 1,
                              detail::number_in_run(pagination, r, index)};
      auto at = found.size();
      for (; at > first_of_run && found[at - 1].page > page.page; --at) {
      }
      if (at > first_of_run && found[at - 1].page == page.page) return;
      found.insert(found.begin() + static_cast<std::ptrdiff_t>(at), page);
    };
    add(number);
    for (auto const& one : misprinted)
      if (one.run == r) add(one.number);
  }
  return found;
}

/// Returns all pages that have a number or should have it, as references, in order. Pages that the book does not have
/// are left out.
[[nodiscard]] inline std::vector<Reference> references_numbered(IdealCopy const& book, Pagination const& pagination,
                                                                std::int64_t number,
                                                                Numerals numerals = Numerals::arabic) {
  std::vector<Reference> found;
  for (auto const& page : pages_numbered(pagination, number, numerals))
    if (auto const reference = reference_of_page(book, page.page)) found.push_back(*reference);
  return found;
}

/// Writes a number in arabic, in small Roman numerals or as a small letter. Above 4999 Roman numerals, and above 23
/// letters, are written in arabic.
[[nodiscard]] inline std::string page_figure(std::int64_t number, Numerals numerals) {
  constexpr Alphabet alphabet;
  if (numerals == Numerals::letters && number > 0 && number <= alphabet.size())
    return {static_cast<char>('a' + alphabet.at(static_cast<int>(number)) - 1)};
  return numerals == Numerals::roman && number > 0 && number < 5000 ? std::string{small_roman(number).view()}
                                                                    : std::to_string(number);
}
/// Writes a number as the page has it: 45, xii, [206], ²3, *57; "54 [for 45]" if it is misprinted; "unnumbered".
[[nodiscard]] inline std::string to_words(PrintedNumber const& number) {
  if (!number.number || !number.should_be) return "unnumbered";
  auto const figure = [&](std::int64_t n) { return page_figure(n, number.numerals); };
  std::string text;
  if (number.series != 0) text.append(raised(number.series).view());
  if (number.starred) text += '*';
  if (number.numbering == Numbering::inferred)
    text += '[' + figure(*number.number) + ']';
  else
    text += figure(*number.number);
  if (number.misprinted()) text += " [for " + figure(*number.should_be) + ']';
  if (number.doubtful) text += '?';
  return text;
}

} // namespace v0
} // namespace bifolium
