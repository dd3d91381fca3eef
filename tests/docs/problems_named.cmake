# SPDX-License-Identifier: MIT
# Every problem that the library can tell is told in a test: a source of the tests names it as Problem::identifier, or an example
# program prints its identifier in what a test expects of it. A problem that nothing can tell is no row of the table.
#   cmake -DSOURCE=... -P problems_named.cmake
cmake_minimum_required(VERSION 3.16)
file(READ "${SOURCE}/include/bifolium/core/detail/problem_table.hpp" table)
string(REGEX MATCHALL "\nBIFOLIUM_PROBLEM\\([0-9]+, [a-z0-9_]+" rows "${table}")
if(NOT rows)
  message(FATAL_ERROR "no row of the table of problems could be read")
endif()

set(named "")
file(GLOB_RECURSE sources "${SOURCE}/tests/*.cpp" "${SOURCE}/tests/*.hpp")
foreach(source IN LISTS sources)
  file(READ "${source}" text)
  string(REGEX REPLACE "//[^\n]*" "" text "${text}") # a comment tests nothing
  string(REGEX MATCHALL "Problem::[a-z0-9_]+" names "${text}")
  list(APPEND named ${names})
endforeach()
file(GLOB outputs "${SOURCE}/tests/examples/*.txt" "${SOURCE}/tests/examples/*.err" "${SOURCE}/tests/examples/*.json")
foreach(output IN LISTS outputs)
  file(READ "${output}" text)
  string(REGEX MATCHALL "[a-z0-9_]+" words "${text}")
  foreach(word IN LISTS words)
    list(APPEND named "Problem::${word}")
  endforeach()
endforeach()
list(REMOVE_DUPLICATES named)

set(missing "")
foreach(row IN LISTS rows)
  string(REGEX REPLACE ".*, " "" identifier "${row}")
  if(NOT identifier STREQUAL "none" AND NOT "Problem::${identifier}" IN_LIST named)
    string(APPEND missing "\n  ${identifier}")
  endif()
endforeach()
if(missing)
  message(FATAL_ERROR "no test tells these problems: write the input that has each, with the place that is told, or take its row out:${missing}")
endif()
