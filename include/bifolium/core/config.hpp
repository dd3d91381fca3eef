// SPDX-License-Identifier: MIT
/// The requirements on the compiler. Every header includes this one before anything else, so a compiler set to an older
/// standard reports one line and not hundreds.
#pragma once

#if (defined(_MSVC_LANG) ? _MSVC_LANG : __cplusplus) < 202002L
#error bifolium needs C++20: compile with -std=c++20 or a later standard
#include <bifolium/this_standard_is_too_old> // does not exist: it stops the compiler here
#endif

/// Marks a function or an argument whose result must not outlive the argument. Compilers that know this attribute warn
/// if a temporary ends too early; the others ignore it.
#if defined(__clang__)
#define BIFOLIUM_LIFETIMEBOUND [[clang::lifetimebound]]
#elif defined(_MSC_VER)
#define BIFOLIUM_LIFETIMEBOUND [[msvc::lifetimebound]]
#else
#define BIFOLIUM_LIFETIMEBOUND
#endif
