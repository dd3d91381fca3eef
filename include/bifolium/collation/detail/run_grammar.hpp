// SPDX-License-Identifier: MIT
/// Reads gatherings. A run gets its own count, a count that it shares with a later run, or the eight leaves that an
/// omitted count means in some catalogues; doubts become warnings. An entirely plain run is read byte by byte, with the
/// same result.
#pragma once

#include <bifolium/collation/detail/leaf_reader.hpp>
#include <bifolium/collation/detail/resolver.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class RunGrammar : protected Resolver<Sink>, protected LeafReader {
protected:
  using Base = Resolver<Sink>;
  using Base::fail, Base::warn, Base::begun, Base::last_, Base::part_, Base::dialect_, Base::sink_, Base::runs_,
      Base::failed_, Base::leaves_, Base::error_, Base::gatherings_;
  using LeafReader::alphabet_, LeafReader::text_, LeafReader::at;

  TokenCursor c_; // where the grammar is
  int depth_{0};  // open brackets round runs

private:
  // gatherings that share a count
  Cycle shared_{};
  std::int64_t sharing_{0};       // how many have taken it
  std::uint32_t barren_until_{0}; // how far was looked in vain

  bool roman_{false}; // the last run was numbered in Roman numerals
  std::uint32_t list_barren_until_{0};
  bool list_in_figures_{false}; // the shared count is at the end of a list, and not in words

