// SPDX-License-Identifier: MIT
#include "fitting.hpp"

#include <bifolium/evidence/parameters.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iostream>
#include <map>
#include <numbers>
#include <set>

namespace fitting {

using namespace bifolium;

namespace {

constexpr std::size_t K = population_count;
constexpr int rounds = 40;
/// A start counts as so many books; the spreads and the tail as so many.
constexpr double books_of_start = 150, books_of_spread = 30, books_of_tail = 50;
constexpr double start_variance = .0030, start_covariance = .0012, start_tail = 16;

/// How a format divides the sheet: which side becomes the height, and the parts of height and width.
struct Division {
  bool long_is_height;
  int height_parts, width_parts;
};
Division division_of(int leaves) {
  switch (leaves) {
  case 1:
    return {true, 1, 1};
  case 2:
    return {false, 1, 2};
  case 4:
    return {true, 2, 2};
  case 6:
    return {true, 3, 2};
  case 8:
    return {false, 2, 4};
  case 12:
    return {true, 3, 4};
  case 16:
    return {true, 4, 4};
  case 18:
    return {false, 3, 6};
  case 24:
    return {true, 4, 6};
  case 32:
    return {false, 4, 8};
  default:
    std::cerr << "no book in " << leaves << " is known\n";
    std::exit(1);
  }
}

double log_normal_up_to(double z) { // its logarithm, also far out
  if (z > -25) return std::log(0.5 * std::erfc(-z / std::numbers::sqrt2));
  return -z * z / 2 - std::log(-z * std::sqrt(2 * std::numbers::pi));
}
/// Log density, and the mean and mean square of the further loss.
struct Said {
  double log_density, loss, loss_2;
};
Said said(double log_density, double mean, double spread) {
  auto const z = mean / spread, up_to = log_normal_up_to(z);
  auto const r = std::exp(-z * z / 2 - 0.5 * std::log(2 * std::numbers::pi) - up_to);
  return {log_density + z * z / 2 + up_to, std::max(mean + spread * r, 0.0),
          mean * mean + spread * spread + mean * spread * r};
}
Said both(SheetPopulation const& p, double tail, double x, double y) {
  auto const det = p.long_variance * p.short_variance - p.covariance * p.covariance;
  auto const a = p.short_variance / det, b = -p.covariance / det, c = p.long_variance / det;
  x -= p.log_long, y -= p.log_short;
  auto const q = a * x * x + 2 * b * x * y + c * y * y, all = a + 2 * b + c;
  auto const pull = (a + b) * x + (b + c) * y + tail;
  return said(std::log(tail) - 0.5 * std::log(2 * std::numbers::pi) - 0.5 * std::log(det) - 0.5 * std::log(all) - q / 2,
              -pull / all, 1 / std::sqrt(all));
}
Said one(double mean, double variance, double tail, double x) {
  x -= mean;
  return said(std::log(tail) - x * x / (2 * variance), -(x + tail * variance), std::sqrt(variance));
}

/// Logarithms of the sheet a book implies; the side not measured is missing.
struct Implied {
  std::array<double, 2> side{};
  std::array<bool, 2> has{};
};
Implied implied(Book const& book) {
  auto const how = division_of(book.leaves);
  auto const smaller = usual_parameters.loss_of_halving * (std::log2(book.leaves) - 1);
  auto const boards = usual_parameters.boards.count();
  auto const height = std::log(book.in_centimetres ? book.height - 5 - boards : book.height);
  Implied sheet;
  std::size_t const h = how.long_is_height ? 0 : 1;
  sheet.side[h] = height + std::log(how.height_parts) + smaller;
  sheet.has[h] = true;
  if (book.width > 0 && !book.in_centimetres) {
    sheet.side[1 - h] = std::log(book.width) + std::log(how.width_parts) + smaller;
    sheet.has[1 - h] = true;
  }
  return sheet;
}

using Held = std::array<double, K>;
constexpr std::array<double, 5> undated{.05, .2, .25, .25, .25}; // how undated incunables are spread over the years

std::vector<SheetCount> count_sheets(std::vector<Book> const& books, std::vector<Held> const& held) {
  std::map<std::array<int, 4>, double> cells;
  for (std::size_t i = 0; i < books.size(); ++i) {
    auto const& book = books[i];
    auto const add = [&](std::size_t year, double part) {
      for (std::size_t k = 0; k < K; ++k)
        cells[{static_cast<int>(book.region), static_cast<int>(year), static_cast<int>(format_group(book.leaves)),
               static_cast<int>(k)}] += part * held[i][k];
    };
    if (book.year) {
      auto const at = detail::counted_between(*book.year);
      add(at.before, 1 - at.after), add(at.before + 1, at.after);
    } else {
      for (std::size_t y = 0; y < undated.size(); ++y) add(y, undated[y]);
    }
  }
  std::vector<SheetCount> counts;
  for (auto const& [cell, n] : cells)
    counts.push_back({static_cast<Region>(cell[0]), static_cast<std::uint8_t>(cell[1]),
                      static_cast<std::uint8_t>(cell[2]), static_cast<std::uint8_t>(cell[3]), static_cast<float>(n)});
  return counts;
}
using detail::divide;
using detail::few_books;
using detail::first_late;
using detail::last_early;
using detail::sum_of;
using detail::with_neighbours;

/// Shares of formats from the counts of incunables and the assumed tables.
class FormatSharesOf {
  using Common = std::array<double, 3>; // 2°, 4°, 8°
  static constexpr std::size_t early_years = 5;
  static constexpr double few = 20;                            // books
  static constexpr std::array<std::size_t, 3> common{1, 2, 4}; // in `ranked_leaves`
  using ByYear = std::array<FormatShares, count_years.size()>;

