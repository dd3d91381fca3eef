// SPDX-License-Identifier: MIT
/// The words for each kind of slip, and what in the book decides whether it was made.
#pragma once

#include <bifolium/book/field.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The words for a kind of slip.
struct SlipWords {
  char const* reason; ///< its name, after "x for y" or "x is missing"
  char const* settle; ///< what to look at in the book to decide
};
/// In the order of SlipKind.
inline constexpr SlipWords slip_words[slip_count]{
    {"another number of leaves was written",
     "the leaves of this gathering: count them, or find its sewing"}, // exponent
    {"the number of leaves is not written, and means this",
     "the leaves of this gathering: count them, or find its sewing"},                   // omitted_exponent
    {"the run ends with another letter", "the signatures at this place in the book"},   // end_letter
    {"the run begins with another letter", "the signatures at this place in the book"}, // start_letter
    {"one letter is wrong, and the following letters are shifted",
     "the signatures at this place in the book"},                                          // shifted_letters
    {"the number before the letter was lost", "the signatures at this place in the book"}, // multiple_lost
    {"a gathering is missing where a letter is skipped",
     "the signatures at this place in the book"},                                       // gathering_missing
    {"the last gathering is wrong or missing", "the last gathering and its signature"}, // last_missing
    {"the preliminaries are missing", "the leaves before the first signed gathering"},  // first_missing
    {"a gathering is stated twice, or is not in the book", "whether there are two such gatherings"}, // gathering_twice
    {"a leaf that was cut away or inserted is not stated",
     "stubs, and the conjugates of the first and last leaves"}, // change_missing
    {"a change to the leaves is counted twice",
     "stubs, and the conjugates of the first and last leaves"}, // change_twice
    {"J, U or W are separate letters in this book",
     "the gathering after V, and whether J, U and W are signed"},                       // alphabet
    {"pages without numbers are missing", "the pages without numbers, blank ones too"}, // unnumbered_missing
    {"another number of pages without numbers was written",
     "the pages without numbers, blank ones too"}, // unnumbered_value
    {"these pages without numbers are not in the book",
     "the pages without numbers, blank ones too"},                            // unnumbered_extra
    {"a slip in a Roman numeral", "the number on the last page of this run"}, // roman
    {"leaves and pages were exchanged", "whether the versos have numbers"},   // unit
    {"each leaf was counted as one page", "whether the versos have numbers"}, // leaf_as_page
    {"the numbers continue instead of beginning again, or the reverse",
     "the first number after the preliminaries"},                                    // restarted
    {"the book is misnumbered", "where the page numbers jump"},                      // misnumbered
    {"two digits were exchanged", "the number on the last page of this run"},        // transposed
    {"a digit was left out", "the number on the last page of this run"},             // dropped
    {"one digit too many was written", "the number on the last page of this run"},   // doubled
    {"one digit was taken for another", "the number on the last page of this run"},  // substituted
    {"plates were counted as leaves", "whether plates were counted as leaves"},      // plates_counted
    {"a blank leaf was not counted", "whether the first or the last leaf is blank"}, // blank_not_counted
    {"pages were given as leaves", "whether the versos have numbers"},               // pages_for_leaves
};

/// Returns the words for a kind of slip.
constexpr SlipWords const& words_of(SlipKind kind) { return slip_words[static_cast<std::size_t>(kind)]; }

} // namespace detail
} // namespace v0
} // namespace bifolium
