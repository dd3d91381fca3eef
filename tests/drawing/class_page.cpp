// SPDX-License-Identifier: MIT
// The page for a class as text: its drawings are XML without ids, what it says of a scheme is what the manuals say, and it
// asks for nothing. tests/drawing/class_page.sh uses it in a browser.
#include <bifolium/collation.hpp>
#include <bifolium/drawing/class_page.hpp>
#include <bifolium/drawing/detail/class_data.hpp>
#include <bifolium/drawing/printable.hpp>
#include <bifolium/drawing/steps_svg.hpp>
#include <bifolium/fold.hpp>

#include "check.hpp"
#include "drawing/sound.hpp"

#include <map>
#include <set>
#include <string>

using namespace bifolium;

namespace {

/// The drawings of a page, parsed. Those inside others are part of them.
std::size_t drawings_in(std::string const& page) {
  std::size_t count = 0;
  for (auto at = page.find("<svg "); at != std::string::npos; ++count) {
    int open = 0;
    auto end = at;
    do {
      auto const next_open = page.find("<svg", end + 1), next_close = page.find("</svg>", end + 1);
      REQUIRE(next_close != std::string::npos);
      bool const opens = next_open < next_close;
      open += opens ? 1 : -1;
      end = opens ? next_open : next_close;
    } while (open >= 0);
    pugi::xml_document document;
    REQUIRE(document.load_string(page.substr(at, end + 6 - at).c_str()));
    CHECK(!document.select_node("//*[@id]"));
    at = page.find("<svg ", end);
  }
  return count;
}
std::set<int> pages_lit(std::string const& page) {
  std::set<int> numbers;
  for (auto at = page.find("data-page=\""); at != std::string::npos; at = page.find("data-page=\"", at + 1))
    if (page[at + 11] >= '0' && page[at + 11] <= '9') numbers.insert(std::stoi(page.substr(at + 11)));
  return numbers;
}

/// Reads JSON by its grammar (RFC 8259) and counts the members of objects by their name.
class JsonRead {
  std::string const& text_;
  std::size_t at_{};

  bool take(char c) { return at_ < text_.size() && text_[at_] == c && (++at_, true); }
  bool number() {
    auto const from = at_;
    auto const digits = [&] {
      auto const first = at_;
      while (at_ < text_.size() && text_[at_] >= '0' && text_[at_] <= '9') ++at_;
      return at_ > first;
    };
    take('-');
    auto const whole = at_;
    if (!digits() || (text_[whole] == '0' && at_ > whole + 1)) return false;
    return (!take('.') || digits()) && at_ > from;
  }
  bool string(std::string& out) {
    if (!take('"')) return false;
    for (; at_ < text_.size() && text_[at_] != '"'; ++at_) {
      if (static_cast<unsigned char>(text_[at_]) < 0x20) return false;
      if (text_[at_] == '\\' && std::string{"\"\\/bfnrtu"}.find(text_[++at_]) == std::string::npos) return false;
      out += text_[at_];
    }
    return take('"');
  }
  bool value() {
    std::string words;
    for (std::string const word : {"true", "false", "null"})
      if (text_.compare(at_, word.size(), word) == 0) return at_ += word.size(), true;
    if (at_ < text_.size() && text_[at_] == '"') return string(words);
    if (take('[')) {
      if (take(']')) return true;
      do
        if (!value()) return false;
      while (take(','));
      return take(']');
    }
    if (!take('{')) return number();
    if (take('}')) return true;
    do {
      std::string name;
      if (!string(name) || !take(':') || !value()) return false;
      ++members[name];
    } while (take(','));
    return take('}');
  }

public:
  std::map<std::string, int> members;
  bool sound;
  explicit JsonRead(std::string const& text) : text_{text}, sound{value() && at_ == text.size()} {}
};

/// The data are JSON, with every step of the scheme and every page of its formes.
void has_data(std::string const& page, Scheme const& scheme, Imposition<> const& formes) {
  std::string const begins = "<script type=\"application/json\" id=\"walk\">";
  auto const from = page.find(begins) + begins.size();
  REQUIRE(from >= begins.size());
  auto const text = page.substr(from, page.find("</script>", from) - from);
  JsonRead data{text};
  CHECK(data.sound);
  CHECK(data.members["piece"] == scheme.steps());
  CHECK(data.members["words"] == scheme.steps());
  for (int number = 0; number <= formes.last_page() + 1; ++number)
    CHECK(data.members[std::to_string(number)] == (formes.find_place(number) ? 1 : 0));
}

} // namespace

TEST_CASE("every scheme has a page whose drawings are XML without ids, and whose pages are those of the scheme") {
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const page = class_page(scheme);
    REQUIRE(page);
    CHECK(drawings_in(*page) >= 4);
    auto const formes = impose(*fold(scheme));
    auto const numbers = pages_lit(*page);
    CHECK(static_cast<int>(numbers.size()) == formes.pages());
    for (int number : numbers) CHECK(formes.find_place(number));
    has_data(*page, scheme, formes);
    CHECK(page->find("<script src") == std::string::npos);
    if (scheme.cells() <= 16) CHECK(page->size() < 400'000); // a page is sent to telephones
  }
}

