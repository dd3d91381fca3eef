// SPDX-License-Identifier: MIT
/// A handle to one row of the table of attested schemes: a single byte, so that `impose<schemes::octavo>()` makes short
/// symbols. The text of the scheme is read where the scheme is first used - while compiling, if it is a template argument
/// - and not before. A scheme of your own can be used wherever an attested one can:
///
///     constexpr Scheme mine = written<"scheme mine 4° ...">();
///     constexpr auto const& formes = impose<mine>();
#pragma once

#include <bifolium/fold/attested_rows.hpp>
#include <bifolium/fold/read_scheme.hpp>

#include <type_traits>

namespace bifolium {
inline namespace v0 {

/// The compiler stops in a call of this function if the text of a scheme is wrong; its arguments are the place and the
/// problem.
constexpr void scheme_text_is_wrong_at(int line, int column, Problem problem) {
  (void)line, (void)column;
  if (problem != Problem::none) broken("the text of a scheme is wrong");
}
/// The compiler shows the name of this function for `"..."_scheme` with a name that no scheme has.
inline void there_is_no_scheme_of_that_name() { broken("there is no attested scheme of that name"); }

/// One row of the table of attested schemes.
class Attested {
  std::uint8_t row_{};

public:
  /// How many schemes there are; their rows count from 0.
  static constexpr int count = static_cast<int>(detail::attested_count);

  /// The scheme of a row. pre: the table has that row.
  constexpr explicit Attested(SchemeRow row) : row_{static_cast<std::uint8_t>(row)} {
    if (row_ >= count) broken("the table of schemes has no such row");
  }
  /// The row with this id, such as "12_common".
  [[nodiscard]] static constexpr std::optional<Attested> find(std::string_view id) {
    for (int row = 0; row < count; ++row)
      if (Attested const here{static_cast<SchemeRow>(row)}; here.id() == id) return here;
    return std::nullopt;
  }

  class Range;
  /// All of them, in the order of the table: `for (auto scheme : Attested::all())`.
  [[nodiscard]] static constexpr Range all() noexcept;

  /// The row of the table.
  [[nodiscard]] constexpr SchemeRow row() const noexcept { return static_cast<SchemeRow>(row_); }
  /// The scheme in the language of folding.
  [[nodiscard]] constexpr std::string_view text() const { return detail::attested_rows[row_].text; }
  /// The word after `scheme` in its text.
  [[nodiscard]] constexpr std::string_view id() const {
    constexpr int before = 7; // "scheme "
    char const* const start = detail::attested_rows[row_].text + before;
    std::size_t size = 0;
    while (start[size] != ' ') ++size;
    return {start, size};
  }
  /// How far the grid is attested.
  [[nodiscard]] constexpr Attestation attestation() const { return detail::attested_rows[row_].attestation; }
  /// What it is, in a few words.
  [[nodiscard]] constexpr std::string_view what() const { return detail::attested_rows[row_].what; }
  /// The source it was read in; empty for a scheme that follows from the rules.
  [[nodiscard]] constexpr std::string_view source() const { return detail::attested_rows[row_].source; }
  /// The scheme itself, read from its text.
  [[nodiscard]] constexpr Scheme scheme() const {
    auto const read = read_scheme(text());
    if (!read)
      scheme_text_is_wrong_at(static_cast<int>(read.error().line), static_cast<int>(read.error().column),
                              read.error().problem);
    return *read;
  }

  friend constexpr auto operator<=>(Attested, Attested) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Attested scheme) {
    return out << scheme.id();
  }
};

/// The attested schemes one after another.
class Attested::Range {
public:
  /// Goes from row to row.
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
    /// The element at this position.
    constexpr Attested operator*() const { return Attested{static_cast<SchemeRow>(row_)}; }
    /// Moves to the next element.
    constexpr Iterator& operator++() { return ++row_, *this; }
    /// Moves to the next element.
    constexpr Iterator operator++(int) { return Iterator{row_++}; }
    friend constexpr bool operator==(Iterator, Iterator) = default;
  };
  /// An iterator to the first element.
  [[nodiscard]] constexpr Iterator begin() const noexcept { return Iterator{0}; }
  /// An iterator past the last element.
  [[nodiscard]] constexpr Iterator end() const noexcept { return Iterator{count}; }
  /// The number of elements.
  [[nodiscard]] constexpr int size() const noexcept { return count; }
};
constexpr Attested::Range Attested::all() noexcept { return {}; }

