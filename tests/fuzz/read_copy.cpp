// SPDX-License-Identifier: MIT
/// Any bytes as the leaves a copy has, and as the joints seen in it: leaves of the book, or an error inside the text. What the
/// copy wants, in words, reads back.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "must.hpp"

using namespace bifolium;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  static IdealCopy const book = *read_formula("8°: π² A–2K⁸ 2L⁴ (−2L4, B3+χ1.2, C4+a⁴)");
  std::string const text(data, data + size);
  if (auto const present = read_leaves_present(book, text); !present)
    fuzz::must_point_into(text, present.error());
  else {
    auto const copy = check_copy(book, present->spans);
    if (auto const words = wants(book, copy); !words.empty()) {
      auto const again = read_leaves_present(book, words);
      fuzz::must(again.has_value(), "what the copy wants does not read back", words);
      fuzz::must(check_copy(book, again->spans).wanting == copy.wanting, "what reads back is not what the copy wants",
                 words);
    }
  }
  if (auto const joints = read_joints(book, text); !joints) fuzz::must_point_into(text, joints.error());
  return 0;
}
