// SPDX-License-Identifier: MIT
/// Words that catalogues write about leaves (common practice, no source): that they are blank, wanting or cancels, which
/// of them are meant, that a half-sheet was printed by itself. Formulas, lists of the leaves of a copy, statements of format
/// and names of schemes are read with the same words.
#pragma once

#include <bifolium/core/number_words.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/cycle.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
/// A word that means blank.
struct BlankWord {
  char const* word;
  bool several{}; ///< true for a plural, which is said of two leaves or more
};
/// English, then German, French, Italian, Spanish and Dutch, in each form that stands beside a leaf.
inline constexpr BlankWord blank_word_rows[]{{"blank"},         {"blanks", true},   {"bl"},     {"weiß"},
                                             {"weiss"},         {"weiße"},          {"weisse"}, {"weißes"},
                                             {"weisses"},       {"leer"},           {"leere"},  {"leeres"},
                                             {"vakat"},         {"vacat"},          {"blanc"},  {"blancs", true},
                                             {"blanche"},       {"blanches", true}, {"bianca"}, {"bianco"},
                                             {"bianche", true}, {"bianchi", true},  {"blanca"}, {"blanco"},
                                             {"blancas", true}, {"blancos", true},  {"leeg"}};

/// Returns a letter of a word as a small one, and a zero byte after its end.
[[nodiscard]] constexpr char small_letter_of(std::string_view word, std::size_t i) noexcept {
  return i < word.size() ? small_letter(word[i]) : '\0';
}
/// Returns true if a word that means blank begins as this word does. Few other words do: leaf and last, which stand beside
/// them, do not.
[[nodiscard]] constexpr bool begins_as_blank(std::string_view word) noexcept {
  auto const second = small_letter_of(word, 1);
  switch (small_letter_of(word, 0)) {
  case 'b':
    return second == 'l' || second == 'i';
  case 'l':
    return second == 'e' && small_letter_of(word, 2) == 'e';
  case 'v':
    return second == 'a';
  case 'w':
    return second == 'e';
  default:
    return false;
  }
}
/// Returns the row of a word that means blank, in capitals or small letters, or null.
[[nodiscard]] constexpr BlankWord const* blank_word(std::string_view word) noexcept {
  if (!begins_as_blank(word)) return nullptr;
  auto const initial = small_letter(word[0]);
  for (auto const& row : blank_word_rows)
    if (row.word[0] == initial && equal_in_any_case(word, row.word)) return &row;
  return nullptr;
}
} // namespace detail

/// Returns true for a word that means blank, in capitals or small letters: blank, blanks, bl (of bl.), leer, bianca.
[[nodiscard]] constexpr bool is_blank_word(std::string_view word) noexcept {
  return detail::blank_word(word) != nullptr;
}
/// Returns true for a word that calls several leaves blank: blanks, bianche.
[[nodiscard]] constexpr bool is_plural_blank_word(std::string_view word) noexcept {
  auto const* row = detail::blank_word(word);
  return row != nullptr && row->several;
}

/// What a word says of leaves that are not there.
enum class Absence : std::uint8_t {
  none,    ///< it is not such a word
  wanting, ///< wants, lacking: also said of the ideal copy
  without, ///< less, minus, without: in the place of the sign −
  removed, ///< deleted, excised: somebody took them away
  missing  ///< missing, fehlt: said of a copy, and not of the ideal copy
};
/// A word for leaves that are not there, and where it stands.
struct AbsenceWord {
  Absence says{}; ///< what it says
  bool before{};  ///< true if it can stand before the leaves: wants K8
  bool after{};   ///< true if it can stand after them: K8 wanting
  friend constexpr bool operator==(AbsenceWord const&, AbsenceWord const&) = default;
};
namespace detail {
struct AbsenceRow {
  char const* word;
  AbsenceWord meaning;
};
inline constexpr AbsenceRow absence_rows[]{
    {"want", {Absence::wanting, true, false}},     {"wants", {Absence::wanting, true, false}},
    {"wanting", {Absence::wanting, true, true}},   {"lack", {Absence::wanting, true, false}},
    {"lacks", {Absence::wanting, true, false}},    {"lacking", {Absence::wanting, true, true}},
    {"less", {Absence::without, true, false}},     {"minus", {Absence::without, true, false}},
    {"without", {Absence::without, true, false}},  {"deleted", {Absence::removed, false, true}},
    {"removed", {Absence::removed, false, true}},  {"excised", {Absence::removed, false, true}},
    {"missing", {Absence::missing, true, true}},   {"absent", {Absence::missing, true, true}},
    {"fehlt", {Absence::missing, true, true}},     {"fehlen", {Absence::missing, true, true}},
    {"fehlend", {Absence::missing, true, true}},   {"manque", {Absence::missing, true, true}},
    {"manquent", {Absence::missing, true, true}},  {"manquant", {Absence::missing, true, true}},
    {"manquants", {Absence::missing, true, true}}, {"manca", {Absence::missing, true, true}},
    {"mancano", {Absence::missing, true, true}},   {"mancante", {Absence::missing, true, true}},
    {"mancanti", {Absence::missing, true, true}},  {"falta", {Absence::missing, true, true}},
    {"faltan", {Absence::missing, true, true}},    {"ontbreekt", {Absence::missing, true, true}},
    {"ontbreken", {Absence::missing, true, true}}, {"deest", {Absence::missing, true, true}},
    {"desunt", {Absence::missing, true, true}}};
} // namespace detail

