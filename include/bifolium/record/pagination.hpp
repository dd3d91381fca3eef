// SPDX-License-Identifier: MIT
/// The numbers of a book's pages or leaves: runs of numbered pages, unnumbered pages between them, and the printer's
/// mistakes. The formula says which leaf is which; the pagination says which number the reader finds there. The two are
/// separate, because two pages may have one number, a page may have none, and a wrong number is a fact about the book.
/// record/read_pagination.hpp makes a pagination from a statement; record/printed_number.hpp gives the number of one
/// page.
#pragma once

#include <bifolium/core/character_references.hpp>
#include <bifolium/core/error.hpp>
#include <bifolium/core/range.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/core/text_span.hpp>

#include <cstdint>
#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// Whether the pages of a run have their numbers printed.
enum class Numbering : std::uint8_t {
  printed,  ///< numbers are printed: 1-205
  inferred, ///< no numbers are printed, but they are known: [206], [i-iv]
  none      ///< a number of pages without numbers: [8]
};
/// Whether numbers are arabic or Roman, or letters take their place.
enum class Numerals : std::uint8_t {
  arabic,
  roman,
  letters ///< a-d: 1 to 4 by the alphabet of 23 letters
};
/// The unit that a statement counts.
enum class PageUnit : std::uint8_t {
  pages,
  leaves,  ///< leaves numbered on one side, or with text on one side only: two pages each
  columns, ///< columns, taken as two to a page
  panels   ///< panels of a folded sheet, taken as a page each
};

/// Pages (or leaves, or columns) with consecutive numbers, or a number of pages without numbers.
struct PageRun {
  Numbering numbering{}; ///< whether the numbers are printed
  Numerals numerals{};   ///< the numerals; they have no meaning without numbers
  std::uint8_t series{}; ///< 2 for ²1-44, a second sequence; otherwise 0
  bool starred{};        ///< true for inserted numbers: *57-*60, and 24a-24d, four pages with the number 24
  PageUnit unit{};       ///< the unit
  bool preliminary{};    ///< true for `p. l.`: leaves that the numbers after them may count again
  bool folded{};         ///< true for `[2] folded leaves`: they may be put in, and be no part of the gatherings
  std::uint16_t part{};  ///< the volume or part: 0, then 1 after the first `;` of an extent, and so on
  std::int64_t first{};  ///< the first number, or that of the page after the run before if it is not written
  std::int64_t last{};   ///< the last number, as printed, right or wrong; both have no meaning without numbers
  std::int64_t count{};  ///< the real number of pages (leaves, columns)
  /// the correct last number, if the statement corrects it: 152 in 35-154 [=152]
  std::optional<std::int64_t> true_last{};

  TextSpan at{}; ///< the whole run in the statement, with brackets and correction; empty if no statement was read
  std::optional<TextSpan> first_at{}; ///< the first number; no value if it is not written
  std::optional<TextSpan> last_at{};  ///< the last number, or the number of pages without numbers, if it is written
  std::optional<TextSpan> true_at{};  ///< the correcting number; no value if there is none

  /// Returns the number of pages: twice the leaves, half the columns.
  [[nodiscard]] constexpr std::int64_t pages() const noexcept {
    return unit == PageUnit::leaves ? 2 * count : unit == PageUnit::columns ? (count + 1) / 2 : count;
  }
  /// Returns true if the number of every page in the run is certain.
  [[nodiscard]] constexpr bool regular() const noexcept {
    return numbering != Numbering::none && last - first + 1 == count;
  }
  /// Compares all fields except the places in the text.
  friend constexpr bool operator==(PageRun const& a, PageRun const& b) noexcept {
    return a.numbering == b.numbering && a.numerals == b.numerals && a.series == b.series && a.starred == b.starred &&
           a.unit == b.unit && a.preliminary == b.preliminary && a.folded == b.folded && a.part == b.part &&
           a.first == b.first && a.last == b.last && a.count == b.count && a.true_last == b.true_last;
  }
};

/// A wrong number on one page: 45 printed as 54.
struct Misprint {
  std::int64_t should_be{}; ///< the correct number, by the order of the pages
  std::int64_t printed{};   ///< the number on the page
  Numerals numerals{};      ///< the numerals of its run
  std::uint8_t series{};    ///< the sequence of its run: 2 for a second sequence, otherwise 0
  friend constexpr bool operator==(Misprint const&, Misprint const&) = default;
};

