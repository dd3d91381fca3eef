// SPDX-License-Identifier: MIT
/// The signs of a leaf that no leaf of a format shows, by the geometry of its schemes: a bolt at the head of a folio, whose
/// one fold is at the spine. An inference compares formats with one another, so that such a sign can even speak for a
/// format, where it is still less likely in the others. Whoever states a format wants to know that it is there.
///
/// Known exceptions are not told: the place of marks in paper of the British act of 1794, countermarks in the corner
/// of the sheet (Italy, from about 1480), folios pierced at head and tail (Roberts & Etherington s.v. pinholes).
#pragma once

#include <bifolium/evidence/detail/leaves_likelihood.hpp>
#include <bifolium/evidence/observation.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A sign that no leaf of a format shows.
struct SignAgainst {
  EvidenceKind kind{}; ///< the kind of evidence
  std::string_view
      field{}; ///< the field of `LeafEvidence`: `countermark`; `edges` for all three; valid as long as the program
  std::vector<int> leaves{}; ///< of several leaves those without any one of which the others agree
  friend bool operator==(SignAgainst const&, SignAgainst const&) = default;
};

namespace detail {

class SignsAgainst {
  static constexpr double rare = 0.1; // a share of the paper of an age; proposed
  LeafEvidence const& seen_;
  Format format_;
  PaperAge age_;
  EvidenceParameters const& usual_;
  bool places_known_;
  std::vector<SignAgainst> found_{};

  /// The usual parameters without slips. A second mark in the sheet is possible where one was seen, and where it is not
  /// rare.
  [[nodiscard]] EvidenceParameters without_slips() const {
    auto p = usual_;
    p.leaf_slip = 0, p.pattern_right = 1;
    if (places_known_) p.mark_in_place = p.mark_in_place_1794 = 1;
    bool const countermark = seen_.countermark != MarkPlace::unknown && seen_.countermark != MarkPlace::absent;
    auto const second = countermark || age_.second_mark > rare ? 0.5 : 0;
    p.second_mark_early = p.second_mark_late = second;
    return p;
  }
  /// Calls `is` with the facts of the schemes of the format. Returns true if one of them is, or if there are none.
  template <class Is> [[nodiscard]] bool any_scheme(Is is) const {
    bool any = false;
    for (auto const& scheme : scheme_facts()) {
      if (scheme.format != format_) continue;
      any = true;
      if (is(scheme)) return true;
    }
    return !any;
  }
  [[nodiscard]] static bool shows(EdgeFacts const& edge, EdgeSeen seen) {
    return seen == EdgeSeen::unknown || (seen == EdgeSeen::bolt ? edge.bolt : edge.deckle > 0);
  }
  void edges() {
    if (seen_.head == EdgeSeen::unknown && seen_.tail == EdgeSeen::unknown && seen_.fore_edge == EdgeSeen::unknown)
      return;
    bool const possible = any_scheme([&](SchemeFacts const& scheme) {
      for (auto const& look : scheme.looks)
        if (shows(look.edges[0], seen_.head) && shows(look.edges[1], seen_.tail) &&
            shows(look.edges[2], seen_.fore_edge))
          return true;
      return false;
    });
    if (!possible) found_.push_back({EvidenceKind::edges, "edges", {}});
  }
  /// The marks of one leaf, or two marks that no leaf has together.
  void marks(std::string_view field, MarkPlace place, bool may_be_in_corner) {
    if (!places_known_ || place == MarkPlace::unknown || place == MarkPlace::absent) return;
    if (may_be_in_corner && place == MarkPlace::corner) return;
    bool const possible = any_scheme([&](SchemeFacts const& scheme) {
      for (auto const& leaf : scheme.leaves)
        for (std::size_t lie = 0; lie < 2; ++lie)
          if (leaf.watermark[lie] == place || leaf.countermark[lie] == place) return true;
      return false;
    });
    if (!possible) found_.push_back({EvidenceKind::watermark, field, {}});
  }
  void point_hole() {
    auto const hole = seen_.point_hole;
    if (hole == HolePlace::unknown) return;
    bool const folio = format_.leaves_to_sheet() == 2;
    if (folio && (hole == HolePlace::head || hole == HolePlace::tail)) return;
    bool const possible = any_scheme([&](SchemeFacts const& scheme) {
      return !(scheme.pierced > 0) || scheme.holes[static_cast<std::size_t>(hole)] > 0;
    });
    if (!possible) found_.push_back({EvidenceKind::point_hole, "point_hole", {}});
  }
  /// Whether a gathering of the format shows the leaves. If some scheme has gatherings of as many leaves, only such are
  /// asked: two half-sheets one inside the other would show nearly anything.
  [[nodiscard]] bool folded_so(EvidenceOfLeaves const& leaves, EvidenceParameters const& strict) const {
    auto const size = *seen_.gathering_leaves;
    LeavesLikelihood const likelihood{leaves, size, age_, strict};
    bool const gathered = any_scheme([&](SchemeFacts const& scheme) { return scheme.gathers(size); });
    return any_scheme([&](SchemeFacts const& scheme) {
      return scheme.gathers(size) == gathered && likelihood.of(static_cast<std::size_t>(scheme.scheme.row())) > 0;
    });
  }
  void leaves() {
    if (!seen_.gathering_leaves || seen_.leaves[0].leaf == 0) return;
    auto const strict = without_slips();
    if (folded_so(seen_.leaves, strict)) return;
    SignAgainst sign{EvidenceKind::leaves, "leaves", {}};
    for (std::size_t i = 0; i < seen_.leaves.size() && seen_.leaves[i].leaf != 0; ++i) {
      auto rest = seen_.leaves;
      for (auto k = i; k + 1 < rest.size(); ++k) rest[k] = rest[k + 1];
      rest.back() = {};
      if (rest[0].leaf != 0 && folded_so(rest, strict)) sign.leaves.push_back(seen_.leaves[i].leaf);
    }
    found_.push_back(static_cast<SignAgainst&&>(sign));
  }

public:
  /// `age`: of the years and the place that were seen.
  SignsAgainst(LeafEvidence const& seen, Format format, PaperAge const& age, EvidenceParameters const& p)
      : seen_{seen}, format_{format}, age_{age}, usual_{p}, places_known_{!(age_.after_1794 > rare)} {}
  [[nodiscard]] std::vector<SignAgainst> find() && {
    if (seen_.material == Material::vellum) return {};
    edges();
    point_hole();
    marks("watermark", seen_.watermark, false);
    marks("countermark", seen_.countermark, true);
    leaves();
    return static_cast<std::vector<SignAgainst>&&>(found_);
  }
};

} // namespace detail

