// SPDX-License-Identifier: MIT
/// What was seen of a leaf, from the cells of a row or the fields of a record. Places are read as towns or countries; one
/// that is not known is no place.
#pragma once

#include <bifolium/evidence.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace support {

/// A number with a point, above nothing or not: the observation decides. Nothing when it is no number.
inline std::optional<double> number(std::string_view text) {
  bool const negative = text.starts_with("-");
  if (negative) text.remove_prefix(1);
  double value = 0, place = 1;
  bool point = false, digits = false;
  for (char c : text) {
    if (c == '.' && !point) {
      point = true;
    } else if (c >= '0' && c <= '9') {
      digits = true;
      if (point)
        value += (c - '0') * (place /= 10);
      else
        value = value * 10 + (c - '0');
    } else {
      return std::nullopt;
    }
  }
  if (!digits) return std::nullopt;
  return negative ? -value : value;
}
inline std::optional<bifolium::When> when(std::string_view text) {
  auto const year = [](std::string_view part) -> std::optional<int> {
    if (part.size() < 3 || part.size() > 4) return std::nullopt;
    int value = 0;
    for (char c : part) {
      if (c < '0' || c > '9') return std::nullopt;
      value = value * 10 + (c - '0');
    }
    return value;
  };
  auto const dash = text.find('-');
  auto const from = year(text.substr(0, dash)), to = dash == text.npos ? from : year(text.substr(dash + 1));
  if (!from || !to) return std::nullopt;
  return bifolium::When{*from, *to};
}
/// Where paper of a kind was in use, by country or by a town where much was printed.
inline bifolium::Region region(std::string_view place) {
  using bifolium::Region;
  struct Known {
    std::string_view name;
    Region region;
  };
  constexpr Known known[]{{"Europe", Region::europe},         {"Italy", Region::italy},
                          {"Venice", Region::italy},          {"Rome", Region::italy},
                          {"Florence", Region::italy},        {"Milan", Region::italy},
                          {"Bologna", Region::italy},         {"Britain", Region::britain},
                          {"England", Region::britain},       {"London", Region::britain},
                          {"Oxford", Region::britain},        {"Cambridge", Region::britain},
                          {"Edinburgh", Region::britain},     {"Dublin", Region::britain},
                          {"France", Region::france},         {"Paris", Region::france},
                          {"Lyon", Region::france},           {"Rouen", Region::france},
                          {"Bordeaux", Region::france},       {"Germany", Region::germany},
                          {"Leipzig", Region::germany},       {"Cologne", Region::germany},
                          {"Nuremberg", Region::germany},     {"Augsburg", Region::germany},
                          {"Strasbourg", Region::germany},    {"Netherlands", Region::netherlands},
                          {"Amsterdam", Region::netherlands}, {"Leiden", Region::netherlands},
                          {"Antwerp", Region::netherlands},   {"USA", Region::usa},
                          {"Philadelphia", Region::usa},      {"Boston", Region::usa},
                          {"New York", Region::usa}};
  for (auto const& one : known)
    if (one.name == place) return one.region;
  return Region::anywhere;
}

/// Reads all that is there; `cell(name)` gives the text of a column, empty when there is none. What is wrong goes to
/// `wrong`, each with the name of its column.
template <class Cell> bifolium::Seen read_seen(Cell cell, std::string& wrong) {
  using namespace bifolium;
  Seen seen;
  auto const say = [&](std::string_view name, std::string const& text, std::string_view what) {
    wrong.append(wrong.empty() ? "" : "; ")
        .append(name)
        .append(": found '")
        .append(text)
        .append("' where ")
        .append(what);
  };
  auto const measure = [&](std::string_view name, std::optional<millimetres>& to) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const value = number(text))
      to = millimetres{*value};
    else
      say(name, text, "a number of millimetres should stand");
  };
  auto const word = [&](std::string_view name, auto& to, auto read, std::string_view what) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const value = read(text))
      to = *value;
    else
      say(name, text, what);
  };
  measure("height_mm", seen.height);
  measure("width_mm", seen.width);
  measure("type_height_mm", seen.type_height);
  word("material", seen.material, material_from, "laid, wove, vellum or unknown should stand");
  word("chain_lines", seen.chain_lines, chain_lines_from, "vertical, horizontal, both or unknown should stand");
  word("watermark", seen.watermark, mark_place_from, "a place in the leaf should stand");
  word("state", seen.state, leaf_state_from, "uncut, trimmed, rebound, cropped, inlaid or unknown should stand");
  if (auto const text = cell("gathering_leaves"); !text.empty()) {
    auto const value = number(text);
    if (value && *value == static_cast<int>(*value))
      seen.gathering_leaves = static_cast<int>(*value);
    else
      say("gathering_leaves", text, "a whole number should stand");
  }
  if (auto const text = cell("year"); !text.empty()) {
    seen.year = when(text);
    if (!seen.year) say("year", text, "a year or a range such as 1450-1500 should stand");
  }
  seen.place = region(cell("place"));
  return seen;
}

} // namespace support
