// SPDX-License-Identifier: MIT
/// Keeps the repairs of an answer, the most likely first: how many there are, and how unlikely one may be. A book in one
/// part and one in several are answered by the same limits.
#pragma once

#include <bifolium/book/audit.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class RepairList {
  static constexpr std::size_t most = 10, always_told = 3;
  static constexpr double least_share = .0005; // estimated: beyond the first three, less is not worth reading
  static constexpr double least_of_all = 1e-5; // below it an unknown mistake explains everything better
  Audit& audit_;

public:
  /// Begins with no repair.
  explicit RepairList(Audit& audit) : audit_{audit} { audit_.share_none = 1; }
  /// Returns true if a repair of this share belongs to the answer. Those that come after it have smaller shares, so that
  /// none of them does either if this does not.
  [[nodiscard]] bool takes(double share) const {
    return audit_.repairs.size() < most && share >= (audit_.repairs.size() < always_told ? least_of_all : least_share);
  }
  void add(Repair&& repair, double share) {
    repair.share = share;
    audit_.share_none = audit_.share_none > share ? audit_.share_none - share : 0;
    audit_.repairs.push_back(static_cast<Repair&&>(repair));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
