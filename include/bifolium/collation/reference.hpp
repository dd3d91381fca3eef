// SPDX-License-Identifier: MIT
/// References to a leaf or a page, as bibliographies give them: sig. 2B1v, A3r, A3ᵛ, A3 recto, Aiij, 36/10, [2]/1r, and
/// by the number of the leaf, 10b or f. 12v. They are looked up in a formula, because only the formula says which leaf
/// of the book A3 is. Recto is the side read first, also in a book read from right to left.
#pragma once

#include <bifolium/collation/walk.hpp>
#include <bifolium/imposition/imposition.hpp>
#include <bifolium/leaf/read_signature.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {

enum class LeafSide : std::uint8_t { not_said, recto, verso };

/// A leaf, and which of its sides.
struct Reference {
  LeafOfBook leaf{};
  LeafSide side{};
  friend constexpr bool operator==(Reference const&, Reference const&) = default;
};

namespace detail {

struct ReferenceScan {
  std::string_view text;
  std::size_t at{};

  [[nodiscard]] constexpr char byte() const noexcept { return at < text.size() ? text[at] : '\0'; }
  [[nodiscard]] constexpr bool ended() const noexcept { return at == text.size(); }
  constexpr void blanks() noexcept {
    while (byte() == ' ') ++at;
  }
  constexpr bool take(std::string_view word) noexcept {
    return text.substr(at).starts_with(word) ? (at += word.size(), true) : false;
  }
  constexpr std::int64_t figures() noexcept {
    std::int64_t n = 0;
    auto const from = at;
    for (; is_digit(byte()); ++at) n = n > 99999999 ? n : n * 10 + (byte() - '0');
    return at == from ? -1 : n;
  }
  /// i, ij, iiij, viii.
  constexpr int roman() noexcept {
    int total = 0, last = 0;
    for (;; ++at) {
      auto const c = byte();
      int const value = c == 'i' || c == 'j' ? 1 : c == 'v' ? 5 : c == 'x' ? 10 : 0;
      if (value == 0) return total;
      if (value == 5 && total == 0 && at + 1 == text.size()) return 0; // a lone v is the verso
      total += last > 0 && value > last ? value - 2 * last : value;
      last = value;
      if (c == 'j') return ++at, total; // j ends a number: in iijv the v is the verso
    }
  }
  constexpr LeafSide side() noexcept {
    blanks();
    for (std::string_view word : {"recto", "r", "ʳ", "a", "ᵃ"})
      if (take(word)) return LeafSide::recto;
    for (std::string_view word : {"verso", "v", "ᵛ", "b", "ᵇ"})
      if (take(word)) return LeafSide::verso;
    return LeafSide::not_said;
  }
};

} // namespace detail

/// The gathering of that name. One without the raised figure of a series may be of any; the first is taken.
[[nodiscard]] inline std::optional<GatheringAt> find_gathering(Formula const& formula, Signature const& name) {
  for (bool const any_series : {false, true})
    for (std::size_t r = 0; r < formula.runs().size(); ++r) {
      auto const& run = formula.runs()[r];
      auto const first = any_series && name.series() == 0 ? run.first.in_series(0) : run.first;
      auto const length = run_length(first, name, formula.alphabet());
      if (length && *length <= run.gatherings) return GatheringAt{static_cast<std::uint32_t>(r), *length - 1};
    }
  return std::nullopt;
}