/// A pagination or a foliation, as stated. Comparison ignores doubts and places in the text.
struct Pagination {
  std::vector<PageRun> runs{};       ///< the runs, in the order of the book
  std::vector<Misprint> misprints{}; ///< the wrong numbers, in the order of the statement
  /// true if the statement says that there are no numbers and not how many pages there are
  bool unpaged{};
  bool incomplete{};  ///< true for 142+ or (incomplete): the copy lacks the end
  bool approximate{}; ///< true for ca. 300 p.: the number contradicts no other
  /// The pages among those counted that can be plates, which do not belong to the gatherings: at most 4 in `84 p. incl.
  /// 2 plates`, since a plate may be printed on one side or on both; all pages if the number of plates is not stated.
  std::int64_t plate_pages{};
  std::vector<TextSpan> unread{}; ///< text that does not concern pages, such as plates and notes

  /// Returns true if everything is counted in leaves.
  [[nodiscard]] bool by_leaf() const noexcept {
    for (auto const& run : runs)
      if (run.unit != PageUnit::leaves) return false;
    return !runs.empty();
  }
  /// Returns the number of pages: for a foliation, twice the number of leaves.
  [[nodiscard]] std::int64_t pages() const noexcept {
    std::int64_t total = 0;
    for (auto const& run : runs) total += run.pages();
    return total;
  }
  /// The pages that a statement may leave out at the end of a book: the blank verso of the last page.
  static constexpr std::int64_t blank_verso = 1;
  /// The pages that a statement may leave out at the end of a book: a blank leaf, and the blank verso before it.
  static constexpr std::int64_t blank_leaf = 2 + blank_verso;
  /// The high end of `total` if the copy lacks pages at its end, or if the number is approximate: more pages than any book
  /// has.
  static constexpr std::int64_t no_limit = INT64_MAX;
  /// Returns the number of pages as a range. `stated`: the sum of the statement. `low`: preliminary leaves (`p. l.`)
  /// are counted again by the numbers after them; folded leaves, and plates that the pages count, are no part of the
  /// gatherings.
  /// `high`: the same as `stated`, or `no_limit` if the copy lacks pages at its end. Of an approximate number nobody knows how
  /// far it is off, so that `low` is 0 and `high` is `no_limit`.
  [[nodiscard]] Range<std::int64_t> total() const noexcept {
    Range<std::int64_t> total{};
    for (auto const& run : runs) {
      total.stated += run.pages();
      total.low += run.preliminary || run.folded ? 0 : run.pages();
    }
    total.low = total.low > plate_pages && !approximate ? total.low - plate_pages : 0;
    total.high = incomplete || approximate ? no_limit : total.stated;
    return total;
  }
  /// Returns by how many pages the statement has fewer than a book of `pages` pages. The result is less than zero if it
  /// has more, and zero if the number is within `total`.
  [[nodiscard]] std::int64_t pages_missing(std::int64_t pages) const noexcept {
    auto const range = total();
    return pages < range.low ? pages - range.low : pages > range.high ? pages - range.high : 0;
  }
  /// Returns the number of volumes or parts that the statement separates with `;`.
  [[nodiscard]] int parts() const noexcept { return runs.empty() ? 0 : runs.back().part + 1; }
  /// Returns the doubts about the statement, with their columns.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND { return warnings_; }
  /// Returns the doubts of a temporary pagination by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<std::vector<Error>&&>(warnings_); }
  /// Adds a doubt. Readers of statements call it.
  void warn(Error const& doubt) { warnings_.push_back(doubt); }

  /// Returns the pagination with its places in a longer text, of which the statement is the part from byte `bytes`, at
  /// the line and column `start`. Readers of statements call it.
  [[nodiscard]] Pagination moved(std::size_t bytes, TextPlace start) && {
    move([&](TextSpan span) { return TextSpan{span.from + bytes, span.to + bytes}; });
    for (auto& doubt : warnings_) doubt = error_after(start, doubt);
    return static_cast<Pagination&&>(*this);
  }
  /// Moves its places from a text of characters into the text with the references. Readers of statements call it.
  void move_back(TextOfCharacters const& text) {
    move([&](TextSpan span) { return text.original(span); });
    text.move_back(warnings_);
  }

  friend bool operator==(Pagination const& a, Pagination const& b) {
    return a.runs == b.runs && a.misprints == b.misprints && a.unpaged == b.unpaged && a.incomplete == b.incomplete &&
           a.approximate == b.approximate && a.plate_pages == b.plate_pages;
  }

private:
  std::vector<Error> warnings_{};

  template <class Spans> void move(Spans place_of) {
    auto const move_span = [&](TextSpan& span) {
      if (!span.empty()) span = place_of(span);
    };
    for (auto& run : runs) {
      move_span(run.at);
      for (auto* const span : {&run.first_at, &run.last_at, &run.true_at})
        if (*span) move_span(**span);
    }
    for (auto& span : unread) move_span(span);
  }
};

} // namespace v0
} // namespace bifolium
