#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Every example program where the system fails it: output that cannot be written, input that cannot be read, no thread, little
# memory. A fault ends with exit code 1 and a sentence on standard error, or does no harm; nothing is lost in silence.
#   tests/examples/faults.sh BIN DATA [FAULTS]
# BIN has the programs, DATA this folder; FAULTS is the library that makes reads and threads fail.
set -uo pipefail
bin=$1 data=$2 faults=${3:-}
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
wrong=0 checks=0
fail() { echo "WRONG: $*"; wrong=$((wrong + 1)); }
# expect WHAT CODE [WORDS]: the last run had this exit code, and its standard error these words
expect() {
  checks=$((checks + 1))
  [ "$code" -eq "$2" ] || fail "$1: exit code $code, not $2 ($(head -c 200 "$work/err"))"
  [ $# -lt 3 ] || grep -q -- "$3" "$work/err" || fail "$1: said '$(head -c 200 "$work/err")', not '$3'"
}
run() { # run INPUT program arguments, output to $work/out
  local input=$1
  shift
  "$@" <"$input" >"$work/out" 2>"$work/err"
  code=$?
}

# A command of each program that writes some output, and what it reads. A new program is one more line here.
commands() {
  cat <<EOT
name_format|$data/leaves.tsv
read_formulas|$data/formulas.list
reckon_paper|$data/editions.tsv
reckon_paper --compare 1-3000|$data/ways.tsv
reckon_paper --plans|$data/editions.tsv
show_formes -|$data/own_scheme.scheme
find_fold --scheme|$data/quarto_in_eights.txt
sheets_of_book|$data/books.tsv
show_formes 8_octavo|/dev/null
show_formes --list|/dev/null
audit_records|$data/records.tsv
audit_records --repaired|$data/records.tsv
audit_records --json|$data/records.tsv
describe_book -|$data/quarto_of_1492.record
check_copy 4°:A-B4 A1-4|/dev/null
check_copy 4°:A-B4 A1-4 --gathering A|/dev/null
fold_a_sheet 8_octavo --out $work|/dev/null
EOT
}
# No program is left out; class_page writes no output but its file, and draw_pictures is for those who work on the library.
for program in "$bin"/*; do
  name=$(basename "$program")
  [ -f "$program" ] && [ -x "$program" ] && [ -f "$data/../../examples/$name.cpp" ] || continue
  checks=$((checks + 1))
  case $name in class_page | draw_pictures) continue ;; esac
  commands | grep -q "^$name[ |]" || fail "$name: no command of it is tried here"
done
reads_input() { [ "$1" != /dev/null ]; }

while IFS='|' read -r words input; do
  read -ra command <<<"$words"
  name=${command[0]}
  command[0]=$bin/$name
  run "$input" "${command[@]}"
  expect "$words" 0
  [ -s "$work/out" ] || fail "$words: no output"
  for arguments in "${words#* }" --help; do
    [ "$arguments" = --help ] && one=("$bin/$name" --help) || one=("${command[@]}")
    "${one[@]}" <"$input" >/dev/full 2>"$work/err"
    code=$?
    expect "$words $arguments to a full disk" 1 "No space left"
    "${one[@]}" <"$input" >&- 2>"$work/err"
    code=$?
    expect "$words $arguments, standard output closed" 1 "cannot write"
    ( # the reader is gone before the first byte is written, and the signal ignored
      trap '' PIPE
      mkfifo "$work/gone"
      exec 5<>"$work/gone"
      exec 6>"$work/gone" 5>&-
      "${one[@]}" <"$input" >&6 2>"$work/err"
    )
    code=$?
    rm "$work/gone"
    expect "$words $arguments, its reader gone" 1 "Broken pipe"
  done
  run "$input" "${command[@]}" 2>&-
  [ "$code" -eq 0 ] || fail "$words, standard error closed: exit code $code"
  run /dev/null "$bin/$name" --no-such-option
  expect "$name --no-such-option" 2 "no option --no-such-option"
  more=() # what it needs beside them
  [ "$name" != fold_a_sheet ] || more=(--out "$work")
  run /dev/null "$bin/$name" a b c d e "${more[@]}"
  expect "$name a b c d e" 2 "is one argument too many"
  reads_input "$input" || continue
  run / "${command[@]}"
  expect "$words, reading a folder" 1 "Is a directory"
  "${command[@]}" <&- >"$work/out" 2>"$work/err"
  code=$?
  expect "$words, standard input closed" 1 "cannot read standard input"
  [ "$name" = read_formulas ] || { # no formula is no mistake; no table, no scheme and no record are
    run /dev/null "${command[@]}"
    expect "$words, no input" 1
  }
  iconv -f UTF-8 -t UTF-16 <"$input" >"$work/wide"
  run "$work/wide" "${command[@]}"
  expect "$words, UTF-16" 1 UTF-16
  iconv -f UTF-8 -t UTF-16LE <"$input" >"$work/wide"
  run "$work/wide" "${command[@]}"
  expect "$words, UTF-16 without a mark" 1 UTF-16
  iconv -f UTF-8 -t UTF-32 <"$input" >"$work/wide"
  run "$work/wide" "${command[@]}"
  expect "$words, UTF-32" 1 UTF-32
  # the same text with other line ends and a mark of byte order
  run "$input" "${command[@]}"
  cp "$work/out" "$work/plain"
  for change in 's/\r*$/\r/' '1s/^/\xEF\xBB\xBF/'; do
    sed "$change" "$input" >"$work/changed"
    run "$work/changed" "${command[@]}"
    cmp -s "$work/out" "$work/plain" || fail "$words, changed by $change: another answer"
  done
  tr '\n' '\r' <"$input" >"$work/changed"
  run "$work/changed" "${command[@]}"
  cmp -s "$work/out" "$work/plain" || fail "$words, lines ended by CR: another answer"
  # lines without a word before it, and without end
  for blank in '\n' ' '; do
    { head -c 1000 /dev/zero | tr '\0' "$blank" && cat "$input"; } >"$work/changed"
    timeout 120 "${command[@]}" <"$work/changed" >"$work/out" 2>"$work/err"
    code=$?
    expect "$words, blanks before it" $((code != 0)) # a sentence, if it is not read
    [ "$code" -eq 0 ] || [ -s "$work/err" ] || fail "$words, blanks before it: no sentence"
    head -c 1200000 /dev/zero | tr '\0' "$blank" >"$work/changed"
    timeout 120 "${command[@]}" <"$work/changed" >"$work/out" 2>"$work/err"
    code=$?
    expect "$words, nothing but blanks" $((code != 0))
    [ "$code" -eq 0 ] || [ -s "$work/err" ] || fail "$words, nothing but blanks: no sentence"
  done
done < <(commands)

# A wrong option or value of an option is named, and so is what would be right.
while IFS='|' read -r words sentence; do
  read -ra command <<<"$words"
  run /dev/null "$bin/${command[0]}" "${command[@]:1}"
  expect "$words" 2 "$sentence"
done <<'EOT'
read_formulas --omitted eight|the option --omitted takes error, next or 8, not 'eight'
read_formulas --letters JX|the option --letters takes letters of J, U and W, not 'JX'
reckon_paper --omitted 4|the option --omitted takes error, next or 8, not '4'
reckon_paper --compare 9|--compare takes a range of copies
audit_records --omitted x|the option --omitted takes error, next or 8, not 'x'
audit_records --blanks x|the option --blanks takes counted or left-out, not 'x'
audit_records --json --repaired|give one of them
audit_records --threads 0|the option --threads takes a number from 1 to 256, not '0'
name_format --threads 0|the option --threads takes a number from 1 to 256, not '0'
name_format --longest-line|the option --longest-line needs a value
find_fold --reads up|the option --reads takes left-to-right or right-to-left, not 'up'
find_fold --long-side up|the option --long-side takes far-near or left-right, not 'up'
show_formes|an argument is missing
check_copy 4°:A4|an argument is missing after '4°:A4'
check_copy 4°:A4 A --svg x|as --gathering B
check_copy 4°:A4 A --gathering A --paper x|ask one of them
fold_a_sheet 8_octavo|the option --out is missing
fold_a_sheet 8_octavo --out . --paper a5|the option --paper takes a4 or letter, not 'a5'
class_page octavo --out x --duplex up|the option --duplex takes long-edge or short-edge, not 'up'
class_page --out x|an argument is missing
describe_book|an argument is missing
EOT

# What a row says reaches no terminal as a command, and a letter that looks Latin is named.
printf 'height_mm\tstate\n2\x1b[2J01\tuncut\n' >"$work/rows"
run "$work/rows" "$bin/name_format"
cut -f 3- "$work/out" | grep -q $'\x1b' && fail "name_format: a control character in a message"
grep -q '<U+001B>' "$work/out" || fail "name_format: the control character is not named"
run /dev/null "$bin/show_formes" $'8_\xd0\xbectavo\x1b[31m'
expect "show_formes of a scheme with a Cyrillic letter" 2 'U+043E'
grep -q $'\x1b' "$work/err" && fail "show_formes: a control character in a message"

# Options that are misspelt.
while read -r program misspelt option; do
  run /dev/null "$bin/$program" "$misspelt"
  expect "$program $misspelt" 2 "there is no option $misspelt; is it $option?"
done <<'EOT'
show_formes --lst --list
name_format --shres --shares
reckon_paper --decimal --decimals
find_fold --misprint --misprints
describe_book --sheet --sheets
audit_records --repaird --repaired
fold_a_sheet --papr --paper
EOT
run /dev/null "$bin/show_formes" --nothing-like-it
expect "show_formes with an option like none" 2 'there is no option --nothing-like-it$'

# A share that is stated twice, under one name of the format or two.
printf 'height_mm\n201\n' >"$work/rows"
for twice in '8°=.5 8°=.1 12°=.4' '8°=.1 12°=.4 8°=.1' '8°=.5 8vo=.1' '12°=.5 duodecimo=.5' '4°=.1 8°=0 8°=.2'; do
  run "$work/rows" "$bin/name_format" --shares "$twice"
  expect "name_format --shares $twice" 2 'each format once'
done
run "$work/rows" "$bin/name_format" --shares '8°=.6 12°=.4'
expect "name_format --shares of two formats" 0

# More options of a text than are compared with one another: that text is a row in error, and the others are compared.
{
  printf 'text\tscheme\tpages\n'
  for i in $(seq 1 40); do printf 'many\toctavo\t%d\nfew\toctavo\t%d\n' "$i" $((i < 33 ? i : -1)); done
} >"$work/rows"
run "$work/rows" "$bin/reckon_paper" --compare 1-100
expect "reckon_paper --compare of 40 options" 0
[ "$(grep -c '^many.*too_many_options$' "$work/out")" -eq 1 ] || fail "reckon_paper --compare: too many options are not told once"
grep -q '^few.1.*row 2 ' "$work/out" || fail "reckon_paper --compare: the other text is not compared"

# Names of columns.
printf 'Height_mm\tyear\tyear\n201\t1490\t1500\n' >"$work/rows"
run "$work/rows" "$bin/name_format"
expect "name_format, a column almost named" 0 "'Height_mm' is not read; is it 'height_mm'?"
expect "name_format, a column twice" 0 "the column 'year' appears twice"
printf 'h\xd0\xb5ight_mm\n201\n' >"$work/rows"
run "$work/rows" "$bin/name_format"
expect "name_format, a Cyrillic letter in a name" 1 'U+0435'
expect "name_format, no column known" 1 "no column of the table is read"
printf 'scheme\tpages\tcopies\tovers\n8_octavo\t16\t100\t3\n' >"$work/rows"
run "$work/rows" "$bin/reckon_paper"
expect "reckon_paper, half of a name" 0 "is it 'overs_percent'?"

# Rows of empty cells, and surplus cells.
printf 'height_mm\twidth_mm\n\t\n \t\n201\t139\n\n1\t2\t3\t4\n' >"$work/rows"
run "$work/rows" "$bin/name_format"
[ "$(wc -l <"$work/out")" -eq 5 ] || fail "name_format: $(wc -l <"$work/out") lines for a header and four rows"
grep -q 'the row has 4 cells and the header 2' "$work/out" || fail "name_format: surplus cells are not told"

printf 'formula\n8°: A⁸\t16\n' >"$work/rows"
run "$work/rows" "$bin/audit_records"
expect "audit_records, surplus cells" 0 'the row has 2 cells and the header 1'

# A long line is a row in error, and the others are answered.
{
  printf 'height_mm\twidth_mm\n'
  head -c 3000000 /dev/zero | tr '\0' x
  printf '\n201\t139\n'
} >"$work/rows"
for program in "name_format --longest-line 2000000" "reckon_paper --longest-line 2000000" "read_formulas --longest-line 2000000" "audit_records --longest-line 2000000"; do
  read -ra command <<<"$program"
  { case ${command[0]} in reckon_paper) sed '1s/.*/scheme\tpages\tcopies/' "$work/rows" ;; *) cat "$work/rows" ;; esac; } >"$work/long"
  run "$work/long" "$bin/${command[0]}" "${command[@]:1}"
  expect "$program" 0
  [ "${command[0]}" = audit_records ] || [ "$(wc -l <"$work/out")" -ge 3 ] || fail "$program: rows are missing"
  grep -q 'has 3000000 bytes' "$work/out" "$work/err" || fail "$program: a long line is not told"
  run "$work/long" "$bin/${command[0]}" --longest-line no
  expect "${command[0]} --longest-line no" 2 "takes a number"
done

# A co-process is answered row by row.
for filter in "name_format|height_mm|201" "read_formulas||A8" "reckon_paper|scheme	pages	copies|8_octavo	16	100" "audit_records|formula	leaves|A8	9"; do
  IFS='|' read -r name header row <<<"$filter"
  coproc "$bin/$name" 2>/dev/null
  { [ -z "$header" ] || printf '%s\n' "$header"; } >&"${COPROC[1]}"
  IFS= read -r -t 20 answer <&"${COPROC[0]}" || fail "$name as a co-process: no header line"
  for i in 1 2; do
    printf '%s\n' "$row" >&"${COPROC[1]}"
    IFS= read -r -t 20 answer <&"${COPROC[0]}" || fail "$name as a co-process: no answer to row $i"
  done
  eval "exec ${COPROC[1]}>&-"
  wait "$COPROC_PID" || fail "$name as a co-process: exit code $?"
done

# Files that cannot be written.
run /dev/null "$bin/show_formes" 8_octavo --svg "$work/no/such/folder.svg"
expect "show_formes --svg where there is no folder" 1 "No such file"
run /dev/null "$bin/show_formes" 8_octavo --svg /dev/full
expect "show_formes --svg to a full disk" 1 "cannot write"
run /dev/null "$bin/fold_a_sheet" 8_octavo --out "$work/none"
expect "fold_a_sheet --out where there is no folder" 1 "No such file"
run /dev/null "$bin/class_page" octavo --out /dev/full
expect "class_page to a full disk" 1 "cannot write"
run / "$bin/class_page" - --out "$work/page.html"
expect "class_page, reading a folder" 1 "Is a directory"
run /dev/null "$bin/check_copy" "4°:A4" A1 --gathering A --svg /dev/full
expect "check_copy --svg to a full disk" 1 "cannot write"
"$bin/show_formes" 8_octavo --svg "$work/drawn.svg" >&- 2>"$work/err"
[ ! -e "$work/drawn.svg" ] || ! grep -q '^outer' "$work/drawn.svg" || fail "show_formes: text went into the drawing"
run /dev/null "$bin/describe_book" "$work/none"
expect "describe_book of no file" 1 "No such file"

# Nothing a record says ends the program but with a sentence for its line.
for field in height width 'type height' binding 'chain spacing'; do
  for length in '1000000 mm' '0 mm' '-1 mm' '99999999999999999999 mm' '1e9 mm' '999999 mm' '0.0001 mm'; do
    printf 'height: 200 mm\nwidth: 130 mm\n' | grep -v "^$field:" >"$work/record"
    printf '%s: %s\n' "$field" "$length" >>"$work/record"
    run "$work/record" "$bin/describe_book" -
    checks=$((checks + 1))
    [ "$code" -le 1 ] || fail "describe_book, $field: $length: exit code $code"
    [ "$code" -eq 0 ] || [ -s "$work/err" ] || fail "describe_book, $field: $length: no sentence"
    grep -q 'the program has a mistake' "$work/err" && fail "describe_book, $field: $length: $(cat "$work/err")"
  done
done
for field in 'year: 99999999999' 'year: 0' 'copies: 9223372036854775807' 'overs: 100' 'gatherings of: 999999' 'leaves: 1 gutter' 'formula: 8°: A-9Z99999' 'formula: (' 'scheme: 128_octavo' 'place: ?'; do
  printf 'height: 200 mm\nformula: 8°: A-B8\nscheme: 8_octavo\ncopies: 500\n' | grep -v "^${field%%:*}:" >"$work/record"
  printf '%s\n' "$field" >>"$work/record"
  run "$work/record" "$bin/describe_book" -
  checks=$((checks + 1))
  [ "$code" -le 1 ] || fail "describe_book, $field: exit code $code"
  grep -q 'the program has a mistake' "$work/err" && fail "describe_book, $field: $(cat "$work/err")"
done

# Every row has as many cells as the header, in error or not.
while IFS='|' read -r words input; do
  read -ra command <<<"$words"
  run "$data/$input" "$bin/${command[0]}" "${command[@]:1}"
  checks=$((checks + 1))
  awk -F '\t' 'NR == 1 { cells = NF } NF != cells { exit 1 }' "$work/out" || fail "$words <$input: a row with more or fewer cells than the header"
done <<EOT
name_format|leaves.tsv
name_format --sheets --record|leaves.tsv
read_formulas|formulas.list
reckon_paper|editions.tsv
reckon_paper --full|editions_in_full.tsv
reckon_paper --plans|editions.tsv
reckon_paper --compare 1-3000|ways.tsv
reckon_paper|accounts.tsv
reckon_paper --full|accounts.tsv
reckon_paper --plans|accounts.tsv
audit_records|records.tsv
audit_records --repaired|records.tsv
EOT

# Little memory: a sentence, or the work is done. (Not under sanitizers, which reserve more than all of it.)
limited() { (ulimit -v "$1" && shift && exec "$@"); }
if limited 200000 "$bin/name_format" --help >/dev/null 2>&1; then
  { # 60 MB of rows, no two alike
    printf 'height_mm\twidth_mm\ttitle\n'
    awk 'BEGIN { for (i = 0; i < 20000; ++i) { printf "%d.%d\t%d\t", 100 + i % 300, i, 90 + i % 50; for (j = 0; j < 30; ++j) printf "%0100d", i; print "" } }'
  } >"$work/rows"
  limited 120000 "$bin/name_format" --threads 1 <"$work/rows" 2>"$work/err" | wc -l >"$work/out"
  [ "$(cat "$work/out")" -eq 20001 ] || fail "name_format in little memory: $(cat "$work/out") lines, $(cat "$work/err")"
  head -c 300000000 /dev/zero | tr '\0' x | limited 120000 "$bin/name_format" --columns height_mm >"$work/out" 2>"$work/err"
  grep -q 'has 300000000 bytes' "$work/out" || fail "name_format, one long line in little memory: $(head -c 200 "$work/err")"
  head -c 30000000 /dev/zero | tr '\0' x >"$work/rows"
  limited 30000 "$bin/read_formulas" --longest-line 100000000 <"$work/rows" >"$work/out" 2>"$work/err"
  code=$?
  expect "read_formulas out of memory" 1 "not enough memory"
else
  echo "left out: limits on memory (there is no room for a sanitizer below them)"
fi

# A read that fails in the middle, and no threads.
if [ -n "$faults" ] && LD_PRELOAD=$faults "$bin/show_formes" --help >/dev/null 2>&1; then
  { cat "$data/leaves.tsv"; for ((i = 0; i < 20000; ++i)); do echo $'\t201\t139'; done; } >"$work/rows"
  FAULT=read LD_PRELOAD=$faults run "$work/rows" "$bin/name_format"
  expect "name_format, a read that fails" 1 "Input/output error"
  [ "$(wc -l <"$work/out")" -gt 5 ] || fail "name_format: what came before the failing read is not answered"
  run "$work/rows" "$bin/name_format" --threads 1
  cp "$work/out" "$work/alone"
  FAULT=threads LD_PRELOAD=$faults run "$work/rows" "$bin/name_format" --threads 8
  expect "name_format without threads" 0
  cmp -s "$work/out" "$work/alone" || fail "name_format without threads: another answer"
  { head -n 1 "$data/records.tsv"; for ((i = 0; i < 400; ++i)); do tail -n +2 "$data/records.tsv"; done; } >"$work/rows"
  run "$work/rows" "$bin/audit_records" --threads 1
  cp "$work/out" "$work/alone"
  run "$work/rows" "$bin/audit_records" --threads 8
  cmp -s "$work/out" "$work/alone" || fail "audit_records with threads: another order"
  FAULT=threads LD_PRELOAD=$faults run "$work/rows" "$bin/audit_records" --threads 8
  cmp -s "$work/out" "$work/alone" || fail "audit_records without threads: another answer"
else
  echo "left out: a read that fails, no threads (no library to make them fail can be loaded)"
fi

echo "$checks exit codes and sentences looked at, $wrong wrong"
[ "$wrong" -eq 0 ]
