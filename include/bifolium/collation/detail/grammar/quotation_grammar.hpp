// SPDX-License-Identifier: MIT
/// Reads quotation marks round a formula or a part of it, and leaves out one whose other was lost. While a quotation is
/// read, it is the whole text.
#pragma once

#include <bifolium/collation/detail/grammar/bracket_grammar.hpp>
#include <bifolium/collation/detail/grammar/quotation.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class QuotationGrammar : protected BracketGrammar<Sink> {
protected:
  using Base = BracketGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::text_, Base::cursor, Base::begun, Base::c_, Base::part_, Base::dialect_;

  /// Goes into a quotation of a formula, at the beginning of the text or of a part. Returns false if there is none.
  constexpr bool into_quotation() {
    auto c = c_;
    auto const open = c.token;
    bool const first = !begun(), within = !quoting_.empty(); // within: "'A-K⁸'"
    if (!opens_quotation(open.value) || !(first || part_)) return false;
    Quotation quotation{dialect_.flat_counts};
    for (c.take(); !c.ended(); c.take()) {
      if (c.at(TokenKind::quote) && ends_quotation(open.value, c.token.value)) {
        auto const after = cursor(c.token.to);
        if (quotation.is_formula(first, after) && (!within || after.ended())) {
          if (!within) quoting_ = text_, quotation_end_ = c.token.to;
          text_ = text_.substr(0, c.token.from);
          c_ = cursor(open.to);
          return true;
        }
        if (!first || !quotation.several()) return false; // otherwise an apostrophe
      }
      quotation.add(c.token);
    }
    return false;
  }
  /// Leaves out the one quotation mark of a text, at its beginning or its end: the other was lost. Returns false if it is
  /// another.
  constexpr bool lone_quotation_mark() {
    auto c = c_;
    auto const t = c.token;
    for (c.take(); begun() && is_separator(c.token);) c.take();
    if (begun() && !c.ended()) return false;
    for (TokenCursor other{text_}; !other.ended(); other.take())
      if (other.at(TokenKind::quote) && other.token.from != t.from) return false;
    warn(Problem::lone_quotation_mark, t.from, t.to);
    c_ = cursor(t.to);
    if (!begun()) this->take_format();
    return true;
  }
  /// Goes on after the quotation that was read. Returns false if there is none.
  constexpr bool out_of_quotation() {
    if (quoting_.empty()) return false;
    text_ = quoting_, quoting_ = {};
    this->look_again();
    c_ = cursor(quotation_end_);
    return true;
  }

private:
  std::string_view quoting_{}; // the whole text, while a quotation in it is read
  std::size_t quotation_end_{};
};

} // namespace detail
} // namespace v0
} // namespace bifolium
