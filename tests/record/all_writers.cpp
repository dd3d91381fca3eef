// SPDX-License-Identifier: MIT
// Whatever the library writes it reads back. All functions of the public headers that return text are in one table, each with a
// law - random values are written and read - or with the reason why nothing reads it. A function that is missing from the table
// is told, so that a new one needs a row. tests/record/reads_back.cpp has the laws of statements of pages, extents and signing.
#include <bifolium/bifolium.hpp>
#include <bifolium/core/fraction_text.hpp>
#include <bifolium/explain/forme_text.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/paper/read_length.hpp>
#include <bifolium/record.hpp>

#include "check.hpp"
#include "true_book.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>

using namespace bifolium;

namespace {

template <class T> std::string streamed(T const& value) {
  std::ostringstream out;
  out << value;
  return out.str();
}

// -- laws: each is called thousands of times --------------------------------------------------------------------------

Fraction any_fraction(truth::Draw& draw) { return {draw.from_to(-100'000, 100'000), draw.from_to(1, 999)}; }
void fractions(truth::Draw& draw) {
  auto const number = any_fraction(draw);
  INFO(to_text(number).view());
  CHECK(read_fraction(to_text(number).view()) == number);
  CHECK(streamed(number) == to_text(number).view());
}
void decimals(truth::Draw& draw) {
  auto const number = any_fraction(draw);
  auto const places = draw.number(7);
  auto const text = to_decimal(number, places);
  INFO(text.view());
  auto const read = read_fraction(text.view());
  REQUIRE(read);
  std::int64_t unit = 1;
  for (int i = 0; i < places; ++i) unit *= 10;
  auto const off = *read - number;
  CHECK((off < 0 ? Fraction{} - off : off) * Fraction{2 * unit} <= Fraction{1});
}
void raised_figures(truth::Draw& draw) {
  auto const number = draw.number(999'999'999);
  auto const text = raised(number);
  std::int64_t read = 0;
  for (std::size_t at = 0; at < text.view().size();) {
    auto const point = decode(text.view(), at);
    auto const digit = superscript_digit(point.value);
    REQUIRE(digit);
    read = read * 10 + *digit;
    at += point.bytes;
  }
  CHECK(read == number);
}
void roman_numerals(truth::Draw& draw) {
  auto const number = draw.from_to(1, 4999);
  auto const read = roman_numeral(small_roman(number).view());
  REQUIRE(read);
  CHECK(read->value == number);
}
Signature any_signature(truth::Draw& draw) {
  auto const multiple = static_cast<std::uint32_t>(draw.one_in(3) ? draw.from_to(1, 40) : 1);
  auto const letter = static_cast<char>("ABCDEFGHIKLMNOPQRSTVXYZ"[draw.number(23)] + (draw.one_in(2) ? 32 : 0));
  switch (draw.number(8)) {
  case 0:
    return Signature::pi(multiple);
  case 1:
    return Signature::chi(multiple);
  case 2:
    return Signature::number(static_cast<std::uint32_t>(draw.from_to(1, 999)));
  case 3:
    return Signature::greek(draw.from_to(1, 24), draw.one_in(2), multiple);
  case 4:
    return Signature::hebrew(static_cast<std::uint32_t>(draw.from_to(1, 400)));
  case 5:
    return Signature::text(Mark::symbol, "*", 1, multiple);
  case 6:
    return Signature::text(Mark::name, "pointing hand", 13, multiple);
  default:
    return Signature::letter(letter, multiple);
  }
}
void signatures(truth::Draw& draw) {
  auto const mark = any_signature(draw);
  INFO(to_text(mark).view());
  auto const read = read_signature(to_text(mark).view());
  REQUIRE(read);
  // the notation has one sign for the Greek letter and for a gathering without a mark: alone, it is the latter
  if (mark.mark() == Mark::greek &&
      (mark == Signature::greek(16, false, mark.multiple()) || mark == Signature::greek(22, false, mark.multiple())))
    CHECK((read->mark() == Mark::pi || read->mark() == Mark::chi));
  else
    CHECK(*read == mark);
  CHECK(streamed(mark) == to_text(mark).view());
}
void formats(truth::Draw& draw) {
  auto const shape = std::vector{Shape::usual, Shape::oblong, Shape::agenda, Shape::broad, Shape::longer};
  auto const format =
      draw.one_in(4) ? Format::part_of_sheet(draw.from_to(2, 16)) : Format::of(draw.from_to(1, 128), draw.of(shape));
  for (auto const& text : {streamed(format), std::string{format.symbol().view()},
                           std::string{format.abbreviation().view()}, std::string{format.name().view()}}) {
    INFO(text);
    CHECK(read_format(text) == format);
  }
}
template <class Unit> void lengths_in(truth::Draw& draw) {
  Length<int, Unit> const whole{draw.from_to(1, 5000)};
  Length<double, Unit> const exact{draw.from_to(1, 50'000) / 16.0};
  auto const read = read_length(streamed(whole));
  REQUIRE_MESSAGE(read, streamed(whole));
  CHECK(read->count() == doctest::Approx(millimetres{whole}.count()).epsilon(1e-12));
  auto const about = read_length(streamed(exact));
  REQUIRE_MESSAGE(about, streamed(exact));
  CHECK(about->count() == doctest::Approx(millimetres{exact}.count()).epsilon(1e-5)); // streams print six figures
}
void lengths(truth::Draw& draw) {
  lengths_in<Millimetre>(draw), lengths_in<Centimetre>(draw), lengths_in<Inch>(draw);
  lengths_in<ParisInch>(draw), lengths_in<ParisLine>(draw);
}
void sheets_of_paper(truth::Draw& draw) {
  Sheet const sheet{millimetres{draw.from_to(100, 900)}, millimetres{draw.from_to(100, 900)}};
  INFO(streamed(sheet));
  auto const read = read_size(streamed(sheet));
  REQUIRE(read);
  CHECK(read->height->contains(millimetres{sheet.short_side()}));
  CHECK(read->width->contains(millimetres{sheet.long_side()}));
}
Attested any_scheme(truth::Draw& draw) {
  auto const all = Attested::all();
  auto at = all.begin();
  for (auto left = draw.number(all.size()); left > 0; --left) ++at;
  return *at;
}
void schemes_as_text(truth::Draw& draw) {
  auto const scheme = any_scheme(draw).scheme();
  CHECK(read_scheme(write_scheme(scheme)) == scheme);
  CHECK(read_scheme(write_scheme(mirrored(scheme))) == mirrored(scheme));
}
void formes_as_text(truth::Draw& draw) {
  auto const formes = impose(*fold(any_scheme(draw).scheme()));
  auto const text = forme_text(formes);
  INFO(text);
  auto const read = read_formes(text);
  REQUIRE(read);
  std::size_t pages = 0;
  for (auto const& forme : *read)
    for (int row = 0; row < forme.rows; ++row)
      for (int column = 0; column < forme.columns; ++column, ++pages) {
        auto const& seen = forme.pages[static_cast<std::size_t>(row * forme.columns + column)];
        REQUIRE(seen.page);
        auto const is_here = [&](FormePosition const& place) {
          return place.sheet == forme.sheet && place.row == row && place.column == column;
        };
        auto const second = formes.second_place(*seen.page);
        CHECK((is_here(formes.place(*seen.page)) || (second && is_here(*second))));
      }
  CHECK(pages >= static_cast<std::size_t>(formes.pages()));
}
Formula any_formula(truth::Draw& draw) {
  auto const manner = truth::manner(draw);
  truth::Book const book{draw, manner};
  auto const read = read_formula(book.text());
  REQUIRE_MESSAGE(read, book.text());
  return *read;
}
void formulas(truth::Draw& draw) {
  auto const formula = any_formula(draw);
  for (auto notation : {Notation::unicode, Notation::caret, Notation::flat, Notation::html, Notation::tei}) {
    auto const text = write_formula(formula, notation);
    INFO(text);
    auto const read = read_formula(text);
    REQUIRE(read);
    CHECK(*read == formula);
    auto const alone = read_formula(write_signatures(formula, notation));
    REQUIRE(alone);
    CHECK(alone->runs() == formula.runs());
    CHECK(alone->leaves() == formula.leaves());
    auto const with_format = read_formula(write_format_and_signatures(formula, notation));
    REQUIRE(with_format);
    CHECK(with_format->format() == formula.format());
    CHECK(with_format->runs() == formula.runs());
    CHECK(with_format->leaves() == formula.leaves());
  }
}
void references(truth::Draw& draw) {
  auto const formula = any_formula(draw);
  IdealCopy const book{formula};
  if (book.leaves() == 0) return;
  auto const page = reference_of_page(book, draw.from_to(1, static_cast<int>(2 * book.leaves())));
  REQUIRE(page);
  for (auto form : {ReferenceForm::signature, ReferenceForm::raised_side, ReferenceForm::roman,
                    ReferenceForm::leaf_number, ReferenceForm::leaf_letter}) {
    auto const text = write_reference(book, *page, form);
    INFO(write_formula(formula), ": ", text);
    auto const read = read_reference(book, text);
    REQUIRE(read);
    CHECK(book.leaf_number(read->leaf) == book.leaf_number(page->leaf));
    CHECK(read->side == page->side);
  }
}
template <class T> void words_for_evidence_of(truth::Draw& draw) {
  auto const& all = words_of<T>();
  auto const value = all[static_cast<std::size_t>(draw.number(static_cast<int>(std::size(all))))].value;
  CHECK(read_word<T>(to_words(value)) == value);
}
void words_for_evidence(truth::Draw& draw) {
  words_for_evidence_of<Material>(draw), words_for_evidence_of<ChainLines>(draw),
      words_for_evidence_of<MarkPlace>(draw);
  words_for_evidence_of<LeafState>(draw), words_for_evidence_of<MeasureOf>(draw), words_for_evidence_of<EdgeSeen>(draw);
  words_for_evidence_of<HolePlace>(draw);
}
void numbers_of_pages(truth::Draw& draw) {
  auto const number = draw.from_to(1, 4999);
  CHECK((*read_pagination("pp. 1-" + page_figure(number, Numerals::arabic))).pages() == number);
  CHECK((*read_pagination("pp. i-" + page_figure(number, Numerals::roman))).pages() == number);
  auto const letter = draw.from_to(1, 9);
  CHECK((*read_pagination("pp. a-" + page_figure(letter, Numerals::letters))).pages() == letter);
}
void counts_of_leaves(truth::Draw& draw) {
  auto const formula = any_formula(draw);
  auto const read = read_extent(leaves_line(formula));
  if (formula.leaves() > 0) CHECK(read->pages() == 2 * formula.leaves());
}

// -- the table ---------------------------------------------------------------------------------------------------------

struct Writer {
  char const* header;    ///< or a folder, for all of its headers
  char const* functions; ///< separated by blanks
  void (*law)(truth::Draw& draw);
  int times;
  char const* why_not; ///< why nothing reads it, or where else it is tried
};
constexpr char const* sentence = "a sentence for people";
constexpr char const* machine = "an identifier for programs; the value is beside it";
constexpr char const* elsewhere = "tried in tests/record/reads_back.cpp";
constexpr char const* sizes_elsewhere = "tried in tests/record/read_size.cpp";
constexpr char const* debugging = "printed when a test fails; no statement has it";
constexpr char const* part_of_input = "a part of the text that was read";
constexpr Writer writers[]{
    {"core/fraction.hpp", "to_text operator<<", fractions, 4000, ""},
    {"core/fraction_text.hpp", "to_decimal", decimals, 4000, ""},
    {"core/raised.hpp", "raised", raised_figures, 4000, ""},
    {"leaf/roman.hpp", "small_roman", roman_numerals, 4000, ""},
    {"leaf/write_signature.hpp", "to_text", signatures, 4000, ""},
    {"leaf/leaf_words.hpp", "linking_word_at", nullptr, 0, part_of_input},
    {"leaf/signature.hpp", "operator<<", signatures, 4000, ""},
    {"fold/format.hpp", "symbol abbreviation name written operator<<", formats, 4000, ""},
    {"paper/length.hpp", "operator<<", lengths, 4000, ""},
    {"paper/sheet.hpp", "operator<<", sheets_of_paper, 4000, ""},
    {"fold/write_scheme.hpp", "write_scheme", schemes_as_text, 400, ""},
    {"explain/forme_text.hpp", "forme_text", formes_as_text, 200, ""},
    {"collation/write_formula.hpp", "write_formula write_format_and_signatures write_signatures", formulas, 4000, ""},
    {"collation/reference.hpp", "write_reference", references, 4000, ""},
    {"evidence/words.hpp", "to_words", words_for_evidence, 1000, ""},
    {"record/printed_number.hpp", "page_figure", numbers_of_pages, 4000, ""},
    {"record/record_lines.hpp", "leaves_line", counts_of_leaves, 4000, ""},
    {"record/record_lines.hpp", "collation_line physical_description signatures_note", nullptr, 0, elsewhere},
    {"record/write_extent.hpp", "extent_line plates_line", nullptr, 0, elsewhere},
    {"record/write_pagination.hpp", "write_pagination", nullptr, 0, elsewhere},
    {"record/write_signing.hpp", "write_signing", nullptr, 0, elsewhere},
    {"record/recording.hpp", "to_words", nullptr, 0, sizes_elsewhere},
    {"record/printed_number.hpp", "to_words", nullptr, 0, sentence},
    {"record/signing.hpp", "to_words", nullptr, 0, sentence},
    {"record/compare_extent.hpp", "to_words", nullptr, 0, sentence},
    {"record/height_scale.hpp", "to_words source_of", nullptr, 0, sentence},
    {"book/sheets_of_book.hpp", "to_words", nullptr, 0, sentence},
    {"book/audit.hpp", "likelihood_in_words what_settles", nullptr, 0, sentence},
    {"book/audit.hpp", "edited", nullptr, 0, "the text of a field after edits; tests/book/find_slips.cpp reads it"},
    {"book/audit.hpp", "identifier", nullptr, 0, machine},
    {"book/field.hpp", "identifier", nullptr, 0, machine},
    {"book/slip_kind.hpp", "identifier", nullptr, 0, machine},
    {"book/slip_kind.hpp", "what_settles", nullptr, 0, sentence},
    {"edition/arranging.hpp", "identifier", nullptr, 0, machine},
    {"edition/casting_off.hpp", "assumption", nullptr, 0, sentence},
    {"evidence/words.hpp", "identifier", nullptr, 0, machine},
    {"evidence/leaf_origin.hpp", "to_words", nullptr, 0, sentence},
    {"evidence/signs_against.hpp", "to_words", nullptr, 0, sentence},
    {"evidence/period.hpp", "to_words", nullptr, 0, sentence},
    {"fold/attested_rows.hpp", "to_words", nullptr, 0, sentence},
    {"fold/attested.hpp", "id source text what view operator<<", nullptr, 0, "constants of the table of schemes"},
    {"fold/scheme.hpp", "id", nullptr, 0, "a part of the scheme, which is written whole"},
    {"fold/scheme_names.hpp", "no_scheme_message", nullptr, 0, sentence},
    {"fold/find_misprints.hpp", "identifier", nullptr, 0, machine},
    {"fold/foldings_left.hpp", "identifier", nullptr, 0, machine},
    {"paper/region.hpp", "identifier", nullptr, 0, machine},
    {"paper/sheet_size_sources.hpp", "title remark", nullptr, 0, "constants of the table of sizes"},
    {"fold/fold.hpp", "operator<<", nullptr, 0, debugging},
    {"imposition/imposition.hpp", "operator<<", nullptr, 0, debugging},
    {"leaf/gathering.hpp", "operator<<", nullptr, 0, debugging},
    {"leaf/leaf.hpp", "operator<<", nullptr, 0, debugging},
    {"leaf/page_side.hpp", "operator<<", nullptr, 0, debugging},
    {"leaf/signature.hpp", "text", nullptr, 0, "a part of the signature, which is written whole"},
    {"imposition/misread.hpp", "pages_text", nullptr, 0,
     "what a reader meets in a wrongly folded book; no statement has it"},
    {"core/character_references.hpp", "text", nullptr, 0, part_of_input},
    {"core/broken.hpp", "what", nullptr, 0, sentence},
    {"core/error.hpp", "found_text", nullptr, 0, part_of_input},
    {"core/error.hpp", "operator<<", nullptr, 0, sentence},
    {"core/message.hpp", "message sentence_of one_line", nullptr, 0, sentence},
    {"core/number_of.hpp", "number_of", nullptr, 0, sentence},
    {"core/problem.hpp", "identifier", nullptr, 0, machine},
    {"core/problem.hpp", "sentence", nullptr, 0, sentence},
    {"core/short_text.hpp", "view operator<<", nullptr, 0, "the characters themselves"},
    {"core/utf8.hpp", "shown_character", nullptr, 0, sentence},
    {"core/text_cursor.hpp", "rest take_letters take_until text", nullptr, 0, part_of_input},
    {"core/text_span.hpp", "of trimmed", nullptr, 0, part_of_input},
    {"copy/", "", nullptr, 0, sentence},
    {"explain/", "", nullptr, 0, "sentences for people, but for forme_text"},
    {"drawing/", "", nullptr, 0, "pictures and pages to print, which tests/drawing reads as XML"},
};
bool covers(Writer const& row, std::string const& header, std::string const& function) {
  std::string const where = row.header, all = std::string{" "} + row.functions + ' ';
  return where.back() == '/' ? header.starts_with(where)
                             : header == where && all.find(' ' + function + ' ') != std::string::npos;
}

/// The functions of a public header that return text, without those in namespace detail.
std::set<std::string> writers_of(std::filesystem::path const& header) {
  static std::regex const function{
      R"(^\s*(?:\[\[nodiscard\]\] )?(?:template <[^>]*> )?(?:BIFOLIUM_INLINE |friend |static |inline |constexpr )*)"
      R"((?:\[\[nodiscard\]\] )?(?:std::string|std::string_view|ShortText<\w+>|char const\*)(?: const&)? (\w+)\(.*)"};
  std::set<std::string> found;
  std::ifstream in{header};
  bool detail = false;
  for (std::string line; std::getline(in, line);) {
    detail = line.starts_with("namespace detail {") || (detail && !line.starts_with("} // namespace detail"));
    std::smatch match;
    if (detail || line.find(" = delete;") != std::string::npos) continue; // one that does not compile writes nothing
    if (std::regex_match(line, match, function)) found.insert(match[1]);
    if (line.find("operator<<(") != std::string::npos) found.insert("operator<<");
  }
  return found;
}

} // namespace

TEST_CASE("every function that writes text is in the table of writers") {
  auto const include = std::filesystem::path{BIFOLIUM_TEST_DATA} / ".." / ".." / "include" / "bifolium";
  int functions = 0;
  std::vector<int> used(std::size(writers), 0);
  for (auto const& file : std::filesystem::recursive_directory_iterator{include}) {
    auto const header = std::filesystem::relative(file.path(), include).generic_string();
    if (file.path().extension() != ".hpp" || header.find("detail/") != std::string::npos) continue;
    for (auto const& function : writers_of(file.path())) {
      ++functions;
      bool listed = false;
      for (std::size_t i = 0; i < std::size(writers); ++i)
        if (covers(writers[i], header, function)) listed = true, ++used[i];
      CHECK_MESSAGE(listed, header << ": " << function << " writes text and is not in the table");
    }
  }
  CHECK(functions > 90);
  for (std::size_t i = 0; i < std::size(writers); ++i)
    CHECK_MESSAGE(used[i] > 0, std::string{writers[i].header} << ": " << std::string{writers[i].functions});
}

TEST_CASE("whatever is written is read back") {
  for (auto const& writer : writers) {
    INFO(writer.header, ": ", writer.functions);
    CHECK((writer.law != nullptr) == (std::string{writer.why_not}.empty()));
    if (writer.law == nullptr) continue;
    truth::Draw draw{20260704};
    for (int i = 0, n = truth::rounds(writer.times); i < n; ++i) writer.law(draw);
  }
}
