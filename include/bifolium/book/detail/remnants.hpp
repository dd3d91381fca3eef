// SPDX-License-Identifier: MIT
/// What is left of a formula after whole sheets.
#pragma once

#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/leaf/write_signature.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class Remnants {
  Formula const& formula_;
  SheetsOfBook& book_;
  std::uint32_t likes_{};

  [[nodiscard]] std::string name(GatheringAt at) const { return std::string{to_text(formula_.signature(at)).view()}; }
  [[nodiscard]] std::string leaf_name(GatheringAt at, int leaf) const {
    auto const numbered = formula_.runs()[at.run].first.mark() == Mark::number;
    return name(at) + (numbered ? "/" : "") + (leaf == 0 ? "" : std::to_string(leaf));
  }
  void add(std::string name, int leaves, Remnant::Kind kind, std::uint32_t likes) {
    Remnant unit;
    unit.name = static_cast<std::string&&>(name);
    unit.leaves = leaves, unit.kind = kind, unit.likes = likes;
    book_.units.push_back(static_cast<Remnant&&>(unit));
  }
  void part_sheets() {
    auto const& runs = formula_.runs();
    for (std::uint32_t r = 0; r < runs.size(); ++r) {
      for (std::int64_t i = 0; i < runs[r].gatherings; ++i) {
        auto const leaves = runs[r].leaves.at(i);
        book_.whole += leaves / book_.leaves_to_sheet;
        auto const left = leaves % book_.leaves_to_sheet;
        if (left == 0 && runs[r].leaves.size() == 1) { // and so are all others of the run
          book_.whole += (runs[r].gatherings - 1) * (leaves / book_.leaves_to_sheet);
          break;
        }
        if (left > 0 && book_.units.size() <= most_kept) add(name({r, i}), left, Remnant::Kind::part_sheet, likes_);
      }
      ++likes_;
    }
  }
  /// Leaves deleted side by side make one place.
  void deleted(Deletion const& deletion, Deletion const* before) {
    auto const leaves = deletion.leaves(formula_.leaves_folded(deletion.gathering));
    bool const goes_on = before != nullptr && !book_.places.empty() && before->gathering == deletion.gathering &&
                         before->last + 1 == deletion.leaf;
    if (goes_on)
      book_.places.back().leaves += leaves;
    else
      book_.places.push_back({leaf_name(deletion.gathering, deletion.leaf), leaves});
  }
  void changes() {
    auto const cancels = likes_++, inserted = likes_++;
    Deletion const* before = nullptr;
    bool second_of_fold = false;
    for (auto const& change : formula_.changes()) {
      auto const* deletion = change.deletion();
      if (deletion != nullptr) deleted(*deletion, before);
      before = deletion;
      if (auto const* cancel = change.cancel()) {
        if (cancel->of_fold && second_of_fold) { // the fold is a unit already
          second_of_fold = false;
          continue;
        }
        second_of_fold = cancel->of_fold && cancel->leaf != 0;
        auto const all = cancel->of_fold ? (cancel->leaf == 0 ? formula_.leaves_folded(cancel->gathering) : 2) : 1;
        for (auto leaf = cancel->leaf; leaf <= cancel->last; ++leaf)
          add("±" + leaf_name(cancel->gathering, leaf), all, Remnant::Kind::cancellans, cancels);
      }
      if (auto const* insertion = change.insertion()) {
        auto name =
            '+' + (insertion->named ? std::string{to_text(insertion->name).view()} +
                                          (insertion->first_figure > 0 ? std::to_string(insertion->first_figure) : "")
                                    : leaf_name(insertion->gathering, insertion->after) + "+1");
        if (insertion->joined == Joined::apart)
          for (int i = 0; i < insertion->leaves; ++i)
            add(i == 0 ? name : name + '.' + std::to_string(i + 1), 1, Remnant::Kind::inserted, inserted);
        else
          add(static_cast<std::string&&>(name), insertion->leaves, Remnant::Kind::inserted, inserted);
      }
    }
  }

public:
  /// More units than can be counted; no more are kept.
  static constexpr std::size_t most_kept = 64;
  Remnants(Formula const& formula, SheetsOfBook& book) : formula_{formula}, book_{book} {}
  void find() {
    part_sheets();
    changes();
    for (auto& unit : book_.units) { // a fold or gathering of more than a sheet takes whole sheets first
      book_.whole += unit.leaves / book_.leaves_to_sheet;
      unit.leaves %= book_.leaves_to_sheet;
    }
    std::size_t kept = 0;
    for (auto& unit : book_.units)
      if (unit.leaves > 0) {
        if (&book_.units[kept] != &unit) book_.units[kept] = unit;
        ++kept;
      }
    book_.units.resize(kept);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
