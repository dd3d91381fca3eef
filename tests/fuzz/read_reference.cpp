// SPDX-License-Identifier: MIT
/// Any bytes as a reference to a leaf of some formula, chosen by the first byte: what is found is written so that it is
/// found again, and its page leads back to it.
#include <bifolium/collation.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  static IdealCopy const books[]{*read_formula("8°: π² A–2K⁸ 2L⁴ (−2L4)"),
                                 *read_formula("4°: [a]⁴ b–z⁸ &⁸ ²a–d⁴ [par.]² χ1"),
                                 *read_formula("2°: 1–40⁶ (±6.3) *² A–C⁸ (B3+1, C8+χ², B5+a1.2, A2+b⁴)",
                                               {Omitted::error, {true, true, true}, true}),
                                 *read_formula("12°: α–γ¹²/⁶ πA²")};
  if (size == 0) return 0;
  auto const& book = books[data[0] % std::size(books)];
  std::string const text(data + 1, data + size);
  auto const found = read_reference(book, text);
  if (!found) {
    fuzz::must_point_into(text, found.error());
    return 0;
  }
  auto const written = write_reference(book, *found);
  auto const again = read_reference(book, written);
  must(bool{again}, "what was written is not found", text + " -> " + written);
  must(*again == *found, "what was written is another leaf", text + " -> " + written);
  auto const page = page_of_book(book, *found);
  must(page && *page >= 1 && *page <= book.pages(), "a page outside the book", text);
  auto const back = reference_of_page(book, *page);
  must(back && back->leaf == found->leaf, "the page leads to another leaf", text + " -> " + written);
  return 0;
}
