// SPDX-License-Identifier: MIT
/// How likely the size and the type page of each kind of leaf are, each alone and both, summed over all paper: the
/// populations of the model, or skins of no sheet, and the caller's stocks. One paper is asked of all kinds at once, and
/// only the kinds that may be of it are summed.
#pragma once

#include <bifolium/evidence/detail/evidence_rows.hpp>
#include <bifolium/evidence/detail/size_asked.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// How common formats are and on which paper: of one year by groups of formats, of a range by formats.
class PaperShares {
  bool by_format_;
  FormatShares formats_; // of one year
  std::array<std::array<double, population_count>, format_groups> groups_;
  JointShares joint_;

public:
  /// `own`: the shares of formats that the caller gave, or null.
  PaperShares(LeafEvidence const& seen, PaperModel const& model, Priors const* own)
      : by_format_{!seen.year || !seen.year->is_one_year()} {
    if (own != nullptr) {
      for (std::size_t f = 0; f < ranked_leaves.size(); ++f) formats_[f] = own->of(ranked_leaves[f]);
      divide(formats_, sum_of(formats_));
    }
    if (by_format_) {
      joint_ = model.joint(seen.place, seen.year, own != nullptr ? &formats_ : nullptr);
      return;
    }
    if (own == nullptr) formats_ = model.shares(seen.place, seen.year->from);
    groups_ = model.papers(seen.place, seen.year->from);
  }
  /// Returns how common its format is on each population, in a unit of its own.
  [[nodiscard]] double const* on_each(LeafShape const& kind) const {
    return by_format_ ? joint_[kind.ranked].data() : groups_[kind.group].data();
  }
  /// Returns this unit.
  [[nodiscard]] double unit(LeafShape const& kind) const { return by_format_ ? 1 : formats_[kind.ranked]; }
  /// Returns the sum of `on_each`.
  [[nodiscard]] double all(LeafShape const& kind) const { return by_format_ ? sum_of(joint_[kind.ranked]) : 1; }
};

/// The sums of each kind of leaf, in a unit of its own.
struct SumsOnPaper {
  EachSheet prior, size, type, both; ///< how common it is, and the same times what is likely of it
  EachSheet best;                    ///< the part of `both` on the paper that explains it best
  std::size_t paper[sheets_at_once]; ///< this paper: a population, or `population_count` plus the index of a stock
};

class OnPaper {
  std::span<LeafShape const> kinds_;
  Counted const& counted_;
  std::span<PaperStock const> stocks_;
  EvidenceParameters const& p_;
  LossOfState const& state_;
  LossLaw loss_;
  LogMeasures measures_;
  PaperShares shares_;
  SheetDensity skins_[population_count];
  SheetDensity const* papers_;
  NearSheets near_[population_count];
  SumsOnPaper sums_{};
  double height_{}, width_{};       // in mm, as they probably are; 0 if not known
  double larger_{1}, for_leaves_{}; // the sheet before any loss, as a factor; for each unit of the logarithm of leaves

  [[nodiscard]] double boards() const { return counted_.seen.of == MeasureOf::leaf ? 0 : p_.boards.count(); }
  [[nodiscard]] static double side(OptionalLength const& measured, double less) {
    constexpr double least = 1;
    if (!measured) return 0;
    return measured->count() - less > least ? measured->count() - less : least;
  }
  void measure() {
    auto const& seen = counted_.seen;
    auto const less = (boards() + seen.rounded_up_to.count()) / 2;
    auto const uncut = larger_uncut();
    height_ = side(seen.height, less), width_ = side(seen.width, less), for_leaves_ = uncut.for_leaves;
    larger_ = real::quick_exp(uncut.by + SheetPopulation::base_loss + 1 / loss_.tail);
    constexpr double ratio = 0.72; // of width to height, where one of the two is not known: of most leaves
    if (!seen.height) height_ = width_ / ratio;
    if (!seen.width) width_ = height_ * ratio;
  }

