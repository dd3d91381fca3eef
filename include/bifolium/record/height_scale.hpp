// SPDX-License-Identifier: MIT
/// Height classes of libraries and book dealers. In the nineteenth and twentieth century they wrote O, Q or "8°" for
/// the height of a book on the shelf. Such a class says nothing about sheets: a quarto of 1490 is an "octavo" on most
/// of these scales. So a height class here is not a `Format` and does not convert to one. The scales also disagree: one
/// height has different names in Rome, Leipzig and Boston, and one scale has gaps and overlapping classes.
#pragma once

#include <bifolium/paper/measure.hpp>

#include <array>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A scale of height classes.
enum class HeightScale : std::uint8_t {
  american_1878,       ///< American Library Association
  cutter_rule_196,     ///< Cutter's rule 196: the number after F is the LOWER ten
  cutter_appendix_v,   ///< Cutter's Appendix V: the number after F is the UPPER ten, as in 1878
  spofford_1900,       ///< upper limits only: each class begins at the end of the next smaller class
  american_later,      ///< the form in dictionaries of the twentieth century: T has become 18mo
  british_association, ///< Library Association of the United Kingdom; it uses shape and chain lines as well
  german_trade,
  german_library,
  italian,
  french_trade, ///< "format bibliographique" in dealers' descriptions
  illinois,     ///< call numbers of one university library
};
/// The number of scales.
inline constexpr int height_scale_count = 11;

/// The limits that belong to a class: "up to 20" includes its upper limit, "20 and more" its lower limit, "8 to 9"
/// both.
enum class HeightLimits : std::uint8_t { upper, lower, both };

/// One class. Its limits are in the unit of its scale: inches for the British scale, centimetres for the others.
struct HeightClass {
  HeightScale scale{};      ///< the scale
  char const* symbol{""};   ///< the symbol in the scale: "O"
  char const* borrowed{""}; ///< for the table: the borrowed name, or an empty text
  double from{}, to{};      ///< the limits; an open upper limit is a kilometre

  /// Returns the name of a format that the class uses, as the scale writes it, or no value if it uses none.
  [[nodiscard]] constexpr std::optional<std::string_view> borrowed_name() const {
    return *borrowed == '\0' ? std::nullopt : std::optional<std::string_view>{borrowed};
  }
  /// Returns true if a book of this height belongs to the class.
  [[nodiscard]] constexpr bool takes(millimetres height) const;
};

