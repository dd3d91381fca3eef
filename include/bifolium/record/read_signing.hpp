// SPDX-License-Identifier: MIT
/// Reads a statement of signing: [$4 (-a3,4, ²c4) signed; missigning V4 as U4], $1-3, $½+1, [$1; +D2; -2M], [$1,3
/// signed; signing $3 as $*], [$3 (-title, $2 in A-D) signed; roman numerals]. An exception that repeats the rule gives a
/// warning, and so does the title leaf, since the statement does not say which it is.
#pragma once

#include <bifolium/record/detail/signing_reader.hpp>

#include <algorithm>
#include <iterator>
#include <tuple>

namespace bifolium {
inline namespace v0 {

/// Reads a statement of signing, with or without its brackets. `added` lists the letters used in addition to the 23.
/// Each leaf of a range is one exception. Errors, with the column: not_a_signing, signing_range_too_long, and the
/// limits of core/limits.hpp.
[[nodiscard]] inline Expected<Signing> read_signing(std::string_view text, Letters added = {},
                                                    Limits const& limits = {}) {
  return read_characters(text, [&](std::string_view plain) {
    return detail::SigningReader{plain, added, limits}.read();
  });
}

namespace detail {

/// The exceptions for each leaf, with their order in the statement. They are in one sorted row, so that the last
/// exception for a leaf before a given one is found without a search through all.
class SigningExceptions {
  enum class Of : std::uint8_t { leaf, gathering, leaf_of_any, any };
  struct Said {
    Of of{};
    GatheringAt gathering{};
    std::optional<int> leaf{};
    std::size_t order{};
    bool is_signed{};
  };
  std::vector<Said> said_{};

  [[nodiscard]] static auto key(Said const& one) {
    return std::tuple{one.of, one.gathering.run, one.gathering.index, one.leaf, one.order};
  }
  static bool before(Said const& a, Said const& b) { return key(a) < key(b); }
  [[nodiscard]] static Said of(SigningPlace const& place, GatheringAt at) {
    Said one;
    one.of = place.any ? (place.leaf ? Of::leaf_of_any : Of::any) : place.leaf ? Of::leaf : Of::gathering;
    if (!place.any) one.gathering = at;
    one.leaf = place.leaf;
    return one;
  }

public:
  explicit SigningExceptions(std::size_t most) { said_.reserve(most); }
  /// Adds an exception. `at` is its gathering; it has no meaning for an exception that applies to any gathering.
  void add(SigningException const& exception, GatheringAt at, std::size_t order) {
    auto one = of(exception.place, at);
    one.order = order, one.is_signed = exception.is_signed;
    said_.push_back(one);
  }
  void sort() { std::sort(said_.begin(), said_.end(), before); }
  /// Returns whether a leaf is signed according to the exceptions before number `order`, or no value if they do not
  /// name it.
  [[nodiscard]] std::optional<bool> last_before(std::size_t order, GatheringAt at, int leaf) const {
    std::optional<bool> answer;
    std::size_t latest = 0;
    for (auto const& place : {SigningPlace{false, {}, leaf, {}}, SigningPlace{false, {}, {}, {}},
                              SigningPlace{true, {}, leaf, {}}, SigningPlace{true, {}, {}, {}}}) {
      auto wanted = of(place, at);
      wanted.order = order;
      auto const found = std::lower_bound(said_.begin(), said_.end(), wanted, before);
      if (found == said_.begin()) continue;
      auto const& one = *std::prev(found);
      wanted.order = one.order;
      if (key(one) != key(wanted) || (answer && one.order < latest)) continue;
      answer = one.is_signed, latest = one.order;
    }
    return answer;
  }
};

/// Gathers doubts about leaves of a statement: one for all leaves of a range that follow one another.
class SigningDoubts {
  Signing& signing_;
  Problem problem_{};
  SigningPlace first_{};
  int last_{};

public:
  explicit SigningDoubts(Signing& signing) : signing_{signing} {}
  void add(Problem problem, SigningPlace const& place) {
    auto const leaf = place.leaf.value_or(0);
    bool const follows = problem == problem_ && place.at == first_.at && leaf == last_ + 1 && place.any == first_.any &&
                         place.gathering == first_.gathering;
    if (follows) return void(last_ = leaf);
    tell();
    problem_ = problem, first_ = place, last_ = leaf;
  }
  void tell() {
    if (problem_ == Problem::none) return;
    auto words = place_words(first_);
    if (last_ > first_.leaf.value_or(0)) words.append("-").append(std::to_string(last_));
    signing_.warn(error_at(problem_, first_.at, words));
    problem_ = Problem::none;
  }
};

/// Returns how many gatherings with signed leaves have another number of leaves than this.
[[nodiscard]] inline std::int64_t gatherings_of_others(IdealCopy const& book, int leaves) {
  std::int64_t others = 0;
  auto const& runs = book.runs();
  for (std::uint32_t r = 0; r < runs.size(); ++r) {
    if (is_unsigned(book, {r, 0})) continue;
    auto const& run = runs[r];
    auto const counts = static_cast<std::int64_t>(run.leaves.size());
    for (std::int64_t i = 0; i < counts && i < run.gatherings; ++i)
      if (run.leaves.at(i) != leaves) others += (run.gatherings - i + counts - 1) / counts;
  }
  return others;
}

} // namespace detail

/// Reads the statement of signing of a formula. An exception that names a leaf the formula does not have, or that
/// repeats the rule, gives a warning; leaves of a range that follow one another give one. So does a rule that is said of
/// gatherings of some number of leaves, $2 (of 4), if the formula has others. Columns are those of
/// formula.signing(). Errors: those of read_signing; not_stated.
[[nodiscard]] inline Expected<Signing> signing_of(Formula const& formula, Limits const& limits = {}) {
  if (!formula.signing()) return error_in_field(Problem::not_stated, "signing");
  IdealCopy const book{formula};
  auto read = read_signing(*formula.signing(), formula.letters(), limits);
  if (!read) return read;
  if (read->of)
    if (auto const others = detail::gatherings_of_others(book, *read->of); others > 0) {
      std::string_view const text = *formula.signing();
      auto const place = place_in(text, text.find("of", text.find('$'))); // nothing but the rule stands between them
      read->warn(error_at(Problem::signing_of_others, place, "of " + std::to_string(*read->of), others));
    }
  detail::SigningDoubts doubts{*read};
  auto const title = detail::title_leaf(book);
  // the gathering of a place; no value if the formula does not have the leaf
  auto const gathering_of = [&](SigningPlace const& place) -> std::optional<GatheringAt> {
    if (place.any) return GatheringAt{};
    if (place.title) return title ? std::optional{title->gathering} : std::nullopt;
    auto const at = book.find(place.gathering);
    if (!at || place.leaf > book.leaves_folded(at->gathering)) return std::nullopt;
    if (place.leaf && !at->several && !book.leaf_number({at->gathering, *place.leaf}))
      return std::nullopt; // taken away
    return at->gathering;
  };
  detail::SigningExceptions said{read->exceptions.size()};
  std::vector<std::optional<GatheringAt>> gatherings;
  gatherings.reserve(read->exceptions.size());
  for (auto exception : read->exceptions) {
    gatherings.push_back(gathering_of(exception.place));
    if (exception.place.title && title) exception.place.leaf = title->leaf;
    if (gatherings.back()) said.add(exception, *gatherings.back(), gatherings.size() - 1);
  }
  said.sort();
  for (std::size_t i = 0; i < gatherings.size(); ++i) {
    auto const& [is_signed, place] = read->exceptions[i];
    if (place.title) doubts.add(Problem::title_leaf_taken, place);
    if (!gatherings[i]) doubts.add(Problem::signing_of_no_leaf, place);
    if (!gatherings[i] || place.any || !place.leaf) continue;
    auto const at = *gatherings[i];
    bool const by_rule = !detail::is_unsigned(book, at) && read->by_rule(*place.leaf, book.leaves_folded(at));
    if (said.last_before(i, at, *place.leaf).value_or(by_rule) == is_signed)
      doubts.add(Problem::exception_changes_nothing, place);
  }
  for (auto const& wrong : read->missigned)
    if (!gathering_of(wrong.place)) doubts.add(Problem::signing_of_no_leaf, wrong.place);
  doubts.tell();
  return read;
}

} // namespace v0
} // namespace bifolium
