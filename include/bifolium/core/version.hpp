// SPDX-License-Identifier: MIT
/// The version of the library, written here and nowhere else; the build reads it from these three lines.
#pragma once

#define BIFOLIUM_VERSION_MAJOR 0
#define BIFOLIUM_VERSION_MINOR 1
#define BIFOLIUM_VERSION_PATCH 0
