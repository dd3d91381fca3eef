// SPDX-License-Identifier: MIT
/// Words in a parenthesis that say something of whole gatherings, or of the alphabet: (C repeated), (A and L in fours), (26
/// letters), (with J). Such words may change the number of leaves in ways without end, and are not counted. So the safe ones are
/// known, and all others are told: a remark that no leaf depends on (C missigned D) is a remark, and anything else that names a
/// gathering is a doubt. A remark on a single leaf is another matter: a leaf that is named is there.
#pragma once

#include <bifolium/collation/detail/grammar/blank_grammar.hpp>
#include <bifolium/collation/detail/words/book_words.hpp>
#include <bifolium/core/number_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words of a remark on a gathering that says nothing of its leaves, beside those for what the book consists of
/// (common practice, no source).
inline constexpr char const* harmless_remarks[]{
    "black",   "blank",   "blanks",  "catchword",   "catchwords", "colophon",   "error",    "errors",  "gothic",
    "imprint", "italic",  "italics", "misnumbered", "misprinted", "missigned",  "numbered", "page",    "pages",
    "paper",   "printed", "red",     "roman",       "signed",     "unnumbered", "unsigned", "woodcut", "woodcuts"};
/// Words that only join others.
inline constexpr char const* joining_words[]{"a",  "also", "and", "are", "as", "at",  "by", "for", "from", "in",
                                             "is", "mis",  "of",  "on",  "or", "the", "to", "was", "were", "with"};
/// Returns true for a word of a remark that says nothing of the leaves of a gathering.
[[nodiscard]] constexpr bool is_harmless(std::string_view word) noexcept {
  return is_one_of(word, harmless_remarks) || is_word_of_contents(word) || is_word_of_plates(word);
}
/// Returns true for a word that only joins others, or says that a gathering is meant.
[[nodiscard]] constexpr bool is_joining(std::string_view word) noexcept {
  return is_one_of(word, joining_words) || is_word_for_gatherings(word);
}

/// Words that may stand before a leaf and say nothing of whether it is there, beside those of remarks and those that join
/// others (common practice, no source).
inline constexpr char const* words_before_leaf[]{
    "above",     "after",     "before",  "below",  "between",  "both",     "bl",      "cf",
    "conjugate", "dated",     "epistle", "ending", "ends",     "explicit", "facing",  "figure",
    "fol",       "following", "follows", "has",    "half",     "head",     "incipit", "inner",
    "leaf",      "leaves",    "marked",  "note",   "opposite", "outer",    "poem",    "preceding",
    "precedes",  "recto",     "reads",   "see",    "since",    "stamp",    "text",    "title-page",
    "verso",     "vide",      "when",    "where",  "which",    "while"};
inline constexpr char const* words_for_one[]{"a", "an", "one", "un", "una", "une", "ein", "eine", "een"};

/// Words that put one leaf beside another: a leaf after C3, C3 followed by χ1 (common practice, no source).
inline constexpr char const* words_for_placing[]{"after",    "before",    "between",  "follow",  "following", "follows",
                                                 "followed", "preceding", "precedes", "precede", "preceded"};
/// Words for leaves that stand for one without an article: bifolium after C3, half-title before A1, unsigned half-sheet after
/// C8 (common practice, no source).
inline constexpr char const* words_for_added_leaves[]{
    "leaf",   "leaves", "singleton", "singletons", "bifolium",  "bifolia",   "bifolio", "folium",    "sheet",
    "sheets", "quire",  "gathering", "flyleaf",    "halftitle", "halfsheet", "fold",    "gatherings"};
/// Words before a word for leaves that show that the leaves are some of the formula: the leaf after C3, on leaves after C3.
inline constexpr char const* words_of_known_leaf[]{"the",  "this", "that",   "its",  "each",  "every", "both", "all",
                                                   "same", "last", "first",  "next", "of",    "on",    "to",   "from",
                                                   "in",   "at",   "second", "as",   "other", "these", "those"};
