#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# The views for gdb show a value as the library writes it. A program prints its values and stops; gdb shows the same variables.
#   tests/package/debugger.sh SOURCE WORK COMPILER [FLAGS ...]
# Exit code 77 where there is no gdb, or it may not run a program here.
set -eu
source=$1 work=$2/debugger
shift 2
if ! command -v gdb >/dev/null || ! gdb -batch -ex 'python print(1)' 2>/dev/null | grep -q '^1$'; then
  echo "skipped: there is no gdb that knows Python (Debian: apt-get install gdb)"
  exit 77
fi
mkdir -p "$work"
"$@" -std=c++20 -g -O0 "-I$source/include" "$source/tests/package/debugger/program.cpp" -o "$work/program"
if ! gdb -nx -batch -ex 'break main' -ex run "$work/program" 2>&1 | grep -q 'Breakpoint 1, '; then
  echo "skipped: gdb may not run a program here"
  exit 77
fi
export LC_ALL=C.UTF-8
"$work/program" >"$work/printed"
variables="plain series small greek number symbol name beside after printed unsigned_one quoted cyrillic hebrew two enclosed whole mixed part length inches sheet
  octavo oblong half text expected"
commands=()
for variable in $variables refused formula wrong; do commands+=(-ex "output $variable" -ex 'echo \n'); done
gdb -nx -batch -ex "source $source/cmake/debugger/bifolium_gdb.py" -ex 'break stop' -ex run -ex 'echo values\n' -ex up -ex 'echo here\n' \
  "${commands[@]}" "$work/program" >"$work/shown" 2>&1
sed -n '/^here$/,$p' "$work/shown" | sed 1d >"$work/values"
{
  head -n "$(wc -w <<<"$variables")" "$work/printed"
  cat <<'END'
error: unknown_format at line 1, column 1: '12x'
8°: π² A-K⁸ L⁴ with 1 change; 85 leaves
error: no_leaf_count at line 1, column 10: 'L'
END
} | diff - "$work/values"
