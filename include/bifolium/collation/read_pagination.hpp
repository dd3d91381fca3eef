// SPDX-License-Identifier: MIT
/// Reading a statement of pagination, "pp. [8] 1-205 [206] [misprinting 45 as 54]", or of foliation, "ff. [2] 1-152".
/// A figure in brackets is so many pages without numbers - but a page whose number is inferred where it goes on from the
/// number before and the next number, if there is one, goes on from it. "[=152]" and "[i.e. 152]" correct the last number
/// of a run: what it would be, counted on from the run before. Library extents ("[8], 205, [3] p.") are the same thing
/// shortened: there 205 means 1-205. What is doubtful is a warning.
#pragma once

#include <bifolium/collation/pagination.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Reads both: the statement that begins with its unit, and the extent that ends with it.
class PaginationReader {
  std::string_view text_;
  std::size_t at_{};
  bool extent_;
  bool ranges_{}; ///< a run from - to was met: lone numbers are then single pages
  bool unit_seen_{};
  Pagination read_{};

  struct Figure {
    std::int64_t value{-1};
    Numerals numerals{};
  };
  static constexpr std::int64_t most = 9999999;

  [[nodiscard]] char byte(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  [[nodiscard]] bool begins(std::string_view word) const { return text_.substr(at_).starts_with(word); }
  bool take(std::string_view word) { return begins(word) ? (at_ += word.size(), true) : false; }
  /// A word, not the head of a longer one.
  bool take_word(std::string_view word) {
    if (!begins(word) || is_latin_letter(byte(word.size()))) return false;
    at_ += word.size();
    return true;
  }
  void blanks() {
    while (at_ < text_.size()) {
      auto const point = decode(text_, at_);
      if (!is_blank(point.value) && point.value != '\n' && point.value != '\r') return;
      at_ += point.bytes;
    }
  }
  bool dash() {
    if (at_ >= text_.size()) return false;
    auto const point = decode(text_, at_);
    if (!is_dash(point.value)) return false;
    at_ += point.bytes;
    return true;
  }
  Figure figure() {
    std::int64_t n = 0;
    auto const from = at_;
    for (; is_digit(byte()); ++at_) n = n > most ? n : n * 10 + (byte() - '0');
    if (at_ > from) return {n, Numerals::arabic};
    auto const roman = roman_numeral(text_.substr(at_));
    if (roman.bytes == 0 || is_latin_letter(byte(roman.bytes))) return {};
    at_ += roman.bytes;
    return {roman.value, Numerals::roman};
  }
  [[nodiscard]] Error error(Problem problem, std::size_t from) const {
    return error_at(problem, 1, column_of(text_, from), text_.data() + from, text_.size() - from);
  }
  void warn(Problem problem, std::size_t from) {
    read_.warnings.push_back(error_at(problem, 1, column_of(text_, from), text_.data() + from, at_ - from));
  }

  /// "pp.", "p.", "leaves": true with by_leaf set. Longer words first.
  bool unit() {
    struct Unit {
      std::string_view word;
      bool by_leaf;
    };
    for (auto const& [word, by_leaf] :
         {Unit{"pages", false}, Unit{"pp.", false}, Unit{"p.", false}, Unit{"leaves", true}, Unit{"leaf", true},
          Unit{"foll.", true}, Unit{"fol.", true}, Unit{"Bl.", true}, Unit{"ll.", true}, Unit{"ff.", true},
          Unit{"f.", true}, Unit{"l.", true}})
      if (take(word)) {
        read_.by_leaf = by_leaf;
        return unit_seen_ = true;
      }
    return false;
  }

  // -- where numbers stand -------------------------------------------------------------------------------------------

  /// The last run with numbers of a kind.
  [[nodiscard]] PageRun const* last_numbered(Numerals numerals, int series) const {
    for (auto i = read_.runs.size(); i-- > 0;)
      if (read_.runs[i].numbering != Numbering::none)
        return read_.runs[i].numerals == numerals && read_.runs[i].series == series ? &read_.runs[i] : nullptr;
    return nullptr;
  }
  /// The number the last page of what was read should bear, counted on through pages without numbers.
  [[nodiscard]] std::int64_t counted_to() const {
    std::int64_t without = 0;
    for (auto i = read_.runs.size(); i-- > 0;) {
      auto const& run = read_.runs[i];
      if (run.numbering != Numbering::none) return without + (run.true_last != 0 ? run.true_last : run.last);
      without += run.count;
    }
    return 0; // pages before the first number are outside the numbers
  }
  /// How many pages a corrected run has. A "true" number below its first can only be how many there are.
  [[nodiscard]] static std::int64_t corrected_count(PageRun const& run, std::int64_t counted, std::int64_t truly) {
    auto const first = counted > 0 && counted + 1 < run.first ? counted + 1 : run.first;
    return truly >= first ? truly - first + 1 : truly;
  }
  /// The number that comes next in the text, looked at only.
  [[nodiscard]] std::int64_t next_number(Numerals numerals) {
    auto const here = at_;
    blanks();
    while (take(",")) blanks();
    bool const bracket = take("[");
    auto const next = figure();
    bool const run = dash();
    at_ = here;
    return next.numerals == numerals && (!bracket || run) ? next.value : -1;
  }
  /// [=152], [i.e. 152], [recte 152] behind a run, perhaps with a comma between.
  std::optional<Error> correction(PageRun& run, std::int64_t counted) {
    auto const here = at_;
    blanks();
    if (byte() == ',') ++at_, blanks();
    auto const from = at_;
    bool const opened = take("[");
    blanks();
    if (!opened || !(take("=") || take("i.e.") || take("i. e.") || take("recte"))) return at_ = here, std::nullopt;
    blanks();
    auto const truly = figure();
    blanks();
    if (truly.value < 1 || !take("]")) return error(extent_ ? Problem::not_an_extent : Problem::not_a_pagination, from);
    if (truly.value > most) return error(Problem::number_too_large, from);
    if (run.numbering == Numbering::none) return run.count = truly.value, std::nullopt;
    run.count = corrected_count(run, counted, truly.value);
    run.true_last = truly.value;
    return std::nullopt;
  }

  std::optional<Error> bracketed(int series) {
    auto const from = at_;
    auto const problem = extent_ ? Problem::not_an_extent : Problem::not_a_pagination;
    ++at_;
    blanks();
    auto const first = figure();
    if (first.value < 1) return error(problem, from);
    if (first.value > most) return error(Problem::number_too_large, from);
    PageRun run{Numbering::none, {}, {}, 0, 0, first.value, 0};
    auto const inferred = [&](std::int64_t last) {
      run = {Numbering::inferred,
             first.numerals,
             static_cast<std::uint8_t>(series),
             first.value,
             last,
             last - first.value + 1,
             0};
    };
    bool lone = true, said = false;
    if (dash()) {
      auto const last = figure();
      if (last.value < first.value || last.numerals != first.numerals) return error(problem, from);
      if (last.value > most) return error(Problem::number_too_large, from);
      inferred(last.value);
      lone = false;
    }
    take("+"); // [48+] p.: an imperfect copy
    blanks();
    for (std::string_view word : {"unnumbered", "unpaged", "unfoliated", "pages", "pp.", "p.", "leaves", "ll."})
      if (take(word)) said = true, blanks();
    if (!take("]")) return error(problem, from);
    if (lone && !said && !extent_) {
      auto const* before = last_numbered(first.numerals, series);
      auto const next = next_number(first.numerals);
      bool const goes_on = before != nullptr && !read_.runs.empty() && read_.runs.back().numbering != Numbering::none &&
                           first.value == before->last + 1;
      bool const opens = first.value == 1 && next == 2; // [1] 2-205
      if (opens || (goes_on && next != before->last + 1)) {
        inferred(first.value);
        if (next != first.value + 1 && first.value <= 16) warn(Problem::bracket_read_as_number, from);
      }
    }
    auto const counted = counted_to();
    if (auto wrong = correction(run, counted)) return wrong;
    read_.runs.push_back(run);
    return std::nullopt;
  }
  std::optional<Error> numbered(int series) {
    auto const from = at_;
    auto const problem = extent_ ? Problem::not_an_extent : Problem::not_a_pagination;
    auto const first = figure();
    if (first.value < 0) return error(problem, from);
    if (first.value > most || first.value == 0)
      return error(first.value == 0 ? problem : Problem::number_too_large, from);
    PageRun run{Numbering::printed, first.numerals, static_cast<std::uint8_t>(series), first.value, first.value, 1, 0};
    if (dash()) {
      auto const last = figure();
      if (last.value < first.value || last.numerals != first.numerals) return error(problem, from);
      if (last.value > most) return error(Problem::number_too_large, from);
      run.last = last.value;
      run.count = last.value - first.value + 1;
      ranges_ = true;
    } else {
      auto const* before = last_numbered(first.numerals, series);
      bool const one_page =
          !extent_ && (first.value == 1 || (before != nullptr && (ranges_ || first.value == before->last + 1)));
      if (!one_page) {
        run.first = 1;
        run.count = first.value;
        if (!extent_ && ranges_) warn(Problem::number_read_as_total, from);
      }
    }
    auto const counted = counted_to();
    if (auto wrong = correction(run, counted)) return wrong;
    read_.runs.push_back(run);
    return std::nullopt;
  }

  /// Plates are listed apart and bear no pages: "4 plates", "[2] leaves of plates", "plates".
  [[nodiscard]] bool plates_follow() const {
    auto i = at_;
    while (i < text_.size() && (is_digit(text_[i]) || text_[i] == '[' || text_[i] == ']' || text_[i] == ' ')) ++i;
    for (std::string_view word : {"leaves of ", "leaf of ", "engraved ", "folding ", "folded "})
      if (text_.substr(i).starts_with(word)) i += word.size();
    return text_.substr(i).starts_with("plate");
  }

  // -- faults --------------------------------------------------------------------------------------------------------

  [[nodiscard]] bool begins_faults() const {
    auto i = at_;
    if (i < text_.size() && (text_[i] == '[' || text_[i] == '(')) ++i;
    auto const rest = text_.substr(i);
    for (std::string_view word : {"mis", "omit", "repeat", "numbers", "with "})
      if (rest.starts_with(word)) return true;
    // 33-34 omitted, '207' for 197: a figure and then a word of faults
    for (auto k = i; k < text_.size() && k < i + 24; ++k) {
      for (std::string_view word : {" as ", " for ", " mis", " omitted", " repeated", " numbered"})
        if (text_.substr(k).starts_with(word)) return true;
      if (text_[k] == ',' || text_[k] == ';' || text_[k] == ']' || text_[k] == '[' || text_[k] == ')') return false;
    }
    return false;
  }
  void quotation_mark() {
    if (at_ >= text_.size()) return;
    auto const point = decode(text_, at_);
    if (point.value == '\'' || point.value == '"' || (point.value >= 0x2018 && point.value <= 0x201F))
      at_ += point.bytes;
  }
  struct Quoted {
    Figure number;
    int series{};
  };
  Quoted quoted() {
    quotation_mark();
    auto const series = raised();
    auto const number = figure();
    quotation_mark();
    return {number, series};
  }
  int raised() {
    int series = 0;
    while (at_ < text_.size() && superscript_digit(decode(text_, at_).value) >= 0) {
      series = series > 99 ? series : series * 10 + superscript_digit(decode(text_, at_).value);
      at_ += decode(text_, at_).bytes;
    }
    return series > 99 ? 99 : series;
  }
  /// Numbers from a to b come twice, or not at all: the run is parted there, if the statement has not parted it already.
  bool part(std::int64_t a, std::int64_t b, Numerals numerals, int series, bool repeated) {
    for (std::size_t r = 0; r < read_.runs.size(); ++r) {
      auto const run = read_.runs[r];
      if (run.numbering != Numbering::printed || run.numerals != numerals || run.series != series) continue;
      auto const* next = r + 1 < read_.runs.size() ? &read_.runs[r + 1] : nullptr;
      if (repeated && next != nullptr && run.last == b && next->first == a) return true;
      if (!repeated && next != nullptr && run.last + 1 == a && next->first == b + 1) return true;
      bool const inside = repeated ? run.first <= a && b <= run.last : run.first < a && b < run.last;
      if (!inside || !run.regular()) continue;
      auto head = run, tail = run;
      head.last = repeated ? b : a - 1;
      tail.first = repeated ? a : b + 1;
      head.count = head.last - head.first + 1;
      tail.count = tail.last - tail.first + 1;
      read_.runs[r] = head;
      read_.runs.insert(read_.runs.begin() + static_cast<std::ptrdiff_t>(r) + 1, tail);
      return true;
    }
    return false;
  }
  bool misprint(Misprint const& wrong) {
    for (auto const& run : read_.runs)
      if (run.numbering == Numbering::printed && run.numerals == wrong.numerals && run.series == wrong.series &&
          run.first <= wrong.should_be && wrong.should_be <= run.last) {
        read_.misprints.push_back(wrong);
        return true;
      }
    return false;
  }
  /// misprinting 45 as 54, '207' for 197; 33-34 omitted; repeating 95-96
  std::optional<Error> faults() {
    enum class Verb : std::uint8_t { misprinting, omitting, repeating } verb{};
    char const close = byte() == '[' ? ']' : byte() == '(' ? ')' : '\0';
    if (close != '\0') ++at_;
    while (true) {
      blanks();
      while (byte() == ',' || byte() == ';') ++at_, blanks();
      if (at_ == text_.size() || (close != '\0' && byte() == close)) break;
      if (take_word("with") || take_word("and") || take_word("numbers") || take("pages") || take("pp.") || take("p."))
        continue;
      if (take_word("misprinting") || take_word("misnumbering") || take_word("mispaging") || take_word("misprinted") ||
          take_word("misnumbered")) {
        verb = Verb::misprinting;
        continue;
      }
      if (take_word("omitting")) {
        verb = Verb::omitting;
        continue;
      }
      if (take_word("repeating")) {
        verb = Verb::repeating;
        continue;
      }
      auto const from = at_;
      auto const first = quoted();
      if (first.number.value < 1) return error(Problem::not_a_pagination, from);
      auto last = first.number;
      if (dash()) last = figure();
      if (last.value < first.number.value || last.value > most || last.numerals != first.number.numerals)
        return error(Problem::not_a_pagination, from);
      blanks();
      bool const printed_first = take_word("for");
      bool const says = printed_first || take_word("as") || take_word("misprinted") || take_word("misnumbered") ||
                        take_word("numbered") || take_word("printed");
      bool known = false;
      if (!says && (take_word("omitted") || (verb == Verb::omitting && !begins("repeated"))))
        known = part(first.number.value, last.value, last.numerals, first.series, false);
      else if (!says && (take_word("repeated") || verb == Verb::repeating))
        known = part(first.number.value, last.value, last.numerals, first.series, true);
      else {
        blanks();
        static_cast<void>(take_word("as"));
        blanks();
        auto const second = quoted();
        if (!says || second.number.value < 0 || second.number.numerals != first.number.numerals ||
            last.value != first.number.value)
          return error(Problem::not_a_pagination, from);
        auto const series = static_cast<std::uint8_t>(printed_first ? second.series : first.series);
        known = misprint(printed_first ? Misprint{second.number.value, last.value, last.numerals, series}
                                       : Misprint{last.value, second.number.value, last.numerals, series});
      }
      if (!known) warn(Problem::fault_of_no_page, from);
    }
    if (close != '\0' && at_ < text_.size()) ++at_; // the text may end before it
    return std::nullopt;
  }

public:
  PaginationReader(std::string_view text, bool extent) : text_{text}, extent_{extent} {}

  Expected<Pagination> read() {
    auto const problem = extent_ ? Problem::not_an_extent : Problem::not_a_pagination;
    blanks();
    if (unit()) extent_ = false;
    blanks();
    bool any = false;
    bool const bracket = byte() == '[' && !is_digit(byte(1));
    auto const here = at_;
    if (bracket) ++at_;
    if (take("unpaged") || take("unfoliated") || take("unnumbered")) {
      read_.unpaged = any = true;
      if (bracket) static_cast<void>(take("]"));
    } else
      at_ = here;
    bool ended = false;
    while (!ended) {
      blanks();
      if (at_ == text_.size()) break;
      if (byte() == ',' || byte() == ';' || byte() == '+') {
        ++at_;
        continue;
      }
      if (any && byte() == '.' && at_ + 1 == text_.size()) {
        ++at_;
        continue;
      }
      if (any && unit()) { // "[8], 205, [3] p.": what follows is not of the pages
        ended = true;
        continue;
      }
      if (any && !extent_ && begins_faults()) {
        if (auto const wrong = faults()) return *wrong;
        continue;
      }
      if (any && plates_follow()) break;
      auto const series = raised();
      if (any && series == 0 && byte() != '[' && !is_digit(byte()) && roman_numeral(text_.substr(at_)).bytes == 0) {
        auto const from = at_;
        at_ = text_.size();
        if (extent_) return error(problem, from);
        warn(Problem::text_not_read, from);
        break;
      }
      if (auto const wrong = byte() == '[' ? bracketed(series) : numbered(series)) return *wrong;
      any = true;
    }
    if (!any) return error(problem, 0);
    if (extent_ && !unit_seen_) return error(Problem::text_ends, at_);
    if (page_count(read_) > 99999999) return error(Problem::number_too_large, 0);
    return static_cast<Pagination&&>(read_);
  }
};

} // namespace detail

