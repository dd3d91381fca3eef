// SPDX-License-Identifier: MIT
/// Reads the texts of a description one by one. Fields hold more than their own fact: a size after the pages, plates
/// among them, a format beside the height. Each such fact is kept apart until all fields are read.
#pragma once

#include <bifolium/book/detail/reading/date_denials.hpp>
#include <bifolium/book/detail/reading/number_field_reader.hpp>
#include <bifolium/book/evidence_of.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/core/title_page_words.hpp>
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record/read_format_statement.hpp>
#include <bifolium/record/read_physical_description.hpp>
#include <bifolium/record/read_size.hpp>

#include <algorithm>

namespace bifolium {
inline namespace v0 {
namespace detail {

class DescriptionReader : NumberFieldReader {
  // -- size ----------------------------------------------------------------------------------------------------------

  /// A height with what is stated beside it: "19 x 12 cm (8vo)", "12 cm bound to 20 cm". A number without a unit is in
  /// millimetres.
  void size(SizeStatement const& read, Field in, Part const& text) {
    auto height = stated(tallest_of(read, in, text), text);
    if (in != Field::height) height.in = in;
    auto& beside = beside_of(in);
    if (book_.height || !(in == Field::height || texts_.height.empty()))
      beside.height = height;
    else
      book_.height = height;
    if (read.width) beside.width = stated(SizeRange{*read.width}, text);
    if (read.binding) beside.binding = stated(SizeRange{*read.binding}, text);
    formats_beside(read.formats, in, text);
    if (auto const gathered = read.gathered ? GatheringsBeside::of(*read.gathered) : std::nullopt)
      beside.gatherings = stated(GatheringsBeside{*gathered}, text);
  }
  SizeBeside& beside_of(Field in) { return in == Field::height ? beside_.in_height : beside_.in_pages; }
  /// Of several copies or volumes the tallest, as the rules measure a book of which there are several copies (DCRM(B) 5D).
  SizeRange tallest_of(SizeStatement const& read, Field in, Part const& text) {
    if (!read.tallest) return *read.height;
    doubt(in, {error_at(Problem::several_heights, text.at, trimmed(text.text, " ;"))});
    return *read.tallest;
  }
  /// Formats beside a size; of several none is taken.
  void formats_beside(std::vector<Format> const& formats, Field in, Part const& text) {
    if (formats.size() == 1) beside_of(in).format = stated(Format{formats[0]}, text);
    if (formats.size() > 1) several_formats(in, formats, text);
  }
  void several_formats(Field field, std::vector<Format> const& formats, Part const& text) {
    doubt(field, {error_at(Problem::several_formats, text.at, trimmed(text.text, " "))});
    if (book_.formats.empty()) book_.formats = formats;
  }
  void height() {
    if (texts_.height.empty()) return;
    auto const read = read_size(texts_.height, SheetUnit::mm);
    if (!read) return unread(Field::height, read.error(), texts_.height);
    for (auto const span : read->unread) rest(Field::height, texts_.height, span);
    size(*read, Field::height, Part{texts_.height});
  }
  Expected<SizeRange> side(Field field, std::string_view text) {
    auto const read = read_size(text, SheetUnit::mm);
    if (!read) return read.error();
    for (auto const span : read->unread) rest(field, text, span);
    return tallest_of(*read, field, Part{text});
  }

  // -- pages ---------------------------------------------------------------------------------------------------------

  /// Plates that the extent lists are the plates, unless they are stated by themselves.
  void pagination() {
    auto const text = texts_.pagination;
    if (text.empty()) return;
    auto const extent = read_stated_pages(text, limits_);
    bool const sure = extent && extent->warnings().empty(); // every number has its unit
    if (!sure && !read_extent(text, limits_) && size_without_extent()) return;
    if (!extent) return unread(Field::pagination, extent.error(), text);
    bool const volumes_alone = extent->pagination.runs.empty();
    for (auto const span : extent->unread)
      if (!after_extent(span, volumes_alone)) return;
    doubt(Field::pagination, extent->warnings());
    book_.pagination = stated(Pagination{extent->pagination}, text);
    if (auto const plates = extent->leaves_of_plates())
      beside_.plates_in_pages =
          stated(std::int64_t{*plates}, part(text, {extent->plates.front().at.from, extent->plates.back().at.to}));
  }
  /// A size after the pages, or formats alone.
  bool size_after_extent(TextSpan span) {
    auto const text = texts_.pagination, words = span.of(text);
    if (auto const read = read_size(words)) {
      for (auto const part : read->unread)
        if (!part.of(words).starts_with("+"))
          rest(Field::pagination, text, {span.from + part.from, span.from + part.to});
      size(*read, Field::pagination, part(text, span));
      return true;
    }
    auto const formats = SizeReader{words, {}}.read_formats();
    formats_beside(formats, Field::pagination, part(text, span));
    return !formats.empty();
  }
  /// A text that begins with the format or the size: `Quart ; 22 cm`, `8°, 17 cm`. False where it states pages as well.
  bool size_without_extent() {
    auto const read = read_physical_description(texts_.pagination, limits_);
    if (!read || read->extent) return false;
    if (auto const semicolon = texts_.pagination.find(';');
        semicolon != texts_.pagination.npos && !(read_size(texts_.pagination) && read->size->height))
      for (auto const& part : {TextSpan{0, semicolon}, TextSpan{semicolon + 1, texts_.pagination.size()}})
        static_cast<void>(size_after_extent(part));
    else
      static_cast<void>(size_after_extent({0, texts_.pagination.size()}));
    return true;
  }
  /// What follows the pages: illustrations after ` : `, the size after ` ; `, other words. False where the words name
  /// more pages, so that the number of them is not known. After a number of volumes alone they may do so after a colon.
  bool after_extent(TextSpan span, bool volumes_alone) {
    auto const text = texts_.pagination;
    if (volumes_alone && names_pages(span.of(text))) return pages_unread(span);
    // the semicolon before a size is left with it, that before a format is taken for one between volumes
    auto const before = before_blanks(text, span.from);
    if (before > 0 && text[before - 1] == ';') span.from = before - 1;
    auto words = span.of(text);
    if (words.starts_with(":")) {
      auto end = words.find(';');
      while (end != words.npos && blank_before(words, end) == 0) end = words.find(';', end + 1);
      if (end == words.npos) return true;
      span.from += end;
      words = span.of(text);
    }
    if (words.starts_with(";") && size_after_extent({span.from + 1, span.to})) return true;
    if (format_at_start(words) && size_after_extent(span)) return true; // 2 vol. in-8
    if (names_pages(words)) return pages_unread(span);
    rest(Field::pagination, text, span);
    return true;
  }
  bool pages_unread(TextSpan span) {
    auto const text = texts_.pagination;
    unread(Field::pagination, TextCursor{text}.error(Problem::trailing_text, span), text);
    return false;
  }

  // -- format, date and place ----------------------------------------------------------------------------------------

  /// Of a book in two formats none is taken: what is said of leaves then holds for a part of it.
  void format() {
    if (texts_.format.empty()) return;
    auto const read = read_format_statement(texts_.format);
    if (!read) return unread(Field::format, read.error(), texts_.format);
    for (auto const span : read->unread) rest(Field::format, texts_.format, span);
    if (read->formats.size() == 1) book_.format = stated(Format{read->formats[0]}, texts_.format);
    if (read->formats.size() > 1) several_formats(Field::format, read->formats, Part{texts_.format});
    if (read->probable) doubt(Field::format, {TextCursor{texts_.format}.error_from(0, Problem::format_doubted)});
    if (auto const gathered = read->gathered ? GatheringsBeside::of(*read->gathered) : std::nullopt)
      beside_.gatherings_in_format = stated(GatheringsBeside{*gathered}, texts_.format);
  }
  /// Words beside a date or a place, except those of title pages, which say nothing of it: printed in the year of our Lord.
  void rest_but_printing(Field field, std::string_view text, std::vector<TextSpan> const& spans) {
    for (auto const span : spans)
      if (!all_words(span.of(text), is_title_page_word)) rest(field, text, span);
  }
  /// Returns true if `is(word)` is true for every word of a text. Words are parted by blanks and ASCII punctuation.
  template <class Is> static bool all_words(std::string_view text, Is is) {
    TextCursor cursor{text};
    auto const parts = [](char32_t c) {
      return is_space(c) ||
             (c < 0x80 && std::string_view{".,;:()[]/!"}.find(static_cast<char>(c)) != std::string_view::npos);
    };
    while (!cursor.at_end()) {
      if (auto const word = cursor.take_until(parts); !word.empty() && !is(word)) return false;
      cursor.take_while(parts);
    }
    return true;
  }
  /// A date that the words beside it deny or leave open, not 1725, 1725 or thereabouts, is none.
  void year(Field field, std::string_view text, std::optional<Stated<YearRange>>& to) {
    if (text.empty()) return;
    auto const date = read_date(text);
    if (!date) return unread(field, date.error(), text);
    if (field == Field::coded_year && date->years && date->years->to < 1)
      return unread(field, TextCursor{text}.error_from(0, Problem::not_years), text);
    for (auto const span : date->unread)
      if (!all_words(span.of(text), [](std::string_view word) { return !denies_date(word); }))
        return unread(field, TextCursor{text}.error(Problem::trailing_text, span), text);
    rest_but_printing(field, text, date->unread);
    doubt(field, date->warnings());
    if (date->years) to = stated(YearRange{*date->years}, text);
  }
  void place() {
    if (texts_.place.empty()) return;
    auto const place = read_place(texts_.place);
    if (!place) return unread(Field::place, place.error(), texts_.place);
    rest_but_printing(Field::place, texts_.place, place->unread);
    doubt(Field::place, place->warnings());
    if (place->not_known) return;
    for (auto const& one : place->warnings())
      if (one.problem == Problem::place_qualified) return;
    book_.place = stated(place->region(), texts_.place);
    // of a book with a false place either may be coded
    for (auto const& named : place->named)
      if (named.called_false || named.of_false_imprints || named.corrected) return;
    for (auto const& named : place->named)
      for (auto const& one : named.places) add_place(one);
  }
  void add_place(Place const& place) {
    for (auto const& other : book_.places)
      if (other == place) return;
    book_.places.push_back(place);
  }
  /// Of codes that `country_of_code` does not know, nothing is compared. There are many, and some have changed.
  void coded_place() {
    if (auto const row = country_of_code(texts_.coded_place))
      book_.coded_place = stated(CountryCode{*row}, texts_.coded_place);
  }

  /// What leaves of a gathering show. It says nothing unless the number of leaves in the gathering is known, and has them.
  Expected<EvidenceOfLeaves> leaves_of_gathering(std::string_view text) {
    auto const leaves = read_leaves_seen(text);
    if (!leaves) return leaves.error();
    LeafEvidence seen;
    seen.gathering_leaves = evidence_of(book_).gathering_leaves, seen.leaves = *leaves;
    if (auto const observation = observe(seen); !observation) return observation.error();
    return leaves;
  }

public:
  DescriptionReader(FieldTexts const& texts, Conventions const& conventions, Limits const& limits)
      : NumberFieldReader{texts, conventions, limits} {}
  Description description() {
    formula();
    format();
    height();
    pagination();
    beside_.settle_format(texts_, book_);
    leaves();
    plates();
    read(Field::signing, texts_.signing, book_.signing,
         [&](std::string_view text) { return read_signing(text, Letters{}, limits_); });
    read(Field::gatherings, texts_.gatherings, book_.gatherings,
         [&](std::string_view text) { return gathering(text); });
    read(Field::width, texts_.width, book_.width, [&](std::string_view text) { return side(Field::width, text); });
    read(Field::binding, texts_.binding, book_.binding,
         [&](std::string_view text) { return side(Field::binding, text); });
    read(Field::chain_lines, texts_.chain_lines, book_.chain_lines, read_word<ChainLines>);
    read(Field::watermark, texts_.watermark, book_.watermark, read_word<MarkPlace>);
    read(Field::countermark, texts_.countermark, book_.countermark, read_word<MarkPlace>);
    read(Field::head_edge, texts_.head_edge, book_.head_edge, read_word<EdgeSeen>);
    read(Field::tail_edge, texts_.tail_edge, book_.tail_edge, read_word<EdgeSeen>);
    read(Field::fore_edge, texts_.fore_edge, book_.fore_edge, read_word<EdgeSeen>);
    read(Field::point_hole, texts_.point_hole, book_.point_hole, read_word<HolePlace>);
    read(Field::material, texts_.material, book_.material, read_word<Material>);
    beside_.settle(texts_, book_);
    read(Field::leaves_seen, texts_.leaves_seen, book_.leaves_seen,
         [&](std::string_view text) { return leaves_of_gathering(text); });
    year(Field::year, texts_.year, book_.year);
    year(Field::coded_year, texts_.coded_year, book_.coded_year);
    place();
    coded_place();
    drop_repeated_rests();
    return static_cast<Description&&>(book_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
