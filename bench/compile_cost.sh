#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What it costs to include: milliseconds of the processor over an empty unit for each folder's header, and for one unit that
# asserts all 61 schemes over its includes. The least of several interleaved runs, as machines are noisy.
#   bench/compile_cost.sh [RUNS] [COMPILER ...]
set -euo pipefail
cd "$(dirname "$0")/.."
runs=${1:-7}
shift || true
[ $# -gt 0 ] || set -- g++ clang++-19
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

: >"$work/empty.cpp"
for header in leaf paper fold imposition collation edition evidence drawing bifolium; do
  [ -f "include/bifolium/$header.hpp" ] && echo "#include <bifolium/$header.hpp>" >"$work/$header.cpp"
done
{
  echo '#include <bifolium/fold.hpp>'
  echo '#include <bifolium/imposition.hpp>'
} >"$work/schemes_includes.cpp"
{
  cat "$work/schemes_includes.cpp"
  echo 'using namespace bifolium;'
  echo 'template <SchemeRow Row> inline constexpr Attested row{Row};'
  for ((i = 0; i < 61; ++i)); do
    echo "static_assert(impose<row<static_cast<SchemeRow>($i)>>().place(1).row < 8);"
  done
} >"$work/schemes_all.cpp"

milliseconds() { # compiler, unit: time of the processor, which a busy machine spoils less than time of day
  local TIMEFORMAT='%U %S' took
  took=$( { time "$1" -std=c++20 -Iinclude -fsyntax-only "$2"; } 2>&1)
  awk '{ printf "%d", ($1 + $2) * 1000 + 0.5 }' <<<"$took"
}
for compiler; do
  declare -A least=()
  for ((run = 0; run < runs; ++run)); do
    for unit in "$work"/*.cpp; do
      took=$(milliseconds "$compiler" "$unit")
      [ "${least[$unit]:-999999}" -gt "$took" ] && least[$unit]=$took
    done
  done
  echo "$($compiler --version | head -n 1): empty unit ${least[$work/empty.cpp]} ms; over that"
  for unit in "$work"/*.cpp; do
    name=$(basename "$unit" .cpp)
    [ "$name" = empty ] || printf '  %-20s %5d ms\n' "$name" $((${least[$unit]} - ${least[$work/empty.cpp]}))
  done
done
