// SPDX-License-Identifier: MIT
/// Character references of HTML, which records keep when they were exported from web pages: `A-K&#8312;`, `8&deg;`,
/// `205&nbsp;p.`. They are read as the characters that they stand for. A reader that knows nothing of them is given a
/// text with the characters, and the places of what it finds are moved back into the text as it was.
///
/// A text that was escaped twice has `&amp;#8312;`, which is read as the same character.
#pragma once

#include <bifolium/core/detail/character_names.hpp>
#include <bifolium/core/error.hpp>
#include <bifolium/core/partition_point.hpp>
#include <bifolium/core/read_utf8.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A character reference, or what was meant for one.
struct CharacterReference {
  char32_t value{};      ///< the character
  std::uint32_t bytes{}; ///< the number of its bytes
  bool malformed{};      ///< true if it stands for no character: a name or number that is not known, no semicolon
  friend constexpr bool operator==(CharacterReference, CharacterReference) = default;
};

namespace detail {

/// Returns the character that a name stands for, or 0.
[[nodiscard]] constexpr char32_t character_named(std::string_view name) noexcept {
  for (auto const& row : character_names)
    if (name == row.name) return row.value;
  return 0;
}
/// Returns the character of a number, or 0 if there is none: for control characters, halves of pairs, numbers beyond
/// Unicode.
[[nodiscard]] constexpr char32_t character_numbered(std::uint32_t number) noexcept {
  if (number >= 0x80 && number < 0xA0) return characters_of_windows[number - 0x80];
  bool const control = number < 0x20 && number != '\t' && number != '\n' && number != '\r';
  bool const half_of_pair = number >= 0xD800 && number < 0xE000;
  return control || number == 0x7F || half_of_pair || number > 0x10FFFF ? 0 : number;
}
/// Reads &#8312; or &#x2078; at `at`, where & is.
[[nodiscard]] constexpr std::optional<CharacterReference> reference_by_number(std::string_view text,
                                                                              std::size_t at) noexcept {
  auto const byte = [&](std::size_t i) { return i < text.size() ? small_letter(text[i]) : '\0'; };
  bool const hex = byte(at + 2) == 'x';
  auto const digit = [&](std::size_t i) -> std::uint32_t {
    auto const c = byte(i);
    if (is_digit(c)) return static_cast<std::uint32_t>(c - '0');
    return hex && c >= 'a' && c <= 'f' ? static_cast<std::uint32_t>(c - 'a') + 10U : 16U;
  };
  auto const from = at + (hex ? 3 : 2);
  auto to = from;
  std::uint32_t number = 0;
  for (; digit(to) < 16; ++to) number = number > 0x10FFFF ? number : number * (hex ? 16U : 10U) + digit(to);
  if (to == from && byte(to) != ';') return std::nullopt; // the marks & and #
  bool const closed = byte(to) == ';';
  auto const value = closed && to > from ? character_numbered(number) : U'\0';
  return CharacterReference{value, static_cast<std::uint32_t>(to - at + (closed ? 1U : 0U)), value == 0};
}
/// Returns true for the name of a leaf or of a gathering after the sign &, which can come before a semicolon: chi1, aa.
[[nodiscard]] constexpr bool may_be_signature(std::string_view name) noexcept {
  std::size_t letters = 0;
  bool same = true;
  for (; letters < name.size() && !is_digit(name[letters]); ++letters) same = same && name[letters] == name[0];
  return letters < 3 || same || name.substr(0, letters) == "chi";
}
/// Reads &sup2; at `at`, where & is. A name that is not known is one only if it has its semicolon and is no signature; a
/// name without a semicolon only if it is one of those of Latin-1, which some programs write so.
[[nodiscard]] constexpr std::optional<CharacterReference> reference_by_name(std::string_view text,
                                                                            std::size_t at) noexcept {
  auto to = at + 1;
  while (to < text.size() && to < at + 33 && (is_latin_letter(text[to]) || is_digit(text[to]))) ++to;
  auto const name = text.substr(at + 1, to - at - 1);
  if (name.size() < 2 || is_digit(name[0])) return std::nullopt;
  auto const value = character_named(name);
  bool const closed = to < text.size() && text[to] == ';';
  auto const bytes = static_cast<std::uint32_t>(to - at + (closed ? 1U : 0U));
  if (value != 0 && closed) return CharacterReference{value, bytes, false};
  bool const meant = closed ? !may_be_signature(name) : value >= 0xA0 && value < 0x100;
  if (!meant) return std::nullopt;
  return CharacterReference{0, bytes, true};
}

} // namespace detail

/// Returns the character reference at a byte of a text, or no value if there is none.
/// Example: `character_reference_at("8&deg;", 1) == CharacterReference{0xB0, 5}`.
[[nodiscard]] constexpr std::optional<CharacterReference> character_reference_at(std::string_view text,
                                                                                 std::size_t at) noexcept {
  if (at + 1 >= text.size() || text[at] != '&') return std::nullopt;
  auto const after = [&](std::size_t sign) { // what follows the sign &
    bool const number = sign + 1 < text.size() && text[sign + 1] == '#';
    return number ? detail::reference_by_number(text, sign) : detail::reference_by_name(text, sign);
  };
  auto sign = at; // the semicolon of &amp;deg; stands in the place of its &
  while (text.substr(sign + 1).starts_with("amp;")) sign += 4;
  if (auto found = after(sign); sign != at && found && !found->malformed) {
    found->bytes += static_cast<std::uint32_t>(sign - at);
    return found;
  }
  return after(at);
}

