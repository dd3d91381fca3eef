// SPDX-License-Identifier: MIT
/// The requirements on the compiler, and what lets it say a mistake in a sentence. Every header includes this one before
/// anything else, so a compiler set to an older standard reports one line and not hundreds.
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

// Functions with much machinery cost each unit that calls them a second of compiling or more. A program may link
// `bifolium::compiled`, which defines BIFOLIUM_COMPILED; then cmake/compiled.cpp compiles these functions once for all
// units. Otherwise the library is headers and nothing else, and both macros fall away.
#ifndef BIFOLIUM_COMPILED
/// Begins a function that is declared in the header of its name. The header includes the definition from detail/ at its
/// end, unless it is compiled elsewhere.
#define BIFOLIUM_INLINE inline
/// Begins a constexpr function. Constant expressions need its body; when the program runs, the function in
/// `detail::compiled` is called instead.
#define BIFOLIUM_WHEN_RUN(call) static_assert(true)
#else
#define BIFOLIUM_INLINE
#define BIFOLIUM_WHEN_RUN(call)                                                                                        \
  if (!std::is_constant_evaluated()) return call
#endif

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A text of any type - a literal, a std::string, a std::string_view - where a number, a length or a scheme belongs. Of
/// `observe({.height = "22 cm"})` compilers say only that the list in braces cannot be converted. So the types of such
/// fields take a text, to refuse it with a sentence: a deleted constructor would make clang reject the list without it.
template <class Given>
concept TextGiven = requires(Given const& given) {
  {given.substr(0)};
}
|| requires(Given const& given, void (*take)(char const*)) { take(given); };
/// Makes a static_assert depend on a template argument.
template <class> inline constexpr bool never = false;

} // namespace detail
} // namespace v0
} // namespace bifolium
