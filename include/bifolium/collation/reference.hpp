// SPDX-License-Identifier: MIT
/// References to a leaf or a page, as bibliographies give them: sig. 2B1v, A3r, A3ᵛ, A3 recto, Aiij, 36/10, [2]/1r, and
/// by the number of the leaf, 10b or f. 12v. They are looked up in a formula, because only the formula says which leaf
/// of the book A3 is. Recto is the side read first, also in a book read from right to left.
#pragma once

#include <bifolium/collation/walk.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/imposition/imposition.hpp>
#include <bifolium/leaf/read_signature.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {

/// Which side of the leaf is meant.
enum class LeafSide : std::uint8_t { not_said, recto, verso };

/// A leaf, and which of its sides.
struct Reference {
  LeafOfBook leaf{}; ///< the leaf in the book
  LeafSide side{};   ///< which side of it
  /// In the order of the book; a leaf of which no side is named comes before its recto.
  friend constexpr auto operator<=>(Reference const&, Reference const&) = default;
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
  /// ij, iiij, viii. A lone v at the end is the verso, and a v behind the numeral too: iiiv is leaf three, verso.
  constexpr std::int64_t roman() noexcept {
    auto const numeral = roman_numeral(text.substr(at));
    if (text.substr(at) == "v") return 0;
    at += numeral.bytes;
    return numeral.value;
  }
  constexpr void point() noexcept {
    if (byte() == '.') ++at;
    blanks();
  }
  constexpr LeafSide side() noexcept {
    blanks();
    auto found = LeafSide::not_said;
    for (std::string_view word : {"recto", "r", "ʳ", "a", "ᵃ"})
      if (found == LeafSide::not_said && take(word)) found = LeafSide::recto;
    for (std::string_view word : {"verso", "v", "ᵛ", "b", "ᵇ"})
      if (found == LeafSide::not_said && take(word)) found = LeafSide::verso;
    if (found != LeafSide::not_said) point();
    return found;
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

namespace detail {

/// The leaf that a reference names, whether the ideal copy has it or the formula takes it away.
inline Expected<Reference> find_reference(Formula const& formula, std::string_view text) {
  ReferenceScan scan{text};
  auto const fail = [&](Problem problem, std::int64_t limit = 0) {
    return error_at(problem, 1, column_of(text, scan.at), text.data(), text.size(), limit);
  };
  scan.blanks();
  bool by_leaf = false;
  for (std::string_view word : {"fol.", "ff.", "f.", "Bl.", "leaf "}) by_leaf = by_leaf || scan.take(word);
  if (!by_leaf) static_cast<void>(scan.take("sig.") || scan.take("Sig.") || scan.take("sign."));
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
  if (by_leaf) return fail(Problem::not_a_reference);
  // a signature, and behind it the leaf and the side
  auto const split = [&](SignatureScan const& mark) -> Expected<Reference> {
    scan.at = start;
    if (!mark) return fail(Problem::not_a_reference);
    scan.at = mark.end;
    if (scan.byte() == '/')
      ++scan.at;
    else
      scan.point(); // A.iii.
    auto leaf = scan.figures();
    if (leaf < 0) leaf = scan.roman();
    std::int64_t inserted = 0;
    if (scan.take("+")) { // B3+1: the first leaf inserted behind B3
      inserted = scan.figures();
      if (inserted < 1) return fail(Problem::not_a_reference);
    }
    scan.point();
    auto const side = scan.side();
    scan.blanks();
    if ((leaf < 1 && inserted == 0) || !scan.ended()) return fail(Problem::not_a_reference);
    auto at = find_gathering(formula, mark.signature);
    auto const kind = mark.signature.mark();
    if (!at && (kind == Mark::pi || kind == Mark::chi)) // then the letters of a Greek alphabet
      at = find_gathering(formula, Signature::greek(kind == Mark::pi ? 16 : 22, false, mark.signature.multiple())
                                       .in_series(mark.signature.series()));
    scan.at = start;
    if (!at) return fail(Problem::no_such_gathering);
    auto const folded = formula.leaves_folded(*at);
    if (leaf > folded) return fail(Problem::no_such_leaf, folded);
    if (inserted > leaves_inserted(formula, *at, static_cast<int>(leaf))) return fail(Problem::reference_not_in_book);
    return Reference{{*at, static_cast<int>(leaf), static_cast<int>(inserted)}, side};
  };
  auto const longest = split(SignatureScanner{text, formula.letters()}.scan(start));
  if (longest) return longest;
  // In π1r and *1r the scanner finds a signature πR; a shorter one may leave a leaf of the book.
  for (auto end = text.size() < start + 32 ? text.size() : start + 32; end-- > start + 1;) {
    auto const mark = SignatureScanner{text.substr(0, end), formula.letters()}.scan(start);
    if (!mark || mark.end != end) continue;
    if (auto const shorter = split(mark)) return shorter;
  }
  return longest;
}

} // namespace detail

/// Reads a reference and finds its leaf. Where two gatherings bear one signature, as in volumes described together, the
/// first is meant; the number of the leaf (f. 12v) tells the others.
/// error: not_a_reference, no_such_gathering, no_such_leaf (with the leaves the gathering has), reference_not_in_book for
/// a leaf that was deleted or a number past the end.
[[nodiscard]] inline Expected<Reference> read_reference(Formula const& formula, std::string_view text) {
  auto const found = detail::find_reference(formula, text);
  if (found && !leaf_number(formula, found->leaf))
    return error_at(Problem::reference_not_in_book, 1, 1, text.data(), text.size());
  return found;
}

/// How a reference is set down.
enum class ReferenceForm : std::uint8_t {
  signature,   ///< B3v, 36/10r; the leaf inserted behind B3 is B3+1
  raised_side, ///< B3ᵛ
  roman, ///< Biij verso, as early books sign; in figures where the numeral could be taken for part of the signature
  leaf_number, ///< f. 12v
  leaf_letter  ///< 12b, as incunable catalogues have it; f. 12 where no side is said
};

/// Writes a reference; reading it gives the same leaf and side again. pre: for the forms by number, a leaf of the ideal
/// copy.
[[nodiscard]] inline std::string write_reference(Formula const& formula, Reference const& reference,
                                                 ReferenceForm form = ReferenceForm::signature) {
  bool const said = reference.side != LeafSide::not_said, recto = reference.side == LeafSide::recto;
  if (form == ReferenceForm::leaf_number || form == ReferenceForm::leaf_letter) {
    auto const number = leaf_number(formula, reference.leaf);
    if (!number) broken("the ideal copy has no such leaf, so it has no number");
    if (form == ReferenceForm::leaf_letter && said) return std::to_string(*number) + (recto ? 'a' : 'b');
    return "f. " + std::to_string(*number) + (!said ? "" : recto ? "r" : "v");
  }
  std::string text;
  auto const signature = formula.signature(reference.leaf.gathering);
  signature.spell([&](char const* bytes, std::size_t size) { text.append(bytes, size); },
                  [&](int figure) { text.append(raised(figure).view()); });
  bool const numbered = signature.mark() == Mark::number;
  auto figure = std::to_string(reference.leaf.leaf);
  bool roman = form == ReferenceForm::roman && !numbered && reference.leaf.leaf > 0 && reference.leaf.leaf < 4000;
  if (roman) {
    std::string numeral{small_roman(reference.leaf.leaf).view()};
    if (numeral.back() == 'i') numeral.back() = 'j';
    // "pi" is π, and a doubled letter is another signature
    auto const letter = static_cast<char>(signature.is_latin() ? 'a' + signature.letter_number() - 1 : '\0');
    roman = letter != 'p' && letter != numeral[0] && numeral != "v";
    if (roman) figure = numeral;
  }
  if (numbered) text += '/';
  text += figure;
  if (reference.leaf.inserted > 0) text += '+', text += std::to_string(reference.leaf.inserted);
  if (!said) return text;
  if (form == ReferenceForm::raised_side) return text + (recto ? "ʳ" : "ᵛ");
  if (form == ReferenceForm::roman) return text + (recto ? " recto" : " verso");
  return text + (recto ? 'r' : 'v');
}

/// The leaf joined to the one referred to; its side is left open.
[[nodiscard]] inline std::optional<Reference> conjugate(Formula const& formula, Reference const& reference) {
  auto const other = conjugate(formula, reference.leaf);
  return other ? std::optional{Reference{*other, LeafSide::not_said}} : std::nullopt;
}

/// The page of the book, from 1: recto 2n-1 and verso 2n of leaf n. A side that is not said is the recto.
[[nodiscard]] inline std::optional<std::int64_t> page_of_book(Formula const& formula, Reference const& reference) {
  auto const number = leaf_number(formula, reference.leaf);
  if (!number) return std::nullopt;
  return 2 * *number - (reference.side == LeafSide::verso ? 0 : 1);
}
/// The reference to a page, counted from 1; nothing where the book has no such page.
[[nodiscard]] inline std::optional<Reference> reference_of_page(Formula const& formula, std::int64_t page) {
  auto const leaf = leaf_of_number(formula, page / 2 + page % 2);
  if (!leaf || page < 1) return std::nullopt;
  return Reference{*leaf, page % 2 != 0 ? LeafSide::recto : LeafSide::verso};
}

/// Where the page stands when its gathering is printed by a scheme: sheet, forme, row and column. Nothing for an inserted
/// leaf and where the scheme makes another number of leaves than the gathering has, since then it was not printed so.
template <int N>
[[nodiscard]] std::optional<FormePosition> place_of(Formula const& formula, Reference const& reference,
                                                    Imposition<N> const& imposition) {
  if (reference.leaf.inserted > 0 || reference.leaf.leaf < 1) return std::nullopt;
  auto const folded = formula.leaves_folded(reference.leaf.gathering);
  if (imposition.pages() != 2 * folded || reference.leaf.leaf > folded) return std::nullopt;
  return imposition.find_place(2 * reference.leaf.leaf - (reference.side == LeafSide::verso ? 0 : 1));
}

/// The same by the fold itself, for schemes whose sheets make several gatherings: an octavo sheet that makes an eight and a
/// four for A-F⁸/⁴, a sheet cut into half-sheets. The gatherings of the run are taken in turn from the first on; nothing
/// where one of them has other leaves than the scheme gives it.
template <int N>
[[nodiscard]] std::optional<FormePosition> place_of(Formula const& formula, Reference const& reference,
                                                    Fold<N> const& fold) {
  auto const at = reference.leaf.gathering;
  if (reference.leaf.inserted > 0 || reference.leaf.leaf < 1 || reference.leaf.leaf > formula.leaves_folded(at))
    return std::nullopt;
  std::int64_t different = 0;
  for (int g = 0; g < fold.gatherings(); ++g) different += fold.is_copy(g) ? 0 : 1;
  auto other = at.index - at.index % different; // the first of the gatherings made of the same sheets
  std::optional<int> here;
  for (int g = 0; g < fold.gatherings(); ++g) {
    if (fold.is_copy(g)) continue;
    if (other >= formula.runs()[at.run].gatherings) return std::nullopt;
    if (formula.leaves_folded({at.run, other}) != fold.gathering(g).leaves()) return std::nullopt;
    if (other++ == at.index) here = g;
  }
  if (!here) return std::nullopt;
  auto const page =
      fold.first_page(*here) + 2 * (reference.leaf.leaf - 1) + (reference.side == LeafSide::verso ? 1 : 0);
  return impose(fold).find_place(page);
}

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Reference> {
  std::size_t operator()(bifolium::Reference const& reference) const noexcept {
    return std::hash<bifolium::LeafOfBook>{}(reference.leaf) * 3U + static_cast<std::size_t>(reference.side);
  }
};
