// SPDX-License-Identifier: MIT
/// One pass over the text of a formula, from the statement of format to whatever follows the gatherings; each part has
/// its own header. Nothing is repaired: what can be read in spite of a doubt is read and the doubt is told to the sink;
/// what cannot is an error with its place.
#pragma once

#include <bifolium/collation/detail/scan_changes.hpp>
#include <bifolium/collation/detail/scan_format.hpp>
#include <bifolium/collation/detail/scan_gathering.hpp>
#include <bifolium/collation/detail/scan_tail.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class FormulaScanner : GatheringScanner<Sink> {
  using State = ScanState<Sink>;
  using Gatherings = GatheringScanner<Sink>;
  using State::at, State::code, State::skip, State::fail, State::warn, State::add_run;
  using State::at_, State::depth_, State::error_, State::failed_, State::leaves_, State::gatherings_, State::runs_,
      State::last_, State::sink_, State::text_, State::dialect_, State::alphabet_;

  bool equated_{false}; // this is the second statement of a formula written twice
  std::size_t open_at_{0};
  bool misread_{false}, separated_{true};

  constexpr bool parenthesis() {
    auto const from = at_;
    auto const close = this->closing(from);
    if (close == std::string_view::npos) return fail(Problem::parenthesis_not_closed, from, from + 12);
    auto const i = skip(from + 1);
    auto const c = code(i);
    bool const equated = c == '[' && at(skip(i + 1)) == '=';
    bool changing = c == '+' || c == '=' || c == 0xB1 || is_minus(c) || equated;
    if (runs_ == 0) {
      if (changing) return fail(Problem::change_without_gathering, from, close + 1);
      return fail(Problem::no_signature, from, close + 1);
    }
    at_ = close + 1;
    if (changing) return ChangeScanner<Sink>{*this}.changes(i, close);
    auto const name = leaf_name(*this, i, close);
    if (auto const sign = at(skip(name.end)); name.found && (sign == '+' || sign == '=') && skip(name.end) < close)
      return ChangeScanner<Sink>{*this}.changes(i, close);
    if (name.found && goes_on_with_change(name.end, close)) return ChangeScanner<Sink>{*this}.changes(i, close);
    // (2Y)⁵: a signature printed so, with a count of its own
    if (auto const scan = this->signatures(close).scan(i);
        scan && !scan.inferred && scan.signature.mark() != Mark::name && skip(scan.end) == close &&
        at(close + 1) != '(' && this->count_at(close + 1).found()) {
      auto const count = this->count_at(close + 1);
      if (count.problem != Problem::none) return fail(count.problem, from, count.end, most_leaves_in_gathering);
      Run run;
      run.first = run.last = scan.signature;
      run.leaves = Cycle{count.cycle.term(0)};
      run.unsigned_throughout = depth_ > 0;
      this->keep_series(run);
      at_ = count.end;
      warn(Problem::series_starts_again, from, at_);
      return add_run(run, i, from, at_);
    }
    if (skip(i) >= close) return fail(Problem::change_not_understood, from, close + 1);
    return static_cast<bool>(scan_note(*this, i, close, ScannedChange::Joint::opens));
  }

  /// (A1 blank, −A8): behind words about a leaf, a comma, a sign and a leaf.
  [[nodiscard]] constexpr bool goes_on_with_change(std::size_t from, std::size_t close) const {
    for (auto k = from; k < close; ++k) {
      std::size_t entity_bytes = 0; // the semicolon of &lt; parts nothing
      entity(text_, k, entity_bytes);
      if (entity_bytes != 0) k += entity_bytes - 1;
      if (at(k) != ',' && (at(k) != ';' || entity_bytes != 0)) continue;
      auto const sign = skip(k + 1);
      if (sign >= close) break;
      bool cancels = false;
      auto const bytes = this->sign_of_loss(sign, cancels);
      if (bytes != 0 && leaf_name(*this, skip(sign + bytes), close).found) return true;
    }
    return false;
  }

  // -- brackets and what follows the gatherings ----------------------------------------------------------------------

  constexpr bool bracket() {
    auto const from = at_;
    auto const i = skip(from + 1);
    auto const c = code(i);
    // the bracket that closes this one: [$3 (−[par.]2) signed] and [=[A]2] have brackets within
    auto const close = [&] {
      int open = 0;
      for (auto k = from; k < text_.size(); ++k) {
        open += text_[k] == '[' ? 1 : text_[k] == ']' ? -1 : 0;
        if (open == 0) return k;
      }
      return std::string_view::npos;
    };
    bool const signing = c == '$';
    bool const changing = runs_ > 0 && (c == '=' || c == '+' || c == 0xB1 || is_minus(c));
    if (signing || changing) {
      auto const end = close();
      if (end == std::string_view::npos) return fail(Problem::parenthesis_not_closed, from, from + 12);
      at_ = end + 1;
      if (signing) {
        sink_.passage(Passage::signing, from, at_);
        return true;
      }
      for (auto k = i; k < end; ++k) // its words would not stand in a parenthesis
        if (text_[k] == '(' || text_[k] == ')' || (text_[k] == '[' && c != '='))
          return fail(Problem::change_not_understood, from, at_);
      if (c == '=') return ChangeScanner<Sink>{*this}.changes(from, at_);
      warn(Problem::change_in_square_brackets, from, at_);
      return ChangeScanner<Sink>{*this}.changes(i, end);
    }
    if (!this->is_group(from)) return this->gathering();
    // brackets round runs do not stand in each other, so the first was not closed
    if (depth_ > 0) return fail(Problem::bracket_not_closed, open_at_, open_at_ + 12);
    depth_ = 1;
    open_at_ = from;
    at_ = from + 1;
    return true;
  }
  /// A = B: the same book written a second way.
  constexpr bool equation() {
    if (runs_ == 0 || equated_) return fail(Problem::unknown_mark, at_, at_ + 12);
    if (auto const extent = skip(at_ + 1); this->is_extent(extent)) { // A-K⁸ = 80 leaves
      at_ = extent;
      return rest(Passage::extent);
    }
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
    scan_tail(*this, passage);
    return true;
  }
  /// (*)⁴: with a count behind it a symbol in parentheses is a mark; without, words.
  [[nodiscard]] constexpr bool symbol_in_parentheses() const {
    auto const bytes = this->signatures().symbol_in_parentheses(at_);
    return bytes != 0 && at(at_ + bytes) != '(' && this->count_at(at_ + bytes).found();
  }
  constexpr bool step() {
    char const c = at(at_);
    if (runs_ > 0 && separated_ && scan_remark(*this)) return !failed_;
    if (is_latin_letter(c)) {
      if (is_latin_letter(at(at_ + 1)) || at(at_ + 1) == '.') {
        if (runs_ > 0 && this->is_extent(at_)) return rest(Passage::extent);
        // J for an opening bracket, as scans of BMC have it: Ja-d⁸
        if (c == 'J' && runs_ == 0 && depth_ == 0 && is_small(at(at_ + 1)) && at(at_ + 1) != 'j' &&
            !this->is_word(at_ + 1)) {
          warn(Problem::bracket_misread, at_, at_ + 2);
          open_at_ = at_++;
          depth_ = 1;
          misread_ = true;
          return true;
        }
        if (is_latin_letter(at(at_ + 1)) && this->is_word(at_)) {
          auto name = at_;
          while (is_latin_letter(at(name))) ++name;
          auto const count = this->count_at(name);
          if (runs_ > 0 && this->is_any(at_, {"plus ", "with "}) && this->is_extent(skip(at_ + 5)))
            return rest(Passage::extent); // plates
          if (runs_ > 0 && separated_ && !count.found()) return rest(Passage::prose);
          if (name - at_ >= 3 && count.found() && count.problem == Problem::none) return this->named(name, count);
          return fail(runs_ == 0 ? Problem::no_signature : Problem::unknown_mark, at_, name);
        }
      }
      return this->gathering();
    }
    switch (c) {
    case '(':
      return code(at_ + 1) == ':' || symbol_in_parentheses() ? this->gathering() : parenthesis();
    case ')':
      if (at(at_ + 1) == '(' && !(depth_ > 0 && at(at_ + 2) == '-')) {
        auto k = at_ + 2;
        if (at(k) == '-')
          for (++k; is_digit(at(k));) ++k; // )(-3)( is a run
        bool const run = k != at_ + 2 && at(k) == ')' && at(k + 1) == '(';
        if (auto const b = at(at_ + 2); run || (b != '-' && b != '+' && b != '=')) return this->gathering();
      }
      [[fallthrough]];
    case ']':
      if (depth_ > 0) {
        if (c == ')' && !misread_) warn(Problem::bracket_misread, at_, at_ + 1);
        --depth_;
        if (this->shared_until_ == at_ + 1) this->shared_until_ = 0;
        ++at_;
        // a count behind the bracket has been given to what stands in it
        if (this->shared_until_ > at_ && dialect_.omitted != Omitted::next)
          at_ = this->shared_until_;
        else if (this->shared_until_ > at_ && this->count_at(at_).found() && at(at_) != '(')
          at_ = this->count_at(at_).end;
        return true;
      }
      if (runs_ == 0) return fail(Problem::bracket_not_opened, at_, at_ + 1);
      warn(Problem::bracket_not_opened, at_, at_ + 1);
      ++at_;
      return true;
    case '[':
      if (runs_ > 0 && this->is_extent(at_)) return rest(Passage::extent);
      return bracket();
    case '=':
      return equation();
    case '+': {
      if (runs_ > 0 && this->is_extent(at_)) return rest(Passage::extent);
      auto const count = this->count_at(at_ + 1);
      if (count.found() && at(at_ + 1) != '(') {
        // a bracket that opens with a plus holds a change
        if (depth_ > 0 && runs_ > 0 && !last_.unsigned_throughout) return fail(Problem::unknown_mark, at_, count.end);
        return this->gathering();
      }
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
      if ((p == 0x207A || p == 0x207B) && runs_ > 0 && superscript_digit(code(at_ + 3)) >= 0)
        return fail(Problem::change_not_understood, at_, at_ + 3 + decode(text_, at_ + 3).bytes); // A⁸⁻¹: which leaf?
      if (p == 0x207A && runs_ > 0) {                                                             // ⁺
        warn(Problem::imperfect, at_, at_ + 3);
        sink_.imperfect();
        at_ += 3;
        return true;
      }
      if (decode(text_, at_).malformed) return fail(Problem::not_utf8, at_, at_);
    }
    if (is_digit(c) && runs_ > 0 && this->is_extent(at_)) return rest(Passage::extent);
    return this->gathering();
  }

  template <class> friend class FormulaScanner;

public:
  constexpr FormulaScanner(std::string_view text, Dialect dialect, Sink& sink, bool second = false)
      : Gatherings{text, dialect, sink}, equated_{second} {}

  /// Reads the whole text; false when error() says why it cannot be read.
  constexpr bool scan() {
    std::size_t start = 0;
    // nothing after a zero would be looked at, for the scanners take it for the end
    if (auto const zero = text_.find('\0'); zero != text_.npos) return fail(Problem::not_utf8, zero, zero);
    if (auto const open = skip(0); this->is_any(open, {"<formula"}) && this->is_tei_end()) { // TEI P5
      if (auto const from = text_.find('>', open) + 1; from <= text_.rfind('<')) {
        text_ = text_.substr(0, text_.rfind('<'));
        start = from;
      }
    }
    scan_format(*this, start);
    for (;;) {
      separated_ = runs_ == 0;
      for (;;) {
        at_ = skip(at_);
        char const c = at(at_);
        if (c == ';') this->part_ = true;
        if (c != ',' && c != ';' && c != '.') break;
        separated_ = true;
        ++at_;
      }
      if (at_ >= text_.size()) break;
      if (this->plain_gathering()) {
        while (at(at_) == '(' && this->plain_deletion())
          if (failed_) return false;
        continue;
      }
      this->spell_out_last();
      if (!step()) return false;
    }
    if (runs_ == 0)
      return fail(text_.empty() ? Problem::unexpected_end : Problem::no_signature, text_.size(), text_.size());
    if (this->identities_ > 0) {
      this->spell_out_last();
      this->check_identities();
    }
    if (depth_ > 0 && !misread_) warn(Problem::bracket_not_closed, open_at_, open_at_ + 1);
    return true;
  }
  [[nodiscard]] constexpr Error const& error() const noexcept { return error_; }
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept { return leaves_; }
  [[nodiscard]] constexpr std::int64_t gatherings() const noexcept { return gatherings_ + this->gatherings_inserted_; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
