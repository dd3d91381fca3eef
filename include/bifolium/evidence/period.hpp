// SPDX-License-Identifier: MIT
/// What paper and make-up say about the date. Few observations limit it: a book on wove paper cannot be older than the
/// first such book, and a book is not older than the date in its watermark. Others only say what was usual at a time
/// (laid paper did not stop when wove paper came), and many that are often named give no bound. So each answer says
/// whether it binds, why, and in which source; "no bound" is an answer. All bounds are for European paper, and paper
/// made in the same way elsewhere.
///
/// A green cloth cover of the nineteenth century may contain arsenic: leave testing and handling to people who are
/// trained for it.
#pragma once

#include <bifolium/core/optional_number.hpp>
#include <bifolium/evidence/observation.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/paper/measure.hpp>
#include <bifolium/paper/sheet_size.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// Observations that may tell the date. Every field may be left out; `false` means "not seen", not "seen to be absent".
struct PeriodSigns {
  Material material{};                     ///< the material of the leaf
  Region place{};                          ///< the region from which the paper is thought to come
  bool watermark{};                        ///< true for any watermark
  OptionalNumber<int> year_in_watermark{}; ///< a date in the watermark
  bool printed_signatures{};               ///< true for signatures in type; not for those added by hand or stamp
  bool machine_made{};                     ///< true for paper of one endless web
  bool turned_chain_lines{};               ///< true if chain lines are turned in a format that is otherwise certain
  bool tranchefile{};                      ///< true for an extra chain line close to the edge of the sheet
  OptionalLength chain_spacing{};          ///< mean distance of chain lines
  bool cloth_cover{};                      ///< true for an edition binding in cloth
  bool ground_wood{};                      ///< true for mechanical wood pulp
  OptionalNumber<int> lines_of_page{};     ///< lines of a page: a description that gives no bound
  OptionalLength twenty_lines{};           ///< height of 20 lines of type: a description that gives no bound
  friend constexpr bool operator==(PeriodSigns const&, PeriodSigns const&) = default;
};

/// The kind of a bound. No observation gives a strict upper limit: paper of every kind was stored for years, and moulds
/// and marks were used long after their date (from memory: French moulds had 1742 for decades).
enum class BoundKind : std::uint8_t {
  not_before, ///< impossible earlier
  usual_from, ///< rare earlier
  usual_until ///< rare later
};

/// One bound.
struct PeriodBound {
  BoundKind kind{};       ///< the direction of the bound, and whether it is strict
  int year{};             ///< the first or last year meant, included
  Trust trust{};          ///< whether the source was read or the bound is from memory
  char const* reason{""}; ///< the observation, and why it limits the date
  char const* source{""}; ///< the source

  /// Returns true for a strict bound, and false for one that says only what is usual.
  [[nodiscard]] constexpr bool binds() const noexcept { return kind == BoundKind::not_before; }
};

namespace detail::period {
struct Signs;
}
/// The bounds that observations give, in the order of `PeriodSigns`. If a `usual_from` is later than a `usual_until`,
/// the two observations are rarely found together: the paper is mixed, or an observation was misread.
class PeriodBounds {
  std::array<PeriodBound, 16> bounds_{}; // all observations together give 15
  std::size_t size_{};
  friend constexpr Expected<PeriodBounds> period_bounds(PeriodSigns const& signs);
  friend struct detail::period::Signs;

  constexpr void add(PeriodBound const& bound) { bounds_[size_++] = bound; }

public:
  /// Returns the number of bounds.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
  /// Returns true if there is no bound.
  [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
  /// Returns a pointer to the first bound.
  [[nodiscard]] constexpr PeriodBound const* begin() const& noexcept BIFOLIUM_LIFETIMEBOUND { return bounds_.data(); }
  PeriodBound const* begin() const&& = delete; // it would look at what goes
  /// Returns a pointer past the last bound.
  [[nodiscard]] constexpr PeriodBound const* end() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return bounds_.data() + size_;
  }
  PeriodBound const* end() const&& = delete; // it would look at what goes

  /// Returns the earliest year that no strict bound forbids, or no value if there is no strict bound. If `memory` is
  /// true, bounds from memory are included.
  [[nodiscard]] constexpr std::optional<int> earliest(bool memory = true) const {
    std::optional<int> year;
    for (auto const& bound : *this)
      if (bound.binds() && (memory || bound.trust == Trust::published) && (!year || bound.year > *year))
        year = bound.year;
    return year;
  }
};

