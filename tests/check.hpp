// SPDX-License-Identifier: MIT
/// The one macro of the tests: a fact asserted while compiling and again when the tests run, so that coverage and the
/// sanitizers see it too. And what an error found, of one that is not kept, which has to be copied.
#pragma once

#include <bifolium/core/error.hpp>

#include <doctest/doctest.h>
#include <ostream> // the library prints over <iosfwd>; whoever prints brings the stream
#include <string>

#define STATIC_CHECK(...)                                                                                              \
  static_assert(__VA_ARGS__);                                                                                          \
  CHECK((__VA_ARGS__))

inline std::string found_in(bifolium::Error const& error) { return std::string{error.found_text()}; }
