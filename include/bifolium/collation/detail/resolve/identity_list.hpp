// SPDX-License-Identifier: MIT
/// Finds the leaf of which an identity is said. An identity tells that a leaf was printed as another, [=L4]. It belongs to the
/// change before it, or else to the gathering; the identities of a list belong to one leaf after another.
#pragma once

#include <bifolium/collation/change.hpp>
#include <bifolium/collation/detail/scan/found_change.hpp>
#include <bifolium/leaf/signature_key.hpp>

#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the figure of a change, if it has one.
[[nodiscard]] inline std::optional<int> stated_figure(FoundChange const& found) {
  return found.figure > 0 ? std::optional{found.figure} : std::nullopt;
}

class IdentityList {
  std::size_t list_{0}; // the change with which the list begins
  int list_leaf_{0};    // the leaf written before it

public:
  /// Returns the identity that comes after these changes.
  [[nodiscard]] Identity next(FoundChange const& found, std::vector<Change> const& changes, std::string_view text,
                              Letters letters) {
    bool const goes_on = !changes.empty() && changes.back().identity() != nullptr &&
                         found.form.separator != ChangeForm::Separator::opens;
    if (!goes_on) list_ = changes.size(), list_leaf_ = found.first;
    auto place = static_cast<int>(changes.size() - list_);
    Identity one{found.gathering, (list_leaf_ == 0 ? 1 : list_leaf_) + place, {}, {}, stated_figure(found)};
    if (found.named) one.name = signature_of(found.name, text, letters);
    if (found.of_change && list_ > 0) {
      auto const last = list_ - 1;
      auto at = last; // of χ1.2,3[=L4] the first leaf is meant
      auto const is_piece = [&](std::size_t i) {
        auto const* const piece = changes[i].insertion();
        return piece != nullptr && piece->joined != Joined::gathering && changes[i].text() == changes[last].text();
      };
      while (at > 0 && is_piece(at) && is_piece(at - 1)) --at;
      for (; at < last; ++at) {
        auto const* const piece = changes[at].insertion();
        if (piece == nullptr || place < piece->leaves) break;
        place -= piece->leaves;
      }
      auto const& of = changes[at];
      auto const leaf = of.deletion() != nullptr ? of.deletion()->leaves.first()
                        : of.cancel() != nullptr ? of.cancel()->leaves.first()
                                                 : 1;
      one.leaf = leaf + place;
      if (of.insertion() != nullptr) one.insertion = static_cast<std::uint32_t>(at);
    }
    return one;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