  [[nodiscard]] static LossLaw loss_of(Counted const& counted, PaperModel const& model) {
    auto const& p = counted.parameters;
    auto const tail = model.tail() * p.loss_of_state[static_cast<std::size_t>(counted.seen.state)].tail;
    if (counted.seen.state != LeafState::unknown) return {tail, 0, tail};
    return {tail, p.cropped_unsaid, tail * p.loss_of_state[static_cast<std::size_t>(LeafState::cropped)].tail};
  }
  /// Skins are of no sheet: of all sizes, about those of the populations.
  [[gnu::cold, gnu::noinline]] SheetDensity const* skins(PaperModel const& model) {
    for (std::size_t k = 0; k < population_count; ++k) {
      auto const& one = model.populations()[k];
      auto const spread = p_.vellum_variance;
      skins_[k] = {one.log_long, one.log_short, spread * one.long_variance, spread * one.covariance,
                   spread * one.short_variance};
    }
    return skins_;
  }
  [[nodiscard, gnu::cold, gnu::noinline]] SheetDensity of_stock(PaperStock const& stock) const {
    auto const spread = counted_.of_paper ? 1 : p_.vellum_variance;
    // sheets of one stock, and errors of rulers (proposed)
    auto const variance = spread * 0.0015, covariance = spread * 0.0005;
    return {real::log(stock.sheet.long_side().count()) - SheetPopulation::base_loss,
            real::log(stock.sheet.short_side().count()) - SheetPopulation::base_loss, variance, covariance, variance};
  }
  [[nodiscard]] LargerUncut larger_uncut() const {
    if (counted_.seen.state == LeafState::uncut) return {-state_.larger, 0};
    return {-p_.loss_of_halving - state_.larger, p_.loss_of_halving * 1.4426950408889634};
  }

