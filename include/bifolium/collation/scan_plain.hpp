// SPDX-License-Identifier: MIT
/// Nine runs in ten of a catalogue are plain: a letter or two with a dash between, a count, a blank (A-K⁸, 2B4). They are
/// recognised here in one look at each byte. Whatever is not wholly plain - a bracket, an alternation, a letter outside
/// the alphabet, an odd count - is left to the full scanner, so this decides nothing: it is only faster.
#pragma once

#include <bifolium/collation/parts.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A plain run at a byte of the text; `end` is 0 when what stands there is not plain.
struct PlainRun {
  std::size_t end{};
  std::uint32_t first_multiple{1}, last_multiple{1};
  char first{}, last{};
  bool ranged{}; ///< a dash stood between first and last
  int leaves{};
};

/// One leaf deleted: (-A1).
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
    auto const small = static_cast<unsigned char>(b | 0x20U);
    return small >= 'a' && small <= 'z';
  }
  /// A figure of at most two digits and one letter that does not stand for π, χ or a doubled letter.
  constexpr bool mark(std::uint32_t& multiple, char& letter) noexcept {
    if (is_figure(byte(at_)) && byte(at_) != '0') {
      multiple = byte(at_++) - 0U - '0';
      if (is_figure(byte(at_))) multiple = multiple * 10 + byte(at_++) - '0';
    }
    if (!is_letter(byte(at_))) return false;
    letter = text_[at_++];
    return !is_letter(byte(at_));
  }
  /// The raised digit at `i` in three bytes or two, -1 if there is none.
  [[nodiscard]] constexpr int raised(std::size_t i, std::size_t& bytes) const noexcept {
    if (byte(i) == 0xE2 && byte(i + 1) == 0x81) {
      bytes = 3;
      auto const b = byte(i + 2);
      return b == 0xB0 || (b >= 0xB4 && b <= 0xB9) ? b - 0xB0 : -1;
    }
    bytes = 2;
    if (byte(i) != 0xC2) return -1;
    return byte(i + 1) == 0xB9 ? 1 : byte(i + 1) == 0xB2 || byte(i + 1) == 0xB3 ? byte(i + 1) - 0xB0 : -1;
  }
  [[nodiscard]] constexpr bool count(int& leaves, bool line) noexcept {
    if (is_figure(byte(at_))) {
      if (!line) return false;
      leaves = byte(at_++) - '0';
      if (is_figure(byte(at_))) leaves = leaves * 10 + byte(at_++) - '0';
    } else {
      std::size_t bytes = 0;
      auto const digit = raised(at_, bytes);
      if (digit < 0) return false;
      leaves = digit;
      at_ += bytes;
      if (auto const next = raised(at_, bytes); next >= 0) leaves = leaves * 10 + next, at_ += bytes;
    }
    if (leaves == 0 || (leaves % 2 != 0 && leaves != 1)) return false;
    // only what cannot go on with the count may follow
    auto const after = byte(at_);
    if (after == ' ' || after == '\0' || after == ']' || after == ';' || after == '(') return true;
    return (after == '.' || after == ',') && (byte(at_ + 1) == ' ' || byte(at_ + 1) == '\0');
  }

public:
  constexpr PlainScanner(std::string_view text, std::size_t at) : text_{text}, at_{at} {}

  /// `line`: counts may stand on the line.
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
    if (count(run.leaves, line)) run.end = at_;
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

} // namespace detail
} // namespace v0
} // namespace bifolium
