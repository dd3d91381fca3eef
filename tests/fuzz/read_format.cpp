// SPDX-License-Identifier: MIT
/// Any bytes as a format, a length and a signature: three short readers, each with a fixed point or an equal.
#include <bifolium/fold.hpp>
#include <bifolium/leaf/read_signature.hpp>

#include "must.hpp"

#include <iterator>

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const format = read_format(text);
  if (!format) {
    fuzz::must_point_into(text, format.error());
  } else {
    for (std::string const& written : {std::string{format->symbol().view()}, std::string{format->abbreviation().view()},
                                       std::string{format->name().view()}}) {
      auto const again = read_format(written);
      must(again && *again == *format, "what was written is another format", text + " -> " + written);
    }
    must(format->leaves_to_sheet().value_or(1) >= 1, "a sheet of no leaves", text);
  }

  auto const signature = read_signature(text);
  if (!signature) {
    fuzz::must_point_into(text, signature.error());
  } else {
    std::string const written{to_text(*signature).view()};
    auto const again = read_signature(written);
    must(again && *again == *signature, "what was written is another signature", text + " -> " + written);
    must(std::hash<Signature>{}(*again) == std::hash<Signature>{}(*signature), "equals with two hashes", text);
  }
  return 0;
}
