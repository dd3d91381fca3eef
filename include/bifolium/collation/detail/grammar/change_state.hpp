// SPDX-License-Identifier: MIT
/// What the functions that read a parenthesis have in common: where they are in it and what came before.
#pragma once

#include <bifolium/collation/detail/scan/found_change.hpp>
#include <bifolium/collation/detail/scan/found_run.hpp>
#include <bifolium/leaf/token_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The state of reading a parenthesis.
struct ChangeState {
  TokenCursor c{};
  std::uint32_t from{}, end{};           // its contents
  Target current{};                      // the gathering to which a number alone belongs
  Change::Kind sign{Change::Kind::note}; // the sign that applies to a list
  bool any{}, list{}, gone{}, after_words{};
  bool doubtful{};         // words say that the changes of a list are doubtful
  int deletions{};         // how many deletions there are one after another up to here
  FoundChange previous{};  // the last change
  FoundChange before{};    // the one before it
  FoundChange last_gone{}; // the last deletion or cancel
  // the text before the item that is read now
  bool separated{}, spaced{}, semicolon{}, point{}, conjoined{}; // conjoined: by `and` or &
  [[nodiscard]] constexpr bool after(Change::Kind kind) const noexcept { return any && previous.kind == kind; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
