// SPDX-License-Identifier: MIT
/// Reads a statement of signing: the rule, then leaves and the words about them. A sign applies until the next one, and
/// a number alone is a leaf of the gathering named before it, as bibliographers write. Letters that make a word are no
/// signatures: of all words between the leaves only those for the title leaf and for the numerals are known.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/record/detail/signing_places.hpp>
#include <bifolium/record/detail/signing_rule.hpp>
#include <bifolium/record/signing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningReader {
  SigningMarks marks_;
  TextCursor& cursor_{marks_.cursor};
  Limits limits_;
  Signing read_{};
  SigningPlaces places_{marks_};
  std::size_t group_from_{}; // the first exception since the last sign

  /// Makes an error that quotes the text from an item to the end, or all of it if the item is missing at the end.
  [[nodiscard]] Error error(std::size_t from) const {
    auto const quoted = marks_.text().substr(from < marks_.text().size() ? from : 0);
    return error_at(Problem::not_a_signing, place_in(marks_.text(), from), quoted);
  }
  /// Makes an error that quotes an item up to the cursor.
  [[nodiscard]] Error quoted(Problem problem, std::size_t from, std::int64_t limit) const {
    return error_in(marks_.text(), {from, cursor_.at()}, problem, limit);
  }
  static bool is_sign(char32_t c) { return c == '+' || is_dash(c) || c == 0x2212; }

  /// Each leaf of a range is an exception.
  void except(bool is_signed, SigningPlace place, std::optional<int> to) {
    read_.exceptions.push_back({is_signed, place});
    while (place.leaf < to) {
      ++*place.leaf;
      read_.exceptions.push_back({is_signed, place});
    }
  }
  [[nodiscard]] bool item_ends() {
    cursor_.take_blanks();
    char const c = cursor_.peek();
    return c == '\0' || c == ',' || c == ';' || c == ')' || c == ']';
  }

public:
  SigningReader(std::string_view text, Letters added, Limits const& limits) : marks_{text, added}, limits_{limits} {}

  Expected<Signing> read() {
    if (is_too_long(marks_.text(), limits_)) return too_long(limits_);
    if (auto const zero = marks_.text().find('\0'); zero != std::string_view::npos)
      return error(zero); // a zero byte means the end below
    cursor_.take_blanks();
    if (cursor_.take('[')) cursor_.take_blanks();
    if (auto const from = cursor_.at(); !SigningRule{marks_, read_}.take()) return error(from);
    while (true) {
      cursor_.take_blanks();
      if (cursor_.at_end()) return static_cast<Signing&&>(read_);
      auto const from = cursor_.at();
      if (take_punctuation() || take_numerals()) continue;
      auto const gatherings = take_in_gatherings();
      if (gatherings == Taken::yes || (gatherings == Taken::no && take_mode())) continue;
      if (gatherings == Taken::refused || !item(from))
        return marks_.range_too_long ? quoted(Problem::signing_range_too_long, from, SigningMarks::longest_range)
                                     : error(from);
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
    bool const mark =
        (c == '(' && (after == ':' || (marks_.mark_here() && marks_.mark_here().key.mark() == Mark::symbol))) ||
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
    for (char const* const word : words_for_signing_numerals)
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
    for (char const* const word : words_for_signed_gatherings)
      if (cursor_.take(word)) break;
    for (bool first = true;; first = false) {
      auto const before = cursor_;
      if (!first) {
        cursor_.take_blanks();
        static_cast<void>(cursor_.take(',') || cursor_.take('&') || cursor_.take_word("and"));
      }
      cursor_.take_blanks();
      auto const from = cursor_.at();
      auto const gatherings = marks_.take_gatherings();
      if (marks_.range_too_long) return Taken::refused;
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
    for (char const* const word : words_for_signing_exceptions)
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
    if (auto const gatherings = marks_.range_of_gatherings(); !gatherings.empty()) {
      bool const ends = mode_ == Mode::minus || mode_ == Mode::plus || mode_ == Mode::except;
      if (!ends || SigningMarks::is_word_or_figure(cursor_.peek())) return false; // -A-D2
      for (auto const& gathering : gatherings) {
        SigningPlace const found{false, gathering, {}, cursor_.place(from)};
        places_.named(found);
        except(mode_ == Mode::plus, found, {});
      }
      return true;
    }
    if (marks_.range_too_long) return false;
    SigningPlace found;
    bool const quoted =
        mode_ == Mode::missigning && opens_quotation(cursor_.character().value) && !places_.quotes_a_mark();
    if (quoted) cursor_.take_quotation_mark();
    if (!places_.take(found)) return false;
    found.at = cursor_.place(from);
    if (quoted && !cursor_.take_quotation_mark()) return false;
    places_.named(found);
    auto const to = places_.last_of_range(found.leaf);
    if (to < found.leaf || !marks_.can_be_leaf(to)) return false;
    marks_.range_too_long = to && *to - *found.leaf >= SigningMarks::longest_range;
    if (marks_.range_too_long) return false;
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
    bool found = marks_.take_title();
    for (char const* const word : words_for_unsigned_leaves) found = found || cursor_.take_word_in_any_case(word);
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
    auto as = places_.printed();
    if (as.empty() || !found.leaf || to != found.leaf) return false;
    read_.missigned.push_back({found, static_cast<std::string&&>(as)});
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
