// SPDX-License-Identifier: MIT
// Words about leaves: common practice, no source.
#include <bifolium/leaf/book_nouns.hpp>
#include <bifolium/leaf/leaf_words.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("words for blank and wanting leaves") {
  for (auto const* word : {"blank", "blanks", "bl", "Blank", "leer", "leere", "weiß", "weisses", "WEISS", "blanc",
                           "blanche", "bianca", "bianche", "bianchi", "blanco", "blanca", "leeg", "vacat"})
    CHECK(is_blank_word(word));
  for (auto const* word : {"", "b", "blan", "blanket", "lank", "wei", "leeres Blatt", "white"})
    CHECK(!is_blank_word(word));
  for (auto const* word : {"blanks", "blanches", "bianche", "bianchi", "blancas"}) CHECK(is_plural_blank_word(word));
  for (auto const* word : {"", "blank", "leere", "bianca", "leaves"}) CHECK(!is_plural_blank_word(word));
  for (auto const& row : detail::blank_word_rows) { // none is passed over for its first letters
    CHECK(is_blank_word(row.word));
    CHECK(is_plural_blank_word(row.word) == row.several);
  }
  for (auto const* word : {"want", "wants", "wanting", "lack", "lacks", "lacking", "Wants"})
    CHECK(is_wanting_word(word));
  for (auto const* word : {"", "wan", "wanted", "black", "missing"}) CHECK(!is_wanting_word(word));
}

TEST_CASE("words for leaves that are not there: what they say, and whether they stand before or after the leaves") {
  for (auto const* word : {"wants", "lack", "Wants"})
    CHECK(absence_word(word) == AbsenceWord{Absence::wanting, true, false});
  for (auto const* word : {"wanting", "lacking"})
    CHECK(absence_word(word) == AbsenceWord{Absence::wanting, true, true});
  for (auto const* word : {"less", "minus", "without"})
    CHECK(absence_word(word) == AbsenceWord{Absence::without, true, false});
  for (auto const* word : {"deleted", "removed", "excised"})
    CHECK(absence_word(word) == AbsenceWord{Absence::removed, false, true});
  for (auto const* word : {"missing",  "absent",   "fehlt",     "Fehlt",     "fehlen",  "fehlend",  "manque",
                           "manquent", "manquant", "manquants", "manca",     "mancano", "mancante", "mancanti",
                           "falta",    "faltan",   "ontbreekt", "ontbreken", "deest",   "desunt"})
    CHECK(absence_word(word) == AbsenceWord{Absence::missing, true, true});
  for (auto const* word : {"", "want of", "less.", "unless", "lackadaisical", "fehl", "miss", "present"})
    CHECK(absence_word(word) == AbsenceWord{});
  for (auto const& row : detail::absence_rows) // none is passed over for its first letters
    CHECK(absence_word(row.word) == row.meaning);
}

TEST_CASE("words are taken with the ß in them") {
  for (std::string const word : {"weiß", "weißes", "Größe"}) {
    TextCursor cursor{word};
    CHECK(cursor.take_letters() == (word[0] == 'w' ? std::string_view{word} : "Gr"));
  }
  for (std::string const text : {"ß", "aß", "ab\xC3\xA9"}) {
    TextCursor cursor{text};
    CHECK(cursor.take_letters().size() == (text[0] == 'a' ? text.find('\xC3') : 0U));
  }
}

TEST_CASE("words for cancels, and words between a leaf and what is said of it") {
  for (auto const* word : {"cancel", "Cancel", "cancellans"}) CHECK(cancel_word(word) == CancelWord::cancel);
  for (auto const* word : {"cancels", "CANCELS", "cancellantia"}) CHECK(cancel_word(word) == CancelWord::cancels);
  for (auto const* word : {"cancelled", "canceled"}) CHECK(cancel_word(word) == CancelWord::cancelled);
  for (auto const* word : {"", "c", "canc", "cancellandum", "carton"}) CHECK(cancel_word(word) == CancelWord::none);
  for (auto const* word : {"is", "are", "both", "all", "a", "A", "was", "were", "being"}) CHECK(is_linking_word(word));
  for (auto const* word : {"probably", "Perhaps", "presumably", "presumed", "possibly", "apparently", "likely"})
    CHECK((is_doubting_word(word) && !is_linking_word(word)));
  for (auto const* word : {"", "and", "not", "an"}) CHECK((!is_doubting_word(word) && !is_linking_word(word)));
  for (std::string const word : detail::linking_words) {
    CAPTURE(word);
    CHECK(is_linking_word(word));
    for (std::string const after : {"", " ", ",", ".", "\u00a0", "8"}) CHECK(linking_word_at(word + after, 0) == word);
    CHECK(linking_word_at("K8 " + word + " blank", 3) == word);
    for (std::string const after : {"x", "\u00e9", "\u0301"}) CHECK(linking_word_at(word + after + "q", 0).empty());
  }
  for (std::string const text : {"", " is", "(is)", "8", "\xC3", "\xE8", "blank", "Ès", "\u0300"})
    CHECK(linking_word_at(text, 0).empty());
}

TEST_CASE("leaves that are counted from an end") {
  struct Row {
    char const* text;
    CountedLeaves leaves;
    char const* rest;
  };
  for (auto const& row : std::initializer_list<Row>{
           {"last leaf", {1, false, true}, ""},
           {"the last two leaves blank", {2, false, true}, "blank"},
           {"First leaf, K8", {1, true, true}, ", K8"},
           {"final blank", {1, false, false}, "blank"},
           {"the first", {1, true, false}, ""},
           {"last twelve", {12, false, false}, ""},
           {"last 2 leaves blank", {2, false, true}, "blank"},
           {"first 12 leaves", {12, true, true}, ""},
           {"last 2 blank", {1, false, false}, "2 blank"},
           {"last 0 leaves", {1, false, false}, "0 leaves"},
           {"last 999999999999999999999 leaves", {1, false, false}, "999999999999999999999 leaves"},
           {"last leafs", {1, false, false}, "leafs"}}) {
    INFO(row.text);
    TextCursor cursor{row.text};
    CHECK(take_counted_leaves(cursor) == row.leaves);
    CHECK(cursor.rest() == row.rest);
  }
  for (std::string const text : {"", "the", "the leaf", "lasting", "firsts", "K8", "leaf"}) {
    INFO(text);
    TextCursor cursor{text};
    CHECK(!take_counted_leaves(cursor));
    CHECK(cursor.at() == 0);
  }
}

TEST_CASE("half-sheets in their spellings") {
  for (auto const* text : {"half-sheet", "half-sheets", "half sheet", "Half sheets", "half_sheet", "half\u00a0sheet",
                           "half  sheets", "half\u2013sheets"}) {
    TextCursor cursor{text};
    CHECK(take_half_sheet(cursor));
    CHECK(cursor.at_end());
  }
  for (auto const* text : {"", "half", "halfsheet", "half-", "half-she", "sheet"}) {
    TextCursor cursor{text};
    CHECK(!take_half_sheet(cursor));
    CHECK(cursor.at() == 0);
  }
}

TEST_CASE("words that count the leaves of a book after a number") {
  for (auto const* word : {"leaves", "ll", "ff", "Bl", "Blatt", "cc", "carte", "hojas", "h", "feuillets", "fols"})
    CHECK(is_unit_of_leaves(word));
  for (auto const* word : {"", "bl", "A", "p", "pp", "pages", "leave", "quires", "c", "title"})
    CHECK(!is_unit_of_leaves(word)); // bl. is "blank"
}
