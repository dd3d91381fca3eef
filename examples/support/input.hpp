// SPDX-License-Identifier: MIT
/// Input of the example programs, line by line. Lines end with LF, CRLF or, where the first line does, with CR; a mark of
/// byte order before the first is passed over. A line has a limit, so that memory has one too; a line over it is counted
/// but not kept. UTF-16 and UTF-32 are named and refused. What cannot be read is a Failure, never the end of the input.
#pragma once

#include "program.hpp"

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <fcntl.h>
#include <memory>
#include <string>
#include <string_view>
#include <unistd.h>

namespace support {

/// Where bytes come from.
class Source {
public:
  Source() = default;
  Source(Source const&) = delete;
  Source& operator=(Source const&) = delete;
  virtual ~Source() = default;
  /// Waits for at least one byte, takes what is there, at most `room` bytes, and gives their number: 0 at the end.
  virtual std::size_t read(char* to, std::size_t room) = 0;
};

/// The bytes of a text.
class TextSource : public Source {
  std::string_view text_;

public:
  explicit TextSource(std::string_view text) : text_{text} {}
  std::size_t read(char* to, std::size_t room) override {
    auto const taken = text_.copy(to, room);
    text_.remove_prefix(taken);
    return taken;
  }
};

/// Standard input, or a file. Before it waits for more, it flushes standard output, so that who asks line by line is
/// answered line by line.
class Input : public Source {
  int descriptor_;
  std::string name_;

public:
  /// `-` is standard input. Throws a Failure where there is no such file.
  explicit Input(std::string const& path = "-")
      : descriptor_{path == "-" ? STDIN_FILENO : ::open(path.c_str(), O_RDONLY | O_CLOEXEC)}, name_{
                                                                                                  path == "-"
                                                                                                      ? "standard input"
                                                                                                      : path} {
    if (descriptor_ == -1) throw Failure{"cannot read " + name_, errno};
  }
  ~Input() override {
    if (descriptor_ != STDIN_FILENO) ::close(descriptor_);
  }
  std::size_t read(char* to, std::size_t room) override {
    std::cout.flush();
    while (true) {
      auto const taken = ::read(descriptor_, to, room);
      if (taken >= 0) return static_cast<std::size_t>(taken);
      if (errno == EAGAIN)
        wait_for(descriptor_, POLLIN);
      else if (errno != EINTR)
        throw Failure{"cannot read " + name_, errno};
    }
  }
};

/// Limits on what is read; `--longest-line` changes the first.
struct InputLimits {
  std::size_t line_bytes = std::size_t{16} << 20U; ///< of one line, and so of a cell
};

/// Refuses UTF-16 and UTF-32 by the bytes with which a text begins.
inline void refuse_wide_characters(std::string_view start) {
  auto const begins = [&](std::initializer_list<unsigned char> bytes) {
    return start.size() >= bytes.size() && std::equal(bytes.begin(), bytes.end(), start.begin(), [](auto a, char b) {
             return a == static_cast<unsigned char>(b);
           });
  };
  auto const zero = [&](std::size_t i) { return i < start.size() && start[i] == '\0'; };
  bool const wide = begins({0xFF, 0xFE, 0, 0}) || begins({0, 0, 0xFE, 0xFF}) || (zero(0) && zero(1) && zero(2)) ||
                    (zero(1) && zero(2) && zero(3));
  bool const half_wide = begins({0xFF, 0xFE}) || begins({0xFE, 0xFF}) || (start.size() > 1 && zero(0) != zero(1));
  if (wide || half_wide)
    throw Failure{std::string{"the input is "} + (wide ? "UTF-32" : "UTF-16") + ": give it as UTF-8"};
}

/// The lines of a source.
class Lines {
  static constexpr std::size_t at_once = std::size_t{64} * 1024;
  Source& source_;
  InputLimits limits_;
  std::unique_ptr<char[]> room_{std::make_unique<char[]>(at_once)};
  std::size_t begin_{}, end_{};
  std::string text_{};
  std::uint64_t number_{}, bytes_{};
  enum class Ends { unknown, line_feed, carriage_return } ends_{Ends::unknown};
  bool after_return_{}; // the last line ended with CR: an LF now belongs to that end

