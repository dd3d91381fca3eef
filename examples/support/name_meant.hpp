// SPDX-License-Identifier: MIT
/// The column or field that was perhaps meant where another name was written.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/letters_apart.hpp>

#include "shown.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace support {

/// Small letters, and `_` for what else parts words.
inline std::string plain_name(std::string_view name) {
  std::string plain;
  for (char c : name) plain += c == ' ' || c == '-' || c == '.' ? '_' : bifolium::small_letter(c);
  return plain;
}
/// Names that catalogues give to what the programs call otherwise.
struct OtherName {
  std::string_view other, name;
};
inline constexpr OtherName other_names[]{
    {"date", "year"},         {"imprint_date", "year"}, {"collation", "formula"},         {"signatures", "formula"},
    {"extent", "pagination"}, {"pages", "pagination"},  {"place_of_publication", "place"}};

/// The name that was perhaps meant: the same but for capitals and blanks; another word for the same; its first words
/// (`overs` for `overs_percent`); or one letter in four away. A name with letters of another script is compared without them.
template <class Names> std::optional<std::string> name_meant(std::string_view name, Names const& known) {
  if (name.size() > 64) return std::nullopt;
  auto const plain = plain_name(name);
  for (auto const& row : other_names)
    if (row.other == plain)
      for (auto const& one : known)
        if (plain_name(one) == row.name) return std::string{one};
  std::string letters; // each character of more than one byte counts as one letter that differs
  for (std::size_t i = 0; i < plain.size(); i += bifolium::decode(plain, i).bytes)
    letters += bifolium::decode(plain, i).value < 0x80 ? plain[i] : '?';
  std::optional<std::string> meant;
  std::size_t least = letters.size() / 4 + 1;
  for (auto const& one : known) {
    auto const with = plain_name(one);
    if (letters == with) return std::string{one};
    if (letters.size() > 3 && with.starts_with(letters + "_")) return std::string{one};
    auto const changes = static_cast<std::size_t>(bifolium::letters_apart(letters, with));
    if (changes < least) least = changes, meant = std::string{one};
  }
  return meant;
}

} // namespace support
