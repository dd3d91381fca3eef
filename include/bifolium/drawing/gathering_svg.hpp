// SPDX-License-Identifier: MIT
/// Draws a gathering that stands on its spine, seen from the tail. The leaves rise from the gutter and fan out, with
/// the first leaf on the left and the outermost pair outside; each has its name at its tip. In a book read from right
/// to left the first leaf is on the right, since the drawing shows the real view from the tail.
///
/// Every leaf is a blade of paper, thin at the gutter and broad at the fore-edge. Conjugate leaves meet in one fold. A
/// filled blade is a leaf that is there, an outline a leaf that is not. A short flap at the fold is a stub; a
/// cancelling leaf leans on its flap, with the paste between the two. A blade that begins above the gutter is joined to
/// no other leaf. A flag above the tip says the same in words, so that the shapes are not the only information.
#pragma once

#include <bifolium/drawing/detail/fan.hpp>
#include <bifolium/drawing/svg.hpp>
#include <bifolium/leaf/gathering.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// The state of a leaf in a drawn gathering.
enum class LeafFate : std::uint8_t {
  present,        ///< present, as printed
  single,         ///< present, and joined to no other leaf
  cancel,         ///< a leaf printed to replace one that was cut away, and pasted to its stub
  replaced,       ///< half of a bifolium printed to replace another bifolium
  inserted,       ///< a leaf added to the gathering as it was folded
  missing,        ///< missing in this copy
  cancel_missing, ///< a cancel that is missing in this copy: only the stub is there
  removed,        ///< removed in the printing house: the ideal copy does not have it
  left_in,        ///< present in this copy, although the printing house should have removed it
  loose           ///< present in this copy, but no longer joined to its conjugate
};

/// One leaf. Leaves are in the order of the book.
struct DrawnLeaf {
  std::string label;                 ///< its name, A1, or a word
  LeafFate state{LeafFate::present}; ///< its state, which decides how it is drawn
  /// index of the leaf to which it is joined, from 0; for a cancel, of the leaf joined to its stub; no value for a single leaf
  std::optional<int> conjugate{};
  std::string note{}; ///< any further words
};

/// A gathering to draw. It does not depend on a formula, so any account of a gathering can be drawn.
struct DrawnGathering {
  std::string title;             ///< printed above the drawing; a screen reader reads it first
  std::vector<DrawnLeaf> leaves; ///< in the order of the book
  bool right_to_left{};          ///< true if the book is read from right to left
};

/// Makes a regular gathering, in which leaf k is joined to leaf N+1-k. The labels are the signature and the number of
/// the leaf. Precondition: 1 to 4096 leaves.
inline DrawnGathering regular_gathering(std::string_view signature, int leaves) {
  leaves = Gathering<>{leaves}.leaves();
  DrawnGathering drawn{std::string{"Gathering "}.append(signature),
                       std::vector<DrawnLeaf>(static_cast<std::size_t>(leaves))};
  for (int k = 1; k <= leaves; ++k) {
    auto const mate = leaves + 1 - k;
    drawn.leaves[static_cast<std::size_t>(k - 1)] = {std::string{signature}.append(std::to_string(k)),
                                                     mate == k ? LeafFate::single : LeafFate::present,
                                                     mate == k ? std::nullopt : std::optional{mate - 1}};
  }
  return drawn;
}

/// Inserts a leaf, or half of a pair, at index `place`. Leaves that were joined stay joined. Precondition: `place` is
/// from 0 to the number of leaves; the new leaf gives its conjugate, if it has one, by the index after the insertion.
inline void insert_leaf(DrawnGathering& gathering, int place, DrawnLeaf const& leaf) {
  if (place < 0 || place > static_cast<int>(gathering.leaves.size()))
    broken("the place in the gathering must be from 0 to its number of leaves");
  for (auto& other : gathering.leaves)
    if (other.conjugate >= place) ++*other.conjugate;
  gathering.leaves.insert(gathering.leaves.begin() + place, leaf);
}

