// SPDX-License-Identifier: MIT
/// A broken precondition is a mistake of the program, not of its data: leaf 9 of a gathering of 8, or a sheet with a
/// side of length zero. All broken preconditions call one function, `broken`. A constant expression cannot call it, so
/// the compiler stops and shows the line with its sentence. When the program runs, `broken` throws.
///
/// Units compiled with -fno-exceptions cannot throw, but they can be linked with units that can, and the linker keeps
/// one copy of each inline function for both. So `broken` is the same in both kinds of unit: it calls the function that
/// units with exceptions install when the program starts. If no unit has exceptions, `broken` ends the program.
#pragma once

#include <bifolium/core/config.hpp>

#include <exception>

namespace bifolium {
inline namespace v0 {

/// The exception that `broken` throws. `what()` returns the sentence. The class derives from std::exception and not
/// from std::out_of_range, because every user would pay for including <stdexcept>.
class BrokenPrecondition : public std::exception {
  char sentence_[512]{};

public:
  /// Copies `sentence`, up to 511 bytes.
  explicit BrokenPrecondition(char const* sentence) noexcept {
    for (unsigned i = 0; i + 1 < sizeof sentence_ && sentence[i] != '\0'; ++i) sentence_[i] = sentence[i];
  }
  /// Returns the sentence of the precondition that was broken.
  [[nodiscard]] char const* what() const noexcept BIFOLIUM_LIFETIMEBOUND override { return sentence_; }
};

namespace detail {

using BrokenHandler = void (*)(char const*);
/// Throws if any unit of the program can throw; null if no unit can.
inline BrokenHandler broken_handler = nullptr;

#ifdef __cpp_exceptions
[[noreturn]] inline void throw_broken(char const* sentence) { throw BrokenPrecondition{sentence}; }
/// Initialised when the program starts, before anything else in the units that include this header.
inline bool const throws_when_broken = (broken_handler = throw_broken, true);
#endif

} // namespace detail

/// Ends the computation because a precondition does not hold: throws `BrokenPrecondition`, or stops the compiler.
/// `sentence` says which precondition is broken.
[[noreturn]] inline void broken(char const* sentence) {
  if (detail::broken_handler != nullptr) detail::broken_handler(sentence);
  std::terminate();
}

} // namespace v0
} // namespace bifolium
