// SPDX-License-Identifier: MIT
#include <bifolium/leaf/read_signature.hpp>
#include <bifolium/leaf/signature_run.hpp>

#include "check.hpp"

#include <sstream>
#include <string>
#include <type_traits>
#include <unordered_set>
#include <vector>

using namespace bifolium;

namespace {
constexpr std::int64_t run(std::string_view first, std::string_view last, Letters added = {}) {
  return *run_length(*read_signature(first, added), *read_signature(last, added), Alphabet{added});
}
} // namespace

TEST_CASE("a signature is a small value") {
  STATIC_CHECK(std::is_trivially_copyable_v<Signature>);
  STATIC_CHECK(sizeof(Signature) <= 40);
  std::unordered_set<Signature> const set{*read_signature("2C"), *read_signature("CC"), *read_signature("Cc")};
  CHECK(set.size() == 1);
}

TEST_CASE("the position of a letter that an alphabet may not have is that of one that it has, or none") {
  for (int choice = 0; choice < 8; ++choice) {
    Alphabet const alphabet{{(choice & 1) != 0, (choice & 2) != 0, (choice & 4) != 0}};
    int used = 0;
    for (int letter = 1; letter <= 26; ++letter) {
      bool const has = alphabet.has(letter);
      used += has ? 1 : 0;
      CHECK(alphabet.place_if_used(letter) == (has ? std::optional{used} : std::nullopt));
      if (has) CHECK(alphabet.place(letter) == used);
    }
    CHECK(used == alphabet.size());
  }
}

TEST_CASE("runs are counted in the 23 letters") {
  // Indiana Historical Society: B-R is 16 gatherings, not 17
  STATIC_CHECK(run("B", "R") == 16);
  // Rare Book School sample descriptions: B-Y is 21 gatherings
  STATIC_CHECK(run("B", "Y") == 21);
  // EEBO-TCP A01466 ([2], 152 leaves): B-U is 19 gatherings because U is V
  STATIC_CHECK(run("B", "U") == 19);
  // EEBO-TCP A01200: A² B-5H⁴ 5I² is 400 leaves
  STATIC_CHECK(2 + 4 * run("B", "5H") + 2 == 400);
  // Macklin Bible, vol. III (Pryor-Johnson cat. II): †A-†8E² is 332 leaves
  STATIC_CHECK(2 * run("†A", "†8E") == 332);
  // Greek has 24 letters
  STATIC_CHECK(run("α", "ω") == 24);
}

TEST_CASE("letters are added by name") {
  STATIC_CHECK(run("A", "Z") == 23);
  STATIC_CHECK(run("A", "Z", {.w = true}) == 24);
  STATIC_CHECK(run("A", "Z", {.j = true, .u = true}) == 25);
  STATIC_CHECK(run("A", "Z", {.j = true, .u = true, .w = true}) == 26);
  STATIC_CHECK(*read_signature("J") == *read_signature("I"));
  STATIC_CHECK(*read_signature("u") == *read_signature("v"));
  STATIC_CHECK(*read_signature("J", {.j = true}) != *read_signature("I", {.j = true}));
}

TEST_CASE("every gathering of a run is named once and in order") { // constructed
  for (Letters const letters : {Letters{}, Letters{.w = true}, Letters{.j = true, .u = true, .w = true}}) {
    Alphabet const alphabet{letters};
    auto const first = Signature::letter('B', 1, letters), last = Signature::letter('C', 4, letters);
    auto const number = *run_length(first, last, alphabet);
    for (std::int64_t i = 1; i < number; ++i) {
      auto const here = run_member(first, last, i, alphabet);
      CHECK(here > run_member(first, last, i - 1, alphabet));
      CHECK(*run_length(first, here, alphabet) == i + 1);
    }
    CHECK(run_member(first, last, number - 1, alphabet) == last);
  }
}

TEST_CASE("runs do not cross from one series to another, nor go backwards") {
  STATIC_CHECK(!run_length(Signature::letter('a'), Signature::letter('C')));
  STATIC_CHECK(!run_length(Signature::letter('A', 2), Signature::letter('G')));
  STATIC_CHECK(!run_length(*read_signature("²A"), *read_signature("B")));
}

