// SPDX-License-Identifier: MIT
// Lists of leaves as strangers may send them: every reader of a list gets every form of reference, every mark and every kind of
// word again and again, after the words with which a list may begin, and after many blanks.
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/copy/paper_of_copy.hpp>

#include "growth/measure.hpp"

using namespace bifolium;

namespace {

constexpr std::string_view units[]{
    // references
    "A1 ",
    "A3.6 ",
    "A3.A6 ",
    "A3+1.2 ",
    "A3.9 ",
    "A3.6.3.6",
    "A3.",
    "A1.8, ",
    "A1-8 ",
    "A-C ",
    "A1,3 ",
    "3-4 ",
    "3 ",
    "A1r ",
    "A9 ",
    "Aiij ",
    "ij ",
    "K8 ",
    "f. 3 ",
    "f. 3, 4 ",
    "cc. 3 e 5 ",
    "ff. 3 a 5 ",
    "ff. I-III ",
    "c. 10 leaves ",
    "a leaf ",
    "a leaf (A1) ",
    "A1, a blank ",
    "a blank, ",
    "i ff. 3 ",
    "leaf 3 ",
    "fol. ",
    "2A1 ",
    "²A1 ",
    "π1 ",
    "π1.2 ",
    "χ1 ",
    "A4 to B3 ",
    "A4 bis ",
    "[red star]1 ",
    "[A]1 ",
    "\"B2\" ",
    "(*)4 ",
    "A1—A3 ",
    "/",
    "A1/3 ",
    "A1v blank, ",
    "A1v ",
    "A1 verso, ",
    "A1v-A3r ",
    "B3r, 4v, ",
    "A1 - A3, ",
    "A - ",
    "A⁸ ",
    "ff. I, C and ",
    "I, ",
    "leaves 3 and ",
    "leaves 3-6 of B, ",
    "A3 and its conjugate, ",
    "the conjugate of ",
    "(8 leaves) ",
    "A1 (1 leaf) ",
    "i. e. ",
    "A1, i. e. A1, ",
    "from A3, ",
    "A3 to end, ",
    "begins at A3, ",
    "at the end, ",
    "2 leaves at end, ",
    "consists of ",
    "title, ",
    "da B3 ",
    // marks
    "−",
    "-",
    "–",
    "−A1 ",
    "-A1 ",
    "− ",
    "−(",
    "(−A1 ",
    "(−A1) ",
    "±A1 ",
    "±",
    "+",
    "(",
    ")",
    "((",
    "[",
    "]",
    "[[",
    ".",
    ". ",
    ":",
    ": ",
    ",",
    ", ",
    ";",
    "; ",
    "?",
    "? ",
    "…",
    "\"",
    "“",
    "'",
    "\n",
    " ",
    "\t",
    "\xE2\x80\x83",
    "\xFF",
    "*",
    "=",
    "x",
    // words
    "wanting ",
    "wanting A1 ",
    "wants A1; ",
    "A1 wanting ",
    "A1 wanting, ",
    "A1 lacking; ",
    "lacking ",
    "lacking, ",
    "is lacking, ",
    "the lacking, ",
    "and lacking, ",
    "(A1 lacking) ",
    "(A1 ",
    "A1) ",
    "A1 (blank) ",
    "(A1 blank) ",
    "except ",
    "except A1 ",
    "but for A1 ",
    "wants A except A1 ",
    "nothing but ",
    "imperfect ",
    "imperfect: ",
    "imperfect, wants A1 ",
    "(imperfect) ",
    "without A1 ",
    "ohne ",
    "sans A1 ",
    "des ",
    "and ",
    "and A1 ",
    "A1 and ",
    "& ",
    "e ",
    "all ",
    "all after A1 ",
    "all before ",
    "complete ",
    "complete, ",
    "all leaves present ",
    "the ",
    "les ",
    "the leaf A1 ",
    "les feuillets A1 ",
    "Lage A ",
    "first leaf ",
    "last two leaves ",
    "final blank ",
    "final blank K8 ",
    "le dernier feuillet ",
    "title ",
    "(title) ",
    "(title ",
    "title page (A1) ",
    "title (",
    "A1 (title), ",
    "A1 facsimile ",
    "A1 in facsimile, ",
    "facsimile ",
    "in ",
    "which is ",
    "supplied ",
    "torn ",
    "A1 torn ",
    "and A1 torn ",
    "torn mounted ",
    "A1 and B1 torn, mounted, ",
    "A1 bound after B3, ",
    "B1 bound after A8 ",
    "and A1 bound before B3 ",
    "A1.8 A2 bound after B3 ",
    "A1 misbound, ",
    "bound after B3 ",
    "bound ",
    "first and last quires ",
    "last leaf of A ",
    "outer sheet of ",
    "inner bifolium of A, ",
    "A8 B8 A1-8 ",
    "2 leaves ",
    "2 plates ",
    "copy ",
    "this copy ",
    "word ",
    "a ",
    "i ",
    "A1 x ",
    // what is seen of leaves
    "A1.8 conjugate; ",
    "A2.A7 disjunct, ",
    "A1 stub; ",
    "A1 sewing\n",
    "A1.8 ",
    "conjugate; ",
    "A1 vertical; ",
    "A1 horizontal; ",
    "A1.8 conjugate; A1 vertical; ",
    "A1 deckle tail\n",
    "A1 absent; ",
    "B3 head-of-gutter vertical; ",
};
constexpr std::string_view beginnings[]{"",      "A1 ",         "wanting ",       "wants A-C except ", "imperfect: ",
                                        "(A-C ", "A-C except ", "imperfect, A1 ", "A1.8 conjugate; "};

IdealCopy const& book() {
  static IdealCopy const copy{*read_formula("8°: π² A⁸(A3+1.2) B-Z⁸ 2A-2Z⁸ (−B4)")};
  return copy;
}

struct Reader {
  std::string name;
  void (*read)(std::string const&);
};
Reader const readers[]{
    {"leaves present", [](std::string const& text) { static_cast<void>(read_leaves_present(book(), text)); }},
    {"joints", [](std::string const& text) { static_cast<void>(read_joints(book(), text)); }},
    {"paper seen", [](std::string const& text) { static_cast<void>(read_paper_seen(book(), text)); }},
    {"reference", [](std::string const& text) { static_cast<void>(read_reference(book(), text)); }},
};

std::string many(std::string_view unit, int n) {
  std::string text;
  for (int i = 0; i < n; ++i) text += unit;
  return text;
}

/// Lists of a book that grows with them: bifolia in one another round all of it, and leaves bound elsewhere, one beside the
/// other and in any order.
std::string nested_bifolia(int n) {
  std::string text;
  for (int i = 0; i < n; ++i) text += signature(i) + "1." + signature(2 * n - 1 - i) + "8 ";
  return text;
}
std::string each_after_the_next(int n) {
  return each(n, [](int i) { return signature(i) + "1 bound after " + signature(i + 1) + "1, "; });
}
std::string each_after_the_one_before(int n) {
  return each(n, [](int i) { return signature(i + 1) + "1 bound after " + signature(i) + "1, "; });
}
std::string all_before_the_last(int n) {
  return each(n, [](int i) { return signature(i) + " bound before " + signature(1) + "8 and "; });
}
std::string backwards_and_whole(int n) {
  return each(n, [](int i) { return signature(i) + "8 bound at the front; "; }) + "complete";
}
int lists_of_a_growing_book(int most) {
  struct List {
    char const* name;
    std::string (*text)(int);
  };
  int wrong = 0;
  for (auto const& [name, text] :
       {List{"bifolia in one another", nested_bifolia}, List{"leaves bound after the next", each_after_the_next},
        List{"leaves bound after the one before", each_after_the_one_before},
        List{"gatherings bound before one leaf", all_before_the_last},
        List{"last leaves bound at the front", backwards_and_whole}}) {
    Case const one{name, [list = text](int n) {
                     IdealCopy const whole{*read_formula(run_of(2 * n + 2))};
                     reads(list(n), [&](std::string const& read) { return read_leaves_present(whole, read); });
                   }};
    auto const result = grown(one, most / 10, most);
    print(one.name, result);
    if (!result.holds) ++wrong;
  }
  return wrong;
}

} // namespace

