// SPDX-License-Identifier: MIT
/// Writing signatures: who only names gatherings needs none of what it takes to read their names.
#pragma once

#include <bifolium/core/raised.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/leaf/signature.hpp>

namespace bifolium {
inline namespace v0 {

/// The signature as bibliographers write it: 2B, ²πA, [par.]. At most 64 bytes.
constexpr ShortText<64> to_text(Signature const& signature) {
  ShortText<64> text;
  signature.spell([&](char const* bytes, std::size_t size) { text.append(bytes, size); },
                  [&](int figure) { text.append(raised(figure)); });
  return text;
}

} // namespace v0
} // namespace bifolium
