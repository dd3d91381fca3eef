// SPDX-License-Identifier: MIT
/// Text beside the gatherings of a formula: a statement of signing, a number of leaves, a pagination, plates, words.
/// The reader gives the place of such a passage in the text and does not interpret it: record/read_pagination.hpp reads
/// a pagination, record/read_signing.hpp a statement of signing.
#pragma once

#include <bifolium/core/text_span.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// A part of the text of a formula that is not about gatherings.
struct Passage {
  /// The kind of passage, by its first words.
  enum class Kind : std::uint8_t {
    signing,    ///< [$4 signed]
    leaves,     ///< 70 leaves
    pagination, ///< pp. xii 128; [12], 128 p.
    plates,     ///< + 2 leaves of plates
    prose       ///< anything else
  };
  Kind kind{};     ///< the kind
  TextSpan text{}; ///< its bytes, without the semicolon after it
  friend constexpr bool operator==(Passage, Passage) = default;
};

} // namespace v0
} // namespace bifolium
