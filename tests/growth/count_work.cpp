// SPDX-License-Identifier: MIT
// What the compiler calls at each step of a program compiled with -fsanitize-coverage=trace-pc, and what counts the bytes
// that are held. This file is compiled without it.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <new>

std::uint64_t steps_done = 0;
std::size_t bytes_held = 0, most_bytes_held = 0;

// NOLINTBEGIN(bugprone-reserved-identifier): the name that the compiler calls
extern "C" void __sanitizer_cov_trace_pc();
extern "C" void __sanitizer_cov_trace_pc() { ++steps_done; }

// What is moved inside the memory that is held already is work too: leaves put in before many others. The linker gives calls
// of memmove and memcpy to these (--wrap).
extern "C" void* __real_memmove(void*, void const*, std::size_t);
extern "C" void* __wrap_memmove(void*, void const*, std::size_t);
extern "C" void* __wrap_memmove(void* to, void const* from, std::size_t size) {
  steps_done += size / 16;
  return __real_memmove(to, from, size);
}
extern "C" void* __real_memcpy(void*, void const*, std::size_t);
extern "C" void* __wrap_memcpy(void*, void const*, std::size_t);
extern "C" void* __wrap_memcpy(void* to, void const* from, std::size_t size) {
  steps_done += size / 16;
  return __real_memcpy(to, from, size);
}
// NOLINTEND(bugprone-reserved-identifier)

// The size of each piece is kept in front of it. A text that is copied takes no branch for each byte, so memory that is asked
// for counts as work too.
void* operator new(std::size_t size) {
  constexpr std::size_t before = alignof(std::max_align_t);
  auto* const place = static_cast<unsigned char*>(std::malloc(size + before));
  if (place == nullptr) throw std::bad_alloc{};
  *reinterpret_cast<std::size_t*>(place) = size;
  bytes_held += size;
  steps_done += size / 16;
  if (bytes_held > most_bytes_held) most_bytes_held = bytes_held;
  return place + before;
}
void operator delete(void* at) noexcept {
  if (at == nullptr) return;
  auto* const place = static_cast<unsigned char*>(at) - alignof(std::max_align_t);
  bytes_held -= *reinterpret_cast<std::size_t*>(place);
  std::free(place);
}
void operator delete(void* at, std::size_t) noexcept { operator delete(at); }
