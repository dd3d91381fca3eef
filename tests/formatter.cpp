// SPDX-License-Identifier: MIT
// The expected texts are constructed; width and fill follow [format.string.std], the width of a text being what is seen.
#include <bifolium/bifolium.hpp>
#include <bifolium/formatter.hpp>

#include "check.hpp"

#ifdef __cpp_lib_format
#include <locale>
#include <string>

using namespace bifolium;

TEST_CASE("a format string spells a value as a stream does") {
  CHECK(std::format("{}", Format::of(8)) == "8°");
  CHECK(std::format("{}", Format::part_of_sheet(2)) == "1/2°");
  CHECK(std::format("{}", Leaf<8>{5}) == "leaf 5 of 8");
  CHECK(std::format("{}", Leaf<8>{5}.verso()) == "verso of leaf 5 of 8");
  CHECK(std::format("{}", Gathering<>{12}) == "gathering of 12");
  CHECK(std::format("{}", Fraction{43, 4}) == "10 3/4");
  CHECK(std::format("{}", millimetres{187.5}) == "187.5 mm");
  CHECK(std::format("{}", Sheet{millimetres{450}, millimetres{315}}) == "315 mm x 450 mm");
  CHECK(std::format("{}", schemes::octavo) == schemes::octavo.id());
  CHECK(std::format("{} {}", head_up(1), head_down(8)) == "1 8↓");
  CHECK(std::format("{}", LeafAt{1, Leaf<>{3, Gathering<>{8}}}) == "leaf 3 of 8 in gathering 1");
  CHECK(std::format("{}", *read_signature("2K")) == "2K");
  CHECK(std::format("{}", ShortText<8>{"royal"}) == "royal");
  CHECK(std::format("{}", read_format("doormat").error()) == message(read_format("doormat").error()));
  CHECK(std::format("{}", Length<Fraction, Inch>{Fraction{43, 4}}) == "10 3/4 in");
}

TEST_CASE("a column of formats lines up by what is seen, not by bytes") {
  CHECK(std::format("{:>5}|", Format::of(8)) == "   8°|");
  CHECK(std::format("{:.<5}|", Format::of(12)) == "12°..|");
  CHECK(std::format("{:^7}|", head_down(8)) == "  8↓   |");
  CHECK(std::format("{:>{}}|", Fraction{1, 2}, 6) == "   1/2|");
}

TEST_CASE("a format string spells lengths the same in every locale") {
  struct Comma : std::numpunct<char> {
    [[nodiscard]] char do_decimal_point() const override { return ','; }
  };
  auto const before = std::locale::global(std::locale{std::locale::classic(), new Comma});
  auto const text = std::format("{}", millimetres{187.5});
  std::locale::global(before);
  CHECK(text == "187.5 mm");
}
#endif
