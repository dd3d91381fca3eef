// SPDX-License-Identifier: MIT
// Names the format of leaves from what was measured and seen, a row each: TSV on standard input, TSV on standard output.
#include <bifolium/core/message.hpp>
#include <bifolium/evidence.hpp>

#include "support/arguments.hpp"
#include "support/observed.hpp"
#include "support/tsv.hpp"

#include <iostream>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    "usage: name_format <LEAVES\n"
    "Reads TSV with a header: height_mm width_mm type_height_mm material chain_lines watermark gathering_leaves state "
    "year place,\n"
    "in any order; any may be missing or empty. Other columns pass through.\n"
    "  material    laid wove vellum unknown\n"
    "  chain_lines vertical horizontal both unknown\n"
    "  watermark   centre gutter head-of-gutter fore-edge head-or-tail-edge corner absent unknown\n"
    "  state       uncut trimmed rebound cropped inlaid unknown\n"
    "  year        a year or a range, 1450-1500\n"
    "Writes the columns it read, then format probability second second_probability determined sheet look_next why.\n"
    "A row that cannot be read has its reason in `why`.\n";

} // namespace

int main(int argument_count, char** arguments) {
  Arguments const given{argument_count, arguments, {}, {}};
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  auto const first = next_line(std::cin);
  if (!first) {
    std::cerr << "there is no header line\n";
    return unreadable;
  }
  Header const header{*first};
  std::cout << *first << "\tformat\tprobability\tsecond\tsecond_probability\tdetermined\tsheet\tlook_next\twhy\n";
  while (auto const line = next_line(std::cin)) {
    auto const cells = split(*line);
    std::cout << fitted(cells, header.size()) << '\t';
    auto wrong = too_wide(cells, header.size());
    auto const seen = read_seen([&](std::string_view name) { return header.cell(cells, name); }, wrong);
    auto const observation = observe(seen);
    if (!wrong.empty() || !observation) {
      std::cout << "\t\t\t\t\t\t\t" << (wrong.empty() ? sentence_of(observation.error()) : wrong) << '\n';
      continue;
    }
    auto const inference = infer_format(*observation);
    auto const &best = inference.candidates[0], &second = inference.candidates[1];
    std::cout << best.format << '\t' << best.probability << '\t' << second.format << '\t' << second.probability << '\t'
              << to_words(inference.certainty) << '\t' << best.sheet_name << '\t'
              << (inference.look_next ? to_words(*inference.look_next) : "") << '\t' << why(inference);
    for (int i = 0; i < observation->warnings(); ++i) std::cout << "; warning: " << sentence(observation->warning(i));
    std::cout << '\n';
  }
  return all_done;
}
