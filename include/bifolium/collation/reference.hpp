// SPDX-License-Identifier: MIT
/// References to a leaf or a page, as bibliographers write them: sig. 2B1v, A3r, A3ᵛ, A3 recto, verso of A3, [A3]r,
/// Aiij, 36/10, [2]/1r, and by the number of the leaf, 10b, f. 12v or leaf 12. They are looked up in the ideal copy, because only the formula says
/// which leaf of the book A3 is. An inserted leaf is named as in the formula (χ1, a3, 3/8*), or by the leaf before it:
/// B3+1. The recto is the side that is read first, also in a book read from right to left.
#pragma once

#include <bifolium/collation/detail/reference_scan.hpp>
#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/imposition/imposition.hpp>
#include <bifolium/leaf/read_signature.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf and a side of it.
struct Reference {
  LeafOfBook leaf{}; ///< the leaf
  LeafSide side{};   ///< the side
  bool doubtful{};   ///< true if more than one leaf may be meant; the first is taken. Comparison ignores it
  /// Orders references as in the book. A leaf without a side comes before its recto.
  friend constexpr auto operator<=>(Reference const& a, Reference const& b) noexcept {
    auto const c = a.leaf <=> b.leaf;
    return std::is_neq(c) ? c : a.side <=> b.side;
  }
  friend constexpr bool operator==(Reference const& a, Reference const& b) noexcept {
    return a.leaf == b.leaf && a.side == b.side;
  }
};

namespace detail {
using namespace std::string_view_literals;

/// Returns the leaf named 8* of a gathering: (+8*), inserted after leaf 8.
inline std::optional<LeafOfBook> starred_leaf(IdealCopy const& book, GatheringAt at, int leaf) {
  for (int k = 1;;) {
    auto const one = book.inserted({at, leaf, k});
    if (!one) return std::nullopt;
    if (one->insertion.named_by_place && one->insertion.first_figure == leaf) return LeafOfBook{at, leaf, k};
    k += one->insertion.leaves;
  }
}

class ReferenceReader {
  IdealCopy const& book_;
  ReferenceScan scan_;
  std::size_t start_{}; // where the signature begins

  [[nodiscard]] Error error(Problem problem, std::int64_t limit = 0) const {
    return error_at(problem, place_in(scan_.text(), scan_.at()), scan_.text(), limit);
  }
  /// Makes the reference for B3+1 or 3/8*: a leaf inserted after another. `after` is 0 for a leaf before the first
  /// leaf.
  [[nodiscard]] Expected<Reference> inserted(Signature const& mark, int after, int number, bool star, LeafSide side) {
    auto const gathering = book_.find(mark);
    scan_.go_to(start_);
    if (!gathering) return error(Problem::gathering_not_in_book);
    auto const folded = book_.leaves_folded(gathering->gathering);
    if (after > folded) return error(Problem::no_such_leaf, folded);
    auto const leaf = star ? starred_leaf(book_, gathering->gathering, after)
                           : std::optional{LeafOfBook{gathering->gathering, after, number}};
    if (!leaf || !book_.inserted(*leaf)) return error(Problem::reference_not_in_book);
    return Reference{*leaf, side, gathering->doubtful()};
  }
  [[nodiscard]] FoundSignature mark_in(std::string_view text) const {
    TokenCursor c{text, start_};
    return SignatureReader{text, book_.letters()}.take(c);
  }
  /// Returns the error for a leaf that the book does not have: because its gathering has fewer leaves, because an
  /// inserted gathering lacks it, or because there is no such gathering.
  [[nodiscard]] Error not_there(Signature const& name, int leaf) const {
    if (auto const gathering = book_.find(name))
      return error(Problem::no_such_leaf, book_.leaves_folded(gathering->gathering));
    if (auto const all = book_.find_inserted(name)) {
      auto const insertion = book_.inserted(*book_.leaf_of_number(all->from))->insertion;
      if (leaf > insertion.leaves_folded()) return error(Problem::no_such_leaf, insertion.leaves_folded());
    }
    return error(book_.inserts(name) ? Problem::reference_not_in_book : Problem::gathering_not_in_book);
  }
  /// Reads the leaf and the side after the mark.
  [[nodiscard]] Expected<Reference> after_mark(FoundSignature const& mark, std::string_view text) {
    scan_.go_to(start_);
    if (!mark) return error(Problem::not_a_reference);
    scan_.go_to(mark.end);
    if (!scan_.take('/')) scan_.point(); // A.iii.
    auto leaf = scan_.figures();
    if (leaf < 0) leaf = scan_.roman();
    bool const star = leaf > 0 && scan_.take('*');
    std::int64_t number = 0;
    if (scan_.take('+')) {
      number = scan_.figures();
      if (number < 1 || star) return error(Problem::not_a_reference);
    }
    scan_.point();
    auto const side = scan_.side();
    scan_.take_blanks();
    if ((leaf < 1 && number == 0) || !scan_.at_end()) return error(Problem::not_a_reference);
    auto const bounded = [](std::int64_t figure) {
      return static_cast<int>(figure > most_leaves_in_gathering ? most_leaves_in_gathering + 1 : figure);
    };
    auto const signature = signature_of(mark.key, text, book_.letters());
    if (number > 0 || star) {
      auto const result =
          inserted(signature, bounded(leaf), number > 999999999 ? 0 : static_cast<int>(number), star, side);
      return result;
    }
    if (auto const found = book_.find(signature, bounded(leaf))) return Reference{found->leaf, side, found->doubtful};
    scan_.go_to(start_);
    return not_there(signature, bounded(leaf));
  }

