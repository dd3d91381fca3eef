// SPDX-License-Identifier: MIT
/// Decides whether one number is a slip for another: two digits exchanged, one left out, one written twice, or one
/// replaced by a similar digit. The correct number is computed first and only classified here; the search never tries
/// numbers at random.
#pragma once

#include <bifolium/book/detail/slips/slip_forms.hpp>
#include <bifolium/book/field.hpp>
#include <bifolium/book/slip_kind.hpp>
#include <bifolium/core/real.hpp>
#include <bifolium/leaf/roman.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A kind of slip, and the logarithm of the probability that it turns the true number into the written one, given this
/// kind.
struct FigureSlip {
  SlipKind kind{};
  double weight{};
};

/// The characters of a number, arabic or Roman.
struct Figures {
  char text[24]{};
  int size{};

  static constexpr Figures arabic(std::int64_t number) {
    Figures all;
    char reversed[20]{};
    int n = 0;
    do reversed[n++] = static_cast<char>('0' + number % 10);
    while ((number /= 10) != 0);
    while (n > 0) all.text[all.size++] = reversed[--n];
    return all;
  }
  static constexpr Figures roman(std::int64_t number) {
    Figures all;
    auto const numeral = small_roman(number);
    for (char c : numeral.view()) all.text[all.size++] = c;
    return all;
  }
  [[nodiscard]] constexpr int differences(Figures const& other, int& first) const {
    int count = 0;
    for (int i = 0; i < size; ++i)
      if (text[i] != other.text[i]) {
        if (count++ == 0) first = i;
      }
    return count;
  }
  [[nodiscard]] constexpr bool exchanged(Figures const& other, int at) const {
    return at + 1 < size && text[at] == other.text[at + 1] && text[at + 1] == other.text[at];
  }
  /// Returns true if the number without the digit at `gone` is the other number.
  [[nodiscard]] constexpr bool is_without(int gone, Figures const& other) const {
    for (int i = 0; i < other.size; ++i)
      if (text[i < gone ? i : i + 1] != other.text[i]) return false;
    return true;
  }
};

/// Returns true for digits that are confused with each other, because of their shape or because they are neighbours.
constexpr bool look_alike(char a, char b) {
  constexpr char pairs[][2]{{'1', '7'}, {'1', '4'}, {'3', '8'}, {'5', '6'}, {'3', '5'}, {'6', '9'}, {'0', '8'},
                            {'0', '9'}, {'2', '3'}, {'8', '9'}, {'6', '8'}, {'0', '6'}, {'4', '9'}, {'7', '9'}};
  for (auto const& pair : pairs)
    if ((a == pair[0] && b == pair[1]) || (a == pair[1] && b == pair[0])) return true;
  return a - b == 1 || b - a == 1;
}

/// Returns how one slip of digits turns `truth` into `seen`, or no value if one slip is not enough.
inline std::optional<FigureSlip> figure_slip(std::int64_t seen, std::int64_t truth) {
  if (seen == truth || truth <= 0 || seen <= 0) return std::nullopt;
  auto const a = Figures::arabic(seen), b = Figures::arabic(truth);
  int at = 0;
  if (a.size == b.size) {
    auto const different = a.differences(b, at);
    if (different == 2 && a.exchanged(b, at)) return FigureSlip{SlipKind::transposed, -real::log(b.size - 1)};
    if (different == 1)
      return FigureSlip{
          SlipKind::substituted,
          real::log((look_alike(a.text[at], b.text[at]) ? slip_form::similar_digit : slip_form::other_digit) / b.size)};
    return std::nullopt;
  }
  if (a.size + 1 == b.size) {
    for (int gone = 0; gone < b.size; ++gone)
      if (b.is_without(gone, a)) return FigureSlip{SlipKind::dropped, -real::log(b.size)};
    return std::nullopt;
  }
  if (a.size != b.size + 1) return std::nullopt;
  for (int extra = 0; extra < a.size; ++extra) {
    if (!a.is_without(extra, b)) continue;
    bool const twice =
        (extra > 0 && a.text[extra] == a.text[extra - 1]) || (extra + 1 < a.size && a.text[extra] == a.text[extra + 1]);
    return FigureSlip{SlipKind::doubled, real::log((twice ? slip_form::digit_twice : slip_form::digit_added) / a.size)};
  }
  return std::nullopt;
}

/// Calls `act` with every number that one slip of digits turns into `seen`, as `figure_slip` knows them.
template <class Act> void each_truth(std::int64_t seen, Act act) {
  std::int64_t power = 1;
  for (auto rest = seen; rest > 0; rest /= 10, power *= 10) {
    auto const figure = rest % 10, low = seen % power, high = rest / 10;
    for (std::int64_t other = 0; other < 10; ++other) {
      if (other != figure) act(seen + (other - figure) * power); // one replaced by another
      act((rest * 10 + other) * power + low);                    // one left out after this place
    }
    act(high * power + low); // one additional digit
    if (high > 0) act(seen + (high % 10 - figure) * power + (figure - high % 10) * power * 10);
  }
  for (std::int64_t other = 1; other < 10; ++other) act(other * power + seen); // the first left out
}

inline constexpr std::int64_t most_roman = 4999; ///< the greatest number in Roman numerals
/// Returns the slip for Roman numerals: one letter left out, one added, one replaced by another, or two exchanged.
inline std::optional<FigureSlip> roman_slip(std::int64_t seen, std::int64_t truth) {
  if (seen == truth || truth <= 0 || seen <= 0 || truth > most_roman || seen > most_roman) return std::nullopt;
  auto const a = Figures::roman(seen), b = Figures::roman(truth);
  int at = 0;
  if (a.size == b.size) {
    auto const different = a.differences(b, at);
    if (different == 1) return FigureSlip{SlipKind::roman, real::log(slip_form::roman_replaced / a.size)};
    if (different == 2 && a.exchanged(b, at))
      return FigureSlip{SlipKind::roman, real::log(slip_form::roman_length / a.size)};
    return std::nullopt;
  }
  auto const &longer = a.size > b.size ? a : b, &shorter = a.size > b.size ? b : a;
  if (longer.size != shorter.size + 1) return std::nullopt;
  for (int gone = 0; gone < longer.size; ++gone)
    if (longer.is_without(gone, shorter))
      return FigureSlip{SlipKind::roman, real::log(slip_form::roman_length / b.size)};
  return std::nullopt;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
