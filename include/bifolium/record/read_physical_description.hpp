// SPDX-License-Identifier: MIT
/// Reads a physical description in one line, with the punctuation of ISBD: extent : illustrations ; size (format) +
/// accompanying material. "[8], 205, [3] p. : ill. ; 20 cm (4to) + 1 map".
///
/// Rules: ISBD area 5; DCRMR 0.2.6.1. Records without this punctuation have a field for each part.
#pragma once

#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_size.hpp>

namespace bifolium {
inline namespace v0 {

/// The parts of a physical description.
struct PhysicalDescription {
  std::optional<Extent> extent{}; ///< no value if the line begins with the size
  TextSpan details{}; ///< illustrations and similar details, between ` : ` and ` ; `, without blanks at its ends
  std::optional<SizeStatement> size{}; ///< no value if the line has no size; of a line with formats alone no height
  TextSpan accompanying{};             ///< the text after ` + `

  /// Moves its places from a text of characters into the text with the references. Readers of statements call it.
  void move_back(TextOfCharacters const& text) {
    if (extent) extent->move_back(text);
    if (size) size->move_back(text);
    details = text.original(details), accompanying = text.original(accompanying);
  }
  friend bool operator==(PhysicalDescription const&, PhysicalDescription const&) = default;
};

namespace detail {
inline Expected<PhysicalDescription> read_physical_characters(std::string_view text, Limits const& limits) {
  if (is_too_long(text, limits)) return too_long(limits);
  PhysicalDescription read;
  auto end = text.size();
  for (auto plus = text.rfind('+'); plus != text.npos; plus = plus == 0 ? text.npos : text.rfind('+', plus - 1)) {
    if (blank_before(text, plus) == 0 || blank_at(text, plus + 1) == 0) continue;
    read.accompanying = trimmed(text, {plus + 1, text.size()}, " ");
    end = before_blanks(text, plus);
    break;
  }
  auto const body = text.substr(0, end);
  // the size begins after the last `;` that a size follows, or at the beginning of the line
  std::size_t before_size = end;
  for (auto at = body.rfind(';'); at != body.npos; at = at == 0 ? body.npos : body.rfind(';', at - 1)) {
    // those after it were tried, so that this one is read up to the next of them at most
    auto size = SizeReader{body.substr(at + 1), {}, true}.read();
    if (!size) continue;
    read.size = static_cast<SizeStatement&&>(*size);
    for (auto& span : read.size->unread) span = {span.from + at + 1, span.to + at + 1};
    before_size = at;
    break;
  }
  // formats may stand before the size in parts of their own, or alone: 205 p. ; 8vo ; 20 cm, [8]-320 p. ; in-8
  while (before_size > 0) {
    auto const at = body.rfind(';', before_size - 1);
    if (at == body.npos) break;
    auto const formats = SizeReader{body.substr(at + 1, before_size - at - 1), {}}.read_formats();
    if (formats.empty()) break;
    if (!read.size) read.size.emplace();
    read.size->formats.insert(read.size->formats.begin(), formats.begin(), formats.end());
    before_size = at;
  }
  if (!read.size)
    if (auto size = read_size(body)) {
      read.size = static_cast<SizeStatement&&>(*size);
      return read;
    }
  auto const first_parts = body.substr(0, before_size);
  if (auto const formats = SizeReader{first_parts, {}}.read_formats(); !formats.empty()) { // Quart ; 22 cm
    if (!read.size) read.size.emplace();
    read.size->formats.insert(read.size->formats.begin(), formats.begin(), formats.end());
    return read;
  }
  auto colon = first_parts.find(':');
  while (colon != body.npos && blank_before(first_parts, colon) == 0) colon = first_parts.find(':', colon + 1);
  if (colon != body.npos) read.details = trimmed(text, {colon + 1, before_size}, " ");
  auto extent = read_extent(first_parts.substr(0, colon), limits);
  if (!extent) return extent.error();
  read.extent = static_cast<Extent&&>(*extent);
  auto& left = read.extent->unread;
  if (left.size() == 1) // 2 vol. in-8
    if (auto const formats = SizeReader{left[0].of(text), {}}.read_formats(); !formats.empty()) {
      if (!read.size) read.size.emplace();
      read.size->formats.insert(read.size->formats.begin(), formats.begin(), formats.end());
      left.clear();
    }
  return read;
}
} // namespace detail

/// Reads a physical description. Formats may stand after the size or in parts before it, "205 p. ; 8vo ; 20 cm", or
/// alone, "205 p. ; 8vo"; the pages may be missing, "Quart ; 22 cm". Places in the parts are places in the line. Errors,
/// with the column in the line: not_an_extent, and those of `read_extent` and `read_size`; the limit text_too_long.
[[nodiscard]] inline Expected<PhysicalDescription> read_physical_description(std::string_view text,
                                                                             Limits const& limits = {}) {
  return read_characters(text, [&](std::string_view plain) { return detail::read_physical_characters(plain, limits); });
}

} // namespace v0
} // namespace bifolium
