// SPDX-License-Identifier: MIT
#include <every_header.hpp>
