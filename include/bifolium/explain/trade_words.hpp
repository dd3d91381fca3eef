// SPDX-License-Identifier: MIT
/// The names of schemes and of pieces of paper for readers. A scheme has an id, and its pieces have names, so that a
/// program can refer to them; a picture or a sentence says "Common octavo (8°)" and "the off-cut" instead. The words
/// for a piece follow from its use: a copy, a gathering, the main part of a gathering, or the part set inside.
#pragma once

#include <bifolium/core/number_of.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/mirror.hpp>

#include <cstdint>
#include <optional>
#include <string>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline std::string capitalised(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}
inline std::string ordinal(int n) {
  static constexpr char const* words[]{"first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"};
  if (n >= 1 && n <= 8) return words[n - 1];
  bool const teen = n % 100 >= 11 && n % 100 <= 13;
  return std::to_string(n) + (teen ? "th" : n % 10 == 1 ? "st" : n % 10 == 2 ? "nd" : n % 10 == 3 ? "rd" : "th");
}

/// The place of a piece in the gatherings of a scheme: the gathering line, and the order of the piece from the outside,
/// from 0.
struct SetIn {
  int gathering{}, order{};
};
/// Returns the place of a piece, or no value for a piece that is cut up.
inline std::optional<SetIn> set_in(Scheme const& scheme, int piece) {
  for (int g = 0; g < scheme.gatherings(); ++g)
    for (int k = 0; k < scheme.gathering(g).count; ++k)
      if (scheme.placed(scheme.gathering(g).first + k).piece == piece) return SetIn{g, k};
  return std::nullopt;
}

/// The cells of the flat sheet that make a piece, and the gathering that is made of exactly these cells, if there is
/// one.
struct PieceExtent {
  int sheet{}, first_row{}, end_row{}, first_column{}, end_column{}, cells{};
  std::optional<int> gathering{};
};
inline PieceExtent extent_of(Scheme const& scheme, Fold<> const& fold, int piece) {
  auto const within = [&](int inner) { // `inner` is the piece, or is cut from it
    for (int up = inner;;) {
      if (up == piece) return true;
      std::optional<int> from;
      for (auto const& step : scheme)
        if (step.kind == Step::Kind::cut && (step.far_or_left_piece == up || step.near_or_right_piece == up))
          from = step.piece;
      if (!from) return false;
      up = *from;
    }
  };
  PieceExtent extent{0, Scheme::most_cells, 0, Scheme::most_cells, 0, 0, {}};
  for (auto const at : fold) {
    auto const cell = fold.cell(at);
    if (!within(cell.piece)) continue;
    bool const alone = extent.cells == 0 || extent.gathering == at.gathering;
    extent.gathering = alone ? std::optional<int>{at.gathering} : std::nullopt;
    extent.sheet = cell.sheet, ++extent.cells;
    extent.first_row = cell.row < extent.first_row ? cell.row : extent.first_row;
    extent.end_row = cell.row + 1 > extent.end_row ? cell.row + 1 : extent.end_row;
    extent.first_column = cell.column < extent.first_column ? cell.column : extent.first_column;
    extent.end_column = cell.column + 1 > extent.end_column ? cell.column + 1 : extent.end_column;
  }
  if (extent.gathering && fold.gathering(*extent.gathering).leaves() != extent.cells) extent.gathering.reset();
  return extent;
}

/// Returns the letter that signs a gathering: its name in the scheme, up to the first `_`.
inline std::string signature_of(Scheme const& scheme, int g) {
  auto const name = scheme.gathering(g).name.view();
  return std::string{name.substr(0, name.find('_'))};
}

/// Returns the number, from 1, of a gathering among those that have the same pages, or no value if there is no other.
inline std::optional<int> copy_number(Fold<> const& fold, int g) {
  int alike = 0, number = 0;
  for (int h = 0; h < fold.gatherings(); ++h)
    if (fold.first_page(h) == fold.first_page(g) && fold.gathering(h) == fold.gathering(g)) {
      ++alike;
      number += h <= g ? 1 : 0;
    }
  return alike < 2 ? std::nullopt : std::optional{number};
}

/// Returns the name of a gathering if there are several: "gathering B", "the second copy". It is empty for the only
/// gathering.
inline std::string gathering_name(Scheme const& scheme, Fold<> const& fold, int g) {
  int different = 0;
  for (int h = 0; h < fold.gatherings(); ++h) different += fold.is_copy(h) ? 0 : 1;
  std::string name;
  if (different > 1) name.append("gathering ").append(signature_of(scheme, g));
  auto const copy = copy_number(fold, g);
  if (!copy) return fold.is_copy(g) ? "half-sheet of another copy" : name;
  return name.append(name.empty() ? "" : ", ").append(ordinal(*copy)).append(" copy");
}

