// SPDX-License-Identifier: MIT
// The paper model against books it was not taught: five times four parts of the editions teach and the fifth is asked,
// copies of one edition, rows of one source and copies of one book always together. Sources of the rows: tests/data.
#include <bifolium/evidence.hpp>
#include <bifolium/explain/inference_words.hpp>

#include "../../bench/paper_model/fitting.hpp"
#include "check.hpp"
#include "data.hpp"
#include "report.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string>
#include <vector>

using namespace bifolium;
using fitting::Book, fitting::part_of, fitting::seen_of;

namespace {

std::string const folder = std::string{BIFOLIUM_TEST_DATA} + "/../../bench/paper_model";

LeafEvidence in_centimetres(LeafEvidence seen) {
  seen.height = millimetres{10 * std::ceil(seen.height->count() / 10)};
  seen.width.reset();
  seen.rounded_up_to = 10_mm;
  return seen;
}
/// How common formats are in fiction about a year: counted in the books that teach, near in time.
Priors shares_of_fiction(std::vector<Book> const& books, int year) {
  std::map<int, double> shares{{1, .002}, {2, .02},  {4, .04},   {8, .16},  {12, .16},
                               {16, .01}, {18, .01}, {24, .004}, {32, .002}};
  for (auto const& book : books)
    if (book.source == Book::Source::catalogue) {
      auto const years = (*book.year - year) / 15.0;
      shares[book.leaves] += std::exp(-years * years / 2);
    }
  Priors priors;
  std::size_t i = 0;
  for (auto const& [leaves, share] : shares) priors.shares[i++] = {static_cast<std::uint8_t>(leaves), share};
  return priors;
}
/// Of 391,557 records of the English Short Title Catalogue with a format: COMHIS/estc-physicaldimension @df194923.
Priors shares_of_estc() {
  Priors priors;
  priors.shares = {{{2, .1514},
                    {4, .2307},
                    {8, .4207},
                    {12, .1793},
                    {16, .0057},
                    {18, .0052},
                    {24, .0049},
                    {32, .0019},
                    {64, .0003}}};
  return priors;
}

/// How often answers on each rung of the ladder are right, by `Certainty`.
struct Rungs {
  std::array<int, 5> answers{}, right{};
  std::array<double, 5> claimed{};

  void add(Inference const& inference, int leaves) {
    auto const at = static_cast<std::size_t>(inference.certainty);
    auto const& first = inference.candidates.front();
    bool const two = inference.certainty == Certainty::one_of_two;
    auto const& second = inference.candidates[1];
    ++answers[at];
    right[at] += first.format.leaves_to_sheet() == leaves || (two && second.format.leaves_to_sheet() == leaves);
    claimed[at] += first.probability + (two ? second.probability : 0);
  }
  void check(char const* what) const {
    constexpr std::array<double, 5> least{0, .90, .70, .90, .995};
    for (std::size_t rung = 1; rung < least.size(); ++rung) {
      if (answers[rung] == 0) continue;
      auto const share = static_cast<double>(right[rung]) / answers[rung];
      MESSAGE(std::string{what} << ", " << std::string{to_words(static_cast<Certainty>(rung))} << ": " << answers[rung]
                                << " answers, claimed " << claimed[rung] / answers[rung] << ", right " << share);
      CHECK(share >= least[rung] - (rung == 4 ? 0 : 0.02));
      // where answers are few, two and a half standard errors
      auto const error = std::sqrt(share * (1 - share) / answers[rung]);
      CHECK(std::abs(share - claimed[rung] / answers[rung]) < std::max(0.03, 2.5 * error));
    }
  }
};

/// Signs of a book whose paper nobody described, drawn at random: a leaf of the usual scheme of its format, its chain
/// lines turned in one book of fifty (a bibliographer's figure for books before 1680), its mark in one of twenty where
/// the fold does not put it, and no mark in one paper of ten (common practice, no source). What comes of it is the
/// fold's word, not the model's.
class DrawnSigns {
  std::uint32_t state_ = 20261;
  double draw() {
    state_ = state_ * 1664525U + 1013904223U;
    return (state_ >> 8U) / 16777216.0;
  }

public:
  void add(LeafEvidence& seen, int leaves) {
    SchemeFacts const* usual = nullptr;
    for (auto const& facts : scheme_facts())
      if (usual == nullptr && facts.format == Format::of(leaves)) usual = &facts;
    REQUIRE(usual != nullptr);
    auto const at = static_cast<std::size_t>(draw() * static_cast<double>(usual->leaves.size()));
    auto const& leaf = usual->leaves[at];
    bool const turned = draw() < 0.02, upright = leaf.chain_lines == ChainLines::vertical;
    seen.chain_lines = upright != turned ? ChainLines::vertical : ChainLines::horizontal;
    seen.watermark = draw() < 0.1 ? MarkPlace::absent : leaf.watermark[draw() < 0.5 ? 0 : 1];
    if (seen.watermark != MarkPlace::absent && draw() < 0.05)
      seen.watermark = static_cast<MarkPlace>(1 + static_cast<int>(draw() * 6));
  }
};

struct HeldOut {
  std::map<std::string, Report> reports;
  Rungs by_size, by_signs;
  DrawnSigns signs;

