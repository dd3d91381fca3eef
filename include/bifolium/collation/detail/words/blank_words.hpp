// SPDX-License-Identifier: MIT
/// Words that describe leaves as blank: "K8 blank", "A1 blank, K7,8 blank", "last two leaves blank", "with the final
/// blank K8". A copy that has lost a blank has lost no text, so it is useful to know which leaves are blank. All words
/// may be in capitals or small letters.
///
///   blanks  = [ is ] , called blank | { leaf , words , separators } , phrase , { separators , phrase }
///           , [ separators , words ] ;
///   phrase  = [ introduction ] , ( [ "the" ] , called blank , named , { separators , named }
///           | named , { [ separators ] , [ is ] , named } , [ separators ] , [ is ] , called blank , [ end ] ) ;
///   introduction = ( "with" | "incl" | "including" | "includes" ) , [ "." ] ;
///   named   = counted | ( leaf | range ) , [ "verso" | "recto" ] ;
///   counted = [ "the" ] , ( "first" | "last" | "final" ) , [ number ] , [ leaf word ] ;
///   is      = ( verb | "both" | "all" | "a" | "probably" | "prob." | "perhaps" | "presumably" | "presumed" | "possibly"
///           | "apparently" | "likely" | "en" ) , [ is ] ;
///   verb    = "is" | "are" | "was" | "were" | "being" | "ist" | "sind" | "est" | "sont" | "è" | "sono" | "es" | "son"
///           | "está" | "están" | "zijn" | "sunt" ;
///   called blank = [ "(" | "[" ] , [ is ] , blank word , [ but for ] , [ ")" | "]" ] ;
///   blank word = ( "blank" | "blanks" | "bl" | blank in another language ) , { "?" | "." } , [ leaf word ] ;
///   but for = ( "but" | "except" ) , "for" , [ "the" | "a" | "its" ] , ( "signature" | "signatures" ) , [ mark ] ;
///   end     = "and" , ( "genuine" | "present" | "original" )
///           | leaf , { separators , leaf } ;                    (* after counted leaves only: each is named *)
///   leaf word  = "leaf" | "leaves" ;
///   separators = { "," | "." | ";" | ":" | "&" | "+" | "/" } , [ "and" ] ;
///
/// A blank word alone is said of the leaf that is deleted before it: (−K8, blank); with "both" or as "blanks", of two
/// leaves. A leaf is blank although its signature is printed on it. A remark on a leaf may come before the phrases: A1
/// title, A8 blank. In "the final blank K8" one leaf is counted and then named, and only the name is taken: with "the
/// last two blanks K7, K8" there must be two names.
#pragma once

#include <bifolium/collation/detail/scan/leaf_reader.hpp>
#include <bifolium/collation/detail/scan/small_list.hpp>
#include <bifolium/leaf/leaf_words.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// Returns true if one of the words means blank.
[[nodiscard]] constexpr bool has_blank_word(std::string_view words) noexcept {
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (!is_latin_letter(words[i])) continue;
    auto const word = word_at(words, i);
    if (is_blank_word(word)) return true;
    i += word.size(); // no letter follows a word
  }
  return false;
}

/// A leaf that the words name; or a leaf counted from the end or the beginning of the gathering.
struct BlankNamed {
  bool gathering_named{};
  SignatureKey gathering{};
  int leaf{}; ///< from 1; below 0 it counts from the end: -1 is the last
  /// true for "first leaf", which may be that of the gathering or of the book if several come before the words.
  bool first{};
};
/// What words say about blank leaves.
enum class BlanksSaid : std::uint8_t {
  unclear, ///< nothing, or they are not understood
  leaves,  ///< which leaves, or which pages, are blank
  alone,   ///< "blank" and no leaf: the leaf before the words is meant
  both     ///< "both blank": the two leaves before the words are meant
};

/// Reads the words of a note.
class BlankWords {
  std::string_view words_;
  Letters letters_;
  TokenCursor c_;
  BlankNamed last_{}; // the last leaf that was named
  // leaves counted from the beginning and the end, which are added at the end of a phrase if no names replace them; and
  // how many they are together
  int first_counted_{}, last_counted_{}, counted_{};
  bool plural_{};                // the last blank word was a plural, or "blank leaves"
  bool plus_{};                  // a plus was the last separator
  std::size_t begin_{}, rest_{}; // where the phrases begin, and the words after them

