// SPDX-License-Identifier: MIT
// Descriptions that their sources leave contradictory (EEBO-TCP headers, later catalogues). Nobody knows the truth of
// most, so what is proposed is printed for people to judge; checked is how many can be read, and that a blank leaf
// which the source notes is explanation enough.
#include "book_of.hpp"

using namespace book;

TEST_CASE("contradictions that catalogues left") {
  int of_tcp = 0, read_of_tcp = 0, read_of_all = 0, contradict = 0, proposed = 0, explained = 0;
  std::string report;
  for (auto const& row : data::rows("contradicting_descriptions.tsv", 5)) {
    Texts const texts{row[2], row[3], ""};
    auto const omitted = row[4] == "8" ? Omitted::eight : Omitted::next;
    FieldTexts fields;
    fields.formula = texts.formula, fields.pagination = texts.pagination;
    auto const description = read_description(fields, conventions(omitted));
    bool const read = description.formula && description.pagination;
    if (omitted == Omitted::eight) ++of_tcp, read_of_tcp += read ? 1 : 0;
    read_of_all += read ? 1 : 0;
    if (!read) continue;
    auto const audit = examine(description);
    bool const noted = texts.formula.find("blank") != std::string::npos;
    if (audit.agrees()) {
      explained += noted ? 1 : 0;
      // the source says that the leaf is blank: as it reads, or no repair at all
      if (noted && !audit.repairs.empty()) CHECK_MESSAGE(audit.repairs[0].edits.empty(), row[0]);
      continue;
    }
    ++contradict;
    report += '\n' + row[0] + "  " + texts.formula + " | " + texts.pagination;
    for (auto const& finding : audit.findings)
      if (finding.level != Severity::note) report += "\n    " + finding.says;
    for (std::size_t i = 0; i < audit.repairs.size() && i < 2; ++i)
      report += "\n      " + std::string{likelihood_in_words(audit.repairs[i].share)} + ": " + audit.repairs[i].says;
    proposed += audit.repairs.empty() ? 0 : 1;
  }
  MESSAGE(read_of_tcp << " of " << of_tcp << " rows of EEBO-TCP are read, and " << read_of_all << " of all; "
                      << contradict << " contradict, " << proposed << " have proposals" << report);
  CHECK(of_tcp == 67);
  CHECK(read_of_tcp >= 66);
  CHECK(read_of_all >= 130); // the others have formulas without numbers of leaves, or prose
  CHECK(contradict > 40);
  CHECK(proposed * 10 >= contradict * 8);
  CHECK(explained >= 8);
}