TEST_CASE("marks are read in the spellings of the manuals and the records") {
  // spellings: ICCU App. C; Modena; EEBO-TCP notes; Penn record of 1598 for )(
  std::vector<std::pair<std::string, std::string>> const spellings{
      {"AA", "2A"},
      {"Aa", "2A"},
      {"aaa", "3a"},
      {"π", "π"},
      {"pi", "π"},
      {"[pi]", "π"},
      {"chi", "χ"},
      {"[pi]A", "πA"},
      {"chiK", "χK"},
      {"²A", "²A"},
      {"**", "2*"},
      {"2*", "2*"},
      {"[par.]", "[par.]"},
      {"3[par.]", "3[par.]"},
      {"†8E", "†8E"},
      {"H*", "H*"},
      {"O**", "O**"},
      {")(", ")("},
      {"[et]", "[et]"},
      {"'12'", "'12'"},
      {"[A]", "A"},
      {"[2]", "2"},
      {"^2A", "²A"},
      {"&", "&"},
      {"[fleur de lis]", "[fleur de lis]"},
  };
  for (auto const& [spelled, canonical] : spellings) {
    auto const read = read_signature(spelled);
    REQUIRE_MESSAGE(read, spelled);
    CHECK(to_text(*read).view() == canonical);
    CHECK(*read_signature(to_text(*read)) == *read);
    std::ostringstream out;
    out << *read;
    CHECK(out.str() == canonical);
  }
}

TEST_CASE("a raised prefix is read in every spelling, and a multiple of a name or symbol") { // constructed
  std::vector<std::pair<std::string, std::string>> const spellings{
      {"2[par.]", "2[par.]"},    {"^2A", "²A"},      {"<sup>2</sup>A", "²A"}, {"^2^3A", "²3A"}, {"^πA", "πA"},
      {"<sup>χ</sup>2B", "χ2B"}, {"^2[pi]A", "²πA"}, {"2)(", "2)("},
  };
  for (auto const& [spelled, canonical] : spellings) {
    auto const read = read_signature(spelled);
    REQUIRE_MESSAGE(read, spelled);
    CHECK(to_text(*read).view() == canonical);
  }
  for (std::string const refused : {"^ππ", "^π", "<sup>π</su>A", "2[2", "2[pi]", "^0A", "^100A"})
    CHECK_MESSAGE(!read_signature(refused), refused);
}

TEST_CASE("a sign that also means something else is set as often as it stands") { // constructed
  for (std::string const sign : {"+", ":"}) {
    std::string text;
    for (int often = 1; often <= 9; ++often) {
      text += sign;
      auto const read = read_signature(text);
      REQUIRE_MESSAGE(read, text);
      CHECK(read->multiple() == static_cast<std::uint32_t>(often));
      CHECK(to_text(*read).view() == text);
    }
  }
}

TEST_CASE(
    "a Greek letter beside a Latin one belongs to the mark if it is the same letter, in the line") { // constructed
  for (auto const* text : {"aα", "bβ", "Bβ", "2bβ"}) {
    INFO(std::string{text});
    auto const read = read_signature(text);
    REQUIRE(read);
    CHECK(to_text(*read).view() == text);
  }
  // another letter of the Greek alphabet, a raised one, a Latin one, and a second
  for (auto const* text : {"aβ", "xξ", "b^β", "bᵝ", "bB", "pP", "aαα"}) {
    INFO(std::string{text});
    REQUIRE(!read_signature(text));
    CHECK(read_signature(text).error().problem == Problem::trailing_text);
  }
  CHECK(to_text(*read_signature("Bb")).view() == "2B"); // a capital and its small letter are the letter twice
}

TEST_CASE("what is no signature is an error with its column") {
  CHECK(read_signature("").error().problem == Problem::no_signature);
  CHECK(read_signature("A8").error() == error_at(Problem::trailing_text, TextPlace{1, 2}, "8"));
  CHECK(read_signature("99999A").error().problem == Problem::multiple_too_high);
  CHECK(read_signature("[a name that is longer than any]").error().problem == Problem::mark_too_long);
  // the name is quoted, and not what comes after it
  CHECK(found_in(read_signature("[a name that is longer than any] 8").error()).substr(0, 11) == "a name that");
}

TEST_CASE("a quoted mark whose entities would make markup or another entity is refused") {
  // written with its characters it would be read as another mark
  for (std::string const text : {"&lt;sup&gt;a", "&lt;sup>a", "&lt;sub&gt;a", "a&lt;/sup>", "a&lt;/sub&gt;",
                                 "<hi x&gt;a", "&lt;hi sup>a", "a&lt;/hi&gt;", "&amp;lt;a", "&amp;amp;", "&amp;gt;"}) {
    CAPTURE(text);
    auto const read = read_signature('"' + text + '"');
    REQUIRE_FALSE(read);
    CHECK(read.error().problem == Problem::unknown_mark);
    CHECK(read.error().place->line == 1);
    CHECK(read.error().place->column == 2);
  }
  // other entities are their characters, and what is written with them reads back
  for (std::string const text : {"a&lt;b", "a&gt;b", "G&amp;H", "^&lt;"}) {
    CAPTURE(text);
    auto const read = read_signature('"' + text + '"');
    REQUIRE(read);
    CHECK(*read_signature(to_text(*read).view()) == *read);
  }
}

