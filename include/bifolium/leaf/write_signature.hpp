// SPDX-License-Identifier: MIT
/// Writes signatures. It is separate from reading them, so that code that only writes names of gatherings includes
/// less.
#pragma once

#include <bifolium/core/raised.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/leaf/signature.hpp>

namespace bifolium {
inline namespace v0 {

/// Writes a signature as bibliographers do: 2B, ²πA, [par.]. The result has at most 64 bytes.
/// Example: `to_text(Signature::letter('A', 2)) == "2A"`.
constexpr ShortText<64> to_text(Signature const& signature) {
  ShortText<64> text;
  signature.spell([&](char const* bytes, std::size_t size) { text.append(bytes, size); },
                  [&](int figure) { text.append(raised(figure)); });
  return text;
}

} // namespace v0
} // namespace bifolium