protected:
  std::uint32_t shared_until_{0}; // the byte after that count

  constexpr RunGrammar(std::string_view text, Dialect dialect, Limits const& limits, Sink& sink)
      : Base{text, dialect, limits, sink}, LeafReader{text, dialect}, c_{text} {}

  /// Plain runs with one blank between them, as many as there are: taken, and whether there was one.
  constexpr bool plain() {
    auto from = c_.token.from;
    std::size_t end = 0;
    while (plain_run(from, end) && at(end) == ' ' && (is_latin_letter(at(end + 1)) || is_digit(at(end + 1))))
      from = static_cast<std::uint32_t>(end + 1);
    if (end == 0) return false;
    c_ = TokenCursor{text_, end};
    return !failed_;
  }
  /// run = letter , [ dash , letter ] , count, where nothing before it bears on it and nothing in it is doubtful: most runs
  /// are so. False leaves it to gathering().
  constexpr bool plain_run(std::uint32_t from, std::size_t& end) {
    if (sharing_ != 0 || shared_until_ > from || last_.last.raised() != 0) return false;
    auto const found = PlainScanner{text_, from}.scan(dialect_.flat_counts);
    if (found.end == 0 || words_follow(found.end)) return false;
    auto const first = letter_rank(found.first), last = letter_rank(found.last);
    bool const in_small_letters = is_small(found.first);
    if (!alphabet_.has(first) || !alphabet_.has(last) || in_small_letters != is_small(found.last)) return false;
    auto const mark = in_small_letters ? Mark::small_letter : Mark::capital;
    FoundRun run;
    run.first = SignatureKey::of(mark, first, found.first_multiple);
    run.last = SignatureKey::of(mark, last, found.last_multiple);
    auto const from_rank = run.first.rank(alphabet_), to_rank = run.last.rank(alphabet_);
    bool const new_part = part_ && begun();
    auto& reached = this->reached(run.first);
    // a backward run, one written A-A (which is longer than its mark), letters met before or skipped are told in full
    if (to_rank < from_rank || (found.ranged && to_rank == from_rank)) return false;
    if (!new_part && (from_rank <= reached || (reached != 0 && from_rank != reached + 1))) return false;
    if (new_part) this->begin_part();
    reached = to_rank;
    part_ = roman_ = false;
    run.gatherings = to_rank - from_rank + 1;
    run.leaves = Cycle{found.leaves};
    run.unsigned_throughout = depth_ > 0;
    run.begins_part = new_part;
    end = found.end;
    return this->add_run(run, from, static_cast<std::uint32_t>(found.end));
  }
  /// A run in any form.
  constexpr bool gathering() {
    FoundElement e;
    auto c = c_;
    if (!take_element(c, e)) return no_run(e);
    if (!e.count.found() && e.first.key.mark() == Mark::number && separate_numbers(e)) c = cursor(e.end);
    FoundRun run;
    run.first = e.first.key;
    run.last = e.last.key;
    run.gatherings = e.gatherings;
    run.first_inferred = e.first.inferred;
    run.last_inferred = e.single || e.gatherings == 1 ? run.first_inferred : e.last.inferred;
    begin(run);
    this->keep_series(run);
    if (!count(e, run, c)) return false;
    c_ = c;
    doubts(e, run);
    return this->add_run(run, e.from, e.end);
  }
  /// I-II¹⁰, iii²: gatherings numbered in Roman numerals. They begin with I, at the beginning of a part, or continue such a
  /// run, and one end has two letters or more: I-K⁸ is a run of letters. False when no such run is here.
  constexpr bool roman_run() {
    bool const may_begin = (!begun() || part_) && (c_.token.value | 0x20U) == 'i';
    if (!roman_ && !may_begin) return false;
    auto const first = numeral(c_);
    if (first.value == 0) return false;
    auto const from = c_.token.from;
    auto c = after_word(c_);
    auto last = first;
    if (c.touches(TokenKind::dash)) {
      c.take();
      last = numeral(c);
      if (last.value <= first.value || last.letters < 2 || is_small(at(from)) != is_small(at(c.token.from)))
        return false;
      c = after_word(c);
    }
    bool const continues = roman_ && begun() && !part_ && last_.last.multiple + 1 == first.value;
    bool const begins = first.value == 1 && last.value > 1 && (!begun() || part_);
    if (!continues && !begins) return false;
    auto count = take_count(c, dialect_.flat_counts);
    if (!count.found() && c.at(TokenKind::close_square)) { // [I-II]⁸
      auto p = c;
      p.take();
      count = take_count(p, dialect_.flat_counts);
      if (count.sound()) shared_until_ = count.end;
    }
    if (!count.sound()) return false;
    FoundRun run;
    run.first = SignatureKey::of(Mark::number, 0, first.value);
    run.last = SignatureKey::of(Mark::number, 0, last.value);
    run.gatherings = std::int64_t{last.value} - first.value + 1;
    run.leaves = count.cycle;
    begin(run);
    warn(Problem::roman_numbers, from, count.end);
    this->doubt_counts(run, true, from, count.end);
    c_ = c;
    if (!this->add_run(run, from, count.end)) return false;
    roman_ = true;
    return true;
  }
  /// The bare name of a symbol with a count: par⁴. It is a name, although the brackets are missing.
  constexpr bool named(std::uint32_t end, FoundCount const& count) {
    auto const from = c_.token.from;
    auto const name = text_mark(Mark::name, from, end, end, 1);
    if (!name) return fail(name.problem, from, end, Signature::longest_text);
    FoundRun run;
    run.first = run.last = name.key;
    run.leaves = Cycle{count.cycle.term(0)};
    begin(run);
    warn(Problem::name_without_brackets, from, count.end);
    c_ = cursor(count.end);
    return this->add_run(run, from, count.end);
  }
  /// After the bracket that closes a group: a count there has been given to the runs in the group.
  constexpr void after_group(std::uint32_t bracket_end) {
    if (shared_until_ == bracket_end) shared_until_ = 0;
    if (shared_until_ <= bracket_end) return;
    if (dialect_.omitted != Omitted::next) {
      c_ = cursor(shared_until_);
      return;
    }
    auto p = c_;
    if (!c_.at(TokenKind::open_round) && take_count(p, dialect_.flat_counts).found()) c_ = p;
  }

