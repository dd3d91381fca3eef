// SPDX-License-Identifier: MIT
/// Reads the items of a list of leaves one after the other: references, runs of them, bifolia, and words for the state
/// of leaves. A name that several gatherings have means the next of them, in the order of the list.
///
///   leaves = { item , [ "," | ";" | "and" ] } ;
///   item   = leaf or gathering , [ "-" , leaf or gathering ] , [ [ "in" ] , state ] | leaf , "." , leaf
///          | leaf , { "," , figure , [ "-" , figure ] }             (* B1-3,5: without a blank after the comma *)
///          | "all" , ( "after" | "before" ) , leaf or gathering ;   (* where leaves are wanting *)
///   state  = "facsimile" | "supplied" | "blank" | "mounted" ;
///
/// A remark in parentheses that says what is printed on the leaves, A1 (title), says nothing about the copy. Pages and
/// numbers of leaves do not say which leaves are meant, and are refused.
#pragma once

#include <bifolium/copy/detail/list_passages.hpp>
#include <bifolium/copy/detail/list_words.hpp>
#include <bifolium/copy/detail/names_in_order.hpp>
#include <bifolium/copy/read_leaves_present.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class LeavesReader {
  IdealCopy const& book_;
  std::string_view text_;
  Limits limits_;
  bool wanting_; // true if it reads leaves that are wanting
  LeavesPresent read_{};
  bool begun_{false};                                                 // true if leaves were read, be they none
  enum class All : std::uint8_t { no, leaves, after, before } all_{}; // what was read of "all after"
  static constexpr auto most_figure = ReferenceScan::most_figure;
  std::size_t item_from_{}, item_to_{}; // the spans of the last item
  /// Bifolia around the place where the list is, the outermost first. Their second leaves are the last spans read.
  struct Bifolium {
    LeafOfBook first{}, second{};
  };
  std::vector<Bifolium> around_{};
  PlaceCounter doubts_{};
  std::optional<LeafOfBook> last_{};           // the last leaf read
  std::optional<LeafOfBook> same_gathering_{}; // the leaf of the last item, after which a figure is of its gathering
  NamesInOrder names_;

  /// One end of a run. `numbers` are those of its leaves in the ideal copy. For a leaf that the formula removes the
  /// range is empty and begins with the next leaf of the book.
  struct End {
    NumbersOfLeaves numbers{};
    std::optional<LeafOfBook> leaf{}; // no value for a whole gathering
    GatheringAt gathering{};
    bool doubtful{};
    [[nodiscard]] bool gone() const noexcept { return leaf && numbers.to < numbers.from; }
  };

  [[nodiscard]] std::size_t position(std::string_view word) const {
    return static_cast<std::size_t>(word.data() - text_.data());
  }
  [[nodiscard]] Error error(Problem problem, std::string_view word, std::int64_t limit = 0) const {
    return error_at(problem, place_in(text_, position(word)), word, limit);
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
    return {end.gathering, (end.leaf ? end.leaf->leaf : 1) - 1, 0};
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
  /// Returns the leaves that one end of a run names. `last` is the leaf before it in the list.
  [[nodiscard]] Expected<End> end_of_run(std::string_view word, std::optional<LeafOfBook> const& last) {
    auto const leaf = find_reference(book_, word);
    if (leaf) return end_of(leaf->doubtful ? names_.next(leaf->leaf, last) : leaf->leaf, leaf->doubtful);
    if (auto const mark = read_signature(word, book_.letters())) {
      auto const gathering = book_.find(*mark);
      auto const inserted = book_.find_inserted(*mark);
      if (inserted && (!gathering || gathering->other_series))
        return End{*inserted, {}, book_.leaf_of_number(inserted->from)->gathering, gathering.has_value()};
      if (gathering) {
        auto const at =
            gathering->several ? names_.next({gathering->gathering, 1, 0}, last).gathering : gathering->gathering;
        return End{book_.numbers_of(at), {}, at, gathering->doubtful()};
      }
    }
    return error(leaf.error().problem, word, leaf.error().limit);
  }
  /// Returns the end of a run such as A1-8 or a1-4: a number in the gathering or insertion of the first leaf.
  [[nodiscard]] Expected<End> figure_end(LeafOfBook const& leaf, std::int64_t figure, std::string_view word) const {
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
    last_ = leaves[0].last;
    return {};
  }
  /// Reads a bifolium as formulas write it, B3.6: a leaf, and the one it is one piece with, by its figure or its name.
  /// Whether the formula has them as one piece is a question for copy/joints.hpp. Returns false if the word has another
  /// form.
  bool bifolium(std::string_view word, std::optional<Error>& wrong) {
    auto const point = word.rfind('.');
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
    around_.push_back({first, *second});
    last_ = first; // what comes next may be inside
    same_gathering_ = second;
    return true;
  }
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
    if (first->doubtful || last.doubtful) doubt_of_several(word, first->gathering);
    if (first->leaf && last.leaf && *last.leaf < *first->leaf) return error(Problem::run_goes_backwards, word);
    return place_run(word, *first, last);
  }
  std::optional<Error> place_run(std::string_view word, End const& first, End const& last) {
    if (last.numbers.to + 1 < first.numbers.from) return error(Problem::run_goes_backwards, word);
    // a leaf that the formula removes is a span by itself
    LeafSpan spans[3]{};
    std::size_t count = 0;
    if (first.gone()) spans[count++] = span_of_leaf(book_, *first.leaf);
    if (first.numbers.from <= last.numbers.to)
      spans[count++] = span_of_numbers(book_, first.numbers.from, last.numbers.to);
    if (last.gone() && last.leaf != first.leaf) spans[count++] = span_of_leaf(book_, *last.leaf);
    if (count > 0) place({spans, count});
    if (count > 0) last_ = spans[count - 1].last;
    same_gathering_ = last.leaf;
    return {};
  }
  /// Takes a word that stands between leaves and says nothing about them: A1 and A8; the blank K8; leaf A1.
  [[nodiscard]] bool is_filler(std::string_view word) const {
    if (word == "and" || word == "in") return !read_.spans.empty(); // K8 in facsimile
    for (std::string_view const one : {"the", "leaf", "leaves", "gathering", "gatherings", "quire", "quires",
                                       "signature", "signatures", "sig.", "sigs.", "for", "only"})
      if (wanting_ && word == one) return true;
    return false;
  }
  /// Takes a word of "all after B4". Returns true if it was one.
  [[nodiscard]] bool is_of_all(std::string_view word) {
    if (!wanting_) return false;
    if (all_ == All::no && (word == "all" || word == "everything")) return all_ = All::leaves, true;
    if (all_ == All::leaves && word == "after") return all_ = All::after, true;
    if (all_ == All::leaves && word == "before") return all_ = All::before, true;
    return false;
  }
  /// Ends an item of leaves that are wanting: doubts those that no copy has, and takes all leaves after or before it
  /// for it.
  void end_wanting(std::string_view word) {
    auto const from = read_.spans.begin() + static_cast<std::ptrdiff_t>(item_from_);
    auto const to = read_.spans.begin() + static_cast<std::ptrdiff_t>(item_to_);
    bool in_ideal = from != to;
    for (auto i = from; i != to; ++i) in_ideal = in_ideal && i->in_ideal();
    if (!in_ideal) doubt(word, Problem::wanting_in_every_copy);
    if (in_ideal && all_ != All::no && all_ != All::leaves) {
      auto const first = from->from, last = (to - 1)->to;
      read_.spans.erase(from, to);
      if (all_ == All::after && last < book_.leaves()) place_all(last + 1, book_.leaves());
      if (all_ == All::before && first > 1) place_all(1, first - 1);
    }
    all_ = All::no;
  }
  void place_all(std::int64_t from, std::int64_t to) {
    around_.clear();
    LeafSpan const leaves[]{span_of_numbers(book_, from, to)};
    place(leaves);
  }
  /// Takes words for leaves at the ends of the book, where leaves are wanting. Returns false if there are none, or more
  /// leaves than the book has.
  bool take_end_of_book(TextCursor& cursor) {
    auto after = cursor;
    auto const ends = wanting_ ? take_ends_of_book(after) : std::nullopt;
    if (!ends || ends->first > book_.leaves() || ends->last > book_.leaves()) return false;
    cursor = after;
    if (ends->before_name) return true;
    begun_ = true;
    if (ends->first > 0) place_all(1, ends->first);
    if (ends->last > 0) place_all(book_.leaves() + 1 - ends->last, book_.leaves());
    return true;
  }
  std::optional<Error> item(std::string_view word) {
    if (is_filler(word) || is_of_all(word)) return {};
    if (wanting_ && word == "(blank?)") return {}; // as K8 (blank)
    if (auto const state = state_of(word)) {
      if (wanting_ && *state == LeafInCopy::blank) return {}; // the blank K8; K8 blank
      if (read_.spans.empty()) return error(Problem::not_a_reference, word);
      for (auto i = item_from_; i < item_to_; ++i) read_.spans[i].state = *state;
      return {};
    }
    item_from_ = item_to_ = 0;
    bool const figure = same_gathering_ && follows_comma(word);
    auto wrong = leaves_of(word);
    if (wrong && !figure && names_no_leaf(word)) wrong = error(Problem::leaves_not_named, word);
    begun_ = true;
    if (!wrong && wanting_) end_wanting(word);
    return wrong;
  }
  /// Returns true if a word comes directly after a comma and the item before it: the 6 of B3,6.
  [[nodiscard]] bool follows_comma(std::string_view word) const {
    auto const at = position(word);
    return at >= 2 && text_[at - 1] == ',' && is_digit(text_[at - 2]);
  }
  /// Reads the figures of B3,6 and B1-3,5-8: leaves of the gathering before them, further on in it.
  std::optional<Error> figures(std::string_view word, std::int64_t from, std::string_view const* to) {
    auto const first = figure_end(*same_gathering_, from, word);
    if (!first) return first.error();
    auto last = first;
    if (to != nullptr) {
      auto const figure = whole_number(*to, most_figure);
      last = figure ? figure_end(*same_gathering_, *figure, word) : error(Problem::not_a_reference, word);
      if (!last) return last.error();
    }
    if (!(*same_gathering_ < *first->leaf) || *last->leaf < *first->leaf)
      return error(Problem::run_goes_backwards, word);
    return place_run(word, *first, *last);
  }
  std::optional<Error> leaves_of(std::string_view word) {
    TextCursor cursor{word};
    cursor.skip(cursor.character().bytes); // a dash at the beginning is between no leaves
    cursor.take_until(is_dash);
    auto const head = word.substr(0, cursor.at());
    bool const range = cursor.take_dash();
    auto const tail = cursor.rest();
    auto const figure = whole_number(head, most_figure);
    if (figure && same_gathering_ && follows_comma(word)) return figures(word, *figure, range ? &tail : nullptr);
    same_gathering_.reset();
    TextCursor by_leaf{head};
    if (!by_leaf.take("f.") && !by_leaf.take("ff.")) return run(word, head, range ? std::optional{tail} : std::nullopt);
    by_leaf.take_blanks();
    auto const from = whole_number(by_leaf.rest(), most_figure);
    auto const to = range ? whole_number(tail, most_figure) : from;
    return !from || !to ? error(Problem::not_a_reference, word) : by_number(word, *from, *to);
  }