namespace detail {
/// Returns true if a word for leaves that are not there begins as this word does. Few other words do.
[[nodiscard]] constexpr bool begins_as_absence(std::string_view word) noexcept {
  auto const second = small_letter_of(word, 1);
  switch (small_letter_of(word, 0)) {
  case 'a':
    return second == 'b';
  case 'd':
  case 'r':
    return second == 'e';
  case 'e':
    return second == 'x';
  case 'f':
    return second == 'a' || second == 'e';
  case 'l': // lack, less
    return second == 'a' ? small_letter_of(word, 2) == 'c' : second == 'e' && small_letter_of(word, 2) == 's';
  case 'm':
  case 'w':
    return second == 'a' || second == 'i';
  case 'o':
    return second == 'n';
  default:
    return false;
  }
}
} // namespace detail

/// Returns what a word says of leaves that are not there, in capitals or small letters: wants, lacking, missing, fehlt.
[[nodiscard]] constexpr AbsenceWord absence_word(std::string_view word) noexcept {
  if (!detail::begins_as_absence(word)) return {};
  auto const initial = small_letter(word[0]);
  for (auto const& row : detail::absence_rows)
    if (row.word[0] == initial && equal_in_any_case(word, row.word)) return row.meaning;
  return {};
}
/// Returns true for a word that means that the ideal copy may not have leaves: wants, lacking. "Missing" is not among
/// them: it is said of a copy.
[[nodiscard]] constexpr bool is_wanting_word(std::string_view word) noexcept {
  return absence_word(word).says == Absence::wanting;
}
namespace detail {
/// English, then "is" and "are" in German, French, Italian, Spanish, Dutch and Latin, with letters and accents in one character
/// and in two; and the "en" of en blanco.
inline constexpr char const* linking_words[]{
    "is", "are",     "both", "all", "a",   "was",  "were",       "being", "ist",         "sind", "est",  "sont",
    "è",  "e\u0300", "sono", "es",  "son", "está", "esta\u0301", "están", "esta\u0301n", "zijn", "sunt", "en"};
inline constexpr char const* doubting_words[]{"probably", "prob",     "perhaps",    "presumably",
                                              "presumed", "possibly", "apparently", "likely"};
/// Returns true if a word is in the table, in capitals or small letters. Most words begin otherwise.
template <std::size_t N> [[nodiscard]] constexpr bool is_one_of(std::string_view word, char const* const (&table)[N]) {
  auto const initial = small_letter_of(word, 0), second = small_letter_of(word, 1);
  for (auto const* const row : table)
    if (row[0] == initial && row[1] == second && equal_in_any_case(word, row)) return true;
  return false;
}
} // namespace detail

/// Returns true for a word between the name of a leaf and what is said of it: K8 is blank, A1 a cancel, H8 ist leer, K8 è
/// bianca, K8 en blanco.
[[nodiscard]] constexpr bool is_linking_word(std::string_view word) noexcept {
  return detail::is_one_of(word, detail::linking_words);
}
/// Returns the linking word at byte `at` of a text, which may have accents: K8 è bianca, K8 está en blanco. Returns an empty
/// text if another word is there, or none.
[[nodiscard]] constexpr std::string_view linking_word_at(std::string_view text, std::size_t at) noexcept {
  auto end = at;
  while (end < text.size()) {
    if (is_latin_letter(text[end])) {
      ++end;
      continue;
    }
    auto const c = decode(text, end);
    if ((c.value < 0xC0 || c.value > 0xFF) && c.value != 0x300 && c.value != 0x301) break; // à to ÿ, and accents
    end += c.bytes;
  }
  auto const word = text.substr(at, end - at);
  return is_linking_word(word) ? word : std::string_view{};
}
/// Returns true for a word that makes what is said of a leaf doubtful: K8 is probably blank.
[[nodiscard]] constexpr bool is_doubting_word(std::string_view word) noexcept {
  return detail::is_one_of(word, detail::doubting_words);
}
namespace detail {
/// English, then German, French, Italian, Spanish, Dutch and Latin.
inline constexpr char const* imperfect_words[]{
    "imperfect",     "imperf",      "incomplete",   "defective",   "fragment",   "fragments",  "fragmentary",
    "unvollständig", "unvollst",    "unvollkommen", "inkomplett",  "defekt",     "incomplet",  "incomplète",
    "imparfait",     "imparfaite",  "défectueux",   "défectueuse", "incompleto", "incompleta", "imperfetto",
    "imperfetta",    "scompleto",   "difettoso",    "mutilo",      "mutila",     "frammento",  "imperfecto",
    "imperfecta",    "defectuoso",  "fragmento",    "onvolledig",  "onvolkomen", "incompleet", "defect",
    "imperfectus",   "imperfectum", "mutilus",      "mutilum",     "fragmentum", "acefalo",    "acefala",
    "acéfalo",       "acéphale",    "acephalus"};
} // namespace detail