  static constexpr std::string_view words_of_leaves[]{"folios"sv, "folio"sv, "fols."sv, "fol."sv, "fo."sv,
                                                      "leaves"sv, "leaf"sv,  "Bl."sv,   "Blatt"sv};
  static constexpr std::string_view words_of_signatures[]{"signatures"sv, "signature"sv, "sigs."sv,
                                                          "sig."sv,       "sig"sv,       "sign."sv};
  static constexpr std::string_view words_of_pages[]{"pages"sv, "page"sv, "pp."sv, "p."sv};

  /// Takes c. for carta, unless the book has a gathering c, of which c. 3 is a leaf.
  [[nodiscard]] bool takes_carta() {
    auto const c = read_signature("c", book_.letters());
    return !(c && book_.find(*c)) && (scan_.take("cc.") || scan_.take("c."));
  }
  /// Takes "verso of" or "recto of" before the leaf.
  [[nodiscard]] LeafSide side_before() noexcept {
    auto after = scan_;
    auto const side = after.take_in_any_case("recto")   ? LeafSide::recto
                      : after.take_in_any_case("verso") ? LeafSide::verso
                                                        : LeafSide::not_said;
    if (side == LeafSide::not_said || !after.take_blanks() || !after.take_word("of") || !after.take_blanks())
      return LeafSide::not_said;
    scan_ = after;
    return side;
  }
  /// Reads the leaf after "verso of".
  [[nodiscard]] Expected<Reference> of_side(LeafSide side) {
    auto const leaf = ReferenceReader{book_, scan_.rest()}.read();
    if (!leaf) return error(leaf.error().problem, leaf.error().limit);
    if (leaf->side != LeafSide::not_said) return error(Problem::not_a_reference);
    return Reference{leaf->leaf, side, leaf->doubtful};
  }
  /// Reads [A3]r, [A3r] and [3/4], a leaf that is not signed. Returns no value for [A]3, where only the mark is in
  /// brackets.
  [[nodiscard]] std::optional<Reference> in_brackets() {
    auto after = scan_;
    if (!after.take('[')) return std::nullopt;
    auto const inside = after.take_until([](char32_t c) { return c == ']'; });
    if (!after.take(']')) return std::nullopt;
    auto const leaf = ReferenceReader{book_, inside}.read();
    if (!leaf) return std::nullopt;
    auto const side = leaf->side == LeafSide::not_said ? after.side() : leaf->side;
    after.take_blanks();
    if (!after.at_end()) return std::nullopt;
    return Reference{leaf->leaf, side, leaf->doubtful};
  }

public:
  ReferenceReader(IdealCopy const& book, std::string_view text) : book_{book}, scan_{text} {}

  Expected<Reference> read() {
    scan_.take_blanks();
    if (auto const side = side_before(); side != LeafSide::not_said) return of_side(side);
    bool const by_leaf = scan_.take("ff.") || scan_.take("f.") || takes_carta() || scan_.take_any(words_of_leaves);
    if (!by_leaf) static_cast<void>(scan_.take_any(words_of_signatures));
    scan_.take_blanks();
    start_ = scan_.at();
    if (scan_.take_any(words_of_pages)) return scan_.go_to(start_), error(Problem::leaves_not_named);
    if (auto const found = in_brackets()) return *found;
    if (auto const number = scan_.figures(); number >= 0) { // 10b, f. 12v
      auto const side = scan_.side();
      scan_.take_blanks();
      if (scan_.at_end() && (by_leaf || side != LeafSide::not_said)) {
        auto const leaf = book_.leaf_of_number(number);
        if (!leaf) return error(Problem::reference_not_in_book);
        return Reference{*leaf, side};
      }
      scan_.go_to(start_);
    }
    // f. iij: of which gathering?
    if (by_leaf && scan_.rest().find_first_of("0123456789") == std::string_view::npos)
      return error(Problem::not_a_reference);
    auto const text = scan_.text();
    auto const longest = after_mark(mark_in(text), text);
    if (longest) return longest;
    // In π1r and *1r the scanner finds a signature πR; a shorter signature may leave a leaf of the book.
    for (auto end = text.size() < start_ + 32 ? text.size() : start_ + 32; end-- > start_ + 1;) {
      auto const mark = mark_in(text.substr(0, end));
      if (!mark || mark.end != end) continue;
      if (auto const shorter = after_mark(mark, text)) return shorter;
    }
    return longest;
  }
};

/// Returns the leaf that a reference names, even if the formula deletes it.
inline Expected<Reference> find_reference(IdealCopy const& book, std::string_view text) {
  return ReferenceReader{book, text}.read();
}

} // namespace detail

