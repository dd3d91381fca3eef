// SPDX-License-Identifier: MIT
// Each limit of each reader: what is at it is read, one more is an error that names the limit and its number. (constructed)
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/copy/paper_of_copy.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/drawing/class_page.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/record.hpp>

#include "check.hpp"

#include <functional>

using namespace bifolium;

namespace {

using Reader = std::function<Expected<void>(std::string_view, Limits const&)>;
template <class T> Expected<void> outcome(Expected<T> const& read) {
  if (!read) return read.error();
  return {};
}
IdealCopy const& book() {
  static IdealCopy const made{*read_formula("8°: A-99Z8")};
  return made;
}

struct Case {
  char const* name;
  Reader read;
  std::string one; ///< one more of what is limited, repeated after `begin` with its number in place of #
  std::string begin, end;
  int at_begin; ///< of them that are in `begin`
  std::uint32_t Limits::*limit;
  char const* named;
  Problem problem;
};

std::string text_of(Case const& one, int count) {
  auto text = one.begin;
  for (int i = one.at_begin; i < count; ++i) {
    auto piece = one.one;
    if (auto const at = piece.find('#'); at != piece.npos) piece.replace(at, 1, std::to_string(i + 1));
    text += piece;
  }
  return text + one.end;
}

std::vector<Case> cases() {
  auto const formula = [](std::string_view text, Limits const& limits) {
    return outcome(read_formula(text, {}, limits));
  };
  auto const counted = [](std::string_view text, Limits const& limits) {
    return outcome(count_formula(text, {}, limits));
  };
  auto const note = [](std::string_view text, Limits const& limits) {
    return outcome(read_signature_note(text, {}, limits));
  };
  auto const pages = [](std::string_view text, Limits const& limits) { return outcome(read_pagination(text, limits)); };
  auto const extent = [](std::string_view text, Limits const& limits) { return outcome(read_extent(text, limits)); };
  auto const described = [](std::string_view text, Limits const& limits) {
    return outcome(read_physical_description(text, limits));
  };
  auto const signing = [](std::string_view text, Limits const& limits) {
    return outcome(read_signing(text, {}, limits));
  };
  auto const leaves = [](std::string_view text, Limits const& limits) {
    return outcome(read_leaves_present(book(), text, limits));
  };
  auto const joints = [](std::string_view text, Limits const& limits) {
    return outcome(read_joints(book(), text, limits));
  };
  auto const paper = [](std::string_view text, Limits const& limits) {
    return outcome(read_paper_seen(book(), text, limits));
  };
  auto const runs = Problem::too_many_runs, changes = Problem::too_many_changes;
  return {
      {"formula", formula, "*#A8 ", "", "", 0, &Limits::runs, "runs", runs},
      {"formula, plain runs", formula, "A8 ", "", "", 0, &Limits::runs, "runs", runs},
      {"formula, second statement", formula, "A8 ", "A8 = ", "", 0, &Limits::runs, "runs", runs},
      {"formula, deletions", formula, "-A#, ", "A⁴⁴(", ")", 0, &Limits::changes, "changes", changes},
      {"formula, insertions", formula, "A#+1, ", "A⁴⁴(", ")", 0, &Limits::changes, "changes", changes},
      {"formula, cancels", formula, "(±A#)", "A⁴⁴", "", 0, &Limits::changes, "changes", changes},
      {"formula, identities", formula, "A#=B1, ", "A⁴⁴ B8(", ")", 0, &Limits::changes, "changes", changes},
      {"formula, notes", formula, "(wrapper)", "A⁴⁴", "", 0, &Limits::changes, "changes", changes},
      {"formula, leaves without a place", formula, "⁺¹", "A⁸", "", 0, &Limits::changes, "changes", changes},
      {"formula counted", counted, "*#A8 ", "", "", 0, &Limits::runs, "runs", runs},
      {"formula counted, deletions", counted, "-A#, ", "A⁴⁴(", ")", 0, &Limits::changes, "changes", changes},
      {"signature note", note, "*#A8 ", "Signatures: ", "", 0, &Limits::runs, "runs", runs},
      {"pagination", pages, "1-9, ", "pp. ", "", 0, &Limits::runs, "runs", runs},
      {"pagination, faults", pages, "# as 999, ", "pp. 1-99 [misprinting ", "]", 0, &Limits::changes, "changes",
       changes},
      {"extent", extent, "9, ", "", "[3] p.", 0, &Limits::runs, "runs", runs},
      {"physical description", described, "9, ", "", "[3] p. : ill. ; 20 cm", 0, &Limits::runs, "runs", runs},
      {"signing", signing, "-A#, ", "$4 (", ")", 0, &Limits::changes, "changes", changes},
      {"signing, mistakes", signing, "A1 as B#, ", "$4 missigning ", "", 0, &Limits::changes, "changes", changes},
      {"leaves present", leaves, "A1 ", "", "", 0, &Limits::runs, "runs", runs},
      {"paper seen", paper, "#A1 vertical; ", "A1 vertical; ", "", 1, &Limits::runs, "runs", runs},
      {"joints", joints, "A1.8 conjugate; ", "", "", 0, &Limits::changes, "changes", changes},
  };
}

} // namespace

