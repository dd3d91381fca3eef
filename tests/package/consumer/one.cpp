// SPDX-License-Identifier: MIT
#include <bifolium/imposition.hpp>

using namespace bifolium;

int page_behind_page_one(); // in two.cpp: both units name the same tables

int main() {
  constexpr auto const& formes = impose<schemes::octavo>();
  static_assert(formes.outer(1, 0) == head_up(1));
  return page_behind_page_one() == 8 && fold(schemes::octavo.scheme()) ? 0 : 1;
}
