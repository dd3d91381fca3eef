// SPDX-License-Identifier: MIT
/// Facts that stand in the text of a field other than their own: the plates after the pages, the format beside the size,
/// pages and signing after the formula, pages where leaves are asked for. Such a fact is taken if its own field is empty. If both state it and differ, one
/// of the two is wrong, and the description keeps both texts.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/book/field_texts.hpp>
#include <bifolium/core/text_span.hpp>

#include <algorithm>

namespace bifolium {
inline namespace v0 {
namespace detail {

struct StatedBeside {
  std::optional<Stated<Pagination>> pages_in_formula{}, pages_in_leaves{};
  std::optional<Stated<Signing>> signing_in_formula{};
  std::optional<Stated<std::int64_t>> plates_in_pages{};
  std::optional<Stated<Format>> format_in_size{};
  std::optional<Stated<SizeRange>> width_in_size{}, binding_in_size{};
  std::optional<Stated<int>> gatherings_in_format{}, gatherings_in_size{};
  Field size_in{Field::height}; ///< the field in whose text the size was found

  /// Settles the format, which readers of other fields ask for.
  void settle_format(FieldTexts const& texts, Description& book) const {
    settle(book, Field::format, size_in, book.format, texts.format, format_in_size,
           [](Format a, Format b) { return a.leaves_to_sheet() == b.leaves_to_sheet(); });
  }
  /// Settles the other facts. Call it when every field has been read.
  void settle(FieldTexts const& texts, Description& book) const {
    auto const same_pages = [](Pagination const& a, Pagination const& b) {
      auto const one = a.total(), other = b.total();
      return one.low - Pagination::blank_leaf <= other.high && other.low - Pagination::blank_leaf <= one.high;
    };
    settle(book, Field::pagination, Field::formula, book.pagination, texts.pagination, pages_in_formula, same_pages);
    settle(book, Field::pagination, Field::leaves, book.pagination, {}, pages_in_leaves, same_pages);
    settle(book, Field::signing, Field::formula, book.signing, texts.signing, signing_in_formula, same_signing);
    settle(book, Field::plates, Field::pagination, book.plates, texts.plates, plates_in_pages, equal<std::int64_t>);
    settle(book, Field::width, size_in, book.width, texts.width, width_in_size, meet);
    settle(book, Field::binding, size_in, book.binding, texts.binding, binding_in_size, meet);
    settle(book, Field::gatherings, Field::format, book.gatherings, texts.gatherings, gatherings_in_format, equal<int>);
    settle(book, Field::gatherings, size_in, book.gatherings, texts.gatherings, gatherings_in_size, equal<int>);
  }

private:
  template <class T> static bool equal(T a, T b) { return a == b; }
  static bool meet(SizeRange a, SizeRange b) { return a.above < b.to && b.above < a.to; }
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