namespace detail {

constexpr char const* words_for(LeafFate state) noexcept {
  switch (state) {
  case LeafFate::present:
    return "";
  case LeafFate::single:
    return "single leaf";
  case LeafFate::cancel:
    return "cancel, pasted to the stub";
  case LeafFate::replaced:
    return "cancel, one of a pair";
  case LeafFate::inserted:
    return "inserted";
  case LeafFate::missing:
    return "wants";
  case LeafFate::cancel_missing:
    return "wants the cancel, has the stub";
  case LeafFate::removed:
    return "cut away";
  case LeafFate::left_in:
    return "not cut away";
  case LeafFate::loose:
    return "loose";
  }
  return "";
}
constexpr bool is_there(LeafFate state) noexcept {
  return state != LeafFate::missing && state != LeafFate::cancel_missing && state != LeafFate::removed;
}
/// Returns true if the stub, and not the leaf, is joined to the other half.
constexpr bool is_on_stub(LeafFate state) noexcept {
  return state == LeafFate::cancel || state == LeafFate::cancel_missing;
}

/// Returns the words for leaf `i`.
inline std::string words_for(DrawnGathering const& gathering, int i) {
  auto const& leaf = gathering.leaves[static_cast<std::size_t>(i)];
  std::string words{words_for(leaf.state)};
  // If the conjugate is there, a removed leaf has left a stub.
  bool const has_mate = leaf.state == LeafFate::removed && leaf.conjugate;
  if (has_mate && gathering.leaves[static_cast<std::size_t>(*leaf.conjugate)].state != LeafFate::removed)
    words += " to a stub";
  if (!leaf.note.empty()) words.append(words.empty() ? "" : "; ").append(leaf.note);
  return words;
}

/// The drawing of one gathering: the leaves, the paths of their blades, and the words above them.
class GatheringDrawn {
  DrawnGathering const& gathering_;
  Fan fan_;
  std::vector<Flag> flags_{};
  double width_{}, height_{}, shift_{};

  static constexpr double side = 10, name = 4.5, words = 3.4, heading = 24;

