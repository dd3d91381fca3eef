// SPDX-License-Identifier: MIT
/// Examines the fields that do not concern the number of leaves: the date against the paper and the coded date;
/// measurements against one another; unusual facts in the formula itself; texts that could not be read. For the format
/// see book/detail/format_audit.hpp.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/description.hpp>
#include <bifolium/book/detail/format_audit.hpp>
#include <bifolium/book/detail/main_sequence.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/number_of.hpp>
#include <bifolium/evidence/period.hpp>
#include <bifolium/leaf/write_signature.hpp>
#include <bifolium/paper/read_place.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FieldAudit {
  Description const& book_;
  Audit& audit_;

  void add(FindingId id, Severity level, FieldSet fields, std::string says, std::optional<std::string> settle,
           std::optional<std::int64_t> delta = std::nullopt) {
    audit_.findings.push_back({id,
                               level,
                               fields,
                               delta,
                               static_cast<std::string&&>(says),
                               static_cast<std::optional<std::string>&&>(settle),
                               {}});
  }
  static std::string millimetres_of(SizeRange const& size) {
    auto const middle = static_cast<int>((size.above + size.to) / 2 + .5);
    if (size.to - size.above < 2) return std::to_string(middle) + " mm";
    return std::to_string(static_cast<int>(size.to / 10 + .5)) + " cm";
  }

  /// A field has one line as a rule, so the line is said only where there are more.
  static std::string column_words(Error const& error) {
    if (!error.place) return {}; // of a text that was too long
    std::string words = " (";
    if (error.place->line > 1) words.append("line ").append(std::to_string(error.place->line)).append(", ");
    return words.append("column ").append(std::to_string(error.place->column)).append(")");
  }
  void unread() {
    for (auto const& part : book_.unread) {
      bool const stopped = part.rest && part.error.problem == Problem::trailing_text;
      std::string words{identifier(part.field)};
      if (stopped)
        words.append(": '").append(part.text).append("' was not read");
      else if (part.rest)
        words.append(", '").append(part.text).append("' was left out: ").append(sentence_of(part.error));
      else
        words.append(" could not be read: ").append(sentence_of(part.error));
      add(FindingId::part_unread, stopped ? Severity::note : Severity::doubt, FieldSet{part.field},
          words.append(column_words(part.error)), {});
    }
    for (auto const& one : book_.doubts) {
      bool const numerals = one.doubt.problem == Problem::date_numerals_differ;
      add(numerals ? FindingId::date_numerals_differ : FindingId::read_with_doubt,
          numerals ? Severity::doubt : Severity::note, FieldSet{one.field},
          std::string{identifier(one.field)} + ": " + sentence_of(one.doubt) + column_words(one.doubt),
          numerals ? std::optional<std::string>{"the date as it is printed"} : std::nullopt);
    }
    for (auto const& one : book_.again)
      add(FindingId::stated_twice, Severity::doubt, FieldSet{one.field} | one.in,
          std::string{identifier(one.field)} + ": stated as '" + one.first + "', and in the " +
              std::string{identifier(one.in)} + " as '" + one.second + "'",
          "which of the two is right");
    if (book_.pagination && book_.pagination->value.unpaged)
      add(FindingId::pages_uncounted, Severity::note, FieldSet{Field::pagination},
          "the pagination does not say how many pages there are", {});
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
    for (auto const& exception : rule.exceptions) {
      auto const& place = exception.place;
      auto const found = place.any ? std::optional<FoundGathering>{} : ideal.find(place.gathering);
      if (place.any || (found && place.leaf.value_or(1) <= ideal.leaves_folded(found->gathering))) continue;
      auto name = std::string{to_text(place.gathering).view()};
      if (place.leaf) name += (place.gathering.mark() == Mark::number ? "/" : "") + std::to_string(*place.leaf);
      return add(FindingId::signing_of_no_leaf, Severity::doubt, FieldSet{Field::formula} | Field::signing,
                 "the statement of signing names " + name + ", which the formula does not have",
                 "the signatures of the book");
    }
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

  // -- measures ------------------------------------------------------------------------------------------------------

  void measures() {
    constexpr double lowest = 45, highest = 1100; // estimated; the smallest miniature books are excepted
    if (book_.height) {
      auto const& height = book_.height->value;
      if (height.to < lowest || height.above > highest)
        add(FindingId::height_unit, Severity::doubt, FieldSet{Field::height},
            "a leaf " + millimetres_of(height) + " high is very rare; perhaps the unit or a figure is wrong", {});
    }
    if (book_.height && book_.width && book_.height->value.to < book_.width->value.above) {
      auto const format = stated_format(book_);
      // a sheet that is not folded is printed either way
      bool const unfolded = format && (format->kind() == Format::Kind::single_sheet ||
                                       format->kind() == Format::Kind::part || format->leaves_to_sheet() == 1);
      bool const broad = unfolded || (format && (format->shape() == Shape::oblong || format->shape() == Shape::broad));
      if (!broad)
        add(FindingId::height_below_width, Severity::doubt, FieldSet{Field::height} | Field::width,
            "the leaf is " + millimetres_of(book_.height->value) + " high and " + millimetres_of(book_.width->value) +
                " broad; perhaps height and width were exchanged, or the book is oblong",
            "the shape of the book");
    }
    auto const format = stated_format(book_);
    if (book_.height && book_.width && format && format->shape() == Shape::oblong &&
        book_.height->value.above >= book_.width->value.to)
      add(FindingId::oblong_but_high, Severity::doubt, FieldSet{Field::height} | Field::width | Field::format,
          "the format is stated as " + std::string{format->symbol().view()} + ", but the leaf is " +
              millimetres_of(book_.height->value) + " high and " + millimetres_of(book_.width->value) + " broad",
          "the shape of the book, and whether height and width were exchanged");
    if (book_.height && book_.binding && book_.binding->value.to < book_.height->value.above)
      add(FindingId::cover_below_leaf, Severity::error, FieldSet{Field::height} | Field::binding,
          "the cover is " + millimetres_of(book_.binding->value) + " high and the leaf " +
              millimetres_of(book_.height->value) + "; a cover is not lower than its leaves",
          "which of the two was measured");
  }

  // -- the date ------------------------------------------------------------------------------------------------------

  /// The date of the imprint against the coded one. A year apart they may count by two calendars.
  void coded_date() {
    if (!book_.coded_year) return;
    auto const& coded = book_.coded_year->value;
    audit_.implied.push_back({Field::coded_year, Implied::Quantity::year, coded.from, coded.to});
    if (!book_.year) return;
    auto const& year = book_.year->value;
    auto const apart = coded.from > year.to ? coded.from - year.to : year.from > coded.to ? coded.to - year.from : 0;
    if (apart == 0) return;
    add(FindingId::dates_contradict, apart == 1 || apart == -1 ? Severity::doubt : Severity::error,
        FieldSet{Field::year} | Field::coded_year,
        "the date is stated as '" + book_.year->text + "' and coded as " + book_.coded_year->text,
        "the date on the title page or in the colophon", apart);
  }
  /// The place of the imprint against the coded country. Borders moved and towns share names, so it is enough that one
  /// of the places named is in the country today, or in the region of printing to which the country belongs; a place in
  /// Europe at large agrees with no country by that alone.
  void coded_place() {
    if (!book_.place || book_.places.empty() || !book_.coded_place || !book_.coded_place->value.has_source) return;
    auto const& coded = book_.coded_place->value;
    auto const country = read_place(coded.country);
    if (!country || country->places().empty()) return;
    auto const& where = country->places().front();
    for (auto const& place : book_.places)
      if (place.country == where.country || place.region == where.region ||
          (where.region != Region::europe && is_in(place.region, where.region)))
        return;
    add(FindingId::places_contradict, Severity::doubt, FieldSet{Field::place} | Field::coded_place,
        "the place is stated as '" + book_.place->text + "' and coded as " + std::string{coded.code} + ", which is " +
            std::string{coded.country},
        "the place on the title page or in the colophon");
  }
  /// Vellum has neither chain lines nor watermarks: one of the statements is of another leaf, or wrong.
  void signs_in_vellum() {
    if (!book_.material || book_.material->value != Material::vellum) return;
    bool const chains = book_.chain_lines && book_.chain_lines->value != ChainLines::unknown;
    bool const mark =
        book_.watermark && book_.watermark->value != MarkPlace::unknown && book_.watermark->value != MarkPlace::absent;
    if (!chains && !mark) return;
    auto fields = FieldSet{Field::material};
    if (chains) fields = fields | Field::chain_lines;
    if (mark) fields = fields | Field::watermark;
    add(FindingId::paper_signs_in_vellum, Severity::error, fields,
        std::string{chains ? "chain lines" : ""} + (chains && mark ? " and " : "") + (mark ? "a watermark" : "") +
            (chains ? " are" : " is") + " stated of vellum, which has neither chain lines nor watermarks",
        "the leaf against the light: paper or skin");
  }
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
    if (!book_.year) return coded_date();
    audit_.implied.push_back({Field::year, Implied::Quantity::year, book_.year->value.from, book_.year->value.to});
    if (book_.year->value.to < first_printing)
      add(FindingId::year_impossible, Severity::doubt, FieldSet{Field::year},
          "printed in " + std::to_string(book_.year->value.to) + ", before printing with movable type in Europe",
          "the digits of the imprint");
    coded_date();
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
    signs_in_vellum();
    date();
    coded_place();
    FormatAudit{book_, audit_}.run();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
