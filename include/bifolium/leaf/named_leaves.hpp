// SPDX-License-Identifier: MIT
/// A mark in quotation marks can belong to leaves and not to a gathering: 'gg3.4' is a bifolium whose leaves are signed
/// gg3 and gg4, and 'c3' is one leaf. Such a mark states the number of leaves.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/leaf/signature.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The leaves that a mark names: `count` leaves from number `first`.
struct NamedLeaves {
  std::size_t stem{}; ///< number of bytes before the digits; they name the gathering of the leaves
  int first{};        ///< number of the first leaf
  int count{};        ///< number of leaves, at least 1
};

/// Reads leaves from the text of a mark in quotation marks. Returns no value if the text does not end with consecutive
/// numbers, separated by full points, after some other character.
constexpr std::optional<NamedLeaves> named_leaves(std::string_view text) {
  NamedLeaves named;
  auto stem = text.size();
  while (stem > 0 && (is_digit(text[stem - 1]) || text[stem - 1] == '.')) --stem;
  if (stem == 0 || stem == text.size() || text[stem] == '.') return std::nullopt;
  named.stem = stem;
  for (auto i = stem; i < text.size(); ++i) {
    int figure = 0;
    auto const from = i;
    for (; i < text.size() && is_digit(text[i]) && i - from < 3; ++i) figure = figure * 10 + (text[i] - '0');
    bool const ends = i == text.size() || text[i] == '.';
    bool const follows = named.count == 0 || figure == named.first + named.count;
    if (i == from || !ends || i + 1 == text.size() || figure == 0 || !follows) return std::nullopt;
    if (named.count == 0) named.first = figure;
    ++named.count;
  }
  return named;
}
/// Reads leaves from a mark in quotation marks. Returns no value for a mark of another kind.
constexpr std::optional<NamedLeaves> named_leaves(Signature const& mark) {
  if (mark.mark() != Mark::printed) return std::nullopt;
  return named_leaves(std::string_view{mark.text(), mark.text_size()});
}

} // namespace v0
} // namespace bifolium
