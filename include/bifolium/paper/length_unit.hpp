// SPDX-License-Identifier: MIT
/// The units of length. Each states its size in millimetres as a fraction, so that conversions are exact. A unit of
/// your own is a type like these.
#pragma once

#include <concepts>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The millimetre. Every unit states its size in millimetres as a ratio of whole numbers, `num` / `den`. `symbol` is
/// written after the number. A unit of your own may have no symbol; a std::ratio is such a unit.
struct Millimetre {
  static constexpr std::int64_t num = 1, den = 1; ///< the size of the unit in millimetres, as a fraction
  static constexpr char const* symbol = "mm";     ///< the symbol written after a number
};
/// The centimetre: ten millimetres.
struct Centimetre {
  static constexpr std::int64_t num = 10, den = 1; ///< the size of the unit in millimetres, as a fraction
  static constexpr char const* symbol = "cm";      ///< the symbol written after a number
};
/// The inch of 25.4 mm, international since 1959. The older English inch differs in the seventh digit.
struct Inch {
  static constexpr std::int64_t num = 127, den = 5; ///< the size of the unit in millimetres, as a fraction
  static constexpr char const* symbol = "in";       ///< the symbol written after a number
};
/// The pouce, the inch of Paris. The law of 19 frimaire VIII (1799) made a metre equal to 443.296 lignes, so 1 pouce =
/// 12 lignes = 375000/13853 mm, which is 27.069949 mm to six places.
struct ParisInch {
  static constexpr std::int64_t num = 375'000, den = 13'853; ///< the size of the unit in millimetres, as a fraction
  static constexpr char const* symbol = "pouces";            ///< the symbol written after a number
};
/// The ligne, a twelfth of a pouce.
struct ParisLine {
  static constexpr std::int64_t num = 31'250, den = 13'853; ///< the size of the unit in millimetres, as a fraction
  static constexpr char const* symbol = "lignes";           ///< the symbol written after a number
};

/// A unit of length: `num` / `den` millimetres, both above zero.
template <class T>
concept LengthUnit = requires {
  { T::num } -> std::convertible_to<std::int64_t>;
  { T::den } -> std::convertible_to<std::int64_t>;
}
&&(T::num > 0) && (T::den > 0);

} // namespace v0
} // namespace bifolium
