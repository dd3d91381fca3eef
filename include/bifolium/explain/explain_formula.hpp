// SPDX-License-Identifier: MIT
/// How a formula comes to its number of leaves, in plain English and figures: run by run, then change by change. The sum
/// is made from the same parts that are said, so a reader can add them up with a pencil.
#pragma once

#include <bifolium/copy/check_copy.hpp>
#include <bifolium/explain/explain_scheme.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline std::string run_words(Run const& run) {
  std::string text{to_text(run.first).view()};
  if (run.gatherings > 1) text.append(" to ").append(to_text(run.last).view());
  text.append(", ").append(std::to_string(run.gatherings)).append(run.gatherings == 1 ? " gathering" : " gatherings");
  text.append(" of ");
  for (std::size_t i = 0; i < run.leaves.size(); ++i)
    text.append(i == 0 ? "" : " and ").append(std::to_string(run.leaves.term(i)));
  if (run.leaves.size() > 1) text += " by turns";
  return text.append(": ").append(counted(static_cast<int>(run.leaf_total()), "leaf", "leaves"));
}

/// What a change adds to the leaves, and the words for it; nothing for one that adds and takes nothing and is no cancel.
struct ChangeSaid {
  std::int64_t gained{};
  std::string words{};
};
inline ChangeSaid change_words(IdealCopy const& book, Change const& change) {
  auto const place = [&] {
    if (change.leaf > 0) return leaf_words(book, {change.gathering, change.leaf, 0});
    return std::string{"gathering "}.append(to_text(book.signature(change.gathering)).view());
  };
  auto const taken = change.leaf == 0 ? book.leaves_folded(change.gathering) : 1;
  switch (change.kind) {
  case Change::Kind::deletion:
    return {-taken, place() + " is not in the ideal copy: " + std::to_string(taken) + " fewer"};
  case Change::Kind::cancel:
    return {0, place() + " is a cancel, printed anew in the place of the old: nothing is added"};
  case Change::Kind::insertion: {
    auto const name = change.named ? std::string{to_text(change.name).view()} + " is inserted " : "Inserted ";
    auto const where = change.leaf > 0 ? "after " + place() : "before the first leaf of " + place();
    return {change.added, name + where + ": " + std::to_string(change.added) + " more"};
  }
  case Change::Kind::identity:
  case Change::Kind::note:
    break;
  }
  return {};
}

} // namespace detail

/// Why the ideal copy has so many leaves, one part a line, the sum last. Allocates.
[[nodiscard]] inline std::string explain_count(Formula const& formula) {
  IdealCopy const book{formula};
  std::string text;
  std::int64_t sum = 0;
  for (auto const& run : formula.runs()) {
    text.append(detail::run_words(run)).append(".\n");
    sum += run.leaf_total();
  }
  for (auto const& change : formula.changes()) {
    auto const said = detail::change_words(book, change);
    if (!said.words.empty()) text.append(said.words).append(".\n");
    sum += said.gained;
  }
  text.append("Together ").append(std::to_string(sum)).append(sum == 1 ? " leaf, " : " leaves, ");
  return text.append(std::to_string(2 * sum)).append(" pages.\n");
}

} // namespace v0
} // namespace bifolium
