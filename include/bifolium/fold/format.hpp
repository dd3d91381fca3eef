// SPDX-License-Identifier: MIT
/// The format of a book is the number of leaves that its sheet makes, cut or folded (DCRMR 6.29): an octavo sheet makes
/// eight. It is neither the number of folds nor the number of leaves in a gathering. A leaf may also be a part of a
/// sheet that was never folded (1/2°); a record may say "single sheet" without naming the part; and "not determined" is
/// a statement too.
///
/// If a sheet was cut before it went to press, two readings of the definition differ: the fraction of the sheet of
/// paper (Bowers; the catalogues of incunables), or the pages that fill one side of the piece that went to press
/// (Tanselle, Studies in Bibliography 53). A `Format` is the statement; `format_of(fold, reading)` computes either.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/short_text.hpp>

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A definition of format.
enum class FormatReading : std::uint8_t {
  paper_fraction,       ///< leaves made by the whole sheet of paper (Bowers, GW, BMC)
  pages_per_forme_side, ///< pages that fill one side of the piece of paper that went to press (Tanselle)
};

/// What a record says about the shape of the leaf, beside the number of the format.
enum class Shape : std::uint8_t {
  usual,
  oblong, ///< broader than high: the sheet is turned, or folded the other way
  agenda, ///< tall and very narrow: at least three times as high as wide (Roberts & Etherington s.v. agenda)
  broad,  ///< broader than usual for the format, as in broad twelves
  longer, ///< "long" in the trade: folded the narrow way, as in long twelves (2 x 6)
};

/// A format statement: 8° (8vo, octavo), 1/2°, oblong 4°, single sheet, not determined.
class Format {
public:
  /// What is known of the format: not determined, one unfolded sheet, a part of a sheet, or a number of leaves to the
  /// sheet.
  enum class Kind : std::uint8_t { not_determined, single_sheet, part, leaves };
  /// The greatest number of leaves to a sheet.
  static constexpr int most_leaves = 128;

  /// Makes "not determined".
  constexpr Format() = default;
  /// Makes the format with `n` leaves to the sheet. Precondition: 1 to 128.
  [[nodiscard]] static constexpr Format of(int n, Shape shape = Shape::usual) { return {Kind::leaves, n, shape}; }
  /// Makes the format of one unfolded n-th part of a sheet: 1/2°, 1/4°, 1/8°. Precondition: 2 to 128.
  [[nodiscard]] static constexpr Format part_of_sheet(int n, Shape shape = Shape::usual) {
    if (n < 2) broken("a part of a sheet must be a half or less: 2 to 128");
    return {Kind::part, n, shape};
  }
  /// Makes the format of a single sheet ("s.sh.", "broadside") when no record says what part of the full sheet it is.
  [[nodiscard]] static constexpr Format single_sheet() { return {Kind::single_sheet, 1, Shape::usual}; }

  /// Returns what is known of the format.
  [[nodiscard]] constexpr Kind kind() const noexcept { return kind_; }
  /// Returns the shape of the leaf, as in oblong 4°; `usual` if none is stated.
  [[nodiscard]] constexpr Shape shape() const noexcept { return shape_; }
  /// Returns this format with another shape.
  [[nodiscard]] constexpr Format with(Shape shape) const { return {kind_, number_, shape}; }
  /// Returns the number of leaves that a sheet makes - 8 for 8°, 2 for 1/2° - or no value if the statement does not
  /// say.
  [[nodiscard]] constexpr std::optional<int> leaves_to_sheet() const noexcept {
    if (kind_ == Kind::leaves || kind_ == Kind::part) return number_;
    return std::nullopt;
  }

  /// Returns the symbol: 8°, 1/2°, oblong 4°; "single sheet", "not determined".
  [[nodiscard]] constexpr ShortText<32> symbol() const;
  /// Returns the abbreviation - 8vo, fol., 12mo - or the symbol if there is no abbreviation.
  [[nodiscard]] constexpr ShortText<32> abbreviation() const;
  /// Returns the name - octavo, folio, duodecimo - or the abbreviation if there is no Latin name.
  [[nodiscard]] constexpr ShortText<32> name() const;

  friend constexpr auto operator<=>(Format, Format) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Format format) {
    return out << format.symbol().view();
  }

private:
  Kind kind_{Kind::not_determined};
  std::uint8_t number_{0};
  Shape shape_{Shape::usual};

  constexpr Format(Kind kind, int n, Shape shape) : kind_{kind}, number_{static_cast<std::uint8_t>(n)}, shape_{shape} {
    if (n < 0 || n > most_leaves) broken("a format must be from 1° to 128°");
    if (kind == Kind::leaves && n < 1) broken("a format must be from 1° to 128°");
  }
  enum class Wording : std::uint8_t { symbol, abbreviation, name };
  [[nodiscard]] constexpr ShortText<32> written(Wording wording) const;
};

