// SPDX-License-Identifier: MIT
/// Reads the list of the leaves that a copy has, "A1-8, B1 B2 C1.8 D K8 facsimile", or of those that it lacks, as most
/// catalogues give it: "wants C3.6, K8".
#pragma once

#include <bifolium/copy/leaf_span.hpp>
#include <bifolium/core/limits.hpp>

namespace bifolium {
inline namespace v0 {

/// The leaves of a copy, in its order.
struct LeavesPresent {
  std::vector<LeafSpan> spans{}; ///< the leaves as listed
  /// names that can mean more than one leaf or gathering, and wanting leaves that the formula does not have, with
  /// column
  std::vector<Error> doubts{};
  /// Returns the doubts.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND { return doubts; }
  /// Returns the doubts of temporary leaves by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<std::vector<Error>&&>(doubts); }
  friend bool operator==(LeavesPresent const&, LeavesPresent const&) = default;
};

/// Reads the leaves of a copy, in the order of the copy: references and runs of them, separated by blanks, commas or
/// semicolons: "A1-8, B1 B2 C-D f.30-32". A gathering alone means all its leaves, and an empty text means that there is
/// none. B3.6 are two leaves, B3 and B6; leaves between these two that the list names next are taken there: "B1.4 B2"
/// is B1, B2 and B4. Inserted leaves are named as the formula prints them (χ1, a1-4) or by the leaf before them (A3+1).
/// The list may name a leaf that the formula removes, since some copies still have it. A word after leaves gives their
/// state: facsimile, manuscript, supplied, blank, mounted, or a word for damage (torn, stained). A figure alone after a leaf is a
/// leaf of the same gathering, "B1-3,5", or after a number of the book one of the book: "f. 3, 6".
///
/// The leaves after "wants", "wanting", "lacks", "missing" or a word like them are not there. "Wants C3.6 and all after
/// H8" is the whole book without these leaves, and "A-K (wanting C3.6) L" is the list without them. "A-K, lacking A1,
/// supplied in facsimile" has a facsimile of A1. "E8 wanting" and "A-L (E8 lacking)" are read where it is clear which
/// leaves are meant, and −E8 as "wants E8". A list that only gives states, "A1 in facsimile", is of a whole copy. "Wants
/// the last leaf", "first and last leaves" and "final blank" name the ends of the book, and "complete", "perfect" or "all
/// leaves" is all of it, also in "all but B3". "Wants A-C except B4" leaves B4 there. What `wants` writes is read.
///
/// Words that stand beside leaves are also known in German, French, Italian, Spanish, Dutch and Latin: "es fehlen die
/// Bl. A1 und A8", "incomplet des cahiers C et D", "falta la última hoja", "manquent les 2 derniers ff.". The number of
/// leaves may come before their names, "lacks two leaves (A1 and B3)"; "B only" and "otherwise complete" are read, and so are
/// "first and last quires", "the last leaf of B" and "the inner bifolium of B". "A1 lacks lower corner" says that the leaf is
/// there and damaged. "B3 bound after B6" and "D misbound before C" say that leaves are there and stand elsewhere in the
/// copy; of "B3 misbound" nobody knows where, so that it is taken in the order of the formula, with a doubt. A word that is
/// not known is an error.
///
/// Leaves may also be given by their place: "leaves 3-6 of B", "B3 and its conjugate", "2 leaves at end", "from K5 on", "K5 to
/// the end"; "begins at A3, ends at L2" is a copy that lacks what comes before and after. "Consists of B1-8" and
/// "vorhanden: A-C" are lists of what is there. A word for what is printed on a leaf that is not named, "lacks half-title,
/// A3", is doubted, leaves_not_named, and the other leaves are read.
///
/// A list is of paper, so one side of a leaf stands for the leaf, with a doubt: "lacks A1r". "A1v blank", "A1 (verso blank)" and
/// "A1, blank verso" say that the leaf is there and is not blank; "lacks A1r-A3v" and "A1r, A1v" are whole leaves.
///
/// What is a gathering of the book is read as that before anything else: 21 is no leaf of 2, 2r no recto, (*) no
/// parenthesis; blanks in [red star] part nothing. In a book with a gathering f, leaf 3 of the book is "f. 3" and not
/// "f 3". After a word for leaves Roman numerals are numbers, "ff. I-III", and one alone that is also a gathering is doubted.
/// Where a text can be read in two ways that the book has, the list has a doubt, name_in_two_ways: "2/1, 3" means
/// leaf 2/3, "ii" gathering 2i, and & before a leaf is "and" among leaves that are wanting.
///
/// If several gatherings have a name, the next one in the order of the list is meant: in a book of two parts that are
/// both signed A to B, "A-B A-B" is both. Doubts: name_of_several, unless the list has the name as often as the book;
/// name_in_two_ways; leaf_or_word for a word such as Ej. or di that can be leaf E1 or d1; wanting_in_every_copy;
/// only_states_of_leaves; counts_of_gatherings for a formula without raised figures, "π2 A-K8 L4", whose numbers are read
/// as counts of leaves; leaves_left_out for "A-K, lacks L" of a book that has more gatherings; leaves_miscounted for "lacks
/// three leaves (A1 and B3)"; side_of_leaf; said_in_two_ways for "A1, i. e. A2";
/// bound_elsewhere.
///
/// Errors, with the column: those of read_reference; leaves_not_named for pages, numbers of leaves and words for a leaf
/// ("p. 5-6", "2 leaves", "title"), because the formula does not say which leaves they are, and for a word that a copy
/// is not whole ("imperfect", "unvollständig") unless those that are wanting come next; run_goes_backwards;
/// counts_differ for a formula without raised figures in which a number is not the count of its gathering;
/// not_a_reference also if nothing is said to be wanting, and wanting_after_leaves if the word for it comes last;
/// exception_of_nothing; sheet_of_gathering for "the outer sheet of B", because only the format says how many leaves a sheet
/// has; the limits of core/limits.hpp.
/// Example: `(*read_leaves_present(IdealCopy{*read_formula("A8")}, "wants A1")).spans[0].leaves() == 7`.
[[nodiscard]] BIFOLIUM_INLINE Expected<LeavesPresent> read_leaves_present(IdealCopy const& book, std::string_view text,
                                                                          Limits const& limits = {});

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/copy/detail/read_leaves_present.hpp>
#endif
