// SPDX-License-Identifier: MIT
/// References to a leaf or a page, as bibliographers write them: sig. 2B1v, A3r, A3ᵛ, A3 recto, verso of A3, [A3]r,
/// Aiij, 36/10, [2]/1r, and by the number of the leaf, 10b, f. 12v or leaf 12. They are looked up in the ideal copy,
/// because only the formula says which leaf of the book A3 is. An inserted leaf is named as in the formula (χ1, a3,
/// 3/8*), or by the leaf before it: B3+1. The recto is the side that is read first, also in a book read from right to
/// left.
#pragma once

#include <bifolium/collation/detail/reference_reader.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/imposition/imposition.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a reference and finds its leaf. If several gatherings have one signature, as in volumes described together,
/// the first is meant and the reference is doubtful; the number of a leaf (f. 12v) identifies the others. It is also
/// doubtful if the text is the name of a gathering of the book, as 2b and ii may be. Errors:
/// not_a_reference, leaves_not_named for a page (p. 5), gathering_not_in_book, no_such_leaf (`limit` is the number of
/// leaves of the gathering), reference_not_in_book for a deleted leaf, an inserted leaf that there is not, or a number
/// after the end of the book.
[[nodiscard]] inline Expected<Reference> read_reference(IdealCopy const& book, std::string_view text) {
  auto const found = detail::find_reference(book, text);
  if (!found) return error_of_text(text, found.error());
  if (!book.leaf_number(found->leaf)) return error_at(Problem::reference_not_in_book, TextPlace{}, text);
  return found;
}

/// The notation of a reference.
enum class ReferenceForm : std::uint8_t {
  signature,   ///< B3v, 36/10r; an inserted leaf by its name, or by the leaf before it: B3+1
  raised_side, ///< B3ᵛ
  roman,       ///< Biij verso, as early books sign; in digits if the numeral could be read as part of the signature
  leaf_number, ///< f. 12v
  leaf_letter  ///< 12b, as in catalogues of incunables; f. 12 if there is no side, f. 2b if the book has a gathering 2b
};

namespace detail {

inline std::string mark_and_leaf(Signature const& mark, std::string_view figure) {
  std::string text{to_text(mark).view()};
  if (mark.mark() == Mark::number) text += '/';
  return text.append(figure);
}
/// Returns the name of an inserted leaf in the formula, or no value if it has none, or another leaf has the same.
inline std::optional<std::string> name_of_inserted(IdealCopy const& book, LeafOfBook const& leaf) {
  auto const one = book.inserted(leaf);
  if (!one || (!one->insertion.name && !one->insertion.named_by_place)) return std::nullopt;
  bool const starred = one->insertion.named_by_place;
  auto text = mark_and_leaf(starred ? book.signature(leaf.gathering) : *one->insertion.name,
                            std::to_string(starred ? *one->insertion.first_figure : one->figure()));
  if (starred) text += '*';
  auto const back = find_reference(book, text);
  return back && back->leaf == leaf ? std::optional{text} : std::nullopt;
}
/// Writes a leaf without a side: by its name, or by the leaf before it if it has no name.
inline std::string leaf_text(IdealCopy const& book, LeafOfBook const& leaf, bool roman) {
  if (leaf.inserted)
    if (auto name = name_of_inserted(book, leaf)) return static_cast<std::string&&>(*name);
  auto const signature = book.signature(leaf.gathering);
  auto figure = std::to_string(leaf.leaf);
  if (roman && signature.mark() != Mark::number && leaf.leaf > 0 && leaf.leaf < 4000) {
    std::string numeral{small_roman(leaf.leaf).view()};
    if (numeral.back() == 'i') numeral.back() = 'j';
    // "pi" is π, a doubled letter is another signature, and )o( is a mark only before a figure
    auto const letter = static_cast<char>(signature.is_latin() ? 'a' + *signature.letter_number() - 1 : '\0');
    bool const needs_figure = std::string_view{"():"}.find(to_text(signature).view().back()) != std::string_view::npos;
    if (letter != 'p' && letter != numeral[0] && numeral != "v" && !needs_figure) figure = numeral;
  }
  auto text = mark_and_leaf(signature, figure);
  if (leaf.inserted) text += '+', text += std::to_string(*leaf.inserted);
  return text;
}

} // namespace detail

