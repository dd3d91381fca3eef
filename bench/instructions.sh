#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Instructions an operation takes, counted by valgrind: what 300 of them take less what 100 take, by 200, so that
# starting up and what is made once a program fall out. Counts are exact and the same on every run of one compiler; they
# are held to the record within 3 %.
#   bench/instructions.sh BENCH_INSTRUCTIONS [--record]
set -euo pipefail
program=$1
record=$(dirname "$0")/instructions.tsv
counted() { # operation, times
  valgrind --tool=callgrind --callgrind-out-file=/dev/null "$program" "$1" "$2" 2>&1 | awk '/Collected/ { print $NF }'
}
failed=0 new=""
number=0
while IFS= read -r name; do
  few=$(counted $number 100) many=$(counted $number 300)
  each=$(((many - few) / 200))
  new+="$each"$'\t'"$name"$'\n'
  was=$(awk -F'\t' -v name="$name" '$2 == name { print $1 }' "$record" 2>/dev/null || true)
  if [ "${2:-}" = --record ]; then
    verdict=recorded
  elif [ -z "$was" ]; then
    verdict="NOT ON RECORD" failed=1
  elif [ $((each * 100)) -gt $((was * 103 + 100)) ] || [ $((each * 100)) -lt $((was * 97 - 100)) ]; then
    verdict="WAS $was: record it again, and say why in the commit" failed=1
  else
    verdict="as on record"
  fi
  printf '%9d  %-50s %s\n' "$each" "$name" "$verdict"
  number=$((number + 1))
done < <("$program")
if [ "${2:-}" = --record ]; then
  { echo "# Instructions an operation takes, by bench/instructions.sh: g++ 12.2, -O2 -DNDEBUG, x86-64."; printf '%s' "$new"; } >"$record"
fi
exit $failed