  [[nodiscard]] static std::vector<std::optional<int>> mates(DrawnGathering const& gathering) {
    std::vector<std::optional<int>> mates;
    mates.reserve(gathering.leaves.size());
    for (auto const& leaf : gathering.leaves) mates.push_back(leaf.conjugate);
    return mates;
  }
  [[nodiscard]] static double widest_name(DrawnGathering const& gathering) {
    double widest = 0;
    for (auto const& leaf : gathering.leaves)
      if (auto const room = Svg::room(leaf.label, name); room > widest) widest = room;
    return widest;
  }
  [[nodiscard]] DrawnLeaf const& leaf(int i) const { return gathering_.leaves[static_cast<std::size_t>(i)]; }
  [[nodiscard]] Spot at(Spot place) const {
    auto const x = shift_ + place.x;
    return {gathering_.right_to_left ? width_ - x : x, place.y};
  }
  [[nodiscard]] static std::string written(Spot spot) { return svg_number(spot.x) + " " + svg_number(spot.y); }
  /// Returns the outline of a blade along the curve of leaf `i`, from `from` to `to` of its length.
  [[nodiscard]] std::string blade(Bend const& bend, double from, double to, double thick_from, double thick_to) const {
    std::string d = "M";
    auto const edge = [&](double t, double side_of) {
      auto const thick = thick_from + (thick_to - thick_from) * t;
      d.append(d.size() == 1 ? " " : " L ").append(written(at(bend.beside(t, side_of * thick / 2))));
    };
    constexpr int parts = 16;
    for (int i = 0; i <= parts; ++i) edge(from + (to - from) * i / parts, 1);
    for (int i = parts; i >= 0; --i) edge(from + (to - from) * i / parts, -1);
    return d.append(" Z");
  }
  void draw_leaf(Svg& svg, int i) const {
    auto const& one = leaf(i);
    auto const* const mate = one.conjugate ? &leaf(*one.conjugate) : nullptr;
    bool const there = is_there(one.state), on_stub = is_on_stub(one.state);
    bool const new_paper = one.state == LeafFate::cancel || one.state == LeafFate::replaced;
    // A bifolium that is missing as a whole leaves no stub.
    bool const cut = one.state == LeafFate::removed && mate != nullptr && mate->state != LeafFate::removed;
    auto const bend = fan_.bend(i);
    auto const from = on_stub ? 0.09 : cut ? 0.36 : mate == nullptr ? 0.14 : 0.0;
    svg.open("leaf", {{}, one.label, {}});
    if (on_stub || cut) {
      auto const flap = on_stub ? fan_.flap(i) : bend;
      svg.path(blade(flap, 0, 0.3, 0.6, 1.6), {.width = 0.15}, "stub", "black");
      if (one.state == LeafFate::cancel) {
        std::string d = "M ";
        d.append(written(at(bend.at(0.12)))).append(" L ").append(written(at(bend.at(0.3))));
        d.append(" L ").append(written(at(flap.at(0.3)))).append(" L ").append(written(at(flap.at(0.12))));
        svg.path(d.append(" Z"), {.width = 0.2}, "paste", "#999");
      }
    }
    svg.path(blade(bend, from, 1, 0.5, there ? (new_paper ? 3 : 2) : 4.4),
             {.width = there ? 0.15 : 0.4, .breaks = there ? "" : "2.4 1"}, there ? "paper" : "wanting",
             there ? "black" : "white");
    auto const tip = fan_.tip(i);
    svg.text(at({tip.x, tip.y - name}), one.label, {.size = name, .kind = "label"});
    svg.close();
  }
  void draw_folds(Svg& svg) const {
    for (int i = 0; i < static_cast<int>(gathering_.leaves.size()); ++i) {
      auto const mate = leaf(i).conjugate;
      if (mate <= i) continue;
      auto const gone = [](DrawnLeaf const& one) { return !is_there(one.state) && !is_on_stub(one.state); };
      if (gone(leaf(i)) && gone(leaf(*mate))) continue; // neither leaf has left any paper
      auto const fold = fan_.bend(i).at(0);
      svg.path("M " + written(at(fold)) + " L " + written(at({fold.x, fold.y + 0.2})), {.width = 1.4, .round = true},
               "fold");
    }
  }
  void draw_flags(Svg& svg) const {
    for (auto const& flag : flags_) {
      auto const tip = fan_.tip(flag.leaf);
      auto const line = fan_.crown() - 2 * name - 2 - flag.level * (words + 1.6);
      auto const foot = at({tip.x, tip.y - 1.5 * name - 0.6}), top = at({tip.x, line + words / 2});
      svg.line(foot, top, {.width = 0.15}, "staff");
      svg.text(at({tip.x - 1, line}), flag.words,
               {.size = words,
                .anchor = gathering_.right_to_left ? Anchor::end : Anchor::start,
                .italic = true,
                .kind = "state"});
    }
  }

public:
  explicit GatheringDrawn(DrawnGathering const& gathering)
      : gathering_{gathering}, fan_{mates(gathering), widest_name(gathering)} {
    for (int i = static_cast<int>(gathering.leaves.size()); i-- > 0;)
      if (auto const said = words_for(gathering, i); !said.empty())
        flags_.push_back({i, 0, said, Svg::room(said, words)});
    auto const levels = fan_.raise(flags_);
    fan_.move_down(heading + levels * (words + 1.6) + 2 * name + 4);
    auto right = fan_.width();
    for (auto const& flag : flags_)
      if (auto const end = fan_.tip(flag.leaf).x + flag.room; end > right) right = end;
    width_ = 2 * side + right;
    auto const needed = 2 * side + Svg::room(gathering.title, 6, true), least = 130.0;
    auto const widest = needed > least ? needed : least;
    shift_ = side + (width_ < widest ? (widest - width_) / 2 : 0);
    width_ = width_ < widest ? widest : width_;
    height_ = fan_.floor() + 8;
  }

