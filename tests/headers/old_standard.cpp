// SPDX-License-Identifier: MIT
// Compiled as C++17, which must end in the sentence that asks for C++20. (constructed)
#include <bifolium/bifolium.hpp>
