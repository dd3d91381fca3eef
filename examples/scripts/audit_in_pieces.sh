#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Audits a large table of records in pieces, several at a time, and can be interrupted.
#   audit_in_pieces.sh FOLDER ROWS JOBS [OPTIONS OF audit_records] <records.tsv >findings.tsv
# FOLDER keeps the pieces of so many ROWS and what came of each; a run that is started again with it, and with the same table and
# options, does what is left. Findings are in the order of the table, byte for byte those of one run where records have names. The
# summary of all is on standard error. AUDIT_RECORDS names the program where it is not on the path.
set -euo pipefail
if [ $# -lt 3 ]; then
  sed -n 's/^#   \(audit_in_pieces\)/usage: \1/p' "$0" >&2
  exit 2
fi
folder=$1 rows=$2 jobs=$3
shift 3
export AUDIT_RECORDS=${AUDIT_RECORDS:-audit_records}
mkdir -p "$folder"

# Cut once. A piece has the header line, so that it can be audited alone, by hand or on another machine.
if [ ! -e "$folder/cut" ]; then
  IFS= read -r header
  export header
  # shellcheck disable=SC2016 # split sets FILE
  split -l "$rows" -d -a 6 --filter='{ printf "%s\n" "$header"; cat; } >"$FILE.tsv"' - "$folder/"
  touch "$folder/cut"
fi

# shellcheck disable=SC2317 # called by xargs
audit() { # piece, options: its findings appear under their name only when they are whole
  local piece=$1
  shift
  "$AUDIT_RECORDS" "$@" <"$piece.tsv" >"$piece.part" 2>"$piece.summary"
  mv "$piece.part" "$piece.findings"
}
export -f audit
for piece in "$folder"/*.tsv; do
  [ -e "${piece%.tsv}.findings" ] || printf '%s\0' "${piece%.tsv}"
done | xargs -0 -r -P "$jobs" -I{} bash -ec 'audit "$@"' audit {} "$@"

first=("$folder"/*.findings)
head -n 1 "${first[0]}"
for findings in "$folder"/*.findings; do tail -n +2 "$findings"; done
awk '/^[0-9]+ records; / { records += $1; agree += $3; proposals += $7 }
  /^[a-z_]+ [0-9]+$/ { met[$1] += $2 }
  END {
    printf "%.0f records; %.0f agree with themselves; %.0f have proposals\n", records, agree, proposals
    for (name in met) printf "%s %.0f\n", name, met[name] | "sort -k2,2nr -k1,1"
  }' "$folder"/*.summary >&2
