// SPDX-License-Identifier: MIT
/// Records answered on several threads, and written in the order in which they came. Records are taken until more bytes have to
/// be waited for, or some hundreds are there; so who gives record by record is answered record by record, and memory does not
/// grow with the input.
#pragma once

#include "answers.hpp"
#include "audit_answer.hpp"
#include "input.hpp"

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace support {

/// A record of the input: its texts, or why it could not be read.
struct TakenRecord {
  std::uint64_t number{};
  RecordTexts texts{};
  std::string wrong{};
};

/// `Answer` makes an answer of a record on any thread; `Write` gets the answers one by one, in order.
template <class Answer, class Write> class RecordsInOrder {
  static constexpr std::size_t most_taken = 512;
  using Answered = decltype(std::declval<Answer const&>()(std::declval<TakenRecord const&>()));
  std::size_t threads_;
  Answer answer_;
  Write write_;
  std::vector<TakenRecord> taken_{};

public:
  RecordsInOrder(std::size_t threads, Answer answer, Write write)
      : threads_{threads}, answer_{std::move(answer)}, write_{std::move(write)} {}

  void take(TakenRecord record) {
    taken_.push_back(std::move(record));
    if (taken_.size() == most_taken) answer_all();
  }
  /// Answers and writes all records that were taken.
  void answer_all() {
    auto const taken = std::exchange(taken_, {}); // if writing fails, no record is written a second time
    std::vector<Answered> answered(taken.size());
    share_out(taken.size(), threads_, [&](std::size_t i) { answered[i] = answer_(taken[i]); });
    for (auto const& one : answered) write_(one);
  }
};

/// A source that calls `before` each time more bytes are waited for.
template <class Before> class SourceAfter : public Source {
  Source& source_;
  Before before_;

public:
  SourceAfter(Source& source, Before before) : source_{source}, before_{std::move(before)} {}
  std::size_t read(char* to, std::size_t room) override {
    before_();
    return source_.read(to, room);
  }
};

} // namespace support
