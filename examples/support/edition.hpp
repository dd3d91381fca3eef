// SPDX-License-Identifier: MIT
/// An edition as a row of a table names it: how the columns are read, and what is wrong with a row, column by column.
#pragma once

#include <bifolium/book/formula_plan.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/number_of.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold/scheme_names.hpp>

#include "column_said.hpp"
#include "observed.hpp"
#include "reams.hpp"
#include "row_values.hpp"
#include "tsv.hpp"
#include "wrong.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace support {

/// The columns from which an edition is read.
inline Cells const edition_columns{"scheme",
                                   "pages",
                                   "words",
                                   "letters",
                                   "ens",
                                   "a_line",
                                   "least_a_line",
                                   "most_a_line",
                                   "lines_a_page",
                                   "page_height_mm",
                                   "twenty_lines_mm",
                                   "copies",
                                   "prelim_pages",
                                   "end_pages",
                                   "cancel_leaves",
                                   "end_matter",
                                   "overs_percent",
                                   "overplus",
                                   "ream_sheets",
                                   "ream_year",
                                   "ream_place",
                                   "ream_price",
                                   "forme_price",
                                   "token_price",
                                   "ream_kg",
                                   "ream_lb",
                                   "sheet_height_mm",
                                   "sheet_width_mm",
                                   "sharing",
                                   "part_sheets",
                                   "token_impressions",
                                   "impressions_an_hour",
                                   "crew",
                                   "presses",
                                   "hours_a_day",
                                   "tokens_a_day",
                                   "text",
                                   "formula",
                                   "reams",
                                   "quires",
                                   "loose_sheets"};

/// An edition from its row, which is the line of `lines`. `wrong` is empty when it can be reckoned; `said` has what was assumed or found on the way.
class EditionRow {
  RowValues row_;

  [[nodiscard]] std::string cell(std::string_view name) const { return row_.cell(name); }
  static void add(std::string& to, std::string const& sentence) { to += (to.empty() ? "" : "; ") + sentence; }
  void say(std::string const& column, std::string const& what, bifolium::Problem problem) {
    wrong.add(column, what, problem);
  }

