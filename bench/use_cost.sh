#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What a compiler pays to include a header and to use one function of it: user time of units compiled to the end, the
# least of several interleaved runs, with headers only and with bifolium::compiled. A busy machine stretches all times,
# so every time is also given as a ratio to a unit with #include <string>, measured in the same runs.
#   bench/use_cost.sh [RUNS] [COMPILER] [FLAGS ...]        (default: 5 g++-12 -O2)
set -euo pipefail
cd "$(dirname "$0")/.."
runs=${1:-5} compiler=${2:-g++-12}
shift $(($# < 2 ? $# : 2))
[ $# -gt 0 ] || set -- -O2
flags=("$@")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

unit() { # name, header, body of a function
  printf '#include <%s>\nusing namespace bifolium;\n%s\n' "$2" "$3" >"$work/$1.cpp"
}
printf '#include <string>\nstd::string kept;\n' >"$work/string.cpp"
formula='long leaves(std::string_view text) { auto const formula = read_formula(text); return formula ? formula->leaves() : -1; }'
format='double share(millimetres height, millimetres width) {
  auto const seen = observe({.height = height, .width = width, .year = 1600});
  return seen ? infer_format(*seen).front().probability : -1; }'
bill='long sheets(int pages, int copies) {
  auto const bill = reckon({.scheme = schemes::octavo, .pages = pages, .copies = copies, .ream = reams::of_500});
  return bill ? bill->sheets.stated : -1; }'
functions="read_formula infer_format reckon all_three"
declare -A header=([read_formula]=bifolium/collation/read_formula.hpp [infer_format]=bifolium/evidence/infer.hpp
  [reckon]=bifolium/edition/bill.hpp [all_three]=bifolium/bifolium.hpp)
declare -A body=([read_formula]=$formula [infer_format]=$format [reckon]=$bill [all_three]="$formula $format $bill")
declare -A asked=([read_formula]=1.2 [infer_format]=1.0 [reckon]=0.8 [all_three]=3.0)
units=(string)
for name in $functions; do
  unit "include_$name" "${header[$name]}" ""
  unit "use_$name" "${header[$name]}" "${body[$name]}"
  units+=("include_$name" "use_$name" "include_$name:compiled" "use_$name:compiled")
done

declare -A least=()
measure() { # unit, or unit:compiled
  local TIMEFORMAT=%U took define=()
  [[ $1 != *:compiled ]] || define=(-DBIFOLIUM_COMPILED)
  took=$( { time "$compiler" -std=c++20 -Iinclude "${flags[@]}" "${define[@]}" -c "$work/${1%:*}.cpp" -o "$work/out.o" \
    2>"$work/said"; } 2>&1) || { cat "$work/said" >&2; return 1; }
  if [ -z "${least[$1]:-}" ] || awk -v a="$took" -v b="${least[$1]}" 'BEGIN { exit !(a < b) }'; then least[$1]=$took; fi
}
for ((run = 0; run < runs; ++run)); do
  for name in "${units[@]}"; do measure "$name"; done
done

string=${least[string]}
cell() { # seconds over, and their ratio to the unit with <string>
  awk -v a="$1" -v b="$2" -v unit="$string" 'BEGIN { printf "%.2f s (%.1f)", a - b, (a - b) / unit }'
}
printf '%s %s, least of %d runs; #include <string> takes %s s, which is 1 in the parentheses\n\n' \
  "$("$compiler" --version | head -n 1)" "${flags[*]}" "$runs" "$string"
printf '| function | including, over <string> | using, over including | asked for | compiled: including | compiled: using |\n'
printf '|---|---|---|---|---|---|\n'
for name in $functions; do
  printf '| %s | %s | %s | %s s | %s | %s |\n' "$name" "$(cell "${least[include_$name]}" "$string")" \
    "$(cell "${least[use_$name]}" "${least[include_$name]}")" "${asked[$name]}" \
    "$(cell "${least[include_$name:compiled]}" "$string")" \
    "$(cell "${least[use_$name:compiled]}" "${least[include_$name:compiled]}")"
done