private:
  struct Numeral {
    std::uint32_t value{}; // 0 where there is none
    std::size_t letters{};
  };
  /// Returns the letters at the cursor, if together they are a Roman numeral.
  [[nodiscard]] constexpr Numeral numeral(TokenCursor const& c) const noexcept {
    auto const w = word(c);
    auto const found = w.empty() ? RomanNumeral{} : roman_numeral(w);
    if (found.bytes != w.size() || found.value < 1 || found.value > 9999) return {};
    return {static_cast<std::uint32_t>(found.value), w.size()};
  }
  constexpr void begin(FoundRun& run) {
    roman_ = false;
    run.unsigned_throughout = depth_ > 0;
    run.begins_part = part_ && begun();
    part_ = false;
  }
  /// Words bear on a plain run that they follow: A-H4, in eights; after a semicolon K8 blank.
  [[nodiscard]] constexpr bool words_follow(std::size_t end) const noexcept {
    if (at(end) == ',' && (at(end + 2) == 'i' || at(end + 2) == 'p')) return true;
    if (at(end) == ' ' && (at(end + 1) == 'i' || at(end + 1) == 'p') && is_small(at(end + 2))) return true;
    if (at(end) == ' ' && (at(end + 1) == ',' || at(end + 1) == '-' || static_cast<unsigned char>(at(end + 1)) == 0xE2))
      return true; // A8 - Z8
    return part_ && begun() && is_small(at(end + 1)) && is_small(at(end + 2));
  }
  constexpr bool no_run(FoundElement const& e) {
    if (e.problem != Problem::none) return fail(e.problem, e.from, e.end);
    auto const why = e.first.problem;
    auto const limit = why == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple}
                                                         : std::int64_t{Signature::longest_text};
    return fail(why == Problem::no_signature ? Problem::unknown_mark : why, e.first.end, e.first.end + 12, limit);
  }
  /// 1-210 312: where the numbers continue those of the run before, they say where the count begins.
  constexpr bool separate_numbers(FoundElement& e) const {
    if (!dialect_.flat_counts || dialect_.omitted == Omitted::eight || e.first.inferred || !is_digit(at(e.from)))
      return false;
    bool const known = begun() && last_.last.mark() == Mark::number && !last_.last.quoted();
    return part_numbers(e, known ? last_.last.multiple + 1 : 1, known) || (known && part_ && part_numbers(e, 1, false));
  }
  constexpr bool count(FoundElement& e, FoundRun& run, TokenCursor const& after) {
    if (e.count.found()) return own_count(e, run);
    if (auto const leaves = named_leaves_of(e); leaves > 0) {
      run.leaves = Cycle{leaves};
      return true;
    }
    if (shared_until_ <= e.end) {
      shared_until_ = 0;
      sharing_ = 0;
      list_in_figures_ = false;
      bool const only_bracket = dialect_.omitted != Omitted::next;
      if (e.end >= barren_until_ && !(only_bracket && depth_ == 0)) look_for_shared(after, only_bracket);
    }
    if (shared_until_ <= e.end && dialect_.omitted != Omitted::next && e.end >= list_barren_until_)
      look_for_list(after);
    if (shared_until_ > e.end) {
      if (list_in_figures_) warn(Problem::count_shared, e.from, e.end);
      run.leaves = shared_.size() == 1 ? shared_ : shared_.turned(sharing_);
      sharing_ += run.gatherings;
      return true;
    }
    if (dialect_.omitted == Omitted::eight) {
      run.leaves = Cycle{8};
      warn(Problem::count_supplied, e.from, e.end, 8);
      return true;
    }
    if (is_digit(at(e.end))) return fail(Problem::flat_count, e.from, e.end + 3);
    bool const number = run.first.mark() == Mark::number && e.end - e.from > 1;
    return fail(number ? Problem::flat_numbers : Problem::no_leaf_count, e.from, e.end);
  }
  constexpr bool own_count(FoundElement const& e, FoundRun& run) {
    if (e.count.problem != Problem::none) {
      auto const most =
          e.count.problem == Problem::cycle_too_long ? static_cast<int>(Cycle::most_terms) : most_leaves_in_gathering;
      return fail(e.count.problem, e.from, e.count.end, most);
    }
    run.leaves = e.count.cycle;
    auto const terms = run.leaves.size();
    // 810 on the line is 8.10 that lost its point; so is 38 6
    auto const most = e.apart ? thick_gathering / 2 : thick_gathering;
    for (std::size_t i = 0; i < terms; ++i)
      if (e.count.flat && run.leaves.term(i) > most)
        return fail(Problem::very_thick_gathering, e.from, e.end, run.leaves.term(i));
    if (e.single && e.count.hyphen && terms == 2 && run.leaves.term(0) < run.leaves.term(1)) {
      auto const leaves = run.leaves.term(1) - run.leaves.term(0) + 1; // m1-3: leaves 1 to 3 of one gathering
      run.leaves = Cycle{leaves};
      warn(Problem::leaves_read_as_count, e.from, e.end, leaves);
    }
    if (sharing_ > 0 && shared_until_ >= e.end && terms > 1) run.leaves = run.leaves.turned(sharing_);
    if (e.end >= shared_until_) sharing_ = 0;
    if (e.apart) warn(Problem::count_apart, e.from, e.end);
    return true;
  }
  /// 'gg3.4' says its leaves by itself.
  [[nodiscard]] constexpr int named_leaves_of(FoundElement const& e) const {
    if (!e.single || e.first.key.mark() != Mark::printed) return 0;
    return named_leaves(text_.substr(e.first.key.text_from, e.first.key.text_size)).count;
  }
  /// The count that a later gathering shares with those before it; `only_bracket`: only one after a bracket does.
  constexpr void look_for_shared(TokenCursor c, bool only_bracket) {
    for (;;) {
      if (c.at(TokenKind::close_square)) { // [a b]⁸
        auto p = c;
        p.take();
        bool const round = p.at(TokenKind::open_round);
        if (auto const found = take_count(p, dialect_.flat_counts); found.sound() && !round) {
          shared_ = found.cycle, shared_until_ = found.end;
          return;
        }
        if (only_bracket) break;
      }
      bool const group = c.at(TokenKind::open_square) && is_group(c);
      if (is_separator(c.token) || c.at(TokenKind::close_square) || group) {
        c.take();
        continue;
      }
      if (c.at(TokenKind::open_round)) {
        auto const close = closing_round(c);
        if (close == 0) break;
        c = cursor(close + 1U);
        continue;
      }
      if (c.ended() || (c.at(TokenKind::letter) && is_word(c.token.from))) break;
      FoundElement e;
      auto const from = c.token.from;
      if (!take_element(c, e) || e.end <= from) break;
      if (!e.count.found()) continue;
      if (e.count.problem == Problem::none && !only_bracket) shared_ = e.count.cycle, shared_until_ = e.end;
      if (e.count.problem == Problem::none && !only_bracket) return;
      break;
    }
    barren_until_ = c.token.from;
  }
  /// A-Z, Aa-Zz, and Aaa-Ccc, in fours: the count at the end of a list is that of all. One in figures is so only where an
  /// omitted count would be a mistake.
  constexpr void look_for_list(TokenCursor c) {
    for (;;) {
      if (!c.at(TokenKind::comma)) break;
      c.take();
      if (word(c) == "and") c = after_word(c);
      FoundElement e;
      if (c.ended() || (c.at(TokenKind::letter) && is_word(c.token.from)) || !take_element(c, e)) break;
      if (!e.count.found()) continue;
      bool const figures = !e.count.in_words;
      if (!e.count.sound() || (figures && dialect_.omitted != Omitted::error)) break;
      shared_ = e.count.cycle;
      shared_until_ = e.end;
      list_in_figures_ = figures;
      return;
    }
    list_barren_until_ = c.token.from;
  }
  constexpr void doubts(FoundElement const& e, FoundRun const& run) {
    if (run.begins_part) this->begin_part();
    this->doubt_counts(run, e.count.found(), e.from, e.end);
    bool const again = this->comes_again(run);
    if (!e.single) {
      if (run.gatherings == 1) warn(Problem::run_of_one, e.from, e.end);
      if (e.first.glyph_outside || e.last.glyph_outside) warn(Problem::letter_not_in_alphabet, e.from, e.end);
    } else if (e.first.glyph_outside && (run.first.letter == Alphabet::w || again))
      warn(Problem::letter_not_in_alphabet, e.from, e.end);
    // πA⁶ is the notation of Greg and Bowers; πA without a count may be π and A
    if (e.first.flat_prefix && !e.count.found()) warn(Problem::duplicate_read_flat, e.from, e.end);
    if (e.by_sequence) warn(Problem::numbers_read_by_sequence, e.from, e.end);
    if (e.read_flat) warn(Problem::series_read_flat, e.from, e.end);
    if (again) warn(Problem::series_starts_again, e.from, e.end);
    if (this->skips(run)) warn(Problem::letters_skipped, e.from, e.end);
    this->reach(run);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
