// SPDX-License-Identifier: MIT
/// Checks the leaves of a copy against the formula of the ideal copy.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/copy/paper_of_copy.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/number_of.hpp>
#include <bifolium/drawing/formula_gathering.hpp>

#include "support/arguments.hpp"
#include "support/wrong.hpp"

#include <string>

using namespace bifolium;

namespace {

constexpr std::string_view usage = R"(check_copy FORMULA LEAVES [JOINTS]
check_copy FORMULA [LEAVES [JOINTS]] --gathering B [--svg FILE]
check_copy FORMULA [LEAVES [JOINTS]] --paper PAPER

Lists the leaves that a copy lacks, with their conjugates, and the leaves that it
has twice or out of place. Compares evidence of joined leaves with the formula.
  FORMULA   the ideal copy: '8°: A-K8 L4(-L4)'
  LEAVES    the leaves that are present, in the order of the copy: 'A1-B2 B4-5 B7-L3';
            a word may follow leaves: facsimile, manuscript, supplied, mounted, torn, blank
            or the leaves that are not: 'wants C3.6, K8 and all after L2'
            or 'all but B3,6' or 'the last two leaves wanting'
  JOINTS    the evidence of joined leaves: 'A1.8 conjugate; B3 stub; C4 sewing; A2.7 disjunct;
            D1.8 chain lines run on; D1.8 chain lines break; E4.5 mark halves meet'
  --paper PAPER  what leaves show of their paper, if the edges were not cut also bolts and
            rough edges: 'B1 head-of-gutter vertical; B2 absent; B3 horizontal; C1 bolt head 4'
            (the words are those of find_fold --help). Tells if the leaves of a gathering
            agree with a folding of the format, or which leaf is of other paper: a cancel
  --gathering B  lists one gathering leaf by leaf: which leaves are joined, cancelled,
            inserted, removed, and missing in the copy if its leaves are given
  --svg FILE     also draws this gathering

Leaf through a book only as far as it opens by itself, and follow the rules of
the library that holds it.
)";

constexpr std::int64_t explained_most = 100; // leaves one by one

std::string name(IdealCopy const& book, LeafOfBook const& leaf) {
  return write_reference(book, {leaf, LeafSide::not_said});
}
void explain(IdealCopy const& book, MissingLeaf const& missing) {
  std::cout << "  " << name(book, missing.leaf) << (missing.blank ? ", a blank: " : ": ");
  if (!missing.conjugate)
    std::cout << "a single leaf, joined to no other";
  else if (missing.conjugate_missing)
    std::cout << "its conjugate " << name(book, *missing.conjugate) << " is missing too: a lost bifolium";
  else
    std::cout << "its conjugate " << name(book, *missing.conjugate) << " is there: look for a stub";
  std::cout << '\n';
}
/// Leaf by leaf, but a whole gathering in one line.
void explain_wanting(IdealCopy const& book, CopyChecked const& copy) {
  std::int64_t told = 0;
  for (auto const& span : copy.wanting)
    for (auto n = span.from; n <= span.to && told < explained_most; ++told) {
      auto const gathering = book.leaf_of_number(n)->gathering;
      auto const all = book.numbers_of(gathering);
      if (all.count() > 1 && all.from == n && all.to <= span.to) {
        std::cout << "  " << to_text(book.signature(gathering)) << ": the whole gathering is missing\n";
        n = all.to + 1;
      } else if (auto const portion = wanting_portion(book, span, n); portion.inserted && portion.to > n) {
        std::cout << "  " << to_text(*book.inserted(*book.leaf_of_number(n))->insertion.name)
                  << ": the whole gathering is missing\n";
        n = portion.to + 1;
      } else
        explain(book, missing_leaf(book, copy, n++));
    }
}
void tell(IdealCopy const& book, CopyChecked const& copy) {
  std::cout << "ideal copy: " << number_of(copy.leaves_ideal, "leaf", "leaves")
            << "; this copy: " << copy.leaves_present << '\n'
            << (copy.complete() ? "wants no leaf" : wants(book, copy)) << '\n';
  if (!copy.complete() && copy.text_complete()) std::cout << "the text is complete: only blanks are missing\n";
  explain_wanting(book, copy);
  if (auto const words = noted(book, copy); !words.empty()) std::cout << words << '\n';
  for (auto const& span : copy.repeated) {
    std::cout << "twice: " << name(book, span.first);
    if (span.from != span.to) std::cout << " to " << name(book, span.last);
    // a second leaf where the formula has a cancel may be the leaf that was to be cut out
    if (span.from == span.to && book.is_cancel(span.first))
      std::cout << ", the leaf cancelled left in with its cancel?";
    std::cout << '\n';
  }
  for (auto const& leaf : copy.not_in_ideal)
    std::cout << "not in the ideal copy: " << name(book, leaf.first) << ", which the formula takes away\n";
  if (copy.backwards)
    std::cout << "every leaf comes before the last: is this a book read from right to left?\n";
  else if (!copy.misplaced.empty())
    std::cout << "misbound: " << misbound(book, copy) << '\n';
  for (auto const& joint : copy.joints) std::cout << joint.words << '\n';
}

