// SPDX-License-Identifier: MIT
/// Leaves of which a list says that they are bound elsewhere: B3 bound after B6. The words come after the leaves, which are
/// there, also in a list of leaves that are wanting; so they are taken out of the list, and put in their place when all of
/// it is read.
#pragma once

#include <bifolium/copy/detail/bound_words.hpp>
#include <bifolium/copy/detail/leaf_runs.hpp>
#include <bifolium/copy/detail/states_in_list.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class BoundElsewhere {
  ListSoFar& list_;
  LeafRuns& runs_;
  StatesInList& states_;

public:
  BoundElsewhere(ListSoFar& list, LeafRuns& runs, StatesInList& states) : list_{list}, runs_{runs}, states_{states} {}

  /// Takes words that say that the leaves before them are bound elsewhere: B3 bound after B6.
  bool take(TextCursor& cursor, std::optional<Error>& wrong) {
    auto& leaves = list_.leaves;
    auto c = cursor;
    static_cast<void>(c.take('('));
    bool const may = c.take_letters().size() > 1 && !c.at_digit(); // most items are names of leaves
    if (!may || leaves.item_from() == leaves.item_to()) return false;
    c = cursor;
    auto const bound = take_bound_words(c);
    if (!bound) return false;
    MovedLeaves moved{{}, bound->at, 0, list_.text.substr(cursor.at(), c.at() - cursor.at())};
    if (!bound->beside.empty()) {
      runs_.begin_item(false, false);
      auto const beside = runs_.end_of_run(bound->beside, list_.last);
      if (!beside) return wrong = beside.error(), true;
      moved.number = bound->at == MovedLeaves::At::before ? beside->numbers.from : beside->numbers.to;
      if (beside->gone()) moved.at = MovedLeaves::At::unknown;
    }
    auto const from = states_.first_of_bound();
    leaves.close();
    list_.moved_from = list_.moved.size();
    for (auto i = from; i < leaves.item_to(); ++i) {
      moved.leaves = leaves.spans()[i];
      list_.moved.push_back(moved);
    }
    list_.counts.add(FlatCounts::Form::leaves, 0, moved.words); // no formula says so
    leaves.remove(from);
    list_.figures = FiguresAfter::none;
    cursor = c;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
