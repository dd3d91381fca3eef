# SPDX-License-Identifier: MIT
# Builds the benchmarks, runs all of them and prints one table of ratios with commit, compiler, flags and machine:
#   cmake -P cmake/bench.cmake
# Each ratio is of two measurements of one run, the least of several repetitions. The table also goes to build-bench/table.md.
include("${CMAKE_CURRENT_LIST_DIR}/setup.cmake")
need(g++ ninja-build libbenchmark-dev libboost-dev git)
set(flags "-O2 -DNDEBUG")
configure(build-bench -DCMAKE_BUILD_TYPE=Release "-DCMAKE_CXX_FLAGS_RELEASE=${flags}" -DBIFOLIUM_BUILD_BENCH=ON
      -DBIFOLIUM_BUILD_TESTS=OFF -DBIFOLIUM_BUILD_EXAMPLES=OFF)
build(build-bench)

execute_process(COMMAND git -C "${source}" describe --always --dirty OUTPUT_VARIABLE commit OUTPUT_STRIP_TRAILING_WHITESPACE
                ERROR_QUIET)
load_cache("${source}/build-bench" READ_WITH_PREFIX built_ CMAKE_CXX_COMPILER)
execute_process(COMMAND "${built_CMAKE_CXX_COMPILER}" --version OUTPUT_VARIABLE compiler)
string(REGEX REPLACE "\n.*" "" compiler "${compiler}")
cmake_host_system_information(RESULT processor QUERY PROCESSOR_DESCRIPTION)
cmake_host_system_information(RESULT cores QUERY NUMBER_OF_LOGICAL_CORES)
string(TIMESTAMP today "%Y-%m-%d" UTC)

set(table "Commit ${commit}, ${today}; ${compiler}, ${flags}; ${processor}, ${cores} logical cores.\n\n")
string(APPEND table "| what | takes | beside it | ratio | asked for |\n|---|---|---|---|---|\n")
file(GLOB benches "${source}/build-bench/bin/bench_*")
foreach(bench IN LISTS benches)
  message(STATUS "running ${bench}")
  execute_process(COMMAND "${bench}" --table --benchmark_repetitions=5 --benchmark_min_time=0.1 RESULT_VARIABLE failed
                  OUTPUT_VARIABLE rows)
  if(failed)
    message(FATAL_ERROR "failed: ${bench}")
  endif()
  string(APPEND table "${rows}")
endforeach()
file(WRITE "${source}/build-bench/table.md" "${table}")
message("${table}")
