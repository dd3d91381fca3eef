// SPDX-License-Identifier: MIT
/// Reads the items of a list of leaves one after the other: references, runs of them, bifolia, and words for the state
/// of leaves. What an item can be is tried in one order, the longer forms first; each form has a part of its own.
///
///   leaves = { item , [ "," | ";" | "and" | "&" ] } ;
///   item   = [ "f." | "leaf" ] , leaf or gathering , [ ( "-" | "to" ) , leaf or gathering ] , [ [ "in" ] , state ]
///          | leaf , "." , leaf | figure , [ "-" , figure ]    (* after a leaf, of the same gathering: B3,6 *)
///          | "all" , ( "after" | "before" ) , leaf or gathering ;   (* where leaves are wanting *)
///   state  = "facsimile" | "supplied" | "blank" | "mounted" | "torn" ... ;
///
/// A leaf that is torn is there, also in a list of leaves that are wanting. A remark in parentheses that says what is
/// printed on the leaves, A1 (title), says nothing about the copy. Pages and numbers of leaves do not say which leaves are
/// meant, and are refused.
#pragma once

#include <bifolium/copy/detail/article_or_name.hpp>
#include <bifolium/copy/detail/blanks_before.hpp>
#include <bifolium/copy/detail/bound_elsewhere.hpp>
#include <bifolium/copy/detail/content_words.hpp>
#include <bifolium/copy/detail/count_before_names.hpp>
#include <bifolium/copy/detail/name_or_word.hpp>
#include <bifolium/copy/detail/numbered_leaves.hpp>
#include <bifolium/copy/detail/parts_of_book.hpp>
#include <bifolium/copy/detail/passage_words.hpp>
#include <bifolium/copy/detail/roman_folios.hpp>
#include <bifolium/copy/detail/run_to_end.hpp>
#include <bifolium/copy/detail/said_again.hpp>
#include <bifolium/copy/detail/states_in_list.hpp>
#include <bifolium/copy/detail/there_words.hpp>
#include <bifolium/copy/detail/whole_copy_words.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>
#include <bifolium/copy/read_leaves_present.hpp>
#include <bifolium/core/merge_sort.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class LeavesReader {
  Limits limits_;
  ListSoFar list_;
  LeafRuns runs_{list_};
  NumberedLeaves numbered_{list_, runs_};
  PartsOfBook parts_{list_, runs_};
  StatesInList states_{list_};
  CountBeforeNames count_{list_};
  NameOrWord names_{list_};
  ArticleOrName articles_{list_};
  BoundElsewhere bound_{list_, runs_, states_};
  ExtentOfCopy extent_{list_, runs_};
  BlanksBefore blanks_{list_};
  RunToEnd to_end_{list_};
  SaidAgain again_{list_};
  bool named_{};     // the item is the gathering &, or e, and joins nothing
  bool leaf_said_{}; // a word for leaves stands before the item: leaf A8
  char word_for_leaves_{
      '\0'};         // the first letter of the word for leaves before a number, f. 3 or leaf 3, or a zero byte
  bool in_remark_{}; // the reader is in a parenthesis
  std::vector<std::string_view> unnamed_{}; // words for leaves that the list does not name

  /// Takes a word that stands between leaves and says nothing about them: A1 and A8; the blank K8; leaf A1.
  [[nodiscard]] bool is_filler(std::string_view word) {
    bool const after_leaves = list_.has_leaves();
    if (is_joining_word(word)) {
      bool const joins = after_leaves && !named_;
      if (joins) states_.join();
      return joins;
    }
    if (!after_leaves && !list_.wanting && is_word_for_copy(word)) return true;
    if (!after_leaves && word == ":") return !names_gathering(list_.book, word); // Incomplet : manque A1
    if (after_leaves && is_word_before_state(word)) {
      if (is_word_before_state_of_all(word)) states_.say_of_all();
      return true;
    }
    if (after_leaves && !list_.wanting && is_only_word(word)) return list_.only = true;
    if (after_leaves && !list_.wanting && is_row(without_point(word), words_for_present)) return true;
    return list_.wanting && is_word_before_leaves(word);
  }
  /// Doubts leaves that are wanting in every copy, and ends "all after".
  void end_wanting(std::string_view word) {
    auto& leaves = list_.leaves;
    leaves.close(); // in which order leaves are wanting means nothing
    bool in_ideal = leaves.item_from() < leaves.item_to();
    for (auto i = leaves.item_from(); i < leaves.item_to(); ++i) in_ideal = in_ideal && leaves.spans()[i].in_ideal();
    if (!in_ideal) list_.doubt(word, Problem::wanting_in_every_copy);
    parts_.end_all(in_ideal);
  }
  std::optional<Error> item(std::string_view word, std::optional<std::string_view> last) {
    if (is_filler(word) || parts_.is_of_all(word)) return {};
    if (list_.wanting && is_row(word, nothing_words)) return list_.begun = true, std::nullopt;
    if (auto const state = state_of(word)) return states_.take(word, *state);
    list_.leaves.begin_item();
    bool const figure = list_.figures != FiguresAfter::none;
    auto wrong = leaves_of(names_gathering(list_.book, word) ? word : in_parentheses(word), last);
    if (wrong && !figure && names_no_leaf(word)) wrong = list_.error(Problem::leaves_not_named, word);
    list_.begun = true;
    states_.end_item();
    if (!wrong && list_.wanting) end_wanting(word);
    return wrong;
  }
  /// Reads leaves: from one to another, if there is a dash or if `last` is what comes after "to".
  std::optional<Error> leaves_of(std::string_view word, std::optional<std::string_view> last) {
    if (auto const bare = without_point(word); bare.size() < word.size()) { // A-L. Lacks B4
      TextCursor end{bare};
      auto const first = take_until_beside_names(end, is_dash);
      if (names_gathering(list_.book, end.take_dash() ? end.rest() : first)) word = bare;
    }
    TextCursor cursor{word};
    cursor.take_dash(); // at the beginning it is between no leaves
    take_until_beside_names(cursor, is_dash);
    auto const head = word.substr(0, cursor.at());
    bool const range = cursor.take_dash();
    return numbered_.read(word, head, range ? std::optional{cursor.rest()} : last, word_for_leaves_, leaf_said_);
  }
  /// Takes words for a place in the book that only say again where the leaves are: am Ende fehlt L4, lacks at end L3-4.
  bool take_place(TextCursor& cursor) {
    auto c = cursor;
    if (!begins_word(cursor.peek()) || !take_place_of_book(c)) return false;
    auto const after = past_blanks(c);
    bool const ends =
        after.at_end() || after.peek() == ':' || after.peek() == ',' || after.peek() == ';' || after.peek() == '(';
    bool const may = list_.wanting ? ends || !list_.has_leaves() : ends && !list_.has_leaves();
    if (!may) return false;
    c.take(':');
    cursor = c;
    return true;
  }
  /// Takes words before the leaves that a copy has: consists of B1-8; bound without A1.
  bool take_opening(TextCursor& cursor) {
    if (list_.wanting) return false;
    auto c = cursor;
    if (is_row(c.take_until(is_between_items), bound_words) && past_blanks(c).at_end() && c.at() < list_.text.size())
      return cursor = c, true;
    if (list_.has_leaves() || !take_words_before_present(cursor, list_.book)) return false;
    return list_.only = true;
  }
  /// Takes "to" and the word after it, B3 to 6. Returns no value if there is none.
  std::optional<std::string_view> take_end(TextCursor& cursor, bool number) {
    auto after = cursor;
    if (!after.take_blanks()) return std::nullopt;
    if (auto that = after; take_that_is(that)) return std::nullopt;                    // à savoir
    if (auto dash = after; dash.take_dash() && dash.take_blanks() && !dash.at_end()) { // A1 - A3
      auto const end = take_until_beside_names(dash, is_between_items);
      auto const with_side = names_.with_side(end, number, dash);
      cursor = dash;
      return with_side.value_or(end);
    }
    auto const word = after.take_until(is_between_items);
    if (!is_word_of_run(word) || !after.take_blanks()) return std::nullopt;
    if (auto end = after; to_end_.take_end(end)) return cursor = end, std::nullopt;              // K5 to the end
    if (names_gathering(list_.book, word) && !(number && after.at_digit())) return std::nullopt; // ff. 3 a 5
    auto const end = take_until_beside_names(after, is_between_items);
    auto const with_side = names_.with_side(end, number, after); // A1 verso to A3 recto
    cursor = after;
    return with_side.value_or(end);
  }
  /// Returns true for a word such as e between numbers of leaves, cc. 3 e 5, be it also a gathering. After a comma it may be
  /// the gathering, and is doubted.
  [[nodiscard]] bool joins_numbers_of_book(std::string_view word, TextCursor after) {
    bool const joins = word.size() == 1 && (is_joining_word(word) || word == "E" || word == "Y");
    if (!joins || list_.figures != FiguresAfter::of_book || !after.take_blanks() || !after.at_digit()) return false;
    auto const before = list_.text.substr(0, list_.position(word)).find_last_not_of(' ');
    bool const parted = before != std::string_view::npos && (list_.text[before] == ',' || list_.text[before] == ';');
    if (parted && names_gathering(list_.book, word)) list_.doubt(word, Problem::name_in_two_ways);
    return true;
  }
  /// Doubts a gathering after a word for leaves whose name is also a Roman numeral: ff. I-III are leaves 1 to 3.
  void doubt_numeral(TextCursor after) {
    auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one) || one == '.'; };
    auto const word = take_until_beside_names(after, ends);
    if (is_roman_numeral(word) && names_gathering(list_.book, word)) list_.doubt(word, Problem::name_in_two_ways);
  }
  /// Takes one word, or more that belong together: f. 3, B3 to 6.
  std::optional<Error> take_item(TextCursor& cursor) {
    auto const first = small_letter(cursor.peek());
    auto const at_number = take_word_before_number(cursor, list_.book);
    word_for_leaves_ = at_number ? first : '\0';
    if (list_.figures != FiguresAfter::none && !at_number && cursor.at_digit() && counts_something(cursor))
      list_.figures = FiguresAfter::none;
    auto word = take_until_beside_names(cursor, is_between_items);
    bool const joins_numbers = joins_numbers_of_book(word, cursor);
    if (auto const leaf = at_number || joins_numbers ? std::nullopt : names_.with_blank(word, cursor)) word = *leaf;
    if (auto const leaf = joins_numbers ? std::nullopt : names_.with_side(word, at_number, cursor)) word = *leaf;
    named_ = !joins_numbers && is_joining_word(word) && names_.is_gathering(word, cursor);
    if (joins_numbers) return states_.join(), std::nullopt;
    if (std::optional<Error> wrong; !at_number && names_.is_no_leaf(word, cursor, wrong)) return wrong;
    to_end_.begin_item();
    auto const end = take_end(cursor, at_number || list_.figures == FiguresAfter::of_book);
    if (at_number) list_.figures = FiguresAfter::of_book, list_.last = LeafOfBook{};
    bool const to_end = to_end_.end_item(cursor);
    auto const wrong = item(word, end);
    if (!wrong && !is_joining_word(word)) blanks_.end_item();
    if (!wrong && to_end) parts_.place_to_end();
    return wrong;
  }
  /// Returns where a parenthesis ends that begins with a word and has more than one: (A1 and B3). Returns 0 for any other.
  [[nodiscard]] static std::size_t end_of_remark(TextCursor const& cursor) noexcept {
    auto const from = cursor.at() + 1, end = cursor.text().find_first_of("()", from);
    if (end == std::string_view::npos || cursor.text()[end] != ')' || !begins_word(cursor.peek(1))) return 0;
    auto const after = end + 1;
    if (after < cursor.text().size() && !is_between_items(decode(cursor.text(), after).value)) return 0;
    auto inside = TextCursor{cursor.text().substr(0, end), from};
    inside.take_until(is_between_items);
    return inside.at_end() ? 0 : end;
  }
  /// Reads the leaves in a parenthesis: two leaves (A1 and B3), A-K (B3 torn). Returns false if it has none.
  bool take_remark(TextCursor& cursor, std::optional<Error>& wrong) {
    bool const may = cursor.peek() == '(' && !in_remark_;
    auto const close = may ? end_of_remark(cursor) : 0;
    if (close == 0) return false;
    TextCursor inside{list_.text.substr(0, close), cursor.at() + 1};
    in_remark_ = true;
    wrong = read_items(inside);
    if (wrong) return true;
    in_remark_ = false;
    count_.check(), again_.check();
    cursor.go_to(close + 1);
    return true;
  }
  /// Takes words that say what is printed on the leaves before them, or that one side of these is blank: A1 (title), A1 (verso
  /// blank).
  bool take_remark_on_leaf(TextCursor& cursor) {
    bool const side = take_blank_side(cursor);
    if (!side && !take_content_remark(cursor)) return false;
    if (side && !list_.wanting) list_.leaves.say(list_.leaves.item_from(), LeafInCopy::original);
    return true;
  }
  /// Takes words that say of the copy that nothing else is wanting.
  bool take_words_on_copy(TextCursor& cursor) {
    if (!list_.begun && (list_.wanting || cursor.peek() == '(')) return false;
    if (!take_remark_on_copy(cursor)) return false;
    if (!list_.begun && !list_.wanting && list_.book.leaves() > 0) parts_.place_all();
    return true;
  }
  /// Takes words that say that a part of the leaves before them is wanting: A1 lacks lower corner.
  bool take_damage(TextCursor& cursor, std::optional<Error>& wrong) {
    auto const from = cursor.at();
    if (!take_damage_phrase(cursor)) return false;
    wrong = states_.take(list_.text.substr(from, cursor.at() - from), LeafInCopy::damaged);
    return true;
  }
  /// Takes leaves that are given by their place in the book or in a gathering.
  bool take_part(TextCursor& cursor, std::optional<Error>& wrong) {
    return parts_.take_pair(cursor, wrong) || parts_.take_whole(cursor) || parts_.take_end(cursor);
  }
  /// Takes words before a name: the leaves, les f.
  bool take_words(TextCursor& cursor) {
    auto const from = cursor.at();
    if (!take_words_before_name(cursor, list_.book)) return false;
    leaf_said_ = false;
    bool folio = false; // the last word is f., fol. or the like
    TextCursor words{list_.text.substr(0, cursor.at()), from};
    for (words.take_blanks(); !words.at_end(); words.take_blanks()) {
      auto const word = words.take_until(is_space);
      leaf_said_ = leaf_said_ || is_leaf_noun(word);
      list_.only = list_.only || is_only_word(word);
      folio = is_leaf_noun(word) && small_letter(word[0]) == 'f';
    }
    if (folio) doubt_numeral(cursor);
    return true;
  }
  /// Takes words for what is printed on a leaf that the list does not name: lacks half-title, A3. The other leaves are read.
  bool take_unnamed(TextCursor& cursor) {
    auto const contents = take_contents(cursor);
    if (contents.empty()) return false;
    unnamed_.push_back(contents);
    if (auto next = cursor;
        next.take_blanks() && is_joining_word(next.take_until(is_between_items)) && !list_.has_leaves())
      cursor = next; // half-title and A1
    return list_.begun = true;
  }
  /// Notes that leaves were placed; `joined`: "and" comes before them.
  void placed(std::string_view word, bool joined) {
    if (joined && list_.has_leaves()) states_.join();
    list_.begun = true;
    states_.end_item(), count_.end_item();
    if (list_.wanting) end_wanting(word);
  }
  /// Takes leaves that Roman numerals number after a word for leaves: ff. I-III.
  bool take_roman_folios(TextCursor& cursor, std::optional<Error>& wrong) {
    RomanFolios folios{list_.book};
    if (!begins_word(cursor.peek()) || !folios.take(cursor)) return false;
    for (auto const& run : folios.runs()) {
      list_.leaves.begin_item();
      wrong = numbered_.by_number(run.word, run.from, run.to);
      if (wrong) break;
      if (auto const doubt = folios.doubt(run); doubt != Problem::none) list_.doubt(run.word, doubt);
      placed(run.word, run.joined);
    }
    return true;
  }
  /// Reads one item after another up to the end of the cursor's text.
  std::optional<Error> read_items(TextCursor& cursor) {
    auto const begin = cursor.at();
    std::optional<Error> wrong;
    while (!wrong) {
      auto const from = cursor.at();
      cursor.take_while(is_between_items);
      bool const parted = cursor.text().substr(from, cursor.at() - from).find(';') != std::string_view::npos;
      if (parted || cursor.at_end()) blanks_.end();
      if (parted) states_.begin_clause();
      if (cursor.at_end()) return {};
      bool const phrase = begins_phrase(cursor);
      if (phrase && blanks_.take(cursor)) continue;
      if ((phrase || cursor.peek() == 'o') && again_.take(cursor, count_.is_said(), states_)) continue;
      if (phrase && (take_opening(cursor) || extent_.take(cursor))) continue;
      if (list_.leaves.item_from() < list_.leaves.item_to() && count_.take_after(cursor, states_)) continue;
      if (list_.has_leaves() && take_remark_on_leaf(cursor)) continue;
      if (take_remark(cursor, wrong)) continue;
      if ((list_.wanting || !list_.has_leaves()) && count_.take(cursor)) continue;
      if (auto const pair = phrase ? parts_.take_conjugate(cursor, wrong) : std::string_view{}; !pair.empty()) {
        if (!wrong) placed(pair, list_.leaves.size() > list_.passage_from + 1);
        continue;
      }
      if (take_words_on_copy(cursor) || take_damage(cursor, wrong) || bound_.take(cursor, wrong)) continue;
      if (phrase && to_end_.take_from(cursor)) continue;
      if (auto const before = list_.leaves.size(); take_part(cursor, wrong)) {
        if (list_.leaves.size() > before) states_.end_item(), count_.end_item(); // the final blank K8 is not read yet
        continue;
      }
      if (list_.wanting && (take_content_before_leaf(cursor, list_.book) || take_unnamed(cursor))) continue;
      if (phrase && numbered_.take_of_gathering(
                        cursor, [&](auto... said) { placed(said...); }, wrong))
        continue;
      if ((phrase || cursor.peek() == 'i') && take_roman_folios(cursor, wrong)) continue;
      if (articles_.take(cursor, wrong) || (phrase && take_place(cursor))) continue;
      if (take_words(cursor)) continue;
      wrong = take_item(cursor);
      count_.end_item();
      leaf_said_ = false;
      if (!wrong && list_.leaves.size() > limits_.runs)
        return list_.error(Problem::too_many_runs, list_.text.substr(begin, 0), limits_.runs);
    }
    return wrong;
  }

