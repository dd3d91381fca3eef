// SPDX-License-Identifier: MIT
/// Reads the names that people give to ways of folding: a format, and words beside it for half-sheet work or for the
/// sizes or the number of the gatherings. "Half-sheet of octavo", "8vo half sheet" and "octavo in half-sheets" mean the same, and so
/// do "folio in sixes" and "2° quired in 6s". fold/scheme_names.hpp has the public functions.
#pragma once

#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/read_gathered.hpp>
#include <bifolium/leaf/leaf_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The content of a name: leaves to the sheet, shape, and the words beside them in one spelling ("half-sheet", "8s
/// 4s").
struct SpokenName {
  Format format{};
  ShortText<40> words{};
  friend constexpr bool operator==(SpokenName const&, SpokenName const&) = default;
};

/// A name and its attested scheme.
struct TradeName {
  std::uint8_t leaves;
  Shape shape;
  char const* words; ///< as in `SpokenName`; empty for a format alone
  SchemeRow row;
};

/// The scheme of a format alone is common practice, no source: the plain whole sheet of printers' manuals, and from 18°
/// up the division into equal gatherings in Cim's table of signatures (Le Livre III, 1907).
inline constexpr TradeName trade_names[]{
    {1, Shape::usual, "", SchemeRow::broadside},
    {2, Shape::usual, "", SchemeRow::folio},
    {2, Shape::usual, "4s", SchemeRow::folio_in_fours},
    {2, Shape::usual, "6s", SchemeRow::folio_in_sixes},
    {2, Shape::usual, "8s", SchemeRow::folio_in_eights},
    {2, Shape::usual, "10s", SchemeRow::folio_in_tens},
    {4, Shape::usual, "", SchemeRow::quarto},
    {4, Shape::usual, "4s", SchemeRow::quarto},
    {4, Shape::usual, "6s", SchemeRow::quarto_in_sixes},
    {4, Shape::usual, "8s", SchemeRow::quarto_in_eights},
    {4, Shape::usual, "half-sheet", SchemeRow::quarto_half_sheet},
    {4, Shape::usual, "2s half-sheet", SchemeRow::quarto_two_half_sheets},
    {4, Shape::oblong, "", SchemeRow::quarto_oblong},
    {6, Shape::usual, "", SchemeRow::sexto},
    {8, Shape::usual, "", SchemeRow::octavo},
    {8, Shape::usual, "8s", SchemeRow::octavo},
    {8, Shape::usual, "4s", SchemeRow::octavo_half_sheet},
    {8, Shape::usual, "16s", SchemeRow::octavo_in_sixteens},
    {8, Shape::usual, "half-sheet", SchemeRow::octavo_half_sheet},
    {8, Shape::usual, "2s half-sheet", SchemeRow::octavo_two_half_sheets},
    {8, Shape::usual, "centre", SchemeRow::octavo_from_centre},
    {8, Shape::oblong, "", SchemeRow::octavo_oblong},
    {12, Shape::usual, "", SchemeRow::duodecimo},
    {12, Shape::usual, "12s", SchemeRow::duodecimo},
    {12, Shape::usual, "6s", SchemeRow::duodecimo_half_sheet},
    {12, Shape::usual, "8s", SchemeRow::duodecimo_in_eights},
    {12, Shape::usual, "8s 4s", SchemeRow::duodecimo_in_eights_and_fours},
    {12, Shape::usual, "half-sheet", SchemeRow::duodecimo_half_sheet},
    {12, Shape::usual, "2s half-sheet", SchemeRow::duodecimo_two_half_sheets},
    {12, Shape::usual, "2 gatherings", SchemeRow::duodecimo_in_eights_and_fours},
    {12, Shape::usual, "by cutting", SchemeRow::duodecimo},
    {12, Shape::usual, "without cutting", SchemeRow::duodecimo_without_cutting},
    {12, Shape::longer, "", SchemeRow::long_duodecimo},
    {16, Shape::usual, "", SchemeRow::sextodecimo},
    {16, Shape::usual, "16s", SchemeRow::sextodecimo},
    {16, Shape::usual, "1s", SchemeRow::sextodecimo},
    {16, Shape::usual, "8s", SchemeRow::sextodecimo_in_eights},
    {16, Shape::usual, "2s", SchemeRow::sextodecimo_in_eights},
    {16, Shape::usual, "2 gatherings", SchemeRow::sextodecimo_in_eights},
    {16, Shape::usual, "half-sheet", SchemeRow::sextodecimo_half_sheet},
    {18, Shape::usual, "", SchemeRow::octodecimo_in_sixes},
    {18, Shape::usual, "6s", SchemeRow::octodecimo_in_sixes},
    {18, Shape::usual, "3s", SchemeRow::octodecimo_in_sixes},
    {18, Shape::usual, "3 gatherings", SchemeRow::octodecimo_in_sixes},
    {18, Shape::usual, "12s 6s", SchemeRow::octodecimo_in_twelves_and_sixes},
    {18, Shape::usual, "2s", SchemeRow::octodecimo_in_twelves_and_sixes},
    {18, Shape::usual, "2 gatherings", SchemeRow::octodecimo_in_twelves_and_sixes},
    {18, Shape::usual, "18s", SchemeRow::octodecimo_rolled},
    {18, Shape::usual, "1s", SchemeRow::octodecimo_rolled},
    {18, Shape::usual, "9s", SchemeRow::octodecimo_half_sheet_transposed},
    {18, Shape::usual, "half-sheet", SchemeRow::octodecimo_half_sheet_transposed},
    {20, Shape::usual, "", SchemeRow::vicesimo_half_sheet},
    {20, Shape::usual, "half-sheet", SchemeRow::vicesimo_half_sheet},
    {24, Shape::usual, "", SchemeRow::vicesimo_quarto_in_twelves},
    {24, Shape::usual, "12s", SchemeRow::vicesimo_quarto_in_twelves},
    {24, Shape::usual, "2s", SchemeRow::vicesimo_quarto_in_twelves},
    {24, Shape::usual, "2 gatherings", SchemeRow::vicesimo_quarto_in_twelves},
    {24, Shape::usual, "8s", SchemeRow::vicesimo_quarto_in_eights},
    {24, Shape::usual, "3s", SchemeRow::vicesimo_quarto_in_eights},
    {24, Shape::usual, "3 gatherings", SchemeRow::vicesimo_quarto_in_eights},
    {24, Shape::usual, "16s 8s", SchemeRow::vicesimo_quarto_in_sixteens_and_eights},
    {24, Shape::usual, "24s", SchemeRow::vicesimo_quarto_rolled},
    {24, Shape::usual, "1s", SchemeRow::vicesimo_quarto_rolled},
    {24, Shape::usual, "half-sheet", SchemeRow::vicesimo_quarto_half_sheet},
    {24, Shape::longer, "", SchemeRow::long_vicesimo_quarto_half_sheet},
    {24, Shape::longer, "half-sheet", SchemeRow::long_vicesimo_quarto_half_sheet},
    {32, Shape::usual, "", SchemeRow::tricesimo_secundo_in_eights},
    {32, Shape::usual, "8s", SchemeRow::tricesimo_secundo_in_eights},
    {32, Shape::usual, "4 gatherings", SchemeRow::tricesimo_secundo_in_eights},
    {32, Shape::usual, "16s", SchemeRow::tricesimo_secundo_in_sixteens},
    {32, Shape::usual, "2s", SchemeRow::tricesimo_secundo_in_sixteens},
    {32, Shape::usual, "2 gatherings", SchemeRow::tricesimo_secundo_in_sixteens},
    {32, Shape::usual, "half-sheet", SchemeRow::tricesimo_secundo_half_sheet},
    {36, Shape::usual, "", SchemeRow::tricesimo_sexto_in_twelves},
    {36, Shape::usual, "12s", SchemeRow::tricesimo_sexto_in_twelves},
    {36, Shape::usual, "3 gatherings", SchemeRow::tricesimo_sexto_in_twelves},
    {48, Shape::usual, "", SchemeRow::quadragesimo_octavo_in_twelves},
    {48, Shape::usual, "12s", SchemeRow::quadragesimo_octavo_in_twelves},
    {48, Shape::usual, "4 gatherings", SchemeRow::quadragesimo_octavo_in_twelves},
    {48, Shape::usual, "8s", SchemeRow::quadragesimo_octavo_in_eights},
    {48, Shape::usual, "6 gatherings", SchemeRow::quadragesimo_octavo_in_eights},
    {64, Shape::usual, "", SchemeRow::sexagesimo_quarto_in_eights},
    {64, Shape::usual, "8s", SchemeRow::sexagesimo_quarto_in_eights},
    {64, Shape::usual, "8 gatherings", SchemeRow::sexagesimo_quarto_in_eights},
    {72, Shape::usual, "", SchemeRow::septuagesimo_secundo_in_eights},
    {72, Shape::usual, "8s", SchemeRow::septuagesimo_secundo_in_eights},
    {72, Shape::usual, "9 gatherings", SchemeRow::septuagesimo_secundo_in_eights},
    {96, Shape::usual, "", SchemeRow::nonagesimo_sexto_in_eights},
    {96, Shape::usual, "8s", SchemeRow::nonagesimo_sexto_in_eights},
    {96, Shape::usual, "12 gatherings", SchemeRow::nonagesimo_sexto_in_eights},
    {128, Shape::usual, "", SchemeRow::centesimo_vicesimo_octavo_in_eights},
    {128, Shape::usual, "8s", SchemeRow::centesimo_vicesimo_octavo_in_eights},
    {128, Shape::usual, "16 gatherings", SchemeRow::centesimo_vicesimo_octavo_in_eights},
};

