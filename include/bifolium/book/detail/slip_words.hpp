// SPDX-License-Identifier: MIT
/// Describes a slip for a person who has the book: what is written, what is probably meant, why, and where to look.
#pragma once

#include <bifolium/book/audit.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Describes an edit: 'B-H⁴' for 'B-G⁴'; '[2]' is missing; '(−A1)' is one too many.
inline std::string in_words(Edit const& edit) {
  std::string const old{trimmed(edit.old, " ,")}, put{trimmed(edit.put, " ,")};
  std::string words;
  if (old.empty() && put.empty())
    words = "";
  else if (old.empty())
    words = put + " is missing";
  else if (put.empty())
    words = old + " is one too many";
  else
    words = old + " for " + put;
  auto const reason = std::string{row_of(edit.kind).reason};
  return words.empty() ? reason : words + " (" + reason + ')';
}

} // namespace detail
} // namespace v0
} // namespace bifolium
