// SPDX-License-Identifier: MIT
/// Reads a statement of date. The reader looks for years and for words about years, and skips everything else: day and
/// month, the text of the imprint. It collects years in three groups - corrections, years in brackets, printed years -
/// and the first group that is not empty is the answer.
#pragma once

#include <bifolium/core/detail/date_words.hpp>
#include <bifolium/core/detail/imprint_numeral.hpp>
#include <bifolium/core/stated_date.hpp>
#include <bifolium/core/text_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class DateReader {
  /// A year, or a word for several years: 172-, 18th century.
  struct Atom {
    YearRange years{};
    std::size_t to{}; // position of the byte after it
    int digits{};     // number of digits
    bool several{};   // true for a decade or a century
    bool roman{}, clipped{};
    int opened{};  // number of brackets opened in it, less those closed: 17[25]
    bool parted{}; // true if brackets divide it
  };
  /// A year or a range, with everything that the statement says about it.
  struct Item {
    YearRange written{}, years{};
    TextSpan at{};
    bool probable{}, about{}, doubled{}, open_before{}, open_after{}, roman{}, clipped{}, joined{};
  };
  /// What the words before a year say about it.
  struct Said {
    std::size_t from{}; // position of the first of these words
    bool any{}, about{}, bare_c{}, correction{}, between{}, joins{}, to{}, not_before{}, not_after{}, reprinted{};
    bool republic{}, century{};
    DateWord half{};
  };

  std::string_view text_;
  std::size_t at_{}, told_{}; // told_: the text up to here is read or listed as unread
  int depth_{};               // number of open brackets
  Said said_{};
  std::optional<Item> plain_{}, bracket_{}, correction_{};
  bool no_date_{};
  StatedDate date_{};

  /// Whether a numeral, a word or a range is there is known only at its end, so the functions below get a position, look
  /// ahead from it, and return the position after what they find.
  [[nodiscard]] constexpr TextCursor cursor(std::size_t at) const { return TextCursor{text_, at}; }
  [[nodiscard]] constexpr CodePoint point(std::size_t at) const { return cursor(at).character(); }
  [[nodiscard]] constexpr char byte(std::size_t at) const { return cursor(at).peek(); }
  [[nodiscard]] constexpr std::size_t after_blanks(std::size_t at) const {
    auto blanks = cursor(at);
    blanks.take_blanks();
    return blanks.at();
  }
  [[nodiscard]] constexpr bool word_goes_on(std::size_t at) const { return is_word_letter(point(at).value); }
  [[nodiscard]] constexpr Error error(Problem problem, TextSpan span, std::int64_t limit = 0) const {
    return error_in(text_, span, problem, limit);
  }

  /// Reads the words after a number that make it a century: `th century`, `e siècle`, `. Jh.`. Returns the position of
  /// the byte after them, or 0.
  [[nodiscard]] constexpr std::size_t century_after(std::size_t at) const {
    auto words = cursor(at);
    bool ordinal = false;
    for (std::string_view ending : {"st", "nd", "rd", "th", "ème", "eme", "e", "o", "."})
      if (!ordinal && words.take(ending)) ordinal = ending != ".";
    words.take_blanks();
    for (auto word : century_words) {
      if (word.size() == 1 && !ordinal) continue; // the s of `16 S. Martin` is not a century
      auto end = words;
      if (end.take_in_any_case(word) && !word_goes_on(end.at()) && !end.at_digit()) return end.at();
    }
    return 0;
  }
  [[nodiscard]] constexpr YearRange century(int number) const {
    int const before = (number - 1) * 100;
    switch (said_.half) {
    case DateWord::early_half:
      return {before + 1, before + 50};
    case DateWord::late_half:
      return {before + 51, before + 100};
    case DateWord::middle_half:
      return {before + 26, before + 75};
    default:
      return {before + 1, before + 100};
    }
  }
  /// Digits, also across brackets that divide them (17[25]): their number and their value.
  struct Digits {
    int count{}, number{}, opened{};
    std::size_t to{};
    bool parted{}; // true if a bracket divides them
  };
  [[nodiscard]] constexpr Digits digits(std::size_t at) const {
    Digits found;
    while (found.count < 6) {
      if (is_digit(byte(at)))
        found.number = found.number * 10 + (text_[at] - '0'), ++found.count;
      else if (found.count > 0 && found.count < 4 && (byte(at) == '[' || byte(at) == ']') && is_digit(byte(at + 1)) &&
               (byte(at) == '[' || found.opened + depth_ > 0))
        found.opened += text_[at] == '[' ? 1 : -1, found.parted = true;
      else
        break;
      found.to = ++at;
    }
    return found;
  }
  /// Returns the number of bytes of a character for an unknown digit of a year - u, - or ? -, or 0.
  [[nodiscard]] constexpr std::size_t wildcard(std::size_t at) const {
    if (byte(at) == 'u' || byte(at) == '?') return 1;
    return is_dash(point(at).value) ? point(at).bytes : 0;
  }
  [[nodiscard]] constexpr std::optional<Atom> number_atom(std::size_t at) const {
    auto const read = digits(at);
    auto const to = read.to;
    int const number = read.number;
    auto const made = [&](std::size_t end, YearRange years, bool several, bool clipped = false) {
      return Atom{years, end, read.count, several, false, clipped, read.opened, read.parted};
    };
    if (read.count == 4) {
      if (byte(to) == 's' && !word_goes_on(to + 1) && number % 10 == 0)
        return made(to + 1, {number, number + (number % 100 == 0 ? 99 : 9)}, true);
      return made(to, number, false);
    }
    auto const first = wildcard(to);
    auto const second = first > 0 ? wildcard(to + first) : 0;
    bool const digit_follows = is_digit(byte(after_blanks(to + first)));
    if (read.count == 3 && first > 0 && !digit_follows && !word_goes_on(to + first))
      return made(to + first, {number * 10, number * 10 + 9}, true);
    if (read.count == 2 && second > 0 && !word_goes_on(to + first + second))
      return made(to + first + second, {number * 100, number * 100 + 99}, true);
    if (read.count <= 2 && number > 0 && number <= 21) {
      if (auto const end = century_after(to)) return made(end, century(number), true);
      if (said_.century) return made(to, century(number), true);
      if (said_.republic && number <= 14) return made(to, {1791 + number, 1792 + number}, true);
    }
    if (read.count == 3 && number >= 450) return made(to, number + 1000, false, true);
    return std::nullopt;
  }
  [[nodiscard]] constexpr std::optional<Atom> roman_atom(std::size_t at) const {
    auto const year = imprint_numeral(text_.substr(at));
    if (year.bytes > 0) return Atom{year.year, at + year.bytes, 0, false, true, false};
    bool typed = false;
    auto const part = numeral_part(text_, at, typed);
    auto const to = at + part.bytes;
    if (part.bytes == 0 || part.value < 1 || part.value > 21) return std::nullopt;
    if (auto const end = century_after(to)) return Atom{century(part.value), end, 0, true, true, false};
    if (word_goes_on(to)) return std::nullopt;
    if (said_.century) return Atom{century(part.value), to, 0, true, true, false};
    if (said_.republic && part.value <= 14)
      return Atom{{1791 + part.value, 1792 + part.value}, to, 0, true, true, false};
    return std::nullopt;
  }
  [[nodiscard]] constexpr std::optional<Atom> atom(std::size_t at) const {
    return is_digit(byte(at)) ? number_atom(at) : roman_atom(at);
  }

  /// A word of the table at a position, and the position of the byte after it.
  struct WordAt {
    DateWord says{};
    std::size_t to{};
    std::string_view words{};
  };
  [[nodiscard]] constexpr WordAt word(std::size_t at) const {
    WordAt found;
    for (auto const& row : date_words) {
      auto end = cursor(at);
      if (row.words.size() <= found.words.size() || !end.take_in_any_case(row.words) || word_goes_on(end.at()))
        continue;
      end.take('.');
      found = {row.says, end.at(), row.words};
    }
    auto const next = byte(after_blanks(found.to));
    if (found.says == DateWord::about && !is_digit(next) && next != '[' && imprint_numeral_after(found.to) == 0)
      return {};
    return found;
  }
  [[nodiscard]] constexpr std::size_t imprint_numeral_after(std::size_t at) const {
    auto const next = after_blanks(at);
    return next < text_.size() ? imprint_numeral(text_.substr(next)).bytes : 0;
  }

  /// Reads a second year after `first`, in full or by its last digits (1715-16, 1725/6). It has 0 digits if there is
  /// none.
  [[nodiscard]] constexpr std::optional<Atom> second_year(std::size_t at, YearRange first, bool full_only) const {
    at = after_blanks(at);
    auto const last = digits(at);
    if (!full_only && (last.count == 1 || last.count == 2) && !word_goes_on(last.to)) {
      int const place = last.count == 1 ? 10 : 100;
      int const year = first.to - first.to % place + last.number;
      if (year <= first.to || (last.count == 1 && last.number == 0)) return std::nullopt;
      return Atom{year, last.to, last.count, false, false, false, last.opened, last.parted};
    }
    return atom(at);
  }
  /// Reads 1725, 1715-16, 1725/6 or 1727 or 1728, with the question mark or the rest of the range after it.
  [[nodiscard]] constexpr Expected<std::optional<Item>> item() {
    auto const first = atom(at_);
    if (!first) return std::optional<Item>{};
    Item read{.written = first->years, .at = {at_, first->to}, .roman = first->roman, .clipped = first->clipped};
    bool several = first->several;
    depth_ += first->opened;
    date_.supplied = date_.supplied || first->parted;
    auto to = first->to;
    while (true) {
      auto next = after_blanks(to);
      if (byte(next) == '?') {
        read.probable = true, to = next + 1;
        continue;
      }
      bool const slash = byte(next) == '/', dash = is_dash(point(next).value);
      auto const joint = slash || dash ? WordAt{} : word(next);
      bool const joins = joint.says == DateWord::joins || joint.says == DateWord::to;
      if (!slash && !dash && !joins) break;
      next = joins ? joint.to : next + point(next).bytes;
      auto const second = second_year(next, first->years, joins);
      if (!second) break;
      if (second->years.from < first->years.from || (read.joined && second->years.to < read.written.to)) {
        if (joins) break;
        return error(Problem::impossible_years, {at_, second->to});
      }
      read.doubled = slash && !read.joined && first->years.is_one_year() && second->years == first->years.to + 1;
      read.written = read.written.joined(second->years);
      read.joined = true, several = several || second->several;
      depth_ += second->opened, to = second->to;
    }
    read.at.to = to;
    read.years = read.doubled ? YearRange{read.written.to} : read.written;
    read.about = said_.about, read.open_after = said_.not_before, read.open_before = said_.not_after;
    if ((read.probable || read.about) && !several) read.years = read.years.widened(5);
    if (read.open_after) read.years.to = read.written.to + 50;
    if (read.open_before) read.years.from = read.written.from - 50;
    if (said_.bare_c && read.written.from >= 1790) date_.warn(error(Problem::circa_or_copyright, read.at));
    return std::optional{read};
  }

  /// Lists the text from the last listed position up to `from` as unread, unless it is only punctuation.
  constexpr void tell(std::size_t from, std::size_t to) {
    auto const is_punctuation = [&](std::size_t i) {
      auto const c = point(i).value;
      return c < 0x80 ? !is_latin_letter(static_cast<char>(c)) && !is_digit(static_cast<char>(c))
                      : is_blank(c) || is_dash(c) || is_quotation_mark(c);
    };
    auto first = told_, last = told_;
    for (auto i = told_; i < from; i += point(i).bytes)
      if (!is_punctuation(i))
        last = i + point(i).bytes;
      else if (last == told_)
        first = i + point(i).bytes;
    if (last > first) date_.unread.push_back({first, last});
    if (to > told_) told_ = to;
  }
  /// Adds an item to its group.
  constexpr void keep(Item const& read) {
    tell(said_.republic && said_.from < read.at.from ? said_.from : read.at.from, read.at.to);
    auto& heap = said_.correction ? correction_ : depth_ > 0 ? bracket_ : plain_;
    auto const is_open = [](Item const& item) { return item.open_before || item.open_after; };
    if (!heap || said_.correction || (said_.reprinted && &heap == &plain_) || heap->clipped)
      heap = read;
    else if (read.clipped)
      return;
    else if (is_open(*heap) && is_open(read) && heap->open_before != read.open_before &&
             heap->years.meets(read.years)) {
      heap->years = {heap->open_after ? heap->written.from : read.written.from,
                     heap->open_before ? heap->written.to : read.written.to}; // not before ... and not after
      heap->written = heap->years, heap->open_before = heap->open_after = false;
    } else {
      bool const same = heap->years == read.years;
      if (!same && !said_.between) date_.warn(error(Problem::several_dates, read.at));
      heap->written = heap->written.joined(read.written), heap->years = heap->years.joined(read.years);
      heap->probable = heap->probable || read.probable, heap->about = heap->about || read.about;
      heap->doubled = heap->doubled && same, heap->roman = heap->roman && read.roman;
    }
    if (date_.read.empty()) date_.read = read.at;
    date_.read.to = read.at.to;
    bool const between = said_.between;
    said_ = {};
    said_.between = between;
  }
  constexpr void say(WordAt const& word) {
    bool told = true;
    switch (word.says) {
    case DateWord::about:
      said_.about = true;
      said_.bare_c = word.words == "c" && is_digit(byte(word.to)) && byte(word.to - 1) != '.';
      break;
    case DateWord::correction:
      said_.correction = true;
      break;
    case DateWord::between:
      said_.between = true;
      break;
    case DateWord::not_before:
      said_.not_before = true;
      break;
    case DateWord::not_after:
      said_.not_after = true;
      break;
    case DateWord::no_date:
      no_date_ = true;
      break;
    case DateWord::reprinted:
      said_.reprinted = true;
      break;
    case DateWord::republic:
      said_.republic = true, said_.from = at_, told = false;
      break;
    case DateWord::century:
      said_.century = true;
      break;
    case DateWord::early_half:
    case DateWord::late_half:
    case DateWord::middle_half:
      said_.half = word.says;
      break;
    default:
      told = false;
    }
    if (told) tell(at_, word.to);
    at_ = word.to;
  }
  /// Skips a word or digits that do not concern the years.
  constexpr void pass_over() {
    auto const start = at_;
    while (at_ < text_.size() && (word_goes_on(at_) || is_digit(text_[at_]))) at_ += point(at_).bytes;
    if (at_ == start) at_ += point(at_).bytes;
  }
  constexpr void bracket(bool opens) {
    depth_ = opens ? (depth_ > 0 ? depth_ : 0) + 1 : depth_ > 0 ? depth_ - 1 : 0;
    said_ = {};
    ++at_;
  }

  [[nodiscard]] constexpr Expected<StatedDate> answer() {
    tell(text_.size(), text_.size());
    auto const* best = correction_ ? &*correction_ : bracket_ ? &*bracket_ : plain_ ? &*plain_ : nullptr;
    if (best == nullptr) {
      if (no_date_) return static_cast<StatedDate&&>(date_);
      return error(Problem::not_years, date_.unread.empty() ? TextSpan{0, text_.size()} : date_.unread.front());
    }
    date_.years = best->years, date_.written = best->written;
    date_.corrected = correction_.has_value();
    date_.supplied = date_.supplied || (!correction_ && bracket_);
    date_.probable = best->probable, date_.approximate = best->about, date_.double_dated = best->doubled;
    date_.open = best->open_before || best->open_after;
    auto const* printed = plain_ && !plain_->clipped ? &*plain_ : correction_ && bracket_ ? &*bracket_ : nullptr;
    if (printed != nullptr && printed != best) date_.printed = printed->written;
    if (best->clipped) date_.warn(error(Problem::year_clipped, best->at, best->written.from));
    if (!correction_ && bracket_ && printed != nullptr && !printed->written.meets(bracket_->written))
      date_.warn(error(Problem::date_numerals_differ, bracket_->at, printed->written.from));
    return static_cast<StatedDate&&>(date_);
  }

public:
  constexpr explicit DateReader(std::string_view text) : text_{text} {}

  constexpr Expected<StatedDate> read() {
    while (true) {
      at_ = after_blanks(at_);
      if (at_ == text_.size()) return answer();
      char const c = text_[at_];
      if (c == '[' || c == '(' || c == ']' || c == ')') {
        if (c != '(' || roman_atom(at_) == std::nullopt) {
          bracket(c == '[' || c == '(');
          continue;
        }
      }
      if (c == '=') {
        said_.correction = true;
        ++at_;
        continue;
      }
      if (auto const known = word(at_); known.to > 0) { // this test comes before numerals, because mid is not a numeral
        say(known);
        continue;
      }
      auto const found = item();
      if (!found) return found.error();
      if (*found) {
        at_ = (*found)->at.to;
        keep(**found);
      } else
        pass_over();
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
