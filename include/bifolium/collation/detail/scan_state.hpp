// SPDX-License-Identifier: MIT
/// What is known of a formula part-way through its text: how many leaves and gatherings so far, the last run, the runs a
/// change may name, the first error. What is found goes to a sink: the counter's sink adds up, the reader's keeps the
/// runs; both therefore see the same formula, and a count never allocates.
#pragma once

#include <bifolium/collation/detail/known_runs.hpp>
#include <bifolium/collation/detail/leaf_name.hpp>
#include <bifolium/collation/detail/scan_plain.hpp>
#include <bifolium/collation/detail/scanned_change.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/fold/format.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Text that ends a formula or belongs to it without being one.
enum class Passage : std::uint8_t { signing, extent, prose };

/// A sink that keeps nothing but the number of doubts.
struct CountSink {
  std::int64_t warnings{0};
  constexpr void run(Run const&) {}
  constexpr void plain_run(PlainRun const&, std::int64_t, bool, bool, Letters) {}
  constexpr void plain_deletion(GatheringAt, int) {}
  constexpr void change(ScannedChange const&) {}
  constexpr void note(ScannedChange const&, std::size_t, std::size_t) {}
  constexpr void warn(Problem, std::size_t, std::size_t, std::int64_t) { ++warnings; }
  constexpr void format(Format) {}
  constexpr void second_format(Format) {}
  constexpr void paper_class(std::size_t, std::size_t) {}
  constexpr void passage(Passage, std::size_t, std::size_t) {}
  constexpr void imperfect() {}
};

template <class Sink> struct ScanState : FormulaText {
  Sink& sink_;
  std::size_t at_{0};
  int depth_{0}; // open brackets round runs
  Error error_{};
  bool failed_{false};

  std::int64_t leaves_{0}, gatherings_{0}, gatherings_inserted_{0};
  std::uint32_t runs_{0};
  Run last_{};
  KnownRuns known_;
  struct Span {
    std::size_t from, to;
  };
  static constexpr std::size_t most_identities = 64;
  Span identity_[most_identities]; // only what is counted is read
  std::size_t identities_{0};

  constexpr ScanState(std::string_view text, Dialect dialect, Sink& sink) : FormulaText{text, dialect}, sink_{sink} {}

  constexpr bool fail(Problem problem, std::size_t from, std::size_t to, std::int64_t limit = 0) {
    if (from > text_.size()) from = text_.size();
    if (to > text_.size()) to = text_.size();
    while (to > from && to < text_.size() && (static_cast<unsigned char>(text_[to]) & 0xC0U) == 0x80U) --to;
    if (!failed_)
      error_ = error_at(problem, 1, column_of(text_, from), text_.data() + from, to > from ? to - from : 0, limit);
    failed_ = true;
    return false;
  }
  constexpr void warn(Problem problem, std::size_t from, std::size_t to, std::int64_t limit = 0) {
    sink_.warn(problem, from, to < text_.size() ? to : text_.size(), limit);
  }
  constexpr bool add_leaves(std::int64_t number, std::size_t from, std::size_t to) {
    auto const sum = checked_add(leaves_, number);
    if (!sum) return fail(Problem::number_too_large, from, to);
    leaves_ = *sum;
    return true;
  }
  /// A run that is understood: it is counted, remembered and handed on. `signature_at`: where its first mark stands.
  constexpr bool add_run(Run const& run, std::size_t signature_at, std::size_t from, std::size_t to) {
    if (!add_leaves(run.leaf_total(), from, to)) return false;
    auto const sum = checked_add(gatherings_, run.gatherings);
    if (!sum) return fail(Problem::number_too_large, from, to);
    known_.remember(runs_, gatherings_, run, signature_at);
    gatherings_ = *sum;
    ++runs_;
    last_ = run;
    sink_.run(run);
    return true;
  }
  [[nodiscard]] constexpr Target last_gathering() const {
    return {{runs_ - 1, last_.gatherings - 1}, gatherings_ - 1, last_.leaves.at(last_.gatherings - 1)};
  }
  /// An identity names the leaf between two bytes, which may stand in a run still to come.
  constexpr void identity_named(ScannedChange const& change, std::size_t from, std::size_t to) {
    if (!change.named && change.name_leaf > last_gathering().leaves)
      warn(Problem::identity_not_in_formula, from, to);
    else if (change.named && identities_ < most_identities)
      identity_[identities_++] = {from, to};
  }
  /// At the end of the text: every identity should name a leaf of the formula.
  constexpr void check_identities() {
    if (runs_ > KnownRuns::most_known) return; // the first runs are forgotten
    for (std::size_t i = 0; i < identities_; ++i) {
      auto const name = leaf_name(*this, identity_[i].from, identity_[i].to);
      if (!name.found || !name.gathering_named) continue;
      auto const target = known_.find(*this, name.signature, runs_, last_);
      if (!target || name.leaf > target->leaves)
        warn(Problem::identity_not_in_formula, identity_[i].from, identity_[i].to);
    }
  }
  constexpr bool take_out(Target const& target, int leaf, std::size_t from, std::size_t to) {
    return known_.take_out(target.ordinal, leaf) || fail(Problem::leaf_changed_twice, from, to);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
