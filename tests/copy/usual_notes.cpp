// SPDX-License-Identifier: MIT
// Usual ways to say which leaves a copy has and lacks: common practice, no source. The leaves of each note are counted here from
// the numbers of which it is made.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <set>
#include <string>
#include <tuple>
#include <vector>

using namespace bifolium;

namespace {

using Leaves = std::set<std::int64_t>; // by their numbers in 8°: π² A-K⁸ L⁴

IdealCopy book_of_notes() { return IdealCopy{*read_formula("8°: π² A-K⁸ L⁴")}; }
constexpr std::string_view gatherings_of_notes{"ABCDEFGHIK"};
std::int64_t number_of_leaf(char gathering, int leaf) {
  if (gathering == 'L') return 82 + leaf;
  return 2 + 8 * static_cast<std::int64_t>(gatherings_of_notes.find(gathering)) + leaf;
}
Leaves from_to(std::int64_t from, std::int64_t to) {
  Leaves all;
  for (auto n = from; n <= to; ++n) all.insert(n);
  return all;
}
Leaves but(Leaves const& taken) {
  auto all = from_to(1, 86);
  for (auto const n : taken) all.erase(n);
  return all;
}
Leaves with(Leaves one, Leaves const& other) {
  one.insert(other.begin(), other.end());
  return one;
}
Leaves quire(char name) {
  auto const first = number_of_leaf(name, 1);
  return from_to(first, first + (name == 'L' ? 3 : 7));
}
std::string leaf_text(char gathering, int leaf) { return gathering + std::to_string(leaf); }

/// Checks what a copy lacks by a note, and what is doubted.
void check_note(std::string const& text, Leaves const& wanting, std::vector<Problem> const& doubts = {}) {
  static auto const book = book_of_notes();
  auto const read = read_leaves_present(book, text);
  bool right = read.has_value();
  if (right) {
    Leaves found;
    auto const copy = check_copy(book, read->spans);
    for (auto const& span : copy.wanting)
      for (auto n = span.from; n <= span.to; ++n) found.insert(n);
    right = found == wanting && copy.repeated.empty() && copy.misplaced.empty() && read->doubts.size() == doubts.size();
    for (std::size_t i = 0; right && i < doubts.size(); ++i) right = read->doubts[i].problem == doubts[i];
  }
  if (!right) {
    CAPTURE(text);
    CAPTURE((read ? wants(book, check_copy(book, read->spans)) : std::string{identifier(read.error().problem)}));
    CHECK(right);
  }
}
void check_refused(std::string const& text, Problem problem) {
  static auto const book = book_of_notes();
  CAPTURE(text);
  auto const read = read_leaves_present(book, text);
  REQUIRE_FALSE(read);
  CHECK(read.error().problem == problem);
}
struct Run {
  std::string text;
  Leaves leaves;
};
/// Runs of leaves and gatherings, with what stands between their ends.
std::vector<Run> runs_with(std::string const& between) {
  std::vector<Run> all;
  for (auto const& [first, from, last, to] :
       {std::tuple{'A', 1, 'A', 3}, {'A', 2, 'A', 8}, {'A', 7, 'C', 2}, {'B', 1, 'K', 8}, {'K', 7, 'L', 4}})
    all.push_back({leaf_text(first, from) + between + leaf_text(last, to),
                   from_to(number_of_leaf(first, from), number_of_leaf(last, to))});
  all.push_back({"A2" + between + '5', from_to(4, 7)});
  all.push_back({"C" + between + "E", from_to(number_of_leaf('C', 1), number_of_leaf('E', 8))});
  return all;
}

} // namespace

