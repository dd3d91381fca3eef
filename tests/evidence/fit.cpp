// SPDX-License-Identifier: MIT
// The program behind the fitted numbers of evidence/parameters.hpp, run again: expectation-maximisation over four sheet
// classes for folio, quarto and octavo, five-fold with the copies of an edition kept together. It shares the geometry with
// the library and nothing else, and checks that the table is what the data give.
#include <bifolium/evidence.hpp>

#include "check.hpp"
#include "data.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

constexpr double nu = evidence_parameters::tails;
struct Copy {
  std::size_t format; // 0, 1, 2 for 2°, 4°, 8°
  double height, width;
  int period, edition;
};
using Shares = std::array<std::array<double, 4>, 3>;
struct Model {
  std::array<TrimModel, 3> trim{};
  Shares undated{};
  std::array<Shares, 4> by_period{};
};

std::vector<Copy> copies() {
  std::vector<Copy> all;
  for (auto const& row : data::rows("bmc_leaf_sizes.tsv", 6)) {
    if (row[1] != "2°" && row[1] != "4°" && row[1] != "8°") continue;
    int period = -1;
    if (!row[4].empty()) {
      period = 0;
      while (period < 3 && std::stoi(row[4]) > evidence_parameters::early_periods[period]) ++period;
    }
    all.push_back({row[1] == "2°"   ? 0U
                   : row[1] == "4°" ? 1U
                                    : 2U,
                   std::log(std::stod(row[2])), std::log(std::stod(row[3])), period, std::stoi(row[0])});
  }
  return all;
}
/// Logarithms of the uncut leaf.
std::array<double, 2> uncut(std::size_t format, std::size_t sheet) {
  constexpr SchemeRow rows[]{SchemeRow::folio, SchemeRow::quarto, SchemeRow::octavo};
  static auto const leaves = [&] {
    std::array<std::array<std::array<double, 2>, 4>, 3> all{};
    for (std::size_t f = 0; f < 3; ++f)
      for (std::size_t s = 0; s < 4; ++s) {
        auto const& named = evidence_parameters::early_sheets[s];
        auto const size =
            leaf_size(fold(Attested{rows[f]}.scheme())->sheet(0), Sheet<double>{named.short_side, named.long_side});
        all[f][s] = {std::log(size.height), std::log(size.width)};
      }
    return all;
  }();
  return leaves[format][sheet];
}
double distance(TrimModel const& t, double x, double y) {
  auto const det = t.height_variance * t.width_variance - t.covariance * t.covariance;
  return (t.width_variance * x * x - 2 * t.covariance * x * y + t.height_variance * y * y) / det;
}
double density(TrimModel const& t, double x, double y) {
  auto const det = t.height_variance * t.width_variance - t.covariance * t.covariance;
  return std::pow(1 + distance(t, x, y) / nu, -(nu + 2) / 2) / (2 * 3.14159265358979323846 * std::sqrt(det));
}
Shares const& shares(Model const& m, int period) {
  return period < 0 ? m.undated : m.by_period[static_cast<std::size_t>(period)];
}

Model fit(std::vector<Copy> const& train) {
  Model m;
  m.trim.fill({-0.1, -0.1, 0.008, 0.005, 0.008});
  for (auto& row : m.undated) row.fill(1.0 / 12);
  m.by_period.fill(m.undated);
  for (int round = 0; round < 40; ++round) {
    std::array<std::array<double, 3>, 3> mean{}; // sums of height, width, weights
    std::array<std::array<double, 4>, 3> spread{};
    Shares count{};
    std::array<Shares, 4> period_count{};
    std::vector<std::array<double, 8>> held(train.size()); // responsibility and weight of each class
    for (std::size_t i = 0; i < train.size(); ++i) {
      auto const& c = train[i];
      double all = 0;
      for (std::size_t s = 0; s < 4; ++s) {
        auto const u = uncut(c.format, s);
        auto const& t = m.trim[c.format];
        auto const x = c.height - u[0] - t.height, y = c.width - u[1] - t.width;
        held[i][s] = shares(m, c.period)[c.format][s] * density(t, x, y);
        held[i][4 + s] = (nu + 2) / (nu + distance(t, x, y));
        all += held[i][s];
      }
      for (std::size_t s = 0; s < 4; ++s) {
        held[i][s] /= all;
        count[c.format][s] += held[i][s];
        if (c.period >= 0) period_count[static_cast<std::size_t>(c.period)][c.format][s] += held[i][s];
        auto const u = uncut(c.format, s);
        auto const k = held[i][s] * held[i][4 + s];
        mean[c.format][0] += k * (c.height - u[0]);
        mean[c.format][1] += k * (c.width - u[1]);
        mean[c.format][2] += k;
      }
    }
    for (std::size_t f = 0; f < 3; ++f)
      m.trim[f].height = mean[f][0] / mean[f][2], m.trim[f].width = mean[f][1] / mean[f][2];
    for (std::size_t i = 0; i < train.size(); ++i)
      for (std::size_t s = 0; s < 4; ++s) {
        auto const& c = train[i];
        auto const u = uncut(c.format, s);
        auto const x = c.height - u[0] - m.trim[c.format].height, y = c.width - u[1] - m.trim[c.format].width;
        auto const k = held[i][s] * held[i][4 + s];
        spread[c.format][0] += k * x * x, spread[c.format][1] += k * x * y, spread[c.format][2] += k * y * y;
        spread[c.format][3] += held[i][s];
      }
    for (std::size_t f = 0; f < 3; ++f) {
      m.trim[f].height_variance = spread[f][0] / spread[f][3];
      m.trim[f].covariance = spread[f][1] / spread[f][3];
      m.trim[f].width_variance = spread[f][2] / spread[f][3];
    }
    auto const n = static_cast<double>(train.size());
    for (std::size_t f = 0; f < 3; ++f)
      for (std::size_t s = 0; s < 4; ++s) m.undated[f][s] = (count[f][s] + 0.5) / (n + 6);
    for (std::size_t p = 0; p < 4; ++p) {
      double all = 0;
      for (auto const& row : period_count[p])
        for (auto one : row) all += one;
      for (std::size_t f = 0; f < 3; ++f)
        for (std::size_t s = 0; s < 4; ++s)
          m.by_period[p][f][s] = (period_count[p][f][s] + 30 * m.undated[f][s]) / (all + 30);
    }
  }
  return m;
}

