// SPDX-License-Identifier: MIT
// Everything in two units of one program, with the macros that a well-known system header defines.
#define min(a, b) ((a) < (b) ? (a) : (b))
#define max(a, b) ((a) > (b) ? (a) : (b))
#include <every_header.hpp>

int pages_of_octavo();
int main() { return pages_of_octavo() == bifolium::impose<bifolium::schemes::octavo>().pages() ? 0 : 1; }
