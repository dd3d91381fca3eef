// SPDX-License-Identifier: MIT
/// Reads plain runs fast: a letter, or two with a dash between them, a leaf count and a blank (A-K⁸, A-K^8, 2B4). Nine
/// of ten runs in a catalogue are plain, and this reader looks at each of their bytes once. Text with anything else,
/// such as a bracket, alternating counts, a letter outside the alphabet or an odd count, is left to the grammar. The
/// result is the same as the result of the grammar.
#pragma once

#include <bifolium/collation/detail/found_run.hpp>
#include <bifolium/collation/dialect.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A plain run. `end` is the position after it, or 0 if the text is not plain.
struct PlainRun {
  std::size_t end{};
  std::uint32_t first_multiple{1}, last_multiple{1};
  char first{}, last{};
  bool ranged{}; ///< true if there is a dash between first and last
  int leaves{};
};

/// The deletion of one leaf: (-A1). `end` is the position after it, or 0 if there is none.
struct PlainDeletion {
  std::size_t end{};
  std::uint32_t multiple{1};
  char letter{};
  int leaf{};
};

class PlainScanner {
  std::string_view text_;
  std::size_t at_;

  [[nodiscard]] constexpr unsigned char byte(std::size_t i) const noexcept {
    return i < text_.size() ? static_cast<unsigned char>(text_[i]) : static_cast<unsigned char>(0);
  }
  static constexpr bool is_figure(unsigned char b) noexcept { return b >= '0' && b <= '9'; }
  static constexpr bool is_letter(unsigned char b) noexcept {
    auto const lower = static_cast<unsigned char>(b | 0x20U);
    return lower >= 'a' && lower <= 'z';
  }
  /// Reads a number of at most two digits and one letter that is not part of π, χ or a doubled letter.
  constexpr bool mark(std::uint32_t& multiple, char& letter) noexcept {
    if (is_figure(byte(at_)) && byte(at_) != '0') {
      multiple = byte(at_++) - 0U - '0';
      if (is_figure(byte(at_))) multiple = multiple * 10 + byte(at_++) - '0';
    }
    if (!is_letter(byte(at_))) return false;
    letter = text_[at_++];
    return !is_letter(byte(at_));
  }
  /// Returns the raised digit at `i`, which takes three bytes or two, or -1 if there is none.
  [[nodiscard]] constexpr int raised(std::size_t i, std::size_t& bytes) const noexcept {
    auto const lead = byte(i), last = lead == 0xE2 ? byte(i + 2) : byte(i + 1);
    if ((last & 0xC0U) != 0x80 || (lead == 0xE2 ? byte(i + 1) != 0x81 : lead != 0xC2)) return -1;
    bytes = lead == 0xE2 ? 3 : 2;
    return superscript_digit(lead == 0xE2 ? 0x2040U | (last & 0x3FU) : last).value_or(-1);
  }
  [[nodiscard]] constexpr bool count(int& leaves, bool line) noexcept {
    bool const caret = byte(at_) == '^';
    if (caret) ++at_;
    if (is_figure(byte(at_))) {
      if (!line && !caret) return false;
      leaves = byte(at_++) - '0';
      if (is_figure(byte(at_))) leaves = leaves * 10 + byte(at_++) - '0';
    } else {
      std::size_t bytes = 0;
      auto const digit = raised(at_, bytes);
      if (digit < 0 || caret) return false;
      leaves = digit;
      at_ += bytes;
      if (auto const next = raised(at_, bytes); next >= 0) leaves = leaves * 10 + next, at_ += bytes;
    }
    if (leaves == 0 || (leaves % 2 != 0 && leaves != 1)) return false;
    // only text that cannot continue the count may follow
    auto const after = byte(at_);
    auto const next = byte(at_ + 1);
    if (caret && after == ' ' && !is_figure(next) && !is_letter(next) && next != '(') return false; // a^8 ^6
    if (after == ' ' || after == '\0' || after == ']' || after == ';' || after == '(') return true;
    return (after == '.' || after == ',') && (next == ' ' || next == '\0');
  }

public:
  constexpr PlainScanner(std::string_view text, std::size_t at) : text_{text}, at_{at} {}

