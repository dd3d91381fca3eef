// SPDX-License-Identifier: MIT
/// A handle to one row of the table of attested schemes. It is a single byte, so that `impose<schemes::octavo>()` makes
/// short symbols. The text of the scheme is read when the scheme is first used, or while compiling if the handle is a
/// template argument. A scheme of your own can be used wherever an attested one can:
///
///     constexpr Scheme mine = written<"scheme mine 4° ...">();
///     constexpr auto const& formes = impose<mine>();
#pragma once

#include <bifolium/fold/attested_rows.hpp>
#include <bifolium/fold/read_scheme.hpp>

#include <string_view> // declares std::ranges::enable_borrowed_range
#include <type_traits>

namespace bifolium {
inline namespace v0 {

/// Stops the compiler if the text of a scheme is wrong. The compiler shows the arguments of the call: the place and the
/// problem.
constexpr void scheme_text_is_wrong_at(int line, int column, Problem problem) {
  (void)line, (void)column;
  if (problem != Problem::none) broken("the text of a scheme is wrong");
}
/// Stops the compiler for `"..."_scheme` with a name that no scheme has. The compiler shows the name of this function.
inline void no_attested_scheme_has_this_name() { broken("no attested scheme has this name"); }

/// One row of the table of attested schemes.
class Attested {
  std::uint8_t row_{};

public:
  /// The number of schemes. Their rows count from 0.
  static constexpr int count = static_cast<int>(detail::attested_count);

  /// Makes the handle of a row. Precondition: the table has this row.
  constexpr explicit Attested(SchemeRow row) : row_{static_cast<std::uint8_t>(row)} {
    if (row_ >= count) broken("the table of schemes has no such row");
  }
  /// Stops the compiler with a sentence if a text or a number is written in the place of a scheme.
  template <class Given>
  requires(std::is_convertible_v<Given const&, std::string_view> ||
           std::is_arithmetic_v<Given>) constexpr Attested(Given const&) {
    static_assert(sizeof(Given) == 0, "a scheme is not made of a text or a number: write schemes::octavo or "
                                      "\"8_octavo\"_scheme, or ask find_scheme(text) when the program runs");
  }
  /// Returns the row that has this id, for example "12_common", or no value if no row has it.
  [[nodiscard]] static constexpr std::optional<Attested> find(std::string_view id) {
    for (int row = 0; row < count; ++row)
      if (Attested const here{static_cast<SchemeRow>(row)}; here.id() == id) return here;
    return std::nullopt;
  }

  class Range;
  /// Returns all rows as a range, in the order of the table: `for (auto scheme : Attested::all())`.
  [[nodiscard]] static constexpr Range all() noexcept;

  /// Returns the row as an enumerator.
  [[nodiscard]] constexpr SchemeRow row() const noexcept { return static_cast<SchemeRow>(row_); }
  /// Returns the scheme in the language of folding.
  [[nodiscard]] constexpr std::string_view text() const { return detail::attested_rows[row_].text; }
  /// Returns the id: the word after `scheme` in the text.
  [[nodiscard]] constexpr std::string_view id() const {
    constexpr int before = 7; // "scheme "
    char const* const start = detail::attested_rows[row_].text + before;
    std::size_t size = 0;
    while (start[size] != ' ') ++size;
    return {start, size};
  }
  /// Returns the format that the scheme states. It reads the scheme, as `scheme()` does.
  [[nodiscard]] constexpr Format format() const { return scheme().format(); }
  /// Returns how well the grid of pages is attested.
  [[nodiscard]] constexpr Attestation attestation() const { return detail::attested_rows[row_].attestation; }
  /// Returns a short description.
  [[nodiscard]] constexpr std::string_view what() const { return detail::attested_rows[row_].what; }
  /// Returns where the scheme comes from: the source in which it was read, or the rules from which it follows.
  [[nodiscard]] constexpr std::string_view source() const { return detail::attested_rows[row_].source; }
  /// Returns the scheme, read from its text.
  [[nodiscard]] constexpr Scheme scheme() const {
    auto const read = read_scheme(text());
    if (!read) {
      auto const at = read.error().place.value_or(TextPlace{});
      scheme_text_is_wrong_at(static_cast<int>(at.line), static_cast<int>(at.column), read.error().problem);
    }
    return *read;
  }
  /// Returns the scheme, read from its text, so that a function of a `Scheme` takes a row of the table:
  /// `explain_page(schemes::octavo, 3)`.
  constexpr operator Scheme() const { return scheme(); }

  friend constexpr auto operator<=>(Attested, Attested) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Attested scheme) {
    return out << scheme.id();
  }
};

/// The attested schemes as a range.
class Attested::Range {
public:
  /// An iterator over the rows.
  class Iterator {
    int row_{};
    friend class Range;
    constexpr explicit Iterator(int row) : row_{row} {}

