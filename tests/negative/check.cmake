# SPDX-License-Identifier: MIT
# What must not compile. A case is a file compiled twice: without MISUSE it must compile (the control), with MISUSE it must
# not, and the compiler must say one of the sentences the file names in lines `// says: ...` (all alternatives are tried;
# for one compiler alone: `// says g++: ...`, `// says clang: ...`).
#   cmake -DCASE=file.cpp -DCXX=... -DCXX_FLAGS=... -DINCLUDE=... -DCOMPILER=GNU|Clang -P check.cmake
cmake_minimum_required(VERSION 3.16)
set(ENV{LC_ALL} C)
separate_arguments(flags UNIX_COMMAND "${CXX_FLAGS}")
set(compile "${CXX}" ${flags} -std=c++20 -fsyntax-only "-I${INCLUDE}")

execute_process(COMMAND ${compile} "${CASE}" RESULT_VARIABLE failed ERROR_VARIABLE said)
if(failed)
  message(FATAL_ERROR "the control does not compile:\n${said}")
endif()
execute_process(COMMAND ${compile} -DMISUSE "${CASE}" RESULT_VARIABLE failed ERROR_VARIABLE said)
if(NOT failed)
  message(FATAL_ERROR "the misuse compiles")
endif()

set(own "clang")
if(COMPILER STREQUAL "GNU")
  set(own "g\\+\\+")
endif()
file(STRINGS "${CASE}" sentences REGEX "^// says( ${own})?: ")
if(NOT sentences)
  message(FATAL_ERROR "the case names no sentence for this compiler")
endif()
foreach(line IN LISTS sentences)
  string(REGEX REPLACE "^// says[^:]*: " "" sentence "${line}")
  string(FIND "${said}" "${sentence}" found)
  if(NOT found EQUAL -1)
    return()
  endif()
endforeach()
message(FATAL_ERROR "the compiler says none of the sentences:\n${sentences}\nbut:\n${said}")
