// SPDX-License-Identifier: MIT
/// Reads plain runs fast: a letter, or two with a dash between them, a leaf count and a blank (A-K⁸, A-K^8, 2B4, [A]²).
/// Nine of ten runs in a catalogue are plain, and this reader looks at each of their bytes once. Text with anything
/// else, such as another bracket, alternating counts or letters in the wrong order, is left to the grammar. The result is
/// the same as the result of the grammar.
#pragma once

#include <bifolium/collation/detail/scan/found_run.hpp>
#include <bifolium/collation/dialect.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The mark of a plain run: a number of at most two digits and a letter.
struct PlainMark {
  int rank{}; ///< position in its series
  std::uint8_t multiple{1};
  char letter{};
  bool outside{}; ///< true for J and U in an alphabet without them, where they are I and V

  [[nodiscard]] constexpr bool is_small() const noexcept { return (letter & 0x20) != 0; }
  [[nodiscard]] constexpr SignatureKey key() const noexcept {
    return SignatureKey::of(is_small() ? Mark::small_letter : Mark::capital, rank_of_letter(letter), multiple);
  }
};

/// A plain run.
struct PlainRun {
  std::size_t end{};       ///< the position after it, or 0 if it is not plain
  std::size_t marks_end{}; ///< if it is not plain because no count or another one follows, the position after its marks
  PlainMark first{}, last{};
  int leaves{};
  bool inferred{}; ///< true if the first mark is in square brackets

  [[nodiscard]] constexpr int gatherings() const noexcept { return last.rank - first.rank + 1; }
  /// Returns true if the number of leaves is doubtful.
  [[nodiscard]] constexpr bool is_odd() const noexcept { return leaves % 2 != 0 && leaves != 1; }
  /// Returns true if one of its ends is not in the alphabet.
  [[nodiscard]] constexpr bool is_outside() const noexcept { return first.outside || last.outside; }
  /// Returns true for I-V, I-X and I-L, which may be numbers.
  [[nodiscard]] constexpr bool may_be_roman() const noexcept { return may_be_roman_run(first.key(), last.key()); }
  /// Returns the run as the grammar finds it.
  [[nodiscard]] constexpr FoundRun found() const {
    FoundRun run;
    run.first = first.key();
    run.last = last.key();
    run.gatherings = gatherings();
    run.leaves = Cycle{leaves};
    run.first_inferred = inferred;
    run.last_inferred = inferred && run.gatherings == 1;
    return run;
  }
};

/// A leaf that a parenthesis names: A1, or 2 of the gathering named before it. `end` is the position after it, or 0 if there
/// is none.
struct PlainLeaf {
  std::size_t from{}, end{};
  PlainMark of{};
  int leaf{};
  bool named{}; ///< true if the gathering is named
};

class PlainScanner {
  /// A position in the text. After the end of the text every byte is zero.
  struct Bytes {
    char const* at;
    char const* end;
    [[nodiscard]] constexpr unsigned here() const noexcept { return at != end ? static_cast<unsigned char>(*at) : 0U; }
    [[nodiscard]] constexpr unsigned ahead(int bytes) const noexcept {
      return end - at > bytes ? static_cast<unsigned char>(at[bytes]) : 0U;
    }
    /// Moves to the next byte and returns it. Precondition: not at the end.
    constexpr unsigned next() noexcept { return ++at, here(); }
  };
  std::string_view text_;
  Alphabet alphabet_;
  int size_; // of the alphabet
  bool flat_counts_;

  [[nodiscard]] constexpr Bytes bytes(std::size_t from) const noexcept {
    return {text_.data() + from, text_.data() + text_.size()};
  }
  [[nodiscard]] constexpr std::size_t place(Bytes const& bytes) const noexcept {
    return static_cast<std::size_t>(bytes.at - text_.data());
  }
  static constexpr bool is_figure(unsigned b) noexcept { return b - '0' < 10; }
  static constexpr bool is_letter(unsigned b) noexcept { return (b | 0x20U) - 'a' < 26; }

  /// Returns the letter in whose place J or U comes in an alphabet without it, or 0 for W, which comes in no place.
  [[nodiscard, gnu::cold, gnu::noinline]] constexpr int letter_of_outside(int letter) const noexcept {
    auto const other = alphabet_.letter(letter);
    return other == letter ? 0 : other;
  }