int lists_that_grow_too_fast(int most) {
  int wrong = lists_of_a_growing_book(most);
  static_cast<void>(book());
  for (auto const& reader : readers) {
    Grown worst;
    std::string name;
    std::size_t met = 0;
    auto const take = [&](std::string_view unit, std::string const& begins, auto text_of) {
      if (most < 10'000 && ++met % 4 != 0) return; // of each unit other beginnings than of the one before it
      Case const one{reader.name + ": '" + begins + shown_unit(unit) + "'",
                     [&](int n) { reads(text_of(n), reader.read); }};
      auto const result = grown(one, most / 10, most);
      if (!result.holds) print(one.name, result), ++wrong;
      if (name.empty() || result.exponent > worst.exponent) worst = result, name = one.name;
    };
    for (auto const unit : units) {
      for (auto const begins : beginnings)
        take(unit, std::string{begins}, [&](int n) { return std::string{begins} + many(unit, n); });
      take(unit, "blanks ", [&](int n) { return many(" ", n) + many(unit, n); });
      take(unit, "long ", [&](int n) { return "wanting " + many(unit, n) + many("x", n) + " )"; });
      for (std::string_view const other : {"(A1 ", "A1 ", "lacking ", ") "}) // parts that both grow
        take(unit, std::string{other} + "and ", [&](int n) { return many(unit, n) + many(other, n); });
    }
    print(name, worst);
  }
  return wrong;
}
