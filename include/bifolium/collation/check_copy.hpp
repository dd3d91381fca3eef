// SPDX-License-Identifier: MIT
/// A copy against the formula. The formula tells of the ideal copy; what stands in the hand may want leaves, have them
/// twice or in another order. Both are kept apart: nothing seen in one copy changes the formula. A missing leaf whose
/// conjugate is missing too is a lost bifolium, easily lost without a trace; one whose conjugate is there has left a
/// stub. Evidence of conjugacy is weighed leaf by leaf: it agrees with the formula, or speaks against it.
#pragma once

#include <bifolium/collation/reference.hpp>

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
  LeafOfBook first{}, second{};
  Joint what{};
};
/// How a piece of evidence stands to the formula.
struct JointJudged {
  JointSeen seen{};
  bool agrees{};
  std::string words{}; ///< "A1.4 conjugate: agrees"
};
/// A leaf the copy wants.
struct MissingLeaf {
  LeafOfBook leaf{};
  std::optional<LeafOfBook> conjugate{};
  bool conjugate_missing{}; ///< both halves gone: a lost bifolium
};
/// What a copy shows against the formula.
struct CopyChecked {
  std::vector<MissingLeaf> missing{};
  std::vector<LeafOfBook> repeated{};
  std::vector<LeafOfBook> not_in_ideal{}; ///< leaves the ideal copy lacks: a cancelled or deleted leaf left in
  std::vector<LeafOfBook> misplaced{};    ///< leaves bound before one they should follow
  std::vector<JointJudged> joints{};
  std::int64_t leaves_ideal{}, leaves_present{};
  bool backwards{}; ///< every reference falls: is the book read from right to left and collated from the back?
  [[nodiscard]] bool complete() const noexcept { return missing.empty(); }
};

namespace detail {

inline std::string leaf_words(Formula const& formula, LeafOfBook const& leaf) {
  return write_reference(formula, {leaf, LeafSide::not_said});
}
inline JointJudged judge(Formula const& formula, JointSeen const& seen) {
  auto const mate = conjugate(formula, seen.first);
  bool const together = mate && *mate == seen.second;
  JointJudged judged{seen, false, leaf_words(formula, seen.first)};
  auto& words = judged.words;
  auto const pair = [&](char const* what, bool agrees) {
    words += "." + std::to_string(seen.second.leaf) + " " + what + (agrees ? ": agrees" : ": contradicts the formula");
    judged.agrees = agrees;
  };
  switch (seen.what) {
  case Joint::conjugate:
    pair("conjugate", together);
    break;
  case Joint::disjunct:
    pair("disjunct", !together);
    break;
  case Joint::chain_lines_run_on:
    pair("chain lines run on", together);
    break;
  case Joint::chain_lines_break:
    pair("chain lines do not meet", !together);
    break;
  case Joint::mark_halves_meet:
    pair("halves of one mark", together);
    break;
  case Joint::stub:
    judged.agrees = !mate;
    words += mate ? " on a stub: a cancel?" : " on a stub: agrees";
    break;
  case Joint::sewing: {
    auto const folded = formula.leaves_folded(seen.first.gathering);
    judged.agrees = 2 * seen.first.leaf == folded;
    words += " followed by the sewing: ";
    words += judged.agrees ? "agrees" : "the middle should be behind leaf " + std::to_string(folded / 2);
    break;
  }
  }
  return judged;
}

} // namespace detail

/// Checks the leaves present, in the order of the copy, and what was seen of their joints.
/// pre: the leaves are of gatherings of the formula (read_reference finds them).
[[nodiscard]] inline CopyChecked check_copy(Formula const& formula, std::vector<LeafOfBook> const& present,
                                            std::vector<JointSeen> const& seen = {}) {
  CopyChecked result;
  result.leaves_ideal = leaf_count(formula);
  result.leaves_present = static_cast<std::int64_t>(present.size());
  // by number in the book: present or not
  std::vector<bool> there(static_cast<std::size_t>(result.leaves_ideal) + 1);
  std::int64_t highest = 0, last = 0;
  std::size_t falls = 0;
  for (auto const& leaf : present) {
    auto const number = leaf_number(formula, leaf);
    if (!number) {
      result.not_in_ideal.push_back(leaf);
      continue;
    }
    if (there[static_cast<std::size_t>(*number)])
      result.repeated.push_back(leaf);
    else if (*number < highest)
      result.misplaced.push_back(leaf);
    there[static_cast<std::size_t>(*number)] = true;
    falls += last != 0 && *number < last ? 1U : 0U;
    highest = *number > highest ? *number : highest;
    last = *number;
  }
  result.backwards = present.size() > 2 && falls + 1 == present.size();
  for (std::int64_t n = 1; n <= result.leaves_ideal; ++n) {
    if (there[static_cast<std::size_t>(n)]) continue;
    MissingLeaf missing{*leaf_of_number(formula, n), {}, false};
    missing.conjugate = conjugate(formula, missing.leaf);
    if (missing.conjugate) {
      auto const other = leaf_number(formula, *missing.conjugate);
      missing.conjugate_missing = other && !there[static_cast<std::size_t>(*other)];
    }
    result.missing.push_back(missing);
  }
  for (auto const& one : seen) result.joints.push_back(detail::judge(formula, one));
  return result;
}

