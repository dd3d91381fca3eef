# SPDX-License-Identifier: MIT
include(CMakeFindDependencyMacro)
find_dependency(bifolium 0.2 CONFIG)
include("${CMAKE_CURRENT_LIST_DIR}/own-targets.cmake")
