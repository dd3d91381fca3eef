// SPDX-License-Identifier: MIT
/// All names of places in the order of their keys, made from the tables once in a program.
#pragma once

#include <bifolium/paper/detail/place_key.hpp>
#include <bifolium/paper/detail/places_germany_and_east.hpp>
#include <bifolium/paper/detail/places_italy_france_spain.hpp>
#include <bifolium/paper/detail/places_north_and_overseas.hpp>

#include <algorithm>
#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PlaceIndex {
public:
  static constexpr std::uint16_t no_town = 0xFFFF;
  /// A name of one place. `no_town` marks a name that only false imprints use.
  struct Entry {
    std::uint32_t from{}, size{}; // position and length of its key in keys_
    std::uint16_t place{};
  };

private:
  std::vector<Place> places_{};
  std::string keys_{};
  std::vector<Entry> entries_{};
  std::size_t countries_{}; // number of countries, which are the first places

  [[nodiscard]] std::string_view key(Entry const& entry) const {
    return std::string_view{keys_}.substr(entry.from, entry.size);
  }
  void add(std::string_view name, std::uint16_t place) {
    auto const from = keys_.size();
    append_place_key(keys_, name);
    entries_.push_back({static_cast<std::uint32_t>(from), static_cast<std::uint32_t>(keys_.size() - from), place});
  }
  void add_names(std::string_view names, std::uint16_t place) {
    while (!names.empty()) {
      auto const end = names.find(';');
      add(names.substr(0, end), place);
      names.remove_prefix(end == names.npos ? names.size() : end + 1);
    }
  }
  void add_rows(std::span<PlaceRow const> rows) {
    for (auto const& row : rows) {
      auto const place = static_cast<std::uint16_t>(places_.size());
      places_.push_back({row.name, row.country, row.region});
      std::string_view const name = row.name;
      add(name.substr(0, name.find(" (")), place);
      add_names(row.names, place);
      add_names(row.from_memory, place);
    }
  }
  [[nodiscard]] bool before(Entry const& a, Entry const& b) const {
    auto const one = key(a), other = key(b);
    return one != other ? one < other : a.place < b.place;
  }

public:
  PlaceIndex() {
    add_rows(countries);
    countries_ = places_.size();
    add_rows(places_of_italy_france_spain);
    add_rows(places_of_germany_and_east);
    add_rows(places_of_north_and_overseas);
    for (auto const* name : false_imprints) add(name, no_town);
    std::sort(entries_.begin(), entries_.end(), [this](auto const& a, auto const& b) { return before(a, b); });
    auto const same = [this](auto const& a, auto const& b) { return a.place == b.place && key(a) == key(b); };
    entries_.erase(std::unique(entries_.begin(), entries_.end(), same), entries_.end());
  }

  /// Returns the places with a name.
  [[nodiscard]] std::span<Entry const> find(std::string_view wanted) const {
    auto const from = std::lower_bound(entries_.begin(), entries_.end(), wanted,
                                       [this](auto const& entry, auto name) { return key(entry) < name; });
    auto to = from;
    while (to != entries_.end() && key(*to) == wanted) ++to;
    return {from, to};
  }
  [[nodiscard]] Place const& place(Entry const& entry) const { return places_[entry.place]; }
  [[nodiscard]] bool is_country(Entry const& entry) const { return entry.place < countries_; }
};

inline PlaceIndex const& place_index() {
  static PlaceIndex const index;
  return index;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
