// SPDX-License-Identifier: MIT
/// What the functions that read a parenthesis have in common: where they are in it and what came before; and the reader
/// of a run of gatherings inside it, which are inserted.
#pragma once

#include <bifolium/collation/detail/found_element.hpp>
#include <bifolium/collation/detail/resolver.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The state of reading a parenthesis.
struct ChangeState {
  TokenCursor c{};
  std::uint32_t from{}, end{};           // its contents
  Target current{};                      // the gathering to which a number alone belongs
  Change::Kind sign{Change::Kind::note}; // the sign that applies to a list
  bool any{}, list{}, gone{}, after_words{};
  bool deletions_together{}; // the last change is a deletion, and so is the one before it
  FoundChange previous{};    // the last change
  FoundChange last_gone{};   // the last deletion or cancel
  // the text before the item that is read now
  bool separated{}, spaced{}, semicolon{}, point{};
  [[nodiscard]] constexpr bool after(Change::Kind kind) const noexcept { return any && previous.kind == kind; }
};

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
