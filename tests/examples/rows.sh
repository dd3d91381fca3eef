#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# A long table on several threads, in which most questions are asked again and again, is answered as each of its rows is by
# itself; and a row that is there is answered before the next one comes.
#   tests/examples/rows.sh name_format LEAVES
set -euo pipefail
name_format=$1 leaves=$2
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT

head -n 1 "$leaves" >"$work/header"
columns=$(tr '\t' , <"$work/header")
# the rows of the file; one too long, one cut short, one of blanks about its cells, one that ends as on another system
{
  tail -n +2 "$leaves" | grep -v "^[[:space:]]*$"
  tail -n +2 "$leaves" | head -n 1 | sed 's/$/\tone\tcell\ttoo\tmany\tfor\tthe\theader\tof\tthis\ttable/'
  tail -n +2 "$leaves" | head -n 1 | cut -f 1
  tail -n +2 "$leaves" | head -n 1 | sed 's/\t/ \t /g'
  tail -n +2 "$leaves" | head -n 1 | sed 's/$/\r/'
} >"$work/rows"
while IFS= read -r row; do
  printf '%s\n' "$row" | "$name_format" --sheets --record --threads 1 --columns "$columns"
done <"$work/rows" >"$work/alone"
[ "$(wc -l <"$work/alone")" -eq "$(wc -l <"$work/rows")" ]

times=$((9000 / $(wc -l <"$work/rows")))
for ((i = 0; i < times; ++i)); do cat "$work/rows"; done >"$work/long"
for ((i = 0; i < times; ++i)); do cat "$work/alone"; done >"$work/expected"
[ "$(wc -l <"$work/long")" -gt 8500 ] # more than are taken at a time
for threads in 1 3; do
  "$name_format" --sheets --record --threads $threads --columns "$columns" <"$work/long" | cmp - "$work/expected"
done
code=0
"$name_format" --threads 0 </dev/null 2>/dev/null || code=$?
[ $code -eq 2 ]

# one row after another, each only when the one before it was answered
coproc "$name_format" --sheets --record --columns "$columns"
number=0
while IFS= read -r row; do
  printf '%s\n' "$row" >&"${COPROC[1]}"
  IFS= read -r -t 20 answer <&"${COPROC[0]}" || { echo "no answer to row $number"; exit 1; }
  printf '%s\n' "$answer"
  number=$((number + 1))
done <"$work/rows" >"$work/answers"
cmp "$work/answers" "$work/alone"
echo "$(wc -l <"$work/rows") rows alone, $(wc -l <"$work/long") together, and one by one"
