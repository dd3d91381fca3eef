// SPDX-License-Identifier: MIT
/// Leaves of a list as their names say: one leaf, a gathering, a run of leaves, a bifolium, and a number alone after a
/// leaf (B3,6). A name that several gatherings have means the next of them, in the order of the list.
#pragma once

#include <bifolium/copy/detail/flat_counts.hpp>
#include <bifolium/copy/detail/names_in_order.hpp>
#include <bifolium/copy/read_leaves_present.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class LeafRuns {
protected:
  IdealCopy const& book_;
  std::string_view text_;
  LeavesPresent read_{};
  static constexpr auto most_figure = ReferenceScan::most_figure;
  std::size_t item_from_{}, item_to_{}; // the spans of the last item
  /// What a number alone after the last item is: of the gathering of its last leaf, B3,6, or of the book, f. 3, 6.
  enum class Figures : std::uint8_t { none, of_leaf, of_book } figures_{};
  /// Bifolia around the place where the list is, the outermost first. Their second leaves are the last spans read.
  struct Bifolium {
    LeafOfBook first{}, second{};
  };
  std::vector<Bifolium> around_{};
  PlaceCounter doubts_{}, errors_{};   // an error of what may be read in another way is only one of many
  std::optional<LeafOfBook> last_{};   // the last leaf read
  std::optional<LeafOfBook> beside_{}; // the leaf of the last item, of whose gathering a number alone is
  NamesInOrder names_;
  FlatCounts counts_{};
  bool leaf_said_{}; // a word for leaves stands before the item: leaf A8
  bool by_number_{}; // the item is said to be leaves by number: f. 2r

  /// One end of a run. `numbers` are those of its leaves in the ideal copy. For a leaf that the formula removes the
  /// range is empty and begins with the next leaf of the book.
  struct End {
    NumbersOfLeaves numbers{};
    std::optional<LeafOfBook> leaf{}; // no value for a whole gathering
    GatheringAt gathering{};
    bool doubtful{};
    bool also_leaf{}; // the name of the gathering is also that of a leaf: ii
    [[nodiscard]] bool gone() const noexcept { return leaf && numbers.to < numbers.from; }
  };

  [[nodiscard]] std::size_t position(std::string_view word) const {
    return static_cast<std::size_t>(word.data() - text_.data());
  }
  [[nodiscard]] Error error(Problem problem, std::string_view word, std::int64_t limit = 0) {
    return error_at(problem, errors_.place(text_, position(word)), word, limit);
  }
  void doubt(std::string_view word, Problem problem = Problem::name_of_several) {
    read_.doubts.push_back(error_at(problem, doubts_.place(text_, position(word)), word));
  }
  void doubt_of_several(std::string_view word, GatheringAt taken) {
    names_.doubted(word, taken, read_.doubts.size());
    doubt(word);
  }
  /// Returns the leaf before an end of a run, as far as order goes.
  [[nodiscard]] static LeafOfBook before(End const& end) {
    return {end.gathering, (end.leaf ? end.leaf->leaf : 1) - 1};
  }
  /// Returns the number of the first leaf after one that the formula removes.
  [[nodiscard]] std::int64_t next(LeafOfBook const& leaf) const {
    auto const all = book_.numbers_of(leaf.gathering);
    auto const before = partition_point(static_cast<std::size_t>(all.to + 1 - all.from), [&](std::size_t i) {
      return *book_.leaf_of_number(all.from + static_cast<std::int64_t>(i)) < leaf;
    });
    return all.from + static_cast<std::int64_t>(before);
  }
  [[nodiscard]] End end_of(LeafOfBook const& leaf, bool doubtful) const {
    auto const number = book_.leaf_number(leaf);
    auto const from = number ? *number : next(leaf);
    return {{from, number ? from : from - 1}, leaf, leaf.gathering, doubtful};
  }
  /// Returns the leaves of a gathering or insertion of this signature. `last` is the leaf before it in the list.
  [[nodiscard]] std::optional<End> whole_gathering(Signature const& mark, std::optional<LeafOfBook> const& last) {
    auto const gathering = book_.find(mark);
    auto const inserted = book_.find_inserted(mark);
    if (inserted && (!gathering || gathering->other_series))
      return End{*inserted, {}, book_.leaf_of_number(inserted->from)->gathering, gathering.has_value()};
    if (!gathering) return std::nullopt;
    auto const at = gathering->several ? names_.next({gathering->gathering, 1}, last).gathering : gathering->gathering;
    return End{book_.numbers_of(at), {}, at, gathering->doubtful()};
  }
  /// Returns the gathering that a word names, or no value if it does not name one. A list names leaves and no pages, so
  /// 2r is a gathering if the book has it; ii may also be leaf i of gathering i, and is doubtful if there is such a leaf.
  [[nodiscard]] std::optional<End> gathering_named(std::string_view word, std::optional<LeafOfBook> const& last) {
    bool const leaf = !word.empty() && is_latin_letter(word.front()) && is_digit(word.back()); // A3, as most are
    if (word.empty() || leaf || by_number_) return std::nullopt;
    auto const mark = mark_of_name(word, book_.letters());
    auto named = mark ? whole_gathering(*mark, last) : std::nullopt;
    if (named && word.size() > 1 && TextCursor{word}.take_letters().size() == word.size())
      named->also_leaf = find_reference(book_, word).has_value();
    return named;
  }
  /// Returns the leaves that one end of a run names. `last` is the leaf before it in the list.
  [[nodiscard]] Expected<End> end_of_run(std::string_view word, std::optional<LeafOfBook> const& last) {
    if (auto const named = gathering_named(word, last)) return *named;
    auto const leaf = by_number_ ? find_reference(book_, "f." + std::string{word}) : find_reference(book_, word);
    if (leaf) return end_of(leaf->doubtful ? names_.next(leaf->leaf, last) : leaf->leaf, leaf->doubtful);
    auto const mark = signature_of_text(word, book_.letters()); // 1A
    if (auto const named = mark ? whole_gathering(*mark, last) : std::nullopt) return *named;
    return error(leaf.error().problem, word, leaf.error().limit);
  }
  /// Returns the end of a run such as A1-8 or a1-4: a number in the gathering or insertion of the first leaf.
  [[nodiscard]] Expected<End> figure_end(LeafOfBook const& leaf, std::int64_t figure, std::string_view word) {
    int most = 0;
    if (auto const same = leaf_of_figure(book_, leaf, figure, most)) return end_of(*same, false);
    return error(Problem::no_such_leaf, word, most);
  }
  /// Adds spans of leaves inside the bifolia that they belong to: A1.4 A2.3 is the whole of A, in order.
  void place(std::span<LeafSpan const> spans) {
    auto const belong_inside = [&](Bifolium const& one) {
      return one.first < spans.front().first && spans.back().last < one.second;
    };
    while (!around_.empty() && !belong_inside(around_.back())) around_.pop_back();
    item_from_ = read_.spans.size() - around_.size();
    item_to_ = item_from_ + spans.size();
    read_.spans.insert(read_.spans.end() - static_cast<std::ptrdiff_t>(around_.size()), spans.begin(), spans.end());
  }
  std::optional<Error> by_number(std::string_view word, std::int64_t from, std::int64_t to) {
    if (from < 1 || to > book_.leaves()) return error(Problem::reference_not_in_book, word);
    if (to < from) return error(Problem::run_goes_backwards, word);
    LeafSpan const leaves[]{span_of_numbers(book_, from, to)};
    place(leaves);
    counts_.add(FlatCounts::Form::leaves, item_from_, word);
    last_ = leaves[0].last;
    figures_ = Figures::of_book;
    return {};
  }
  /// Reads a bifolium as formulas write it, B3.6: a leaf, and the one it is one piece with, by its figure or its name.
  /// Whether the formula has them as one piece is a question for copy/joints.hpp. Returns false if the word has another
  /// form.
  bool bifolium(std::string_view word, std::optional<Error>& wrong) {
    auto const point = last_point(word);
    if (point >= word.size()) return false;
    auto const names_leaf = [](Expected<Reference> const& r) { return r && r->side == LeafSide::not_said; };
    auto const named = find_reference(book_, word.substr(0, point));
    if (!names_leaf(named)) return false;
    auto const first = named->doubtful ? names_.next(named->leaf, last_) : named->leaf;
    int most = 0;
    std::optional<LeafOfBook> second;
    if (auto const figure = whole_number(word.substr(point + 1), most_figure))
      second = leaf_of_figure(book_, first, *figure, most);
    else if (auto const other = find_reference(book_, word.substr(point + 1)); names_leaf(other))
      second = other->doubtful ? names_.next(other->leaf, first) : other->leaf;
    else
      return false;
    if (!second)
      wrong = error(Problem::no_such_leaf, word, most);
    else if (!(first < *second))
      wrong = error(Problem::run_goes_backwards, word);
    if (wrong) return true;
    if (named->doubtful) doubt_of_several(word, first.gathering);
    LeafSpan const leaves[]{span_of_leaf(book_, first), span_of_leaf(book_, *second)};
    place(leaves);
    counts_.add(FlatCounts::Form::leaves, 0, word); // the spans are not in the order of the items
    around_.push_back({first, *second});
    last_ = first; // what comes next may be inside
    beside_ = second;
    figures_ = Figures::of_leaf;
    return true;
  }
  /// Reads a leaf or a gathering, or from one to another if there is a tail.
  std::optional<Error> run(std::string_view word, std::string_view head, std::optional<std::string_view> tail) {
    auto const first = end_of_run(head, last_);
    if (!first) {
      std::optional<Error> wrong;
      return !tail && bifolium(word, wrong) ? wrong : first.error();
    }
    auto last = *first;
    if (tail) {
      auto const figure = whole_number(*tail, most_figure);
      auto const end =
          figure && first->leaf ? figure_end(*first->leaf, *figure, word) : end_of_run(*tail, before(*first));
      if (!end) return end.error();
      last = *end;
    }
    auto const wrong = between(word, *first, last);
    if (!wrong && item_from_ < item_to_) counts_.add(form_of(*first, last, tail.has_value()), item_from_, word);
    return wrong;
  }
  /// Returns what an item is, if it may be a gathering and the number of its leaves.
  [[nodiscard]] FlatCounts::Form form_of(End const& first, End const& last, bool run) const {
    if (leaf_said_ || by_number_ || (run && first.leaf)) return FlatCounts::Form::leaves;
    if (last.leaf) return FlatCounts::form_of(book_, *last.leaf, run);
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
  /// Adds the leaves from one end of a run to the other.
  std::optional<Error> between(std::string_view word, End const& first, End const& last) {
    if (first.doubtful || last.doubtful) doubt_of_several(word, first.gathering);
    if (first.also_leaf || last.also_leaf) doubt(word, Problem::name_in_two_ways);
    if (goes_backwards(first, last)) return error(Problem::run_goes_backwards, word);
    // a leaf that the formula removes is a span by itself
    LeafSpan spans[3]{};
    std::size_t count = 0;
    if (first.gone()) spans[count++] = span_of_leaf(book_, *first.leaf);
    if (first.numbers.from <= last.numbers.to)
      spans[count++] = span_of_numbers(book_, first.numbers.from, last.numbers.to);
    if (last.gone() && last.leaf != first.leaf) spans[count++] = span_of_leaf(book_, *last.leaf);
    if (count > 0) place({spans, count});
    if (count > 0) last_ = spans[count - 1].last;
    figures_ = count > 0 && last.leaf ? Figures::of_leaf : Figures::none;
    beside_ = last_;
    return {};
  }
  /// Returns true if a number alone, or two, can be leaves after the last item: 3 in B2,3.
  [[nodiscard]] bool are_next_figures(std::int64_t from, std::int64_t to) const {
    if (figures_ == Figures::of_book) return from >= 1 && from <= to && to <= book_.leaves();
    int most = 0;
    auto const first = leaf_of_figure(book_, *beside_, from, most), last = leaf_of_figure(book_, *beside_, to, most);
    return first && last && *beside_ < *first && *first <= *last;
  }
  /// Reads leaves that are named by a number alone, or two, after another leaf.
  std::optional<Error> next_figures(std::string_view word, std::int64_t from, std::int64_t to) {
    if (figures_ == Figures::of_book) return by_number(word, from, to);
    auto const first = figure_end(*beside_, from, word);
    if (!first) return first.error();
    auto const last = figure_end(*beside_, to, word);
    if (!last) return last.error();
    if (!(*beside_ < *first->leaf)) return error(Problem::run_goes_backwards, word);
    auto const wrong = between(word, *first, *last);
    if (!wrong) counts_.add(FlatCounts::Form::leaves, item_from_, word);
    return wrong;
  }

public:
  LeafRuns(IdealCopy const& book, std::string_view text) : book_{book}, text_{text}, names_{book} {}
};

} // namespace detail

} // namespace v0
} // namespace bifolium
