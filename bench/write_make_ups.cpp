// SPDX-License-Identifier: MIT
// Folds every attested scheme and writes include/bifolium/edition/detail/make_up_rows.hpp to standard output.
#include <bifolium/edition/make_up.hpp>

#include <iostream>
#include <string>

using namespace bifolium;

namespace {

std::string row(SheetMakeUp const& make_up) {
  std::string sizes;
  for (int g = 0; g < make_up.gathering_count; ++g)
    sizes += (g == 0 ? "" : ", ") + std::to_string(int{make_up.sizes[static_cast<std::size_t>(g)]});
  auto const number = [](int value) { return std::to_string(value); };
  return "{" + number(make_up.leaves_to_sheet) + ", " + number(make_up.pieces_to_sheet) + ", " +
         number(make_up.gathering_count) + ", {" + sizes + "}, " + number(make_up.workings) + ", " +
         number(make_up.half_workings) + "}";
}

} // namespace

int main() {
  std::cout << R"(// SPDX-License-Identifier: MIT
/// What each attested scheme makes of a sheet, written by bench/write_make_ups.cpp, which folds the schemes.
#pragma once

#include <)" // the end of the name apart: this is no include of this file
            << R"(bifolium/edition/make_up.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

// clang-format off
/// In the order of `SchemeRow`; the members are those of `SheetMakeUp`.
inline constexpr SheetMakeUp make_up_rows[]{
)";
  constexpr std::size_t width = 140;
  std::string line = "   ";
  for (auto const scheme : Attested::all()) {
    auto const next = " " + row(make_up(*fold(scheme.scheme()))) + ",";
    if (line.size() + next.size() > width) {
      std::cout << line << '\n';
      line = "   ";
    }
    line += next;
  }
  std::cout << line << R"(
};
// clang-format on

} // namespace detail
} // namespace v0
} // namespace bifolium
)";
}
