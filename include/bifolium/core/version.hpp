// SPDX-License-Identifier: MIT
/// The version of the library, written here and nowhere else; the build reads it from three lines below.
#pragma once

/// Changes when a program must be changed; 0 while the interface is young.
#define BIFOLIUM_VERSION_MAJOR 0
/// Changes when something is added; while the first is 0, also when a program must be changed.
#define BIFOLIUM_VERSION_MINOR 2
/// Changes when something is mended.
#define BIFOLIUM_VERSION_PATCH 0
