// SPDX-License-Identifier: MIT
/// Reads what stands between the runs of a statement of pages: commas, full stops, dashes, plus signs, parentheses, and the
/// semicolon before another volume. The same signs stand before a size, in a date and in the name of a volume, so that what
/// comes after them is looked at first.
#pragma once

#include <bifolium/record/detail/page_remark_reader.hpp>
#include <bifolium/record/detail/size_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageSeparatorReader : protected PageRemarkReader {
  /// Returns true before the name of a volume: 320. T. 2: pp. viii, 240.
  [[nodiscard]] bool volume_follows(TextCursor look) const {
    auto number = volume_after();
    return take_volume_number(look, number) || take_volume_name(look, number);
  }
  /// Takes a full stop between numbers, `pp. xii. 320`, or between a number and its unit, `viii., 320. p.`.
  bool take_stop() {
    auto look = cursor_;
    bool const unit_may_follow = extent_ && group_ < runs().size();
    if (runs().empty() || !look.take('.')) return false;
    bool const blanks = look.take_blanks();
    if (blanks && unit_before_ && volume_follows(look)) return cursor_.skip(1), true;
    if (extent_ && !unit_may_follow) return false;
    bool const number = blanks && (look.at_digit() || look.peek() == '[' || numeral_bytes(look) > 0);
    if (!number && !(unit_may_follow && (look.peek() == ',' || take_page_unit(look) != nullptr))) return false;
    cursor_.skip(1);
    return true;
  }
  /// Takes a dash after the end of a sequence, as French catalogues write it: [4]-319 [i.e. 321]-[3] p., [8] p.-320 p.
  bool take_dash_of_sequences() {
    auto look = cursor_;
    if (runs().empty() || !look.take_dash()) return false;
    look.take_blanks();
    bool const number = look.peek() == '[' || (extent_ && (look.at_digit() || numeral_bytes(look) > 0));
    if (number && !size_follows()) cursor_ = look;
    return number && cursor_.at() == look.at();
  }

protected:
  using PageRemarkReader::PageRemarkReader;

  /// Returns the number of bytes of the Roman numeral at the cursor, 0 if there is none.
  static std::size_t numeral_bytes(TextCursor const& c) {
    auto const roman = page_numeral(c.rest());
    return roman ? roman->bytes : 0;
  }
  /// Returns true before (8) or (4 ff.), a number in parentheses, with its unit or alone.
  [[nodiscard]] bool parenthesis_of_number() const {
    auto look = cursor_;
    if (!look.take('(')) return false;
    auto const roman = numeral_bytes(look);
    if (!look.take_number()) look.skip(roman);
    if (look.at() == cursor_.at() + 1) return false;
    look.take_blanks();
    static_cast<void>(take_page_unit(look));
    return look.peek() == ')';
  }
  /// Returns true before `; 20 cm`, `19 x 12 cm` or `8vo`, where the extent ends.
  [[nodiscard]] bool size_follows() const {
    auto look = cursor_;
    static_cast<void>(look.take(';'));
    look.take_blanks();
    if (look.at_digit() && format_at_start(look.rest())) return true;
    for (int numbers = 0; numbers < 3 && look.at_digit(); ++numbers) {
      while (look.at_digit() || ((look.peek() == '.' || look.peek() == ',') && is_digit(look.peek(1)))) look.skip(1);
      look.take_blanks();
      if (take_size_unit(look)) return true;
      if (!look.take('x') && !look.take("×") && !look.take_dash()) return false;
      look.take_blanks();
    }
    return false;
  }
  bool take_separator() {
    if (cursor_.peek() == ';' && !size_follows()) {
      cursor_.skip(1);
      if (!runs().empty() && runs().back().part == part_ && part_ < UINT16_MAX) ++part_, sequences_.begin_part();
      return true;
    }
    if (take_stop() || take_dash_of_sequences()) return true;
    if (depth_ > 0 && cursor_.take(')')) {
      if (unit_in_parenthesis_ && group_ < runs().size()) take_unit(*unit_in_parenthesis_);
      unit_in_parenthesis_.reset();
      return --depth_, true;
    }
    bool const again = group_ == runs().size() && !runs().empty() && parenthesis_of_number(); // 240 p. (120 leaves)
    if (depth_ > 0 && !again && cursor_.take('(')) return ++depth_, true;
    return cursor_.take(',') || cursor_.take('+') || cursor_.take('&') || take_and(cursor_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