public:
  LeavesReader(IdealCopy const& book, std::string_view text, Limits const& limits, bool wanting)
      : book_{book}, text_{text}, limits_{limits}, wanting_{wanting}, names_{book} {}

  /// Reads the leaves of a passage.
  std::optional<Error> read(TextSpan passage) {
    TextCursor cursor{text_.substr(0, passage.to), passage.from};
    while (true) {
      cursor.take_while(is_between_items);
      if (cursor.at_end()) break;
      if (!wanting_ && book_.leaves() > 0 && take_whole_book(cursor)) {
        begun_ = true;
        place_all(1, book_.leaves());
        continue;
      }
      if (all_ == All::no && take_end_of_book(cursor)) continue;
      if (!read_.spans.empty() && take_content_remark(cursor)) continue;
      auto const from = cursor.at();
      if (auto const word = cursor.take_until(is_between_items); word == "f." || word == "ff.") { // f. 5-6
        auto number = cursor;
        number.take_blanks();
        if (number.at_digit()) number.take_until(is_between_items), cursor = number;
      }
      auto const word = text_.substr(from, cursor.at() - from);
      if (auto const wrong = item(word)) return *wrong;
      if (read_.spans.size() > limits_.runs) return error(Problem::too_many_runs, word, limits_.runs);
    }
    if (all_ != All::no) return error(Problem::not_a_reference, text_.substr(passage.to));
    return {};
  }
  [[nodiscard]] bool begun() const noexcept { return begun_; }
  /// Removes the doubts about names that the list has as often as the book.
  void settle() { names_.settle(read_.doubts); }
  [[nodiscard]] LeavesPresent& result() noexcept { return read_; }
};

} // namespace detail

} // namespace v0
} // namespace bifolium