/// A text in which characters stand in the places of references, and the way back to the text with the references.
class TextOfCharacters {
  struct Step {
    std::size_t to, from; // the position after a character, and that after its reference
  };
  std::string_view original_;
  std::vector<char> text_{};
  std::vector<Step> steps_{};
  std::optional<TextSpan> malformed_{};

  constexpr void put(std::string_view more) { text_.insert(text_.end(), more.begin(), more.end()); }

public:
  /// What becomes of &amp;, &lt;, &gt; and &nbsp;.
  enum class Escapes : std::uint8_t {
    read, ///< they are read as the others
    kept  ///< they stay, for a reader of markup that has to tell `<sup>` from a sign
  };
  /// Reads all references of a text. Malformed ones stay as they are. The text must outlive the object.
  constexpr explicit TextOfCharacters(std::string_view text, Escapes escapes = Escapes::read) : original_{text} {
    std::size_t done = 0;
    for (auto at = text.find('&'); at < text.size(); at = text.find('&', at + 1)) {
      auto const found = character_reference_at(text, at);
      if (!found) continue;
      if (found->malformed) {
        if (!malformed_) malformed_ = {at, at + found->bytes};
        continue;
      }
      auto const value = found->value;
      bool const escape = value == '&' || value == '<' || value == '>' || value == 0xA0;
      put(text.substr(done, at - done));
      done = at + found->bytes;
      char bytes[4]{};
      if (escape && escapes == Escapes::kept)
        put(value == '&' ? "&amp;" : value == '<' ? "&lt;" : value == '>' ? "&gt;" : "&nbsp;");
      else
        put({bytes, encode(value, bytes)});
      steps_.push_back({text_.size(), done});
      at = done - 1;
    }
    put(text.substr(done));
  }
  /// Returns true if there is a reference.
  [[nodiscard]] constexpr bool changed() const noexcept { return !steps_.empty(); }
  /// Returns the first malformed reference, or no value if there is none.
  [[nodiscard]] constexpr std::optional<TextSpan> malformed() const noexcept { return malformed_; }
  /// Returns the error of a malformed reference. Precondition: there is one.
  [[nodiscard]] constexpr Error error() const {
    return error_in(original_, *malformed_, Problem::bad_character_reference);
  }
  /// Returns the text with the characters.
  [[nodiscard]] constexpr std::string_view text() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return {text_.data(), text_.size()};
  }
  std::string_view text() && = delete; // keep the TextOfCharacters in a variable

  /// Returns where a position of `text()` is in the text with the references.
  [[nodiscard]] constexpr std::size_t original(std::size_t at) const noexcept {
    auto const after = partition_point(steps_.size(), [&](std::size_t i) { return steps_[i].to <= at; });
    return after == 0 ? at : steps_[after - 1].from + (at - steps_[after - 1].to);
  }
  /// Returns where a part of `text()` is in the text with the references.
  [[nodiscard]] constexpr TextSpan original(TextSpan part) const noexcept {
    return {original(part.from), original(part.to)};
  }
  /// Returns an error in `text()` with its place in the text with the references. It quotes what it quoted.
  [[nodiscard]] constexpr Error original(Error error) const noexcept {
    Error one[]{error};
    move_back(one);
    return one[0];
  }
  /// Moves errors in `text()` to their places in the text with the references. Those in the order of the text need one
  /// pass through it.
  template <class Errors> constexpr void move_back(Errors& errors) const noexcept {
    PlaceCounter places;
    std::size_t at = 0;
    TextPlace here; // of `at` in `text()`
    for (auto& error : errors) {
      if (!error.place) continue;
      auto const wanted = *error.place;
      if (wanted.line < here.line || (wanted.line == here.line && wanted.column < here.column)) at = 0, here = {};
      for (; at < text_.size() && here != wanted; at += decode(text(), at).bytes)
        here = text_[at] == '\n' ? TextPlace{here.line + 1, 1} : TextPlace{here.line, here.column + 1};
      error.place = places.place(original_, original(at));
    }
  }
};

/// Returns what `read` makes of a text with characters in the places of references. `move(value, text)` then moves the
/// places in the value back with `text.original`. A malformed reference is an error; in a formula, whose words may hold any
/// text, only if it cannot be read.
template <class Read, class Move>
[[nodiscard]] constexpr auto read_characters(std::string_view text, Read read, Move move,
                                             TextOfCharacters::Escapes escapes) -> decltype(read(text)) {
  if (text.find('&') == text.npos) return read_utf8(text, read);
  TextOfCharacters const characters{text, escapes};
  bool const malformed = characters.malformed().has_value();
  if (malformed && escapes == TextOfCharacters::Escapes::read) return error_of_text(text, characters.error());
  auto result = read(characters.text());
  if (!result) return error_of_text(text, malformed ? characters.error() : characters.original(result.error()));
  move(*result, characters);
  return result;
}
/// Returns what `read` makes of a text with characters in the places of references, if its value has a function
/// `move_back(text)`, which moves its places back.
template <class Read>
[[nodiscard]] constexpr auto read_characters(std::string_view text, Read read,
                                             TextOfCharacters::Escapes escapes = TextOfCharacters::Escapes::read) {
  auto const move = [](auto& value, TextOfCharacters const& characters) { value.move_back(characters); };
  return read_characters(text, read, move, escapes);
}

} // namespace v0
} // namespace bifolium
