// SPDX-License-Identifier: MIT
/// Reading a statement of signing: [$4 (-a3,4, ²c4) signed; missigning V4 as U4], $1-3, $½+1, [$1; +D2; -2M],
/// [$1,3 signed; signing $3 as $*]. A sign holds until the next one, and a bare figure is a leaf of the gathering named
/// before it, as bibliographers write. An exception that says what the rule says already is a warning.
#pragma once

#include <bifolium/leaf/signature_reader.hpp>
#include <bifolium/record/signing.hpp>

#include <algorithm>
#include <iterator>
#include <tuple>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningReader {
  std::string_view text_;
  Letters letters_;
  std::size_t at_{};
  Signing read_{};
  SigningPlace last_{};
  bool any_place_{};
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
  static bool is_sign(char32_t c) { return c == '+' || is_dash(c) || c == 0x2212; }

  /// $4, $1,3, $1-3, $½+1
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
      for (int leaf = from; leaf <= to; ++leaf)
        if (read_.listed.empty() || read_.listed.back() < leaf) read_.listed.push_back(leaf);
      if (byte() != ',') break;
      auto ahead = at_ + 1;
      while (ahead < text_.size() && text_[ahead] == ' ') ++ahead;
      if (ahead >= text_.size() || !is_digit(text_[ahead])) break;
      auto after = ahead; // $4, 2A3: the figure belongs to a signature
      while (after < text_.size() && is_digit(text_[after])) ++after;
      if (after < text_.size() && is_latin_letter(text_[after])) break;
      at_ = ahead;
    }
    // one figure is so many leaves from the first; so is a list without a gap
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
  /// A3, $3, 2M, 36/10, or 4 alone for a leaf of the gathering before.
  bool place(SigningPlace& found) {
    if (take("$")) {
      auto const leaf = figure();
      found = {true, {}, leaf < 0 ? 0 : leaf, 1};
      return leaf != 0 && leaf <= most_leaves_in_gathering;
    }
    // a figure is a leaf of the gathering before where it is no part of a mark (2)(3) and no stroke makes it one (36/10)
    bool const begins_with_figure = is_digit(byte());
    auto const mark = mark_here();
    if (!mark || (mark.key.mark() == Mark::symbol && text_[mark.key.text_from] == '+'))
      return false; // + is a sign here
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
  /// 5 in A3-5; where no leaf follows, the leaf itself.
  int last_of_range(int leaf) {
    if (leaf == 0 || at_ == text_.size() || !is_dash(point())) return leaf;
    auto const here = at_;
    at_ += decode(text_, at_).bytes;
    auto const to = figure();
    if (to < 0) at_ = here;
    return to < 0 ? leaf : to;
  }
  void except(bool is_signed, SigningPlace place, int to) {
    read_.exceptions.push_back({is_signed, place});
    while (place.leaf < to) {
      ++place.leaf;
      read_.exceptions.push_back({is_signed, place});
    }
  }
  /// The quotation marks here are those of a mark, whose leaf stands behind them, as in "G&H"4; not of 'V4'.
  [[nodiscard]] bool quotes_a_mark() const {
    auto const mark = mark_here();
    return mark && mark.end < text_.size() && (is_digit(text_[mark.end]) || text_[mark.end] == '/');
  }
  /// What is printed instead: 'U4', U4, $*.
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
  SigningReader(std::string_view text, Letters added) : text_{text}, letters_{added} {}

  Expected<Signing> read() {
    if (auto const zero = text_.find('\0'); zero != text_.npos) return error(zero); // it stands for the end below
    blanks();
    if (take("[")) blanks();
    if (auto const from = at_; !rule()) return error(from);
    enum class Mode : std::uint8_t { none, minus, plus, missigning } mode{};
    bool place_next = false; // a sign or a comma came last, so that )( is a mark
    while (true) {
      blanks();
      if (at_ == text_.size()) break;
      auto const from = at_;
      char const c = byte();
      bool const mark = (c == '(' && (byte(1) == ':' || (mark_here() && mark_here().key.mark() == Mark::symbol))) ||
                        (c == ')' && byte(1) == '(' && place_next);
      place_next = mode != Mode::none && c == ',';
      if (c == ',' || c == ';' || c == '.' || (c == '(' && !mark) || (c == '[' && mode == Mode::none)) {
        ++at_;
        continue;
      }
      if ((c == ')' && !mark) || c == ']') {
        ++at_;
        mode = Mode::none;
        continue;
      }
      if (is_sign(point())) {
        mode = c == '+' ? Mode::plus : Mode::minus;
        place_next = true;
        at_ += decode(text_, at_).bytes;
        continue;
      }
      if (take_word("signed")) {
        mode = Mode::none;
        continue;
      }
      if (take_word("and") || take_word("but") || take_word("with") || take_word("except")) continue;
      if (take_word("missigning") || take_word("signing") || take_word("missigned") || take_word("mis-signed")) {
        mode = Mode::missigning;
        continue;
      }
      SigningPlace found;
      bool const quoted = mode == Mode::missigning && opens_quotation(point()) && !quotes_a_mark();
      if (quoted) at_ += decode(text_, at_).bytes;
      if (!place(found)) return error(from);
      found.column = column(from);
      if (quoted) {
        if (!is_quotation_mark(point())) return error(from);
        at_ += decode(text_, at_).bytes;
      }
      last_ = found;
      any_place_ = true;
      auto const to = last_of_range(found.leaf);
      if (to < found.leaf || to > most_leaves_in_gathering) return error(from);
      if (mode == Mode::minus || mode == Mode::plus) {
        except(mode == Mode::plus, found, to);
        continue;
      }
      blanks();
      if (take_word("unsigned") || take("not signed")) {
        except(false, found, to);
        continue;
      }
      bool const as_follows = take_word("as");
      if (!as_follows && !take_word("missigned") && !take_word("mis-signed") && !take_word("signed"))
        return error(from);
      if (item_ends()) { // C5 signed
        except(true, found, to);
        continue;
      }
      if (!as_follows) static_cast<void>(take_word("as"));
      auto as = printed();
      if (as.empty() || found.leaf == 0 || to != found.leaf) return error(from);
      read_.missigned.push_back({found, static_cast<std::string&&>(as)});
    }
    return static_cast<Signing&&>(read_);
  }
};

} // namespace detail

