// SPDX-License-Identifier: MIT
/// The answer of an inference: candidates with probabilities and reasons, how certain the answer is, and what to look
/// at next. Evidence, inferences and assumptions are separate.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The least weight that supports a statement: the natural logarithm of three to one.
inline constexpr double weight_that_counts = 1.0986122886681098;

/// The weight of one kind of evidence for or against a format.
struct Reason {
  EvidenceKind kind{}; ///< the kind of evidence
  bool seen{};         ///< true if there is such evidence
  /// natural logarithm of how much more likely the evidence is under this format than under the others together
  double weight{};

  /// Returns true if the evidence supports the format by three to one or more.
  [[nodiscard]] constexpr bool agrees() const noexcept { return seen && weight >= weight_that_counts; }
  friend constexpr bool operator==(Reason const&, Reason const&) = default;
};

/// The certainty of an answer. Each step is defined by a probability: that proportion of such books has this format.
enum class Certainty : std::uint8_t {
  not_determined, ///< less than all following steps
  one_of_two,     ///< the first two together have at least .90
  probable,       ///< at least .70
  very_probable,  ///< at least .90
  established, ///< at least .995, two kinds of evidence from the paper agree, and none is against it (`signs_against`)
};

/// The way in which the paper came to the press.
enum class PaperOrigin : std::uint8_t {
  whole_sheet,  ///< as it left an ordinary mould
  turned_mould, ///< of the same size with turned chain lines: from a double mould, or a double sheet cut in two
  cut_half,     ///< cut in two across the long side before printing
  machine_web,  ///< cut from the web of a paper machine, so that chain lines follow the web and not the sheet
};

/// By how much sheets of one name differ from its size, as a share of it: chancery of the fifteenth century is 300-315 x
/// 420-460 mm in Cambridge University Library, 4.5 % either side of its middle.
inline constexpr double sheets_of_a_name_differ = 0.045;

/// One format and its evidence.
struct FormatCandidate {
  Format format{};      ///< fraction of the sheet of paper, with the shape that its schemes state
  double probability{}; ///< probability given all evidence and assumptions, 0 to 1
  /// a scheme that makes this leaf, if possible with gatherings of the given size
  Attested scheme{SchemeRow::broadside};
  /// the mean sheet of the population that explains the leaf best, of those from which it can have been cut, or the
  /// caller's stock; the sheet that the leaf itself implies for paper of no such population, and for a leaf with both
  /// sides measured in a book of the time of publishers' covers
  Sheet<millimetres> sheet{1_mm, 1_mm};
  std::optional<std::string_view> stock{}; ///< the name of the caller's stock, if the paper is of one
  LeafSize<millimetres> uncut{};           ///< size of the leaf before any binding
  LeafSize<millimetres> leaf{};            ///< the least that the leaf measures, without boards; 0 mm if not measured
  LeafShape const* kind{};                 ///< its kind of leaf, valid as long as the program
  /// probability, given this format, that the paper is from a double mould or a double sheet cut in two
  double twofold{};
  /// probability, given this format, that the chain lines lie across since they follow the web of a paper machine
  double by_web{};
  double cut_half{}; ///< probability, given this format, of half as many leaves on sheets cut in two before printing
  /// probability, given this format, of printing by half-sheets: each gathering is half a sheet (octavo in fours,
  /// twelves in sixes)
  double half_sheets{};
  std::array<Reason, evidence_kinds> reasons{}; ///< the weights, indexed by `EvidenceKind`