inline namespace literals {
/// "12_common"_scheme: an attested scheme by its id, looked up while compiling.
consteval Attested operator""_scheme(char const* id, std::size_t size) {
  auto const found = Attested::find({id, size});
  if (!found) there_is_no_scheme_of_that_name();
  return *found;
}
} // namespace literals

/// A scheme of your own, read while compiling. Text that cannot be read does not compile; the compiler shows line and
/// column where it shows the arguments of a call (clang). See `written<"...">()` for a form in which all compilers do.
consteval Scheme written(std::string_view text) {
  auto const read = read_scheme(text);
  if (!read)
    scheme_text_is_wrong_at(static_cast<int>(read.error().line), static_cast<int>(read.error().column),
                            read.error().problem);
  return *read;
}

/// A text as a template argument: what the argument of `written<"...">()` becomes.
template <std::size_t N> struct SchemeText {
  char text[N]{}; ///< with the zero byte at its end
  /// Copies a literal.
  consteval SchemeText(char const (&literal)[N]) {
    for (std::size_t i = 0; i < N; ++i) text[i] = literal[i];
  }
  /// Without the zero byte.
  [[nodiscard]] constexpr std::string_view view() const noexcept { return {text, N - 1}; }
};

/// Never defined: a compiler shows its name and arguments for the text of a scheme that cannot be read. `because` is the
/// problem, whose sentence is in the page of errors; line and column are those of the text.
template <Problem because, int line, int column> struct the_text_of_the_scheme_is_wrong;

/// The same scheme of your own, its text a template argument: `written<"scheme mine 4° ...">()`. Text that cannot be read
/// does not compile, and every compiler names the problem, the line and the column.
template <SchemeText text> consteval auto written() {
  constexpr auto read = read_scheme(text.view());
  if constexpr (read.has_value())
    return *read;
  else
    return the_text_of_the_scheme_is_wrong<read.error().problem, int{read.error().line}, int{read.error().column}>{};
}

/// The schemes most often named. All 61 are `SchemeRow`s, and "..."_scheme finds each by its id.
namespace schemes {
inline constexpr Attested broadside{SchemeRow::broadside};                 ///< a sheet unfolded
inline constexpr Attested folio{SchemeRow::folio};                         ///< folded once
inline constexpr Attested folio_in_sixes{SchemeRow::folio_in_sixes};       ///< three sheets inside one another
inline constexpr Attested folio_in_eights{SchemeRow::folio_in_eights};     ///< four sheets inside one another
inline constexpr Attested quarto{SchemeRow::quarto};                       ///< folded twice
inline constexpr Attested quarto_in_eights{SchemeRow::quarto_in_eights};   ///< two sheets inside one another
inline constexpr Attested quarto_half_sheet{SchemeRow::quarto_half_sheet}; ///< half a sheet, worked from one forme
inline constexpr Attested sexto{SchemeRow::sexto};                         ///< a common French manner
inline constexpr Attested octavo{SchemeRow::octavo};                       ///< folded three times
inline constexpr Attested octavo_half_sheet{SchemeRow::octavo_half_sheet}; ///< half a sheet, worked from one forme
inline constexpr Attested duodecimo{SchemeRow::duodecimo};                 ///< the off-cut inset
inline constexpr Attested duodecimo_half_sheet{
    SchemeRow::duodecimo_half_sheet};                                ///< half a sheet, worked from one forme
inline constexpr Attested long_duodecimo{SchemeRow::long_duodecimo}; ///< columns folded to and fro
inline constexpr Attested sextodecimo{SchemeRow::sextodecimo};       ///< folded four times
inline constexpr Attested sextodecimo_in_eights{
    SchemeRow::sextodecimo_in_eights};                                         ///< two gatherings of eight from a sheet
inline constexpr Attested octodecimo_in_sixes{SchemeRow::octodecimo_in_sixes}; ///< three gatherings of six from a sheet
inline constexpr Attested vicesimo_quarto_in_twelves{
    SchemeRow::vicesimo_quarto_in_twelves}; ///< two gatherings of twelve from a sheet
inline constexpr Attested tricesimo_secundo_in_eights{
    SchemeRow::tricesimo_secundo_in_eights}; ///< four gatherings of eight from a sheet
} // namespace schemes

namespace detail {
/// The scheme of a row, read once in a program. The initialiser depends on S, so a row that no one names is never read.
template <auto const& S> inline constexpr Scheme read_once = S.scheme();
} // namespace detail

/// The scheme that a template argument means: a row of the table is read, a `Scheme` is used as it is.
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
