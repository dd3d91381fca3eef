// SPDX-License-Identifier: MIT
/// read_description: each field by its reader.
#pragma once

#include <bifolium/book/detail/description_reader.hpp>
#include <bifolium/book/read_description.hpp>

namespace bifolium {
inline namespace v0 {

BIFOLIUM_INLINE Description read_description(FieldTexts const& texts, Conventions const& conventions) {
  return detail::DescriptionReader{texts, conventions}.description();
}

} // namespace v0
} // namespace bifolium
