// SPDX-License-Identifier: MIT
/// Writes marks and counts in the notations of formulas: with raised digits, in plain characters, in HTML, in TEI.
#pragma once

#include <bifolium/collation/detail/scan/scan_plain.hpp>
#include <bifolium/collation/parts.hpp>
#include <bifolium/core/ascii.hpp>
#include <bifolium/core/raised.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

/// The notation of raised digits.
enum class Notation : std::uint8_t {
  unicode, ///< A⁸
  caret,   ///< A^8, pi^2: plain characters if the marks allow it
  flat,    ///< A8: for records without raised digits; a numbered gathering is 12(4), a second series ^2A
  html,    ///< A<sup>8</sup>, with & < > as entities
  tei      ///< <formula>A⁸</formula> (TEI P5, element formula), with & < > as entities
};

namespace detail {

/// Writes marks and counts one after another. A derived class writes the text between them.
class MarkWriter {
protected:
  Notation notation_;
  std::string text_{};

  explicit MarkWriter(Notation notation) : notation_{notation} {
    if (notation > Notation::tei) broken("there is no notation with this number");
  }

  [[nodiscard]] bool plain() const noexcept { return notation_ == Notation::caret || notation_ == Notation::flat; }
  [[nodiscard]] bool markup() const noexcept { return notation_ == Notation::html || notation_ == Notation::tei; }
  void put(std::string_view piece) {
    for (std::size_t i = 0; i < piece.size(); ++i) {
      // text that looks like an entity, or would with a semicolon after it, would be read as one
      auto const rest = piece.substr(i + 1);
      bool const entity_like = rest.starts_with("amp") || rest.starts_with("lt") || rest.starts_with("gt");
      if (piece[i] == '&' && (markup() || entity_like))
        text_ += "&amp;";
      else if (piece[i] == '<' && markup())
        text_ += "&lt;";
      else if (piece[i] == '>' && markup())
        text_ += "&gt;";
      else
        text_ += piece[i];
    }
  }
  void number(std::int64_t figure) { text_ += std::to_string(figure); }
  void raised(int figure, bool count) {
    switch (notation_) {
    case Notation::unicode:
    case Notation::tei:
      text_ += bifolium::raised(figure).view();
      return;
    case Notation::html:
      text_ += "<sup>";
      number(figure);
      text_ += "</sup>";
      return;
    case Notation::caret:
    case Notation::flat:
      if (!count || notation_ == Notation::caret) text_ += '^';
      number(figure);
      return;
    }
  }
  /// Writes the raised number of the series. On the line a second caret separates it from a number after it: ^2^3A.
  void series(Signature const& signature) {
    raised(*signature.series(), false);
    if (!plain() || signature.duplicate() != Duplicate::none) return;
    char first = '\0'; // the first character of the text after it
    signature.in_series(0).spell(
        [&](char const* bytes, std::size_t size) { first = first == '\0' && size > 0 ? bytes[0] : first; }, [](int) {});
    if (is_digit(first)) text_ += '^';
  }
  void mark(Signature const& signature, bool inferred = false) {
    bool const html = notation_ == Notation::html;
    bool const apart = (plain() || html) && signature.duplicate() != Duplicate::none;
    auto rest = signature;
    if (apart) {
      if (signature.series()) series(signature);
      bool const pi = signature.duplicate() == Duplicate::pi;
      text_ += html ? (pi ? "<sup>π</sup>" : "<sup>χ</sup>") : pi ? "[pi]" : "[chi]";
      rest = rest.in_series(0).duplicated(Duplicate::none);
    }
    if (inferred) text_ += '[';
    if (plain() && rest.mark() == Mark::pi) {
      if (rest.series()) series(rest);
      if (rest.multiple() > 1) number(rest.multiple());
      text_ += "pi";
    } else if (plain() && rest.mark() == Mark::chi) {
      if (rest.series()) series(rest);
      if (rest.multiple() > 1) number(rest.multiple());
      text_ += "chi";
    } else
      rest.spell([&](char const* bytes, std::size_t size) { put({bytes, size}); }, [&](int) { series(rest); });
    if (inferred) text_ += ']';
  }
  /// Writes the leaf counts of a run. `caret`: on the line a caret comes before them, because without it they would be
  /// a leaf.
  void cycle(Cycle const& leaves, bool numeric, bool caret = false) {
    bool const parentheses = notation_ == Notation::flat && numeric;
    bool thick = false; // true if this count on the line would be read as two counts without their separator
    for (std::size_t i = 0; i < leaves.size(); ++i) thick = thick || leaves.term(i) > thick_gathering;
    if (notation_ == Notation::flat && (thick || caret) && !parentheses) text_ += '^';
    if (parentheses) text_ += '(';
    if (notation_ == Notation::caret || (notation_ == Notation::html)) {
      text_ += notation_ == Notation::caret ? "^" : "<sup>";
      for (std::size_t i = 0; i < leaves.size(); ++i) {
        if (i != 0) text_ += '/';
        number(leaves.term(i));
      }
      if (notation_ == Notation::html) text_ += "</sup>";
    } else
      for (std::size_t i = 0; i < leaves.size(); ++i) {
        if (i != 0) text_ += '/';
        raised(leaves.term(i), true);
      }
    if (parentheses) text_ += ')';
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