/// Writes a reference. Reading it gives the same leaf and side. An inserted leaf is written by its name in the formula,
/// or by the leaf before it (B3+1) if it has no name or another leaf has the same. Precondition: the formula has the
/// gathering of the leaf; for the notations by number, the ideal copy has the leaf.
[[nodiscard]] inline std::string write_reference(IdealCopy const& book, Reference const& reference,
                                                 ReferenceForm form = ReferenceForm::signature) {
  bool const said = reference.side != LeafSide::not_said, recto = reference.side == LeafSide::recto;
  if (form == ReferenceForm::leaf_number || form == ReferenceForm::leaf_letter) {
    auto const number = book.leaf_number(reference.leaf);
    if (!number) broken("the ideal copy has no such leaf, so it has no number");
    auto text = std::to_string(*number);
    if (form == ReferenceForm::leaf_letter && said) {
      text += recto ? 'a' : 'b';
      return detail::names_gathering(book, text) ? "f. " + text : text; // 2a may be a gathering
    }
    return "f. " + text + (!said ? "" : recto ? "r" : "v");
  }
  auto text = detail::leaf_text(book, reference.leaf, form == ReferenceForm::roman);
  if (!said) return text;
  if (form == ReferenceForm::raised_side) return text + (recto ? "ʳ" : "ᵛ");
  if (form == ReferenceForm::roman) return text + (recto ? " recto" : " verso");
  return text + (recto ? 'r' : 'v');
}

/// Returns the page of the book, from 1: page 2n-1 is the recto and 2n the verso of leaf n. If no side is given, the
/// recto is meant.
[[nodiscard]] inline std::optional<std::int64_t> page_of_book(IdealCopy const& book, Reference const& reference) {
  return book.page(reference.leaf, reference.side);
}
/// Returns the reference to a page, where pages count from 1, or no value if the book has no such page.
[[nodiscard]] inline std::optional<Reference> reference_of_page(IdealCopy const& book, std::int64_t page) {
  if (page < 1) return std::nullopt;
  auto const leaf = book.leaf_of_number(page / 2 + page % 2);
  if (!leaf) return std::nullopt;
  return Reference{*leaf, page % 2 != 0 ? LeafSide::recto : LeafSide::verso};
}

/// Returns the position of the page in the forme if a scheme prints its gathering: sheet, forme, row and column. There
/// is no value for an inserted leaf, or if the scheme makes another number of leaves than the gathering has, because
/// the gathering was then printed in another way.
template <int N>
[[nodiscard]] std::optional<FormePosition> place_of(IdealCopy const& book, Reference const& reference,
                                                    Imposition<N> const& imposition) {
  if (reference.leaf.inserted || reference.leaf.leaf < 1) return std::nullopt;
  auto const folded = book.leaves_folded(reference.leaf.gathering);
  if (imposition.pages() != 2 * folded || reference.leaf.leaf > folded) return std::nullopt;
  return imposition.find_place(2 * reference.leaf.leaf - (reference.side == LeafSide::verso ? 0 : 1));
}

/// Returns the position of the page from a fold, for schemes whose sheets make several gatherings, such as a sheet that
/// makes an eight and a four for A-F⁸/⁴, or a sheet cut into half-sheets. The gatherings of the run are assigned in
/// order from the first one. There is no value if one of them has another number of leaves than in the fold.
template <int N>
[[nodiscard]] std::optional<FormePosition> place_of(IdealCopy const& book, Reference const& reference,
                                                    Fold<N> const& fold) {
  auto const at = reference.leaf.gathering;
  if (reference.leaf.inserted || reference.leaf.leaf < 1 || reference.leaf.leaf > book.leaves_folded(at))
    return std::nullopt;
  std::int64_t different = 0;
  for (int g = 0; g < fold.gatherings(); ++g) different += fold.is_copy(g) ? 0 : 1;
  auto other = at.index - at.index % different; // the first of the gatherings made of the same sheets
  int here = 0;
  for (int g = 0; g < fold.gatherings(); ++g) {
    if (fold.is_copy(g)) continue;
    if (other >= book.runs()[at.run].gatherings) return std::nullopt;
    if (book.leaves_folded({at.run, other}) != fold.gathering(g).leaves()) return std::nullopt;
    if (other++ == at.index) here = g;
  }
  auto const page = fold.first_page(here) + 2 * (reference.leaf.leaf - 1) + (reference.side == LeafSide::verso ? 1 : 0);
  return impose(fold).find_place(page);
}

} // namespace v0
} // namespace bifolium
