// SPDX-License-Identifier: MIT
/// Words that describe leaves as blank: "K8 blank", "A1 blank, K7,8 blank", "last two leaves blank", "with the final
/// blank K8". A copy that has lost a blank has lost no text, so it is useful to know which leaves are blank.
///
///   blanks = phrase , { separator , phrase } ;
///   phrase = [ introduction ] , ( "blank" , [ "leaf" | "leaves" ] , [ leaves ]
///          | leaves , [ separator ] , is , "blank" , [ end ] ) ;
///   end    = leaf | "and" , ( "genuine" | "present" | "original" ) ;
///   introduction = ( "with" | "incl." | "including" | "includes" ) , [ "the" ] ;
///   leaves = ( leaf | counted ) , { separator , ( leaf | counted ) } ;
///   counted = [ "the" ] , ( "first" | "last" | "final" ) , [ number ] , [ "leaf" | "leaves" ] ;
///   is     = { "is" | "are" | "both" | "all" | "a" | "probably" | "perhaps" | "presumably" } ;
///
/// "blank" alone is said of the leaf before it: (−K8, blank).
#pragma once

#include <bifolium/collation/detail/leaf_reader.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// A leaf that the words name; or leaves counted from the end or the beginning of the gathering.
struct BlankNamed {
  bool gathering_named{};
  SignatureKey gathering{};
  int leaf{}; ///< from 1; below 0 it counts from the end: -1 is the last
  /// true for "first leaf", which may be that of the gathering or of the book if several come before the words.
  bool first{};
};

/// Reads the words of a note.
class BlankWords {
  std::string_view words_;
  Letters letters_;
  TokenCursor c_;
  BlankNamed last_{}; // the last leaf that was named

  /// Returns the word at this position; empty if there is none.
  [[nodiscard]] constexpr std::string_view word() const {
    return c_.at(TokenKind::letter) ? word_at(words_, c_.token.from) : std::string_view{};
  }
  constexpr void after(std::string_view word) { c_ = TokenCursor{words_, c_.token.from + word.size()}; }
  constexpr bool take(std::string_view one) {
    auto const w = word();
    if (w != one) return false;
    after(w);
    return true;
  }
  /// Takes any of these words, as often as they come.
  template <std::size_t N> constexpr void skip(std::string_view const (&any)[N]) {
    for (auto w = word(); !w.empty(); w = word()) {
      bool known = false;
      for (auto const one : any) known = known || w == one;
      if (!known) return;
      after(w);
    }
  }
  static constexpr std::string_view introductions[]{"with"sv, "incl"sv, "including"sv, "includes"sv};
  static constexpr std::string_view verbs[]{"is"sv, "are"sv,      "both"sv,    "all"sv,
                                            "a"sv,  "probably"sv, "perhaps"sv, "presumably"sv};
  static constexpr std::string_view leaf_words[]{"leaf"sv, "leaves"sv};
  /// Takes "blank", "blanks", "bl.", with the question mark after it.
  constexpr bool blank() {
    auto const w = word();
    if (w != "blank" && w != "blanks" && w != "bl") return false;
    after(w);
    while (c_.at(TokenKind::question) || c_.at(TokenKind::point)) c_.take();
    return true;
  }
  /// Reads "last leaf", "last two leaves", "first leaf" or "final leaf"; also "last" alone.
  template <class Add> constexpr bool counted(Add&& add) {
    auto const before = c_;
    static_cast<void>(take("the"));
    auto const w = word();
    bool const last = w == "last" || w == "final", first = w == "first";
    if (!last && !first) return c_ = before, false;
    after(w);
    int leaves = 1;
    constexpr std::string_view numbers[]{"one", "two", "three", "four"};
    for (int n = 0; n < 4; ++n)
      if (take(numbers[n])) leaves = n + 1;
    skip(leaf_words);
    for (int n = 1; n <= leaves; ++n) add(BlankNamed{false, {}, last ? -n : n, first});
    return true;
  }
  template <class Add> constexpr bool leaf(Add&& add) {
    LeafInWords const names{words_, letters_};
    auto const name = names.find(c_.token.from);
    if (!name.found || name.whole || name.leaf < 1) return false;
    c_ = TokenCursor{words_, name.end};
    BlankNamed one{name.gathering_named, name.key, name.leaf};
    if (!name.gathering_named) one.gathering_named = last_.gathering_named, one.gathering = last_.gathering;
    last_ = one;
    bool const page = name.of_page || take("verso") || take("recto");
    if (!page) add(one); // K8v blank: one page is blank, and not the leaf
    if (!c_.at(TokenKind::dash)) return true;
    auto to = c_;
    to.take();
    auto const last = to.is_flat_figure() ? names.find(to.token.from) : NamedLeaf{};
    if (!last.found || last.gathering_named || last.leaf > name.leaf + thick_gathering) return true;
    c_ = TokenCursor{words_, last.end};
    for (one.leaf = name.leaf + 1; one.leaf <= last.leaf; ++one.leaf) add(one);
    return true;
  }
  constexpr bool separator() {
    bool found = false;
    for (; is_separator(c_.token) || (c_.at(TokenKind::symbol) && c_.token.value == '&'); c_.take()) found = true;
    return take("and") || found;
  }
  template <class Add> constexpr bool phrase(Add&& add) {
    skip(introductions);
    if (c_.at(TokenKind::point)) c_.take();
    auto const before = c_;
    static_cast<void>(take("the"));
    if (blank()) {
      skip(leaf_words);
      if (c_.ended()) return true;
      while (counted(add) || leaf(add))
        if (!separator()) return true;
      return false;
    }
    c_ = before;
    for (;;) {
      if (!counted(add) && !leaf(add)) return false;
      bool const separated = separator();
      skip(verbs);
      if (blank()) break;
      if (!separated) return false;
    }
    auto const after = c_;
    if (take("and") && (take("genuine") || take("present") || take("original"))) return true;
    c_ = after;
    static_cast<void>(leaf(add)); // the final blank K8
    return true;
  }

public:
  constexpr BlankWords(std::string_view words, Letters letters) : words_{words}, letters_{letters}, c_{words} {}

  /// Calls `add` with each leaf that the words call blank. Returns false if the words are not understood, so that the leaves
  /// have no meaning. Other words may follow: K8 blank; A2 missigned.
  template <class Add> constexpr bool read(Add add) {
    if (!phrase(add)) return false;
    while (separator()) {
      auto const begin = c_;
      auto trial = *this;
      if (!trial.phrase([](BlankNamed const&) {})) return words_.find("blank"sv, begin.token.from) == words_.npos;
      static_cast<void>(phrase(add));
    }
    return c_.ended();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
