// SPDX-License-Identifier: MIT
/// The sources of the named sheets in full, and remarks on single rows. Code that explains a result includes this
/// header; look-ups do not need it.
#pragma once

#include <bifolium/paper/sheet_sizes.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

struct SheetSourceTitle {
  SheetSource source;
  char const* title;
};
inline constexpr SheetSourceTitle sheet_source_titles[]{
    {SheetSource::bologna_stone,
     "Stone of Bologna (statute of 1389), Museo Civico Medievale; figures by way of griffenmillhandmadepaper.com"},
    {SheetSource::diet_library, "National Diet Library of Japan, Incunabula, chapter 3, on the stone of Bologna"},
    {SheetSource::memory_bologna, "from memory: the stone of Bologna as usually quoted after Briquet"},
    {SheetSource::needham_1988,
     "P. Needham, The study of paper from an archival point of view, IPH Yearbook 7 (1988), by way of "
     "griffenmillhandmadepaper.com"},
    {SheetSource::briquet,
     "C.-M. Briquet, introduction to Les filigranes, in the Italian translation at labo.net/briquet"},
    {SheetSource::cambridge_stocks,
     "Cambridge University Library, Paper Stocks in Western Medieval Manuscripts (Da Rold and Rivers), MSS Add. "
     "8939, 8940"},
    {SheetSource::german_overview, "German Wikipedia, Papierformat; Italy, Switzerland and Germany"},
    {SheetSource::encyclopedie_1765,
     "Encyclopédie, vol. 11 (1765), Papeterie: tariff of the arrêt of 18 September 1741"},
    {SheetSource::arret_1741, "from memory: arrêt of 18 September 1741, as in Lalande (1761) and the Encyclopédie"},
    {SheetSource::cim_1906, "A. Cim, Une bibliothèque (1902) and Le livre, vol. 3 (1906), pp. 51-65"},
    {SheetSource::french_trade_names, "biblioweb.hypotheses.org, papier (names as standardised by AFNOR)"},
    {SheetSource::french_trade_list, "leblogantiquites.com (July 2006), Formats de papiers"},
    {SheetSource::tomlinson_1854, "C. Tomlinson, Cyclopaedia of Useful Arts (1854), by way of sizes.com"},
    {SheetSource::cockerell_1901, "D. Cockerell, Bookbinding and the Care of Books (1901), p. 283"},
    {SheetSource::british_amalgamated, "gwydir.demon.co.uk, Old units: printing (a list put together from several)"},
    {SheetSource::british_printing, "rhollick.wordpress.com, Demy octavo (2010)"},
    {SheetSource::dawe_1914, "E. A. Dawe, Paper and Its Uses (1914), Browns and Wrappings, by way of Wikisource"},
    {SheetSource::austen_report, "Jane Austen's Fiction Manuscripts, conservation report on BL Add. MS 65381"},
    {SheetSource::britannia_sheets, "vintagepaper.co, Britannia 1794: two whole sheets measured"},
    {SheetSource::memory_gaskell,
     "from memory: orders of magnitude as in P. Gaskell, A New Introduction (1972), pp. 67-75"},
    {SheetSource::memory_british,
     "from memory: British paper for printing, 19th century; figures as D. Cockerell lists them in 1901"},
    {SheetSource::kanzlei, "German Wikipedia, Kanzleiformat, after Kahnt and Knorr, Alte Maße (1986)"},
    {SheetSource::meyers_1896,
     "Meyers Konversations-Lexikon, vol. 13 (1896), p. 487, by way of German Wikipedia, Duodezformat"},
    {SheetSource::memory_german,
     "from memory: German sheets; of the standard sizes of 1883 only the first was verified"},
    {SheetSource::memory_dutch, "from memory: Dutch sheets; no table was found"},
    {SheetSource::polish_lexicon, "Leksykon oprawoznawczy, Format papieru"},
    {SheetSource::scribner_1849,
     "J. M. Scribner, Engineers' and Mechanics' Companion, 9th ed. (1849), p. 12, by way of sizes.com"},
    {SheetSource::scientific_1854, "Scientific American, March 1854, by way of sizes.com"},
    {SheetSource::student_1854, "The Student (New York), February 1854, pp. 122-123, by way of merrycoz.org"},
    {SheetSource::hill_1880s, "Hill's Manual of Social and Business Forms (about 1880), Books and book making"},
    {SheetSource::etherington_1982,
     "M. Roberts and D. Etherington, Bookbinding and the Conservation of Books (1982), s.v. book sizes"},
};

} // namespace detail

