// SPDX-License-Identifier: MIT
/// Facts that stand in the text of a field other than their own: the plates after the pages, the format beside the size,
/// pages, plates and signing after the formula, pages where leaves are asked for. Such a fact is taken if its own field is empty. If both state it and differ, one
/// of the two is wrong, and the description keeps both texts.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/book/field_texts.hpp>
#include <bifolium/core/text_span.hpp>

#include <algorithm>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The leaves of most gatherings, and the other number where two alternate: 8 and 4 of `8vo in 8s and 4s`.
struct GatheringsBeside {
  int leaves{};
  OptionalNumber<int> other{};
  /// Those of a format as it is gathered, or no value where it has more than two numbers.
  static std::optional<GatheringsBeside> of(Cycle const& cycle) {
    GatheringsBeside found{cycle.term(0), {}};
    for (std::size_t i = 1; i < cycle.size(); ++i) {
      int const next = cycle.term(i);
      if (next == found.leaves || next == found.other.value_or(0)) continue;
      if (found.other) return std::nullopt;
      found.other = next;
    }
    return found;
  }
  /// Two statements agree if they have the same numbers, in any order.
  [[nodiscard]] bool agrees(int one, OptionalNumber<int> another) const {
    auto const second = other.value_or(leaves), second_of_it = another.value_or(one);
    return (leaves == one && second == second_of_it) || (leaves == second_of_it && second == one);
  }
};

/// What a statement of size says, but for the height of its own field.
struct SizeBeside {
  std::optional<Stated<SizeRange>> height{}, width{}, binding{}; ///< `height`: where the height has a field of its own
  std::optional<Stated<Format>> format{};
  std::optional<Stated<GatheringsBeside>> gatherings{};
};

struct StatedBeside {
  std::optional<Stated<Pagination>> pages_in_formula{}, pages_in_leaves{};
  std::optional<Stated<Signing>> signing_in_formula{};
  std::optional<Stated<std::int64_t>> plates_in_pages{}, plates_in_formula{}, plates_in_leaves{};
  std::optional<Stated<GatheringsBeside>> gatherings_in_format{};
  SizeBeside in_height{}, in_pages{}; ///< of the size in the text of the height, and of that after the pages