namespace detail::period {
inline constexpr char const *mcmullin = "McMullin, Studies in Bibliography 56",
                            *grant = "Grant, Books and Documents (1937), 41-44",
                            *briquet = "Briquet, Les filigranes, introduction (in the Italian translation)",
                            *tanselle = "Tanselle, Studies in Bibliography 53, after Povey and Foster",
                            *hazen = "Hazen, Studies in Bibliography 5, by way of Kainen",
                            *antiquarian = "Independent Online Booksellers Association, on laid paper",
                            *memory = "from memory";
inline constexpr int first_watermark = 1282;

/// The bounds of one group of signs.
struct Signs {
  /// Adds the bounds that the kind of paper and its watermark give.
  static constexpr void add_paper(PeriodSigns const& signs, PeriodBounds& bounds) {
    using enum BoundKind;
    if (signs.material == Material::wove) {
      bounds.add({not_before, paper_dates::first_wove, Trust::published,
                  "the first book on wove paper is the Virgil of 1757; its paper may be of 1754", mcmullin});
      bounds.add({usual_from, 1790, Trust::published, "few books are on wove paper before", hazen});
    }
    // Laid paper gives no bound: it was made before wove paper and has been made ever since.
    if (signs.material == Material::laid)
      bounds.add({usual_until, 1805, Trust::published, "wove paper had taken the place of laid in books", hazen});
    if (signs.watermark || signs.year_in_watermark)
      bounds.add({not_before, first_watermark, Trust::published, "the first watermarks", grant});
    if (signs.year_in_watermark) {
      bounds.add({not_before, *signs.year_in_watermark, Trust::published, "paper is made before it is printed on",
                  "the date itself; Frankenstein (1818), on paper dated 1816, shows the lag"});
      if (signs.place == Region::britain || signs.place == Region::anywhere)
        bounds.add({usual_from, paper_dates::act_of_1794, Trust::published,
                    "if the paper is British: it bears dates from the act of 1794 on",
                    "34 Geo. III c. 20, by way of McMullin, Studies in Bibliography 56"});
    }
  }
  /// Adds the bounds that the lines of the mould give.
  static constexpr void add_mould(PeriodSigns const& signs, PeriodBounds& bounds) {
    using enum BoundKind;
    if (signs.turned_chain_lines) {
      constexpr char const* why = "double moulds, and double sheets cut in two, late 17th and 18th century; in a book "
                                  "before 1501 they rather mean halves of larger sheets, cut before printing";
      bounds.add({usual_from, paper_dates::turned_chains_from, Trust::published, why, tanselle});
      bounds.add({usual_until, paper_dates::turned_chains_to, Trust::published, why, tanselle});
    }
    if (signs.tranchefile)
      bounds.add(
          {usual_from, 1501, Trust::published, "moulds with the extra chain line, from the 16th century", briquet});
    if (signs.chain_spacing) {
      // 19 to 30 mm occurs in all centuries of the hand press: no bound. McKerrow gives 19-25 mm, 27 mm was measured on
      // English paper of 1794, and 30 mm is often named as the upper limit (from memory).
      auto const mm = signs.chain_spacing->count();
      if (mm >= 50)
        bounds.add({usual_until, 1350, Trust::published, "7 to 10 chain lines a sheet, 50-60 mm apart", briquet});
      else if (mm > 30)
        bounds.add({usual_until, 1500, Trust::published, "10 to 14 chain lines a sheet, 28-40 mm apart", briquet});
      else if (mm < 19)
        bounds.add({usual_from, 1480, Trust::published, "up to 24 chain lines a sheet, late 15th century on", briquet});
    }
  }
};
} // namespace detail::period

/// Returns the bounds that the observations give. Errors: impossible_measure, not_positive (lines of the page),
/// watermark_too_early.
constexpr Expected<PeriodBounds> period_bounds(PeriodSigns const& signs) {
  using namespace detail::period;
  using enum BoundKind;
  if (!is_measure(signs.chain_spacing)) return error_in_field(Problem::impossible_measure, "chain_spacing");
  if (!is_measure(signs.twenty_lines)) return error_in_field(Problem::impossible_measure, "twenty_lines");
  if (signs.lines_of_page && *signs.lines_of_page < 1)
    return error_in_field(Problem::not_positive, "lines_of_page", *signs.lines_of_page);
  if (signs.year_in_watermark && *signs.year_in_watermark < first_watermark)
    return error_in_field(Problem::watermark_too_early, "year_in_watermark", *signs.year_in_watermark);

  PeriodBounds bounds;
  Signs::add_paper(signs, bounds);
  if (signs.printed_signatures)
    bounds.add({not_before, 1472, Trust::published, "the first signatures printed with the text", grant});
  if (signs.machine_made) {
    bounds.add({not_before, 1799, Trust::from_memory, "Robert's patent of a paper machine", memory});
    bounds.add({usual_from, 1820, Trust::published,
                "most paper is made by machine from then on; McMullin puts the end of the change about 1830",
                antiquarian});
  }
  Signs::add_mould(signs, bounds);
  if (signs.cloth_cover)
    bounds.add({usual_from, 1830, Trust::published, "publishers' covers of cloth; the sheets may be older", grant});
  if (signs.ground_wood) {
    bounds.add({not_before, 1840, Trust::from_memory, "wood ground to pulp", memory});
    bounds.add({usual_from, 1860, Trust::from_memory, "ground wood common in paper for printing", memory});
  }
  return bounds;
}

/// Takes the observations from the evidence of a leaf. If its material is not stated, chain lines make it laid paper.
[[nodiscard]] constexpr PeriodSigns period_signs(LeafEvidence const& seen) {
  PeriodSigns signs{.material = seen.material, .place = seen.place};
  bool const chains = seen.chain_lines != ChainLines::unknown;
  if (seen.material == Material::unknown && chains) signs.material = Material::laid;
  signs.watermark = seen.watermark != MarkPlace::unknown && seen.watermark != MarkPlace::absent;
  return signs;
}

/// Returns "not before", "usual from" or "usual until", to be written before a year.
constexpr char const* to_words(BoundKind kind) noexcept {
  switch (kind) {
  case BoundKind::not_before:
    return "not before";
  case BoundKind::usual_from:
    return "usual from";
  case BoundKind::usual_until:
    return "usual until";
  }
  return "";
}

} // namespace v0
} // namespace bifolium
