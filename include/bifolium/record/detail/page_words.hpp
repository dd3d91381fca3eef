// SPDX-License-Identifier: MIT
/// The words of statements of pages: units, plates, volumes, corrections. A longer word comes before its beginning.
///
/// Rules: DCRMR 6.21 (pages, leaves, columns, volumes), the rules before it (p., v., i.e.). p. l., ff., Bl., S., carte:
/// common practice, no source.
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
};
inline constexpr PageUnitWord page_unit_words[]{
    {"preliminary leaves", PageUnit::leaves, true},
    {"preliminary leaf", PageUnit::leaves, true},
    {"prelim. leaves", PageUnit::leaves, true},
    {"p. leaves", PageUnit::leaves, true},
    {"p. ll.", PageUnit::leaves, true},
    {"p. l.", PageUnit::leaves, true},
    {"p.l.", PageUnit::leaves, true},
    {"pages", PageUnit::pages},
    {"page", PageUnit::pages},
    {"pagg.", PageUnit::pages},
    {"pag.", PageUnit::pages},
    {"pp.", PageUnit::pages},
    {"p.", PageUnit::pages},
    {"Seiten", PageUnit::pages},
    {"S.", PageUnit::pages},
    {"leaves", PageUnit::leaves},
    {"leaf", PageUnit::leaves},
    {"lvs.", PageUnit::leaves},
    {"folios", PageUnit::leaves},
    {"foll.", PageUnit::leaves},
    {"fols.", PageUnit::leaves},
    {"fol.", PageUnit::leaves},
    {"ff.", PageUnit::leaves},
    {"f.", PageUnit::leaves},
    {"Blätter", PageUnit::leaves},
    {"Blatt", PageUnit::leaves},
    {"Bll.", PageUnit::leaves},
    {"Bl.", PageUnit::leaves},
    {"carte", PageUnit::leaves},
    {"cc.", PageUnit::leaves},
    {"ll.", PageUnit::leaves},
    {"l.", PageUnit::leaves},
    {"columns", PageUnit::columns},
    {"column", PageUnit::columns},
    {"cols.", PageUnit::columns},
    {"col.", PageUnit::columns},
    {"panels", PageUnit::panels},
    {"panel", PageUnit::panels},
};
/// Takes a unit; null if none follows. A unit written out does not run on into a longer word.
constexpr PageUnitWord const* take_page_unit(TextCursor& cursor) {
  for (auto const& row : page_unit_words) {
    std::string_view const word = row.word;
    if (word.back() == '.' ? cursor.take(word) : cursor.take_word(word)) return &row;
  }
  return nullptr;
}

/// Takes words for plates after their number: `folded leaves of plates`; missing if none follow.
constexpr std::optional<PageUnit> take_plates(TextCursor& cursor, bool& folded) {
  auto const from = cursor.at();
  cursor.take_blanks();
  for (bool more = true; more;) {
    more = false;
    for (char const* word : {"folded", "folding", "engraved", "unnumbered", "numbered", "double"})
      if (cursor.take_word(word)) {
        folded = folded || std::string_view{word}.starts_with("fold");
        cursor.take_blanks();
        more = true;
      }
  }
  struct Row {
    char const* words;
    PageUnit unit;
  };
  for (auto const& [words, unit] :
       {Row{"leaves of plates", PageUnit::leaves}, Row{"leaf of plates", PageUnit::leaves},
        Row{"pages of plates", PageUnit::pages}, Row{"page of plates", PageUnit::pages},
        Row{"p. of plates", PageUnit::pages}, Row{"leaves of pl.", PageUnit::leaves}, Row{"plates", PageUnit::leaves},
        Row{"plate", PageUnit::leaves}, Row{"pls.", PageUnit::leaves}, Row{"pl.", PageUnit::leaves}})
    if (std::string_view{words}.back() == '.' ? cursor.take(words) : cursor.take_word(words)) return unit;
  cursor.go_to(from);
  return std::nullopt;
}

/// Takes `i.e.` and its like, which a corrected number follows.
constexpr bool take_correction_word(TextCursor& cursor) {
  if (cursor.take('=')) return true;
  for (char const* word : {"i.e.", "i. e.", "that is", "recte", "rectius"})
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
  for (auto const& [word, what] :
       {Row{"volumes", Container::volumes}, Row{"volume", Container::volumes}, Row{"vols.", Container::volumes},
        Row{"vol.", Container::volumes}, Row{"v.", Container::volumes}, Row{"folded sheets", Container::sheets},
        Row{"folded sheet", Container::sheets}, Row{"sheets", Container::sheets}, Row{"sheet", Container::sheets},
        Row{"portfolio", Container::volumes}, Row{"portfolios", Container::volumes}})
    if (std::string_view{word}.back() == '.' ? cursor.take(word) : cursor.take_word(word)) return what;
  return Container::none;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