TEST_CASE("blanks stand round the dash of a run") {
  for (std::string const between : {" - ", " – ", " — ", "  -  ", "\xC2\xA0–\xC2\xA0"})
    for (auto const& [text, leaves] : runs_with(between)) {
      for (std::string const lacks : {"lacks ", "Es fehlen ", "π-L, wants ", "wants leaves "})
        if (lacks != "wants leaves " || text[0] != 'C') check_note(lacks + text, leaves);
      check_note("lacks " + text + ", L4", with(leaves, {86}));
      check_note("lacks " + text + " and L4", with(leaves, {86}));
      check_note(text + " wanting", leaves);
      check_note(text, but(leaves));
    }
  check_note("lacks ff. 3 - 10", from_to(3, 10));
  check_note("lacks ff. 3 – 10, L4", with(from_to(3, 10), {86}));
  CHECK_FALSE(read_leaves_present(book_of_notes(), "A1 -A8"));
  CHECK_FALSE(read_leaves_present(book_of_notes(), "A1 -"));
  CHECK_FALSE(read_leaves_present(book_of_notes(), "lacks A1 - "));
}

TEST_CASE("a word stands before the first leaf of a run") {
  struct Words {
    std::string before, between;
  };
  for (auto const& [before, between] : std::initializer_list<Words>{
           {"da ", " a "}, {"von ", " bis "}, {"from ", " to "}, {"van ", " tot "}, {"desde ", " a "}})
    for (auto const& [text, leaves] : runs_with(between))
      for (std::string const lacks :
           {"lacks ", "mancano ", "es fehlen ", "mancano le cc. ", "mancano i fascicoli ", "es fehlen Bll. "}) {
        if (lacks.ends_with("fascicoli ") != (text[0] == 'C') && lacks.ends_with(' ') && lacks.size() > 12) continue;
        check_note(lacks + before + text, leaves);
        check_note(lacks + before + text + ", L4", with(leaves, {86}));
      }
  check_note("solo i fascicoli da C a E", but(from_to(number_of_leaf('C', 1), number_of_leaf('E', 8))));
}

TEST_CASE("all leaves after one are wanting, or all up to the end") {
  for (char const g : {'B', 'K', 'L'})
    for (int const leaf : {1, 3, 4}) {
      auto const name = leaf_text(g, leaf);
      auto const after = from_to(number_of_leaf(g, leaf), 86);
      for (std::string const& note :
           {"ab " + name + " fehlt", "fehlt ab " + name, "lacks from " + name, "lacks from " + name + " on",
            "lacks from " + name + " onwards", "lacks " + name + " to end", "lacks " + name + " to the end",
            name + " to end wanting", name + " bis Ende fehlt", "es fehlt " + name + " bis zum Ende",
            "manque à partir de " + name, "manque à partir du f. " + name, "lacks from leaf " + name,
            "ontbreekt vanaf " + name, "π-L, lacks from " + name})
        check_note(note, after);
      check_note("lacks from " + name + " to L4", after);
      check_note("lacks A1, from " + name + " on", with(after, {3}));
      check_note("lacks " + name + " to the end, A1", with(after, {3}));
      check_note("lacks from " + name + " on, and A1", with(after, {3}));
      check_note(name + " to end", but(after));
    }
  check_refused("mancano da K5", Problem::not_a_reference);
  check_refused("lacks from", Problem::not_a_reference);
  check_refused("lacks from K9", Problem::not_a_reference);
}

TEST_CASE("a copy begins at a leaf and ends at another") {
  for (auto const& [begins, ends] : {std::pair<std::string, std::string>{"begins at ", "ends at "},
                                     {"begins with ", "ends with "},
                                     {"Begins imperfectly at ", "ends imperfectly at "},
                                     {"beginning with leaf ", "ending with leaf "},
                                     {"beginnt mit Bl. ", "endet mit Bl. "},
                                     {"commence au f. ", "finit au f. "},
                                     {"inizia con la c. ", "termina con la c. "}})
    for (char const g : {'A', 'C', 'K'})
      for (int const leaf : {1, 3, 8}) {
        auto const at = number_of_leaf(g, leaf);
        auto const name = leaf_text(g, leaf);
        for (std::string const before : {"", "Imperfect: ", "imperfect, "}) {
          check_note(before + begins + name, from_to(1, at - 1));
          check_note(before + ends + name, from_to(at + 1, 86));
          for (std::string const between : {", ", " and ", "; "})
            check_note(before + begins + name + between + ends + "L2", with(from_to(1, at - 1), {85, 86}));
        }
        check_note(begins + name + ", lacks L4", with(from_to(1, at - 1), {86}));
      }
  check_note("begins with B", from_to(1, 10));
  check_note("ends with B", from_to(19, 86));
  check_refused("begins at M3", Problem::not_a_reference);
  check_refused("begins", Problem::not_a_reference);
  check_refused("begins at B3, ends at A3", Problem::not_a_reference);
}

