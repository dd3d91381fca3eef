// SPDX-License-Identifier: MIT
/// Finds out whether a diagram of a forme is misprinted. Printers' manuals were set by people who knew their formes,
/// and they still exchanged two pages or turned a head. One such mistake makes the sheet impossible to fold: a sheet
/// that should need three folds must be cut into single leaves. So the search undoes each possible mistake in turn and
/// folds the sheet again. If the result is much simpler than the pages as printed, the diagram is probably wrong there.
///
/// Two formes check each other, since a page and the page on its back are one leaf. A single forme of few pages checks
/// little: nearly every arrangement of a quarto folds in some way. The answer then says how many other changes would be
/// as simple.
#pragma once

#include <bifolium/fold/find_foldings.hpp>

namespace bifolium {
inline namespace v0 {

/// One mistake, and the pages without it.
struct Correction {
  /// The kind of mistake.
  enum class Kind : std::uint8_t {
    pages_exchanged, ///< two pages of one forme are exchanged
    number_wrong,    ///< one page has the number of another
    head_turned,     ///< the head of one page points the wrong way
    printed_side,    ///< the given grids are of the printed paper, which is the left-right mirror of the formes
    /// two pages of one forme are exchanged, and each has the head of the place where it should be
    pages_and_heads_exchanged,
  };
  Kind kind{}; ///< the kind of mistake
  Side side{}; ///< the forme with the mistake
  int sheet{}; ///< the sheet of that forme, from 0
  /// the page: its row from the far edge and its column from the left, each from 0
  int row{}, column{};
  int other_row{}, other_column{};        ///< the page with which it was exchanged
  std::optional<std::uint16_t> printed{}; ///< the number in the diagram; no value if the page is illegible
  std::optional<std::uint16_t> right{};   ///< the correct number
  FoundFolding folding;                   ///< the simplest folding of the corrected formes
  int price{};                            ///< the price of that folding and of the correction
  friend constexpr bool operator==(Correction const&, Correction const&) = default;
};

/// Returns the identifier of a kind of mistake, for columns and fields that programs read. A number that is not such a
/// kind gives "unknown".
constexpr std::string_view identifier(Correction::Kind kind) noexcept {
  switch (kind) {
  case Correction::Kind::pages_exchanged:
    return "pages_exchanged";
  case Correction::Kind::number_wrong:
    return "number_wrong";
  case Correction::Kind::head_turned:
    return "head_turned";
  case Correction::Kind::printed_side:
    return "printed_side";
  case Correction::Kind::pages_and_heads_exchanged:
    return "pages_and_heads_exchanged";
  }
  return "unknown";
}

/// The mistakes that a set of formes may have.
struct Misprints {
  /// the simplest folding of the pages as printed; no value if `find_foldings` finds none
  std::optional<FoundFolding> as_printed{};
  /// the corrections that make the folding simpler by more than the price of a correction, the cheapest first
  std::vector<Correction> corrections{};
  /// the number of other single changes that give foldings as simple as the pages as printed; if there are any, these
  /// formes alone do not show whether they are correct
  int as_simple{};
  /// true if there were too many ways to cut and nest the pages to try all of them for the pages as printed and for every
  /// change: the likeliest were tried, and others may be as simple
  bool cut_short{};

  /// Returns true if the formes are probably misprinted and one correction is cheaper than all others.
  [[nodiscard]] constexpr bool one_stands_out() const {
    return !corrections.empty() && (corrections.size() == 1 || corrections[0].price < corrections[1].price);
  }
  friend bool operator==(Misprints const&, Misprints const&) = default;
};

/// Looks for one mistake in a set of formes: two pages of a forme exchanged, with their heads or without, one number
/// wrong, one head turned, or printed paper given as formes. `rules.most` and `rules.dearer` limit the corrections as they limit the answers of
/// `find_foldings`. The function allocates memory. Errors: those of `find_foldings` except pages_not_backed,
/// heads_not_backed and illegible_head_to_tail, since formes may contradict each other here.
constexpr Expected<Misprints> find_misprints(std::span<SeenForme const> formes, FindRules const& rules = {});

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/misprint_finder.hpp> // the body of this