/// What the copy wants, as the trade says it: "wants B3.6, C8"; empty for a complete copy. A lost bifolium has a full
/// point between its leaves.
[[nodiscard]] inline std::string wants(Formula const& formula, CopyChecked const& copy) {
  std::string text;
  for (auto const& missing : copy.missing) {
    if (missing.conjugate_missing && *missing.conjugate < missing.leaf) continue; // said with its other half
    text += text.empty() ? "wants " : ", ";
    text += detail::leaf_words(formula, missing.leaf);
    if (missing.conjugate_missing) text += "." + std::to_string(missing.conjugate->leaf);
  }
  return text;
}

/// Reads the leaves present: references and runs of them, parted by blanks, commas or semicolons: "A1-8, B1 B2 C-D".
/// A gathering alone means all its leaves. error: as read_reference, with the column.
[[nodiscard]] inline Expected<std::vector<LeafOfBook>> read_leaves_present(Formula const& formula,
                                                                           std::string_view text) {
  std::vector<LeafOfBook> present;
  std::size_t at = 0;
  auto const parts = [](char c) { return c == ' ' || c == ',' || c == ';' || c == '\t' || c == '\n' || c == '\r'; };
  // one end of a run: a leaf, or a gathering (leaf 0)
  auto const end_of_run = [&](std::string_view word, std::size_t column) -> Expected<LeafOfBook> {
    if (auto const leaf = read_reference(formula, word)) return leaf->leaf;
    auto const mark = detail::SignatureScanner{word, formula.letters()}.scan(0);
    if (mark && mark.end == word.size()) {
      if (auto const gathering = find_gathering(formula, mark.signature)) return LeafOfBook{*gathering, 0, 0};
    }
    auto error = read_reference(formula, word).error();
    error.column = column_of(text, column);
    return error;
  };
  while (at < text.size()) {
    if (parts(text[at])) {
      ++at;
      continue;
    }
    auto const from = at;
    while (at < text.size() && !parts(text[at])) ++at;
    auto const word = text.substr(from, at - from);
    std::size_t dash = word.size(), behind = word.size();
    for (std::size_t i = 0; i < word.size(); i += decode(word, i).bytes)
      if (i > 0 && is_dash(decode(word, i).value) && dash == word.size()) dash = i, behind = i + decode(word, i).bytes;
    auto const first = end_of_run(word.substr(0, dash), from);
    if (!first) return first.error();
    auto last = *first;
    if (dash < word.size()) {
      auto const rest = word.substr(behind);
      int figure = 0;
      bool only_figures = !rest.empty();
      for (char c : rest) {
        only_figures = only_figures && detail::is_digit(c);
        if (only_figures && figure < 10000) figure = figure * 10 + (c - '0');
      }
      if (only_figures && first->leaf != 0) { // A1-8
        if (figure < 1 || figure > formula.leaves_folded(first->gathering))
          return error_at(Problem::no_such_leaf, 1, column_of(text, from), word.data(), word.size(),
                          formula.leaves_folded(first->gathering));
        last.leaf = figure;
      } else {
        auto const end = end_of_run(rest, from + behind);
        if (!end) return end.error();
        last = *end;
      }
    }
    bool const wholes = last.leaf == 0;
    auto const start = first->leaf == 0 ? leaves_before(formula, first->gathering) + 1 : leaf_number(formula, *first);
    auto const end = wholes ? leaves_before(formula, last.gathering) + formula.leaves_folded(last.gathering) +
                                  leaves_gained(formula, last.gathering)
                            : leaf_number(formula, last);
    if (!start || !end) { // a leaf that the ideal copy lacks
      present.push_back(*first);
      continue;
    }
    if (*end < *start) return error_at(Problem::run_goes_backwards, 1, column_of(text, from), word.data(), word.size());
    for (auto n = *start; n <= *end; ++n) present.push_back(*leaf_of_number(formula, n));
  }
  return present;
}

} // namespace v0
} // namespace bifolium
