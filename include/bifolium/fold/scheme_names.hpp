// SPDX-License-Identifier: MIT
/// Attested schemes by the names people use: an id (`12_common`), a format (octavo, 8vo, 8°, in-8), or a format and what
/// the trade says beside it (half-sheet of octavo, folio in sixes, twelves in eight and four, oblong 4to). Where no
/// scheme has the name, one that is likely meant can be offered. Every program that takes a scheme from its user asks
/// here, so that a name means the same everywhere.
#pragma once

#include <bifolium/fold/detail/trade_names.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

/// The attested scheme of that name; none where no scheme is called so, or where the words beside the format fit none.
/// Capitals, and whether words are parted by blanks, hyphens or `_`, make no difference to an id.
constexpr std::optional<Attested> find_scheme(std::string_view name) {
  while (!name.empty() && static_cast<unsigned char>(name.front()) <= ' ') name.remove_prefix(1);
  while (!name.empty() && static_cast<unsigned char>(name.back()) <= ' ') name.remove_suffix(1);
  for (auto const scheme : Attested::all())
    if (scheme.id().size() == name.size() && detail::letters_apart(scheme.id(), name) == 0) return scheme;
  auto const spoken = detail::read_name(name);
  if (!spoken) return std::nullopt;
  for (auto const& known : detail::trade_names)
    if (Format::of(known.leaves, known.shape) == spoken->format && spoken->words == known.words)
      return Attested{known.row};
  return std::nullopt;
}

/// A scheme likely meant by a name that no scheme has: one whose id or format is spelt almost so (octvo, 12_comon), else
/// the usual scheme of the format that the name begins with. None where no name is close.
constexpr std::optional<Attested> likely_scheme(std::string_view name) {
  int least = 1 + static_cast<int>(name.size()) / 4; // one letter in four may be wrong
  std::optional<Attested> likely;
  auto const look_at = [&](std::string_view known, Attested scheme) {
    if (auto const apart = detail::letters_apart(name, known); apart < least) least = apart, likely = scheme;
  };
  for (auto const scheme : Attested::all()) look_at(scheme.id(), scheme);
  for (auto const& known : detail::trade_names)
    if (*known.words == '\0') {
      auto const format = Format::of(known.leaves, known.shape);
      look_at(format.name(), Attested{known.row});
      look_at(format.abbreviation(), Attested{known.row});
    }
  if (likely) return likely;
  if (auto const spoken = detail::read_name(name))
    for (auto const& known : detail::trade_names)
      if (*known.words == '\0' && known.leaves == spoken->format.leaves_to_sheet()) return Attested{known.row};
  return std::nullopt;
}

/// The sentence for a name that no scheme has, with the scheme likely meant where there is one. Allocates.
inline std::string no_scheme_message(std::string_view name) {
  std::string text = "no scheme is called '";
  text.append(name).append("'");
  if (auto const likely = likely_scheme(name))
    text.append("; perhaps '").append(likely->id()).append("' is meant (").append(likely->what()).append(")");
  return text;
}

} // namespace v0
} // namespace bifolium
