// SPDX-License-Identifier: MIT
// Expected: the value is made, copied, moved and destroyed as often as it should be; the operations that chain steps agree
// with those of std::expected (ISO/IEC 14882:2024, [expected.object.monadic], [expected.void.monadic]).
#include <bifolium/core/expected.hpp>
#include <bifolium/core/message.hpp>

#include "check.hpp"

#include <iomanip>
#include <memory>
#include <regex>
#include <sstream>
#include <string>
#include <type_traits>
#include <utility>

using namespace bifolium;

namespace {

struct Bytes {
  int number{};
};
struct StartsEmpty {
  std::shared_ptr<int> held{};
};
struct NeverEmpty {
  std::shared_ptr<int> held;
  explicit NeverEmpty(std::shared_ptr<int> one) : held{std::move(one)} {}
};
struct MovesOnly {
  std::unique_ptr<int> held;
  explicit MovesOnly(int number) : held{std::make_unique<int>(number)} {}
};

constexpr Error wrong() { return error_at(Problem::not_a_number, TextPlace{1, 3}, "x"); }

template <class T> void holds_as_often(T (*make)(std::shared_ptr<int> const&)) {
  auto const held = std::make_shared<int>(7);
  {
    Expected<T> one{make(held)};
    CHECK(held.use_count() == 2);
    auto copy = one;
    CHECK(held.use_count() == 3);
    auto moved = std::move(copy);
    CHECK(held.use_count() == 3);
    moved = Expected<T>{wrong()};
    CHECK(held.use_count() == 2);
    CHECK_FALSE(moved);
    CHECK(moved.error() == wrong());
    moved = one;
    CHECK(held.use_count() == 3);
    CHECK(*moved->held == 7);
    auto& same = moved;
    moved = same;
    CHECK(held.use_count() == 3);
    auto const failed = Expected<T>{wrong()};
    auto const copy_of_failed = failed; // NOLINT(performance-unnecessary-copy-initialization): copying is tried
    CHECK_FALSE(copy_of_failed);
    auto const taken = *std::move(moved);
    CHECK(*taken.held == 7);
    CHECK_THROWS_AS(static_cast<void>(*failed), BrokenPrecondition);
  }
  CHECK(held.use_count() == 1);
}

TEST_CASE("the value of an Expected is destroyed as often as it is made") {
  holds_as_often<StartsEmpty>([](std::shared_ptr<int> const& held) { return StartsEmpty{held}; });
  holds_as_often<NeverEmpty>([](std::shared_ptr<int> const& held) { return NeverEmpty{held}; });
}

TEST_CASE("a value that is made in its place is not moved") { // [expected.object.cons]
  struct Fixed {
    int number;
    explicit Fixed(int one) : number{one} {}
    Fixed(Fixed const&) = delete;
  };
  Expected<Fixed> const one{std::in_place, 7};
  REQUIRE(one);
  CHECK(one->number == 7);
}
TEST_CASE("an Expected can do what its value can do") {
  static_assert(std::is_trivially_copyable_v<Expected<Bytes>>);
  static_assert(std::is_trivially_copyable_v<Expected<void>>);
  static_assert(std::is_copy_constructible_v<Expected<NeverEmpty>>);
  static_assert(!std::is_copy_constructible_v<Expected<MovesOnly>>);
  Expected<MovesOnly> one{MovesOnly{3}};
  auto two = std::move(one);
  CHECK(*two->held == 3);
  two = Expected<MovesOnly>{MovesOnly{4}};
  CHECK(*std::move(two).value().held == 4);
}

constexpr Expected<int> half(int number) {
  if (number % 2 != 0) return error_at(Problem::trailing_text, TextPlace{1, 9});
  return number / 2;
}
constexpr Expected<int> good{12}, bad{wrong()};

TEST_CASE("and_then calls the next step with the value, and not after an error") {
  STATIC_CHECK(good.and_then(half).and_then(half) == Expected<int>{3});
  STATIC_CHECK(good.and_then(half).and_then(half).and_then(half).error().place->column == 9);
  STATIC_CHECK(bad.and_then(half).error() == wrong());
  STATIC_CHECK(Expected<int>{4}.and_then(half).value() == 2);
  // the step takes the value out of an object that ends
  auto const taken = Expected<MovesOnly>{MovesOnly{5}}.and_then(
      [](MovesOnly held) -> Expected<std::unique_ptr<int>> { return std::move(held.held); });
  CHECK(**taken == 5);
  // a step without a value
  int calls = 0;
  auto const check = [&](int) -> Expected<void> { return ++calls, Expected<void>{}; };
  CHECK(good.and_then(check).has_value());
  CHECK(bad.and_then(check).error() == wrong());
  CHECK(calls == 1);
}

TEST_CASE("transform changes the value and keeps the error") {
  STATIC_CHECK(good.transform([](int number) { return number + 0.5; }).value() == 12.5);
  STATIC_CHECK(bad.transform([](int number) { return number + 0.5; }).error() == wrong());
  static_assert(std::is_same_v<decltype(good.transform([](int const&) -> int const& { return good.value(); })),
                               Expected<int>>); // a copy: no reference into an object that may end
  CHECK(Expected<MovesOnly>{MovesOnly{6}}.transform([](MovesOnly held) { return *held.held; }) == Expected<int>{6});
  CHECK(Expected<Bytes>{Bytes{7}}.transform(&Bytes::number) == Expected<int>{7});
  CHECK(Expected<std::string>{"four"}.transform(&std::string::size) == Expected<std::size_t>{4});
  int calls = 0;
  static_assert(std::is_same_v<decltype(good.transform([&](int) { ++calls; })), Expected<void>>);
  CHECK(good.transform([&](int) { ++calls; }).has_value());
  CHECK_FALSE(bad.transform([&](int) { ++calls; }).has_value());
  CHECK(calls == 1);
}

TEST_CASE("or_else and transform_error are called with the error, and not with a value") {
  constexpr auto zero = [](Error) -> Expected<int> { return 0; };
  constexpr auto moved = [](Error error) {
    error.place->column += 10;
    return error;
  };
  STATIC_CHECK(good.or_else(zero) == good);
  STATIC_CHECK(bad.or_else(zero) == Expected<int>{0});
  STATIC_CHECK(good.transform_error(moved) == good);
  STATIC_CHECK(bad.transform_error(moved).error().place->column == 13);
  CHECK(*Expected<MovesOnly>{MovesOnly{8}}.transform_error(moved).value().held == 8);
  CHECK(*(*Expected<MovesOnly>{wrong()}.or_else([](Error) -> Expected<MovesOnly> { return MovesOnly{9}; })).held == 9);
  CHECK(*Expected<MovesOnly>{wrong()}.value_or(MovesOnly{10}).held == 10);
}

TEST_CASE("Expected<void> is success or an error") {
  constexpr Expected<void> done{}, failed{wrong()};
  STATIC_CHECK(done && !failed && failed.error() == wrong() && done == Expected<void>{} && !(done == failed));
  STATIC_CHECK(done.and_then([] { return half(8); }) == Expected<int>{4});
  STATIC_CHECK(failed.and_then([] { return half(8); }).error() == wrong());
  STATIC_CHECK(done.transform([] { return 'a'; }) == Expected<char>{'a'});
  STATIC_CHECK(failed.transform([] { return 'a'; }).error() == wrong());
  STATIC_CHECK(failed.or_else([](Error) { return Expected<void>{}; }).has_value());
  CHECK(!failed.transform_error([](Error) { return error_in_field(Problem::negative_count, "copies"); }).error().place);
  done.value();
  *done;
  CHECK_THROWS_WITH_AS(failed.value(),
                       "there is no value: line 1, column 3: found 'x' where a whole number is expected",
                       BrokenPrecondition);
  CHECK_THROWS_AS(static_cast<void>(done.error()), BrokenPrecondition);
}

TEST_CASE("the exception of a missing value says why it is missing") {
  CHECK_THROWS_WITH_AS(static_cast<void>(*bad),
                       "there is no value: line 1, column 3: found 'x' where a whole number is expected",
                       BrokenPrecondition);
  CHECK_THROWS_WITH_AS(static_cast<void>(good.error()), "there is no error: the result has a value",
                       BrokenPrecondition);
  CHECK_THROWS_WITH_AS(static_cast<void>(Expected<int>{Error{}}), "an error must name its problem", BrokenPrecondition);
}

TEST_CASE("an error prints as its message") {
  std::ostringstream out;
  out << wrong() << '|' << error_in_field(Problem::negative_count, "copies");
  CHECK(out.str() ==
        "line 1, column 3: found 'x' where a whole number is expected|'copies' must not be less than zero");
  std::ostringstream wide;
  wide << std::left << std::setw(80) << wrong() << '|';
  CHECK(wide.str() == message(wrong()) + std::string(80 - message(wrong()).size(), ' ') + '|');
}

TEST_CASE("a message names the place in the text, or the field where there is no text") {
  CHECK(message(error_at(Problem::not_a_number, TextPlace{2, 5})) ==
        "line 2, column 5: found the end of the text where a whole "
        "number is expected");
  CHECK(message(error_in_field(Problem::not_positive, "hours_a_day")) == "'hours_a_day' must be more than zero");
  CHECK(message(error_in_field(Problem::too_many_overs, "overs_percent")) ==
        "'overs_percent': overs must be from 0 to 100 per cent");
  CHECK(message(error_in_field(Problem::result_too_large, "")) ==
        "the result is too large: it does not fit in 64 bits");
  CHECK(sentence_of(error_in_field(Problem::too_many_overs, "overs_percent")) ==
        "overs must be from 0 to 100 per cent");
}

TEST_CASE("an error is compared with a problem, wherever its place") {
  STATIC_CHECK(error_at(Problem::not_utf8, TextPlace{2, 14}) == Problem::not_utf8);
  STATIC_CHECK(Problem::not_utf8 == error_in_field(Problem::not_utf8, "year"));
  STATIC_CHECK(error_at(Problem::not_utf8, TextPlace{1, 1}) != Problem::unknown_word);
  Expected<int> const failed = error_at(Problem::unknown_word, TextPlace{1, 1});
  CHECK((failed.error() == Problem::unknown_word));
}

TEST_CASE("every problem has an identifier and a sentence that fits") {
  int problems = 0;
  for (int number = 0; number < 65536; ++number) {
    auto const problem = static_cast<Problem>(number);
    if (identifier(problem) == "unknown") {
      REQUIRE(sentence(problem) == "an unknown problem");
      continue;
    }
    ++problems;
    REQUIRE(identifier(problem).find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string_view::npos);
    // the longest that can be filled in, counted from the parts of the sentence
    auto const longest =
        error_at(problem, TextPlace{4294967295U, 4294967295U}, "abcdefghijklmnopqrstuvwxyz", INT64_MIN);
    auto expected = "line 4294967295, column 4294967295: " + std::string{sentence(problem)};
    for (auto const& [name, value] : {std::pair<std::string, std::string>{"{found}", "abcdefghijklmnopqrstuvw"},
                                      {"{limit}", "-9223372036854775808"}})
      for (std::size_t at; (at = expected.find(name)) != std::string::npos;) expected.replace(at, name.size(), value);
    expected = std::regex_replace(expected, std::regex{"\\{[^|}]*\\|([^}]*)\\}"}, "$1");
    REQUIRE(message(longest) == expected);
    // one leaf, and not one leaves: no plural beside 1, but words that only end so
    auto const of_one = message(error_at(problem, TextPlace{}, "abc", 1));
    std::smatch noun;
    if (std::regex_search(of_one, noun, std::regex{"\\b1 ([a-z]+s)\\b"}))
      REQUIRE_MESSAGE((noun[1] == "is" || noun[1] == "as" || noun[1] == "was"), of_one);
    REQUIRE(expected.find_first_of("{}") == std::string::npos);
    REQUIRE(expected.back() != '.'); // a message is put into other sentences
  }
  CHECK(problems > 100);
}

} // namespace
