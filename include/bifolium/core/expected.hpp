// SPDX-License-Identifier: MIT
/// Text and measurements come from outside the program, so an error in them is data and is returned as a value.
/// `Expected<T>` holds a T or an `Error`. It has the interface of C++23's std::expected, and its operations, which
/// chain steps that may fail, have the same names: `read_format(text).transform(&Format::symbol).value_or("?")`. It is
/// a separate type under every standard, because an alias that becomes std::expected under C++23 would give one program
/// two layouts for one name.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/config.hpp>
#include <bifolium/core/error.hpp>

#include <optional>
#include <type_traits>

namespace bifolium {
inline namespace v0 {

template <class T> class Expected;
template <> class Expected<void>;

namespace detail {

/// Ends the computation because there is no value. The sentence says why there is none.
[[noreturn]] BIFOLIUM_INLINE void broken_value(Error const& error);

constexpr void must_have_value(bool has_value, Error const& error) {
  if (has_value) return;
  if (std::is_constant_evaluated()) broken("there is no value: look at error() first");
  broken_value(error);
}
constexpr Error const& must_have_error(bool has_value, Error const& error) {
  if (has_value) broken("there is no error: the result has a value");
  return error;
}
constexpr void must_name_problem(Error const& error) {
  if (error.problem == Problem::none) broken("an error must name its problem");
}

/// Calls a function, or reads a member through a pointer to member, as std::invoke does, without <functional>.
template <class F, class V> constexpr decltype(auto) call_with(F&& f, V&& value) {
  if constexpr (std::is_member_function_pointer_v<std::remove_cvref_t<F>>)
    return (static_cast<V&&>(value).*f)();
  else if constexpr (std::is_member_object_pointer_v<std::remove_cvref_t<F>>)
    return (static_cast<V&&>(value).*f);
  else
    return static_cast<F&&>(f)(static_cast<V&&>(value));
}

/// True for a type that gives views of its own parts, such as texts and rows. A type that cannot be copied byte by byte
/// is taken for one; any other type says so with a member `gives_views`.
template <class T>
concept gives_views = !std::is_trivially_copyable_v<T> || requires {
  typename T::gives_views;
};

template <class T> inline constexpr bool is_expected = false;
template <class T> inline constexpr bool is_expected<Expected<T>> = true;

} // namespace detail

/// Holds a T, or the error that explains why there is none. Taking the value of an error, or the error of a value,
/// breaks a precondition: `BrokenPrecondition` is thrown, and its `what()` contains the sentence of the error.
template <class T> class [[nodiscard]] Expected {
  std::optional<T> value_;
  Error error_{};

  constexpr void must_hold() const { detail::must_have_value(value_.has_value(), error_); }

  template <class Self, class F> static constexpr auto chain(Self&& self, F&& f) {
    using Next =
        std::remove_cvref_t<decltype(detail::call_with(static_cast<F&&>(f), *static_cast<Self&&>(self).value_))>;
    static_assert(detail::is_expected<Next>, "and_then needs a function that gives an Expected: use transform");
    if (self.value_) return detail::call_with(static_cast<F&&>(f), *static_cast<Self&&>(self).value_);
    return Next{self.error_};
  }
  template <class Self, class F> static constexpr auto map(Self&& self, F&& f) {
    using Next = std::remove_cv_t<decltype(detail::call_with(static_cast<F&&>(f), *static_cast<Self&&>(self).value_))>;
    if constexpr (std::is_void_v<Next>) {
      if (!self.value_) return Expected<Next>{self.error_};
      detail::call_with(static_cast<F&&>(f), *static_cast<Self&&>(self).value_);
      return Expected<Next>{};
    } else {
      using Value = std::remove_reference_t<Next>;
      static_assert(!detail::is_expected<Value>, "transform would put an Expected into an Expected: use and_then");
      if (!self.value_) return Expected<std::remove_cv_t<Value>>{self.error_};
      return Expected<std::remove_cv_t<Value>>{
          detail::call_with(static_cast<F&&>(f), *static_cast<Self&&>(self).value_)};
    }
  }

public:
  /// The type of the value.
  using value_type = T;
  /// The type of the error.
  using error_type = Error;

  /// Stores `value`.
  constexpr Expected(T value) : value_{std::in_place, static_cast<T&&>(value)} {}
  /// Makes the value in its place, for a value that is costly to move.
  template <class... Args>
  constexpr explicit Expected(std::in_place_t, Args&&... args) : value_{std::in_place, static_cast<Args&&>(args)...} {}
  /// Stores the error that explains why there is no value. Precondition: the error names its problem.
  constexpr Expected(Error error) : error_{error} { detail::must_name_problem(error); }

  /// Returns true if there is a value.
  [[nodiscard]] constexpr bool has_value() const noexcept { return value_.has_value(); }
  /// Returns true if there is a value.
  constexpr explicit operator bool() const noexcept { return value_.has_value(); }

  /// Returns the value. Precondition: there is a value.
  [[nodiscard]] constexpr T const& operator*() const& BIFOLIUM_LIFETIMEBOUND { return must_hold(), *value_; }
  /// Returns the value. Precondition: there is a value.
  [[nodiscard]] constexpr T& operator*() & BIFOLIUM_LIFETIMEBOUND { return must_hold(), *value_; }
  /// Returns the value of a temporary by value, so that `for (auto const& x : *make())` does not refer to a destroyed
  /// object. Precondition: there is a value.
  [[nodiscard]] constexpr T operator*() && { return must_hold(), static_cast<T&&>(*value_); }
  /// Gives access to a member of the value. Precondition: there is a value.
  [[nodiscard]] constexpr T const* operator->() const& BIFOLIUM_LIFETIMEBOUND { return must_hold(), &*value_; }
  /// Gives access to a member of the value. Precondition: there is a value.
  [[nodiscard]] constexpr T* operator->() & BIFOLIUM_LIFETIMEBOUND { return must_hold(), &*value_; }
  /// Gives access to a member of the value of a temporary, until the end of the full expression. A value that holds
  /// texts or rows, or whose members return references into it, has no such access: `for (auto const& run :
  /// read_formula(text)->runs())` would refer to a destroyed object, and does not compile. Precondition: there is a
  /// value.
  [[nodiscard]] constexpr T* operator->() && BIFOLIUM_LIFETIMEBOUND requires(!detail::gives_views<T>) {
    return must_hold(), &*value_;
  }
  // Compilers show the line of a deleted function, so the sentence is on it.
  // clang-format off
  /// Does not compile, because the value goes at the end of the expression.
  T* operator->() && requires(detail::gives_views<T>) = delete; // keep the Expected in a variable, or write (*read(text)).member()
  /// Does not compile, because the value goes at the end of the expression.
  T* operator->() const&& requires(detail::gives_views<T>) = delete; // keep the Expected in a variable, or write (*read(text)).member()
  // clang-format on
  /// Returns the value. Precondition: there is a value.
  [[nodiscard]] constexpr T const& value() const& BIFOLIUM_LIFETIMEBOUND { return **this; }
  /// Moves the value out and returns it. Precondition: there is a value.
  [[nodiscard]] constexpr T value() && { return *static_cast<Expected&&>(*this); }
  /// Returns the value, or `otherwise` if there is no value.
  template <class U> [[nodiscard]] constexpr T value_or(U&& otherwise) const& {
    return value_ ? *value_ : static_cast<T>(static_cast<U&&>(otherwise));
  }
  /// Moves the value out and returns it, or returns `otherwise` if there is no value.
  template <class U> [[nodiscard]] constexpr T value_or(U&& otherwise) && {
    return value_ ? static_cast<T&&>(*value_) : static_cast<T>(static_cast<U&&>(otherwise));
  }
  /// Returns the error. Precondition: there is no value.
  [[nodiscard]] constexpr Error const& error() const& BIFOLIUM_LIFETIMEBOUND {
    return detail::must_have_error(value_.has_value(), error_);
  }
  /// Returns the error of a temporary by value. Precondition: there is no value.
  [[nodiscard]] constexpr Error error() && { return detail::must_have_error(value_.has_value(), error_); }

  /// Returns `f(value)`, or the error if there is no value. `f` is a next step that may fail: it returns an Expected.
  template <class F> constexpr auto and_then(F&& f) const& { return chain(*this, static_cast<F&&>(f)); }
  /// Moves the value out and returns `f(value)`, or returns the error if there is no value. `f` is a next step that may
  /// fail: it returns an Expected.
  template <class F> constexpr auto and_then(F&& f) && {
    return chain(static_cast<Expected&&>(*this), static_cast<F&&>(f));
  }
  /// Returns `f(value)` in an Expected, or the error if there is no value. `f` is a next step that cannot fail.
  template <class F> constexpr auto transform(F&& f) const& { return map(*this, static_cast<F&&>(f)); }
  /// Moves the value out and returns `f(value)` in an Expected, or returns the error if there is no value. `f` is a
  /// next step that cannot fail.
  template <class F> constexpr auto transform(F&& f) && {
    return map(static_cast<Expected&&>(*this), static_cast<F&&>(f));
  }
  /// Returns the value, or `f(error)` if there is no value. `f` returns another Expected<T>.
  template <class F> constexpr Expected or_else(F&& f) const& {
    return value_ ? *this : detail::call_with(static_cast<F&&>(f), error_);
  }
  /// Moves the value out and returns it, or returns `f(error)` if there is no value. `f` returns another Expected<T>.
  template <class F> constexpr Expected or_else(F&& f) && {
    return value_ ? static_cast<Expected&&>(*this) : detail::call_with(static_cast<F&&>(f), error_);
  }
  /// Returns the value, or the error that `f(error)` returns if there is no value.
  template <class F> constexpr Expected transform_error(F&& f) const& {
    return value_ ? *this : Expected{Error{detail::call_with(static_cast<F&&>(f), error_)}};
  }
  /// Moves the value out and returns it, or returns the error that `f(error)` returns if there is no value.
  template <class F> constexpr Expected transform_error(F&& f) && {
    return value_ ? static_cast<Expected&&>(*this) : Expected{Error{detail::call_with(static_cast<F&&>(f), error_)}};
  }

  // clang-format off
  /// Does not compile, because there may be an error in the place of the value.
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>&, Expected const&) = delete; // it may be an error: look first, then write out << *result or out << result.error()
  // clang-format on

  friend constexpr bool operator==(Expected const& a, Expected const& b) requires
      requires(T const& one, T const& other) {
    one == other;
  }
  { return a.has_value() == b.has_value() && (a.value_ ? *a.value_ == *b.value_ : a.error_ == b.error_); }
};

/// Success, or the error that explains a failure: the result of a check that has no value to return.
template <> class [[nodiscard]] Expected<void> {
  Error error_{};

public:
  /// The type of the value: none.
  using value_type = void;
  /// The type of the error.
  using error_type = Error;

  /// Makes a success.
  constexpr Expected() = default;
  /// Makes a failure. Precondition: the error names its problem.
  constexpr Expected(Error error) : error_{error} { detail::must_name_problem(error); }

  /// Returns true after success.
  [[nodiscard]] constexpr bool has_value() const noexcept { return error_.problem == Problem::none; }
  /// Returns true after success.
  constexpr explicit operator bool() const noexcept { return has_value(); }
  /// Does nothing. Precondition: success.
  constexpr void operator*() const { value(); }
  /// Does nothing. Precondition: success.
  constexpr void value() const { detail::must_have_value(has_value(), error_); }
  /// Returns the error. Precondition: failure.
  [[nodiscard]] constexpr Error const& error() const& BIFOLIUM_LIFETIMEBOUND {
    return detail::must_have_error(has_value(), error_);
  }
  /// Returns the error of a temporary by value. Precondition: failure.
  [[nodiscard]] constexpr Error error() && { return detail::must_have_error(has_value(), error_); }

  /// Returns `f()` after success, or the error. `f` is a next step that may fail: it returns an Expected.
  template <class F> constexpr auto and_then(F&& f) const {
    using Next = std::remove_cvref_t<decltype(static_cast<F&&>(f)())>;
    static_assert(detail::is_expected<Next>, "and_then needs a function that gives an Expected: use transform");
    return has_value() ? static_cast<F&&>(f)() : Next{error_};
  }
  /// Returns `f()` in an Expected after success, or the error. `f` is a next step that cannot fail.
  template <class F> constexpr auto transform(F&& f) const {
    using Next = std::remove_cvref_t<decltype(static_cast<F&&>(f)())>;
    if (!has_value()) return Expected<Next>{error_};
    if constexpr (std::is_void_v<Next>)
      return static_cast<F&&>(f)(), Expected<void>{};
    else
      return Expected<Next>{static_cast<F&&>(f)()};
  }
  /// Returns success, or `f(error)` after a failure. `f` returns another Expected<void>.
  template <class F> constexpr Expected or_else(F&& f) const {
    return has_value() ? *this : detail::call_with(static_cast<F&&>(f), error_);
  }
  /// Returns success, or the error that `f(error)` returns after a failure.
  template <class F> constexpr Expected transform_error(F&& f) const {
    return has_value() ? *this : Expected{Error{detail::call_with(static_cast<F&&>(f), error_)}};
  }

  friend constexpr bool operator==(Expected const&, Expected const&) = default;
};

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/core/detail/broken_value.hpp>
#endif
