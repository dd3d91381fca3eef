// SPDX-License-Identifier: MIT
/// Look-ups in the table of named sheets. Every answer is a view that walks through the table and skips the rows that
/// do not fit. So no row is copied, and a look-up can run while compiling. One name may have many sizes; ask by place,
/// years and use to find the one that is meant.
#pragma once

#include <bifolium/core/config.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/core/year_range.hpp>
#include <bifolium/paper/sheet_size_table.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The conditions of a look-up. A field that is left out sets no condition.
struct SheetQuery {
  /// The name, without regard to case, accents and hyphens: `jesus`, `super-royal`. A look-up copies it.
  std::string_view name{};
  YearRange years{-9999, 9999};            ///< the row has at least one of these years
  Region region{Region::anywhere};         ///< the row's region lies in this one, or this one in the row's
  PaperUse use{static_cast<PaperUse>(15)}; ///< the row has one of these uses
  bool memory{true};                       ///< true to include rows from memory
  friend constexpr bool operator==(SheetQuery const&, SheetQuery const&) = default;
};

namespace detail {

/// One character of a name in the form used for comparison, and the number of its bytes.
struct NameCharacter {
  char32_t value;
  std::size_t bytes;
};
constexpr NameCharacter name_character(std::string_view text, std::size_t at) {
  auto const [value, bytes, malformed] = decode(text, at);
  if (value >= 'A' && value <= 'Z') return {value + 32, bytes};
  if (value == '-') return {' ', bytes};
  if (value < 0xC0 || value > 0xFF || malformed) return {value, bytes};
  constexpr char const* plain =
      "aaaaaaaceeeeiiiidnooooo*ouuuuyts"; // U+00C0 to U+00DF, then the same again in lower case
  return {static_cast<char32_t>(plain[(value - 0xC0) % 32]), bytes};
}

constexpr bool same_name(std::string_view a, std::string_view b) {
  std::size_t i = 0, j = 0;
  while (i < a.size() && j < b.size()) {
    auto const x = name_character(a, i), y = name_character(b, j);
    if (x.value != y.value) return false;
    i += x.bytes;
    j += y.bytes;
  }
  return i == a.size() && j == b.size();
}

/// Returns true if one of the names, separated by `mark`, is `wanted`.
constexpr bool any_name(std::string_view names, std::string_view mark, std::string_view wanted) {
  for (;;) {
    auto const end = names.find(mark);
    if (same_name(names.substr(0, end), wanted)) return true;
    if (end == std::string_view::npos) return false;
    names.remove_prefix(end + mark.size());
  }
}

/// Returns true if one of the two regions lies in the other.
constexpr bool meets(Region row, Region asked) { return is_in(row, asked) || is_in(asked, row); }

/// Returns the years in which the size of a row may have been in use during `years`. A list is written down some time
/// after its sizes came into use and some time before they went out, so 25 years, a generation, are added at each end
/// (common practice, no source).
constexpr YearRange years_that_speak_for(YearRange years) {
  constexpr int generation = 25, far_off = 1'000'000; // years as far off as one likes
  return {years.from > -far_off ? years.from - generation : years.from,
          years.to < far_off ? years.to + generation : years.to};
}

} // namespace detail

/// Returns true if `text` is one of the names of the sheet.
[[nodiscard]] constexpr bool is_called(SheetSize const& size, std::string_view text) {
  return detail::any_name(size.name, " / ", text);
}

namespace detail {
/// Returns true if the row meets the conditions apart from the name. A row with a wrong inch never does.
constexpr bool meets_but_name(SheetSize const& size, SheetQuery const& query) {
  return size.years().meets(query.years) && // tells most rows apart
         size.trust != Trust::unit_trap && (query.memory || size.trust != Trust::from_memory) &&
         meets(size.region, query.region) && (static_cast<unsigned>(size.use) & static_cast<unsigned>(query.use)) != 0;
}
} // namespace detail

/// Returns true if the row meets the conditions. A row with a wrong inch never does.
[[nodiscard]] constexpr bool answers(SheetSize const& size, SheetQuery const& query) {
  return detail::meets_but_name(size, query) && (query.name.empty() || is_called(size, query.name));
}

/// Returns true for the four sizes of the first printers - chancery, median, royal and imperial - and for their small
/// and super variants.
[[nodiscard]] constexpr bool is_early_size(SheetSize const& size) {
  for (char const* word : {"chancery", "median", "royal", "imperial"})
    if (detail::any_name(size.name, " ", word)) return true;
  return false;
}

