// SPDX-License-Identifier: MIT
/// Reads the items of a list of leaves one after the other: references, runs of them, bifolia, and words for the state
/// of leaves.
///
///   leaves = { item , [ "," | ";" | "and" | "&" ] } ;
///   item   = [ "f." | "leaf" ] , leaf or gathering , [ ( "-" | "to" ) , leaf or gathering ] , [ [ "in" ] , state ]
///          | leaf , "." , leaf | figure , [ "-" , figure ]    (* after a leaf, of the same gathering: B3,6 *)
///          | "all" , ( "after" | "before" ) , leaf or gathering ;   (* where leaves are wanting *)
///   state  = "facsimile" | "supplied" | "blank" | "mounted" | "torn" ... ;
///
/// A state is said of the item before it, and if "and" joins single leaves (A1 and B4 in facsimile), of all of them. A
/// leaf that is torn is there, also in a list of leaves that are wanting. A remark in parentheses that says what is printed on the
/// leaves, A1 (title), says nothing about the copy. Pages and numbers of leaves do not say which leaves are meant, and
/// are refused.
#pragma once

#include <bifolium/copy/detail/content_words.hpp>
#include <bifolium/copy/detail/end_words.hpp>
#include <bifolium/copy/detail/leaf_runs.hpp>
#include <bifolium/copy/detail/list_passages.hpp>
#include <bifolium/copy/detail/pair_words.hpp>
#include <bifolium/copy/detail/state_words.hpp>
#include <bifolium/copy/detail/whole_copy_words.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>
#include <bifolium/copy/detail/words_like_leaves.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class LeavesReader : LeafRuns {
  Limits limits_;
  bool wanting_;                                                      // true if it reads leaves that are wanting
  bool begun_{false};                                                 // true if leaves were read, be they none
  enum class All : std::uint8_t { no, leaves, after, before } all_{}; // what was read of "all after"
  bool joined_{false};                                                // "and" comes before the item
  bool named_{false}; // the item is the gathering &, or e, and joins nothing
  char word_for_leaves_{
      '\0'}; // the first letter of the word for leaves before the item, f. 3 or leaf 3, or a zero byte
  std::optional<std::size_t> whole_{}; // the span of all leaves that "complete" stands for
  bool only_{false};                   // the passage says that no other leaves are there
  bool in_remark_{false};              // the reader is in a parenthesis
  /// A number of leaves before their names, and the first of the spans after it: two leaves (A1 and B3).
  struct Count {
    std::string_view word{};
    int leaves{};
    std::size_t from{};
    TextPlace place{};
  };
  std::optional<Count> count_{};
  bool roman_{false};        // the last item is a leaf with a Roman numeral
  std::size_t group_from_{}; // the spans of the items that "and" joins
  std::size_t stated_{0};    // how many spans have words for their state

  /// Takes a word that stands between leaves and says nothing about them: A1 and A8; the blank K8; leaf A1.
  [[nodiscard]] bool is_filler(std::string_view word) {
    bool const after_leaves = !read_.spans.empty();
    if (is_joining_word(word)) return after_leaves && !named_ && (joined_ = true);
    if (!after_leaves && !wanting_ && is_word_for_copy(word)) return true;
    if (!after_leaves && word == ":") return !names_gathering(book_, word); // Incomplet : manque A1
    if (after_leaves && is_word_before_state(word)) return true;
    if (after_leaves && !wanting_ && is_only_word(word)) return only_ = true;
    if (after_leaves && !wanting_ && is_row(without_point(word), words_for_present)) return true;
    return wanting_ && is_word_before_leaves(word);
  }
  /// Takes a word of "all after B4". Returns true if it was one.
  [[nodiscard]] bool is_of_all(std::string_view word) {
    if (!wanting_) return false;
    if (all_ == All::no && (word == "all" || word == "everything")) return all_ = All::leaves, true;
    if (all_ == All::leaves && word == "after") return all_ = All::after, true;
    if (all_ == All::leaves && word == "before") return all_ = All::before, true;
    if (all_ == All::leaves && word == "of") return all_ = All::no, true; // all of B
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
  [[nodiscard]] std::int64_t gatherings() const noexcept {
    std::int64_t sum = 0;
    for (auto const& run : book_.runs()) {
      sum += run.gatherings;
      if (sum > most_leaves_in_gathering) break; // no more are counted
    }
    return sum;
  }
  /// Takes words for leaves at the ends of the book, where leaves are wanting. Returns false if there are none, or more
  /// leaves than the book has.
  bool take_end_of_book(TextCursor& cursor) {
    auto after = cursor;
    auto const ends = wanting_ && begins_word(cursor.peek()) ? take_ends_of_book(after) : std::nullopt;
    if (!ends || ends->first > book_.leaves() || ends->last > book_.leaves()) return false;
    if (ends->gatherings && ends->first + ends->last > gatherings()) return false;
    cursor = after;
    if (ends->before_name) return true;
    begun_ = true;
    if (ends->gatherings) return place_gatherings(*ends);
    if (ends->first > 0) place_all(1, ends->first);
    if (ends->last > 0) place_all(book_.leaves() + 1 - ends->last, book_.leaves());
    return true;
  }
  /// Places gatherings at an end of the book.
  bool place_gatherings(EndsOfBook const& ends) {
    auto const& runs = book_.runs();
    bool const first = ends.first > 0;
    std::int64_t left = first ? ends.first : ends.last;
    auto leaves = NumbersOfLeaves{1, book_.leaves()};
    for (std::size_t i = 0; i < runs.size() && left > 0; ++i) {
      auto const r = static_cast<std::uint32_t>(first ? i : runs.size() - 1 - i);
      auto const taken = left < runs[r].gatherings ? left : runs[r].gatherings;
      auto const at = GatheringAt{r, first ? taken - 1 : runs[r].gatherings - taken};
      (first ? leaves.to : leaves.from) = first ? book_.numbers_of(at).to : book_.numbers_of(at).from;
      left -= taken;
    }
    if (leaves.from <= leaves.to) place_all(leaves.from, leaves.to);
    return true;
  }
  /// Returns where the spans begin of which a state after the last item is said.
  [[nodiscard]] std::size_t state_from() const {
    bool single = around_.empty() && group_from_ < item_from_;
    for (auto i = group_from_; i < item_to_; ++i) single = single && read_.spans[i].from == read_.spans[i].to;
    return single ? group_from_ : item_from_;
  }
  /// Gives the leaves of the last item a state.
  std::optional<Error> stated(std::string_view word, LeafInCopy state) {
    if (wanting_ && state == LeafInCopy::blank) return {}; // the blank K8; K8 blank
    if (read_.spans.empty()) return error(Problem::not_a_reference, word);
    for (auto i = state_from(); i < item_to_; ++i) {
      stated_ += !wanting_ && read_.spans[i].state == LeafInCopy::original ? 1U : 0U;
      // A1 in manuscript facsimile; a facsimile that was mounted, or supplied by a binder, is still no leaf
      bool const keeps = is_substitute(read_.spans[i].state) && state != LeafInCopy::facsimile;
      if (!keeps) read_.spans[i].state = state;
    }
    joined_ = false; // en fac-similé
    return {};
  }
  std::optional<Error> item(std::string_view word, std::optional<std::string_view> last) {
    if (is_filler(word) || is_of_all(word)) return {};
    if (wanting_ && (equal_in_any_case(word, "nothing") || equal_in_any_case(word, "none")))
      return begun_ = true, std::nullopt;
    if (auto const state = state_of(word)) return stated(word, *state);
    item_from_ = item_to_ = 0;
    bool const figure = figures_ != Figures::none;
    auto wrong = leaves_of(names_gathering(book_, word) ? word : in_parentheses(word), last);
    if (wrong && !figure && names_no_leaf(word)) wrong = error(Problem::leaves_not_named, word);
    begun_ = true;
    if (!joined_ || group_from_ > item_from_) group_from_ = item_from_;
    joined_ = false;
    if (!wrong && wanting_) end_wanting(word);
    return wrong;
  }
  /// Returns true for the number of a leaf, perhaps with its side: 2, 2r.
  [[nodiscard]] static bool is_number_of_leaf(std::string_view word) noexcept {
    if (word.size() > 1 && std::string_view{"abrv"}.find(word.back()) != word.npos) word.remove_suffix(1);
    return whole_number(word, most_figure).has_value();
  }
  /// Reads leaves: from one to another, if `last` is what comes after "to".
  std::optional<Error> leaves_of(std::string_view word, std::optional<std::string_view> last) {
    if (auto const bare = without_point(word); bare.size() < word.size()) { // A-L. Lacks B4
      TextCursor end{bare};
      auto const first = take_until_beside_names(end, is_dash);
      if (names_gathering(book_, end.take_dash() ? end.rest() : first)) word = bare;
    }
    TextCursor cursor{word};
    cursor.take_dash(); // at the beginning it is between no leaves
    take_until_beside_names(cursor, is_dash);
    auto const head = word.substr(0, cursor.at());
    bool const range = cursor.take_dash();
    auto const tail = range ? std::optional{cursor.rest()} : last;
    bool const numbered = head.starts_with("f.");
    auto const number = [&](std::string_view one) -> std::optional<std::int64_t> {
      bool const roman = word_for_leaves_ != '\0' && is_roman_folio(book_, one);
      return roman ? std::optional{std::int64_t{roman_numeral(one)->value}} : whole_number(one, most_figure);
    };
    auto const from = number(numbered ? head.substr(2) : head);
    auto const to = tail ? number(*tail) : from;
    bool const roman = from && is_latin_letter(head[0]) && !numbered;
    if (roman && find_reference(book_, head)) doubt(word, Problem::leaf_or_word); // f. xij, or x2
    if (roman) return !to ? error(Problem::not_a_reference, word) : by_number(word, *from, *to);
    if (numbered) return !from || !to ? error(Problem::not_a_reference, word) : by_number(word, *from, *to);
    by_number_ = word_for_leaves_ != '\0' && is_number_of_leaf(head) && is_number_of_leaf(tail.value_or(head));
    bool const named =
        (from || by_number_) && names_gathering(book_, head) && names_gathering(book_, tail.value_or(head));
    if (by_number_ && named && word_for_leaves_ == 'l') doubt(word, Problem::name_in_two_ways); // leaf 2r
    if (!from || figures_ == Figures::none) return run(word, head, tail);
    // the 6 of B3,6, or a gathering 6
    bool const either = named && !by_number_;
    if (either && !(to && are_next_figures(*from, *to))) return run(word, head, tail);
    if (!to) return error(Problem::not_a_reference, word);
    if (either) doubt(word, Problem::name_in_two_ways);
    return next_figures(word, *from, *to);
  }
  /// Returns true if such a word is among words before a name: the leaves, les f.
  template <class Is> [[nodiscard]] static bool says(std::string_view words, Is is) noexcept {
    TextCursor cursor{words};
    for (cursor.take_blanks(); !cursor.at_end(); cursor.take_blanks())
      if (is(cursor.take_until(is_space))) return true;
    return false;
  }
  /// Takes "to" and the word after it, B3 to 6. Returns no value if there is none.
  std::optional<std::string_view> take_end(TextCursor& cursor) {
    auto after = cursor;
    if (!after.take_blanks()) return std::nullopt;
    auto const word = after.take_until(is_between_items);
    if (!is_word_of_run(word) || !after.take_blanks() || names_gathering(book_, word)) return std::nullopt;
    auto const end = take_until_beside_names(after, is_between_items);
    cursor = after;
    return end;
  }
  /// Returns true if a number alone is at the cursor that counts something: 2 leaves, 6 plates.
  [[nodiscard]] static bool counts_something(TextCursor cursor) {
    cursor.take_until(is_between_items);
    if (!cursor.take_blanks()) return false;
    auto const word = cursor.take_until(is_between_items);
    auto const letters = TextCursor{word}.take_letters();
    bool const counted = letters.size() > 1 && (letters.size() == word.size() || word.substr(letters.size()) == ".");
    return counted && !is_joining_word(word) && !state_of(word) && !is_word_before_state(word) && !is_word_of_run(word);
  }

public:
  LeavesReader(IdealCopy const& book, std::string_view text, Limits const& limits, bool wanting)
      : LeafRuns{book, text}, limits_{limits}, wanting_{wanting} {}

  /// Returns true if the list says that no other leaves are there: B only.
  [[nodiscard]] bool says_only() const noexcept { return only_; }
  /// Reads the leaves of a passage. `all_but` is true if an exception comes after it: "all" is then a passage by itself.
  std::optional<Error> read(TextSpan passage, bool all_but) {
    TextCursor cursor{text_.substr(0, passage.to), passage.from};
    only_ = false;
    if (auto const wrong = read_items(cursor)) return *wrong;
    check_count();
    if (all_ == All::leaves && all_but) {
      all_ = All::no, begun_ = true;
      if (book_.leaves() > 0) place_all(1, book_.leaves());
    }
    if (all_ != All::no) return error(Problem::not_a_reference, text_.substr(passage.to));
    return {};
  }

private:
  /// Reads one item after another up to the end of the cursor's text.
  std::optional<Error> read_items(TextCursor& cursor) {
    auto const begin = cursor.at();
    while (true) {
      cursor.take_while(is_between_items);
      if (cursor.at_end()) return {};
      if (!read_.spans.empty() && take_content_remark(cursor)) continue;
      if (wanting_ && cursor.peek() == '(' && !in_remark_)
        if (auto const close = end_of_leaves(cursor); close != 0) {
          TextCursor inside{text_.substr(0, close), cursor.at() + 1};
          in_remark_ = true;
          if (auto const wrong = read_items(inside)) return *wrong;
          in_remark_ = false;
          check_count();
          cursor.go_to(close + 1);
          continue;
        }
      if (wanting_ && take_count(cursor)) continue;
      if (begun_ || (!wanting_ && cursor.peek() != '(')) {
        if (auto rest = cursor; take_remark_on_copy(rest)) {
          if (!begun_ && !wanting_ && book_.leaves() > 0) begun_ = true, place_all(1, book_.leaves());
          cursor = rest;
          continue;
        }
      }
      if (auto const word = cursor.at(); take_damage_phrase(cursor)) {
        if (auto const wrong = stated(text_.substr(word, cursor.at() - word), LeafInCopy::damaged)) return *wrong;
        continue;
      }
      if (take_pair(cursor)) continue;
      if (!wanting_ && book_.leaves() > 0 && take_whole_book(cursor)) {
        begun_ = true;
        place_all(1, book_.leaves());
        whole_ = item_from_;
        continue;
      }
      if (all_ == All::no && take_end_of_book(cursor)) continue;
      if (wanting_ && take_content_before_leaf(cursor, book_)) continue;
      if (auto const from = cursor.at(); take_words_before_name(cursor, book_)) {
        auto const words = text_.substr(from, cursor.at() - from);
        leaf_said_ = says(words, is_leaf_noun);
        only_ = only_ || says(words, is_only_word);
        continue;
      }
      if (auto const wrong = take_item(cursor)) return *wrong;
      leaf_said_ = false;
      if (read_.spans.size() > limits_.runs) return error(Problem::too_many_runs, text_.substr(begin, 0), limits_.runs);
    }
  }

public:
  [[nodiscard]] bool begun() const noexcept { return begun_; }
  /// Returns true if every leaf of the list has a word for its state, and none is only named: A1 in facsimile.
  [[nodiscard]] bool only_states() const noexcept { return stated_ > 0 && stated_ >= read_.spans.size(); }
  /// Removes the doubts about names that the list has as often as the book.
  void settle() { names_.settle(read_.doubts); }
  /// Reads the numbers of a list as counts of leaves if they can hardly be anything else, with a doubt. Returns an error if
  /// one of them is not the count of its gathering: which leaves of it are there is not said.
  std::optional<Error> settle_counts() {
    if (auto const found = counts_.find(book_, read_.spans)) {
      if (found->differs) return error(Problem::counts_differ, found->word);
      doubt(found->word, Problem::counts_of_gatherings);
      auto& doubts = read_.doubts; // the places of doubts rise
      merge_sort(doubts, [](Error const& a, Error const& b) { return a.place < b.place; });
      auto const before = read_.spans.size();
      counts_.expand(book_, read_.spans);
      if (read_.spans.size() != before) whole_.reset(); // the spans have other places now
    }
    // A-K L, complete: the word is said of the leaves that are named
    std::int64_t named = 0;
    bool ascending = whole_.has_value();
    for (std::size_t i = 0, before = 0; ascending && i < read_.spans.size(); ++i) {
      auto const& one = read_.spans[i];
      if (i == *whole_ || one.state != LeafInCopy::original) continue;
      ascending = one.in_ideal() && (named == 0 || read_.spans[before].to < one.from);
      named += one.leaves(), before = i;
    }
    if (ascending && named == book_.leaves())
      read_.spans.erase(read_.spans.begin() + static_cast<std::ptrdiff_t>(*whole_));
    return {};
  }
  [[nodiscard]] LeavesPresent& result() noexcept { return read_; }

private:
  /// Returns true if a word such as & or e is a gathering, and does not join the leaves before it and after it. It joins if
  /// leaves come before it and after it and no comma parts it from those after it, but a list of leaves that are there may
  /// go from z to & and to 2a. What could be either is doubted. A letter that joins nothing is always a name.
  bool is_gathering(std::string_view word, TextCursor after) {
    after.take_blanks();
    bool const parted = after.at_end() || after.peek() == ',' || after.peek() == ';' || read_.spans.empty();
    bool const letter = word.size() == 1 && word != "&";
    if (parted && letter) return true;
    auto const mark = mark_of_name(word, book_.letters());
    auto const named = mark ? book_.find(*mark) : std::nullopt;
    if (!named || parted) return named.has_value();
    if (!wanting_ && book_.numbers_of(named->gathering).from == read_.spans.back().to + 1) return true;
    doubt(word, Problem::name_in_two_ways);
    return !wanting_;
  }
  /// Returns the next word of the list that joins nothing.
  [[nodiscard]] static std::string_view next_word(TextCursor after) noexcept {
    after.take_while(is_between_items);
    auto word = take_until_beside_names(after, is_between_items);
    if (!is_joining_word(word)) return word;
    after.take_while(is_between_items);
    return take_until_beside_names(after, is_between_items);
  }
  /// Returns true if a word before the cursor, which can also be a leaf with a Roman numeral, is not one. What is neither
  /// clearly one nor clearly the other is doubted, and is a leaf. Among other leaves with Roman numerals it is a leaf.
  [[nodiscard]] bool is_no_leaf(std::string_view word, TextCursor after, std::optional<Error>& wrong) {
    if (is_joining_word(word)) return false;
    auto const like = word_like_leaf(word);
    if (!like || names_gathering(book_, word)) return roman_ = names_roman_leaf(book_, word), false;
    auto const next = next_word(after);
    bool const leaf = find_reference(book_, word).has_value(), first = read_.spans.empty() && !begun_;
    if (leaf && (roman_ || names_roman_leaf(book_, next))) return roman_ = true, false;
    bool const blank = after.take_blanks();
    bool const goes_on = blank && !after.at_end() && !is_between_items(after.character().value);
    bool const names = !next.empty() && (names_gathering(book_, next) || find_reference(book_, next));
    // the copy lacks what comes after the passage, or another word says how it is
    bool const of_copy = after.at_end() ? after.at() < text_.size() : goes_on && !names;
    bool const pointed = word.ends_with('.');
    if (*like == WordLikeLeaf::copy && first && !wanting_ && (of_copy || pointed)) {
      if (leaf && names) doubt(word, Problem::leaf_or_word);
      return true;
    }
    if (*like >= WordLikeLeaf::number && first && !wanting_ && after.at_end() && of_copy) return true;
    if (*like == WordLikeLeaf::of && first && wanting_ && goes_on) return true;
    if (*like == WordLikeLeaf::number && goes_on && !names && counts_something(TextCursor{text_, position(word)})) {
      wrong = error(Problem::leaves_not_named, word);
      return true;
    }
    if (leaf) doubt(word, Problem::leaf_or_word);
    return false;
  }
  /// Returns where a parenthesis ends that begins with a word and has more than one: (A1 and B3). Returns 0 for any other.
  [[nodiscard]] std::size_t end_of_leaves(TextCursor const& cursor) const noexcept {
    auto const from = cursor.at() + 1, end = cursor.text().find_first_of("()", from);
    if (end == std::string_view::npos || cursor.text()[end] != ')' || !begins_word(cursor.peek(1))) return 0;
    auto const after = end + 1;
    if (after < cursor.text().size() && !is_between_items(decode(cursor.text(), after).value)) return 0;
    auto inside = TextCursor{cursor.text().substr(0, end), from};
    inside.take_until(is_between_items);
    return inside.at_end() ? 0 : end;
  }
  /// Takes a number of leaves or gatherings before their names: two leaves (A1 and B3), 4 leaves: A1, A8, B4.5.
  bool take_count(TextCursor& cursor) {
    auto c = cursor;
    auto word = c.take_until(is_between_items);
    if (is_article(word) && c.take_blanks()) word = c.take_until(is_between_items);
    auto const number = number_beside_leaves(word);
    if (!number || !c.take_blanks()) return false;
    auto noun = c.take_until(is_between_items);
    while (noun.ends_with(':')) noun.remove_suffix(1);
    bool const gatherings = is_row(without_point(noun), gathering_nouns);
    if (!is_leaf_noun(noun) && !gatherings) return false;
    while (c.take_blanks() || c.take(':') || c.take(',')) continue;
    auto name = c;
    static_cast<void>(name.take('('));
    auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one) || one == ')' || one == '.'; };
    auto const first = take_until_beside_names(name, ends);
    if (!names_gathering(book_, first) && !find_reference(book_, first)) return false;
    check_count();
    if (!gatherings) count_ = {word, *number, read_.spans.size(), doubts_.place(text_, position(word))};
    cursor = c;
    return true;
  }
  /// Doubts a number of leaves that is not that of the leaves named after it.
  void check_count() {
    if (!count_) return;
    std::int64_t leaves = 0;
    for (auto i = count_->from; i < read_.spans.size(); ++i) leaves += read_.spans[i].leaves();
    if (leaves != count_->leaves)
      read_.doubts.push_back(error_at(Problem::leaves_miscounted, count_->place, count_->word, leaves));
    count_.reset();
  }
  /// Takes the inmost or the outmost pair of leaves of a gathering.
  bool take_pair(TextCursor& cursor) {
    auto c = cursor;
    auto const pair = take_pair_of_gathering(c, book_);
    if (!pair) return false;
    auto const named = end_of_run(pair->gathering, last_);
    if (!named) return false;
    auto const folded = book_.leaves_folded(named->gathering);
    if (folded < 2 || folded % 2 != 0 || book_.numbers_of(named->gathering) != named->numbers) return false;
    auto const first = pair->inner ? folded / 2 : 1;
    around_.clear();
    LeafSpan const leaves[]{span_of_leaf(book_, {named->gathering, first}),
                            span_of_leaf(book_, {named->gathering, folded + 1 - first})};
    place(leaves);
    counts_.add(FlatCounts::Form::leaves, item_from_, pair->gathering);
    begun_ = true, last_ = leaves[1].last, figures_ = Figures::none, cursor = c;
    return true;
  }
  /// Returns the name of a leaf with a blank before its figure, A 1, or no value. It ends before a dash or the end of the
  /// item. After "A 1 leaf" the figure is a number of leaves.
  [[nodiscard]] std::optional<std::string_view> with_blank(std::string_view word, TextCursor& cursor) const {
    if (!names_gathering(book_, word) || !is_latin_letter(word.back())) return std::nullopt;
    auto c = cursor;
    if (!c.take_blanks() || !c.at_digit() || counts_something(c)) return std::nullopt;
    auto const figure = take_until_beside_names(c, is_between_items);
    TextCursor digit{figure};
    auto const digits = digit.take_number(most_figure);
    auto const head = figure.substr(0, digit.at());
    bool const alone = digit.at_end() || is_dash(digit.character().value);
    if (!digits || !alone || names_gathering(book_, head) || names_gathering(book_, figure)) return std::nullopt;
    auto const from = position(word);
    auto const all = text_.substr(from, position(figure) + figure.size() - from);
    if (!find_reference(book_, text_.substr(from, position(figure) + head.size() - from))) return std::nullopt;
    cursor = c;
    return all;
  }
  /// Takes one word, or more that belong together: f. 3, B3 to 6.
  std::optional<Error> take_item(TextCursor& cursor) {
    auto const first = small_letter(cursor.peek());
    auto const at_number = take_word_before_number(cursor, book_);
    word_for_leaves_ = at_number ? first : '\0';
    if (figures_ != Figures::none && !at_number && cursor.at_digit() && counts_something(cursor))
      figures_ = Figures::none;
    auto word = take_until_beside_names(cursor, is_between_items);
    if (auto const leaf = at_number ? std::nullopt : with_blank(word, cursor)) word = *leaf;
    named_ = is_joining_word(word) && is_gathering(word, cursor);
    if (std::optional<Error> wrong; !at_number && is_no_leaf(word, cursor, wrong)) return wrong;
    auto const end = take_end(cursor);
    if (!at_number) return item(word, end);
    figures_ = Figures::of_book, last_ = LeafOfBook{};
    return item(word, end);
  }
};

} // namespace detail

} // namespace v0
} // namespace bifolium