  /// How common the kinds of leaf are on one paper: `times` what `shares` has for each at `at`.
  struct Common {
    double const* const* shares;
    std::size_t at;
    double times;
    double of(std::size_t kind) const { return times * shares[kind][at]; }
  };
  /// Adds a paper to the sums. `found`: the kinds of leaf that may be of it.
  void add_sizes(std::size_t number, NearSheets const& found, Common const& common) {
    for (std::size_t j = 0; j < found.count; ++j) {
      auto const i = found.number[j];
      auto const size = common.of(i) * found.density[j];
      sums_.size[i] += size;
      if (size > sums_.best[i]) sums_.best[i] = size, sums_.paper[i] = number;
    }
  }
  /// The same where the type page was measured.
  void add_with_type(std::size_t number, SheetDensity const& paper, NearSheets const& found, Common const& common) {
    TypePage const pages[]{{paper, 0, p_}, {paper, 1, p_}};
    EachSheet of_type;
    for (std::size_t i = 0; i < kinds_.size(); ++i)
      sums_.type[i] += of_type[i] = common.of(i) * measures_.type(pages, kinds_[i]);
    for (std::size_t j = 0; j < found.count; ++j) {
      auto const i = found.number[j];
      auto const both = of_type[i] * found.density[j];
      sums_.size[i] += common.of(i) * found.density[j], sums_.both[i] += both;
      if (both > sums_.best[i]) sums_.best[i] = both, sums_.paper[i] = number;
    }
  }
  [[gnu::noinline]] void add(std::size_t number, SheetDensity const& paper, NearSheets const& found,
                             Common const& common) {
    if (measures_.has_type())
      add_with_type(number, paper, found, common);
    else
      add_sizes(number, found, common);
  }
  [[gnu::cold, gnu::noinline]] void add_stocks(SheetsImplied const& implied) {
    double const* priors[sheets_at_once];
    for (std::size_t i = 0; i < kinds_.size(); ++i) priors[i] = &sums_.prior[i];
    NearSheets found;
    auto number = population_count;
    for (auto const& stock : stocks_) {
      auto const paper = of_stock(stock);
      implied.find(paper, loss_, found);
      add(number++, paper, found, {priors, 0, stock.share});
    }
  }
  void add_up() {
    double const* shares[sheets_at_once];
    for (std::size_t i = 0; i < kinds_.size(); ++i)
      shares[i] = shares_.on_each(kinds_[i]), sums_.prior[i] = shares_.all(kinds_[i]);
    double of_stocks = 0;
    for (auto const& stock : stocks_) of_stocks += stock.share;
    auto const of_model = of_stocks < 1 ? 1 - of_stocks : 0;
    auto const implied = measures_.implied(kinds_, larger_uncut());
    for (std::size_t k = 0; k < population_count; ++k) {
      implied.find(papers_[k], loss_, near_[k]);
      add(k, papers_[k], near_[k], {shares, k, of_model});
    }
    if (!stocks_.empty()) add_stocks(implied);
    if (measures_.has_type()) return;
    for (std::size_t i = 0; i < sheets_at_once; ++i) sums_.type[i] = sums_.prior[i], sums_.both[i] = sums_.size[i];
  }

public:
  OnPaper(Counted const& counted, Assumptions const& assumed, PaperModel const& model)
      : kinds_{leaf_shapes(counted.broader_than_high())}, counted_{counted}, stocks_{assumed.stocks},
        p_{counted.parameters}, state_{p_.loss_of_state[static_cast<std::size_t>(counted.seen.state)]},
        loss_{loss_of(counted, model)}, measures_{counted.seen, loss_.tail, p_}, shares_{counted.seen, model,
                                                                                         assumed.priors
                                                                                             ? &*assumed.priors
                                                                                             : nullptr},
        papers_{counted.of_paper ? model.densities().data() : skins(model)} {
    add_up();
    if (counted.seen.height || counted.seen.width) measure();
  }
  [[nodiscard]] SumsOnPaper const& sums() const { return sums_; }
  [[nodiscard]] LogMeasures const& measures() const { return measures_; }
  /// Returns the unit of the sums of a kind.
  [[nodiscard]] double unit(LeafShape const& kind) const { return shares_.unit(kind); }
  /// Returns the logarithm of the height of a leaf on one of the papers, before any binding.
  [[nodiscard]] double log_height(LeafShape const& kind, std::size_t paper) const {
    bool const upright = kind.lay.long_side == Axis::left_right;
    auto const side = upright ? 1U : 0U;
    auto const mean =
        paper < population_count ? papers_[paper].mean(side) : of_stock(stocks_[paper - population_count]).mean(side);
    return mean + SheetPopulation::base_loss - (upright ? kind.log_short : kind.log_long);
  }
  /// Returns the least that the leaf measures, without boards; 0 mm for a side that was not measured.
  [[nodiscard]] LeafSize<millimetres> least_leaf() const {
    auto const& seen = counted_.seen;
    auto const less = boards() + seen.rounded_up_to.count();
    return {millimetres{side(seen.height, less)}, millimetres{side(seen.width, less)}};
  }
  /// Gives a candidate the sheet that the leaf implies with the usual loss. Precondition: a side was measured.
  void imply_sheet(FormatCandidate& candidate) const {
    auto const& kind = *candidate.kind;
    auto const lost = larger_ + for_leaves_ * (kind.log_long + kind.log_short);
    LeafSize<millimetres> const uncut{millimetres{lost * height_}, millimetres{lost * width_}};
    bool const upright = kind.lay.long_side == Axis::left_right;
    auto const across = kind.parts_short * (upright ? uncut.height : uncut.width).count();
    auto const along = kind.parts_long * (upright ? uncut.width : uncut.height).count();
    candidate.uncut = uncut;
    // made in its place: assigned, it would be read back before it is written (a thirtieth of the whole inference)
    ::new (&candidate.sheet) Sheet<millimetres>{millimetres{across}, millimetres{along > across ? along : across}};
  }
  /// Gives a candidate the likeliest sheet from which the leaf can have been cut, if the paper that explains it best has no such
  /// sheets: that of another population or, if unusual paper is likelier than all of them, the one that the leaf implies.
  [[gnu::cold, gnu::noinline]] void find_fitting_sheet(FormatCandidate& candidate, PaperModel const& model) const {
    auto const* const on_each = shares_.on_each(*candidate.kind);
    auto const size = sizes(*candidate.kind);
    double most = 0, all = 0;
    std::size_t paper = 0;
    for (std::size_t k = 1; k < population_count; ++k) {
      if (!(size[k] > 0) || !candidate.fits(model.sheets()[k])) continue;
      auto const here = on_each[k] * size[k];
      all += here;
      if (here > most) most = here, paper = k;
    }
    if (paper == 0 || all < on_each[0] * size[0]) return imply_sheet(candidate);
    candidate.sheet = model.sheets()[paper];
    candidate.uncut = leaf_size(candidate.kind->lay, candidate.sheet);
  }
  /// Returns the probability of the size on each population alone.
  [[nodiscard]] std::array<double, population_count> sizes(LeafShape const& kind) const {
    std::array<double, population_count> sizes{};
    for (std::size_t k = 0; k < population_count; ++k)
      for (std::size_t j = 0; j < near_[k].count; ++j)
        if (&kinds_[near_[k].number[j]] == &kind) sizes[k] = near_[k].density[j];
    return sizes;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
