// SPDX-License-Identifier: MIT
// A law: what is written of a copy is read back as the same leaves, without a doubt, whatever the gatherings are called. The
// books are made from their names, so the leaves of each are known without the library. The names are those of the grammar of
// signatures (leaf/signature_reader.hpp); the order of the Latin, Greek, Hebrew and Russian alphabets is that of Unicode.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "true_book.hpp"

#include <doctest/doctest.h>
#include <ostream>
#include <set>

using namespace bifolium;

namespace {

using Names = std::vector<std::string>;

std::string utf8_of(char32_t c) {
  if (c < 0x80) return {static_cast<char>(c)};
  return {static_cast<char>(0xC0 | (c >> 6U)), static_cast<char>(0x80 | (c & 0x3FU))};
}
/// So many times A to Z, or a to z: A-Z or 3a-3z.
Names latin(char first, int multiple = 1, std::string const& before = "", std::string const& after = "") {
  Names names;
  for (char const c : std::string_view{"ABCDEFGHIKLMNOPQRSTVXYZ"})
    names.push_back(before + (multiple > 1 ? std::to_string(multiple) : "") + static_cast<char>(c - 'A' + first) +
                    after);
  return names;
}
Names letters_from(char32_t first, char32_t last, std::vector<char32_t> const& without, int multiple = 1) {
  Names names;
  for (auto c = first; c <= last; ++c)
    if (std::find(without.begin(), without.end(), c) == without.end())
      names.push_back((multiple > 1 ? std::to_string(multiple) : "") + utf8_of(c));
  return names;
}
Names greek(bool capital = false, int multiple = 1) { // final sigma is no letter of its own; Α-Ω has a gap at its place
  return capital ? letters_from(0x391, 0x3A9, {0x3A2}, multiple) : letters_from(0x3B1, 0x3C9, {0x3C2}, multiple);
}
Names russian(bool capital = false, int multiple = 1) { // without й
  return capital ? letters_from(0x410, 0x42F, {0x419}, multiple) : letters_from(0x430, 0x44F, {0x439}, multiple);
}
Names hebrew() { // without the final letters
  Names names;
  for (auto const& one : letters_from(0x5D0, 0x5EA, {0x5DA, 0x5DD, 0x5DF, 0x5E3, 0x5E5})) names.push_back(one);
  return names;
}
Names numbers(int from, int to, std::string const& before = "") {
  Names names;
  for (int n = from; n <= to; ++n) names.push_back(before + std::to_string(n));
  return names;
}
Names part(Names const& names, std::size_t from, std::size_t to) {
  return {names.begin() + static_cast<std::ptrdiff_t>(from), names.begin() + static_cast<std::ptrdiff_t>(to)};
}

/// A gathering of a made book, and the number of its first leaf.
struct Quire {
  std::string name;
  int run{}, first{}, leaves{};
  /// The name of one of its leaves. After a number or a number in quotation marks the figure has a stroke before it: 36/10
  /// (catalogues of incunables).
  [[nodiscard]] std::string leaf(int number) const {
    auto const last = name.back();
    bool const figure = is_digit(last) || (last == '\'' && is_digit(name[1]));
    return name + (figure ? "/" : "") + std::to_string(number);
  }
};
struct MadeBook {
  std::string formula{"8°:"};
  std::vector<Quire> quires;
  int leaves{};

