// SPDX-License-Identifier: MIT
/// Explains how a formula gives its number of leaves, in plain English and numbers: run by run, then change by change.
/// The sum is made of the same parts that the lines name, so a reader can add them up.
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
  return text.append(": ").append(number_of(run.leaf_total(), "leaf", "leaves"));
}

/// The number of leaves that a change adds, and the words for it. Both are empty for an identity and a note.
struct ChangeSaid {
  std::int64_t gained{};
  std::string words{};
};
inline std::string gathering_words(IdealCopy const& book, GatheringAt gathering) {
  return std::string{"gathering "}.append(to_text(book.signature(gathering)).view());
}
/// The place of a deletion or a cancel as the subject of a sentence, with its verb.
template <class Change>
std::string subject_words(IdealCopy const& book, Change const& one, char const* of_one, char const* of_several) {
  if (one.leaves.are_every()) return capitalised(gathering_words(book, one.gathering)).append(of_one);
  auto const folded = book.leaves_folded(one.gathering), last = one.leaves.last(folded);
  auto const first = leaf_words(book, {one.gathering, one.leaves.first()});
  return last > one.leaves.first() ? first + " to " + std::to_string(last) + of_several : first + of_one;
}
inline ChangeSaid words_of(IdealCopy const& book, Deletion const& one) {
  auto const taken = one.leaves.count(book.leaves_folded(one.gathering));
  return {-taken,
          subject_words(book, one, " is", " are") + " not in the ideal copy: " + std::to_string(taken) + " fewer"};
}
inline ChangeSaid words_of(IdealCopy const& book, Cancel const& one) {
  return {0, subject_words(book, one, " is a cancel", " are cancels") +
                 ", printed anew in the place of the old: the number of leaves stays"};
}
inline ChangeSaid words_of(IdealCopy const& book, Insertion const& one) {
  auto const name = one.name ? std::string{to_text(*one.name).view()} + " is inserted " : "Inserted ";
  auto const where = one.after > 0 ? "after " + leaf_words(book, {one.gathering, one.after})
                                   : "before the first leaf of " + gathering_words(book, one.gathering);
  auto const folded = one.leaves_folded();
  auto const lacking = folded == one.leaves ? ""
                                            : ", since it lacks " + std::to_string(folded - one.leaves) + " of " +
                                                  std::to_string(folded);
  return {one.leaves, name + where + ": " + std::to_string(one.leaves) + " more" + lacking};
}
inline ChangeSaid words_of(IdealCopy const&, Identity const&) { return {}; }
inline ChangeSaid words_of(IdealCopy const&, Note const&) { return {}; }

} // namespace detail

/// Explains the number of leaves of the ideal copy, one run or change a line, with the sum last. A part with a name begins with
/// its own sum; a change with a question mark is called doubtful. The function allocates memory.
[[nodiscard]] inline std::string explain_count(Formula const& formula) {
  IdealCopy const book{formula};
  std::string text;
  std::int64_t sum = 0;
  auto const parts = formula.parts();
  std::size_t part = 0;
  for (std::uint32_t r = 0; r < formula.runs().size(); ++r) {
    if (part < parts.size() && parts[part].first_run == r) {
      auto const& here = parts[part++];
      if (here.label)
        text.append(*here.label).append(", ").append(number_of(here.leaves, "leaf", "leaves")).append(" in all.\n");
    }
    auto const& run = formula.runs()[r];
    text.append(detail::run_words(run)).append(".\n");
    sum += run.leaf_total();
  }
  for (auto const& change : formula.changes()) {
    auto const said = change.visit([&](auto const& one) { return detail::words_of(book, one); });
    if (!said.words.empty()) text.append(said.words).append(change.doubtful() ? ", which is doubtful.\n" : ".\n");
    sum += said.gained;
  }
  text.append("Together ").append(number_of(sum, "leaf", "leaves")).append(", ");
  return text.append(std::to_string(2 * sum)).append(" pages.\n");
}

} // namespace v0
} // namespace bifolium
