#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Front and back of every sheet to fold become pages of a PDF of the size of the paper; every other drawing a PNG that is not
# blank. Of books read from right to left, which are mirror images, only the formes are rendered. Exit code 77 without rsvg-convert
# (Debian: librsvg2-bin).
#   tests/drawing/render.sh DIR [EVERY]
# With EVERY 3 each third of the other drawings is rendered.
set -eu
every=${2:-1}
command -v rsvg-convert >/dev/null || { echo "skipped: there is no rsvg-convert (Debian: apt-get install librsvg2-bin)"; exit 77; }
cd "$1"
trap 'rm -f sheets.pdf picture.png boxes.txt' EXIT

# Front and back of each sheet, one after the other; the mirror of one that is rendered is left out.
sheets=()
for front in *-front.svg; do
  case $front in *right-to-left*) ;; *) sheets+=("$front" "${front%-front.svg}-back.svg") ;; esac
done
rsvg-convert -f pdf -o sheets.pdf "${sheets[@]}"
# 72 points to the inch: A4 is 595.28 x 841.89 points, letter 612 x 792 (792.0 and 612.0 by way of millimetres).
grep -aoE '/MediaBox *\[[^]]*\]' sheets.pdf | sed -E 's/.*\[ *//; s/\.[0-9]+//g; s/ *\]//' >boxes.txt || true
[ -s boxes.txt ] || { echo "skipped: this rsvg-convert writes PDF whose pages cannot be read as text"; exit 77; }
pages=$(wc -l <boxes.txt)
[ "$pages" = ${#sheets[@]} ] || { echo "${#sheets[@]} drawings make $pages pages"; exit 1; }
if grep -vE '^0 0 (595 841|841 595|61[12] 79[12]|79[12] 61[12])$' boxes.txt; then
  echo "that is neither A4 nor letter"
  exit 1
fi

# Of this size a blank picture takes less than a thousand bytes.
pictures=0 seen=0
for picture in *-formes.svg *-paper.svg gathering-*.svg *-misread.svg *-steps-*.svg; do
  case $picture in *right-to-left-formes*) ;; *right-to-left*) continue ;; esac # of the mirrored ones, the formes
  seen=$((seen + 1))
  [ $((seen % every)) = 0 ] || continue
  rsvg-convert -z .3 -o picture.png "$picture"
  [ "$(wc -c <picture.png)" -gt 2000 ] || { echo "$picture: blank"; exit 1; }
  pictures=$((pictures + 1))
done
echo "$pages pages of PDF, $pictures pictures"
