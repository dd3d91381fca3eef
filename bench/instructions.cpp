// SPDX-License-Identifier: MIT
// Runs one operation so many times, for counting its instructions from outside: instructions NUMBER TIMES. Without
// arguments it lists the operations. See instructions.sh.
#include "operations.hpp"

#include <cstdio>
#include <cstdlib>

int main(int count, char** arguments) {
  auto const& operations = bench::operations();
  if (count != 3) {
    for (auto const& one : operations) std::puts(one.name);
    return 0;
  }
  auto const number = std::strtoul(arguments[1], nullptr, 10);
  if (number >= std::size(operations)) return 2;
  operations[number].run(std::atoi(arguments[2]));
  return 0;
}
