// SPDX-License-Identifier: MIT
/// Reads the leaves that a statement of signing names: A3, $3, 2M, 36/10, the title leaf, and what is printed on one in the
/// place of its mark. A number alone is a leaf of the gathering named before it, so the last place is kept.
#pragma once

#include <bifolium/record/detail/signing_marks.hpp>
#include <bifolium/record/signing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningPlaces {
  SigningMarks& marks_;
  TextCursor& cursor_{marks_.cursor};
  SigningPlace last_{};
  bool any_place_{};

  /// Returns true if a mark is one without a leaf after it. (?)2 and (a)2 name leaves, (?) and (a) alone are remarks.
  [[nodiscard]] static bool stands_alone(Signature const& signature) {
    auto const unread = signature.mark() == Mark::symbol && std::string_view{signature.text()}.starts_with("(?");
    return !unread && !signature.is_in_parentheses();
  }

public:
  explicit SigningPlaces(SigningMarks& marks) : marks_{marks} {}

  /// Notes a place as the last one that was named.
  void named(SigningPlace const& place) {
    if (!place.title) last_ = place, any_place_ = true;
  }
  /// Reads A3, $3, 2M, 36/10, or 4 alone for a leaf of the gathering before.
  bool take(SigningPlace& found) {
    if (cursor_.take('$')) {
      auto const leaf = marks_.figure();
      found = {true, {}, leaf, {}};
      return marks_.can_be_leaf(leaf);
    }
    if (marks_.take_title()) return found = {false, {}, {}, {}, true}, true;
    // a number is a leaf of the gathering before, unless it belongs to a mark (2)(3) or a stroke follows it (36/10)
    bool const begins_with_figure = cursor_.at_digit();
    auto const mark = marks_.mark_here();
    if (!mark || marks_.is_plus(mark)) return false; // here + is a sign
    auto const signature = signature_of(mark.key, marks_.text(), marks_.letters);
    cursor_.go_to(mark.end);
    bool const stroke = cursor_.take('/');
    if (any_place_ && !stroke && begins_with_figure && signature.mark() == Mark::number) {
      found = last_;
      found.leaf = static_cast<int>(signature.multiple());
      return found.leaf <= most_leaves_in_gathering;
    }
    auto const leaf = is_latin_letter(cursor_.peek()) ? marks_.roman_figure() : marks_.figure();
    if (is_latin_letter(cursor_.peek()) && !leaf) return false; // a word
    found = {false, signature, leaf, {}};
    return marks_.can_be_leaf(leaf) && (leaf || stands_alone(signature));
  }
  /// Reads the 5 of A3-5. Returns the leaf itself if no leaf follows.
  std::optional<int> last_of_range(std::optional<int> leaf) {
    auto const here = cursor_;
    if (!leaf || !cursor_.take_dash()) return leaf;
    auto const to = marks_.figure();
    if (!to) cursor_ = here;
    return to ? to : leaf;
  }
  /// Returns true if the quotation marks belong to a mark with its leaf after them, as in "G&H"4, and false for 'V4'.
  [[nodiscard]] bool quotes_a_mark() const {
    auto const mark = marks_.mark_here();
    return mark && mark.end < marks_.text().size() &&
           (is_digit(marks_.text()[mark.end]) || marks_.text()[mark.end] == '/');
  }
  /// Reads the printed mark: 'U4', U4, $*.
  std::string printed() {
    cursor_.take_blanks();
    bool const quoted = cursor_.take_quotation_mark();
    auto const from = cursor_.at();
    while (!cursor_.at_end()) {
      auto const c = cursor_.character();
      bool const closes =
          quoted ? is_quotation_mark(c.value)
                 : c.value == ',' || c.value == ';' || c.value == ')' || c.value == ']' || is_blank(c.value);
      if (closes) break;
      cursor_.skip(c.bytes);
    }
    std::string result{TextSpan{from, cursor_.at()}.of(marks_.text())};
    if (quoted) cursor_.take_quotation_mark();
    return result;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
