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
/// Reads the parts of a line one after another, each from where the one before it left off: from the end of the line what
/// accompanies the book, the size and the formats, then the extent.
class PhysicalReader {
  std::string_view text_;
  PhysicalDescription read_{};
  std::size_t end_;         // where ` + ` and what accompanies the book begin
  std::size_t before_size_; // where the size and the formats begin

  void accompanying() {
    for (auto plus = text_.rfind('+'); plus != text_.npos; plus = plus == 0 ? text_.npos : text_.rfind('+', plus - 1)) {
      if (blank_before(text_, plus) == 0 || blank_at(text_, plus + 1) == 0) continue;
      read_.accompanying = trimmed(text_, {plus + 1, text_.size()}, " ");
      end_ = before_size_ = before_blanks(text_, plus);
      return;
    }
  }
  /// Reads the size after the last `;` that a size follows.
  void size_after_semicolon() {
    auto const body = text_.substr(0, end_);
    for (auto at = body.rfind(';'); at != body.npos; at = at == 0 ? body.npos : body.rfind(';', at - 1)) {
      // those after it were tried, so that this one is read up to the next of them at most
      auto size = SizeReader{body.substr(at + 1), {}, true}.read();
      if (!size) continue;
      read_.size = static_cast<SizeStatement&&>(*size);
      for (auto& span : read_.size->unread) span = {span.from + at + 1, span.to + at + 1};
      before_size_ = at;
      return;
    }
  }
  /// Reads the formats that are all of a text, if it has no more, and puts them before those of the size.
  bool formats_of(std::string_view part) {
    auto const formats = SizeReader{part, {}}.read_formats();
    if (formats.empty()) return false;
    if (!read_.size) read_.size.emplace();
    read_.size->formats.insert(read_.size->formats.begin(), formats.begin(), formats.end());
    return true;
  }
  /// Reads formats that stand before the size in parts of their own, or alone: 205 p. ; 8vo ; 20 cm, [8]-320 p. ; in-8.
  void formats_before_size() {
    while (before_size_ > 0) {
      auto const at = text_.rfind(';', before_size_ - 1);
      if (at == text_.npos || !formats_of(text_.substr(at + 1, before_size_ - at - 1))) return;
      before_size_ = at;
    }
  }
  /// The next colon with a blank before it, as ISBD has it.
  static std::size_t colon_after(std::string_view text, std::size_t from) {
    auto colon = text.find(':', from);
    while (colon != text.npos && blank_before(text, colon) == 0) colon = text.find(':', colon + 1);
    return colon;
  }
  [[nodiscard]] Expected<PhysicalDescription> extent_and_details(Limits const& limits) {
    auto const first_parts = text_.substr(0, before_size_);
    auto colon = colon_after(first_parts, 0);
    auto extent = read_extent(first_parts.substr(0, colon), limits);
    // 2 v. : 240; 96 p. : ill.
    if (extent && colon != text_.npos && extent->volumes && extent->pagination.runs.empty()) {
      auto const second = colon_after(first_parts, colon + 1);
      if (auto pages = read_extent(first_parts.substr(0, second), limits); !pages || !pages->pagination.runs.empty())
        extent = static_cast<Expected<Extent>&&>(pages), colon = second;
    }
    if (colon != text_.npos) read_.details = trimmed(text_, {colon + 1, before_size_}, " ");
    if (!extent) return extent.error();
    read_.extent = static_cast<Extent&&>(*extent);
    auto& left = read_.extent->unread;
    if (left.size() == 1 && formats_of(left[0].of(text_))) left.clear(); // 2 vol. in-8
    return static_cast<PhysicalDescription&&>(read_);
  }

public:
  explicit PhysicalReader(std::string_view text) : text_{text}, end_{text.size()}, before_size_{text.size()} {}

  [[nodiscard]] Expected<PhysicalDescription> read(Limits const& limits) {
    if (is_too_long(text_, limits)) return too_long(limits);
    accompanying();
    size_after_semicolon();
    formats_before_size();
    if (!read_.size)
      if (auto size = read_size(text_.substr(0, end_))) { // the line begins with the size
        read_.size = static_cast<SizeStatement&&>(*size);
        return static_cast<PhysicalDescription&&>(read_);
      }
    if (formats_of(text_.substr(0, before_size_))) return static_cast<PhysicalDescription&&>(read_); // Quart ; 22 cm
    return extent_and_details(limits);
  }
};
} // namespace detail

/// Reads a physical description. Formats may stand after the size or in parts before it, "205 p. ; 8vo ; 20 cm", or
/// alone, "205 p. ; 8vo"; the pages may be missing, "Quart ; 22 cm". Places in the parts are places in the line. Errors,
/// with the column in the line: not_an_extent, and those of `read_extent` and `read_size`; the limit text_too_long.
[[nodiscard]] inline Expected<PhysicalDescription> read_physical_description(std::string_view text,
                                                                             Limits const& limits = {}) {
  return read_characters(text, [&](std::string_view plain) { return detail::PhysicalReader{plain}.read(limits); });
}

} // namespace v0
} // namespace bifolium
