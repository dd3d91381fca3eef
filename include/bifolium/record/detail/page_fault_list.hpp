// SPDX-License-Identifier: MIT
/// Numbers that a statement calls omitted or repeated. Each of them divides a run in two. They are collected first,
/// sorted by their numbers and applied in one pass, so that each takes the same time in a long list as in a short one.
#pragma once

#include <bifolium/record/detail/page_scanner.hpp>

#include <algorithm>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The numbers from `from` to `to` are repeated or omitted; or the number `from` is misprinted.
struct PageFault {
  enum class Kind : std::uint8_t { omitted, repeated, misprint } kind{};
  Numerals numerals{};
  std::uint8_t series{};
  std::int64_t from{}, to{};
  TextSpan at{};          // its place in the statement
  std::size_t misprint{}; // index of the misprint
  bool applies{};         // true if a page has the number
};

class PageFaultList {
  std::vector<PageFault> faults_{};

  /// Orders runs with printed numbers by kind and first number. Of equal runs the first in the book comes first.
  static bool before(PageRun const& a, PageRun const& b) {
    if (a.numerals != b.numerals) return a.numerals < b.numerals;
    return a.series != b.series ? a.series < b.series : a.first < b.first;
  }
  /// The range of indices in `order` of the runs of a kind that begin at or before a number: [first, last).
  struct Slice {
    std::size_t first{}, last{};
  };
  static Slice runs_up_to(std::vector<PageRun> const& runs, std::vector<std::size_t> const& order,
                          PageFault const& fault) {
    PageRun key;
    key.numerals = fault.numerals, key.series = fault.series;
    auto const below = [&](std::size_t run, PageRun const& wanted) { return before(runs[run], wanted); };
    auto const above = [&](PageRun const& wanted, std::size_t run) { return before(wanted, runs[run]); };
    key.first = INT64_MIN;
    auto const first = std::lower_bound(order.begin(), order.end(), key, below);
    key.first = fault.from;
    auto const last = std::upper_bound(first, order.end(), key, above);
    return {static_cast<std::size_t>(first - order.begin()), static_cast<std::size_t>(last - order.begin())};
  }
  /// Returns, for each run in `order`, one more than the index of the nearest run before it that reaches a higher
  /// number, or 0 if there is none.
  static std::vector<std::size_t> runs_around(std::vector<PageRun> const& runs, std::vector<std::size_t> const& order) {
    std::vector<std::size_t> outer(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
      auto at = i;
      while (at > 0 && runs[order[at - 1]].last <= runs[order[i]].last) at = outer[at - 1];
      outer[i] = at;
    }
    return outer;
  }
  static bool fits(PageFault const& fault, PageRun const& run) {
    if (fault.kind == PageFault::Kind::omitted) return run.first < fault.from && fault.to < run.last && run.regular();
    if (fault.kind == PageFault::Kind::repeated)
      return run.first <= fault.from && fault.to <= run.last && run.regular();
    return run.first <= fault.from && fault.from <= run.last;
  }
  /// Returns true if the runs of the statement already say so: 1-32 35-120, or 1-96 95-120.
  static bool said_by_runs(PageFault const& fault, std::vector<PageRun> const& runs, std::size_t run) {
    auto const parted = [&](std::size_t a) {
      if (a + 1 >= runs.size()) return false;
      return fault.kind == PageFault::Kind::repeated
                 ? runs[a].last == fault.to && runs[a + 1].first == fault.from
                 : runs[a].last + 1 == fault.from && runs[a + 1].first == fault.to + 1;
    };
    return fault.kind != PageFault::Kind::misprint && (parted(run) || (run > 0 && parted(run - 1)));
  }
  /// Divides a run at its faults, which are in the order of their numbers.
  static void part(PageRun run, std::vector<PageFault*> const& faults, std::vector<PageRun>& parted) {
    for (auto* fault : faults) {
      if (!fits(*fault, run)) continue;
      fault->applies = true;
      if (fault->kind == PageFault::Kind::misprint) continue;
      bool const twice = fault->kind == PageFault::Kind::repeated;
      auto head = run;
      head.last = twice ? fault->to : fault->from - 1;
      head.count = head.last - head.first + 1;
      head.true_last.reset(), run.true_last.reset(); // the count is exact now
      head.last_at.reset();
      run.first = twice ? fault->from : fault->to + 1;
      run.count = run.last - run.first + 1;
      run.first_at.reset();
      parted.push_back(head);
    }
    parted.push_back(run);
  }

public:
  void add(PageFault const& fault) { faults_.push_back(fault); }
  [[nodiscard]] bool empty() const noexcept { return faults_.empty(); }
  [[nodiscard]] std::size_t size() const noexcept { return faults_.size(); }

  /// Divides the runs. Returns the faults in the order of the statement; each says whether a page has its number.
  std::vector<PageFault> const& apply(std::vector<PageRun>& runs) {
    std::vector<std::size_t> order;
    for (std::size_t r = 0; r < runs.size(); ++r)
      if (runs[r].numbering == Numbering::printed && !runs[r].starred) order.push_back(r);
    // clang calls a part of std::stable_sort of libstdc++ 12 deprecated, so std::sort is used with the index as the
    // last key
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
      return before(runs[a], runs[b]) || (!before(runs[b], runs[a]) && a < b);
    });
    auto const outer = runs_around(runs, order);
    std::vector<std::vector<PageFault*>> of_run(runs.size());
    for (auto& fault : faults_) {
      auto const [first, last] = runs_up_to(runs, order, fault);
      // the run that begins nearest before the number is tried first, then those that reach farther
      for (auto i = last; i > first; i = outer[i - 1]) {
        auto const run = order[i - 1];
        if (said_by_runs(fault, runs, run)) {
          fault.applies = true;
          break;
        }
        if (!fits(fault, runs[run])) continue;
        of_run[run].push_back(&fault);
        break;
      }
    }
    std::vector<PageRun> parted;
    for (std::size_t r = 0; r < runs.size(); ++r) {
      std::sort(of_run[r].begin(), of_run[r].end(), [](auto const* a, auto const* b) {
        bool const a_misprint = a->kind == PageFault::Kind::misprint, b_misprint = b->kind == PageFault::Kind::misprint;
        if (a->from != b->from) return a->from < b->from;
        return a_misprint != b_misprint ? b_misprint : a < b; // an omitted page has no misprint
      });
      part(runs[r], of_run[r], parted);
    }
    runs = static_cast<std::vector<PageRun>&&>(parted);
    return faults_;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
