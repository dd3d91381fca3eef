// SPDX-License-Identifier: MIT
/// Input whose form is told by how it begins: TSV, MARCXML or ISO 2709. Blanks may come first, but not without end: they are
/// kept, since in a table they are lines that have numbers, and a column without a name.
#pragma once

#include "input.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>

namespace support {

/// A source whose first bytes were looked at. All of them are read again.
class LookedAt : public Source {
  static constexpr std::size_t most_blank = std::size_t{1} << 20U, leader_bytes = 24;
  static constexpr std::string_view mark{"\xEF\xBB\xBF"};
  Source& source_;
  std::string first_{};
  std::size_t start_{}; // the first byte after a byte-order mark and blanks
  std::size_t given_{};

  /// More bytes; false at the end.
  bool more() {
    char room[4096];
    auto const taken = source_.read(room, sizeof room);
    first_.append(room, taken);
    return taken > 0;
  }
  [[nodiscard]] std::string_view begun() const { return std::string_view{first_}.substr(start_); }
  [[nodiscard]] bool begins_with_digit() const {
    return !begun().empty() && begun().front() >= '0' && begun().front() <= '9';
  }

public:
  /// Throws a Failure where there are more blanks than are kept.
  explicit LookedAt(Source& source) : source_{source} {
    while (first_.size() < mark.size() && mark.starts_with(first_) && more()) {
    }
    if (first_.starts_with(mark)) start_ = mark.size();
    do {
      start_ = (std::min)(std::string_view{first_}.find_first_not_of(" \t\r\n", start_), first_.size());
      if (start_ > most_blank)
        throw Failure{"the input begins with more than " + std::to_string(most_blank) +
                      " blanks, so its form cannot be recognised"};
    } while (begun().empty() && more());
    while (begins_with_digit() && begun().size() < leader_bytes && more()) {
    }
  }
  std::size_t read(char* to, std::size_t room) override {
    if (given_ == first_.size()) return source_.read(to, room);
    auto const taken = first_.copy(to, room, given_);
    given_ += taken;
    return taken;
  }
  /// Reads no mark of byte order and no blanks at the beginning: records of ISO 2709 begin with the leader. To be called
  /// before the first `read`.
  void pass_over_blanks() { given_ = start_; }
  /// What is there begins as XML does.
  [[nodiscard]] bool is_xml() const { return begun().starts_with('<'); }
  /// What is there begins with a leader: five digits, and the lengths of indicators and subfield codes.
  [[nodiscard]] bool is_exchange() const {
    auto const leader = begun().substr(0, leader_bytes);
    return leader.size() == leader_bytes && leader.find_first_not_of("0123456789") >= 5 && leader[10] == '2' &&
           leader[11] == '2' && leader.find('\t') == leader.npos;
  }
};

} // namespace support
