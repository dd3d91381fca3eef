// SPDX-License-Identifier: MIT
/// Which format is the leaf, on which sheet, how sure, and why? For each kind of leaf and each sheet of the place and time
/// the model asks how likely what was seen would be, if the leaf were that: uncut leaf by geometry, cut down by a binder, with
/// chain lines, mark and gatherings as the fold gives them and each kind of evidence wrong as often as it is known to
/// be. No evidence is a veto. Bayes's rule makes probabilities of it, some of which goes to none of these.
///
/// Size alone cannot part a royal quarto from a chancery folio, and the answer says so: both stand in it, and `look_next`
/// names what would part them.
#pragma once

#include <bifolium/evidence/likelihood.hpp>

#include <array>
#include <cmath>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A kind of evidence.
enum class Sign : std::uint8_t { size, chain_lines, watermark, gathering, type_page };
inline constexpr std::size_t sign_count = 5;

/// What one sign says for or against a format.
struct Reason {
  Sign sign{};
  bool seen{};     ///< it was observed
  bool agrees{};   ///< the format is made likelier by it
  double weight{}; ///< natural logarithm of how much likelier it is under this format than under the others together
};

/// How sure a cataloguer may be: established from .99 with two signs of the paper, very probable from .90, probable from .70.
enum class Certainty : std::uint8_t { not_determined, probable, very_probable, established };

/// One format and what speaks for it.
struct FormatCandidate {
  Format format{};
  double probability{};
  Attested scheme{SchemeRow::broadside}; ///< the scheme whose leaf this is
  char const* sheet_name{""};            ///< the sheet that explains it best
  Sheet<millimetres> sheet{1_mm, 1_mm};
  LeafSize<millimetres> uncut{};
  std::array<Reason, sign_count> reasons{}; ///< by `Sign`
};

/// The answer: candidates, best first.
struct Inference {
  std::vector<FormatCandidate> candidates{};
  double none_of_these{}; ///< with the candidates' probabilities it adds up to 1
  Certainty certainty{};
  std::optional<Sign> look_next{}; ///< what not yet seen would tell most; nothing when all was looked at
  char const* priors{""};          ///< what the priors rest on

  [[nodiscard]] auto begin() const { return candidates.begin(); }
  [[nodiscard]] auto end() const { return candidates.end(); }
};

namespace detail {

/// What speaks for one format, added up over its kinds of leaf and its sheets.
struct Tally {
  FormatCandidate candidate{};
  double prior{}, best{};
  std::array<double, sign_count> likelihood{}; ///< of each sign by itself, weighted over its leaves
  double together{};
  // for what to look at next: how often each outcome would be met
  double vertical{};
  std::array<double, 8> marks{};
};

class Inferring {
  Seen const& seen_;
  Priors const& priors_;
  std::vector<PossibleSheet> sheets_;
  std::vector<Tally> tallies_{};
  double none_{};