TEST_CASE("what a mark is made of decides what it is") { // constructed
  STATIC_CHECK(Signature::pi() == Signature::pi(1) && Signature::pi() != Signature::pi(2));
  STATIC_CHECK(Signature::chi() == Signature::chi(1) && Signature::greek(1) == Signature::greek(1, false, 1));
  // Greek letters, small and capital, the first and the last, once and several times
  for (auto const* small : {"α", "ω"}) CHECK(read_signature(small)->mark() == Mark::greek);
  for (auto const* capital : {"Α", "Ω"}) CHECK(read_signature(capital)->mark() == Mark::greek_capital);
  for (std::uint32_t times = 1; times <= 9; ++times) {
    std::string text;
    for (std::uint32_t i = 0; i < times; ++i) text += "β";
    CAPTURE(text);
    CHECK(*read_signature(text) == Signature::greek(2, false, times));
  }
  // accented letters and the long s are symbols, but letters within words are not marks
  for (auto const* symbol :
       {"ã", "ñ", "õ", "ĩ", "ũ", "ẽ", "ā", "ē", "ī", "ō", "ū", "ſ", "a\u0303", "é", "ü", "ç", "æ", "Œ", "ß"})
    CHECK(read_signature(symbol)->mark() == Mark::symbol);
  for (auto const* none : {"éa", "aé", "éü", "×", "÷", "−", "∓", "[]", "[ ]", "(", ""}) {
    CAPTURE(none);
    CHECK_FALSE(read_signature(none));
  }
  // a number in quotation marks is one, but there is no gathering 0
  CHECK(read_signature("\"7\"")->mark() == Mark::number);
  CHECK(read_signature("\"0\"")->mark() == Mark::printed);
  // signs after a letter belong to it as far as they can be kept
  auto const signs = [](std::size_t many) { return "A" + std::string(many, '*'); };
  CHECK(read_signature(signs(23)));
  CHECK_FALSE(read_signature(signs(24)));
}

TEST_CASE("marks of every kind are found again from their place in the series") { // letters of the alphabets counted
  struct {
    Mark mark;
    int letters; // of one alphabet
  } const kinds[]{{Mark::capital, 23},  {Mark::small_letter, 23},
                  {Mark::greek, 24},    {Mark::greek_capital, 24},
                  {Mark::cyrillic, 31}, {Mark::cyrillic_capital, 31},
                  {Mark::hebrew, 1},    {Mark::number, 1},
                  {Mark::pi, 1},        {Mark::chi, 1},
                  {Mark::symbol, 1},    {Mark::name, 1},
                  {Mark::printed, 1}};
  for (auto const& kind : kinds) {
    CAPTURE(static_cast<int>(kind.mark));
    for (auto const& key : {SignatureKey::of(kind.mark, kind.letters > 1 ? 1 : 0, 1),
                            SignatureKey::of(kind.mark, kind.letters > 1 ? 2 : 0, 7).in_series(3)})
      for (int rank = 1; rank <= 200; ++rank) {
        auto const there = key.at_rank(rank, Alphabet{});
        CHECK(there.rank(Alphabet{}) == rank);
        CHECK(there.series == key.series);
        // 1 to 200 in alphabets of so many letters
        CHECK(static_cast<int>(there.multiple) == (rank + kind.letters - 1) / kind.letters);
      }
  }
}

