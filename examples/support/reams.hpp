// SPDX-License-Identifier: MIT
/// The reams that records and tables may name by their sheets.
#pragma once

#include <bifolium/paper/count.hpp>

#include <optional>
#include <string>
#include <string_view>

namespace support {

/// What to answer where a ream is none of them.
inline constexpr auto reams_known = "472, 480, 500, 516, 1000";

inline std::optional<bifolium::ReamCount> ream_of(std::string_view sheets) {
  using namespace bifolium;
  for (auto const& known : {reams::from_mill, reams::of_480, reams::of_500, reams::of_516, reams::neuries})
    if (std::to_string(known.ream) == sheets) return known;
  return std::nullopt;
}

} // namespace support
