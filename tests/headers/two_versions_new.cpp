// SPDX-License-Identifier: MIT
#include "two_versions.hpp"

std::string seen_by_new();
std::string seen_by_new() { return seen_by_this_unit(); }
/// Throws what the older unit must not take for its own.
void break_new();
void break_new() { bifolium::broken("of the new version"); }
