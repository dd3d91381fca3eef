# SPDX-License-Identifier: MIT
# Installs what is needed, shows and draws the formes of an octavo, describes the book of the demo, then builds the other programs:
#   cmake -P cmake/run.cmake
# The quickest program is first, so that there is something to look at while the others are built. They are compiled with -O1, which
# takes half as long as what `cmake --install` and the package are made from.
include("${CMAKE_CURRENT_LIST_DIR}/setup.cmake")
need(g++ ninja-build)
configure(build-run -DCMAKE_BUILD_TYPE=None "-DCMAKE_CXX_FLAGS=-O1 -DNDEBUG" -DBIFOLIUM_BUILD_TESTS=OFF -DBIFOLIUM_BUILD_BENCH=OFF
          -DBIFOLIUM_BUILD_EXAMPLES=ON)
build(build-run show_formes)
run("${source}/build-run/bin/show_formes" 8_octavo --svg "${source}/build-run/octavo.svg")
message(STATUS "the formes of an octavo are drawn in ${source}/build-run/octavo.svg")
build(build-run describe_book)
run("${source}/build-run/bin/describe_book" "${source}/examples/demo_book.txt" --all)
build(build-run bifolium_programs)
message(STATUS "the programs are in ${source}/build-run/bin; each tells its use with --help")
