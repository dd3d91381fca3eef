// SPDX-License-Identifier: MIT
// Descriptions that agree are never given a repair. Sources: EEBO-TCP headers, later catalogues, BMC (tests/data).
#include "book_of.hpp"

using namespace book;

TEST_CASE("sound descriptions raise no alarm") {
  int read = 0, with_findings = 0;
  auto const look = [&](Sound const& row, std::string const& leaves) {
    auto texts = row.texts;
    if (texts.leaves.empty()) texts.leaves = leaves;
    auto const before = counts_of(texts, {}, row.omitted);
    if (!before) return; // words that the readers leave to others
    ++read;
    auto const audit = examined(texts, row.omitted);
    CAPTURE(row.name);
    CAPTURE(texts.formula);
    CAPTURE(texts.pagination);
    for (auto const& finding : audit.findings) {
      CAPTURE(finding.says);
      CHECK(finding.level != Severity::error);
      with_findings += finding.level == Severity::doubt ? 1 : 0;
    }
    CHECK((audit.repairs.empty() || audit.repairs[0].edits.empty()));
  };
  for (auto const& row : sound_with_pages()) look(row, "");
  for (auto const& row : sound_with_pages())
    if (auto const counts = counts_of(row.texts, {}, row.omitted)) look(row, std::to_string(counts->leaves));
  for (auto const& row : sound_with_leaves()) look(row, "");
  CHECK(read > 1350);
  CHECK(with_findings < 60); // letters that skip, mostly
}