  public:
    /// The type of an element.
    using value_type = Attested;
    /// The type of a distance between two iterators.
    using difference_type = std::ptrdiff_t;
    constexpr Iterator() = default;
    /// Returns the row at this position.
    constexpr Attested operator*() const { return Attested{static_cast<SchemeRow>(row_)}; }
    /// Moves to the next row and returns this iterator.
    constexpr Iterator& operator++() { return ++row_, *this; }
    /// Moves to the next row and returns the iterator as it was before.
    constexpr Iterator operator++(int) { return Iterator{row_++}; }
    friend constexpr bool operator==(Iterator, Iterator) = default;
  };
  /// Returns an iterator to the first row.
  [[nodiscard]] constexpr Iterator begin() const noexcept { return Iterator{0}; }
  /// Returns an iterator past the last row.
  [[nodiscard]] constexpr Iterator end() const noexcept { return Iterator{count}; }
  /// Returns the number of rows.
  [[nodiscard]] constexpr int size() const noexcept { return count; }
};
constexpr Attested::Range Attested::all() noexcept { return {}; }

inline namespace literals {
/// Finds an attested scheme by its id while compiling: `"12_common"_scheme`.
consteval Attested operator""_scheme(char const* id, std::size_t size) {
  auto const found = Attested::find({id, size});
  if (!found) no_attested_scheme_has_this_name();
  return *found;
}
} // namespace literals

/// Reads a scheme of your own while compiling. A text that cannot be read does not compile. Compilers that show the
/// arguments of a call (clang) show the line and the column; all compilers show them for `written<"...">()`.
consteval Scheme written(std::string_view text) {
  auto const read = read_scheme(text);
  if (!read) {
    auto const at = read.error().place.value_or(TextPlace{});
    scheme_text_is_wrong_at(static_cast<int>(at.line), static_cast<int>(at.column), read.error().problem);
  }
  return *read;
}

/// A text as a template argument, for `written<"...">()`.
template <std::size_t N> struct SchemeText {
  char text[N]{}; ///< the text, with the zero byte at its end
  /// Copies a literal.
  consteval SchemeText(char const (&literal)[N]) {
    for (std::size_t i = 0; i < N; ++i) text[i] = literal[i];
  }
  /// Returns the text without the zero byte.
  [[nodiscard]] constexpr std::string_view view() const& noexcept BIFOLIUM_LIFETIMEBOUND { return {text, N - 1}; }
  std::string_view view() const&& = delete; // it would look at what goes
};

/// This template is never defined. A compiler shows its name and arguments if the text of a scheme cannot be read.
/// `because` is the problem, whose sentence is in the page of errors; `line` and `column` are places in the text.
template <Problem because, int line, int column> struct the_text_of_the_scheme_is_wrong;

/// Reads a scheme of your own while compiling, from a template argument: `written<"scheme mine 4° ...">()`. A text that
/// cannot be read does not compile, and every compiler shows the problem, the line and the column.
template <SchemeText text> consteval auto written() {
  constexpr auto read = read_scheme(text.view());
  if constexpr (read.has_value())
    return *read;
  else
    return the_text_of_the_scheme_is_wrong<read.error().problem, int{read.error().place.value_or(TextPlace{}).line},
                                           int{read.error().place.value_or(TextPlace{}).column}>{};
}

/// The schemes that are used most often. `SchemeRow` has all 61, and `"..."_scheme` finds each by its id.
namespace schemes {
inline constexpr Attested broadside{SchemeRow::broadside};                 ///< a sheet that is not folded
inline constexpr Attested folio{SchemeRow::folio};                         ///< folded once
inline constexpr Attested folio_in_sixes{SchemeRow::folio_in_sixes};       ///< three sheets inside one another
inline constexpr Attested folio_in_eights{SchemeRow::folio_in_eights};     ///< four sheets inside one another
inline constexpr Attested quarto{SchemeRow::quarto};                       ///< folded twice
inline constexpr Attested quarto_in_eights{SchemeRow::quarto_in_eights};   ///< two sheets inside one another
inline constexpr Attested quarto_half_sheet{SchemeRow::quarto_half_sheet}; ///< half a sheet, worked from one forme
inline constexpr Attested sexto{SchemeRow::sexto};                         ///< the usual French way
inline constexpr Attested octavo{SchemeRow::octavo};                       ///< folded three times
inline constexpr Attested octavo_half_sheet{SchemeRow::octavo_half_sheet}; ///< half a sheet, worked from one forme
/// eight leaves, and an off-cut of four set inside them
inline constexpr Attested duodecimo{SchemeRow::duodecimo};
/// half a sheet, worked from one forme
inline constexpr Attested duodecimo_half_sheet{SchemeRow::duodecimo_half_sheet};
inline constexpr Attested long_duodecimo{SchemeRow::long_duodecimo}; ///< columns folded to and fro
inline constexpr Attested sextodecimo{SchemeRow::sextodecimo};       ///< folded four times
/// two gatherings of eight from one sheet
inline constexpr Attested sextodecimo_in_eights{SchemeRow::sextodecimo_in_eights};
/// three gatherings of six from one sheet
inline constexpr Attested octodecimo_in_sixes{SchemeRow::octodecimo_in_sixes};
/// two gatherings of twelve from one sheet
inline constexpr Attested vicesimo_quarto_in_twelves{SchemeRow::vicesimo_quarto_in_twelves};
/// four gatherings of eight from one sheet
inline constexpr Attested tricesimo_secundo_in_eights{SchemeRow::tricesimo_secundo_in_eights};
} // namespace schemes

namespace detail {
/// The scheme of a row, read once in a program. The initialiser depends on S, so a row that is never named is never
/// read.
template <auto const& S> inline constexpr Scheme read_once = S.scheme();
} // namespace detail

/// Returns the scheme of a template argument: a row of the table is read, a `Scheme` is returned as it is.
template <auto const& S> constexpr Scheme const& scheme_of() {
  if constexpr (std::is_same_v<std::remove_cvref_t<decltype(S)>, Scheme>)
    return S;
  else
    return detail::read_once<S>;
}

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Attested> {
  std::size_t operator()(bifolium::Attested scheme) const noexcept { return static_cast<std::size_t>(scheme.row()); }
};
// Its iterators outlive the range, since they know the scheme by its row.
template <> inline constexpr bool std::ranges::enable_borrowed_range<bifolium::Attested::Range> = true;