  [[nodiscard]] std::string draw(std::string_view told) const {
    Svg svg{width_, height_, gathering_.title,
            std::string{"A gathering of paper standing on its spine, seen from the tail.\n"}.append(told)};
    bool const rtl = gathering_.right_to_left;
    auto const anchor = rtl ? Anchor::end : Anchor::start;
    auto const left = rtl ? width_ - side : side;
    svg.text({left, 10}, gathering_.title, {.size = 6, .anchor = anchor, .bold = true});
    svg.text({left, 17.5},
             rtl ? "paper on its spine, seen from the tail; first leaf on the right"
                 : "paper on its spine, seen from the tail; first leaf on the left",
             {.size = 3.2, .anchor = anchor, .italic = true});
    for (int i = 0; i < static_cast<int>(gathering_.leaves.size()); ++i) draw_leaf(svg, i);
    draw_folds(svg);
    draw_flags(svg);
    svg.line(at({fan_.width() / 2 - 26, fan_.floor()}), at({fan_.width() / 2 + 26, fan_.floor()}), {.width = 0.4},
             "table");
    return static_cast<Svg&&>(svg).finish();
  }
};

/// Stops at leaves that no fold joins so: one joined to a leaf that is not there or that is joined to another, and two pairs of
/// which neither lies within the other.
inline void must_be_folded(DrawnGathering const& gathering) {
  auto const& leaves = gathering.leaves;
  auto const count = static_cast<int>(leaves.size());
  std::vector<int> open; // the ends of the pairs that have begun
  for (int i = 0; i < count; ++i) {
    auto const mate = leaves[static_cast<std::size_t>(i)].conjugate;
    if (!mate) continue;
    if (*mate < 0 || *mate >= count || *mate == i || leaves[static_cast<std::size_t>(*mate)].conjugate != i)
      broken("the conjugate of a leaf's conjugate must be the leaf itself");
    if (*mate > i) {
      open.push_back(*mate);
    } else {
      if (open.back() != i) broken("of two pairs of leaves one must lie within the other, or after it");
      open.pop_back();
    }
  }
}

} // namespace detail

/// Writes the gathering as text, one bifolium a line, the outermost first, with the inner ones indented below it.
/// Precondition: each `conjugate` is mutual, and joined pairs are nested.
inline std::string gathering_text(DrawnGathering const& gathering) {
  detail::must_be_folded(gathering);
  std::string text;
  std::vector<int> open; // the ends of the pairs that have begun
  auto const told = [&](int i) {
    auto const words = detail::words_for(gathering, i);
    auto const& label = gathering.leaves[static_cast<std::size_t>(i)].label;
    return words.empty() ? label : label + " (" + words + ")";
  };
  for (int i = 0; i < static_cast<int>(gathering.leaves.size()); ++i) {
    auto const& leaf = gathering.leaves[static_cast<std::size_t>(i)];
    if (!open.empty() && open.back() == i) {
      open.pop_back();
      continue;
    }
    text.append(2 * open.size(), ' ').append(told(i));
    if (leaf.conjugate > i) {
      open.push_back(*leaf.conjugate);
      auto const& mate = gathering.leaves[static_cast<std::size_t>(*leaf.conjugate)];
      text += detail::is_on_stub(leaf.state) ? ", its stub joined to " : " joined to "; // the cancel is a single leaf
      text += detail::is_on_stub(mate.state) ? "the stub of " : "";
      text += told(*leaf.conjugate);
    }
    text.append("\n");
  }
  return text;
}

/// Draws the gathering standing on its spine, seen from the tail. Up to 24 leaves fit on A4 in landscape; more leaves
/// make the drawing wider, so that names stay legible. Precondition: each `conjugate` is mutual, and joined pairs are
/// nested.
inline std::string gathering_svg(DrawnGathering const& gathering) {
  auto const text = gathering_text(gathering); // stops where the precondition does not hold
  return detail::GatheringDrawn{gathering}.draw(text);
}

} // namespace v0
} // namespace bifolium