  Inference ask(std::string const& what, LeafEvidence const& seen, int leaves, PaperModel const& model,
                std::optional<Priors> const& priors = {}) {
    auto inference = infer_format(*observe(seen), Assumptions{.priors = priors, .model = &model});
    reports[what].add(inference, leaves);
    return inference;
  }
  void ask_signs(LeafEvidence seen, int leaves, PaperModel const& model) {
    signs.add(seen, leaves);
    by_signs.add(infer_format(*observe(seen), Assumptions{.model = &model}), leaves);
  }
};

HeldOut ask_held_out() {
  auto const books = fitting::books_of(BIFOLIUM_TEST_DATA);
  auto const starts = fitting::starts_of(folder);
  auto const assumed = fitting::assumed_of(folder);
  HeldOut all;
  for (unsigned part = 0; part < fitting::parts; ++part) {
    std::vector<Book> taught, asked;
    for (auto const& book : books) (part_of(book) == part ? asked : taught).push_back(book);
    auto const fitted = fitting::fit(taught, starts, assumed);
    PaperModel const model{fitted.counts()};
    for (auto const& book : asked) {
      auto const seen = seen_of(book);
      if (book.source == Book::Source::incunables) {
        all.ask("incunables, size and year", seen_of(book, false), book.leaves, model);
        all.by_size.add(all.ask("incunables, with place", seen, book.leaves, model), book.leaves);
        all.by_size.add(all.ask("incunables, height in cm", in_centimetres(seen), book.leaves, model), book.leaves);
        all.ask_signs(seen, book.leaves, model);
        auto chains = seen; // by geometry: the label puts the answer in, so this tests consistency alone
        chains.chain_lines = book.leaves == 4 ? ChainLines::horizontal : ChainLines::vertical;
        all.ask("incunables, with chain lines", chains, book.leaves, model);
      } else if (book.source == Book::Source::measured && seen.width) {
        all.by_size.add(all.ask("later, with place", seen, book.leaves, model), book.leaves);
        if (book.leaves <= 12) all.ask_signs(seen, book.leaves, model);
        auto gathered = seen;
        if (auto const sizes = read_gathering_sizes(book.gathering)) {
          gathered.gathering_leaves = sizes->leaves;
          gathered.alternating_with = sizes->alternating_with;
        }
        all.ask("later, with gathering", gathered, book.leaves, model);
      } else if (book.source == Book::Source::catalogue) {
        auto const priors = shares_of_fiction(taught, *book.year);
        all.by_size.add(all.ask("catalogue heights, shares of the genre", seen, book.leaves, model, priors),
                        book.leaves);
        all.ask("catalogue heights", seen, book.leaves, model);
        all.ask("catalogue heights, shares of the ESTC", seen, book.leaves, model, shares_of_estc());
      } else if (book.source == Book::Source::census) {
        all.ask("census of quartos", seen, book.leaves, model);
      }
    }
  }
  return all;
}
HeldOut const& held_out() {
  static auto const all = ask_held_out();
  return all;
}

} // namespace

