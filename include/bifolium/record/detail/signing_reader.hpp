// SPDX-License-Identifier: MIT
/// Reads a statement of signing: the rule, then leaves and the words about them. A sign applies until the next one, and
/// a number alone is a leaf of the gathering named before it, as bibliographers write. Letters that make a word are no
/// signatures: of all words between the leaves only those for the title leaf and for the numerals are known.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/record/detail/signing_marks.hpp>
#include <bifolium/record/signing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningReader : SigningMarks {
  Limits limits_;
  Signing read_{};
  SigningPlace last_{};
  std::size_t group_from_{}; // the first exception since the last sign
  bool any_place_{};

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

  /// Reads the + 1 of $½ + 1, but not the sign before a leaf: $½ +2A3.
  void beyond_half() {
    auto const here = cursor_;
    cursor_.take_blanks();
    bool const plus = cursor_.take('+');
    cursor_.take_blanks();
    auto const more = plus ? figure() : std::nullopt;
    if (!more || is_latin_letter(cursor_.peek()) || cursor_.peek() == '/')
      cursor_ = here;
    else
      read_.beyond_half = *more;
  }
  /// Reads the number of a leaf in the rule, 4 or iv.
  std::optional<int> leaf_of_rule() {
    if (!is_latin_letter(cursor_.peek())) return figure();
    auto const leaf = roman_figure();
    if (leaf) read_.numerals = SigningNumerals::roman;
    return leaf;
  }
  /// Leaves the `of 4` of $2 (of 4) unread: it says of which gatherings the rule is.
  void leave_leaves_of_gathering() {
    auto look = cursor_;
    look.take_blanks();
    bool const round = look.take('(');
    auto const from = look.at();
    bool found = look.take_word("of");
    look.take_blanks();
    found = found && look.take_capped_number(most_leaves_in_gathering).has_value();
    auto const to = look.at();
    look.take_blanks();
    static_cast<void>(look.take_word("leaves"));
    if (!found || (round && !look.take(')')) || is_latin_letter(text()[to < text().size() ? to : 0])) return;
    read_.warn(error_in(text(), {from, to}, Problem::text_not_read, 0));
    cursor_ = look;
  }
  /// Reads $4, $1,3, $1-3 or $½+1.
  bool rule() {
    if (!cursor_.take('$')) return false;
    if (cursor_.take("½") || cursor_.take("1/2")) {
      read_.half = true;
      beyond_half();
      return read_.beyond_half <= most_leaves_in_gathering;
    }
    while (true) {
      auto const from = leaf_of_rule();
      if (!from || !can_be_leaf(from)) return false;
      auto to = from;
      auto const here = cursor_;
      if (cursor_.take_dash()) {
        to = leaf_of_rule();
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
    leave_leaves_of_gathering();
    return true;
  }
  /// Reads A3, $3, 2M, 36/10, or 4 alone for a leaf of the gathering before.
  bool place(SigningPlace& found) {
    if (cursor_.take('$')) {
      auto const leaf = figure();
      found = {true, {}, leaf, {}};
      return can_be_leaf(leaf);
    }
    if (take_title()) return found = {false, {}, {}, {}, true}, true;
    // a number is a leaf of the gathering before, unless it belongs to a mark (2)(3) or a stroke follows it (36/10)
    bool const begins_with_figure = cursor_.at_digit();
    auto const mark = mark_here();
    if (!mark || is_plus(mark)) return false; // here + is a sign
    auto const signature = signature_of(mark.key, text(), letters_);
    cursor_.go_to(mark.end);
    bool const stroke = cursor_.take('/');
    if (any_place_ && !stroke && begins_with_figure && signature.mark() == Mark::number) {
      found = last_;
      found.leaf = static_cast<int>(signature.multiple());
      return found.leaf <= most_leaves_in_gathering;
    }
    auto const leaf = is_latin_letter(cursor_.peek()) ? roman_figure() : figure();
    if (is_latin_letter(cursor_.peek()) && !leaf) return false; // a word
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
      : SigningMarks{text, added}, limits_{limits} {}

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
      if (take_punctuation() || take_numerals()) continue;
      auto const gatherings = take_in_gatherings();
      if (gatherings == Taken::yes || (gatherings == Taken::no && take_mode())) continue;
      if (gatherings == Taken::refused || !item(from))
        return range_too_long_ ? quoted(Problem::signing_range_too_long, from, longest_range) : error(from);
      if (read_.exceptions.size() + read_.missigned.size() > limits_.changes)
        return quoted(Problem::too_many_changes, from, limits_.changes);
    }
  }

private:
  /// What applies to the following leaves: a minus, a plus, `missigning`, or `except`, after which a leaf is unsigned unless
  /// words say that it is signed.
  enum class Mode : std::uint8_t { none, minus, plus, missigning, except } mode_{};
  bool place_next_{}; // true after a sign or a comma, where )( is a mark

  /// Takes commas and brackets between the items, but not those that are marks: )(, (:.
  bool take_punctuation() {
    char const c = cursor_.peek(), after = cursor_.peek(1);
    bool const mark = (c == '(' && (after == ':' || (mark_here() && mark_here().key.mark() == Mark::symbol))) ||
                      (c == ')' && after == '(' && place_next_);
    place_next_ = mode_ != Mode::none && c == ',';
    if ((c == ')' && !mark) || c == ']')
      mode_ = Mode::none;
    else if (c != ',' && c != ';' && c != '.' && !(c == '&' && after == ' ') && (c != '(' || mark) &&
             (c != '[' || mode_ != Mode::none))
      return false;
    cursor_.skip(1);
    return true;
  }
  /// Takes roman, in arabic numerals.
  bool take_numerals() {
    auto const here = cursor_;
    static_cast<void>(cursor_.take_word_in_any_case("in") || cursor_.take_word_in_any_case("and"));
    cursor_.take_blanks();
    auto const said = cursor_.take_word_in_any_case("roman")    ? SigningNumerals::roman
                      : cursor_.take_word_in_any_case("arabic") ? SigningNumerals::arabic
                                                                : SigningNumerals::not_said;
    if (said == SigningNumerals::not_said) return cursor_ = here, false;
    bool const other = read_.numerals != SigningNumerals::not_said && read_.numerals != said;
    read_.numerals = other ? SigningNumerals::both : said;
    cursor_.take_blanks();
    for (char const* const word : {"numerals", "figures", "numbers"})
      if (cursor_.take_word_in_any_case(word)) break;
    return true;
  }
  enum class Taken : std::uint8_t { no, yes, refused };
  /// Takes the gatherings of -$2 in A, C-E: the exceptions since the last sign, which were of any gathering, are of these.
  Taken take_in_gatherings() {
    auto const here = cursor_;
    if (!cursor_.take_word("in") && !cursor_.take_word("of")) return Taken::no;
    std::vector<SigningException> const said{read_.exceptions.begin() + static_cast<std::ptrdiff_t>(group_from_),
                                             read_.exceptions.end()};
    for (auto const& one : said)
      if (!one.place.any) return Taken::refused;
    if (said.empty()) return cursor_ = here, Taken::no;
    read_.exceptions.resize(group_from_);
    cursor_.take_blanks();
    for (char const* const word : {"gatherings", "gathering", "quires", "quire", "signatures", "sigs.", "sig."})
      if (cursor_.take(word)) break;
    for (bool first = true;; first = false) {
      auto const before = cursor_;
      if (!first) {
        cursor_.take_blanks();
        static_cast<void>(cursor_.take(',') || cursor_.take('&') || cursor_.take_word("and"));
      }
      cursor_.take_blanks();
      auto const from = cursor_.at();
      auto const gatherings = take_gatherings();
      if (range_too_long_) return Taken::refused;
      if (gatherings.empty() || cursor_.at_digit()) {
        cursor_ = before;
        group_from_ = read_.exceptions.size();
        return first ? Taken::refused : Taken::yes;
      }
      for (auto const& gathering : gatherings)
        for (auto one : said) {
          one.place = {false, gathering, one.place.leaf, cursor_.place(from)};
          read_.exceptions.push_back(one);
        }
    }
  }
  bool take_mode() {
    if (bool const plus = cursor_.peek() == '+'; cursor_.take_one(is_sign)) {
      group_from_ = read_.exceptions.size();
      mode_ = plus ? Mode::plus : Mode::minus;
      place_next_ = true;
      return true;
    }
    if (cursor_.take_word("signed")) return mode_ = Mode::none, true;
    for (char const* const word : {"except for", "excepting", "except", "but not", "not", "omitting", "save", "less"})
      if (cursor_.take_word(word)) {
        group_from_ = read_.exceptions.size();
        mode_ = Mode::except;
        return place_next_ = true;
      }
    if (cursor_.take_word("and") || cursor_.take_word("but") || cursor_.take_word("with")) return true;
    if (cursor_.take_word("missigning") || cursor_.take_word("signing") || cursor_.take_word("missigned") ||
        cursor_.take_word("mis-signed"))
      return mode_ = Mode::missigning, true;
    return false;
  }
  /// Reads a leaf with the words about it: A3, A3-5 unsigned, V4 as 'U4'.
  bool item(std::size_t from) {
    if (mode_ == Mode::none) group_from_ = read_.exceptions.size();
    if (auto const gatherings = range_of_gatherings(); !gatherings.empty()) {
      bool const ends = mode_ == Mode::minus || mode_ == Mode::plus || mode_ == Mode::except;
      if (!ends || is_word_or_figure(cursor_.peek())) return false; // -A-D2
      for (auto const& gathering : gatherings) {
        last_ = {false, gathering, {}, cursor_.place(from)};
        except(mode_ == Mode::plus, last_, {});
      }
      return any_place_ = true;
    }
    if (range_too_long_) return false;
    SigningPlace found;
    bool const quoted = mode_ == Mode::missigning && opens_quotation(cursor_.character().value) && !quotes_a_mark();
    if (quoted) cursor_.take_quotation_mark();
    if (!place(found)) return false;
    found.at = cursor_.place(from);
    if (quoted && !cursor_.take_quotation_mark()) return false;
    if (!found.title) last_ = found, any_place_ = true;
    auto const to = last_of_range(found.leaf);
    if (to < found.leaf || !can_be_leaf(to)) return false;
    range_too_long_ = to && *to - *found.leaf >= longest_range;
    if (range_too_long_) return false;
    bool const sign = (mode_ == Mode::minus || mode_ == Mode::plus) && !missigned_follows();
    if (sign || (mode_ == Mode::except && exception_ends())) {
      except(mode_ == Mode::plus, found, to);
      take_what_leaf_is();
      return true;
    }
    return said_of(found, to);
  }
  /// Returns true before `missigned F2` or `as F2`, which is said of one leaf in a list: -A1, G2 missigned F2.
  [[nodiscard]] bool missigned_follows() const {
    auto look = cursor_;
    look.take_blanks();
    return look.take_word("missigned") || look.take_word("mis-signed") || look.take_word("as") ||
           look.take("signed as ");
  }
  /// Returns true if nothing is said of a leaf after `except`.
  [[nodiscard]] bool exception_ends() const {
    auto look = cursor_;
    look.take_blanks();
    char const c = look.peek();
    auto word = look;
    return look.at_end() || std::string_view{",;)].&"}.find(c) != std::string_view::npos || word.take_word("and") ||
           word.take_word("in") || word.take_word("of");
  }
  /// Takes words that say which leaf an exception is: -A1 title.
  void take_what_leaf_is() {
    auto const here = cursor_;
    cursor_.take_blanks();
    bool found = take_title();
    for (char const* const word : {"blank", "half-title", "half title", "errata", "dedication", "contents", "preface"})
      found = found || cursor_.take_word_in_any_case(word);
    cursor_.take_blanks();
    char const c = cursor_.peek();
    if (!found || !(cursor_.at_end() || c == ',' || c == ';' || c == ')' || c == ']')) cursor_ = here;
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
