# SPDX-License-Identifier: MIT
# A lambda is constexpr by itself, so g++ runs the one that makes a static while a program only includes the header, and no
# limit of steps shows it. What is made once a program is made by a named function that is not constexpr.
#   cmake -DINCLUDE=... -P no_eager_lambda.cmake
cmake_minimum_required(VERSION 3.16)
set(eager "static [^;(]*= *\\[")
set(control "  static auto const all = [] { return 1; }();")
if(NOT control MATCHES "${eager}")
  message(FATAL_ERROR "the pattern does not find what it is for")
endif()
file(GLOB_RECURSE headers "${INCLUDE}/*.hpp")
if(NOT headers)
  message(FATAL_ERROR "no headers in ${INCLUDE}")
endif()
foreach(header IN LISTS headers)
  file(STRINGS "${header}" lines REGEX "${eager}")
  if(lines)
    message(SEND_ERROR "${header}: a static made by a lambda: ${lines}")
  endif()
endforeach()
