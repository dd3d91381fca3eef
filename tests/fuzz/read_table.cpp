// SPDX-License-Identifier: MIT
/// Any bytes as a table of measured leaves: cells come out as they went in, every row gets an answer or a reason, and the
/// probabilities of an answer add up.
#include <bifolium/evidence.hpp>

#include "must.hpp"
#include "support/observed.hpp"
#include "support/tsv.hpp"

#include <cmath>
#include <string>

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  support::TextSource source{text};
  support::Lines lines{source};
  try { // what names the input as a whole: nothing in it, UTF-16
    static_cast<void>(lines.next());
  } catch (support::Failure const&) {
    return 0;
  }
  support::Header const header{lines.text()};
  for (int rows = 0; rows < 20 && support::next_row(lines, header); ++rows) {
    auto const cells = header.cells(lines.text());
    must(support::fitted(cells, cells.size()) == lines.text(), "the cells are not the line", text);
    must(support::split(support::fitted(cells, header.size())).size() == header.size(), "the row does not fit", text);
    must(support::shown(lines.text()).find('\033') == std::string::npos, "a control character is shown", text);
    support::Wrong wrong, doubts;
    wrong.add_line(lines, cells, header.size());
    auto const seen =
        support::read_seen([&](std::string_view name) { return header.cell(cells, name); }, wrong, doubts);
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
