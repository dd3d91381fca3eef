// SPDX-License-Identifier: MIT
/// The answer to "which format?": candidates with probabilities and reasons, how sure one may be, and what to look at
/// next. What was seen, what is inferred from it and what was assumed are kept apart.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>

#include <optional>
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
  point_hole,  ///< where the press pierced the leaf
  leaves,      ///< marks and chain lines over several leaves of one gathering
  year,        ///< of printing: it says what was usual, not how the leaf is
};
inline constexpr std::size_t evidence_kinds = 9; ///< how many kinds of evidence there are
/// Evidence counts from three to one: less does not support a statement.
inline constexpr double weight_that_counts = 1.0986122886681098;

/// What one kind of evidence says for or against a format.
struct Reason {
  EvidenceKind kind{}; ///< which
  bool seen{};         ///< it was observed
  double weight{}; ///< natural logarithm of how much likelier it is under this format than under the others together

  /// Whether it speaks for the format by three to one or more.
  [[nodiscard]] constexpr bool agrees() const noexcept { return seen && weight >= weight_that_counts; }
};

/// How sure a cataloguer may be. A rung is what its number says and no more: of books on it, so many are of that format.
enum class Certainty : std::uint8_t {
  not_determined, ///< less than all that follows
  one_of_two,     ///< the first two together .90
  probable,       ///< .70
  very_probable,  ///< .90
  established,    ///< .995, and two kinds of evidence of the paper agree
};

/// How the paper came to press.
enum class PaperOrigin : std::uint8_t {
  whole_sheet,  ///< as it left an ordinary mould
  turned_mould, ///< of the same size, its chain lines turned: from a mould for two, or a double sheet cut in two
  cut_half,     ///< cut in two across its long side before it was printed
};

/// One format and what speaks for it.
struct FormatCandidate {
  Format format{};                       ///< fraction of the sheet of paper, with the shape its schemes state
  double probability{};                  ///< 0 to 1, all that was seen and assumed taken together
  Attested scheme{SchemeRow::broadside}; ///< a scheme whose leaf this is, one that gathers as was seen if there is one
  Sheet<millimetres> sheet{1_mm,
                           1_mm}; ///< the mean sheet of the population that explains it best, or the caller's stock
  char const* stock{};            ///< the name of that stock; missing where it is none of the caller's
  LeafSize<millimetres> uncut{};  ///< a leaf of it before any binder
  LeafShape const* kind{};        ///< what its leaves are like; lasts as long as the program
  double twofold{};  ///< if it is this format, how likely its paper is from a double mould or a double sheet cut in two
  double cut_half{}; ///< and how likely it was printed in half as many leaves on sheets cut in two beforehand
  std::array<Reason, evidence_kinds> reasons{}; ///< by `EvidenceKind`

  /// What one kind of evidence says of it.
  [[nodiscard]] Reason const& reason(EvidenceKind of) const { return reasons[static_cast<std::size_t>(of)]; }
};

/// A book of which some leaves have vertical and some horizontal chain lines, such as "2° and 4°": one format for each,
/// never their average. It may be of one imposition all through, part of it on sheets cut in two.
struct MixedFormats {
  FormatCandidate vertical;   ///< the likeliest for the leaves with vertical chain lines
  FormatCandidate horizontal; ///< and for those with horizontal ones
  double probability{};       ///< that both are so, against every other pair and one format on two papers
};

/// The answer: candidates, best first.
struct Inference {
  std::vector<FormatCandidate> candidates{}; ///< by probability; formats of which nobody says how common are left out
  double none_of_these{};                    ///< with the candidates' probabilities it adds up to 1
  Certainty certainty{};                     ///< of the first candidate or, where there is one, of the mixture
  std::optional<MixedFormats> mixed{};       ///< where chain lines run both ways, and two formats are likelier than one
  std::optional<EvidenceKind> look_next{};   ///< what not yet seen is worth its trouble most; missing where no look is
  /// The first candidate has more than twelve leaves to the sheet and only its size says so, which is too little: the leaves
  /// of such books contradict the sheets they should come of.
  bool small_by_size_alone{};
  bool own_priors{}; ///< how common formats are was the caller's word
  bool own_books{};  ///< books of the caller taught the model
  bool of_sample{};  ///< how common formats were was counted, in a sample; otherwise it is assumed

  /// The likeliest format. There always is one.
  [[nodiscard]] FormatCandidate const& front() const { return candidates.front(); }
  /// How many formats were ranked.
  [[nodiscard]] std::size_t size() const { return candidates.size(); }
  /// An iterator to the first element.
  [[nodiscard]] auto begin() const { return candidates.begin(); }
  /// An iterator past the last element.
  [[nodiscard]] auto end() const { return candidates.end(); }
};

/// The ladder from the probabilities of the first two and the kinds of evidence of the paper that agree.
constexpr Certainty certainty_of(double first, double second, int paper_evidence) {
  if (first >= 0.995 && paper_evidence >= 2) return Certainty::established;
  if (first >= 0.90) return Certainty::very_probable;
  if (first >= 0.70) return Certainty::probable;
  return first + second >= 0.90 ? Certainty::one_of_two : Certainty::not_determined;
}

} // namespace v0
} // namespace bifolium