  /// Returns the word at this position; empty if there is none.
  [[nodiscard]] constexpr std::string_view word() const {
    return c_.at(TokenKind::letter) ? word_at(words_, c_.token.from) : std::string_view{};
  }
  constexpr void after(std::string_view word) { c_ = TokenCursor{words_, c_.token.from + word.size()}; }
  constexpr bool take(std::string_view one) {
    if (!c_.at(TokenKind::letter) || small_letter(static_cast<char>(c_.token.value)) != one[0]) return false;
    auto const w = word();
    if (!equal_in_any_case(w, one)) return false;
    after(w);
    return true;
  }
  /// Takes any of these words, as often as they come.
  template <std::size_t N> constexpr void skip(std::string_view const (&any)[N]) {
    for (auto w = word(); !w.empty(); w = word()) {
      bool known = false;
      for (auto const& one : any) known = known || equal_in_any_case(w, one);
      if (!known) return;
      after(w);
    }
  }
  static constexpr std::string_view introductions[]{"with"sv, "incl"sv, "including"sv, "includes"sv};
  static constexpr std::string_view leaf_words[]{"leaf"sv, "leaves"sv};
  static constexpr std::string_view articles[]{"the"sv, "a"sv, "its"sv};
  /// Takes words between a leaf and what is said of it: is probably a.
  constexpr void skip_links() {
    for (;;) {
      auto const link = c_.ended() ? std::string_view{} : linking_word_at(words_, c_.token.from);
      auto const w = link.empty() ? word() : link;
      bool const doubting = link.empty() && is_doubting_word(w);
      if (link.empty() && !doubting) return;
      after(w);
      if (doubting && c_.touches(TokenKind::point)) c_.take(); // prob.
    }
  }
  /// Takes a blank word with the question mark or full point after it, and "leaf" or "leaves"; perhaps in brackets.
  constexpr bool blank() {
    auto const before = c_;
    bool const round = c_.at(TokenKind::open_round), square = c_.at(TokenKind::open_square);
    if (round || square) c_.take(), skip_links();
    auto const w = word();
    if (!is_blank_word(w)) return c_ = before, false;
    after(w);
    while (c_.at(TokenKind::question) || (c_.at(TokenKind::point) && !c_.token.spaced)) c_.take();
    plural_ = is_plural_blank_word(w) || equal_in_any_case(word(), "leaves");
    skip(leaf_words);
    take_but_for();
    if (!round && !square) return true;
    if (!c_.at(round ? TokenKind::close_round : TokenKind::close_square)) return c_ = before, false;
    c_.take();
    return true;
  }
  /// Takes "but for signature A", which leaves a leaf blank. Other words after "but" do not: they stay.
  constexpr void take_but_for() {
    auto const before = c_;
    if (!take("but") && !take("except")) return;
    bool const taken = take("for") && (skip(articles), take("signature") || take("signatures"));
    bool const quoted = c_.at(TokenKind::quote);
    if (taken && quoted) c_.take();
    if (taken && word().size() <= Signature::longest_text) after(word());
    if (taken && c_.touches(TokenKind::figure)) c_.take();
    if (taken && quoted && c_.at(TokenKind::quote)) c_.take();
    bool const ends =
        c_.ended() || is_separator(c_.token) || c_.at(TokenKind::close_round) || c_.at(TokenKind::close_square);
    if (!taken || !ends) c_ = before;
  }
  /// Reads "last leaf", "last two leaves", "first leaf" or "final leaf"; also "last" alone.
  constexpr bool counted() {
    if (!c_.at(TokenKind::letter)) return false;
    TextCursor text{words_, c_.token.from};
    auto const found = take_counted_leaves(text);
    if (!found) return false;
    c_ = TokenCursor{words_, text.at()};
    auto& counted = found->first ? first_counted_ : last_counted_;
    if (found->leaves > counted) counted = found->leaves;
    counted_ += found->leaves;
    return true;
  }
  /// The leaves of a phrase, until it is understood.
  using Named = SmallList<BlankNamed, 8>;

