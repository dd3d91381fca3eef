// SPDX-License-Identifier: MIT
/// What a formula says of leaves beyond its runs: a leaf deleted (−A4), cancelled (±B2), inserted (A3+χ1.2), said to be the
/// same as another [=B2], or described in words (B2 blank). A `Change` is exactly one of these five and is valid from the
/// moment it is made. What it means is here; how it was written (one parenthesis or two, a comma or a point) is kept beside
/// it in a `ChangeForm`, for writing alone.
#pragma once

#include <bifolium/collation/parts.hpp>
#include <bifolium/core/text_span.hpp>

#include <cstdint>
#include <new>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// (−A4): the ideal copy lacks the leaf, or the leaves (−A2-4).
struct Deletion {
  GatheringAt gathering{}; ///< the gathering that is changed
  int leaf{};              ///< the first, as folded, from 1; 0 for every leaf of the gathering
  int last{leaf};          ///< the last; as `leaf` where it is one
  /// How many leaves. `folded`: those of the gathering.
  [[nodiscard]] constexpr int leaves(int folded) const noexcept { return leaf == 0 ? folded : last - leaf + 1; }
  friend constexpr bool operator==(Deletion, Deletion) = default;
};
/// (±B2): the leaf, or the leaves, were cut out and replaced. The number of leaves stays.
struct Cancel {
  GatheringAt gathering{}; ///< the gathering that is changed
  int leaf{};              ///< the first, as folded, from 1; 0 for every leaf of the gathering
  int last{leaf};          ///< the last; as `leaf` where it is one
  bool of_fold{};          ///< replaced together with its conjugate, as one fold (±B4.5) or with the whole gathering
  /// How many leaves. `folded`: those of the gathering.
  [[nodiscard]] constexpr int leaves(int folded) const noexcept { return leaf == 0 ? folded : last - leaf + 1; }
  friend constexpr bool operator==(Cancel, Cancel) = default;
};
/// How inserted leaves are joined among themselves.
enum class Joined : std::uint8_t {
  apart,     ///< single leaves (χ1,2), or nothing is said
  conjugate, ///< folds (χ1.2)
  gathering  ///< a gathering of its own (A⁴)
};
/// (A3+χ1.2): leaves that were not folded with the gathering.
struct Insertion {
  GatheringAt gathering{}; ///< the gathering that is changed
  int after{};             ///< the leaf they follow, as folded; 0 before the first
  int leaves{1};           ///< how many
  Joined joined{};         ///< how they are joined
  bool named{};            ///< the formula gives a name: χ1, a⁴, "c3"
  bool named_by_place{};   ///< (+8*): called after the leaf they follow, with a star
  Signature name{};        ///< the name; of no meaning without one
  int first_figure{};      ///< the figure after the name or before the star; 0 where there is none
  friend constexpr bool operator==(Insertion const&, Insertion const&) = default;
};
/// [=B2]: one leaf of paper, which the formula has in two places.
struct Identity {
  GatheringAt gathering{}; ///< the gathering that is changed
  /// The leaf that is said to be another: as folded, or which leaf of the insertion, from 1.
  int leaf{1};
  /// The insertion that brought it, by its number among the changes; none for a leaf as folded.
  std::optional<std::uint32_t> insertion{};
  bool named{};     ///< the other leaf is of the gathering `name`; else of the same gathering
  Signature name{}; ///< of no meaning without one
  int other_leaf{}; ///< the leaf in that gathering; 0 where only the gathering is named
  friend constexpr bool operator==(Identity const&, Identity const&) = default;
};
/// (B2 blank): words.
struct Note {
  GatheringAt gathering{}; ///< the gathering that is changed
  std::uint32_t words{};   ///< which of the notes of the formula
  friend constexpr bool operator==(Note, Note) = default;
};

/// One of the five. A leaf or insertion lies within its gathering; the formula that holds the change has the gathering.
class Change {
public:
  /// Which of the five it is.
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
    if (number < least) broken("leaves are counted from 1; 0 is before the first, or all of them");
  }

