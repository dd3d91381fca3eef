// SPDX-License-Identifier: MIT
/// Text and measurements come from outside, so an error in them is data and comes back as a value. `Expected<T>` holds a T
/// or an `Error`. Its interface is that of std::expected of C++23, and so are the names of its operations, which chain
/// steps that may fail: `read_format(text).transform(&Format::symbol).value_or("?")`. It is a type of its own in every
/// standard: an alias that became std::expected in C++23 would give one program two layouts under one name.
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

/// Ends the computation because there is no value; the sentence says why.
[[noreturn]] inline void broken_value(Error const& error) {
  ErrorWords words;
  words.add("there is no value: ");
  words.add_place(error.problem, error.line, error.column, error.found_text());
  words.add_sentence(error.problem, error.limit, error.found_text(), error.is_in_text()).add(std::string_view{"\0", 1});
  broken(words.view().data());
}

constexpr void must_have_value(bool has_value, Error const& error) {
  if (has_value) return;
  if (std::is_constant_evaluated()) broken("there is no value: look at error() first");
  broken_value(error);
}
constexpr Error const& must_have_error(bool has_value, Error const& error) {
  if (has_value) broken("there is no error: the value is there");
  return error;
}
constexpr void must_name_problem(Error const& error) {
  if (error.problem == Problem::none) broken("an error must name its problem");
}

/// Calls a function, or names a member: what std::invoke does, without <functional>.
template <class F, class V> constexpr decltype(auto) call_with(F&& f, V&& value) {
  if constexpr (std::is_member_function_pointer_v<std::remove_cvref_t<F>>)
    return (static_cast<V&&>(value).*f)();
  else if constexpr (std::is_member_object_pointer_v<std::remove_cvref_t<F>>)
    return (static_cast<V&&>(value).*f);
  else
    return static_cast<F&&>(f)(static_cast<V&&>(value));
}

template <class T> inline constexpr bool is_expected = false;
template <class T> inline constexpr bool is_expected<Expected<T>> = true;

} // namespace detail

/// A T, or the error that explains why there is none. To take the value of an error, or the error of a value, breaks a
/// precondition: `BrokenPrecondition` is thrown, and its `what()` has the sentence of the error.
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
  /// The type of what is held where the value is not there.
  using error_type = Error;

  /// Holds `value`.
  constexpr Expected(T value) : value_{std::in_place, static_cast<T&&>(value)} {}
  /// Holds no value, and the error that explains why. pre: the error names its problem.
  constexpr Expected(Error error) : error_{error} { detail::must_name_problem(error); }

  /// True where the value is there.
  [[nodiscard]] constexpr bool has_value() const noexcept { return value_.has_value(); }
  /// True where the value is there.
  constexpr explicit operator bool() const noexcept { return value_.has_value(); }

  /// The value. pre: it is there.
  [[nodiscard]] constexpr T const& operator*() const& BIFOLIUM_LIFETIMEBOUND { return must_hold(), *value_; }
  /// The value. pre: it is there.
  [[nodiscard]] constexpr T& operator*() & BIFOLIUM_LIFETIMEBOUND { return must_hold(), *value_; }
  /// By value, so that `for (auto const& x : *make())` does not walk through a dead object.
  [[nodiscard]] constexpr T operator*() && { return must_hold(), static_cast<T&&>(*value_); }
  /// A member of the value. pre: it is there.
  [[nodiscard]] constexpr T const* operator->() const BIFOLIUM_LIFETIMEBOUND { return must_hold(), &*value_; }
  /// A member of the value. pre: it is there.
  [[nodiscard]] constexpr T* operator->() BIFOLIUM_LIFETIMEBOUND { return must_hold(), &*value_; }
  /// The value. pre: there is one.
  [[nodiscard]] constexpr T const& value() const& BIFOLIUM_LIFETIMEBOUND { return **this; }
  /// The value, moved out. pre: there is one.
  [[nodiscard]] constexpr T value() && { return *static_cast<Expected&&>(*this); }
  /// The value, or `otherwise` where there is none.
  template <class U> [[nodiscard]] constexpr T value_or(U&& otherwise) const& {
    return value_ ? *value_ : static_cast<T>(static_cast<U&&>(otherwise));
  }
  /// The value, moved out, or `otherwise` where there is none.
  template <class U> [[nodiscard]] constexpr T value_or(U&& otherwise) && {
    return value_ ? static_cast<T&&>(*value_) : static_cast<T>(static_cast<U&&>(otherwise));
  }
  /// The error. pre: there is no value.
  [[nodiscard]] constexpr Error const& error() const& BIFOLIUM_LIFETIMEBOUND {
    return detail::must_have_error(value_.has_value(), error_);
  }
  /// The error, by value, because the object ends with the expression. pre: there is no value.
  [[nodiscard]] constexpr Error error() && { return detail::must_have_error(value_.has_value(), error_); }

  /// The next step, which may fail as well: `f(value)`, which gives an Expected; or the error where there is no value.
  template <class F> constexpr auto and_then(F&& f) const& { return chain(*this, static_cast<F&&>(f)); }
  /// The next step, which may fail as well and takes the value out of this object: `f(value)`, or the error.
  template <class F> constexpr auto and_then(F&& f) && {
    return chain(static_cast<Expected&&>(*this), static_cast<F&&>(f));
  }
  /// The next step, which cannot fail: `f(value)` in an Expected; or the error where there is no value.
  template <class F> constexpr auto transform(F&& f) const& { return map(*this, static_cast<F&&>(f)); }
  /// The next step, which cannot fail and takes the value out of this object: `f(value)` in an Expected, or the error.
  template <class F> constexpr auto transform(F&& f) && {
    return map(static_cast<Expected&&>(*this), static_cast<F&&>(f));
  }
  /// The value, or where there is none `f(error)`, which gives another Expected<T>.
  template <class F> constexpr Expected or_else(F&& f) const& {
    return value_ ? *this : detail::call_with(static_cast<F&&>(f), error_);
  }
  /// The value, moved out, or where there is none `f(error)`, which gives another Expected<T>.
  template <class F> constexpr Expected or_else(F&& f) && {
    return value_ ? static_cast<Expected&&>(*this) : detail::call_with(static_cast<F&&>(f), error_);
  }
  /// The value, or where there is none the error that `f(error)` gives.
  template <class F> constexpr Expected transform_error(F&& f) const& {
    return value_ ? *this : Expected{Error{detail::call_with(static_cast<F&&>(f), error_)}};
  }
  /// The value, moved out, or where there is none the error that `f(error)` gives.
  template <class F> constexpr Expected transform_error(F&& f) && {
    return value_ ? static_cast<Expected&&>(*this) : Expected{Error{detail::call_with(static_cast<F&&>(f), error_)}};
  }

  friend constexpr bool operator==(Expected const& a, Expected const& b) requires
      requires(T const& one, T const& other) {
    one == other;
  }
  { return a.has_value() == b.has_value() && (a.value_ ? *a.value_ == *b.value_ : a.error_ == b.error_); }
};