  /// Adds the leaves that are only counted.
  constexpr void add_counted(Named& all) const {
    for (int n = 1; n <= first_counted_; ++n) all.push_back({false, {}, n, true});
    for (int n = 1; n <= last_counted_; ++n) all.push_back({false, {}, -n, false});
  }
  constexpr bool leaf(Named& all) {
    LeafInWords const names{words_, letters_};
    auto const name = names.find(c_.token.from);
    if (!name.found || name.whole || name.leaf < 1) return false;
    if (plus_ && !name.gathering_named && name.leaf <= 2) return false; // A1 + 2 blank: two leaves may be inserted
    c_ = TokenCursor{words_, name.end};
    BlankNamed one{name.gathering_named, name.key, name.leaf};
    if (!name.gathering_named) one.gathering_named = last_.gathering_named, one.gathering = last_.gathering;
    last_ = one;
    bool const page = name.of_page || take("verso") || take("recto");
    if (!page) all.push_back(one); // K8v blank: one page is blank, and not the leaf
    auto const last = names.last_of_range(c_, name);
    // a dash that remains is not understood; nor is K6v-8r, which begins in the middle of a leaf
    if (!last.found || last.leaf > name.leaf + thick_gathering || page) return true;
    c_ = TokenCursor{words_, last.end};
    for (one.leaf = name.leaf + 1; one.leaf <= last.leaf; ++one.leaf) all.push_back(one);
    return true;
  }
  [[nodiscard]] static constexpr bool is_and(Token const& t) noexcept {
    return t.is(TokenKind::symbol) && t.value == '&';
  }
  constexpr bool separator() {
    bool found = false;
    plus_ = false;
    for (; is_separator(c_.token) || c_.touches(TokenKind::colon) || is_and(c_.token) || c_.at(TokenKind::plus) ||
           c_.touches(TokenKind::slash);
         c_.take())
      plus_ = c_.at(TokenKind::plus), found = true;
    return take("and") || found;
  }
  /// Reads the names of leaves that were counted before: the final blank K8. Returns false if they are fewer.
  constexpr bool names_of_counted(Named& all) {
    auto const enough = all.size() + static_cast<std::size_t>(counted_);
    while (leaf(all) && all.size() < enough && separator()) continue;
    return all.size() == enough;
  }
  constexpr BlanksSaid phrase(Named& all) {
    first_counted_ = last_counted_ = counted_ = 0;
    skip(introductions);
    if (c_.at(TokenKind::point)) c_.take();
    auto const before = c_;
    static_cast<void>(take("the"));
    auto const begin = c_;
    if (take("both") && blank() && c_.ended()) return BlanksSaid::both;
    c_ = begin;
    skip_links();
    if (blank()) {
      if (c_.ended()) return plural_ ? BlanksSaid::both : BlanksSaid::alone;
      do
        if (!counted() && !leaf(all)) return BlanksSaid::unclear;
      while (separator());
      add_counted(all);
      return BlanksSaid::leaves;
    }
    c_ = before;
    for (;;) {
      if (!counted() && !leaf(all)) return BlanksSaid::unclear;
      bool const separated = separator();
      skip_links();
      if (blank()) break;
      if (!separated) return BlanksSaid::unclear;
    }
    auto const after = c_;
    bool const praised = take("and") && (take("genuine") || take("present") || take("original"));
    if (!praised) c_ = after;
    bool const named = !praised && counted_ > 0 && LeafInWords{words_, letters_}.find(c_.token.from).leaf > 0;
    if (named) return names_of_counted(all) ? BlanksSaid::leaves : BlanksSaid::unclear;
    add_counted(all);
    return BlanksSaid::leaves;
  }

  /// Takes a remark on a leaf that does not say that it is blank, and the separators after it: A1 title. Returns false
  /// if there is none.
  constexpr bool take_remark() {
    auto const name = LeafInWords{words_, letters_}.find(c_.token.from);
    auto c = TokenCursor{words_, name.end};
    if (!name.found || name.whole || !c.at(TokenKind::letter) || !c.token.spaced) return false;
    if (c_ = c, word().size() < 2 || equal_in_any_case(word(), "and")) return false;
    for (; !c_.ended() && !c_.at(TokenKind::comma) && !c_.at(TokenKind::semicolon); c_.take())
      if (is_blank_word(word())) return false;
    return separator() && !c_.ended();
  }
  /// Takes a phrase and calls `add` with its leaves. If the phrase names none, or is not understood, takes nothing.
  template <class Add> constexpr BlanksSaid whole_phrase(Add& add) {
    auto trial = *this;
    Named named;
    auto const said = trial.phrase(named);
    if (said != BlanksSaid::leaves) return said;
    *this = trial;
    for (std::size_t i = 0; i < named.size(); ++i) add(named[i]);
    return said;
  }
  /// Takes the first phrase that is understood.
  template <class Add> constexpr BlanksSaid first_phrase(Add& add) {
    for (begin_ = 0;; begin_ = c_.token.from) {
      auto const said = whole_phrase(add);
      if (said != BlanksSaid::unclear || !take_remark()) return said;
    }
  }

public:
  constexpr BlankWords(std::string_view words, Letters letters) : words_{words}, letters_{letters}, c_{words} {}

  /// Calls `add` with each leaf that the words call blank. If the result is `unclear`, the leaves have no meaning.
  /// Other words may follow: K8 blank; A2 missigned.
  template <class Add> constexpr BlanksSaid read(Add add) {
    rest_ = words_.size();
    auto const first = first_phrase(add);
    if (first != BlanksSaid::leaves) return begin_ == 0 ? first : BlanksSaid::unclear;
    while (separator()) {
      auto const begin = c_.token.from;
      if (whole_phrase(add) == BlanksSaid::leaves) continue;
      rest_ = begin;
      return has_blank_word(words_.substr(begin)) ? BlanksSaid::unclear : BlanksSaid::leaves;
    }
    return c_.ended() ? BlanksSaid::leaves : BlanksSaid::unclear;
  }
  /// Returns the words before the phrases that `read` understood.
  [[nodiscard]] constexpr std::string_view words_before() const { return words_.substr(0, begin_); }
  /// Returns the words after them.
  [[nodiscard]] constexpr std::string_view words_after() const { return words_.substr(rest_); }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
