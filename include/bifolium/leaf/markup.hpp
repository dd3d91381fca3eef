// SPDX-License-Identifier: MIT
/// The markup that raises or lowers text: `<sup>` and `<sub>` of HTML, `<hi rend="superscript">` of TEI, `^{` of TeX,
/// and the signs that some catalogues have instead of raised figures since they were converted; and the entities of
/// HTML and TEI. The lexer gives what is inside a style; words are stored without the markup.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/detail/characters.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {
/// What a piece of markup does.
enum class MarkupKind : std::uint8_t {
  raises, ///< what follows is above the line
  lowers, ///< what follows is below the line
  marks,  ///< `<hi rend="bold">`: a tag that says neither; of a figure in a formula it is taken to raise it
  ends    ///< what follows is on the line again
};
/// A piece of markup and the number of its bytes.
struct Markup {
  MarkupKind kind{};     ///< what it does
  std::uint32_t bytes{}; ///< the number of its bytes
  friend constexpr bool operator==(Markup, Markup) = default;
};
namespace detail {
/// A longer tag is read as text.
inline constexpr std::size_t longest_tag = 48;
/// Returns true if something in the text may be above the line or below it: there is markup, a bracket in which it may
/// be named, or a character that is not ASCII.
[[nodiscard]] constexpr bool may_be_raised(std::string_view text) noexcept {
  for (auto const c : text)
    if (c == '<' || c == '^' || c == '[' || static_cast<unsigned char>(c) >= 0x80) return true;
  return false;
}
} // namespace detail
/// Returns the markup at byte `i`, or no value if there is none. The brace that ends ^{ is not reported, because a brace can
/// also be text.
[[nodiscard]] constexpr std::optional<Markup> markup_at(std::string_view text, std::size_t i) noexcept {
  auto const rest = text.substr(i < text.size() ? i : text.size());
  if (rest.empty() || (rest[0] != '<' && rest[0] != '^' && rest[0] != '\xC3')) return std::nullopt;
  if (rest.starts_with("<sup>")) return Markup{MarkupKind::raises, 5};
  if (rest.starts_with("<sub>")) return Markup{MarkupKind::lowers, 5};
  if (rest.starts_with("</sup>") || rest.starts_with("</sub>")) return Markup{MarkupKind::ends, 6};
  if (rest.starts_with("</hi>")) return Markup{MarkupKind::ends, 5};
  if (rest.starts_with("<hi ")) {
    auto const end = rest.substr(0, detail::longest_tag + 1).find('>');
    if (end == rest.npos) return std::nullopt;
    auto const tag = rest.substr(0, end);
    auto const kind = tag.find("sup") != tag.npos   ? MarkupKind::raises
                      : tag.find("sub") != tag.npos ? MarkupKind::lowers
                                                    : MarkupKind::marks;
    return Markup{kind, static_cast<std::uint32_t>(end + 1)};
  }
  if (rest.starts_with("^{")) return Markup{MarkupKind::raises, 2};
  if (rest.starts_with("\xC3\x9Bp")) return Markup{MarkupKind::raises, 3};
  if (rest.starts_with("\xC3\x9Bs")) return Markup{MarkupKind::ends, 3};
  return std::nullopt;
}
/// Returns true if the text may have markup or an entity: it has a character with which one begins or ends.
[[nodiscard]] constexpr bool may_have_markup(std::string_view text) noexcept {
  bool ampersand = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    switch (detail::kind_of_byte(static_cast<unsigned char>(text[i]))) {
    case detail::ByteKind::angle:
    case detail::ByteKind::caret:
    case detail::ByteKind::brace:
      return true;
    case detail::ByteKind::ampersand:
      ampersand = true;
      break;
    case detail::ByteKind::high:
      if (text[i] == '\xC3' && i + 1 < text.size() && text[i + 1] == '\x9B') return true;
      break;
    default:
      break;
    }
  }
  return ampersand && text.find(';') != text.npos;
}
/// Returns the number of bytes of the markup at byte `i` that ends a style which has begun, so that a brace is one too,
/// or no value if there is none.
[[nodiscard]] constexpr std::optional<std::uint32_t> end_of_style_at(std::string_view text, std::size_t i) noexcept {
  if (i < text.size() && text[i] == '}') return 1;
  auto const markup = markup_at(text, i);
  return markup && markup->kind == MarkupKind::ends ? std::optional{markup->bytes} : std::nullopt;
}
/// Returns the number of bytes before the figure of [superscript 8] or the letter of [superscript pi] and [superscript
/// chi], as catalogues without raised characters name them, or no value if none is named at byte `i`.
[[nodiscard]] constexpr std::optional<std::uint32_t> superscript_named_at(std::string_view text,
                                                                          std::size_t i) noexcept {
  constexpr std::string_view name = "[superscript";
  auto const rest = text.substr(i < text.size() ? i : text.size());
  std::optional<std::uint32_t> bytes;
  auto to = name.size();
  if (rest.size() <= to || !equal_in_any_case(rest.substr(0, to), name)) return bytes;
  to = after_blanks(rest, to);
  auto const named = rest.substr(to);
  bool const known = !named.empty() && (is_digit(named[0]) || named.starts_with("pi]") || named.starts_with("chi]"));
  if (known && to > name.size()) bytes = static_cast<std::uint32_t>(to);
  return bytes;
}
/// Returns true if a caret at byte `i`, directly after a raised number, ends it: A^8^, A^8^/4^; not A^8^2B.
[[nodiscard]] constexpr bool ends_caret_number(std::string_view text, std::size_t i) noexcept {
  if (i >= text.size() || text[i] != '^') return false;
  auto const after = i + 1 < text.size() ? text[i + 1] : ' ';
  return !is_digit(after) && static_cast<unsigned char>(after) < 0xC2; // ^πA
}
/// One of the four entities that stay in the text of a formula, since `&lt;sup&gt;` is not markup: &amp; &lt; &gt; and
/// &nbsp;. All other character references were read before (core/character_references.hpp).
struct Entity {
  char character{};      ///< the character that it stands for; a blank for &nbsp;
  std::uint32_t bytes{}; ///< the number of its bytes
  friend constexpr bool operator==(Entity, Entity) = default;
};
/// Returns the entity at byte `i`, or no value if there is none.
/// Example: `entity_at("A&lt;", 1) == Entity{'<', 4}`.
[[nodiscard]] constexpr std::optional<Entity> entity_at(std::string_view text, std::size_t i) noexcept {
  if (i >= text.size() || text[i] != '&') return std::nullopt;
  auto const rest = text.substr(i);
  if (rest.starts_with("&amp;")) return Entity{'&', 5};
  if (rest.starts_with("&lt;")) return Entity{'<', 4};
  if (rest.starts_with("&gt;")) return Entity{'>', 4};
  if (rest.starts_with("&nbsp;")) return Entity{' ', 6};
  return std::nullopt;
}

} // namespace v0
} // namespace bifolium
