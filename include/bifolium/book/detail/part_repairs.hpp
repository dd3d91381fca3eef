// SPDX-License-Identifier: MIT
/// Repairs of a book in several parts. Each part is fitted by itself; a repair of the whole takes one repair of every part
/// that needs one. If the number of leaves of the whole book is stated, the parts together must have it, or it has a slip too.
#pragma once

#include <bifolium/book/detail/count_findings.hpp>
#include <bifolium/book/detail/leaves_slips.hpp>
#include <bifolium/book/detail/slip_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PartRepairs {
  static constexpr std::size_t most_combined = 40, most_repairs = 10;
  static constexpr double least_share = .0005, least_of_all = 1e-5; // as for a book in one part
  struct Combined {
    Repair repair{};
    double score{}; ///< its probability, before it is compared with the others
  };
  Description const& book_;
  AuditWeights const& weights_;
  std::vector<Combined> all_{};
  double none_{}; ///< probability that the repairs of some part are all wrong

  /// Returns the repair with a slip in the stated number of leaves if the parts together do not have this number. Returns
  /// no value if no slip explains it.
  [[nodiscard]] std::optional<Combined> with_stated_leaves(Combined one) const {
    if (!book_.leaves) return one;
    auto const& stated = *book_.leaves;
    one.repair.leaves_text = stated.text;
    if (stated.value == one.repair.leaves) return one;
    std::vector<LeavesVariant> slips;
    LeavesSlips{stated.value, book_.plates ? book_.plates->value : 0, weights_, slips}.find(one.repair.leaves);
    auto const figure = std::to_string(stated.value);
    auto const at = stated.text.find(figure);
    if (slips.empty() || slips[0].count != 1 || at == stated.text.npos) return std::nullopt;
    TextEdit const edit{{at, at + figure.size()}, std::to_string(one.repair.leaves)};
    one.repair.leaves_text = edited(stated.text, {edit});
    one.repair.edits.push_back(edit_of(Field::leaves, slips[0].kind, stated.text, stated.at, edit));
    one.repair.says += (one.repair.says.empty() ? "" : "; and ") + in_words(one.repair.edits.back());
    one.score *= real::exp(slips[0].score);
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

  /// Combines the repairs of a part with those of the parts before it. Their edits have the places of the whole text.
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
  /// Writes the repairs of the whole, the most likely first.
  void write(Audit& audit) {
    std::vector<Combined> kept;
    double total = none_ > weights_.none_of_these ? none_ : weights_.none_of_these;
    for (auto const& one : all_)
      if (auto whole = with_stated_leaves(one)) total += whole->score, offer(kept, most_combined, *whole);
    audit.share_none = 1;
    for (auto& [repair, score] : kept) {
      repair.share = score / total;
      if (audit.repairs.size() == most_repairs ||
          repair.share < (audit.repairs.size() < 3 ? least_of_all : least_share))
        break;
      if (repair.edits.empty() && !repair.letters) continue;
      repair.formula = edited(book_.formula->text, Field::formula, repair.edits);
      repair.pagination = edited(book_.pagination->text, Field::pagination, repair.edits);
      audit.share_none -= repair.share;
      audit.repairs.push_back(static_cast<Repair&&>(repair));
    }
    if (audit.share_none < 0) audit.share_none = 0;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