  struct Counts {
    std::array<Common, early_years> by_year{};
    Common all{};     // dated or not
    Common undated{}; // of the fifteenth century
  };
  std::array<Counts, region_count> counts_{};
  std::array<ByYear, 2> assumed_{}; // anywhere, Britain
  std::array<Common, early_years> expected_{};
  Common overall_{};

  static bool is_common(std::size_t format) {
    return format == common[0] || format == common[1] || format == common[2];
  }
  static Common mixed(Common const& counted, Common const& expected, double strength) {
    auto const books = sum_of(counted);
    Common shares{};
    for (std::size_t f = 0; f < 3; ++f) shares[f] = (counted[f] + strength * expected[f]) / (books + strength);
    return shares;
  }
  /// Formats not counted before 1500 have small shares then (proposed).
  static FormatShares with_rare(Common const& shares) {
    FormatShares all{.002, 0, 0, .0005, 0, .0006, .001, .0001, .0001, .0002, .0001, 1e-5, 1e-5, 1e-5, 1e-6, 1e-6, 1e-6};
    for (std::size_t f = 0; f < 3; ++f) all[common[f]] = 0.995 * shares[f];
    divide(all, sum_of(all));
    return all;
  }
  /// They grow evenly in their logarithms from 1478 to 1550, so that no year is a cliff.
  static void let_rare_formats_grow(ByYear& years) {
    constexpr std::size_t from = 2, to = first_late;
    for (std::size_t y = from + 1; y <= last_early; ++y) {
      auto const part = static_cast<double>(count_years[y] - count_years[from]) / (count_years[to] - count_years[from]);
      double rare = 0, rest = 0;
      for (std::size_t f = 0; f < ranked_leaves.size(); ++f) {
        if (is_common(f)) {
          rest += years[y][f];
          continue;
        }
        years[y][f] = std::exp((1 - part) * std::log(years[from][f]) + part * std::log(years[to][f]));
        rare += years[y][f];
      }
      for (auto const f : common) years[y][f] *= (1 - rare) / rest;
    }
  }

public:
  FormatSharesOf(std::vector<Book> const& books, std::vector<Assumed> const& assumed) {
    for (auto const& book : books) {
      if (!book.of_incunables) continue;
      std::size_t const f = book.leaves == 2 ? 0 : book.leaves == 4 ? 1 : 2;
      for (auto region = book.region;; region = leans_on(region)) {
        auto& counts = counts_[static_cast<std::size_t>(region)];
        counts.all[f] += 1;
        if (book.year) {
          auto const at = detail::counted_between(*book.year);
          // by the part of a book that is before 1498; the few of the years after 1500 count little here
          if (at.before < early_years) counts.by_year[at.before][f] += 1 - at.after;
          if (at.before + 1 < early_years) counts.by_year[at.before + 1][f] += at.after;
        } else {
          counts.undated[f] += 1;
        }
        if (region == Region::anywhere) break;
      }
    }
    for (auto const& one : assumed) {
      auto& shares = assumed_[one.british ? 1 : 0][one.year_number];
      shares = one.share;
      divide(shares, sum_of(shares));
    }
    for (auto const& year : counts_[0].by_year)
      for (std::size_t f = 0; f < 3; ++f) overall_[f] += year[f];
    divide(overall_, sum_of(overall_));
    for (std::size_t y = 0; y < early_years; ++y) expected_[y] = mixed(about(counts_[0], y), overall_, 15);
  }
  [[nodiscard]] static Common about(Counts const& counts, std::size_t y) {
    Common books{};
    for (std::size_t f = 0; f < 3; ++f)
      books[f] = with_neighbours(counts.by_year, y, early_years, [&](Common const& year) { return year[f]; });
    return books;
  }
  [[nodiscard]] ByYear of(Region region) const {
    ByYear years = assumed_[is_in(region, Region::britain) || region == Region::usa ? 1 : 0];
    auto const& counts = counts_[static_cast<std::size_t>(region)];
    auto const own = mixed(counts.all, overall_, few); // regions also have a habit of their own over all years
    for (std::size_t y = 0; y < early_years; ++y) {
      Common expected = expected_[y];
      for (std::size_t f = 0; f < 3; ++f) expected[f] *= own[f] / overall_[f];
      divide(expected, sum_of(expected));
      years[y] = with_rare(region == Region::anywhere ? expected_[y] : mixed(about(counts, y), expected, few));
    }
    years[few_books] = years[last_early]; // never read
    let_rare_formats_grow(years);
    return years;
  }
  /// Of books of the fifteenth century without a date.
  [[nodiscard]] FormatShares of_undated(Region region) const {
    auto const& counts = counts_[static_cast<std::size_t>(region)];
    auto const own = mixed(counts.all, overall_, few);
    auto expected = mixed(counts_[0].undated, overall_, 15);
    for (std::size_t f = 0; f < 3; ++f) expected[f] *= own[f] / overall_[f];
    divide(expected, sum_of(expected));
    return with_rare(mixed(counts.undated, expected, few));
  }
  /// Whether any book of the region was counted.
  [[nodiscard]] bool knows(Region region) const { return sum_of(counts_[static_cast<std::size_t>(region)].all) > 0; }
  /// Dated books about each of the first years.
  [[nodiscard]] double dated(std::size_t y) const { return sum_of(counts_[0].by_year[y]); }
};

std::vector<YearShares> shares_of(FormatSharesOf const& shares) {
  std::vector<YearShares> rows;
  auto const add = [&](Region region, std::size_t year, FormatShares const& given) {
    YearShares row{region, static_cast<std::uint8_t>(year), {}};
    for (std::size_t f = 0; f < given.size(); ++f) row.share[f] = static_cast<float>(given[f]);
    rows.push_back(row);
  };
  for (int r = 0; r < region_count; ++r) {
    auto const region = static_cast<Region>(r);
    if (region != Region::anywhere && region != Region::britain && !shares.knows(region)) continue;
    auto const years = shares.of(region);
    for (std::size_t y = 0; y < years.size(); ++y)
      if (y != few_books) add(region, y, years[y]);
    add(region, YearShares::undated, shares.of_undated(region));
  }
  return rows;
}

/// One population made anew of the books it holds, with its start.
void maximise(SheetPopulation& p, std::array<double, 2> const& start, std::size_t k, std::vector<Implied> const& sheets,
              std::vector<Held> const& held, std::vector<std::array<Said, K>> const& losses) {
  std::array<double, 2> sum{books_of_start * start[0], books_of_start * start[1]};
  double n = 0;
  std::array<std::array<double, 2>, 2> spread{{{books_of_spread * start_variance, books_of_spread * start_covariance},
                                               {books_of_spread * start_covariance, books_of_spread * start_variance}}};
  std::array<double, 2> const mean{p.log_long, p.log_short};
  std::array<double, 2> const variance{p.long_variance, p.short_variance};
  struct Whole { // a sheet before further loss, and what is not known of it
    std::array<double, 2> side;
    double r, v00, v01, v11;
  };
  std::vector<Whole> all;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    auto const& s = sheets[i];
    auto const r = held[i][k];
    auto const& loss = losses[i][k];
    auto const v = std::max(loss.loss_2 - loss.loss * loss.loss, 0.0);
    Whole w{{}, r, v, v, v};
    if (s.has[0] && s.has[1]) {
      w.side = {s.side[0] + loss.loss, s.side[1] + loss.loss};
    } else {
      std::size_t const c = s.has[0] ? 0 : 1, o = 1 - c;
      auto const g = p.covariance / variance[c];
      w.side[c] = s.side[c] + loss.loss;
      w.side[o] = mean[o] + g * (w.side[c] - mean[c]);
      auto const rest = variance[o] - g * p.covariance + g * g * v;
      w.v00 = c == 0 ? v : rest, w.v11 = c == 1 ? v : rest, w.v01 = g * v;
    }
    sum[0] += r * w.side[0], sum[1] += r * w.side[1], n += r;
    all.push_back(w);
  }
  p.log_long = sum[0] / (n + books_of_start), p.log_short = sum[1] / (n + books_of_start);
  for (auto const& w : all) {
    auto const x = w.side[0] - p.log_long, y = w.side[1] - p.log_short;
    spread[0][0] += w.r * (x * x + w.v00), spread[0][1] += w.r * (x * y + w.v01), spread[1][1] += w.r * (y * y + w.v11);
  }
  auto const by = n + books_of_spread;
  p.long_variance = spread[0][0] / by, p.covariance = spread[0][1] / by, p.short_variance = spread[1][1] / by;
}

Region region_of_part(std::string const& part) {
  switch (std::atoi(part.c_str())) {
  case 4:
    return Region::rome;
  case 5:
    return Region::venice;
  case 6:
    return Region::north_italy;
  case 7:
    return Region::other_italy;
  case 8:
    return Region::france;
  case 9:
    return Region::netherlands;
  case 10:
    return Region::spain;
  default:
    return Region::germany;
  }
}
/// The places of the tables of later books; others are not known.
Region region_of(std::string const& place) {
  static std::map<std::string, Region> const towns{{"London", Region::britain},
                                                   {"Oxford", Region::britain},
                                                   {"Cambridge", Region::britain},
                                                   {"Edinburgh", Region::britain},
                                                   {"Glasgow", Region::britain},
                                                   {"Bath", Region::britain},
                                                   {"Chiswick", Region::britain},
                                                   {"England", Region::britain},
                                                   {"Salisbury", Region::britain},
                                                   {"Southampton", Region::britain},
                                                   {"Dublin", Region::ireland},
                                                   {"Philadelphia", Region::usa},
                                                   {"Boston", Region::usa},
                                                   {"New", Region::usa},
                                                   {"New-York", Region::usa},
                                                   {"Baltimore", Region::usa},
                                                   {"Paris", Region::france},
                                                   {"Lyon", Region::france},
                                                   {"Rouen", Region::france},
                                                   {"Venice", Region::venice},
                                                   {"Rome", Region::rome},
                                                   {"Florence", Region::north_italy},
                                                   {"Bologna", Region::north_italy},
                                                   {"Milan", Region::north_italy},
                                                   {"Amsterdam", Region::netherlands},
                                                   {"Leiden", Region::netherlands},
                                                   {"Antwerp", Region::netherlands},
                                                   {"The", Region::netherlands},
                                                   {"Basel", Region::switzerland},
                                                   {"Leipzig", Region::germany},
                                                   {"Nuremberg", Region::germany},
                                                   {"Wittenberg", Region::germany}};
  auto const start = place.find_first_not_of("[ ");
  if (start == std::string::npos) return Region::anywhere;
  auto const found = towns.find(place.substr(start, place.find_first_of(" ,(?[]", start) - start));
  return found == towns.end() ? Region::anywhere : found->second;
}

std::optional<int> year_of(std::string const& text) {
  for (std::size_t i = 0; i + 4 <= text.size(); ++i) {
    auto const part = text.substr(i, 4);
    if (part.find_first_not_of("0123456789") == part.npos && part[0] == '1' && part[1] >= '4') return std::stoi(part);
  }
  return std::nullopt;
}

} // namespace

