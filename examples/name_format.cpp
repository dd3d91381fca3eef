// SPDX-License-Identifier: MIT
// Names the format of leaves from what was measured and seen, a row each: TSV on standard input, TSV on standard output.
#include <bifolium/book/audit.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/evidence/width.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold/read_format.hpp>

#include "support/answers.hpp"
#include "support/arguments.hpp"
#include "support/leaf_told.hpp"
#include "support/observed.hpp"
#include "support/tsv.hpp"

#include <algorithm>
#include <cstddef>
#include <iomanip>
#include <iostream>
#include <sstream>
#include <string>
#include <thread>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    "usage: name_format [--shares SHARES] [--width] [--sheets] [--record] [--columns NAMES] [--threads N] "
    "[--longest-line BYTES] "
    "<LEAVES\n"
    "Reads TSV with a header. Columns can be in any order, missing or empty; other columns are copied:\n"
    "  height width type_height   with their unit: 201 mm, 7 3/4 in, 6 pouces 11 lignes; 20 cm is rounded up\n"
    "  height_mm width_mm type_height_mm   numbers; where they are filled, the columns with a unit are not read\n"
    "  height_cm width_cm  as in catalogues: whole numbers are rounded up\n"
    "  of                the object of the measures: leaf binding either; for cm either by default\n"
    "  material          laid wove vellum unknown\n"
    "  chain_lines       vertical horizontal both unknown\n"
    "  watermark         centre gutter head-of-gutter fore-edge head-or-tail-edge corner absent unknown\n"
    "  countermark       place of the countermark in the same leaf, with the same words\n"
    "  gathering_leaves  8, or two sizes that alternate, such as 8.4\n"
    "  leaves            evidence of leaves of one gathering: 1 gutter; 2 absent; 3 absent horizontal\n"
    "  head_edge tail_edge fore_edge   bolt deckle tranchefile unknown\n"
    "  point_hole        spine-fold head tail fore-edge inside unknown\n"
    "  state             uncut trimmed rebound cropped inlaid unknown\n"
    "  year              a date as catalogues write it: 1490, c. 1490, [1490?], 178?, 1490s, 17th century, 1450-1500\n"
    "  place             a town or a country, in English, Latin or the language of the place\n"
    "Writes the columns it read, then format probability second second_probability none determined sheet printed "
    "look_next\n"
    "why problem; `none` is the probability of no known format; `printed` says half-sheets, half-sheets or two to "
    "the\n"
    "sheet, double paper, machine-made paper or cut sheets if that is likely. A row that cannot be read has the reason "
    "in `why`; `problem` "
    "has identifiers for programs.\n"
    "If the table has a column of one of these names, the one that is added has a number: format_2.\n"
    "  --shares    how common formats are, if you know it: '4°=.08 8°=.17 12°=.74'; a format that is not named is "
    "left out\n"
    "  --width     adds `low` and `high`: the range of the first probability in nine of ten fits of the model\n"
    "  --sheets    adds `sheets`: the named sheets of the place and time from which the leaf can have been cut, in "
    "that\n"
    "              format, and the loss at head and tail together and at the fore-edge\n"
    "  --record    adds `size` as a catalogue records it, and `not_before`: the earliest year that the paper allows\n"
    "  --columns   names the columns (height_mm,width_mm,year) of a part of a table: it has no header line, "
    "and "
    "none\n"
    "              is written\n"
    "  --threads   number of threads, 1 to 256; by default as many as the machine runs at once\n"
    "  --longest-line  the limit of a line in bytes, 16777216 by default; a longer line is a row with an error\n";

/// How the sheets were printed, where the answer is one format, as words for machines with a comma between.
std::string printed(Inference const& inference) {
  auto const& first = inference.candidates.front();
  std::string words;
  if (inference.mixed || inference.none_of_these >= 0.5) return words;
  if (first.by_half_sheets()) words = "half-sheets";
  if (first.half_sheets_or_two()) words = "half-sheets or two to the sheet";
  if (first.origin() == PaperOrigin::whole_sheet) return words;
  words += words.empty() ? "" : ", ";
  if (first.origin() == PaperOrigin::cut_half) return words + "cut sheets";
  return words + (first.origin() == PaperOrigin::machine_web ? "machine-made paper" : "double paper");
}

/// The cells of what was inferred. Of a book in two formats the second is the likelier of them alone.
void tell(std::ostream& cells, Inference const& inference, LeafEvidence const& seen) {
  cells << std::setprecision(4); // more would differ between machines
  auto const& best = inference.candidates[0];
  auto const* const second = inference.candidates.size() > 1 ? &inference.candidates[1] : nullptr;
  if (inference.mixed)
    cells << format_statement(inference) << '\t' << inference.mixed->probability << '\t' << best.format << '\t'
          << best.probability * (1 - inference.mixed->probability);
  else
    cells << best.format << '\t' << best.probability << '\t';
  if (!inference.mixed && second != nullptr) cells << second->format << '\t' << second->probability;
  if (!inference.mixed && second == nullptr) cells << '\t';
  // without a measure the sheet would only be a common one, and where no format fits, the measures are not of a leaf
  // and skins are of no sheet
  bool const measured = (seen.height || seen.width || seen.type_height) && inference.none_of_these < 0.5 &&
                        seen.material != Material::vellum;
  auto const like = measured ? named_like(best, seen.year, seen.place) : std::nullopt;
  cells << '\t' << inference.none_of_these << '\t' << to_words(inference.certainty) << '\t'
        << (best.stock ? *best.stock
            : like     ? std::string_view{like->name}
                       : std::string_view{})
        << '\t' << printed(inference) << '\t' << (inference.look_next ? to_words(*inference.look_next) : "") << '\t'
        << why(inference);
}

