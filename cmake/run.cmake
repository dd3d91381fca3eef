# SPDX-License-Identifier: MIT
# Installs what is needed, builds the example programs and describes the book of the demo:
#   cmake -P cmake/run.cmake
include("${CMAKE_CURRENT_LIST_DIR}/setup.cmake")
need(g++ ninja-build)
build(build-run -DBIFOLIUM_BUILD_TESTS=OFF -DBIFOLIUM_BUILD_BENCH=OFF -DBIFOLIUM_BUILD_EXAMPLES=ON)
run("${source}/build-run/bin/describe_book" "${source}/examples/demo_book.txt")