/// Reads a statement of pagination or foliation; the unit in front ("pp.", "ff.") may be missing.
/// error: not_a_pagination, number_too_large, with the column.
[[nodiscard]] inline Expected<Pagination> read_pagination(std::string_view text) {
  return detail::PaginationReader{text, false}.read();
}

/// The statement in what follows a formula ("86 leaves, pp. [4] 1-32 35-154[=152] [16]"), where there is one.
[[nodiscard]] inline std::optional<Expected<Pagination>> pagination_of(Formula const& formula) {
  std::string_view const text = formula.tail();
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i > 0 && text[i - 1] != ' ' && text[i - 1] != ',' && text[i - 1] != ';') continue;
    for (std::string_view unit : {"pp. ", "p. ", "ff. ", "foll. ", "fol. ", "ll. "}) {
      if (!text.substr(i).starts_with(unit)) continue;
      auto const next = i + unit.size() < text.size() ? text[i + unit.size()] : '\0';
      // "50 ll. plates" states leaves; "ff. [2] 1-152" numbers them
      if (next != '[' && !detail::is_digit(next) && roman_numeral(text.substr(i + unit.size())).bytes == 0) continue;
      auto read = read_pagination(text.substr(i));
      if (read) return read;
      auto error = read.error();
      error.column += column_of(text, i) - 1;
      return Expected<Pagination>{error};
    }
  }
  return std::nullopt;
}

