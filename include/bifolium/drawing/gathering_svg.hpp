// SPDX-License-Identifier: MIT
/// A gathering seen from its head, the way bibliographers sketch one in the margin of their notes: every leaf is a level
/// line, conjugate leaves are one line bent round at the gutter, the outermost pair outermost. So what is joined is seen
/// at once, and what is not hangs loose.
///
/// The marks: an unbroken line is a leaf that is there; a dotted one a leaf that is not; a short stub at the gutter is what
/// remains of a leaf cut away. A cancelling leaf is a heavy line pasted to its stub, the paste shown as a small filled
/// bar; an inserted leaf stands beside the gutter, joined to nothing. The words at the right say the same.
#pragma once

#include <bifolium/drawing/svg.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// What a leaf of a drawn gathering is.
enum class LeafFate : std::uint8_t {
  present,  ///< as printed
  single,   ///< present, and joined to no other leaf
  cancel,   ///< a leaf printed to take the place of one cut away, pasted to the stub of it
  inserted, ///< a leaf that is no part of the gathering as folded
  missing,  ///< belongs here and is not in this copy
  removed   ///< cut away in the house: the ideal copy lacks it
};

/// One leaf, in the order of the book.
struct DrawnLeaf {
  std::string label; ///< what stands beside it: A1, or a word
  LeafFate state{LeafFate::present};
  int conjugate{-1}; ///< the index of the leaf it is joined to, from 0; -1: none
};

/// A gathering to draw: it knows nothing of formulas, so that any account of a gathering can be drawn.
struct DrawnGathering {
  std::string title;
  std::vector<DrawnLeaf> leaves;
  bool right_to_left{}; ///< the gutter is on the right
};

/// A regular gathering of leaves joined N+1-k to k, labelled with the signature and their number.
inline DrawnGathering regular_gathering(std::string_view signature, int leaves) {
  if (leaves < 1) broken("a gathering has at least one leaf");
  DrawnGathering drawn{std::string{"Gathering "}.append(signature), {}};
  for (int k = 1; k <= leaves; ++k) {
    auto const mate = leaves + 1 - k;
    drawn.leaves.push_back({std::string{signature}.append(std::to_string(k)),
                            mate == k ? LeafFate::single : LeafFate::present, mate == k ? -1 : mate - 1});
  }
  return drawn;
}

/// Puts a leaf, or the half of a pair, at `place`, counting from 0; the joints of the others stay theirs.
/// pre: 0 to the number of leaves; the new leaf names its conjugate as it will be counted afterwards, or none.
inline void insert_leaf(DrawnGathering& gathering, int place, DrawnLeaf const& leaf) {
  if (place < 0 || place > static_cast<int>(gathering.leaves.size())) broken("there is no such place in the gathering");
  for (auto& other : gathering.leaves)
    if (other.conjugate >= place) ++other.conjugate;
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
  case LeafFate::inserted:
    return "inserted";
  case LeafFate::missing:
    return "missing";
  case LeafFate::removed:
    return "cut away";
  }
  return "";
}
/// Characters of a text, for the room it needs.
constexpr int characters(std::string_view text) noexcept {
  int count = 0;
  for (std::size_t at = 0; at < text.size(); at += decode(text, at).bytes) ++count;
  return count;
}
constexpr bool is_there(LeafFate state) noexcept { return state != LeafFate::missing && state != LeafFate::removed; }

} // namespace detail

/// The leaves of a gathering, one a line: the label, what became of it, the leaf it is joined to.
inline std::string gathering_text(DrawnGathering const& gathering) {
  std::string text;
  for (auto const& leaf : gathering.leaves) {
    text.append(leaf.label);
    if (*detail::words_for(leaf.state)) text.append(": ").append(detail::words_for(leaf.state));
    if (leaf.conjugate >= 0) {
      text.append(leaf.state == LeafFate::cancel || leaf.state == LeafFate::removed ? ", the stub conjugate with "
                                                                                    : ", conjugate with ");
      text.append(gathering.leaves[static_cast<std::size_t>(leaf.conjugate)].label);
    }
    text.append("\n");
  }
  return text;
}

