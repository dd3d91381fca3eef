// SPDX-License-Identifier: MIT
/// Reads a description from the texts of its fields, as a row of a table or a record of a catalogue gives them. A text
/// that cannot be read is stored with the reason, and the other fields are read all the same.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record/read_format_statement.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/read_size.hpp>

namespace bifolium {
inline namespace v0 {

/// The text of each field; empty if the description does not have it.
struct FieldTexts {
  std::string_view formula{};     ///< `8°: A-K⁸ L⁴`
  std::string_view pagination{};  ///< `[8], 205, [3] p.`
  std::string_view leaves{};      ///< `108`, `108 leaves`
  std::string_view plates{};      ///< `4`, `[4] leaves of plates`
  std::string_view format{};      ///< `8vo`
  std::string_view signing{};     ///< `$4 signed`
  std::string_view gatherings{};  ///< `8`, `in fours`
  std::string_view height{};      ///< `187 mm`, `19 cm`; a number alone is in millimetres
  std::string_view width{};       ///< in the same form as `height`
  std::string_view binding{};     ///< height of the cover, in the same form as `height`
  std::string_view chain_lines{}; ///< `vertical`, `horizontal`, `both`
  std::string_view material{};    ///< `laid`, `wove`, `vellum`
  std::string_view year{};        ///< `1725`, `[1725?]`, `MDCCXXV`
  std::string_view place{};       ///< `Venetiis`
};

namespace detail {

class DescriptionReader {
  FieldTexts const& texts_;
  Description book_{};

  void unread(Field field, Error const& error, std::string_view text, std::size_t from = 0) {
    book_.unread.push_back({field, error, std::string{text}, from});
  }
  template <class T> static Stated<T> stated(T value, std::string_view text) {
    return {static_cast<T&&>(value), std::string{text}, 1};
  }
  /// Reads a field if there is a text.
  template <class T, class Read>
  void read(Field field, std::string_view text, std::optional<Stated<T>>& to, Read reader) {
    if (text.empty()) return;
    if (Expected<T> const value = reader(text))
      to = stated(T{*value}, text);
    else
      unread(field, value.error(), text);
  }

  /// Reads the formula. A formula may name a leaf that it does not have. That is a finding, and the rest can still be
  /// read: a parenthesis that cannot be read is left out and stored separately.
  void formula() {
    if (texts_.formula.empty()) return;
    constexpr int most_left_out = 8;
    std::string text{texts_.formula};
    for (int left_out = 0; left_out <= most_left_out; ++left_out) {
      auto const read = read_formula(text, book_.conventions.dialect());
      if (read) {
        book_.formula = stated(Formula{*read}, texts_.formula);
        return;
      }
      auto const at = byte_of(text, read.error().column);
      auto const open = text.rfind('(', at), close = text.find(')', at);
      if (open == text.npos || close == text.npos || text.find(')', open) != close) {
        book_.unread.clear();
        unread(Field::formula, read.error(), texts_.formula);
        return;
      }
      unread(Field::formula, read.error(), std::string_view{text}.substr(open, close + 1 - open), open);
      for (auto i = open; i <= close; ++i) text[i] = ' ';
    }
    auto const error = book_.unread.front().error;
    book_.unread.clear();
    unread(Field::formula, error, texts_.formula);
  }
  static std::size_t byte_of(std::string_view text, std::uint32_t column) {
    std::size_t at = 0;
    for (std::uint32_t c = 1; c < column && at < text.size(); ++c) at += decode(text, at).bytes;
    return at;
  }
  /// Returns the first number of a text: "108 leaves", "[4] leaves of plates".
  static Expected<std::int64_t> number_in(std::string_view text) {
    constexpr std::int64_t most = 9999999;
    for (TextCursor cursor{text}; !cursor.at_end(); cursor.skip(1)) {
      if (!cursor.at_digit()) continue;
      if (auto const number = cursor.take_number(most)) return *number;
      return error_at(Problem::number_too_large, 1, column_of(text, cursor.at()), text.data() + cursor.at(),
                      text.size() - cursor.at());
    }
    return error_at(Problem::not_a_number, 1, 1, text.data(), text.size());
  }
  /// Reads a statement of gatherings: "8", "in fours", "8s".
  static Expected<int> gathering(std::string_view text) {
    struct Word {
      std::string_view word;
      int leaves;
    };
    for (auto const& [word, leaves] : {Word{"twos", 2}, Word{"fours", 4}, Word{"sixes", 6}, Word{"eights", 8},
                                       Word{"tens", 10}, Word{"twelves", 12}, Word{"sixteens", 16}})
      if (text.find(word) != text.npos) return leaves;
    auto const number = number_in(text);
    if (!number || *number < 1 || *number > most_leaves_in_gathering)
      return error_at(Problem::not_a_gathering_size, 1, 1, text.data(), text.size());
    return static_cast<int>(*number);
  }
  /// Reads one length. A number without a unit is in millimetres.
  static Expected<SizeRange> size(std::string_view text) {
    auto const read = read_size(text, SheetUnit::mm);
    if (!read) return read.error();
    if (!read->unread.empty()) return TextCursor{text}.error(Problem::trailing_text, read->unread.front());
    return *read->height;
  }
  template <class T> static Expected<T> word(std::string_view text) {
    std::string lower{text};
    for (char& c : lower) c = small_letter(c);
    if (auto const* row = find_word<T>(lower)) return T{row->value};
    return error_at(Problem::unknown_word, 1, 1, text.data(), text.size());
  }
  /// Reads the pagination. Plates in the extent are used as the plates, unless these are stated by themselves.
  void pagination() {
    if (texts_.pagination.empty()) return;
    auto const extent = read_extent(texts_.pagination);
    if (!extent) return unread(Field::pagination, extent.error(), texts_.pagination);
    book_.pagination = stated(Pagination{extent->pagination}, texts_.pagination);
    if (auto const plates = extent->leaves_of_plates(); plates && texts_.plates.empty())
      book_.plates = stated(std::int64_t{*plates}, extent->plates[0].at.of(texts_.pagination));
  }
  /// Reads the format. If a book has two formats, neither is used, because statements about leaves then apply to a part
  /// of the book.
  void format() {
    if (texts_.format.empty()) return;
    auto const read = read_format_statement(texts_.format);
    if (!read) return unread(Field::format, read.error(), texts_.format);
    if (read->formats.size() == 1) book_.format = stated(Format{read->formats[0]}, texts_.format);
    if (read->gatherings_of && texts_.gatherings.empty())
      book_.gatherings = stated(int{*read->gatherings_of}, texts_.format);
  }
  void year() {
    if (texts_.year.empty()) return;
    auto const date = read_date(texts_.year);
    if (!date) return unread(Field::year, date.error(), texts_.year);
    if (date->years) book_.year = stated(YearRange{*date->years}, texts_.year);
  }
  void place() {
    if (texts_.place.empty()) return;
    auto const place = read_place(texts_.place);
    if (!place) return unread(Field::place, place.error(), texts_.place);
    if (!place->not_known) book_.place = stated(place->region(), texts_.place);
  }

public:
  DescriptionReader(FieldTexts const& texts, Conventions const& conventions) : texts_{texts} {
    book_.conventions = conventions;
  }
  Description description() {
    formula();
    pagination();
    read(Field::leaves, texts_.leaves, book_.leaves, number_in);
    read(Field::plates, texts_.plates, book_.plates, number_in);
    format();
    read(Field::signing, texts_.signing, book_.signing, [](std::string_view text) { return read_signing(text); });
    read(Field::gatherings, texts_.gatherings, book_.gatherings, gathering);
    read(Field::height, texts_.height, book_.height, size);
    read(Field::width, texts_.width, book_.width, size);
    read(Field::binding, texts_.binding, book_.binding, size);
    read(Field::chain_lines, texts_.chain_lines, book_.chain_lines, word<ChainLines>);
    read(Field::material, texts_.material, book_.material, word<Material>);
    year();
    place();
    return static_cast<Description&&>(book_);
  }
};

} // namespace detail

/// Reads the fields. Texts that cannot be read are in `unread`. The function allocates memory.
/// Example: `read_description({.format = "8vo"}).format->value == Format::of(8)`.
[[nodiscard]] inline Description read_description(FieldTexts const& texts, Conventions const& conventions = {}) {
  return detail::DescriptionReader{texts, conventions}.description();
}

} // namespace v0
} // namespace bifolium
