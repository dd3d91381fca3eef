// SPDX-License-Identifier: MIT
/// The rules by which a record was made, from the codes that it names (MARC 21, field 040 $e), and what they say of
/// counting pages. Rules for rare books count every page; rules for all books leave pages without numbers out, as a
/// rule, so that fewer pages than the formula has are no contradiction there.
#pragma once

#include <bifolium/book/description.hpp>

namespace bifolium {
inline namespace v0 {

/// Rules of cataloguing by their code.
struct CataloguingRules {
  char const* code{""};        ///< as field 040 $e has it: `dcrmb`
  PagesWithoutNumbers pages{}; ///< whether they are counted
  char const* source{""};      ///< of the code and of what the rules say
};

/// The rules that are known. That blank leaves at the ends are counted where a copy has them, and not where they are
/// only inferred, leaves `BlankLeaves::unknown` to all of them.
inline constexpr CataloguingRules cataloguing_rules[]{
    {"dcrmr", PagesWithoutNumbers::counted, "DCRMR A1, A6 (code); 6.21.421.1, .4225 (every page as issued)"},
    {"dcrmb", PagesWithoutNumbers::counted, "DCRMR A1 (code); DCRM(B) 5B1.1, 5B3, in the concordance of DCRMR"},
    {"dcrb", PagesWithoutNumbers::counted, "DCRMR A1 (code); the rules from memory"},
    {"bdrb", PagesWithoutNumbers::counted, "DCRMR A1 (code); the rules from memory"},
    {"dcrms", PagesWithoutNumbers::counted, "from memory"},
    {"dcrmc", PagesWithoutNumbers::counted, "from memory"},
    {"amremm", PagesWithoutNumbers::counted, "MARC 21, Library of Congress (code); the rules from memory"},
    {"isbd", PagesWithoutNumbers::counted, "from memory"},
    {"rda", PagesWithoutNumbers::left_out, "DCRMR A6 (code); the rules from memory"},
    {"aacr", PagesWithoutNumbers::left_out, "MARC 21, Library of Congress (code); the rules from memory"},
};

/// What a catalogue does, from the codes of a record, with blanks between them: `rda dcrmr`. Where one of them is of
/// rules for rare books, that counts; codes that are not known change nothing. `usual`: what is known of the catalogue
/// otherwise.
[[nodiscard]] constexpr Conventions conventions_of(std::string_view codes, Conventions usual = {}) {
  bool counted = false, left_out = false;
  for (std::size_t from = 0; from < codes.size();) {
    auto const end = codes.find_first_of(" ,;", from);
    auto const code = codes.substr(from, end == codes.npos ? codes.npos : end - from);
    for (auto const& rules : cataloguing_rules)
      if (code == rules.code) (rules.pages == PagesWithoutNumbers::counted ? counted : left_out) = true;
    from = end == codes.npos ? codes.size() : end + 1;
  }
  if (counted) usual.pages = PagesWithoutNumbers::counted;
  if (left_out && !counted) usual.pages = PagesWithoutNumbers::left_out;
  return usual;
}

} // namespace v0
} // namespace bifolium
