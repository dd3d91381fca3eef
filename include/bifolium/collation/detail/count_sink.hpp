// SPDX-License-Identifier: MIT
/// The sink of a formula that is counted and not stored.
#pragma once

#include <bifolium/collation/detail/scan/found_change.hpp>
#include <bifolium/collation/detail/scan/found_run.hpp>
#include <bifolium/collation/passage.hpp>
#include <bifolium/fold/format.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A sink that stores only the number of doubts.
struct CountSink {
  static constexpr bool stores = false; ///< false if it is of no use to make a run or change only to pass it on
  std::int64_t warnings{0};
  constexpr void run(FoundRun const&) {}
  constexpr void change(FoundChange const&) {}
  constexpr void blank(LeafOfBook const&) {}
  constexpr void warn(Doubt const&) { ++warnings; }
  constexpr void format(Format) {}
  constexpr void second_format(Format) {}
  constexpr void paper_class(std::uint32_t, std::uint32_t) {}
  constexpr void gathered(Cycle const&) {}
  constexpr void label(std::uint32_t, std::uint32_t, bool) {}
  constexpr void passage(Passage::Kind, std::uint32_t, std::uint32_t) {}
  constexpr void tail(std::uint32_t, std::uint32_t) {}
  constexpr void imperfect() {}
  /// Returns a sink for text that is read a second time and not stored.
  [[nodiscard]] constexpr CountSink nobody() const { return {}; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