  /// More bytes, when those there are used up; false at the end.
  bool fill() {
    if (begin_ == end_) begin_ = 0, end_ = source_.read(room_.get(), at_once);
    return begin_ != end_;
  }
  [[nodiscard]] std::size_t find(char c, std::size_t before) const {
    auto const* const found = std::memchr(room_.get() + begin_, c, before - begin_);
    return found == nullptr ? before : static_cast<std::size_t>(static_cast<char const*>(found) - room_.get());
  }
  /// Where the line ends, among the bytes there are; `end_` where it does not.
  [[nodiscard]] std::size_t line_end() const {
    auto const feed = find('\n', end_);
    return ends_ == Ends::line_feed ? feed : find('\r', feed);
  }
  void keep(std::size_t to) {
    bytes_ += to - begin_;
    if (bytes_ <= limits_.line_bytes)
      text_.append(room_.get() + begin_, to - begin_);
    else
      text_ = {}; // and its memory
    begin_ = to;
  }
  /// The first CR decides: LF after it, or at once the next line.
  bool ends_with_return() {
    if (!fill()) return true;
    return room_[begin_] != '\n';
  }
  void first_line_read() {
    if (text_.starts_with("\xEF\xBB\xBF")) text_.erase(0, 3);
    refuse_wide_characters(text_);
  }

public:
  explicit Lines(Source& source, InputLimits limits = {}) : source_{source}, limits_{limits} {}

  /// Goes to the next line; false at the end of the input.
  bool next() {
    text_.clear();
    bytes_ = 0;
    if (after_return_ && fill() && room_[begin_] == '\n') ++begin_;
    after_return_ = false;
    if (!fill()) return false;
    while (fill()) {
      keep(line_end());
      if (begin_ == end_) continue;
      auto const c = room_[begin_++];
      if (c == '\r' && ends_ == Ends::unknown) {
        if (!ends_with_return()) { // LF follows, which ends the line
          ++begin_;
          ends_ = Ends::line_feed;
          break;
        }
        ends_ = Ends::carriage_return;
      }
      if (c == '\n' && ends_ == Ends::unknown) ends_ = Ends::line_feed;
      after_return_ = c == '\r';
      break;
    }
    if (ends_ == Ends::line_feed && text_.ends_with('\r')) text_.pop_back(), --bytes_;
    if (++number_ == 1) first_line_read();
    return true;
  }

  /// The line without its end; empty where it is too long.
  [[nodiscard]] std::string const& text() const { return text_; }
  /// Its number in the input, from 1.
  [[nodiscard]] std::uint64_t number() const { return number_; }
  [[nodiscard]] bool too_long() const { return bytes_ > limits_.line_bytes; }
  /// What is wrong with a line that is too long.
  [[nodiscard]] std::string length_told() const {
    return "line " + std::to_string(number_) + " has " + std::to_string(bytes_) + " bytes, more than the limit of " +
           std::to_string(limits_.line_bytes) + " (--longest-line)";
  }
  /// Whether a whole line can be had without waiting.
  [[nodiscard]] bool is_waiting() const { return line_end() != end_; }
};

/// A whole text, its lines ended by LF. `most` bytes at most: more is a Failure.
inline std::string whole_text(Source& source, std::size_t most = std::size_t{1} << 20U) {
  Lines lines{source, {most}};
  std::string text;
  while (lines.next()) {
    if (lines.too_long() || text.size() + lines.text().size() >= most)
      throw Failure{"the text has more than " + std::to_string(most) + " bytes"};
    text.append(lines.text()).append("\n");
  }
  return text;
}

} // namespace support
