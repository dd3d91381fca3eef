#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# How much of the headers runs in the tests and the example programs, folder by folder: lines and functions, by clang's source-based
# coverage (Debian: clang-16 llvm-16). What runs only while compiling is not seen here. With a file named, that file line by line.
#   tests/coverage.sh [include/bifolium/leaf/roman.hpp]
set -euo pipefail
cd "$(dirname "$0")/.."
build=${BUILD:-build-coverage}
export LLVM_PROFILE_FILE="$PWD/$build/profiles/%p.profraw"
if [ $# = 0 ]; then
  cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_COMPILER=clang++-16 -DBIFOLIUM_BUILD_BENCH=OFF \
    -DCMAKE_CXX_FLAGS="-fprofile-instr-generate -fcoverage-mapping" ${CMAKE_ARGUMENTS:-} >/dev/null
  cmake --build "$build" --target bifolium_tests bifolium_draw_all list_errors examples/all tests/examples/all
  rm -rf "$build/profiles"
  "$build/tests/bifolium_tests" >"$build/tests.log" || { cat "$build/tests.log" && exit 1; }
  tail -n 3 "$build/tests.log"
  ctest --test-dir "$build" -j2 --output-on-failure --no-tests=error -R '^(example|lesson|drawing: every|docs)' >"$build/ctest.log" ||
    { cat "$build/ctest.log" && exit 1; }
  tail -n 4 "$build/ctest.log"
  llvm-profdata-16 merge -failure-mode=all -sparse "$build"/profiles/*.profraw -o "$build/all.profdata"
fi
programs=$(for program in "$build"/bin/* "$build/tests/docs/list_errors" "$build/tests/bifolium_draw_all"; do [ ! -f "$program" ] || printf -- "-object %s " "$program"; done)
cov() { llvm-cov-16 "$1" "$build/tests/bifolium_tests" $programs -instr-profile="$build/all.profdata" "${@:2}" 2>/dev/null; }
if [ $# = 1 ]; then
  cov show "$1" --show-instantiations=false
  exit
fi
# file, regions, missed, %, functions, missed, %, lines, missed, %, branches, missed, %
cov report include/bifolium | awk '
  /\.hpp / {
    folder = $1; if (!sub(/\/.*/, "", folder)) folder = "."
    functions[folder] += $5; functions_missed[folder] += $6; lines[folder] += $8; missed[folder] += $9
    all += $8; all_missed += $9; all_functions += $5; all_functions_missed += $6
    if ($9 > 0) printf "%-40s %5d lines not run of %d\n", $1, $9, $8
  }
  function row(name, f, fm, l, lm) { printf "%-12s %6.1f %% of %5d lines, %6.1f %% of %4d functions\n", name, 100 * (l - lm) / l, l, 100 * (f - fm) / f, f }
  END {
    for (folder in lines) row(folder, functions[folder], functions_missed[folder], lines[folder], missed[folder])
    row("all", all_functions, all_functions_missed, all, all_missed)
  }'
