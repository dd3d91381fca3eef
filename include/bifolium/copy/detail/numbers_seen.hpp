// SPDX-License-Identifier: MIT
/// The numbers of the leaves seen in a copy, as disjoint spans in order, whatever the order in which they are added.
/// The spans are stored in short rows, so that adding one costs the length of a row and not that of all rows: a copy
/// bound backwards or in random order takes about as long to check as one in order.
#pragma once

#include <bifolium/core/config.hpp>
#include <bifolium/core/partition_point.hpp>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the first span that does not end before `number`, from spans in the order of their ends.
template <class Spans> std::size_t first_to_reach(Spans const& spans, std::int64_t number) {
  return partition_point(spans.size(), [&](std::size_t i) { return spans[i].to < number; });
}

/// Disjoint spans of numbers in order. A new span is divided into the parts that were there already and those that were
/// not.
class NumbersSeen {
  struct Numbers {
    std::int64_t from{}, to{};
  };
  struct Row { // never empty; `to` is that of its last span
    std::vector<Numbers> spans{};
    std::int64_t to{};
  };
  static constexpr std::size_t longest_row = 256;
  std::vector<Row> rows_{};

  /// Inserts a span at index `at` of a row. A row that is too long is divided.
  void put(std::size_t row, std::size_t at, Numbers span) {
    if (row == rows_.size()) {
      if (row == 0) rows_.emplace_back();
      row = rows_.size() - 1;
      at = rows_[row].spans.size();
    }
    auto& spans = rows_[row].spans;
    spans.insert(spans.begin() + static_cast<std::ptrdiff_t>(at), span);
    rows_[row].to = spans.back().to;
    if (spans.size() <= longest_row) return;
    auto const half = spans.begin() + longest_row / 2;
    Row second{{half, spans.end()}, spans.back().to};
    spans.erase(half, spans.end());
    rows_[row].to = spans.back().to;
    rows_.insert(rows_.begin() + static_cast<std::ptrdiff_t>(row) + 1, static_cast<Row&&>(second));
  }
  void erase(std::size_t row, std::size_t at) {
    auto& spans = rows_[row].spans;
    spans.erase(spans.begin() + static_cast<std::ptrdiff_t>(at));
    if (spans.empty())
      rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(row));
    else
      rows_[row].to = spans.back().to;
  }

public:
  /// Adds a span. Calls fresh(from, to) and again(from, to) for its parts, in order. A part that was there already ends
  /// where an earlier span ends.
  template <class Fresh, class Again> void add(std::int64_t from, std::int64_t to, Fresh&& fresh, Again&& again) {
    auto const row = first_to_reach(rows_, from);
    auto const at = row == rows_.size() ? 0 : first_to_reach(rows_[row].spans, from);
    Numbers whole{from, to};
    auto next = from;
    // the spans that overlap the new one are removed, so the next of them is always at the same index
    auto r = row, i = at;
    while (next <= to) {
      if (r < rows_.size() && i == rows_[r].spans.size()) ++r, i = 0;
      auto const* const met = r < rows_.size() ? &rows_[r].spans[i] : nullptr;
      if (met == nullptr || met->from > to) {
        fresh(next, to);
        break;
      }
      if (met->from > next) fresh(next, met->from - 1);
      auto const start = met->from > next ? met->from : next, end = met->to < to ? met->to : to;
      again(start, end);
      if (met->from < whole.from) whole.from = met->from;
      if (met->to > whole.to) whole.to = met->to;
      auto const rows = rows_.size();
      next = met->to + 1;
      erase(r, i);
      if (rows_.size() < rows) i = 0; // the row is gone, and the next one has its index
    }
    put(r, i, whole);
  }
  /// Calls gap(from, to) for the missing numbers from 1 to `last`.
  template <class Gap> void gaps(std::int64_t last, Gap&& gap) const {
    std::int64_t next = 1;
    for (auto const& row : rows_)
      for (auto const& one : row.spans) {
        if (one.from > next) gap(next, one.from - 1);
        next = one.to + 1;
      }
    if (next <= last) gap(next, last);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
