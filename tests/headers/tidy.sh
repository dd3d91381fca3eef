#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# clang-tidy over every source of a configured build, with the build's own flags, and by way of them over every header.
#   tidy.sh BUILD_FOLDER [PATTERN]   (configured with CMAKE_EXPORT_COMPILE_COMMANDS and CMAKE_DISABLE_PRECOMPILE_HEADERS ON)
# With a pattern, only the sources whose path it matches, as an extended regular expression.
# It is clang-tidy 16, since 14 knows no lambdas that capture structured bindings.
set -euo pipefail
tests=$(realpath "$(dirname "$0")/..")
cd "$1"
grep -oE '"file": ".*"' compile_commands.json | sed -E 's/^"file": "//; s/"$//' | sort -u |
  grep -v two_versions_new | grep -E -- "${2:-.}" >tidied.list # which needs headers that the build writes
[ -s tidied.list ]
echo "$(wc -l <tidied.list) sources"
# The tests of a folder are one unit, which the build writes where the settings of tests/ do not reach.
of_tests=$(clang-tidy-16 --dump-config "$tests/main.cpp" -- | sed '/^\.\.\.$/d')
export of_tests
tidy() {
  case $1 in
    */Unity/*) clang-tidy-16 --quiet -p . --config="$of_tests" --checks=-bugprone-suspicious-include "$1" ;;
    *) clang-tidy-16 --quiet -p . "$1" ;;
  esac
}
export -f tidy
tr '\n' '\0' <tidied.list | xargs -0 -P "$(nproc)" -I{} bash -c 'tidy {} 2>&1 || { echo "clang-tidy has found something in {}"; exit 1; }'
