// SPDX-License-Identifier: MIT
/// What every example program shares with the system it runs on. Output that cannot be written, input that cannot be read
/// and memory that is not there end a program with a sentence on standard error and exit code 1, `--help` included:
/// a program hands its work to `run`. POSIX; standard output is written through `std::cout` as everywhere.
#pragma once

#include "shown.hpp"

#include <cerrno>
#include <cstddef>
#include <exception>
#include <fcntl.h>
#include <fstream>
#include <iostream>
#include <new>
#include <poll.h>
#include <stdexcept>
#include <streambuf>
#include <string>
#include <string_view>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace support {

/// The exit codes of all example programs.
enum Exit { all_done = 0, unreadable = 1, wrong_usage = 2 };

/// A reason for which a program cannot continue: a sentence without a full stop.
struct Failure : std::runtime_error {
  using std::runtime_error::runtime_error;
  /// With the reason the system gives: "cannot read leaves.tsv: Is a directory".
  Failure(std::string const& what, int error_number)
      : std::runtime_error{what + ": " + std::generic_category().message(error_number)} {}
};

/// Says a sentence on standard error, in one line whatever is in it.
inline void tell(std::string_view sentence) { std::cerr << shown(sentence) << '\n' << std::flush; }

/// Waits until a descriptor that was opened not to block can be read or written.
inline void wait_for(int descriptor, short event) {
  pollfd one{descriptor, event, 0};
  ::poll(&one, 1, -1);
}

/// Standard output: 64 KB at a time; a write that fails is a Failure, and what was to be written is dropped.
class StandardOutput : public std::streambuf {
  char room_[std::size_t{64} * 1024];

  void write(char const* from, char const* end) {
    while (from != end) {
      auto const written = ::write(STDOUT_FILENO, from, static_cast<std::size_t>(end - from));
      if (written >= 0)
        from += written;
      else if (errno == EAGAIN)
        wait_for(STDOUT_FILENO, POLLOUT);
      else if (errno != EINTR)
        throw Failure{"cannot write to standard output", errno};
    }
  }
  int sync() override {
    auto const* const begin = pbase();
    auto const* const end = pptr();
    setp(room_, room_ + sizeof room_);
    write(begin, end);
    return 0;
  }
  int_type overflow(int_type c) override {
    sync();
    return traits_type::eq_int_type(c, traits_type::eof()) ? traits_type::not_eof(c)
                                                           : sputc(traits_type::to_char_type(c));
  }

public:
  StandardOutput() { setp(room_, room_ + sizeof room_); }
};

/// A file that is opened must not take the number of a standard descriptor that was closed, or messages go into it. Each
/// closed one is opened the wrong way round, so that its use fails as before.
inline void hold_closed_descriptors() {
  for (int descriptor : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
    if (::fcntl(descriptor, F_GETFD) == -1)
      static_cast<void>(::open("/dev/null", descriptor == STDIN_FILENO ? O_WRONLY : O_RDONLY));
}

/// Calls `work` and gives its exit code; where it throws, says why and gives 1.
template <class Work> int exit_code_of(Work work) {
  try {
    return work();
  } catch (Failure const& failure) {
    tell(failure.what());
  } catch (std::bad_alloc const&) {
    tell("there is not enough memory");
  } catch (std::exception const& error) { // a precondition that the program did not keep
    tell(std::string{"the program has a mistake: "} + error.what());
  }
  return unreadable;
}

/// Does the work of a program, `int work()`, and gives its exit code; 1 with a sentence where it could not be done. What was
/// answered before a failure is written.
template <class Work> int run(Work work) {
  hold_closed_descriptors();
  StandardOutput output;
  auto* const before = std::cout.rdbuf(&output);
  std::cout.exceptions(std::ios::badbit); // so that a Failure passes through `<<`
  std::cerr.tie(nullptr);                 // or it would pass through every message too
  auto const code = exit_code_of(work);
  auto const written = exit_code_of([] {
    if (std::cout.good()) std::cout.flush();
    return all_done;
  });
  std::cout.exceptions(std::ios::goodbit);
  std::cout.rdbuf(before);
  return code == all_done ? written : code;
}

/// Writes a file whole.
inline void write_file(std::string const& path, std::string_view text) {
  errno = 0;
  std::ofstream file{path, std::ios::binary};
  if (file && file.write(text.data(), static_cast<std::streamsize>(text.size())) && file.flush()) return;
  throw errno != 0 ? Failure{"cannot write " + path, errno} : Failure{"cannot write " + path};
}

} // namespace support