/// The gathering seen from its head. pre: `conjugate` of a leaf and of its mate agree, and joined pairs are nested.
inline std::string gathering_svg(DrawnGathering const& gathering) {
  auto const& leaves = gathering.leaves;
  auto const count = static_cast<int>(leaves.size());
  for (int i = 0; i < count; ++i) {
    auto const mate = leaves[static_cast<std::size_t>(i)].conjugate;
    if (mate == -1) continue;
    if (mate < 0 || mate >= count || mate == i || leaves[static_cast<std::size_t>(mate)].conjugate != i)
      broken("two leaves are conjugate when each names the other");
  }
  double const step = 7, top = 22, leaf_length = 62, width = 150;
  auto const height = top + step * count + 10;
  // The gutter is as far to the right as half the leaves need for their bends.
  auto const gutter = 12 + step * count / 2.0, fore_edge = gutter + leaf_length;
  auto const total = (fore_edge + 68 > width ? fore_edge + 68 : width);
  auto const x = [&](double from_left) { return gathering.right_to_left ? total - from_left : from_left; };
  auto const y = [&](int leaf) { return top + step * (leaf + 0.5); };

  // What is bent round at the gutter is the stub, where a cancel is pasted to it.
  auto const stub = [&](int leaf) {
    return y(leaf) + (leaves[static_cast<std::size_t>(leaf)].state == LeafFate::cancel ? 1.6 : 0);
  };

  Svg svg{total, height, gathering.title,
          "A gathering seen from its head, the first leaf above.\n" + gathering_text(gathering)};
  auto const anchor = gathering.right_to_left ? Anchor::end : Anchor::start;
  svg.text({x(8), 9}, gathering.title, {.size = 5, .anchor = anchor, .bold = true});
  svg.text({x(8), 15.5},
           gathering.right_to_left ? "seen from the head, first leaf above, gutter on the right"
                                   : "seen from the head, first leaf above, gutter on the left",
           {.size = 2.8, .anchor = anchor, .italic = true});

  for (int i = 0; i < count; ++i) {
    auto const& leaf = leaves[static_cast<std::size_t>(i)];
    bool const there = detail::is_there(leaf.state);
    auto const from = leaf.conjugate < 0 || leaf.state == LeafFate::cancel ? gutter + 3 : gutter;
    Stroke const how{.width = leaf.state == LeafFate::cancel ? 1.1 : 0.5, .breaks = there ? "" : "0.5 1.6"};
    svg.open("leaf");
    svg.line({x(from), y(i)}, {x(fore_edge), y(i)}, how);
    if (leaf.state == LeafFate::cancel || leaf.state == LeafFate::removed) {
      // The stub lies on the reader's side of what is pasted to it.
      auto const below = stub(i);
      svg.line({x(gutter), below}, {x(gutter + 12), below}, {.width = 0.5}, "stub");
      if (leaf.state == LeafFate::cancel)
        svg.rectangle({gathering.right_to_left ? x(gutter + 11) : x(gutter + 4), y(i)}, 7, 1.6, {.width = 0.1}, "paste",
                      "#777");
    }
    svg.text({x(fore_edge + 4), y(i)}, leaf.label, {.size = 4, .anchor = anchor, .kind = "label"});
    auto const label_width = Svg::figure_width * 4.6 * detail::characters(leaf.label);
    svg.text({x(fore_edge + 7 + label_width), y(i)}, detail::words_for(leaf.state),
             {.size = 3, .anchor = anchor, .italic = true, .kind = "state"});
    svg.close();
    if (leaf.conjugate <= i) continue;
    // One bend joins the pair; the wider apart they are, the further it reaches out.
    auto const reach = (stub(leaf.conjugate) - stub(i)) / 2;
    auto const& mate = leaves[static_cast<std::size_t>(leaf.conjugate)];
    std::string d = "M ";
    d.append(svg_number(x(gutter))).append(" ").append(svg_number(stub(i))).append(" A ").append(svg_number(reach));
    d.append(" ").append(svg_number(reach)).append(gathering.right_to_left ? " 0 0 1 " : " 0 0 0 ");
    d.append(svg_number(x(gutter))).append(" ").append(svg_number(stub(leaf.conjugate)));
    svg.path(d, {.width = 0.5, .breaks = there || detail::is_there(mate.state) ? "" : "0.5 1.6"}, "fold");
  }
  return static_cast<Svg&&>(svg).finish();
}

} // namespace v0
} // namespace bifolium
