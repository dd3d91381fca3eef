// SPDX-License-Identifier: MIT
/// Words in a parenthesis that say something of whole gatherings, or of the alphabet: (C repeated), (A and L in fours), (26
/// letters), (with J). Such words may change the number of leaves in ways without end, and are not counted. So the safe ones are
/// known, and all others are told: a remark that no leaf depends on (C missigned D) is a remark, and anything else that names a
/// gathering is a doubt. A remark on a single leaf is another matter: a leaf that is named is there.
#pragma once

#include <bifolium/collation/detail/blank_grammar.hpp>
#include <bifolium/core/number_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words of a remark on a gathering that says nothing of its leaves (common practice, no source).
inline constexpr char const* harmless_remarks[]{
    "advertisement", "advertisements", "black",      "blank",     "blanks",   "catchword", "catchwords", "colophon",
    "dedication",    "errata",         "error",      "errors",    "gothic",   "imprint",   "index",      "italic",
    "italics",       "misnumbered",    "misprinted", "missigned", "page",     "pages",     "paper",      "plate",
    "plates",        "portrait",       "preface",    "printed",   "red",      "signed",    "table",      "title",
    "unsigned",      "woodcut",        "woodcuts",   "roman",     "numbered", "unnumbered"};
/// Words that only join others, or say that a gathering is meant.
inline constexpr char const* joining_words[]{
    "a",          "also",       "and",  "are", "as", "at",  "by",   "for",   "from",   "gathering",
    "gatherings", "in",         "is",   "mis", "of", "on",  "or",   "quire", "quires", "sig",
    "signature",  "signatures", "sigs", "the", "to", "was", "were", "with"};

template <class Sink> class WordsOfGatherings : protected BlankGrammar<Sink> {
protected:
  using Base = BlankGrammar<Sink>;
  using Base::Base;
  using Base::text_, Base::at, Base::cursor, Base::last_, Base::alphabet_;

  /// Returns true if the words name a gathering or a number of leaves or letters, and are not known to be harmless.
  /// `blanks`: they say which leaves are blank, and may count them.
  [[nodiscard]] constexpr bool says_of_gatherings(std::uint32_t from, std::uint32_t to, bool blanks) {
    Said said;
    said.blanks = blanks;
    for (auto c = cursor(from, to); !c.ended();) {
      bool const letter = c.at(TokenKind::letter);
      auto const w = letter ? word_at(text_.substr(0, to), c.token.from) : std::string_view{};
      auto const name = letter ? name_at(c.token.from, to) : NamedLeaf{};
      auto const end = c.token.from + static_cast<std::uint32_t>(w.size());
      if (name.found && !name.whole) { // a leaf that is named is there
        c = cursor(name.end, to);
      } else if (name.found && !is_article(c, w, to)) {
        bool const printed = said.but == 3;
        said.but = 0;
        if (!printed && gathering_says(name, at(c.token.from), said)) return true;
        c = cursor(name.end, to);
      } else if (!w.empty()) {
        if (word_says(w, said)) return true;
        c = cursor(end, to);
      } else {
        if (c.at(TokenKind::figure)) said.number = c.token.value, said.other = true;
        if (c.at(TokenKind::semicolon)) said.negated = false;
        c.take();
      }
    }
    return said.named && (said.other || !said.remark);
  }

private:
  struct Said {
    std::int64_t number{}; ///< the last number
    bool named{};          ///< a gathering of the book
    bool other{};          ///< a word that is not known, or a number
    bool remark{};         ///< a remark that is known
    bool negated{};        ///< "no" came before
    bool blanks{};
    int but{}; ///< of "but for signature A", which leaves a leaf blank: the words that came
  };
  /// Follows "but for the signature", after which the name of a gathering is only the mark that is printed.
  static constexpr void take_but_for(std::string_view w, Said& said) {
    bool const signature = equal_in_any_case(w, "signature") || equal_in_any_case(w, "signatures");
    if (equal_in_any_case(w, "but") || equal_in_any_case(w, "except"))
      said.but = 1;
    else if (said.but == 1 && equal_in_any_case(w, "for"))
      said.but = 2;
    else if (said.but == 2 && signature)
      said.but = 3;
    else if (said.but != 2 || !(equal_in_any_case(w, "the") || equal_in_any_case(w, "its")))
      said.but = 0;
  }
  /// Reads the name at a byte. No name is longer than `widest`, and prose can be long, so no more of it is looked at.
  [[nodiscard]] constexpr NamedLeaf name_at(std::uint32_t from, std::uint32_t to) const noexcept {
    constexpr std::uint32_t widest = 64;
    return LeafInWords{text_.substr(0, to - from > widest ? from + widest : to), this->letters_}.find(from);
  }
  /// Returns true for "a" before another word.
  [[nodiscard]] constexpr bool is_article(TokenCursor const& c, std::string_view w, std::uint32_t to) const {
    if (w != "a") return false;
    auto const next = cursor(c.token.from + 1U, to);
    return next.at(TokenKind::letter) && next.token.spaced && word_at(text_.substr(0, to), next.token.from).size() > 1;
  }
  /// Takes the name of a gathering that is written with this letter. Returns true if this is a doubt by itself: a letter that
  /// the alphabet does not have and that is said to be used, or the reverse.
  [[nodiscard]] constexpr bool gathering_says(NamedLeaf const& name, char written, Said& said) {
    auto const glyph = small_letter(written);
    bool const plain = name.key.is_plain_latin() && name.key.multiple == 1;
    if (plain && (glyph == 'j' || glyph == 'u' || glyph == 'w')) {
      auto key = name.key; // of a letter that a book without this one has
      if (glyph == 'w') key.letter = Alphabet::v;
      bool const reached = this->find(key) || this->find(name.key);
      return reached && alphabet_.has(glyph - 'a' + 1) == said.negated;
    }
    if (!this->find(name.key)) return false;
    said.named = true;
    // without J, U and W a book has I and V
    return said.negated && !(plain && (glyph == 'i' || glyph == 'v'));
  }
  /// Takes a word. Returns true if it counts leaves or letters otherwise than the formula.
  [[nodiscard]] constexpr bool word_says(std::string_view w, Said& said) {
    take_but_for(w, said);
    if (equal_in_any_case(w, "no") || equal_in_any_case(w, "without") || equal_in_any_case(w, "not"))
      said.negated = true;
    if (auto const number = number_of_word(w)) said.number = *number;
    bool const letters = equal_in_any_case(w, "letters") || equal_in_any_case(w, "letter");
    if (letters && said.number > 0) return said.number != alphabet_.size();
    if (auto const several = number_of_plural(w))
      return !(last_.leaves.size() == 1 && last_.leaves.term(0) == *several);
    if (!said.blanks && said.number > 1 && is_unit_of_leaves(w) && said.number != this->leaves_) return true;
    if (is_one_of(w, harmless_remarks))
      said.remark = true;
    else if (!is_one_of(w, joining_words))
      said.other = true;
    return false;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
