// SPDX-License-Identifier: MIT
#include "two_versions.hpp"

#include <cstdio>

std::string seen_by_new();
void break_new();

int main() {
  auto const old_sees = seen_by_this_unit(), new_sees = seen_by_new();
  std::printf("%s\n%s\n", old_sees.c_str(), new_sees.c_str());
  bool told_apart = old_sees != new_sees && old_sees.find("2v0") != std::string::npos &&
                    new_sees.find("2v1") != std::string::npos && new_sees.back() == '1';
  try {
    break_new();
    told_apart = false;
  } catch (bifolium::BrokenPrecondition const&) { // of version 0
    told_apart = false;
  } catch (std::exception const&) {
  }
  return told_apart ? 0 : 1;
}