  void read_scheme() {
    auto const scheme = cell("scheme");
    if (scheme.empty() && !cell("formula").empty()) return;
    if (auto const found = bifolium::find_scheme(scheme))
      edition.scheme = *found;
    else if (scheme.empty())
      say("scheme", "is missing", bifolium::Problem::unexpected_end);
    else
      say("scheme", bifolium::no_scheme_message(scheme), bifolium::Problem::unknown_word);
  }
  /// Says of how many gatherings the scheme is not true.
  void say_what_is_not_of_the_scheme(bifolium::Formula const& read) {
    auto const by_scheme = gatherings_by(read, edition.scheme);
    if (auto const others = read.gatherings() - by_scheme; others > 0)
      add(said, std::to_string(others) + " of " + bifolium::number_of(read.gatherings(), "gathering", "gatherings") +
                    (others == 1 ? " is" : " are") + " not of the scheme");
  }
  /// The plan of a formula, in the format that it states, and by the scheme if one is named.
  void read_formula(bifolium::Dialect dialect) {
    using namespace bifolium;
    for (auto const* column : {"pages", "words", "letters", "ens", "prelim_pages", "end_pages", "cancel_leaves"})
      if (!cell(column).empty()) say(column, "the formula has the leaves of the book already", Problem::trailing_text);
    auto const read = bifolium::read_formula(cell("formula"), dialect);
    if (!read) return say("formula", column_and_sentence(read.error()), read.error().problem);
    bool const by_scheme = !cell("scheme").empty() && wrong.empty();
    auto const found =
        by_scheme ? plan_of(*read, edition.scheme, edition.arranging) : plan_of(*read, edition.arranging);
    if (!found) return wrong.add("formula", found.error());
    plan = *found;
    formula = write_formula(*read, Notation::unicode);
    if (by_scheme) say_what_is_not_of_the_scheme(*read);
    for (auto const& warning : read->warnings()) add(said, "formula, " + column_and_sentence(warning));
  }
  /// The paper of an account, where the number of copies is asked for.
  void read_account() {
    using namespace bifolium;
    auto const reams = row_.number("reams");
    if (reams || !cell("quires").empty() || !cell("loose_sheets").empty())
      account = PaperOfAccount{reams.value_or(Fraction{}), row_.whole("quires"), row_.whole("loose_sheets")};
  }
  /// The pages of the text as they are named, or cast off from the copy.
  void read_pages() {
    using namespace bifolium;
    if (!cell("formula").empty()) return;
    std::pair<char const*, CastingUnit> const units[]{
        {"words", CastingUnit::words}, {"letters", CastingUnit::letters}, {"ens", CastingUnit::ens}};
    auto const length = row_.one_of({"pages", "words", "letters", "ens"});
    row_.whole("pages", edition.pages);
    for (auto const& [column, unit] : units) {
      if (column != length) continue;
      Sample sample{row_.whole(column).value_or(0),
                    row_.number("a_line").value_or(Fraction{}),
                    0,
                    unit,
                    row_.number("least_a_line"),
                    row_.number("most_a_line")};
      if (row_.one_of({"lines_a_page", "page_height_mm"}) == "page_height_mm")
        sample.lines_a_page = lines_by_height();
      else
        row_.whole("lines_a_page", sample.lines_a_page);
      if (!wrong.empty()) return;
      auto const off = cast_off(sample);
      if (!off)
        return say(column, "a_line and lines_a_page must say what a page holds: " + sentence_of(off.error()),
                   off.error().problem);
      edition.pages = off->pages.stated;
      add(said, "cast off: " + bifolium::number_of(off->pages.stated, "page", "pages") +
                    (off->pages.is_exact()
                         ? ""
                         : " (" + std::to_string(off->pages.low) + " to " + std::to_string(off->pages.high) + ")") +
                    ", if " + off->assumption());
      return;
    }
    if (length.empty()) say("pages", "is missing", Problem::unexpected_end);
  }
  std::int64_t lines_by_height() {
    auto const height = row_.number("page_height_mm"), twenty = row_.number("twenty_lines_mm");
    if (!height || !twenty) return 0;
    auto const lines = bifolium::lines_in_page(*height, *twenty);
    return lines ? *lines : 0;
  }
  /// The region where the ream was in use; anywhere, where none is named. A place that is not known, or not certain, is told.
  bifolium::Region ream_region() {
    auto const text = cell("ream_place");
    if (text.empty()) return bifolium::Region::anywhere;
    auto const place = bifolium::read_place(text);
    if (!place) return add(said, "ream_place: " + sentence_of(place.error())), bifolium::Region::anywhere;
    for (auto const& doubt : place->warnings()) add(said, "ream_place: " + sentence_of(doubt));
    return place->region();
  }
  /// The ream that is named, or the one in use at a place and time; where there were several none is chosen.
  void read_ream() {
    using namespace bifolium;
    if (cell("ream_year").empty() && cell("ream_sheets").empty() && !cell("ream_place").empty())
      add(said, "ream_place is not used without ream_year: paper is given in sheets");
    if (auto const ream = cell("ream_sheets"); !ream.empty()) {
      edition.ream = ream_of(ream);
      if (!edition.ream)
        say("ream_sheets", "'" + ream + "' is none of the reams that were counted: " + reams_known,
            Problem::unknown_word);
    } else if (auto const year = cell("ream_year"); !year.empty()) {
      auto const years = read_years(year);
      if (!years) return wrong.add("ream_year", years.error());
      auto const where = ream_region();
      std::string in_use;
      bool several = false;
      each_ream_count({years->from, years->to}, where, [&](ReamCount const& count) {
        if (edition.ream && *edition.ream != count) several = true;
        if (!edition.ream) edition.ream = count;
        add(in_use, std::to_string(count.ream) + " (" + count.name + ")");
      });
      if (several) edition.ream = std::nullopt;
      add(said, in_use.empty() ? "no ream is reported for then and there"
                : several      ? "reams in use, none chosen: " + in_use
                               : "ream in use: " + in_use);
    }
    if (edition.ream) edition.press.token = token_with(*edition.ream);
  }
  void read_press() {
    using namespace bifolium;
    row_.whole("token_impressions", edition.press.token.impressions);
    row_.whole("impressions_an_hour", edition.press.rate.impressions);
    row_.whole("presses", edition.press.presses);
    row_.whole("hours_a_day", edition.press.hours_a_day);
    row_.whole("tokens_a_day", edition.press.tokens_a_day);
    row_.word<Crew>("crew", edition.press.crew, {{"full", Crew::full_press}, {"half", Crew::half_press}});
  }

public:
  bifolium::Edition edition{};
  std::optional<bifolium::Plan> plan{};                            ///< of the formula, where there is one
  std::string formula{};                                           ///< as it is written out
  std::optional<bifolium::PaperOfAccount> account{};               ///< of which the copies are asked for
  std::optional<bifolium::Fraction> sheet_height{}, sheet_width{}; ///< in millimetres
  Wrong wrong{};
  std::string said{};

