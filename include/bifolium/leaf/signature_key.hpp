// SPDX-License-Identifier: MIT
/// The signature of a gathering in sixteen bytes, for code that compares many signatures. One number holds everything
/// that distinguishes a series, and the text of a symbol stays in the text in which it was found. `signature_of` makes
/// a `Signature` from a key.
#pragma once

#include <bifolium/leaf/detail/characters.hpp>
#include <bifolium/leaf/markup.hpp>
#include <bifolium/leaf/signature.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A signature found in a text. It has a meaning only together with this text.
struct SignatureKey {
  /// the mark (4 bits), the raised digits (7), π or χ (2), what is beside the letter (2), enclosed (1)
  std::uint16_t series{};
  static constexpr std::uint8_t no_letter = 0; ///< in `letter`: the mark is not a letter
  std::uint8_t letter{no_letter};              ///< the number of the letter in its alphabet, from 1, or `no_letter`
  std::uint8_t text_size{};  ///< bytes of a symbol, name or printed mark in the text, where an entity counts as written
  std::uint32_t multiple{1}; ///< the multiple, as Signature::multiple returns it
  std::uint32_t text_from{}; ///< the position of the first of those bytes

  /// Makes a mark of the first series.
  static constexpr SignatureKey of(Mark mark, int letter = no_letter, std::uint32_t multiple = 1) noexcept {
    return {static_cast<std::uint16_t>(mark), static_cast<std::uint8_t>(letter), 0, multiple, 0};
  }
  /// Returns the kind of mark.
  [[nodiscard]] constexpr Mark mark() const noexcept { return static_cast<Mark>(series & 15U); }
  /// Returns the raised number before the mark, or no value in the first series, which has none.
  [[nodiscard]] constexpr std::optional<int> raised() const noexcept {
    auto const figure = series >> 4U & 127; // 0 without a raised number
    return figure == 0 ? std::nullopt : std::optional<int>{figure};
  }
  /// Returns π or χ if one of them comes before the mark, otherwise none.
  [[nodiscard]] constexpr Duplicate duplicate() const noexcept { return static_cast<Duplicate>(series >> 11U & 3U); }
  /// Returns the place of a symbol beside the letter.
  [[nodiscard]] constexpr Beside beside() const noexcept { return static_cast<Beside>(series >> 13U & 3U); }
  /// Returns true for a number in quotation marks and for a letter in parentheses.
  [[nodiscard]] constexpr bool enclosed() const noexcept { return series >> 15U != 0; }
  /// Returns true if the mark is a letter of any alphabet.
  [[nodiscard]] constexpr bool is_letter() const noexcept { return mark() <= Mark::cyrillic_capital; }
  /// Returns true if the mark is a Latin letter.
  [[nodiscard]] constexpr bool is_latin() const noexcept { return mark() <= Mark::small_letter; }
  /// Returns true if the mark is a Latin letter of the first series without a symbol beside it.
  [[nodiscard]] constexpr bool is_plain_latin() const noexcept { return series <= 1; }
  /// Returns true if the mark is a number of the first series without quotation marks.
  [[nodiscard]] constexpr bool is_bare_number() const noexcept { return series == static_cast<unsigned>(Mark::number); }
  /// Returns the mark without anything that distinguishes series of the same letters.
  [[nodiscard]] constexpr SignatureKey of_any_series() const noexcept {
    return in_series(1).duplicated(Duplicate::none);
  }
  /// Returns this mark with a raised number before it. Precondition: 0 to 99.
  [[nodiscard]] constexpr SignatureKey in_series(int figure) const {
    if (figure < 0 || figure > 99) broken("the number of a series must be from 0 to 99");
    auto key = *this;
    key.series =
        static_cast<std::uint16_t>((series & ~(127U << 4U)) | static_cast<unsigned>(figure == 1 ? 0 : figure) << 4U);
    return key;
  }
  /// Returns this mark with π or χ before it.
  [[nodiscard]] constexpr SignatureKey duplicated(Duplicate by) const noexcept {
    auto key = *this;
    key.series = static_cast<std::uint16_t>((series & ~(3U << 11U)) | static_cast<unsigned>(by) << 11U);
    return key;
  }
  /// Returns this letter with a symbol beside it, whose text is at byte `from`.
  [[nodiscard]] constexpr SignatureKey with_symbol(Beside where, std::uint32_t from,
                                                   std::uint32_t size) const noexcept {
    auto key = *this;
    key.series = static_cast<std::uint16_t>((series & ~(3U << 13U)) | static_cast<unsigned>(where) << 13U);
    key.text_from = from;
    key.text_size = static_cast<std::uint8_t>(size);
    return key;
  }
  /// Returns this Latin letter with the Greek letter of its place after it.
  [[nodiscard]] constexpr SignatureKey with_greek() const noexcept { return with_symbol(Beside::greek, 0, 0); }
  /// Returns this number in quotation marks, because it is printed in the book, or this letter in parentheses.
  [[nodiscard]] constexpr SignatureKey in_enclosure() const noexcept {
    auto key = *this;
    key.series = static_cast<std::uint16_t>(series | 1U << 15U);
    return key;
  }
  /// Returns this mark without quotation marks or parentheses.
  [[nodiscard]] constexpr SignatureKey without_enclosure() const noexcept {
    auto key = *this;
    key.series = static_cast<std::uint16_t>(series & ~(1U << 15U));
    return key;
  }
  /// Returns true for a symbol, a name and a printed mark, which are known by their text and have no place in an order.
  [[nodiscard]] constexpr bool has_text_alone() const noexcept {
    return mark() == Mark::symbol || mark() == Mark::name || mark() == Mark::printed;
  }
  /// Returns the position of the mark in its series, as Signature::rank does.
  [[nodiscard]] constexpr std::int64_t rank(Alphabet alphabet) const noexcept {
    if (is_latin()) return (std::int64_t{multiple} - 1) * alphabet.size() + alphabet.place(letter);
    return is_letter() ? (std::int64_t{multiple} - 1) * letters_of(mark(), alphabet) + letter : std::int64_t{multiple};
  }
  /// Returns the mark at another position of the series, as Signature::at_rank does. Precondition: the position is at
  /// least 1.
  [[nodiscard]] constexpr SignatureKey at_rank(std::int64_t rank, Alphabet alphabet) const {
    if (rank < 1) broken("the series has no signature at this position");
    auto key = *this;
    auto const size = is_letter() ? letters_of(mark(), alphabet) : 1;
    key.multiple = static_cast<std::uint32_t>((rank - 1) / size + 1);
    if (!is_letter()) return key;
    auto const place = static_cast<int>((rank - 1) % size) + 1;
    key.letter = static_cast<std::uint8_t>(is_latin() ? alphabet.at(place) : place);
    return key;
  }
};