/// Returns the signs that no leaf of an attested scheme of the format shows; none for a format without schemes, and of
/// vellum. Size, chain lines and gatherings are not asked: binders, moulds and quiring make exceptions of them. The function
/// allocates memory.
/// Example: a bolt at the head is against folio: `signs_against(*observe({.head = EdgeSeen::bolt}), Format::of(2)).size() == 1`.
[[nodiscard]] inline std::vector<SignAgainst> signs_against(Observation const& observation, Format format) {
  auto const& seen = observation.seen();
  return detail::SignsAgainst{seen, format, PaperAge::of(seen.year, seen.place), usual_parameters}.find();
}

/// Says a sign in a sentence without its full stop: "no leaf of 2° has its edges so". Of leaves of a gathering, those are named
/// without one of which the others agree. The function allocates memory.
/// Example: `to_words({EvidenceKind::edges, "edges"}, Format::of(2)) == "no leaf of 2° has its edges so"`.
[[nodiscard]] inline std::string to_words(SignAgainst const& sign, Format format) {
  std::string const of{format.symbol().view()};
  switch (sign.kind) {
  case EvidenceKind::edges:
    return "no leaf of " + of + " has its edges so";
  case EvidenceKind::point_hole:
    return "no leaf of " + of + " has a point-hole there";
  case EvidenceKind::leaves: {
    auto words = "no gathering of " + of + " shows the marks and chain lines of these leaves";
    for (auto const& leaf : sign.leaves)
      words += (&leaf == sign.leaves.data() ? "; they would agree without leaf " : " or without leaf ") +
               std::to_string(leaf);
    return words;
  }
  default:
    return "no leaf of " + of + " has its " + std::string{sign.field} + " there";
  }
}

} // namespace v0
} // namespace bifolium
