// SPDX-License-Identifier: MIT
/// What was seen of a leaf, from the cells of a row or the fields of a record. Places are read as towns or countries; one
/// that is not known is no place.
#pragma once

#include <bifolium/core/message.hpp>
#include <bifolium/evidence.hpp>

#include "decimal.hpp"
#include "wrong.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace support {

/// Where paper of a kind was in use, by country or by a town where much was printed: the first that is named, as a whole
/// word, so that "Brussels (false Cologne)" is Brussels. No place that is known is no place.
inline bifolium::Region region(std::string_view place) {
  using bifolium::Region;
  struct Known {
    std::string_view name;
    Region region;
  };
  constexpr Known known[]{{"Italy", Region::italy},          {"Venice", Region::italy},
                          {"Rome", Region::italy},           {"Florence", Region::italy},
                          {"Milan", Region::italy},          {"Bologna", Region::italy},
                          {"Naples", Region::italy},         {"Padua", Region::italy},
                          {"Ferrara", Region::italy},        {"Turin", Region::italy},
                          {"Brescia", Region::italy},        {"Genoa", Region::italy},
                          {"Parma", Region::italy},          {"Pavia", Region::italy},
                          {"Verona", Region::italy},         {"Vicenza", Region::italy},
                          {"Britain", Region::britain},      {"England", Region::britain},
                          {"Scotland", Region::britain},     {"Ireland", Region::britain},
                          {"London", Region::britain},       {"Oxford", Region::britain},
                          {"Cambridge", Region::britain},    {"Edinburgh", Region::britain},
                          {"Glasgow", Region::britain},      {"Dublin", Region::britain},
                          {"York", Region::britain},         {"Bath", Region::britain},
                          {"Birmingham", Region::britain},   {"France", Region::france},
                          {"Paris", Region::france},         {"Lyon", Region::france},
                          {"Lyons", Region::france},         {"Rouen", Region::france},
                          {"Bordeaux", Region::france},      {"Toulouse", Region::france},
                          {"Troyes", Region::france},        {"Strasbourg", Region::france},
                          {"Avignon", Region::france},       {"Caen", Region::france},
                          {"Dijon", Region::france},         {"Orleans", Region::france},
                          {"Poitiers", Region::france},      {"Germany", Region::germany},
                          {"Leipzig", Region::germany},      {"Cologne", Region::germany},
                          {"Nuremberg", Region::germany},    {"Augsburg", Region::germany},
                          {"Frankfurt", Region::germany},    {"Mainz", Region::germany},
                          {"Basel", Region::germany},        {"Vienna", Region::germany},
                          {"Wittenberg", Region::germany},   {"Hamburg", Region::germany},
                          {"Berlin", Region::germany},       {"Ulm", Region::germany},
                          {"Speyer", Region::germany},       {"Netherlands", Region::netherlands},
                          {"Holland", Region::netherlands},  {"Amsterdam", Region::netherlands},
                          {"Leiden", Region::netherlands},   {"Leyden", Region::netherlands},
                          {"Antwerp", Region::netherlands},  {"Rotterdam", Region::netherlands},
                          {"Utrecht", Region::netherlands},  {"Louvain", Region::netherlands},
                          {"Brussels", Region::netherlands}, {"Bruges", Region::netherlands},
                          {"Deventer", Region::netherlands}, {"Haarlem", Region::netherlands},
                          {"Liege", Region::netherlands},    {"USA", Region::usa},
                          {"United States", Region::usa},    {"Philadelphia", Region::usa},
                          {"Boston", Region::usa},           {"New York", Region::usa},
                          {"Baltimore", Region::usa},        {"Hartford", Region::usa},
                          {"Europe", Region::europe}};
  auto const letter = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<signed char>(c) < 0;
  };
  auto found = Region::anywhere;
  auto first = place.npos;
  for (auto const& one : known)
    for (auto at = place.find(one.name); at != place.npos; at = place.find(one.name, at + 1)) {
      auto const end = at + one.name.size();
      if ((at > 0 && letter(place[at - 1])) || (end < place.size() && letter(place[end]))) continue;
      if (at < first) first = at, found = one.region;
      break;
    }
  return found;
}

/// The words for a T, as a sentence lists them: laid, wove, vellum or unknown.
template <class T> std::string one_of() {
  auto const& words = bifolium::words_of<T>();
  std::string list;
  for (auto const& one : words)
    list.append(&one == std::begin(words) ? "" : &one + 1 == std::end(words) ? " or " : ", ").append(one.word);
  return list;
}

/// Reads all that is there; `cell(name)` gives the text of a column, empty when there is none. What is wrong goes to
/// `wrong`, each with the name of its column.
template <class Cell> bifolium::LeafEvidence read_seen(Cell cell, Wrong& wrong) {
  using namespace bifolium;
  LeafEvidence seen;
  auto const say = [&](std::string_view name, std::string const& text, std::string_view what, Problem problem) {
    wrong.add(name, "found '" + text + "' where " + std::string{what} + " is expected", problem);
  };
  auto const measure = [&](std::string_view name, std::optional<millimetres>& to) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const number = decimal(text); number.value)
      to = millimetres{number.value->as_double()};
    else
      say(name, text, "a number of millimetres", Problem::not_a_fraction);
  };
  auto const word = [&]<class T>(std::string_view name, T& to) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const value = read_word<T>(text))
      to = *value;
    else
      say(name, text, one_of<T>(), Problem::unknown_word);
  };
  measure("height_mm", seen.height);
  measure("width_mm", seen.width);
  measure("type_height_mm", seen.type_height);
  word("material", seen.material);
  word("chain_lines", seen.chain_lines);
  word("watermark", seen.watermark);
  word("state", seen.state);
  word("countermark", seen.countermark);
  word("head_edge", seen.head);
  word("tail_edge", seen.tail);
  word("fore_edge", seen.fore_edge);
  word("point_hole", seen.point_hole);
  auto const text_of = [&](std::string_view name, auto read, auto keep) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const value = read(text))
      keep(*value);
    else
      wrong.add(name, value.error());
  };
  text_of("gathering_leaves", read_gathering_sizes, [&](GatheringSizes const& sizes) {
    seen.gathering_leaves = sizes.leaves;
    seen.alternating_with = sizes.alternating_with;
  });
  text_of("leaves", read_leaves_seen, [&](EvidenceOfLeaves const& leaves) { seen.leaves = leaves; });
  text_of("year", read_years, [&](When years) { seen.year = years; });
  seen.place = region(cell("place"));
  return seen;
}

} // namespace support
