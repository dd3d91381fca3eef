#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Every drawing of a directory is well-formed XML to xmllint. Exit code 77 when there is none (Debian: libxml2-utils).
#   tests/drawing/xml.sh DIR
set -eu
command -v xmllint >/dev/null || { echo "skipped: there is no xmllint (Debian: apt-get install libxml2-utils)"; exit 77; }
cd "$1"
xmllint --noout --nonet ./*.svg
echo "$(ls *.svg | wc -l) drawings are well-formed"
