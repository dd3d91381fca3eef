// SPDX-License-Identifier: MIT
/// Words that say that leaves are cancels, put in the place of others: (A1 a cancel), (A1 and A8 are cancels),
/// (cancel A1). They mean what the sign ± means. "Cancelled" is said of the leaf that was cut out, and leaves open
/// whether another was put in its place.
///
///   cancels     = ( [ "with" ] , ( leaf | range ) , { joint , ( leaf | range ) } , [ is ] , cancel word
///                 | cancel word , ( leaf | range ) , { joint , ( leaf | range ) } ) , [ "?" ] ;
///   cancel word = "cancel" | "cancellans" | "cancels" | "cancellantia" | ( "cancelled" | "canceled" ) , [ "and replaced" ] ;
///
/// Each list begins with a leaf whose gathering is named: "6 cancels" is a number of leaves. "A1, B2 a cancel" may be
/// said of B2 alone, and is not read.
#pragma once

#include <bifolium/collation/detail/scan/leaf_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What words say about leaves that are cancels.
struct CancelWords {
  CancelWord said{};                        ///< the word; `none` if there are no such words
  bool doubtful{};                          ///< true for "probably", or a question mark
  std::uint32_t leaves_from{}, leaves_to{}; ///< the list of the leaves
  std::uint32_t end{};                      ///< the position after the words
};

/// Reads words about cancels in the contents of a parenthesis.
class CancelReader : LeafReader {
public:
  constexpr CancelReader(std::string_view text, Dialect dialect) noexcept : LeafReader{text, dialect} {}

  /// Reads the words at the cursor, before byte `end`. They must go on to a comma, a semicolon or the end.
  [[nodiscard]] constexpr CancelWords find(TokenCursor c, std::uint32_t end) const {
    if (word(c) == "with") c = after(c, end);
    auto const before = cancel_word(word(c));
    if (before == CancelWord::none) return list_and_words(c, end);
    c = after(c, end);
    for (int most = most_leaves; most > 0; --most) // cancel A1, A8 torn: A1 alone
      if (auto const found = words_and_list(c, end, most, before); found.said != CancelWord::none) return found;
    return {};
  }

private:
  static constexpr int most_leaves = 16; // of a list, because each leaf of a longer one may ask again

  /// Reads A1 and A8 are cancels.
  [[nodiscard]] constexpr CancelWords list_and_words(TokenCursor c, std::uint32_t end) const {
    CancelWords found;
    found.leaves_from = c.token.from;
    int const leaves = take_list(c, end, most_leaves + 1, found.leaves_to);
    if (leaves == 0 || leaves > most_leaves) return {};
    found.said = take_words(c, end, leaves, found);
    return ended(c, found);
  }
  /// Reads A1, A8 after "cancels".
  [[nodiscard]] constexpr CancelWords words_and_list(TokenCursor c, std::uint32_t end, int most,
                                                     CancelWord said) const {
    CancelWords found;
    found.leaves_from = c.token.from;
    if (take_list(c, end, most, found.leaves_to) == 0) return {};
    found.said = said;
    found.end = found.leaves_to;
    return ended(c, found);
  }
  /// Returns what was found if it goes on to a comma, a semicolon or the end.
  [[nodiscard]] static constexpr CancelWords ended(TokenCursor c, CancelWords found) noexcept {
    if (c.at(TokenKind::question)) found.doubtful = true, found.end = c.token.to, c.take();
    if (c.at(TokenKind::point) && c.ahead().is(TokenKind::end)) c.take();
    bool const list = c.touches(TokenKind::comma) && c.ahead().is(TokenKind::figure) && !c.ahead().spaced; // A1,2
    return c.ended() || (c.at(TokenKind::comma) && !list) || c.at(TokenKind::semicolon) ? found : CancelWords{};
  }
  [[nodiscard]] constexpr TokenCursor after(TokenCursor const& c, std::uint32_t end) const noexcept {
    return cursor(c.token.from + word(c).size(), end);
  }
  /// Takes at most so many leaves. Returns how many there are, or 0 if the list does not begin with a leaf that has a
  /// name. `last` is the position after the last of them.
  [[nodiscard]] constexpr int take_list(TokenCursor& c, std::uint32_t end, int most, std::uint32_t& last) const {
    int leaves = 0;
    while (leaves < most) {
      auto next = c;
      if (leaves > 0 && !take_joint(next, end)) break;
      auto const name = leaf_name(next, end);
      bool const words = name.key.mark() == Mark::name && at(name.key.text_from - 1U) != '['; // not used7
      bool const leaf = name.found && !name.whole && name.leaf > 0 && !name.of_page && !words;
      if (!leaf || (leaves == 0 && !name.gathering_named)) break;
      ++leaves;
      last = name.end;
      c = cursor(name.end, end);
      if (auto const to = range_end(c, end, name); to.found) last = to.end, c = cursor(to.end, end), ++leaves;
    }
    return leaves;
  }
  /// Takes the words after the leaves. Returns what they say.
  [[nodiscard]] constexpr CancelWord take_words(TokenCursor& c, std::uint32_t end, int leaves,
                                                CancelWords& found) const {
    bool one = false;
    for (auto w = word(c); !w.empty(); w = word(c)) {
      auto const to = c.token.from + static_cast<std::uint32_t>(w.size());
      auto const said = cancel_word(w);
      if (said == CancelWord::none && !is_linking_word(w) && !is_doubting_word(w)) return CancelWord::none;
      one = one || equal_in_any_case(w, "a") || said == CancelWord::cancel;
      found.doubtful = found.doubtful || is_doubting_word(w);
      c = after(c, end);
      if (said == CancelWord::none) continue;
      found.end = to;
      if (said == CancelWord::cancelled && word(c) == "and")
        if (auto const next = after(c, end); word(next) == "replaced") {
          found.end = next.token.from + 8U, c = after(next, end);
          return CancelWord::cancels;
        }
      return one && leaves > 1 ? CancelWord::none : said;
    }
    return CancelWord::none;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
