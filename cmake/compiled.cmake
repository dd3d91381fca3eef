# SPDX-License-Identifier: MIT
# The target bifolium::compiled: what links it compiles the functions with the most machinery once, and not in each unit.
if(NOT TARGET bifolium_compiled)
  add_library(bifolium_compiled STATIC EXCLUDE_FROM_ALL "${CMAKE_CURRENT_LIST_DIR}/compiled.cpp")
  add_library(bifolium::compiled ALIAS bifolium_compiled)
  target_compile_definitions(bifolium_compiled PUBLIC BIFOLIUM_COMPILED)
  target_link_libraries(bifolium_compiled PUBLIC bifolium::bifolium)
endif()
