// SPDX-License-Identifier: MIT
/// Reads what comes before a formula: a heading (Signatures:, Collation:) and the statement of format: 8°:, Fol., Royal
/// 4°, 2° and 4°, 8° (4s):. fold/read_format.hpp reads the formats themselves. This header decides whether there is a
/// format at all, since 2o is a format and 2o⁸ a gathering.
///
///   heading = heading words , [ ":" | "." ] ;
///   format  = [ "in" ] , [ paper class ] , format symbol , [ "?" | "(?)" ] , [ ( "and" | "&" ) , format symbol ] ,
///             [ gathered ] , [ ":" | "." | "," ]
///           | "[" , format symbol , "]" , [ ":" | "." | "," ]
///           | ( "F" | "Q" | "O" | "D" ) , [ "°" ] , ":" ;
#pragma once

#include <bifolium/collation/detail/grammar/outside_grammar.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/fold/read_gathered.hpp>
#include <bifolium/leaf/formula_heading.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

template <class Sink> class FormatGrammar : protected OutsideGrammar<Sink> {
protected:
  using Base = OutsideGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::sink_, Base::text_, Base::at, Base::cursor, Base::word, Base::c_, Base::after_word,
      Base::begins;

  /// Reads heading and statement of format, if there are any.
  constexpr void take_format() {
    while (is_separator(c_.token)) c_.take();
    auto i = c_.token.from;
    if (is_signature(i)) return;
    take_heading();
    i = c_.token.from;
    if (begins(i, "In") || begins(i, "in")) // in folio
      if (auto const after = this->after_blanks(i + 2); after != i + 2 && begins_format(after)) i = after;
    bool const bracket = c_.at(TokenKind::open_square) && begins_format(i + 1) && !is_latin_letter(at(i + 1));
    if (bracket) ++i; // [8°]: supplied by the cataloguer
    if (take_initial()) return;
    if (!begins_format(i)) return;
    auto const from = i;
    auto found = format_at_start(text_.substr(i));
    std::uint32_t class_end = 0; // where the class of paper ends that is named before the format; 0 for none
    auto const form = found ? i + static_cast<std::uint32_t>(found->bytes) : i;
    if (found && begins(form, "-form") &&
        this->is_blank_at(form + 5)) { // 4°-form 8°: the shape of one, the fold of another
      class_end = form + 5;
      i = this->after_blanks(class_end);
      found = format_at_start(text_.substr(i));
      if (!found) return;
    }
    if (!found && !bracket) found = after_paper_class(i, class_end);
    if (!found || found->bytes == 0) return;
    i += static_cast<std::uint32_t>(found->bytes);
    if (bracket && at(i++) != ']') return;
    auto c = cursor(i);
    bool const gathering = c.token.is_raised_figure() || at(i) == '<' || at(i) == '^'; // 2o⁸ is one, 2o a format
    if (gathering && !c.token.spaced) return;
    if (class_end != 0) sink_.paper_class(from, class_end);
    keep_format(found->format);
    if (found->format.kind() == Format::Kind::single_sheet) warn(Problem::part_of_sheet_not_stated, from, i);
    take_doubt(c);
    take_second(c);
    take_gathering_statement(c, found->format);
    if (c.at(TokenKind::colon) || c.at(TokenKind::point) || c.at(TokenKind::comma)) c.take();
    c_ = c;
    if (!is_signature(c_.token.from)) take_heading(); // in-12, sig. A-K¹²
  }

  int leaves_to_sheet_{0}; // by the statement of format; 0 if it does not say, or there are several

private:
  bool format_taken_{false};

  constexpr void keep_format(Format format) {
    leaves_to_sheet_ = format_taken_ ? 0 : format.leaves_to_sheet().value_or(0);
    format_taken_ = true;
    sink_.format(format);
  }
  /// Returns true for A-K⁸ and [A]⁴, as most formulas begin: one letter, and after it neither a letter nor a sign of a
  /// format.
  [[nodiscard]] constexpr bool is_signature(std::uint32_t i) const noexcept {
    auto const next = at(i + 1);
    if (at(i) == '[') return is_latin_letter(next);
    return is_latin_letter(at(i)) &&
           (next == '-' || next == ' ' || next == ',' || is_digit(next) || static_cast<unsigned char>(next) == 0xE2);
  }
  /// F:, Q:, O:, D: for folio, quarto, octavo, duodecimo, before a signature.
  constexpr bool take_initial() {
    auto const from = c_.token.from;
    if (at(from + 1) != ':' && static_cast<unsigned char>(at(from + 1)) != 0xC2) return false;
    constexpr std::string_view initials{"FQOD"sv};
    constexpr int leaves[]{2, 4, 8, 12};
    auto const which = initials.find(at(from));
    if (which == std::string_view::npos || from == text_.size()) return false;
    auto i = from + 1;
    if (i < text_.size() && is_degree_sign(decode(text_, i).value))
      i += static_cast<std::uint32_t>(decode(text_, i).bytes);
    if (at(i) != ':' || !this->is_blank_at(i + 1)) return false;
    keep_format(Format::of(leaves[which]));
    c_ = cursor(i + 1);
    return true;
  }
  /// Takes the words before a formula. A colon or a full stop ends them; words in full need neither: Signatures A-K⁸.
  constexpr void take_heading() {
    if (word(c_).size() < 3) return;
    TextCursor words{text_, c_.token.from};
    auto const size = take_formula_heading(words);
    if (!size) return;
    auto c = cursor(words.at());
    bool const marked = at(static_cast<std::uint32_t>(words.at()) - 1) == '.' || c.touches(TokenKind::colon) ||
                        c.touches(TokenKind::point);
    if (!marked && (*size < shortest_word || !c.token.spaced)) return;
    if (c.at(TokenKind::colon) || c.at(TokenKind::point)) c.take();
    if (!c.ended()) c_ = c;
  }
  static constexpr std::size_t shortest_word = 6; // signed: no shorter word is written in full
  /// Returns true if a format may begin at this byte.
  [[nodiscard]] constexpr bool begins_format(std::uint32_t i) const noexcept {
    char const c = at(i), d = at(i + 1), e = at(i + 2);
    if (is_digit(c)) {
      while (is_digit(at(i))) ++i;
      return at(i) == '/' || at(i) == '^' || at(i) == '<' || at(i) == 'o' || at(i) == 'm' || at(i) == 't' ||
             at(i) == 'v' || (i < text_.size() && is_degree_sign(decode(text_, i).value));
    }
    if (c == '(') return is_digit(d) || (is_latin_letter(d) && is_latin_letter(e));
    if (is_latin_letter(c)) return is_small(d) ? is_small(e) || e == '.' || e == '-' : d == '.' && is_small(e);
    return i < text_.size() && decode(text_, i).value == 0xBD;
  }
  /// Reads a format after a class of paper: Royal 4°, median 8°, gr. in-8°. `i` is then set to the beginning of the
  /// format, and `class_end` to the end of the class.
  [[nodiscard]] constexpr std::optional<FormatRead> after_paper_class(std::uint32_t& i,
                                                                      std::uint32_t& class_end) const {
    if (!is_latin_letter(at(i))) return std::nullopt;
    auto k = i;
    for (int words = 0; words < 3; ++words) {
      auto const begin = k;
      while (is_latin_letter(at(k)) || (at(k) == '-' && is_latin_letter(at(k + 1)))) ++k;
      bool const degree = is_digit(at(begin)) && words == 1; // 4°-form 8°
      if (k == begin && !degree) return std::nullopt;
      auto const end = k;
      bool const abbreviated = at(k) == '.' || (at(k) == '-' && is_digit(at(k + 1)));
      if (abbreviated) ++k;
      auto const next = cursor(k).token;
      if ((next.from == end && words < 1) || !begins_format(next.from)) return std::nullopt;
      if (abbreviated && words > 0) return std::nullopt;
      if (words == 0 && end < i + (abbreviated ? 2U : 4U)) return std::nullopt;
      if (format_at_start(text_.substr(begin, end - begin))) return std::nullopt; // fol-8vo: two formats, and no paper
      if (auto const found = format_at_start(text_.substr(next.from))) {
        class_end = end;
        i = next.from;
        return found;
      }
      if (abbreviated) return std::nullopt; // gr. 8° is a class and a format, gr. par. 8° is not
      k = next.from;
    }
    return std::nullopt;
  }
  /// Reads 8°(?) or 8°?, which is stored as a doubt.
  constexpr void take_doubt(TokenCursor& c) {
    auto p = c;
    bool const round = p.at(TokenKind::open_round);
    if (round) p.take();
    if (!p.at(TokenKind::question)) return;
    auto const from = c.token.from;
    p.take();
    if (round && !p.at(TokenKind::close_round)) return;
    if (round) p.take();
    warn(Problem::text_not_read, from, p.token.from);
    c = p;
  }
  /// Reads the second format of a book with two: 2° and 4°.
  constexpr void take_second(TokenCursor& c) {
    bool const sign = c.at(TokenKind::symbol) && c.token.value == '&';
    if (!sign && word(c) != "and") return;
    auto const next = cursor(c.token.from + (sign ? 1U : 3U)).token.from;
    auto const second = format_at_start(text_.substr(next));
    if (!second || second->bytes == 0) return;
    sink_.second_format(second->format);
    leaves_to_sheet_ = 0;
    c = cursor(next + second->bytes);
  }
  /// Reads the leaves of the gatherings, which the resolver compares with the runs: 8° (in 4s), 8° in fours, 12° (8/4),
  /// 8° in half-sheets.
  constexpr void take_gathering_statement(TokenCursor& c, Format format) {
    if (!may_begin_gathered(at(c.token.from), at(c.token.from + 1))) return;
    TextCursor words{text_, c.token.from};
    auto const found = take_gathered(words, format);
    if (!found.counts.found()) return;
    auto const from = static_cast<std::uint32_t>(found.text.from), to = static_cast<std::uint32_t>(found.text.to);
    if (found.counts.problem != Problem::none) {
      this->fail(found.counts.problem, from, to, found.counts.limit());
      return;
    }
    c = cursor(to);
    this->gathered(found.counts.leaves, from, to);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
