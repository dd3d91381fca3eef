// SPDX-License-Identifier: MIT
/// Writes a partition and a nesting in the language of folding. Pieces are named by their gathering and their place in
/// it, from outside inwards: a1, a2, b1.
#pragma once

#include <bifolium/fold/detail/nester.hpp>
#include <bifolium/fold/detail/partitions.hpp>
#include <bifolium/fold/read_scheme.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Writes the text of a scheme.
class SchemeDraft {
  std::vector<SheetGrid> const& grids_;
  std::vector<Part> const& parts_;
  std::vector<Nested> const& nesting_;
  std::vector<char> text_{};
  std::vector<ShortText<8>> names_{};
  int parted_{};

  constexpr void put(std::string_view words) {
    for (char c : words) text_.push_back(c);
  }
  constexpr void put(int n) {
    if (n >= 10) put(n / 10);
    text_.push_back(static_cast<char>('0' + n % 10));
  }
  static constexpr std::string_view word(Axis axis) { return axis == Axis::far_near ? "far-near" : "left-right"; }
  [[nodiscard]] constexpr ShortText<8> sheet_name(int sheet) const {
    ShortText<8> name{"S"};
    if (grids_.size() > 1) append_figures(name, sheet + 1);
    return name;
  }
  static constexpr void append_figures(ShortText<8>& name, int n) {
    if (n >= 10) append_figures(name, n / 10);
    char const digit = static_cast<char>('0' + n % 10);
    name.append(&digit, 1);
  }

  /// Names the parts: a letter of the 23 for each gathering, and a number for each piece of it. A piece that is a whole
  /// sheet keeps its name.
  constexpr void name_parts() {
    for (std::size_t i = 0; i < parts_.size(); ++i) names_.push_back({});
    int gathering = -1, piece = 0;
    for (auto const& nested : nesting_) {
      if (nested.begins) ++gathering, piece = 0;
      auto const& rect = parts_[nested.part].rect;
      auto const& grid = grids_[rect.sheet];
      if (rect.rows() == grid.rows && rect.columns() == grid.columns) {
        names_[nested.part] = sheet_name(rect.sheet);
        continue;
      }
      ShortText<8> name{
          std::string_view{"abcdefghiklmnopqrstvxyz"}.substr(static_cast<std::size_t>(gathering % 23), 1)};
      append_figures(name, ++piece + 100 * (gathering / 23));
      names_[nested.part] = name;
    }
  }