TEST_CASE("words before leaves that are there") {
  for (std::string const before : {"has ", "contains ", "comprising ", "consists of ", "consisting only of ",
                                   "Vorhanden: ", "vorhanden sind ", "Einzelblätter: ", "comprend ", "contient ",
                                   "contiene ", "enthält ", "besteht aus ", "single leaves: ", "bevat "})
    for (std::string const begins : {"", "fragment, ", "Fragment: ", "imperfect, "})
      for (auto const& [text, leaves] : runs_with("-")) {
        check_note(begins + before + text, but(leaves));
        check_note(begins + before + text + " only", but(leaves));
        if (!leaves.contains(86)) check_note(begins + before + text + " and L4", but(with(leaves, {86})));
      }
  check_note("single leaf: C4", but({number_of_leaf('C', 4)}));
  check_note("single leaf C4 only", but({number_of_leaf('C', 4)}));
  check_note("bifolium C4.5 only", but({22, 23}));
  check_note("seuls les cahiers B-D", but(from_to(11, 34)));
  check_note("solo i fascicoli B-D", but(from_to(11, 34)));
  check_note("Vorhanden: A-C, D1-4; K8 torn", but(with(from_to(3, 30), {82})));
  check_refused("fragment: B2-7", Problem::leaves_not_named); // there, or wanting?
  check_refused("Bruchstück: B2-7", Problem::leaves_not_named);
  check_refused("consists of", Problem::not_a_reference);
}

TEST_CASE("the number of leaves stands after their names") {
  for (auto const& [text, leaves] : runs_with("-"))
    for (std::string const noun : {"leaves", "ff.", "Bl.", "Blätter", "feuillets", "cc.", "hojas"}) {
      auto const count = static_cast<int>(leaves.size());
      auto const note = [&](int number) { return text + " (" + std::to_string(number) + ' ' + noun + ')'; };
      check_note("lacks " + note(count), leaves);
      check_note("lacks " + note(count) + ", L4", with(leaves, {86}));
      check_note(note(count), but(leaves));
      check_note("lacks " + note(count + 1), leaves, {Problem::leaves_miscounted});
      check_note("lacks " + note(count - 1) + ", L4", with(leaves, {86}), {Problem::leaves_miscounted});
      check_note(std::to_string(count) + ' ' + noun + ": " + text, but(leaves));
      check_note(std::to_string(count + 1) + ' ' + noun + ": " + text, but(leaves), {Problem::leaves_miscounted});
    }
  check_note("lacks C and D (16 leaves)", from_to(19, 34));
  check_note("wants C (8 leaves)", quire('C'));
}

TEST_CASE("a gathering has the number of its leaves raised") {
  for (char const g : {'A', 'C', 'K'}) {
    check_note(std::string{"lacks "} + g + "⁸ and L4", with(quire(g), {86}));
    check_note(std::string{"lacks "} + g + "⁸", quire(g));
    check_refused(std::string{"lacks "} + g + "⁶", Problem::counts_differ);
  }
  check_note("lacks π² and L⁴", with({1, 2}, quire('L')));
  check_note("lacks A-C⁸", from_to(3, 26));
  check_note("π² A-K⁸", quire('L'));
  check_refused("lacks A-L⁸", Problem::counts_differ);
  check_refused("lacks M⁸", Problem::not_a_reference);
}

