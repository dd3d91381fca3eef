// SPDX-License-Identifier: MIT
/// Any bytes as a table of measured leaves: cells come out as they went in, every row gets an answer or a reason, and the
/// probabilities of an answer add up.
#include <bifolium/evidence.hpp>

#include "must.hpp"
#include "support/observed.hpp"
#include "support/tsv.hpp"

#include <cmath>
#include <sstream>

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  std::istringstream in{text};
  auto const first = support::next_line(in);
  if (!first) return 0;
  support::Header const header{*first};
  for (int rows = 0; rows < 20; ++rows) {
    auto const line = support::next_line(in);
    if (!line) return 0;
    auto const cells = support::split(*line);
    must(support::fitted(cells, cells.size()) == *line, "the cells are not the line", text);
    must(support::split(support::fitted(cells, header.size())).size() == header.size(), "the row does not fit", text);
    auto wrong = support::too_wide(cells, header.size());
    auto const seen = support::read_seen([&](std::string_view name) { return header.cell(cells, name); }, wrong);
    auto const observation = observe(seen);
    if (!observation) {
      static_cast<void>(message(observation.error()));
      continue;
    }
    auto const inference = infer_format(*observation);
    double sum = inference.none_of_these;
    for (auto const& candidate : inference) {
      must(candidate.probability >= 0 && candidate.probability <= 1, "no probability", text);
      sum += candidate.probability;
    }
    must(std::abs(sum - 1) < 1e-9, "the probabilities do not add up", text);
    for (std::size_t i = 1; i < inference.candidates.size(); ++i)
      must(inference.candidates[i].probability <= inference.candidates[i - 1].probability, "not in order", text);
  }
  return 0;
}
