// SPDX-License-Identifier: MIT
/// A formula may name a leaf that it does not have, which is a finding and no reason to give up. A parenthesis that cannot be
/// read is left out and kept apart, and the number of leaves that it seems to add is counted from its figures. A repair
/// can make it readable, so repairs are read again by the same rule.
#pragma once

#include <bifolium/record/read_signature_note.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A parenthesis that cannot be read, and why.
struct LeftOut {
  TextSpan at{};
  Error error{};
};
/// A formula without the parentheses that cannot be read, or the first error if it cannot be read without them either.
struct FormulaWithout {
  Expected<SignatureNote> note;
  std::vector<LeftOut> left_out{};
};

inline FormulaWithout read_formula_without(std::string_view field, Dialect dialect, Limits const& limits) {
  constexpr int most_left_out = 8;
  FormulaWithout read{read_signature_note(field, dialect, limits)};
  if (read.note) return read;
  auto const first = read.note.error();
  std::string text{field};
  while (!read.note && read.left_out.size() < most_left_out) {
    auto const at = position_of(text, read.note.error().place.value_or(TextPlace{}));
    auto const open = text.rfind('(', at), close = text.find(')', at);
    if (open == text.npos || close == text.npos || text.find(')', open) != close) break;
    auto const from = position_of(field, place_in(text, open)); // in the field the bytes before it may be more
    read.left_out.push_back({{from, from + close + 1 - open}, read.note.error()});
    text = with_blanks(text, {open, close + 1});
    read.note = read_signature_note(text, dialect, limits);
  }
  if (!read.note) read.note = first;
  return read;
}

/// Returns true for a character that begins a change.
constexpr bool begins_change(char32_t c) { return is_dash(c) || c == 0x2212 || c == 0xB1 || c == '+' || c == '='; }

/// Returns the number of leaves that a parenthesis seems to add if it names a gathering or leaf that the formula does not
/// have: (-A1,2) takes two away.
inline std::int32_t leaves_added_by(std::string_view parenthesis) {
  auto const inside = parenthesis.substr(1, parenthesis.size() < 2 ? 0 : parenthesis.size() - 2);
  auto const first = after_blanks(inside, 0);
  if (first == inside.size()) return 0;
  auto const sign = decode(inside, first);
  if (!is_dash(sign.value) && sign.value != 0x2212) return inside.find('+', first + 1) != inside.npos ? 1 : 0;
  std::int32_t taken = 0;
  bool begins = true, counted = false; // of a part of the list: one with another sign is another change
  for (auto i = first + sign.bytes; i < inside.size(); ++i) {
    if (inside[i] == ',' || inside[i] == '.') {
      begins = true, counted = false;
      continue;
    }
    if (auto const blank = blank_at(inside, i); blank != 0) {
      i += blank - 1;
      continue;
    }
    auto const c = decode(inside, i).value;
    bool const no_name = c < 0x80 && std::string_view{"|?<>~!#%"}.find(static_cast<char>(c)) != std::string_view::npos;
    counted = counted || (begins && (begins_change(c) || no_name)); // (-A1, ||-A2?): nobody knows what the || says
    begins = false;
    if (!counted && is_digit(inside[i])) --taken, counted = true;
  }
  return taken;
}

/// Returns the number of leaves of a formula, with those that the parentheses seem to add that cannot be read. No value
/// if it cannot be read without them either.
inline std::optional<std::int64_t> leaves_of_formula(std::string_view field, Dialect dialect, Limits const& limits) {
  auto const read = read_formula_without(field, dialect, limits);
  if (!read.note) return std::nullopt;
  auto leaves = read.note->formula.leaves();
  for (auto const& one : read.left_out) leaves += leaves_added_by(one.at.of(field));
  return leaves;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