TEST_CASE("books held out are named as well as they were when the model was chosen") {
  auto const& all = held_out();
  struct Bar {
    char const* what;
    double first, two, log_loss, calibration;
  };
  for (auto const& [what, first, two, log_loss, calibration] : {
           Bar{"incunables, size and year", .93, .99, .235, .05},
           {"incunables, with place", .93, .99, .21, .05},
           {"incunables, height in cm", .92, .99, .23, .05},
           {"incunables, with chain lines", .994, .996, .025, .05},
           {"later, with place", .75, .96, .48, .15},
           {"later, with gathering", .78, .96, .43, .15},
           {"catalogue heights, shares of the genre", .81, .97, .49, .05},
           {"catalogue heights", .63, .94, .75, .15},
           {"catalogue heights, shares of the ESTC", .50, .945, .82, .25},
           {"census of quartos", .9, .97, .45, .3},
       }) {
    CAPTURE(std::string{what});
    auto const& report = all.reports.at(what);
    report.print(what);
    CHECK(report.share(report.first) >= first);
    CHECK(report.share(report.first_two) >= two);
    CHECK(report.mean_log_loss() <= log_loss);
    CHECK(report.calibration_error() <= calibration);
  }
  CHECK(all.reports.at("incunables, with place").rows == 3012);
}

TEST_CASE("of books on a rung of the ladder, as many are of that format as it says") {
  auto const& all = held_out();
  all.by_size.check("by size");
  all.by_signs.check("with chain lines and a mark drawn");
  // size alone never establishes; two signs of the paper do for many
  CHECK(all.by_size.answers[4] == 0);
  CHECK(all.by_signs.answers[4] > 300);
}

TEST_CASE("whose shares are not those of his books does not claim much too much") {
  // one genre asked with the shares of all books: the English Short Title Catalogue has 43 octavos to 18 duodecimos
  auto const& report = held_out().reports.at("catalogue heights, shares of the ESTC");
  MESSAGE("over-claimed " << report.over_claimed());
  CHECK(report.over_claimed() <= 0.10);
}

TEST_CASE("at 17 and 18 cm octavo and duodecimo overlap, and the answer says how much") {
  // Of the catalogued books in 8° and 12°, each weighted so that together they are as common as in the ESTC.
  auto const& model = fitted_paper_model();
  auto const books = fitting::books_of(BIFOLIUM_TEST_DATA);
  std::map<int, double> count;
  for (auto const& book : books)
    if (book.source == Book::Source::catalogue) count[book.leaves] += 1;
  std::map<int, std::array<double, 3>> by_height; // all, of which 12°, claimed
  for (auto const& book : books) {
    if (book.source != Book::Source::catalogue || (book.leaves != 8 && book.leaves != 12)) continue;
    auto const weight = (book.leaves == 8 ? .4207 : .1793) / count[book.leaves];
    Priors two;
    two.shares = {{{8, .4207}, {12, .1793}}};
    auto const inference = infer_format(*observe(seen_of(book)), Assumptions{.priors = two, .model = &model});
    double twelve = 0, both = 0;
    for (auto const& one : inference) {
      both += one.probability;
      if (one.format.leaves_to_sheet() == 12) twelve += one.probability;
    }
    auto& sums = by_height[static_cast<int>(book.height)];
    sums[0] += weight, sums[1] += book.leaves == 12 ? weight : 0, sums[2] += weight * twelve / both;
  }
  for (int const height : {170, 180}) {
    auto const& [all, twelves, claimed] = by_height[height];
    MESSAGE(height << " mm: said " << claimed / all << ", true " << twelves / all);
    CHECK(std::abs(claimed - twelves) / all < 0.08);
  }
}

