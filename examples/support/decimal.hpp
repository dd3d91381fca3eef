// SPDX-License-Identifier: MIT
/// Numbers as tables have them, read and written exactly: 12, 3.2, -0.5.
#pragma once

#include <bifolium/core/fraction.hpp>
#include <bifolium/core/problem.hpp>

#include <optional>
#include <string>
#include <string_view>

namespace support {

/// A number with a point, or what is wrong with it.
struct Decimal {
  std::optional<bifolium::Fraction> value{};
  std::string wrong{};
  bifolium::Problem problem{};
};

inline Decimal decimal(std::string_view text) {
  using namespace bifolium;
  auto const quoted = "'" + std::string{text} + "'";
  bool const negative = text.starts_with("-");
  if (negative) text.remove_prefix(1);
  std::optional<std::int64_t> value = 0;
  std::int64_t below = 1;
  bool point = false, digits = false;
  for (char c : text) {
    if (c == '.' && !point) {
      point = true;
      continue;
    }
    if (c < '0' || c > '9') return {{}, "found " + quoted + " where a number is expected", Problem::not_a_fraction};
    digits = true;
    if (below == 1'000'000'000) return {{}, quoted + " has more than nine decimals", Problem::number_too_large};
    value = value ? checked_multiply(*value, 10) : value;
    value = value ? checked_add(*value, c - '0') : value;
    below *= point ? 10 : 1;
  }
  if (!digits) return {{}, "found " + quoted + " where a number is expected", Problem::not_a_fraction};
  if (!value) return {{}, quoted + " is too large to calculate with", Problem::number_too_large};
  return {Fraction{negative ? -*value : *value, below}, {}, {}};
}

/// A number with so many decimals, half up; as a fraction where that does not fit.
inline std::string with_decimals(bifolium::Fraction number, int decimals) {
  using namespace bifolium;
  std::int64_t ten = 1;
  for (int i = 0; i < decimals; ++i) ten *= 10;
  auto const scaled = checked_multiply(number, Fraction{ten});
  auto const half = scaled ? checked_add(*scaled, Fraction{1, 2}) : std::nullopt;
  if (!half || number < Fraction{}) return std::string{to_text(number).view()};
  auto digits = std::to_string(half->floor() % ten);
  digits.insert(0, static_cast<std::size_t>(decimals) - digits.size(), '0');
  return std::to_string(half->floor() / ten) + (decimals > 0 ? "." + digits : "");
}

/// A number in a cell of a table: exact, 9 3/4, or with a point, 9.75, for programs that would read only the 9.
inline std::string in_cell(bifolium::Fraction number, bool decimals) {
  if (!decimals || number.is_whole()) return std::string{to_text(number).view()};
  auto digits = with_decimals(number, 6);
  if (digits.find('.') != digits.npos) digits.erase(digits.find_last_not_of('0') + 1);
  if (digits.ends_with('.')) digits.pop_back();
  return digits;
}

} // namespace support
