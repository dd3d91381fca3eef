// SPDX-License-Identifier: MIT
/// The name of a column or a field that somebody perhaps meant who wrote another.
#pragma once

#include "shown.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace support {

/// How many letters must be changed, put in, taken out or exchanged with the next one to make one word of another.
inline std::size_t changes_between(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1), row(b.size() + 1),
      next(b.size() + 1); // for i - 2, i - 1 and i letters of a
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    next[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      next[j] = std::min({row[j] + 1, next[j - 1] + 1, row[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        next[j] = std::min(next[j], before[j - 2] + 1);
    }
    before.swap(row);
    row.swap(next);
  }
  return row[b.size()];
}
/// Small letters, and `_` for what else parts words.
inline std::string plain_name(std::string_view name) {
  std::string plain;
  for (char c : name)
    plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c == ' ' || c == '-' || c == '.' ? '_' : c;
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
  for (std::size_t i = 0; i < plain.size(); i += character_at(plain, i).bytes)
    letters += character_at(plain, i).code < 0x80 ? plain[i] : '?';
  std::optional<std::string> meant;
  std::size_t least = letters.size() / 4 + 1;
  for (auto const& one : known) {
    auto const with = plain_name(one);
    if (letters == with) return std::string{one};
    if (letters.size() > 3 && with.starts_with(letters + "_")) return std::string{one};
    auto const changes = changes_between(letters, with);
    if (changes < least) least = changes, meant = std::string{one};
  }
  return meant;
}

} // namespace support