public:
  LeavesReader(IdealCopy const& book, std::string_view text, Limits const& limits, bool wanting)
      : limits_{limits}, list_{book, text, wanting} {}
  LeavesReader(LeavesReader const&) = delete; // its parts know where it is
  LeavesReader& operator=(LeavesReader const&) = delete;
  ~LeavesReader() = default;

  /// Reads the leaves of a passage. `all_but` is true if an exception comes after it: "all" is then a passage by itself.
  std::optional<Error> read(TextSpan passage, bool all_but) {
    TextCursor cursor{list_.text.substr(0, passage.to), passage.from};
    list_.only = false;
    list_.leaves.close();
    list_.passage_from = list_.leaves.size();
    states_.begin_passage();
    if (auto const wrong = read_items(cursor)) return *wrong;
    count_.check(), again_.check();
    list_.leaves.give_state();
    if (all_but) parts_.end_all_but();
    if (parts_.expects_name()) return list_.error(Problem::not_a_reference, list_.text.substr(passage.to));
    return {};
  }
  [[nodiscard]] bool begun() const noexcept { return list_.begun; }
  /// Returns true if the list says that no other leaves are there: B only.
  [[nodiscard]] bool says_only() const noexcept { return list_.only; }
  /// Returns the number of spans so far.
  [[nodiscard]] std::size_t size() const noexcept { return list_.leaves.size(); }
  /// Returns the spans so far, but for second leaves of bifolia that the list has not ended yet.
  [[nodiscard]] std::vector<LeafSpan> const& spans() const noexcept { return list_.leaves.spans(); }
  /// Ends the list: removes the doubts about names that the list has as often as the book.
  LeavesPresent finish() {
    runs_.settle();
    return {list_.leaves.take(), static_cast<std::vector<Error>&&>(list_.doubts)};
  }
  /// Reads the numbers of a list that has ended as counts of leaves if they can hardly be anything else, with a doubt.
  /// Returns an error if one of them is not the count of its gathering: which leaves of it are there is not said.
  std::optional<Error> settle_counts(LeavesPresent& read) {
    if (auto const found = list_.counts.find(list_.book, read.spans)) {
      if (found->differs) return list_.error(Problem::counts_differ, found->word);
      auto const place = list_.doubt_places.place(list_.text, list_.position(found->word));
      read.doubts.push_back(error_at(Problem::counts_of_gatherings, place, found->word));
      merge_sort(read.doubts, [](Error const& a, Error const& b) { return a.place < b.place; }); // the places rise
      auto const before = read.spans.size();
      list_.counts.expand(list_.book, read.spans);
      if (read.spans.size() != before) parts_.forget_whole(), list_.leaves.forget_halves();
    }
    parts_.settle(read.spans);
    return {};
  }
  /// Doubts words for leaves that the list does not name. They are an error if it names no others.
  std::optional<Error> settle_unnamed() {
    for (auto const word : unnamed_) {
      if (list_.leaves.size() == 0) return list_.error(Problem::leaves_not_named, word);
      list_.doubt(word, Problem::leaves_not_named);
    }
    return {};
  }
  /// Settles what a list says of one side of a leaf, when it has ended.
  void settle_sides(LeavesPresent& read) {
    auto const& halves = list_.leaves.halves();
    if (halves.empty()) return;
    SidesOfLeaves const sides{list_.book, halves, read.spans};
    auto const before = read.doubts.size();
    sides.doubt(read.spans, list_.wanting, [&](std::string_view word) {
      auto const place = list_.doubt_places.place(list_.text, list_.position(word));
      read.doubts.push_back(error_at(Problem::side_of_leaf, place, word));
    });
    if (read.doubts.size() != before)
      merge_sort(read.doubts, [](Error const& a, Error const& b) { return a.place < b.place; });
    read.spans = sides.settle(read.spans);
  }
  /// Returns true if every leaf of a list that has ended has a word for its state, and none is only named.
  [[nodiscard]] bool only_states(LeavesPresent const& read) const noexcept {
    auto const stated = list_.leaves.stated();
    return stated + list_.moved.size() > 0 && stated >= read.spans.size();
  }
  /// Returns the leaves that are bound elsewhere.
  [[nodiscard]] std::vector<MovedLeaves> const& moved() const noexcept { return list_.moved; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
