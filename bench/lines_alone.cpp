// SPDX-License-Identifier: MIT
// What a filter would take that does nothing to its lines: beside it bench/programs.sh puts what the programs take.
#include <iostream>
#include <string>

int main() {
  std::ios::sync_with_stdio(false);
  std::cin.tie(nullptr);
  for (std::string line; std::getline(std::cin, line);) {
    std::cout.write(line.data(), static_cast<std::streamsize>(line.size())).put('\n');
  }
  return std::cout.flush() ? 0 : 1;
}
