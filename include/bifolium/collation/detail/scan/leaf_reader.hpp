// SPDX-License-Identifier: MIT
/// Reads a leaf that a change names. Inside a parenthesis the number after a signature is a leaf and not a count:
///
///   leaf = [ "sig." ] , ( signature , [ "/" ] , ( figure | roman | "l" ) , [ side ] | figure | signature
///        | words , figure ) ;                           (* the bare name of a symbol: greek cross8 *)
///   side = ( "r" | "v" ) , [ "a" | "b" ] ;              (* a and b are the columns of a page *)
///
/// The change of leaves, the leaves that an inserted gathering lacks, and words about leaves are lists of them, with the
/// same ranges and joints:
///
///   range = leaf , ( "-" | range word ) , figure | leaf , range word , leaf ;   (* E3-6; E3 to E6 *)
///   range word = "to" | "through" | "thru" | "till" | "until" | "bis" | "tot" | "hasta" ;
///   joint = "," , [ "and" ] | "." | "&" | "and" ;
///
/// A number alone (7) is a leaf of the gathering before it; a signature alone is the whole gathering. "bl." is an
/// abbreviation of "blank" and not leaf b1.
#pragma once

#include <bifolium/collation/detail/scan/number_reader.hpp>
#include <bifolium/leaf/leaf_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A leaf named in a text.
struct NamedLeaf {
  bool found{};
  bool gathering_named{}; ///< true if `key` is set
  bool whole{};           ///< true for the whole gathering, without a leaf
  bool of_page{};         ///< true if r or v follows, for one side of the leaf
  bool verso{};           ///< true if it is v
  bool letter_l{};        ///< true if the letter l was written for the digit 1
  bool outside{};         ///< true if the signature is written with J, U or W and the alphabet does not have the letter
  SignatureKey key{};
  int leaf{};
  std::uint32_t end{}; ///< the position after it
};

class LeafReader : protected NumberReader {
protected:
  using NumberReader::NumberReader;