inline std::string lines_of_cells(char const* one, char const* many, int first, int end) {
  return end - first == 1 ? std::string{one}.append(" ").append(std::to_string(first + 1))
                          : std::string{many}
                                .append(" ")
                                .append(std::to_string(first + 1))
                                .append(" to ")
                                .append(std::to_string(end));
}

} // namespace detail

/// Writes the name of a scheme as a heading: "Common octavo (8°)", "Half-sheet of twelves (12°), read from right to
/// left". A scheme that is not attested is named by its format. The function allocates memory.
inline std::string title_of(Scheme const& scheme) {
  std::string text;
  bool const rtl = scheme.reads() == Reads::right_to_left;
  if (auto const attested = Attested::find(scheme.id())) {
    auto const known = attested->scheme();
    if ((known.reads() == scheme.reads() ? known : mirrored(known)) == scheme)
      text = attested->what().substr(0, attested->what().find_first_of(":;."));
    constexpr std::size_t longest = 75; // a longer text is cut at its first comma
    if (text.size() > longest) text.resize(text.find(','));
  }
  if (text.empty()) text = scheme.format().name().view();
  return detail::capitalised(text)
      .append(" (")
      .append(scheme.format().symbol().view())
      .append(rtl ? "), read from right to left" : ")");
}

/// Describes a piece in a label: "off-cut, inset", "gathering B", "second copy, main part". A piece that is cut up
/// further is named by its rows and columns. The only piece of a sheet is "sheet", or "sheet 2" if there are several
/// sheets. The function allocates memory. Precondition: `fold` is the fold of the scheme, and the scheme has the piece.
inline std::string piece_label(Scheme const& scheme, Fold<> const& fold, int piece) {
  if (piece < scheme.sheets())
    return scheme.sheets() == 1 ? "sheet" : std::string{"sheet "}.append(std::to_string(piece + 1));
  auto const place = detail::set_in(scheme, piece);
  auto const extent = detail::extent_of(scheme, fold, piece);
  auto const whose = place ? std::optional{place->gathering} : extent.gathering;
  auto text = whose ? detail::gathering_name(scheme, fold, *whose) : std::string{};
  auto const add = [&](std::string const& words) { text.append(text.empty() ? "" : ", ").append(words); };
  if (!place) {
    if (!text.empty()) return text;
    auto const& lay = scheme.sheet(extent.sheet);
    if (extent.end_row - extent.first_row < lay.rows)
      add(detail::lines_of_cells("row", "rows", extent.first_row, extent.end_row));
    if (extent.end_column - extent.first_column < lay.columns)
      add(detail::lines_of_cells("column", "columns", extent.first_column, extent.end_column));
    return text;
  }
  auto const& line = scheme.gathering(place->gathering);
  if (line.count == 1) return text.empty() ? "main part" : text;
  auto const outermost = detail::extent_of(scheme, fold, scheme.placed(line.first).piece);
  bool const one_leaf = extent.cells == 1;
  if (line.count > 2) {
    add(one_leaf                         ? "single leaf"
        : place->order == 0              ? "outermost part"
        : place->order + 1 == line.count ? "innermost part"
                                         : detail::ordinal(place->order + 1) + " part from outside");
  } else if (outermost.sheet == extent.sheet && place->order == 1) {
    add(extent.cells < outermost.cells ? "off-cut, inset" : "inner part, inset");
  } else {
    add(place->order == 0
            ? (outermost.sheet == detail::extent_of(scheme, fold, scheme.placed(line.first + 1).piece).sheet
                   ? "main part"
                   : "outer part")
            : "inner part, inset");
  }
  return text;
}

/// Describes a piece in a sentence: "the off-cut of gathering B", "the second copy", "rows 1 to 4". The function
/// allocates memory. Precondition: `fold` is the fold of the scheme, and the scheme has the piece.
inline std::string piece_words(Scheme const& scheme, Fold<> const& fold, int piece) {
  auto label = piece_label(scheme, fold, piece);
  if (label == "sheet") return "the sheet";
  if (piece < scheme.sheets()) return label;
  for (std::string_view tail : {", inset"})
    if (label.size() > tail.size() && std::string_view{label}.substr(label.size() - tail.size()) == tail)
      label.resize(label.size() - tail.size());
  auto const place = detail::set_in(scheme, piece);
  auto const extent = detail::extent_of(scheme, fold, piece);
  auto const whose = place ? std::optional{place->gathering} : extent.gathering;
  auto owner = whose ? detail::gathering_name(scheme, fold, *whose) : std::string{};
  if (!place && owner.empty()) return label;
  auto const with_article = [](std::string const& words) {
    return words.substr(0, 9) == "gathering" ? words : "the " + words;
  };
  if (owner.empty() || owner == label) return with_article(label);
  return with_article(label.substr(owner.size() + 2)) + " of " + with_article(owner);
}

} // namespace v0
} // namespace bifolium