/// The statement set down in one way; reading it gives the same again.
[[nodiscard]] inline std::string write_pagination(Pagination const& pagination) {
  std::string text = pagination.by_leaf ? "ff." : "pp.";
  if (pagination.unpaged) text += " [unnumbered]";
  auto const figure = [](std::int64_t n, Numerals numerals) {
    return numerals == Numerals::roman && n > 0 && n < 5000 ? std::string{small_roman(n).view()} : std::to_string(n);
  };
  auto const raised = [](int series) {
    std::string result;
    for (char c : series == 0 ? std::string{} : std::to_string(series)) {
      char bytes[4]{};
      result.append(bytes, encode(superscript(c - '0'), bytes));
    }
    return result;
  };
  PageRun const* before = nullptr;
  for (auto const& run : pagination.runs) {
    text += ' ';
    bool const goes_on = before != nullptr && before->numbering != Numbering::none &&
                         before->numerals == run.numerals && before->series == run.series &&
                         run.first == before->last + 1;
    auto const lone = run.first == run.last && (goes_on || (run.first == 1 && run.numbering == Numbering::printed));
    auto const ends = [&] {
      return figure(run.first, run.numerals) + (lone ? "" : "-" + figure(run.last, run.numerals));
    };
    if (run.numbering == Numbering::none) {
      bool const like_a_page = run.count == 1 || (before != nullptr && before->numbering != Numbering::none &&
                                                  run.count == before->last + 1);
      text += '[' + std::to_string(run.count) + (like_a_page ? " unnumbered]" : "]");
    } else if (run.numbering == Numbering::inferred)
      text += raised(run.series) + '[' + ends() + ']';
    else
      text += raised(run.series) + ends();
    if (run.numbering != Numbering::none && run.true_last != 0)
      text += " [=" + figure(run.true_last, run.numerals) + ']';
    before = &run;
  }
  for (auto const& wrong : pagination.misprints) {
    text += &wrong == pagination.misprints.data() ? " [misprinting " : ", ";
    text +=
        raised(wrong.series) + figure(wrong.should_be, wrong.numerals) + " as " + figure(wrong.printed, wrong.numerals);
  }
  if (!pagination.misprints.empty()) text += ']';
  return text;
}

} // namespace v0
} // namespace bifolium
