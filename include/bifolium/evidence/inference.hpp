// SPDX-License-Identifier: MIT
/// The answer to "which format?": candidates with probabilities and reasons, how sure one may be, and what to look at
/// next. What was seen, what is inferred from it and what was assumed are kept apart.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// A kind of evidence.
enum class EvidenceKind : std::uint8_t {
  size,        ///< height and width of the leaf
  chain_lines, ///< their direction in one leaf
  watermark,   ///< the place of the marks in one leaf
  gathering,   ///< how many leaves are gathered
  type_page,   ///< its height
  edges,       ///< bolts, deckle, tranchefile
  point_hole,
  leaves, ///< marks and chain lines over several leaves of one gathering
};
inline constexpr std::size_t sign_count = 8; ///< how many kinds of evidence there are

/// What one sign says for or against a format.
struct Reason {
  EvidenceKind sign{}; ///< the kind of evidence it speaks of
  bool seen{};         ///< it was observed
  bool agrees{};       ///< the format is made likelier by it
  double weight{}; ///< natural logarithm of how much likelier it is under this format than under the others together
};

/// How sure a cataloguer may be: established from .99 with two signs of the paper, very probable from .90, probable from .70.
enum class Certainty : std::uint8_t { not_determined, probable, very_probable, established };

/// One format and what speaks for it.
struct FormatCandidate {
  Format format{};                       ///< fraction of the sheet of paper, with the shape its schemes state
  double probability{};                  ///< 0 to 1, all that was seen and assumed taken together
  Attested scheme{SchemeRow::broadside}; ///< a scheme whose leaf this is, one that gathers as was seen if there is one
  char const* sheet_name{""};            ///< the sheet that explains it best
  Sheet<millimetres> sheet{1_mm, 1_mm};  ///< the size of that sheet
  LeafSize<millimetres> uncut{};         ///< a leaf of it before any binder
  LeafShape const* kind{};               ///< what its leaves are like; lasts as long as the program
  std::array<Reason, sign_count> reasons{}; ///< by `EvidenceKind`

  /// What one kind of evidence says of it.
  [[nodiscard]] Reason const& reason(EvidenceKind sign) const { return reasons[static_cast<std::size_t>(sign)]; }
};

/// A book of which some leaves have vertical and some horizontal chain lines, such as "2° and 4°": one format for each,
/// never their average. It may be of one imposition all through, part of it on sheets cut in two.
struct MixedFormats {
  FormatCandidate vertical;   ///< the likeliest for the leaves with vertical chain lines
  FormatCandidate horizontal; ///< and for those with horizontal ones
  double probability{};       ///< that both are so
};

/// The answer: candidates, best first.
struct Inference {
  std::vector<FormatCandidate>
      candidates{};                        ///< by probability, the likeliest first; those without a prior are left out
  double none_of_these{};                  ///< with the candidates' probabilities it adds up to 1
  Certainty certainty{};                   ///< of the first candidate or, where there is one, of the mixture
  std::optional<MixedFormats> mixed{};     ///< where leaves differ in their chain lines and that tells two formats
  std::optional<EvidenceKind> look_next{}; ///< what not yet seen would tell most; nothing when all was looked at
  char const* priors{""};                  ///< what the priors rest on

  [[nodiscard]] auto begin() const { return candidates.begin(); }
  [[nodiscard]] auto end() const { return candidates.end(); }
};

/// The ladder from a probability and the number of signs of the paper that agree.
constexpr Certainty certainty_of(double probability, int paper_signs) {
  if (probability >= 0.99 && paper_signs >= 2) return Certainty::established;
  return probability >= 0.90   ? Certainty::very_probable
         : probability >= 0.70 ? Certainty::probable
                               : Certainty::not_determined;
}

} // namespace v0
} // namespace bifolium
