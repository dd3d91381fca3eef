// SPDX-License-Identifier: MIT
/// The statements of a formula about single leaves: a leaf is deleted (−A4), cancelled (±B2), inserted (A3+χ1.2), said
/// to be the same as another [=B2], or described in words (B2 blank). A `Change` is exactly one of these five, and is
/// always valid. This header has its meaning; the way it was written (one parenthesis or two, a comma or a point) is in
/// a `ChangeForm`, which is only used for writing.
#pragma once

#include <bifolium/collation/folded_leaves.hpp>
#include <bifolium/collation/parts.hpp>
#include <bifolium/core/text_span.hpp>

#include <bit>
#include <cstdint>
#include <new>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// (−A4): the ideal copy does not have the leaf, or the leaves (−A2-4).
struct Deletion {
  GatheringAt gathering{}; ///< the changed gathering
  FoldedLeaves leaves{};   ///< the deleted leaves
  friend constexpr bool operator==(Deletion, Deletion) = default;
};
/// (±B2): the leaf, or the leaves, were cut out and replaced. The number of leaves stays the same.
struct Cancel {
  GatheringAt gathering{}; ///< the changed gathering
  FoldedLeaves leaves{};   ///< the replaced leaves
  /// true if replaced together with its conjugate, as one fold (±B4.5) or with the whole gathering
  bool of_fold{};
  friend constexpr bool operator==(Cancel, Cancel) = default;
};
/// The way in which inserted leaves are joined to each other.
enum class Joined : std::uint8_t {
  apart,     ///< single leaves (χ1,2), or nothing is stated
  conjugate, ///< folds (χ1.2)
  gathering  ///< a gathering of its own (A⁴)
};
/// (A3+χ1.2): leaves that were not folded with the gathering. An inserted gathering may itself lack leaves: a⁴(−a4).
struct Insertion {
  GatheringAt gathering{}; ///< the changed gathering
  int after{};             ///< how many leaves of the gathering, as folded, come before them; 0 for none
  int leaves{1};           ///< number of leaves, without those that an inserted gathering lacks
  Joined joined{};         ///< the way in which they are joined
  bool inferred{};         ///< true for [a]⁴: the gathering is not signed, and its name is inferred
  bool named_by_place{};   ///< true for (+8*): named after the leaf before them, with a star
  /// the name, as of χ1, a⁴ or "c3", if the formula gives them one
  std::optional<Signature> name{};
  std::optional<int> first_figure{}; ///< the number after the name or before the star, if there is one
  /// the leaves that an inserted gathering lacks, one bit each: the lowest bit is leaf 1, so a⁴(−a4) has 8. Only a
  /// gathering of at most `most_leaves_lacking_some` leaves can lack leaves.
  std::uint64_t lacking{};
  /// The most leaves, as folded, of an inserted gathering that lacks some.
  static constexpr int most_leaves_lacking_some = 64;

  /// Returns true if the inserted gathering lacks leaf `leaf`, counted as folded. Precondition: at least 1.
  [[nodiscard]] constexpr bool lacks(int leaf) const {
    if (leaf < 1) broken("the leaves of a gathering count from 1");
    return leaf <= most_leaves_lacking_some && (lacking >> static_cast<unsigned>(leaf - 1) & 1U) != 0;
  }
  /// Returns the number of leaves as folded: those that are there, and those that an inserted gathering lacks.
  [[nodiscard]] constexpr int leaves_folded() const noexcept { return leaves + std::popcount(lacking); }
  /// Returns the number, counted as folded, of leaf `place`, where `place` counts only the leaves that are there.
  /// Precondition: 1 to `leaves`.
  [[nodiscard]] constexpr int leaf_at(int place) const {
    if (place < 1 || place > leaves) broken("the insertion has no leaf at this place");
    if (lacking == 0) return place;
    int leaf = 0;
    do place -= lacks(++leaf) ? 0 : 1;
    while (place > 0);
    return leaf;
  }
  /// Returns the place of leaf `leaf`, counted as folded, among the leaves that are there. Precondition: the insertion
  /// has this leaf.
  [[nodiscard]] constexpr int place_of(int leaf) const {
    if (leaf < 1 || leaf > leaves_folded() || lacks(leaf)) broken("the insertion has no such leaf");
    int place = leaf;
    for (int before = 1; lacking != 0 && before < leaf; ++before) place -= lacks(before) ? 1 : 0;
    return place;
  }
  friend constexpr bool operator==(Insertion const&, Insertion const&) = default;
};
/// [=B2]: one leaf of paper that the formula has in two places.
struct Identity {
  GatheringAt gathering{}; ///< the gathering of the leaf
  /// the leaf that is the same as another, from 1: as folded, or in its insertion
  int leaf{1};
  /// the insertion with this leaf, as an index among the changes; no value for a leaf as folded
  std::optional<std::uint32_t> insertion{};
  /// the gathering of the other leaf; no value if it is in the same gathering
  std::optional<Signature> name{};
  std::optional<int> other_leaf{}; ///< the leaf in that gathering; no value if only the gathering is named
  friend constexpr bool operator==(Identity const&, Identity const&) = default;
};
/// (B2 blank): a note in words.
struct Note {
  GatheringAt gathering{}; ///< the gathering of the note
  std::uint32_t words{};   ///< index of the note among those of the formula
  friend constexpr bool operator==(Note, Note) = default;
};

/// One of the five kinds of change. The leaf or insertion lies within its gathering, and the formula with the change
/// has the gathering.
class Change {
public:
  /// The kind of change.
  enum class Kind : std::uint8_t { deletion, cancel, insertion, identity, note };

private:
  union {
    Deletion deletion_;
    Cancel cancel_;
    Insertion insertion_;
    Identity identity_;
    Note note_;
  };
  TextSpan text_{};
  Kind kind_{};
  bool doubtful_{};

