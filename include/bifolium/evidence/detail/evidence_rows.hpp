// SPDX-License-Identifier: MIT
/// One row for each kind of evidence: its name, when there is such evidence, its probability on a leaf of a given kind,
/// its probability by chance, and the effort of looking for it. A new kind of evidence is a row here, and a name and a
/// field in seen.hpp. Size, type page, chain lines and year are known elsewhere too: they are weighed with the sheets,
/// the readings of the chain lines and the shares of years (weighing.hpp), so most of their rows have no probability.
///
/// Each row gives wrong evidence its known frequency, such as marks out of place and odd gatherings, so no evidence
/// excludes a format. Evidence of the paper has one probability for paper of a single mould and one for paper of a
/// double mould. They are summed once for all rows, because the chain lines, the tranchefile and the mark of one leaf
/// belong to one paper.
#pragma once

#include <bifolium/evidence/assumptions.hpp>
#include <bifolium/evidence/detail/edges_likelihood.hpp>
#include <bifolium/evidence/detail/gathering_shares.hpp>
#include <bifolium/evidence/detail/leaves_likelihood.hpp>
#include <bifolium/evidence/detail/marks_likelihood.hpp>
#include <bifolium/evidence/detail/type_density.hpp>
#include <bifolium/evidence/inference.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The evidence that counts, each piece once: vellum has neither chain lines nor marks, and evidence over a gathering
/// is not counted again for the one leaf. It refers to the evidence, which must outlive it.
struct Counted {
  LeafEvidence const& seen;
  EvidenceParameters const& parameters;
  PaperAge age;
  MarkTrust trust{age, parameters};
  bool of_paper{seen.material != Material::vellum};
  bool leaves_show_marks{}, leaves_show_chains{};
  EdgesLikelihood edges{seen, parameters};
  LeavesLikelihood leaves{};       ///< if they show marks or chains
  GatheringLikelihood gathering{}; ///< if it was seen

  Counted(LeafEvidence const& evidence, EvidenceParameters const& p, PaperAge const& of)
      : seen{evidence}, parameters{p}, age{of} {
    for (auto const& one : seen.leaves) {
      if (one.leaf == 0 || !of_paper) break;
      leaves_show_marks = leaves_show_marks || one.mark != MarkPlace::unknown;
      leaves_show_chains = leaves_show_chains || run_one_way(one.chain_lines);
    }
    if (of_several_leaves()) leaves = LeavesLikelihood{seen.leaves, *seen.gathering_leaves, age, p};
    if (seen.gathering_leaves)
      gathering = {*seen.gathering_leaves, seen.alternating_with.value_or(*seen.gathering_leaves), age, p};
  }
  [[nodiscard]] bool broader_than_high() const { return seen.height && seen.width && *seen.width > *seen.height; }
  [[nodiscard]] bool of_several_leaves() const { return leaves_show_marks || leaves_show_chains; }
  [[nodiscard]] ChainLines chains() const {
    return of_paper && !leaves_show_chains ? seen.chain_lines : ChainLines::unknown;
  }
  [[nodiscard]] MarkPlace mark() const { return of_paper && !leaves_show_marks ? seen.watermark : MarkPlace::unknown; }
  [[nodiscard]] MarkPlace countermark() const {
    return of_paper && !leaves_show_marks ? seen.countermark : MarkPlace::unknown;
  }
};

/// A leaf of one kind by one of its schemes, on paper of a single or of a double mould.
struct Case {
  Counted const& counted;
  LeafShape const& shape;
  SchemeFacts const& scheme;
  bool twofold;
  double log_height{}; ///< of the uncut leaf on its most likely paper; only for an imagined look
};

/// A kind of evidence.
struct EvidenceRow {
  EvidenceKind kind;
  char const* identifier;           ///< for machines
  char const* name;                 ///< in a sentence
  bool of_paper;                    ///< counts toward an established answer
  bool by_scheme;                   ///< schemes of one kind of leaf differ in it
  bool (*by_mould)(Counted const&); ///< single and double paper differ in it; null if they never do
  bool (*seen)(Counted const&);
  double (*likelihood)(Case const&); ///< null if it is weighed elsewhere
  /// on double paper, from that on single paper; null if it does not help to know it
  double (*on_double)(Case const&, double on_single);
  double (*by_chance)(Counted const&); ///< 1 if it is counted elsewhere
  double cost;                         ///< of looking, against opening the book at its signatures; proposed
  bool (*to_be_seen)(Counted const&);  ///< whether a look is possible; null if it is never suggested
  /// number of outcomes of a look, 0 if it is never suggested. It is asked while compiling, where g++ 12 with
  /// -fsanitize=undefined compares no function with null.
  int outcomes;
  double (*of_outcome)(Case const&, int); ///< probability of the outcome, from 0, in any unit
};

inline double chains_likelihood(ChainLines own, ChainLines seen, bool twofold, double slip) {
  return ((own == seen) != twofold) ? 1 - slip : slip;
}

[[gnu::noinline]] inline double marks_likelihood(Case const& one, MarkPlace mark, MarkPlace countermark) {
  auto const& c = one.counted;
  return marks_likelihood(one.shape, one.twofold, mark, countermark, c.trust, c.parameters.paper_is_marked);
}

/// Returns the probability of the place of a point-hole. If no leaf of a scheme has one (the grid does not say how the
/// sheet was pierced), the hole is as likely as by chance.
inline double hole_likelihood(Case const& one, HolePlace seen) {
  auto const& p = one.counted.parameters;
  auto const& scheme = one.scheme;
  if (!(scheme.pierced > 0)) return p.chance.point_hole;
  return p.edge_right * scheme.holes[static_cast<std::size_t>(seen)] / scheme.pierced + (1 - p.edge_right) / 5;
}

