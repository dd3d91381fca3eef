// SPDX-License-Identifier: MIT
/// What numbers a book bears on its pages or leaves: runs of them, with the pages between that bear none, and what the
/// printer got wrong. The formula says which leaf is which; this says what the reader finds printed there. The two are
/// kept apart, because a number may stand on two pages or on none, and a wrong number is a fact about the book.
/// Made by reading a statement: record/read_pagination.hpp.
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/core/raised.hpp>

namespace bifolium {
inline namespace v0 {

/// Whether the pages of a run bear their numbers.
enum class Numbering : std::uint8_t {
  printed,  ///< 1-205
  inferred, ///< [206], [i-iv]: they bear none, but have a place in the numbers
  none      ///< [8]: so many pages without numbers
};
/// In what figures pages are numbered.
enum class Numerals : std::uint8_t { arabic, roman };

/// Pages (or leaves) numbered without a break, or so many of them without numbers.
struct PageRun {
  Numbering numbering{};    ///< whether its pages bear their numbers
  Numerals numerals{};      ///< of no meaning where there are no numbers
  std::uint8_t series{};    ///< 2 for ²1-44, a second sequence; else 0
  std::int64_t first{};     ///< the numbers at its ends; 0 where there are none
  std::int64_t last{};      ///< as printed, right or wrong
  std::int64_t count{};     ///< how many pages (or leaves) it really has
  std::int64_t true_last{}; ///< 152 in 35-154 [=152], what the last should be; 0 where nothing is said

  /// Every page in it has a number that can be told.
  [[nodiscard]] constexpr bool regular() const noexcept {
    return numbering != Numbering::none && last - first + 1 == count;
  }
  friend constexpr bool operator==(PageRun const&, PageRun const&) = default;
};

/// A wrong number on one page: 45 printed as 54.
struct Misprint {
  std::int64_t should_be{}; ///< the number by the order of the pages
  std::int64_t printed{};   ///< the number the page bears
  Numerals numerals{};      ///< of the run it stands in
  std::uint8_t series{};    ///< of that run: 2 for a second sequence; else 0
  friend constexpr bool operator==(Misprint const&, Misprint const&) = default;
};

/// A pagination, or where `by_leaf` a foliation, as stated. Equality leaves the warnings out.
struct Pagination {
  std::vector<PageRun> runs{};       ///< in the order of the book
  std::vector<Misprint> misprints{}; ///< in the order of the statement
  bool by_leaf{};                    ///< numbers on leaves: the versos bear none
  bool unpaged{};                    ///< stated to bear no numbers, and not how many pages there are
  std::vector<Error> warnings{};     ///< what was doubtful in the statement, with column

  friend bool operator==(Pagination const& a, Pagination const& b) {
    return a.runs == b.runs && a.misprints == b.misprints && a.by_leaf == b.by_leaf && a.unpaged == b.unpaged;
  }
};

/// Pages of the statement; for a foliation twice its leaves.
[[nodiscard]] inline std::int64_t page_count(Pagination const& pagination) {
  std::int64_t total = 0;
  for (auto const& run : pagination.runs) total += run.count;
  return pagination.by_leaf ? 2 * total : total;
}

/// What one page bears.
struct PrintedNumber {
  Numbering numbering{Numbering::none}; ///< whether the page bears its number
  Numerals numerals{};                  ///< of its run
  std::uint8_t series{};                ///< of its run: 2 for a second sequence; else 0
  std::int64_t number{};                ///< as printed, or as inferred; 0 where there is none
  std::int64_t should_be{};             ///< the same unless it is misprinted
  bool doubtful{};                      ///< somewhere in its run the numbering is at fault, and where is not stated
  /// It bears another number than the order of the pages asks for.
  [[nodiscard]] constexpr bool misprinted() const noexcept { return number != should_be; }
  friend constexpr bool operator==(PrintedNumber const&, PrintedNumber const&) = default;
};

namespace detail {

/// The misprint on the page that should bear `number` of a run; the first run that has the number is meant.
inline Misprint const* misprint_of(Pagination const& pagination, std::size_t run, std::int64_t number) {
  auto const& here = pagination.runs[run];
  for (auto const& misprint : pagination.misprints) {
    if (misprint.should_be != number || misprint.numerals != here.numerals || misprint.series != here.series) continue;
    for (std::size_t r = 0; r < run; ++r) {
      auto const& earlier = pagination.runs[r];
      if (earlier.numbering == Numbering::printed && earlier.numerals == here.numerals &&
          earlier.series == here.series && earlier.first <= number && number <= earlier.last)
        return nullptr;
    }
    return &misprint;
  }
  return nullptr;
}
inline PrintedNumber number_in_run(Pagination const& pagination, std::size_t run, std::int64_t index) {
  auto const& here = pagination.runs[run];
  if (here.numbering == Numbering::none) return {};
  PrintedNumber result{here.numbering,     here.numerals,      here.series,
                       here.first + index, here.first + index, !here.regular()};
  if (index + 1 == here.count) result.number = result.should_be = here.last; // the last is stated in any case
  if (here.numbering == Numbering::printed)
    if (auto const* wrong = misprint_of(pagination, run, result.should_be)) result.number = wrong->printed;
  return result;
}

} // namespace detail

/// What page `page` bears, counting all pages from 1; nothing where the statement has no such page. The verso of a leaf
/// in a foliation bears none.
[[nodiscard]] inline std::optional<PrintedNumber> printed_number(Pagination const& pagination, std::int64_t page) {
  if (page < 1 || page > page_count(pagination)) return std::nullopt;
  if (pagination.by_leaf && page % 2 == 0) return PrintedNumber{};
  auto index = pagination.by_leaf ? page / 2 : page - 1;
  for (std::size_t r = 0; r < pagination.runs.size(); ++r) {
    if (index < pagination.runs[r].count) return detail::number_in_run(pagination, r, index);
    index -= pagination.runs[r].count;
  }
  return std::nullopt;
}
/// What a page of the formula bears. A side that is not said is the recto.
[[nodiscard]] inline std::optional<PrintedNumber> printed_number(Formula const& formula, Pagination const& pagination,
                                                                 Reference const& reference) {
  auto const page = page_of_book(formula, reference);
  return page ? printed_number(pagination, *page) : std::nullopt;
}

/// A page that bears the number asked for, or should bear it.
struct NumberedPage {
  std::int64_t page{};   ///< counting all pages from 1; in a foliation the recto
  PrintedNumber bears{}; ///< what that page bears
  friend constexpr bool operator==(NumberedPage const&, NumberedPage const&) = default;
};
/// All pages that bear a number or should bear it, in order: none, one, or several where numbers come twice, a second
/// sequence begins, or one is misprinted for another.
[[nodiscard]] inline std::vector<NumberedPage> pages_numbered(Pagination const& pagination, std::int64_t number,
                                                              Numerals numerals = Numerals::arabic) {
  std::vector<NumberedPage> found;
  std::int64_t before = 0;
  for (std::size_t r = 0; r < pagination.runs.size(); ++r) {
    auto const& run = pagination.runs[r];
    auto const add = [&](std::int64_t index) {
      if (index < 0 || index >= run.count) return;
      auto const page = pagination.by_leaf ? 2 * (before + index) + 1 : before + index + 1;
      for (auto const& other : found)
        if (other.page == page) return;
      found.push_back({page, detail::number_in_run(pagination, r, index)});
    };
    if (run.numbering != Numbering::none && run.numerals == numerals) {
      auto const add_number = [&](std::int64_t wanted) {
        if (wanted < run.first || wanted > run.last) return;
        // in a run at fault the last number is sure, the others are counted from the first
        add(wanted == run.last ? run.count - 1 : wanted - run.first);
      };
      add_number(number);
      for (auto const& misprint : pagination.misprints)
        if (misprint.printed == number && run.numbering == Numbering::printed && misprint.numerals == numerals &&
            misprint.series == run.series && detail::misprint_of(pagination, r, misprint.should_be) == &misprint)
          add_number(misprint.should_be);
    }
    before += run.count;
  }
  for (std::size_t i = 1; i < found.size(); ++i) // a misprint may stand before the number it repeats
    for (auto k = i; k > 0 && found[k].page < found[k - 1].page; --k) {
      auto const later = found[k - 1];
      found[k - 1] = found[k];
      found[k] = later;
    }
  return found;
}

/// The same as references to the formula. Pages beyond the formula are left out.
[[nodiscard]] inline std::vector<Reference> references_numbered(Formula const& formula, Pagination const& pagination,
                                                                std::int64_t number,
                                                                Numerals numerals = Numerals::arabic) {
  std::vector<Reference> found;
  for (auto const& page : pages_numbered(pagination, number, numerals))
    if (auto const reference = reference_of_page(formula, page.page)) found.push_back(*reference);
  return found;
}

/// A figure as it is set down in arabic or in small roman numerals; where roman ones end (at 4999), in arabic.
[[nodiscard]] inline std::string page_figure(std::int64_t number, Numerals numerals) {
  return numerals == Numerals::roman && number > 0 && number < 5000 ? std::string{small_roman(number).view()}
                                                                    : std::to_string(number);
}
/// A number as it is set down: 45, xii, [206], ²3; "54 [for 45]" where it is misprinted; "unnumbered".
[[nodiscard]] inline std::string to_words(PrintedNumber const& number) {
  if (number.numbering == Numbering::none) return "unnumbered";
  auto const figure = [&](std::int64_t n) { return page_figure(n, number.numerals); };
  std::string text;
  if (number.series != 0) text.append(raised(number.series).view());
  if (number.numbering == Numbering::inferred)
    text += '[' + figure(number.number) + ']';
  else
    text += figure(number.number);
  if (number.misprinted()) text += " [for " + figure(number.should_be) + ']';
  if (number.doubtful) text += '?';
  return text;
}

} // namespace v0
} // namespace bifolium