  static constexpr void at_least(int least, int number) {
    if (number < least) broken("leaves count from 1; leaves are inserted after 0 leaves or more");
  }

public:
  /// Makes a deletion (−A4).
  constexpr Change(Deletion const& deletion, TextSpan text = {}, bool doubtful = false)
      : deletion_{deletion}, text_{text}, kind_{Kind::deletion}, doubtful_{doubtful} {}
  /// Makes a cancel (±B2).
  constexpr Change(Cancel const& cancel, TextSpan text = {}, bool doubtful = false)
      : cancel_{cancel}, text_{text}, kind_{Kind::cancel}, doubtful_{doubtful} {}
  /// Makes an insertion (A3+χ1). Precondition: at least one leaf, after 0 leaves or more.
  constexpr Change(Insertion const& insertion, TextSpan text = {}, bool doubtful = false)
      : insertion_{insertion}, text_{text}, kind_{Kind::insertion}, doubtful_{doubtful} {
    at_least(1, insertion.leaves);
    at_least(0, insertion.after);
  }
  /// Makes an identity [=B2]. Precondition: the leaf is at least 1.
  constexpr Change(Identity const& identity, TextSpan text = {}, bool doubtful = false)
      : identity_{identity}, text_{text}, kind_{Kind::identity}, doubtful_{doubtful} {
    at_least(1, identity.leaf);
  }
  /// Makes a note (B2 blank).
  constexpr Change(Note const& note, TextSpan text = {}, bool doubtful = false)
      : note_{note}, text_{text}, kind_{Kind::note}, doubtful_{doubtful} {}

  /// Returns the kind of change.
  [[nodiscard]] constexpr Kind kind() const noexcept { return kind_; }
  /// Returns true if a question mark follows the change.
  [[nodiscard]] constexpr bool doubtful() const noexcept { return doubtful_; }
  /// Returns the part of the text that states the change.
  [[nodiscard]] constexpr TextSpan text() const noexcept { return text_; }
  /// Returns a pointer to the deletion, or null if this is another kind of change, as std::get_if does.
  [[nodiscard]] constexpr Deletion const* deletion() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return kind_ == Kind::deletion ? &deletion_ : nullptr;
  }
  Deletion const* deletion() const&& = delete; // it would look at what goes
  /// Returns a pointer to the cancel, or null if this is another kind of change, as std::get_if does.
  [[nodiscard]] constexpr Cancel const* cancel() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return kind_ == Kind::cancel ? &cancel_ : nullptr;
  }
  Cancel const* cancel() const&& = delete; // it would look at what goes
  /// Returns a pointer to the insertion, or null if this is another kind of change, as std::get_if does.
  [[nodiscard]] constexpr Insertion const* insertion() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return kind_ == Kind::insertion ? &insertion_ : nullptr;
  }
  Insertion const* insertion() const&& = delete; // it would look at what goes
  /// Returns a pointer to the identity, or null if this is another kind of change, as std::get_if does.
  [[nodiscard]] constexpr Identity const* identity() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return kind_ == Kind::identity ? &identity_ : nullptr;
  }
  Identity const* identity() const&& = delete; // it would look at what goes
  /// Returns a pointer to the note, or null if this is another kind of change, as std::get_if does.
  [[nodiscard]] constexpr Note const* note() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return kind_ == Kind::note ? &note_ : nullptr;
  }
  Note const* note() const&& = delete; // it would look at what goes
  /// Calls `visitor` with the deletion, cancel, insertion, identity or note, and returns its result.
  template <class Visitor> constexpr decltype(auto) visit(Visitor&& visitor) const {
    switch (kind_) {
    case Kind::deletion:
      return visitor(deletion_);
    case Kind::cancel:
      return visitor(cancel_);
    case Kind::insertion:
      return visitor(insertion_);
    case Kind::identity:
      return visitor(identity_);
    case Kind::note:
      break;
    }
    return visitor(note_);
  }
  /// Returns the gathering of the change.
  [[nodiscard]] constexpr GatheringAt gathering() const {
    return visit([](auto const& one) { return one.gathering; });
  }

  /// Returns the change with another part of the text.
  [[nodiscard]] constexpr Change at(TextSpan text) const {
    auto moved = *this;
    moved.text_ = text;
    return moved;
  }

  /// Compares the meaning and the doubt, but not the place in the text.
  friend constexpr bool operator==(Change const& a, Change const& b) {
    if (a.kind_ != b.kind_ || a.doubtful_ != b.doubtful_) return false;
    switch (a.kind_) {
    case Kind::deletion:
      return a.deletion_ == b.deletion_;
    case Kind::cancel:
      return a.cancel_ == b.cancel_;
    case Kind::insertion:
      return a.insertion_ == b.insertion_;
    case Kind::identity:
      return a.identity_ == b.identity_;
    case Kind::note:
      break;
    }
    return a.note_ == b.note_;
  }
};

/// The way in which a change was written, so that it can be written again in the same way.
struct ChangeForm {
  /// The separator between this change and the change before it.
  enum class Separator : std::uint8_t {
    opens, ///< none: it is the first in its parenthesis
    comma, ///< a comma, a semicolon or a blank
    point  ///< a full point, as between conjugate leaves
  };
  std::uint32_t after_run{}; ///< the run after which it is written
  Separator separator{};     ///< the separator before it
  bool leaf_written{};       ///< true for an identity with its leaf on the left: B1=C2
  friend constexpr bool operator==(ChangeForm, ChangeForm) = default;
};

} // namespace v0
} // namespace bifolium