  EditionRow(Header const& header, Cells const& cells, Lines const& lines, bifolium::Dialect dialect,
             bool copies_wanted = true)
      : row_{header, cells, wrong} {
    using namespace bifolium;
    wrong.add_line(lines, cells, header.size());
    read_scheme();
    read_pages();
    row_.whole("prelim_pages", edition.prelim_pages);
    row_.whole("end_pages", edition.end_pages);
    row_.whole("cancel_leaves", edition.cancel_leaves);
    read_account();
    if (cell("copies").empty() && copies_wanted && !account) say("copies", "is missing", Problem::unexpected_end);
    row_.whole("copies", edition.copies);
    edition.overs_percent = row_.number("overs_percent").value_or(Fraction{});
    row_.whole("overplus", edition.overplus);
    row_.word<Sharing>("sharing", edition.arranging.sharing,
                       {{"none", Sharing::none}, {"once", Sharing::once}, {"freely", Sharing::freely}});
    row_.word<PartWork>("part_sheets", edition.arranging.parts,
                        {{"turned", PartWork::turned}, {"cut-first", PartWork::cut_first}});
    row_.word<bool>("end_matter", edition.arranging.end_matter_runs_on, {{"apart", false}, {"runs-on", true}});
    if (!cell("formula").empty()) read_formula(dialect);
    read_ream();
    edition.price_of_ream = row_.whole("ream_price");
    edition.price_of_forme = row_.whole("forme_price");
    edition.price_of_token = row_.whole("token_price");
    row_.one_of({"ream_kg", "ream_lb"});
    if (auto const kilogrammes = row_.number("ream_kg"))
      edition.weight_of_ream = checked_multiply(*kilogrammes, Fraction{1000});
    if (auto const pounds = row_.number("ream_lb"))
      edition.weight_of_ream = checked_multiply(*pounds, grammes_in_pound);
    sheet_height = row_.number("sheet_height_mm");
    sheet_width = row_.number("sheet_width_mm");
    read_press();
  }
  EditionRow(EditionRow const&) = delete;

  /// Whether the copies are to be found from the paper.
  [[nodiscard]] bool asks_for_copies() const { return account && cell("copies").empty(); }
  /// A scheme is named: its imposition can be looked at.
  [[nodiscard]] bool has_scheme() const { return !cell("scheme").empty(); }
  /// The bill; where the copies are asked for, of one copy.
  [[nodiscard]] bifolium::Expected<bifolium::Bill> bill() const {
    auto of = edition;
    if (asks_for_copies()) of.copies = 1;
    return plan ? bifolium::reckon(of, *plan) : bifolium::reckon(of);
  }
  /// As an option of printing a text.
  [[nodiscard]] bifolium::Expected<bifolium::PrintingOption> option() const {
    if (!plan) return bifolium::printing_option(edition);
    return bifolium::PrintingOption{edition, *plan};
  }
  /// The cell of a column, for the programs' own use.
  [[nodiscard]] std::string named(std::string_view column) const { return cell(column); }
};

} // namespace support
