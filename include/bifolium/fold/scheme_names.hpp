// SPDX-License-Identifier: MIT
/// Finds attested schemes by the names that people use: an id (`12_common`), a format (octavo, 8vo, 8°, in-8), or a
/// format with words of the trade (half-sheet of octavo, folio in sixes, twelves in eight and four, oblong 4to). If no
/// scheme has the name, a likely one can be suggested. All programs that take the name of a scheme use these functions,
/// so that a name has the same meaning everywhere.
#pragma once

#include <bifolium/core/letters_apart.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/fold/detail/trade_names.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// Returns the attested scheme with that name, or no value if no scheme has the name or the words beside the format fit
/// none. In an id, capitals do not matter, and blanks, hyphens and `_` are equivalent.
/// Example: `find_scheme("octavo") == schemes::octavo`.
constexpr std::optional<Attested> find_scheme(std::string_view name) {
  name = trimmed(name, " \t\r\n");
  for (auto const scheme : Attested::all())
    if (scheme.id().size() == name.size() && letters_apart(scheme.id(), name) == 0) return scheme;
  auto const spoken = detail::name_in(name);
  if (!spoken) return std::nullopt;
  for (auto const& known : detail::trade_names)
    if (Format::of(known.leaves, known.shape) == spoken->format && spoken->words == known.words)
      return Attested{known.row};
  return std::nullopt;
}

namespace detail {
/// Returns the scheme whose id or format has nearly the same spelling, or no value if none is close.
constexpr std::optional<Attested> nearly_spelt(std::string_view name) {
  int least = 1 + static_cast<int>(name.size()) / 4; // one letter in four may be wrong
  std::optional<Attested> likely;
  auto const look_at = [&](std::string_view known, Attested scheme) {
    if (auto const apart = letters_apart(name, known); apart < least) least = apart, likely = scheme;
  };
  for (auto const scheme : Attested::all()) look_at(scheme.id(), scheme);
  for (auto const& known : trade_names)
    if (*known.words == '\0') {
      auto const format = Format::of(known.leaves, known.shape);
      look_at(format.name(), Attested{known.row});
      look_at(format.abbreviation(), Attested{known.row});
    }
  return likely;
}
} // namespace detail

/// Returns a scheme that is probably meant by a name that no scheme has: one whose id or format has nearly the same
/// spelling (octvo, 12_comon), or else the usual scheme of the format at the beginning of the name. Returns no value if
/// no name is close.
constexpr std::optional<Attested> likely_scheme(std::string_view name) {
  if (auto const likely = detail::nearly_spelt(name)) return likely;
  if (auto const spoken = detail::name_in(name))
    for (auto const& known : detail::trade_names)
      if (*known.words == '\0' && known.leaves == spoken->format.leaves_to_sheet()) return Attested{known.row};
  return std::nullopt;
}

/// Returns the ids of the attested schemes that make so many leaves of a sheet, in the order of the table. The function
/// allocates memory.
/// Example: `ids_of_schemes(16).front() == "16_one_gathering"`.
inline std::vector<std::string_view> ids_of_schemes(int leaves_to_sheet) {
  std::vector<std::string_view> ids;
  for (auto const scheme : Attested::all())
    if (scheme.scheme().format().leaves_to_sheet() == leaves_to_sheet) ids.push_back(scheme.id());
  return ids;
}

/// Makes the sentence for a name that no scheme has, with a suggestion: a scheme with nearly the same spelling, or the
/// schemes of the format if the name has one. The function allocates memory.
inline std::string no_scheme_message(std::string_view name) {
  std::string text = "no scheme is called '";
  text.append(name).append("'");
  if (auto const likely = detail::nearly_spelt(name))
    return text.append("; perhaps '").append(likely->id()).append("' is meant (").append(likely->what()).append(")");
  auto const spoken = detail::name_in(name);
  auto const leaves = spoken ? spoken->format.leaves_to_sheet() : std::nullopt;
  if (!leaves) return text;
  char const* before = "; the schemes of this format are ";
  for (auto const id : ids_of_schemes(*leaves)) text.append(before).append(id), before = ", ";
  return text;
}

} // namespace v0
} // namespace bifolium
