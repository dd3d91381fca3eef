# SPDX-License-Identifier: MIT
# What is compiled to see what the library costs: each folder's header by itself, and a program that names the place of
# a page in no scheme, one, ten or all of them, known while compiling; and a unit that asserts a place in all of them.
write_units() { # folder to write to
  local header count i
  : >"$1/nothing.cpp"
  for header in leaf paper fold imposition collation edition evidence drawing bifolium; do
    echo "#include <bifolium/$header.hpp>" >"$1/$header.cpp"
  done
  for count in 0 1 10 61; do
    {
      echo '#include <bifolium/fold.hpp>'
      echo '#include <bifolium/imposition.hpp>'
      echo 'using namespace bifolium;'
      echo 'template <SchemeRow Row> inline constexpr Attested row{Row};'
      echo 'int main(int argc, char**) {'
      echo '  int sum = 0;'
      for ((i = 0; i < count; ++i)); do echo "  sum += impose<row<static_cast<SchemeRow>($i)>>().place(argc).row;"; done
      echo '  return sum;'
      echo '}'
    } >"$1/schemes_$count.cpp"
  done
  {
    sed '/^int main/,$d' "$1/schemes_0.cpp"
    for ((i = 0; i < 61; ++i)); do
      echo "static_assert(impose<row<static_cast<SchemeRow>($i)>>().place(1).row < 8);"
    done
  } >"$1/schemes_asserted.cpp"
}
