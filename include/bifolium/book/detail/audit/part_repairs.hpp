// SPDX-License-Identifier: MIT
/// Repairs of a book in several parts. Each part is fitted by itself; a repair of the whole takes one repair of every
/// part that needs one. If the number of leaves of the whole book is stated, the parts together must have it, or it has
/// a slip too.
#pragma once

#include <bifolium/book/detail/slips/leaves_edit.hpp>
#include <bifolium/book/detail/slips/repair_list.hpp>
#include <bifolium/book/detail/slips/slip_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PartRepairs {
  static constexpr std::size_t most_combined = 40;
  struct Combined {
    Repair repair{};
    double score{}; ///< its probability, before it is compared with the others
  };
  Description const& book_;
  AuditWeights const& weights_;
  std::vector<Combined> all_{};
  double none_{}; ///< probability that the repairs of some part are all wrong

  /// Returns the repair with a slip in the stated number of leaves if the parts together do not have this number.
  /// Returns no value if no slip explains it.
  [[nodiscard]] std::optional<Combined> with_stated_leaves(Combined one) const {
    if (!book_.leaves) return one;
    std::vector<LeavesVariant> ways;
    LeavesSlips{book_.leaves->value, book_.plates ? book_.plates->value : 0, weights_, ways}.find(one.repair.leaves);
    if (ways.empty() || ways[0].count > 1 || !write_leaves_edit(*book_.leaves, ways[0], one.repair))
      return std::nullopt;
    if (ways[0].count == 1)
      one.repair.says += (one.repair.says.empty() ? "" : "; and ") +
                         in_words(one.repair.edits.back(), book_.leaves->text, book_.leaves->from);
    one.score *= real::exp(ways[0].score);
    return one;
  }

public:
  /// `leaves`: the leaves of all parts as they are.
  PartRepairs(Description const& book, AuditWeights const& weights, std::int64_t leaves)
      : book_{book}, weights_{weights} {
    all_.push_back({});
    all_[0].repair.leaves = leaves;
    all_[0].score = 1;
  }

  /// Combines the repairs of a part with those of the parts before it.
  void add(std::vector<Repair> const& of_part, std::int64_t leaves_of_part, double share_none) {
    std::vector<Combined> combined;
    for (auto const& before : all_)
      for (auto const& one : of_part) {
        auto both = before;
        both.score *= one.share;
        both.repair.leaves += one.leaves - leaves_of_part;
        both.repair.says += (both.repair.says.empty() ? "" : "; ") + one.says;
        both.repair.edits.insert(both.repair.edits.end(), one.edits.begin(), one.edits.end());
        if (one.letters) { // one book has one alphabet
          if (both.repair.letters && *both.repair.letters != *one.letters) continue;
          both.repair.letters = one.letters;
        }
        offer(combined, most_combined, static_cast<Combined&&>(both));
      }
    all_ = static_cast<std::vector<Combined>&&>(combined);
    none_ = 1 - (1 - none_) * (1 - share_none);
  }
  /// Writes the repairs of the whole, the most likely first. `holds(repair)`: after it the parts agree, which a gathering
  /// before the first of a part need not let them, since it may belong to the part before.
  template <class Holds> void write(Audit& audit, Holds holds) {
    std::vector<Combined> kept;
    double total = none_ > weights_.none_of_these ? none_ : weights_.none_of_these;
    for (auto const& one : all_)
      if (auto whole = with_stated_leaves(one)) total += whole->score, offer(kept, most_combined, *whole);
    RepairList list{audit, weights_};
    for (auto& [repair, score] : kept) {
      if (!list.takes(score / total)) break;
      if (repair.edits.empty() && !repair.letters) continue;
      repair.formula = edited(*book_.formula, Field::formula, repair.edits);
      repair.pagination = edited(*book_.pagination, Field::pagination, repair.edits, Field::pagination);
      if (holds(repair)) list.add(static_cast<Repair&&>(repair), score / total);
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