namespace detail::height_scale {
/// One scale: its name in answers, its source, and the limits that its classes include.
struct Scale {
  char const *name, *source;
  HeightLimits limits{HeightLimits::upper};
};
// in the order of the enumeration
inline constexpr Scale scales[]{
    {"American Library Association, 1878",
     "Library Journal 3 (1878) 19-20, in Cutter, Rules for a Dictionary Catalogue, 3rd ed. (1891), Appendix III"},
    {"Cutter 1891, rule 196", "Cutter, Rules for a Dictionary Catalogue, 3rd ed. (1891), rule 196, note"},
    {"Cutter 1891, Appendix V", "Cutter, Rules for a Dictionary Catalogue, 3rd ed. (1891), Appendix V, p. 178"},
    {"Spofford 1900", "Spofford, A Book for All Readers (1900), size notation"},
    {"American, 20th century", "Webster's Third, table of book sizes, as reprinted at trussel.com"},
    {"Library Association of the United Kingdom",
     "Committee on Size-notation, in Quinn, Manual of Library Cataloguing (1899), Appendix B", HeightLimits::both},
    {"German book trade", "bibliotheca-johannei.de, Buchformate; antiquare.de, Buchkunde"},
    {"Deutsche Bibliothek", "guideline of the Deutsche Bibliothek, as reprinted at deutsche-bibeln.eu"},
    {"Italian", "Italian encyclopaedia, s.v. Formato, at trapaninfo.it"},
    {"French book trade", "bibliophilie.com; bibliophileheurtebise.com", HeightLimits::lower},
    {"University of Illinois", "University of Illinois Library, Book size rules"},
};
inline constexpr double open = 100'000;

inline constexpr HeightClass rows[]{
    {HeightScale::american_1878, "Fe", "48°", 0, 10},
    {HeightScale::american_1878, "Tt", "32°", 10, 12.5},
    {HeightScale::american_1878, "T", "24°", 12.5, 15},
    {HeightScale::american_1878, "S", "16°", 15, 17.5}, // or E, 18°, by choice
    {HeightScale::american_1878, "D", "12°", 17.5, 20},
    {HeightScale::american_1878, "O", "8°", 20, 25},
    {HeightScale::american_1878, "Q", "4°", 25, 30},
    {HeightScale::american_1878, "F", "folio", 30, 40},
    {HeightScale::american_1878, "F5", "folio", 40, 50},
    {HeightScale::american_1878, "F6", "folio", 50, 60},
    {HeightScale::american_1878, "F7", "folio", 60, 70},
    {HeightScale::cutter_rule_196, "Fe", "", 0, 10},
    {HeightScale::cutter_rule_196, "Tt", "", 10, 12.5},
    {HeightScale::cutter_rule_196, "T", "", 12.5, 15},
    {HeightScale::cutter_rule_196, "S", "", 15, 17.5},
    {HeightScale::cutter_rule_196, "D", "", 17.5, 20},
    {HeightScale::cutter_rule_196, "O", "", 20, 25},
    {HeightScale::cutter_rule_196, "Q", "", 25, 30},
    {HeightScale::cutter_rule_196, "F", "", 30, 40},
    {HeightScale::cutter_rule_196, "F4", "", 40, 50},
    {HeightScale::cutter_rule_196, "F5", "", 50, 60},
    {HeightScale::cutter_appendix_v, "F8", "folio", 70, 80},
    {HeightScale::spofford_1900, "Fe", "48mo", 0, 10},
    {HeightScale::spofford_1900, "Tt", "32mo", 10, 12.5}, // printed 12.3, a slip
    {HeightScale::spofford_1900, "T", "24mo", 12.5, 15},
    {HeightScale::spofford_1900, "S", "16mo", 15, 17.5},
    {HeightScale::spofford_1900, "D", "duodecimo", 17.5, 20},
    {HeightScale::spofford_1900, "O", "octavo", 20, 25},
    {HeightScale::spofford_1900, "Q", "quarto", 25, 30},
    {HeightScale::spofford_1900, "F", "folio", 30, 40},
    {HeightScale::american_later, "Sf", "64mo", 0, 7.5},
    {HeightScale::american_later, "Fe", "48mo", 7.5, 10},
    {HeightScale::american_later, "Tt", "32mo", 10, 12.5},
    {HeightScale::american_later, "T", "octodecimo", 12.5, 15}, // 24° in 1878
    {HeightScale::american_later, "S", "sextodecimo", 15, 17.5},
    {HeightScale::american_later, "D", "duodecimo", 17.5, 20},
    {HeightScale::american_later, "O", "octavo", 20, 25},
    {HeightScale::american_later, "Q", "quarto", 25, 30},
    {HeightScale::american_later, "F", "folio", 30, open},
    {HeightScale::british_association, "Imp. fo.", "", 21.5, 23}, // atlas folio: about 30
    {HeightScale::british_association, "Roy. fo.", "", 18.5, 21},
    {HeightScale::british_association, "fo.", "", 13.5, 18},
    {HeightScale::british_association, "Sm. fo.", "", 8.5, 13},
    {HeightScale::british_association, "Imp. 4°", "", 13.5, 16},
    {HeightScale::british_association, "Roy. 4°", "", 11.5, 13},
    {HeightScale::british_association, "4°", "", 9.5, 11},
    {HeightScale::british_association, "Sm. 4°", "", 7.5, 9},
    {HeightScale::british_association, "Imp. 8°", "", 10.5, 11},
    {HeightScale::british_association, "Roy. 8°", "", 9.5, 10},
    {HeightScale::british_association, "8°", "", 8, 9},
    {HeightScale::british_association, "Sm. 8°", "", 6.5, 7.5},
    {HeightScale::british_association, "16°", "", 5.5, 6},
    {HeightScale::british_association, "24°/32°", "", 4, 5},
    {HeightScale::british_association, "48° or m", "", 0, 4},
    {HeightScale::german_trade, "gr.2°", "", 45, open},
    {HeightScale::german_trade, "2°", "", 40, 45},
    {HeightScale::german_trade, "gr.4°", "", 35, 40},
    {HeightScale::german_trade, "4°", "", 25, 35},
    {HeightScale::german_trade, "gr.8°", "", 22.5, 25},
    {HeightScale::german_trade, "8°", "", 18.5, 22.5},
    {HeightScale::german_trade, "kl.8°", "", 15, 18.5},
    {HeightScale::german_trade, "12°", "", 10, 15},
    {HeightScale::german_trade, "16°", "", 0, 10},
    {HeightScale::german_library, "gr.2°", "", 45, open},
    {HeightScale::german_library, "2°", "", 40, 45},
    {HeightScale::german_library, "gr.4°", "", 35, 40},
    {HeightScale::german_library, "4°", "", 30, 35},
    {HeightScale::german_library, "Lex.8°", "", 25, 30},
    {HeightScale::german_library, "gr.8°", "", 22.5, 25},
    {HeightScale::german_library, "8°", "", 18.5, 22.5},
    {HeightScale::german_library, "kl.8°", "", 15, 18.5},
    {HeightScale::german_library, "16°", "", 10, 15},
    {HeightScale::german_library, "cm", "", 0, 10}, // named by its centimetres
    {HeightScale::italian, "in folio", "", 38, open},
    {HeightScale::italian, "in 4", "", 28, 38},
    {HeightScale::italian, "in 8", "", 20, 28},
    {HeightScale::italian, "in 16", "", 15, 20},
    {HeightScale::italian, "in 24", "", 10, 15},
    {HeightScale::italian, "in 32", "", 0, 10},
    {HeightScale::french_trade, "in-32", "", 0, 10},
    {HeightScale::french_trade, "in-18", "", 10, 14},
    {HeightScale::french_trade, "in-16", "", 14, 16},
    {HeightScale::french_trade, "in-12", "", 16, 20},
    {HeightScale::french_trade, "in-8", "", 20, 25},
    {HeightScale::french_trade, "in-4", "", 25, 30},
    {HeightScale::french_trade, "in-folio", "", 30, 40},
    {HeightScale::illinois, "Q", "", 28, 42}, // "28.1-42", by the tenth of a centimetre
    {HeightScale::illinois, "F", "", 42, open},
};
} // namespace detail::height_scale

