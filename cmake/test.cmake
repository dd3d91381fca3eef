# SPDX-License-Identifier: MIT
# Installs what is needed, builds everything and runs the tests; the last lines are the test runner's summary:
#   cmake -P cmake/test.cmake
include("${CMAKE_CURRENT_LIST_DIR}/setup.cmake")
need(g++ ninja-build doctest-dev libbenchmark-dev libboost-dev libpugixml-dev libxml2-utils pkg-config dpkg-dev units parallel)
build(build-test -DBIFOLIUM_BUILD_TESTS=ON -DBIFOLIUM_BUILD_BENCH=ON -DBIFOLIUM_BUILD_EXAMPLES=ON)
run(${CMAKE_CTEST_COMMAND} --test-dir "${source}/build-test" --output-on-failure --no-tests=error)
