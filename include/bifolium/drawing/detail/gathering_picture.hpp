// SPDX-License-Identifier: MIT
/// The picture of one gathering. Every leaf is a blade of paper, thin at the gutter and broad at the fore-edge. Conjugate leaves
/// meet in one fold. A filled blade is a leaf that is there, an outline a leaf that is not. A short flap at the fold is a stub; a
/// cancelling leaf leans on its flap, with the paste between the two. A blade that begins above the gutter is joined to
/// no other leaf. A flag above the tip says the same in words, so that the shapes are not the only information.
#pragma once

#include <bifolium/drawing/detail/fan.hpp>
#include <bifolium/drawing/drawn_gathering.hpp>
#include <bifolium/drawing/svg.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The drawing of one gathering: the leaves, the paths of their blades, and the words above them.
class GatheringPicture {
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
  explicit GatheringPicture(DrawnGathering const& gathering)
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

} // namespace detail

} // namespace v0
} // namespace bifolium
