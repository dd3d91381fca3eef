# SPDX-License-Identifier: MIT
# Installs what is needed, describes the book of the demo, draws a picture, then builds the other example programs:
#   cmake -P cmake/run.cmake
include("${CMAKE_CURRENT_LIST_DIR}/setup.cmake")
need(g++ ninja-build)
configure(build-run -DBIFOLIUM_BUILD_TESTS=OFF -DBIFOLIUM_BUILD_BENCH=OFF -DBIFOLIUM_BUILD_EXAMPLES=ON)
build(build-run describe_book show_formes)
run("${source}/build-run/bin/describe_book" "${source}/examples/demo_book.txt" --all)
run("${source}/build-run/bin/show_formes" 8_octavo --svg "${source}/build-run/octavo.svg")
message(STATUS "the formes of an octavo are drawn in ${source}/build-run/octavo.svg")
build(build-run)
message(STATUS "the example programs are in ${source}/build-run/bin; each tells its use with --help")
