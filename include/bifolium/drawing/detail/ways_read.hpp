// SPDX-License-Identifier: MIT
/// The versions of a book that the class page lets read: correct, and after the mistakes of the press and of the folder.
#pragma once

#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/read_scheme.hpp>
#include <bifolium/fold/write_scheme.hpp>
#include <bifolium/imposition/misread.hpp>

#include <optional>
#include <string>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A version of the book: correct, or after a mistake.
struct WayRead {
  std::string name, words;
  Slip slip{Slip::none};
  Scheme folded;
};

/// Returns the scheme with its packets set one inside another in the reverse order, or no value if that does not fold
/// or is the same scheme.
inline std::optional<Scheme> wrong_inset(Scheme const& scheme) {
  auto const text = write_scheme(scheme);
  std::string changed;
  for (std::size_t at = 0; at < text.size();) {
    auto const end = text.find('\n', at);
    auto line = text.substr(at, end - at);
    at = end + 1;
    auto const page = line.find(" page ");
    if (line.rfind("gathering ", 0) == 0 && line.find('+') == line.npos) {
      auto const name_end = line.find(' ', 10);
      std::string packets, tail = page == line.npos ? "" : line.substr(page);
      for (auto word = name_end; word < line.size() && word != page;) {
        auto const next = line.find(' ', word + 1);
        auto const stop = next == line.npos ? line.size() : next;
        packets.insert(0, line, word, stop - word);
        word = stop;
      }
      line = line.substr(0, name_end).append(packets).append(tail);
    }
    changed.append(line).append("\n");
  }
  auto const read = read_scheme(changed);
  if (!read || *read == scheme || !fold(*read)) return std::nullopt;
  return *read;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
