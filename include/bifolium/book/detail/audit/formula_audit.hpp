// SPDX-License-Identifier: MIT
/// The formula by itself, and against the statements that describe its gatherings: pages, signing, "in fours". A formula can
/// agree with every number and still skip a letter or state a gathering twice, and such slips are seen in it alone.
#pragma once

#include <bifolium/book/detail/audit/field_findings.hpp>
#include <bifolium/book/detail/slips/formula_shape.hpp>
#include <bifolium/book/detail/slips/main_sequence.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/number_of.hpp>
#include <bifolium/leaf/write_signature.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Looks for unusual facts in the formula.
class FormulaAudit : FieldFindings {
  static std::string name_of(Formula const& formula, std::size_t run, std::int64_t index) {
    return std::string{to_text(formula.signature({static_cast<std::uint32_t>(run), index})).view()};
  }
  void order_of_letters() {
    auto const& formula = book_.formula->value;
    auto const& runs = formula.runs();
    auto const alphabet = formula.alphabet();
    for (std::size_t r = 0; r + 1 < runs.size(); ++r) {
      auto const &run = runs[r], &next = runs[r + 1];
      if (!run.first.is_letter() || !run.last.same_series_as(next.first) || next.begins_part) continue;
      auto const skipped = next.first.rank(alphabet) - run.last.rank(alphabet) - 1;
      if (skipped > 0 && skipped <= alphabet.size()) {
        auto const missing = std::string{to_text(run.last.at_rank(run.last.rank(alphabet) + 1, alphabet)).view()};
        add(FindingId::letters_skip, Severity::doubt, FieldSet{Field::formula},
            "after " + name_of(formula, r, run.gatherings - 1) + " the formula goes to " + name_of(formula, r + 1, 0) +
                ", without " + missing,
            "whether there is a gathering " + missing, skipped);
      }
      if (run.first == next.first && run.last == next.last && run.leaves == next.leaves)
        add(FindingId::gathering_twice, Severity::doubt, FieldSet{Field::formula},
            name_of(formula, r, 0) + " is stated twice in succession", "whether there are two such gatherings", 1);
    }
  }
  void odd_gatherings() {
    for (auto const& warning : book_.formula->value.warnings())
      if (warning.problem == Problem::odd_gathering) {
        add(FindingId::odd_gathering, Severity::note, FieldSet{Field::formula},
            sentence_of(warning) + column_words(warning), "whether a leaf was cut away or inserted");
        return;
      }
  }
  void numbers_inside() {
    if (!book_.pagination || book_.pagination->value.by_leaf() || book_.pagination->value.approximate) return;
    std::int64_t before = 0;
    for (auto const& run : book_.pagination->value.runs) {
      if (run.numbering == Numbering::printed && run.numerals == Numerals::arabic) {
        auto const shape = shape_of(book_.formula->value);
        if (run.first == 1 && before > 0 && has_preliminaries(shape) &&
            detail::numbers_begin(shape, before) == NumbersBegin::inside_a_gathering)
          add(FindingId::numbers_begin_inside, Severity::note, FieldSet{Field::formula} | Field::pagination,
              "page 1 comes after " + number_of(before, "page", "pages") +
                  ", inside a gathering; in most books the numbers begin with a gathering",
              "on which leaf page 1 is");
        return;
      }
      before += run.pages();
    }
  }
  void signing() {
    if (!book_.signing) return;
    auto const& rule = book_.signing->value;
    int most = rule.first.value_or(0);
    for (int leaf : rule.listed) most = leaf > most ? leaf : most;
    int thickest = 0;
    for (auto const& run : book_.formula->value.runs())
      for (std::size_t t = 0; t < run.leaves.size(); ++t)
        thickest = run.leaves.term(t) > thickest ? run.leaves.term(t) : thickest;
    if (most > thickest)
      add(FindingId::signing_beyond_gathering, Severity::error, FieldSet{Field::formula} | Field::signing,
          "leaf " + std::to_string(most) + " is described as signed, but no gathering of the formula has more than " +
              number_of(thickest, "leaf", "leaves"),
          "which leaves of a gathering are signed, and how many it has", most - thickest);
    IdealCopy const ideal{book_.formula->value};
    for (auto const& exception : rule.exceptions)
      if (names_no_leaf(ideal, exception.place)) return;
    for (auto const& wrong : rule.missigned)
      if (names_no_leaf(ideal, wrong.place)) return;
  }
  /// Tells that the ideal copy does not have the leaf or the gathering, if so: the formula may take a leaf away.
  bool names_no_leaf(IdealCopy const& ideal, SigningPlace const& place) {
    if (place.any || place.title) return false;
    auto const leaf = ideal.find(place.gathering, place.leaf.value_or(1));
    bool const whole = !place.leaf && (ideal.find(place.gathering) || ideal.inserts(place.gathering));
    if (whole || (leaf && (leaf->doubtful || ideal.leaf_number(leaf->leaf)))) return false;
    auto name = std::string{to_text(place.gathering).view()};
    if (place.leaf) name += (place.gathering.mark() == Mark::number ? "/" : "") + std::to_string(*place.leaf);
    add(FindingId::signing_of_no_leaf, Severity::doubt, FieldSet{Field::formula} | Field::signing,
        "the statement of signing names " + name + ", which the formula does not have", "the signatures of the book");
    return true;
  }
  /// Returns true if most gatherings of the formula have one of these numbers of leaves, and the next gathering the other.
  [[nodiscard]] bool alternate(int one, int other) const {
    std::int64_t pairs = 0, in_turn = 0;
    std::optional<int> last;
    auto const count = [&](int first, int second, std::int64_t times) {
      pairs += times;
      if ((first == one && second == other) || (first == other && second == one)) in_turn += times;
    };
    for (auto const& run : book_.formula->value.runs()) {
      auto const terms = static_cast<std::int64_t>(run.leaves.size());
      if (last) count(*last, run.leaves.at(0), 1);
      for (std::int64_t t = 0; t < terms && t + 1 < run.gatherings; ++t)
        count(run.leaves.at(t), run.leaves.at(t + 1), (run.gatherings - 2 - t) / terms + 1);
      last = run.leaves.at(run.gatherings - 1);
    }
    return 2 * in_turn > pairs;
  }
  void gatherings() {
    if (!book_.gatherings) return;
    auto const main = main_leaves(shape_of(book_.formula->value));
    if (auto const other = book_.gatherings_alternating_with) {
      if (alternate(book_.gatherings->value, *other)) return;
      return add(FindingId::gatherings_differ, Severity::doubt, FieldSet{Field::formula} | Field::gatherings,
                 "gatherings are stated to have " + std::to_string(book_.gatherings->value) + " and " +
                     std::to_string(*other) + " leaves in turn; most in the formula have " + std::to_string(main) +
                     ", and do not alternate so",
                 "how many leaves the gatherings have");
    }
    if (main != book_.gatherings->value)
      add(FindingId::gatherings_differ, Severity::doubt, FieldSet{Field::formula} | Field::gatherings,
          "gatherings are stated to have " + number_of(book_.gatherings->value, "leaf", "leaves") +
              "; most in the formula have " + std::to_string(main),
          "how many leaves most gatherings have", book_.gatherings->value - main);
  }

public:
  FormulaAudit(Description const& book, Audit& audit) : FieldFindings{book, audit} {}
  /// Precondition: the book has a formula.
  void run() {
    order_of_letters();
    odd_gatherings();
    numbers_inside();
    signing();
    gatherings();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
