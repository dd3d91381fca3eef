// SPDX-License-Identifier: MIT
/// What a printer has to arrange, and what was free to choose. Preliminaries, text and end matter may have gatherings of
/// their own, and each then ends with a part of a sheet; whether such parts share a sheet, and how a part is printed, were the
/// printer's choices, which no book states. So they are given apart from the pages.
#pragma once

#include <bifolium/core/error.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The part of the book to which leaves belong. Cancels are single leaves, of which there can be an odd number; all
/// other leaves are folded, so their number is even.
enum class Matter : std::uint8_t {
  preliminaries, ///< the leaves before the text, in gatherings of their own
  text,          ///< the text
  end_matter,    ///< index, errata or advertisements, in gatherings of their own
  cancels        ///< leaves printed to replace others
};
/// The number of matters, which is the length of an array indexed by `Matter`.
inline constexpr std::size_t matters = 4;
/// Returns the identifier of a matter: "preliminaries", "text", "end_matter", "cancels". A number that is not a matter
/// gives "unknown".
constexpr std::string_view identifier(Matter matter) noexcept {
  constexpr std::string_view identifiers[matters]{"preliminaries", "text", "end_matter", "cancels"};
  auto const i = static_cast<std::size_t>(matter);
  return i < matters ? identifiers[i] : "unknown";
}

/// The way in which a part of a sheet is printed.
enum class PartWork : std::uint8_t {
  /// On whole sheets, which give several copies and are then cut. One forme prints both sides, turned, if the number of
  /// copies is even; otherwise there are two formes.
  turned,
  cut_first ///< the paper is cut before printing: two formes, and each copy is printed by itself
};

/// The pages to be arranged: text, preliminaries in gatherings of their own, end matter, and leaves to be cancelled in
/// every copy.
struct Pages {
  std::int64_t text{};          ///< pages of text
  std::int64_t preliminaries{}; ///< pages of preliminaries, in gatherings of their own
  std::int64_t end_matter{};    ///< pages of end matter
  std::int64_t cancel_leaves{}; ///< number of leaves; both pages of such a leaf are printed anew
  friend constexpr bool operator==(Pages const&, Pages const&) = default;
};

/// How many sheets may be shared by matters with gatherings of their own.
enum class Sharing : std::uint8_t {
  none,   ///< each matter by itself
  once,   ///< one working may be shared, by unequal numbers of leaves, as Bowers allows
  freely, ///< any number of workings may be shared, by equal or unequal numbers of leaves; cancels stay by themselves
};

/// The printer's choices.
struct Arranging {
  Sharing sharing{Sharing::once};   ///< what may be printed on one sheet with another matter
  PartWork parts{PartWork::turned}; ///< how parts of sheets are printed
  bool end_matter_runs_on{}; ///< the end matter continues the signatures of the text and has no gatherings of its own
  friend constexpr bool operator==(Arranging, Arranging) = default;
};

namespace detail {
/// Returns what is wrong with choices made of numbers from outside.
constexpr std::optional<Error> what_is_wrong(Arranging how) {
  if (how.sharing > Sharing::freely) return error_in_field(Problem::no_such_value, "sharing");
  if (how.parts > PartWork::cut_first) return error_in_field(Problem::no_such_value, "parts");
  return {};
}
} // namespace detail

} // namespace v0
} // namespace bifolium
