// SPDX-License-Identifier: MIT
/// A table answered row by row, for answers that cost more than reading the row. Rows are taken some thousands at a time;
/// a question met before is not asked again, since catalogues give sizes in whole centimetres and say the same of many
/// books; what is new is shared out among threads. Rows leave in the order in which they came, whatever thread answered.
#pragma once

#include "tsv.hpp"

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <istream>
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
  Cells cells_;

public:
  /// `key` as `Answers` makes it: the cells in the order of the names, and what is wrong.
  Question(Cells const& names, std::string_view key) : names_{names}, cells_{split(key)} {}

  [[nodiscard]] std::string cell(std::string_view name) const {
    auto const at = std::find(names_.begin(), names_.end(), name);
    return at == names_.end() ? "" : trimmed(cells_[static_cast<std::size_t>(at - names_.begin())]);
  }
  [[nodiscard]] std::string const& wrong() const { return cells_.back(); }
};

/// Answers the rows of a table. `Answer` makes a text of a `Question`; it is called on any thread, and the same question
/// must get the same answer.
template <class Answer> class Answers {
  static constexpr std::size_t rows_at_once = 4096, kept = 100'000, worth_a_thread = 64;
  Header const& header_;
  Cells names_; // of the columns asked for that the table has
  std::vector<std::size_t> columns_;
  std::size_t threads_;
  Answer answer_;
  std::unordered_map<std::string, std::string> known_;

  [[nodiscard]] std::string key(Cells const& cells) const {
    std::string key;
    for (auto const column : columns_) key.append(column < cells.size() ? cells[column] : "").append("\t");
    return key.append(too_wide(cells, header_.size()));
  }
  using Known = std::pair<std::string const, std::string>;
  void ask(std::vector<Known*> const& questions) const {
    std::atomic<std::size_t> next{0};
    auto const work = [&] {
      for (auto i = next++; i < questions.size(); i = next++)
        questions[i]->second = answer_(Question{names_, questions[i]->first});
    };
    std::vector<std::thread> others;
    for (std::size_t t = 1; t < threads_ && t * worth_a_thread < questions.size(); ++t) others.emplace_back(work);
    work();
    for (auto& other : others) other.join();
  }

public:
  /// `asked`: the columns that an answer may depend on.
  Answers(Header const& header, Cells const& asked, std::size_t threads, Answer answer)
      : header_{header}, threads_{threads}, answer_{std::move(answer)} {
    for (auto const& name : asked)
      if (auto const column = header.column(name)) names_.push_back(name), columns_.push_back(*column);
  }

  /// Writes each row of `in`, on as many cells as the header has, with its answer behind it. Rows that are there are
  /// answered before more are waited for.
  void write(std::istream& in, std::ostream& out) {
    std::vector<std::pair<std::string, Known const*>> rows;
    std::vector<Known*> questions;
    for (auto line = next_line(in); line;) {
      rows.clear(), questions.clear();
      do {
        auto const cells = split(*line);
        auto const [at, fresh] = known_.try_emplace(key(cells));
        if (fresh) questions.push_back(&*at);
        rows.emplace_back(fitted(cells, header_.size()), &*at);
        line = rows.size() < rows_at_once && in.rdbuf()->in_avail() > 0 ? next_line(in) : std::nullopt;
      } while (line);
      ask(questions);
      for (auto const& [row, known] : rows) out << row << '\t' << known->second << '\n';
      if (known_.size() > kept) known_.clear();
      if (in.rdbuf()->in_avail() <= 0) out.flush();
      line = next_line(in);
    }
  }
};

} // namespace support
