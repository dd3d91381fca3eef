// SPDX-License-Identifier: MIT
/// Any bytes as the record of a book: every error points into the record, and a record without one is a book that can be
/// observed and reckoned, or is refused with a reason.
#include <bifolium/bifolium.hpp>

#include "must.hpp"
#include "support/book.hpp"

#include <string>
#include <vector>

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  support::TextSource source{text};
  support::Lines in{source};
  std::vector<support::RecordError> errors;
  support::Book book;
  try {
    book = support::read_book(in, errors);
  } catch (support::Failure const&) { // UTF-16
    return 0;
  }
  std::vector<std::string> lines;
  support::TextSource again{text};
  for (support::Lines all{again}; all.next();) lines.push_back(all.text());
  if (lines.empty()) lines.emplace_back();
  for (auto const& error : errors) {
    must(error.line >= 1 && error.line <= lines.size() && error.column >= 1 && !error.sentence.empty(),
         "an error nowhere", text);
    auto const& line = lines[error.line - 1];
    must(error.column <= column_of(line, line.size()), "a column after the end of its line", text);
  }
  if (!errors.empty()) return 0;
  if (auto const observation = observe(book.seen))
    static_cast<void>(infer_format(*observation));
  else
    static_cast<void>(message(observation.error()));
  if (book.copies && book.scheme) {
    Edition edition;
    edition.scheme = *book.scheme;
    edition.pages = book.collation ? 2 * book.collation->leaves() : 16;
    edition.copies = *book.copies;
    edition.overs_percent = book.overs;
    edition.ream = book.ream;
    if (auto const bill = reckon(edition))
      must(bill->sheets.stated >= 0, "less than no paper", text);
    else
      static_cast<void>(message(bill.error()));
  }
  return 0;
}
