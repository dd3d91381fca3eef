// SPDX-License-Identifier: MIT
/// Examines the number of leaves, which formula, pagination and stated leaves all give: whether they agree, and if not,
/// which edits would make them agree. A description that agrees never gets a repair, and takes almost no time.
#pragma once

#include <bifolium/book/detail/slips/repair_list.hpp>
#include <bifolium/book/detail/slips/repair_writer.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Says that not all repairs were searched for.
inline void not_searched(Audit& audit, std::string says) {
  audit.findings.push_back({FindingId::not_searched,
                            Severity::note,
                            FieldSet{Field::formula} | Field::pagination,
                            {},
                            static_cast<std::string&&>(says),
                            {},
                            {}});
}

class CountAudit {
  static constexpr std::size_t most_runs = 64, most_page_runs = 32; // the time of a search grows with the square of it
  Description const& book_;
  AuditWeights const& weights_;
  Audit& audit_;
  CountFacts facts_;
  std::optional<FormulaPlaces> formula_places_{};
  std::optional<PagePlaces> page_places_{};
  SearchInput input_{};

  /// Adds other alphabets: as printed, which is another reading; or as the book may use them, which is a repair.
  void other_alphabets() {
    if (book_.conventions.letters) return;
    auto const printed = facts_.letters_printed();
    if (printed != Letters{}) {
      auto const other = facts_.read_with(printed);
      if (other && other->leaves() != book_.formula->value.leaves()) add_reading(*other, real::log(.5), false);
      return;
    }
    struct Use {
      Letters letters;
      double share;
    };
    constexpr Use uses[]{{{true, true, true}, .3},   {{false, false, true}, .2}, {{true, true, false}, .2},
                         {{false, true, false}, .1}, {{true, false, false}, .1}, {{false, true, true}, .1}};
    auto const kind = weights_.in_formula[static_cast<std::size_t>(SlipKind::alphabet)] * weights_.field_wrong;
    for (auto const& use : uses)
      if (auto const other = facts_.read_with(use.letters); other && other->leaves() != book_.formula->value.leaves())
        add_reading(*other, real::log(use.share * kind), true);
  }
  void add_reading(Formula const& formula, double weight, bool is_edit) {
    input_.formulas.push_back(shape_of(formula));
    for (auto const& change : facts_.unread_changes()) input_.formulas.back().changed += change.added;
    for (std::size_t r = 0; r < input_.formulas.back().runs.size(); ++r)
      input_.formulas.back().runs[r].omitted = formula_places_->omitted(r);
    input_.formula_weights.push_back(weight);
    input_.formula_is_edit.push_back(is_edit);
  }
  void prepare() {
    if (book_.formula) {
      auto const& formula = book_.formula->value;
      formula_places_.emplace(facts_.formula_text(), formula, book_.conventions.dialect());
      add_reading(formula, 0, false);
      other_alphabets();
      for (auto const& change : facts_.unread_changes()) formula_places_->add(change);
      for (auto const& change : formula_places_->changes()) input_.changes.push_back(change.added);
    }
    if (facts_.pages()) {
      page_places_.emplace(book_.pagination->text, book_.pagination->value);
      input_.pages = page_places_->shape();
    }
    if (book_.leaves) input_.leaves = book_.leaves->value;
    if (book_.plates) input_.plates = book_.plates->value;
    input_.blanks_noted = facts_.blanks();
    input_.early = book_.year ? book_.year->value.to <= last_incunable_year : !facts_.pages();
  }

  /// Moves the description that agrees to the first place, even if something in it is unlikely.
  void move_first(std::size_t from) {
    for (auto i = from; i > 0; --i) {
      auto moved = static_cast<Repair&&>(audit_.repairs[i]);
      audit_.repairs[i] = static_cast<Repair&&>(audit_.repairs[i - 1]);
      audit_.repairs[i - 1] = static_cast<Repair&&>(moved);
    }
  }
  /// Makes the proposals. `agrees`: the description agrees as it is.
  void propose(bool agrees) {
    Search search{input_, weights_};
    auto const& found = search.find();
    if (!search.left_out().empty()) not_searched(audit_, search.left_out());
    if (formula_places_ && !formula_places_->has_all_changes())
      not_searched(audit_, "not every change in parentheses was searched: the formula has too many parentheses");
    RepairList list{audit_, weights_};
    if (found.empty()) return;
    auto const best = found.front().score;
    double total = real::exp(search.score_of_none() - best);
    for (auto const& one : found) total += real::exp(one.score - best);
    RepairWriter const writer{facts_, formula_places_, page_places_, input_};
    for (auto const& one : found) {
      auto const share = real::exp(one.score - best) / total;
      if (!list.takes(share)) break;
      auto repair = writer.repair(search, one);
      if (!repair) continue;
      bool const as_it_reads = repair->edits.empty();
      list.add(static_cast<Repair&&>(*repair), share);
      if (agrees && as_it_reads) move_first(audit_.repairs.size() - 1);
    }
  }
  /// Compares the fields. Letters printed in the formula may be separate letters; if this makes all fields agree, the
  /// formula is read in this way.
  CountVerdict verdict() {
    auto const as_read = facts_.verdict(facts_.formula_leaves());
    if (as_read == CountVerdict::agrees || !facts_.formula_leaves() || book_.conventions.letters) return as_read;
    auto const printed = facts_.letters_printed();
    if (printed == Letters{}) return as_read;
    auto const other = facts_.read_with(printed);
    if (!other || facts_.verdict(other->leaves()) != CountVerdict::agrees) return as_read;
    facts_.take(other->leaves());
    return CountVerdict::agrees;
  }
  [[nodiscard]] bool too_long() {
    if (!(book_.formula && book_.formula->value.runs().size() > most_runs) &&
        !(facts_.pages() && book_.pagination->value.runs.size() > most_page_runs))
      return false;
    audit_.share_none = 1;
    not_searched(audit_, "no repairs are searched for with more than " + std::to_string(most_runs) +
                             " runs of gatherings or " + std::to_string(most_page_runs) + " runs of pages");
    return true;
  }

public:
  CountAudit(Description const& book, AuditWeights const& weights, Limits const& limits, Audit& audit)
      : book_{book}, weights_{weights}, audit_{audit}, facts_{book, limits} {}

  /// `search`: repairs are searched for, if the fields do not agree.
  void run(bool search = true) {
    auto const result = verdict();
    CountFindings findings{facts_, audit_};
    findings.imply();
    findings.find();
    bool const on_verso = findings.look_at_versos();
    if (result == CountVerdict::agrees) audit_.leaves = facts_.leaves();
    findings.omitted_counts();
    if (result == CountVerdict::blank_missing && book_.conventions.pages == PagesWithoutNumbers::left_out) return;
    if ((result == CountVerdict::agrees && !on_verso) || facts_.fields() < 2 || !search || too_long()) return;
    prepare();
    propose(result == CountVerdict::agrees);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
