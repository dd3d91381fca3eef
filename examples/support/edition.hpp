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
#include "decimal.hpp"
#include "observed.hpp"
#include "reams.hpp"
#include "tsv.hpp"

#include <initializer_list>
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
  Header const& header_;
  Cells const& cells_;

  [[nodiscard]] std::string cell(std::string_view name) const { return header_.cell(cells_, name); }
  static void add(std::string& to, std::string const& sentence) { to += (to.empty() ? "" : "; ") + sentence; }
  void say(std::string const& column, std::string const& what, bifolium::Problem problem) {
    wrong.add(column, what, problem);
  }

  /// Any number not below nothing; nothing where the cell is empty or wrong.
  std::optional<bifolium::Fraction> number(std::string const& column) {
    auto const text = cell(column);
    if (text.empty()) return std::nullopt;
    auto const read = decimal(text);
    if (!read.value)
      say(column, read.wrong, read.problem);
    else if (*read.value < bifolium::Fraction{})
      say(column, "'" + text + "' must not be less than zero", bifolium::Problem::negative_count);
    else
      return read.value;
    return std::nullopt;
  }
  std::optional<std::int64_t> whole(std::string const& column) {
    auto const value = number(column);
    if (value && !value->is_whole())
      say(column, "found '" + cell(column) + "' where a whole number is expected", bifolium::Problem::not_a_number);
    return value && value->is_whole() ? std::optional{value->numerator()} : std::nullopt;
  }
  void whole(std::string const& column, std::int64_t& to) { to = whole(column).value_or(to); }
  void whole(std::string const& column, std::int32_t& to) {
    auto const value = whole(column);
    if (!value) return;
    if (*value > INT32_MAX)
      say(column, "'" + cell(column) + "' is too large to calculate with", bifolium::Problem::number_too_large);
    else
      to = static_cast<std::int32_t>(*value);
  }
  /// One of some words, and what it stands for.
  template <class T, std::size_t N>
  void word(std::string const& column, T& to, std::pair<char const*, T> const (&words)[N]) {
    auto const text = cell(column);
    if (text.empty()) return;
    std::string known;
    for (auto const& [name, value] : words) {
      if (text == name) {
        to = value;
        return;
      }
      known += (known.empty() ? "" : ", ") + std::string{name};
    }
    say(column, "'" + text + "' is none of: " + known, bifolium::Problem::unknown_word);
  }

  /// The one column of several that is filled; empty where none is. More than one are refused, since none of them could be
  /// chosen in silence.
  std::string one_of(std::initializer_list<char const*> columns) {
    std::string filled;
    for (auto const* column : columns) {
      if (cell(column).empty()) continue;
      if (!filled.empty())
        say(column, filled + " is filled too: leave one of them empty", bifolium::Problem::trailing_text);
      if (filled.empty()) filled = column;
    }
    return filled;
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
    auto const reams = number("reams");
    if (reams || !cell("quires").empty() || !cell("loose_sheets").empty())
      account = PaperOfAccount{reams.value_or(Fraction{}), whole("quires"), whole("loose_sheets")};
  }
  /// The pages of the text as they are named, or cast off from the copy.
  void read_pages() {
    using namespace bifolium;
    if (!cell("formula").empty()) return;
    std::pair<char const*, CastingUnit> const units[]{
        {"words", CastingUnit::words}, {"letters", CastingUnit::letters}, {"ens", CastingUnit::ens}};
    auto const length = one_of({"pages", "words", "letters", "ens"});
    whole("pages", edition.pages);
    for (auto const& [column, unit] : units) {
      if (column != length) continue;
      Sample sample{whole(column).value_or(0), number("a_line").value_or(Fraction{}), 0, unit, number("least_a_line"),
                    number("most_a_line")};
      if (one_of({"lines_a_page", "page_height_mm"}) == "page_height_mm")
        sample.lines_a_page = lines_by_height();
      else
        whole("lines_a_page", sample.lines_a_page);
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
    auto const height = number("page_height_mm"), twenty = number("twenty_lines_mm");
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
    whole("token_impressions", edition.press.token.impressions);
    whole("impressions_an_hour", edition.press.rate.impressions);
    whole("presses", edition.press.presses);
    whole("hours_a_day", edition.press.hours_a_day);
    whole("tokens_a_day", edition.press.tokens_a_day);
    word<Crew>("crew", edition.press.crew, {{"full", Crew::full_press}, {"half", Crew::half_press}});
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
      : header_{header}, cells_{cells} {
    using namespace bifolium;
    wrong.add_line(lines, cells, header.size());
    read_scheme();
    read_pages();
    whole("prelim_pages", edition.prelim_pages);
    whole("end_pages", edition.end_pages);
    whole("cancel_leaves", edition.cancel_leaves);
    read_account();
    if (cell("copies").empty() && copies_wanted && !account) say("copies", "is missing", Problem::unexpected_end);
    whole("copies", edition.copies);
    edition.overs_percent = number("overs_percent").value_or(Fraction{});
    whole("overplus", edition.overplus);
    word<Sharing>("sharing", edition.arranging.sharing,
                  {{"none", Sharing::none}, {"once", Sharing::once}, {"freely", Sharing::freely}});
    word<PartWork>("part_sheets", edition.arranging.parts,
                   {{"turned", PartWork::turned}, {"cut-first", PartWork::cut_first}});
    word<bool>("end_matter", edition.arranging.end_matter_runs_on, {{"apart", false}, {"runs-on", true}});
    if (!cell("formula").empty()) read_formula(dialect);
    read_ream();
    edition.price_of_ream = whole("ream_price");
    edition.price_of_forme = whole("forme_price");
    edition.price_of_token = whole("token_price");
    one_of({"ream_kg", "ream_lb"});
    if (auto const kilogrammes = number("ream_kg"))
      edition.weight_of_ream = checked_multiply(*kilogrammes, Fraction{1000});
    if (auto const pounds = number("ream_lb")) edition.weight_of_ream = checked_multiply(*pounds, grammes_in_pound);
    sheet_height = number("sheet_height_mm");
    sheet_width = number("sheet_width_mm");
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
