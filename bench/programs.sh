#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# The filters end to end, as they are run: rows and megabytes a second on one thread and on two, and how many times they take
# what passing the lines on takes. Inputs are the open data of tests/data, repeated with other heights, years and names. Each
# program and the one that only passes lines on run in turns; the least of RUNS counts: processor time, user and system, and the
# time of the clock for what is on two threads.
#   bench/programs.sh FOLDER [RUNS]        FOLDER holds the programs and lines_alone, built at -O2
set -euo pipefail
programs=$(cd "$1" && pwd) runs=${2:-5}
cd "$(dirname "$0")/../tests/data"
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
rows_of() { grep -hv '^#' "$@"; }
repeated() { # file, times
  local i
  for ((i = 0; i < $2; ++i)); do cat "$1"; done
}

{ rows_of bmc_formulas.tsv | cut -f 3 && rows_of tcp_formulas.tsv later_formulas.tsv | cut -f 2; } >"$work/formulas"
repeated "$work/formulas" 1000 >"$work/catalogues"
rows_of bmc_formulas.tsv | cut -f 3 >"$work/plain"
repeated "$work/plain" 2500 >"$work/incunables"

# A leaf a row, cut by so many fortieths of a millimetre: most of them are questions that were not asked before.
leaves='NF > 1 && height ~ /^[0-9]+$/ && width ~ /^[0-9]+$/ && year ~ /^[0-9]+$/ {
  for (cut = 0; cut < 80; ++cut) printf "%.2f\t%.2f\t%d\n", height - cut / 40, width - (cut * 7 % 80) / 40, year }'
{
  printf 'height_mm\twidth_mm\tyear\n'
  rows_of bmc_leaf_sizes.tsv | awk -F '\t' "{ height = \$3; width = \$4; year = \$5 } $leaves"
  rows_of later_leaf_sizes.tsv | awk -F '\t' "{ height = \$2; width = \$3; year = \$7 } $leaves"
} >"$work/leaves"
# As a catalogue has them, in whole centimetres: many are the same question.
{
  printf 'height_cm\tyear\tplace\n'
  for ((i = 0; i < 1000; ++i)); do
    rows_of catalogue_heights.tsv | awk -F '\t' -v later="$((i % 25))" '$2 ~ /^[0-9]+0$/ && $4 ~ /^[0-9]+$/ { print $2 / 10 "\t" $4 + later "\t" $5 }'
  done
} >"$work/centimetres"

records() { # times; formula and extent on standard input
  awk -F '\t' -v times="$1" 'BEGIN { print "record\tformula\tpagination" }
    { row[NR] = $0 } END { for (i = 0; i < times; ++i) for (n = 1; n <= NR; ++n) print i "." n "\t" row[n] }'
}
{ rows_of tcp_extents.tsv | cut -f 2,3 && rows_of later_extents.tsv | cut -f 3,4; } | records 1000 >"$work/agreeing"
rows_of contradicting_descriptions.tsv | cut -f 3,4 | records 40 >"$work/contradicting"

declare -A cpu=() clock=()
least() { # -n name of the least, what was measured
  local -n kept=$1
  if [ -z "$kept" ] || awk -v a="$2" -v b="$kept" 'BEGIN { exit !(a < b) }'; then kept=$2; fi
}
measure() { # key, input, program with its arguments
  local TIMEFORMAT='%U %S %R' key=$1 input=$2 user system real
  shift 2
  read -r user system real < <({ time "$programs/$1" "${@:2}" <"$work/$input" >"$work/out" 2>"$work/said"; } 2>&1) || true
  [ -s "$work/out" ] || { cat "$work/said" >&2; exit 1; }
  local both
  both=$(awk -v u="$user" -v s="$system" 'BEGIN { print u + s }')
  cpu[$key]=${cpu[$key]:-} clock[$key]=${clock[$key]:-}
  least "cpu[$key]" "$both"
  least "clock[$key]" "$real"
}
row() { # what the rows are, input, program with its arguments
  local what=$1 input=$2 lines bytes
  local one=(--threads 1) two=(--threads 2)
  [ "$3" != read_formulas ] || one=() two=()
  shift 2
  local run
  for ((run = 0; run < runs; ++run)); do
    measure alone "$input" lines_alone
    measure one "$input" "$@" "${one[@]}"
    [ ${#two[@]} = 0 ] || measure two "$input" "$@" "${two[@]}"
  done
  read -r lines bytes < <(wc -lc <"$work/$input")
  awk -v program="$1" -v what="$what" -v lines="$lines" -v bytes="$bytes" -v alone="${cpu[alone]}" -v one="${cpu[one]}" \
    -v two="${cpu[two]:-}" -v clock_one="${clock[one]}" -v clock_two="${clock[two]:-}" '
    function whole(number) { # 1,234,567, to three figures
      for (unit = 1; number / unit >= 1000; unit *= 10) ;
      number = sprintf("%d", int(number / unit + .5) * unit)
      while (match(number, /^[0-9]+/) && RLENGTH > 3) number = substr(number, 1, RLENGTH - 3) "," substr(number, RLENGTH - 2)
      return number
    }
    BEGIN {
      printf "| `%s` | %s %s, %.1f MB | %.2f s | %s | %.1f | %.0f |", program, whole(lines), what, bytes / 1e6, one, whole(lines / one),
        bytes / 1e6 / one, one / alone
      if (two != "") printf " %.2f | %.2f |\n", two / one, clock_two / clock_one; else print " | |" }'
  cpu=() clock=()
}

printf '| program | input | takes | rows a second | MB a second | times lines alone | two threads: time of both, to one | by the clock, to one |\n'
printf '|---|---|---|---|---|---|---|---|\n'
row "formulas as catalogues write them" catalogues read_formulas --omitted 8
row "formulas of incunables, most of them plain" incunables read_formulas --omitted next
row "leaves, most of them different" leaves name_format
row "leaves in whole centimetres, many alike" centimetres name_format
row "records, most of which agree" agreeing audit_records --omitted 8
row "records that contradict themselves, as their catalogues have them" contradicting audit_records --omitted 8
