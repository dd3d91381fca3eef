// SPDX-License-Identifier: MIT
/// What a leaf tells besides its format, in lines for a reader: the sheets it could have been cut from, how its size is
/// recorded, what its paper says of the date, and the height classes of libraries, which are no formats.
#pragma once

#include <bifolium/evidence.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/record.hpp>

#include <optional>
#include <ostream>
#include <string>
#include <string_view>

namespace support {

inline std::string whole(bifolium::millimetres length) {
  auto const rounded = static_cast<int>(length.count() + (length.count() < 0 ? -0.5 : 0.5));
  return std::to_string(rounded);
}
/// The sheets of the place and time; without a year those of the hand press.
inline bifolium::SheetSizes sheets_of(bifolium::LeafEvidence const& seen) {
  auto const when = seen.year.value_or(bifolium::YearRange{1450, 1850});
  return bifolium::usable_for({when.from, when.to}, seen.place);
}
/// The named sheets that a leaf of that format could have been cut from; none without both measurements.
inline std::vector<bifolium::NamedOrigin> named_sheets(bifolium::LeafEvidence const& seen, bifolium::Format format) {
  using namespace bifolium;
  std::vector<NamedOrigin> all;
  if (!seen.height || !seen.width) return all;
  bool const by_hand = seen.material != Material::wove && (!seen.year || seen.year->from <= 1830);
  auto const chains = by_hand ? seen.chain_lines : ChainLines::unknown;
  for (auto const& shape : leaf_shapes(*seen.width > *seen.height))
    if (shape.format == format)
      for (auto const& one :
           named_origins(shape, {*seen.height, *seen.width}, sheets_of(seen), loss_limits(seen.state), chains))
        all.push_back(one);
  return all;
}
inline std::string told(bifolium::NamedOrigin const& one) {
  auto const sheet = one.sheet->sheet();
  std::string text{one.sheet->name};
  text.append(", ").append(whole(sheet.short_side())).append(" x ").append(whole(sheet.long_side())).append(" mm");
  if (one.origin != bifolium::PaperOrigin::whole_sheet) text.append(", ").append(to_words(one.origin));
  if (one.origin == bifolium::PaperOrigin::cut_half) // the figure of incunable catalogues and of Bowers
    text.append(" (").append(one.format.symbol()).append(" by the whole sheet)");
  auto const side = [](bifolium::millimetres loss, char const* edge) {
    bool const short_of = loss < bifolium::millimetres{-0.5};
    return whole(short_of ? loss * -1 : loss) + (short_of ? " mm too small at " : " mm off ") + edge;
  };
  return text.append(": ")
      .append(side(one.loss.height, "head and tail"))
      .append(", ")
      .append(side(one.loss.width, "the fore-edge"));
}
/// In one cell: the sheets, parted by semicolons.
inline std::string sheets_in_a_cell(bifolium::LeafEvidence const& seen, bifolium::Format format) {
  std::string cell;
  for (auto const& one : named_sheets(seen, format)) cell.append(cell.empty() ? "" : "; ").append(told(one));
  return cell;
}
inline void tell_sheets(std::ostream& out, bifolium::LeafEvidence const& seen, bifolium::Format format) {
  using namespace bifolium;
  if (!seen.height || !seen.width) return;
  out << "As " << format.name().view();
  char const* before = " it needs a sheet of at least ";
  for (auto const& shape : leaf_shapes(*seen.width > *seen.height)) {
    if (shape.format != format) continue;
    auto const least = sheet_implied(shape.lay, LeafSize<millimetres>{*seen.height, *seen.width}).least;
    out << before << whole(least.short_side()) << " x " << whole(least.long_side()) << " mm";
    before = " or, folded otherwise, ";
  }
  auto const named = named_sheets(seen, format);
  out << (named.empty() ? "; no sheet known of the place and time fits.\n" : ". It could have been cut from:\n");
  for (auto const& one : named) out << "  " << told(one) << '\n';
}

/// The size as a catalogue records it, with the format where that is at least probable; empty without a height. `lowest`: of
/// several copies or volumes.
inline std::string recorded(bifolium::LeafEvidence const& seen, std::optional<bifolium::millimetres> binding,
                            std::optional<bifolium::Format> format,
                            std::optional<bifolium::millimetres> lowest = std::nullopt) {
  using namespace bifolium;
  if (!seen.height) return "";
  Measured measured{.height = *seen.height, .width = seen.width, .binding = binding};
  if (lowest && *lowest < *seen.height) measured.height = *lowest, measured.tallest = *seen.height;
  auto size = recorded_size(measured);
  if (!size) return "";
  // under 10 cm the rules ask for millimetres, which a height in whole centimetres does not tell
  if (auto& stated = size->size; stated.in_millimetres && seen.rounded_up_to == 10_mm) {
    stated.height = (stated.height + 9) / 10;
    if (stated.tallest) stated.tallest = (*stated.tallest + 9) / 10;
    if (stated.width) stated.width = (*stated.width + 9) / 10;
    stated.in_millimetres = false;
  }
  return format ? to_words(*size, *format) : to_words(*size);
}

/// What paper and make-up say of the date, where it bears on the book: bounds that the stated years contradict, and without
/// a year all bounds.
inline void tell_period(std::ostream& out, bifolium::PeriodBounds const& bounds,
                        std::optional<bifolium::YearRange> stated) {
  using bifolium::BoundKind;
  char const* before = "Date by paper and make-up:\n";
  for (auto const& bound : bounds) {
    bool const against =
        stated && (bound.kind == BoundKind::usual_until ? stated->from > bound.year : stated->to < bound.year);
    if (stated && !against) continue;
    out << before << "  " << to_words(bound.kind) << ' ' << bound.year << ": " << bound.reason << " ("
        << (bound.trust == bifolium::Trust::from_memory ? "from memory" : bound.source) << ")"
        << (!against        ? ""
            : bound.binds() ? " - against the year stated"
                            : " - unusual for the year stated")
        << '\n';
    before = "";
  }
}

inline void tell_height_classes(std::ostream& out, bifolium::millimetres height) {
  using namespace bifolium;
  out << "Height classes of libraries and the trade, for a book " << whole(height)
      << " mm tall (they name its height, not its format):\n";
  for (int i = 0; i < height_scale_count; ++i) {
    auto const scale = static_cast<HeightScale>(i);
    auto const classes = height_classes(scale, height);
    if (classes.empty()) continue;
    out << "  " << to_words(scale) << ": ";
    for (std::size_t k = 0; k < classes.size(); ++k) out << (k > 0 ? " or " : "") << classes[k].symbol;
    out << '\n';
  }
}

} // namespace support