/// Words with which a name that the formula does not have is only what is printed on a leaf: C3 signed *C3.
inline constexpr char const* words_of_printed_name[]{"signed",     "missigned", "marked",  "numbered", "misnumbered",
                                                     "misprinted", "misprint",  "printed", "as",       "for",
                                                     "reads",      "see",       "cf",      "vide",     "like"};

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

  /// Returns true if the words name a leaf and a word before it is not known to be harmless, or leaves are counted beside
  /// it: ohne H4, only H1-3, dopo H2 una carta. In many languages such words say that the book has not the leaf, or has
  /// another one, so the safe ones are known, and all others are told. Also if they put a leaf beside it that the formula
  /// does not have: unsigned leaf after C3, C3 followed by *C3.
  [[nodiscard]] constexpr bool says_of_leaves(std::uint32_t from, std::uint32_t to) {
    bool unknown = false, word_before = false, one = false, named = false, counted = false;
    LeafBeside beside;
    for (auto c = cursor(from, to); !c.ended();) {
      auto const& t = c.token;
      bool const goes_on = word_before && !t.spaced; // the rest of a word with an accent
      auto const w = t.is(TokenKind::letter) ? word_at(text_.substr(0, to), t.from) : std::string_view{};
      bool const may_name = !goes_on && t.kind >= TokenKind::letter && t.kind <= TokenKind::symbol;
      auto const name = may_name ? name_at(t.from, to) : NamedLeaf{};
      if (name.found && name.gathering_named && name.leaf > 0) {
        if (unknown) return true;
        named = true, unknown = word_before = one = false;
        c = cursor(name.end, to);
        beside.take_name(!this->find(name.key) || is_star(c));
        while (c.touches(TokenKind::dash) || c.touches(TokenKind::figure)) c.take(); // H1-3
        if (auto const after = word_at(text_.substr(0, to), c.token.from); is_only(c, after, to)) return true;
        continue;
      }
      auto const before = one;
      if (!w.empty()) {
        bool const known =
            is_harmless(w) || is_joining(w) || is_one_of(w, words_before_leaf) || number_of_word(w).has_value();
        unknown = goes_on || !known;
        if (!goes_on) beside.take(w);
        counted =
            counted || (before && !goes_on && (is_noun(w, leaf_noun_rows, NounUse::note) || is_unit_of_leaves(w)));
        one = !goes_on && is_one_of(w, words_for_one);
        word_before = true;
        c = cursor(t.from + w.size(), to);
        continue;
      }
      one = t.is(TokenKind::figure) && !t.raised();
      bool const letter = t.is(TokenKind::symbol) && at(t.from) != '&';
      if (letter && word_before && !t.spaced)
        unknown = true; // après
      else if (!t.is(TokenKind::point))
        unknown = word_before = false;
      if (t.is(TokenKind::semicolon)) {
        if (named && beside.adds()) return true;
        beside = LeafBeside{};
      }
      c.take();
    }
    return named && (counted || beside.adds());
  }
  /// Reads the name at a byte. No name is longer than `widest`, and prose can be long, so no more of it is looked at.
  [[nodiscard]] constexpr NamedLeaf name_at(std::uint32_t from, std::uint32_t to) const noexcept {
    constexpr std::uint32_t widest = 64;
    return LeafInWords{text_.substr(0, to - from > widest ? from + widest : to), this->letters_}.find(from);
  }
  /// Returns true for a star or dagger directly after the name of a leaf: C3*.
  [[nodiscard]] static constexpr bool is_star(TokenCursor const& c) noexcept {
    return c.touches(TokenKind::symbol) && (c.token.value == '*' || c.token.value == 0x2020 || c.token.value == 0x2021);
  }

private:
  /// What words say of a leaf beside one that is named.
  class LeafBeside {
    bool place_{}, unit_{}, strange_{}, signing_{};
    bool pending_{}; // a word for leaves came last: leaf C3 is only the leaf
    bool plural_{};  // "leaves" came first: leaves after C3 unsigned says nothing of how many there are
    bool begun_{};   // a word came
    bool known_{};   // the word before shows that a leaf of the formula is meant
    bool half_{};    // half came last

  public:
    constexpr void take(std::string_view w) {
      bool const title = half_ && equal_in_any_case(w, "title");
      bool const unit = title || is_one_of(w, words_for_added_leaves);
      settle();
      bool const plural = !begun_ && equal_in_any_case(w, "leaves");
      begun_ = true;
      plural_ = plural || (plural_ && !is_harmless(w));
      pending_ = unit && !plural && !known_;
      place_ = place_ || is_one_of(w, words_for_placing);
      signing_ = signing_ || is_one_of(w, words_of_printed_name);
      half_ = equal_in_any_case(w, "half");
      known_ = is_one_of(w, words_of_known_leaf);
    }
    /// Takes the name of a leaf. `strange`: the formula does not have it.
    constexpr void take_name(bool strange) noexcept {
      plural_ = plural_ && place_; // leaves C3 and C4
      pending_ = known_ = half_ = false;
      strange_ = strange_ || strange;
    }
    [[nodiscard]] constexpr bool adds() noexcept {
      settle();
      return place_ && (unit_ || plural_ || (strange_ && !signing_));
    }

  private:
    constexpr void settle() noexcept {
      unit_ = unit_ || pending_;
      pending_ = false;
    }
  };
  /// Returns true for "only" or "no" after a leaf and before the end of what is said of it: H1-3 only, H4 no.
  [[nodiscard]] constexpr bool is_only(TokenCursor const& c, std::string_view w, std::uint32_t to) const {
    if (!equal_in_any_case(w, "only") && !equal_in_any_case(w, "no")) return false;
    auto const next = cursor(c.token.from + w.size(), to);
    return next.ended() || is_separator(next.token);
  }
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
    if (is_harmless(w))
      said.remark = true;
    else if (!is_joining(w))
      said.other = true;
    return false;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