/// Reads a reference and finds its leaf. error: not_a_reference, no_such_gathering, no_such_leaf (with the leaves the
/// gathering has), reference_not_in_book for a leaf that was deleted or a number past the end.
[[nodiscard]] inline Expected<Reference> read_reference(Formula const& formula, std::string_view text) {
  detail::ReferenceScan scan{text};
  auto const fail = [&](Problem problem, std::int64_t limit = 0) {
    return error_at(problem, 1, column_of(text, scan.at), text.data(), text.size(), limit);
  };
  scan.blanks();
  bool const by_leaf = scan.take("f. ") || scan.take("fol. ") || scan.take("ff. ") || scan.take("Bl. ");
  if (!by_leaf) static_cast<void>(scan.take("sig. ") || scan.take("Sig. "));
  scan.blanks();
  auto const start = scan.at;
  if (auto const number = scan.figures(); number >= 0) { // 10b, f. 12v
    auto const side = scan.side();
    scan.blanks();
    if (scan.ended() && (by_leaf || side != LeafSide::not_said)) {
      auto const leaf = leaf_of_number(formula, number);
      if (!leaf) return fail(Problem::reference_not_in_book);
      return Reference{*leaf, side};
    }
    scan.at = start;
  }
  auto const mark = detail::SignatureScanner{text, formula.letters()}.scan(start);
  if (!mark || by_leaf) return fail(Problem::not_a_reference);
  scan.at = mark.end;
  if (scan.byte() == '/') ++scan.at;
  scan.blanks();
  auto leaf = scan.figures();
  if (leaf < 0) leaf = scan.roman();
  auto const side = scan.side();
  scan.blanks();
  if (leaf < 1 || !scan.ended()) return fail(Problem::not_a_reference);
  auto const at = find_gathering(formula, mark.signature);
  scan.at = start;
  if (!at) return fail(Problem::no_such_gathering);
  if (leaf > formula.leaves_folded(*at)) return fail(Problem::no_such_leaf, formula.leaves_folded(*at));
  Reference const found{{*at, static_cast<int>(leaf), 0}, side};
  if (!leaf_number(formula, found.leaf)) return fail(Problem::reference_not_in_book);
  return found;
}

/// B3v, ²B3, 36/10r; a leaf inserted behind B3 is B3+1.
[[nodiscard]] inline std::string write_reference(Formula const& formula, Reference const& reference) {
  std::string text;
  auto const signature = formula.signature(reference.leaf.gathering);
  signature.spell([&](char const* bytes, std::size_t size) { text.append(bytes, size); },
                  [&](int figure) {
                    char bytes[4]{};
                    if (figure > 9) text.append(bytes, encode(superscript(figure / 10), bytes));
                    text.append(bytes, encode(superscript(figure % 10), bytes));
                  });
  if (signature.mark() == Mark::number) text += '/';
  text += std::to_string(reference.leaf.leaf);
  if (reference.leaf.inserted > 0) text += '+', text += std::to_string(reference.leaf.inserted);
  if (reference.side != LeafSide::not_said) text += reference.side == LeafSide::recto ? 'r' : 'v';
  return text;
}

/// The page of the book, from 1: recto 2n-1 and verso 2n of leaf n. A side that is not said is the recto.
[[nodiscard]] inline std::optional<std::int64_t> page_of_book(Formula const& formula, Reference const& reference) {
  auto const number = leaf_number(formula, reference.leaf);
  if (!number) return std::nullopt;
  return 2 * *number - (reference.side == LeafSide::verso ? 0 : 1);
}
[[nodiscard]] inline std::optional<Reference> reference_of_page(Formula const& formula, std::int64_t page) {
  auto const leaf = leaf_of_number(formula, page / 2 + page % 2);
  if (!leaf || page < 1) return std::nullopt;
  return Reference{*leaf, page % 2 != 0 ? LeafSide::recto : LeafSide::verso};
}

/// Where the page stands when its gathering is printed by a scheme: sheet, forme, row and column. Nothing for an inserted
/// leaf and where the scheme makes another number of leaves than the gathering has, since then it was not printed so.
template <int N>
[[nodiscard]] std::optional<Place> place_of(Formula const& formula, Reference const& reference,
                                            Imposition<N> const& imposition) {
  if (reference.leaf.inserted > 0 || reference.leaf.leaf < 1) return std::nullopt;
  if (imposition.pages() != 2 * formula.leaves_folded(reference.leaf.gathering)) return std::nullopt;
  return imposition.find_place(2 * reference.leaf.leaf - (reference.side == LeafSide::verso ? 0 : 1));
}

} // namespace v0
} // namespace bifolium
