# SPDX-License-Identifier: MIT
# Writes the reference as HTML, and fails where Doxygen warns: anything public without a comment, a link to nothing.
#   cmake -DOUT=build/doc [-DDOXYGEN=doxygen] -P cmake/doc/check.cmake
# Installs Doxygen where it is missing.
cmake_minimum_required(VERSION 3.16)
include("${CMAKE_CURRENT_LIST_DIR}/../setup.cmake")
if(NOT DOXYGEN)
  need(doxygen perl)
endif()
get_filename_component(source "${CMAKE_CURRENT_LIST_DIR}/../.." ABSOLUTE)
if(NOT DOXYGEN)
  set(DOXYGEN doxygen)
endif()
get_filename_component(OUT "${OUT}" ABSOLUTE BASE_DIR "${CMAKE_BINARY_DIR}")

file(STRINGS "${source}/include/bifolium/core/version.hpp" lines REGEX "^#define BIFOLIUM_VERSION_")
string(REGEX REPLACE "[^0-9;]" "" lines "${lines}")
list(JOIN lines "." version)
set(ENV{BIFOLIUM_VERSION} "${version}")

function(document input out failed_variable)
  set(ENV{BIFOLIUM_DOC} "${out}")
  file(READ "${source}/cmake/doc/Doxyfile" settings)
  file(REMOVE_RECURSE "${out}")
  file(WRITE "${out}/Doxyfile" "${settings}\nINPUT = ${input}\n")
  execute_process(COMMAND "${DOXYGEN}" "${out}/Doxyfile" WORKING_DIRECTORY "${source}" RESULT_VARIABLE failed
                  OUTPUT_VARIABLE said ERROR_VARIABLE said)
  set(${failed_variable} "${failed}" PARENT_SCOPE)
  set(said "${said}" PARENT_SCOPE)
endfunction()

# The control: what has no comment must be told from what has one.
file(WRITE "${OUT}/control/input/control.hpp"
     "// SPDX-License-Identifier: MIT\n/// A control.\n#pragma once\n/// A type.\nstruct Said {\n  int unsaid();\n};\n")
document("${OUT}/control/input/control.hpp" "${OUT}/control/out" failed)
if(NOT failed OR NOT said MATCHES "unsaid\\(\\)[^\n]*is not documented")
  message(FATAL_ERROR "a function without a comment is not reported:\n${said}")
endif()

document("include README.md DEVELOPERS.md cmake/doc examples/teaching/course.md examples/teaching/answers.md" "${OUT}/reference" failed)
if(NOT said STREQUAL "")
  message(FATAL_ERROR "${said}")
endif()
foreach(page IN ITEMS index classbifolium_1_1v0_1_1Signature structbifolium_1_1v0_1_1Error)
  if(NOT EXISTS "${OUT}/reference/html/${page}.html")
    message(FATAL_ERROR "the reference has no page ${page}.html")
  endif()
endforeach()
message(STATUS "version ${version}: ${OUT}/reference/html/index.html")
