// SPDX-License-Identifier: MIT
// Words that can also be the name of a leaf, and runs from every leaf of a book to every other. The words are those of notes in
// catalogues (common practice, no source), their leaves are counted by hand. That old catalogues number leaves of gatherings in
// Roman numerals: Bowers, Principles of Bibliographical Description (1949), ch. 5, from memory.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <set>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

struct Read {
  std::string wanting;
  std::vector<Problem> doubts{};
};
Read read_of(IdealCopy const& book, std::string const& text) {
  auto const read = read_leaves_present(book, text);
  if (!read) return {"refused: " + std::string{identifier(read.error().problem)}};
  Read result{wants(book, check_copy(book, read->spans))};
  for (auto const& doubt : read->warnings()) result.doubts.push_back(doubt.problem);
  return result;
}

} // namespace

TEST_CASE("a word for a copy is not a leaf, in whatever book and language") {
  for (std::string const formula : {"8°: A-Z¹²", "8°: a-z¹²", "4°: π² A-K⁸ L⁴", "8°: a-k⁸"}) {
    CAPTURE(formula);
    IdealCopy const book{*read_formula(formula)};
    bool const capital = formula.find('A') != std::string::npos;
    std::string const a1 = capital ? "A1" : "a1", wanting = "wants " + a1;
    for (std::string const copy :
         {"Ej.",      "ej.",        "Ex.",       "ex.",      "Expl.",    "Exempl.",        "Esempl.",
          "Ejempl.",  "Ej",         "Ex",        "El ej.",   "Le ex.",   "L'ex.",          "L’exemplaire",
          "Exemplar", "Exemplaire", "Esemplare", "Ejemplar", "Our copy", "Unser Exemplar", "Dit ex."}) {
      CAPTURE(copy);
      for (std::string const lacks :
           {" falto de ", " lacks ", ": lacks ", " incompleto: falta ", " incomplet: manque ", ", wanting ", " fehlt ",
            " mancante della c. ", " ohne ", " sans ", " senza ", " sin "}) {
        CAPTURE(lacks);
        if (copy.size() == 2 && lacks[0] == ',') continue; // leaf E1, and A1 wanting?
        auto const read = read_of(book, copy + lacks + a1);
        CHECK(read.wanting == wanting);
        CHECK(read.doubts.empty());
      }
      for (std::string const whole : {" completo", " complete", " vollständig", " complet"}) {
        CAPTURE(whole);
        CHECK(read_of(book, copy + whole).wanting.empty());
        CHECK(read_of(book, copy + whole).doubts.empty());
      }
    }
  }
}

TEST_CASE("every leaf named by a letter and a Roman numeral is read or doubted") {
  // every letter and every leaf of a gathering of twelve: if the name is a word, it is doubted
  std::set<std::string> const words{"ai", "ci",  "di",  "fi",  "hi",  "li",  "mi",  "ni",  "si",  "ti",
                                    "ex", "six", "dix", "fix", "mix", "nix", "bij", "hij", "mij", "zij"};
  constexpr char const* numerals[]{"i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"};
  constexpr char const* old[]{"j", "ij", "iij", "iiij", "v", "vj", "vij", "viij", "ix", "x", "xj", "xij"};
  int read = 0, doubted = 0;
  for (bool const capital : {false, true}) {
    IdealCopy const book{*read_formula(capital ? "12°: A-Z¹²" : "12°: a-z¹²")};
    for (char const letter : std::string_view{"abcdefghiklmnopqrstvxyz"}) {
      std::string const mark(1, static_cast<char>(capital ? letter - 'a' + 'A' : letter));
      for (int leaf = 1; leaf <= 12; ++leaf)
        for (auto const* const numeral : {numerals[leaf - 1], old[leaf - 1]}) {
          auto const name = mark + numeral;
          CAPTURE(name);
          if (letter == 'i' || letter == 'v' || letter == 'x' || letter == 'p') continue; // numbers, and pi
          if (name.substr(1) == mark || numeral == std::string_view{"v"}) continue;       // dd, or a verso
          auto const one = read_of(book, "wants " + name);
          CHECK(one.wanting == "wants " + mark + std::to_string(leaf));
          bool const word = words.contains(static_cast<char>(letter) + std::string{numeral});
          bool const spanish = letter == 'e' && numeral == std::string_view{"j"};
          CHECK((one.doubts == std::vector{Problem::leaf_or_word}) == (word || spanish));
          ++read, doubted += word || spanish ? 1 : 0;
          // among other leaves with such numerals it can only be a leaf
          if (leaf < 8) CHECK(read_of(book, "wants " + name + ", " + mark + "viij").doubts.empty());
        }
    }
  }
  CHECK(read > 500);
  CHECK(doubted > 30);
}

