#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Each header that users may include compiles by itself, included twice, without a warning. Nothing is generated, so this costs what including does.
#   alone.sh INCLUDE WORK COMPILER FLAGS...
set -euo pipefail
include=$1 work=$2
shift 2
compile=()
for word; do [ -z "$word" ] || compile+=("$word"); done
mkdir -p "$work"
cd "$include"
find bifolium -name '*.hpp' -not -path '*/detail/*' | sort | while IFS= read -r header; do
  unit=$work/${header//\//_}.cpp
  printf '#include <%s>\n#include <%s>\n' "$header" "$header" >"$unit"
  printf '%s\0' "$unit"
done | xargs -0 -P "$(nproc)" -n 8 "${compile[@]}" -std=c++20 -fsyntax-only "-I$include"
