#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Runs every fuzzer for so many seconds and reports its executions; a finding is kept in the folder and ends with 1.
#   tests/fuzz/run.sh BUILD_FOLDER SECONDS [FOLDER_FOR_CORPORA]
# LEAVE_OUT names readers that are not run, ONLY the one that is; MOST is a number of executions, the same every time.
set -euo pipefail
build=$(realpath "$1") seconds=$2 corpora=${3:-$1/corpora}
seeds=$(realpath "$(dirname "$0")")/seeds
mkdir -p "$corpora"
corpora=$(realpath "$corpora")
found=0 ran=0
for fuzzer in "$build"/fuzz_read_*; do
  [ -x "$fuzzer" ] || continue
  reader=${fuzzer##*/fuzz_read_}
  [ "${ONLY:-$reader}" = "$reader" ] || continue
  case " ${LEAVE_OUT:-} " in *" $reader "*) continue ;; esac
  ran=$((ran + 1))
  corpus=$corpora/$reader
  mkdir -p "$corpus"
  if [ -f "$seeds/$reader.txt" ]; then # a seed a line
    number=0
    while IFS= read -r seed; do printf '%s' "$seed" >"$corpus/seed_$((++number))"; done <"$seeds/$reader.txt"
  fi
  [ -d "$seeds/$reader" ] && cp "$seeds/$reader"/* "$corpus"
  log=$corpora/$reader.log
  if "$fuzzer" -max_total_time="$seconds" -max_len=400 -timeout=10 -seed=1 -runs="${MOST:--1}" -print_final_stats=1 -artifact_prefix="$corpora/$reader-" \
    "$corpus" >"$log" 2>&1; then
    outcome="nothing found"
  else
    outcome="FOUND, see $log" found=1
  fi
  printf '%-10s %12s executions  %s\n' "$reader" "$(sed -n 's/^stat::number_of_executed_units: *//p' "$log")" "$outcome"
done
[ $ran -gt 0 ] || { echo "there is no such fuzzer in $build"; exit 2; }
exit $found
