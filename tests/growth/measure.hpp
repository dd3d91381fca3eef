// SPDX-License-Identifier: MIT
// Measures how the work and the memory of a reader grow with its text. growth.cpp says what may be.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

extern std::uint64_t steps_done;
extern std::size_t bytes_held, most_bytes_held;

using Unit = std::string (*)(int);

/// The signature of gathering i: 100A, 100B ... 100Z, 101A; all of about one length, so that only their number grows.
inline std::string signature(int i) {
  constexpr std::string_view letters = "ABCDEFGHIKLMNOPQRSTVXYZ";
  return std::to_string(100 + i / 23) + letters[static_cast<std::size_t>(i % 23)];
}
/// n units of text, one after another.
inline std::string each(int n, Unit unit, std::string const& before = "", std::string const& after = "") {
  auto text = before;
  for (int i = 0; i < n; ++i) text += unit(i);
  return text + after;
}
inline std::string run_of(int n) { return "8°: 100A-" + signature(n < 2 ? 1 : n - 1) + "⁸"; }
inline std::string changed(int n, Unit unit) { return each(n, unit, run_of(n) + "(", ")"); }

struct Case {
  std::string name;
  std::function<void(int)> work; ///< prepares; what it gives to `counted` is measured
};
inline std::uint64_t measured = 0;
inline std::size_t held = 0, text_bytes = 0; // text_bytes is 0 where no text is read
/// The steps of an action are those of the case, and the most bytes that it held at once.
template <class Act> void counted(Act act) {
  auto const before = steps_done;
  auto const held_before = most_bytes_held = bytes_held;
  act();
  measured = steps_done - before;
  held = most_bytes_held - held_before;
}
template <class Read> void reads(std::string const& text, Read read) {
  text_bytes = text.size();
  counted([&] { static_cast<void>(read(text)); });
}

/// Steps at some units; a case that fails is no case.
inline std::uint64_t steps(Case const& one, int units) {
  measured = 0, text_bytes = 0;
  one.work(units);
  return measured;
}

/// How a case grew.
struct Grown {
  std::uint64_t steps{};
  double exponent{}, bytes_for_a_byte{};
  bool holds{}; ///< no faster than it may, and in no more memory than it may
};
/// Grows a case tenfold from the fewest units to the most.
inline Grown grown(Case const& one, int fewest, int most) {
  constexpr double highest = 1.1;
  Grown result;
  for (int units = fewest; units <= most; units *= 10) {
    auto const before = result.steps;
    result.steps = steps(one, units);
    if (before > 1000) result.exponent = std::log10(static_cast<double>(result.steps) / static_cast<double>(before));
    if (result.exponent > 1.5) break; // no need to wait for the end of it
  }
  constexpr std::size_t most_for_a_byte = 1200, for_any_text = std::size_t{1} << 16U;
  bool const bounded = text_bytes == 0 || held <= most_for_a_byte * text_bytes + for_any_text;
  if (text_bytes > 0) result.bytes_for_a_byte = static_cast<double>(held) / static_cast<double>(text_bytes);
  result.holds = result.exponent <= highest && bounded;
  return result;
}
inline void print(std::string const& name, Grown const& result) {
  std::printf("%-42s %12llu steps, exponent %5.2f", name.c_str(), static_cast<unsigned long long>(result.steps),
              result.exponent);
  if (result.bytes_for_a_byte > 0) std::printf(", %6.1f bytes a byte", result.bytes_for_a_byte);
  std::puts(result.holds ? "" : "  TOO MUCH");
  std::fflush(stdout);
}

/// A unit as it is printed: not all of a long one, and nothing that ends a line.
inline std::string shown_unit(std::string_view unit) {
  std::string text;
  for (char const c : unit.substr(0, 14)) text += c == '\n' || c == '\t' || c == '\xFF' ? '.' : c;
  return text;
}

/// Grows texts of every reader of a list of leaves, prints the worst of each reader, and returns how many grow too fast
/// (lists.cpp). Below 10,000 units it takes a quarter of the texts.
int lists_that_grow_too_fast(int most);
/// Grows texts of every field of a description, prints the worst of each field, and returns how many grow too fast
/// (descriptions.cpp). Below 10,000 units it takes a quarter of the texts.
int descriptions_that_grow_too_fast(int most);