  constexpr void sheet_lines(Axis const* long_sides) {
    for (std::size_t s = 0; s < grids_.size(); ++s) {
      auto const& grid = grids_[s];
      put("sheet ");
      put(sheet_name(static_cast<int>(s)).view());
      put(" rows ");
      put(grid.rows);
      put(" columns ");
      put(grid.columns);
      put(" long-side ");
      put(word(long_sides[s]));
      if (grid.one_forme) put(" turned about "), put(word(grid.turned_about));
      put("\n");
    }
  }
  /// Returns the part that is this rectangle, or no value.
  [[nodiscard]] constexpr std::optional<std::size_t> part_that_is(GridRect const& rect) const {
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (parts_[i].rect == rect) return i;
    return std::nullopt;
  }
  /// Returns true if a cut on this line goes through none of the parts.
  [[nodiscard]] constexpr bool can_cut(GridRect const& whole, Axis along, int line) const {
    for (auto const& part : parts_) {
      auto const& r = part.rect;
      bool const inside = r.sheet == whole.sheet && r.top >= whole.top && r.bottom <= whole.bottom &&
                          r.left >= whole.left && r.right <= whole.right;
      int const from = along == Axis::far_near ? r.left - whole.left : r.top - whole.top;
      if (inside && from < line && line < from + r.across(along)) return false;
    }
    return true;
  }
  constexpr ShortText<8> name_of(GridRect const& rect) {
    if (auto const part = part_that_is(rect)) return names_[*part];
    ShortText<8> name{"x"};
    append_figures(name, ++parted_);
    return name;
  }
  constexpr void cut_lines(GridRect const& whole, ShortText<8> const& name) {
    if (part_that_is(whole)) return;
    for (auto along : {Axis::left_right, Axis::far_near})
      for (int line = 1; line < whole.across(along); ++line) {
        if (!can_cut(whole, along, line)) continue;
        auto const one = whole.before(along, line), other = whole.beyond(along, line);
        auto const first = name_of(one), second = name_of(other);
        put("cut ");
        put(name.view());
        put(along == Axis::far_near ? " column " : " row ");
        put(line + (along == Axis::far_near ? whole.left : whole.top));
        put(" "), put(first.view()), put(" "), put(second.view()), put("\n");
        cut_lines(one, first);
        return cut_lines(other, second);
      }
  }
  constexpr void fold_lines(std::size_t part, PieceFolds const& folds) {
    auto const& rect = parts_[part].rect;
    for (auto const& crease : folds.creases) {
      bool const by_column = crease.along == Axis::far_near;
      put("fold "), put(names_[part].view());
      put(by_column ? (crease.far_or_left_moves ? " left-over-right " : " right-over-left ")
                    : (crease.far_or_left_moves ? " far-over-near " : " near-over-far "));
      put(crease.line + (by_column ? rect.left : rect.top));
      put(crease.under ? " under\n" : "\n");
    }
  }
  constexpr void gathering_lines(std::vector<PieceFolds> const& folds) {
    int gathering = 0, page = 0;
    bool in_pair = false;
    for (auto const& nested : nesting_) {
      auto const& part = parts_[nested.part];
      if (nested.begins) {
        if (page != 0) put(" page "), put(page), put("\n");
        put("gathering ");
        auto const letter =
            std::string_view{"ABCDEFGHIKLMNOPQRSTVXYZ"}.substr(static_cast<std::size_t>(gathering % 23), 1);
        for (int times = 0; times <= gathering / 23; ++times) put(letter);
        ++gathering;
        page = first_page(part);
      }
      put(in_pair ? "+" : " "), put(names_[nested.part].view());
      bool const heads_near = (part.piece.top_head == Head::near_edge) != folds[nested.part].heads_turned;
      if (heads_near) put(":near");
      auto const& corner = grids_[part.rect.sheet].at(part.rect.top, part.rect.left);
      if (part.piece.leaves == 1 && !corner.recto_down) put(":inner");
      in_pair = nested.opens_pair;
    }
    put(" page "), put(page), put("\n");
  }
  [[nodiscard]] constexpr int first_page(Part const& part) const {
    auto const& grid = grids_[part.rect.sheet];
    for (int r = part.rect.top; r < part.rect.bottom; ++r)
      for (int c = part.rect.left; c < part.rect.right; ++c)
        if (grid.at(r, c).key == part.piece.first) return grid.at(r, c).recto;
    return 0;
  }

public:
  constexpr SchemeDraft(std::vector<SheetGrid> const& grids, std::vector<Part> const& parts,
                        std::vector<Nested> const& nesting)
      : grids_{grids}, parts_{parts}, nesting_{nesting} {
    name_parts();
  }
  /// Writes and reads the scheme. `folds` has an element for each part, `long_sides` one for each sheet.
  constexpr Expected<Scheme> scheme(std::vector<PieceFolds> const& folds, Axis const* long_sides) {
    put("scheme found ");
    bool alike = true;
    for (auto const& grid : grids_) alike = alike && grid.cells.size() == grids_[0].cells.size();
    if (alike)
      put(static_cast<int>(grids_[0].cells.size())), put("°\n");
    else
      put("not determined\n");
    sheet_lines(long_sides);
    for (std::size_t s = 0; s < grids_.size(); ++s) {
      auto const byte = [](auto n) { return static_cast<std::uint8_t>(n); };
      cut_lines({byte(s), 0, byte(grids_[s].rows), 0, byte(grids_[s].columns)}, sheet_name(static_cast<int>(s)));
    }
    for (std::size_t part = 0; part < parts_.size(); ++part) fold_lines(part, folds[part]);
    gathering_lines(folds);
    return read_scheme({text_.data(), text_.size()});
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