/// The rows that meet some conditions, in the order of the table. It is a view without rows of its own, so a copy is
/// cheap. It has its own copy of the name.
class SheetSizes {
  static constexpr std::size_t longest_name = 95; // twice the bytes of the longest in the table: é for e
  SheetQuery query_;                              // its name is not used
  ShortText<longest_name> name_{};
  bool everything_{}, early_rule_{}, nothing_{};

  [[nodiscard]] constexpr bool takes(SheetSize const& size) const {
    if (everything_) return true;
    return !nothing_ && detail::meets_but_name(size, query_) && (name_.empty() || is_called(size, name_)) &&
           (!early_rule_ || size.first_year > last_incunable_year || is_early_size(size));
  }
  constexpr SheetSizes(SheetQuery query, bool everything, bool early_rule)
      : query_{query}, everything_{everything}, early_rule_{early_rule}, nothing_{!name_.assign(query.name)} {
    query_.name = {};
  }

public:
  /// A forward iterator. It points into the view, which must outlive it. std::iterator_traits works out its category,
  /// because naming the category takes <iterator>, which costs more than the table.
  class iterator {
    SheetSizes const* view_{};
    SheetSize const* row_{};
    friend SheetSizes;
    constexpr iterator(SheetSizes const* view, SheetSize const* row) : view_{view}, row_{row} { pass(); }
    constexpr void pass() {
      while (row_ != std::end(detail::sheet_table::rows) && !view_->takes(*row_)) ++row_;
    }

  public:
    /// The type of an element.
    using value_type = SheetSize;
    /// The type of a distance between two iterators.
    using difference_type = std::ptrdiff_t;
    /// The type that dereferencing an iterator gives.
    using reference = SheetSize const&;
    /// The type that `->` of an iterator gives.
    using pointer = SheetSize const*;
    constexpr iterator() = default;
    /// Returns the element at this position.
    constexpr reference operator*() const { return *row_; }
    /// Returns a member of the element at this position.
    constexpr pointer operator->() const { return row_; }
    /// Moves to the next row and returns this iterator.
    constexpr iterator& operator++() { return ++row_, pass(), *this; }
    /// Moves to the next row and returns the iterator as it was before.
    constexpr iterator operator++(int) {
      auto const before = *this;
      ++*this;
      return before;
    }
    friend constexpr bool operator==(iterator a, iterator b) { return a.row_ == b.row_; }
  };
  /// The type of an iterator over the elements.
  using const_iterator = iterator;

  /// Returns an iterator to the first element.
  [[nodiscard]] constexpr iterator begin() const& BIFOLIUM_LIFETIMEBOUND {
    return {this, std::begin(detail::sheet_table::rows)};
  }
  iterator begin() const&& = delete; // it would look at what goes
  /// Returns an iterator past the last row.
  [[nodiscard]] constexpr iterator end() const& BIFOLIUM_LIFETIMEBOUND {
    return {this, std::end(detail::sheet_table::rows)};
  }
  iterator end() const&& = delete; // it would look at what goes
  /// Returns true if no row meets the conditions.
  [[nodiscard]] constexpr bool empty() const { return begin() == end(); }
  /// Counts the rows that meet the conditions.
  [[nodiscard]] constexpr int count() const {
    int rows = 0;
    for (auto i = begin(); i != end(); ++i) ++rows;
    return rows;
  }

  friend constexpr SheetSizes all_sheet_sizes();
  friend constexpr SheetSizes find_sheets(SheetQuery query);
  friend constexpr SheetSizes usable_for(YearRange years, Region region, PaperUse use, bool memory);
};

/// Returns the whole table, including the rows with a wrong inch.
[[nodiscard]] constexpr SheetSizes all_sheet_sizes() { return {{}, true, false}; }

/// Returns the rows that meet the conditions: `find_sheets({.name = "royal", .region = Region::britain})`.
[[nodiscard]] constexpr SheetSizes find_sheets(SheetQuery query) { return {query, false, false}; }

/// Returns the sheets that a printer (or writer) of a region and time may have used: the rows of these years, and of a
/// generation before and after. For years up to 1500 only the four early sizes are returned.
[[nodiscard]] constexpr SheetSizes usable_for(YearRange years, Region region, PaperUse use = PaperUse::printing,
                                              bool memory = true) {
  return {{{}, detail::years_that_speak_for(years), region, use, memory}, false, true};
}

} // namespace v0
} // namespace bifolium
