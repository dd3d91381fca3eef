#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# An audit in pieces gives byte for byte the findings of one run and the same counts in its summary, also when it was interrupted.
#   tests/examples/pieces.sh audit_records audit_in_pieces.sh DATA
set -euo pipefail
export AUDIT_RECORDS=$1
script=$2 data=$3
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
# 153 descriptions that contradict themselves among 292 that do not (EEBO-TCP headers and others; sources in the files)
{
  printf 'record\tformula\tpagination\n'
  paste -d '\n' <(grep -v '^#' "$data/tcp_extents.tsv") <(grep -v '^#' "$data/contradicting_descriptions.tsv" | cut -f 1,3,4) | grep .
} >"$work/records.tsv"
[ "$(wc -l <"$work/records.tsv")" -ge 446 ]
"$AUDIT_RECORDS" --omitted 8 <"$work/records.tsv" >"$work/one.tsv" 2>"$work/one.summary"
pieces() { bash "$script" "$work/pieces" 60 2 --omitted 8 <"$work/records.tsv" >"$work/many.tsv" 2>"$work/many.summary"; }
pieces
cmp "$work/one.tsv" "$work/many.tsv"
diff <(sort "$work/one.summary") <(sort "$work/many.summary")
[ "$(ls "$work"/pieces/*.findings | wc -l)" = 8 ]
# as if it had been interrupted: one piece half written, one not begun; those that are whole are not audited again
mv "$work/pieces/000002.findings" "$work/pieces/000002.part"
rm "$work/pieces/000007.findings" "$work/pieces/000007.summary"
stat -c %Y.%y "$work/pieces/000000.findings" >"$work/before"
pieces
cmp "$work/one.tsv" "$work/many.tsv"
diff <(sort "$work/one.summary") <(sort "$work/many.summary")
stat -c %Y.%y "$work/pieces/000000.findings" | cmp - "$work/before"
# a piece that cannot be audited ends the run with an error
rm "$work/pieces/000003.findings"
if AUDIT_RECORDS=false pieces; then
  echo "a piece failed, and the run did not"
  exit 1
fi
