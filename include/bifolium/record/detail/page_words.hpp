// SPDX-License-Identifier: MIT
/// The words of statements of pages beside their units: whether pages bear numbers, corrections, volumes. A longer word
/// comes before its beginning.
///
/// Rules: DCRMR 6.21 (volumes), the rules before it (v., i.e.). The words of other languages (n. ch., Bde., recte): common
/// practice, no source.
#pragma once

#include <bifolium/core/about_words.hpp>
#include <bifolium/leaf/leaf_words.hpp>
#include <bifolium/leaf/roman.hpp>
#include <bifolium/record/detail/page_unit_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

struct NumberingWords {
  char const* words;
  bool unnumbered; ///< true if the pages bear no numbers
};
inline constexpr NumberingWords numbering_words[]{
    {"unnumbered", true},
    {"unnumb.", true},
    {"unnum.", true},
    {"unn.", true},
    {"unpaged", true},
    {"unpaginated", true},
    {"unfoliated", true},
    {"unsigned", true},
    {"not numbered", true},
    {"non chiffrés", true},
    {"non chiffrées", true},
    {"non ch.", true},
    {"n. ch.", true},
    {"n.ch.", true},
    {"non numerate", true},
    {"non num.", true},
    {"n. num.", true},
    {"n. n.", true},
    {"n.n.", true},
    {"nn.", true},
    {"s. num.", true},
    {"sin numerar", true},
    {"sin num.", true},
    {"s. n.", true},
    {"s.n.", true},
    {"nicht gezählte", true},
    {"nicht gez.", true},
    {"ungezählte", true},
    {"ungez.", true},
    {"unbezifferte", true},
    {"unn", true},
    {"nn", true},
    {"n. c.", true},
    {"n.c.", true},
    {"liminaires", true},
    {"liminaire", true},
    {"lim.", true},
    {"prélim.", true},
    {"prél.", true},
    {"bl.", true},
    {"bb.", true},
    {"b.", true},
    {"w.", true},
    {"foliated", false},
    {"paginated", false},
    {"paged", false},
    {"numbered", false},
    {"numb.", false},
    {"num.", false},
    {"numerate", false},
    {"chiffrés", false},
    {"chiffrées", false},
    {"ch.", false},
    {"gezählte", false},
    {"gez.", false},
    {"double", false},
};

/// Takes words between a number and its unit, or after the unit, that say whether pages bear numbers: `8 unnumbered
/// pages`, `2 ff. n. ch.`, `120 numb. l.`, `[1] blank leaf`. `unnumbered` becomes true where they bear none. The words for
/// blank are those of leaf/leaf_words.hpp; only here are they also cut to a letter.
constexpr bool take_numbering_words(TextCursor& cursor, bool& unnumbered) {
  auto blank = cursor;
  if (auto const word = blank.take_letters(); word.size() > 2 && is_small(word[0]) && is_blank_word(word)) {
    cursor = blank;
    return unnumbered = true;
  }
  if (begins_no_word(cursor.peek())) return false;
  for (auto const& row : numbering_words)
    if (cursor.take_listed(row.words)) {
      unnumbered = unnumbered || row.unnumbered;
      return true;
    }
  return false;
}

/// Takes the first word of a row of words that the text continues with.
template <std::size_t N> constexpr bool take_one_of(TextCursor& cursor, char const* const (&words)[N]) {
  if (begins_no_word(cursor.peek())) return false;
  for (char const* const word : words)
    if (cursor.take_listed(word)) return true;
  return false;
}
/// Takes a word for leaves that are folded, beside their number.
constexpr bool take_folded_word(TextCursor& cursor) {
  constexpr char const* words[]{"folded",     "folding", "fold.", "gefaltete", "gefalt.", "gef.",
                                "dépliantes", "dépl.",   "depl.", "ripieg.",   "pieg.",   "pleg."};
  return take_one_of(cursor, words);
}

/// Takes a word for `and` between numbers.
constexpr bool take_and(TextCursor& cursor) {
  if (begins_no_word(cursor.peek())) return false;
  for (std::string_view const word : {"and", "und", "et", "y", "e"})
    if (blank_at(cursor.rest(), word.size()) != 0 && cursor.take(word)) return true;
  return false;
}