TEST_CASE("a leaf is named by its conjugate") {
  for (char const g : gatherings_of_notes)
    for (int leaf = 1; leaf <= 8; ++leaf) {
      auto const name = leaf_text(g, leaf);
      Leaves const other{number_of_leaf(g, 9 - leaf)}, both{number_of_leaf(g, leaf), number_of_leaf(g, 9 - leaf)};
      check_note("lacks the conjugate of " + name, other);
      check_note("lacks conjugate of " + name + ", L4", with(other, {86}));
      check_note("lacks the conjugate leaf of " + name, other);
      check_note("lacks " + name + " and its conjugate", both);
      check_note("lacks " + name + " and its conjugate, L4", with(both, {86}));
      check_note("lacks " + name + " with its conjugate", both);
    }
  IdealCopy const single{*read_formula("8°: A⁸(A3+χ1)")};
  CHECK(read_leaves_present(single, "lacks the conjugate of χ1").error().problem == Problem::leaves_not_named);
  check_refused("lacks the conjugate", Problem::not_a_reference);
}

TEST_CASE("leaves are counted at an end of the book") {
  for (int number = 1; number <= 12; ++number)
    for (auto const& [lacks, noun, front, back] :
         {std::tuple<std::string, std::string, std::string, std::string>{"lacks ", "leaves", "at beginning", "at end"},
          {"lacks ", "leaves", "at the beginning", "at the end"},
          {"es fehlen ", "Bl.", "am Anfang", "am Ende"},
          {"manquent ", "ff.", "au début", "à la fin"},
          {"mancano ", "cc.", "in principio", "in fine"},
          {"faltan ", "hojas", "al principio", "al final"}}) {
      auto const count = std::to_string(number) + ' ' + noun + ' ';
      check_note(lacks + count + front, from_to(1, number));
      check_note(lacks + count + back, from_to(87 - number, 86));
      check_note(lacks + count + back + ", A1", with(from_to(87 - number, 86), {3}));
      check_note(lacks + count + front + " and " + count + back, with(from_to(1, number), from_to(87 - number, 86)));
    }
  check_note("lacks 2 leaves at end (L3-4)", {85, 86});
  check_note("lacks 2 quires at end", with(quire('K'), quire('L')));
  check_note("lacks L3-4 at end", {85, 86});
  check_note("lacks at end L3-4", {85, 86});
  check_note("am Ende fehlt L4", {86});
  check_note("Am Anfang fehlen A1-3", from_to(3, 5));
  check_note("def. am Anfang (A1-3 fehlen)", from_to(3, 5));
  check_note("mutilo in fine: mancano K7-L4", from_to(81, 86));
  check_note("desunt ff. ultima duo", {85, 86});
  check_refused("lacks 90 leaves at end", Problem::leaves_not_named);
  CHECK_FALSE(read_leaves_present(book_of_notes(), "π-L, B3 at end")); // bound there?
}

TEST_CASE("leaves are counted in a gathering") {
  for (char const g : gatherings_of_notes)
    for (int from = 1; from <= 8; from += 2)
      for (int to = from; to <= 8; ++to) {
        auto const run = std::to_string(from) + (to > from ? '-' + std::to_string(to) : std::string{});
        auto const leaves = from_to(number_of_leaf(g, from), number_of_leaf(g, to));
        for (std::string const of :
             {"of ", "of quire ", "in gathering ", "der Lage ", "du cahier ", "del fascicolo "}) {
          check_note("lacks leaves " + run + ' ' + of + g, leaves);
          check_note("lacks ff. " + run + ' ' + of + g + ", L4", with(leaves, {86}));
          check_note("Bll. " + run + ' ' + of + g + " fehlen", leaves);
        }
        check_note("lacks leaves 1 and " + run + " of " + g, with(leaves, {number_of_leaf(g, 1)}));
      }
  check_note("lacks leaves iii-vi of B", from_to(13, 16));
  check_refused("lacks leaf 9 of B", Problem::no_such_leaf);
  check_refused("lacks leaves 3-6 of M", Problem::not_a_reference);
}

