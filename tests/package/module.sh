#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# The library as a C++20 module: compiled without a word, imported by a program that includes no header of it, and closed to what
# is not for users. CLANG names a compiler; clang 19 with libc++ by default.
#   tests/package/module.sh SOURCE WORK
# Exit code 77 where that compiler or its library is missing.
set -eu
source=$1 work=$2/module
clang=${CLANG:-$(command -v clang++-19 || true)}
if [ -z "$clang" ] || ! echo '#include <format>' | "$clang" -std=c++20 -stdlib=libc++ -fsyntax-only -x c++ - 2>/dev/null; then
  echo "skipped: there is no clang 19 with libc++ (Debian: apt-get install clang-19 libc++-19-dev libc++abi-19-dev), nor is CLANG set"
  exit 77
fi
mkdir -p "$work"
compile() { "$clang" -std=c++20 -stdlib=libc++ "$@"; }

compile -Wall -Wextra -Wpedantic -Werror "-I$source/include" --precompile "$source/cmake/bifolium.cppm" -o "$work/bifolium.pcm"
"$clang" -c "$work/bifolium.pcm" -o "$work/bifolium.o"
import="-fmodule-file=bifolium=$work/bifolium.pcm"
compile -Wall -Wextra -Werror "$import" -c "$source/tests/package/module/program.cpp" -o "$work/program.o"
compile "$work/program.o" "$work/bifolium.o" -o "$work/program"
"$work/program" | diff "$source/tests/package/module/program.txt" -

# The machinery is not exported; the control is the same unit with a name that is.
unit() { printf 'import bifolium;\nusing bifolium::%s;\n' "$1" >"$work/unit.cpp"; }
unit read_formula
compile "$import" -fsyntax-only "$work/unit.cpp"
unit detail::FormulaReader
if compile "$import" -fsyntax-only "$work/unit.cpp" 2>"$work/said"; then
  echo "a name of the machinery is exported"
  exit 1
fi
grep -q "FormulaReader" "$work/said"