  /// Returns the likeliest origin of the paper, given this format.
  [[nodiscard]] constexpr PaperOrigin origin() const noexcept {
    if (twofold + by_web >= 0.5) return by_web > twofold ? PaperOrigin::machine_web : PaperOrigin::turned_mould;
    return cut_half >= 0.5 ? PaperOrigin::cut_half : PaperOrigin::whole_sheet;
  }
  /// Whether printing by half-sheets is likelier than not, given this format.
  [[nodiscard]] constexpr bool by_half_sheets() const noexcept { return half_sheets >= 0.5; }
  /// Returns the probability, given this format, of two such gatherings to the sheet, where manuals have that beside
  /// half-sheets (sixteens in eights). One leaf does not tell the two apart, so they are equally probable.
  [[nodiscard]] constexpr double two_to_sheet() const noexcept {
    return kind != nullptr && kind->two_to_sheet ? half_sheets : 0;
  }
  /// Whether gatherings of half a sheet are likelier than not, but not whether they were printed by half-sheets or two to
  /// the sheet.
  [[nodiscard]] constexpr bool half_sheets_or_two() const noexcept {
    return !by_half_sheets() && two_to_sheet() > 0 && 2 * half_sheets >= 0.5;
  }
  /// Whether a leaf with the measured sides can have been cut from one that is so large uncut.
  [[nodiscard]] constexpr bool fits(LeafSize<millimetres> const& whole) const {
    constexpr double larger = 1 + sheets_of_a_name_differ;
    return whole.height * larger >= leaf.height && whole.width * larger >= leaf.width;
  }
  /// Whether it can have been cut from such a sheet. Precondition: the candidate has a kind of leaf.
  [[nodiscard]] constexpr bool fits(Sheet<millimetres> const& paper) const { return fits(leaf_size(kind->lay, paper)); }
  /// Returns the weight of one kind of evidence. Precondition: `of` is an enumerator.
  [[nodiscard]] constexpr Reason reason(EvidenceKind of) const {
    auto const i = static_cast<std::size_t>(of);
    if (i >= evidence_kinds) broken("there is no kind of evidence with this number");
    return reasons[i];
  }
  friend constexpr bool operator==(FormatCandidate const&, FormatCandidate const&) = default;
};

/// A book in which some leaves have vertical and some horizontal chain lines, such as "2° and 4°": one format for each
/// direction, never their average. It may also have one imposition throughout, with a part on sheets cut in two.
struct MixedFormats {
  FormatCandidate vertical;   ///< the most likely format of the leaves with vertical chain lines
  FormatCandidate horizontal; ///< the most likely format of the leaves with horizontal chain lines
  double probability{};       ///< probability of this pair, against all other pairs and one format on two papers
  friend bool operator==(MixedFormats const&, MixedFormats const&) = default;
};

/// The answer: candidates, the most likely first.
struct Inference {
  std::vector<FormatCandidate> candidates{}; ///< by probability; formats with a prior of zero are left out
  double none_of_these{};                    ///< with the probabilities of the candidates it adds up to 1
  Certainty certainty{};                     ///< certainty of the first candidate or, if there is one, of the mixture
  /// present if chain lines run both ways and two formats are more likely than one
  std::optional<MixedFormats> mixed{};
  std::optional<EvidenceKind> look_next{}; ///< the evidence most worth looking for; no value if none would help
  /// true if the first candidate has more than twelve leaves to the sheet and only its size supports it. That is too
  /// little, because the leaves of such books often contradict the sheets from which they should come.
  bool small_by_size_alone{};
  bool own_priors{}; ///< true if the caller gave the shares of formats
  bool own_books{};  ///< true if the model learned from books of the caller
  bool of_sample{};  ///< true if the shares of formats were counted in a sample; otherwise they are assumed

  /// Returns the most likely format. An answer of `infer_format` always has one. Precondition: there is a candidate.
  [[nodiscard]] FormatCandidate const& front() const& BIFOLIUM_LIFETIMEBOUND {
    return must_have_one(), candidates.front();
  }
  /// Returns the most likely format of a temporary inference by value.
  [[nodiscard]] FormatCandidate front() const&& { return must_have_one(), candidates.front(); }
  /// Returns the number of ranked formats.
  [[nodiscard]] std::size_t size() const { return candidates.size(); }
  /// Returns an iterator to the first candidate.
  [[nodiscard]] auto begin() const& BIFOLIUM_LIFETIMEBOUND { return candidates.begin(); }
  void begin() const&& = delete; // it would look at what goes
  /// Returns an iterator past the last candidate.
  [[nodiscard]] auto end() const& BIFOLIUM_LIFETIMEBOUND { return candidates.end(); }
  void end() const&& = delete; // it would look at what goes
  friend bool operator==(Inference const&, Inference const&) = default;

private:
  void must_have_one() const {
    if (candidates.empty()) broken("the inference has no candidate: infer_format did not make it");
  }
};

/// Returns the certainty for the probabilities of the first two candidates and the number of kinds of paper evidence
/// that agree.
constexpr Certainty certainty_of(double first, double second, int paper_evidence) {
  if (first >= 0.995 && paper_evidence >= 2) return Certainty::established;
  if (first >= 0.90) return Certainty::very_probable;
  if (first >= 0.70) return Certainty::probable;
  return first + second >= 0.90 ? Certainty::one_of_two : Certainty::not_determined;
}

} // namespace v0
} // namespace bifolium