  void add(Names const& run, int folded) {
    constexpr char const* raised[]{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
    formula += ' ' + run.front() + (run.size() > 1 ? "-" + run.back() : "");
    for (char const c : std::to_string(folded)) formula += raised[c - '0'];
    auto const number = quires.empty() ? 0 : quires.back().run + 1;
    for (auto const& name : run) quires.push_back({name, number, leaves + 1, folded}), leaves += folded;
  }
  void add_each(Names const& names, int folded) {
    for (auto const& name : names) add({name}, folded);
  }
};

/// Symbols, alone and repeated, and marks made of parentheses.
Names const& symbols() {
  static Names const all{"*", "2*", "3*", "(*)", "(**)", "†",  "2†",  "‡",   "§",   "2§", "¶",  "☞",   "&",  "2&",
                         "#", "@",  "%",  "※",   "⁂",    ")(", "2)(", "):(", ")o(", "(:", ":)", "(:)", "(?)"};
  return all;
}
Names const& words_in_brackets() {
  static Names const all{"[par.]", "[con]", "[rum]", "[red star]", "[hand, left]", "[col.x]", "[fist-hand]"};
  return all;
}
Names const& printed() {
  static Names const all{"\"G&H\"", "\"A-B\"", "\"c3\"", "\"x y\"", "\"a.1\"", "\"u, v\"", "'1'", "'7'"};
  return all;
}

std::vector<MadeBook> made_books() {
  std::vector<MadeBook> all;
  auto const book = [&] { return &all.emplace_back(); };
  auto* one = book();
  for (int multiple = 1; multiple <= 4; ++multiple) one->add(latin('a', multiple), 8);
  one = book();
  for (int multiple = 1; multiple <= 4; ++multiple) one->add(latin('A', multiple), 10);
  one = book(), one->add({"π"}, 2);
  for (int multiple = 1; multiple <= 2; ++multiple)
    one->add(latin('a', multiple), 8), one->add(latin('A', multiple), 4);
  one->add({"χ"}, 2);
  one = book(), one->add(latin('a'), 8), one->add({"&"}, 8), one->add({"2&"}, 4),
  one->add(part(latin('a', 2), 0, 3), 8);
  one = book(), one->add(numbers(1, 200), 8);
  one = book(), one->add(numbers(1, 20), 8), one->add({"21"}, 4);
  one = book(), one->add(numbers(1, 12), 12), one->add(numbers(1, 12, "²"), 10);
  one = book(), one->add(part(latin('A'), 0, 10), 8), one->add(numbers(1, 40), 6), one->add(part(latin('a'), 0, 10), 8);
  one = book(), one->add_each(symbols(), 4), one->add(latin('A'), 8), one->add(latin('a'), 6);
  one = book(), one->add({"(*)"}, 4), one->add(part(latin('A'), 0, 3), 4);
  one = book(), one->add_each(words_in_brackets(), 4), one->add_each(printed(), 4), one->add(part(latin('A'), 0, 5), 8);
  one = book(), one->add(latin('A'), 8), one->add(latin('A', 1, "²"), 8), one->add(latin('A', 2, "³"), 4);
  one->add({"πA"}, 4), one->add({"χB"}, 4), one->add({"²πC"}, 4), one->add({"π"}, 2), one->add({"2π"}, 2);
  one = book(), one->add({"πA"}, 4), one->add(part(latin('B'), 0, 5), 8);
  one = book();
  for (std::string const sign : {"*", "†", "‡", "§", "¶"}) one->add(latin('A', 1, sign), 8), one->add({sign}, 4);
  for (std::string const sign : {"*", "†", "§"}) one->add(latin('a', 1, "", sign), 8);
  one->add(latin('a'), 8);
  one = book(), one->add(latin('a', 1, "(", ")"), 8), one->add(latin('a', 2, "(", ")"), 4), one->add(latin('a'), 8);
  one->add({"(H*)"}, 4), one->add({"H*"}, 4), one->add({"H"}, 4);
  one = book(), one->add({"aα", "bβ", "cγ"}, 8), one->add(part(latin('a'), 0, 3), 8), one->add({"α", "β", "γ"}, 8);
  for (bool const capital : {false, true}) {
    one = book();
    for (int multiple = 1; multiple <= 4; ++multiple) one->add(greek(capital, multiple), 8);
    one = book();
    for (int multiple = 1; multiple <= 4; ++multiple) one->add(russian(capital, multiple), 8);
  }
  one = book(), one->add(hebrew(), 8), one->add(part(latin('a'), 0, 3), 8);
  return all;
}
/// A book of runs of every kind, none of whose names comes again.
MadeBook book_at_random(truth::Draw& draw) {
  static std::vector<Names> const kinds{latin('a'),
                                        latin('a', 2),
                                        latin('a', 3),
                                        latin('A'),
                                        latin('A', 2),
                                        latin('A', 1, "²"),
                                        latin('A', 1, "*"),
                                        latin('A', 1, "", "*"),
                                        numbers(1, 60),
                                        greek(),
                                        russian(),
                                        hebrew(),
                                        symbols(),
                                        words_in_brackets(),
                                        printed(),
                                        latin('a', 1, "(", ")"),
                                        {"π"},
                                        {"πB"},
                                        {"2χ"}};
  MadeBook book;
  std::set<std::string> taken; // π is also a letter of α-ω
  for (auto times = draw.from_to(2, 5); times > 0; --times) {
    auto const k = static_cast<std::size_t>(draw.number(static_cast<int>(kinds.size())));
    auto const& names = kinds[k];
    bool again = false;
    for (auto const& name : names) again = !taken.insert(name).second || again;
    if (again) continue;
    bool const series = k < 11 || k == 15; // a run of Hebrew letters is one of numbers: ט-כ may be 9 to 20
    auto const from = static_cast<std::size_t>(draw.number(static_cast<int>(names.size()))) / 2;
    auto const to = from + 1 + static_cast<std::size_t>(draw.number(static_cast<int>(names.size() - from)));
    if (series)
      book.add(part(names, from, to), draw.from_to(1, 6) * 2);
    else
      book.add_each(part(names, from, to), draw.from_to(1, 4) * 2);
  }
  return book;
}

std::vector<LeafSpan> spans_of(IdealCopy const& book, std::set<int> const& numbers) {
  std::vector<LeafSpan> spans;
  for (auto i = numbers.begin(); i != numbers.end();) {
    auto const from = *i;
    auto to = from;
    for (++i; i != numbers.end() && *i == to + 1; ++i) ++to;
    spans.push_back(span_of_numbers(book, from, to));
  }
  return spans;
}
std::set<int> numbers_of(std::vector<LeafSpan> const& spans) {
  std::set<int> numbers;
  for (auto const& span : spans)
    for (auto n = span.from; n <= span.to; ++n) numbers.insert(static_cast<int>(n));
  return numbers;
}
std::set<int> others(int leaves, std::set<int> const& numbers) {
  std::set<int> rest;
  for (int n = 1; n <= leaves; ++n)
    if (!numbers.contains(n)) rest.insert(n);
  return rest;
}
/// The leaves as a list: whole gatherings by their names, others by leaves. A gathering whose name is a number is named by its
/// leaves where the item before it is of leaves: in 2/1, 3 the figure may be the leaf.
std::string listed(MadeBook const& book, std::set<int> const& numbers, std::string const& between) {
  std::string text;
  bool of_leaves = false;
  auto const item = [&](std::string const& one, bool leaves) {
    text += (text.empty() ? "" : between) + one;
    of_leaves = leaves;
  };
  auto const has = [&](Quire const& quire) {
    for (int k = 0; k < quire.leaves; ++k)
      if (!numbers.contains(quire.first + k)) return false;
    return true;
  };
  auto const& all = book.quires;
  for (std::size_t q = 0; q < all.size(); ++q) {
    auto const& quire = all[q];
    if (has(quire) && !(of_leaves && is_digit(quire.name[0]) && is_digit(quire.name.back()))) {
      auto last = q;
      while (last + 1 < all.size() && all[last + 1].run == quire.run && has(all[last + 1])) ++last;
      item(quire.name + (last > q ? "-" + all[last].name : ""), false);
      q = last;
      continue;
    }
    for (int k = 1; k <= quire.leaves; ++k) {
      if (!numbers.contains(quire.first + k - 1)) continue;
      auto last = k;
      while (last < quire.leaves && numbers.contains(quire.first + last)) ++last;
      item(quire.leaf(k) + (last > k ? "-" + std::to_string(last) : ""), true);
      k = last;
    }
  }
  return text;
}

struct Misread {
  int tried = 0;
  std::vector<std::string> told;
  void check(IdealCopy const& book, std::string const& text, std::set<int> const& present) {
    ++tried;
    auto const read = read_leaves_present(book, text);
    std::string wrong;
    if (!read)
      wrong = "refused";
    else if (numbers_of(read->spans) != present ||
             check_copy(book, read->spans).leaves_present != static_cast<int>(present.size()))
      wrong = "read as " + wants(book, check_copy(book, read->spans));
    else if (!read->warnings().empty())
      wrong = "doubted";
    if (!wrong.empty() && told.size() < 12) told.push_back(text + ": " + wrong);
    CHECK(wrong.empty());
  }
};

/// The sets of leaves that are tried: each gathering, runs of gatherings, each leaf, and leaves at random.
std::vector<std::set<int>> sets_of(MadeBook const& book, truth::Draw& draw) {
  std::vector<std::set<int>> sets;
  auto const& all = book.quires;
  auto const put = [](std::set<int>& to, Quire const& quire) {
    for (int k = 0; k < quire.leaves; ++k) to.insert(quire.first + k);
  };
  for (auto const& quire : all) put(sets.emplace_back(), quire);
  for (std::size_t from = 0; from < all.size(); ++from) {
    auto& run = sets.emplace_back();
    auto const to = from + 1 + static_cast<std::size_t>(draw.number(static_cast<int>(all.size() - from)));
    for (auto q = from; q < to; ++q) put(run, all[q]);
  }
  for (int n = 1; n <= book.leaves; n += book.leaves > 400 ? 3 : 1) sets.push_back({n});
  for (int round = 0; round < 40; ++round) {
    auto& some = sets.emplace_back();
    auto const rarely = draw.from_to(2, 30);
    for (auto const& quire : all) {
      if (!draw.one_in(rarely)) continue;
      if (draw.one_in(2))
        put(some, quire);
      else
        for (int k = 0; k < quire.leaves; ++k)
          if (draw.one_in(2)) some.insert(quire.first + k);
    }
  }
  return sets;
}

void check_lists(MadeBook const& made, truth::Draw& draw) {
  CAPTURE(made.formula);
  auto const formula = read_formula(made.formula);
  REQUIRE(formula);
  IdealCopy const book{*formula};
  REQUIRE_MESSAGE(book.leaves() == made.leaves, made.formula);
  Misread misread;
  for (auto const& wanting : sets_of(made, draw)) {
    if (wanting.empty() || static_cast<int>(wanting.size()) == made.leaves) continue;
    auto const present = others(made.leaves, wanting);
    misread.check(book, wants(book, check_copy(book, spans_of(book, present))), present);
    misread.check(book, "wants " + listed(made, wanting, ", "), present);
    misread.check(book, listed(made, wanting, ", "), wanting);
    misread.check(book, listed(made, present, "; "), present);
  }
  CHECK(misread.tried > 0);
  for (auto const& one : misread.told) MESSAGE(one);
}

} // namespace

TEST_CASE("what is written of a copy is read back, whatever its gatherings are called") {
  truth::Draw draw{1473};
  for (auto const& made : made_books()) check_lists(made, draw);
}

TEST_CASE("what is written of a copy of a book with names of several kinds is read back") {
  truth::Draw draw{1501};
  for (int round = truth::rounds(60); round > 0; --round)
    if (auto const made = book_at_random(draw); made.leaves > 0) check_lists(made, draw);
}

TEST_CASE("a reference to a leaf of a gathering of any name leads back to it") {
  truth::Draw draw{1455};
  for (auto const& made : made_books()) {
    CAPTURE(made.formula);
    IdealCopy const book{*read_formula(made.formula)};
    REQUIRE_MESSAGE(book.leaves() == made.leaves, made.formula);
    std::vector<std::string> told;
    for (auto const& quire : made.quires)
      for (int k = 1; k <= quire.leaves; ++k) {
        auto const leaf = *book.leaf_of_number(quire.first + k - 1);
        for (auto const side : {LeafSide::not_said, LeafSide::recto, LeafSide::verso}) {
          Names texts{quire.leaf(k) + (side == LeafSide::recto ? "r" : side == LeafSide::verso ? "v" : "")};
          for (auto form : {ReferenceForm::signature, ReferenceForm::raised_side, ReferenceForm::roman,
                            ReferenceForm::leaf_number, ReferenceForm::leaf_letter})
            texts.push_back(write_reference(book, {leaf, side}, form));
          for (auto const& text : texts) {
            auto const read = read_reference(book, text);
            bool const right = read && *read == Reference{leaf, side} && !read->doubtful;
            if (!right && told.size() < 8) told.push_back(text);
            CHECK(right);
          }
        }
      }
    for (auto const& one : told) MESSAGE(one);
  }
}

// Texts that can be read in two ways: common practice, no source. The leaves are counted by hand.
TEST_CASE("a name that is also something else is doubted, and taken for the likelier") {
  struct Either {
    char const *formula, *list, *wanting;
    std::size_t doubts;
  };
  auto const* const ampersand = "8°: a-z⁸ &⁸ 2a-2c⁸";
  auto const* const numbered = "8°: A⁸ 1-20⁸ 21⁴";
  auto const* const doubled = "2°: a-z¹⁰ 2a-2z¹⁰";
  for (auto const& one : std::initializer_list<Either>{
           {doubled, "wants ii", "wants 2i", 1},
           {doubled, "wants xx-zz", "wants 2x-2z", 1},
           {doubled, "wants aa, bb", "wants 2a-2b", 0}, // a has no leaf of that name
           {doubled, "wants 1r", "wants a1", 1},
           {doubled, "wants f. 2r", "wants a2", 1},
           {doubled, "wants f. 2r-3v", "wants a2, a3", 0},
           {doubled, "wants leaf 2r", "wants a2", 2},
           {doubled, "wants leaf 2a3", "wants 2a3", 0},
           {doubled, "wants leaves 2a-2c", "wants 2a-2c", 0},
           {doubled, "wants f. 2, 3", "wants a2, a3", 0},
           {numbered, "wants leaf 3", "wants A3", 1},
           {numbered, "wants leaf 3/4", "wants 3/4", 0},
           {doubled, "a-e, f, 2a", "wants g-z, 2b-2z", 0},
           {doubled, "a b c d e f 2a", "wants g-z, 2b-2z", 0},
           {numbered, "wants 2/1, 3", "wants 2/1, 2/3", 1},
           {numbered, "wants 2/1,3-5", "wants 2/1, 2/3-5", 1},
           {numbered, "wants 2/1, 9", "wants 2/1, 9/1-8", 0}, // 2 has no leaf 9
           {numbered, "wants 2/5, 3", "wants 2/5, 3/1-8", 0}, // a list goes on
           {numbered, "wants A5, 7", "wants A5, A7", 1},
           {numbered, "wants f. 2, 3", "wants A2, A3", 1},
           {numbered, "wants 2/1, 3/1-8", "wants 2/1, 3/1-8", 0},
           {numbered, "wants 21", "wants 21", 0},
           {numbered, "2-20, 21", "wants A, 1", 0},
           {ampersand, "wants z & 2a", "wants z, 2a", 1},
           {ampersand, "wants z, &, 2a", "wants z, &, 2a", 0},
           {ampersand, "wants z &, 2a", "wants z, &, 2a", 0},
           {ampersand, "wants z and &", "wants z, &", 0},
           {ampersand, "wants &", "wants &", 0},
           {ampersand, "wants & and a1", "wants a1, &", 0},
           {ampersand, "wants &-2b", "wants &, 2a-2b", 0},
           {ampersand, "wants z3 and &8", "wants z3, &8", 0},
           {ampersand, "a-z & 2a-2c", "", 0},
           {ampersand, "a-y & 2a-2c", "wants z", 1},
           {ampersand, "a-z, &, 2a-2c", "", 0},
           {ampersand, "a-2c, & wanting", "wants &", 0},
           {ampersand, "a-2c (z and & wanting)", "wants z, &", 0},
           {ampersand, "a-z 2a-2c", "wants &", 0},
           {"8°: a-z⁸", "wants a & b", "wants a-b", 0}, // no gathering &
           {"8°: *⁴ A-B⁸", "wants (*)", "wants *", 0},  // no gathering (*)
           {"8°: *⁴ (*)⁴ A-B⁸", "A-B (wants (*)) *", "wants (*)", 0},
           {"8°: *⁴ (*)⁴ A-B⁸", "A-B ((*) and *2 lacking)", "wants *, (*)", 1}, // are *1, 3 and 4 there?
           {"8°: *⁴ (*)⁴ A-B⁸", "* (*) A-B (−(*)1)", "wants (*)1", 0},
           {"8°: *⁴ (*)⁴ A⁸ ((*)4 blank)", "wants (*)2-4 ((*)4 blank), A1", "wants (*)2-4 ((*)4 blank), A1", 0},
           {"8°: *⁴ (*)⁴ A⁸ ((*)4 blank)", "wants (*)2, A1 (A1 blank)", "wants (*)2, A1", 0},
           {"8°: )(⁴ A⁸", "wants )(2-4 ()(4 blank), A1", "wants )(2-4, A1", 0},
           {"8°: π⁴ p⁸", "wants pi", "wants π", 1},
           {"8°: α-ω⁸ 2α-2ω⁸ π⁴", "wants π", "wants π", 1},
           {"8°: α-ω⁸ a⁸ b² c⁸ d² e⁸ f² g⁸ h² i⁸ k² l⁸ m² n⁸ o² p⁸ q² r⁸ s² π⁴", "wants π", "wants π", 1},
           {"8°: π⁴ a⁸ b² c⁸ d² e⁸ f² g⁸ h² i⁸ k² l⁸ m² n⁸ o² p⁸ q² r⁸ s² α-ω⁸", "wants π", "wants π", 1}}) {
    CAPTURE(std::string{one.formula});
    CAPTURE(std::string{one.list});
    IdealCopy const book{*read_formula(one.formula)};
    auto const read = read_leaves_present(book, one.list);
    REQUIRE(read);
    CHECK(wants(book, check_copy(book, read->spans)) == one.wanting);
    CHECK(read->warnings().size() == one.doubts);
  }
  IdealCopy const book{*read_formula(ampersand)};
  auto const list = read_leaves_present(book, "wants z & 2a");
  REQUIRE(list->warnings().size() == 1);
  CHECK(list->warnings()[0].problem == Problem::name_in_two_ways);
  CHECK(list->warnings()[0].place->column == 9);
  CHECK(list->warnings()[0].found_text() == "&");
}

TEST_CASE("a number is never divided into a gathering and a leaf") {
  for (std::string const formula : {"8°: 1-20⁸ 21⁴", "8°: 1-20⁸", "8°: ²1-²20⁸", "8°: A⁸ 1-2⁸"}) {
    CAPTURE(formula);
    IdealCopy const book{*read_formula(formula)};
    for (std::string const series : {"", "²"})
      for (int number = 10; number < 130; ++number) {
        CAPTURE(number);
        CHECK_FALSE(read_reference(book, series + std::to_string(number)));
        CHECK_FALSE(read_reference(book, "sig. " + series + std::to_string(number)));
        auto const list = read_leaves_present(book, series + std::to_string(number)); // the gathering, or nothing
        if (list) CHECK(book.numbers_of(list->spans[0].first.gathering).from == list->spans[0].from);
      }
  }
}

TEST_CASE("a reference that is also the name of a gathering is doubtful, and one by the word for leaves is not") {
  IdealCopy const book{*read_formula("8°: a-z¹⁰ 2a-2z¹⁰")}; // 2a, 2b, 2r and 2v are gatherings
  for (std::string const side : {"a", "b", "r", "v"}) {
    CAPTURE(side);
    CHECK(read_reference(book, "2" + side)->doubtful);
    CHECK(read_reference(book, "2" + side)->leaf == read_reference(book, "a2")->leaf);
    CHECK_FALSE(read_reference(book, "f. 2" + side)->doubtful);
    CHECK_FALSE(read_reference(book, "3" + side)->doubtful);
    CHECK_FALSE(read_reference(book, "1" + side)->doubtful);
  }
  CHECK(read_reference(book, "ii")->doubtful);
  CHECK_FALSE(read_reference(book, "a ii")->doubtful);
  CHECK(write_reference(book, *read_reference(book, "a2v"), ReferenceForm::leaf_letter) == "f. 2b");
  CHECK(write_reference(book, *read_reference(book, "a3v"), ReferenceForm::leaf_letter) == "3b");
}

TEST_CASE("joints and paper are read of gatherings of any name") {
  IdealCopy const book{*read_formula("4°: *⁴ (*)⁴ [red star]⁴ [col.x]⁴ \"G. H\"⁴ 1-21⁴ 2r⁴ &⁴")};
  for (std::string const name : {"*", "(*)", "[red star]", "[col.x]", "\"G. H\"", "21/", "2r", "&"}) {
    CAPTURE(name);
    auto const leaf = read_reference(book, name + "1");
    REQUIRE(leaf);
    for (auto const& second : {std::string{"4"}, name + "4"}) {
      auto const joint = read_joints(book, name + "1." + second + " conjugate");
      REQUIRE(joint);
      CHECK(joint->front().first == leaf->leaf);
      CHECK(joint->front().second == read_reference(book, name + "4")->leaf);
    }
    auto const stub = read_joints(book, name + "2 stub");
    REQUIRE(stub);
    CHECK(stub->front().first.leaf == 2);
  }
  CHECK_FALSE(read_joints(book, "21 stub")); // no leaf 1 of gathering 2
}

TEST_CASE("a mark that a formula has only before a count is read alone and written back") {
  for (std::string const mark : {"(a)", "(2B)", "(H*)", "(?)", ")o(", "):(", "(*)", ")(", "²(a)"}) {
    CAPTURE(mark);
    auto const read = read_signature(mark);
    REQUIRE(read);
    CHECK(to_text(*read).view() == mark);
  }
  for (auto const* const text : {"()", "(a", "a)", "(a b)", "(lacks A1)", ":)(", ")"})
    CHECK_FALSE(read_signature(text));
}
