// SPDX-License-Identifier: MIT
/// Reads a format as records write it: 8°, 8.º, 8:o, F°, in 8, 8º, 8⁰, 8o, 8vo, octavo, in-8, in ottavo, Quart, (4to), 1/2°, oblong 4to, 12°
/// long, fol., single sheet, not determined. The reader decides nothing that the words leave open: a broadside may be half a sheet.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/format.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// A format found at the beginning of a text.
struct FormatRead {
  Format format;       ///< the format
  std::size_t bytes{}; ///< number of bytes of the text that state it
  friend constexpr bool operator==(FormatRead const&, FormatRead const&) = default;
};

namespace detail {

/// Words for a single sheet that do not say what part of a full sheet it is: Cowley used "S.s." for half a sheet
/// (Studies in Bibliography 53, notes).
inline constexpr std::array single_sheet_words{"single sheet"sv, "s.sh."sv, "s. sh."sv,    "bs."sv,       "bdsd."sv,
                                               "brds."sv,        "bdsde"sv, "broadside"sv, "broadsheet"sv};
/// A further name of a format, in small letters: from cataloguing rules (RDA vocabulary of book formats), and in German, Italian, French and
/// Spanish (common practice, no source).
struct OtherFormatName {
  char const* name;
  int leaves;
};
inline constexpr OtherFormatName other_format_names[]{{"decimo-sexto", 16},  {"sexto-decimo", 16},
                                                      {"twenty-fourmo", 24}, {"quart", 4},
                                                      {"oktav", 8},          {"duodez", 12},
                                                      {"sedez", 16},         {"ottavo", 8},
                                                      {"dodicesimo", 12},    {"sedicesimo", 16},
                                                      {"diciottesimo", 18},  {"ventiquattresimo", 24},
                                                      {"trentaduesimo", 32}, {"sessantaquattresimo", 64},
                                                      {"douze", 12},         {"seize", 16},
                                                      {"dix-huit", 18},      {"vingt-quatre", 24},
                                                      {"trente-deux", 32},   {"cuarto", 4},
                                                      {"dozavo", 12},        {"dieciseisavo", 16},
                                                      {"kwarto", 4},         {"octaaf", 8},
                                                      {"plano", 1}};
/// The formats whose number Italian records write alone, in 8. Others are rarer than the same words about something else:
/// 3 v. in 2.
inline constexpr int formats_after_in[]{4, 8, 12, 16, 18, 24, 32, 64};
inline constexpr std::array not_determined_words{"format not determined"sv, "not determined"sv, "undetermined"sv};

constexpr bool is_word_character(char c) noexcept { return is_latin_letter(c) || is_digit(c); }

/// A cursor in the text of a format statement, with the words of such statements.
struct FormatScan : TextCursor {
  using TextCursor::TextCursor;

