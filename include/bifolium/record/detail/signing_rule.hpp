// SPDX-License-Identifier: MIT
/// Reads the rule of a statement of signing: $4, $1,3, $1-3, $½+1. The first number of an exception can stand directly after
/// the rule, $4, 2A3, so a number is of the rule only if nothing after it makes it part of a signature.
#pragma once

#include <bifolium/record/detail/signing_marks.hpp>
#include <bifolium/record/signing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningRule {
  SigningMarks& marks_;
  TextCursor& cursor_{marks_.cursor};
  Signing& read_;

  /// Reads the + 1 of $½ + 1, but not the sign before a leaf: $½ +2A3.
  void beyond_half() {
    auto const here = cursor_;
    cursor_.take_blanks();
    bool const plus = cursor_.take('+');
    cursor_.take_blanks();
    auto const more = plus ? marks_.figure() : std::nullopt;
    if (!more || is_latin_letter(cursor_.peek()) || cursor_.peek() == '/')
      cursor_ = here;
    else
      read_.beyond_half = *more;
  }
  /// Reads the number of a leaf in the rule, 4 or iv.
  std::optional<int> leaf_of_rule() {
    if (!is_latin_letter(cursor_.peek())) return marks_.figure();
    auto const leaf = marks_.roman_figure();
    if (leaf) read_.numerals = SigningNumerals::roman;
    return leaf;
  }
  /// Reads the `of 4` of $2 (of 4) or $2 of 4 leaves: of which gatherings the rule is said. $2 of 4A is something else.
  void leaves_of_gathering() {
    auto look = cursor_;
    look.take_blanks();
    bool const round = look.take('(');
    if (!look.take_word("of")) return;
    look.take_blanks();
    auto const leaves = look.take_capped_number(most_leaves_in_gathering);
    if (!leaves || *leaves < 1 || *leaves > most_leaves_in_gathering || is_latin_letter(look.peek())) return;
    look.take_blanks();
    static_cast<void>(look.take_word("leaves"));
    if (round && !look.take(')')) return;
    read_.of = static_cast<int>(*leaves);
    cursor_ = look;
  }

public:
  SigningRule(SigningMarks& marks, Signing& read) : marks_{marks}, read_{read} {}

  /// Reads $4, $1,3, $1-3 or $½+1.
  bool take() {
    if (!cursor_.take('$')) return false;
    if (cursor_.take("½") || cursor_.take("1/2")) {
      read_.half = true;
      beyond_half();
      leaves_of_gathering();
      return read_.beyond_half <= most_leaves_in_gathering;
    }
    while (true) {
      auto const from = leaf_of_rule();
      if (!from || !marks_.can_be_leaf(from)) return false;
      auto to = from;
      auto const here = cursor_;
      if (cursor_.take_dash()) {
        to = leaf_of_rule();
        if (!to) cursor_ = here, to = from; // $4-A3: a sign
        if (*to < *from || !marks_.can_be_leaf(to)) return false;
      }
      auto const next = read_.listed.empty() ? 1 : read_.listed.back() + 1;
      for (int leaf = *from < next ? next : *from; leaf <= *to; ++leaf) read_.listed.push_back(leaf);
      auto ahead = cursor_;
      if (!ahead.take(',')) break;
      ahead.take_blanks();
      auto after = ahead; // $4, 2A3: the number belongs to a signature
      if (!after.take_capped_number(most_leaves_in_gathering) || is_latin_letter(after.peek())) break;
      cursor_ = ahead;
    }
    // one number means that many leaves from the first, and so does a list without a gap
    if (read_.listed.size() == 1 || read_.listed.back() == static_cast<int>(read_.listed.size()))
      read_.first = read_.listed.back(), read_.listed.clear();
    leaves_of_gathering();
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
