// SPDX-License-Identifier: MIT
/// Leaves that a list names twice: the last leaf, i. e. L4. What comes after "that is" has to be all the leaves before it. If it is
/// not, one of the two is a slip, and the leaves of both are read with a doubt.
#pragma once

#include <bifolium/copy/detail/states_in_list.hpp>
#include <bifolium/copy/detail/that_is_words.hpp>
#include <bifolium/core/text_span.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SaidAgain {
  ListSoFar& list_;
  struct Before {
    std::size_t from{}, to{}; // the spans before "that is"
    std::string_view words{};
  };
  std::optional<Before> again_{};

public:
  explicit SaidAgain(ListSoFar& list) : list_{list} {}

  /// Takes "that is" and the like. `counted`: only the number of the leaves came before, two leaves, i. e. A1 and B3.
  bool take(TextCursor& cursor, bool counted, StatesInList& states) {
    auto const from = cursor.at();
    if (!take_that_is(cursor)) return false;
    if (counted || list_.leaves.item_from() == list_.leaves.item_to()) return true;
    check();
    list_.leaves.close();
    again_ = {states.first_of_group(), list_.leaves.size(), list_.text.substr(from, cursor.at() - from)};
    return true;
  }
  /// Doubts leaves that are named in two ways, if those that are named last are not all of the others.
  void check() {
    if (!again_) return;
    list_.leaves.close();
    auto const& spans = list_.leaves.spans();
    auto const at = [&](std::size_t i) { return spans.begin() + static_cast<std::ptrdiff_t>(i); };
    std::vector<LeafSpan> const after(at(again_->to), spans.end());
    auto all = after;
    all.insert(all.end(), at(again_->from), at(again_->to));
    bool const same = SpansByNumber{all}.leaves() == SpansByNumber{after}.leaves();
    if (!same) list_.doubt(trimmed(again_->words, " ,:"), Problem::said_in_two_ways);
    std::vector<LeafSpan> const before(at(again_->from), at(again_->to));
    if (same && !list_.wanting && SpansByNumber{before}.leaves() == SpansByNumber{after}.leaves())
      list_.leaves.remove(again_->to); // they are there once
    again_.reset();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
