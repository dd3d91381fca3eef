// SPDX-License-Identifier: MIT
/// Operations whose cost is kept under watch, each with what it works on made beforehand. They are counted in
/// instructions (instructions.cpp) and in allocations (allocations.cpp).
#pragma once

#include <bifolium/bifolium.hpp>

#include <string_view>

namespace bench {

/// Keeps the compiler from leaving a result out.
template <class T> void keep(T const& value) { asm volatile("" : : "r,m"(value) : "memory"); }

struct Operation {
  char const* name;
  bool allocates_nothing; ///< promised by its documentation
  void (*run)(int times);
};

inline constexpr std::string_view formula_text = "8°: π² A–K⁸ L⁴ (−L4) 2A-2Z8 3A2(-3A2)";
/// A formula that needs no grammar, as most of a catalogue.
inline constexpr std::string_view plain_formula_text = "a-x⁸ y⁶ A-P⁸ Q⁶";

inline auto const& operations() {
  using namespace bifolium;
  static constexpr Operation all[]{
      {"place of a page, scheme known while compiling", true,
       [](int times) {
         for (int i = 0; i < times; ++i) keep(impose<schemes::octavo>().place(1 + i % 16));
       }},
      {"place of a page, scheme known when run", true,
       [](int times) {
         static auto const formes = impose(*fold(schemes::octavo.scheme()));
         for (int i = 0; i < times; ++i) keep(formes.place(1 + i % 16));
       }},
      {"reading the text of an octavo", true,
       [](int times) {
         for (int i = 0; i < times; ++i) keep(read_scheme(schemes::octavo.text()));
       }},
      {"folding an octavo", true,
       [](int times) {
         static auto const scheme = schemes::octavo.scheme();
         for (int i = 0; i < times; ++i) keep(fold(scheme));
       }},
      {"folding a 128°", true,
       [](int times) {
         static auto const scheme = Attested{SchemeRow::centesimo_vicesimo_octavo_in_eights}.scheme();
         for (int i = 0; i < times; ++i) keep(fold(scheme));
       }},
      {"imposing an octavo", true,
       [](int times) {
         static auto const folded = *fold(schemes::octavo.scheme());
         for (int i = 0; i < times; ++i) keep(impose(folded));
       }},
      {"counting a formula", true,
       [](int times) {
         for (int i = 0; i < times; ++i) keep(count_formula(formula_text));
       }},
      {"reading a formula", false,
       [](int times) {
         for (int i = 0; i < times; ++i) keep(read_formula(formula_text));
       }},
      {"counting a plain formula", true,
       [](int times) {
         for (int i = 0; i < times; ++i) keep(count_formula(plain_formula_text));
       }},
      {"reading a plain formula", false,
       [](int times) {
         for (int i = 0; i < times; ++i) keep(read_formula(plain_formula_text));
       }},
      {"writing a formula", false,
       [](int times) {
         static auto const formula = *read_formula(formula_text);
         for (int i = 0; i < times; ++i) keep(write_formula(formula));
       }},
      {"observing a leaf", true,
       [](int times) {
         for (int i = 0; i < times; ++i) keep(observe({.height = 201_mm, .width = 139_mm, .year = 1490}));
       }},
      {"naming the format of a leaf of 1490", false,
       [](int times) {
         static auto const leaf = *observe({.height = 201_mm, .width = 139_mm, .year = 1490});
         for (int i = 0; i < times; ++i) keep(infer_format(leaf));
       }},
      {"naming the format of a leaf of Paris, 1760", false,
       [](int times) {
         static auto const leaf = *observe(
             {.height = 165_mm, .width = 95_mm, .gathering_leaves = 12, .year = 1760, .place = Region::france});
         for (int i = 0; i < times; ++i) keep(infer_format(leaf));
       }},
  };
  return all;
}

} // namespace bench
