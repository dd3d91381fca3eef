#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What it costs to include: milliseconds of the processor over an empty unit, for the units of bench/units.sh, only looked at
# and not compiled to the end. The least of several interleaved runs, as machines are noisy; "standard headers" is what the
# library's own includes cost by themselves, so no header of the library can cost less. What is counted, not timed, and the
# same on every run: bench/compile_counts.sh.
#   bench/compile_cost.sh [RUNS] [COMPILER ...]
set -euo pipefail
cd "$(dirname "$0")/.."
runs=${1:-7}
shift || true
[ $# -gt 0 ] || set -- g++ clang++-19
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
# shellcheck source=bench/units.sh
. bench/units.sh
write_units "$work"
units="nothing standard_headers leaf paper fold imposition collation edition evidence drawing bifolium schemes_0 schemes_asserted"
g++ -std=c++20 -Iinclude -M "$work/bifolium.cpp" | grep -o 'include/bifolium/[a-z_/]*\.hpp' |
  xargs sed -n 's/^\(#include <[a-z_]*>\).*/\1/p' | sort -u >"$work/standard_headers.cpp"

milliseconds() { # compiler, unit: time of the processor, which a busy machine spoils less than time of day
  local TIMEFORMAT='%U %S' took
  took=$( { time "$1" -std=c++20 -Iinclude -fsyntax-only "$2"; } 2>&1)
  awk '{ printf "%d", ($1 + $2) * 1000 + 0.5 }' <<<"$took"
}
for compiler; do
  declare -A least=()
  for ((run = 0; run < runs; ++run)); do
    for unit in $units; do
      took=$(milliseconds "$compiler" "$work/$unit.cpp")
      [ "${least[$unit]:-999999}" -gt "$took" ] && least[$unit]=$took
    done
  done
  echo "$($compiler --version | head -n 1): empty unit ${least[nothing]} ms; over that"
  for unit in $units; do
    [ "$unit" = nothing ] || printf '  %-20s %5d ms\n' "$unit" $((${least[$unit]} - ${least[nothing]}))
  done
done