/// Returns true for a word that says that a copy is not whole, in capitals or small letters: imperfect, unvollständig,
/// mutilo. Which leaves the copy lacks it does not say.
[[nodiscard]] constexpr bool is_imperfect_word(std::string_view word) noexcept {
  return detail::is_one_of(word, detail::imperfect_words);
}
/// Takes such a word. Returns true if it was taken.
[[nodiscard]] constexpr bool take_imperfect_word(TextCursor& cursor) noexcept {
  for (auto const* const row : detail::imperfect_words)
    if (cursor.take_word_in_any_case(row)) return true;
  return false;
}
/// What a word about a cancel says.
enum class CancelWord : std::uint8_t {
  none,      ///< it is not such a word
  cancel,    ///< the leaf was put in the place of another: a cancel, cancellans
  cancels,   ///< the same of several leaves: cancels, cancellantia
  cancelled, ///< the leaf was cut out; whether another was put in its place is not said
};
/// Returns what a word says about a cancel, in capitals or small letters.
[[nodiscard]] constexpr CancelWord cancel_word(std::string_view word) noexcept {
  struct Row {
    std::string_view word;
    CancelWord meaning;
  };
  if (word.size() < 6 || small_letter(word[0]) != 'c') return CancelWord::none;
  for (auto const& row : {Row{"cancel", CancelWord::cancel}, Row{"cancellans", CancelWord::cancel},
                          Row{"cancels", CancelWord::cancels}, Row{"cancellantia", CancelWord::cancels},
                          Row{"cancelled", CancelWord::cancelled}, Row{"canceled", CancelWord::cancelled}})
    if (equal_in_any_case(word, row.word)) return row.meaning;
  return CancelWord::none;
}

/// Leaves that are counted from one end of a gathering or of a book.
struct CountedLeaves {
  int leaves{1};      ///< how many they are
  bool first{};       ///< true if they are counted from the beginning, false if from the end
  bool says_leaves{}; ///< true if the word leaf or leaves follows
  friend constexpr bool operator==(CountedLeaves const&, CountedLeaves const&) = default;
};
/// Takes "the last leaf", "first two leaves", "last 2 leaves", "final" and the blanks after it; a figure only before leaf or
/// leaves, since a leaf can have a number. If there is none, takes nothing and returns no value.
[[nodiscard]] constexpr std::optional<CountedLeaves> take_counted_leaves(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto const take = [&](std::string_view word) {
    if (small_letter(c.peek()) != word[0]) return false;
    auto next = c;
    if (!equal_in_any_case(next.take_letters(), word)) return false;
    next.take_blanks();
    c = next;
    return true;
  };
  static_cast<void>(take("the"));
  CountedLeaves counted;
  counted.first = take("first");
  if (!counted.first && !take("last") && !take("final")) return std::nullopt;
  auto number = c;
  if (auto const leaves = number_of_word(number.take_letters())) {
    counted.leaves = *leaves;
    number.take_blanks();
    c = number;
  } else if (auto const figure = number.take_number(most_leaves_in_gathering); figure && *figure > 0) {
    number.take_blanks();
    auto unit = number;
    auto const word = unit.take_letters();
    if (equal_in_any_case(word, "leaf") || equal_in_any_case(word, "leaves"))
      counted.leaves = static_cast<int>(*figure), c = number;
  }
  counted.says_leaves = take("leaf") || take("leaves");
  cursor = c;
  return counted;
}

/// Takes "half-sheet", "half sheets" or the like. Returns true if it was taken.
[[nodiscard]] constexpr bool take_half_sheet(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (!c.take_in_any_case("half") || !(c.take_dash() || c.take_blanks() || c.take('_')) || !c.take_in_any_case("sheet"))
    return false;
  static_cast<void>(c.take('s') || c.take('S'));
  cursor = c;
  return true;
}

} // namespace v0
} // namespace bifolium
