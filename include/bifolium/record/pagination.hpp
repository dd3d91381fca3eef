// SPDX-License-Identifier: MIT
/// The numbers of a book's pages or leaves: runs of them, with the pages between that bear none, and what the printer got
/// wrong. The formula says which leaf is which; the pagination says what the reader finds printed there. The two are kept
/// apart, because a number may be on two pages or on none, and a wrong number is a fact about the book.
/// Made by reading a statement: record/read_pagination.hpp. What one page bears: record/printed_number.hpp.
#pragma once

#include <bifolium/core/error.hpp>
#include <bifolium/core/range.hpp>
#include <bifolium/core/text_span.hpp>

#include <cstdint>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// Whether the pages of a run bear their numbers.
enum class Numbering : std::uint8_t {
  printed,  ///< 1-205
  inferred, ///< [206], [i-iv]: they bear none, but have a position in the numbers
  none      ///< [8]: so many pages without numbers
};
/// Whether numbers are arabic or Roman.
enum class Numerals : std::uint8_t { arabic, roman };
/// What a statement counts.
enum class PageUnit : std::uint8_t {
  pages,
  leaves,  ///< numbered on one side, or without text on one side: two pages each
  columns, ///< taken as two to a page
  panels   ///< of a folded sheet: taken as a page each
};

/// Pages (or leaves, or columns) numbered without a break, or so many of them without numbers.
struct PageRun {
  Numbering numbering{};    ///< whether its pages bear their numbers
  Numerals numerals{};      ///< without meaning where there are no numbers
  std::uint8_t series{};    ///< 2 for ²1-44, a second sequence; else 0
  bool starred{};           ///< *57-*60: inserted numbers
  PageUnit unit{};          ///< what is counted
  bool preliminary{};       ///< `p. l.`: leaves that the numbers after them may count again
  std::uint16_t part{};     ///< 1 after the first `;` of an extent, and so on: a volume or part of its own
  std::int64_t first{};     ///< the number at its beginning; 0 where there is none
  std::int64_t last{};      ///< the number at its end, as printed, right or wrong
  std::int64_t count{};     ///< how many pages (leaves, columns) it really has
  std::int64_t true_last{}; ///< 152 in 35-154 [=152], what the last number should be; 0 where it is not corrected

  TextSpan at{};       ///< the whole run in the statement, with brackets and correction
  TextSpan first_at{}; ///< the first number; empty where it is not written
  TextSpan last_at{};  ///< the last number, or the number of pages without numbers
  TextSpan true_at{};  ///< the number that corrects; empty where there is none

  /// Its pages: twice its leaves, half its columns.
  [[nodiscard]] constexpr std::int64_t pages() const noexcept {
    return unit == PageUnit::leaves ? 2 * count : unit == PageUnit::columns ? (count + 1) / 2 : count;
  }
  /// True where every page in it has a number that can be told.
  [[nodiscard]] constexpr bool regular() const noexcept {
    return numbering != Numbering::none && last - first + 1 == count;
  }
  /// Equality leaves the places in the text out.
  friend constexpr bool operator==(PageRun const& a, PageRun const& b) noexcept {
    return a.numbering == b.numbering && a.numerals == b.numerals && a.series == b.series && a.starred == b.starred &&
           a.unit == b.unit && a.preliminary == b.preliminary && a.part == b.part && a.first == b.first &&
           a.last == b.last && a.count == b.count && a.true_last == b.true_last;
  }
};

/// A wrong number on one page: 45 printed as 54.
struct Misprint {
  std::int64_t should_be{}; ///< the number by the order of the pages
  std::int64_t printed{};   ///< the number the page bears
  Numerals numerals{};      ///< of its run
  std::uint8_t series{};    ///< of its run: 2 for a second sequence; else 0
  friend constexpr bool operator==(Misprint const&, Misprint const&) = default;
};

/// A pagination or a foliation, as stated. Equality leaves doubts and places in the text out.
struct Pagination {
  std::vector<PageRun> runs{};       ///< in the order of the book
  std::vector<Misprint> misprints{}; ///< in the order of the statement
  bool unpaged{};                    ///< stated to bear no numbers, and not how many pages there are
  bool incomplete{};                 ///< 142+, (incomplete): the copy lacks the end
  std::vector<TextSpan> unread{};    ///< text that is not of the pages, such as plates and notes

  /// True where all of it is counted in leaves.
  [[nodiscard]] bool by_leaf() const noexcept {
    for (auto const& run : runs)
      if (run.unit != PageUnit::leaves) return false;
    return !runs.empty();
  }
  /// All pages; for a foliation twice its leaves.
  [[nodiscard]] std::int64_t pages() const noexcept {
    std::int64_t total = 0;
    for (auto const& run : runs) total += run.pages();
    return total;
  }
  /// More pages than any book has: the high end of `total` where a copy lacks pages at its end.
  static constexpr std::int64_t no_limit = INT64_MAX;
  /// All pages: low, if preliminary leaves (`p. l.`) are counted again by the numbers after them; as stated, the sum of what is
  /// written; high, the same, or `no_limit` where the copy lacks pages at its end.
  [[nodiscard]] Range<std::int64_t> total() const noexcept {
    Range<std::int64_t> total{};
    for (auto const& run : runs) {
      total.stated += run.pages();
      total.low += run.preliminary ? 0 : run.pages();
    }
    total.high = incomplete ? no_limit : total.stated;
    return total;
  }
  /// Volumes or parts that the statement tells apart with `;`.
  [[nodiscard]] int parts() const noexcept { return runs.empty() ? 0 : runs.back().part + 1; }
  /// What is doubtful in the statement, with its column.
  [[nodiscard]] std::vector<Error> const& warnings() const noexcept { return warnings_; }
  /// Adds a doubt; for readers.
  void warn(Error const& doubt) { warnings_.push_back(doubt); }

  /// The pagination with its places moved, as a part of a longer text that begins so many bytes and columns before; for
  /// readers.
  [[nodiscard]] Pagination moved(std::size_t bytes, std::uint32_t columns) && {
    auto const move = [&](TextSpan& span) {
      if (!span.empty()) span.from += bytes, span.to += bytes;
    };
    for (auto& run : runs) move(run.at), move(run.first_at), move(run.last_at), move(run.true_at);
    for (auto& span : unread) move(span);
    for (auto& doubt : warnings_) doubt.column += columns;
    return static_cast<Pagination&&>(*this);
  }

  friend bool operator==(Pagination const& a, Pagination const& b) {
    return a.runs == b.runs && a.misprints == b.misprints && a.unpaged == b.unpaged && a.incomplete == b.incomplete;
  }

private:
  std::vector<Error> warnings_{};
};

} // namespace v0
} // namespace bifolium