/// The sizes of gathering that a look may find.
inline constexpr std::array<int, 10> gatherings_found{2, 4, 6, 8, 9, 10, 12, 16, 18, 24};
inline double gathering_found(Case const& one, int i) {
  auto const leaves = static_cast<std::size_t>(gatherings_found[static_cast<std::size_t>(i)]);
  return all_gathering_shares()[leaves - 1].all(one.shape, one.counted.age, one.counted.parameters);
}
/// Returns the probability of a height of the type page, in steps of an eighth of the logarithm from 50 mm up.
inline double type_page_found(Case const& one, int i) {
  auto const x = 3.9 + 0.125 * i - one.log_height - one.counted.parameters.type_of_uncut;
  constexpr double least = 1e-6; // estimated
  return type_density(x, 1 / usual_type_variance) + least;
}

constexpr bool always(Counted const&) { return true; }
constexpr double certain_by_chance(Counted const&) { return 1; }
inline bool in_paper(Counted const& c) { return c.of_paper; }
inline bool in_one_leaf(Counted const& c) { return c.of_paper && !c.of_several_leaves(); }

inline constexpr std::array<EvidenceRow, evidence_kinds> evidence_rows{
    EvidenceRow{EvidenceKind::size, "size", "size", false, false, nullptr,
                [](Counted const& c) { return c.seen.height.has_value() || c.seen.width.has_value(); }, nullptr,
                nullptr, certain_by_chance, 1, nullptr, 0, nullptr},
    {EvidenceKind::chain_lines, "chain_lines", "chain lines", true, false, always,
     [](Counted const& c) { return c.chains() != ChainLines::unknown; }, nullptr, nullptr, certain_by_chance, 1.2,
     [](Counted const& c) { return in_one_leaf(c) && c.seen.material != Material::wove; }, 2,
     [](Case const& one, int i) {
       return chains_likelihood(one.shape.chain_lines, static_cast<ChainLines>(i + 1), one.twofold,
                                one.counted.parameters.chain_slip);
     }},
    {EvidenceKind::watermark, "watermark", "place of the watermark", true, false, always,
     [](Counted const& c) { return c.mark() != MarkPlace::unknown || c.countermark() != MarkPlace::unknown; },
     [](Case const& one) { return marks_likelihood(one, one.counted.mark(), one.counted.countermark()); },
     [](Case const& one, double on_single) {
       auto const& c = one.counted;
       return marks_on_double(one.shape, c.mark(), c.trust, c.parameters.paper_is_marked, on_single);
     },
     [](Counted const& c) {
       double likelihood = 1;
       for (auto const place : {c.mark(), c.countermark()})
         if (place != MarkPlace::unknown) likelihood *= c.parameters.chance.mark(place != MarkPlace::absent);
       return likelihood;
     },
     4, in_one_leaf, 7,
     [](Case const& one, int i) { return marks_likelihood(one, static_cast<MarkPlace>(i + 1), MarkPlace::unknown); }},
    {EvidenceKind::gathering, "gathering", "gathering", false, false, nullptr,
     [](Counted const& c) { return c.seen.gathering_leaves.has_value(); },
     [](Case const& one) { return one.counted.gathering.all(one.shape); }, nullptr,
     [](Counted const& c) { return c.parameters.chance.gathering; }, 1, always, 10, gathering_found},
    {EvidenceKind::type_page, "type_page", "type page", false, false, nullptr,
     [](Counted const& c) { return c.seen.type_height.has_value(); }, nullptr, nullptr,
     [](Counted const& c) { return c.parameters.chance.type_page; }, 2, always, 16, type_page_found},
    {EvidenceKind::edges, "edges", "edges", true, true, [](Counted const& c) { return c.edges.tell_mould(); },
     [](Counted const& c) { return c.edges.any(); },
     [](Case const& one) { return one.counted.edges.of(one.scheme, one.twofold); }, nullptr,
     [](Counted const& c) { return c.edges.by_chance(c.parameters.chance); }, 3, nullptr, 0, nullptr},
    {EvidenceKind::point_hole, "point_hole", "point-holes", true, true, nullptr,
     [](Counted const& c) { return c.seen.point_hole != HolePlace::unknown; },
     [](Case const& one) { return hole_likelihood(one, one.counted.seen.point_hole); }, nullptr,
     [](Counted const& c) { return c.parameters.chance.point_hole; }, 5, in_paper, 6,
     [](Case const& one, int i) { // the last: no hole is visible
       auto const visible = one.counted.parameters.holes_visible;
       return i == 5 ? 1 - visible : visible * hole_likelihood(one, static_cast<HolePlace>(i + 1));
     }},
    {EvidenceKind::leaves, "leaves", "marks and chain lines over the gathering", true, true, nullptr,
     [](Counted const& c) { return c.of_several_leaves(); },
     [](Case const& one) { return one.counted.leaves.of(static_cast<std::size_t>(one.scheme.scheme.row())); }, nullptr,
     [](Counted const& c) { return c.leaves.by_chance(); }, 6, nullptr, 0, nullptr},
    {EvidenceKind::year, "year", "year of printing", false, false, nullptr,
     [](Counted const& c) { return c.seen.year && c.seen.year->size() <= 25; }, nullptr, nullptr, certain_by_chance, 2,
     always, 6, nullptr}};

/// Returns the row of a kind of evidence.
constexpr EvidenceRow const& row_of(EvidenceKind kind) { return evidence_rows[static_cast<std::size_t>(kind)]; }

} // namespace detail
} // namespace v0
} // namespace bifolium
