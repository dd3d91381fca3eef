// SPDX-License-Identifier: MIT
/// Reads the language of folding. A teacher writes down a folding that is in no table, and it works like any other:
///
///     scheme 12_common 12°                         # the name; 'reads right-to-left' may follow
///     sheet S rows 3 columns 4 long-side far-near  # 'half' or 'quarter' after the columns: paper cut before printing
///     cut S row 1 off main                         # the far (or left) piece is named first
///     fold main right-over-left 2                  # 'under' after the number turns the part underneath
///     fold main far-over-near 2
///     fold main right-over-left 1
///     fold off left-over-right 2
///     fold off right-over-left 3
///     gathering A main off:near page 1             # outermost first; ':near' heads near; x+y a pair of single leaves
///
/// A sheet line may end in 'turned about far-near' (or left-right): one forme prints both sides. The reader checks
/// words, names and cuts. `fold` checks whether creases run inside the paper and whether the leaves form gatherings.
#pragma once

#include <bifolium/core/read_utf8.hpp>
#include <bifolium/fold/detail/scheme_reader.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
constexpr Expected<Scheme> scheme_of_text(std::string_view text) {
  return read_utf8(text, [](std::string_view given) { return SchemeReader{given}.read(); });
}
namespace compiled {
Expected<Scheme> read_scheme(std::string_view text);
}
} // namespace detail

/// Reads a scheme from its text. Comments, and the order of lines that do not depend on one another, are not kept.
/// Errors say what was found and what is expected, with line and column. A scheme has at most 128 leaves, 64 steps, 40
/// pieces, 16 gatherings and 8 sheets.
/// Example: `(*read_scheme(schemes::octavo.text())).format() == Format::of(8)`.
constexpr Expected<Scheme> read_scheme(std::string_view text) {
  BIFOLIUM_WHEN_RUN(detail::compiled::read_scheme(text));
  return detail::scheme_of_text(text);
}

} // namespace v0
} // namespace bifolium