/// Reads a name word by word.
class NameReader {
  TextCursor cursor_;
  SpokenName name_{};
  Shape shape_{Shape::usual}; // the shape named before the format
  bool after_in_{};

  static constexpr bool parts_words(char32_t c) { return is_space(c) || c == '_' || c == ',' || c == '+'; }
  /// Returns the number for eight, eights, 8, 8s or 8's, or no value for another word.
  static constexpr std::optional<int> number(std::string_view word) {
    TextCursor cursor{word};
    auto const found = take_number_in_words(cursor);
    return found && cursor.at_end() ? std::optional{static_cast<int>(found->value)} : std::nullopt;
  }
  static constexpr bool says_nothing(std::string_view word) {
    for (auto idle : {"in"sv, "of"sv, "a"sv, "an"sv, "the"sv, "and"sv, "from"sv, "common"sv, "quired"sv, "sheet"sv,
                      "plus"sv, "&"sv, "sheetwise"sv, "whole"sv, "whole-sheet"sv, "work-and-back"sv})
      if (equal_in_any_case(word, idle)) return true;
    return is_gatherings(word);
  }
  static constexpr bool is_gatherings(std::string_view word) {
    for (auto one : {"gathering"sv, "gatherings"sv, "signature"sv, "signatures"sv, "quire"sv, "quires"sv, "section"sv,
                     "sections"sv})
      if (equal_in_any_case(word, one)) return true;
    return false;
  }
  /// Takes the machine-room's word for half-sheet work: work-and-turn, worked and turned.
  constexpr bool take_work_and_turn() {
    constexpr auto parts = [](char32_t c) { return parts_words(c) || c == '-'; };
    auto c = cursor_;
    auto const is = [&](std::string_view one, std::string_view other) {
      c.take_while(parts);
      auto const word = c.take_until(parts);
      return equal_in_any_case(word, one) || equal_in_any_case(word, other);
    };
    if (!is("work", "worked") || !is("and", "&") || !is("turn", "turned")) return false;
    cursor_ = c;
    return true;
  }
  constexpr bool add(std::string_view word) {
    return (name_.words.empty() || name_.words.append(" ")) && name_.words.append(word);
  }
  constexpr bool add_number(int n) {
    ShortText<32> figures;
    append_number(figures, static_cast<unsigned>(n));
    return add(figures) && name_.words.append("s");
  }
  /// Adds "in eights" as `8s`, and "in eight gatherings" as `8 gatherings`. One gathering is `1s` with the word or without.
  constexpr bool add_count(int n) {
    auto after = cursor_;
    after.take_while(parts_words);
    if (!is_gatherings(after.take_until(parts_words)) || n == 1) return add_number(n);
    cursor_ = after;
    ShortText<32> figures;
    append_number(figures, static_cast<unsigned>(n));
    return add(figures) && add("gatherings");
  }
  constexpr bool has_format() const { return name_.format.kind() != Format::Kind::not_determined; }
  /// Takes a format statement that ends at the end of a word: not the in-8 of "in-8s".
  constexpr bool take_format() {
    auto const found = format_at_start(cursor_.rest());
    if (!found || found->format.kind() == Format::Kind::not_determined) return false;
    auto after = cursor_;
    after.skip(found->bytes);
    if (!after.at_end() && !parts_words(after.character().value)) return false;
    name_.format = found->format.kind() == Format::Kind::single_sheet ? Format::of(1) : found->format;
    cursor_ = after;
    return true;
  }
  constexpr void set_shape(Shape shape) {
    if (has_format())
      name_.format = name_.format.with(shape);
    else
      shape_ = shape;
  }
  constexpr bool take_word() {
    if (take_half_sheet(cursor_) || take_work_and_turn())
      return name_.words.view().ends_with("half-sheet") || add("half-sheet");
    if (!has_format() && take_format()) return true;
    if (has_format()) {
      auto const found = take_gathered(cursor_, name_.format);
      if (found.counts.problem != Problem::none) return false;
      if (found.half_sheets) return add("half-sheet");
      auto const counts = found.counts.leaves.size();
      for (std::size_t i = 0; i < counts; ++i)
        if (!(counts == 1 ? add_count(found.counts.leaves.term(i)) : add_number(found.counts.leaves.term(i))))
          return false;
      if (found.counts.found()) return true;
    }
    bool const first = cursor_.at() == 0, after_in = after_in_;
    auto const word = cursor_.take_until(parts_words);
    after_in_ = equal_in_any_case(word, "in");
    if (says_nothing(word)) return true;
    if (auto const n = number(word); n && *n > 0 && *n <= Format::most_leaves) {
      bool const plural = small_letter(word.back()) == 's';
      if (!has_format() && !after_in && (is_digit(word[0]) ? first : plural))
        return name_.format = Format::of(*n, shape_), true;
      return add_count(*n);
    }
    for (auto const& one : shape_words)
      if (equal_in_any_case(word, one.word)) return set_shape(one.shape), true;
    ShortText<40> lower;
    for (char c : word) {
      char const letter = small_letter(c);
      if (!lower.append(&letter, 1)) return false;
    }
    return add(lower);
  }

public:
  constexpr explicit NameReader(std::string_view text) : cursor_{text} {}
  /// Returns the content of the name, or no value if it does not name a format or is too long for a name.
  constexpr std::optional<SpokenName> read() {
    for (;;) {
      cursor_.take_while(parts_words);
      if (cursor_.at_end()) break;
      if (!take_word()) return std::nullopt;
    }
    if (!has_format()) return std::nullopt;
    return name_;
  }
};

/// Reads a name. If it cannot be read, its hyphens are replaced by blanks: quarto-in-eights.
constexpr std::optional<SpokenName> name_in(std::string_view text) {
  if (auto const spoken = NameReader{text}.read()) return spoken;
  ShortText<64> parted;
  for (char c : text) {
    char const letter = c == '-' ? ' ' : c;
    if (!parted.append(&letter, 1)) return std::nullopt;
  }
  return NameReader{parted}.read();
}

} // namespace detail
} // namespace v0
} // namespace bifolium
