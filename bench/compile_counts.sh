#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What there is to compile, counted: lines after the preprocessor, those of the library's own among them, templates
# instantiated (clang 19 with libstdc++), and for programs the bytes of code and data (g++ 12, -O2). Counts are the same
# on every run; they are held to the record within 5 %. A header that grew on purpose is recorded again.
#   bench/compile_counts.sh [--record | --every-header]
set -euo pipefail
cd "$(dirname "$0")/.."
record=bench/compile_counts.tsv
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
# shellcheck source=bench/units.sh
. bench/units.sh

count() { # unit: lines, own lines, instantiations, bytes
  local unit=$1 trace=$work/$(basename "$1").json bytes=-
  g++-12 -std=c++20 -Iinclude -E "$unit" >"$unit.i"
  clang++-19 -std=c++20 -Iinclude -c -o "$unit.o" -ftime-trace="$trace" -ftime-trace-granularity=0 "$unit"
  if grep -q 'int main' "$unit"; then
    g++-12 -std=c++20 -O2 -DNDEBUG -Iinclude "$unit" -o "$unit.out"
    bytes=$(size "$unit.out" | awk 'NR == 2 { print $1 + $2 + $3 }')
  fi
  awk -v instantiations="$(grep -o '"name":"Instantiate[CF][a-z]*"' "$trace" | wc -l)" -v bytes="$bytes" '
    /^# [0-9]+ "/ { own = $3 ~ /^"include\/bifolium/; next }
    NF { lines++; mine += own }
    END { printf "%d\t%d\t%d\t%s\n", lines, mine, instantiations, bytes }' "$unit.i"
}

if [ "${1:-}" = --every-header ]; then
  printf '%7s %7s %15s  %s\n' lines own instantiations header
  find include -name '*.hpp' | sort | while IFS= read -r header; do
    echo "#include <${header#include/}>" >"$work/one.cpp"
    count "$work/one.cpp" | awk -v name="${header#include/bifolium/}" '{ printf "%7d %7d %15d  %s\n", $1, $2, $3, name }'
  done
  exit
fi

write_units "$work"
failed=0 new=""
printf '%7s %7s %15s %7s  %s\n' lines own instantiations bytes unit
for unit in leaf paper fold imposition collation edition evidence drawing bifolium schemes_0 schemes_1 schemes_10 schemes_61; do
  counts=$(count "$work/$unit.cpp")
  new+="$counts"$'\t'"$unit"$'\n'
  was=$(awk -F'\t' -v unit="$unit" '$5 == unit { print $1 "\t" $2 "\t" $3 "\t" $4 }' "$record" 2>/dev/null || true)
  verdict="as on record"
  if [ "${1:-}" = --record ]; then
    verdict=recorded
  elif [ -z "$was" ]; then
    verdict="NOT ON RECORD" failed=1
  elif ! awk -v now="$counts" -v was="$was" 'BEGIN {
      n = split(now, a, "\t"); split(was, b, "\t")
      for (i = 1; i <= n; i++) if (b[i] != "-" && (a[i] > b[i] * 1.05 + 20 || a[i] < b[i] * 0.95 - 20)) exit 1 }'; then
    verdict="WAS $(tr '\t' ' ' <<<"$was"): record it again, and say why in the commit" failed=1
  fi
  # shellcheck disable=SC2086
  printf '%7s %7s %15s %7s  %-12s %s\n' $counts "$unit" "$verdict"
done
if [ "${1:-}" = --record ]; then
  {
    echo "# What there is to compile, by bench/compile_counts.sh: lines, own lines, instantiations, bytes, unit."
    printf '%s' "$new"
  } >"$record"
fi
exit $failed
