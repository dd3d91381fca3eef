# SPDX-License-Identifier: MIT
# a misspelt component is told here, and not where its target is missing
foreach(component IN LISTS bifolium_FIND_COMPONENTS)
  set(bifolium_${component}_FOUND FALSE)
  if(component STREQUAL "compiled")
    set(bifolium_compiled_FOUND TRUE)
  elseif(bifolium_FIND_REQUIRED_${component})
    set(bifolium_FOUND FALSE)
    set(bifolium_NOT_FOUND_MESSAGE "bifolium has no component '${component}': it has one, 'compiled'")
    return()
  endif()
endforeach()
include("${CMAKE_CURRENT_LIST_DIR}/bifolium-targets.cmake")
if("compiled" IN_LIST bifolium_FIND_COMPONENTS)
  include("${CMAKE_CURRENT_LIST_DIR}/compiled.cmake") # bifolium::compiled, built with the project's own flags
endif()
# The module unit, for a file set of type CXX_MODULES (CMake 3.28 and later); see cmake/doc/use.md in the source.
set(bifolium_MODULE "${CMAKE_CURRENT_LIST_DIR}/bifolium.cppm")