/// Reads a reference and finds its leaf. If several gatherings have one signature, as in volumes described together,
/// the first is meant and the reference is doubtful; the number of a leaf (f. 12v) identifies the others. Errors:
/// not_a_reference, leaves_not_named for a page (p. 5), gathering_not_in_book, no_such_leaf (`limit` is the number of leaves of the gathering),
/// reference_not_in_book for a deleted leaf, an inserted leaf that there is not, or a number after the end of the book.
[[nodiscard]] inline Expected<Reference> read_reference(IdealCopy const& book, std::string_view text) {
  auto const found = detail::find_reference(book, text);
  if (found && !book.leaf_number(found->leaf))
    return error_at(Problem::reference_not_in_book, 1, 1, text.data(), text.size());
  return found;
}

/// The notation of a reference.
enum class ReferenceForm : std::uint8_t {
  signature,   ///< B3v, 36/10r; an inserted leaf by its name, or by the leaf before it: B3+1
  raised_side, ///< B3ᵛ
  roman,       ///< Biij verso, as early books sign; in digits if the numeral could be read as part of the signature
  leaf_number, ///< f. 12v
  leaf_letter  ///< 12b, as in catalogues of incunables; f. 12 if there is no side
};

namespace detail {

inline std::string mark_and_leaf(Signature const& mark, std::string_view figure) {
  std::string text{to_text(mark).view()};
  if (mark.mark() == Mark::number) text += '/';
  return text.append(figure);
}
/// Returns the name of an inserted leaf in the formula. It is empty if the leaf has no name, or if another leaf has the
/// same name.
inline std::string name_of_inserted(IdealCopy const& book, LeafOfBook const& leaf) {
  auto const one = book.inserted(leaf);
  if (!one || (!one->insertion.named && !one->insertion.named_by_place)) return {};
  bool const starred = one->insertion.named_by_place;
  auto text = mark_and_leaf(starred ? book.signature(leaf.gathering) : one->insertion.name,
                            std::to_string(starred ? *one->insertion.first_figure : one->figure()));
  if (starred) text += '*';
  auto const back = find_reference(book, text);
  return back && back->leaf == leaf ? text : std::string{};
}
/// Writes a leaf without a side: by its name, or by the leaf before it if it has no name.
inline std::string leaf_text(IdealCopy const& book, LeafOfBook const& leaf, bool roman) {
  if (leaf.inserted > 0)
    if (auto name = name_of_inserted(book, leaf); !name.empty()) return name;
  auto const signature = book.signature(leaf.gathering);
  auto figure = std::to_string(leaf.leaf);
  if (roman && signature.mark() != Mark::number && leaf.leaf > 0 && leaf.leaf < 4000) {
    std::string numeral{small_roman(leaf.leaf).view()};
    if (numeral.back() == 'i') numeral.back() = 'j';
    // "pi" is π, and a doubled letter is another signature
    auto const letter = static_cast<char>(signature.is_latin() ? 'a' + signature.letter_number() - 1 : '\0');
    if (letter != 'p' && letter != numeral[0] && numeral != "v") figure = numeral;
  }
  auto text = mark_and_leaf(signature, figure);
  if (leaf.inserted > 0) text += '+', text += std::to_string(leaf.inserted);
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
    if (form == ReferenceForm::leaf_letter && said) return std::to_string(*number) + (recto ? 'a' : 'b');
    return "f. " + std::to_string(*number) + (!said ? "" : recto ? "r" : "v");
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
  if (reference.leaf.inserted > 0 || reference.leaf.leaf < 1) return std::nullopt;
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
  if (reference.leaf.inserted > 0 || reference.leaf.leaf < 1 || reference.leaf.leaf > book.leaves_folded(at))
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

template <> struct std::hash<bifolium::Reference> {
  std::size_t operator()(bifolium::Reference const& reference) const noexcept {
    return std::hash<bifolium::LeafOfBook>{}(reference.leaf) * 3U + static_cast<std::size_t>(reference.side);
  }
};
