// SPDX-License-Identifier: MIT
// Descriptions as strangers may send them: every field gets every one of these units again and again, after the words with
// which the field begins and without them. Reading the description is measured, and examining it.
#include <bifolium/book/examine.hpp>
#include <bifolium/book/read_description.hpp>

#include "growth/measure.hpp"

#include <utility>

using namespace bifolium;

namespace {

constexpr std::string_view units[]{
    "A8 ",
    "A⁷ ",
    "1⁸ ",
    "B ",
    "A-Z8; ",
    "A8(-A1,9) ",
    "(-A1) ",
    "-A1, ",
    "A1+χ1, ",
    "A3 blank, ",
    "$4 signed ",
    "(",
    "[",
    "])",
    ", ",
    "; ",
    ": ",
    " : ill. ",
    "+ map ",
    "8 p. ; ",
    "8 p., ",
    "[1], ",
    "1-9 [=8] ",
    "9-1, ",
    "2 leaves ",
    "(1 leaf) ",
    "2 p. (4, 1 leaf), ",
    "2 p. ([1], 1 leaf) ",
    "pp. [4] 1-9 ",
    "5 misprinted 6, ",
    "[i.e. 9] ",
    "xii, ",
    "2 plates, ",
    "9",
    "1 x ",
    "20 cm ; ",
    "20 cm (8vo) ",
    "bound to 2 cm, ",
    "4to or ",
    "8vo, ",
    "(8vo) ",
    "in fours, ",
    "8s ",
    "? ",
    "not ",
    "c. ",
    "1490 or ",
    "[1490?] ",
    "MDCC ",
    "Londini et ",
    "i.e. ",
    "vertical, ",
    "wove ",
    "&deg;",
    "&#8312; ",
    "& ",
    " ",
    "word ",
    "\xFF",
    "\n",
    "π² ",
    "-",
    "a-",
    "-.",
    ".",
    "/",
    "+ ",
    "'",
    "or 2 ",
    "unnumbered ",
    "and 1 blank ",
    "London or ",
    "Foo London ",
    "London, Paris [York] ",
    ", A-C8, 9 leaves, pp. 1-9",
};

struct Row {
  Field field;
  std::string_view FieldTexts::*text;
  std::string_view begins; ///< words with which the field is read
};
constexpr Row rows[]{
    {Field::formula, &FieldTexts::formula, "8°: A8 "},
    {Field::pagination, &FieldTexts::pagination, "[8], 205 p. "},
    {Field::leaves, &FieldTexts::leaves, "24 leaves "},
    {Field::plates, &FieldTexts::plates, "4 plates "},
    {Field::format, &FieldTexts::format, "8vo "},
    {Field::signing, &FieldTexts::signing, "$4 signed "},
    {Field::gatherings, &FieldTexts::gatherings, "8 "},
    {Field::height, &FieldTexts::height, "19 cm "},
    {Field::width, &FieldTexts::width, "12 cm "},
    {Field::binding, &FieldTexts::binding, "20 cm "},
    {Field::chain_lines, &FieldTexts::chain_lines, "vertical "},
    {Field::watermark, &FieldTexts::watermark, "gutter "},
    {Field::countermark, &FieldTexts::countermark, "gutter "},
    {Field::head_edge, &FieldTexts::head_edge, "bolt "},
    {Field::tail_edge, &FieldTexts::tail_edge, "bolt "},
    {Field::fore_edge, &FieldTexts::fore_edge, "bolt "},
    {Field::point_hole, &FieldTexts::point_hole, "inside "},
    {Field::leaves_seen, &FieldTexts::leaves_seen, "1 gutter; "},
    {Field::material, &FieldTexts::material, "laid "},
    {Field::year, &FieldTexts::year, "1725 "},
    {Field::coded_year, &FieldTexts::coded_year, "1725 "},
    {Field::place, &FieldTexts::place, "Venetiis "},
    {Field::coded_place, &FieldTexts::coded_place, "it "},
};

/// A part of a formula, and of a pagination beside it.
constexpr std::pair<std::string_view, std::string_view> parts[]{
    {"; A8", "; 16 p."},        {"; A8", "; 20 p."},     {"; A8", "; 20"},           {"A8 ", "; 16 p."},
    {"; A-C8 D", "; 55 p."},    {"; A8", "; 2 v."},      {"; A8(-A1)", "; 20"},      {"; A8 (K8 blank)", "; 16 p."},
    {"; ²A-B8", "; [8], 9 p."}, {"; A8", "; xii, 9 p."}, {"B8 A8 ", "; [1], 16 p."},
};

/// What is repeated in a field, and perhaps with it in a second one, so that the two have as many parts.
struct Repeated {
  Row const* row;
  std::string_view unit;
  bool begun;
  std::string_view in_pages{};

  [[nodiscard]] static std::string many(std::string_view begins, std::string_view unit, int n) {
    std::string text{begins};
    for (int i = 0; i < n; ++i) text += unit;
    return text;
  }
  /// Calls `act(texts)` with the texts of a description, and counts their bytes.
  template <class Act> void with_texts(int n, Act act) const {
    auto const text = many(begun ? row->begins : "", unit, n), pages = many("46 p.", in_pages, n);
    FieldTexts texts{.formula = "8°: A-C8", .pagination = pages, .format = "8vo", .height = "187 mm"};
    texts.*row->text = text;
    text_bytes = text.size() + (in_pages.empty() ? 0 : pages.size());
    act(texts);
  }
  [[nodiscard]] Case reading() const {
    return {name(" read"), [this](int n) {
              with_texts(n,
                         [](FieldTexts const& texts) { counted([&] { static_cast<void>(read_description(texts)); }); });
            }};
  }
  [[nodiscard]] Case examining() const {
    return {name(" examined"), [this](int n) {
              with_texts(n, [](FieldTexts const& texts) {
                auto const book = read_description(texts);
                counted([&] { static_cast<void>(examine(book)); });
              });
            }};
  }

private:
  /// A name that fits in the column: `height read: '20 cm ; '`.
  [[nodiscard]] std::string name(char const* what) const {
    auto const text = std::string{identifier(row->field)} + (begun ? " begun" : "") + what + ": '" + shown_unit(unit);
    return text + (in_pages.empty() ? "'" : "' and pages");
  }
};

/// The worst of the cases of one field is printed, and what grows too fast.
class Worst {
  std::string name_{};
  Grown most_{};

public:
  int wrong = 0;
  void take(Case const& one, int most) {
    auto const result = grown(one, most / 10, most);
    if (!result.holds) {
      print(one.name, result);
      ++wrong;
    }
    if (name_.empty() || result.exponent > most_.exponent) name_ = one.name, most_ = result;
  }
  void told() const { print(name_, most_); }
};

} // namespace

int descriptions_that_grow_too_fast(int most) {
  // All units in all fields take minutes. In a short run each field gets those of one byte, and a quarter of the others, each
  // field another one.
  auto const every = most < 10'000 ? 4 : 1;
  int wrong = 0, turn = 0;
  for (auto const& row : rows) {
    Worst of_reading, of_examining;
    auto const take = [&](Repeated const& one) {
      of_reading.take(one.reading(), most);
      of_examining.take(one.examining(), most);
    };
    auto i = turn++;
    for (auto const unit : units)
      if (unit.size() == 1 || i++ % every == 0)
        for (bool const begun : {false, true}) take({&row, unit, begun});
    if (row.field == Field::formula)
      for (auto const& [formula, pages] : parts) take({&row, formula, true, pages});
    of_reading.told(), of_examining.told();
    wrong += of_reading.wrong + of_examining.wrong;
  }
  return wrong;
}
