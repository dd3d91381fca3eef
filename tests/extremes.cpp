// SPDX-License-Identifier: MIT
// Every public function that takes a bare number, with the least and the greatest it may be given and with what lies beyond:
// nothing, below nothing, the ends of the type. What holds there follows from the function's own words. (constructed)
// Numbers inside of structures are tried beside the readers and reckoners that take them.
#include <bifolium/bifolium.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/explain/explain_ranking.hpp>
#include <bifolium/leaf/signature_key.hpp>
#include <bifolium/leaf/token_cursor.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/extent.hpp>
#include <bifolium/record/printed_number.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/record_lines.hpp>

#include "check.hpp"

#include <limits>

using namespace bifolium;

namespace {

template <class Act> bool is_broken(Act act) {
  try {
    act();
  } catch (BrokenPrecondition const&) {
    return true;
  }
  return false;
}
/// Every one of the numbers breaks a precondition.
template <class Act, class Number> bool all_broken(std::initializer_list<Number> numbers, Act act) {
  for (auto number : numbers)
    if (!is_broken([&] { static_cast<void>(act(number)); })) return false;
  return true;
}
constexpr int least = std::numeric_limits<int>::min(), most = std::numeric_limits<int>::max();
constexpr double endless = std::numeric_limits<double>::infinity(),
                 no_number = std::numeric_limits<double>::quiet_NaN();

} // namespace

TEST_CASE("whole numbers and fractions at the ends of 64 bits") {
  STATIC_CHECK(checked_add(INT64_MAX, 0) == INT64_MAX && checked_add(INT64_MIN, INT64_MAX) == -1);
  STATIC_CHECK(!checked_add(INT64_MIN, -1) && !checked_add(INT64_MAX, INT64_MAX));
  STATIC_CHECK(checked_subtract(INT64_MIN, 0) == INT64_MIN && checked_subtract(-1, INT64_MAX) == INT64_MIN);
  STATIC_CHECK(checked_subtract(-1, INT64_MIN) == INT64_MAX && !checked_subtract(0, INT64_MIN));
  STATIC_CHECK(!checked_subtract(INT64_MIN, 1) && !checked_subtract(INT64_MAX, -1));
  STATIC_CHECK(checked_multiply(INT64_MAX, 1) == INT64_MAX && checked_multiply(INT64_MAX, -1) == -INT64_MAX);
  STATIC_CHECK(checked_multiply(INT64_MIN, 0) == 0 && !checked_multiply(INT64_MIN, INT64_MIN));
  STATIC_CHECK(to_text(Fraction{INT64_MIN}) == "-9223372036854775808");
  STATIC_CHECK(Fraction{0, INT64_MAX} == Fraction{} && Fraction{INT64_MAX, INT64_MAX} == Fraction{1});
  STATIC_CHECK(Fraction{INT64_MIN}.floor() == INT64_MIN && Fraction{1, INT64_MAX}.ceil() == 1);
  STATIC_CHECK(Fraction{-1, INT64_MAX}.floor() == -1 && Fraction{-INT64_MAX, 2}.floor() == INT64_MIN / 2);
  STATIC_CHECK(!checked_multiply(Fraction{INT64_MIN}, Fraction{-1}) &&
               !checked_subtract(Fraction{}, Fraction{INT64_MIN}));
  STATIC_CHECK(!checked_divide(Fraction{1}, Fraction{INT64_MIN}));
  CHECK(all_broken({INT64_MIN, std::int64_t{-1}, std::int64_t{0}}, [](auto below) { return Fraction{1, below}; }));
  CHECK(Fraction{INT64_MIN, 1} == Fraction{INT64_MIN});
}