int refuse(char const* what, Error const& error) {
  support::tell(std::string{what} + ", " + support::with_identifier(error));
  return support::unreadable;
}

/// One gathering, as it is in the formula or in the copy; drawn if a file is named.
int show(Formula const& formula, std::string_view name, std::optional<CopyChecked> const& copy,
         std::optional<std::string> const& file) {
  auto const signature = read_signature(name, formula.letters());
  IdealCopy const book{formula};
  auto const found = signature ? book.find(*signature) : std::nullopt;
  auto at = found ? std::optional{found->gathering} : std::nullopt;
  if (auto const leaves = signature && !found ? book.find_inserted(*signature) : std::nullopt) {
    at = book.leaf_of_number(leaves->from)->gathering;
    std::cout << name << " is inserted in gathering " << to_text(book.signature(*at)) << '\n';
  }
  if (!at) {
    support::tell("the formula has no gathering '" + std::string{name} + "'");
    return support::unreadable;
  }
  auto const gathering = copy ? drawn_gathering(formula, *at, *copy) : drawn_gathering(formula, *at);
  if (!gathering) {
    support::tell(support::with_identifier(gathering.error()));
    return support::unreadable;
  }
  std::cout << gathering->title << '\n' << gathering_text(*gathering);
  if (!file) return support::all_done;
  support::write_file(*file, gathering_svg(*gathering));
  return support::all_done;
}

/// Compares the paper of each gathering of which leaves were looked at.
int tell_paper(Formula const& formula, IdealCopy const& book, std::string_view text) {
  auto const paper = read_paper_seen(book, text);
  if (!paper) return refuse("paper", paper.error());
  for (auto const& gathering : *paper) {
    auto const judged = judge_paper(book, gathering, formula.format());
    if (!judged) return refuse("paper", judged.error());
    std::cout << judged->words << '\n';
  }
  return support::all_done;
}

int check(support::Arguments arguments) {
  auto const gathering = arguments.value("--gathering"), file = arguments.value("--svg");
  auto const paper = arguments.value("--paper");
  if (file && !gathering) arguments.refuse("--svg draws a gathering: say which, as --gathering B");
  if (gathering && paper) arguments.refuse("--gathering and --paper are two questions: ask one of them");
  if (auto const code = arguments.settled(usage, gathering || paper ? 1 : 2, 3)) return *code;
  auto const formula = read_formula(arguments.words()[0], dialects::bmc);
  if (!formula) return refuse("formula", formula.error());
  for (auto const& warning : formula->warnings()) support::tell("formula, " + support::with_identifier(warning));
  IdealCopy const book{*formula};
  if (arguments.words().size() == 1)
    return gathering ? show(*formula, *gathering, std::nullopt, file) : tell_paper(*formula, book, *paper);
  auto const present = read_leaves_present(book, arguments.words()[1]);
  if (!present) return refuse("leaves", present.error());
  for (auto const& warning : present->warnings()) support::tell("leaves, " + message(warning));
  auto const joints = read_joints(book, arguments.words().size() > 2 ? arguments.words()[2] : "");
  if (!joints) return refuse("joints", joints.error());
  auto const copy = check_copy(book, present->spans, *joints);
  if (gathering) return show(*formula, *gathering, copy, file);
  tell(book, copy);
  return paper ? tell_paper(*formula, book, *paper) : support::all_done;
}

} // namespace

int main(int count, char** words) {
  return support::run([&] { return check({count, words, {}, {"--gathering", "--svg", "--paper"}}); });
}