/// Success, or the error that explains the failure: what a check gives, which has no value to hand back.
template <> class [[nodiscard]] Expected<void> {
  Error error_{};

public:
  /// The type of the value.
  using value_type = void;
  /// The type of what is held where the value is not there.
  using error_type = Error;

  /// Success.
  constexpr Expected() = default;
  /// Failure. pre: the error names its problem.
  constexpr Expected(Error error) : error_{error} { detail::must_name_problem(error); }

  /// True where the value is there.
  [[nodiscard]] constexpr bool has_value() const noexcept { return error_.problem == Problem::none; }
  /// True where the value is there.
  constexpr explicit operator bool() const noexcept { return has_value(); }
  /// Does nothing after success. pre: there is no error.
  constexpr void operator*() const { value(); }
  /// Does nothing after success. pre: there is no error.
  constexpr void value() const { detail::must_have_value(has_value(), error_); }
  /// The error. pre: there is one.
  [[nodiscard]] constexpr Error const& error() const& BIFOLIUM_LIFETIMEBOUND {
    return detail::must_have_error(has_value(), error_);
  }
  /// The error, by value, because the object ends with the expression. pre: there is one.
  [[nodiscard]] constexpr Error error() && { return detail::must_have_error(has_value(), error_); }

  /// The next step, which may fail as well: `f()`, which gives an Expected; or the error.
  template <class F> constexpr auto and_then(F&& f) const {
    using Next = std::remove_cvref_t<decltype(static_cast<F&&>(f)())>;
    static_assert(detail::is_expected<Next>, "and_then needs a function that gives an Expected: use transform");
    return has_value() ? static_cast<F&&>(f)() : Next{error_};
  }
  /// The next step, which cannot fail: `f()` in an Expected; or the error.
  template <class F> constexpr auto transform(F&& f) const {
    using Next = std::remove_cvref_t<decltype(static_cast<F&&>(f)())>;
    if (!has_value()) return Expected<Next>{error_};
    if constexpr (std::is_void_v<Next>)
      return static_cast<F&&>(f)(), Expected<void>{};
    else
      return Expected<Next>{static_cast<F&&>(f)()};
  }
  /// Success, or after a failure `f(error)`, which gives another Expected<void>.
  template <class F> constexpr Expected or_else(F&& f) const {
    return has_value() ? *this : detail::call_with(static_cast<F&&>(f), error_);
  }
  /// Success, or after a failure the error that `f(error)` gives.
  template <class F> constexpr Expected transform_error(F&& f) const {
    return has_value() ? *this : Expected{Error{detail::call_with(static_cast<F&&>(f), error_)}};
  }

  friend constexpr bool operator==(Expected const&, Expected const&) = default;
};

} // namespace v0
} // namespace bifolium
