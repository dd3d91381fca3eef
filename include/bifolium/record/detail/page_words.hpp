// SPDX-License-Identifier: MIT
/// The words of statements of pages: units, volumes, corrections. A longer word comes before its beginning.
///
/// Rules: DCRMR 6.21 (pages, leaves, columns, volumes), the rules before it (p., v., i.e.). p. l. and the words of
/// other languages (ff., Bl., S., carte, hojas, n. ch.): common practice, no source.
#pragma once

#include <bifolium/core/about_words.hpp>
#include <bifolium/leaf/leaf_words.hpp>
#include <bifolium/leaf/roman.hpp>
#include <bifolium/record/extent.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

struct PageUnitWord {
  char const* word;
  PageUnit unit;
  bool preliminary{};
  bool only_after{}; ///< before a number it means something else: c. 300 p.
  bool title{};      ///< the leaf with the title, which is listed without a number too
};
inline constexpr PageUnitWord page_unit_words[]{
    {"preliminary leaves", PageUnit::leaves, true},
    {"preliminary leaf", PageUnit::leaves, true},
    {"prelim. leaves", PageUnit::leaves, true},
    {"p. leaves", PageUnit::leaves, true},
    {"p. ll.", PageUnit::leaves, true},
    {"p. l.", PageUnit::leaves, true},
    {"p.l.", PageUnit::leaves, true},
    {"p. ℓ.", PageUnit::leaves, true},
    {"p.ℓ.", PageUnit::leaves, true},
    {"p. l", PageUnit::leaves, true},
    {"Titelblatt", PageUnit::leaves, false, true, true},
    {"Titelbl.", PageUnit::leaves, false, true, true},
    {"Titelblad", PageUnit::leaves, false, true, true},
    {"Titelbl", PageUnit::leaves, false, true, true},
    {"title-leaf", PageUnit::leaves, false, true, true},
    {"title leaf", PageUnit::leaves, false, true, true},
    {"feuillet de titre", PageUnit::leaves, false, true, true},
    {"f. de titre", PageUnit::leaves, false, true, true},
    {"páginas", PageUnit::pages},
    {"pagine", PageUnit::pages},
    {"pages", PageUnit::pages},
    {"page", PageUnit::pages},
    {"págs.", PageUnit::pages},
    {"pág.", PageUnit::pages},
    {"pagg.", PageUnit::pages},
    {"pag.", PageUnit::pages},
    {"pp.", PageUnit::pages},
    {"pp", PageUnit::pages},
    {"p.", PageUnit::pages},
    {"p", PageUnit::pages},
    {"Pp.", PageUnit::pages},
    {"PP.", PageUnit::pages},
    {"P.", PageUnit::pages},
    {"pgs.", PageUnit::pages},
    {"pg.", PageUnit::pages},
    {"Seiten", PageUnit::pages},
    {"Seite", PageUnit::pages},
    {"SS.", PageUnit::pages},
    {"S.", PageUnit::pages},
    {"sidor", PageUnit::pages},
    {"s.", PageUnit::pages, false, true},
    {"bladzijden", PageUnit::pages},
    {"blz.", PageUnit::pages},
    {"stron", PageUnit::pages},
    {"strony", PageUnit::pages},
    {"str.", PageUnit::pages},
    {"leaves", PageUnit::leaves},
    {"leaf", PageUnit::leaves},
    {"lvs.", PageUnit::leaves},
    {"feuillets", PageUnit::leaves},
    {"feuillet", PageUnit::leaves},
    {"folios", PageUnit::leaves},
    {"folio", PageUnit::leaves, false, true},
    {"foliis", PageUnit::leaves},
    {"folia", PageUnit::leaves},
    {"foll.", PageUnit::leaves},
    {"fols.", PageUnit::leaves},
    {"fol.", PageUnit::leaves},
    {"ff.", PageUnit::leaves},
    {"ff", PageUnit::leaves},
    {"f.", PageUnit::leaves},
    {"Blätter", PageUnit::leaves},
    {"Blatt", PageUnit::leaves},
    {"Bll.", PageUnit::leaves},
    {"Bl.", PageUnit::leaves},
    {"carte", PageUnit::leaves},
    {"carta", PageUnit::leaves},
    {"cc.", PageUnit::leaves},
    {"c.", PageUnit::leaves, false, true},
    {"hojas", PageUnit::leaves},
    {"hoja", PageUnit::leaves},
    {"hs.", PageUnit::leaves, false, true},
    {"hh.", PageUnit::leaves, false, true},
    {"h.", PageUnit::leaves, false, true},
    {"k.", PageUnit::leaves, false, true},
    {"ll.", PageUnit::leaves},
    {"ll", PageUnit::leaves},
    {"l.", PageUnit::leaves},
    {"ℓ.", PageUnit::leaves},
    {"columns", PageUnit::columns},
    {"column", PageUnit::columns},
    {"cols.", PageUnit::columns},
    {"col.", PageUnit::columns},
    {"Spalten", PageUnit::columns},
    {"Spalte", PageUnit::columns},
    {"Sp.", PageUnit::columns},
    {"panels", PageUnit::panels},
    {"panel", PageUnit::panels},
};
/// Returns true if a byte begins no word of these tables: at a figure, a bracket or a comma they need not be searched.
constexpr bool begins_no_word(char byte) noexcept {
  return !is_latin_letter(byte) && static_cast<unsigned char>(byte) < 0x80;
}

