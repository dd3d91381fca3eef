#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Writes the page of misuses: what is wrong, what is right, and what two compilers say, as captured.
#   tests/negative/page.sh > cmake/doc/misuses.md
set -euo pipefail
cd "$(dirname "$0")"
cat <<'END'
<!-- SPDX-License-Identifier: MIT -->
# What does not compile, and what the compiler says

Each case is compiled in every run of the tests, wrong and right; the lines below are what g++ 12 and clang 19 say of the wrong
one, as they say it. Find the words you were shown with your browser's search.
END
says() { # name of the compiler, its kind, command
  printf '%s: ' "$1"
  cmake -DCASE="$PWD/$case" -DCXX="$3" -DINCLUDE="$PWD/../../include" -DCOMPILER="$2" -DWRITE=ON -P check.cmake 2>&1
}
for case in *.cpp; do
  name=${case%.cpp}
  printf '\n## %s\n\n' "${name//_/ }"
  sed -n '2,/^#include/{/^\/\/ \(says\|with\)/d;/^#/d;s/^\/\/ //p}' "$case" | sed '$a\\' | cat -s
  echo '```cpp'
  awk '/^#ifdef MISUSE/ { on = 1; print "// wrong"; next } /^#else/ { if (on) print "// right"; next } /^#endif/ { on = 0; next } on' "$case"
  echo '```'
  echo '```text'
  says 'g++ 12' GNU g++
  says 'clang 19' Clang clang++-19
  echo '```'
done
