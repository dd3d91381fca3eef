// SPDX-License-Identifier: MIT
#include <bifolium/bifolium.hpp>