  /// Reads a plain run. `line`: counts may be on the line.
  [[nodiscard]] constexpr PlainRun scan(bool line) noexcept {
    PlainRun run;
    if (!mark(run.first_multiple, run.first)) return run;
    bool const hyphen = byte(at_) == '-', dash = byte(at_) == 0xE2 && byte(at_ + 1) == 0x80 && byte(at_ + 2) == 0x93;
    if (hyphen || dash) {
      at_ += hyphen ? 1U : 3U;
      run.ranged = true;
      if (!mark(run.last_multiple, run.last)) return run;
    } else {
      run.last_multiple = run.first_multiple;
      run.last = run.first;
    }
    if (count(run.leaves, line) && run.leaves <= thick_gathering) run.end = at_;
    return run;
  }
  [[nodiscard]] constexpr PlainDeletion scan_deletion() noexcept {
    PlainDeletion deletion;
    if (byte(at_) != '(') return deletion;
    bool const minus = byte(at_ + 1) == 0xE2 && byte(at_ + 2) == 0x88 && byte(at_ + 3) == 0x92;
    if (!minus && byte(at_ + 1) != '-') return deletion;
    at_ += minus ? 4U : 2U;
    if (!mark(deletion.multiple, deletion.letter) || !is_figure(byte(at_))) return deletion;
    deletion.leaf = byte(at_++) - '0';
    if (is_figure(byte(at_))) deletion.leaf = deletion.leaf * 10 + byte(at_++) - '0';
    if (byte(at_) == ')') deletion.end = at_ + 1;
    return deletion;
  }
};

/// The totals of a formula whose parts are all plain and without doubts.
struct PlainCount {
  bool plain{};
  std::int64_t leaves{}, gatherings{};
};

/// Counts a text that is entirely plain. At the first part that is not plain it stops, and the grammar reads the text
/// from its beginning.
constexpr PlainCount count_plain(std::string_view text, Dialect dialect) noexcept {
  Alphabet const alphabet{dialect.letters};
  auto const size = alphabet.size();
  PlainCount count;
  std::int64_t highest[2]{};
  std::size_t at = 0;
  while (at < text.size()) {
    auto const run = PlainScanner{text, at}.scan(dialect.flat_counts);
    if (run.end == 0) return {};
    auto const first_letter = rank_of_letter(run.first), last_letter = rank_of_letter(run.last);
    auto const lower = (run.first & 0x20) != 0 ? 1U : 0U;
    auto const first = (std::int64_t{run.first_multiple} - 1) * size + alphabet.place(first_letter);
    auto const last = (std::int64_t{run.last_multiple} - 1) * size + alphabet.place(last_letter);
    bool const sound = alphabet.has(first_letter) && alphabet.has(last_letter) &&
                       ((run.first ^ run.last) & 0x20) == 0 && last >= first + (run.ranged ? 1 : 0) &&
                       first > highest[lower] && (highest[lower] == 0 || first == highest[lower] + 1);
    if (!sound) return {};
    highest[lower] = last;
    count.leaves += (last - first + 1) * run.leaves;
    count.gatherings += last - first + 1;
    at = run.end;
    auto const open = at < text.size() && text[at] == ' ' ? at + 1 : at;
    if (open < text.size() && text[open] == '(') { // one deleted leaf of this run; a second could be the same leaf
      auto const deletion = PlainScanner{text, open}.scan_deletion();
      if (deletion.end == 0) return {};
      auto const letter = rank_of_letter(deletion.letter);
      auto const place = (std::int64_t{deletion.multiple} - 1) * size + alphabet.place(letter);
      if (!alphabet.has(letter) || ((deletion.letter ^ run.first) & 0x20) != 0 || place < first || place > last ||
          deletion.leaf < 1 || deletion.leaf > run.leaves)
        return {};
      --count.leaves;
      at = deletion.end;
      if (at < text.size() && text[at] != ' ' && text[at] != '.') return {};
    }
    // blanks, full stops and commas between runs; a semicolon begins a part, whose letters begin again
    int points = 0;
    for (; at < text.size() && (text[at] == ' ' || text[at] == '.' || text[at] == ',' || text[at] == ';'); ++at) {
      if (text[at] == ';') highest[0] = highest[1] = 0;
      if (text[at] == '.' && ++points > 2) return {}; // A-K⁸ ...: more gatherings are left out
    }
  }
  // runs of at most 99 alphabets cannot exceed 64 bits in a text that fits in memory
  count.plain = !text.empty();
  return count;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