/// Takes `i.e.` or a similar word before a corrected number. In brackets more words are corrections: 205 [ma 207].
constexpr bool take_correction_word(TextCursor& cursor, bool in_brackets = false) {
  if (cursor.take('=')) return true;
  if (begins_no_word(cursor.peek())) return false;
  if (in_brackets)
    for (char const* word :
         {"d.i.",  "d. i.",  "d.h.",    "d. h.",    "das ist",      "das heißt",      "vielmehr",  "richtig",
          "vere",  "verius", "ma",      "cioè",     "c.-à-d.",      "c'est-à-dire",   "es decir",  "sc.",
          "scil.", "really", "in fact", "actually", "misprint for", "misprinted for", "error for", "erroneously for"}) {
      auto look = cursor;
      if (!look.take_listed(word)) continue;
      look.take_blanks();
      if (!look.at_digit() && !roman_numeral(look.rest().substr(0, 40))) continue;
      cursor = look;
      return true;
    }
  for (char const* word : {"i.e.", "i. e.", "that is", "recte", "rectius", "sic, for", "sic for"})
    if (cursor.take_in_any_case(word)) {
      cursor.take(',');
      return true;
    }
  return false;
}

/// What is counted before the pages: volumes or sheets.
enum class Container : std::uint8_t { none, volumes, sheets };
constexpr Container take_container(TextCursor& cursor) {
  struct Row {
    char const* word;
    Container what;
  };
  if (begins_no_word(cursor.peek())) return Container::none;
  for (auto const& [word, what] : {Row{"volumes", Container::volumes},
                                   Row{"volume", Container::volumes},
                                   Row{"volumen", Container::volumes},
                                   Row{"volúmenes", Container::volumes},
                                   Row{"volumi", Container::volumes},
                                   Row{"volym", Container::volumes},
                                   Row{"vols.", Container::volumes},
                                   Row{"vols", Container::volumes},
                                   Row{"voll.", Container::volumes},
                                   Row{"vol.", Container::volumes},
                                   Row{"vol", Container::volumes},
                                   Row{"v.", Container::volumes},
                                   Row{"v", Container::volumes},
                                   Row{"tomes", Container::volumes},
                                   Row{"tome", Container::volumes},
                                   Row{"tomos", Container::volumes},
                                   Row{"tomo", Container::volumes},
                                   Row{"tomi", Container::volumes},
                                   Row{"t.", Container::volumes},
                                   Row{"Bände", Container::volumes},
                                   Row{"Bänden", Container::volumes},
                                   Row{"Bde.", Container::volumes},
                                   Row{"Bde", Container::volumes},
                                   Row{"Bdn.", Container::volumes},
                                   Row{"Band", Container::volumes},
                                   Row{"Bd.", Container::volumes},
                                   Row{"bd.", Container::volumes},
                                   Row{"Theile", Container::volumes},
                                   Row{"Theilen", Container::volumes},
                                   Row{"Theil", Container::volumes},
                                   Row{"Thle.", Container::volumes},
                                   Row{"Thl.", Container::volumes},
                                   Row{"Teile", Container::volumes},
                                   Row{"Teilen", Container::volumes},
                                   Row{"Teil", Container::volumes},
                                   Row{"Tle.", Container::volumes},
                                   Row{"Tle", Container::volumes},
                                   Row{"Tl.", Container::volumes},
                                   Row{"delen", Container::volumes},
                                   Row{"deel", Container::volumes},
                                   Row{"dln.", Container::volumes},
                                   Row{"dl.", Container::volumes},
                                   Row{"parties", Container::volumes},
                                   Row{"partie", Container::volumes},
                                   Row{"partes", Container::volumes},
                                   Row{"parte", Container::volumes},
                                   Row{"parti", Container::volumes},
                                   Row{"parts", Container::volumes},
                                   Row{"part", Container::volumes},
                                   Row{"pts.", Container::volumes},
                                   Row{"pts", Container::volumes},
                                   Row{"pt.", Container::volumes},
                                   Row{"portfolios", Container::volumes},
                                   Row{"portfolio", Container::volumes},
                                   Row{"folded sheets", Container::sheets},
                                   Row{"folded sheet", Container::sheets},
                                   Row{"sheets", Container::sheets},
                                   Row{"sheet", Container::sheets},
                                   Row{"broadsides", Container::sheets},
                                   Row{"broadside", Container::sheets},
                                   Row{"broadsheet", Container::sheets}})
    if (cursor.take_listed(word)) return what;
  return Container::none;
}

