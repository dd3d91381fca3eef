// SPDX-License-Identifier: MIT
/// Date and place of the imprint against what else tells of them: the coded date and place of the record, and the paper, which
/// was not made before a certain year.
#pragma once

#include <bifolium/book/detail/audit/field_findings.hpp>
#include <bifolium/evidence/period.hpp>
#include <bifolium/paper/read_place.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Compares date, place and material.
class ImprintAudit : FieldFindings {
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
  ImprintAudit(Description const& book, Audit& audit) : FieldFindings{book, audit} {}
  void run() {
    signs_in_vellum();
    date();
    coded_place();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