TEST_CASE("characters, columns, raised figures and what an error keeps") {
  STATIC_CHECK(!superscript_digit(0) && !superscript_digit(0x10FFFF) && !superscript_digit(0xFFFFFFFF));
  STATIC_CHECK(!is_degree_sign(0) && !is_dash(0) && !is_blank(0));
  STATIC_CHECK(!is_degree_sign(0xFFFFFFFF) && !is_dash(0xFFFFFFFF) && !is_blank(0xFFFFFFFF));
  STATIC_CHECK(column_of("", 0) == 1 && column_of("A⁸", 0) == 1);
  STATIC_CHECK(column_of("A⁸", SIZE_MAX) == 3 && column_of("A⁸", SIZE_MAX, SIZE_MAX) == 1);
  CHECK(all_broken({least, -1, 10, most}, superscript));
  STATIC_CHECK(raised(0) == "⁰" && raised(9) == "⁹" && raised(10) == "¹⁰" && raised(999'999'999) == "⁹⁹⁹⁹⁹⁹⁹⁹⁹");
  CHECK(all_broken({least, -1, 1'000'000'000, most}, raised));
  constexpr auto far = error_at(Problem::number_too_large, TextPlace{UINT32_MAX, UINT32_MAX}, "", INT64_MIN);
  STATIC_CHECK(far.place == TextPlace{UINT32_MAX, UINT32_MAX} && far.limit == INT64_MIN);
  STATIC_CHECK(small_roman(1) == "i" && small_roman(4999) == "mmmmcmxcix" && small_roman(4888) == "mmmmdccclxxxviii");
  CHECK(all_broken({INT64_MIN, std::int64_t{-1}, std::int64_t{0}, std::int64_t{5000}, INT64_MAX}, small_roman));
}

TEST_CASE("letters and signatures at the ends of their series") {
  constexpr Alphabet latin, all{Letters{true, true, true}};
  STATIC_CHECK(latin.at(1) == 1 && latin.at(23) == 26 && all.at(26) == 26);
  STATIC_CHECK(latin.has(1) && latin.has(26) && !latin.has(Alphabet::w));
  STATIC_CHECK(latin.letter(1) == 1 && latin.letter(26) == 26 && latin.place(1) == 1 && latin.place(26) == 23);
  CHECK(all_broken({least, -1, 0, 24, most}, [](int place) { return Alphabet{}.at(place); }));
  CHECK(all_broken({27, most}, [&](int place) { return all.at(place); }));
  STATIC_CHECK(all.has(26) && all.letter(26) == 26 && all.place(26) == 26 && all.place(1) == 1);
  for (auto const alphabet : {latin, all}) {
    CHECK(all_broken({least, -1, 0, 27, 33, most}, [&](int letter) { return alphabet.has(letter); }));
    CHECK(all_broken({least, -1, 0, 27, 33, most}, [&](int letter) { return alphabet.letter(letter); }));
    CHECK(all_broken({least, -1, 0, 27, 33, most}, [&](int letter) { return alphabet.place(letter); }));
  }
  constexpr auto letter_a = Signature::letter('A'), letter_k = Signature::letter('K'), small_k = Signature::letter('k');
  STATIC_CHECK(run_member(letter_a, letter_k, 0) == letter_a && run_member(letter_a, letter_k, 9) == letter_k);
  CHECK(all_broken({INT64_MIN, std::int64_t{-1}, std::int64_t{10}, INT64_MAX},
                   [&](auto index) { return run_member(letter_a, letter_k, index); }));
  CHECK(is_broken([&] { static_cast<void>(run_member(letter_a, small_k, 0)); })); // no run
  CHECK(is_broken([&] { static_cast<void>(run_member(letter_k, letter_a, 0)); }));
  constexpr auto alpha = Signature::greek(1), pi_of_greek = Signature::greek(16); // π is a letter among Greek letters
  STATIC_CHECK(run_length(alpha, Signature::pi()) == 16);
  STATIC_CHECK(run_member(alpha, Signature::pi(), 1) == Signature::greek(2));
  STATIC_CHECK(run_member(alpha, Signature::pi(), 15) == pi_of_greek);
  CHECK(is_broken([&] { static_cast<void>(run_member(alpha, Signature::pi(), 16)); }));
  constexpr auto letter_w = Signature::letter('W'), letter_x = Signature::letter('X'); // W is outside the 23 letters
  STATIC_CHECK(run_member(letter_w, letter_x, 0) == letter_w && run_member(letter_w, letter_x, 1) == letter_x);
  CHECK(all_broken({std::int64_t{-1}, std::int64_t{2}},
                   [&](auto index) { return run_member(letter_w, letter_x, index); }));

  constexpr auto highest = Signature::highest_multiple;
  constexpr auto last = Signature::letter('Z', highest);
  STATIC_CHECK(last.rank() == 23 * 9999 && Signature::letter('A').at_rank(23 * 9999) == last);
  STATIC_CHECK(last.at_rank(1) == Signature::letter('A'));
  CHECK(all_broken({INT64_MIN, std::int64_t{-1}, std::int64_t{0}, std::int64_t{23 * 9999 + 1}, INT64_MAX},
                   [](auto rank) { return Signature::letter('A').at_rank(rank); }));
  STATIC_CHECK(Signature::number(1).at_rank(999'999) == Signature::number(999'999));
  CHECK(all_broken({std::int64_t{0}, std::int64_t{1'000'000}, INT64_MAX},
                   [](auto rank) { return Signature::number(1).at_rank(rank); }));
  STATIC_CHECK(Signature::greek(1).letter_number() == 1 && Signature::greek(24, true, highest).rank() == 24 * 9999);
  CHECK(all_broken({least, -1, 0, 25, most}, [](int place) { return Signature::greek(place); }));
  CHECK(all_broken({0U, highest + 1, UINT32_MAX}, [](auto multiple) { return Signature::letter('A', multiple); }));
  CHECK(all_broken({0U, highest + 1, UINT32_MAX}, [](auto multiple) { return Signature::greek(1, false, multiple); }));
  CHECK(all_broken({0U, highest + 1, UINT32_MAX}, Signature::pi));
  CHECK(all_broken({0U, highest + 1, UINT32_MAX}, Signature::chi));
  CHECK(all_broken({0U, highest + 1, UINT32_MAX},
                   [](auto multiple) { return Signature::text(Mark::symbol, "*", 1, multiple); }));
  CHECK(all_broken({0U, Signature::highest_number + 1, UINT32_MAX}, Signature::number));
  constexpr auto longest = "abcdefghijklmnopqrstuvwx";
  STATIC_CHECK(Signature::text(Mark::name, longest, 23).text_size() == 23);
  CHECK(all_broken({std::size_t{0}, std::size_t{24}, SIZE_MAX},
                   [&](auto size) { return Signature::text(Mark::name, longest, size); }));
  CHECK(all_broken({std::size_t{0}, std::size_t{24}, SIZE_MAX},
                   [&](auto size) { return Signature::letter('A').with_symbol(Beside::before, longest, size); }));
  STATIC_CHECK(!Signature::letter('A').in_series(0).series() && !Signature::letter('A').in_series(1).series());
  STATIC_CHECK(Signature::letter('A').in_series(99).series() == 99);
  CHECK(all_broken({least, -1, 100, most}, [](int raised) { return Signature::letter('A').in_series(raised); }));
}

TEST_CASE("gatherings, leaves and formats from the least to the most") {
  STATIC_CHECK(Gathering{1}.pages() == 2 && Gathering{4096}.pages() == 8192);
  STATIC_CHECK(!Gathering{1}.leaf(1).conjugate() && Gathering{4096}.leaf(1).conjugate()->number() == 4096);
  CHECK(all_broken({least, -1, 0, 4097, 65537, most}, [](int leaves) { return Gathering{leaves}; }));
  CHECK(all_broken({least, -1, 0, 9, 65537, most}, [](int number) { return Leaf<8>{number}; }));
  STATIC_CHECK(*Gathering<8>::Iterator{Gathering<8>{}, 8} == Leaf<8>{8});
  STATIC_CHECK(Gathering<8>::Iterator{Gathering<8>{}, 9} == Gathering<8>{}.end());
  CHECK(all_broken({least, -1, 0, 10, most}, [](int number) {
    return Gathering<8>::Iterator{Gathering<8>{}, number};
  }));
  CHECK(all_broken({least, -1, 0, 9, 65537, most}, [](int number) { return Leaf<>{number, Gathering{8}}; }));
  CHECK(all_broken({least, -1, 0, 9, 65537, most}, [](int number) { return Gathering<8>{}.leaf(number); }));
  STATIC_CHECK(Format::of(1).symbol() == "1°" && Format::of(128).symbol() == "128°");
  STATIC_CHECK(Format::part_of_sheet(2).symbol() == "1/2°" && Format::part_of_sheet(128).symbol() == "1/128°");
  CHECK(all_broken({least, -1, 0, 129, 256, 264, most}, [](int n) { return Format::of(n); }));
  CHECK(all_broken({least, -1, 0, 1, 129, 264, most}, [](int n) { return Format::part_of_sheet(n); }));
}

TEST_CASE("parts of a scheme, of its fold and of its formes are there, or the precondition is broken") {
  auto const scheme = schemes::octavo.scheme();
  auto const folded = *fold(scheme);
  auto const formes = impose(folded);
  auto const beyond = [](int count) { return std::array{least, -1, count, count + 256, most}; };
  for (int i : beyond(scheme.sheets())) {
    CHECK(is_broken([&] { static_cast<void>(scheme.sheet(i)); }));
    CHECK(is_broken([&] { static_cast<void>(folded.sheet(i)); }));
    CHECK(is_broken([&] { static_cast<void>(folded.leaf_at(i, 0, 0)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.sheet(i)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.rows(i)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.columns(i)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.one_forme(i)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.forme(Side::outer, i)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.outer(0, 0, i)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.inner(0, 0, i)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.printed(Side::inner, 0, 0, i)); }));
    CHECK(is_broken([&] { static_cast<void>(forme_type(formes, i, Side::outer)); }));
    CHECK(is_broken([&] { static_cast<void>(forme_svg(scheme, i)); }));
    CHECK(is_broken([&] { static_cast<void>(sheet_svg(scheme, Sheet{450_mm, 315_mm}, hand_mould, i)); }));
    CHECK(is_broken([&] { static_cast<void>(sheet_to_fold(scheme, i)); }));
  }
  for (int i : beyond(scheme.pieces())) {
    CHECK(is_broken([&] { static_cast<void>(scheme.piece_name(i)); }));
    CHECK(is_broken([&] { static_cast<void>(scheme.placed(i)); }));
  }
  for (int i : beyond(scheme.steps())) {
    CHECK(is_broken([&] { static_cast<void>(scheme.step(i)); }));
    CHECK(is_broken([&] { static_cast<void>(step_svg(scheme, i)); }));
  }
  for (int i : beyond(scheme.gatherings())) {
    CHECK(is_broken([&] { static_cast<void>(scheme.gathering(i)); }));
    CHECK(is_broken([&] { static_cast<void>(folded.gathering(i)); }));
    CHECK(is_broken([&] { static_cast<void>(folded.first_page(i)); }));
    CHECK(is_broken([&] { static_cast<void>(folded.cell({i, Leaf<>{1, Gathering{8}}})); }));
    CHECK(is_broken([&] { static_cast<void>(pages_met(formes, folded, i)); }));
  }
  for (int row : beyond(2)) {
    CHECK(is_broken([&] { static_cast<void>(folded.leaf_at(0, row, 0)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.outer(row, 0)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.inner(row, 0)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.printed(Side::outer, row, 0)); }));
  }
  for (int column : beyond(4)) {
    CHECK(is_broken([&] { static_cast<void>(folded.leaf_at(0, 0, column)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.outer(0, column)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.inner(0, column)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.printed(Side::inner, 0, column)); }));
  }
  CHECK(formes.find_place(1));
  CHECK(formes.find_place(16));
  for (int page : {least, -65535, -1, 0, 17, 65537, most}) {
    CHECK_FALSE(formes.find_place(page));
    CHECK(is_broken([&] { static_cast<void>(formes.second_place(page)); }));
    CHECK(is_broken([&] { static_cast<void>(formes.place(page)); }));
    auto const unexplained = explain_page(scheme, page);
    REQUIRE_FALSE(unexplained);
    CHECK(unexplained.error().problem == Problem::no_such_page);
    CHECK(unexplained.error().found_text() == "page");
    CHECK(unexplained.error().limit == 16);
    for (auto const heads : {ExchangedHeads::of_place, ExchangedHeads::of_page}) {
      CHECK(exchanged(formes, page, 1, heads).error() == unexplained.error());
      CHECK(found_in(exchanged(formes, 1, page, heads).error()) == "other");
      CHECK(exchanged(formes, 1, page, heads).error().limit == 16);
    }
  }
  STATIC_CHECK(head_up(1).page == 1 && head_down(65535).page == 65535);
  CHECK(all_broken({least, -1, 0, 65536, most}, head_up));
  CHECK(all_broken({least, -1, 0, 65536, most}, head_down));
}

TEST_CASE("a change is valid once it is made") {
  CHECK(all_broken({least, -1, 0}, [](int leaf) { return FoldedLeaves{leaf}; }));
  CHECK(all_broken({least, -1, 0}, [](int leaf) { return FoldedLeaves{leaf, 8}; }));
  CHECK(all_broken({least, -1, 0, 1}, [](int last) { return FoldedLeaves{2, last}; }));
  STATIC_CHECK(FoldedLeaves{most}.count(most) == 1 && FoldedLeaves{1, most}.count(most) == most);
  CHECK(all_broken({least, -1, 0}, [](int leaves) { return Change{Insertion{{0, 0}, 3, leaves}}; }));
  CHECK(all_broken({least, -1}, [](int after) { return Change{Insertion{{0, 0}, after, 1}}; }));
  CHECK(all_broken({least, -1, 0}, [](int leaf) { return Change{Identity{{0, 0}, leaf}}; }));
}

TEST_CASE("leaves and pages of a book, from the first to the last and beyond") {
  IdealCopy const book = *read_formula("8°: A–K⁸ L⁴"); // ten eights and a four
  auto const outside = {INT64_MIN, std::int64_t{-1}, std::int64_t{0}, std::int64_t{85}, INT64_MAX};
  CHECK(book.leaf_of_number(1) == LeafOfBook{{0, 0}, 1});
  CHECK(book.leaf_of_number(84) == LeafOfBook{{1, 0}, 4});
  for (auto number : outside) {
    CHECK_FALSE(book.leaf_of_number(number));
    CHECK(is_broken([&] { static_cast<void>(span_of_numbers(book, number, 84)); }));
    CHECK(is_broken([&] { static_cast<void>(span_of_numbers(book, 1, number)); }));
    CHECK(is_broken([&] { static_cast<void>(missing_leaf(book, {}, number)); }));
  }
  CHECK(span_of_numbers(book, 1, 84).leaves() == 84);
  CHECK(span_of_numbers(book, 84, 84).leaves() == 1);
  CHECK(is_broken([&] { static_cast<void>(span_of_numbers(book, 2, 1)); }));
  CHECK(reference_of_page(book, 1) == Reference{{{0, 0}, 1}, LeafSide::recto});
  CHECK(reference_of_page(book, 168) == Reference{{{1, 0}, 4}, LeafSide::verso});
  for (auto page : {INT64_MIN, std::int64_t{-1}, std::int64_t{0}, std::int64_t{169}, INT64_MAX})
    CHECK_FALSE(reference_of_page(book, page));

  IdealCopy const changed = *read_formula("8°: A8(-A8; A3+1)");
  CHECK(changed.is_deleted({{0, 0}, 8}));
  CHECK(changed.inserted({{0, 0}, 3, 1}));
  auto const imposed = impose(*fold(schemes::octavo.scheme()));
  auto const folded = *fold(schemes::octavo.scheme());
  for (int leaf : {least, -1, 0, 9, most}) {
    CHECK_FALSE(changed.is_deleted({{0, 0}, leaf}));
    CHECK_FALSE(changed.inserted({{0, 0}, leaf, 1}));
    LeafOfBook const none{{0, 0}, leaf};
    CHECK_FALSE(book.leaf_number(none));
    CHECK_FALSE(book.conjugate(none));
    CHECK_FALSE(place_of(book, {none, LeafSide::recto}, imposed));
    CHECK_FALSE(place_of(book, {none, LeafSide::recto}, folded));
  }
  for (int inserted : {least, -1, 0, 2, most}) CHECK_FALSE(changed.leaf_number({{0, 0}, 3, inserted}));

  CopyChecked copy;
  copy.wanting = {span_of_numbers(book, 1, 2), span_of_numbers(book, 84, 84)};
  for (auto number : {1, 2, 84}) CHECK(wanting_at(copy, number));
  for (auto number : outside) CHECK_FALSE(wanting_at(copy, number));
  CHECK_FALSE(wanting_at(copy, 3));
  CHECK_FALSE(wanting_at(copy, 83));
}

TEST_CASE("counts of leaves in a run") {
  Cycle cycle{4096};
  CHECK(cycle.push(1));
  CHECK(all_broken({least, -1, 0, 4097, 65537, most}, [](int leaves) { return Cycle{leaves}; }));
  CHECK(all_broken({least, -1, 0, 4097, 65537, most}, [&](int leaves) { return cycle.push(leaves); }));
  CHECK(cycle.term(0) == 4096);
  CHECK(cycle.term(1) == 1);
  CHECK(all_broken({std::size_t{2}, Cycle::most_terms, SIZE_MAX}, [&](auto i) { return cycle.term(i); }));
  CHECK(cycle.at(0) == 4096);
  CHECK(cycle.at(INT64_MAX) == 1); // an odd place
  CHECK(cycle.total(0) == 0);
  CHECK(cycle.total(3) == 8193);
  CHECK(Cycle{1}.total(INT64_MAX) == INT64_MAX);
  CHECK(cycle.turned(0) == cycle);
  CHECK(cycle.turned(INT64_MAX) == cycle.turned(1));
  for (auto act : {std::int64_t{-1}, INT64_MIN}) {
    CHECK(is_broken([&] { static_cast<void>(cycle.at(act)); }));
    CHECK(is_broken([&] { static_cast<void>(cycle.total(act)); }));
    CHECK(is_broken([&] { static_cast<void>(cycle.turned(act)); }));
  }
  CHECK(is_broken([] { static_cast<void>(Cycle{}.at(0)); }));
  CHECK(is_broken([] { static_cast<void>(Cycle{}.total(1)); }));
  while (cycle.size() < Cycle::most_terms) CHECK(cycle.push(4));
  CHECK_FALSE(cycle.push(4));
}

TEST_CASE("numbers printed on pages, and which leaves are signed") {
  auto const pagination = *read_pagination("pp. 1-84");
  CHECK(printed_number(pagination, 1)->number == 1);
  CHECK(printed_number(pagination, 84)->number == 84);
  for (auto page : {INT64_MIN, std::int64_t{-1}, std::int64_t{0}, std::int64_t{85}, INT64_MAX}) {
    CHECK_FALSE(printed_number(pagination, page));
    CHECK(pages_numbered(pagination, page).empty());
    CHECK(references_numbered(*read_formula("4°: A–K⁴ L²"), pagination, page).empty());
  }
  CHECK(pages_numbered(pagination, 84).size() == 1);
  CHECK(page_figure(0, Numerals::roman) == "0");
  CHECK(page_figure(1, Numerals::roman) == "i");
  CHECK(page_figure(4999, Numerals::roman) == "mmmmcmxcix");
  CHECK(page_figure(5000, Numerals::roman) == "5000");
  CHECK(page_figure(INT64_MAX, Numerals::roman) == "9223372036854775807");
  CHECK(page_figure(INT64_MIN, Numerals::arabic) == "-9223372036854775808");
  Signing first_four, halves;
  first_four.first = 4;
  halves.half = true;
  CHECK(first_four.by_rule(4, 8));
  CHECK_FALSE(first_four.by_rule(5, 8));
  CHECK(first_four.by_rule(1, 1));
  CHECK_FALSE(halves.by_rule(1, 1)); // half of one leaf is none
  CHECK(halves.by_rule(2048, 4096));
  CHECK_FALSE(halves.by_rule(2049, 4096));
  CHECK_FALSE(halves.by_rule(most, most));
}

TEST_CASE("paper from no sheet to as many as can be counted") {
  CHECK(counted(0, reams::of_500) == PaperCount{});
  CHECK(counted(INT64_MAX, reams::of_500) == PaperCount{18446744073709551, 12, 7}); // 2^63 - 1 = 500 q + 307
  CHECK(all_broken({INT64_MIN, std::int64_t{-1}}, [](auto sheets) { return counted(sheets, reams::of_500); }));
  CHECK(is_broken([] { static_cast<void>(counted(1, ReamCount{})); }));
  CHECK(sheets_in({INT64_MAX / 500, 0, 307}, reams::of_500) == INT64_MAX);
  CHECK(sheets_in({INT64_MAX / 500, 0, 308}, reams::of_500).error().problem == Problem::result_too_large);
  CHECK(reams_to_buy(0, reams::from_mill) == Fraction{});
  CHECK(reams_to_buy(1, reams::from_mill) == Fraction{1, 432});
  CHECK(reams_to_buy(INT64_MAX, reams::of_500) == Fraction{INT64_MAX, 500});
  CHECK(all_broken({INT64_MIN, std::int64_t{-1}}, [](auto sheets) { return reams_to_buy(sheets, reams::of_500); }));
  CHECK(in_alphabets(0) == AlphabetCount{});
  CHECK(in_alphabets(22) == AlphabetCount{0, 22});
  CHECK(in_alphabets(23) == AlphabetCount{1, 0});
  CHECK(in_alphabets(INT64_MAX) == AlphabetCount{401016175515425035, 2});
  CHECK(all_broken({INT64_MIN, std::int64_t{-1}}, in_alphabets));
  CHECK(price_of_alphabet(0, 1) == Fraction{});
  CHECK(price_of_alphabet(1, INT64_MAX) == Fraction{23, INT64_MAX});
  CHECK(price_of_alphabet(INT64_MAX / 23, 23) == Fraction{INT64_MAX / 23});
  CHECK(price_of_alphabet(INT64_MIN, 1).error().problem == Problem::negative_count);
  CHECK(price_of_alphabet(1, 0).error().problem == Problem::not_positive);
  CHECK(price_of_alphabet(1, INT64_MIN).error().problem == Problem::not_positive);
  CHECK(grammes_per_square_metre(1, 1'000'000, 1, 1) == Fraction{1});
  for (auto wrong : {INT64_MIN, std::int64_t{-1}, std::int64_t{0}}) {
    CHECK(grammes_per_square_metre(wrong, 1, 1, 1).error().problem == Problem::not_positive);
    CHECK(grammes_per_square_metre(1, wrong, 1, 1).error().problem == Problem::not_positive);
    CHECK(grammes_per_square_metre(1, 1, wrong, 1).error().problem == Problem::not_positive);
    CHECK(grammes_per_square_metre(1, 1, 1, wrong).error().problem == Problem::not_positive);
  }
  CHECK(grammes_per_square_metre(1, INT64_MAX, INT64_MAX, 1).error().problem == Problem::result_too_large);
}

TEST_CASE("lengths: nothing, the largest literal, parts of a length") {
  STATIC_CHECK(0_mm == millimetres{} && 0.0_mm == 0_mm && 0_cm == 0_in && 0_pouces == 0_lignes);
  STATIC_CHECK(18446744073709551615_mm == millimetres{18446744073709551616.0}); // the nearest double
  STATIC_CHECK(18446744073709551615_lignes == paris_lines{18446744073709551616.0});
  STATIC_CHECK(LengthTraits<millimetres>::part(315_mm, 1) == 315_mm);
  STATIC_CHECK(LengthTraits<double>::part(1, most) * most == 1.0);
  using exact_mm = Length<Fraction, Millimetre>;
  STATIC_CHECK(LengthTraits<exact_mm>::part(exact_mm{1}, most).count() == Fraction{1, most});
  CHECK(all_broken({0}, [](int of) { return LengthTraits<exact_mm>::part(exact_mm{1}, of); }));
}

TEST_CASE("casting off, making up and presswork at both ends") {
  CHECK(thousands_in_sheet(0, 0, 0) == 0);
  CHECK(thousands_in_sheet(1, 1, 499) == 0);
  CHECK(thousands_in_sheet(1, 1, 500) == 1);
  CHECK(thousands_in_sheet(1, 1, INT64_MAX - 500) == 9223372036854775); // 2^63 - 1, in thousands
  CHECK(in_manuscript(0, INT64_MAX, 1) == 0);
  CHECK(in_manuscript(Fraction{1, INT64_MAX}, 1, 1) == 1);
  CHECK(in_manuscript(1, INT64_MAX, 1) == INT64_MAX);
  CHECK(FormeType::ens(0, 0, 0) == 0);
  CHECK(FormeType::ens(INT64_MAX, 1, 1) == INT64_MAX);
  for (auto below : {INT64_MIN, std::int64_t{-1}}) {
    CHECK(thousands_in_sheet(below, 1, 1).error().problem == Problem::negative_count);
    CHECK(thousands_in_sheet(1, below, 1).error().problem == Problem::negative_count);
    CHECK(thousands_in_sheet(1, 1, below).error().problem == Problem::negative_count);
    CHECK(in_manuscript(below, 1, 1).error().problem == Problem::negative_count);
    CHECK(in_manuscript(1, below, 1).error().problem == Problem::negative_count);
    CHECK(in_manuscript(1, 1, below).error().problem == Problem::negative_count);
    CHECK(FormeType::ens(below, 1, 1).error().problem == Problem::negative_count);
    CHECK(FormeType::ens(1, below, 1).error().problem == Problem::negative_count);
    CHECK(FormeType::ens(1, 1, below).error().problem == Problem::negative_count);
    CHECK(presswork(below).error().problem == Problem::negative_count);
    CHECK(presswork_of(below).error().problem == Problem::negative_count);
  }
  CHECK(presswork(0)->impressions == 0);
  CHECK(presswork_of(1)->perfected == 0); // one side of one sheet
  CHECK(presswork_of(INT64_MAX / 2)->perfected == INT64_MAX / 4);
  CHECK(presswork_of(INT64_MAX).error().problem == Problem::result_too_large);

  auto const octavo = make_up(fold<schemes::octavo>());
  CHECK(even_working(octavo, 0) == EvenWorking{0, 0});
  CHECK(even_working(octavo, 1) == EvenWorking{1, 15});
  CHECK(even_working(octavo, INT64_MAX) == EvenWorking{15, 1}); // 2^63 - 1
  CHECK(even_working(octavo, INT64_MIN).error().problem == Problem::negative_count);
  CHECK(is_broken([] { static_cast<void>(even_working({}, 16)); }));
  CHECK(is_broken([] { static_cast<void>(arrange({}, {.text = 16})); }));
  CHECK(is_broken([] { static_cast<void>(arrange_in_whole_sheets({}, {.text = 16})); }));

  auto const plan = *arrange(octavo, {.text = 16});
  CHECK(plan.sheets_for(0) == 0);
  CHECK(plan.sheets_for(INT64_MAX) == INT64_MAX);
  CHECK(plan.impressions_for(0) == 0);
  CHECK(plan.impressions_for(INT64_MAX / 2) == INT64_MAX - 1);
  CHECK_FALSE(plan.impressions_for(INT64_MAX));
  CHECK(presswork(1)->pulls(1) == 2);
  for (int pulls : {least, -1, 0}) CHECK_FALSE(presswork(1)->pulls(pulls));
  CHECK(presswork(1)->pulls(most) == 2LL * most);
  CHECK(overs_of(0, 0, 0) == 0);
  CHECK(overs_of(1, Fraction{1, 100}, 0) == 1); // a started copy is a copy
  CHECK(overs_of(INT64_MAX, 100, 0) == INT64_MAX);
  CHECK_FALSE(overs_of(INT64_MAX, 100, 1));
  CHECK_FALSE(overs_of(INT64_MAX, 101, 0));
}

TEST_CASE("what a plan is asked for fits, or the call breaks its precondition") {
  Plan plan;
  CHECK(is_broken([&] { static_cast<void>(plan.sheets_a_copy()); }));
  CHECK(is_broken([&] { static_cast<void>(plan.sheets_for(1)); }));
  plan.leaves_to_sheet = 8;
  CHECK(is_broken([&] { static_cast<void>(plan.sheets_for(-1)); }));
  CHECK(is_broken([&] { static_cast<void>(plan.impressions_for(-1)); }));
  CHECK(is_broken([&] { plan.add({-1, 8, Working::Kind::sheet, {}}); }));
  plan.add({0, 8, Working::Kind::sheet, {}});
  CHECK(plan.size() == 0);
  for (std::size_t i = 0; i < Plan::most_workings; ++i) plan.add({1, 8, Working::Kind::sheet, {}});
  CHECK(plan.size() == Plan::most_workings);
  CHECK(is_broken([&] { plan.add({1, 8, Working::Kind::sheet, {}}); }));

  Plan huge;
  huge.leaves_to_sheet = 8;
  huge.leaves_of = {INT64_MAX, 1, 0, 0};
  CHECK_FALSE(huge.fits());
  CHECK(is_broken([&] { static_cast<void>(huge.leaves()); }));
  CHECK(reckon({.pages = 16, .copies = 10}, huge).error().problem == Problem::result_too_large);
  huge.leaves_of = {0, 1, 0, INT64_MAX};
  CHECK(reckon({.pages = 16, .copies = 1}, huge).error().problem == Problem::too_many_cancels);
  huge.leaves_of = {0, INT64_MAX, 0, INT64_MAX}; // cancels count as folds of two leaves at most
  CHECK(reckon({.pages = 16, .copies = 1}, huge).error().problem == Problem::result_too_large);
  huge.leaves_of = {0, -8, 0, 0};
  CHECK(reckon({.pages = 16, .copies = 1}, huge).error().problem == Problem::negative_count);
  huge.leaves_of = {0, 8, 0, 0};
  huge.add({INT64_MAX, 8, Working::Kind::sheet, {}});
  CHECK(is_broken([&] { static_cast<void>(huge.formes()); }));
  CHECK(is_broken([&] { static_cast<void>(huge.sheets_a_copy()); }));
  CHECK(reckon({.pages = 16, .copies = 1}, huge).error().problem == Problem::result_too_large);
  std::vector<PrintingOption> const options{{{.copies = 1, .price_of_forme = 1}, huge}};
  CHECK(compare(options, 1, 10).error().problem == Problem::result_too_large);
}

TEST_CASE("ways to print are compared for one copy and for a million, and not beyond") {
  auto const folded = *fold(schemes::octavo.scheme());
  Edition edition{.pages = 16};
  edition.price_of_forme = 1;
  std::vector<PrintingOption> const ways{{edition, *arrange(make_up(folded), {.text = 16})}};
  REQUIRE(compare(ways, 1, 1'000'000));
  CHECK((*compare(ways, 1'000'000, 1'000'000)).size() == 1);
  CHECK(compare(ways, 1, 1'000'001).error().problem == Problem::number_too_large);
  CHECK(compare(ways, 0, 1).error().problem == Problem::nothing_to_print);
  CHECK(compare(ways, 2, 1).error().problem == Problem::range_goes_backwards);
  CHECK(compare(ways, INT64_MAX, 1).error().problem == Problem::range_goes_backwards);
  CHECK(compare(ways, INT64_MIN, 1).error().problem == Problem::negative_count);
  CHECK(compare(ways, 1, INT64_MIN).error().problem == Problem::negative_count);
  CHECK(cost_of(ways[0], 1) == Fraction{2}); // two formes
  CHECK(cost_of(ways[0], INT64_MIN).error().problem == Problem::negative_count);
}

TEST_CASE("probabilities, shares and years beyond what can be") {
  CHECK(hundredths(0) == "0.00");
  CHECK(hundredths(0.994) == "0.99");
  CHECK(hundredths(1) == "1.00");
  CHECK(all_broken({-endless, -1.0, -0.01, 1.01, 1e300, endless, no_number}, hundredths));
  STATIC_CHECK(certainty_of(1, 0, most) == Certainty::established && certainty_of(1, 0, 2) == Certainty::established);
  STATIC_CHECK(certainty_of(1, 0, 0) == Certainty::very_probable &&
               certainty_of(1, 0, least) == Certainty::very_probable);
  STATIC_CHECK(certainty_of(0, 0, most) == Certainty::not_determined);
  STATIC_CHECK(certainty_of(0.5, 0.45, most) == Certainty::one_of_two);
  CHECK(certainty_of(no_number, no_number, most) == Certainty::not_determined);
  for (int leaves : {least, -1, 0, 129, most}) {
    CHECK(Priors{}.of(leaves == 0 ? 1 : leaves) == 0);
  }
  for (int year : {least, -1, 0, 9999, most})
    for (auto const region : {Region::anywhere, Region::spain}) {
      double sum = 0;
      for (auto const share : fitted_paper_model().shares(region, year)) sum += share;
      CHECK(sum == doctest::Approx(1));
      CHECK(PaperAge::of(year, region).twofold >= 0);
      CHECK(PaperAge::of(year, region).twofold <= 1);
    }
  auto const classes = height_classes(HeightScale::cutter_rule_196, 200_mm);
  for (auto i : {classes.size(), SIZE_MAX}) CHECK(is_broken([&] { static_cast<void>(classes[i]); }));
  CHECK(observe({.year = YearRange{1500, 1499}}).error().problem == Problem::impossible_years);
  CHECK(observe({.year = YearRange{most, least}}).error().problem == Problem::impossible_years);
  for (auto years : {YearRange{least}, YearRange{-10000}, YearRange{10000}, YearRange{most}, YearRange{least, most}})
    CHECK(observe({.year = years}).error().problem == Problem::impossible_years);
  for (auto years : {YearRange{-9999}, YearRange{0}, YearRange{9999},
                     YearRange{-9999, 9999}}) { // and no book printed in most of them
    auto const inference = infer_format(*observe({.height = 200_mm, .year = years}));
    double sum = inference.none_of_these;
    for (auto const& candidate : inference) sum += candidate.probability;
    CHECK(sum == doctest::Approx(1));
  }
  auto const always = usable_for({least, most}, Region::britain);
  CHECK(always.count() == usable_for({1, 2000}, Region::britain).count());
  CHECK(usable_for({most, most}, Region::britain).empty());
  CHECK(usable_for({least, least}, Region::britain).empty());
}

TEST_CASE("what is drawn is of some size, and of as many leaves as are folded") {
  CHECK(svg_number(0) == "0");
  CHECK(svg_number(-0.0) == "0");
  CHECK(svg_number(0.004) == "0");
  CHECK(svg_number(-0.01) == "-0.01");
  CHECK(svg_number(999'999'999) == "999999999");
  CHECK(all_broken({-endless, -1e9, 1e9, endless, no_number}, svg_number));
  CHECK(all_broken({1e9, no_number}, [](double width) { return Svg{width, 10, "", ""}; }));
  CHECK(all_broken({1e9, no_number}, [](double height) { return Svg{10, height, "", ""}; }));
  Svg svg{10, 10, "", ""};
  CHECK(all_broken({1e9, no_number}, [&](double width) { return svg.open_window({}, width, 1), 0; }));
  STATIC_CHECK(Svg::room("A1", 0) == 0 && Svg::size_within("A1", 5, 0) == 0 && Svg::size_within("A1", 5, 1e9) == 5);

  CHECK_FALSE(regular_gathering("A", 1).leaves[0].conjugate);
  auto gathering = regular_gathering("A", 4096);
  CHECK(gathering.leaves.size() == 4096);
  CHECK(gathering.leaves[0].conjugate == 4095);
  CHECK(all_broken({least, -1, 0, 4097, most}, [](int leaves) { return regular_gathering("A", leaves); }));
  for (int place : {least, -1, 4097, most}) CHECK(is_broken([&] { insert_leaf(gathering, place, {}); }));
  insert_leaf(gathering, 4096, {.label = "behind"});
  insert_leaf(gathering, 0, {.label = "before"});
  CHECK(gathering.leaves[1].conjugate == 4096);
  CHECK(gathering.leaves.back().label == "behind");

  std::vector<PageRead> const two{{65534, true}, {65535, true}};
  CHECK(book_svg(two, "", 65534).find("Every page is where it should be") != std::string::npos);
  CHECK(book_svg({{2, true}}, "").find("One page is not as it should be") != std::string::npos);
  CHECK(is_broken([&] { static_cast<void>(book_svg({{0, true}}, "")); }));
  CHECK(all_broken({least, -1, 0, 65535, 65536, most}, [&](int first) { return book_svg(two, "", first); }));
  CHECK(all_broken({least, -1, 65536, most}, [](int page) { return book_svg({{page, true}}, ""); }));
}

TEST_CASE("tokens and keys of signatures at their ends") {
  for (std::size_t at : {std::size_t{1}, std::size_t{2}, std::size_t{4'000'000'000}}) {
    CHECK(Lexer{"A", at}.next().kind == TokenKind::end);
    CHECK(TokenCursor{"A", at}.ended());
  }
  CHECK(TokenCursor{"AB", 1, 1}.ended());
  CHECK(TokenCursor{"AB", 2, 1}.ended());
  CHECK(TokenCursor{"AB", 1, 2}.at(TokenKind::letter));
  auto const key = SignatureKey::of(Mark::capital, 1);
  CHECK(all_broken({least, -1, 100, 128, most}, [&](int figure) { return key.in_series(figure); }));
  CHECK(key.in_series(0).raised() == std::nullopt);
  CHECK(key.in_series(1).raised() == std::nullopt); // the first series has no raised digit
  CHECK(key.in_series(99).raised() == 99);
  CHECK(is_broken([&] { static_cast<void>(key.at_rank(0, Alphabet{})); }));
  CHECK(is_broken([&] { static_cast<void>(key.at_rank(std::numeric_limits<std::int64_t>::min(), Alphabet{})); }));
  CHECK(key.at_rank(23, Alphabet{}).letter == 26); // Z
  CHECK(key.at_rank(24, Alphabet{}).multiple == 2);
  // A and a of the first series, and nothing else
  CHECK(key.is_plain_latin());
  CHECK(SignatureKey::of(Mark::small_letter, 1).is_plain_latin());
  CHECK(!key.in_series(2).is_plain_latin());
  CHECK(!key.duplicated(Duplicate::pi).is_plain_latin());
  CHECK(!key.with_greek().is_plain_latin());
  CHECK(!SignatureKey::of(Mark::greek, 1).is_plain_latin());
  CHECK(!SignatureKey::of(Mark::number).is_plain_latin());
}
