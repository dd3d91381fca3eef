# SPDX-License-Identifier: MIT
# Runs a program and compares all it prints and its exit code.
# LAUNCHER is put before the program, such as valgrind with its options.
#   cmake -DPROGRAM=... [-DARGUMENTS=a;b] [-DINPUT=file] -DEXPECTED=file -DCODE=0 -P run.cmake
# EXPECTED holds standard output; if a file EXPECTED.err is beside it, it holds standard error.
cmake_minimum_required(VERSION 3.16)
set(input)
if(INPUT)
  set(input INPUT_FILE "${INPUT}")
endif()
execute_process(COMMAND ${LAUNCHER} "${PROGRAM}" ${ARGUMENTS} ${input} OUTPUT_VARIABLE out ERROR_VARIABLE err RESULT_VARIABLE code)
if(NOT code EQUAL "${CODE}")
  message(FATAL_ERROR "exit code ${code}, not ${CODE}\n${out}${err}")
endif()
file(READ "${EXPECTED}" expected)
if(NOT out STREQUAL expected)
  message(FATAL_ERROR "printed\n${out}\ninstead of\n${expected}")
endif()
set(expected)
if(EXISTS "${EXPECTED}.err")
  file(READ "${EXPECTED}.err" expected)
endif()
if(NOT err STREQUAL "${expected}")
  message(FATAL_ERROR "said\n${err}\ninstead of\n${expected}")
endif()