TEST_CASE("the table of counts is what the books give") {
  auto const books = fitting::books_of(BIFOLIUM_TEST_DATA);
  CHECK(books.size() == 3922);
  auto const fitted = fitting::fit(books, fitting::starts_of(folder), fitting::assumed_of(folder));
  auto const& table = detail::paper_counts;
  // each figure is as near as its last digit allows
  CHECK(std::abs(table.tail - fitted.tail) < 0.0051);
  for (std::size_t k = 0; k < population_count; ++k) {
    auto const &kept = table.populations[k], &found = fitted.populations[k];
    CHECK(std::abs(kept.log_long - found.log_long) < 0.000051);
    CHECK(std::abs(kept.log_short - found.log_short) < 0.000051);
    CHECK(std::abs(kept.long_variance - found.long_variance) < 0.0000051);
    CHECK(std::abs(kept.covariance - found.covariance) < 0.0000051);
    CHECK(std::abs(kept.short_variance - found.short_variance) < 0.0000051);
  }
  REQUIRE(table.sheets.size() == fitted.sheets.size());
  for (std::size_t i = 0; i < fitted.sheets.size(); ++i) {
    auto const &kept = table.sheets[i], &found = fitted.sheets[i];
    CHECK(kept.region == found.region);
    CHECK(kept.year_number == found.year_number);
    CHECK(kept.group == found.group);
    CHECK(kept.population == found.population);
    CHECK(std::abs(kept.books - found.books) < 0.0501F);
  }
  REQUIRE(table.formats.size() == fitted.formats.size());
  auto const four_digits = [](float kept, float found) { return std::abs(kept - found) <= 0.00051F * found; };
  for (std::size_t i = 0; i < fitted.formats.size(); ++i) {
    CHECK(table.formats[i].region == fitted.formats[i].region);
    CHECK(table.formats[i].year_number == fitted.formats[i].year_number);
    for (std::size_t f = 0; f < ranked_leaves.size(); ++f)
      CHECK(four_digits(table.formats[i].share[f], fitted.formats[i].share[f]));
  }
  for (std::size_t y = 0; y < count_years.size(); ++y) CHECK(four_digits(table.books[y], fitted.books[y]));
}

TEST_CASE("the table of gatherings is that of its file") {
  std::size_t i = 0;
  for (auto const& row : fitting::rows_of(folder + "/gatherings.tsv")) {
    REQUIRE(i < std::size(detail::paper_rows::gatherings));
    auto const& kept = detail::paper_rows::gatherings[i++];
    auto const point = row[2].find('.');
    CHECK(kept.late == (row[0] == "late"));
    CHECK(int{kept.leaves} == std::stoi(row[1]));
    CHECK(int{kept.larger} == std::stoi(row[2]));
    CHECK(int{kept.smaller} == (point == row[2].npos ? 0 : std::stoi(row[2].substr(point + 1))));
    CHECK(static_cast<double>(kept.share) == doctest::Approx(std::stod(row[3]) / 100).epsilon(1e-6));
  }
  CHECK(i == std::size(detail::paper_rows::gatherings));
}

TEST_CASE("books of one's own move the paper of their formats, and no others") {
  // constructed: a press that printed its octavos of 1700 on imperial
  PaperModel own = fitted_paper_model();
  std::vector<KnownBook> const books(40, {8, 262_mm, 168_mm, 1700, Region::britain});
  own.learn(books);
  CHECK(own.own_books() == 40);
  auto const seen = *observe({.height = 255_mm, .width = 162_mm, .year = 1700, .place = Region::britain});
  auto const octavo = [&](Assumptions const& assumed) {
    double p = 0;
    for (auto const& one : infer_format(seen, assumed))
      if (one.format == Format::of(8)) p += one.probability;
    return p;
  };
  CHECK(octavo({.model = &own}) > octavo({}) + 0.2);
  CHECK(infer_format(seen, Assumptions{.model = &own}).own_books);
  CHECK_FALSE(infer_format(seen).own_books);
  for (std::size_t f = 0; f < ranked_leaves.size(); ++f)
    CHECK(own.shares(Region::britain, 1700)[f] == fitted_paper_model().shares(Region::britain, 1700)[f]);
}
