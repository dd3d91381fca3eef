// SPDX-License-Identifier: MIT
/// Leaves that a list does not name but gives by their place: all of the book, its first and last leaves, all after B4, the
/// inner bifolium of B. Catalogues write so of copies that lack an end, where the names would have to be looked up.
#pragma once

#include <bifolium/copy/detail/end_words.hpp>
#include <bifolium/copy/detail/leaf_runs.hpp>
#include <bifolium/copy/detail/pair_words.hpp>
#include <bifolium/copy/detail/whole_copy_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PartsOfBook {
  ListSoFar& list_;
  LeafRuns& runs_;
  enum class All : std::uint8_t { no, leaves, after, before } all_{}, was_{}; // what was read of "all after", and before it
  std::optional<std::size_t> whole_{}; // the span of all leaves that "complete" stands for

  [[nodiscard]] std::int64_t gatherings() const noexcept {
    std::int64_t sum = 0;
    for (auto const& run : list_.book.runs()) {
      sum += run.gatherings;
      if (sum > most_leaves_in_gathering) break; // no more are counted
    }
    return sum;
  }
  /// Returns the leaves of some gatherings at an end of the book.
  [[nodiscard]] NumbersOfLeaves leaves_of_gatherings(std::int64_t left, bool first) const {
    auto const& book = list_.book;
    auto const& runs = book.runs();
    auto leaves = NumbersOfLeaves{1, book.leaves()};
    for (std::size_t i = 0; i < runs.size() && left > 0; ++i) {
      auto const r = static_cast<std::uint32_t>(first ? i : runs.size() - 1 - i);
      auto const taken = left < runs[r].gatherings ? left : runs[r].gatherings;
      auto const at = GatheringAt{r, first ? taken - 1 : runs[r].gatherings - taken};
      (first ? leaves.to : leaves.from) = first ? book.numbers_of(at).to : book.numbers_of(at).from;
      left -= taken;
    }
    return leaves;
  }

  /// Places the first or the last leaves of a gathering. Returns false if it has fewer.
  bool place_ends_of(std::string_view name, EndsOfBook const& ends) {
    runs_.begin_item(false, false);
    auto const named = runs_.end_of_run(name, list_.last);
    if (!named || named->leaf || named->numbers.count() < std::int64_t{ends.first} + ends.last) return false;
    auto const all = named->numbers;
    list_.leaves.close();
    LeafSpan spans[2]{};
    std::size_t count = 0;
    if (ends.first > 0) spans[count++] = span_of_numbers(list_.book, all.from, all.from + ends.first - 1);
    if (ends.last > 0) spans[count++] = span_of_numbers(list_.book, all.to + 1 - ends.last, all.to);
    list_.leaves.place({spans, count});
    list_.begun = true, list_.last = spans[count - 1].last, list_.figures = FiguresAfter::none;
    return true;
  }

