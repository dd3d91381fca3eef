// SPDX-License-Identifier: MIT
/// Text and measurements come from outside, so what is wrong with them is data and comes back as a value. `Expected<T>`
/// holds a T or an `Error`. It is this type in C++20 and C++23 alike: an alias that became std::expected in one of them
/// would give one program two layouts under one name. The interface is the standard's.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/problem.hpp>

#include <cstddef>
#include <cstdint>
#include <new>
#include <type_traits>

namespace bifolium {
inline namespace v0 {

/// What was wrong, and where: line and column count from 1, the column in code points.
/// `found` is the beginning of the offending text (whole UTF-8 characters, ended by a zero); `limit` is the number that
/// would have been right or the bound that was passed, where the problem has one. `message(error)` makes the sentence.
struct Error {
  Problem problem{};                ///< what was wrong
  std::uint32_t line{1}, column{1}; ///< where, both from 1; the column counts code points
  std::int64_t limit{};             ///< the number or bound that would have been right, where the problem has one
  char found[24]{};                 ///< the beginning of the offending text, ended by a zero

  friend constexpr bool operator==(Error const&, Error const&) = default;
};

/// An `Error` that quotes `size` bytes of text, cut to what fits at a whole character.
constexpr Error error_at(Problem problem, std::uint32_t line, std::uint32_t column, char const* found = "",
                         std::size_t size = 0, std::int64_t limit = 0) {
  Error error{problem, line, column, limit, {}};
  auto most = sizeof error.found - 1;
  auto keep = size <= most ? size : most;
  if (keep < size)
    while (keep > 0 && (static_cast<unsigned char>(found[keep]) & 0xC0U) == 0x80U) --keep;
  for (std::size_t i = 0; i < keep; ++i) error.found[i] = found[i];
  return error;
}

namespace detail {

/// Can be made from nothing without fail, as an empty vector can.
template <class T>
concept StartsEmpty = requires {
  {
    T {}
  }
  noexcept;
};

/// Room for a T that may be there. std::optional costs a compiler some four milliseconds a type; for a T that is copied as
/// bytes a union does the same for a quarter, and a T that starts empty may just stay so.
template <class T, bool Bytes = std::is_trivially_copyable_v<T>, bool Empty = StartsEmpty<T>> struct Room {
  union {
    char nothing;
    T value;
  };
  bool there;

  constexpr Room() : nothing{}, there{false} {}
  constexpr Room(T const& held) : value(held), there{true} {}
  constexpr explicit operator bool() const { return there; }
  constexpr T const& operator*() const { return value; }
  constexpr T& operator*() { return value; }
  constexpr T const* operator->() const { return &value; }
};

template <class T> struct Room<T, false, true> {
  T value{};
  bool there{false};

  constexpr Room() = default;
  constexpr Room(T&& held) : value(static_cast<T&&>(held)), there{true} {}
  constexpr explicit operator bool() const { return there; }
  constexpr T const& operator*() const { return value; }
  constexpr T& operator*() { return value; }
};

template <class T> struct Room<T, false, false> {
  union {
    char nothing;
    T value;
  };
  bool there{false};

  Room() noexcept : nothing{} {}
  Room(T&& held) : value(static_cast<T&&>(held)), there{true} {}
  Room(Room&& other) : nothing{}, there{other.there} {
    if (there) ::new (static_cast<void*>(&value)) T(static_cast<T&&>(other.value));
  }
  Room(Room const& other) requires std::is_copy_constructible_v<T> : nothing{}, there{other.there} {
    if (there) ::new (static_cast<void*>(&value)) T(other.value);
  }
  Room& operator=(Room other) {
    clear();
    if (other.there) ::new (static_cast<void*>(&value)) T(static_cast<T&&>(other.value));
    there = other.there;
    return *this;
  }
  ~Room() { clear(); }
  explicit operator bool() const { return there; }
  T const& operator*() const { return value; }
  T& operator*() { return value; }

private:
  void clear() {
    if (there) value.~T();
    there = false;
  }
};

} // namespace detail

/// A T, or what was wrong. Reading the value of an error (or the error of a value) is a broken precondition.
template <class T> class [[nodiscard]] Expected {
  detail::Room<T> value_;
  Error error_{};

  constexpr void must_hold() const {
    if (!value_) broken("there is no value: look at error() first");
  }

public:
  using value_type = T;
  using error_type = Error;

  /// The value is there.
  constexpr Expected(T value) : value_{static_cast<T&&>(value)} {}
  /// The value is not there, for a reason. pre: the error names its problem.
  constexpr Expected(Error error) : error_{error} {
    if (error.problem == Problem::none) broken("an error must name its problem");
  }

  [[nodiscard]] constexpr bool has_value() const noexcept { return static_cast<bool>(value_); }
  constexpr explicit operator bool() const noexcept { return static_cast<bool>(value_); }

  [[nodiscard]] constexpr T const& operator*() const& { return must_hold(), *value_; }
  [[nodiscard]] constexpr T& operator*() & { return must_hold(), *value_; }
  /// By value, so that `for (auto const& x : *make())` does not walk through a dead object.
  [[nodiscard]] constexpr T operator*() && { return must_hold(), static_cast<T&&>(*value_); }
  [[nodiscard]] constexpr T const* operator->() const { return must_hold(), &*value_; }
  [[nodiscard]] constexpr T* operator->() { return must_hold(), &*value_; }
  /// The value. pre: it is there.
  [[nodiscard]] constexpr T const& value() const& { return **this; }
  /// The value, moved out. pre: it is there.
  [[nodiscard]] constexpr T value() && { return *static_cast<Expected&&>(*this); }
  /// The value, or `otherwise` where there is none.
  template <class U> [[nodiscard]] constexpr T value_or(U&& otherwise) const& {
    return value_ ? *value_ : static_cast<T>(static_cast<U&&>(otherwise));
  }
  /// What was wrong. pre: there is no value.
  [[nodiscard]] constexpr Error const& error() const {
    if (value_) broken("there is no error: the value is there");
    return error_;
  }

  friend constexpr bool operator==(Expected const& a, Expected const& b) requires
      requires(T const& one, T const& other) {
    one == other;
  }
  { return a.has_value() == b.has_value() && (a.value_ ? *a.value_ == *b.value_ : a.error_ == b.error_); }
};

} // namespace v0
} // namespace bifolium