TEST_CASE("small words of a sentence are not leaves") {
  IdealCopy const book{*read_formula("12°: a-z¹²")};
  for (std::string const text : {"mancante di a1", "mancano di a1", "priva di a1", "ci manca a1", "vi manca a1",
                                 "vi mancano le cc. a1", "ej. falto de a1", "ex. lacks a1"}) {
    CAPTURE(text);
    auto const read = read_of(book, text);
    CHECK(read.wanting == "wants a1");
    CHECK(read.doubts.empty());
  }
  for (std::string const text : {"wants six leaves", "lacks dix feuillets", "wants vi leaves", "wants xij ff."}) {
    CAPTURE(text);
    CHECK(read_of(book, text).wanting == "refused: leaves_not_named");
  }
  for (std::string const text : {"a1-12 si", "wants a1 mi", "wants di", "ex. a1", "ej., a2", "wants iv", "Di."}) {
    CAPTURE(text);
    auto const read = read_of(book, text);
    if (read.wanting.starts_with("refused")) continue; // as good as a doubt
    bool told = false;
    for (auto const doubt : read.doubts) told = told || doubt == Problem::leaf_or_word;
    CHECK(told);
  }
  auto const read = read_of(book, "lacks aij, dj and ex");
  CHECK(read.wanting == "wants a2, d1, e10");
  CHECK(read.doubts.empty());
}

TEST_CASE("no run of a book is read backwards") { // the order of leaves is that of the formula
  for (std::string const formula : {"4°: π² A-B⁴ C²", "4°: A⁴(A1+a², A3+χ1) B⁴(−B1) C²",
                                    "4°: A⁴(−A4) B⁴(−B1,4) C²(−C1)", "8°: A⁴(A2+a-b²) B1 C⁴"}) {
    CAPTURE(formula);
    IdealCopy const book{*read_formula(formula)};
    struct End {
      std::string name;
      std::int64_t from, to; // the numbers of its leaves
    };
    std::vector<End> ends;
    for (std::int64_t n = 1; n <= book.leaves(); ++n)
      ends.push_back({write_reference(book, {*book.leaf_of_number(n), LeafSide::not_said}), n, n});
    for (std::string const mark : {"π", "A", "B", "C", "a", "b"}) {
      auto const signature = *read_signature(mark);
      if (auto const found = book.find(signature)) {
        auto const all = book.numbers_of(found->gathering);
        ends.push_back({mark, all.from, all.to});
      } else if (auto const inserted = book.find_inserted(signature)) {
        ends.push_back({mark, inserted->from, inserted->to});
      }
    }
    int backwards = 0;
    for (auto const& first : ends)
      for (auto const& last : ends) {
        auto const run = first.name + "-" + last.name;
        CAPTURE(run);
        for (std::string const before : {"", "wants "}) {
          auto const read = read_leaves_present(book, before + run);
          if (last.to < first.from) {
            ++backwards;
            REQUIRE_FALSE(read);
            CHECK(read.error().problem == Problem::run_goes_backwards);
          } else if (first.from <= last.from && first.to <= last.to) {
            REQUIRE(read);
            auto const copy = check_copy(book, read->spans);
            auto const there = last.to - first.from + 1;
            CHECK(copy.leaves_present == (before.empty() ? there : book.leaves() - there));
          }
        }
      }
    CHECK(backwards > 50);
  }
}