  /// Settles the format, which readers of other fields ask for.
  void settle_format(FieldTexts const& texts, Description& book) const {
    auto const same = [](Format a, Format b) { return a.leaves_to_sheet() == b.leaves_to_sheet(); };
    settle(book, Field::format, Field::height, book.format, texts.format, in_height.format, same);
    settle(book, Field::format, Field::pagination, book.format, texts.format, in_pages.format, same);
  }
  /// Settles the other facts. Call it when every field has been read.
  void settle(FieldTexts const& texts, Description& book) const {
    settle(book, Field::pagination, Field::formula, book.pagination, texts.pagination, pages_in_formula, same_pages);
    settle(book, Field::pagination, Field::leaves, book.pagination, {}, pages_in_leaves, same_pages);
    settle(book, Field::signing, Field::formula, book.signing, texts.signing, signing_in_formula, same_signing);
    settle(book, Field::plates, Field::pagination, book.plates, texts.plates, plates_in_pages, equal<std::int64_t>);
    settle(book, Field::plates, Field::formula, book.plates, texts.plates, plates_in_formula, equal<std::int64_t>);
    settle(book, Field::plates, Field::leaves, book.plates, texts.plates, plates_in_leaves, equal<std::int64_t>);
    settle_gatherings(book, texts, Field::format, gatherings_in_format);
    settle_size(book, texts, Field::height, in_height);
    settle_size(book, texts, Field::pagination, in_pages);
  }

private:
  template <class T> static bool equal(T a, T b) { return a == b; }
  static bool meet(SizeRange a, SizeRange b) { return a.above < b.to && b.above < a.to; }
  static void settle_gatherings(Description& book, FieldTexts const& texts, Field in,
                                std::optional<Stated<GatheringsBeside>> const& beside) {
    if (!beside) return;
    auto const& [value, text, at, of, from] = *beside;
    if (texts.gatherings.empty() && !book.gatherings) {
      book.gatherings = Stated<int>{value.leaves, text, at, in, from};
      book.gatherings_alternating_with = value.other;
    } else if (book.gatherings && !value.agrees(book.gatherings->value, book.gatherings_alternating_with))
      book.again.push_back({Field::gatherings, in, book.gatherings->text, std::string{trimmed(text, " ")}});
  }
  void settle_size(Description& book, FieldTexts const& texts, Field in, SizeBeside const& size) const {
    settle(book, Field::width, in, book.width, texts.width, size.width, meet);
    settle(book, Field::binding, in, book.binding, texts.binding, size.binding, meet);
    settle_gatherings(book, texts, in, size.gatherings);
    // whole centimetres are the size of the book as catalogues give it; a leaf that was measured may be lower than that by
    // what a cover is higher
    settle(book, Field::height, in, book.height, texts.height, size.height, [&](SizeRange leaf, SizeRange other) {
      constexpr double coarse = 5; // millimetres; what was measured is told more exactly
      bool const measured = leaf.to - leaf.above < coarse && other.to - other.above >= coarse;
      bool const as_leaf = meet(leaf, {other.above - (measured ? SizeStatement::most_of_binding : 0), other.to});
      return as_leaf || (book.binding && meet(book.binding->value, other));
    });
  }
  /// The greatest numbers that are printed on pages, by the statement. Of 1-40, 41-80 only the last is one; 80 alone may be
  /// the number of all pages, printed or not.
  struct Numbers {
    std::vector<std::int64_t> last{}, ends{};
    bool known{true}; ///< false where the statement may mean another thing by its numbers
    Numbers(Pagination const& pages, Numerals numerals) {
      PageRun const* before = nullptr;
      for (auto const& run : pages.runs) {
        known = known && run.unit == pages.runs.front().unit;
        if (run.numbering != Numbering::printed || run.numerals != numerals || run.starred) continue;
        if (before != nullptr && (run.first_at ? run.first <= before->last : run.last <= before->last))
          ends.push_back(before->last);
        last.push_back(run.last);
        if (run.true_last) last.push_back(*run.true_last);
        before = &run;
      }
      if (before != nullptr && !before->true_last) ends.push_back(before->last);
      known = known && !pages.approximate && before != nullptr && (pages.runs.size() > 1 || before->first_at);
    }
    [[nodiscard]] bool has(std::vector<std::int64_t> const& numbers) const {
      return std::all_of(numbers.begin(), numbers.end(), [&](std::int64_t number) {
        return std::find(last.begin(), last.end(), number) != last.end();
      });
    }
  };
  /// Two statements of the pages agree if they can have as many pages, and say that the same numbers are printed.
  static bool same_pages(Pagination const& a, Pagination const& b) {
    auto const one = a.total(), other = b.total();
    bool const as_many =
        one.low - Pagination::blank_leaf <= other.high && other.low - Pagination::blank_leaf <= one.high;
    if (!as_many || a.runs.empty() || b.runs.empty() || a.runs.front().unit != b.runs.front().unit) return as_many;
    for (auto const numerals : {Numerals::arabic, Numerals::roman}) {
      Numbers const first{a, numerals}, second{b, numerals};
      if (first.known && second.known && !(first.has(second.ends) && second.has(first.ends))) return false;
    }
    return true;
  }
  /// Leaves with a wrong mark are often listed in one of the two only, and exceptions in any order.
  static bool same_signing(Signing const& a, Signing const& b) {
    return a.first == b.first && a.half == b.half && a.beyond_half == b.beyond_half && a.listed == b.listed &&
           std::is_permutation(a.exceptions.begin(), a.exceptions.end(), b.exceptions.begin(), b.exceptions.end());
  }
  template <class T, class Same>
  static void settle(Description& book, Field field, Field in, std::optional<Stated<T>>& own, std::string_view own_text,
                     std::optional<Stated<T>> const& beside, Same same) {
    if (!beside) return;
    if (own_text.empty() && !own)
      own = beside, own->in = in;
    else if (own && !same(own->value, beside->value))
      book.again.push_back({field, in, own->text, std::string{trimmed(beside->text, " ")}});
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
