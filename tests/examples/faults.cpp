// SPDX-License-Identifier: MIT
// Put before the system's own library, it fails as a system may fail: FAULT=read makes the second read of standard input fail
// with an input/output error, FAULT=threads lets no thread start.
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <pthread.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace {
bool asked_for(char const* fault) {
  auto const* const asked = std::getenv("FAULT");
  return asked != nullptr && std::strcmp(asked, fault) == 0;
}
} // namespace

extern "C" ssize_t read(int descriptor, void* to, size_t room) {
  static int reads = 0;
  if (descriptor == STDIN_FILENO && asked_for("read") && ++reads > 1) {
    errno = EIO;
    return -1;
  }
  return syscall(SYS_read, descriptor, to, room);
}

extern "C" int pthread_create(pthread_t*, pthread_attr_t const*, void* (*)(void*), void*) noexcept {
  return EAGAIN; // only started by programs of which FAULT=threads is asked
}
