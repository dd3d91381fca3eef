#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Uses pages for a class in a headless Chromium as a class does: folds forward and back by button and by arrow key, moves
# to a page with the keyboard, reads the openings, turns the switch, looks at the width of a telephone, prints.
#   tests/drawing/class_page.sh CLASS_PAGE SHOW_FORMES
# Exit code 77 when there is no Chromium (Debian: chromium); CHROMIUM names another one.
set -eu
browser=${CHROMIUM:-$(command -v chromium || command -v chromium-browser || true)}
if [ -z "$browser" ]; then
  echo "skipped: there is no chromium on the PATH (Debian: apt-get install chromium), nor is CHROMIUM set"
  exit 77
fi
program=$(realpath "$1") list=$(realpath "$2") here=$(realpath "$(dirname "$0")")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
run() { # the last argument: the page
  "$browser" --headless --no-sandbox --disable-gpu --disable-dev-shm-usage --disable-quic --no-first-run \
    --disable-background-networking --disable-component-update --disable-sync --user-data-dir="$work/profile" "$@"
}

"$program" octavo --out octavo.html
"$program" 12_common --out twelves.html
"$program" 8_half_sheet --out half.html --paper letter
"$program" 8_octavo --right-to-left --out hebrew.html
"$program" '8°: A8(±A3) B8 C4' --out book.html
[ "$(wc -c <octavo.html)" -lt 400000 ] || { echo "octavo.html has more than 400 KB"; exit 1; }
# Nothing is asked of any other place.
if grep -noE '(src|href)="?[^"# >]|https?://[^" ]*' *.html | grep -v 'http://www.w3.org/2000/svg'; then
  echo "a page asks for something else"
  exit 1
fi

mkdir all
"$list" --list | while read -r scheme; do "$program" "$scheme" --out "all/$scheme.html"; done
{
  echo "<script>const schemes = ["
  for page in all/*.html; do echo "'$page',"; done
  echo "];</script>"
} >schemes.txt
sed '/<!-- the schemes -->/r schemes.txt' "$here/class_page.html" >class_page.html
run --allow-file-access-from-files --enable-logging=stderr --virtual-time-budget=600000 --dump-dom \
  "file://$work/class_page.html" >dom.txt 2>log.txt || { cat log.txt; exit 1; }
sed -n '/<pre>/,/<\/pre>/p' dom.txt | sed 's/.*<pre>//; s/<\/pre>.*//' | grep -v '^$' >report.txt || true
cat report.txt
grep 'CONSOLE' log.txt && { echo "there are console messages"; exit 1; }
[ "$(tail -1 report.txt)" = "all was as it should be" ] || exit 1

# Printed: front and back of the sheet, one page of steps, one of questions, each of its size. 72 points to the inch.
printed() { # page, its expected boxes
  run --no-pdf-header-footer --print-to-pdf="$work/$1.pdf" "file://$work/$1.html" >/dev/null 2>&1
  local boxes
  boxes=$(grep -aoE '/MediaBox *\[[^]]*\]' "$1.pdf" | sed -E 's/.*\[ *//; s/\.[0-9]+//g; s/ *\]//' | sort | uniq -c | tr -s ' \n' ' ' || true)
  [ -n "$boxes" ] || { echo "skipped: this chromium writes PDF whose pages cannot be read as text"; exit 77; }
  [ "$boxes" = "$2" ] || { echo "$1.pdf has pages of $boxes, not of $2"; exit 1; }
}
printed octavo " 1 0 0 594 841 3 0 0 841 594 "
printed half " 1 0 0 612 792 4 0 0 792 612 "
echo "printed on A4 and on letter"
