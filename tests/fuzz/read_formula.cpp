// SPDX-License-Identifier: MIT
/// Any bytes: reading never fails but by an error, reading and counting give the same answer, and what is written reads
/// back as the same formula. Built with clang when BIFOLIUM_BUILD_FUZZERS is on.
#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>

#include <cstdint>
#include <cstdio>
#include <cstdlib>

using namespace bifolium;

namespace {
void must(bool holds, char const* what, std::string const& text) {
  if (holds) return;
  std::fprintf(stderr, "%s: %s\n", what, text.c_str());
  std::abort();
}
} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  if (size == 0) return 0;
  // the first byte chooses the dialect
  Dialect const dialect{
      static_cast<Omitted>(data[0] % 3), {(data[0] & 4U) != 0, (data[0] & 8U) != 0, (data[0] & 16U) != 0}, true};
  std::string const text(data + 1, data + size);
  auto const formula = read_formula(text, dialect);
  auto const count = count_formula(text, dialect);
  must(bool{formula} == bool{count}, "one reads, the other does not", text);
  if (!formula) {
    must(formula.error() == count.error(), "two errors", text);
    static_cast<void>(message(formula.error()));
    return 0;
  }
  must(leaf_count(*formula) == count->leaves && gathering_count(*formula) == count->gatherings, "two counts", text);
  must(static_cast<std::int64_t>(formula->warnings().size()) == count->warnings, "two numbers of doubts", text);
  if (gathering_count(*formula) < 10000) {
    std::int64_t leaves = 0;
    for (auto const& gathering : gatherings(*formula)) leaves += gathering.leaves;
    must(leaves == count->leaves, "the gatherings add up to another number", text);
  }
  for (auto notation : {Notation::unicode, Notation::caret, Notation::flat, Notation::html, Notation::tei}) {
    auto const written = write_formula(*formula, notation);
    auto const again = read_formula(written, dialect);
    must(bool{again}, "what was written cannot be read", text + " -> " + written);
    must(*again == *formula, "what was written reads as another formula", text + " -> " + written);
    must(write_formula(*again, notation) == written, "no fixed point", text + " -> " + written);
  }
  if (states_paper(*formula)) {
    auto const sheets = paper(*formula);
    must(sheets.low <= sheets.as_stated && sheets.as_stated <= sheets.high, "the range is no range", text);
  }
  return 0;
}