  // these are parts of run(), which would otherwise keep the position in memory
  /// Takes a mark whose letter is in the alphabet and not part of π, χ or a doubled letter.
  [[gnu::always_inline]] constexpr bool take_mark(Bytes& bytes, PlainMark& found) const {
    auto b = bytes.here();
    unsigned multiple = 1;
    if (b - '1' < 9) {
      multiple = b - '0';
      b = bytes.next();
      if (is_figure(b)) multiple = multiple * 10 + b - '0', b = bytes.next();
    }
    if (!is_letter(b) || is_letter(bytes.next())) return false;
    found.multiple = static_cast<std::uint8_t>(multiple);
    found.letter = static_cast<char>(b);
    auto place = alphabet_.place_if_used(rank_of_letter(found.letter));
    if (!place) {
      auto const letter = letter_of_outside(rank_of_letter(found.letter));
      if (letter == 0) return false;
      place = alphabet_.place_if_used(letter);
      found.letter = static_cast<char>((b & 0x60U) | static_cast<unsigned>(letter));
      found.outside = true;
    }
    found.rank = (static_cast<int>(multiple) - 1) * size_ + *place;
    return true;
  }
  [[nodiscard]] static constexpr RaisedDigit raised(Bytes bytes) noexcept {
    return raised_digit_at({bytes.at, static_cast<std::size_t>(bytes.end - bytes.at)}, 0);
  }
  /// Takes a count of leaves that is not doubtful, and that nothing can continue.
  [[gnu::always_inline]] constexpr bool take_count(Bytes& bytes, int& leaves) const noexcept {
    auto b = bytes.here();
    bool const caret = b == '^';
    if (caret) b = bytes.next();
    if (is_figure(b)) {
      if (!flat_counts_ && !caret) return false;
      leaves = static_cast<int>(b - '0');
      b = bytes.next();
      if (is_figure(b)) leaves = leaves * 10 + static_cast<int>(b - '0'), b = bytes.next();
    } else {
      auto const tens = raised(bytes);
      if (caret || tens.bytes == 0) return false;
      bytes.at += tens.bytes;
      leaves = tens.digit;
      b = bytes.here();
      if (b >= 0xC2)
        if (auto const ones = raised(bytes); ones.bytes != 0) {
          bytes.at += ones.bytes;
          leaves = leaves * 10 + ones.digit;
          b = bytes.here();
        }
    }
    if (leaves == 0 || leaves > thick_gathering) return false;
    return (b == ' ' && !caret) || ends_count(bytes, caret);
  }
  /// Returns true for text after a count that cannot continue it.
  static constexpr bool ends_count(Bytes const& bytes, bool caret) noexcept {
    auto const b = bytes.here(), next = bytes.ahead(1);
    if (b == '\0' || b == ']' || b == ';' || b == '(') return true;
    if (b == ' ') return !caret || is_figure(next) || is_letter(next) || next == '('; // a^8 ^6
    return (b == '.' || b == ',') && (next == ' ' || next == '\0');
  }

public:
  constexpr PlainScanner(std::string_view text, Dialect dialect) noexcept
      : text_{text}, alphabet_{dialect.letters}, size_{alphabet_.size()}, flat_counts_{dialect.flat_counts} {}

  /// Reads the plain run at byte `from`. It is a part of its few callers, since a run need then not be written to memory
  /// and read again, which takes as long as to find it. Precondition: from <= text.size().
  [[nodiscard, gnu::always_inline]] constexpr PlainRun run(std::size_t from) const {
    PlainRun run;
    auto in = bytes(from);
    run.inferred = in.here() == '[';
    if (run.inferred) {
      // a small letter in brackets may be a page of an extent
      if (!is_capital(static_cast<char>(in.next())) || in.ahead(1) != ']') return run;
    }
    PlainMark first, last; // in registers: they are written to the run once
    if (!take_mark(in, first)) return run;
    if (run.inferred) in.next();
    auto const b = in.here();
    bool const hyphen = b == '-', dash = b == 0xE2 && in.ahead(1) == 0x80 && in.ahead(2) == 0x93;
    if (hyphen || dash) {
      in.at += hyphen ? 1 : 3;
      if (!take_mark(in, last) || last.is_small() != first.is_small() || last.rank <= first.rank) return run;
    } else
      last = first;
    run.first = first;
    run.last = last;
    auto const marks = in;
    if (take_count(in, run.leaves))
      run.end = place(in);
    else
      run.marks_end = place(marks);
    return run;
  }
  /// Returns the position after the parenthesis and minus of a deletion, (- or (−, at byte `from`, or 0 if there is none.
  [[nodiscard]] constexpr std::size_t after_minus(std::size_t from) const noexcept {
    auto const in = bytes(from);
    if (in.here() != '(') return 0;
    if (in.ahead(1) == '-') return from + 2;
    return in.ahead(1) == 0xE2 && in.ahead(2) == 0x88 && in.ahead(3) == 0x92 ? from + 4 : 0;
  }
  /// Reads a leaf at byte `from`. `of` is the gathering that was named before it.
  [[nodiscard]] constexpr PlainLeaf leaf(std::size_t from, PlainMark of) const {
    PlainLeaf one{from, 0, of, 0, false};
    auto in = bytes(from);
    if (PlainMark mark; take_mark(in, mark))
      one.of = mark, one.named = true;
    else
      in = bytes(from);
    if (!is_figure(in.here())) return one;
    one.leaf = static_cast<int>(in.here() - '0');
    if (is_figure(in.next())) one.leaf = one.leaf * 10 + static_cast<int>(in.here() - '0'), in.next();
    one.end = place(in);
    return one;
  }
  /// Returns true if a run may come next, after the letters up to position `reached` of its series. A letter that comes
  /// again or after a gap is doubtful, and so are letters that may be numbers.
  [[nodiscard]] static constexpr bool follows(std::int64_t reached, PlainRun const& run) noexcept {
    return run.first.rank > reached && (reached == 0 ? !run.may_be_roman() : run.first.rank == reached + 1);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