/// Takes a unit. Returns null if none follows. A unit in full must not be the beginning of a longer word.
constexpr PageUnitWord const* take_page_unit(TextCursor& cursor) {
  auto const first = cursor.peek();
  if (begins_no_word(first)) return nullptr;
  for (auto const& row : page_unit_words) {
    if (row.word[0] != first) continue;
    std::string_view const word = row.word;
    if (word.back() == '.' ? cursor.take(word) : cursor.take_word(word)) return &row;
  }
  return nullptr;
}

/// Takes the unit of a leaf with the title of which no number is written: `Titelbl., 124 S.`. A comma, or the end of a part
/// of the description, must follow.
constexpr bool take_title_leaf(TextCursor& cursor) {
  auto c = cursor;
  auto const* const unit = take_page_unit(c);
  auto after = c;
  after.take_blanks();
  if (unit == nullptr || !unit->title ||
      !(after.at_end() || after.peek() == ',' || after.peek() == ';' || after.peek() == ':'))
    return false;
  cursor = c;
  return true;
}

/// Takes words between a number and its unit, or after the unit, that say whether pages bear numbers: `8 unnumbered
/// pages`, `2 ff. n. ch.`, `120 numb. l.`, `[1] blank leaf`. `unnumbered` becomes true where they bear none. The words for
/// blank are those of leaf/leaf_words.hpp; only here are they also cut to a letter.
constexpr bool take_numbering_words(TextCursor& cursor, bool& unnumbered) {
  struct Row {
    char const* words;
    bool unnumbered;
  };
  auto blank = cursor;
  if (auto const word = blank.take_letters(); word.size() > 2 && is_small(word[0]) && is_blank_word(word)) {
    cursor = blank;
    return unnumbered = true;
  }
  auto const first = cursor.peek();
  if (begins_no_word(first)) return false;
  for (auto const& row : {Row{"unnumbered", true},
                          Row{"unnumb.", true},
                          Row{"unnum.", true},
                          Row{"unn.", true},
                          Row{"unpaged", true},
                          Row{"unpaginated", true},
                          Row{"unfoliated", true},
                          Row{"unsigned", true},
                          Row{"not numbered", true},
                          Row{"non chiffrés", true},
                          Row{"non chiffrées", true},
                          Row{"non ch.", true},
                          Row{"n. ch.", true},
                          Row{"n.ch.", true},
                          Row{"non numerate", true},
                          Row{"non num.", true},
                          Row{"n. num.", true},
                          Row{"n. n.", true},
                          Row{"n.n.", true},
                          Row{"nn.", true},
                          Row{"s. num.", true},
                          Row{"sin numerar", true},
                          Row{"sin num.", true},
                          Row{"s. n.", true},
                          Row{"s.n.", true},
                          Row{"nicht gezählte", true},
                          Row{"nicht gez.", true},
                          Row{"ungezählte", true},
                          Row{"ungez.", true},
                          Row{"unbezifferte", true},
                          Row{"unn", true},
                          Row{"nn", true},
                          Row{"n. c.", true},
                          Row{"n.c.", true},
                          Row{"liminaires", true},
                          Row{"liminaire", true},
                          Row{"lim.", true},
                          Row{"prélim.", true},
                          Row{"prél.", true},
                          Row{"bl.", true},
                          Row{"bb.", true},
                          Row{"b.", true},
                          Row{"w.", true},
                          Row{"numbered", false},
                          Row{"numb.", false},
                          Row{"num.", false},
                          Row{"numerate", false},
                          Row{"chiffrés", false},
                          Row{"chiffrées", false},
                          Row{"ch.", false},
                          Row{"gezählte", false},
                          Row{"gez.", false},
                          Row{"double", false}}) {
    if (row.words[0] != first) continue;
    std::string_view const words = row.words;
    if (words.back() == '.' ? cursor.take(words) : cursor.take_word(words)) {
      unnumbered = unnumbered || row.unnumbered;
      return true;
    }
  }
  return false;
}

