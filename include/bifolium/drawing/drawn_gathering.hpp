// SPDX-License-Identifier: MIT
/// A gathering as leaves to draw, with what became of each: present, cancelled, cut away, loose. It depends on neither a formula nor
/// a copy, so that any account of a gathering can be drawn and told in words, and both say the same.
#pragma once

#include <bifolium/leaf/gathering.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
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

} // namespace v0
} // namespace bifolium
