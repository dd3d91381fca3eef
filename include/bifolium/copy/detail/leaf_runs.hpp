// SPDX-License-Identifier: MIT
/// Leaves of a list as their names say: one leaf, a gathering, a run of leaves, a bifolium. What a name means depends on
/// the book and on the list: a name that several gatherings have means the next of them, in the order of the list, and a
/// leaf that the formula removes has a name and no number.
#pragma once

#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/detail/names_in_order.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class LeafRuns {
public:
  /// One end of a run. `numbers` are those of its leaves in the ideal copy. For a leaf that the formula removes the
  /// range is empty and begins with the next leaf of the book.
  struct End {
    NumbersOfLeaves numbers{};
    std::optional<LeafOfBook> leaf{}; // no value for a whole gathering
    GatheringAt gathering{};
    bool doubtful{};
    bool also_leaf{}; // the name of the gathering is also that of a leaf: ii
    LeafSide side{};
    std::string_view word{};
    [[nodiscard]] bool gone() const noexcept { return leaf && numbers.to < numbers.from; }
  };

private:
  ListSoFar& list_;
  NamesInOrder names_{list_.book};
  bool leaf_said_{}; // a word for leaves stands before the item: leaf A8
  bool by_number_{}; // the item is said to be leaves by number: f. 2r

  void doubt_of_several(std::string_view word, GatheringAt taken) {
    names_.doubted(word, taken, list_.doubts.size());
    list_.doubt(word, Problem::name_of_several);
  }
  /// Returns the leaf before an end of a run, as far as order goes.
  [[nodiscard]] static LeafOfBook before(End const& end) {
    return {end.gathering, (end.leaf ? end.leaf->leaf : 1) - 1};
  }
  /// Returns the number of the first leaf after one that the formula removes.
  [[nodiscard]] std::int64_t next(LeafOfBook const& leaf) const {
    auto const all = list_.book.numbers_of(leaf.gathering);
    auto const before = partition_point(static_cast<std::size_t>(all.to + 1 - all.from), [&](std::size_t i) {
      return *list_.book.leaf_of_number(all.from + static_cast<std::int64_t>(i)) < leaf;
    });
    return all.from + static_cast<std::int64_t>(before);
  }
  [[nodiscard]] End end_of(LeafOfBook const& leaf, bool doubtful, LeafSide side, std::string_view word) const {
    auto const number = list_.book.leaf_number(leaf);
    auto const from = number ? *number : next(leaf);
    return {{from, number ? from : from - 1}, leaf, leaf.gathering, doubtful, false, side, word};
  }
  /// Notes the ends of the last item of which only one side is named.
  void note_halves(End const& first, End const& last, bool run) {
    bool const one = first.leaf && last.leaf && *first.leaf == *last.leaf;
    bool const verso = first.side == LeafSide::verso, recto = last.side == LeafSide::recto;
    if (!run || (one && first.side == last.side)) {
      if (first.side != LeafSide::not_said) list_.leaves.add_half(*first.leaf, first.side, true, first.word);
      return;
    }
    if (first.leaf && verso) list_.leaves.add_half(*first.leaf, first.side, false, first.word);
    if (last.leaf && recto) list_.leaves.add_half(*last.leaf, last.side, true, last.word);
  }
  /// Returns the leaves of the first of several inserted gatherings of one name.
  [[nodiscard]] std::optional<End> first_inserted(Signature const& mark) const {
    for (int figure = 1; figure <= 2; ++figure) { // it may lack its first leaf
      auto const found = list_.book.find(mark, figure);
      auto const one = found ? list_.book.inserted(found->leaf) : std::nullopt;
      auto const number = found ? list_.book.leaf_number(found->leaf) : std::nullopt;
      if (!one || !number) continue;
      auto const from = *number + 1 - one->number;
      return End{{from, from + one->insertion.leaves - 1}, {}, found->leaf.gathering, true};
    }
    return std::nullopt;
  }
  /// Returns the leaves of a gathering or insertion of this signature. `last` is the leaf before it in the list.
  [[nodiscard]] std::optional<End> whole_gathering(Signature const& mark, std::optional<LeafOfBook> const& last) {
    auto const gathering = list_.book.find(mark);
    auto const inserted = list_.book.find_inserted(mark);
    if (inserted && (!gathering || gathering->other_series))
      return End{*inserted, {}, list_.book.leaf_of_number(inserted->from)->gathering, gathering.has_value()};
    if (!gathering) return list_.book.inserts(mark) ? first_inserted(mark) : std::nullopt;
    auto const at = gathering->several ? names_.next({gathering->gathering, 1}, last).gathering : gathering->gathering;
    return End{list_.book.numbers_of(at), {}, at, gathering->doubtful()};
  }
  /// Returns the gathering that a word names, or no value if it does not name one. A list names leaves and no pages, so
  /// 2r is a gathering if the book has it; ii may also be leaf i of gathering i, and is doubtful if there is such a leaf.
  [[nodiscard]] std::optional<End> gathering_named(std::string_view word, std::optional<LeafOfBook> const& last) {
    bool const leaf = !word.empty() && is_latin_letter(word.front()) && is_digit(word.back()); // A3, as most are
    if (word.empty() || leaf || by_number_) return std::nullopt;
    auto const mark = mark_of_name(word, list_.book.letters());
    auto named = mark ? whole_gathering(*mark, last) : std::nullopt;
    if (named && word.size() > 1 && TextCursor{word}.take_letters().size() == word.size())
      named->also_leaf = find_reference(list_.book, word).has_value();
    return named;
  }
  /// Reads a gathering with the number of its leaves as formulas write it, π² or K⁸. Returns no value for another form.
  [[nodiscard]] std::optional<Expected<End>> with_count(std::string_view word, std::optional<LeafOfBook> const& last) {
    std::size_t from = 0;
    for (std::size_t at = 0; at < word.size();) { // the raised figures at the end
      auto const c = decode(word, at);
      at += c.bytes;
      if (!superscript_digit(c.value)) from = at;
    }
    if (from == 0 || from == word.size() || by_number_) return std::nullopt;
    auto const named = gathering_named(word.substr(0, from), last);
    if (!named) return std::nullopt;
    TextCursor figure{word, from};
    auto const leaves = figure.take_raised_number(most_figure);
    bool const right = leaves && (*leaves == named->numbers.count() ||
                                  (!named->leaf && *leaves == list_.book.leaves_folded(named->gathering)));
    if (!right) return Expected<End>{list_.error(Problem::counts_differ, word)};
    return Expected<End>{*named};
  }
  /// Reads a bifolium as formulas write it, B3.6: a leaf, and the one it is one piece with, by its figure or its name.
  /// Whether the formula has them as one piece is a question for copy/joints.hpp. Returns false if the word has another
  /// form.
  bool bifolium(std::string_view word, std::optional<Error>& wrong) {
    auto const point = last_point(word);
    if (point >= word.size()) return false;
    auto const names_leaf = [](Expected<Reference> const& r) { return r && r->side == LeafSide::not_said; };
    auto const named = find_reference(list_.book, word.substr(0, point));
    if (!names_leaf(named)) return false;
    auto const first = named->doubtful ? names_.next(named->leaf, list_.last) : named->leaf;
    int most = 0;
    std::optional<LeafOfBook> second;
    if (auto const figure = whole_number(word.substr(point + 1), most_figure))
      second = leaf_of_figure(list_.book, first, *figure, most);
    else if (auto const other = find_reference(list_.book, word.substr(point + 1)); names_leaf(other))
      second = other->doubtful ? names_.next(other->leaf, first) : other->leaf;
    else
      return false;
    if (!second)
      wrong = list_.error(Problem::no_such_leaf, word, most);
    else if (!(first < *second))
      wrong = list_.error(Problem::run_goes_backwards, word);
    if (wrong) return true;
    if (named->doubtful) doubt_of_several(word, first.gathering);
    list_.leaves.place_bifolium(span_of_leaf(list_.book, first), span_of_leaf(list_.book, *second));
    list_.counts.add(FlatCounts::Form::leaves, 0, word); // the spans are not in the order of the items
    list_.last = first;                                  // what comes next may be inside
    list_.beside = second;
    list_.figures = FiguresAfter::of_leaf;
    return true;
  }
  /// Returns what the leaves from one to another are, which may be all of a gathering, or its beginning.
  [[nodiscard]] FlatCounts::Form form_of_leaves(End const& first, End const& last) const {
    bool const of_one = last.leaf && first.gathering == last.gathering && !first.leaf->inserted && !last.leaf->inserted;
    if (!of_one || first.leaf->leaf != 1) return FlatCounts::Form::leaves;
    return FlatCounts::counted_to(list_.book, *last.leaf) ? FlatCounts::Form::whole : FlatCounts::Form::beginning;
  }
  /// Returns what an item is, if it may be a gathering and the number of its leaves.
  [[nodiscard]] FlatCounts::Form form_of(End const& first, End const& last, bool run) const {
    if (leaf_said_ || by_number_) return FlatCounts::Form::leaves;
    if (run && first.leaf) return form_of_leaves(first, last);
    if (last.leaf) return FlatCounts::form_of(list_.book, *last.leaf, run);
    return last.numbers.count() == 1 ? FlatCounts::Form::only_leaf : FlatCounts::Form::leaves; // π, of one leaf
  }
  /// Returns true if the end of a run comes before its beginning. The numbers alone do not tell it of leaves that the
  /// formula removes, which have none, nor of two gatherings beside one another: B-A would be a run of no leaves.
  [[nodiscard]] static bool goes_backwards(End const& first, End const& last) {
    if (first.leaf && last.leaf) return *last.leaf < *first.leaf;
    if (last.gathering < first.gathering) return true;
    bool const none = first.numbers.to < first.numbers.from || last.numbers.to < last.numbers.from;
    return none ? last.numbers.to + 1 < first.numbers.from : last.numbers.to < first.numbers.from;
  }