/// Takes a word for leaves that are folded, beside their number.
constexpr bool take_folded_word(TextCursor& cursor) {
  for (std::string_view const word : {"folded", "folding", "fold.", "gef.", "gefaltete", "dépl.", "ripieg.", "pleg."})
    if (word.back() == '.' ? cursor.take(word) : cursor.take_word(word)) return true;
  return false;
}

/// Takes a word for `and` between numbers.
constexpr bool take_and(TextCursor& cursor) {
  for (std::string_view const word : {"and", "und", "et", "y", "e"})
    if (blank_at(cursor.rest(), word.size()) != 0 && cursor.take(word)) return true;
  return false;
}

/// Takes `i.e.` or a similar word before a corrected number.
constexpr bool take_correction_word(TextCursor& cursor) {
  if (cursor.take('=')) return true;
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
  auto const first = cursor.peek();
  for (auto const& [word, what] : {Row{"volumes", Container::volumes},      Row{"volume", Container::volumes},
                                   Row{"vols.", Container::volumes},        Row{"vol.", Container::volumes},
                                   Row{"vols", Container::volumes},         Row{"vol", Container::volumes},
                                   Row{"v.", Container::volumes},           Row{"v", Container::volumes},
                                   Row{"tomes", Container::volumes},        Row{"tome", Container::volumes},
                                   Row{"tomos", Container::volumes},        Row{"tomo", Container::volumes},
                                   Row{"tomi", Container::volumes},         Row{"t.", Container::volumes},
                                   Row{"Bände", Container::volumes},        Row{"Bde.", Container::volumes},
                                   Row{"Bd.", Container::volumes},          Row{"Teile", Container::volumes},
                                   Row{"Tle.", Container::volumes},         Row{"delen", Container::volumes},
                                   Row{"dl.", Container::volumes},          Row{"parts", Container::volumes},
                                   Row{"pts.", Container::volumes},         Row{"pt.", Container::volumes},
                                   Row{"folded sheets", Container::sheets}, Row{"folded sheet", Container::sheets},
                                   Row{"sheets", Container::sheets},        Row{"sheet", Container::sheets},
                                   Row{"broadsides", Container::sheets},    Row{"broadside", Container::sheets},
                                   Row{"broadsheet", Container::sheets},    Row{"portfolio", Container::volumes},
                                   Row{"portfolios", Container::volumes}})
    if (word[0] == first && (std::string_view{word}.back() == '.' ? cursor.take(word) : cursor.take_word(word)))
      return what;
  return Container::none;
}

/// Takes the number of a volume without a word, `1)` or `II:`, if it is `wanted`, the one after the volume before.
constexpr bool take_volume_number(TextCursor& cursor, std::int64_t wanted) {
  auto look = cursor;
  auto const arabic = look.take_number(9999);
  auto const roman = arabic ? std::nullopt : roman_numeral(look.rest().substr(0, 40));
  if (roman) look.skip(roman->bytes);
  if (wanted != (arabic ? *arabic : roman ? roman->value : 0)) return false;
  if (!look.take(')') && !look.take(':')) return false;
  cursor = look;
  return true;
}
/// Takes the name of a volume before its pages, `v. 1:`, `Bd. II:`; the number is left in `number`.
constexpr bool take_volume_name(TextCursor& cursor, std::int64_t& number) {
  auto const from = cursor.at();
  for (std::string_view const word : {"volume", "vol.", "v.", "tome", "tomo", "tom.", "t.", "Bd.", "Band", "Teil",
                                      "Tl.", "deel", "dl.", "part", "pt."}) {
    if (!(word.back() == '.' ? cursor.take_in_any_case(word) : cursor.take_word(word))) continue;
    cursor.take_blanks();
    auto const arabic = cursor.take_number(9999);
    auto const roman = arabic ? std::nullopt : roman_numeral(cursor.rest().substr(0, 40));
    if (roman) cursor.skip(roman->bytes);
    cursor.take_blanks();
    if ((arabic || roman) && cursor.take(':')) {
      number = arabic ? *arabic : roman->value;
      return true;
    }
    cursor.go_to(from);
  }
  return false;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
