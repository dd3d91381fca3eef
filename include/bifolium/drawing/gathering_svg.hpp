// SPDX-License-Identifier: MIT
/// A gathering seen from its head, the way bibliographers sketch one in the margin of their notes: every leaf is a level
/// line, conjugate leaves are one line bent round at the gutter, the outermost pair outermost. So what is joined is seen
/// at once, and what is not hangs loose.
///
/// The marks: an unbroken line is a leaf that is there; a dotted one a leaf that is not; a short stub at the gutter is what
/// remains of a leaf cut away. What was printed to replace something is heavy: a cancelling leaf pasted to its stub, the
/// paste shown as a small filled bar, or a whole bifolium. A leaf that is joined to nothing keeps off the gutter. The
/// words beside the leaves say the same, so that nothing hangs on the marks alone.
#pragma once

#include <bifolium/core/put.hpp>
#include <bifolium/drawing/svg.hpp>
#include <bifolium/leaf/gathering.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// What a leaf of a drawn gathering is.
enum class LeafFate : std::uint8_t {
  present,        ///< as printed
  single,         ///< present, and joined to no other leaf
  cancel,         ///< a leaf printed to take the place of one cut away, pasted to the stub of it
  replaced,       ///< half of a bifolium printed to take the place of another
  inserted,       ///< a leaf that is no part of the gathering as folded
  missing,        ///< belongs here and is not in this copy
  cancel_missing, ///< so does a cancel: only the stub is there
  removed,        ///< cut away in the house: the ideal copy lacks it
  left_in,        ///< should have been cut away, and is in this copy
  loose           ///< present in this copy, but no longer joined to the leaf it belongs to
};

/// One leaf, in the order of the book.
struct DrawnLeaf {
  std::string label;                 ///< what stands beside it: A1, or a word
  LeafFate state{LeafFate::present}; ///< what became of it, which decides how its line is drawn
  int conjugate{-1};  ///< the index of the leaf it is joined to, from 0; -1: none. Of a cancel: that of its stub
  std::string note{}; ///< whatever else is said of it
};

/// A gathering to draw: it knows nothing of formulas, so that any account of a gathering can be drawn.
struct DrawnGathering {
  std::string title;             ///< stands above the drawing and names it for who cannot see it
  std::vector<DrawnLeaf> leaves; ///< in the order of the book, the first leaf first
  bool right_to_left{};          ///< the gutter is on the right
};

/// A regular gathering of leaves joined N+1-k to k, labelled with the signature and their number.
/// pre: 1 to 4096 leaves.
inline DrawnGathering regular_gathering(std::string_view signature, int leaves) {
  leaves = Gathering<>{leaves}.leaves();
  DrawnGathering drawn{std::string{"Gathering "}.append(signature),
                       std::vector<DrawnLeaf>(static_cast<std::size_t>(leaves))};
  for (int k = 1; k <= leaves; ++k) {
    auto const mate = leaves + 1 - k;
    drawn.leaves[static_cast<std::size_t>(k - 1)] = {std::string{signature}.append(std::to_string(k)),
                                                     mate == k ? LeafFate::single : LeafFate::present,
                                                     mate == k ? -1 : mate - 1};
  }
  return drawn;
}

/// Puts a leaf, or the half of a pair, at `place`, counting from 0; the joints of the others stay theirs.
/// pre: 0 to the number of leaves; the new leaf names its conjugate as it will be counted afterwards, or none.
inline void insert_leaf(DrawnGathering& gathering, int place, DrawnLeaf const& leaf) {
  if (place < 0 || place > static_cast<int>(gathering.leaves.size())) broken("there is no such place in the gathering");
  for (auto& other : gathering.leaves)
    if (other.conjugate >= place) ++other.conjugate;
  auto const at = static_cast<std::size_t>(place);
  detail::put(gathering.leaves, at, at, leaf);
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
    return "cancel, without a stub";
  case LeafFate::inserted:
    return "inserted";
  case LeafFate::missing:
    return "missing";
  case LeafFate::cancel_missing:
    return "cancel, missing from its stub";
  case LeafFate::removed:
    return "cut away";
  case LeafFate::left_in:
    return "not cut away";
  case LeafFate::loose:
    return "loose";
  }
  return "";
}
inline std::string words_for(DrawnLeaf const& leaf) {
  std::string words{words_for(leaf.state)};
  if (!leaf.note.empty()) words.append(words.empty() ? "" : "; ").append(leaf.note);
  return words;
}
constexpr bool is_there(LeafFate state) noexcept {
  return state != LeafFate::missing && state != LeafFate::cancel_missing && state != LeafFate::removed;
}
/// The stub, not the leaf, is joined to the other half.
constexpr bool is_on_stub(LeafFate state) noexcept {
  return state == LeafFate::cancel || state == LeafFate::cancel_missing;
}

} // namespace detail

