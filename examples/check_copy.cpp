// SPDX-License-Identifier: MIT
/// Checks the leaves of a copy against the formula of the ideal copy.
#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>

#include "support/arguments.hpp"

using namespace bifolium;

namespace {

constexpr std::string_view usage = R"(check_copy FORMULA LEAVES

Says what a copy wants, with conjugates, and what that means.
  FORMULA   the ideal copy: '8°: A-K8 L4(-L4)'
  LEAVES    the leaves present, in the order of the copy: 'A1-B2 B4-5 B7-L3'

Leaf through a book only as far as it opens by itself, and follow the rules of
the library that holds it.
)";

std::string name(Formula const& formula, LeafOfBook const& leaf) {
  return write_reference(formula, {leaf, LeafSide::not_said});
}
void list(char const* what, Formula const& formula, std::vector<LeafOfBook> const& leaves) {
  if (leaves.empty()) return;
  std::cout << what;
  for (std::size_t i = 0; i < leaves.size(); ++i) std::cout << (i > 0 ? ", " : " ") << name(formula, leaves[i]);
  std::cout << '\n';
}
void explain(Formula const& formula, MissingLeaf const& missing) {
  std::cout << "  " << name(formula, missing.leaf) << ": ";
  if (!missing.conjugate)
    std::cout << "a single leaf, joined to no other";
  else if (missing.conjugate_missing)
    std::cout << "its conjugate " << name(formula, *missing.conjugate) << " is missing too: a lost bifolium";
  else
    std::cout << "its conjugate " << name(formula, *missing.conjugate) << " is there: look for a stub";
  std::cout << '\n';
}

} // namespace

int main(int count, char** words) {
  support::Arguments const arguments{count, words, {}, {}};
  if (auto const code = arguments.settled(usage, 2, 2)) return *code;
  auto const formula = read_formula(arguments.words()[0], dialects::bmc);
  if (!formula) {
    std::cerr << "formula, " << message(formula.error()) << '\n';
    return support::unreadable;
  }
  for (auto const& warning : formula->warnings()) std::cerr << "formula, " << message(warning) << '\n';
  auto const present = read_leaves_present(*formula, arguments.words()[1]);
  if (!present) {
    std::cerr << "leaves, " << message(present.error()) << '\n';
    return support::unreadable;
  }
  auto const copy = check_copy(*formula, *present);
  std::cout << "ideal copy: " << copy.leaves_ideal << " leaves; this copy: " << copy.leaves_present << '\n'
            << (copy.complete() ? "wants nothing" : wants(*formula, copy)) << '\n';
  for (auto const& missing : copy.missing) explain(*formula, missing);
  list("twice:", *formula, copy.repeated);
  list("not in the ideal copy:", *formula, copy.not_in_ideal);
  list("bound too late:", *formula, copy.misplaced);
  if (copy.backwards) std::cout << "every leaf comes before the last: is this a book read from right to left?\n";
}
