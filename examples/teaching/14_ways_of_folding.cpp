// SPDX-License-Identifier: MIT
// Lesson 14. In how many ways can a sheet be folded?
//
// Fold: a sheet with two rows of four leaves, numbered on one side along the rows. Fold it up
//   in any way you like, no cut, until it is one leaf wide. Write down the order of the numbers.
// Look: class_page octavo --out octavo.html; show_formes octavo | find_fold --all
// See: not every packet is a gathering. In a gathering the first and the last leaf are one
//   piece, joined at the gutter, and so are the second and the last but one. Of all the packets
//   a few are gatherings, and of those printers used one or two.
// Task: tasks/14_ways_of_folding.cpp
#include <bifolium/fold.hpp>
#include <bifolium/fold/count_foldings.hpp>

#include "said.hpp"

#include <iomanip>
#include <string>

using namespace bifolium;

// The schemes of the library that fold one uncut sheet of this size.
std::string attested(int rows, int columns) {
  std::string ids;
  for (auto const one : Attested::all()) {
    auto const scheme = one.scheme();
    auto const sheet = scheme.sheet(0);
    bool uncut = scheme.sheets() == 1 && sheet.rows == rows && sheet.columns == columns;
    for (auto const& step : scheme) uncut = uncut && step.kind == Step::Kind::fold;
    if (uncut) ids += (ids.empty() ? "" : ", ") + std::string{one.id()};
  }
  return ids.empty() ? "none" : ids;
}

int main() {
  struct Size {
    int rows, columns;
  };
  std::cout << "rows  columns  gatherings  with the fewest folds  attested\n";
  for (auto const [rows, columns] :
       {Size{1, 2}, Size{2, 2}, Size{2, 4}, Size{3, 4}, Size{4, 4}}) {
    auto const count = count_foldings(rows, columns).value();
    std::cout << std::setw(4) << rows << std::setw(9) << columns << std::setw(12) << count.all()
              << std::setw(23) << count.with_fewest_folds() << "  " << attested(rows, columns)
              << '\n';
  }
  lesson::say(
      "\nA sheet with an odd number of columns and more than one row makes no gathering: "
      "one leaf of every row has nothing to be joined to. Three by three: " +
      std::to_string(count_foldings(3, 3).value().all()) + ".");
  lesson::say(
      "Two gatherings are different if their leaves are in different orders; a gathering "
      "and the same turned over are one.");
}