/// The leaves of a gathering, one a line: the label, what became of it, the leaf it is joined to.
inline std::string gathering_text(DrawnGathering const& gathering) {
  std::string text;
  for (auto const& leaf : gathering.leaves) {
    text.append(leaf.label);
    if (auto const words = detail::words_for(leaf); !words.empty()) text.append(": ").append(words);
    if (leaf.conjugate >= 0) {
      auto const& mate = gathering.leaves[static_cast<std::size_t>(leaf.conjugate)];
      bool const stub =
          detail::is_on_stub(leaf.state) || (leaf.state == LeafFate::removed && mate.state != LeafFate::removed);
      text.append(stub ? ", the stub conjugate with " : ", conjugate with ").append(mate.label);
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
  double const step = 7, top = 22, leaf_length = 62;
  auto const height = top + step * count + 10;
  // The gutter is as far to the right as half the leaves need for their bends.
  auto const gutter = 12 + step * count / 2.0, fore_edge = gutter + leaf_length, beside = fore_edge + 4;
  // Words need what room they need: the picture is as wide as the longest line.
  auto const heading = gathering.right_to_left
                           ? "paper, seen from the head; the first leaf above, the gutter on the right"
                           : "paper, seen from the head; the first leaf above, the gutter on the left";
  auto total = 150.0;
  auto const widen = [&](double needed) { total = needed > total ? needed : total; };
  widen(12 + Svg::room(gathering.title, 5, true));
  widen(12 + Svg::room(heading, 2.8));
  auto said = 0.0; // where the words begin: behind the longest label
  for (auto const& leaf : leaves) {
    auto const end = beside + Svg::room(leaf.label, 4) + 3;
    said = end > said ? end : said;
  }
  for (auto const& leaf : leaves) widen(said + Svg::room(detail::words_for(leaf), 3) + 4);
  auto const x = [&](double from_left) { return gathering.right_to_left ? total - from_left : from_left; };
  auto const y = [&](int leaf) { return top + step * (leaf + 0.5); };
  auto const mate_of = [&](DrawnLeaf const& leaf) {
    return leaf.conjugate < 0 ? nullptr : &leaves[static_cast<std::size_t>(leaf.conjugate)];
  };
  // What is bent round at the gutter is the stub, where a cancel is pasted to it.
  auto const stub = [&](int leaf) {
    return y(leaf) + (detail::is_on_stub(leaves[static_cast<std::size_t>(leaf)].state) ? 1.6 : 0);
  };
  static constexpr auto points = "0.5 1.6";

  Svg svg{total, height, gathering.title,
          "A gathering of paper seen from its head, the first leaf above.\n" + gathering_text(gathering)};
  auto const anchor = gathering.right_to_left ? Anchor::end : Anchor::start;
  svg.text({x(8), 9}, gathering.title, {.size = 5, .anchor = anchor, .bold = true});
  svg.text({x(8), 15.5}, heading, {.size = 2.8, .anchor = anchor, .italic = true});

  for (int i = 0; i < count; ++i) {
    auto const& leaf = leaves[static_cast<std::size_t>(i)];
    auto const* const mate = mate_of(leaf);
    bool const there = detail::is_there(leaf.state), on_stub = detail::is_on_stub(leaf.state);
    bool const heavy = leaf.state == LeafFate::cancel || leaf.state == LeafFate::replaced;
    auto const from = mate == nullptr || on_stub ? gutter + 3 : gutter;
    svg.open("leaf");
    svg.line({x(from), y(i)}, {x(fore_edge), y(i)}, {.width = heavy ? 1.1 : 0.5, .breaks = there ? "" : points});
    // Of a bifolium that is gone as a whole no stub remains.
    bool const cut = leaf.state == LeafFate::removed && mate != nullptr && mate->state != LeafFate::removed;
    if (on_stub || cut) // the stub lies behind the leaf that is pasted to it
      svg.line({x(gutter), stub(i)}, {x(gutter + 12), stub(i)}, {.width = 0.5}, "stub");
    if (leaf.state == LeafFate::cancel)
      svg.rectangle({gathering.right_to_left ? x(gutter + 11) : x(gutter + 4), y(i)}, 7, 1.6, {.width = 0.1}, "paste",
                    "#777");
    svg.text({x(beside), y(i)}, leaf.label, {.size = 4, .anchor = anchor, .kind = "label"});
    if (auto const words = detail::words_for(leaf); !words.empty())
      svg.text({x(said), y(i)}, words, {.size = 3, .anchor = anchor, .italic = true, .kind = "state"});
    svg.close();
    if (leaf.conjugate <= i) continue;
    // One bend joins the pair; the wider apart they are, the further it reaches out.
    auto const reach = (stub(leaf.conjugate) - stub(i)) / 2;
    bool const gone = !there && !detail::is_there(mate->state) && !on_stub && !detail::is_on_stub(mate->state);
    bool const both_new = leaf.state == LeafFate::replaced && mate->state == LeafFate::replaced;
    std::string d = "M ";
    d.append(svg_number(x(gutter))).append(" ").append(svg_number(stub(i))).append(" A ").append(svg_number(reach));
    d.append(" ").append(svg_number(reach)).append(gathering.right_to_left ? " 0 0 1 " : " 0 0 0 ");
    d.append(svg_number(x(gutter))).append(" ").append(svg_number(stub(leaf.conjugate)));
    svg.path(d, {.width = both_new ? 1.1 : 0.5, .breaks = gone ? points : ""}, "fold");
  }
  return static_cast<Svg&&>(svg).finish();
}

} // namespace v0
} // namespace bifolium
