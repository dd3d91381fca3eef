#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What it costs a compiler to use the library, not only to include it: processor time of a unit that calls one function, less
# that of a unit that includes the same header and calls none. The least of several interleaved runs.
#   bench/use_cost.sh [RUNS] [COMPILER] [FLAGS ...]        (default: 5 g++-12 -O2)
set -euo pipefail
cd "$(dirname "$0")/.."
runs=${1:-5} compiler=${2:-g++-12}
shift $(($# < 2 ? $# : 2))
[ $# -gt 0 ] || set -- -O2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

unit() { # name, headers, body of a function
  { for header in $2; do echo "#include <$header>"; done; printf 'using namespace bifolium;\n%s\n' "$3"; } >"$work/$1.cpp"
}
printf '#include <string>\nstd::string kept;\n' >"$work/string.cpp"
formula='long leaves(std::string_view text) { auto const formula = read_formula(text); return formula ? formula->leaves() : -1; }'
format='double share(Millimetres height, Millimetres width) {
  auto const seen = observe({.height = height, .width = width, .year = 1600});
  return seen ? infer_format(*seen).front().probability : -1; }'
bill='long sheets(int pages, int copies) {
  auto const bill = reckon({.scheme = schemes::octavo, .pages = pages, .copies = copies, .ream = reams::of_500});
  return bill ? bill->sheets.stated : -1; }'
format=${format//Millimetres/millimetres}
unit include_read_formula bifolium/collation/read_formula.hpp ""
unit use_read_formula bifolium/collation/read_formula.hpp "$formula"
unit include_infer_format bifolium/evidence.hpp ""
unit use_infer_format bifolium/evidence.hpp "$format"
unit include_reckon bifolium/edition.hpp ""
unit use_reckon bifolium/edition.hpp "$bill"
unit include_all bifolium/bifolium.hpp ""
unit use_all bifolium/bifolium.hpp "$formula
$format
$bill"

declare -A least=()
milliseconds() {
  local TIMEFORMAT='%U %S' took
  took=$( { time "$compiler" -std=c++20 -Iinclude "${flags[@]}" -c "$work/$1.cpp" -o "$work/$1.o" 2>"$work/said"; } 2>&1) ||
    { cat "$work/said" >&2; return 1; }
  awk '{ printf "%d", ($1 + $2) * 1000 + 0.5 }' <<<"$took"
}
flags=("$@")
units="string include_read_formula use_read_formula include_infer_format use_infer_format include_reckon use_reckon include_all use_all"
for ((run = 0; run < runs; ++run)); do
  for name in $units; do
    took=$(milliseconds "$name")
    [ "${least[$name]:-999999}" -gt "$took" ] && least[$name]=$took
  done
done
printf '%s %s; milliseconds over a unit with #include <string> (%d ms)\n' "$($compiler --version | head -n 1)" "$*" "${least[string]}"
printf '%-14s %10s %22s\n' function including 'using, over including'
for name in read_formula infer_format reckon all; do
  printf '%-14s %10d %22d\n' "$name" $((least[include_$name] - least[string])) $((least[use_$name] - least[include_$name]))
done
