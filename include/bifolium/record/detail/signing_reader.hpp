// SPDX-License-Identifier: MIT
/// Reads a statement of signing: the rule, then leaves and the words about them. A sign applies until the next one, and
/// a number alone is a leaf of the gathering named before it, as bibliographers write.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/leaf/signature_reader.hpp>
#include <bifolium/record/signing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningReader {
  std::string_view text_;
  Letters letters_;
  Limits limits_;
  std::size_t at_{};
  Signing read_{};
  SigningPlace last_{};
  bool any_place_{}, range_too_long_{};
  /// Thicker gatherings were not signed leaf by leaf, and a statement of few characters would name thousands of leaves.
  static constexpr int longest_range = 64;
  std::size_t column_at_{}; // places come in order, so each column is counted from the one before
  std::uint32_t column_{1};

  [[nodiscard]] char byte(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  [[nodiscard]] char32_t point() const { return at_ < text_.size() ? decode(text_, at_).value : U'\0'; }
  bool take(std::string_view word) { return text_.substr(at_).starts_with(word) ? (at_ += word.size(), true) : false; }
  bool take_word(std::string_view word) {
    if (!text_.substr(at_).starts_with(word) || is_latin_letter(byte(word.size()))) return false;
    at_ += word.size();
    return true;
  }
  void blanks() {
    while (at_ < text_.size() && (is_blank(point()) || byte() == '\n')) at_ += decode(text_, at_).bytes;
  }
  int figure() {
    int n = 0;
    auto const from = at_;
    for (; is_digit(byte()); ++at_) n = n > most_leaves_in_gathering ? n : n * 10 + (byte() - '0');
    return at_ == from ? -1 : n;
  }
  [[nodiscard]] Error error(std::size_t from) const {
    return error_at(Problem::not_a_signing, 1, column_of(text_, from), text_.data() + (from < text_.size() ? from : 0),
                    from < text_.size() ? text_.size() - from : text_.size());
  }
  [[nodiscard]] Error quoted(Problem problem, std::size_t from, std::int64_t limit) const {
    return error_at(problem, 1, column_of(text_, from), text_.data() + from, at_ - from, limit);
  }
  static bool is_sign(char32_t c) { return c == '+' || is_dash(c) || c == 0x2212; }

  /// Reads $4, $1,3, $1-3 or $½+1.
  bool rule() {
    if (!take("$")) return false;
    if (take("½") || take("1/2")) {
      read_.half = true;
      if (byte() == '+' && is_digit(byte(1))) ++at_, read_.beyond_half = figure();
      return read_.beyond_half <= most_leaves_in_gathering;
    }
    while (true) {
      auto const from = figure();
      if (from < 1 || from > most_leaves_in_gathering) return false;
      auto to = from;
      auto const here = at_;
      if (at_ < text_.size() && is_dash(point())) {
        at_ += decode(text_, at_).bytes;
        to = figure();
        if (to < 0) at_ = here, to = from; // $4-A3: a sign
        if (to < from || to > most_leaves_in_gathering) return false;
      }
      auto const next = read_.listed.empty() ? 1 : read_.listed.back() + 1;
      for (int leaf = from < next ? next : from; leaf <= to; ++leaf) read_.listed.push_back(leaf);
      if (byte() != ',') break;
      auto ahead = at_ + 1;
      while (ahead < text_.size() && text_[ahead] == ' ') ++ahead;
      if (ahead >= text_.size() || !is_digit(text_[ahead])) break;
      auto after = ahead; // $4, 2A3: the number belongs to a signature
      while (after < text_.size() && is_digit(text_[after])) ++after;
      if (after < text_.size() && is_latin_letter(text_[after])) break;
      at_ = ahead;
    }
    // one number means that many leaves from the first, and so does a list without a gap
    if (read_.listed.size() == 1 || read_.listed.back() == static_cast<int>(read_.listed.size()))
      read_.first = read_.listed.back(), read_.listed.clear();
    return true;
  }
  std::uint32_t column(std::size_t at) {
    for (; column_at_ < at; column_at_ += decode(text_, column_at_).bytes) ++column_;
    return column_;
  }
  [[nodiscard]] FoundSignature mark_here() const {
    TokenCursor c{text_, at_};
    return SignatureReader{text_, letters_}.take(c);
  }
  /// Reads A3, $3, 2M, 36/10, or 4 alone for a leaf of the gathering before.
  bool place(SigningPlace& found) {
    if (take("$")) {
      auto const leaf = figure();
      found = {true, {}, leaf < 0 ? 0 : leaf, 1};
      return leaf != 0 && leaf <= most_leaves_in_gathering;
    }
    // a number is a leaf of the gathering before, unless it belongs to a mark (2)(3) or a stroke follows it (36/10)
    bool const begins_with_figure = is_digit(byte());
    auto const mark = mark_here();
    if (!mark || (mark.key.mark() == Mark::symbol && text_[mark.key.text_from] == '+'))
      return false; // here + is a sign
    auto const signature = signature_of(mark.key, text_, letters_);
    at_ = mark.end;
    bool const stroke = take("/");
    if (any_place_ && !stroke && begins_with_figure && signature.mark() == Mark::number) {
      found = last_;
      found.leaf = static_cast<int>(signature.multiple());
      return found.leaf <= most_leaves_in_gathering;
    }
    auto const leaf = figure();
    found = {false, signature, leaf < 0 ? 0 : leaf, 1};
    return leaf != 0 && leaf <= most_leaves_in_gathering;
  }
  /// Reads the 5 of A3-5. Returns the leaf itself if no leaf follows.
  int last_of_range(int leaf) {
    if (leaf == 0 || at_ == text_.size() || !is_dash(point())) return leaf;
    auto const here = at_;
    at_ += decode(text_, at_).bytes;
    auto const to = figure();
    if (to < 0) at_ = here;
    return to < 0 ? leaf : to;
  }
  /// Each leaf of a range is an exception.
  void except(bool is_signed, SigningPlace place, int to) {
    read_.exceptions.push_back({is_signed, place});
    while (place.leaf < to) {
      ++place.leaf;
      read_.exceptions.push_back({is_signed, place});
    }
  }
  /// Returns true if the quotation marks belong to a mark with its leaf after them, as in "G&H"4, and false for 'V4'.
  [[nodiscard]] bool quotes_a_mark() const {
    auto const mark = mark_here();
    return mark && mark.end < text_.size() && (is_digit(text_[mark.end]) || text_[mark.end] == '/');
  }
  /// Reads the printed mark: 'U4', U4, $*.
  std::string printed() {
    blanks();
    bool const quoted = is_quotation_mark(point());
    if (quoted) at_ += decode(text_, at_).bytes;
    auto const from = at_;
    while (at_ < text_.size()) {
      auto const c = decode(text_, at_);
      bool const closes =
          quoted ? is_quotation_mark(c.value)
                 : c.value == ',' || c.value == ';' || c.value == ')' || c.value == ']' || is_blank(c.value);
      if (closes) break;
      at_ += c.bytes;
    }
    std::string result{text_.substr(from, at_ - from)};
    if (quoted && at_ < text_.size()) at_ += decode(text_, at_).bytes;
    return result;
  }
  [[nodiscard]] bool item_ends() {
    blanks();
    char const c = byte();
    return c == '\0' || c == ',' || c == ';' || c == ')' || c == ']';
  }

public:
  SigningReader(std::string_view text, Letters added, Limits const& limits)
      : text_{text}, letters_{added}, limits_{limits} {}

  Expected<Signing> read() {
    if (is_too_long(text_, limits_)) return too_long(limits_);
    if (auto const zero = text_.find('\0'); zero != text_.npos) return error(zero); // a zero byte means the end below
    blanks();
    if (take("[")) blanks();
    if (auto const from = at_; !rule()) return error(from);
    while (true) {
      blanks();
      if (at_ == text_.size()) return static_cast<Signing&&>(read_);
      auto const from = at_;
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
    char const c = byte();
    bool const mark = (c == '(' && (byte(1) == ':' || (mark_here() && mark_here().key.mark() == Mark::symbol))) ||
                      (c == ')' && byte(1) == '(' && place_next_);
    place_next_ = mode_ != Mode::none && c == ',';
    if ((c == ')' && !mark) || c == ']')
      mode_ = Mode::none;
    else if (c != ',' && c != ';' && c != '.' && (c != '(' || mark) && (c != '[' || mode_ != Mode::none))
      return false;
    ++at_;
    return true;
  }
  bool take_mode() {
    if (is_sign(point())) {
      mode_ = byte() == '+' ? Mode::plus : Mode::minus;
      place_next_ = true;
      at_ += decode(text_, at_).bytes;
      return true;
    }
    if (take_word("signed")) return mode_ = Mode::none, true;
    if (take_word("and") || take_word("but") || take_word("with") || take_word("except")) return true;
    if (take_word("missigning") || take_word("signing") || take_word("missigned") || take_word("mis-signed"))
      return mode_ = Mode::missigning, true;
    return false;
  }
  /// Reads a leaf with the words about it: A3, A3-5 unsigned, V4 as 'U4'.
  bool item(std::size_t from) {
    SigningPlace found;
    bool const quoted = mode_ == Mode::missigning && opens_quotation(point()) && !quotes_a_mark();
    if (quoted) at_ += decode(text_, at_).bytes;
    if (!place(found)) return false;
    found.column = column(from);
    if (quoted && !is_quotation_mark(point())) return false;
    if (quoted) at_ += decode(text_, at_).bytes;
    last_ = found;
    any_place_ = true;
    auto const to = last_of_range(found.leaf);
    if (to < found.leaf || to > most_leaves_in_gathering) return false;
    range_too_long_ = to - found.leaf >= longest_range;
    if (range_too_long_) return false;
    if (mode_ == Mode::minus || mode_ == Mode::plus) return except(mode_ == Mode::plus, found, to), true;
    return said_of(found, to);
  }
  /// Reads unsigned, signed or as 'U4' after the leaf.
  bool said_of(SigningPlace const& found, int to) {
    blanks();
    if (take_word("unsigned") || take("not signed")) return except(false, found, to), true;
    bool const as_follows = take_word("as");
    if (!as_follows && !take_word("missigned") && !take_word("mis-signed") && !take_word("signed")) return false;
    if (item_ends()) return except(true, found, to), true; // C5 signed
    if (!as_follows) static_cast<void>(take_word("as"));
    auto as = printed();
    if (as.empty() || found.leaf == 0 || to != found.leaf) return false;
    read_.missigned.push_back({found, static_cast<std::string&&>(as)});
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