namespace detail {

/// A format with words of its own. Names are the Latin ordinals as cataloguing rules print them; aliases are the other
/// spellings in records. From common practice and the lists in De Vinne (1904) and MacKellar (1893).
struct FormatWords {
  std::uint8_t leaves;
  std::string_view abbreviation, name, alias;
};
using namespace std::string_view_literals;
inline constexpr std::array format_words{
    FormatWords{1, "full-sheet"sv, "full sheet"sv, "1mo"sv},
    FormatWords{2, "fol."sv, "folio"sv, "fo."sv},
    FormatWords{4, "4to"sv, "quarto"sv, "qto"sv},
    FormatWords{6, "6to"sv, "sexto"sv, "sixmo"sv},
    FormatWords{8, "8vo"sv, "octavo"sv, "oct."sv},
    FormatWords{12, "12mo"sv, "duodecimo"sv, "twelvemo"sv},
    FormatWords{16, "16mo"sv, "sextodecimo"sv, "sixteenmo"sv},
    FormatWords{18, "18mo"sv, "octodecimo"sv, "eighteenmo"sv},
    FormatWords{20, "20mo"sv, "vicesimo"sv, "vigesimo"sv},
    FormatWords{24, "24mo"sv, "vicesimo-quarto"sv, "vigesimo-quarto"sv},
    FormatWords{32, "32mo"sv, "tricesimo-secundo"sv, "trigesimo-secundo"sv},
    FormatWords{36, "36mo"sv, "tricesimo-sexto"sv, "trigesimo-sexto"sv},
    FormatWords{48, "48mo"sv, "quadragesimo-octavo"sv, "forty-eightmo"sv},
    FormatWords{64, "64mo"sv, "sexagesimo-quarto"sv, "sixty-fourmo"sv},
    FormatWords{72, "72mo"sv, "septuagesimo-secundo"sv, "seventy-twomo"sv},
    FormatWords{96, "96mo"sv, "nonagesimo-sexto"sv, "ninety-sixmo"sv},
    FormatWords{128, "128mo"sv, "centesimo-vicesimo-octavo"sv, ""sv},
};
/// The words that records use for the shape. The first of each shape is the one that is written.
struct ShapeWords {
  Shape shape;
  std::string_view word;
};
inline constexpr std::array shape_words{
    ShapeWords{Shape::oblong, "oblong"sv}, ShapeWords{Shape::oblong, "obl."sv},   ShapeWords{Shape::oblong, "quer"sv},
    ShapeWords{Shape::oblong, "qu."sv},    ShapeWords{Shape::agenda, "agenda"sv}, ShapeWords{Shape::broad, "broad"sv},
    ShapeWords{Shape::longer, "long"sv},
};

constexpr void append_number(ShortText<32>& text, unsigned number) {
  if (number >= 10) append_number(text, number / 10);
  char const digit = static_cast<char>('0' + number % 10);
  text.append(&digit, 1);
}

} // namespace detail

constexpr ShortText<32> Format::written(Wording wording) const {
  if (kind_ == Kind::not_determined) return std::string_view{"not determined"};
  if (kind_ == Kind::single_sheet) return std::string_view{"single sheet"};
  ShortText<32> text;
  for (auto const& words : detail::shape_words)
    if (words.shape == shape_) {
      text.append(words.word);
      text.append(" ");
      break;
    }
  if (kind_ == Kind::leaves && wording != Wording::symbol)
    for (auto const& words : detail::format_words)
      if (words.leaves == number_) {
        text.append(wording == Wording::name ? words.name : words.abbreviation);
        return text;
      }
  if (kind_ == Kind::part) text.append("1/");
  detail::append_number(text, number_);
  text.append(kind_ == Kind::leaves && wording != Wording::symbol ? "mo" : "°");
  return text;
}
constexpr ShortText<32> Format::symbol() const { return written(Wording::symbol); }
constexpr ShortText<32> Format::abbreviation() const { return written(Wording::abbreviation); }
constexpr ShortText<32> Format::name() const { return written(Wording::name); }

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Format> {
  std::size_t operator()(bifolium::Format format) const noexcept {
    return (static_cast<std::size_t>(format.kind()) * 8U + static_cast<std::size_t>(format.shape())) * 256U +
           static_cast<std::size_t>(format.leaves_to_sheet().value_or(0));
  }
};
