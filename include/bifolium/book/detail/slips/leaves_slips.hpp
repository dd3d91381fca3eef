// SPDX-License-Identifier: MIT
/// Lists the possible mistakes in a number of leaves that is stated by itself.
#pragma once

#include <bifolium/book/detail/slips/proposal.hpp>
#include <bifolium/book/detail/slips/slip_forms.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class LeavesSlips {
  std::int64_t stated_, plates_;
  AuditWeights const& weights_;
  std::vector<LeavesVariant>& found_;

  void one_slip(std::int64_t leaves) {
    auto const add = [&](SlipKind kind, double weight) {
      auto const kinds = weights_.in_leaves[static_cast<std::size_t>(kind)] * weights_.field_wrong;
      found_.push_back({leaves, kind, 1, weight + real::log(kinds)});
    };
    if (auto const slip = figure_slip(stated_, leaves)) add(slip->kind, slip->weight);
    if (plates_ > 0 && stated_ == leaves + plates_) add(SlipKind::plates_counted, real::log(slip_form::all_plates));
    if (stated_ == leaves - 1) add(SlipKind::blank_not_counted, real::log(slip_form::one_blank));
    if (stated_ == leaves - 2) add(SlipKind::blank_not_counted, real::log(slip_form::two_blanks));
    if (stated_ == leaves + 1)
      add(SlipKind::blank_not_counted, real::log(slip_form::end_leaf)); // an end-leaf was counted
    if (stated_ == 2 * leaves) add(SlipKind::pages_for_leaves, real::log(slip_form::all_pages));
  }
  /// Adds two slips in the stated number: pages, plates or blank leaves, and a digit.
  void two_slips(std::int64_t leaves) {
    auto const share_of = [&](SlipKind kind) {
      return weights_.in_leaves[static_cast<std::size_t>(kind)] * weights_.field_wrong;
    };
    auto const add = [&](SlipKind kind, std::int64_t between, double share) {
      if (auto const slip = figure_slip(stated_, between))
        found_.push_back({leaves, kind, 2, slip->weight + real::log(share * share_of(kind) * share_of(slip->kind))});
    };
    auto const two_causes = [&](SlipKind one, double of_one, SlipKind other, double of_other) {
      found_.push_back({leaves, one, 2, real::log(of_one * share_of(one) * of_other * share_of(other))});
    };
    add(SlipKind::pages_for_leaves, 2 * leaves, slip_form::all_pages);
    if (plates_ > 0) add(SlipKind::plates_counted, leaves + plates_, slip_form::all_plates);
    add(SlipKind::blank_not_counted, leaves - 1, slip_form::one_blank);
    if (leaves > 1 && stated_ == 2 * (leaves - 1))
      two_causes(SlipKind::pages_for_leaves, slip_form::all_pages, SlipKind::blank_not_counted, slip_form::one_blank);
    if (plates_ > 0 && stated_ == 2 * leaves + plates_)
      two_causes(SlipKind::pages_for_leaves, slip_form::all_pages, SlipKind::plates_counted, slip_form::all_plates);
    if (found_.empty() || found_.back().leaves != leaves) two_figures(leaves);
  }
  /// Adds two slips of digits. The number between them is searched among those one slip away.
  void two_figures(std::int64_t leaves) {
    std::optional<double> best;
    auto const try_between = [&](std::int64_t between) {
      auto const first = figure_slip(between, leaves), second = figure_slip(stated_, between);
      if (!first || !second) return;
      auto const kinds = weights_.in_leaves[static_cast<std::size_t>(first->kind)] * weights_.field_wrong *
                         weights_.in_leaves[static_cast<std::size_t>(second->kind)] * weights_.field_wrong;
      auto const weight = first->weight + second->weight + real::log(kinds);
      if (!best || weight > *best) best = weight;
    };
    auto const truth = Figures::arabic(leaves);
    std::int64_t power = 1;
    for (int i = 0; i < truth.size; ++i, power *= 10) {
      auto const high = leaves / power, low = leaves % power, figure = high % 10;
      try_between(high / 10 * power + low);            // one left out
      try_between((high * 10 + figure) * power + low); // one written twice
      for (int other = 0; other < 10; ++other) try_between(leaves + (other - figure) * power);
      if (i + 1 < truth.size) {
        auto const next = high / 10 % 10;
        try_between(leaves + (next - figure) * power + (figure - next) * power * 10);
      }
    }
    if (best) found_.push_back({leaves, SlipKind::substituted, 2, *best});
  }

public:
  LeavesSlips(std::int64_t stated, std::int64_t plates, AuditWeights const& weights, std::vector<LeavesVariant>& found)
      : stated_{stated}, plates_{plates}, weights_{weights}, found_{found} {}
  /// Adds the ways in which the stated number can mean `leaves`; two slips are tried only if one is not enough.
  void find(std::int64_t leaves) {
    if (stated_ == leaves) {
      found_.push_back({leaves, {}, 0, 0});
      return;
    }
    auto const before = found_.size();
    one_slip(leaves);
    if (found_.size() == before) two_slips(leaves);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
