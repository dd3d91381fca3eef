// SPDX-License-Identifier: MIT
/// Words for a pair of conjugate leaves, or a sheet, by its place in the gathering: the inner bifolium of B, the outer sheet
/// of C (common practice, no source). A pair that is lost leaves no trace, so catalogues name it as one thing. Which leaves
/// a sheet has, only the format says, which a list of leaves does not know: in a quarto the outer sheet of eight leaves
/// has the first two and the last two, in a folio the first and the last.
#pragma once

#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words for the middle of a gathering: English, German, French, Italian, Spanish, Dutch.
inline constexpr char const* inmost_words[]{
    "inner",   "inmost",  "innermost", "central",   "middle",          "innere",     "inneres",
    "inneren", "innerer", "mittleres", "intérieur", "inte\u0301rieur", "intérieure", "inte\u0301rieure",
    "interno", "interna", "centrale",  "interior",  "binnenste"};
/// Words for the outside of a gathering, in the same languages.
inline constexpr char const* outmost_words[]{
    "outer",     "outmost",         "outermost",  "äußere",           "äußeres", "äußeren", "äußerer",  "äusseres",
    "extérieur", "exte\u0301rieur", "extérieure", "exte\u0301rieure", "esterno", "esterna", "exterior", "buitenste"};
/// Words for a pair of conjugate leaves.
inline constexpr char const* pair_nouns[]{"bifolium", "bifolio", "Doppelblatt", "bifeuillet", "bifolia"};
/// Words for the leaf that is one piece with another.
inline constexpr char const* conjugate_nouns[]{"conjugate", "conjugates", "Gegenblatt",
                                               "conjugué",  "coniugata",  "conjugada"};
/// Words for "its" before those.
inline constexpr char const* words_for_its[]{"its", "their", "sein", "dessen", "son", "sua", "su"};
/// Words before the first leaf that is wanting, if all after it are: ab K5, from K5 on.
inline constexpr char const* words_for_from[]{"ab", "from", "vanaf", "desde"};
/// Words after it: from K5 on.
inline constexpr char const* words_for_on[]{"on", "onwards", "onward", "an", "af"};
/// Words for a sheet, or a part of one.
inline constexpr char const* sheet_nouns[]{"sheet",   "sheets", "half-sheet", "half-sheets", "Bogen",
                                           "feuille", "foglio", "pliego",     "vel"};
/// Words for "of" before the name of a gathering.
inline constexpr char const* words_before_gathering[]{"of", "in", "von", "der", "de", "du", "des", "di", "del", "van"};

/// A pair of conjugate leaves of a gathering, or a sheet of it, by its place.
struct PairOfGathering {
  bool inner{};               ///< true for the inmost, false for the outmost
  bool sheet{};               ///< true for a sheet, of which it is not known how many leaves it has
  std::string_view gathering; ///< the name of the gathering
};
/// Takes the name of a gathering after leaves that are of it: of B, du cahier B, in gathering B. Returns an empty text if
/// there is none.
[[nodiscard]] inline std::string_view take_gathering_after(TextCursor& cursor, IdealCopy const& book) {
  auto c = cursor;
  for (int words = 0; words < 4; ++words) {
    c.take_blanks();
    auto const word = c.take_until(is_between_items);
    if (words > 0 && names_gathering(book, word)) return cursor = c, word;
    bool const beside =
        is_row(word, words_before_gathering) || is_noun(without_point(word), gathering_noun_rows, NounUse::in_list);
    if (!beside && !(words > 0 && is_article(word))) return {};
  }
  return {};
}
/// Takes "inner bifolium of B", "outer sheet of gathering B", "bifolium intérieur du cahier B".
[[nodiscard]] inline std::optional<PairOfGathering> take_pair_of_gathering(TextCursor& cursor, IdealCopy const& book) {
  auto c = cursor;
  auto const word = [&] {
    c.take_blanks();
    return c.take_until(is_between_items);
  };
  auto first = word();
  if (is_article(first)) first = word();
  bool const noun_first = is_row(first, pair_nouns) || is_row(first, sheet_nouns); // bifolium intérieur
  if (!noun_first && !is_row(first, inmost_words) && !is_row(first, outmost_words)) return std::nullopt;
  auto const second = word();
  auto const place = noun_first ? second : first, noun = noun_first ? first : second;
  bool const is_inner = is_row(place, inmost_words), is_sheet = is_row(noun, sheet_nouns);
  if (!is_inner && !is_row(place, outmost_words)) return std::nullopt;
  if (!is_sheet && !is_row(noun, pair_nouns)) return std::nullopt;
  auto const name = take_gathering_after(c, book);
  if (name.empty()) return std::nullopt;
  cursor = c;
  return PairOfGathering{is_inner, is_sheet, name};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