TEST_CASE("a word for wanting after leaves is followed by a remark") {
  for (std::string const word : {"wanting", "missing", "lacking", "fehlt", "manque", "manca", "falta"})
    for (std::string const remark : {" (a blank)", " (blank)", " (both blank)", " (title)", " (title, verso blank)"}) {
      check_note("K8 " + word + remark, {82});
      check_note("K8 " + word + remark + ", A1 " + word, {3, 82});
      check_note("π-L (K8 " + word + remark + ")", {82});
    }
  for (std::string const first :
       {"les deux derniers ff.", "les 2 derniers ff.", "le ultime due carte", "die letzten beiden Blätter",
        "the last 2 leaves", "the last two leaves", "die beiden letzten Bl.", "last 2 leaves"})
    for (std::string const word : {" wanting", " manquent", " fehlen", " mancano"}) check_note(first + word, {85, 86});
  check_note("A blank leaf (L4) wanting", {86});
  check_note("A leaf (L4) missing", {86});
  for (std::string const text : {"a leaf missing", "A leaf missing", "a blank leaf wanting", "2 leaves missing",
                                 "title missing", "lacks a leaf", "half-title wanting"})
    check_refused(text, Problem::leaves_not_named);
}

TEST_CASE("words for what is printed on a leaf do not lose the leaves that are named beside them") {
  for (std::string const title : {"title-page", "the half-title", "title page", "title", "errata leaf"}) {
    auto const doubt = std::vector{Problem::leaves_not_named};
    check_note("lacks " + title + ", A3-A6", from_to(5, 8), doubt);
    check_note("lacks " + title + " and A3", {5}, doubt);
    check_note("lacks A3, " + title, {5}, doubt);
    check_note("lacks A3 and " + title, {5}, doubt);
    check_note("lacks " + title + "; A3", {5}, doubt);
    check_note("lacks " + title + " and final blank", {86}, doubt);
    check_note("A1 missing, " + title + " missing", {3}, doubt);
    check_refused("lacks " + title, Problem::leaves_not_named);
    check_refused("π-L, lacks " + title, Problem::leaves_not_named);
    if (title.starts_with("title")) check_note("lacks " + title + " (A1), A3", {3, 5});
  }
}

TEST_CASE("other words for lacking and for an exception") {
  for (std::string const but_for : {"apart from", "Apart from", "with the exception of", "mit Ausnahme von", "bis auf",
                                    "à l'exception de", "ad eccezione di"}) {
    check_note("complete " + but_for + " L4", {86});
    check_note("complete, " + but_for + " A1 and L4", {3, 86});
    check_note("wants A-C " + but_for + " B4", [] {
      auto all = from_to(3, 26);
      all.erase(14);
      return all;
    }());
  }
  for (std::string const text : {"Bound without L4", "π-L, bound without L4", "relié sans L4", "privé de L4",
                                 "privé du f. L4", "faltam as folhas L4", "mútilo: falta L4", "gebunden ohne L4"})
    check_note(text, {86});
  check_note("privé des ff. A1 et A8", {3, 10});
  check_note("faltam as folhas A1-A3", {3, 4, 5});
  check_note("desunt quaterniones C et D", from_to(19, 34));
  check_note("lacks everything before A2 and after L1", with({1, 2, 3}, {84, 85, 86}));
  check_note("lacks all before A2 and all after L1", with({1, 2, 3}, {84, 85, 86}));
  check_note("complete with blanks", {});
  check_note("complete with all blanks", {});
  check_note("complete, with the blanks", {});
  check_note("lacks Ai-iij", {3, 4, 5});
  check_note("lacks A1, ij, iij", {3, 4, 5});
  check_note("lacks A1, iv", {3, 6});
  IdealCopy const few{*read_formula("8°: A-B⁸")};
  for (std::string const name : {"C", "D", "I", "L", "M", "V", "X", "CC", "XX", "v", "x", "m"})
    for (std::string const before : {"lacks A1, ", "lacks A1-", "A1, ", "lacks A1 and "}) {
      CAPTURE(before + name); // a gathering that the book does not have, and no numeral
      auto const read = read_leaves_present(few, before + name);
      REQUIRE_FALSE(read);
      CHECK(read.error().problem == Problem::gathering_not_in_book);
    }
}