  void add(LeafShape const& shape, double prior) {
    Tally* tally = nullptr;
    for (auto& one : tallies_)
      if (one.candidate.format == shape.format) tally = &one;
    if (tally == nullptr) {
      tallies_.emplace_back();
      tally = &tallies_.back();
      tally->candidate.format = shape.format;
    }
    auto const leaves = shape.format.leaves_to_sheet().value_or(1);
    auto const trim = trim_model(seen_, leaves, priors_.incunables);
    auto const n = divided(shape.lay);
    bool const upright = shape.lay.long_side == Axis::left_right;
    auto const log_long_part = std::log(n.long_side), log_short_part = std::log(n.short_side);
    double size = 0, size_and_type = 0, type = 0, weights = 0, best = 0;
    PossibleSheet const* best_sheet = &sheets_.front();
    for (auto const& sheet : sheets_) {
      auto const along = sheet.log_long - log_long_part, across = sheet.log_short - log_short_part;
      auto const height = upright ? across : along, width = upright ? along : across;
      auto const lost = [](std::optional<millimetres> length, double uncut) {
        return length ? std::optional{std::log(length->count()) - uncut} : std::nullopt;
      };
      auto const weight = sheet.early_class >= 0 ? early_weight(leaves, sheet.early_class, seen_.year) : sheet.weight;
      auto const height_lost = lost(seen_.height, height), width_lost = lost(seen_.width, width);
      auto of_size = loss_density(trim, height_lost, width_lost);
      if (seen_.state == LeafState::unknown) {
        constexpr auto cropped = evidence_parameters::trim_by_state[static_cast<std::size_t>(LeafState::cropped)];
        of_size += evidence_parameters::cropped_unsaid * (loss_density(cropped, height_lost, width_lost) - of_size);
      }
      if (height_lost || width_lost) of_size += evidence_parameters::least_size;
      double of_type = 1;
      if (seen_.type_height) {
        auto const x = std::log(seen_.type_height->count()) - height - evidence_parameters::type_of_uncut;
        of_type = std::exp(-x * x / 2 / evidence_parameters::type_of_uncut_variance) + evidence_parameters::least_type;
      }
      weights += weight;
      size += weight * of_size;
      type += weight * of_type;
      size_and_type += weight * of_size * of_type;
      if (weight * of_size * of_type > best) best = weight * of_size * of_type, best_sheet = &sheet;
    }
    // In the fifteenth century formats and sheets are weighed together: the years move the format too.
    if (priors_.incunables && sheets_.front().early_class >= 0 && (leaves == 2 || leaves == 4 || leaves == 8)) {
      double undated = 0;
      for (int c = 0; c < 4; ++c) undated += early_weight(leaves, c, std::nullopt);
      prior *= weights / undated;
    }
    std::array<double, sign_count> const signs{size / weights, chains_likelihood(shape, chains(), chains_right(seen_)),
                                               mark_likelihood(shape, mark(), mark_in_place_for(seen_)),
                                               gathering_likelihood(shape, seen_.gathering_leaves, priors_.incunables),
                                               type / weights};
    auto const together = prior * (size_and_type / weights) * signs[1] * signs[2] * signs[3];
    tally->prior += prior;
    tally->together += together;
    for (std::size_t i = 0; i < sign_count; ++i) tally->likelihood[i] += prior * signs[i];
    auto const right = chains_right(seen_);
    tally->vertical += together * (shape.chain_lines == ChainLines::vertical ? right : 1 - right);
    for (std::size_t i = 1; i < 8; ++i)
      tally->marks[i] += together * mark_likelihood(shape, static_cast<MarkPlace>(i), mark_in_place_for(seen_));
    if (together >= tally->best) {
      tally->best = together;
      auto& candidate = tally->candidate;
      candidate.scheme = shape.scheme;
      candidate.sheet_name = best_sheet->name;
      candidate.sheet = {millimetres{std::exp(best_sheet->log_short)}, millimetres{std::exp(best_sheet->log_long)}};
      candidate.uncut = leaf_size(shape.lay, candidate.sheet);
    }
  }
  [[nodiscard]] ChainLines chains() const {
    bool const laid = seen_.material == Material::laid || seen_.material == Material::unknown;
    return laid ? seen_.chain_lines : ChainLines::unknown;
  }
  [[nodiscard]] MarkPlace mark() const {
    return seen_.material == Material::vellum ? MarkPlace::unknown : seen_.watermark;
  }
  [[nodiscard]] bool is_seen(Sign sign) const {
    switch (sign) {
    case Sign::size:
      return seen_.height.has_value() || seen_.width.has_value();
    case Sign::chain_lines:
      return chains() == ChainLines::vertical || chains() == ChainLines::horizontal;
    case Sign::watermark:
      return mark() != MarkPlace::unknown;
    case Sign::gathering:
      return seen_.gathering_leaves.has_value();
    case Sign::type_page:
      return seen_.type_height.has_value();
    }
    return false;
  }

  /// What the signs would give if the leaf were none of these: sizes spread evenly over what leaves there are, and each
  /// other sign as it comes.
  [[nodiscard]] double nothing_fits() const {
    constexpr double size = 0.38; // one in 2.9 of logarithm of height times 0.9 of ratio
    double likelihood = priors_.none_of_these;
    if (seen_.height && seen_.width) likelihood *= size;
    if (seen_.height.has_value() != seen_.width.has_value()) likelihood *= 0.35;
    if (is_seen(Sign::chain_lines)) likelihood *= 0.5;
    if (is_seen(Sign::watermark)) likelihood *= mark() == MarkPlace::absent ? 0.5 : 0.1;
    if (is_seen(Sign::gathering)) likelihood *= 0.1;
    if (is_seen(Sign::type_page)) likelihood *= 0.3;
    return likelihood;
  }