/// Columns that are added where asked for.
struct Added {
  bool width, sheets, record;
};

/// The columns that are written after those of the table.
std::string columns_written(Added const& added) {
  std::string names =
      "format\tprobability\tsecond\tsecond_probability\tnone\tdetermined\tsheet\tprinted\tlook_next\twhy";
  if (added.width) names += "\tlow\thigh";
  if (added.sheets) names += "\tsheets";
  if (added.record) names += "\tsize\tnot_before";
  return names + "\tproblem";
}

/// The cells of an answer.
std::string answer(Question const& question, Assumptions const& assumed, Added const& added) {
  auto wrong = question.wrong();
  Wrong doubts;
  auto const seen = read_seen([&](std::string_view name) { return question.cell(name); }, wrong, doubts);
  auto const observation = observe(seen);
  if (wrong.empty() && !observation) wrong.add("", observation.error());
  std::ostringstream cells;
  if (!wrong.empty()) {
    cells << "\t\t\t\t\t\t\t\t\t" << wrong.words() << (added.width ? "\t\t" : "") << (added.sheets ? "\t" : "")
          << (added.record ? "\t\t" : "") << '\t' << wrong.problems();
    return cells.str();
  }
  auto const inference = infer_format(*observation, assumed);
  auto const& best = inference.candidates.front();
  tell(cells, inference, seen);
  for (auto const& warning : observation->warnings()) doubts.add("", warning);
  auto const bounds = period_bounds(period_signs(seen));
  for (auto const& bound : *bounds)
    if (bound.binds() && seen.year && seen.year->to < bound.year)
      doubts.add("year", "before " + std::to_string(bound.year) + ", but " + bound.reason,
                 identifier(FindingId::year_before_paper));
  if (!doubts.empty()) cells << "; warning: " << doubts.words();
  if (added.width) {
    auto const range = probability_range(*observation, best.format, assumed);
    cells << '\t' << range->low << '\t' << range->high; // it ranks the best format
  }
  if (added.sheets) cells << '\t' << sheets_in_a_cell(seen, best.format);
  if (added.record) {
    bool const known = inference.certainty >= Certainty::probable && !inference.mixed;
    cells << '\t' << recorded(seen, std::nullopt, known ? std::optional{best.format} : std::nullopt) << '\t';
    if (auto const year = bounds->earliest()) cells << *year;
  }
  cells << '\t' << doubts.problems();
  return cells.str();
}

/// The columns from which a leaf is read.
Cells columns_read() {
  Cells names;
  Wrong none;
  read_seen([&](std::string_view name) { return names.emplace_back(name), std::string{}; }, none, none);
  return names;
}

/// Shares of formats as the command line gives them: 4°=.08 8°=.17 12°=.74. Missing where they cannot be read.
std::optional<Priors> read_shares(std::string_view text) {
  Priors priors;
  std::size_t count = 0;
  for (std::size_t from = 0; from < text.size();) {
    auto const end = std::min(text.find(' ', from), text.size());
    auto const one = text.substr(from, end - from);
    from = end + 1;
    if (one.empty()) continue;
    auto const equals = one.find('=');
    if (equals == one.npos || count == priors.shares.size()) return std::nullopt;
    auto const format = read_format(one.substr(0, equals));
    auto number = std::string{one.substr(equals + 1)};
    if (number.starts_with(".")) number.insert(0, "0");
    auto const share = decimal(number).value;
    auto const leaves = format ? format->leaves_to_sheet() : std::nullopt;
    if (!leaves || !share || *share < Fraction{}) return std::nullopt;
    if (std::find(ranked_leaves.begin(), ranked_leaves.end(), *leaves) == ranked_leaves.end()) return std::nullopt;
    for (std::size_t i = 0; i < count; ++i) // under whatever name: which share is meant is not known
      if (priors.shares[i].leaves == *leaves) return std::nullopt;
    priors.shares[count++] = {static_cast<std::uint8_t>(*leaves), share->as_double()};
  }
  double all = 0;
  for (auto const& one : priors.shares) all += one.share;
  return all > 0 ? std::optional{priors} : std::nullopt;
}

int name_formats(Arguments given) {
  auto const limits = given.input_limits();
  auto const threads = given.number("--threads", 1, 256).value_or(std::max(1U, std::thread::hardware_concurrency()));
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  Assumptions assumed;
  if (auto const shares = given.value("--shares")) {
    assumed.priors = read_shares(*shares);
    if (!assumed.priors) {
      std::cerr << "--shares: write formats with their shares, each format once, as in '4°=.08 8°=.17 12°=.74'\n";
      return wrong_usage;
    }
  }
  Added const added{given.has("--width"), given.has("--sheets"), given.has("--record")};
  Input input;
  Lines lines{input, limits};
  auto const told = given.value("--columns");
  auto const first = told ? header_told(*told) : header_line(lines);
  Header const header{first};
  auto const asked = columns_read();
  tell_columns(header, asked);
  if (!told) std::cout << first << '\t' << added_columns(header, columns_written(added)) << '\n';
  Answers answers{header, asked, static_cast<std::size_t>(threads),
                  [&](Question const& question) { return answer(question, assumed, added); }};
  answers.write(lines, std::cout);
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] {
    return name_formats({argument_count,
                         arguments,
                         {"--width", "--sheets", "--record"},
                         {"--shares", "--columns", "--threads", "--longest-line"}});
  });
}