TEST_CASE("a word for blank before the names of leaves is said of them, and of no others") {
  static auto const book = book_of_notes();
  auto const noted_of = [&](std::string const& text) {
    CAPTURE(text);
    auto const read = read_leaves_present(book, text);
    REQUIRE(read);
    auto const copy = check_copy(book, read->spans);
    return wants(book, copy) + (copy.repeated.empty() ? "" : ", twice") + " | " + noted(book, copy);
  };
  for (std::string const blanks : {"blanks ", "blank leaves ", "the blank leaves ", "with the blanks ",
                                   "les ff. blancs ", "including blank leaves ", "with both blank leaves "}) {
    CAPTURE(blanks);
    CHECK(noted_of("π-L (" + blanks + "A1, K8)") == " | A1 blank; K8 blank");
    CHECK(noted_of("π-L (" + blanks + "A1 and K8), lacks B3") == "wants B3 | A1 blank; K8 blank");
    CHECK(noted_of("π-L; " + blanks + "A1, K8; B3 torn") == " | A1 blank; B3 damaged; K8 blank");
    CHECK(noted_of("π-K, " + blanks + "A1, K8; L") == " | A1 blank; K8 blank");
  }
  for (std::string const one :
       {"the blank leaf ", "with the blank leaf ", "blank leaf ", "with the final blank ", "including the blank "}) {
    CAPTURE(one);
    CHECK(noted_of("π-K, " + one + "K8, L") == " | K8 blank");
    CHECK(noted_of("π-L (" + one + "K8)") == " | K8 blank");
    CHECK(noted_of("π-L, " + one + "K8, B3 torn") == " | B3 damaged; K8 blank");
  }
  CHECK(noted_of("π A1 blank A2-L4") == " | A1 blank");
  CHECK(noted_of("π A1, blank, A2-L4") == " | A1 blank");
}

TEST_CASE("a gathering that the book does not have is told in one way, with a leaf and without") {
  static auto const book = book_of_notes();
  IdealCopy const inserts{*read_formula("8°: A⁸(A4+*²) B⁸")};
  for (std::string const name : {"M", "2A", "a", "*", "†", "χA", "πB", "²A", "3C"})
    for (std::string const begins : {"", "lacks ", "A-B, wants "})
      for (auto const* one : {&book, &inserts}) {
        if (one == &inserts && name == "*") continue;
        auto const text = begins + name;
        CAPTURE(text);
        for (std::string const leaf : {"", "1", "-", "1-3"}) {
          if (leaf == "1" && name == "a") continue; // read as leaf A1 in no book
          auto const read = read_leaves_present(*one, text + leaf + (leaf == "-" ? name : ""));
          REQUIRE_FALSE(read);
          CHECK(read.error().problem == Problem::gathering_not_in_book);
        }
      }
  // several inserted gatherings of one name: the first is taken, with a doubt, as for a leaf of one
  IdealCopy const twice{*read_formula("πA⁴ a-c⁸ (A4+χA²(−χA2))+(A4+χA²(−χA2))")};
  for (std::string const name : {"χA", "χA1"}) {
    auto const read = read_leaves_present(twice, "wants " + name);
    REQUIRE(read);
    CHECK(wants(twice, check_copy(twice, read->spans)) == "wants χA");
    REQUIRE(read->warnings().size() == 1);
    CHECK(read->warnings()[0].problem == Problem::name_of_several);
  }
}

TEST_CASE("an article that is also a gathering does not say where a copy begins") {
  IdealCopy const book{*read_formula("8°: a-k⁸")};
  for (std::string const note :
       {"begins with a blank", "begins with a blank leaf", "ends with a leaf of errata", "ends with a plate"})
    CHECK_FALSE(read_leaves_present(book, note));
  CHECK(wants(book, check_copy(book, (*read_leaves_present(book, "begins with b, ends with i")).spans)) ==
        "wants a, k");
  for (std::string const note : {"lacks A1, as B3", "lacks A1 as usual"})
    CHECK_FALSE(read_leaves_present(book_of_notes(), note));
  check_note("lacks B3 and conjugate, L4", {13, 16, 86});
}
