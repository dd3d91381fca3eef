// SPDX-License-Identifier: MIT
/// The place of printing as a catalogue or an imprint states it. An imprint may name a town in Latin and the cataloguer
/// the same town in brackets; several towns may have one name; books were sold with false places. The result says which
/// places the statement can mean. paper/read_place.hpp makes it from a text.
#pragma once

#include <bifolium/core/character_references.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/paper/place.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// One name in a statement of place.
struct NamedPlace {
  TextSpan at{};               ///< the name, as a part of the text
  std::vector<Place> places{}; ///< the places that the name can mean; none for an invented place such as Cosmopoli
  bool supplied{};             ///< true if the name is in brackets
  bool corrected{};            ///< true after `i.e.` or `that is`: the true place
  bool probable{};             ///< true if the name has a question mark, or a word such as `perhaps`
  bool called_false{};         ///< true if the statement itself calls the name false, or says that it is not the place
  /// true if words beside the name can make it that of another place, which is then not known: `New London`
  bool qualified{};
  bool of_false_imprints{}; ///< true if books printed elsewhere have this name
  friend bool operator==(NamedPlace const&, NamedPlace const&) = default;
};

/// The content of a statement of place.
struct StatedPlace {
  std::vector<NamedPlace> named{}; ///< the names, in the order of the text
  bool not_known{};                ///< true if the statement says that the place is unknown: `[S.l.]`
  std::vector<TextSpan> unread{};  ///< words that neither name a place nor describe one

  /// Returns the places that the statement can mean: one if the name belongs to one town, several if it stays
  /// ambiguous, none if no place is known.
  [[nodiscard]] std::vector<Place> const& places() const& noexcept BIFOLIUM_LIFETIMEBOUND { return places_; }
  /// Returns the places of a temporary statement by value.
  [[nodiscard]] std::vector<Place> places() && { return static_cast<std::vector<Place>&&>(places_); }
  /// Returns the smallest region that includes all the places the statement can mean, or anywhere if no place is known.
  [[nodiscard]] Region region() const {
    if (places_.empty()) return Region::anywhere;
    auto common = places_.front().region;
    for (auto const& place : places_) common = common_region(common, place.region);
    return common;
  }
  /// Returns the doubts: ambiguous_place, fictitious_place, place_doubted, place_qualified.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND { return warnings_; }
  /// Returns the doubts of a temporary statement by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<std::vector<Error>&&>(warnings_); }

  /// Sets the places that are meant. Readers of places call it.
  void settle(std::vector<Place> const& places) { places_ = places; }
  /// Adds a doubt. Readers of places call it.
  void warn(Error const& doubt) { warnings_.push_back(doubt); }
  /// Moves its places from a text of characters into the text with the references. Readers of places call it.
  void move_back(TextOfCharacters const& text) {
    for (auto& one : named) one.at = text.original(one.at);
    for (auto& span : unread) span = text.original(span);
    text.move_back(warnings_);
  }
  friend bool operator==(StatedPlace const&, StatedPlace const&) = default;

private:
  std::vector<Place> places_{};
  std::vector<Error> warnings_{};
};

} // namespace v0
} // namespace bifolium
