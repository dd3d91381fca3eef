// SPDX-License-Identifier: MIT
/// Evidence of how leaves hang together, against the formula. A leaf is joined to its conjugate across the gutter; that
/// can be seen (one bent piece, a chain line that runs on across the fold, two halves of one watermark), or it can be seen
/// that it is not so (a stub, chain lines that do not meet). The sewing lies in the middle of a gathering and so gives its
/// leaves. Each piece of evidence agrees with the formula or contradicts it; none changes it.
#pragma once

#include <bifolium/collation/reference.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// What was seen of how two leaves hang together, or of one leaf by itself.
enum class Joint : std::uint8_t {
  conjugate,          ///< seen to be one bent piece
  disjunct,           ///< seen not to be
  chain_lines_run_on, ///< across the fold, without a break
  chain_lines_break,  ///< they do not meet
  mark_halves_meet,   ///< two halves of one watermark
  stub,               ///< the first leaf hangs on a stub
  sewing              ///< the thread is seen behind the first leaf: the middle of the gathering
};
/// One piece of evidence. `second` is not looked at for a stub or sewing.
struct JointSeen {
  LeafOfBook first{};  ///< the leaf that was looked at
  LeafOfBook second{}; ///< the leaf it was compared with
  Joint what{};        ///< what was seen of the two
  friend constexpr bool operator==(JointSeen const&, JointSeen const&) = default;
};
/// How a piece of evidence stands to the formula.
struct JointJudged {
  JointSeen seen{};    ///< the evidence as given
  bool agrees{};       ///< the formula has the two joined, or apart, as they were seen to be
  std::string words{}; ///< "A1.4 conjugate: agrees"
  friend bool operator==(JointJudged const&, JointJudged const&) = default;
};

namespace detail {

inline std::string leaf_words(Formula const& formula, LeafOfBook const& leaf) {
  return write_reference(formula, {leaf, LeafSide::not_said});
}

} // namespace detail

/// Weighs one piece of evidence. pre: the leaves are of gatherings of the formula.
[[nodiscard]] inline JointJudged judge(Formula const& formula, JointSeen const& seen) {
  auto const mate = conjugate(formula, seen.first);
  bool const together = mate && *mate == seen.second;
  JointJudged judged{seen, false, detail::leaf_words(formula, seen.first)};
  auto& words = judged.words;
  auto const pair = [&](char const* what, bool agrees, char const* then) {
    bool const figure = seen.second.gathering == seen.first.gathering && seen.second.inserted == 0;
    words += '.';
    words += figure ? std::to_string(seen.second.leaf) : detail::leaf_words(formula, seen.second);
    (words += ' ') += what;
    words += agrees ? ": agrees" : ": contradicts the formula";
    if (!agrees) words += then;
    judged.agrees = agrees;
  };
  auto const others = [&] {
    return mate ? ", by which " + detail::leaf_words(formula, *mate) + " is conjugate with it"
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
    auto const folded = formula.leaves_folded(seen.first.gathering);
    judged.agrees = 2 * seen.first.leaf == folded && seen.first.inserted == 0;
    words += " followed by the sewing: ";
    words +=
        judged.agrees ? "agrees" : "contradicts the formula, whose middle is behind leaf " + std::to_string(folded / 2);
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

} // namespace detail

/// Reads evidence, parted by semicolons, commas or line ends: "A1.4 conjugate; B2 stub; A2 sewing; B1.4 chain lines run on;
/// C1.4 chain lines break; A2.3 mark halves meet; C1.4 disjunct". The leaves are written with a point between them, the
/// second by its figure alone where it is of the same gathering.
/// error: not_evidence, or as read_reference, with the column.
[[nodiscard]] inline Expected<std::vector<JointSeen>> read_joints(Formula const& formula, std::string_view text) {
  constexpr char const* blank = " \t\r";
  std::vector<JointSeen> seen;
  for (std::size_t from = 0; from < text.size();) {
    auto to = text.find_first_of(";,\n", from);
    if (to == std::string_view::npos) to = text.size();
    auto const start = text.find_first_not_of(blank, from);
    auto const item = start < to ? text.substr(start, to - start) : std::string_view{};
    from = to + 1;
    if (item.empty()) continue;
    auto const fail = [&](Error error) {
      error.column = column_of(text, start);
      return error;
    };
    auto const wrong = fail(error_at(Problem::not_evidence, 1, 1, item.data(), item.size()));
    auto const end = item.find(' ') == std::string_view::npos ? item.size() : item.find(' ');
    auto const leaves = item.substr(0, end);
    auto words = item.substr(end);
    while (!words.empty() && (words.front() == ' ' || words.front() == '\t')) words.remove_prefix(1);
    while (!words.empty() && (words.back() == ' ' || words.back() == '\t' || words.back() == '\r'))
      words.remove_suffix(1);
    std::optional<Joint> what;
    for (auto const& one : detail::joint_words)
      if (words == one.words) what = one.joint;
    if (!what) return wrong;
    bool const alone = *what == Joint::stub || *what == Joint::sewing;
    auto const point = alone ? std::string_view::npos : leaves.rfind('.');
    if (!alone && (point == std::string_view::npos || point + 1 == leaves.size())) return wrong;
    auto const first = detail::find_reference(formula, leaves.substr(0, point));
    if (!first) return fail(first.error());
    auto second = first->leaf;
    if (!alone) {
      auto const rest = leaves.substr(point + 1);
      std::int64_t figure = 0;
      for (char c : rest) figure = figure < 0 || !detail::is_digit(c) || figure > 9999 ? -1 : figure * 10 + (c - '0');
      if (figure >= 0) {
        second.leaf = static_cast<int>(figure);
        second.inserted = 0;
        auto const folded = formula.leaves_folded(second.gathering);
        if (figure < 1 || figure > folded)
          return fail(error_at(Problem::no_such_leaf, 1, 1, leaves.data(), leaves.size(), folded));
      } else {
        auto const other = detail::find_reference(formula, rest);
        if (!other) return fail(other.error());
        second = other->leaf;
      }
    }
    seen.push_back({first->leaf, second, *what});
  }
  return seen;
}

} // namespace v0
} // namespace bifolium