public:
  /// (−A4). pre: leaf from 1, or 0 for all.
  constexpr Change(Deletion const& deletion, TextSpan text = {}, bool doubtful = false)
      : deletion_{deletion}, text_{text}, kind_{Kind::deletion}, doubtful_{doubtful} {
    at_least(0, deletion.leaf);
    at_least(deletion.leaf, deletion.last);
  }
  /// (±B2). pre: leaf from 1, or 0 for all.
  constexpr Change(Cancel const& cancel, TextSpan text = {}, bool doubtful = false)
      : cancel_{cancel}, text_{text}, kind_{Kind::cancel}, doubtful_{doubtful} {
    at_least(0, cancel.leaf);
    at_least(cancel.leaf, cancel.last);
  }
  /// (A3+χ1). pre: one leaf or more.
  constexpr Change(Insertion const& insertion, TextSpan text = {}, bool doubtful = false)
      : insertion_{insertion}, text_{text}, kind_{Kind::insertion}, doubtful_{doubtful} {
    at_least(1, insertion.leaves);
    at_least(0, insertion.after);
  }
  /// [=B2]. pre: leaf from 1.
  constexpr Change(Identity const& identity, TextSpan text = {}, bool doubtful = false)
      : identity_{identity}, text_{text}, kind_{Kind::identity}, doubtful_{doubtful} {
    at_least(1, identity.leaf);
  }
  /// (B2 blank).
  constexpr Change(Note const& note, TextSpan text = {}, bool doubtful = false)
      : note_{note}, text_{text}, kind_{Kind::note}, doubtful_{doubtful} {}

  /// Which of the five kinds of change this is.
  [[nodiscard]] constexpr Kind kind() const noexcept { return kind_; }
  /// A question mark comes after it.
  [[nodiscard]] constexpr bool doubtful() const noexcept { return doubtful_; }
  /// The part of the text that says it.
  [[nodiscard]] constexpr TextSpan text() const noexcept { return text_; }
  /// The deletion, or a null pointer where it is another change.
  [[nodiscard]] constexpr Deletion const* deletion() const noexcept {
    return kind_ == Kind::deletion ? &deletion_ : nullptr;
  }
  /// The cancel, or a null pointer where it is another change.
  [[nodiscard]] constexpr Cancel const* cancel() const noexcept { return kind_ == Kind::cancel ? &cancel_ : nullptr; }
  /// The insertion, or a null pointer where it is another change.
  [[nodiscard]] constexpr Insertion const* insertion() const noexcept {
    return kind_ == Kind::insertion ? &insertion_ : nullptr;
  }
  /// The identity, or a null pointer where it is another change.
  [[nodiscard]] constexpr Identity const* identity() const noexcept {
    return kind_ == Kind::identity ? &identity_ : nullptr;
  }
  /// The note, or a null pointer where it is another change.
  [[nodiscard]] constexpr Note const* note() const noexcept { return kind_ == Kind::note ? &note_ : nullptr; }
  /// Calls `visitor` with the one of the five that it is, and gives what that gives.
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
  /// The gathering it is said of.
  [[nodiscard]] constexpr GatheringAt gathering() const {
    return visit([](auto const& one) { return one.gathering; });
  }

  /// What is said is compared, and the doubt; not the place in the text.
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

/// How a change was written, so that it can be written so again.
struct ChangeForm {
  /// What joins it to the change before it.
  enum class Separator : std::uint8_t {
    opens, ///< nothing: it is the first in its parenthesis
    comma, ///< a comma, a semicolon or a blank
    point  ///< a full point, as between conjugate leaves
  };
  std::uint32_t after_run{}; ///< the run after which it is written
  Separator separator{};     ///< what comes before it
  bool leaf_written{};       ///< an identity with its leaf on the left: B1=C2
  friend constexpr bool operator==(ChangeForm, ChangeForm) = default;
};

} // namespace v0
} // namespace bifolium
