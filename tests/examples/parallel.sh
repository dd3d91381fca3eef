#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# The filters under GNU parallel, two workers and small blocks, put out byte for byte what one run does, header line and order
# too. Exit code 77 when there is no GNU parallel (Debian: parallel).
#   tests/examples/parallel.sh name_format read_formulas DATA
set -euo pipefail
[[ $(parallel --version 2>/dev/null) == *GNU* ]] || { echo "skipped: there is no GNU parallel (Debian: apt-get install parallel)"; exit 77; }
name_format=$1 read_formulas=$2 data=$3
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
export PARALLEL_HOME="$work"
split() { parallel --pipe --keep-order --jobs 2 --block 8k "$@"; }

# Leaves of the British Museum's catalogue; their own columns pass through.
{
  printf 'row\tstated\theight_mm\twidth_mm\tyear\tdoubt\n'
  grep -v '^#' "$data/bmc_leaf_sizes.tsv" | sed -n 1,1500p
} >"$work/leaves.tsv"
"$name_format" --record <"$work/leaves.tsv" >"$work/one.tsv"
columns=$(head -n 1 "$work/leaves.tsv" | tr '\t' ,)
{
  head -n 1 "$work/leaves.tsv" | "$name_format" --record
  tail -n +2 "$work/leaves.tsv" | split "$name_format" --record --columns "$columns"
} >"$work/many.tsv"
cmp "$work/one.tsv" "$work/many.tsv"
[ "$(wc -l <"$work/many.tsv")" -eq 1501 ]

# Its formulas as scanning left them, right and wrong, each with the number of its line as its key.
grep -v '^#' "$data/bmc_formulas_ocr.tsv" | cut -f 1 >"$work/formulas"
"$read_formulas" --omitted next <"$work/formulas" >"$work/one.tsv"
{
  "$read_formulas" --omitted next </dev/null
  awk '{ print NR "\t" $0 }' "$work/formulas" | split "$read_formulas" --omitted next --keyed
} >"$work/many.tsv"
cmp "$work/one.tsv" "$work/many.tsv"
[ "$(wc -l <"$work/many.tsv")" -gt 2800 ]
echo "1500 leaves and $(wc -l <"$work/formulas") formulas, the same in one run and in pieces"