/// Takes the number of a volume without a word, `1)` or `II:`, if it is `wanted`, the one after the volume before.
constexpr bool take_volume_number(TextCursor& cursor, std::int64_t wanted) {
  auto look = cursor;
  auto const arabic = look.take_number(9999);
  auto const roman = arabic ? std::nullopt : roman_numeral(look.rest().substr(0, 40));
  if (roman) look.skip(roman->bytes);
  if (wanted != (arabic ? *arabic : roman ? roman->value : 0)) return false;
  if (roman && is_capital(cursor.peek()) && look.take('.')) { // I. 320 p. II. 240 p.
    auto number = look;
    bool const blanks = number.take_blanks();
    if (!blanks || (!number.at_digit() && number.peek() != '[')) return false;
    cursor = look;
    return true;
  }
  if (!look.take(')') && !look.take(':')) return false;
  cursor = look;
  return true;
}
/// Takes a word for a volume and its number, v. 1, Bd. II, and returns the number; -1 if none is there.
constexpr std::int64_t take_numbered_volume(TextCursor& cursor) {
  if (std::string_view{"vtbdp"}.find(small_letter(cursor.peek())) == std::string_view::npos) return -1; // most words
  for (std::string_view const word : {"volume", "vol.", "v.", "tome", "tomo", "tom.", "t.", "Bd.", "Band", "Teil",
                                      "Tl.", "deel", "dl.", "part", "pt."}) {
    auto look = cursor;
    if (!(word.back() == '.' ? look.take_in_any_case(word) : look.take_word_in_any_case(word))) continue;
    look.take_blanks();
    auto const arabic = look.take_number(9999);
    auto const roman = arabic ? std::nullopt : roman_numeral(look.rest().substr(0, 40));
    if (!arabic && !roman) continue;
    if (roman) look.skip(roman->bytes);
    cursor = look;
    return arabic ? *arabic : roman->value;
  }
  return -1;
}
/// Takes the name of a volume before its pages, `v. 1:`, `Bd. II:`, `vol. 1, [8],`; the number is left in `number`, which has
/// that of the next volume.
constexpr bool take_volume_name(TextCursor& cursor, std::int64_t& number) {
  auto look = cursor;
  bool const letter = look.peek(1) == '.'; // v. 320, [3] p.: v is a numeral
  auto const found = take_numbered_volume(look);
  if (found < 0) return false;
  auto const at_number = [](TextCursor const& c) {
    return c.at_digit() || c.peek() == '[' || roman_numeral(c.rest().substr(0, 40)).has_value();
  };
  look.take_blanks();
  auto after = look; // Vol. I, pp. xii, 320
  bool const comma = after.take(',');
  after.take_blanks();
  bool const listed = comma && (!letter || found == number) && at_number(after);
  auto const* const unit = take_page_unit(after);
  after.take_blanks();
  bool const pages = unit != nullptr && !unit->only_after && at_number(after);
  auto stop = look; // Vol. I. 320 p.
  bool const sequence = stop.take('.') && stop.take_blanks() && at_number(stop);
  if (sequence) look.skip(1);
  if (!sequence && !look.take(':') && !pages && !listed) return false;
  cursor = look, number = found;
  return true;
}
/// Takes the name of a volume that alone is described: vol. 1 only, nur Bd. 1, tome II seul.
constexpr bool take_only_volume(TextCursor& cursor) {
  auto look = cursor;
  bool only = false;
  if (std::string_view{"ons"}.find(small_letter(look.peek())) != std::string_view::npos)
    for (std::string_view const word : {"only", "nur", "seulement", "solo", "sólo", "solamente"})
      if (!only && look.take_word_in_any_case(word)) only = look.take_blanks();
  if (take_numbered_volume(look) < 0) return false;
  auto after = look;
  after.take_blanks();
  for (std::string_view const word : {"only", "alone", "seul", "seulement", "allein", "solo", "sólo", "solamente"})
    if (!only && after.take_word_in_any_case(word)) only = true, look = after;
  if (!only) return false;
  cursor = look;
  return true;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
