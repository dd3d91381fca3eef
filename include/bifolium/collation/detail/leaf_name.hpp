// SPDX-License-Identifier: MIT
/// A leaf as a change names it. Inside a parenthesis the figure behind a signature is the place of a leaf, not a count:
/// A4, [A]1, 36/10, πA1; a figure alone (7) is a leaf of the gathering before it; a signature alone the whole gathering.
#pragma once

#include <bifolium/collation/detail/formula_text.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A gathering signed + cannot be named in a change, where the plus is the sign of an insertion.
constexpr bool is_plus(Signature const& s) noexcept {
  return s.mark() == Mark::symbol && s.text_size() == 1 && s.text()[0] == '+';
}

struct LeafName {
  bool found{};
  bool gathering_named{}; ///< `signature` holds something
  bool whole{};           ///< no leaf, the whole gathering
  bool letter_l{};        ///< l, the letter, stood for the figure 1
  Signature signature{};
  int leaf{};
  std::size_t end{}; ///< the byte behind it
};

/// The leaf named at byte `i`, before byte `end`.
constexpr LeafName leaf_name(FormulaText const& text, std::size_t i, std::size_t end) {
  LeafName name;
  auto const here = [&](std::size_t k) { return k < end ? text.at(k) : '\0'; };
  if (text.is_any(i, {"sig. "})) i = text.skip(i + 4);
  // a figure that is too large stays so, whatever follows
  auto const figure_to = [&](std::size_t& k, int most) {
    int value = 0;
    auto const from = k;
    for (; is_digit(here(k)); ++k) value = value > most ? value : value * 10 + (here(k) - '0');
    return k == from ? -1 : value;
  };
  auto const figure = [&](std::size_t& k) { return figure_to(k, most_leaves_in_gathering); };
  auto const side = [&](std::size_t& k) {
    if ((here(k) == 'r' || here(k) == 'v') && !is_latin_letter(here(k + 1))) ++k;
  };
  if (is_digit(here(i))) {
    auto k = i;
    constexpr int most_number = Signature::highest_number;
    auto const value = figure_to(k, most_number);
    if (here(k) == '/') {
      auto after = k + 1;
      if (auto const leaf = figure(after); leaf >= 0 && value > 0 && value <= most_number) {
        name = {true, true, false, false, Signature::number(static_cast<std::uint32_t>(value)), leaf, after};
        side(name.end);
      }
      return name;
    }
    auto const c = here(k);
    bool const bare = c == '\0' || c == ',' || c == '.' || c == ';' || c == '\n' || c == '\r' ||
                      is_blank(text.code(k)) || c == '+' || c == '?' || c == ']' || (c == '[' && here(k + 1) == '=') ||
                      c == '=' || is_dash(text.code(k));
    if (bare) {
      name.found = true;
      name.leaf = value;
      name.end = k;
      return name;
    }
  }
  if (is_latin_letter(here(i)) && text.is_word(i)) { // the bare name of a symbol: -greek cross8
    auto k = i;
    while (is_latin_letter(here(k)) || (here(k) == ' ' && is_latin_letter(here(k + 1)))) ++k;
    auto const size = k - i;
    auto const leaf = figure(k);
    bool const bare =
        size > 2 && leaf >= 0 && size <= Signature::longest_text && !(k < end && is_latin_letter(here(k)));
    if (bare) return {true, true, false, false, Signature::text(Mark::name, text.view().data() + i, size), leaf, k};
  }
  auto const scan = text.signatures(end).scan(i);
  if (!scan || scan.end > end || is_plus(scan.signature)) return name;
  auto k = scan.end;
  if (here(k) == '/') ++k;
  auto const before = k;
  auto leaf = figure(k);
  if (leaf < 0 && here(k) == 'l' && !is_latin_letter(here(k + 1)) && scan.signature.is_letter()) {
    leaf = 1; // A4(-Al)
    name.letter_l = true;
    ++k;
  }
  if (leaf < 0 && scan.signature.is_letter() && is_small(here(k))) { // Aiij, as early books are signed
    auto const roman = roman_numeral(text.view().substr(0, end).substr(k));
    if (roman.bytes != 0 && roman.value < 50 && !is_latin_letter(here(k + roman.bytes))) {
      leaf = static_cast<int>(roman.value);
      k += roman.bytes;
    }
  }
  if (leaf < 0 && scan.signature.mark() == Mark::number && !scan.signature.is_quoted() && !scan.inferred &&
      scan.signature.series() == 0 && scan.signature.duplicate() == Duplicate::none)
    return name; // a figure with something else behind it names nothing
  name.signature = scan.signature;
  name.gathering_named = true;
  if (leaf < 0) {
    auto const c = here(before);
    if (is_latin_letter(c)) return name;
    name.whole = true;
    leaf = 0;
  } else
    side(k);
  name.found = true;
  name.leaf = leaf;
  name.end = k;
  return name;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