TEST_CASE("an article before a word for leaves is not a gathering of that name") {
  for (std::string const formula : {"8°: a-k⁸ A-F⁸", "8°: a-k⁸", "8°: A-K⁸ L⁴", "2°: a-z¹⁰ A-Z¹⁰", "4°: π² A-K⁸ L⁴"}) {
    CAPTURE(formula);
    IdealCopy const book{*read_formula(formula)};
    bool const capital = formula.find('A') != std::string::npos;
    std::string const b3 = capital ? "B3" : "b3", b = b3.substr(0, 1);
    for (std::string const article : {"a ", "A "}) {
      if (formula.find(article[0]) == std::string::npos) continue; // as A of A-K
      for (std::string const lacks : {"lacks ", "wants ", "wanting ", "missing: "}) {
        CAPTURE(lacks);
        // which leaf or gathering it is, is not said
        for (std::string const noun : {"leaf", "blank", "blank leaf", "gathering", "quire", "bifolium", "sheet",
                                       "single leaf", "whole quire", "plate"}) {
          CAPTURE(noun);
          CHECK(read_of(book, lacks + article + noun).wanting == "refused: leaves_not_named");
          CHECK(read_of(book, lacks + article + noun + " in " + b).wanting == "refused: leaves_not_named");
          CHECK(read_of(book, lacks + b3 + " and " + article + noun).wanting == "refused: leaves_not_named");
        }
        for (std::string const noun : {"leaf", "blank leaf", "single leaf", "blank"}) {
          CAPTURE(noun);
          for (std::string const& name : {" (" + b3 + ")", " " + b3, ", " + b3, ": " + b3}) {
            CAPTURE(name);
            CHECK(read_of(book, lacks + article + noun + name).wanting == "wants " + b3);
          }
        }
        for (std::string const noun : {"gathering", "quire", "whole quire"})
          CHECK(read_of(book, lacks + article + noun + " (" + b + ")").wanting == "wants " + b);
        CHECK(read_of(book, lacks + b3 + ", a blank").wanting == "wants " + b3);
        CHECK(read_of(book, lacks + b3 + ", a blank leaf").wanting == "wants " + b3);
        CHECK(read_of(book, lacks + article.substr(0, 1)).wanting == "wants " + article.substr(0, 1));
      }
    }
  }
}

TEST_CASE("a word between numbers of leaves is not a gathering of that name") {
  for (std::string const formula : {"8°: a-k⁸ A-F⁸", "8°: a-k⁸", "8°: A-K⁸ L⁴", "2°: a-z¹⁰ A-Z¹⁰"}) {
    CAPTURE(formula);
    IdealCopy const book{*read_formula(formula)};
    std::string const a = formula.find('a') != std::string::npos ? "a" : "A";
    for (std::string const lacks : {"mancano cc. ", "mancano ff. ", "mancano carte ", "mancano le cc. ",
                                    "mancano i ff. ", "faltan ff. ", "manquent les ff. ", "lacks ff. "}) {
      CAPTURE(lacks);
      for (std::string const joins : {" e ", " y ", " et ", " und ", " E "}) {
        CAPTURE(joins);
        CHECK(read_of(book, lacks + "3" + joins + "5").wanting == "wants " + a + "3, " + a + "5");
        CHECK(read_of(book, lacks + "3, 5" + joins + "7").wanting == "wants " + a + "3, " + a + "5, " + a + "7");
      }
      for (std::string const to : {" a ", " al ", " bis "})
        CHECK(read_of(book, lacks + "3" + to + "5").wanting == "wants " + a + "3-5");
    }
    CHECK(read_of(book, "lacks c. 10 leaves").wanting == "refused: leaves_not_named");
    CHECK(read_of(book, "lacks c. 3 quires").wanting == "refused: leaves_not_named");
  }
}