TEST_CASE("what is at a limit is read, one more is an error that names it") {
  for (auto const& one : cases()) {
    CAPTURE(one.name);
    bool const after = one.end.starts_with("[3]"); // one run more
    for (int most : {2, 7, 40}) {
      Limits limits;
      limits.*one.limit = static_cast<std::uint32_t>(most);
      auto const text = text_of(one, after ? most - 1 : most), more = text_of(one, after ? most : most + 1);
      CAPTURE(text);
      auto const at = one.read(text, limits);
      INFO((at ? std::string{} : message(at.error())));
      REQUIRE(at);
      auto const over = one.read(more, limits);
      REQUIRE(!over);
      CHECK(over.error().problem == one.problem);
      CHECK(over.error().limit == most);
      CHECK(over.error().is_in_text());
      auto const said = message(over.error());
      CHECK(said.find("more than " + std::to_string(most)) != said.npos);
      CHECK(said.find('\'' + std::string{one.named} + "' of Limits") != said.npos);
      CHECK(one.read(more, {}));
    }
  }
}

TEST_CASE("a text of more bytes than the limit is not read, by any reader") {
  for (auto const& one : cases()) {
    CAPTURE(one.name);
    auto const text = text_of(one, 3);
    Limits limits;
    limits.text_bytes = static_cast<std::uint32_t>(text.size());
    CHECK(one.read(text, limits));
    --limits.text_bytes;
    auto const over = one.read(text, limits);
    REQUIRE(!over);
    CHECK(over.error().problem == Problem::text_too_long);
    CHECK_FALSE(over.error().is_in_text());
    auto const said = message(over.error());
    CHECK(said.find("more than " + std::to_string(limits.text_bytes) + " bytes") != said.npos);
    CHECK(said.find("'text_bytes' of Limits") != said.npos);
  }
}

TEST_CASE("a range of leaves in a statement of signing is as many exceptions as it names") {
  Limits limits;
  limits.changes = 100;
  CHECK((*read_signing("$4 (-A1-50, B1-50)", {}, limits)).exceptions.size() == 100);
  CHECK(read_signing("$4 (-A1-50, B1-51)", {}, limits).error().problem == Problem::too_many_changes);
  CHECK((*read_signing("$4 (-A1-64)")).exceptions.size() == 64);
  auto const longer = read_signing("$4 (-B3, A3-67)").error();
  CHECK(message(longer) ==
        "line 1, column 10: 'A3-67' names more than 64 leaves or gatherings one by one: write the gathering alone "
        "for all its leaves");
}

TEST_CASE("no more leaves are drawn than the limit") {
  auto const formula = *read_formula("8°: A8(A1+χ1-12) B8(-B8)");
  Limits limits;
  limits.leaves_drawn = 20;
  CHECK((*drawn_gathering(formula, {0, 0}, limits)).leaves.size() == 20);
  limits.leaves_drawn = 19;
  auto const over = drawn_gathering(formula, {0, 0}, limits);
  REQUIRE(!over);
  CHECK(message(over.error()) ==
        "there are more than 19 leaves to draw, which is what 'leaves_drawn' of Limits allows");
  CHECK(drawn_gathering(formula, {1, 0}, limits));
  auto const copy = check_copy(IdealCopy{formula}, {});
  CHECK(drawn_gathering(formula, {0, 0}, copy, limits).error().problem == Problem::too_many_leaves_drawn);
  CHECK(class_page(formula, "", {}, limits).error().problem == Problem::too_many_leaves_drawn);
  limits.leaves_drawn = 28; // B8 is drawn too, where it was cut away
  CHECK(class_page(formula, "", {}, limits));
  limits.leaves_drawn = 27;
  CHECK(class_page(formula, "", {}, limits).error().problem == Problem::too_many_leaves_drawn);
  // a formula of few characters and of any number of leaves ends soon
  CHECK(class_page(*read_formula("8°: A-9999Z8"), "").error().problem == Problem::too_many_leaves_drawn);
}
