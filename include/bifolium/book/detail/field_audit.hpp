// SPDX-License-Identifier: MIT
/// Examines the fields that do not concern the number of leaves: format against size, chain lines and gatherings; the
/// date against the paper; measurements against one another; unusual facts in the formula itself; texts that could not
/// be read.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/description.hpp>
#include <bifolium/book/detail/main_sequence.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/period.hpp>
#include <bifolium/leaf/write_signature.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FieldAudit {
  Description const& book_;
  Audit& audit_;

  void add(FindingId id, Severity level, FieldSet fields, std::string says, std::string settle,
           std::int64_t delta = 0) {
    audit_.findings.push_back(
        {id, level, fields, delta, static_cast<std::string&&>(says), static_cast<std::string&&>(settle), {}});
  }
  static std::string millimetres_of(SizeRange const& size) {
    auto const middle = static_cast<int>((size.above + size.to) / 2 + .5);
    if (size.to - size.above < 2) return std::to_string(middle) + " mm";
    return std::to_string(static_cast<int>(size.to / 10 + .5)) + " cm";
  }

  void unread() {
    for (auto const& part : book_.unread) {
      auto const whole = part.field != Field::formula || part.text.empty() || part.text[0] != '(';
      add(FindingId::part_unread, Severity::doubt, FieldSet{part.field},
          std::string{identifier(part.field)} +
              (whole ? " could not be read: " : ", '" + part.text + "' was left out: ") + sentence_of(part.error) +
              " (column " + std::to_string(part.error.column) + ')',
          "");
    }
    if (book_.pagination && book_.pagination->value.unpaged)
      add(FindingId::pages_uncounted, Severity::note, FieldSet{Field::pagination},
          "the pagination does not say how many pages there are", "");
  }

  // -- the formula by itself -----------------------------------------------------------------------------------------

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
            sentence_of(warning) + " (column " + std::to_string(warning.column) + ')',
            "whether a leaf was cut away or inserted");
        return;
      }
  }
  void numbers_inside() {
    if (!book_.pagination || book_.pagination->value.by_leaf()) return;
    std::int64_t before = 0;
    for (auto const& run : book_.pagination->value.runs) {
      if (run.numbering == Numbering::printed && run.numerals == Numerals::arabic) {
        auto const shape = shape_of(book_.formula->value);
        if (run.first == 1 && before > 0 && main_sequence(shape) > 0 &&
            detail::numbers_begin(shape, before) == NumbersBegin::inside_a_gathering)
          add(FindingId::numbers_begin_inside, Severity::note, FieldSet{Field::formula} | Field::pagination,
              "page 1 comes after " + std::to_string(before) +
                  " pages, inside a gathering; most books begin the numbers with a gathering",
              "on which leaf page 1 is");
        return;
      }
      before += run.pages();
    }
  }
  void signing() {
    if (!book_.signing) return;
    auto const& rule = book_.signing->value;
    int most = rule.first;
    for (int leaf : rule.listed) most = leaf > most ? leaf : most;
    int thickest = 0;
    for (auto const& run : book_.formula->value.runs())
      for (std::size_t t = 0; t < run.leaves.size(); ++t)
        thickest = run.leaves.term(t) > thickest ? run.leaves.term(t) : thickest;
    if (most > thickest)
      add(FindingId::signing_beyond_gathering, Severity::error, FieldSet{Field::formula} | Field::signing,
          "leaf " + std::to_string(most) + " is said to be signed, and no gathering of the formula has more than " +
              std::to_string(thickest) + " leaves",
          "which leaves of a gathering are signed, and how many it has", most - thickest);
  }
  void gatherings() {
    if (!book_.gatherings) return;
    auto const main = main_leaves(shape_of(book_.formula->value));
    if (main != book_.gatherings->value)
      add(FindingId::gatherings_differ, Severity::doubt, FieldSet{Field::formula} | Field::gatherings,
          "gatherings are said to have " + std::to_string(book_.gatherings->value) +
              " leaves; most of the formula have " + std::to_string(main),
          "how many leaves most gatherings have", book_.gatherings->value - main);
  }

  // -- measures ------------------------------------------------------------------------------------------------------

  void measures() {
    constexpr double lowest = 45, highest = 1100; // argued: the smallest of miniature books apart
    if (book_.height) {
      auto const& height = book_.height->value;
      if (height.to < lowest)
        add(FindingId::height_unit, Severity::doubt, FieldSet{Field::height},
            "a leaf " + millimetres_of(height) + " high is hardly met; centimetres were perhaps given as millimetres",
            "");
      else if (height.above > highest)
        add(FindingId::height_unit, Severity::doubt, FieldSet{Field::height},
            "a leaf " + millimetres_of(height) + " high is hardly met; millimetres were perhaps given as centimetres",
            "");
    }
    if (book_.height && book_.width && book_.height->value.to < book_.width->value.above) {
      auto const format = format_stated();
      bool const broad = format && (format->shape() == Shape::oblong || format->shape() == Shape::broad ||
                                    format->kind() == Format::Kind::single_sheet);
      if (!broad)
        add(FindingId::height_below_width, Severity::doubt, FieldSet{Field::height} | Field::width,
            "the leaf is " + millimetres_of(book_.height->value) + " high and " + millimetres_of(book_.width->value) +
                " broad; height and width were perhaps exchanged, or the book is oblong",
            "the shape of the book");
    }
    if (book_.height && book_.binding && book_.binding->value.to < book_.height->value.above)
      add(FindingId::cover_below_leaf, Severity::error, FieldSet{Field::height} | Field::binding,
          "the cover is " + millimetres_of(book_.binding->value) + " high and the leaf " +
              millimetres_of(book_.height->value) + "; a cover is not lower than its leaves",
          "which of the two was measured");
  }

  // -- the date ------------------------------------------------------------------------------------------------------

  void date() {
    constexpr int first_printing = 1450; // from memory: fragments printed at Mainz are dated to about 1452
    if (book_.material) {
      PeriodSigns signs;
      signs.material = book_.material->value;
      if (book_.place) signs.place = book_.place->value;
      if (auto const bounds = period_bounds(signs); bounds && bounds->earliest()) {
        auto const earliest = *bounds->earliest();
        audit_.implied.push_back({Field::material, Implied::Quantity::year, earliest, 9999});
        if (book_.year && book_.year->value.to < earliest)
          add(FindingId::year_before_paper, Severity::error, FieldSet{Field::year} | Field::material,
              "printed in " + std::to_string(book_.year->value.to) + " or before, on paper that was not made before " +
                  std::to_string(earliest),
              "the paper against the light, and the imprint", earliest - book_.year->value.to);
      }
    }
    if (!book_.year) return;
    audit_.implied.push_back({Field::year, Implied::Quantity::year, book_.year->value.from, book_.year->value.to});
    if (book_.year->value.to < first_printing)
      add(FindingId::year_impossible, Severity::doubt, FieldSet{Field::year},
          "printed in " + std::to_string(book_.year->value.to) + ", before printing with movable type in Europe",
          "the figures of the imprint");
  }

  // -- the format ----------------------------------------------------------------------------------------------------

  [[nodiscard]] std::optional<Format> format_stated() const {
    if (book_.format) return book_.format->value;
    return book_.formula ? book_.formula->value.format() : std::nullopt;
  }
  [[nodiscard]] LeafEvidence evidence() const {
    LeafEvidence seen;
    // a range is taken at its middle; a height in centimetres is of the binding as often as not, and no evidence
    auto const measured = [](std::optional<Stated<SizeRange>> const& size) -> std::optional<millimetres> {
      if (!size || size->value.to - size->value.above > 2) return std::nullopt;
      return millimetres{(size->value.above + size->value.to) / 2};
    };
    seen.height = measured(book_.height);
    seen.width = measured(book_.width);
    if (book_.chain_lines) seen.chain_lines = book_.chain_lines->value;
    if (book_.material) seen.material = book_.material->value;
    if (book_.gatherings)
      seen.gathering_leaves = book_.gatherings->value;
    else if (book_.formula && gathering_count(book_.formula->value) > 2)
      seen.gathering_leaves = main_leaves(shape_of(book_.formula->value));
    if (book_.year) seen.year = {book_.year->value.from, book_.year->value.to};
    if (book_.place) seen.place = book_.place->value;
    return seen;
  }
  static FormatCandidate const* candidate_of(Inference const& inference, int leaves) {
    for (auto const& one : inference)
      if (one.format.leaves_to_sheet() == leaves) return &one;
    return nullptr;
  }
  void format() {
    if (book_.format && book_.formula && book_.formula->value.format() && !book_.formula->value.second_format() &&
        book_.format->value.leaves_to_sheet() && book_.formula->value.format()->leaves_to_sheet() &&
        book_.format->value.leaves_to_sheet() != book_.formula->value.format()->leaves_to_sheet())
      add(FindingId::format_differs, Severity::error, FieldSet{Field::format} | Field::formula,
          "the format is stated as " + std::string{book_.format->value.symbol().view()} + ", and in the formula as " +
              std::string{book_.formula->value.format()->symbol().view()},
          "chain lines and watermark");
    auto const stated = format_stated();
    if (!stated || !stated->leaves_to_sheet() || stated->kind() != Format::Kind::leaves ||
        (book_.formula && book_.formula->value.second_format()))
      return;
    auto const seen = evidence();
    if (!seen.height && seen.chain_lines == ChainLines::unknown) return;
    auto const observation = observe(seen);
    if (!observation) return;
    weigh_format(*stated, infer_format(*observation));
  }
  /// A statement of format is seldom wrong: what speaks against it must outweigh that.
  void weigh_format(Format stated, Inference const& inference) {
    constexpr double statement_wrong = .03; // argued
    constexpr double slip = 3, look_again = .5;
    auto const* here = candidate_of(inference, *stated.leaves_to_sheet());
    if (inference.candidates.empty() || inference.mixed) return;
    auto const& best = inference.candidates.front();
    if (here == &best) return;
    auto const probability = here != nullptr && here->probability > 1e-9 ? here->probability : 1e-9;
    auto const odds = best.probability / probability * statement_wrong;
    if (odds < look_again) return;
    auto strongest = EvidenceKind::size;
    double weight = 0;
    if (here != nullptr)
      for (auto kind : {EvidenceKind::size, EvidenceKind::chain_lines, EvidenceKind::gathering})
        if (here->reason(kind).seen && here->reason(kind).weight < weight)
          weight = here->reason(kind).weight, strongest = kind;
    // of size and gatherings alone nobody can tell: trimming and quiring explain nearly all
    bool const paper = here == nullptr ? book_.chain_lines.has_value()
                                       : here->reason(EvidenceKind::chain_lines).seen &&
                                             here->reason(EvidenceKind::chain_lines).weight < -1;
    auto const level = paper && odds > slip ? Severity::doubt : Severity::note;
    auto const against = std::string{best.format.symbol().view()};
    auto const format = std::string{stated.symbol().view()};
    if (paper)
      add(FindingId::format_against_chain_lines, level, FieldSet{Field::format} | Field::chain_lines,
          format + " has its chain lines " +
              (book_.chain_lines->value == ChainLines::vertical ? "horizontal" : "vertical") +
              " as a rule, and they are said to be " +
              (book_.chain_lines->value == ChainLines::vertical ? "vertical" : "horizontal") + "; " + against +
              " would agree",
          "the chain lines against the light, and where the watermark is");
    else if (strongest == EvidenceKind::size)
      add(FindingId::format_against_size, level, FieldSet{Field::format} | Field::height | Field::width,
          "a leaf of that size is more often " + against + " than " + format,
          "chain lines and watermark; size alone settles no format");
    else
      add(FindingId::format_against_gatherings, level, FieldSet{Field::format} | Field::gatherings,
          "so many leaves to a gathering are more often " + against + " than " + format, "chain lines and watermark");
  }

public:
  FieldAudit(Description const& book, Audit& audit) : book_{book}, audit_{audit} {}
  void run() {
    unread();
    if (book_.formula) {
      order_of_letters();
      odd_gatherings();
      numbers_inside();
      signing();
      gatherings();
    }
    measures();
    date();
    format();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
