// SPDX-License-Identifier: MIT
/// The units of statements of pages: pages, leaves, columns and panels, in the words of several languages. A longer word
/// comes before its beginning.
///
/// Rules: DCRMR 6.21 (pages, leaves, columns), the rules before it (p.). p. l. and the words of other languages (ff., Bl.,
/// S., carte, hojas): common practice, no source.
#pragma once

#include <bifolium/core/text_cursor.hpp>
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
    {"lvs", PageUnit::leaves},
    {"lf.", PageUnit::leaves},
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

/// Takes a unit. Returns null if none follows. A unit in full must not be the beginning of a longer word.
constexpr PageUnitWord const* take_page_unit(TextCursor& cursor) {
  if (begins_no_word(cursor.peek())) return nullptr;
  for (auto const& row : page_unit_words)
    if (cursor.take_listed(row.word)) return &row;
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

} // namespace detail
} // namespace v0
} // namespace bifolium
