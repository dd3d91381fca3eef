// SPDX-License-Identifier: MIT
/// A plan is the way in which the pages of a copy are put to press. It consists of workings; a working is the type that
/// is locked up and printed together. Paper, formes and impressions are counted from the workings only.
///
/// "Half-sheet" has four meanings (Tanselle, Studies in Bibliography 53, note 65), and a working distinguishes them:
/// one forme on both sides of the sheet, which then has two copies; two half-sheets of different gatherings printed
/// together; a half-sheet printed together with odd leaves, such as one or two cancels; and paper cut before it was
/// printed, which needs two formes, and an impression of each for every copy.
///
/// The arithmetic of the press holds for every working: the pages that its formes print, an impression each, are the
/// pages of the copies. A forme of a whole sheet has as many pages as the sheet has leaves. A forme that is turned holds
/// both sides of a leaf, so a half-sheet fills it once. A quarter of a sheet fills it only if each of its pages is set
/// twice, an eighth if each is set four times; then the sheet has four or eight copies. A third of a sheet can not be
/// turned: no forme of twelve pages is made of eights. It takes two formes, and in each its pages are set three times.
/// So `settings` says how often a page stands in type. That a printer set pages more than once, and did not work them
/// together with others, is an assumption wherever it is not one.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>

#include <array>
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

/// The four meanings of half-sheet.
enum class HalfSheet : std::uint8_t {
  turned,              ///< half-sheet work: one forme, the paper turned, two copies to the sheet
  two_worked_together, ///< two different half-sheets of one book on one sheet
  with_odd_leaves,     ///< a part of a sheet whose other part has other leaves of the book
  cut_first            ///< half a sheet of paper, cut before it was printed
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

/// Returns true if parts of so many leaves fill a sheet. Leaves that are folded are even in number; `single` ones need
/// not be.
/// Example: `is_part_of_sheet(4, 12) && !is_part_of_sheet(8, 12) && !is_part_of_sheet(3, 12)`.
constexpr bool is_part_of_sheet(int part, int leaves_to_sheet, bool single = false) {
  return part > 0 && leaves_to_sheet % part == 0 && (single || part % 2 == 0);
}

/// Leaves that are printed together, and the number of times that this happens in a copy.
struct Working {
  /// The paper that goes through the press, and how often it is printed.
  enum class Kind : std::uint8_t {
    sheet,     ///< two formes, one copy to the sheet
    turned,    ///< a part of a sheet, one forme on both sides, an even number of copies to the sheet
    cut_first, ///< a part of a sheet cut before printing, two formes, one copy to the piece
    one_side,  ///< a sheet or piece with a blank side, such as a broadside: one forme, one impression
    repeated   ///< a part of a sheet, two formes in which each page is set as often as the sheet has copies
  };
  /// number of times in one copy: eight equal sheets are one working, eight times
  std::int64_t times{};
  std::uint8_t leaves{};                      ///< leaves of one copy
  Kind kind{};                                ///< the paper and the way of printing
  std::array<std::uint8_t, matters> shares{}; ///< leaves of each matter if several share the working, else all 0

  /// Returns the number of formes to impose each time, 1 or 2.
  [[nodiscard]] constexpr int formes() const noexcept { return kind == Kind::turned || kind == Kind::one_side ? 1 : 2; }
  /// Returns the number of impressions of each sheet or piece that goes to press, 1 or 2.
  [[nodiscard]] constexpr int impressions() const noexcept { return kind == Kind::one_side ? 1 : 2; }
  /// Returns true if each sheet or piece that goes to press belongs to one copy.
  [[nodiscard]] constexpr bool is_printed_copy_by_copy() const noexcept {
    return kind == Kind::cut_first || kind == Kind::one_side;
  }
  /// Returns how a part of a sheet is printed. On whole sheets, which are then cut, it is turned if the sheet has an even
  /// number of copies, else it takes two formes. Precondition: parts of so many leaves fill the sheet.
  [[nodiscard]] static constexpr Kind kind_of(int part, int leaves_to_sheet, PartWork parts) {
    if (!is_part_of_sheet(part, leaves_to_sheet, true)) broken("equal parts must fill the sheet");
    if (parts == PartWork::cut_first) return Kind::cut_first;
    return leaves_to_sheet / part % 2 == 0 ? Kind::turned : Kind::repeated;
  }
  /// Returns true if leaves of several matters are printed together in this working.
  [[nodiscard]] constexpr bool is_shared() const noexcept { return shares != std::array<std::uint8_t, matters>{}; }
  /// Returns true if two matters share the working half and half. Half-sheets printed separately explain such a book as
  /// well, so Bowers (Studies in Bibliography 1) asks for positive evidence.
  [[nodiscard]] constexpr bool is_equally_shared() const noexcept {
    int first = 0;
    for (auto share : shares) {
      if (share == 0) continue;
      if (first != 0 && share != first) return false;
      first = share;
    }
    return first != 0;
  }
  friend constexpr bool operator==(Working const&, Working const&) = default;
};

/// One way to print a copy. A plan is a range of its workings.
struct Plan {
  /// The greatest number of different workings of a plan.
  static constexpr std::size_t most_workings = 40;