Rows rows_of(std::string const& file) {
  std::ifstream in{file};
  if (!in) {
    std::cerr << "cannot read " << file << '\n';
    std::exit(1);
  }
  Rows rows;
  for (std::string line; std::getline(in, line);) {
    if (line.empty() || line[0] == '#') continue;
    rows.emplace_back(1);
    for (char c : line)
      if (c == '\t')
        rows.back().emplace_back();
      else
        rows.back().back() += c;
  }
  return rows;
}

std::vector<Book> books_of(std::string const& data) {
  std::vector<Book> books;
  for (auto const& row : rows_of(data + "/bmc_leaf_sizes.tsv")) {
    if (row[5] != "0" || row[1].find(' ') != row[1].npos) continue; // suspicious, or of two formats
    Book book{.leaves = row[1][0] - '0', .height = std::stod(row[2]), .width = std::stod(row[3])};
    if (!row[4].empty()) book.year = std::stoi(row[4]);
    book.region = region_of_part(row[6]);
    book.of_incunables = true;
    book.edition = "catalogue of incunables, row " + row[0];
    books.push_back(book);
  }
  std::set<std::string> once; // leaves of one uncut 24° are one book
  for (auto const& row : rows_of(data + "/later_leaf_sizes.tsv")) {
    auto const year = year_of(row[6]);
    auto const source = row[8].substr(0, row[8].find(','));
    if (!year || (row[0] == "24" && !once.insert(source + row[6]).second)) continue;
    Book book{.leaves = std::stoi(row[0]), .height = std::stod(row[1]), .source = Book::Source::measured};
    if (!row[2].empty()) book.width = std::stod(row[2]);
    book.year = year;
    book.region = region_of(row[7]);
    book.edition = "described: " + row[8].substr(0, 12);
    book.gathering = row[5];
    books.push_back(book);
  }
  for (auto const& row : rows_of(data + "/catalogue_heights.tsv")) {
    auto const year = year_of(row[3]);
    if (!year || row[1].empty()) continue;
    Book book{.leaves = std::stoi(row[0]), .height = std::stod(row[1])};
    if (!row[2].empty()) book.width = std::stod(row[2]);
    book.year = year;
    book.region = region_of(row[4]);
    book.in_centimetres = row[5].starts_with("300");
    book.source = book.in_centimetres   ? Book::Source::catalogue
                  : row[5] == "edition" ? Book::Source::census
                                        : Book::Source::other;
    book.edition = "catalogued: " + row[6];
    books.push_back(book);
  }
  return books;
}

