// SPDX-License-Identifier: MIT
/// Checks the leaves that a formula says to be the same. [=B2] says that one leaf of paper was printed in one place and
/// bound in another. So one of the two places has the leaf and the other lacks it: else it would be counted twice, or
/// not at all, and the book would need a sheet that is not whole. And a leaf that went elsewhere leaves its other half
/// behind, so it cannot be half of a fold in both places. What is named may come later in the text; therefore the check
/// is made at its end.
#pragma once

#include <bifolium/collation/detail/grammar/note_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class SameLeaves : protected NoteGrammar<Sink> {
protected:
  using Base = NoteGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::runs_, Base::gone_, Base::find, Base::is_inserted, Base::as_cancelled;

  /// In the place of the leaf of an identity: it is deleted, or it was not folded with a gathering.
  static constexpr int same_deleted = -1, same_added = 0;
  /// Records an identity. `same` is the leaf that is the same as the other one, or one of the values above.
  constexpr void same_leaf(FoundChange const& identity, int same, std::uint32_t from, std::uint32_t to) {
    auto const& name = identity.name;
    same_.push_back({name.multiple, name.text_from, from, to, identity.gathering.run, name.series, name.letter,
                     name.text_size, identity.named, identity.figure, same, identity.gathering.index});
  }
  /// Warns of identities that the formula contradicts.
  constexpr void check_identities() {
    for (std::size_t i = 0; i < same_.size(); ++i) {
      mark(here(same_[i]), same_[i].same);
      if (auto const other = there(same_[i])) mark(*other, same_[i].leaf);
    }
    for (std::size_t i = 0; i < same_.size(); ++i)
      if (auto const doubt = doubt_of(same_[i]); doubt != Problem::none) warn(doubt, same_[i].from, same_[i].to);
  }

private:
  struct Same { // without initialisers, as SmallList requires
    std::uint32_t multiple, text_from, from, to, run;
    std::uint16_t series;
    std::uint8_t letter, text_size;
    bool named; // else the other leaf is of the same gathering
    int leaf, same;
    std::int64_t index;
    [[nodiscard]] constexpr SignatureKey name() const { return {series, letter, text_size, multiple, text_from}; }
  };
  /// What a place of the book has: the leaf that was folded there, none, the leaf in the place of another, or one more.
  enum class Place : std::uint8_t { folded, gone, replaced, added };
  SmallList<Same, 32> same_;

  /// Returns the number under which the leaves that an identity names are kept. No gathering has it.
  [[nodiscard]] static constexpr std::int64_t as_same(std::int64_t ordinal) noexcept { return INT64_MIN + ordinal; }
  [[nodiscard]] constexpr Target here(Same const& one) const { return runs_.target({one.run, one.index}); }
  /// Returns the gathering of the other leaf, or no value if the formula has none with that name.
  [[nodiscard]] constexpr std::optional<Target> there(Same const& one) {
    return one.named ? find(one.name()) : std::optional{here(one)};
  }
  constexpr void mark(Target const& target, int leaf) {
    if (leaf > 0 && leaf <= target.leaves)
      static_cast<void>(gone_.take_out(as_same(target.ordinal), target.leaves, leaf, leaf));
  }
  [[nodiscard]] constexpr Problem doubt_of(Same const& one) {
    auto const other = there(one);
    bool const unknown = other ? one.leaf > other->leaves : !is_inserted(one.name());
    if (unknown || one.same > here(one).leaves) return Problem::identity_not_in_formula;
    auto const at = one.same > 0               ? place_of(here(one), one.same)
                    : one.same == same_deleted ? Place::gone
                                               : Place::added;
    auto const from = other ? place_of(*other, one.leaf) : Place::added;
    if (at == Place::replaced || from == Place::replaced) return Problem::none;
    if ((at == Place::gone) == (from == Place::gone)) return Problem::identity_in_both_places;
    bool const half = one.leaf > 0 && ((at == Place::folded && is_half_of_fold(here(one), one.same)) ||
                                       (from == Place::folded && is_half_of_fold(*other, one.leaf)));
    return half ? Problem::identity_of_half_fold : Problem::none;
  }
  /// Returns what is at the place of a leaf. If no leaf is named (=π), it tells whether one of the gathering is gone.
  [[nodiscard]] constexpr Place place_of(Target const& target, int leaf) const {
    auto const has = [&](std::int64_t ordinal) {
      return leaf > 0 ? gone_.is_out(ordinal, leaf) : gone_.is_any_out(ordinal, target.leaves);
    };
    if (!has(target.ordinal)) return Place::folded;
    return has(as_cancelled(target.ordinal)) ? Place::replaced : Place::gone;
  }
  /// Returns true if the leaf is folded with another that is in its place too, and that no identity names.
  [[nodiscard]] constexpr bool is_half_of_fold(Target const& target, int leaf) const {
    auto const other = target.leaves + 1 - leaf;
    return other != leaf && !gone_.is_out(target.ordinal, other) && !gone_.is_out(as_same(target.ordinal), other);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