  int leaves_to_sheet{};                         ///< leaves to the sheet in the scheme: 8 for an octavo
  std::array<std::int64_t, matters> leaves_of{}; ///< leaves of each matter, including blank leaves
  std::int64_t gatherings{};                     ///< gatherings of one copy, without cancels
  /// blank pages at the ends of the matters, which fill their last gatherings
  std::int64_t blank_pages{};
  std::int64_t blank_leaves{}; ///< the leaves among them that are blank on both sides
  /// true if the end matter is in the gatherings of the text, and counts as text
  bool end_matter_runs_on{};
  /// true if parts of sheets are printed on whole sheets and the rest stays blank
  bool in_whole_sheets{};

private:
  std::array<Working, most_workings> workings_{};
  std::uint8_t count_{};

  // defined before the functions that call it, because clang 16 needs it there when a plan is a constant
  template <class Each> [[nodiscard]] constexpr std::optional<std::int64_t> sum_of(Each each) const {
    std::optional<std::int64_t> sum = 0;
    for (std::size_t i = 0; i < count_; ++i) {
      auto const one = each(workings_[i]);
      auto const all = one ? checked_multiply(*one, workings_[i].times) : std::nullopt;
      sum = all ? checked_add(*sum, *all) : std::nullopt;
      if (!sum) return sum;
    }
    return sum;
  }

public:
  /// Returns a pointer to the first working.
  [[nodiscard]] constexpr Working const* begin() const& noexcept BIFOLIUM_LIFETIMEBOUND { return workings_.data(); }
  Working const* begin() const&& = delete; // it would look at what goes
  /// Returns a pointer past the last working.
  [[nodiscard]] constexpr Working const* end() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return workings_.data() + count_;
  }
  Working const* end() const&& = delete; // it would look at what goes
  /// Returns the number of different workings.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return count_; }
  /// Adds a working after the others. A working that happens zero times is left out. Precondition: `working.times` is
  /// at least 0, and the plan has fewer than most_workings.
  constexpr void add(Working const& working) {
    if (working.times == 0) return;
    if (working.times < 0) broken("a working must happen zero times or more");
    if (count_ == most_workings) broken("a plan has at most 40 workings");
    workings_[count_++] = working;
  }

