// SPDX-License-Identifier: MIT
#include <bifolium/imposition.hpp>

int page_behind_page_one();
int page_behind_page_one() { return bifolium::impose<bifolium::schemes::octavo>().outer(0, 0).page; }
