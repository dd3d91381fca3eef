// SPDX-License-Identifier: MIT
/// Decides how many repairs an answer has, and how unlikely a repair in it may be. The limits are the same for a book
/// in one part and in several.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/audit_weights.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class RepairList {
  static constexpr std::size_t most = 10, always_told = 3;
  static constexpr double least_share = .0005; // estimated: beyond the first three, less is not worth reading
  double none_of_these_;                       // below it an unknown mistake explains everything better
  Audit& audit_;

public:
  /// Begins with no repair.
  RepairList(Audit& audit, AuditWeights const& weights) : none_of_these_{weights.none_of_these}, audit_{audit} {
    audit_.share_none = 1;
  }
  /// Returns true if a repair of this share belongs to the answer. Those that come after it have smaller shares, so
  /// that none of them does either if this does not.
  [[nodiscard]] bool takes(double share) const {
    return audit_.repairs.size() < most &&
           share >= (audit_.repairs.size() < always_told ? none_of_these_ : least_share);
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