/// Reads a statement of signing, with or without its brackets. error: not_a_signing, with the column.
[[nodiscard]] inline Expected<Signing> read_signing(std::string_view text, Letters added = {}) {
  return detail::SigningReader{text, added}.read();
}

namespace detail {

/// What exceptions say of a leaf, and since which of them. All are kept in one row in order, so that the last word on a leaf
/// before an exception is found without going through the others again.
class SigningExceptions {
  enum class Of : std::uint8_t { leaf, gathering, leaf_of_any, any };
  struct Said {
    Of of{};
    GatheringAt gathering{};
    int leaf{};
    std::size_t order{};
    bool is_signed{};
  };
  std::vector<Said> said_{};

  [[nodiscard]] static auto key(Said const& one) {
    return std::tuple{one.of, one.gathering.run, one.gathering.index, one.leaf, one.order};
  }
  static bool before(Said const& a, Said const& b) { return key(a) < key(b); }
  [[nodiscard]] static Said of(SigningPlace const& place, GatheringAt at) {
    Said one;
    one.of = place.any ? (place.leaf == 0 ? Of::any : Of::leaf_of_any) : place.leaf == 0 ? Of::gathering : Of::leaf;
    if (!place.any) one.gathering = at;
    one.leaf = place.leaf;
    return one;
  }

public:
  /// Adds an exception; `at` is its gathering, of no meaning where it is of any.
  void add(SigningException const& exception, GatheringAt at, std::size_t order) {
    auto one = of(exception.place, at);
    one.order = order, one.is_signed = exception.is_signed;
    said_.push_back(one);
  }
  void sort() { std::sort(said_.begin(), said_.end(), before); }
  /// What the exceptions before number `order` say of a leaf; missing where they say nothing of it.
  [[nodiscard]] std::optional<bool> last_before(std::size_t order, GatheringAt at, int leaf) const {
    std::optional<bool> answer;
    std::size_t latest = 0;
    for (auto const& place : {SigningPlace{false, {}, leaf, 1}, SigningPlace{false, {}, 0, 1},
                              SigningPlace{true, {}, leaf, 1}, SigningPlace{true, {}, 0, 1}}) {
      auto wanted = of(place, at);
      wanted.order = order;
      auto const found = std::lower_bound(said_.begin(), said_.end(), wanted, before);
      if (found == said_.begin()) continue;
      auto const& one = *std::prev(found);
      wanted.order = one.order;
      if (key(one) != key(wanted) || (answer && one.order < latest)) continue;
      answer = one.is_signed, latest = one.order;
    }
    return answer;
  }
};

} // namespace detail

/// The statement of a formula, with a warning for an exception that names a leaf the formula does not have or says what the
/// rule says already. Columns are those of formula.signing(). error: not_a_signing; not_stated.
[[nodiscard]] inline Expected<Signing> signing_of(Formula const& formula) {
  if (formula.signing().empty()) return error_at(Problem::not_stated, 1, 1);
  IdealCopy const book{formula};
  auto read = read_signing(formula.signing(), formula.letters());
  if (!read) return read;
  auto const doubt = [&](Problem problem, SigningPlace const& place) {
    auto const words = detail::place_words(place);
    read->warn(error_at(problem, 1, place.column, words.data(), words.size()));
  };
  // the gathering of a place; missing where the formula does not have the leaf
  auto const gathering_of = [&](SigningPlace const& place) -> std::optional<GatheringAt> {
    if (place.any) return GatheringAt{};
    auto const at = book.find(place.gathering);
    if (!at || place.leaf > book.leaves_folded(at->gathering)) return std::nullopt;
    return at->gathering;
  };
  detail::SigningExceptions said;
  std::vector<std::optional<GatheringAt>> gatherings;
  for (auto const& exception : read->exceptions) {
    gatherings.push_back(gathering_of(exception.place));
    if (gatherings.back()) said.add(exception, *gatherings.back(), gatherings.size() - 1);
  }
  said.sort();
  for (std::size_t i = 0; i < gatherings.size(); ++i) {
    auto const& [is_signed, place] = read->exceptions[i];
    if (!gatherings[i]) doubt(Problem::signing_of_no_leaf, place);
    if (!gatherings[i] || place.any || place.leaf == 0) continue;
    auto const at = *gatherings[i];
    bool const by_rule = !detail::is_unsigned(book, at) && read->by_rule(place.leaf, book.leaves_folded(at));
    if (said.last_before(i, at, place.leaf).value_or(by_rule) == is_signed)
      doubt(Problem::exception_changes_nothing, place);
  }
  for (auto const& wrong : read->missigned)
    if (!gathering_of(wrong.place)) doubt(Problem::signing_of_no_leaf, wrong.place);
  return read;
}

} // namespace v0
} // namespace bifolium
