// SPDX-License-Identifier: MIT
/// One pass over the text of a formula. What it finds goes to a sink: the counter's sink adds up, the reader's sink keeps
/// the runs; both therefore see the same formula, and a count never allocates. Nothing is repaired: what can be read in
/// spite of a doubt is read and the doubt is told to the sink; what cannot is an error with its place.
/// A change may name any of the last 256 runs; that bounds both memory and time.
#pragma once

#include <bifolium/collation/dialect.hpp>
#include <bifolium/collation/parts.hpp>
#include <bifolium/collation/scan_counts.hpp>
#include <bifolium/collation/scan_plain.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/leaf/read_signature.hpp>

#include <initializer_list>

namespace bifolium {
inline namespace v0 {
namespace detail {

constexpr bool is_minus(char32_t c) noexcept { return is_dash(c) || c == 0x2212; }

/// Text that ends a formula or belongs to it without being one.
enum class Passage : std::uint8_t { signing, extent, prose };

/// A sink that keeps nothing but the number of doubts.
struct CountSink {
  static constexpr bool keeps_runs = false;
  std::int64_t warnings{0};
  constexpr void run(Run const&) {}
  constexpr void change(Change const&) {}
  constexpr void note(Change const&, std::size_t, std::size_t) {}
  constexpr void warn(Problem, std::size_t, std::size_t, std::int64_t) { ++warnings; }
  constexpr void format(Format) {}
  constexpr void second_format(Format) {}
  constexpr void paper_class(std::size_t, std::size_t) {}
  constexpr void passage(Passage, std::size_t, std::size_t) {}
  constexpr void imperfect() {}
};

template <class Sink> class FormulaScanner {
  std::string_view text_;
  Dialect dialect_;
  Alphabet alphabet_;
  Sink& sink_;
  std::size_t at_{0}, start_{0};
  int depth_{0};        // open brackets round runs
  bool part_{false};    // a semicolon since the last run
  bool equated_{false}; // this is the second statement of a formula written twice
  std::size_t open_at_{0};
  Error error_{};
  bool failed_{false};

  std::int64_t leaves_{0}, gatherings_{0};
  std::uint32_t runs_{0};
  Run last_{};
  PlainRun plain_{};
  std::uint32_t plain_run_{0xFFFFFFFE}; // which run plain_ is
  bool last_is_plain_{false};           // last_ has no signatures yet: they are in plain_
  // the highest place reached by the plain capitals and the plain small letters
  std::int64_t highest_[2]{};
  // gatherings that share the next count
  std::size_t shared_until_{0};
  Cycle shared_{};
  std::int64_t sharing_{0};

  struct Known { // a run already read; deliberately without initialisers: only what is written is read
    std::size_t from;
    std::int64_t first_gathering, gatherings;
    std::uint32_t run;
    std::uint8_t series, terms;
    std::uint16_t leaves[Cycle::most_terms];
  };
  struct Gone { // a leaf already deleted or cancelled
    std::int64_t gathering;
    int leaf;
  };
  static constexpr std::size_t most_known = 256, most_gone = 64;
  Known known_[most_known];
  Gone gone_[most_gone];
  std::size_t gone_count_{0};

  [[nodiscard]] constexpr char at(std::size_t i) const noexcept { return i < text_.size() ? text_[i] : '\0'; }
  [[nodiscard]] constexpr char32_t code(std::size_t i) const noexcept {
    return i < text_.size() ? decode(text_, i).value : U'\0';
  }
  [[nodiscard]] constexpr std::size_t skip(std::size_t i) const noexcept {
    for (; i < text_.size();) {
      auto const c = static_cast<unsigned char>(text_[i]);
      if (c == ' ' || c == '\t' || c == '\r' || c == '\n')
        ++i;
      else if (c >= 0xC2 && (is_blank(code(i)) || code(i) == 0xFEFF))
        i += decode(text_, i).bytes;
      else
        break;
    }
    return i;
  }
  constexpr bool fail(Problem problem, std::size_t from, std::size_t to, std::int64_t limit = 0) {
    if (from > text_.size()) from = text_.size();
    if (to > text_.size()) to = text_.size();
    while (to > from && to < text_.size() && (static_cast<unsigned char>(text_[to]) & 0xC0U) == 0x80U) --to;
    if (!failed_)
      error_ = error_at(problem, 1, column_of(text_, from), text_.data() + from, to > from ? to - from : 0, limit);
    failed_ = true;
    return false;
  }
  constexpr void warn(Problem problem, std::size_t from, std::size_t to, std::int64_t limit = 0) {
    sink_.warn(problem, from, to < text_.size() ? to : text_.size(), limit);
  }
  constexpr bool add_leaves(std::int64_t number, std::size_t from, std::size_t to) {
    auto const sum = checked_add(leaves_, number);
    if (!sum) return fail(Problem::number_too_large, from, to);
    leaves_ = *sum;
    return true;
  }

  // -- words ---------------------------------------------------------------------------------------------------------

  /// The letters from `i` on are a word, not signatures standing close together (ab, lm, zaa, zA).
  [[nodiscard]] constexpr bool is_word(std::size_t i) const {
    auto end = i;
    while (is_latin_letter(at(end))) ++end;
    if (end < i + 2) return false;
    SignatureScanner const scanner{text_.substr(0, end), dialect_.letters};
    auto scan = scanner.scan(i);
    if (!scan) return true;
    if (scan.signature.mark() == Mark::pi || scan.signature.mark() == Mark::chi) return false;
    while (scan.end < end) {
      auto const next = scanner.letters(scan.end, 1);
      auto const& a = scan.signature;
      auto const& b = next.signature;
      bool const follows = a.mark() == b.mark() && b.rank(alphabet_) == a.rank(alphabet_) + 1;
      bool const begins = a.mark() != b.mark() && b.rank(alphabet_) == 1;
      if (!follows && !begins) return true;
      scan = next;
    }
    return false;
  }
  [[nodiscard]] constexpr bool is_any(std::size_t i, std::initializer_list<std::string_view> words) const noexcept {
    for (auto word : words)
      if (text_.substr(i < text_.size() ? i : text_.size(), word.size()) == word) return true;
    return false;
  }
  /// An extent, a count of plates or leaves: 50 Bl., [404] leaves, pp. [4] 1-234, + 4 plates.
  [[nodiscard]] constexpr bool is_extent(std::size_t i) const {
    auto k = i;
    if (at(k) == '+') k = skip(k + 1);
    bool const bracket = at(k) == '[';
    if (bracket) ++k;
    auto const digits = k;
    while (is_digit(at(k))) ++k;
    bool const number = k != digits;
    if (bracket && (!number || at(k) != ']')) return false;
    if (bracket) ++k;
    auto const words = skip(k);
    if (number && words == k && !bracket) return false;
    if (!number && is_any(words, {"pp.", "ff.", "ll.", "p."})) {
      auto const figures = skip(words + (at(words + 1) == '.' ? 2 : 3));
      if (at(figures) == '[' || is_digit(at(figures))) return true;
    }
    if (is_any(words, {"p.", "p ", "pp.", "l.", "ll.", "ff.", "Bl.", "Bl "})) return number;
    return (number || at(i) == '+') && is_latin_letter(at(words)) && is_word(words);
  }

  // -- what stands before the gatherings -----------------------------------------------------------------------------

  constexpr void format_statement() {
    auto const begins_format = [&](std::size_t i) {
      char const c = at(i), d = at(i + 1), e = at(i + 2);
      if (is_digit(c)) {
        auto k = i;
        while (is_digit(at(k))) ++k;
        return at(k) == '/' || at(k) == 'o' || at(k) == 'm' || at(k) == 't' || at(k) == 'v' || is_degree_sign(code(k));
      }
      if (c == '(') return is_digit(d) || (is_latin_letter(d) && is_latin_letter(e));
      if (is_latin_letter(c)) return is_small(d) ? is_small(e) || e == '.' || e == '-' : d == '.' && is_small(e);
      return code(i) == 0xBD;
    };
    auto i = skip(start_);
    while (at(i) == ';' || at(i) == '.') i = skip(i + 1);
    at_ = i;
    if (!begins_format(i)) return;
    auto const from = i;
    auto found = format_at_start(text_.substr(i));
    if (!found && is_latin_letter(at(i))) { // a class of paper may stand before: Royal 4°, median 8°
      auto k = i;
      for (int words = 0; words < 2 && !found; ++words) {
        while (is_latin_letter(at(k)) || at(k) == '-') ++k;
        if (k < i + 4 || k == i) return;
        auto const next = skip(k);
        if (next == k || !begins_format(next)) return;
        found = format_at_start(text_.substr(next));
        if (found) sink_.paper_class(i, k), i = next;
        k = next;
      }
    }
    if (!found || found->bytes == 0) return;
    i += found->bytes;
    // 2o⁸ is a gathering, 2o a format
    if (at(i) == '^' || at(i) == '<' || (i < text_.size() && superscript_digit(code(i)) >= 0)) return;
    auto format = found->format;
    sink_.format(format);
    if (format.kind() == Format::Kind::single_sheet) warn(Problem::part_of_sheet_not_stated, from, i);
    auto next = skip(i);
    if (is_any(next, {"and ", "& "})) {
      next = skip(next + (at(next) == '&' ? 1 : 3));
      if (auto const second = format_at_start(text_.substr(next)); second && second->bytes != 0)
        sink_.second_format(second->format), i = next + second->bytes;
    }
    i = skip(i);
    if (at(i) == ':' || at(i) == '.' || at(i) == ',') ++i;
    at_ = i;
  }

  // -- gatherings ----------------------------------------------------------------------------------------------------

  /// The dash of a run, or the word "to": the byte behind it, or `i` when there is none.
  [[nodiscard]] constexpr std::size_t dash(std::size_t i) const noexcept {
    auto const next = skip(i);
    auto const c = code(next);
    if (is_dash(c)) return skip(next + decode(text_, next).bytes);
    if (next != i && is_any(next, {"to ", "to\t"})) return skip(next + 2);
    return i;
  }

  struct Element {
    SignatureScan first, last;
    CountScan count;
    std::int64_t gatherings{1};
    std::size_t from{}, end{};
    bool apart{}, single{true};
  };

  /// One run with its count, if it has one. Says nothing to the sink, so that it can also be used to look ahead.
  constexpr bool element(std::size_t from, Element& e) {
    SignatureScanner const scanner{text_, dialect_.letters};
    e.from = from;
    e.first = scanner.scan(from);
    if (!e.first) return false;
    e.end = e.first.end;
    e.last = e.first;
    bool const numeric = e.first.signature.mark() == Mark::number;
    if (auto const to = dash(e.end); to != e.end && !is_minus(code(to)) && at(to) != '\0') {
      auto last = scanner.scan(to);
      if (last) {
        e.single = false;
        e.last = last;
        e.end = last.end;
        if (!join(e)) return false;
      }
    }
    bool const flat = dialect_.flat_counts || at(e.end) == '(';
    e.count = CountScanner{text_}.scan(e.end, flat && !numeric, true);
    if (!e.count.found() && !numeric) count_apart(e);
    if (e.count.found()) e.end = e.count.end;
    return true;
  }
  /// Brings the ends of a run into one series and counts what lies between.
  constexpr bool join(Element& e) {
    auto& a = e.first.signature;
    auto& b = e.last.signature;
    // a prefix holds for both ends; π and χ among Greek letters are letters
    if (b.series() == 0 && a.series() != 0) b = b.in_series(a.series());
    if (b.duplicate() == Duplicate::none && a.duplicate() != Duplicate::none) b = b.duplicated(a.duplicate());
    if (a.is_letter() && b.is_letter() && b.beside() == Beside::nothing && a.beside() == Beside::before)
      b = b.with_symbol(a.beside(), a.text(), a.text_size());
    auto const as_letter = [](Signature& s, Signature const& other) {
      if (other.mark() == Mark::greek && (s.mark() == Mark::pi || s.mark() == Mark::chi))
        s = Signature::greek(s.mark() == Mark::pi ? 16 : 22, false, s.multiple()).in_series(s.series());
    };
    as_letter(a, b);
    as_letter(b, a);
    auto number = run_length(a, b, alphabet_);
    if (!number && e.first.multiplied && a.multiple() <= 9 && b.multiple() == 1 && a.is_letter() &&
        a.mark() == b.mark() && a.series() == 0) {
      // 2A-G is ²A-G: as 2A to G the run would go backwards
      auto const series = static_cast<int>(a.multiple());
      auto const first =
          a.at_rank(a.rank(alphabet_) - (series - 1) * (a.is_latin() ? alphabet_.size() : greek_letters), alphabet_);
      number = run_length(first, b, alphabet_);
      if (number) a = first.in_series(series), b = b.in_series(series);
      e.first.flat_prefix = false;
      e.first.problem = Problem::none;
      read_flat_ = number.has_value();
    }
    if (!number)
      return fail(a.same_series_as(b) ? Problem::run_goes_backwards : Problem::run_crosses_series,
                  e.last.end - (e.last.end - e.from), e.end);
    e.gatherings = *number;
    return true;
  }
  bool read_flat_{false};

  /// A count with blanks before it: D ⁸ at the end of an element, k 16.
  constexpr void count_apart(Element& e) {
    auto const next = skip(at(skip(e.end)) == ',' ? skip(e.end) + 1 : e.end);
    if (next == e.end) return;
    bool const comma = at(skip(e.end)) == ',';
    bool const raised = static_cast<unsigned char>(at(next)) >= 0xC2 && superscript_digit(code(next)) >= 0;
    if (!raised && !(is_digit(at(next)) && dialect_.flat_counts)) return;
    auto const count = CountScanner{text_}.scan(next, !raised, false);
    if (!count.found() || count.problem != Problem::none) return;
    auto const behind = count.end;
    auto const after = skip(behind);
    char const c = at(after);
    bool const ends = c == '\0' || c == '.' || c == ';' || c == ')' || c == ']' || (c == ',' && !comma);
    if (raised ? ends || c == '('
               : (ends || (!comma && after != behind && !is_dash(code(after)) && !is_extent(next)))) {
      e.count = count;
      e.apart = true;
    }
  }

  /// The count that a later gathering shares with those before it.
  constexpr bool look_ahead(std::size_t i, bool only_bracket) {
    while (i < text_.size()) {
      i = skip(i);
      char const c = at(i);
      if (c == ']' && only_bracket) {
        auto const count = CountScanner{text_}.scan(i + 1, dialect_.flat_counts, false);
        if (!count.found() || count.problem != Problem::none) return false;
        shared_ = count.cycle;
        shared_until_ = count.end;
        return true;
      }
      if (only_bracket) return false;
      bool const marked = c == '[' && !is_group(i);
      if (!marked && (c == ',' || c == ';' || c == '.' || c == '[' || c == ']')) {
        ++i;
        continue;
      }
      if (c == '(') {
        auto const close = closing(i);
        if (close == std::string_view::npos) return false;
        i = close + 1;
        continue;
      }
      if (is_latin_letter(c) && is_word(i)) return false;
      auto const kept_error = error_;
      auto const kept_failed = failed_;
      Element e;
      auto const ok = element(i, e);
      error_ = kept_error;
      failed_ = kept_failed;
      read_flat_ = false;
      if (!ok || e.end <= i) return false;
      if (e.count.found()) {
        if (e.count.problem != Problem::none) return false;
        shared_ = e.count.cycle;
        shared_until_ = e.end;
        return true;
      }
      i = e.end;
    }
    return false;
  }

  /// The last run as a whole, where it was plain and only its letters were kept.
  constexpr void spell_out_last() {
    if (!last_is_plain_) return;
    last_is_plain_ = false;
    last_.first = Signature::letter(plain_.first, plain_.first_multiple, dialect_.letters);
    last_.last = plain_.ranged ? Signature::letter(plain_.last, plain_.last_multiple, dialect_.letters) : last_.first;
    last_.first_inferred = last_.last_inferred = last_.imperfect = false;
    last_.unsigned_throughout = depth_ > 0;
  }
  /// (-A1) behind a plain run that has the gathering A; false leaves it to parenthesis().
  constexpr bool plain_deletion() {
    if (plain_run_ + 1 != runs_) return false;
    auto const found = PlainScanner{text_, at_}.scan_deletion();
    if (found.end == 0 || is_small(found.letter) != is_small(plain_.first) || found.leaf < 1 ||
        found.leaf > plain_.leaves)
      return false;
    auto const rank = [&](char letter, std::uint32_t multiple) {
      return (std::int64_t{multiple} - 1) * alphabet_.size() + alphabet_.place(small_letter(letter) - 'a' + 1);
    };
    auto const index = rank(found.letter, found.multiple) - rank(plain_.first, plain_.first_multiple);
    if (!alphabet_.has(small_letter(found.letter) - 'a' + 1) || index < 0 || index >= last_.gatherings) return false;
    auto const from = at_ + 1 + decode(text_, at_ + 1).bytes;
    if (!take_out({{runs_ - 1, index}, gatherings_ - last_.gatherings + index, plain_.leaves}, found.leaf, from,
                  found.end - 1))
      return true; // and failed_ says so
    leaves_ -= 1;
    Change change;
    change.kind = Change::Kind::deletion;
    change.stands_after = runs_ - 1;
    change.gathering = {runs_ - 1, index};
    change.leaf = found.leaf;
    sink_.change(change);
    at_ = found.end;
    return true;
  }
  /// The plain run at this place, if it is one and nothing before it bears on it; false leaves it to gathering().
  constexpr bool plain_gathering() {
    if (sharing_ != 0 || shared_until_ > at_ || (!last_is_plain_ && last_.first.series() != 0)) return false;
    auto const found = PlainScanner{text_, at_}.scan(dialect_.flat_counts);
    if (found.end == 0) return false;
    auto const letter = [](char c) { return small_letter(c) - 'a' + 1; };
    if (!alphabet_.has(letter(found.first)) || !alphabet_.has(letter(found.last))) return false;
    auto const small = is_small(found.first);
    if (small != is_small(found.last)) return false;
    auto const size = alphabet_.size();
    auto const first = (std::int64_t{found.first_multiple} - 1) * size + alphabet_.place(letter(found.first));
    auto const last = (std::int64_t{found.last_multiple} - 1) * size + alphabet_.place(letter(found.last));
    auto& highest = highest_[small ? 1 : 0];
    bool const new_part = part_ && runs_ > 0;
    // a backward run, one written A-A (which is longer than its mark), a letter met before: the full scanner says so
    if (last < first || (found.ranged && last == first) || (!new_part && first <= highest)) return false;
    auto const sum = checked_add(leaves_, (last - first + 1) * found.leaves);
    if (!sum) return false;
    if (new_part) highest_[0] = highest_[1] = 0;
    highest = last;
    plain_ = found;
    plain_run_ = runs_;
    last_is_plain_ = true;
    last_.gatherings = last - first + 1;
    last_.leaves = Cycle{found.leaves};
    last_.begins_part = new_part;
    part_ = false;
    leaves_ = *sum;
    auto& known = known_[runs_ % most_known];
    known.from = at_;
    known.first_gathering = gatherings_;
    known.gatherings = last_.gatherings;
    known.run = runs_;
    known.series = 0;
    known.terms = 1;
    known.leaves[0] = static_cast<std::uint16_t>(found.leaves);
    gatherings_ += last_.gatherings;
    ++runs_;
    at_ = found.end;
    if constexpr (Sink::keeps_runs) {
      spell_out_last();
      sink_.run(last_);
    }
    return true;
  }
  constexpr bool gathering(bool unsigned_first = false) {
    Element e;
    read_flat_ = false;
    auto const from = at_;
    if (!element(from, e)) {
      if (failed_) return false;
      return fail(e.first.problem == Problem::no_signature ? Problem::unknown_mark : e.first.problem, e.first.end,
                  e.first.end + 12,
                  e.first.problem == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple}
                                                                : std::int64_t{Signature::longest_text});
    }
    Run run;
    run.first = e.first.signature;
    run.last = e.last.signature;
    run.gatherings = e.gatherings;
    run.first_inferred = e.first.inferred || unsigned_first;
    run.last_inferred = e.single ? run.first_inferred : e.last.inferred;
    run.unsigned_throughout = depth_ > 0;
    run.begins_part = part_ && runs_ > 0;
    part_ = false;
    keep_series(run);
    if (!count(e, run)) return false;
    at_ = e.end;
    doubts(e, run);
    if (!add_leaves(run.leaf_total(), from, e.end)) return false;
    remember(run, from);
    auto const sum = checked_add(gatherings_, run.gatherings);
    if (!sum) return fail(Problem::number_too_large, from, e.end);
    gatherings_ = *sum;
    ++runs_;
    last_ = run;
    sink_.run(run);
    return true;
  }
  constexpr bool count(Element& e, Run& run) {
    if (e.count.found()) {
      if (e.count.problem != Problem::none)
        return fail(e.count.problem, e.from, e.count.end,
                    e.count.problem == Problem::cycle_too_long ? std::int64_t{Cycle::most_terms}
                                                               : std::int64_t{most_leaves_in_gathering});
      run.leaves = e.count.cycle;
      if (e.single && e.count.hyphen) { // m1-3: leaves 1 to 3 of one gathering
        auto const a = run.leaves.term(0), b = run.leaves.term(run.leaves.size() - 1);
        if (run.leaves.size() == 2 && a < b) {
          run.leaves = Cycle{b - a + 1};
          warn(Problem::leaves_read_as_count, e.from, e.end, b - a + 1);
        }
      }
      if (sharing_ > 0 && shared_until_ >= e.end && run.leaves.size() > 1) run.leaves = run.leaves.turned(sharing_);
      if (e.end >= shared_until_) sharing_ = 0;
      if (e.apart) warn(Problem::count_apart, e.from, e.end);
      return true;
    }
    if (shared_until_ <= e.end) {
      shared_until_ = 0;
      sharing_ = 0;
      if (!look_ahead(e.end, dialect_.omitted != Omitted::next)) shared_until_ = 0;
    }
    if (shared_until_ > e.end) {
      run.leaves = shared_.turned(sharing_);
      if (shared_.size() == 1) run.leaves = shared_;
      sharing_ += run.gatherings;
      return true;
    }
    if (dialect_.omitted == Omitted::eight) {
      run.leaves = Cycle{8};
      warn(Problem::count_supplied, e.from, e.end, 8);
      return true;
    }
    bool const digits = is_digit(at(e.end));
    if (digits) return fail(Problem::flat_count, e.from, e.end + 3);
    return fail(run.first.mark() == Mark::number && e.end - e.from > 3 ? Problem::flat_numbers : Problem::no_leaf_count,
                e.from, e.end);
  }
  /// A raised figure rules the rest of its series: ²a-b⁸ c⁶ - unless the main series goes on at just this letter.
  constexpr void keep_series(Run& run) {
    if (run.first.is_latin() && run.first.series() == 0 && last_.first.series() != 0 && !run.begins_part &&
        run.first.duplicate() == Duplicate::none && run.first.beside() == Beside::nothing) {
      auto const as_last = run.first.in_series(last_.last.series());
      if (as_last.same_series_as(last_.last) && run.first.rank(alphabet_) == last_.last.rank(alphabet_) + 1 &&
          highest_[run.first.mark() == Mark::small ? 1 : 0] + 1 != run.first.rank(alphabet_)) {
        run.first = as_last;
        run.last = run.last.in_series(as_last.series());
      }
    }
  }
  constexpr void doubts(Element const& e, Run const& run) {
    if (run.begins_part) highest_[0] = highest_[1] = 0;
    for (std::size_t i = 0; i < run.leaves.size(); ++i)
      if (run.leaves.term(i) % 2 != 0 && run.leaves.term(i) != 1) warn(Problem::odd_gathering, e.from, e.end);
    if (run.leaves.size() > 1 && run.gatherings % static_cast<std::int64_t>(run.leaves.size()) != 0 && e.count.found())
      warn(Problem::alternation_over_odd_run, e.from, e.end, run.gatherings);
    if (!e.single) {
      if (run.gatherings == 1) warn(Problem::run_of_one, e.from, e.end);
      if (e.first.glyph_outside || e.last.glyph_outside) warn(Problem::letter_not_in_alphabet, e.from, e.end);
    } else if (e.first.glyph_outside && run.first.letter_number() == Alphabet::w)
      warn(Problem::letter_not_in_alphabet, e.from, e.end);
    if (e.first.flat_prefix) warn(Problem::duplicate_read_flat, e.from, e.end);
    if (read_flat_) warn(Problem::series_read_flat, e.from, e.end);
    if (run.first.is_latin() && run.first.series() == 0 && run.first.duplicate() == Duplicate::none &&
        run.first.beside() == Beside::nothing) {
      auto& highest = highest_[run.first.mark() == Mark::small ? 1 : 0];
      if (run.first.rank(alphabet_) <= highest) warn(Problem::series_starts_again, e.from, e.end);
      auto const reached = run.last.rank(alphabet_);
      highest = reached > highest ? reached : highest;
    }
  }
  constexpr void remember(Run const& run, std::size_t from) {
    auto& known = known_[runs_ % most_known];
    known.from = from;
    known.first_gathering = gatherings_;
    known.gatherings = run.gatherings;
    known.run = runs_;
    known.series = static_cast<std::uint8_t>(run.first.series());
    known.terms = static_cast<std::uint8_t>(run.leaves.size());
    for (std::size_t i = 0; i < run.leaves.size(); ++i)
      known.leaves[i] = static_cast<std::uint16_t>(run.leaves.term(i));
  }

  // -- changes -------------------------------------------------------------------------------------------------------

  [[nodiscard]] constexpr std::size_t closing(std::size_t i) const noexcept {
    int open = 0;
    for (; i < text_.size(); ++i) {
      if (text_[i] == '(') ++open;
      if (text_[i] == ')' && --open == 0) return i;
    }
    return std::string_view::npos;
  }

  struct Target { // a gathering that a change names
    GatheringAt gathering{};
    std::int64_t ordinal{};
    int leaves{};
  };
  [[nodiscard]] constexpr Target last_gathering() const {
    return {{runs_ - 1, last_.gatherings - 1}, gatherings_ - 1, last_.leaves.at(last_.gatherings - 1)};
  }
  /// The nearest gathering of that name before this point; a name without a raised figure may be of any series.
  [[nodiscard]] constexpr std::optional<Target> find(Signature const& name) {
    auto const exact = find(name, false);
    return exact || name.series() != 0 ? exact : find(name, true);
  }
  [[nodiscard]] constexpr std::optional<Target> find(Signature const& name, bool any_series) {
    auto const most = runs_ < most_known ? runs_ : most_known;
    for (std::uint32_t back = 0; back < most; ++back) {
      auto const& known = known_[(runs_ - 1 - back) % most_known];
      Signature first = last_.first, last = last_.last;
      if (back != 0) {
        auto const kept_error = error_;
        auto const kept_failed = failed_;
        Element e;
        SignatureScanner const scanner{text_, dialect_.letters};
        e.from = known.from;
        e.first = e.last = scanner.scan(known.from);
        e.end = e.first.end;
        auto const to = dash(e.end);
        auto const end = to != e.end && !is_minus(code(to)) ? scanner.scan(to) : SignatureScan{};
        if (to != e.end && end && known.gatherings >= 1 && end.end > to) e.last = end, e.end = end.end, join(e);
        error_ = kept_error;
        failed_ = kept_failed;
        first = e.first.signature;
        last = e.last.signature;
        if (first.series() != known.series) first = first.in_series(known.series), last = last.in_series(known.series);
      }
      if (any_series) first = first.in_series(0), last = last.in_series(0);
      auto const index = known.gatherings == 1 ? (name == first ? std::optional<std::int64_t>{1} : std::nullopt)
                                               : run_length(first, name, alphabet_);
      if (!index || *index > known.gatherings) continue;
      auto const place = *index - 1;
      return Target{{known.run, place},
                    known.first_gathering + place,
                    known.leaves[static_cast<std::size_t>(place) % known.terms]};
    }
    return std::nullopt;
  }

  /// A gathering signed + cannot be named in a change, where the plus is the sign of an insertion.
  [[nodiscard]] static constexpr bool is_plus(Signature const& s) noexcept {
    return s.mark() == Mark::symbol && s.text_size() == 1 && s.text()[0] == '+';
  }
  struct LeafName { // a leaf as a change names it: a gathering and a figure, or the figure alone
    bool found{}, gathering_named{}, whole{}, letter_l{};
    Signature signature{};
    int leaf{};
    std::size_t end{};
  };
  /// A leaf at `i`, before `end`: A4, [A]1, 36/10, πA1, 7, *C1.
  [[nodiscard]] constexpr LeafName leaf_name(std::size_t i, std::size_t end) const {
    LeafName name;
    auto const inside = text_.substr(0, end);
    auto const here = [&](std::size_t k) { return k < end ? text_[k] : '\0'; };
    if (is_any(i, {"sig. "})) i = skip(i + 4);
    auto const figure = [&](std::size_t& k) {
      int value = 0;
      auto const from = k;
      for (; is_digit(here(k)); ++k) value = value > most_leaves_in_gathering ? value : value * 10 + (here(k) - '0');
      return k == from ? -1 : value;
    };
    auto const side = [&](std::size_t& k) {
      if ((here(k) == 'r' || here(k) == 'v') && !is_latin_letter(here(k + 1))) ++k;
    };
    if (is_digit(here(i))) {
      auto k = i;
      auto const value = figure(k);
      if (here(k) == '/') {
        auto after = k + 1;
        if (auto const leaf = figure(after); leaf >= 0 && value > 0) {
          name = {true, true, false, false, Signature::number(static_cast<std::uint32_t>(value)), leaf, after};
          side(name.end);
        }
        return name;
      }
      auto const c = here(k);
      bool const bare = c == '\0' || c == ',' || c == '.' || c == ';' || c == ' ' || c == '+' || c == '?' || c == '*' ||
                        c == ']' || c == '[' || c == '=' || is_dash(code(k));
      if (bare) {
        name.found = true;
        name.leaf = value;
        name.end = k;
        return name;
      }
    }
    if (is_latin_letter(here(i)) && is_word(i)) { // the bare name of a symbol: -greek cross8
      auto k = i;
      while (is_latin_letter(here(k)) || (here(k) == ' ' && is_latin_letter(here(k + 1)))) ++k;
      auto const size = k - i;
      auto const leaf = figure(k);
      bool const bare =
          size > 2 && leaf >= 0 && size <= Signature::longest_text && !(k < end && is_latin_letter(here(k)));
      if (bare) return {true, true, false, false, Signature::text(Mark::name, text_.data() + i, size), leaf, k};
    }
    auto const scan = SignatureScanner{inside, dialect_.letters}.scan(i);
    if (!scan || scan.end > end || is_plus(scan.signature)) return name;
    auto k = scan.end;
    if (here(k) == '/') ++k;
    auto const before = k;
    auto leaf = figure(k);
    if (leaf < 0 && here(k) == 'l' && !is_latin_letter(here(k + 1)) && scan.signature.is_letter()) {
      leaf = 1; // A4(-Al)
      name.letter_l = true;
      ++k;
    }
    if (leaf < 0 && scan.signature.mark() == Mark::number && !scan.signature.is_quoted() && !scan.inferred &&
        scan.signature.series() == 0 && scan.signature.duplicate() == Duplicate::none)
      return name; // a figure with something else behind it names nothing
    name.signature = scan.signature;
    name.gathering_named = true;
    if (leaf < 0) {
      auto const c = here(before);
      if (is_latin_letter(c)) return name;
      name.whole = true;
      leaf = 0;
    } else
      side(k);
    name.found = true;
    name.leaf = leaf;
    name.end = k;
    return name;
  }

  constexpr bool take_out(Target const& target, int leaf, std::size_t from, std::size_t to) {
    auto const kept = gone_count_ < most_gone ? gone_count_ : most_gone;
    for (std::size_t i = 0; i < kept; ++i)
      if (gone_[i].gathering == target.ordinal && (gone_[i].leaf == leaf || gone_[i].leaf == 0 || leaf == 0))
        return fail(Problem::leaf_changed_twice, from, to);
    gone_[gone_count_++ % most_gone] = Gone{target.ordinal, leaf};
    return true;
  }

  /// The inside of a parenthesis that changes leaves, from byte `i` to `end`.
  constexpr bool changes(std::size_t i, std::size_t end) {
    auto const begin = i;
    auto current = last_gathering();
    auto op = Change::Kind::note;
    bool any = false, list = false, after_words = false;
    Change previous{};
    auto const send = [&](Change change) {
      change.stands_after = runs_ - 1;
      if (!any) change.joint = Change::Joint::opens;
      sink_.change(change);
      previous = change;
      any = true;
    };
    while (i < end) {
      auto joint = Change::Joint::apart;
      bool separated = !any, spaced = false;
      for (;;) {
        auto const next = skip(i);
        if (next != i) {
          spaced = true;
          i = next;
          separated = true; // blanks part the leaves of a list as commas do
          continue;
        }
        char const c = at(i);
        if (c == '.' && i < end) joint = Change::Joint::conjugate;
        if (c != ',' && c != ';' && c != '.' && !(c == '&' && any && at(i + 1) == ' ')) {
          if (!is_any(i, {"and "})) break;
          i += 3;
          separated = true;
          continue;
        }
        separated = true;
        ++i;
      }
      if (i >= end) break;
      if (after_words) joint = Change::Joint::apart; // a full stop is one of the words
      after_words = false;
      auto const from = i;
      auto const c = code(i);
      // the sign of the change
      bool sign = true;
      if (c == 0xB1)
        op = Change::Kind::cancel, i += 2;
      else if (is_any(i, {"+-", "-+"}))
        op = Change::Kind::cancel, i += 2;
      else if (is_any(i, {"+/-", "-/+"}))
        op = Change::Kind::cancel, i += 3;
      else if (is_minus(c))
        op = Change::Kind::deletion, i += decode(text_, i).bytes;
      else if (c == '+')
        op = Change::Kind::insertion, ++i;
      else if (c == '=')
        op = Change::Kind::identity, ++i;
      else if (c == '[' && at(skip(i + 1)) == '=')
        op = Change::Kind::identity, i = skip(i + 1) + 1;
      else
        sign = false;
      i = skip(i);

      if (sign && op == Change::Kind::identity) {
        auto const name = leaf_name(i, end);
        if (!name.found) return fail(Problem::change_not_understood, from, end);
        Change change;
        change.kind = op;
        change.joint = joint;
        change.named = name.gathering_named;
        change.name = name.signature;
        change.name_leaf = name.leaf;
        change.of_change = any;
        change.gathering = any ? previous.gathering : current.gathering;
        i = name.end;
        change.doubtful = at(i) == '?' && i < end;
        if (change.doubtful) ++i;
        if (at(i) == ']' && i < end) ++i;
        send(change);
        list = false;
        continue;
      }
      if (sign && op == Change::Kind::insertion) {
        bool const placed = any && (previous.kind == Change::Kind::deletion || previous.kind == Change::Kind::cancel);
        if (!insertion(i, end, current,
                       !placed              ? -1
                       : previous.leaf == 0 ? current.leaves
                                            : previous.leaf,
                       joint, send, from))
          return false;
        list = false;
        continue;
      }
      auto const name = leaf_name(i, end);
      if (name.found && !sign && at(skip(name.end)) == '+' && name.end < end &&
          !is_any(skip(name.end), {"+-", "+/-"})) {
        // A3+1: the leaf it follows, then what is inserted
        auto target = current;
        if (!resolve(name, target, i, name.end)) return false;
        i = skip(skip(name.end) + 1);
        op = Change::Kind::insertion;
        if (!insertion(i, end, target, name.whole ? target.leaves : name.leaf, joint, send, from)) return false;
        current = target;
        list = false;
        continue;
      }
      bool const leaves = op == Change::Kind::deletion || op == Change::Kind::cancel;
      if (name.found && leaves && (sign || (list && separated)) && (!name.whole || sign)) {
        if (!resolve(name, current, i, name.end)) return false;
        if (!one_leaf(op, current, name, joint, previous, any && list && !sign, i, send)) return false;
        i = name.end;
        // -D2-4: to the last of several
        if (auto const to = skip(i);
            !name.whole && is_dash(code(to)) && is_digit(at(skip(to + decode(text_, to).bytes)))) {
          auto const last = leaf_name(skip(to + decode(text_, to).bytes), end);
          if (last.found && !last.gathering_named && last.leaf > name.leaf) {
            for (auto leaf = name.leaf + 1; leaf <= last.leaf; ++leaf) {
              auto next = last;
              next.leaf = leaf;
              if (!resolve(next, current, i, last.end)) return false;
              if (!one_leaf(op, current, next, Change::Joint::apart, previous, false, i, send)) return false;
            }
            i = last.end;
          }
        }
        if (at(i) == '?' && i < end) ++i;
        list = true;
        continue;
      }
      // words: they go to the next comma or semicolon
      if (sign || (any && !separated && !spaced)) return fail(Problem::change_not_understood, from, end);
      auto stop = i;
      while (stop < end && at(stop) != ',' && at(stop) != ';') ++stop;
      note(i, stop, any ? Change::Joint::apart : Change::Joint::opens, any);
      any = after_words = true;
      i = stop;
    }
    if (!any) return fail(Problem::change_not_understood, begin, end);
    return true;
  }
  constexpr bool resolve(LeafName const& name, Target& target, std::size_t from, std::size_t to) {
    if (name.gathering_named) {
      auto const found = find(name.signature);
      if (!found) return fail(Problem::no_such_gathering, from, to);
      target = *found;
    }
    if (name.leaf > target.leaves || (name.leaf < 1 && !name.whole))
      return fail(Problem::no_such_leaf, from, to, target.leaves);
    if (name.letter_l) warn(Problem::letter_read_as_figure, from, to);
    return true;
  }
  template <class Send>
  constexpr bool one_leaf(Change::Kind kind, Target const& target, LeafName const& name, Change::Joint joint,
                          Change const& previous, bool in_list, std::size_t from, Send&& send) {
    Change change;
    change.kind = kind;
    change.joint = joint;
    change.gathering = target.gathering;
    change.leaf = name.leaf;
    if (!take_out(target, name.leaf, from, name.end)) return false;
    if (in_list && previous.kind == kind && previous.gathering == target.gathering && !name.whole) {
      bool const pair = previous.leaf + name.leaf == target.leaves + 1;
      if (pair && joint == Change::Joint::apart && !name.gathering_named)
        warn(Problem::joined_leaves_listed_apart, from, name.end);
      if (!pair && joint == Change::Joint::conjugate) warn(Problem::apart_leaves_listed_joined, from, name.end);
    }
    if (kind == Change::Kind::deletion && !add_leaves(-(name.whole ? target.leaves : 1), from, name.end)) return false;
    send(change);
    return true;
  }
  /// What stands behind the plus: 1, 8*, χ1.2, χ1,2, *C1, A⁸, "c3". `after` is -1 when no leaf was named.
  template <class Send>
  constexpr bool insertion(std::size_t& i, std::size_t end, Target const& target, int after, Change::Joint joint,
                           Send&& send, std::size_t from) {
    Change change;
    change.kind = Change::Kind::insertion;
    change.joint = joint;
    change.gathering = target.gathering;
    change.added = 1;
    auto const figure = [&] {
      int value = 0;
      for (; i < end && is_digit(at(i)); ++i)
        value = value > most_leaves_in_gathering ? value : value * 10 + (at(i) - '0');
      return value;
    };
    auto digits = i;
    while (digits < end && is_digit(at(digits))) ++digits;
    char const behind = digits < end ? at(digits) : '\0';
    if (digits != i && !is_latin_letter(behind) && (behind != '[' || at(digits + 1) == '=') &&
        static_cast<unsigned char>(behind) < 0x80) {
      auto const value = figure();
      if (value < 1 || value > most_leaves_in_gathering) return fail(Problem::change_not_understood, from, end);
      if (behind == '*') {
        ++i;
        change.place_named = true;
        if (after < 0) after = value;
        change.name_leaf = value;
      } else {
        change.added = value;
        if (after < 0) warn(Problem::place_not_stated, from, i), after = target.leaves;
      }
    } else {
      auto const scan = SignatureScanner{text_.substr(0, end), dialect_.letters}.scan(i);
      if (!scan || is_plus(scan.signature)) return fail(Problem::change_not_understood, from, end);
      change.named = true;
      change.name = scan.signature;
      i = scan.end;
      auto const count = CountScanner{text_.substr(0, end)}.scan(i, false, false);
      if (count.found()) {
        if (count.problem != Problem::none) return fail(count.problem, from, count.end, most_leaves_in_gathering);
        change.joined = Change::Joined::gathering;
        change.added = count.cycle.term(0);
        i = count.end;
      } else if (scan.signature.mark() == Mark::number && !scan.signature.is_quoted() && !scan.inferred) {
        if (scan.signature.multiple() > most_leaves_in_gathering)
          return fail(Problem::change_not_understood, from, end);
        change.added = static_cast<int>(scan.signature.multiple()); // a figure alone is how many
        change.named = false;
        change.name = Signature{};
      } else if (is_digit(at(i)) && i < end) {
        auto const first = figure();
        auto previous = first;
        change.name_leaf = first;
        while (i + 1 < end && (at(i) == '.' || at(i) == ',') && is_digit(at(i + 1))) {
          auto const conjugate = at(i) == '.';
          ++i;
          auto const next = figure();
          if (next != previous + 1) return fail(Problem::change_not_understood, from, i);
          previous = next;
          ++change.added;
          change.joined = conjugate ? Change::Joined::conjugate : Change::Joined::apart;
        }
        if (first < 1 || previous > most_leaves_in_gathering) return fail(Problem::change_not_understood, from, end);
      }
      if (after < 0) warn(Problem::place_not_stated, from, i), after = target.leaves;
    }
    if (after > target.leaves) return fail(Problem::no_such_leaf, from, i, target.leaves);
    change.leaf = after;
    if (change.added > 1 && after == target.leaves && change.joined == Change::Joined::conjugate)
      warn(Problem::pair_after_last_leaf, from, i);
    if (!add_leaves(change.added, from, i)) return false;
    if (change.joined == Change::Joined::gathering) ++gatherings_inserted_;
    send(change);
    return true;
  }
  constexpr void note(std::size_t from, std::size_t to, Change::Joint joint, bool within = true) {
    while (to > from && (at(to - 1) == ' ' || at(to - 1) == '\n' || at(to - 1) == '\r' || at(to - 1) == '\t')) --to;
    Change change;
    change.kind = Change::Kind::note;
    change.joint = within ? joint : Change::Joint::opens;
    change.stands_after = runs_ - 1;
    change.gathering = last_gathering().gathering;
    sink_.note(change, from, to);
  }

  constexpr bool parenthesis() {
    auto const from = at_;
    auto const close = closing(from);
    if (close == std::string_view::npos) return fail(Problem::parenthesis_not_closed, from, from + 12);
    auto const i = skip(from + 1);
    auto const c = code(i);
    bool changing = c == '+' || c == '=' || c == 0xB1 || is_minus(c);
    if (runs_ == 0) {
      if (changing) return fail(Problem::change_without_gathering, from, close + 1);
      return fail(Problem::no_signature, from, close + 1);
    }
    at_ = close + 1;
    if (changing) return changes(i, close);
    auto const name = leaf_name(i, close);
    if (name.found && at(skip(name.end)) == '+' && skip(name.end) < close) return changes(i, close);
    // (2Y)⁵: a signature printed so, with a count of its own
    if (auto const scan = SignatureScanner{text_.substr(0, close), dialect_.letters}.scan(i);
        scan && skip(scan.end) == close && CountScanner{text_}.scan(close + 1, dialect_.flat_counts, false).found()) {
      auto const count = CountScanner{text_}.scan(close + 1, dialect_.flat_counts, false);
      if (count.problem != Problem::none) return fail(count.problem, from, count.end, most_leaves_in_gathering);
      Run run;
      run.first = run.last = scan.signature;
      run.leaves = Cycle{count.cycle.term(0)};
      run.unsigned_throughout = depth_ > 0;
      at_ = count.end;
      warn(Problem::series_starts_again, from, at_);
      if (!add_leaves(run.leaf_total(), from, at_)) return false;
      remember(run, i);
      ++gatherings_, ++runs_;
      last_ = run;
      sink_.run(run);
      return true;
    }
    if (skip(i) >= close) return fail(Problem::change_not_understood, from, close + 1);
    note(i, close, Change::Joint::opens, false);
    return true;
  }

  // -- brackets and what follows the gatherings ----------------------------------------------------------------------

  /// What stands in these brackets is several gatherings or one with its count, not a single mark.
  [[nodiscard]] constexpr bool is_group(std::size_t i) const {
    auto const content = i + 1;
    auto const close = [&] {
      for (auto k = content; k < text_.size() && k < content + 48; ++k) {
        if (text_[k] == ']') return k;
        if (text_[k] == '[') break;
      }
      return std::string_view::npos;
    }();
    if (close == std::string_view::npos) return true;
    auto const scan = SignatureScanner{text_.substr(0, close), dialect_.letters}.scan(content);
    if (scan && scan.end == close) return false;
    if (scan && !is_latin_letter(at(content)) &&
        CountScanner{text_.substr(0, close)}.scan(scan.end, true, true).found())
      return true;
    bool words = false;
    for (auto k = content; k < close; k += decode(text_, k).bytes) {
      if (superscript_digit(code(k)) >= 0 || text_[k] == '^' || text_[k] == '<' || text_[k] == '(' || text_[k] == ';')
        return true;
      if (is_latin_letter(at(k)) && (k == content || !is_latin_letter(at(k - 1)))) words = words || is_word(k);
      if (k > content && is_digit(at(k)) && is_latin_letter(at(k - 1))) return true;
    }
    return !words && is_latin_letter(at(content)) && at(close - 1) != '.';
  }
  constexpr bool bracket() {
    auto const from = at_;
    auto const i = skip(from + 1);
    auto const c = code(i);
    auto const close = [&] {
      for (auto k = i; k < text_.size(); ++k)
        if (text_[k] == ']') return k;
      return std::string_view::npos;
    };
    if (c == '$' || (c == '=' && runs_ > 0) || ((c == '+' || c == 0xB1 || is_minus(c)) && runs_ > 0)) {
      auto const end = close();
      if (end == std::string_view::npos) return fail(Problem::parenthesis_not_closed, from, from + 12);
      at_ = end + 1;
      if (c == '$') {
        sink_.passage(Passage::signing, from, at_);
        return true;
      }
      for (auto k = i; k < end; ++k) // its words would not stand in a parenthesis
        if (text_[k] == '(' || text_[k] == ')') return fail(Problem::change_not_understood, from, at_);
      if (c == '=') { // pi1[=B2], but a name in brackets may follow: N¹ [=[A]2]
        if (at(at_) == ']') ++at_;
        if (is_digit(at(at_)) && is_any(i + 1, {"["})) {
          while (at_ < text_.size() && at(at_) != ']') ++at_;
          if (at_ < text_.size()) ++at_;
        }
        return changes(i, at_ - 1);
      }
      warn(Problem::change_in_square_brackets, from, at_);
      return changes(i, end);
    }
    if (!is_group(from)) return gathering();
    if (depth_++ == 0) open_at_ = from;
    if (depth_ > 1000) return fail(Problem::bracket_not_closed, from, from + 12);
    at_ = from + 1;
    return true;
  }
  /// A = B: the same book written a second way.
  constexpr bool equation() {
    if (runs_ == 0 || equated_) return fail(Problem::unknown_mark, at_, at_ + 12);
    CountSink none;
    FormulaScanner<CountSink> second{text_.substr(at_ + 1), dialect_, none, true};
    auto const start = at_ + 1;
    if (!second.scan()) {
      auto const& e = second.error();
      error_ = e;
      error_.column += column_of(text_, start) - 1;
      failed_ = true;
      return false;
    }
    if (second.leaves() != leaves_) warn(Problem::second_statement_differs, start, text_.size(), second.leaves());
    at_ = text_.size();
    return true;
  }
  constexpr bool rest(Passage passage) {
    auto const from = at_;
    sink_.passage(passage, from, text_.size());
    if (passage == Passage::prose) {
      warn(Problem::text_not_read, from, text_.size());
    } else {
      auto i = from;
      bool const bracket = at(i) == '[';
      if (bracket) ++i;
      std::int64_t stated = 0;
      auto k = i;
      for (; is_digit(at(k)) && stated < 100000000; ++k) stated = stated * 10 + (at(k) - '0');
      if (k != i) {
        if (bracket && at(k) == ']') ++k;
        k = skip(k);
        if (is_any(k, {"leaves", "leaf", "ll.", "ff.", "Bl", "l."}) && !is_any(k, {"leaves of", "leaf of"}) &&
            stated != leaves_)
          warn(Problem::total_contradicts, from, text_.size(), leaves_);
      }
    }
    at_ = text_.size();
    return true;
  }

  constexpr bool step() {
    char const c = at(at_);
    if (is_latin_letter(c)) {
      if (is_latin_letter(at(at_ + 1)) || at(at_ + 1) == '.') {
        if (runs_ > 0 && is_extent(at_)) return rest(Passage::extent);
        // J for an opening bracket, as scans of BMC have it: Ja-d⁸
        if (c == 'J' && runs_ == 0 && depth_ == 0 && is_small(at(at_ + 1)) && at(at_ + 1) != 'j' && !is_word(at_ + 1)) {
          warn(Problem::bracket_misread, at_, at_ + 2);
          open_at_ = at_++;
          depth_ = 1;
          misread_ = true;
          return true;
        }
        if (is_latin_letter(at(at_ + 1)) && is_word(at_)) {
          auto name = at_;
          while (is_latin_letter(at(name))) ++name;
          auto const count = CountScanner{text_}.scan(name, dialect_.flat_counts, false);
          if (runs_ > 0 && separated_ && !count.found()) return rest(Passage::prose);
          if (name - at_ >= 3 && count.found() && count.problem == Problem::none) return named(name, count);
          return fail(runs_ == 0 ? Problem::no_signature : Problem::unknown_mark, at_, name);
        }
      }
      return gathering();
    }
    switch (c) {
    case '(':
      return code(at_ + 1) == ':' ? gathering() : parenthesis();
    case ')':
      if (at(at_ + 1) == '(' && !(depth_ > 0 && at(at_ + 2) == '-')) {
        if (auto const b = at(at_ + 2); b != '-' && b != '+' && b != '=') return gathering();
      }
      [[fallthrough]];
    case ']':
      if (depth_ > 0) {
        if (c == ')' && !misread_) warn(Problem::bracket_misread, at_, at_ + 1);
        --depth_;
        if (shared_until_ == at_ + 1) shared_until_ = 0;
        ++at_;
        // a count behind the bracket has been given to what stands in it
        if (shared_until_ > at_ && dialect_.omitted != Omitted::next)
          at_ = shared_until_;
        else if (shared_until_ > at_ && CountScanner{text_}.scan(at_, dialect_.flat_counts, false).found() &&
                 at(at_) != '(')
          at_ = CountScanner{text_}.scan(at_, dialect_.flat_counts, false).end;
        return true;
      }
      if (runs_ == 0) return fail(Problem::bracket_not_opened, at_, at_ + 1);
      warn(Problem::bracket_not_opened, at_, at_ + 1);
      ++at_;
      return true;
    case '[':
      if (runs_ > 0 && is_extent(at_)) return rest(Passage::extent);
      return bracket();
    case '=':
      return equation();
    case '+': {
      if (runs_ > 0 && is_extent(at_)) return rest(Passage::extent);
      auto const count = CountScanner{text_}.scan(at_ + 1, dialect_.flat_counts, false);
      if (count.found() && at(at_ + 1) != '(') return gathering();
      if (runs_ == 0) return fail(Problem::no_signature, at_, at_ + 1);
      warn(Problem::imperfect, at_, at_ + 1);
      sink_.imperfect();
      ++at_;
      return true;
    }
    default:
      break;
    }
    if (static_cast<unsigned char>(c) >= 0xC2) {
      auto const p = code(at_);
      if (p == 0x207A && runs_ > 0) { // ⁺
        warn(Problem::imperfect, at_, at_ + 3);
        sink_.imperfect();
        at_ += 3;
        return true;
      }
      if (decode(text_, at_).malformed) return fail(Problem::not_utf8, at_, at_);
    }
    if (is_digit(c) && runs_ > 0 && is_extent(at_)) return rest(Passage::extent);
    return gathering();
  }
  /// The bare name of a symbol with a count: par⁴. It is a name, although the brackets are missing.
  constexpr bool named(std::size_t end, CountScan const& count) {
    if (end - at_ > Signature::longest_text) return fail(Problem::mark_too_long, at_, end, Signature::longest_text);
    Run run;
    run.first = run.last = Signature::text(Mark::name, text_.data() + at_, end - at_);
    run.leaves = Cycle{count.cycle.term(0)};
    run.unsigned_throughout = depth_ > 0;
    run.begins_part = part_ && runs_ > 0;
    part_ = false;
    warn(Problem::name_without_brackets, at_, count.end);
    if (!add_leaves(run.leaf_total(), at_, count.end)) return false;
    remember(run, at_);
    named_known_ = true;
    ++gatherings_, ++runs_;
    last_ = run;
    sink_.run(run);
    at_ = count.end;
    return true;
  }

  bool misread_{false}, separated_{true}, named_known_{false};
  std::int64_t gatherings_inserted_{0};

  template <class> friend class FormulaScanner;

public:
  constexpr FormulaScanner(std::string_view text, Dialect dialect, Sink& sink, bool second = false)
      : text_{text}, dialect_{dialect}, alphabet_{dialect.letters}, sink_{sink}, equated_{second} {}

  /// Reads the whole text; false when error() says why it cannot be read.
  constexpr bool scan() {
    if (auto const open = skip(0); is_any(open, {"<formula"}) && text_.ends_with("</formula>")) { // TEI P5
      if (auto const from = text_.find('>', open) + 1; from + 10 <= text_.size()) {
        text_.remove_suffix(10);
        start_ = from;
      }
    }
    format_statement();
    for (;;) {
      separated_ = runs_ == 0;
      for (;;) {
        at_ = skip(at_);
        char const c = at(at_);
        if (c == ';') part_ = true;
        if (c != ',' && c != ';' && c != '.') break;
        separated_ = true;
        ++at_;
      }
      if (at_ >= text_.size()) break;
      if (plain_gathering()) {
        while (at(at_) == '(' && plain_deletion())
          if (failed_) return false;
        continue;
      }
      spell_out_last();
      if (!step()) return false;
    }
    if (runs_ == 0) return fail(text_.empty() ? Problem::text_ends : Problem::no_signature, text_.size(), text_.size());
    if (depth_ > 0 && !misread_) warn(Problem::bracket_not_closed, open_at_, open_at_ + 1);
    return true;
  }
  [[nodiscard]] constexpr Error const& error() const noexcept { return error_; }
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept { return leaves_; }
  [[nodiscard]] constexpr std::int64_t gatherings() const noexcept { return gatherings_ + gatherings_inserted_; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