std::vector<Start> starts_of(std::string const& folder) {
  std::vector<Start> starts;
  for (auto const& row : rows_of(folder + "/start_sheets.tsv"))
    starts.push_back({row[0], std::stod(row[1]), std::stod(row[2])});
  return starts;
}

std::vector<Assumed> assumed_of(std::string const& folder) {
  std::vector<Assumed> all;
  for (auto const& row : rows_of(folder + "/assumed_shares.tsv")) {
    Assumed one;
    one.british = row[0] == "britain";
    for (std::size_t y = 0; y < count_years.size(); ++y)
      if (std::to_string(count_years[y]) == row[1]) one.year_number = y;
    one.books = std::stof(row[2]);
    for (std::size_t f = 0; f < ranked_leaves.size(); ++f) one.share[f] = std::stod(row[3 + f]);
    all.push_back(one);
  }
  return all;
}

namespace {

/// Logarithms of the sheets at which the populations start.
std::vector<std::array<double, 2>> start_of(std::vector<Start> const& starts) {
  std::vector<std::array<double, 2>> start;
  for (auto const& one : starts)
    start.push_back(
        {std::log(one.long_side) - SheetPopulation::base_loss, std::log(one.short_side) - SheetPopulation::base_loss});
  return start;
}
/// What is known before any sheet is looked at: how common formats were, and where the populations start.
Fitted started(std::vector<Book> const& books, std::vector<std::array<double, 2>> const& start,
               std::vector<Assumed> const& assumed) {
  Fitted fitted;
  FormatSharesOf const shares{books, assumed};
  fitted.formats = shares_of(shares);
  for (auto const& one : assumed)
    if (!one.british) fitted.books[one.year_number] = one.books;
  fitted.books[few_books] = fitted.books[first_late];
  // books of a year before 1501 as they are dated, in the unit of the rest: even from 1498 to 1506
  for (std::size_t y = 0; y <= last_early; ++y)
    fitted.books[y] = static_cast<float>(static_cast<double>(fitted.books[few_books]) * shares.dated(y) /
                                         shares.dated(last_early) * (y == 0 ? 0.5 : 1));
  fitted.tail = start_tail;
  for (std::size_t k = 0; k < K; ++k) fitted.populations[k] = {start[k][0], start[k][1], .0022, .0008, .0022};
  // odd paper, not fitted: size spreads by .3 along both sides, shape by .1 across
  auto& odd = fitted.populations[0];
  odd.long_variance = odd.short_variance = .10, odd.covariance = .08;
  return fitted;
}

} // namespace