/// Returns the full title of a source. Most sources were read in excerpts or at second hand; their titles say so.
[[nodiscard]] constexpr std::string_view title(SheetSource source) noexcept {
  for (auto const& row : detail::sheet_source_titles)
    if (row.source == source) return row.title;
  return "an unknown source";
}

/// A remark on one row, or on every row of a source if `name` is empty.
struct SheetRemark {
  SheetSource source{}; ///< the source
  char const* name{""}; ///< the name of the size; empty for all sizes of the source
  char const* text{""}; ///< the remark
};

/// The remarks on rows of the table.
inline constexpr SheetRemark sheet_remarks[]{
    {SheetSource::diet_library, "", "another rounding of the same stone"},
    {SheetSource::memory_bologna, "", "two of the four agree with the Diet Library"},
    {SheetSource::encyclopedie_1765, "", "the ream at 126 to 131 livres and above"},
    {SheetSource::arret_1741, "", "verify before use as a check value"},
    {SheetSource::french_trade_names, "double carré", "450 x 560 doubled is 560 x 900: 590 may be a misprint"},
    {SheetSource::tomlinson_1854, "antiquarian", "a ream of 480 weighs 236 lb"},
    {SheetSource::tomlinson_1854, "double elephant", "a ream of 480 weighs 140 lb"},
    {SheetSource::tomlinson_1854, "atlas", "a ream of 480 weighs 100 lb"},
    {SheetSource::tomlinson_1854, "columbier", "a ream of 480 weighs 100 lb"},
    {SheetSource::tomlinson_1854, "elephant", "a ream of 480 weighs 72 lb"},
    {SheetSource::tomlinson_1854, "imperial", "a ream of 480 weighs 72 lb"},
    {SheetSource::tomlinson_1854, "super royal", "a ream of 480 weighs 52 lb"},
    {SheetSource::tomlinson_1854, "royal", "a ream of 480 weighs 44 lb"},
    {SheetSource::tomlinson_1854, "medium", "a ream of 480 weighs 34 lb"},
    {SheetSource::tomlinson_1854, "demy", "a ream of 480 weighs 24 lb"},
    {SheetSource::tomlinson_1854, "copy", "a ream of 480 weighs 17 lb"},
    {SheetSource::tomlinson_1854, "sheet-and-half foolscap", "a ream of 480 weighs 22 lb"},
    {SheetSource::tomlinson_1854, "sheet-and-third foolscap", "a ream of 480 weighs 18 lb"},
    {SheetSource::tomlinson_1854, "foolscap", "a ream of 480 weighs 15 lb"},
    {SheetSource::tomlinson_1854, "pott", "a ream of 480 weighs 10 lb"},
    {SheetSource::british_amalgamated, "pinched post", "these figures are of the double sheet"},
    {SheetSource::dawe_1914, "lumberhand", "the source prints 363.75 sq in, the sides give 385"},
    {SheetSource::dawe_1914, "double bag cap", "the source prints 944 sq in, the sides give 936"},
    {SheetSource::britannia_sheets, "", "folded and trimmed"},
    {SheetSource::memory_gaskell, "", "not a check value"},
    {SheetSource::memory_british, "", "not a check value"},
    {SheetSource::memory_german, "", "varied from region to region; not a check value"},
    {SheetSource::memory_dutch, "", "not a check value"},
    {SheetSource::polish_lexicon, "", "turned into cm at 24 mm to the inch, about a twentieth too small"},
};

/// Returns the remark on a row, or no value if there is none.
[[nodiscard]] constexpr std::optional<std::string_view> remark(SheetSize const& size) {
  for (auto const& [source, name, text] : sheet_remarks)
    if (source == size.source && (*name == '\0' || is_called(size, name))) return text;
  return std::nullopt;
}

} // namespace v0
} // namespace bifolium
