#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What optimizers warn about depends on how far they look: the main entry points under levels of optimization that the tests do
# not use or use with fewer warnings, and under the address sanitizer, without a warning.
#   tests/headers/optimized.sh INCLUDE FOLDER COMPILER [FLAGS...]; FOLDER is for what is written
set -euo pipefail
include=$1 folder=$2
shift 2
unit=$(dirname "$0")/entry_points.cpp
mkdir -p "$folder"
for flags in -Os -Og -O2 -O3 "-O1 -fsanitize=address" "-O1 -fsanitize=undefined -Wno-maybe-uninitialized" \
  "-Os -fno-exceptions -fno-rtti"; do
  read -ra these <<<"$flags"
  "$@" -std=c++20 "${these[@]}" -Wall -Wextra -Werror "-I$include" -c "$unit" -o "$folder/entry_points.o"
  echo "no warning with $flags"
done
