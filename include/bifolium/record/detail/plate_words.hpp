// SPDX-License-Identifier: MIT
/// The words for plates in statements of pages, and the words that say whether the pages count them. Plates are counted
/// in leaves unless pages are named, and most languages build the word from the unit: leaves of plates, f. de pl.,
/// h. de lám., carte di tav.
///
/// Rules: DCRMR 6.21.426-427 (leaves of plates, folded). `incl.` and the words of other languages: common practice, no
/// source.
#pragma once

#include <bifolium/record/detail/page_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Takes all words that say how plates are folded, engraved or inserted, with the blanks around them.
inline void take_words_of_plates(TextCursor& cursor, bool& folded) {
  constexpr char const* other_words[]{"engraved", "engr.", "unnumbered", "numbered", "double",     "unn.",
                                      "gest.",    "f.t.",  "h.t.",       "h.-t.",    "hors texte", "fuori testo"};
  cursor.take_blanks();
  for (bool more = true; more;) {
    auto const of_fold = take_folded_word(cursor);
    folded = folded || of_fold;
    more = of_fold || take_one_of(cursor, other_words);
    if (more) cursor.take_blanks();
  }
}

/// Takes a word for plates alone.
inline bool take_plate_noun(TextCursor& cursor) {
  constexpr char const* nouns[]{"plates",       "plate",       "planches",   "planche",  "pls.",       "pl.",
                                "Kupfertafeln", "Kupfertafel", "Kupfertaf.", "Kupfert.", "Falttafeln", "Falttaf.",
                                "Tafeln",       "Tafel",       "Tfln.",      "Taf.",     "tavole",     "tavola",
                                "tavv.",        "tav.",        "láminas",    "lámina",   "láms.",      "lám."};
  return take_one_of(cursor, nouns);
}

/// Takes words for plates after their number, `folded leaves of plates`, with the words for their folding. No value if
/// none follow.
inline std::optional<PageUnit> take_plates(TextCursor& cursor, bool& folded) {
  constexpr char const* prepositions[]{"of", "de", "di"};
  constexpr char const* plates_after_unit[]{"Kupfertafeln", "Kupfertaf.", "Kupfert.", "Tafeln",
                                            "Taf.",         "tabl.",      "tab."};
  auto look = cursor;
  bool folds = false;
  take_words_of_plates(look, folds);
  auto unit = PageUnit::leaves;
  if (!take_plate_noun(look)) {
    auto const* const counted = take_page_unit(look);
    if (counted == nullptr || (counted->unit != PageUnit::leaves && counted->unit != PageUnit::pages)) return {};
    unit = counted->unit;
    look.take_blanks();
    bool const preposition = take_one_of(look, prepositions);
    look.take_blanks();
    // `12 Bl. Kupfert.` are plates, while `205 p. plates` has plates after the pages
    if (preposition ? !take_plate_noun(look) : unit != PageUnit::leaves || !take_one_of(look, plates_after_unit))
      return {};
  }
  cursor = look;
  take_words_of_plates(look, folds);
  if (look.at() > cursor.at() + 1) cursor = look;
  folded = folded || folds;
  return unit;
}

/// Takes a word for a frontispiece, which is a plate.
inline bool take_frontispiece(TextCursor& cursor) {
  constexpr char const* words[]{"frontispiece", "Frontispiece", "frontispice", "Frontispice", "frontespizio",
                                "Frontispiz",   "frontisp.",    "Frontisp.",   "front.",      "Front."};
  return take_one_of(cursor, words);
}

/// Takes a word before plates that says whether the pages count them: true for `incl.`, false for `excluding`.
inline std::optional<bool> take_inclusion(TextCursor& cursor) {
  constexpr char const* apart[]{"excluding",         "exclusive of",   "excl.",           "not including",
                                "not counting",      "not incl.",      "non comprises",   "non compris",
                                "sans compter",      "ausschließlich", "ausschliesslich", "exkl.",
                                "nicht inbegriffen", "escluse",        "esclusi",         "excluidas"};
  constexpr char const* counted[]{
      "including",      "inclusive of",    "inclusive", "incl.",     "incl",        "inclus.",   "y compris",
      "comprises",      "compris",         "compr.",    "dont",      "inbegriffen", "inklusive", "inkl.",
      "einschließlich", "einschliesslich", "einschl.",  "darunter",  "davon",       "comprese",  "compresi",
      "incluse",        "inclusi",         "incluidas", "incluidos", "inclusas",    "inclusos",  "di cui"};
  if (take_one_of(cursor, apart)) return false;
  if (take_one_of(cursor, counted)) return true;
  return std::nullopt;
}

/// Takes words after plates that say whether the pages count them: `included in the pagination`, `comprese nella
/// paginazione`, `not included`.
inline std::optional<bool> take_inclusion_after(TextCursor& cursor) {
  constexpr char const* apart[]{"not included", "not counted",  "non comprises",    "non compris",
                                "non comprese", "non compresi", "nicht mitgezählt", "nicht inbegriffen"};
  constexpr char const* counted[]{"included",  "counted",  "paged",      "comprises",      "compris",
                                  "comprese",  "compresi", "incluse",    "inclusi",        "incluidas",
                                  "incluidos", "inclusas", "mitgezählt", "eingeschlossen", "inbegriffen"};
  constexpr char const* prepositions[]{"in", "dans", "nella", "nel", "en", "into"};
  auto look = cursor;
  look.take_blanks();
  if (look.take(',')) look.take_blanks();
  bool const parenthesis = look.take('(');
  bool const is_apart = take_one_of(look, apart);
  if (!is_apart && !take_one_of(look, counted)) return std::nullopt;
  look.take_blanks();
  if (take_one_of(look, prepositions)) // the pagination, la pagination, der Zählung
    look.take_until([](char32_t c) { return c == ',' || c == ';' || c == ':' || c == '(' || c == ')' || c == '['; });
  if (parenthesis && !look.take(')')) return std::nullopt;
  cursor = look;
  return !is_apart;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
