// SPDX-License-Identifier: MIT
// What the compiler calls at each step of a program compiled with -fsanitize-coverage=trace-pc. This file is compiled
// without it.
#include <cstdint>

std::uint64_t steps_done = 0;

extern "C" void __sanitizer_cov_trace_pc();
extern "C" void __sanitizer_cov_trace_pc() { ++steps_done; }