std::array<double, 3> probabilities(Model const& m, Copy const& c) {
  std::array<double, 3> p{};
  double all = 0;
  for (std::size_t f = 0; f < 3; ++f) {
    double prior = 0;
    for (std::size_t s = 0; s < 4; ++s) {
      auto const u = uncut(f, s);
      auto const share = shares(m, c.period)[f][s];
      p[f] += share * density(m.trim[f], c.height - u[0] - m.trim[f].height, c.width - u[1] - m.trim[f].width);
      prior += share;
    }
    p[f] += 0.02 * prior; // what fits nothing says nothing
    all += p[f];
  }
  for (auto& one : p) one /= all;
  return p;
}

} // namespace

TEST_CASE("held out by edition, the fitted model meets its bars, and beats two thresholds of height in honesty") {
  auto const all = copies();
  double log_loss = 0;
  int first = 0, two = 0, by_threshold = 0;
  std::array<double, 10> confidence{};
  std::array<int, 10> right_in_bin{};
  for (int part = 0; part < 5; ++part) {
    std::vector<Copy> train, held_out;
    for (auto const& c : all) (c.edition % 5 == part ? held_out : train).push_back(c);
    auto const m = fit(train);
    // the rule it stands beside: folio above one height, octavo below another, the two heights that fit best
    std::array<double, 2> cut{};
    int best = 0;
    for (double low = 140; low <= 190; low += 2)
      for (double high = 220; high <= 270; high += 2) {
        int right = 0;
        for (auto const& c : train) {
          auto const h = std::exp(c.height);
          right += (h > high ? 0U : h < low ? 2U : 1U) == c.format;
        }
        if (right > best) best = right, cut = {low, high};
      }
    for (auto const& c : held_out) {
      auto const p = probabilities(m, c);
      auto const top = static_cast<std::size_t>(std::max_element(p.begin(), p.end()) - p.begin());
      auto const last = static_cast<std::size_t>(std::min_element(p.begin(), p.end()) - p.begin());
      first += top == c.format;
      two += last != c.format;
      log_loss -= std::log(std::max(p[c.format], 1e-9));
      auto const bin = std::min<std::size_t>(9, static_cast<std::size_t>(p[top] * 10));
      confidence[bin] += p[top];
      right_in_bin[bin] += top == c.format;
      auto const h = std::exp(c.height);
      by_threshold += (h > cut[1] ? 0U : h < cut[0] ? 2U : 1U) == c.format;
    }
  }
  auto const n = static_cast<double>(all.size());
  double calibration = 0;
  for (std::size_t b = 0; b < 10; ++b) calibration += std::abs(confidence[b] - right_in_bin[b]) / n;
  MESSAGE("five-fold by edition: first right " << first / n << ", in two " << two / n << ", log-loss " << log_loss / n
                                               << ", calibration error " << calibration << "; two thresholds of height "
                                               << by_threshold / n);
  CHECK(first / n >= 0.925);
  CHECK(two / n >= 0.99);
  CHECK(log_loss / n <= 0.25);
  CHECK(calibration <= 0.05);
}

TEST_CASE("the table of parameters is what the data give") {
  auto const m = fit(copies());
  for (std::size_t f = 0; f < 3; ++f) {
    auto const& table = evidence_parameters::early_trim[f];
    CHECK(table.height == doctest::Approx(m.trim[f].height).epsilon(0.01));
    CHECK(table.width == doctest::Approx(m.trim[f].width).epsilon(0.01));
    CHECK(table.height_variance == doctest::Approx(m.trim[f].height_variance).epsilon(0.02));
    CHECK(table.covariance == doctest::Approx(m.trim[f].covariance).epsilon(0.02));
    CHECK(table.width_variance == doctest::Approx(m.trim[f].width_variance).epsilon(0.02));
    for (std::size_t s = 0; s < 4; ++s) {
      CHECK(std::abs(evidence_parameters::undated_shares[f][s] - m.undated[f][s]) < 0.001);
      for (std::size_t p = 0; p < 4; ++p)
        CHECK(std::abs(evidence_parameters::early_shares[p][f][s] - m.by_period[p][f][s]) < 0.001);
    }
  }
}
