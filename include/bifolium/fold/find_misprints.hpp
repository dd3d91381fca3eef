// SPDX-License-Identifier: MIT
/// Is a diagram of a forme misprinted? Manuals of the trade were set by printers who knew their formes and still exchanged
/// two pages or turned a head. One such mistake makes nonsense of the sheet: what should fold in three folds must be cut
/// into single leaves. So each mistake that could have been made is taken back in turn, and the sheet folded again; where
/// that is much simpler than the pages as printed, the diagram is likely wrong there.
///
/// Two formes check one another, since a page and the one on its back are one leaf. A single forme of few pages checks
/// little: nearly every arrangement of a quarto folds somehow, and the answer then says how many changes would do as well.
#pragma once

#include <bifolium/fold/find_foldings.hpp>

namespace bifolium {
inline namespace v0 {

/// One mistake taken back.
struct Correction {
  /// What the mistake was.
  enum class Kind : std::uint8_t {
    pages_exchanged, ///< two pages of one forme are each in the place of the other
    number_wrong,    ///< one page has the number of another
    head_turned,     ///< one page lies with its head the wrong way
    printed_side,    ///< what is given are not the formes but the paper printed from them, their left-right mirrors
  };
  Kind kind{};                            ///< what the mistake was
  Side side{};                            ///< the forme it is in
  int sheet{};                            ///< the sheet of that forme, from 0
  int row{}, column{};                    ///< the page, from the far edge and from the left, from 0
  int other_row{}, other_column{};        ///< the page it was exchanged with
  std::optional<std::uint16_t> printed{}; ///< the number that is printed there; none where the page is illegible
  std::optional<std::uint16_t> right{};   ///< the number that should be
  FoundFolding folding;                   ///< what the corrected formes fold to, the simplest
  int price{};                            ///< of that folding and of the correction
};

/// The identifier of a kind of mistake, for columns and fields that programs read.
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
  }
  return "";
}

/// What is known of mistakes in a set of formes.
struct Misprints {
  std::optional<FoundFolding>
      as_printed{}; ///< the simplest folding of the pages as they are; none where they do not fold
  /// Corrections that make a simpler folding, by more than the price of a correction; the cheapest first
  std::vector<Correction> corrections{};
  /// How many other single changes would give foldings as simple as the pages as printed: where there are any, these
  /// formes alone do not show whether they are right
  int as_simple{};

  /// The formes are likely misprinted, and one correction is cheaper than all others.
  [[nodiscard]] constexpr bool one_stands_out() const {
    return !corrections.empty() && (corrections.size() == 1 || corrections[0].price < corrections[1].price);
  }
};

/// Looks for one mistake in a set of formes: two pages of a forme exchanged, one number wrong, one head turned, or printed
/// paper taken for the formes. `rules.most` and `rules.dearer` limit the corrections as they limit the answers of
/// `find_foldings`. Allocates. error: those of `find_foldings`, but not pages_not_backed and heads_not_backed: formes may contradict one another.
constexpr Expected<Misprints> find_misprints(std::span<SeenForme const> formes, FindRules const& rules = {});

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/misprint_finder.hpp> // the body of this
