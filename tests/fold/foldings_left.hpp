// SPDX-License-Identifier: MIT
/// The foldings left by leaves that were seen, and the attested schemes among them.
#pragma once

#include <bifolium/fold.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>

#include "check.hpp"

#include <algorithm>
#include <string_view>

namespace foldings {

using namespace bifolium;

inline FoldingsLeft left(std::string_view text) {
  auto const gatherings = read_seen_leaves(text);
  REQUIRE(gatherings);
  return *foldings_showing(*gatherings);
}
inline bool has_scheme(FoldingGroup const& group, Attested scheme) {
  return std::find(group.attested.begin(), group.attested.end(), scheme) != group.attested.end();
}
inline bool has_scheme(FoldingsLeft const& all, Attested scheme) {
  return std::any_of(all.groups.begin(), all.groups.end(),
                     [&](auto const& group) { return has_scheme(group, scheme); });
}

} // namespace foldings
