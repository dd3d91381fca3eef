// SPDX-License-Identifier: MIT
/// A signature is the mark with which the printer told the binder the order of the gatherings: A to Z, then Aa (written
/// 2A) and Aaa (3A); a symbol for the gatherings that were printed last and bound first; or a number. Bibliographers
/// add marks of their own: π and χ for gatherings without a mark, a raised digit for a second series with the same
/// letters (²A), and π or χ before a letter for a single duplicate (πA). This header has only the value, without
/// reading or writing, so that it does not need <string>. leaf/read_signature.hpp reads a signature from text.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/broken.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/fwd.hpp>
#include <bifolium/leaf/alphabet.hpp>
#include <bifolium/leaf/mark.hpp>

#include <compare>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional> // also declares std::hash
#include <string_view>

namespace bifolium {
inline namespace v0 {
struct SignatureKey;
class Signature;
namespace detail {
constexpr void set_signature(Signature& blank, SignatureKey key, std::string_view text, Letters letters);
} // namespace detail

/// Returns the number of letters of one alphabet of that kind; 1 for marks that are not letters.
constexpr int letters_of(Mark mark, Alphabet alphabet) noexcept {
  return mark <= Mark::small_letter       ? alphabet.size()
         : mark <= Mark::greek_capital    ? greek_letters
         : mark <= Mark::cyrillic_capital ? cyrillic_letters
                                          : 1;
}

/// The mark of one gathering. It is trivially copyable. Two signatures are equal if they name the same gathering: AA,
/// Aa and 2A are one signature, and so are I and J unless J was declared a separate letter.
class Signature {
  static constexpr std::uint8_t first_series = 0; // in series_: there is no raised digit
  static constexpr std::uint8_t no_letter = 0;    // in letter_: the mark is not a letter
  std::uint8_t series_{first_series};
  Duplicate duplicate_{};
  Mark mark_{Mark::pi};
  Beside beside_{};
  std::uint8_t letter_{no_letter};
  bool enclosed_{}; // a number in quotation marks, a letter in parentheses
  std::uint8_t size_{};
  std::uint32_t multiple_{1};

public:
  /// The greatest length of a name or symbol, in bytes of UTF-8.
  static constexpr std::size_t longest_text = 23;
  /// The highest multiple. 13I is attested (Macklin Bible, 1800).
  static constexpr std::uint32_t highest_multiple = 9999;
  /// The highest number that can be a signature.
  static constexpr std::uint32_t highest_number = 999999;

private:
  char text_[longest_text + 1]{};

  friend constexpr void detail::set_signature(Signature& blank, SignatureKey key, std::string_view text,
                                              Letters letters);

  constexpr Signature(Mark mark, int letter, std::uint32_t multiple) noexcept
      : mark_{mark}, letter_{static_cast<std::uint8_t>(letter)}, multiple_{multiple} {}
  constexpr void take(char const* text, std::size_t size) {
    if (size == 0 || size > longest_text) broken("the text of a signature must have from 1 to 23 bytes");
    for (std::size_t i = 0; i < size; ++i) text_[i] = text[i];
    size_ = static_cast<std::uint8_t>(size);
  }
  static constexpr std::uint32_t within(std::uint32_t figure, std::uint32_t highest) {
    if (figure < 1 || figure > highest) broken("a multiple must be from 1 to 9999, a number from 1 to 999999");
    return figure;
  }

public:
  /// Makes π, the gathering before the first signed one.
  constexpr Signature() = default;

  /// Makes the signature of a letter: `Signature::letter('C', 2)` is 2C (CC, Cc). J is stored as I and U as V, unless
  /// `added` makes them separate letters. Precondition: A-Z or a-z.
  static constexpr Signature letter(char glyph, std::uint32_t multiple = 1, Letters added = {}) {
    bool const capital = is_capital(glyph);
    if (!is_latin_letter(glyph)) broken("a letter must be from A to Z or a to z");
    auto const number = Alphabet{added}.letter(glyph - (capital ? 'A' : 'a') + 1);
    return {capital ? Mark::capital : Mark::small_letter, number, within(multiple, highest_multiple)};
  }
  /// Makes the signature of a Greek letter; `place` counts from 1 (α) to 24 (ω). Precondition: 1 to 24.
  static constexpr Signature greek(int place, bool capital = false, std::uint32_t multiple = 1) {
    if (place < 1 || place > greek_letters) broken("the number of a Greek letter must be from 1 to 24");
    return {capital ? Mark::greek_capital : Mark::greek, place, within(multiple, highest_multiple)};
  }
  /// Makes the signature of a Cyrillic letter; `place` counts from 1 (а) to 31 (я), without Й. Precondition: 1 to 31.
  static constexpr Signature cyrillic(int place, bool capital = false, std::uint32_t multiple = 1) {
    if (place < 1 || place > cyrillic_letters) broken("the number of a Cyrillic letter must be from 1 to 31");
    return {capital ? Mark::cyrillic_capital : Mark::cyrillic, place, within(multiple, highest_multiple)};
  }
  /// Makes the signature of a gathering that is signed with a number in Hebrew letters. Precondition: 1 to
  /// highest_hebrew.
  static constexpr Signature hebrew(std::uint32_t figure) {
    return {Mark::hebrew, no_letter, within(figure, highest_hebrew)};
  }
  /// Makes the signature of a gathering that is signed with a number. Precondition: 1 to highest_number.
  static constexpr Signature number(std::uint32_t figure) {
    return {Mark::number, no_letter, within(figure, highest_number)};
  }
  /// Makes the signature of a symbol, a name or a printed mark; `kind` says which. The text is copied. Precondition: 1
  /// to longest_text bytes.
  static constexpr Signature text(Mark kind, char const* bytes, std::size_t size, std::uint32_t multiple = 1) {
    if (kind != Mark::symbol && kind != Mark::name && kind != Mark::printed)
      broken("only a symbol, a name or a printed mark has a text");
    Signature result{kind, no_letter, within(multiple, highest_multiple)};
    result.take(bytes, size);
    return result;
  }
  /// Makes the signature of an unsigned gathering before the signed ones.
  static constexpr Signature pi(std::uint32_t multiple = 1) {
    return {Mark::pi, no_letter, within(multiple, highest_multiple)};
  }
  /// Makes the signature of an unsigned gathering among or after the signed ones.
  static constexpr Signature chi(std::uint32_t multiple = 1) {
    return {Mark::chi, no_letter, within(multiple, highest_multiple)};
  }

  /// Returns this mark in another series: ²A. Series 0 and 1 are the first series, which has no raised digit.
  /// Precondition: 0 to 99.
  [[nodiscard]] constexpr Signature in_series(int raised) const {
    if (raised < 0 || raised > 99) broken("the number of a series must be from 0 to 99");
    auto result = *this;
    result.series_ = static_cast<std::uint8_t>(raised == 1 ? first_series : raised);
    return result;
  }
  /// Returns this mark with π or χ before it: πA.
  [[nodiscard]] constexpr Signature duplicated(Duplicate by) const {
    auto result = *this;
    result.duplicate_ = by;
    return result;
  }
  /// Returns this letter with a symbol before or after it: †A, H*. Precondition: the mark is a letter.
  [[nodiscard]] constexpr Signature with_symbol(Beside where, char const* bytes, std::size_t size) const {
    if (!is_letter()) broken("only a letter can have a symbol beside it");
    auto result = *this;
    result.take(bytes, size);
    result.beside_ = where;
    return result;
  }
  /// Returns this letter with the Greek letter of the same place after it: aα, bβ. Precondition: a Latin letter among
  /// the first 23.
  [[nodiscard]] constexpr Signature with_greek() const {
    if (!is_latin() || Alphabet{}.place(letter_) > 23) broken("only a Latin letter can have a Greek letter beside it");
    auto result = *this;
    result.beside_ = Beside::greek;
    return result;
  }
  /// Returns this number as a number that is printed in the book: '1'. Precondition: the mark is a number.
  [[nodiscard]] constexpr Signature in_quotation_marks() const {
    if (mark_ != Mark::number) broken("only a number can be put in quotation marks");
    auto result = *this;
    result.enclosed_ = true;
    return result;
  }
  /// Returns this letter as printed in parentheses: (a), (2B). Precondition: the mark is a letter.
  [[nodiscard]] constexpr Signature in_parentheses() const {
    if (!is_letter()) broken("only a letter can be in parentheses");
    auto result = *this;
    result.enclosed_ = true;
    return result;
  }

  /// Returns the kind of the mark.
  [[nodiscard]] constexpr Mark mark() const noexcept { return mark_; }
  /// Returns true if the mark is a letter of any alphabet.
  [[nodiscard]] constexpr bool is_letter() const noexcept { return mark_ <= Mark::cyrillic_capital; }
  /// Returns true if the mark is a Latin letter.
  [[nodiscard]] constexpr bool is_latin() const noexcept { return mark_ <= Mark::small_letter; }
  /// Returns the number of the letter in its alphabet, 1 to 26 (Latin), 24 (Greek) or 31 (Cyrillic), or no value if the
  /// mark is not a letter.
  [[nodiscard]] constexpr std::optional<int> letter_number() const noexcept {
    return letter_ == no_letter ? std::nullopt : std::optional<int>{letter_};
  }
  /// Returns how often the letter or symbol is repeated: 1 for A, 2 for 2A. For a number, returns the number.
  [[nodiscard]] constexpr std::uint32_t multiple() const noexcept { return multiple_; }
  /// Returns the raised number before the mark, 2 to 99, or no value in the first series, which has none.
  [[nodiscard]] constexpr std::optional<int> series() const noexcept {
    return series_ == first_series ? std::nullopt : std::optional<int>{series_};
  }
  /// Returns π or χ if one of them comes before the mark, otherwise none.
  [[nodiscard]] constexpr Duplicate duplicate() const noexcept { return duplicate_; }
  /// Returns the place of the symbol beside the letter.
  [[nodiscard]] constexpr Beside beside() const noexcept { return beside_; }
  /// Returns true if the number is in quotation marks, because it is printed in the book.
  [[nodiscard]] constexpr bool is_quoted() const noexcept { return enclosed_ && mark_ == Mark::number; }
  /// Returns true if the letter is printed in parentheses.
  [[nodiscard]] constexpr bool is_in_parentheses() const noexcept { return enclosed_ && is_letter(); }
  /// Returns the text of a symbol, name or printed mark, or the symbol beside a letter. The text ends with a zero byte.
  [[nodiscard]] constexpr char const* text() const& noexcept BIFOLIUM_LIFETIMEBOUND { return text_; }
  char const* text() const&& = delete; // it would look at what goes
  /// Returns the number of bytes of `text()`.
  [[nodiscard]] constexpr std::size_t text_size() const noexcept { return size_; }

  /// Returns true if the two marks belong to one series, so that only letter, number or multiple can differ.
  [[nodiscard]] constexpr bool same_series_as(Signature const& other) const noexcept {
    if (mark_ != other.mark_ || series_ != other.series_ || duplicate_ != other.duplicate_ ||
        beside_ != other.beside_ || size_ != other.size_ || enclosed_ != other.enclosed_)
      return false;
    for (std::size_t i = 0; i < size_; ++i)
      if (text_[i] != other.text_[i]) return false;
    return true;
  }
  /// Returns the position of the mark in its series, from 1. With 23 letters A is 1 and 2A is 24.
  [[nodiscard]] constexpr std::int64_t rank(Alphabet alphabet = Alphabet{}) const noexcept {
    if (!is_letter()) return multiple_;
    return (std::int64_t{multiple_} - 1) * letters_of(mark_, alphabet) +
           (is_latin() ? alphabet.place(letter_) : letter_);
  }
  /// Returns the mark at another position of the same series. Precondition: the position is at least 1 and needs no
  /// multiple above the highest.
  [[nodiscard]] constexpr Signature at_rank(std::int64_t rank, Alphabet alphabet = Alphabet{}) const {
    auto const size = letters_of(mark_, alphabet);
    auto const multiple = rank < 1 ? 0 : (rank - 1) / size + 1;
    auto const highest = mark_ == Mark::number   ? highest_number
                         : mark_ == Mark::hebrew ? highest_hebrew
                                                 : highest_multiple;
    if (multiple < 1 || multiple > highest) broken("the series has no signature at this position");
    auto result = *this;
    result.multiple_ = static_cast<std::uint32_t>(multiple);
    if (is_letter()) {
      auto const place = static_cast<int>((rank - 1) % size) + 1;
      result.letter_ = static_cast<std::uint8_t>(is_latin() ? alphabet.at(place) : place);
    }
    return result;
  }

  /// Writes the mark piece by piece with `put(char const*, std::size_t)`: ²πA, 2A, †8E, H*, [par.], '1', "G&H", )(.
  /// `raised` writes the number of the series.
  template <class Put, class Raised> constexpr void spell(Put&& put, Raised&& raised) const;

private:
  template <class Put> constexpr void spell_mark(Put& put) const;

public:
  /// Orders signatures for storage: by series, duplicate, kind and text, then by multiple before letter, as in a book
  /// (Z before 2A).
  friend constexpr std::strong_ordering operator<=>(Signature const& a, Signature const& b) noexcept {
    if (auto const c = a.series_ <=> b.series_; std::is_neq(c)) return c;
    if (auto const c = a.duplicate_ <=> b.duplicate_; std::is_neq(c)) return c;
    if (auto const c = a.mark_ <=> b.mark_; std::is_neq(c)) return c;
    if (auto const c = a.beside_ <=> b.beside_; std::is_neq(c)) return c;
    for (std::size_t i = 0; i < longest_text; ++i)
      if (auto const c = static_cast<unsigned char>(a.text_[i]) <=> static_cast<unsigned char>(b.text_[i]);
          std::is_neq(c))
        return c;
    if (auto const c = a.enclosed_ <=> b.enclosed_; std::is_neq(c)) return c;
    if (auto const c = a.multiple_ <=> b.multiple_; std::is_neq(c)) return c;
    return a.letter_ <=> b.letter_;
  }
  friend constexpr bool operator==(Signature const& a, Signature const& b) noexcept {
    return a.letter_ == b.letter_ && a.multiple_ == b.multiple_ && a.same_series_as(b);
  }
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Signature const& s) {
    s.spell(
        [&](char const* bytes, std::size_t size) {
          for (std::size_t i = 0; i < size; ++i) out << bytes[i];
        },
        [&](int figure) {
          auto const digits = raised(figure);
          for (char c : digits.view()) out << c;
        });
    return out;
  }
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Signature> {
  std::size_t operator()(bifolium::Signature const& s) const noexcept {
    std::size_t h = static_cast<std::size_t>(s.mark()) * 131U + static_cast<std::size_t>(s.duplicate()) * 31U +
                    static_cast<std::size_t>(s.series().value_or(0));
    for (std::size_t i = 0; i < s.text_size(); ++i) h = h * 31U + static_cast<unsigned char>(s.text()[i]);
    return (h * 31U + s.multiple()) * 31U + static_cast<std::size_t>(s.letter_number().value_or(0));
  }
};

#include <bifolium/leaf/detail/spell_signature.hpp>
