// SPDX-License-Identifier: MIT
/// The version of the library, stated only here. The build reads it from the three lines below.
#pragma once

/// The first number. It changes when users must change their programs; it is 0 while the interface may still change.
#define BIFOLIUM_VERSION_MAJOR 0
/// The second number. It changes when something is added; while the first number is 0, also when users must change
/// their programs.
#define BIFOLIUM_VERSION_MINOR 2
/// The third number. It changes when a fault is corrected.
#define BIFOLIUM_VERSION_PATCH 0
