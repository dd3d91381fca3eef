# SPDX-License-Identifier: MIT
# The page of errors is what list_errors prints. After a new problem or precondition, write it again:
#   build/tests/docs/list_errors include > cmake/doc/errors.md
cmake_minimum_required(VERSION 3.16)
execute_process(COMMAND "${PROGRAM}" "${INCLUDE}" OUTPUT_VARIABLE printed ERROR_VARIABLE said RESULT_VARIABLE failed)
file(READ "${PAGE}" page)
if(failed)
  message(FATAL_ERROR "${said}")
elseif(NOT printed STREQUAL page)
  message(FATAL_ERROR "the page is not what is printed: ${PROGRAM} ${INCLUDE} > ${PAGE}")
endif()
