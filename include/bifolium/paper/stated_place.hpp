// SPDX-License-Identifier: MIT
/// The place of printing as a catalogue or an imprint states it. An imprint may name one town in Latin and the cataloguer
/// the same town in brackets; a name may belong to several towns; books were sold with false places. What the statement
/// settles is settled, and what it leaves open stays open. Made by reading a text: paper/read_place.hpp.
#pragma once

#include <bifolium/core/error.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/paper/place.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// One name in a statement of place.
struct NamedPlace {
  TextSpan at{};               ///< the name, in bytes of the text
  std::vector<Place> places{}; ///< the places it may mean; none for a place that never was, such as Cosmopoli
  bool supplied{};             ///< in brackets
  bool corrected{};            ///< after `i.e.` or `that is`: the true place
  bool probable{};             ///< with a question mark
  bool called_false{};         ///< the statement itself calls it false
  bool of_false_imprints{};    ///< a name that books printed elsewhere bear
};

/// What a statement of place says.
struct StatedPlace {
  std::vector<NamedPlace> named{}; ///< in the order of the text
  bool not_known{};                ///< the statement says that no place is known: `[S.l.]`
  std::vector<TextSpan> unread{};  ///< words that are neither names of places nor about them

  /// The places it may mean: one where the name is of one town only, several where it stays ambiguous, none where no place
  /// is known.
  [[nodiscard]] std::vector<Place> const& places() const noexcept { return places_; }
  /// The smallest region that holds all the places it may mean; anywhere where none is known.
  [[nodiscard]] Region region() const {
    if (places_.empty()) return Region::anywhere;
    auto common = places_.front().region;
    for (auto const& place : places_) common = common_region(common, place.region);
    return common;
  }
  /// What is doubtful: ambiguous_place, fictitious_place.
  [[nodiscard]] std::vector<Error> const& warnings() const noexcept { return warnings_; }

  /// Settles which places are meant; for the reader.
  void settle(std::vector<Place> const& places) { places_ = places; }
  /// Adds a doubt; for the reader.
  void warn(Error const& doubt) { warnings_.push_back(doubt); }

private:
  std::vector<Place> places_{};
  std::vector<Error> warnings_{};
};

} // namespace v0
} // namespace bifolium