/// Returns true if the two marks of a text belong to one series, so that only letter, number or multiple can differ.
constexpr bool same_series(SignatureKey a, SignatureKey b, std::string_view text) noexcept {
  if (a.series != b.series || a.text_size != b.text_size) return false;
  return a.text_size == 0 || a.text_from == b.text_from ||
         text.substr(a.text_from, a.text_size) == text.substr(b.text_from, b.text_size);
}
/// Returns π or χ as a Greek letter if `others` is a Greek letter, since π and χ are letters in a run of Greek letters.
/// Otherwise returns `mark` unchanged.
constexpr SignatureKey among(SignatureKey others, SignatureKey mark) noexcept {
  if (others.mark() != Mark::greek || (mark.mark() != Mark::pi && mark.mark() != Mark::chi)) return mark;
  return SignatureKey::of(Mark::greek, mark.mark() == Mark::pi ? 16 : 22, mark.multiple)
      .in_series(mark.raised().value_or(1));
}
/// Returns the number of gatherings of a run from `first` to `last`, including both, or no value if the two do not form
/// a run. A W that the alphabet does not have is counted if it is an end of the run.
constexpr std::optional<std::int64_t> run_length(SignatureKey first, SignatureKey last, Alphabet alphabet,
                                                 std::string_view text) noexcept {
  last = among(first, last);
  if (!same_series(first, last, text)) return std::nullopt;
  bool const foreign = first.is_latin() && !alphabet.has(first.letter);
  if (foreign && first.letter == last.letter && first.multiple == last.multiple) return 1;
  auto const number = last.rank(alphabet) - first.rank(alphabet) + 1;
  if (number < 1) return std::nullopt;
  return number + (foreign ? 1 : 0);
}

