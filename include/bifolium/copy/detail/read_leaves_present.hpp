// SPDX-License-Identifier: MIT
/// read_leaves_present: the passages of a list that name leaves which are there, and those that name leaves which are
/// wanting; then the leaves that are left. Each passage is read by LeavesReader.
#pragma once

#include <bifolium/copy/detail/leaves_reader.hpp>
#include <bifolium/copy/detail/leaves_taken_out.hpp>
#include <bifolium/copy/detail/list_passages.hpp>
#include <bifolium/copy/detail/moved_leaves.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/partition_point.hpp>
#include <bifolium/core/read_utf8.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Leaves, and the word or the words of the list that say something of them.
struct LeavesSaid {
  LeafSpan leaves{};
  TextSpan words{};
};
/// Returns the word of which it is not clear which leaves it means: in A1-8, B8 wanting it may be one leaf or all. In
/// A-L, E8 wanting the leaf is named again, which says that it is meant.
[[nodiscard]] inline std::optional<TextSpan> find_unclear(std::vector<LeavesSaid> const& after,
                                                          std::vector<LeafSpan> const& there) {
  if (after.empty()) return std::nullopt;
  SpansByNumber const named{there};
  for (auto const& one : after)
    if (!named.have(one.leaves)) return one.words;
  return std::nullopt;
}
/// Takes leaves that a list names again to give their state, A-L, A1 in facsimile, out of the leaves before them. In a
/// list that is not in the order of the book, a leaf that is named again is there again.
inline void settle_states(IdealCopy const& book, LeavesPresent& list) {
  std::vector<std::size_t> plain; // the spans without a state
  std::vector<LeafSpan> again, others;
  for (std::size_t i = 0; i < list.spans.size(); ++i) {
    auto const& one = list.spans[i];
    if (one.state == LeafInCopy::original && one.in_ideal()) {
      if (!plain.empty() && one.from <= list.spans[plain.back()].to) return;
      plain.push_back(i);
    }
  }
  for (std::size_t i = 0; i < list.spans.size(); ++i) {
    auto const& one = list.spans[i];
    auto const after =
        partition_point(plain.size(), [&](std::size_t k) { return list.spans[plain[k]].from <= one.from; });
    bool const named = one.in_ideal() && after > 0 && plain[after - 1] < i && one.to <= list.spans[plain[after - 1]].to;
    (one.state != LeafInCopy::original && named ? again : others).push_back(one);
  }
  if (!again.empty()) list.spans = WantingRemover{book, again}.remove_from(others);
}
/// Makes a list of which each leaf has a state, A1 in facsimile, the list of the whole copy. That is doubtful unless the
/// list says what is wanting.
inline void complete_stated(IdealCopy const& book, std::string_view text, LeavesPresent& list, bool doubtful) {
  std::int64_t leaves = 0;
  std::vector<LeafSpan> stated;
  for (auto const& one : list.spans) {
    leaves += one.leaves();
    if (one.state != LeafInCopy::original) stated.push_back(one);
  }
  if (leaves >= book.leaves()) return;
  auto const all = trimmed(text, {0, text.size()}, " ,;.");
  if (doubtful)
    list.doubts.insert(list.doubts.begin(),
                       error_at(Problem::only_states_of_leaves, place_in(text, all.from), all.of(text)));
  list.spans = WantingRemover{book, stated}.remove_from({span_of_numbers(book, 1, book.leaves())});
}

/// Follows the words that say that a copy is not whole, until leaves that it lacks are named.
class ImperfectWord {
  TextSpan word_{};

public:
  /// Takes a passage that was read; `names` is true if it has leaves that are there. Returns false if it is not said
  /// which leaves are wanting: imperfect, A1.
  bool take(ListPassage const& passage, bool names) noexcept {
    if (passage.wanting) word_ = {};
    if (!passage.imperfect.empty()) word_ = passage.imperfect;
    return word_.empty() || !names;
  }
  /// Returns the word after which no leaves are wanting, or an empty span.
  [[nodiscard]] TextSpan open() const noexcept { return word_; }
};

/// Takes leaves that are there out of those that are wanting: wants A-C except B4. Returns the words of the first that is
/// not wanting.
[[nodiscard]] inline std::optional<TextSpan> take_out(IdealCopy const& book, std::vector<LeavesSaid> const& excepted,
                                                      std::vector<LeafSpan>& wanting) {
  if (excepted.empty()) return {};
  SpansByNumber const gone{wanting};
  std::vector<LeafSpan> kept;
  for (auto const& one : excepted) {
    if (!gone.have(one.leaves)) return one.words;
    kept.push_back(one.leaves);
  }
  wanting = WantingRemover{book, kept}.remove_from(wanting);
  return {};
}

/// Reads a list whose passages name leaves that are there and leaves that are wanting.
class PassagesReader {
  IdealCopy const& book_;
  std::string_view text_;
  LeavesReader there_, wanting_, kept_; // kept: taken out of those that are wanting
  std::vector<LeavesSaid> after_{}, excepted_{}, lost_{};
  LeavesPresent result_{}, lacks_{}, excepts_{}; // what the three have read, at the end of the list
  bool says_wanting_{false};
  std::size_t before_{0}; // where the passage before ended
  TextSpan word_{};       // the word after which leaves are wanting
  ImperfectWord imperfect_{};

