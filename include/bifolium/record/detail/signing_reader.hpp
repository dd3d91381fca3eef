// SPDX-License-Identifier: MIT
/// Reads a statement of signing: the rule, then leaves and the words about them. A sign applies until the next one, and
/// a number alone is a leaf of the gathering named before it, as bibliographers write.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/signature_reader.hpp>
#include <bifolium/record/signing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningReader {
  TextCursor cursor_;
  Letters letters_;
  Limits limits_;
  Signing read_{};
  SigningPlace last_{};
  bool any_place_{}, range_too_long_{};
  /// Thicker gatherings were not signed leaf by leaf, and a statement of few characters would name thousands of leaves.
  static constexpr int longest_range = 64;

  /// Takes a whole number, if there is one. Returns a number above `most_leaves_in_gathering` if it is too large.
  std::optional<int> figure() {
    auto const number = cursor_.take_capped_number(most_leaves_in_gathering);
    return number ? std::optional{static_cast<int>(*number)} : std::nullopt;
  }
  static bool can_be_leaf(std::optional<int> leaf) {
    return !leaf || (*leaf >= 1 && *leaf <= most_leaves_in_gathering);
  }
  [[nodiscard]] std::string_view text() const { return cursor_.text(); }
  /// Makes an error that quotes the text from an item to the end, or all of it if the item is missing at the end.
  [[nodiscard]] Error error(std::size_t from) const {
    auto const quoted = text().substr(from < text().size() ? from : 0);
    return error_at(Problem::not_a_signing, place_in(text(), from), quoted);
  }
  /// Makes an error that quotes an item up to the cursor.
  [[nodiscard]] Error quoted(Problem problem, std::size_t from, std::int64_t limit) const {
    return error_in(text(), {from, cursor_.at()}, problem, limit);
  }
  static bool is_sign(char32_t c) { return c == '+' || is_dash(c) || c == 0x2212; }

  /// Reads $4, $1,3, $1-3 or $½+1.
  bool rule() {
    if (!cursor_.take('$')) return false;
    if (cursor_.take("½") || cursor_.take("1/2")) {
      read_.half = true;
      if (cursor_.peek() == '+' && is_digit(cursor_.peek(1))) cursor_.skip(1), read_.beyond_half = *figure();
      return read_.beyond_half <= most_leaves_in_gathering;
    }
    while (true) {
      auto const from = figure();
      if (!from || !can_be_leaf(from)) return false;
      auto to = from;
      auto const here = cursor_;
      if (cursor_.take_dash()) {
        to = figure();
        if (!to) cursor_ = here, to = from; // $4-A3: a sign
        if (*to < *from || !can_be_leaf(to)) return false;
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
    return true;
  }
  [[nodiscard]] FoundSignature mark_here() const {
    TokenCursor c{text(), cursor_.at()};
    return SignatureReader{text(), letters_}.take(c);
  }
  /// Reads A3, $3, 2M, 36/10, or 4 alone for a leaf of the gathering before.
  bool place(SigningPlace& found) {
    if (cursor_.take('$')) {
      auto const leaf = figure();
      found = {true, {}, leaf, {}};
      return can_be_leaf(leaf);
    }
    // a number is a leaf of the gathering before, unless it belongs to a mark (2)(3) or a stroke follows it (36/10)
    bool const begins_with_figure = cursor_.at_digit();
    auto const mark = mark_here();
    if (!mark || (mark.key.mark() == Mark::symbol && text()[mark.key.text_from] == '+'))
      return false; // here + is a sign
    auto const signature = signature_of(mark.key, text(), letters_);
    cursor_.go_to(mark.end);
    bool const stroke = cursor_.take('/');
    if (any_place_ && !stroke && begins_with_figure && signature.mark() == Mark::number) {
      found = last_;
      found.leaf = static_cast<int>(signature.multiple());
      return found.leaf <= most_leaves_in_gathering;
    }
    auto const leaf = figure();
    found = {false, signature, leaf, {}};
    return can_be_leaf(leaf) && (leaf || stands_alone(signature));
  }
  /// Returns true if a mark is one without a leaf after it. (?)2 and (a)2 name leaves, (?) and (a) alone are remarks.
  [[nodiscard]] static bool stands_alone(Signature const& signature) {
    auto const unread = signature.mark() == Mark::symbol && std::string_view{signature.text()}.starts_with("(?");
    return !unread && !signature.is_in_parentheses();
  }
  /// Reads the 5 of A3-5. Returns the leaf itself if no leaf follows.
  std::optional<int> last_of_range(std::optional<int> leaf) {
    auto const here = cursor_;
    if (!leaf || !cursor_.take_dash()) return leaf;
    auto const to = figure();
    if (!to) cursor_ = here;
    return to ? to : leaf;
  }
  /// Each leaf of a range is an exception.
  void except(bool is_signed, SigningPlace place, std::optional<int> to) {
    read_.exceptions.push_back({is_signed, place});
    while (place.leaf < to) {
      ++*place.leaf;
      read_.exceptions.push_back({is_signed, place});
    }
  }
  /// Returns true if the quotation marks belong to a mark with its leaf after them, as in "G&H"4, and false for 'V4'.
  [[nodiscard]] bool quotes_a_mark() const {
    auto const mark = mark_here();
    return mark && mark.end < text().size() && (is_digit(text()[mark.end]) || text()[mark.end] == '/');
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
    std::string result{TextSpan{from, cursor_.at()}.of(text())};
    if (quoted) cursor_.take_quotation_mark();
    return result;
  }
  [[nodiscard]] bool item_ends() {
    cursor_.take_blanks();
    char const c = cursor_.peek();
    return c == '\0' || c == ',' || c == ';' || c == ')' || c == ']';
  }

public:
  SigningReader(std::string_view text, Letters added, Limits const& limits)
      : cursor_{text}, letters_{added}, limits_{limits} {}

  Expected<Signing> read() {
    if (is_too_long(text(), limits_)) return too_long(limits_);
    if (auto const zero = text().find('\0'); zero != std::string_view::npos)
      return error(zero); // a zero byte means the end below
    cursor_.take_blanks();
    if (cursor_.take('[')) cursor_.take_blanks();
    if (auto const from = cursor_.at(); !rule()) return error(from);
    while (true) {
      cursor_.take_blanks();
      if (cursor_.at_end()) return static_cast<Signing&&>(read_);
      auto const from = cursor_.at();
      if (take_punctuation() || take_mode()) continue;
      if (!item(from))
        return range_too_long_ ? quoted(Problem::signing_range_too_long, from, longest_range) : error(from);
      if (read_.exceptions.size() + read_.missigned.size() > limits_.changes)
        return quoted(Problem::too_many_changes, from, limits_.changes);
    }
  }

private:
  /// What applies to the following leaves: a minus, a plus, or `missigning`.
  enum class Mode : std::uint8_t { none, minus, plus, missigning } mode_{};
  bool place_next_{}; // true after a sign or a comma, where )( is a mark

  /// Takes commas and brackets between the items, but not those that are marks: )(, (:.
  bool take_punctuation() {
    char const c = cursor_.peek(), after = cursor_.peek(1);
    bool const mark = (c == '(' && (after == ':' || (mark_here() && mark_here().key.mark() == Mark::symbol))) ||
                      (c == ')' && after == '(' && place_next_);
    place_next_ = mode_ != Mode::none && c == ',';
    if ((c == ')' && !mark) || c == ']')
      mode_ = Mode::none;
    else if (c != ',' && c != ';' && c != '.' && (c != '(' || mark) && (c != '[' || mode_ != Mode::none))
      return false;
    cursor_.skip(1);
    return true;
  }
  bool take_mode() {
    if (bool const plus = cursor_.peek() == '+'; cursor_.take_one(is_sign)) {
      mode_ = plus ? Mode::plus : Mode::minus;
      place_next_ = true;
      return true;
    }
    if (cursor_.take_word("signed")) return mode_ = Mode::none, true;
    if (cursor_.take_word("and") || cursor_.take_word("but") || cursor_.take_word("with") ||
        cursor_.take_word("except"))
      return true;
    if (cursor_.take_word("missigning") || cursor_.take_word("signing") || cursor_.take_word("missigned") ||
        cursor_.take_word("mis-signed"))
      return mode_ = Mode::missigning, true;
    return false;
  }
  /// Reads a leaf with the words about it: A3, A3-5 unsigned, V4 as 'U4'.
  bool item(std::size_t from) {
    SigningPlace found;
    bool const quoted = mode_ == Mode::missigning && opens_quotation(cursor_.character().value) && !quotes_a_mark();
    if (quoted) cursor_.take_quotation_mark();
    if (!place(found)) return false;
    found.at = cursor_.place(from);
    if (quoted && !cursor_.take_quotation_mark()) return false;
    last_ = found;
    any_place_ = true;
    auto const to = last_of_range(found.leaf);
    if (to < found.leaf || !can_be_leaf(to)) return false;
    range_too_long_ = to && *to - *found.leaf >= longest_range;
    if (range_too_long_) return false;
    if (mode_ == Mode::minus || mode_ == Mode::plus) return except(mode_ == Mode::plus, found, to), true;
    return said_of(found, to);
  }
  /// Reads unsigned, signed or as 'U4' after the leaf.
  bool said_of(SigningPlace const& found, std::optional<int> to) {
    cursor_.take_blanks();
    if (cursor_.take_word("unsigned") || cursor_.take("not signed")) return except(false, found, to), true;
    bool const as_follows = cursor_.take_word("as");
    if (!as_follows && !cursor_.take_word("missigned") && !cursor_.take_word("mis-signed") &&
        !cursor_.take_word("signed"))
      return false;
    if (item_ends()) return except(true, found, to), true; // C5 signed
    if (!as_follows) static_cast<void>(cursor_.take_word("as"));
    auto as = printed();
    if (as.empty() || !found.leaf || to != found.leaf) return false;
    read_.missigned.push_back({found, static_cast<std::string&&>(as)});
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
