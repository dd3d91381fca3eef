// SPDX-License-Identifier: MIT
/// Measures against one another. Height and width are easily exchanged, and millimetres taken for centimetres; two measures of
/// one book, or one that no book has, show it.
#pragma once

#include <bifolium/book/detail/audit/field_findings.hpp>
#include <bifolium/book/detail/audit/format_findings.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Compares height, width and cover.
class MeasureAudit : FieldFindings {
  static std::string millimetres_of(SizeRange const& size) {
    auto const middle = static_cast<int>((size.above + size.to) / 2 + .5);
    if (size.to - size.above < 2) return std::to_string(middle) + " mm";
    return std::to_string(static_cast<int>(size.to / 10 + .5)) + " cm";
  }

public:
  MeasureAudit(Description const& book, Audit& audit) : FieldFindings{book, audit} {}
  void run() {
    constexpr double lowest = 45, highest = 1100; // estimated; the smallest miniature books are excepted
    if (book_.height) {
      auto const& height = book_.height->value;
      if (height.to < lowest || height.above > highest)
        add(FindingId::height_unit, Severity::doubt, FieldSet{Field::height},
            "a leaf " + millimetres_of(height) + " high is very rare; perhaps the unit or a figure is wrong", {});
    }
    if (book_.height && book_.width && book_.height->value.to < book_.width->value.above) {
      auto const format = stated_format(book_);
      // a sheet that is not folded is printed either way
      bool const unfolded = format && (format->kind() == Format::Kind::single_sheet ||
                                       format->kind() == Format::Kind::part || format->leaves_to_sheet() == 1);
      bool const broad = unfolded || (format && (format->shape() == Shape::oblong || format->shape() == Shape::broad));
      if (!broad)
        add(FindingId::height_below_width, Severity::doubt, FieldSet{Field::height} | Field::width,
            "the leaf is " + millimetres_of(book_.height->value) + " high and " + millimetres_of(book_.width->value) +
                " broad; perhaps height and width were exchanged, or the book is oblong",
            "the shape of the book");
    }
    auto const format = stated_format(book_);
    if (book_.height && book_.width && format && format->shape() == Shape::oblong &&
        book_.height->value.above >= book_.width->value.to)
      add(FindingId::oblong_but_high, Severity::doubt, FieldSet{Field::height} | Field::width | Field::format,
          "the format is stated as " + std::string{format->symbol().view()} + ", but the leaf is " +
              millimetres_of(book_.height->value) + " high and " + millimetres_of(book_.width->value) + " broad",
          "the shape of the book, and whether height and width were exchanged");
    if (book_.height && book_.binding && book_.binding->value.to < book_.height->value.above)
      add(FindingId::cover_below_leaf, Severity::error, FieldSet{Field::height} | Field::binding,
          "the cover is " + millimetres_of(book_.binding->value) + " high and the leaf " +
              millimetres_of(book_.height->value) + "; a cover is not lower than its leaves",
          "which of the two was measured");
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
