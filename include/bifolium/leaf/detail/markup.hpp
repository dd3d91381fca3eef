// SPDX-License-Identifier: MIT
/// The markup that raises or lowers text: <sup> and <sub> of HTML, <hi rend="superscript"> of TEI, ^{ of TeX, and the signs that
/// some catalogues have instead of raised figures since they were converted. The lexer gives what is inside a style; words
/// are stored without the markup.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What a piece of markup does.
enum class MarkupKind : std::uint8_t {
  none,
  raises,
  lowers,
  marks, ///< <hi rend="bold">: a tag that says neither; of a figure in a formula it is taken to raise it
  ends
};
/// A piece of markup and the number of its bytes, which is 0 if there is none.
struct Markup {
  MarkupKind kind{};
  std::uint32_t bytes{};
};
/// A longer tag is read as text.
inline constexpr std::size_t longest_tag = 48;
/// Returns the markup at byte `i`. The brace that ends ^{ is not reported, because a brace can also be text.
[[nodiscard]] constexpr Markup markup_at(std::string_view text, std::size_t i) noexcept {
  auto const rest = text.substr(i < text.size() ? i : text.size());
  if (rest.empty() || (rest[0] != '<' && rest[0] != '^' && rest[0] != '\xC3')) return {};
  if (rest.starts_with("<sup>")) return {MarkupKind::raises, 5};
  if (rest.starts_with("<sub>")) return {MarkupKind::lowers, 5};
  if (rest.starts_with("</sup>") || rest.starts_with("</sub>")) return {MarkupKind::ends, 6};
  if (rest.starts_with("</hi>")) return {MarkupKind::ends, 5};
  if (rest.starts_with("<hi ")) {
    auto const end = rest.substr(0, longest_tag + 1).find('>');
    if (end == rest.npos) return {};
    auto const tag = rest.substr(0, end);
    auto const kind = tag.find("sup") != tag.npos   ? MarkupKind::raises
                      : tag.find("sub") != tag.npos ? MarkupKind::lowers
                                                    : MarkupKind::marks;
    return {kind, static_cast<std::uint32_t>(end + 1)};
  }
  if (rest.starts_with("^{")) return {MarkupKind::raises, 2};
  if (rest.starts_with("\xC3\x9Bp")) return {MarkupKind::raises, 3};
  if (rest.starts_with("\xC3\x9Bs")) return {MarkupKind::ends, 3};
  return {};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
