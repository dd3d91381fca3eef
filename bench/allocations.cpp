// SPDX-License-Identifier: MIT
// How often each operation asks for memory, by replacing operator new; 1 when one does that promises not to.
#include "operations.hpp"

#include <cstdio>
#include <cstdlib>
#include <new>

namespace {
long asked = 0;
}
void* operator new(std::size_t size) {
  ++asked;
  if (auto* const memory = std::malloc(size)) return memory;
  throw std::bad_alloc{};
}
// not inlined: g++ 12 -O3 would see memory of operator new given to free, and warn
[[gnu::noinline]] void operator delete(void* memory) noexcept { std::free(memory); }
[[gnu::noinline]] void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }

int main() {
  bool broken = false;
  constexpr int times = 100;
  for (auto const& one : bench::operations()) {
    one.run(1); // what is made once a program is made now
    asked = 0;
    one.run(times);
    bool const wrong = one.allocates_nothing && asked != 0;
    broken = broken || wrong;
    std::printf("%6.2f allocations  %s%s\n", static_cast<double>(asked) / times, one.name,
                wrong ? ": PROMISED NONE" : "");
  }
  return broken ? 1 : 0;
}