TEST_CASE("half-sheet work has one forme and two impressions, whole sheets have outer and inner formes and sides") {
  int half_sheets = 0;
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const formes = impose(*fold(attested.scheme()));
    auto const page = *class_page(attested.scheme());
    auto const says = [&](char const* words) { return page.find(words) != std::string::npos; };
    bool const exchanged = attested == Attested{SchemeRow::octodecimo_half_sheet_transposed}; // of both formes
    bool one = false, both = false;
    for (int sheet = 0; sheet < formes.sheets(); ++sheet) (formes.one_forme(sheet) ? one : both) = true;
    both = both && !exchanged;
    half_sheets += one ? 1 : 0;
    CHECK(says("One forme prints both sides of the sheet.") == one);
    CHECK(says("Cut apart it gives 2 copies of the same pages.") == one);
    CHECK(says("<figcaption>Outer forme") == both);
    CHECK(says("<figcaption>Inner side: up before folding") == both);
    CHECK(says("<figcaption>Second impression") == (one || exchanged));
  }
  CHECK(half_sheets >= 8);
}

TEST_CASE("the file to print has front and back of every sheet, then the steps") {
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const html = *printable_html(scheme, PageSize::letter);
    std::size_t pages = 0;
    for (auto at = html.find("<div class=\""); at != std::string::npos; at = html.find("<div class=\"", at + 1))
      ++pages;
    CHECK(pages == 2 * static_cast<std::size_t>(scheme.sheets()) + (*steps_svg(scheme)).size());
    CHECK(drawings_in(html) == pages);
    CHECK(html.find("size: letter landscape") != std::string::npos);
  }
}

TEST_CASE("what the page asks is answered as the manuals answer it") {
  auto const page = *class_page(schemes::octavo.scheme());
  CHECK(page.find("<title>Common octavo (8°)</title>") != std::string::npos);
  // Savage, A Dictionary of the Art of Printing (1841): pages side by side add up to 17 in octavo.
  CHECK(page.find("Page 16. Page 1 is on the first leaf and page 16 on the last") != std::string::npos);
  // Boulanger, La Typographie: the far row of the outer forme is 8 9 12 5, head down.
  CHECK(page.find("Pages 8, 9, 12, 5.") != std::string::npos);
  // Chain lines are vertical in octavo (Aldis, The Printed Book, 1916).
  CHECK(page.find("Upright (vertical).") != std::string::npos);
  CHECK(page.find("never an original") != std::string::npos);
}

TEST_CASE("a formula gets the sheets of its gatherings, or none where it has no format") {
  auto const read = [](char const* text) { return *read_formula(text, dialects::bmc); };
  CHECK(class_page(read("A-C8"), "A-C8").error().problem == Problem::format_not_stated);
  CHECK(class_page(read("8°: A10"), "").error().problem == Problem::no_scheme_for_gatherings);
  auto const page = class_page(read("8°: A-B8 C4 D2"), "8°: <A-B>");
  REQUIRE(page);
  CHECK(drawings_in(*page) > 8);
  CHECK(page->find("8°: <A-B>") == std::string::npos);
  CHECK(page->find("8°: &lt;A-B&gt;") != std::string::npos);
  CHECK(page->find("<td>sheet 2</td>") != std::string::npos);
  CHECK(page->find("<td>half of sheet 3</td>") != std::string::npos);
  CHECK(page->find("2 leaves are 2/8 of a sheet, printed together with something else.") != std::string::npos);
  // Sixteens in eights: two gatherings come of one sheet (Cim, Le Livre III, 1907, table of signatures).
  auto const sixteens = *class_page(read("16°: A-D8"), "16°");
  std::string rows;
  for (auto at = sixteens.find("<th scope=\"row\">"); at != std::string::npos;
       at = sixteens.find("<th scope=\"row\">", at + 1))
    if (sixteens[at + 17] == '1')
      rows += sixteens.substr(at + 16, 2) + ' ' + sixteens[sixteens.find("sheet ", at) + 6] + ' ';
  CHECK(rows == "A1 1 B1 1 C1 2 D1 2 ");
}

TEST_CASE("text of a page cannot end its data") {
  CHECK(detail::json_text("a\"\\</script>\n") == "\"a\\\"\\\\\\u003c/script>\\u000a\""); // RFC 8259, section 7
}

TEST_CASE("the paper of a page has the shape of the chancery sheet") { // the Bologna stone, 1389: 315 x 450 mm
  for (auto const attested : {schemes::folio, schemes::quarto, schemes::octavo, schemes::duodecimo}) {
    auto const page = *class_page(attested.scheme());
    auto const named = page.find("aria-label=\"The sheet as paper\"");
    REQUIRE(named != std::string::npos);
    double width{}, height{};
    auto const box = page.rfind("viewBox=\"0 0 ", named);
    REQUIRE(std::sscanf(page.c_str() + box, "viewBox=\"0 0 %lf %lf", &width, &height) == 2);
    width -= 4, height -= 4; // the border on each side
    bool const upright = attested.scheme().sheet(0).long_side == Axis::far_near;
    CHECK((upright ? height / width : width / height) == doctest::Approx(450.0 / 315).epsilon(0.0005));
  }
}
