// SPDX-License-Identifier: MIT
/// How good answers are: how often right, and whether their probabilities mean what they say.
#pragma once

#include <bifolium/evidence/inference.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <doctest/doctest.h>
#include <map>
#include <string>
#include <utility>
#include <vector>

/// What the answers to rows with a known format come to.
struct Report {
  int rows{}, first{}, first_two{};
  double log_loss{};
  std::array<double, 10> confidence{};
  std::array<int, 10> in_bin{}, right_in_bin{};

  void add(bifolium::Inference const& inference, int leaves) {
    ++rows;
    double p = 0; // the format by its leaves, whatever its shape
    std::map<int, double> by_leaves;
    for (auto const& c : inference) by_leaves[*c.format.leaves_to_sheet()] += c.probability;
    p = by_leaves[leaves];
    std::vector<std::pair<double, int>> order;
    for (auto const& [n, q] : by_leaves) order.emplace_back(q, n);
    std::sort(order.rbegin(), order.rend());
    bool const right = order[0].second == leaves;
    first += right;
    first_two += right || order[1].second == leaves;
    log_loss -= std::log(std::max(p, 1e-9));
    auto const bin = std::min<std::size_t>(9, static_cast<std::size_t>(order[0].first * 10));
    confidence[bin] += order[0].first;
    ++in_bin[bin];
    right_in_bin[bin] += right;
  }
  [[nodiscard]] double share(int n) const { return static_cast<double>(n) / rows; }
  [[nodiscard]] double calibration_error() const {
    double sum = 0;
    for (std::size_t b = 0; b < 10; ++b) sum += std::abs(confidence[b] - right_in_bin[b]);
    return sum / rows;
  }
  /// What is claimed beyond what is right, over the bins in which more is claimed.
  [[nodiscard]] double over_claimed() const {
    double sum = 0;
    for (std::size_t b = 0; b < 10; ++b) sum += std::max(0.0, confidence[b] - right_in_bin[b]);
    return sum / rows;
  }
  [[nodiscard]] double mean_log_loss() const { return log_loss / rows; }
  void print(std::string const& what) const {
    MESSAGE(what << ": " << rows << " rows, first right " << share(first) << ", in the first two " << share(first_two)
                 << ", log-loss " << mean_log_loss() << ", calibration error " << calibration_error());
  }
};
