#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Streams formulas through read_formulas, so many megabytes of them, with a lid on its memory: every line is answered, the leaves
# are those of one pass so many times over, and the peak is told. Exit code 77 where no lid can be put on (sanitizers) or
# there is no /proc.
#   tests/examples/stream.sh read_formulas DATA [MEGABYTES]
set -euo pipefail
program=$1 data=$2 megabytes=${3:-20}
lid=32768 # kilobytes of address space, shared libraries and all
limited() { (ulimit -v "$lid" && exec "$program" --omitted 8 "$@"); }
limited </dev/null >/dev/null 2>&1 && [ -r /proc/self/status ] || { echo "skipped: no lid on memory here"; exit 77; }
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT

# Headers of EEBO-TCP, repeated to a megabyte.
grep -v '^#' "$data/tcp_formulas.tsv" | cut -f 2 >"$work/pass"
passes=$((1048576 / $(wc -c <"$work/pass") + 1))
for ((i = 0; i < passes; ++i)); do cat "$work/pass"; done >"$work/block"
sum() { awk -F '\t' 'NR > 1 { ++lines; leaves += $3 } END { printf "%d lines, %.0f leaves\n", lines, leaves }'; }
read -r lines _ leaves _ < <("$program" --omitted 8 <"$work/pass" | sum)
times=$((passes * megabytes))
expected="$((${lines%,} * times)) lines, $((leaves * times)) leaves"

mkfifo "$work/in" "$work/out"
sum <"$work/out" >"$work/sum" &
summing=$!
(ulimit -v "$lid" && exec "$program" --omitted 8 <"$work/in" >"$work/out") &
reading=$!
exec 3>"$work/in"
started=$SECONDS
for ((i = 0; i < megabytes; ++i)); do cat "$work/block" >&3; done
peak=$(awk '/VmHWM/ { print $2 }' "/proc/$reading/status") # what is still in the pipe is no more than 64 KB
exec 3>&-
wait "$reading" && wait "$summing"
[ "$(cat "$work/sum")" = "$expected" ] || { echo "got $(cat "$work/sum"), not $expected"; exit 1; }
[ "$peak" -lt 8192 ] || { echo "took $peak KB"; exit 1; }
echo "$megabytes MB: $expected, $((SECONDS - started)) s, at most $peak KB resident"
