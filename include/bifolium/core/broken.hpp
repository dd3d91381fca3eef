// SPDX-License-Identifier: MIT
/// A broken precondition is a programming error, not data: leaf 9 of a gathering of 8, a sheet with a side of nothing.
/// One function answers all of them. In a constant expression the call is not allowed, so the compiler stops and shows
/// the line with its sentence; at run time it throws, and where exceptions are switched off it ends the program.
#pragma once

#include <exception>

namespace bifolium {
inline namespace v0 {

/// What `broken` throws. It derives from std::exception alone: std::out_of_range would cost every user <stdexcept>.
class BrokenPrecondition : public std::exception {
  char const* sentence_;

public:
  /// `sentence`: a string literal, kept by pointer.
  explicit BrokenPrecondition(char const* sentence) noexcept : sentence_{sentence} {}
  [[nodiscard]] char const* what() const noexcept override { return sentence_; }
};

/// Ends the computation because a precondition does not hold. `sentence` says which one, in the words of the trade.
[[noreturn]] inline void broken([[maybe_unused]] char const* sentence) {
#ifdef __cpp_exceptions
  throw BrokenPrecondition{sentence};
#else
  std::terminate();
#endif
}

} // namespace v0
} // namespace bifolium
