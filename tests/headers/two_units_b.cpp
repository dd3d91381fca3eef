// SPDX-License-Identifier: MIT
#include <every_header.hpp>

int pages_of_octavo();
int pages_of_octavo() { return bifolium::impose<bifolium::schemes::octavo>().pages(); }
