# SPDX-License-Identifier: MIT
# Installs what is needed, builds the tests and the example programs and runs all tests; the last lines are the test runner's
# summary:
#   cmake -P cmake/test.cmake
# Tests whose tool is missing (a browser, a renderer) are skipped, and the reason of each is printed above the summary. Three that
# compile the whole library once more are left to .ci/full; `ctest --test-dir build-test -L whole` runs them.
include("${CMAKE_CURRENT_LIST_DIR}/setup.cmake")
need(g++ ninja-build doctest-dev libpugixml-dev libboost-dev libexpat1-dev libxml2-utils pkg-config dpkg-dev units parallel)
configure(build-test -DCMAKE_BUILD_TYPE=None "-DCMAKE_CXX_FLAGS=-Og -D_GLIBCXX_ASSERTIONS" -DBIFOLIUM_BUILD_TESTS=ON
          -DBIFOLIUM_BUILD_BENCH=OFF -DBIFOLIUM_BUILD_EXAMPLES=ON)
build(build-test)
test(build-test -LE whole)