TEST_CASE("Roman numerals after a word for leaves are numbers, all of a list") {
  constexpr char const* ones[]{"", "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix"};
  constexpr char const* tens[]{"", "x", "xx", "xxx", "xl", "l", "lx", "lxx", "lxxx", "xc"};
  auto const numeral = [&](int number, bool capital) { // 1 to 99
    auto text = std::string{tens[number / 10]} + ones[number % 10];
    for (char& c : text) c = static_cast<char>(capital ? c - 'a' + 'A' : c);
    return text;
  };
  for (std::string const formula :
       {"8°: A-K⁸ L⁴", "8°: A-X⁸", "8°: a-z⁸", "8°: a-k⁸ A-F⁸", "8°: A-Z⁸ a-z⁸", "4°: π⁴ 2A-2Z⁴"}) {
    CAPTURE(formula);
    IdealCopy const book{*read_formula(formula)};
    struct Numbers {
      std::set<std::int64_t> wanting;
      bool doubted{};
    };
    auto const numbers = [](std::vector<std::pair<int, int>> const& runs) {
      std::set<std::int64_t> all;
      for (auto const& [from, to] : runs)
        for (int n = from; n <= to; ++n) all.insert(n);
      return all;
    };
    auto const numbers_of = [&](std::string const& text) {
      CAPTURE(text);
      auto const read = read_leaves_present(book, text);
      REQUIRE(read);
      Numbers found{{}, !read->warnings().empty()};
      for (auto const& span : check_copy(book, read->spans).wanting)
        for (auto n = span.from; n <= span.to; ++n) found.wanting.insert(n);
      return found;
    };
    auto const find_name = [&](std::string const& text) { return read_reference(book, text).has_value(); };
    for (std::string const word : {"ff.", "Bll.", "cc.", "leaves"})
      for (bool const capital : {true, false}) {
        if ((word == "cc." || word == "ff.") && formula.find("a-z") != std::string::npos) continue; // 2c, 2f
        for (int const from : {1, 2, 5, 9, 11}) {
          auto const one = numeral(from, capital);
          auto const single = "lacks " + word + ' ' + one;
          CAPTURE(single);
          auto const alone = numbers_of(single);
          CHECK(alone.wanting == numbers({{from, from}}));
          CHECK(alone.doubted == (find_name(one) || read_leaves_present(book, one).has_value()));
          for (int to = from + 1; to <= 40; to += to / 2) {
            auto const other = numeral(to, capital);
            bool const names = find_name(one) && find_name(other); // xi-xii: also x1 and x2
            for (std::string const between : {"-", " – ", " bis "}) {
              auto const run = "lacks " + word + ' ' + one + between + other;
              CAPTURE(run);
              auto const both = numbers_of(run);
              CHECK(both.wanting == numbers({{from, to}}));
              CHECK(both.doubted == names);
            }
            for (std::string const between : {", ", " and "}) {
              auto const list = "lacks " + word + ' ' + one + between + other;
              CAPTURE(list);
              CHECK(numbers_of(list).wanting == numbers({{from, from}, {to, to}}));
              auto const more = numbers_of(list + ", " + numeral(40, capital) + '-' + numeral(43, capital) + '.');
              CHECK(more.wanting == numbers({{from, from}, {to, to}, {40, 43}}));
              CHECK(!more.doubted);
            }
          }
        }
      }
  }
  IdealCopy const book{*read_formula("8°: A-K⁸ L⁴")};
  for (std::string const word : {"f. ", "ff. ", "fol. ", "folio "})
    for (std::string const run : {"C", "D", "C-D", "I and C"}) { // numbers that the book does not have
      auto const list = "lacks " + word + run;
      CAPTURE(list);
      auto const read = read_of(book, list);
      CHECK((!read.doubts.empty() || read.wanting.starts_with("refused")));
    }
  CHECK(read_of(book, "lacks ff. I-III; C").wanting == "wants A1-3, C");
  CHECK(read_of(book, "lacks ff. I-III, K8").wanting == "wants A1-3, K8");
  CHECK(read_of(book, "lacks ff. I, 3 and V.").wanting == "wants A1, A3, A5");
  CHECK(read_of(book, "ff. I-III wanting").wanting == "wants A1-3");
  CHECK(read_of(book, "f. C 3").wanting.starts_with("wants A1, ") == false);
  CHECK(read_of(book, "lacks leaves C 3, D 4").wanting == "wants C3, D4");
}

TEST_CASE("runs of high Roman numerals are of numbers, with a doubt where they can be names") {
  IdealCopy const book{*read_formula("2°: A-Z¹⁰ 2A-2Z¹⁰ 3A-3Z¹⁰")}; // 690 leaves
  struct Case {
    std::string run, wanting;
    bool doubted;
  };
  for (auto const& [run, wanting, doubted] :
       std::initializer_list<Case>{{"CI-CIII", "wants L1-3", true}, // or C1-3
                                   {"CCX-CCXII", "wants X10, Y1, Y2", false},
                                   {"LI-LII", "wants F1, F2", true},
                                   {"I-L", "wants A-E", true}, // or three gatherings
                                   {"XL-XLII", "wants D10, E1, E2", false},
                                   {"V-X", "wants A5-10", false},
                                   {"L-M", "wants L-M", true}}) { // M is no leaf of the book
    CAPTURE(run);
    auto const read = read_of(book, "lacks ff. " + run);
    CHECK(read.wanting == wanting);
    CHECK(!read.doubts.empty() == doubted);
  }
}