public:
  PartsOfBook(ListSoFar& list, LeafRuns& runs) : list_{list}, runs_{runs} {}

  /// Takes a word of "all after B4". Returns true if it was one.
  [[nodiscard]] bool is_of_all(std::string_view word) {
    if (!list_.wanting) return false;
    if (all_ == All::no && (word == "all" || word == "everything")) return all_ = All::leaves, true;
    if (all_ == All::leaves && word == "after") return all_ = All::after, true;
    if (all_ == All::leaves && word == "before") return all_ = All::before, true;
    bool const again = all_ == All::no && list_.has_leaves() && was_ != All::no; // all before A2 and after L1
    if (again && (word == "after" || word == "before")) return all_ = word == "after" ? All::after : All::before, true;
    if (all_ == All::leaves && word == "of") return all_ = All::no, true; // all of B
    return false;
  }
  /// Ends an item of leaves that are wanting: takes all leaves after or before it for it, if "all after" was said.
  void end_all(bool in_ideal) {
    auto const all = all_;
    all_ = All::no, was_ = all;
    if (!in_ideal || (all != All::after && all != All::before)) return;
    auto& leaves = list_.leaves;
    leaves.close();
    auto const first = leaves.spans()[leaves.item_from()].from, last = leaves.spans()[leaves.item_to() - 1].to;
    if (auto const half = leaves.half_of_item(); half && (half->side == LeafSide::recto) == (all == All::after))
      list_.doubt(half->word, Problem::side_of_leaf); // all after K4r: what of K4v?
    leaves.remove(leaves.item_from());
    if (all == All::after && last < list_.book.leaves()) list_.place_numbers(last + 1, list_.book.leaves());
    if (all == All::before && first > 1) list_.place_numbers(1, first - 1);
  }
  /// Takes "all" for all leaves of the book, before an exception: lacks all but A1.
  void end_all_but() {
    if (all_ != All::leaves) return;
    all_ = All::no, list_.begun = true;
    if (list_.book.leaves() > 0) place_all();
  }
  /// Returns true after "all" or "all after", where a name must come.
  [[nodiscard]] bool expects_name() const noexcept { return all_ != All::no; }
  /// Places all leaves of the book. Precondition: it has leaves.
  void place_all() {
    list_.begun = true;
    list_.place_numbers(1, list_.book.leaves());
  }
  /// Takes a word for all leaves of the book: complete, all leaves.
  bool take_whole(TextCursor& cursor) {
    if (list_.wanting || list_.book.leaves() == 0 || !take_whole_book(cursor)) return false;
    place_all();
    whole_ = list_.leaves.item_from();
    return true;
  }
  /// Takes words for leaves at the ends of the book, where leaves are wanting. Returns false if there are none, or more
  /// leaves than the book has.
  bool take_end(TextCursor& cursor) {
    auto const& book = list_.book;
    auto after = cursor;
    bool const may = all_ == All::no && list_.wanting && begins_word(cursor.peek());
    auto const ends = may ? take_ends_of_book(after) : std::nullopt;
    if (!ends) return false;
    if (auto look = after; !ends->gatherings)
      if (auto const name = take_gathering_after(look, book); !name.empty()) {
        if (!place_ends_of(name, *ends)) return false;
        cursor = look;
        return true;
      }
    if (ends->first > book.leaves() || ends->last > book.leaves()) return false;
    if (ends->gatherings && ends->first + ends->last > gatherings()) return false;
    cursor = after;
    if (ends->before_name) return true;
    list_.begun = true;
    LeafSpan spans[2]{};
    std::size_t count = 0;
    auto const add = [&](int number, bool first) {
      auto const all = book.leaves();
      auto const numbers = ends->gatherings ? leaves_of_gatherings(number, first)
                           : first          ? NumbersOfLeaves{1, number}
                                            : NumbersOfLeaves{all + 1 - number, all};
      if (number > 0 && numbers.from <= numbers.to) spans[count++] = span_of_numbers(book, numbers.from, numbers.to);
    };
    add(ends->first, true);
    add(ends->last, false);
    list_.leaves.close();
    if (count > 0) list_.leaves.place({spans, count});
    return true;
  }
  /// Takes the inmost or the outmost pair of leaves of a gathering. A sheet is an error: which leaves it has, the list does
  /// not say.
  bool take_pair(TextCursor& cursor, std::optional<Error>& wrong) {
    auto const& book = list_.book;
    auto c = cursor;
    auto const pair = take_pair_of_gathering(c, book);
    if (!pair) return false;
    runs_.begin_item(false, false);
    auto const named = runs_.end_of_run(pair->gathering, list_.last);
    if (!named) return false;
    if (pair->sheet) {
      auto const from = cursor.at();
      wrong = list_.error(Problem::sheet_of_gathering, list_.text.substr(from, c.at() - from));
      return true;
    }
    auto const folded = book.leaves_folded(named->gathering);
    if (folded < 2 || folded % 2 != 0 || book.numbers_of(named->gathering) != named->numbers) return false;
    auto const first = pair->inner ? folded / 2 : 1;
    list_.leaves.close();
    LeafSpan const leaves[]{span_of_leaf(book, {named->gathering, first}),
                            span_of_leaf(book, {named->gathering, folded + 1 - first})};
    list_.leaves.place(leaves);
    list_.counts.add(FlatCounts::Form::leaves, list_.leaves.item_from(), pair->gathering);
    list_.begun = true, list_.last = leaves[1].last, list_.figures = FiguresAfter::none, cursor = c;
    return true;
  }
  /// Places what comes after the last item up to the end of the book: K5 to end.
  void place_to_end() {
    auto& leaves = list_.leaves;
    if (leaves.item_from() == leaves.item_to()) return;
    leaves.close();
    auto const last = leaves.spans().back().to;
    if (last > 0 && last < list_.book.leaves()) list_.place_numbers(last + 1, list_.book.leaves());
    list_.figures = FiguresAfter::none;
  }
  /// Takes the leaf that is one piece with another: the conjugate of B3; B3 and its conjugate. Returns its words, or an empty
  /// text if there is none.
  [[nodiscard]] std::string_view take_conjugate(TextCursor& cursor, std::optional<Error>& wrong) {
    auto c = cursor;
    auto word = c.take_until(is_between_items);
    bool its = false;
    bool const joined = is_joining_word(word) || word == "with";
    if (joined && c.take_blanks()) word = c.take_until(is_between_items);
    if (is_row(word, words_for_its)) its = c.take_blanks(), word = c.take_until(is_between_items);
    if (!its && is_article(word) && c.take_blanks()) word = c.take_until(is_between_items);
    if (!is_row(word, conjugate_nouns)) return {};
    its = its || (joined && ends_item(past_blanks(c))); // B3 and conjugate
    if (auto leaf = c; leaf.take_blanks() && is_leaf_noun(leaf.take_until(is_between_items))) c = leaf;
    std::optional<LeafOfBook> of;
    if (its) {
      auto const& leaves = list_.leaves;
      bool const one = leaves.item_to() == leaves.item_from() + 1;
      auto const* span = one ? &leaves.spans()[leaves.item_from()] : nullptr;
      if (span != nullptr && span->first == span->last) of = span->first;
    } else {
      for (int words = 0; words < 4 && !of; ++words) {
        c.take_blanks();
        auto const name = c.take_until(is_between_items);
        bool const beside = is_row(name, words_before_gathering) || is_leaf_noun(name) || is_article(name);
        if (words > 0 && !beside) {
          runs_.begin_item(true, false);
          auto const end = runs_.end_of_run(name, list_.last);
          if (!end || !end->leaf) return {};
          of = end->leaf;
        } else if (!beside) {
          return {};
        }
      }
    }
    if (!of) return {};
    auto const all = list_.text.substr(cursor.at(), c.at() - cursor.at());
    auto const other = list_.book.conjugate(*of);
    if (!other || !list_.book.leaf_number(*other)) {
      wrong = list_.error(Problem::leaves_not_named, all);
      return all;
    }
    list_.leaves.close();
    list_.leaves.begin_item();
    LeafSpan const leaves[]{span_of_leaf(list_.book, *other)};
    list_.leaves.place(leaves);
    list_.counts.add(FlatCounts::Form::leaves, list_.leaves.item_from(), all);
    list_.last = *other, list_.figures = FiguresAfter::none, cursor = c;
    return all;
  }
  /// Notes that the spans have other places now.
  void forget_whole() noexcept { whole_.reset(); }
  /// Removes "complete" from spans that name all leaves themselves: A-K L, complete. The word is said of these.
  void settle(std::vector<LeafSpan>& spans) {
    std::int64_t named = 0;
    bool ascending = whole_.has_value();
    for (std::size_t i = 0, before = 0; ascending && i < spans.size(); ++i) {
      auto const& one = spans[i];
      if (i == *whole_ || one.state != LeafInCopy::original) continue;
      ascending = one.in_ideal() && (named == 0 || spans[before].to < one.from);
      named += one.leaves(), before = i;
    }
    if (!ascending || named != list_.book.leaves()) return;
    spans.erase(spans.begin() + static_cast<std::ptrdiff_t>(*whole_));
    list_.leaves.forget_halves(*whole_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
