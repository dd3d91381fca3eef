// SPDX-License-Identifier: MIT
/// Describes a slip for a person who has the book: what is written, what is probably meant, why, and where to look.
#pragma once

#include <bifolium/book/audit.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the name of a slip, after "x for y" or "x is missing".
constexpr std::string_view reason_of(SlipKind kind) {
  switch (kind) {
  case SlipKind::exponent:
    return "another number of leaves was written";
  case SlipKind::omitted_exponent:
    return "the number of leaves is not written, and means this";
  case SlipKind::end_letter:
    return "the run ends with another letter";
  case SlipKind::start_letter:
    return "the run begins with another letter";
  case SlipKind::shifted_letters:
    return "one letter is wrong, and the following letters are shifted";
  case SlipKind::multiple_lost:
    return "the number before the letter was lost";
  case SlipKind::gathering_missing:
    return "a gathering is missing where a letter is skipped";
  case SlipKind::last_missing:
    return "the last gathering is wrong or missing";
  case SlipKind::first_missing:
    return "the preliminaries are missing";
  case SlipKind::gathering_twice:
    return "a gathering is stated twice, or is not in the book";
  case SlipKind::change_missing:
    return "a leaf that was cut away or inserted is not stated";
  case SlipKind::change_twice:
    return "a change to the leaves is counted twice";
  case SlipKind::alphabet:
    return "J, U or W are separate letters in this book";
  case SlipKind::unnumbered_missing:
    return "pages without numbers are missing";
  case SlipKind::unnumbered_value:
    return "another number of pages without numbers was written";
  case SlipKind::unnumbered_extra:
    return "these pages without numbers are not in the book";
  case SlipKind::roman:
    return "a slip in a Roman numeral";
  case SlipKind::unit:
    return "leaves and pages were exchanged";
  case SlipKind::leaf_as_page:
    return "each leaf was counted as one page";
  case SlipKind::restarted:
    return "the numbers continue instead of beginning again, or the reverse";
  case SlipKind::misnumbered:
    return "the book is misnumbered";
  case SlipKind::transposed:
    return "two digits were exchanged";
  case SlipKind::dropped:
    return "a digit was left out";
  case SlipKind::doubled:
    return "one digit too many was written";
  case SlipKind::substituted:
    return "one digit was taken for another";
  case SlipKind::plates_counted:
    return "plates were counted as leaves";
  case SlipKind::blank_not_counted:
    return "a blank leaf was not counted";
  case SlipKind::pages_for_leaves:
    return "pages were given as leaves";
  }
  return "";
}

/// Returns what to look at in the book to decide.
constexpr std::string_view look_at(SlipKind kind) {
  switch (kind) {
  case SlipKind::exponent:
  case SlipKind::omitted_exponent:
    return "count the leaves of this gathering, or find its sewing";
  case SlipKind::end_letter:
  case SlipKind::start_letter:
  case SlipKind::shifted_letters:
  case SlipKind::multiple_lost:
  case SlipKind::gathering_missing:
    return "the signatures at this place in the book";
  case SlipKind::last_missing:
    return "the last gathering and its signature";
  case SlipKind::first_missing:
    return "the leaves before the first signed gathering";
  case SlipKind::gathering_twice:
    return "whether there are two such gatherings";
  case SlipKind::change_missing:
  case SlipKind::change_twice:
    return "stubs, and the conjugates of the first and last leaves";
  case SlipKind::alphabet:
    return "the gathering after V, and whether J, U and W are signed";
  case SlipKind::unnumbered_missing:
  case SlipKind::unnumbered_value:
  case SlipKind::unnumbered_extra:
    return "the pages without numbers, blank ones too";
  case SlipKind::roman:
  case SlipKind::transposed:
  case SlipKind::dropped:
  case SlipKind::doubled:
  case SlipKind::substituted:
    return "the number on the last page of this run";
  case SlipKind::unit:
  case SlipKind::leaf_as_page:
  case SlipKind::pages_for_leaves:
    return "whether the versos have numbers";
  case SlipKind::restarted:
    return "the first number after the preliminaries";
  case SlipKind::misnumbered:
    return "where the page numbers jump";
  case SlipKind::plates_counted:
    return "whether plates were counted as leaves";
  case SlipKind::blank_not_counted:
    return "whether the first or the last leaf is blank";
  }
  return "";
}

/// Describes an edit: 'B-H⁴' for 'B-G⁴'; '[2]' is missing; '(−A1)' is one too many.
inline std::string in_words(Edit const& edit) {
  std::string const old{trimmed(edit.old, " ,")}, put{trimmed(edit.put, " ,")};
  std::string words;
  if (old.empty() && put.empty())
    words = "";
  else if (old.empty())
    words = put + " is missing";
  else if (put.empty())
    words = old + " is one too many";
  else
    words = old + " for " + put;
  auto const reason = std::string{reason_of(edit.kind)};
  return words.empty() ? reason : words + " (" + reason + ')';
}

} // namespace detail
} // namespace v0
} // namespace bifolium