  /// Returns true for the signature +, which cannot be named in a change, because + is the sign of an insertion there.
  [[nodiscard]] constexpr bool is_plus(FoundSignature const& found) const noexcept {
    return found.key.mark() == Mark::symbol && at(found.key.text_from) == '+';
  }
  /// Reads the leaf named at the cursor, before byte `end`.
  [[nodiscard]] constexpr NamedLeaf leaf_name(TokenCursor const& name_or_sig, std::uint32_t end) const noexcept {
    auto const& first = name_or_sig.token;
    bool const sig = first.value == 's' && begins(first.from, "sig.") && is_blank_at(first.from + 4U);
    auto const c = sig ? cursor(first.from + 4U, end) : name_or_sig;
    if (c.token.is_figure_not_raised()) {
      auto next = c;
      next.take();
      if (next.touches(TokenKind::slash)) return numbered(c.token, next);
      bool const column = next.touches(TokenKind::letter) && (at(next.token.to) == 'a' || at(next.token.to) == 'b');
      if (ends_figure(next) || column) {
        NamedLeaf name;
        name.leaf = bounded(c.token);
        name.end = c.token.to;
        if (column) take_side(next, name); // 2ra; but 2r is a gathering
        name.found = !column || name.of_page;
        if (name.found) return name;
      }
    }
    if (c.at(TokenKind::letter) && is_latin_letter(at(c.token.to)))
      if (auto const bare = bare_name(c); bare.found && is_word(c.token.from)) return bare;
    return signed_leaf(c, end);
  }
  /// Returns true for a word between the first and the last leaf of a range.
  [[nodiscard]] static constexpr bool is_range_word(std::string_view w) noexcept {
    return w == "to" || w == "through" || w == "thru" || w == "till" || w == "until" || w == "bis" || w == "tot" ||
           w == "hasta";
  }
  /// Reads the last leaf of a range, the 4 of D2-4 or D2 to 4, if one is written after leaf `first`. After a word it may
  /// be named with its gathering, D2 to D4, if this is that of the first.
  [[nodiscard]] constexpr NamedLeaf range_end(TokenCursor const& dash, std::uint32_t end,
                                              NamedLeaf const& first) const noexcept {
    auto c = dash;
    auto const w = word(c);
    if (is_range_word(w))
      c = cursor(c.token.from + w.size(), end);
    else if (c.at(TokenKind::dash))
      c.take();
    else
      return {};
    bool const figure = c.token.is_figure_not_raised();
    if (!figure && w.empty()) return {};
    auto const last = leaf_name(c, end);
    if (!last.found || last.whole || last.leaf <= first.leaf) return {};
    bool const same = last.gathering_named && first.gathering_named &&
                      run_length(first.key, last.key, alphabet_, text_) == std::int64_t{1};
    return same || (figure && !last.gathering_named) ? last : NamedLeaf{};
  }
  /// Takes the word recto or verso after a leaf. Returns the end of the name of a page, or 0 if a leaf is named.
  constexpr std::uint32_t take_page(TokenCursor& c, NamedLeaf const& name, std::uint32_t end) const noexcept {
    auto const w = name.whole ? std::string_view{} : word(c);
    if (w != "recto" && w != "verso") return name.of_page ? name.end : 0;
    auto const to = c.token.from + static_cast<std::uint32_t>(w.size());
    c = cursor(to, end);
    return to;
  }
  /// Returns true at the sign & and no entity.
  [[nodiscard]] static constexpr bool is_and_sign(Token const& t) noexcept {
    return t.is(TokenKind::symbol) && t.value == '&';
  }
  /// Takes what joins two leaves of a list. Returns false if there is no joint.
  [[nodiscard]] constexpr bool take_joint(TokenCursor& c, std::uint32_t end) const noexcept {
    bool const comma = c.at(TokenKind::comma);
    if (comma || c.at(TokenKind::point) || is_and_sign(c.token)) {
      c.take();
      if (comma && c.token.spaced && word(c) == "and") c = cursor(c.token.from + 3U, end); // A1, B2, and C3
    } else if (word(c) == "and")
      c = cursor(c.token.from + 3U, end);
    else
      return false;
    return true;
  }

private:
  [[nodiscard]] static constexpr int bounded(Token const& figure) noexcept {
    return figure.value > most_leaves_in_gathering ? most_leaves_in_gathering + 1 : static_cast<int>(figure.value);
  }
  /// Reads r or v after the number of a leaf, perhaps with the column of the page: 3ra.
  constexpr void take_side(TokenCursor const& c, NamedLeaf& name) const noexcept {
    bool const side = c.touches(TokenKind::letter) && (c.token.value == 'r' || c.token.value == 'v');
    auto const to = c.token.to + (at(c.token.to) == 'a' || at(c.token.to) == 'b' ? 1U : 0U);
    if (side && !is_latin_letter(at(to))) name.end = to, name.of_page = true, name.verso = c.token.value == 'v';
  }
  /// Reads 36/10, leaf 10 of gathering 36. `c` is at the stroke.
  [[nodiscard]] constexpr NamedLeaf numbered(Token const& gathering, TokenCursor c) const noexcept {
    NamedLeaf name;
    c.take();
    bool const number = gathering.value > 0 && gathering.value <= Signature::highest_number;
    if (!c.touches(TokenKind::figure) || c.token.raised() || !number) return name;
    name.found = name.gathering_named = true;
    name.key = SignatureKey::of(Mark::number, 0, gathering.value);
    name.leaf = bounded(c.token);
    name.end = c.token.to;
    c.take();
    take_side(c, name);
    return name;
  }
  /// Returns true if no part of a name follows the number.
  [[nodiscard]] constexpr bool ends_figure(TokenCursor const& c) const noexcept {
    auto const& t = c.token;
    if (t.spaced) return true;
    switch (t.kind) {
    case TokenKind::end:
    case TokenKind::comma:
    case TokenKind::point:
    case TokenKind::semicolon:
    case TokenKind::plus:
    case TokenKind::plus_minus:
    case TokenKind::question:
    case TokenKind::close_square:
    case TokenKind::equals:
    case TokenKind::dash:
      return true;
    case TokenKind::colon: // 8: blank
      return is_blank_at(t.to);
    case TokenKind::open_square:
      return at(t.to) == '=';
    default:
      return false;
    }
  }
  /// Reads the bare name of a symbol: −greek cross8.
  [[nodiscard]] constexpr NamedLeaf bare_name(TokenCursor c) const noexcept {
    NamedLeaf name;
    auto const from = c.token.from;
    auto i = from; // most words end without a figure, and without markup or blanks of other kinds
    while (is_latin_letter(at(i)) || at(i) == ' ') ++i;
    auto const after = at(i);
    bool const ends = after > ' ' && after <= '~' && !is_digit(after) && after != '<' && after != '&' && after != '^';
    if (after == '\0' || ends) return name;
    auto last = c.token;
    for (; c.at(TokenKind::letter); c.take()) last = c.token;
    if (last.spaced) return name; // verso of K8: words, and a leaf
    auto const size = last.to - from;
    if (!c.touches(TokenKind::figure) || c.token.raised() || size < 3 || size > Signature::longest_text) return name;
    auto const mark = text_mark(Mark::name, from, last.to, last.to, 1);
    if (!mark) return name;
    name.key = mark.key;
    name.found = name.gathering_named = true;
    name.leaf = bounded(c.token);
    name.end = c.token.to;
    return name;
  }
  /// Returns true if a letter is not the signature of a leaf because of the letter after it: it doubles none and is no
  /// Roman numeral. P and C may begin pi and chi.
  [[nodiscard]] static constexpr bool begins_words(char a, char b) noexcept {
    auto const first = small_letter(a), second = small_letter(b);
    return is_latin_letter(a) && is_latin_letter(b) && first != second && first != 'p' && first != 'c' &&
           std::string_view{"ivxlcdmj"}.find(second) == std::string_view::npos;
  }
  [[nodiscard]] constexpr NamedLeaf signed_leaf(TokenCursor const& from, std::uint32_t end) const noexcept {
    NamedLeaf name;
    auto const t = from.token;
    if (t.is(TokenKind::letter) && begins_words(at(t.from), at(t.from + 1U))) return name;
    auto c = from;
    auto const mark = CountReader{text_.substr(0, end), letters_}.take(c);
    if (!mark || mark.end > end || is_plus(mark)) return name;
    name.key = mark.key;
    name.end = mark.end;
    name.outside = mark.glyph_outside;
    if (c.touches(TokenKind::slash)) c.take();
    if (c.touches(TokenKind::figure) && !c.token.raised()) {
      name.leaf = bounded(c.token);
      name.end = c.token.to;
      c.take();
    } else if (c.touches(TokenKind::letter) && mark.key.is_letter())
      take_letters(c, end, name);
    bool const leaf = name.end != mark.end;
    // à la fin: a letter with an accent may be a word, and is a signature in a parenthesis only with a leaf
    bool const word = mark.key.mark() == Mark::symbol && is_accented_letter(t.value);
    bool const bare = (mark.key.is_bare_number() && !mark.inferred) || word;
    // a number with other text after it names no leaf, nor do letters side by side
    if (!leaf && (bare || c.touches(TokenKind::letter))) return NamedLeaf{};
    name.found = name.gathering_named = true;
    name.whole = !leaf;
    if (leaf) take_side(c, name);
    return name;
  }
  /// Reads A4(−Al), with the letter l for 1, or Aiij, as early books are signed.
  constexpr void take_letters(TokenCursor& c, std::uint32_t end, NamedLeaf& name) const noexcept {
    if (c.token.value == 'l' && !is_latin_letter(at(c.token.to))) {
      bool const blank = c.token.from > 0 && is_blank_word(word_at(text_, c.token.from - 1)) && at(c.token.to) == '.' &&
                         !is_digit(at(c.token.to + 1));
      if (blank) return; // bl. is "blank", and not leaf b1
      name.leaf = 1;
      name.letter_l = true;
      name.end = c.token.to;
      c.take();
      return;
    }
    auto const roman = roman_numeral(text_.substr(0, end).substr(c.token.from));
    if (!roman) return;
    auto const to = c.token.from + static_cast<std::uint32_t>(roman->bytes);
    bool const whole = roman->value < 50 && (to >= end || !is_latin_letter(at(to)));
    if (!whole || !is_small(static_cast<char>(c.token.value))) return;
    name.leaf = static_cast<int>(roman->value);
    name.end = to;
    c = cursor(to, end);
  }
};

/// Reads the leaf at the beginning of words, in the notation of a change.
class LeafInWords : LeafReader {
public:
  constexpr LeafInWords(std::string_view text, Letters letters) noexcept : LeafReader{text, {{}, letters, true}} {}
  [[nodiscard]] constexpr NamedLeaf find(std::size_t from) const noexcept {
    return leaf_name(cursor(from), static_cast<std::uint32_t>(text_.size()));
  }
  /// Reads the last leaf of a range whose first leaf is before the cursor, if a range is written.
  [[nodiscard]] constexpr NamedLeaf last_of_range(TokenCursor const& c, NamedLeaf const& first) const noexcept {
    return range_end(c, static_cast<std::uint32_t>(text_.size()), first);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
