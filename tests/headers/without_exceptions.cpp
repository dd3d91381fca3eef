// SPDX-License-Identifier: MIT
// Without exceptions and run-time types everything works that gives an Expected; a broken precondition ends the program.
#include <cstdlib>
#include <every_header.hpp>

int main() {
  auto const count = bifolium::count_formula("8°: A–K⁸");
  if (!count || count->leaves != 80 || bifolium::count_formula("8°: A–K")) return 1;
  std::set_terminate([] { std::_Exit(0); });
  auto const number = bifolium::read_format("9°")->leaves_to_sheet(); // 9, known only when run
  static_cast<void>(bifolium::Gathering<8>{}.leaf(*number));
  return 2; // nothing ended it
}