Fitted fit(std::vector<Book> const& books, std::vector<Start> const& starts, std::vector<Assumed> const& assumed) {
  auto const start = start_of(starts);
  auto fitted = started(books, start, assumed);
  std::vector<Implied> sheets;
  for (auto const& book : books) sheets.push_back(implied(book));
  Held alike;
  alike.fill(1.0 / K);
  std::vector<Held> held(books.size(), alike);
  std::vector<std::array<Said, K>> losses(books.size());
  for (int round = 0; round < rounds; ++round) {
    fitted.sheets = count_sheets(books, held);
    PaperModel const model{fitted.counts()};
    fitted.log_likelihood = 0;
    double lost = books_of_tail / start_tail, n = books_of_tail;
    for (std::size_t i = 0; i < books.size(); ++i) {
      auto const papers = model.papers(Region::anywhere, books[i].year.value_or(1485));
      auto const& weight = papers[format_group(books[i].leaves)];
      double all = 0;
      for (std::size_t k = 0; k < K; ++k) {
        auto const& p = fitted.populations[k];
        auto const& s = sheets[i];
        losses[i][k] = s.has[0] && s.has[1] ? both(p, fitted.tail, s.side[0], s.side[1])
                       : s.has[0]           ? one(p.log_long, p.long_variance, fitted.tail, s.side[0])
                                            : one(p.log_short, p.short_variance, fitted.tail, s.side[1]);
        all += held[i][k] = weight[k] * std::exp(losses[i][k].log_density);
      }
      for (auto& one : held[i]) one /= all;
      fitted.log_likelihood += std::log(all);
      for (std::size_t k = 0; k < K; ++k) lost += held[i][k] * losses[i][k].loss;
      n += 1;
    }
    for (std::size_t k = 1; k < K; ++k) maximise(fitted.populations[k], start[k], k, sheets, held, losses);
    fitted.tail = n / lost;
  }
  fitted.sheets = count_sheets(books, held);
  std::erase_if(fitted.sheets, [](SheetCount const& one) { return one.books < 0.05F; });
  return fitted;
}

