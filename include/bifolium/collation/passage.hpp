// SPDX-License-Identifier: MIT
/// What is written beside the gatherings of a formula and is none: a statement of signing, a number of leaves, a pagination,
/// plates, words. It is handed over by its place in the text and never guessed at: a pagination is read by
/// record/read_pagination.hpp, a statement of signing by record/read_signing.hpp.
#pragma once

#include <bifolium/core/text_span.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// A part of the text of a formula that is not of gatherings.
struct Passage {
  /// What it seems to be.
  enum class Kind : std::uint8_t {
    signing,    ///< [$4 signed]
    leaves,     ///< 70 leaves
    pagination, ///< pp. xii 128; [12], 128 p.
    plates,     ///< + 2 leaves of plates
    prose       ///< anything else
  };
  Kind kind{};     ///< what it seems to be
  TextSpan text{}; ///< its bytes, without the semicolon after it
  friend constexpr bool operator==(Passage, Passage) = default;
};

} // namespace v0
} // namespace bifolium