  /// A statement ends with its line: the next line of a record is about something else.
  constexpr void skip_blanks() { take_while(is_blank); }
  /// Takes a word in capitals or small letters if it ends where `word` does: vigesimo is not the beginning of
  /// vigesimo-quarto.
  constexpr bool take_whole_word(std::string_view word) {
    auto next = *this;
    if (word.empty() || !next.take_in_any_case(word)) return false;
    if (word.back() != '.') {
      auto second = next;
      if (is_word_character(next.peek()) || (second.take_dash() && is_word_character(second.peek()))) return false;
    }
    *this = next;
    return true;
  }
  /// Takes a whole number. Returns 0 if there is none, and more leaves than a format has if it is too large.
  constexpr int number() { return static_cast<int>(take_capped_number(Format::most_leaves).value_or(0)); }
  /// Takes the sign that makes a number a format: a degree sign, or the ending of a Latin ordinal, directly after the
  /// number.
  constexpr bool ending() {
    if (take_one(is_degree_sign)) return true;
    for (auto const& [open, close] : {std::pair{"<sup>"sv, "</sup>"sv}, {"^{"sv, "}"sv}, {"^"sv, ""sv}}) {
      auto raised = *this;
      if (raised.take(open) && raised.plain_ending() && raised.take(close)) return *this = raised, true;
    }
    auto pointed = *this; // 8.º in Spanish and Portuguese, 8:o in Swedish
    if (pointed.take('.') && (pointed.take_one(is_degree_sign) || pointed.take_whole_word("o"sv)))
      return *this = pointed, true;
    pointed = *this;
    if (pointed.take(':') && pointed.plain_ending()) return *this = pointed, true;
    return plain_ending();
  }
  /// Returns true if a part of the statement ends here.
  [[nodiscard]] constexpr bool part_ends() const {
    auto look = *this;
    look.skip_blanks();
    return look.at_end() || std::string_view{",;)]"}.find(look.peek()) != std::string_view::npos;
  }
  constexpr bool plain_ending() {
    for (auto word : {"to"sv, "vo"sv, "mo"sv, "o"sv})
      if (take_whole_word(word)) return take('.'), true;
    return false;
  }
  [[nodiscard]] constexpr bool at_letter() const { return small_letter(peek()) >= 'a'; }
  constexpr std::optional<Shape> shape() {
    auto const initial = small_letter(peek());
    for (auto const& words : shape_words) {
      if (small_letter(words.word[0]) != initial) continue;
      auto joined = *this; // quer-4°, oblong-4to
      if (joined.take_in_any_case(words.word) && joined.take('-')) return *this = joined, words.shape;
      if (take_whole_word(words.word)) return words.shape;
    }
    return {};
  }
};

/// Reads a format that is a word: octavo, fol., bdsde. A number with an ending (8vo) is not a word here.
constexpr std::optional<Format> read_format_word(FormatScan& scan) {
  auto const initial = small_letter(scan.peek());
  auto const take =
      [&](std::string_view word) { // the words of the tables are in small letters, and most begin otherwise
        return !word.empty() && word[0] == initial && scan.take_whole_word(word);
      };
  for (auto word : single_sheet_words)
    if (take(word)) return Format::single_sheet();
  for (auto word : not_determined_words)
    if (take(word)) return Format{};
  for (auto const& words : format_words)
    if (take(words.abbreviation) || take(words.name) || take(words.alias)) return Format::of(words.leaves);
  for (auto const& words : other_format_names)
    if (*words.name == initial && take(words.name)) return Format::of(words.leaves);
  if (auto folio = scan; folio.take_in_any_case("f"sv) && folio.take_one(is_degree_sign))
    return scan = folio, Format::of(2); // F°
  for (auto const& [word, part] : {std::pair{"half-sheet"sv, 2}, std::pair{"half sheet"sv, 2},
                                   std::pair{"quarter-sheet"sv, 4}, std::pair{"quarter sheet"sv, 4}})
    if (auto piece = scan; piece.take_whole_word(word) && piece.part_ends()) // not of half-sheet octavo
      return scan = piece, Format::part_of_sheet(part);
  if (take("folios"sv) || take("fol"sv)) return Format::of(2);
  return std::nullopt;
}

constexpr std::optional<Format> read_bare_format(FormatScan& scan) {
  auto const start = scan;
  if (scan.at_letter())
    if (auto const format = read_format_word(scan)) return format;
  bool const french = scan.take_in_any_case("in-"sv); // or with any dash
  if (!french) static_cast<void>(scan.take_in_any_case("in "sv) || scan.take_in_any_case("en "sv));
  bool const after_in = scan.at() != start.at();
  if (after_in && scan.at_letter()) {
    if (auto const format = read_format_word(scan)) return format;
    if (scan.take_whole_word("f."sv)) return Format::of(2); // alone it is a leaf
  }
  if (scan.take("½"sv)) {
    scan.ending();
    return Format::part_of_sheet(2);
  }
  auto const n = scan.number();
  if (n == 1 && scan.take('/')) {
    auto const part = scan.number();
    scan.ending();
    if (part >= 2 && part <= Format::most_leaves) return Format::part_of_sheet(part);
  } else if (n >= 1 && n <= Format::most_leaves && (scan.ending() || french)) {
    return Format::of(n);
  } else if (after_in && scan.part_ends()) {
    for (int const leaves : formats_after_in)
      if (n == leaves) return Format::of(n);
  }
  scan = start;
  return std::nullopt;
}

} // namespace detail

/// Returns the format at the beginning of `text`, or no value if there is none. Blanks before it are skipped.
constexpr std::optional<FormatRead> format_at_start(std::string_view text) {
  detail::FormatScan scan{text};
  scan.skip_blanks();
  char const close = scan.take('(') ? ')' : scan.take('[') ? ']' : '\0';
  auto shape = scan.shape();
  scan.skip_blanks();
  auto format = detail::read_bare_format(scan);
  if (!format) return std::nullopt;
  scan.take('.');
  if (!shape) {
    auto const before = scan;
    scan.skip_blanks();
    shape = scan.shape();
    if (!shape) scan = before;
  }
  if (shape) format = format->with(*shape);
  if (close != '\0' && !scan.take(close)) return std::nullopt;
  return FormatRead{*format, scan.at()};
}

/// Reads a text that is one format. Errors, with the column: unknown_format, trailing_text.
/// Example: `read_format("12mo") == Format::of(12)`.
constexpr Expected<Format> read_format(std::string_view text) {
  auto const found = format_at_start(text);
  detail::FormatScan scan{text, found ? found->bytes : 0};
  scan.skip_blanks();
  if (found && scan.at_end()) return found->format;
  return error_of_text(text, scan.error_here(found ? Problem::trailing_text : Problem::unknown_format));
}

} // namespace v0
} // namespace bifolium
