// SPDX-License-Identifier: MIT
/// Reads a reference: words for leaves or for signatures, a mark, the leaf in figures or in Roman numerals, the side. A
/// mark may go on into the leaf, as in *1r, so the longest one that leaves a leaf of the book is taken. A number is
/// never divided: 21 is not leaf 1 of 2. If the whole text is also the name of a gathering of the book, as 2r and ii may
/// be, the reference is doubtful.
#pragma once

#include <bifolium/collation/detail/name_of_gathering.hpp>
#include <bifolium/collation/detail/reference_scan.hpp>
#include <bifolium/collation/leaf_and_side.hpp>

namespace bifolium {
inline namespace v0 {

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

  /// Returns the leaf, which is doubtful if the text is also the name of a gathering of the book.
  [[nodiscard]] Reference perhaps_gathering(Reference leaf) const {
    leaf.doubtful = leaf.doubtful || names_gathering(book_, trimmed(scan_.text().substr(start_), " "));
    return leaf;
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
        Reference const found{*leaf, side};
        return by_leaf ? found : perhaps_gathering(found);
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
      if (is_digit(text[end - 1]) && is_digit(text[end])) continue;
      auto const mark = mark_in(text.substr(0, end));
      if (!mark || mark.end != end) continue;
      if (auto const shorter = after_mark(mark, text)) return perhaps_gathering(*shorter);
    }
    return longest;
  }
};

/// Returns the leaf that a reference names, even if the formula deletes it.
inline Expected<Reference> find_reference(IdealCopy const& book, std::string_view text) {
  return ReferenceReader{book, text}.read();
}

} // namespace detail

} // namespace v0
} // namespace bifolium