TEST_CASE("signs that printers used as signatures are marks, and punctuation is none") {
  // Signs for con, rum and et, which follow z in alphabets of early printers, and the usual ornaments (McKerrow, An
  // Introduction to Bibliography; the code points by their Unicode names; common practice which of them)
  for (
      auto const* sign :
      {"*",      "&",      "#",      "@",      "%",      "\u00A7", "\u00B6", // ASCII, SECTION SIGN, PILCROW SIGN
       "\u2184", "\uA76F", "\uA75D", "\uA75B", "\uA770", "\u204A", // REVERSED C, CON, RUM ROTUNDA, R ROTUNDA, US, TIRONIAN ET
       "\u2016", "\u2020", "\u2021", "\u203B", "\u2042", "\u204B", "\u2051", // VERTICAL LINE to TWO ASTERISKS ALIGNED
       "\u211E", "\u2123", "\u2125", "\u2117", // PRESCRIPTION, VERSICLE, OUNCE, a letter in a circle
       "\u261E", "\u261A", "\u2619", "\u2767", "\u2766", "\u2720", "\u271D", "\u2605", "\u263D", "\u2648", "\u2190"}) {
    CAPTURE(sign);
    auto const read = read_signature(sign);
    REQUIRE(read);
    CHECK(read->mark() == Mark::symbol);
    CHECK(to_text(*read).view() == sign);
  }
  for (auto const* none :
       {"\u2010", "\u2013", "\u2014", "\u2018", "\u2019", "\u201C", "\u201D", "\u2026", "\u2032", "\u2212", "\u2213",
        "\u2182", "\u2183", "\u00D7", "\u00F7", "\uFFFD", "\u20AC", "\u00AB", "\u00BB", "!",      "/",      "\\"}) {
    CAPTURE(none);
    CHECK_FALSE(read_signature(none));
  }
}

TEST_CASE("marks of two series make no run, and those of one make a run from the first to the last") {
  // every two series that a key can tell apart: the kind of mark, the raised number, π or χ before it, a sign beside it
  std::string_view const text = "*†";
  std::vector<SignatureKey> series;
  for (auto const mark : {Mark::capital, Mark::small_letter, Mark::greek, Mark::greek_capital, Mark::cyrillic,
                          Mark::number, Mark::pi, Mark::chi}) {
    auto const key = SignatureKey::of(mark, mark <= Mark::cyrillic_capital ? 1 : 0, 1);
    series.insert(series.end(), {key, key.in_series(2), key.in_series(3)});
    if (key.is_letter()) series.insert(series.end(), {key.duplicated(Duplicate::pi), key.duplicated(Duplicate::chi)});
    if (key.is_latin()) {
      series.push_back(key.with_symbol(Beside::after, 0, 1)); // A*
      series.push_back(key.with_symbol(Beside::after, 1, 3)); // A†
      series.push_back(key.with_greek());
      series.push_back(key.in_enclosure());
    }
  }
  auto const meant = [](SignatureKey first, SignatureKey last) { // π and χ are letters in a run of Greek letters
    return first.series == last.series ||
           (first.mark() == Mark::greek && (last.mark() == Mark::pi || last.mark() == Mark::chi) &&
            first.raised() == last.raised() && first.duplicate() == last.duplicate());
  };
  for (std::size_t a = 0; a < series.size(); ++a)
    for (std::size_t b = 0; b < series.size(); ++b) {
      CAPTURE(a);
      CAPTURE(b);
      auto const from = series[a], to = series[b].at_rank(5, Alphabet{});
      if (a == b) {
        CHECK(run_length(from, from, Alphabet{}, text) == 1);
        CHECK(run_length(from, to, Alphabet{}, text) == 5);
        CHECK_FALSE(run_length(to, from, Alphabet{}, text)); // not backwards
      } else if (!meant(from, to) || from.series == to.series)
        CHECK_FALSE(run_length(from, to, Alphabet{}, text));
    }
}

TEST_CASE("a mark is repeated from once to 9999 times, and numbers go to 999999") {
  for (std::uint32_t const multiple : {1U, 2U, 9998U, 9999U}) {
    CHECK(Signature::letter('A', multiple).multiple() == multiple);
    CHECK(Signature::greek(1, true, multiple).multiple() == multiple);
    CHECK(Signature::cyrillic(1, false, multiple).multiple() == multiple);
    CHECK(Signature::pi(multiple).multiple() == multiple);
    CHECK(Signature::chi(multiple).multiple() == multiple);
  }
  for (std::uint32_t const number : {1U, 10000U, 999'998U, 999'999U})
    CHECK(Signature::number(number).multiple() == number);
  for (std::uint32_t const multiple : {0U, 10000U, 4'294'967'295U}) {
    CHECK_THROWS_AS((void)Signature::letter('A', multiple), BrokenPrecondition);
    CHECK_THROWS_AS((void)Signature::greek(1, true, multiple), BrokenPrecondition);
    CHECK_THROWS_AS((void)Signature::cyrillic(1, false, multiple), BrokenPrecondition);
    CHECK_THROWS_AS((void)Signature::pi(multiple), BrokenPrecondition);
    CHECK_THROWS_AS((void)Signature::chi(multiple), BrokenPrecondition);
  }
  for (std::uint32_t const number : {0U, 1'000'000U})
    CHECK_THROWS_AS((void)Signature::number(number), BrokenPrecondition);
}