unsigned part_of(Book const& book) { // a hash of the edition by FNV-1a
  std::uint32_t hash = 2166136261U;
  for (char const c : book.edition) hash = (hash ^ static_cast<unsigned char>(c)) * 16777619U;
  return hash / 7 % parts;
}
LeafEvidence seen_of(Book const& book, bool placed) {
  LeafEvidence seen{.height = millimetres{book.height}, .year = YearRange{1450, 1500}};
  if (book.width > 0 && !book.in_centimetres) seen.width = millimetres{book.width};
  if (book.in_centimetres) seen.rounded_up_to = 10_mm, seen.of = MeasureOf::binding;
  if (book.year) seen.year = *book.year;
  if (placed) seen.place = book.region;
  return seen;
}

std::vector<Book> resampled(std::vector<Book> const& books, unsigned number) {
  std::map<std::string, std::vector<Book const*>> editions;
  for (auto const& book : books) editions[book.edition].push_back(&book);
  std::vector<std::vector<Book const*> const*> all;
  for (auto const& [name, copies] : editions) all.push_back(&copies);
  std::vector<Book> drawn;
  std::uint64_t state = 0x9E3779B97F4A7C15ULL * (number + 1);
  for (std::size_t i = 0; i < all.size(); ++i) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    for (auto const* copy : *all[static_cast<std::uint32_t>(state >> 33U) % all.size()]) drawn.push_back(*copy);
  }
  return drawn;
}

} // namespace fitting
