#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Writes the expected outputs anew from the programs in a build tree; look at the difference before committing it.
#   tests/examples/regenerate.sh BUILD
set -eu
bin=$(cd "$1/bin" && pwd)
cd "$(dirname "$0")"
out=$(mktemp -d)
trap 'rm -r "$out"' EXIT
write() { # file, input or -, program, arguments
  local file=$1 input=$2
  shift 2
  [ "$input" = - ] && input=/dev/null
  "$@" <"$input" >"$file" 2>"$file.err" || true
  [ -s "$file.err" ] || rm "$file.err"
}
write quarto_in_eights.txt - "$bin/show_formes" 4_quarto_in_8s
write half_sheet.txt - "$bin/show_formes" 8_half_sheet
write own_scheme.txt own_scheme.scheme "$bin/show_formes" -
write wrong_scheme.txt wrong_scheme.scheme "$bin/show_formes" -
write no_scheme.txt - "$bin/show_formes" 9_nones
write octavo_text.txt - "$bin/show_formes" octavo --text
write octvo.txt - "$bin/show_formes" octvo
write twelves_uncut.txt twelves_uncut.forme "$bin/find_fold"
write twelves_uncut_all.txt - "$bin/find_fold" --all twelves_uncut.forme
write octavo_text.txt illegible.forme "$bin/find_fold" --scheme
write misprinted.txt misprinted.forme "$bin/find_fold" --misprints
write contradict.txt misprinted.forme "$bin/find_fold"
write octavo_leaves.txt octavo.leaves "$bin/find_fold"
write cancel_leaves.txt cancel.leaves "$bin/find_fold"
write leaves_of_octavo.txt leaves_of_octavo.record "$bin/describe_book" --format -
write half_sheet_unnamed.txt half_sheet_unnamed.forme "$bin/find_fold"
write inner_unnamed.txt inner_unnamed.forme "$bin/find_fold"
write unheaded_misprint.txt unheaded_misprint.forme "$bin/find_fold"
write ragged.txt ragged.forme "$bin/find_fold"
write no_forme.txt no.forme "$bin/find_fold"
write demo_book.txt - "$bin/describe_book" ../../examples/demo_book.txt
write demo_book_all.txt - "$bin/describe_book" ../../examples/demo_book.txt --all
write contradictory_record.txt contradictory_record.record "$bin/describe_book" -
write contradictory_record.json contradictory_record.record "$bin/describe_book" - --json
write empty_record.txt empty_record.record "$bin/describe_book" -
write quarto_of_1492.txt quarto_of_1492.record "$bin/describe_book" -
write wrong_record.txt wrong_record.record "$bin/describe_book" -
write one_leaf.txt one_leaf.record "$bin/describe_book" -
write folio_with_bolt.txt folio_with_bolt.record "$bin/describe_book" -
write folio_with_bolt.json folio_with_bolt.record "$bin/describe_book" - --json
write unread_fields.txt unread_fields.record "$bin/describe_book" -
write formulas.txt formulas.list "$bin/read_formulas"
write records.txt records.tsv "$bin/audit_records" --omitted 8
write records_repaired.txt records.tsv "$bin/audit_records" --omitted 8 --repaired
write records.jsonl records.tsv "$bin/audit_records" --omitted 8 --json
write marc.txt records.mrc "$bin/audit_records"
write books.txt books.tsv "$bin/sheets_of_book"
write leaves.txt leaves.tsv "$bin/name_format"
write leaves_and_sheets.txt leaves.tsv "$bin/name_format" --sheets --record
write editions.txt editions.tsv "$bin/reckon_paper"
write editions_in_full.txt editions_in_full.tsv "$bin/reckon_paper" --full
write measures.txt measures.tsv "$bin/name_format" --record
write doubtful_leaves.txt doubtful_leaves.tsv "$bin/name_format"
write ledger.txt ledger.tsv "$bin/name_format"
write editions_doubled.txt editions_doubled.tsv "$bin/reckon_paper" --decimals
write accounts.txt accounts.tsv "$bin/reckon_paper"
write ways_compared.txt ways.tsv "$bin/reckon_paper" --compare 1-3000
write copy.txt - "$bin/check_copy" '8°: A-C8(-C8)' 'A1-B2 B4-5 B7-C6'
write all_but.txt - "$bin/check_copy" '8°: A-K8 L4(-L4)' 'All leaves but A1 (title), B3,6 and f. 83'
write misbound_copy.txt - "$bin/check_copy" '8°: A-C8(-C8) D4(±D2)' 'A1-8 C1-8 B1-2 B7-8 D1-2 D2-4' 'A1.8 conjugate, D2 stub, D1 sewing, A2.7 disjunct'
write gathering_b.txt - "$bin/check_copy" '8°: A8 B8(±B3, B5+χ1, −B8) C4' 'A1-B3 B5-C4' --gathering B
write no_gathering.txt - "$bin/check_copy" '8°: A8 B8' --gathering Q
write quarto_right_to_left.txt - "$bin/show_formes" 4_quarto --right-to-left
write no_sheet.txt - "$bin/show_formes" 4_quarto --paper x.svg --sheet doormat
write sheet_misspelt.txt - "$bin/show_formes" 4_quarto --paper x.svg --sheet royl
write sheet_not_drawn.txt - "$bin/show_formes" 4_quarto --sheet royal
write eighteens.txt - "$bin/show_formes" '18°'
write eighteens_in_fours.txt - "$bin/show_formes" '18° in fours'
write no_class_page.txt - "$bin/class_page" "A-C8 D4" --out "$out/page.html"
write no_words.txt - "$bin/fold_a_sheet" --cancel --out "$out"
write fold_an_octavo.txt - "$bin/fold_a_sheet" 8_octavo --out "$out"
for lesson in 01_folded_once 02_quarto_by_hand 03_head_to_head 04_conjugates 05_paper 06_twelves 07_half_sheets \
  08_folio_in_sixes 09_signatures 10_formula 11_naming_a_format 12_a_copy 13_casting_off; do
  write ../../examples/teaching/$lesson.txt - "$bin/lesson_$lesson"
done
"$bin/draw_pictures" ../../examples/pictures
