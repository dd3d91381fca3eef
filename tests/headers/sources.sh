#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Looks at every source of a configured build with the build's own compiler and flags and generates nothing: what a second
# compiler warns about is found in half the time that building takes.
#   sources.sh BUILD_FOLDER [PATTERN]   (configured with CMAKE_EXPORT_COMPILE_COMMANDS and CMAKE_DISABLE_PRECOMPILE_HEADERS ON)
# With a pattern, only the sources whose path it matches, as an extended regular expression.
set -euo pipefail
cd "$1"
grep -oE '"command": ".*"' compile_commands.json |
  sed -E 's/^"command": "//; s/"$//; s/\\"/"/g; s/\\\\/\\/g; s/ -o [^ ]+ -c / -fsyntax-only /' | grep -v two_versions_new | grep -E -- "${2:-.}" >sources.list # which needs headers that the build writes
[ -s sources.list ]
echo "$(wc -l <sources.list) sources"
tr '\n' '\0' <sources.list | xargs -0 -P "$(nproc)" -I{} bash -c '{}'
