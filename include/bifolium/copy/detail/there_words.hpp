// SPDX-License-Identifier: MIT
/// Words before leaves that are there: consists of B1-8, vorhanden: A-C; and those that say where a copy begins and ends:
/// begins at A3, ends at L2 (common practice, no source). A copy that begins at A3 lacks all before it.
#pragma once

#include <bifolium/copy/detail/bound_words.hpp>
#include <bifolium/copy/detail/leaf_runs.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words with which a list of leaves begins that are there: English, German, French, Italian, Spanish, Dutch.
inline constexpr char const* words_before_present[]{"has",
                                                    "contains",
                                                    "containing",
                                                    "comprises",
                                                    "comprising",
                                                    "consists of",
                                                    "consisting of",
                                                    "consists only of",
                                                    "consisting only of",
                                                    "preserves",
                                                    "present",
                                                    "single leaf",
                                                    "single leaves",
                                                    "enthält",
                                                    "enthaltend",
                                                    "umfasst",
                                                    "umfaßt",
                                                    "besteht aus",
                                                    "bestehend aus",
                                                    "vorhanden",
                                                    "vorhanden sind",
                                                    "vorhanden ist",
                                                    "erhalten",
                                                    "erhalten sind",
                                                    "Einzelblatt",
                                                    "Einzelblätter",
                                                    "comprend",
                                                    "comprenant",
                                                    "contient",
                                                    "contenant",
                                                    "se compose de",
                                                    "composé de",
                                                    "feuillet isolé",
                                                    "feuillets isolés",
                                                    "comprende",
                                                    "contiene",
                                                    "composto di",
                                                    "consta di",
                                                    "consta de",
                                                    "presenti",
                                                    "bevat",
                                                    "omvat",
                                                    "bestaande uit",
                                                    "bestaat uit",
                                                    "aanwezig"};
/// Words that say with which leaf a copy begins, and with which it ends.
inline constexpr char const* begin_words[]{"begins",    "beginning", "starts",     "starting", "beginnt",
                                           "beginnend", "commence",  "commençant", "inizia",   "comincia",
                                           "empieza",   "comienza",  "begint"};
inline constexpr char const* end_words[]{"ends",      "ending",  "endet",   "endend", "finit",
                                         "finissant", "finisce", "termina", "acaba",  "eindigt"};
/// Words between those and the leaf.
inline constexpr char const* words_after_begin[]{"at",  "with",      "on",     "imperfectly", "abruptly", "mit", "bei",
                                                 "au",  "à",         "avec",   "con",         "en",       "in",  "op",
                                                 "met", "imperfect", "defekt", "only",        "erst"};

/// Takes words with which a list of leaves begins that are there.
[[nodiscard]] inline bool take_words_before_present(TextCursor& cursor, IdealCopy const& book) {
  auto end = cursor;
  auto const first = small_letter(cursor.peek());
  for (auto const* const one : words_before_present) {
    auto c = cursor;
    if (small_letter(one[0]) != first || !c.take_word_in_any_case(one)) continue;
    bool const colon = c.take(':') || c.take(',');
    if (!colon && !c.take_blanks()) continue;
    if (c.at() > end.at()) end = c;
  }
  if (end.at() == cursor.at() || names_gathering(book, TextCursor{cursor}.take_letters())) return false;
  end.take_blanks();
  cursor = end;
  return true;
}

class ExtentOfCopy {
  ListSoFar& list_;
  LeafRuns& runs_;

  /// Takes the name of the leaf with which the copy begins or ends.
  [[nodiscard]] std::optional<LeafRuns::End> take_leaf(TextCursor& cursor) {
    for (int words = 0; words < 6 && cursor.take_blanks(); ++words) {
      auto const word = take_until_beside_names(cursor, is_between_items);
      if (!names_gathering(list_.book, word) &&
          (is_row(word, words_after_begin) || is_article(word) || is_leaf_noun(word) ||
           is_noun(without_point(word), gathering_noun_rows, NounUse::in_list)))
        continue;
      runs_.begin_item(false, false);
      auto const end = runs_.end_of_run(word, list_.last);
      if (!end || end->gone() || end->numbers.count() < 1) return std::nullopt;
      return *end;
    }
    return std::nullopt;
  }

  /// Returns true if nothing else is said of the leaf: not a in "begins with a blank".
  [[nodiscard]] static bool ends_here(TextCursor look) noexcept {
    if (!look.take_blanks())
      return look.at_end() || std::string_view{",;:("}.find(look.peek()) != std::string_view::npos;
    auto const word = look.take_until(is_between_items);
    return word.empty() || word.starts_with('(') || is_joining_word(word) || is_row(word, begin_words) ||
           is_row(word, end_words);
  }

public:
  ExtentOfCopy(ListSoFar& list, LeafRuns& runs) : list_{list}, runs_{runs} {}

  /// Takes words that say with which leaf a copy begins or ends, or both, and places the leaves between.
  bool take(TextCursor& cursor) {
    if (list_.wanting || list_.has_leaves() || list_.book.leaves() == 0) return false;
    std::int64_t from = 1, to = list_.book.leaves();
    auto c = cursor, end = cursor;
    for (int times = 0; times < 2; ++times) {
      auto word = c.take_until(is_between_items);
      if (times > 0 && is_joining_word(word) && c.take_blanks()) word = c.take_until(is_between_items);
      bool const begins = is_row(word, begin_words);
      if (!begins && !is_row(word, end_words)) break;
      auto const leaf = take_leaf(c);
      if (!leaf || !ends_here(c)) break;
      (begins ? from : to) = begins ? leaf->numbers.from : leaf->numbers.to;
      end = c;
      c.take(','), c.take(';');
      if (!c.take_blanks()) break;
    }
    if (end.at() == cursor.at() || from > to) return false;
    list_.leaves.begin_item();
    auto const word = list_.text.substr(cursor.at(), end.at() - cursor.at());
    list_.place_numbers(from, to);
    list_.counts.add(FlatCounts::Form::leaves, list_.leaves.item_from(), word);
    list_.begun = list_.only = true, list_.figures = FiguresAfter::none, list_.last = list_.book.leaf_of_number(to);
    cursor = end;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
