# SPDX-License-Identifier: MIT
# Every block of C++ in README.md is compiled, run, and its output compared with the block of text after it.
#   cmake -DREADME=... -DCXX=... -DINCLUDE=... -DWORK=... -P check.cmake
# A program that starts with a #include is whole; a block without one is a fragment and is passed over only if the line
# before its fence says <!-- fragment -->, so that nothing escapes by accident.
cmake_minimum_required(VERSION 3.16)

file(READ "${README}" rest)
file(MAKE_DIRECTORY "${WORK}")
set(fence "```")
set(number 0)
while(TRUE)
  string(FIND "${rest}" "${fence}cpp\n" start)
  if(start EQUAL -1)
    break()
  endif()
  string(SUBSTRING "${rest}" 0 ${start} before)
  math(EXPR start "${start} + 7")
  string(SUBSTRING "${rest}" ${start} -1 rest)
  string(FIND "${rest}" "${fence}" end)
  string(SUBSTRING "${rest}" 0 ${end} program)
  math(EXPR end "${end} + 4")
  string(SUBSTRING "${rest}" ${end} -1 rest)
  if(before MATCHES "<!-- fragment -->\n$")
    continue()
  endif()
  math(EXPR number "${number} + 1")

  string(FIND "${rest}" "${fence}text\n" start)
  if(start EQUAL -1)
    message(FATAL_ERROR "program ${number} of the README has no block of text with its output")
  endif()
  math(EXPR start "${start} + 8")
  string(SUBSTRING "${rest}" ${start} -1 rest)
  string(FIND "${rest}" "${fence}" end)
  string(SUBSTRING "${rest}" 0 ${end} expected)

  file(WRITE "${WORK}/program_${number}.cpp" "${program}")
  separate_arguments(flags UNIX_COMMAND "${CXX_FLAGS}")
  execute_process(
    COMMAND "${CXX}" ${flags} -std=c++20 -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Werror "-I${INCLUDE}"
            "${WORK}/program_${number}.cpp" -o "${WORK}/program_${number}"
    RESULT_VARIABLE failed
    ERROR_VARIABLE errors)
  if(failed)
    message(FATAL_ERROR "program ${number} of the README does not compile:\n${errors}")
  endif()
  execute_process(
    COMMAND "${WORK}/program_${number}"
    OUTPUT_VARIABLE output
    RESULT_VARIABLE failed)
  if(failed OR NOT output STREQUAL expected)
    message(FATAL_ERROR "program ${number} of the README prints\n${output}\nand the README says\n${expected}")
  endif()
endwhile()
if(number EQUAL 0)
  message(FATAL_ERROR "the README shows no program")
endif()
message(STATUS "${number} programs of the README compile and print what it says")