  static double entropy_part(double p) { return p > 0 ? -p * std::log(p) : 0; }
  /// How much is expected to be learnt from an outcome that splits each format's probability.
  template <class Share> [[nodiscard]] double learnt(Share share, std::size_t outcomes) const {
    double before = 0, after = 0, all = 0;
    for (auto const& tally : tallies_) all += tally.together;
    for (auto const& tally : tallies_) before += entropy_part(tally.together / all);
    for (std::size_t o = 0; o < outcomes; ++o) {
      double here = 0;
      for (auto const& tally : tallies_) here += share(tally, o);
      for (auto const& tally : tallies_) after += here > 0 ? here / all * entropy_part(share(tally, o) / here) : 0;
    }
    return before - after;
  }
  [[nodiscard]] std::optional<Sign> look_next() const {
    std::optional<Sign> next;
    double most = 0.01; // less than this is not worth a walk to the shelf
    bool const laid = seen_.material == Material::laid || seen_.material == Material::unknown;
    if (laid && !is_seen(Sign::chain_lines)) {
      auto const gain =
          learnt([](Tally const& t, std::size_t o) { return o == 0 ? t.vertical : t.together - t.vertical; }, 2);
      if (gain > most) most = gain, next = Sign::chain_lines;
    }
    if (seen_.material != Material::vellum && !is_seen(Sign::watermark)) {
      auto const gain = learnt([](Tally const& t, std::size_t o) { return t.marks[o + 1]; }, 7);
      if (gain > most) next = Sign::watermark;
    }
    return next;
  }

public:
  Inferring(Seen const& seen, SheetSizes const* sizes, Priors const& priors)
      : seen_{seen}, priors_{priors}, sheets_{possible_sheets(seen, priors, sizes)} {
    auto const& shapes = leaf_shapes();
    tallies_.reserve(shapes.size());
    for (auto const& shape : shapes) {
      auto const leaves = shape.format.leaves_to_sheet().value_or(0);
      double kinds = 0; // kinds of leaf that share the prior of this number of leaves
      for (auto const& other : shapes)
        if (other.format.leaves_to_sheet() == shape.format.leaves_to_sheet())
          kinds += shape_weight(other.format.shape());
      add(shape, priors_.of(leaves) * shape_weight(shape.format.shape()) / kinds);
    }
    none_ = nothing_fits();
  }

  [[nodiscard]] Inference result() const {
    Inference inference;
    inference.priors = priors_.basis;
    double all = none_, prior_all = 0;
    for (auto const& tally : tallies_) all += tally.together;
    for (auto const& tally : tallies_) prior_all += tally.prior;
    std::array<double, sign_count> likelihood{};
    for (auto const& tally : tallies_)
      for (std::size_t i = 0; i < sign_count; ++i) likelihood[i] += tally.likelihood[i];
    for (auto const& tally : tallies_) {
      if (!(tally.prior > 0)) continue;
      auto candidate = tally.candidate;
      candidate.probability = tally.together / all;
      for (std::size_t i = 0; i < sign_count; ++i) {
        auto& reason = candidate.reasons[i];
        reason.sign = static_cast<Sign>(i);
        reason.seen = is_seen(reason.sign);
        auto const own = tally.likelihood[i] / tally.prior;
        auto const others = (likelihood[i] - tally.likelihood[i]) / (prior_all - tally.prior);
        if (reason.seen && own > 0 && others > 0) reason.weight = std::log(own / others);
        reason.agrees = reason.weight > 0;
      }
      // in order of probability; of equals the earlier scheme first
      auto at = inference.candidates.end();
      while (at != inference.candidates.begin() && (at - 1)->probability < candidate.probability) --at;
      inference.candidates.insert(at, candidate);
    }
    inference.none_of_these = none_ / all;
    auto const& first = inference.candidates.front();
    int paper_signs = 0;
    for (auto sign : {Sign::chain_lines, Sign::watermark}) {
      auto const& reason = first.reasons[static_cast<std::size_t>(sign)];
      paper_signs += reason.seen && reason.agrees ? 1 : 0;
    }
    auto const p = first.probability;
    inference.certainty = p >= 0.99 && paper_signs >= 2 ? Certainty::established
                          : p >= 0.90                   ? Certainty::very_probable
                          : p >= 0.70                   ? Certainty::probable
                                                        : Certainty::not_determined;
    if (seen_.material == Material::vellum) inference.certainty = Certainty::not_determined;
    inference.look_next = look_next();
    return inference;
  }
};

} // namespace detail

/// Ranks the formats of all schemes on the sheets of the place and time, under the priors of the period. It always answers;
/// with nothing seen the answer is the priors. Allocates the result.
inline Inference infer_format(Observation const& observation, Priors const& priors) {
  return detail::Inferring{observation.seen(), nullptr, priors}.result();
}
inline Inference infer_format(Observation const& observation) {
  return infer_format(observation, priors_for(observation.seen().year));
}
/// The same on sheets of your choosing. pre: at least one.
inline Inference infer_format(Observation const& observation, SheetSizes const& sizes, Priors const& priors) {
  if (sizes.empty()) broken("a format is inferred on at least one sheet");
  return detail::Inferring{observation.seen(), &sizes, priors}.result();
}

} // namespace v0
} // namespace bifolium
