// SPDX-License-Identifier: MIT
/// Compares evidence of how leaves are joined with the formula. A leaf is joined to its conjugate at the gutter.
/// Evidence for it is one bent piece of paper, a chain line that continues across the fold, or two halves of one
/// watermark; evidence against it is a stub, or chain lines that do not meet. The sewing is in the middle of a
/// gathering and so shows the number of its leaves. Each piece of evidence agrees with the formula or contradicts it;
/// no evidence changes the formula.
#pragma once

#include <bifolium/copy/leaf_span.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_cursor.hpp>

namespace bifolium {
inline namespace v0 {

/// The kind of evidence about two leaves, or about one leaf.
enum class Joint : std::uint8_t {
  conjugate,          ///< the two are seen to be one bent piece
  disjunct,           ///< the two are seen not to be one piece
  chain_lines_run_on, ///< chain lines continue across the fold without a break
  chain_lines_break,  ///< chain lines do not meet at the fold
  mark_halves_meet,   ///< the leaves have the two halves of one watermark
  stub,               ///< the first leaf is on a stub
  sewing              ///< the thread is seen after the first leaf: this is the middle of the gathering
};
/// One piece of evidence. `second` is ignored for a stub or sewing.
struct JointSeen {
  LeafOfBook first{};  ///< the leaf that was looked at
  LeafOfBook second{}; ///< the leaf with which it was compared
  Joint what{};        ///< the kind of evidence
  friend constexpr bool operator==(JointSeen const&, JointSeen const&) = default;
};
/// A piece of evidence compared with the formula.
struct JointJudged {
  JointSeen seen{};    ///< the evidence as given
  bool agrees{};       ///< true if the formula agrees with the evidence
  std::string words{}; ///< "A1.4 conjugate: agrees"
  friend bool operator==(JointJudged const&, JointJudged const&) = default;
};

/// Compares one piece of evidence with the formula. Precondition: the formula has the gatherings of the leaves.
[[nodiscard]] inline JointJudged judge(IdealCopy const& book, JointSeen const& seen) {
  auto const mate = book.conjugate(seen.first);
  bool const together = mate && *mate == seen.second;
  JointJudged judged{seen, false, detail::leaf_words(book, seen.first)};
  auto& words = judged.words;
  auto const pair = [&](char const* what, bool agrees, char const* then) {
    bool const folded = seen.first.gathering == seen.second.gathering && !seen.first.inserted && !seen.second.inserted;
    words += '.';
    words += folded ? std::to_string(seen.second.leaf) : detail::leaf_words(book, seen.second);
    (words += ' ') += what;
    words += agrees ? ": agrees" : ": contradicts the formula";
    if (!agrees) words += then;
    judged.agrees = agrees;
  };
  auto const others = [&] {
    return mate ? ", by which " + detail::leaf_words(book, *mate) + " is conjugate with it"
                : std::string{", by which it is a single leaf"};
  };
  switch (seen.what) {
  case Joint::conjugate:
    pair("conjugate", together, others().c_str());
    break;
  case Joint::disjunct:
    pair("disjunct", !together, "; is one of them a cancel?");
    break;
  case Joint::chain_lines_run_on:
    pair("chain lines run on", together, others().c_str());
    break;
  case Joint::chain_lines_break:
    pair("chain lines do not meet", !together, "; is one of them a cancel?");
    break;
  case Joint::mark_halves_meet:
    pair("halves of one mark", together, others().c_str());
    break;
  case Joint::stub:
    judged.agrees = !mate;
    words += mate ? " on a stub: contradicts the formula; a cancel?" : " on a stub: agrees";
    break;
  case Joint::sewing: {
    auto const folded = book.leaves_folded(seen.first.gathering);
    judged.agrees = 2 * seen.first.leaf == folded && !seen.first.inserted;
    words += " followed by the sewing: ";
    words +=
        judged.agrees ? "agrees" : "contradicts the formula, whose middle is after leaf " + std::to_string(folded / 2);
    break;
  }
  }
  return judged;
}

namespace detail {

struct JointWords {
  char const* words;
  Joint joint;
};
inline constexpr JointWords joint_words[]{
    {"conjugate", Joint::conjugate},
    {"disjunct", Joint::disjunct},
    {"chain lines run on", Joint::chain_lines_run_on},
    {"chain lines break", Joint::chain_lines_break},
    {"mark halves meet", Joint::mark_halves_meet},
    {"stub", Joint::stub},
    {"sewing", Joint::sewing},
};

class JointsReader {
  IdealCopy const& book_;
  std::string_view text_;
  Limits limits_;
  std::vector<JointSeen> seen_{};

  /// Returns the place of an item. Errors of it are at its first letter.
  [[nodiscard]] TextPlace place_of_item(std::string_view item) const {
    return place_in(text_, static_cast<std::size_t>(item.data() - text_.data()));
  }
  [[nodiscard]] Error at_item(Error const& error, std::string_view item) const {
    return error_at(error.problem, place_of_item(item), error.found_text(), error.limit);
  }
  [[nodiscard]] Error not_evidence(std::string_view item) const {
    return error_at(Problem::not_evidence, place_of_item(item), item);
  }
  /// Reads the second leaf from its number alone: A1.4, or χ1.2 and A3+1.2 of an insertion.
  [[nodiscard]] Expected<LeafOfBook> of_figure(LeafOfBook const& leaf, std::int64_t figure,
                                               std::string_view item) const {
    int most = 0;
    if (auto const same = leaf_of_figure(book_, leaf, figure, most)) return *same;
    return error_at(Problem::no_such_leaf, place_of_item(item), item, most);
  }
  [[nodiscard]] Expected<JointSeen> item(std::string_view item) const {
    TextCursor cursor{item};
    auto const leaves = take_until_beside_names(cursor, is_space);
    cursor.take_blanks();
    std::optional<Joint> what;
    for (auto const& one : joint_words)
      if (auto words = cursor; words.take(one.words) && (words.take_blanks(), words.at_end())) what = one.joint;
    if (!what) return not_evidence(item);
    bool const alone = *what == Joint::stub || *what == Joint::sewing;
    auto const point = alone ? std::string_view::npos : last_point(leaves);
    if (!alone && (point == std::string_view::npos || point + 1 == leaves.size())) return not_evidence(item);
    auto const first = find_reference(book_, leaves.substr(0, point));
    if (!first) return at_item(first.error(), item);
    if (alone) return JointSeen{first->leaf, first->leaf, *what};
    auto const rest = leaves.substr(point + 1);
    if (auto const number = whole_number(rest, 99999)) {
      auto const second = of_figure(first->leaf, *number, item);
      if (!second) return second.error();
      return JointSeen{first->leaf, *second, *what};
    }
    auto const second = find_reference(book_, rest);
    if (!second) return at_item(second.error(), item);
    return JointSeen{first->leaf, second->leaf, *what};
  }

public:
  JointsReader(IdealCopy const& book, std::string_view text, Limits const& limits)
      : book_{book}, text_{text}, limits_{limits} {}

  Expected<std::vector<JointSeen>> read() {
    if (is_too_long(text_, limits_)) return too_long(limits_);
    TextCursor cursor{text_};
    while (true) {
      while (cursor.take_blanks() || cursor.take(';') || cursor.take(',')) continue;
      if (cursor.at_end()) break;
      auto const piece = cursor.take_until([](char32_t c) { return c == ';' || c == ',' || c == '\n'; });
      auto const seen = item(piece);
      if (!seen) return seen.error();
      if (seen_.size() == limits_.changes)
        return error_at(Problem::too_many_changes, place_of_item(piece), piece, limits_.changes);
      seen_.push_back(*seen);
    }
    return static_cast<std::vector<JointSeen>&&>(seen_);
  }
};

} // namespace detail

/// Reads evidence that is separated by semicolons, commas or line ends: "A1.4 conjugate; B2 stub; A2 sewing; B1.4 chain
/// lines run on; C1.4 chain lines break; A2.3 mark halves meet; C1.4 disjunct". Two leaves have a point between them.
/// The second is its number alone if it is in the same gathering or insertion: A1.4, χ1.2, A3+1.2. Errors, with the
/// column: not_evidence, and those of read_reference;
/// the limits of core/limits.hpp.
[[nodiscard]] inline Expected<std::vector<JointSeen>> read_joints(IdealCopy const& book, std::string_view text,
                                                                  Limits const& limits = {}) {
  return read_utf8(text, [&](std::string_view given) { return detail::JointsReader{book, given, limits}.read(); });
}

} // namespace v0
} // namespace bifolium