public:
  static constexpr auto most_figure = ReferenceScan::most_figure;

  explicit LeafRuns(ListSoFar& list) : list_{list} {}

  /// Notes what is said of the next item.
  void begin_item(bool leaf_said, bool by_number) noexcept { leaf_said_ = leaf_said, by_number_ = by_number; }
  /// Returns the leaves that one end of a run names. `last` is the leaf before it in the list.
  [[nodiscard]] Expected<End> end_of_run(std::string_view word, std::optional<LeafOfBook> const& last) {
    if (auto const named = gathering_named(word, last)) return *named;
    auto const leaf =
        by_number_ ? find_reference(list_.book, "f." + std::string{word}) : find_reference(list_.book, word);
    if (leaf)
      return end_of(leaf->doubtful ? names_.next(leaf->leaf, last) : leaf->leaf, leaf->doubtful, leaf->side, word);
    auto const mark = signature_of_text(word, list_.book.letters()); // 1A
    if (auto const named = mark ? whole_gathering(*mark, last) : std::nullopt) return *named;
    if (auto const counted = with_count(word, last)) return *counted;
    // M alone is told as M1 is
    bool const no_gathering = mark && leaf.error().problem == Problem::not_a_reference && !list_.book.inserts(*mark);
    return list_.error(no_gathering ? Problem::gathering_not_in_book : leaf.error().problem, word, leaf.error().limit);
  }
  /// Returns the end of a run such as A1-8 or a1-4: a number in the gathering or insertion of the first leaf.
  [[nodiscard]] Expected<End> figure_end(LeafOfBook const& leaf, std::int64_t figure, std::string_view word,
                                         LeafSide side = LeafSide::not_said) {
    int most = 0;
    if (auto const same = leaf_of_figure(list_.book, leaf, figure, most)) return end_of(*same, false, side, word);
    return list_.error(Problem::no_such_leaf, word, most);
  }
  /// Returns the second end of a run. It may be a number or a side alone, which go on from the first: B3r-5v, B3r-v.
  [[nodiscard]] Expected<End> second_end(End const& first, std::string_view tail, std::string_view word) {
    auto const figure = first.leaf && !by_number_ ? number_and_side(tail) : std::nullopt;
    if (figure && !(figure->side != LeafSide::not_said && names_gathering(list_.book, tail)))
      return figure_end(*first.leaf, figure->number, word, figure->side);
    if (first.side == LeafSide::recto && side_word(tail) == LeafSide::verso) {
      if (names_gathering(list_.book, tail)) list_.doubt(word, Problem::name_in_two_ways);
      return end_of(*first.leaf, false, LeafSide::verso, word);
    }
    bool const numeral = first.leaf && !by_number_ && is_roman_leaf(tail) && !names_gathering(list_.book, tail);
    if (numeral && !find_reference(list_.book, tail)) // Ai-iij
      return figure_end(*first.leaf, roman_numeral(tail)->value, word);
    return end_of_run(tail, before(first));
  }
  /// Reads a leaf or a gathering, or from one to another if there is a tail.
  std::optional<Error> run(std::string_view word, std::string_view head, std::optional<std::string_view> tail) {
    if (auto const number = number_and_side(head); number && number->side != LeafSide::not_said) // 10b-12
      by_number_ = by_number_ || !names_gathering(list_.book, head);
    auto const first = end_of_run(head, list_.last);
    if (!first) {
      std::optional<Error> wrong;
      return !tail && bifolium(word, wrong) ? wrong : first.error();
    }
    auto last = *first;
    if (tail) {
      auto const end = second_end(*first, *tail, word);
      if (!end) return end.error();
      last = *end;
    }
    auto const wrong = between(word, *first, last, tail.has_value());
    if (!wrong && by_number_) list_.figures = FiguresAfter::of_book; // 10b, 12
    if (!wrong && list_.leaves.item_from() < list_.leaves.item_to())
      list_.counts.add(form_of(*first, last, tail.has_value()), list_.leaves.item_from(), word);
    return wrong;
  }
  /// Adds the leaves from one end of a run to the other.
  std::optional<Error> between(std::string_view word, End const& first, End const& last, bool run) {
    if (first.doubtful || last.doubtful) doubt_of_several(word, first.gathering);
    if (first.also_leaf || last.also_leaf) list_.doubt(word, Problem::name_in_two_ways);
    if (goes_backwards(first, last)) return list_.error(Problem::run_goes_backwards, word);
    // a leaf that the formula removes is a span by itself
    LeafSpan spans[3]{};
    std::size_t count = 0;
    if (first.gone()) spans[count++] = span_of_leaf(list_.book, *first.leaf);
    if (first.numbers.from <= last.numbers.to)
      spans[count++] = span_of_numbers(list_.book, first.numbers.from, last.numbers.to);
    if (last.gone() && last.leaf != first.leaf) spans[count++] = span_of_leaf(list_.book, *last.leaf);
    if (count > 0) list_.leaves.place({spans, count});
    if (count > 0) note_halves(first, last, run);
    if (count > 0) list_.last = spans[count - 1].last;
    list_.figures = count > 0 && last.leaf ? FiguresAfter::of_leaf : FiguresAfter::none;
    list_.beside = list_.last;
    return {};
  }
  /// Removes the doubts about names that the list has as often as the book.
  void settle() { names_.settle(list_.doubts); }
};

} // namespace detail

} // namespace v0
} // namespace bifolium
