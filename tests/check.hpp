// SPDX-License-Identifier: MIT
/// The one macro of the tests: a fact asserted while compiling and again when the tests run, so that coverage and the
/// sanitizers see it too.
#pragma once

#include <doctest/doctest.h>
#include <ostream> // the library prints over <iosfwd>; whoever prints brings the stream

#define STATIC_CHECK(...)                                                                                              \
  static_assert(__VA_ARGS__);                                                                                          \
  CHECK((__VA_ARGS__))
