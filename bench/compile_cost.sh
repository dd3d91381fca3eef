#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What a compiler pays to include the header of each folder: user time over an empty unit, only looked at and not
# compiled to the end, the least of several interleaved runs. The ratio is to a unit with #include <string> in the same
# runs, which a busy machine stretches as much. "Standard headers" is what bifolium.hpp includes of the standard
# library. What it costs to use a function as well: bench/use_cost.sh. What is counted, not timed:
# bench/compile_counts.sh.
#   bench/compile_cost.sh [RUNS] [COMPILER ...]             (default: 7 g++ clang++-19)
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
for header in copy explain book record; do echo "#include <bifolium/$header.hpp>" >"$work/$header.cpp"; done
echo '#include <string>' >"$work/string.cpp"
g++ -std=c++20 -Iinclude -M "$work/bifolium.cpp" | grep -o 'include/bifolium/[a-z_/]*\.hpp' |
  xargs sed -n 's/^\(#include <[a-z_]*>\).*/\1/p' | sort -u >"$work/standard_headers.cpp"
units="string standard_headers leaf paper fold imposition collation edition evidence copy explain drawing bifolium record book schemes_0 schemes_asserted"
declare -A asked=([leaf]=0.12 [imposition]=0.30 [collation]=0.55 [bifolium]=1.20)

declare -A least
measure() { # compiler, unit, flags
  local TIMEFORMAT=%U took
  took=$( { time "$1" -std=c++20 -Iinclude "${@:3}" -fsyntax-only "$work/$2.cpp"; } 2>&1)
  if [ -z "${least[$2$3]:-}" ] || awk -v a="$took" -v b="${least[$2$3]}" 'BEGIN { exit !(a < b) }'; then least[$2$3]=$took; fi
}
for compiler; do
  least=()
  for ((run = 0; run < runs; ++run)); do
    measure "$compiler" nothing -DNDEBUG
    for unit in $units; do
      measure "$compiler" "$unit" -DNDEBUG
      measure "$compiler" "$unit" -DBIFOLIUM_COMPILED
    done
  done
  empty=${least[nothing-DNDEBUG]}
  printf '%s, least of %d runs; the empty unit takes %s s\n\n' "$("$compiler" --version | head -n 1)" "$runs" "$empty"
  printf '| header | seconds | ratio to <string> | asked for | seconds with bifolium::compiled |\n|---|---|---|---|---|\n'
  for unit in $units; do
    awk -v name="$unit" -v empty="$empty" -v string="${least[string-DNDEBUG]}" -v took="${least[$unit-DNDEBUG]}" \
      -v compiled="${least[$unit-DBIFOLIUM_COMPILED]}" -v asked="${asked[$unit]:-}" 'BEGIN {
        printf "| %s | %.2f | %.1f | %s | %.2f |\n", name, took - empty, (took - empty) / (string - empty),
          asked == "" ? "" : asked " s", compiled - empty }'
  done
  printf '\n'
done
