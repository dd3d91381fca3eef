#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What optimizers warn about depends on how far they look: the main entry points under levels of optimization that the tests do
# not use or use with fewer warnings, and under the address sanitizer, without a warning. What is taken into one function
# depends on what else the unit has, so the compiled part is looked at by itself, at the levels at which users build it: g++ 12
# -O3, the level of a plain CMake build, warned there of a copy that it did not make for the entry points.
# Users compile with -Wnull-dereference as well, which says something of g++ only where it optimizes: a pointer that is there because
# of what was asked elsewhere is asked again where it is used. It adds a second to the forty that g++ 12 takes for a level.
#   tests/headers/optimized.sh INCLUDE FOLDER COMPILER [FLAGS...]; FOLDER is for what is written
set -euo pipefail
include=$1 folder=$2
shift 2
unit=$(dirname "$0")/entry_points.cpp
mkdir -p "$folder"
for flags in -Os -Og -O2 -O3 "-O1 -fsanitize=address" "-O1 -fsanitize=undefined -Wno-maybe-uninitialized" \
  "-Os -fno-exceptions -fno-rtti"; do
  read -ra these <<<"$flags"
  "$@" -std=c++20 "${these[@]}" -Wall -Wextra -Wnull-dereference -Werror "-I$include" -c "$unit" -o "$folder/entry_points.o"
  echo "no warning with $flags"
done
for flags in -O2 "-O3 -DNDEBUG"; do
  read -ra these <<<"$flags"
  "$@" -std=c++20 "${these[@]}" -Wall -Wextra -Wnull-dereference -Werror "-I$include" \
    -c "$(dirname "$0")/../../cmake/compiled.cpp" -o "$folder/compiled.o"
  echo "no warning in the compiled part with $flags"
done