namespace detail::height_scale {
constexpr Scale const& row_of(HeightScale scale) {
  auto const i = static_cast<std::size_t>(scale);
  if (i >= std::size_t{height_scale_count}) broken("there is no scale of heights with this number");
  return scales[i];
}
} // namespace detail::height_scale

/// Returns the name of a scale. Precondition: `scale` is an enumerator.
[[nodiscard]] constexpr char const* to_words(HeightScale scale) { return detail::height_scale::row_of(scale).name; }
/// Returns the source of the limits of a scale. Precondition: `scale` is an enumerator.
[[nodiscard]] constexpr char const* source_of(HeightScale scale) { return detail::height_scale::row_of(scale).source; }

constexpr bool HeightClass::takes(millimetres height) const {
  bool const inch = scale == HeightScale::british_association;
  auto const low = inch ? millimetres{inches{from}} : millimetres{centimetres{from}};
  auto const high = inch ? millimetres{inches{to}} : millimetres{centimetres{to}};
  auto const limits = detail::height_scale::row_of(scale).limits;
  return (limits == HeightLimits::upper ? height > low : height >= low) &&
         (limits == HeightLimits::lower ? height < high : height <= high);
}

/// The classes of one scale that include a height: none in a gap, several if classes overlap.
class HeightClasses {
  std::array<HeightClass const*, 4> found_{}; // no scale has more than three at one height
  std::size_t size_{};
  friend constexpr HeightClasses height_classes(HeightScale scale, millimetres height);

public:
  /// Returns the number of classes.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
  /// Returns true if no class includes the height.
  [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
  /// Returns class `i`. Precondition: 0 <= i < size().
  [[nodiscard]] constexpr HeightClass const& operator[](std::size_t i) const {
    if (i >= size_) broken("there is no height class with this number");
    return *found_[i];
  }
};

/// Returns the classes that a library using this scale would give a book of this height. The American, German and
/// French scales measure the book with its cover; on thirteen old bindings the cover is 3 to 7 mm taller than the leaf.
/// Precondition: the height can be a measurement (paper/measure.hpp).
[[nodiscard]] constexpr HeightClasses height_classes(HeightScale scale, millimetres height) {
  if (!is_measure(height)) broken("the height of a book must be more than zero and less than a kilometre");
  HeightClasses classes;
  for (auto const& row : detail::height_scale::rows)
    if (row.scale == scale && row.takes(height)) classes.found_[classes.size_++] = &row;
  return classes;
}

} // namespace v0
} // namespace bifolium