namespace detail {

/// The greatest number of bytes of a name in brackets: twice the characters that a mark can store, each of which may be
/// written &amp;.
inline constexpr std::size_t widest_name = 10 * Signature::longest_text;

/// The text of a symbol, name or printed mark, in which the entities of HTML and TEI are replaced by their characters, and
/// ) ( has no blank.
struct MarkText {
  char bytes[Signature::longest_text + 1]{};
  std::size_t size{};
  /// Returns true if the text is longer than a signature can store.
  [[nodiscard]] constexpr bool too_long() const noexcept { return size > Signature::longest_text; }
  constexpr explicit MarkText(std::string_view text) noexcept {
    bool const cross = text.starts_with(')');
    for (std::size_t i = 0; i < text.size() && !too_long(); ++size) {
      if (cross) i = after_blanks(text, i);
      auto const entity = entity_at(text, i);
      if (size < sizeof bytes - 1) bytes[size] = entity ? entity->character : text[i];
      i += entity ? entity->bytes : 1;
    }
  }
};

} // namespace detail

namespace detail {
/// Makes the signature of a key that is not one plain letter.
constexpr Signature signature_with_text(SignatureKey key, std::string_view text, Letters letters) {
  MarkText const words{text.substr(key.text_from, key.text_size)};
  auto const plain = [&] {
    switch (key.mark()) {
    case Mark::capital:
    case Mark::small_letter:
      return Signature::letter(static_cast<char>((key.mark() == Mark::capital ? 'A' : 'a') + key.letter - 1),
                               key.multiple, letters);
    case Mark::greek:
    case Mark::greek_capital:
      return Signature::greek(key.letter, key.mark() == Mark::greek_capital, key.multiple);
    case Mark::cyrillic:
    case Mark::cyrillic_capital:
      return Signature::cyrillic(key.letter, key.mark() == Mark::cyrillic_capital, key.multiple);
    case Mark::hebrew:
      return Signature::hebrew(key.multiple);
    case Mark::number:
      return key.enclosed() ? Signature::number(key.multiple).in_quotation_marks() : Signature::number(key.multiple);
    case Mark::pi:
      return Signature::pi(key.multiple);
    case Mark::chi:
      return Signature::chi(key.multiple);
    default:
      return Signature::text(key.mark(), words.bytes, words.size, key.multiple);
    }
  };
  auto signature = plain();
  if (key.beside() == Beside::greek)
    signature = signature.with_greek();
  else if (key.beside() != Beside::none)
    signature = signature.with_symbol(key.beside(), words.bytes, words.size);
  if (key.enclosed() && key.is_letter()) signature = signature.in_parentheses();
  return signature.in_series(key.raised().value_or(1)).duplicated(key.duplicate());
}
/// Makes a signature that is as it is by default, and in its place already, that of a key. Its members are written one by one: a
/// signature made elsewhere would be copied in larger parts than it was written in, and for that the processor has to wait.
constexpr void set_signature(Signature& blank, SignatureKey key, std::string_view text, Letters letters) {
  if (!key.is_plain_latin()) {
    blank = signature_with_text(key, text, letters);
    return;
  }
  blank.mark_ = key.mark();
  blank.letter_ = key.letter; // the reader has checked it
  blank.multiple_ = key.multiple;
}

} // namespace detail

/// Makes the signature of a key in its text. Precondition: the key was found in that text, in an alphabet with those
/// letters.
constexpr Signature signature_of(SignatureKey key, std::string_view text, Letters letters) {
  Signature signature;
  detail::set_signature(signature, key, text, letters);
  return signature;
}

} // namespace v0
} // namespace bifolium
