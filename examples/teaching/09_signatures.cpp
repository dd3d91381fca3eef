// SPDX-License-Identifier: MIT
// Lesson 9. Signatures and catchwords.
//
// Look: the foot of the pages on any printed sheet of lessons 2 to 8: A on the first leaf, A2
//   on the second, up to the middle of the gathering. The short rule is the place of the
//   catchword: the first word of the next page. Look for both in an old book, or in pictures of
//   one.
// See: signatures tell the binder the order of gatherings and leaves. The alphabet of the trade
//   has 23 letters: no J, no U or V twice, no W. After Z comes Aa, written 2A.
// Task: tasks/09_signatures.cpp
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>
#include <bifolium/leaf/write_signature.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto a = Signature::letter('A');
static_assert(a.at_rank(23) == Signature::letter('Z'));    // the twenty-third gathering
static_assert(a.at_rank(24) == Signature::letter('A', 2)); // the twenty-fourth: 2A

int main() {
  std::cout << "The gatherings of a book in order:";
  for (int n = 1; n <= 26; ++n) std::cout << ' ' << to_text(a.at_rank(n)).view();
  // Cim's table of signatures (Le Livre III, 1907): sheets of sixteen pages begin at 1, 17, 33,
  // 49.
  std::cout
      << "\n\nFirst page of each gathering of an octavo, if the pages are numbered from 1:\n";
  for (int n = 1; n <= 5; ++n)
    std::cout << to_text(a.at_rank(n)).view() << ' ' << 16 * n - 15 << "   ";
  std::cout
      << "\n\nWhich pages of an octavo are signed, and by which forme they are printed:\n";
  for (int leaf = 1; leaf <= 4; ++leaf) {
    auto const page = 2 * leaf - 1;
    std::cout << 'A' << (leaf > 1 ? std::to_string(leaf) : "") << " on page " << page << ", "
              << (impose<schemes::octavo>().place(page).side == Side::outer ? "outer" : "inner")
              << " forme\n";
  }
}
