# SPDX-License-Identifier: MIT
include("${CMAKE_CURRENT_LIST_DIR}/bifolium-targets.cmake")
if("compiled" IN_LIST bifolium_FIND_COMPONENTS)
  include("${CMAKE_CURRENT_LIST_DIR}/compiled.cmake") # bifolium::compiled, built with the project's own flags
endif()
# The module unit, for a file set of type CXX_MODULES (CMake 3.28 and later); see cmake/doc/use.md in the source.
set(bifolium_MODULE "${CMAKE_CURRENT_LIST_DIR}/bifolium.cppm")
