// SPDX-License-Identifier: MIT
/// Reads a run of gatherings inside a parenthesis, which are inserted together: a-b⁴ in (A1+a-b⁴), or [a-b]⁴.
#pragma once

#include <bifolium/collation/detail/scan/element_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Reads a run of inserted gatherings in the contents of a parenthesis.
class InsertedRunReader : ElementReader {
public:
  constexpr InsertedRunReader(std::string_view text, Dialect dialect) noexcept : ElementReader{text, dialect} {}

  /// Takes a-b⁴. Returns false if this is no run of signatures; a run that is not sound has a problem.
  constexpr bool take(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    bool const taken = take_element(p, e);
    if (!e.first || e.last.from == e.first.from || e.first.key.is_bare_number() || e.last.key.is_bare_number())
      return false;
    if (may_be_signed_leaf(e)) e.count = e.said;
    c = taken ? p : cursor(e.end);
    return true;
  }
  /// Takes [a-b]⁴, or [a-b⁴].
  constexpr bool take_in_brackets(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    p.take();
    e = FoundElement{};
    if (!take(p, e) || !p.at(TokenKind::close_square)) return false;
    p.take();
    if (!e.count.found()) e.count = take_count(p, flat_counts_);
    e.first.inferred = e.last.inferred = true;
    e.in_brackets = true;
    c = p;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
