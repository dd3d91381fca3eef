// SPDX-License-Identifier: MIT
/// The sentence of a value that is taken where there is none.
#pragma once

#include <bifolium/core/expected.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

[[noreturn, gnu::cold]] BIFOLIUM_INLINE void broken_value(Error const& error) {
  ErrorWords words;
  words.add("there is no value: ");
  words.add_place(error.problem, error.place, error.found_text());
  words.add_sentence(error.problem, error.limit, error.found_text(), error.is_in_text()).add(std::string_view{"\0", 1});
  broken(words.view().data());
}

} // namespace detail
} // namespace v0
} // namespace bifolium
