// SPDX-License-Identifier: MIT
/// A table answered row by row, for answers that cost more than reading the row. Rows are taken some thousands at a time;
/// a question met before is not asked again, since catalogues give sizes in whole centimetres and say the same of many
/// books; new ones are shared out among threads. Rows leave in the order in which they came, whatever thread answered.
/// Memory is bounded in bytes: by the rows taken at once, and by the questions remembered.
#pragma once

#include "tsv.hpp"
#include "wrong.hpp"

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <ostream>
#include <string>
#include <string_view>
#include <thread>
#include <unordered_map>
#include <utility>
#include <vector>

namespace support {

/// What an answer may depend on: the cells of the columns asked for, and what was wrong with the row before they were read.
class Question {
  Cells const& names_;
  Cells cells_; // and two more, the sentence and the identifier of what is wrong

public:
  /// `key` as `Answers` makes it: the cells in the order of the names, and what is wrong.
  Question(Cells const& names, std::string_view key) : names_{names}, cells_{split(key)} {}

  [[nodiscard]] std::string cell(std::string_view name) const {
    auto const at = std::find(names_.begin(), names_.end(), name);
    return at == names_.end() ? "" : trimmed(cells_[static_cast<std::size_t>(at - names_.begin())]);
  }
  [[nodiscard]] Wrong wrong() const {
    Wrong wrong;
    if (!cells_.back().empty()) wrong.add("", cells_[cells_.size() - 2], cells_.back());
    return wrong;
  }
};

/// Calls `work(i)` for each i below a count, on as many threads as can be started, at most `threads`. The work is done also
/// where the system starts none. What one call throws is thrown here, when all threads have ended.
template <class Work> void share_out(std::size_t count, std::size_t threads, Work work) {
  constexpr std::size_t worth_a_thread = 64;
  std::atomic<std::size_t> next{0};
  std::exception_ptr failed;
  std::mutex failing;
  auto const some = [&] {
    try {
      for (auto i = next++; i < count; i = next++) work(i);
    } catch (...) {
      std::lock_guard const lock{failing};
      failed = std::current_exception();
      next = count;
    }
  };
  std::vector<std::thread> others;
  others.reserve(threads);
  try {
    for (std::size_t t = 1; t < threads && t * worth_a_thread < count; ++t) others.emplace_back(some);
  } catch (
      ...) { // no more threads, or no memory for one: those there are do it, and must be joined whatever was thrown
  }
  some();
  for (auto& other : others) other.join();
  if (failed) std::rethrow_exception(failed);
}

/// Answers the rows of a table. `Answer` makes a text of a `Question`; it is called on any thread, and the same question
/// must get the same answer.
template <class Answer> class Answers {
  static constexpr std::size_t rows_at_once = 4096, bytes_at_once = std::size_t{1} << 20U,
                               bytes_kept = std::size_t{32} << 20U, bytes_about_a_question = 128;
  Header const& header_;
  Cells names_; // of the columns asked for that the table has
  std::vector<std::size_t> columns_;
  std::size_t threads_;
  Answer answer_;
  std::unordered_map<std::string, std::string> known_;
  std::size_t bytes_known_{};

  using Known = std::pair<std::string const, std::string>;
  struct Row {
    std::string cells;
    Known* known;
  };
  std::vector<Row> rows_;
  std::vector<Known*> questions_;

  [[nodiscard]] std::string key(Cells const& cells, Wrong const& wrong) const {
    std::string key;
    for (auto const column : columns_) key.append(column < cells.size() ? cells[column] : "").append("\t");
    return key.append(wrong.words()).append("\t").append(wrong.problems());
  }
  /// Takes the row on which `lines` is, and gives its bytes.
  std::size_t take(Lines const& lines) {
    auto const cells = header_.cells(lines.text());
    Wrong wrong;
    wrong.add_line(lines, cells, header_.size());
    auto const [at, fresh] = known_.try_emplace(key(cells, wrong));
    if (fresh) questions_.push_back(&*at);
    rows_.push_back({fitted(cells, header_.size()), &*at});
    return rows_.back().cells.size() + (fresh ? at->first.size() : 0);
  }
  void answer_all(std::ostream& out) {
    share_out(questions_.size(), threads_, [&](std::size_t i) {
      questions_[i]->second = answer_(Question{names_, questions_[i]->first});
    });
    for (auto const& row : rows_) out << row.cells << '\t' << row.known->second << '\n';
    for (auto const* one : questions_) bytes_known_ += one->first.size() + one->second.size() + bytes_about_a_question;
    rows_.clear(), questions_.clear();
    if (bytes_known_ > bytes_kept) known_.clear(), bytes_known_ = 0;
  }

public:
  /// `asked`: the columns that an answer may depend on.
  Answers(Header const& header, Cells const& asked, std::size_t threads, Answer answer)
      : header_{header}, threads_{threads}, answer_{std::move(answer)} {
    for (auto const& name : asked)
      if (auto const column = header.column(name)) names_.push_back(name), columns_.push_back(*column);
  }

  /// Writes each row, on as many cells as the header has, with its answer after it. Rows that are there are answered
  /// before more are waited for.
  void write(Lines& lines, std::ostream& out) {
    while (next_row(lines, header_)) {
      auto bytes = take(lines);
      while (rows_.size() < rows_at_once && bytes < bytes_at_once && lines.is_waiting() && lines.next())
        if (is_row(lines, header_)) bytes += take(lines);
      answer_all(out);
    }
  }
};

} // namespace support
