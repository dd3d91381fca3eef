#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# The filter on two workers of a Dask cluster writes byte for byte what one run does, and so does a run that continues one whose
# last pieces are missing. Exit code 77 without Dask (Debian: python3-distributed).
#   tests/examples/dask.sh name_format filter_on_dask.py DATA
set -euo pipefail
python=/usr/bin/python3
$python -c 'import distributed' 2>/dev/null || { echo "skipped: there is no Dask (Debian: apt-get install python3-distributed)"; exit 77; }
name_format=$1 driver=$2 data=$3
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
{
  printf 'row\tstated\theight_mm\twidth_mm\tyear\tdoubt\n'
  grep -v '^#' "$data/bmc_leaf_sizes.tsv" | sed -n 1,1500p
} >"$work/leaves.tsv"
"$name_format" <"$work/leaves.tsv" >"$work/one.tsv"
on_dask() { $python "$driver" --work "$work/pieces" --piece 200 -- "$name_format" <"$work/leaves.tsv" 2>"$work/said"; }
on_dask >"$work/many.tsv" || { cat "$work/said"; exit 1; }
cmp "$work/one.tsv" "$work/many.tsv"
[ "$(ls "$work/pieces" | wc -l)" = 8 ]
rm "$work"/pieces/0000000[67].out # as if it had been interrupted
on_dask >"$work/many.tsv" || { cat "$work/said"; exit 1; }
cmp "$work/one.tsv" "$work/many.tsv"
echo "1500 leaves in eight pieces, and again from the sixth on"
