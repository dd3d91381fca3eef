// SPDX-License-Identifier: MIT
/// Words beside the name of a place. Some make it that of another town - New London; Paris, Kentucky - and then the town that
/// is known must not be taken. Others say that it is not the place, or perhaps, or this or another. Words of printing say
/// nothing of it: Impressum Venetiis. Words are keys, as place_key.hpp makes them: w is uu, v is u, j is i.
///
/// The abbreviations of states are those in use before the codes of two capitals: common practice, no source.
#pragma once

#include <cstddef>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

inline constexpr char const* words_of_place_denial[]{"not", "non", "nicht", "kein", "neither",
                                                     "nor", "ni",  "niet",  "ikke"};
inline constexpr char const* words_of_place_doubt[]{"perhaps",    "probably", "prob",       "possibly",   "presumably",
                                                    "apparently", "supposed", "uielleicht", "uermutlich", "uuohl",
                                                    "forse",      "quizas",   "etre"}; // peut-être
inline constexpr char const* words_of_other_place[]{"or", "oder", "ou", "uel", "aut", "siue", "seu"};
/// Parts of the United States, each after the other: the name, then the abbreviations.
inline constexpr char const* parts_of_united_states[]{"alabama",
                                                      "ala",
                                                      "arkansas",
                                                      "ark",
                                                      "california",
                                                      "calif",
                                                      "colorado",
                                                      "colo",
                                                      "connecticut",
                                                      "conn",
                                                      "delauuare",
                                                      "florida",
                                                      "fla",
                                                      "georgia",
                                                      "ga",
                                                      "illinois",
                                                      "indiana",
                                                      "iouua",
                                                      "kansas",
                                                      "kan",
                                                      "kentucky",
                                                      "ky",
                                                      "louisiana",
                                                      "maine",
                                                      "maryland",
                                                      "md",
                                                      "massachusetts",
                                                      "mass",
                                                      "michigan",
                                                      "mich",
                                                      "minnesota",
                                                      "minn",
                                                      "mississippi",
                                                      "missouri",
                                                      "nebraska",
                                                      "neb",
                                                      "ohio",
                                                      "oregon",
                                                      "pennsyluania",
                                                      "pa",
                                                      "penn",
                                                      "penna",
                                                      "tennessee",
                                                      "tenn",
                                                      "texas",
                                                      "tex",
                                                      "uermont",
                                                      "uirginia",
                                                      "ua",
                                                      "uuisconsin",
                                                      "uuis",
                                                      "ny",
                                                      "ni",
                                                      "nh",
                                                      "nc",
                                                      "sc",
                                                      "ri",
                                                      "dc",
                                                      "neuuhampshire",
                                                      "neuuiersey",
                                                      "northcarolina",
                                                      "southcarolina",
                                                      "rhodeisland",
                                                      "uuestuirginia"};

template <std::size_t N> constexpr bool is_key_of(char const* const (&row)[N], std::string_view key) noexcept {
  for (std::string_view const one : row)
    if (one == key) return true;
  return false;
}
/// Returns true for a number in figures or Roman numerals, by its key.
constexpr bool is_number_key(std::string_view key) noexcept {
  return key.find_first_not_of("0123456789") == key.npos || key.find_first_not_of("iuxlcdm") == key.npos;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