  /// Returns the leaves of the book. Cancels replace other leaves and are not counted. Precondition: the sum fits in 64
  /// bits.
  [[nodiscard]] constexpr std::int64_t leaves() const {
    auto const front = checked_add(leaves_of[0], leaves_of[1]);
    return fitting(front ? checked_add(*front, leaves_of[2]) : std::nullopt);
  }
  /// Returns true if preliminaries, text, end matter or cancels share a sheet. That a printer did this is possible, but
  /// an inference.
  [[nodiscard]] constexpr bool shares_a_sheet() const noexcept { return shared().has_value(); }
  /// Returns the first shared working, or no value if there is none.
  [[nodiscard]] constexpr std::optional<Working> shared() const noexcept {
    for (auto const& working : *this)
      if (working.is_shared()) return working;
    return std::nullopt;
  }
  /// Returns true for an even working: the plan has whole sheets only, each with one matter.
  [[nodiscard]] constexpr bool is_even_working() const noexcept {
    for (auto const& working : *this)
      if (working.leaves != leaves_to_sheet || working.is_shared()) return false;
    return true;
  }
  /// Returns true if leaves, formes and sheets fit in 64 bits, as in every plan that `arrange` makes.
  [[nodiscard]] constexpr bool fits() const {
    auto const front = checked_add(leaves_of[0], leaves_of[1]);
    return front && checked_add(*front, leaves_of[2]) && sum_of(leaves_each) && sum_of(formes_each);
  }
  /// Returns the number of formes. Precondition: the sum fits in 64 bits.
  [[nodiscard]] constexpr std::int64_t formes() const { return fitting(sum_of(formes_each)); }
  /// Returns the sheets of paper in one copy, exactly. Precondition: leaves_to_sheet is above zero, and the sum fits in
  /// 64 bits.
  [[nodiscard]] constexpr Fraction sheets_a_copy() const {
    if (leaves_to_sheet <= 0) broken("leaves_to_sheet of a plan must be more than zero");
    return Fraction{fitting(sum_of(leaves_each)), leaves_to_sheet};
  }

private:
  static constexpr std::optional<std::int64_t> leaves_each(Working const& working) { return working.leaves; }
  static constexpr std::optional<std::int64_t> formes_each(Working const& working) { return working.formes(); }
  static constexpr std::int64_t fitting(std::optional<std::int64_t> number) {
    if (!number) broken("the leaves of the plan do not fit in 64 bits");
    return *number;
  }
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_of(Working const& working, std::int64_t copies) const {
    if (working.leaves == leaves_to_sheet) return copies;
    auto const worked = checked_multiply(copies, working.leaves);
    return worked ? std::optional{*worked / leaves_to_sheet + (*worked % leaves_to_sheet != 0 ? 1 : 0)} : std::nullopt;
  }
  /// Returns the sheets or pieces of paper that go to press for one working.
  [[nodiscard]] constexpr std::optional<std::int64_t> pieces_of(Working const& working, std::int64_t copies) const {
    return working.is_printed_copy_by_copy() ? std::optional{copies} : sheets_of(working, copies);
  }
  constexpr void must_be_for(std::int64_t copies) const {
    if (leaves_to_sheet <= 0) broken("leaves_to_sheet of a plan must be more than zero");
    if (copies < 0) broken("the number of copies must not be less than zero");
  }

public:
  /// Returns the sheets for `copies` copies. Parts of sheets are printed several to a sheet; a part that is left over,
  /// such as the half-sheet of an odd copy, takes a sheet of its own. Returns no value if the number does not fit in 64
  /// bits. Precondition: leaves_to_sheet is above zero, and `copies` is at least 0.
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) { return sheets_of(working, copies); });
  }
  /// Returns the impressions for `copies` copies. An impression prints one side of one sheet or piece. N copies of a
  /// half-sheet take N impressions if it is turned, 2N if the paper was cut first, and N if the other side stays blank. N
  /// copies of a smaller part take fewer than N, because each impression has its pages several times.
  /// Returns no value if the number does not fit in 64 bits. Precondition: leaves_to_sheet is above zero, and `copies`
  /// is at least 0.
  [[nodiscard]] constexpr std::optional<std::int64_t> impressions_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) {
      auto const pieces = pieces_of(working, copies);
      return pieces ? checked_multiply(*pieces, working.impressions()) : std::nullopt;
    });
  }
  /// Returns the sheets or pieces that are printed on both sides for `copies` copies, or no value if the number does
  /// not fit in 64 bits. Precondition: leaves_to_sheet is above zero, and `copies` is at least 0.
  [[nodiscard]] constexpr std::optional<std::int64_t> perfected_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) {
      return working.impressions() == 2 ? pieces_of(working, copies) : std::optional<std::int64_t>{0};
    });
  }
  /// Returns how often each page of a working stands in its formes: 1 for a sheet, a half-sheet or paper that was cut
  /// first, 2 for a quarter of a sheet that is turned, 3 for a third. The price of a forme does not count type that is
  /// set again. Precondition: the working is of this plan.
  [[nodiscard]] constexpr int settings(Working const& working) const {
    if (working.leaves == 0) broken("a working must have leaves");
    auto const copies = leaves_to_sheet / working.leaves;
    if (working.kind == Working::Kind::turned) return copies / 2;
    return working.kind == Working::Kind::repeated ? copies : 1;
  }
  /// Returns the pages of each forme of a working, counting a page as often as it is set. An impression prints so many.
  /// Precondition: the working is of this plan.
  [[nodiscard]] constexpr int pages_to_forme(Working const& working) const {
    return 2 * working.leaves * settings(working) / (working.kind == Working::Kind::turned ? 1 : 2);
  }
  /// Returns the meaning of "half-sheet" that applies to a working, or no value if it has no half-sheet of a gathering.
  [[nodiscard]] constexpr std::optional<HalfSheet> half_sheet(Working const& working) const noexcept {
    auto const half = leaves_to_sheet / 2;
    if (working.kind == Working::Kind::sheet) {
      auto const odd = working.shares[static_cast<std::size_t>(Matter::cancels)];
      int halves = 0;
      for (auto share : working.shares) halves += share == half ? 1 : 0;
      if (halves > 0 && odd > 0) return HalfSheet::with_odd_leaves;
      return halves == 2 ? std::optional{HalfSheet::two_worked_together} : std::nullopt;
    }
    if (working.leaves != half || half == 0) return std::nullopt;
    return working.kind == Working::Kind::turned ? HalfSheet::turned : HalfSheet::cut_first;
  }
  friend constexpr bool operator==(Plan const&, Plan const&) = default;
};

} // namespace v0
} // namespace bifolium