  [[nodiscard]] Error error(Problem problem, TextSpan part) const {
    return error_at(problem, place_in(text_, part.from), part.of(text_));
  }
  /// Reads a passage. `all_but` is true if an exception comes next. Sets `ends` if nothing after it can be read.
  std::optional<Error> take(ListPassage const& passage, bool all_but, bool& ends) {
    if (passage.wanting && !says_wanting_) word_ = trimmed(text_, {before_, passage.text.from}, " ,;:().");
    before_ = passage.text.to;
    says_wanting_ = says_wanting_ || passage.wanting;
    auto& reader = passage.except ? kept_ : passage.wanting ? wanting_ : there_;
    auto const from = reader.size();
    if (auto const wrong = reader.read(passage.text, all_but)) return *wrong;
    ends = !imperfect_.take(passage, !passage.wanting && reader.size() > from);
    if (ends && there_.says_only()) imperfect_ = {}, ends = false; // fragment: B2-7 only
    if (passage.except && reader.size() == from) return error(Problem::not_a_reference, {before_, before_});
    auto const words = trimmed(text_, passage.text, " ,;:().");
    if (!passage.wanting) return {};
    auto const& spans = reader.spans();
    for (auto i = from; i < spans.size(); ++i) {
      if (passage.after && there_.begun()) after_.push_back({spans[i], passage.word});
      (passage.except ? excepted_ : lost_).push_back({spans[i], words});
    }
    return {};
  }
  /// Returns what is wrong with the whole of the list, after its leaves are taken together.
  std::optional<Error> settle() {
    if (!imperfect_.open().empty()) return error(Problem::leaves_not_named, imperfect_.open());
    auto const blank = trimmed(text_, {0, text_.size()}, " "); // of a list that names nothing: this copy
    if (!there_.begun() && !says_wanting_ && !blank.empty()) return error(Problem::leaves_not_named, blank);
    for (auto* const reader : {&wanting_, &kept_})
      if (auto const wrong = reader->settle_unnamed()) return *wrong;
    result_ = there_.finish(), lacks_ = wanting_.finish(), excepts_ = kept_.finish();
    if (auto const wrong = there_.settle_counts(result_)) return *wrong;
    if (auto const other = take_out(book_, excepted_, lacks_.spans))
      return error(Problem::exception_of_nothing, *other);
    bool const only_states = there_.only_states(result_);
    if (auto const unclear = only_states ? std::nullopt : find_unclear(after_, result_.spans))
      return error(Problem::wanting_after_leaves, *unclear);
    there_.settle_sides(result_), wanting_.settle_sides(lacks_), kept_.settle_sides(excepts_);
    settle_states(book_, result_);
    if (only_states) complete_stated(book_, text_, result_, !says_wanting_);
    if (!says_wanting_ || wanting_.begun()) return {};
    // K8 wanting: which of the leaves before the word are meant, a list does not say
    return there_.begun() ? error(Problem::wanting_after_leaves, word_)
                          : error(Problem::not_a_reference, {text_.size(), text_.size()});
  }

  /// Doubts a list that says what is there and what is wanting, and leaves others out: in A-K, lacks L of a book with π
  /// before A the leaves of π may be there. In A-K, lacks B4 nothing is left out: the one is taken from the other.
  void doubt_unnamed() {
    SpansByNumber const there{result_.spans};
    LeavesSaid const* first = nullptr;
    auto named = result_.spans;
    for (auto const& one : lost_) {
      if (!one.leaves.in_ideal()) continue;
      named.push_back(one.leaves);
      if (first == nullptr && !there.touch(one.leaves)) first = &one;
    }
    auto const left = first == nullptr ? 0 : book_.leaves() - SpansByNumber{named}.leaves();
    if (left > 0)
      result_.doubts.push_back(
          error_at(Problem::leaves_left_out, place_in(text_, first->words.from), first->words.of(text_), left));
  }

  /// Takes the leaves that are wanting out of those that are there.
  void take_wanting() {
    if (there_.begun()) doubt_unnamed();
    if (!there_.begun() && book_.leaves() > 0) result_.spans.push_back(span_of_numbers(book_, 1, book_.leaves()));
    result_.spans = WantingRemover{book_, lacks_.spans}.remove_from(result_.spans);
    for (auto const* more : {&lacks_.doubts, &excepts_.doubts})
      result_.doubts.insert(result_.doubts.end(), more->begin(), more->end());
    merge_sort(result_.doubts, [](Error const& a, Error const& b) { return a.place < b.place; });
  }

public:
  PassagesReader(IdealCopy const& book, std::string_view text, Limits const& limits)
      : book_{book}, text_{text}, there_{book, text, limits, false}, wanting_{book, text, limits, true}, kept_{book,
                                                                                                               text,
                                                                                                               limits,
                                                                                                               true} {}

  Expected<LeavesPresent> read() {
    ListPassages passages{text_};
    bool ends = false;
    for (auto passage = passages.next(), following = passage; passage && !ends; passage = following) {
      following = passages.next();
      if (auto const wrong = take(*passage, following && following->except, ends)) return *wrong;
    }
    if (auto const wrong = settle()) return *wrong;
    if (says_wanting_) take_wanting();
    for (auto const* const reader : {&there_, &wanting_, &kept_}) place_moved(book_, text_, reader->moved(), result_);
    return static_cast<LeavesPresent&&>(result_);
  }
};

} // namespace detail

BIFOLIUM_INLINE Expected<LeavesPresent> read_leaves_present(IdealCopy const& book, std::string_view text,
                                                            Limits const& limits) {
  return read_utf8(text, [&](std::string_view given) -> Expected<LeavesPresent> {
    if (detail::is_too_long(given, limits)) return detail::too_long(limits);
    return detail::PassagesReader{book, given, limits}.read();
  });
}

} // namespace v0
} // namespace bifolium
