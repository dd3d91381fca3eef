#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What bash completes after the names of the programs, asked as bash would ask.
#   tests/examples/completion.sh CMAKE complete.cmake WORK PROGRAM ...
set -euo pipefail
cmake=$1 writer=$2 work=$3
shift 3
mkdir -p "$work"
PATH=$(dirname "$1"):$PATH
for program; do
  name=$(basename "$program")
  "$cmake" "-DPROGRAM=$program" "-DOUT=$work/$name" -P "$writer"
  # shellcheck disable=SC1090
  source "$work/$name"
  complete -p "$name" >/dev/null
done
offered() { # words of a command line, the last one begun
  COMP_WORDS=("$@") COMP_CWORD=$(($# - 1)) COMPREPLY=()
  "_bifolium_$1"
  printf '%s\n' "${COMPREPLY[@]}" | sort | paste -sd ' '
}
expect() {
  local wanted=$1
  shift
  local given
  given=$(offered "$@")
  [ "$given" = "$wanted" ] || { echo "after '$*' bash offers '$given', not '$wanted'"; exit 1; }
}
# every option that a program's help names is offered
for program; do
  expect "$({ "$program" --help | grep -o -- '--[a-z][a-z-]*'; echo --help; } | sort -u | paste -sd ' ')" "$(basename "$program")" -
done
expect "8 error next" audit_records --omitted ""
expect "--repaired" audit_records --omitted next --re
expect "counted left-out" audit_records --blanks ""
expect "a4" class_page octavo --out octavo.html --paper a
expect "8_octavo" show_formes 8_octavo
[[ " $(offered fold_a_sheet 12_) " == *" 12_common "* ]] || { echo "no scheme is offered to fold_a_sheet"; exit 1; }
[ -z "$(offered name_format leaves.)" ] # files are left to bash
