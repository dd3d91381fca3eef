// SPDX-License-Identifier: MIT
/// The attested schemes, one row each: the text in the language of folding, how well the resulting grid of pages is
/// attested, a short description, and the source. No grid is typed in. The texts are plain pointers and are not read
/// before they are named, so a program that uses no scheme does not pay for the table.
///
/// If only the structure of a scheme is published, its grid is computed by folding and may never have been used in
/// exactly this form. The attestation says what was seen in a source and what was computed.
#pragma once

#include <cstddef>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// How much of a scheme is in a source.
enum class Attestation : std::uint8_t {
  /// the source has the grid of pages, and folding reproduces it cell for cell (the heads come from folding)
  published_grid,
  published_part,      ///< the source has a part of the grid
  published_evidence,  ///< the source has measured leaves or edges, and folding reproduces them
  published_rule,      ///< the source has a rule from which the grid follows
  published_structure, ///< the source has the cuts, insets and gatherings; folding gives the grid
  memory,              ///< from memory, confirmed by folding
  derived,             ///< no source has the grid: the scheme folds, but may never have been used
};

/// Returns a description of the attestation.
constexpr char const* to_words(Attestation attestation) noexcept {
  switch (attestation) {
  case Attestation::published_grid:
    return "grid published";
  case Attestation::published_part:
    return "grid published in part";
  case Attestation::published_evidence:
    return "published evidence of leaves, grid folded from it";
  case Attestation::published_rule:
    return "rule published, grid folded from it";
  case Attestation::published_structure:
    return "structure published, grid folded from it";
  case Attestation::memory:
    return "from memory, confirmed by folding";
  case Attestation::derived:
    return "no source for the grid, derived by folding";
  }
  return "";
}

/// The rows of the table by name, in the order of the table.
enum class SchemeRow : std::uint8_t {
  broadside,
  folio,
  folio_in_fours,
  folio_in_sixes,
  folio_in_eights,
  folio_in_tens,
  quarto,
  quarto_in_eights,
  quarto_half_sheet,
  quarto_in_sixes,
  quarto_oblong,
  quarto_two_half_sheets,
  sexto,
  octavo,
  octavo_half_sheet,
  octavo_two_half_sheets,
  octavo_two_half_sheets_mixed,
  octavo_from_centre,
  octavo_oblong,
  octavo_half_sheet_and_single_leaves,
  octavo_half_sheets_inset,
  octavo_in_sixteens,
  duodecimo,
  duodecimo_upright_off_cut,
  duodecimo_in_eights_and_fours,
  duodecimo_in_eights,
  long_duodecimo,
  long_duodecimo_rolled,
  duodecimo_without_cutting,
  duodecimo_half_sheet,
  duodecimo_two_half_sheets,
  sextodecimo,
  sextodecimo_in_eights,
  sextodecimo_half_sheet,
  sextodecimo_half_sheet_abreast,
  octodecimo_rolled,
  octodecimo_rolled_to_and_fro,
  octodecimo_in_twelves_and_sixes,
  octodecimo_in_sixes,
  octodecimo_half_sheet_transposed,
  octodecimo_half_sheet,
  vicesimo_half_sheet,
  vicesimo_quarto_rolled,
  vicesimo_quarto_in_eights,
  vicesimo_quarto_in_eights_1671,
  vicesimo_quarto_in_sixteens_and_eights,
  vicesimo_quarto_in_twelves,
  vicesimo_quarto_half_sheet,
  long_vicesimo_quarto_half_sheet,
  vicesimo_quarto_three_oblongs,
  tricesimo_secundo_in_sixteens,
  tricesimo_secundo_in_eights,
  tricesimo_secundo_half_sheet,
  tricesimo_sexto_in_twelves,
  quadragesimo_octavo_in_twelves,
  quadragesimo_octavo_in_eights,
  sexagesimo_quarto_in_eights,
  septuagesimo_secundo_in_eights,
  nonagesimo_sexto_in_eights,
  centesimo_vicesimo_octavo_in_eights,
  machine_two_quires,
};

namespace detail {

struct AttestedRow {
  char const* text;
  Attestation attestation;
  char const* what;
  char const* source;
};

// clang-format off
inline constexpr AttestedRow attested_rows[]{
  {R"(scheme 1_broadside 1°
sheet S rows 1 columns 1 long-side far-near
gathering A S page 1
)",
   Attestation::derived,
   "a sheet not folded at all",
   "from memory"},
  {R"(scheme 2_folio 2°
sheet S rows 1 columns 2 long-side left-right
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_grid,
   "one sheet folded once",
   "Cowie, Printer's Pocket-Book and Manual, p. 31; Boulanger, La Typographie, ch. L'imposition; Brossard, Le Correcteur typographe II (1934), ch. VIII; Bosquet, Guide manuel de l'ouvrier relieur (1903), folding"},
  {R"(scheme 2_quired_4s 2°
sheet S1 rows 1 columns 2 long-side left-right
sheet S2 rows 1 columns 2 long-side left-right
fold S1 right-over-left 1
fold S2 right-over-left 1
gathering A S1 S2 page 1
)",
   Attestation::published_grid,
   "two folio sheets, one in the other",
   "Cowie, Printer's Pocket-Book and Manual, p. 31"},
  {R"(scheme 2_quired_6s 2°
sheet S1 rows 1 columns 2 long-side left-right
sheet S2 rows 1 columns 2 long-side left-right
sheet S3 rows 1 columns 2 long-side left-right
fold S1 right-over-left 1
fold S2 right-over-left 1
fold S3 right-over-left 1
gathering A S1 S2 S3 page 1
)",
   Attestation::published_rule,
   "three folio sheets, one in another",
   "Cowie, Printer's Pocket-Book and Manual, p. 31: the rule that conjugate pages add up to the pages of the quire and one"},
  {R"(scheme 2_quired_8s 2°
sheet S1 rows 1 columns 2 long-side left-right
sheet S2 rows 1 columns 2 long-side left-right
sheet S3 rows 1 columns 2 long-side left-right
sheet S4 rows 1 columns 2 long-side left-right
fold S1 right-over-left 1
fold S2 right-over-left 1
fold S3 right-over-left 1
fold S4 right-over-left 1
gathering A S1 S2 S3 S4 page 1
)",
   Attestation::published_rule,
   "four folio sheets, one in another",
   "Cowie, Printer's Pocket-Book and Manual, p. 31: the rule that conjugate pages add up to the pages of the quire and one"},
  {R"(scheme 2_quired_10s 2°
sheet S1 rows 1 columns 2 long-side left-right
sheet S2 rows 1 columns 2 long-side left-right
sheet S3 rows 1 columns 2 long-side left-right
sheet S4 rows 1 columns 2 long-side left-right
sheet S5 rows 1 columns 2 long-side left-right
fold S1 right-over-left 1
fold S2 right-over-left 1
fold S3 right-over-left 1
fold S4 right-over-left 1
fold S5 right-over-left 1
gathering A S1 S2 S3 S4 S5 page 1
)",
   Attestation::published_rule,
   "five folio sheets, one in another",
   "Cowie, Printer's Pocket-Book and Manual, p. 31: the rule that conjugate pages add up to the pages of the quire and one"},
  {R"(scheme 4_quarto 4°
sheet S rows 2 columns 2 long-side far-near
fold S far-over-near 1
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_grid,
   "common quarto",
   "Boulanger, La Typographie, ch. L'imposition; Brossard, Le Correcteur typographe II (1934), ch. VIII; Bosquet, Guide manuel de l'ouvrier relieur (1903), folding; Paredes, Institucion y origen del arte de la imprenta (c. 1680)"},
  {R"(scheme 4_quarto_in_8s 4°
sheet S1 rows 2 columns 2 long-side far-near
sheet S2 rows 2 columns 2 long-side far-near
fold S1 far-over-near 1
fold S1 right-over-left 1
fold S2 far-over-near 1
fold S2 right-over-left 1
gathering A S1 S2 page 1
)",
   Attestation::published_structure,
   "two quarto sheets, one in the other",
   "Paredes, Institucion y origen del arte de la imprenta (c. 1680): two sheets in one gathering"},
  {R"(scheme 4_half_sheet 4°
sheet S rows 2 columns 2 long-side far-near turned about left-right
cut S row 1 H2 H
fold H right-over-left 1
fold H2 right-over-left 1 under
gathering A H page 1
gathering A H2:near page 1
)",
   Attestation::published_structure,
   "half-sheet of quarto: one forme of four pages, two copies",
   "Paredes, Institucion y origen del arte de la imprenta (c. 1680): half a sheet alone; Tanselle, Studies in Bibliography 53, note 65"},
  {R"(scheme 4_quarto_in_6s 4°
sheet S rows 2 columns 2 long-side far-near
sheet X rows 2 columns 2 long-side far-near turned about left-right
fold S far-over-near 1
fold S right-over-left 1
cut X row 1 H2 H
fold H right-over-left 1
fold H2 right-over-left 1 under
gathering A S H page 1
gathering A_half H2:near page 5
)",
   Attestation::published_structure,
   "a sheet and a half of quarto in one gathering",
   "Paredes, Institucion y origen del arte de la imprenta (c. 1680): a sheet and a half in one gathering"},
  {R"(scheme 4_oblong oblong 4°
sheet S rows 2 columns 2 long-side left-right
fold S far-over-near 1
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::derived,
   "quarto broader than high",
   "from memory"},
  {R"(scheme 4_two_half_sheets 4°
sheet S rows 2 columns 2 long-side far-near
cut S row 1 b a
fold a right-over-left 1
fold b right-over-left 1
gathering A a page 1
gathering B b page 5
)",
   Attestation::published_structure,
   "two different half-sheets of quarto worked together",
   "Tanselle, Studies in Bibliography 53, note 65"},
  {R"(scheme 6_sexto 6°
sheet S rows 3 columns 2 long-side far-near
cut S row 1 off main
fold main far-over-near 2
fold main right-over-left 1
fold off right-over-left 1
gathering A main off:near page 1
)",
   Attestation::published_structure,
   "in-6: three rows of two, the far row cut off and inset. Unsettled: a real in-6 may lie otherwise",
   "Brossard, Le Correcteur typographe II (1934), ch. VIII: in-6 as three rows of two; Cim, Le Livre III (1907), pp. 89-90, 99; Bosquet, Guide manuel de l'ouvrier relieur (1903), folding"},
  {R"(scheme 8_octavo 8°
sheet S rows 2 columns 4 long-side left-right
fold S right-over-left 2
fold S far-over-near 1
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_grid,
   "common octavo",
   "Boulanger, La Typographie, ch. L'imposition; Nicholson, A Manual of the Art of Bookbinding (1856), folding; Bosquet, Guide manuel de l'ouvrier relieur (1903), folding; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; Savage, Dictionary of the Art of Printing (1841), s.v. Imposing, p. 329"},
  {R"(scheme 8_half_sheet 8°
sheet S rows 2 columns 4 long-side left-right turned about far-near
cut S column 2 H H2
fold H far-over-near 1
fold H right-over-left 1
fold H2 far-over-near 1 under
fold H2 left-over-right 3 under
gathering A H page 1
gathering A H2 page 1
)",
   Attestation::published_grid,
   "half-sheet of octavo: one forme of eight pages, two copies",
   "Brossard, Le Correcteur typographe II (1934), ch. VIII; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; Fertel, La science pratique de l'imprimerie (1723), as reported by bibliomab (2011)"},
  {R"(scheme 8_two_half_sheets 8°
sheet S rows 2 columns 4 long-side left-right
cut S column 2 a b
fold a far-over-near 1
fold a right-over-left 1
fold b far-over-near 1
fold b right-over-left 3
gathering A a page 1
gathering B b page 9
)",
   Attestation::published_structure,
   "two different half-sheets of octavo worked together, outer with outer",
   "Tanselle, Studies in Bibliography 53, note 65"},
  {R"(scheme 8_two_half_sheets_mixed 8°
sheet S rows 2 columns 4 long-side left-right
cut S column 2 a b
fold a far-over-near 1
fold a right-over-left 1
fold b far-over-near 1 under
fold b left-over-right 3 under
gathering A a page 1
gathering B b page 9
)",
   Attestation::derived,
   "two half-sheets of octavo worked together, outer of one with inner of the other",
   "Tanselle, Studies in Bibliography 53, note 65; Povey, Studies in Bibliography 9, p. 215 reports the pairing for 24°"},
  {R"(scheme 8_from_centre 8°
sheet S rows 2 columns 4 long-side left-right
fold S left-over-right 2
fold S far-over-near 1
fold S right-over-left 3
gathering A S page 1
)",
   Attestation::derived,
   "octavo with its first page in the middle of the forme",
   "MacKellar, The American Printer (1893), Imposition says such schemes are given; no grid seen"},
  {R"(scheme 8_oblong oblong 8°
sheet S rows 4 columns 2 long-side far-near
fold S far-over-near 2
fold S far-over-near 3
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_structure,
   "octavo broader than high, four rows of two",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37: twice across, then along the length"},
  {R"(scheme 8_half_sheet_plus_singles 8°
sheet S rows 2 columns 4 long-side left-right
cut S column 2 half singles
fold half far-over-near 1
fold half right-over-left 1
cut singles row 1 upper lower
cut lower column 3 b c
cut upper column 3 d e
gathering A half page 1
gathering B b page 9
gathering C c page 11
gathering D d:near page 13
gathering E e:near page 15
)",
   Attestation::published_structure,
   "half-sheet of octavo with four single leaves on the other half; their order there is assumed",
   "Studies in Bibliography 59, pp. 199-200"},
  {R"(scheme 8_in_8s_two_half_sheets_inset 8°
sheet S rows 2 columns 4 long-side left-right
cut S column 2 a b
fold a far-over-near 1
fold a right-over-left 1
fold b far-over-near 1
fold b right-over-left 3
gathering A a b page 1
)",
   Attestation::derived,
   "two half-sheets of octavo from one sheet, one in the other",
   "from memory"},
  {R"(scheme 8_in_16s 8°
sheet S1 rows 2 columns 4 long-side left-right
sheet S2 rows 2 columns 4 long-side left-right
fold S1 right-over-left 2
fold S1 far-over-near 1
fold S1 right-over-left 1
fold S2 right-over-left 2
fold S2 far-over-near 1
fold S2 right-over-left 1
gathering A S1 S2 page 1
)",
   Attestation::derived,
   "two octavo sheets, one in the other",
   "from memory"},
  {R"(scheme 12_common 12°
sheet S rows 3 columns 4 long-side far-near
cut S row 1 off main
fold main right-over-left 2
fold main far-over-near 2
fold main right-over-left 1
fold off left-over-right 2
fold off right-over-left 3
gathering A main off:near page 1
)",
   Attestation::published_grid,
   "common twelves: eight leaves and an off-cut of four inset",
   "Boulanger, La Typographie, ch. L'imposition; Bosquet, Guide manuel de l'ouvrier relieur (1903), folding; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; Savage, Dictionary of the Art of Printing (1841), s.v. Imposing, p. 329; letter to R. B. McKerrow, 17 Aug 1924 (Trinity College, Cambridge); Roberts & Etherington, Bookbinding and the Conservation of Books, s.v. twelvemo; Werner, 'Too many 12mos' (2023)"},
  {R"(scheme 12_common_upright_offcut 12°
sheet S rows 3 columns 4 long-side far-near
cut S row 1 off main
fold main right-over-left 2
fold main far-over-near 2
fold main right-over-left 1
fold off right-over-left 2
fold off left-over-right 1
gathering A main off page 1
)",
   Attestation::derived,
   "common twelves with the off-cut row head up",
   "from memory"},
  {R"(scheme 12_8_plus_4 12°
sheet S rows 3 columns 4 long-side far-near
cut S row 1 off main
fold main right-over-left 2
fold main far-over-near 2
fold main right-over-left 1
fold off left-over-right 2
fold off right-over-left 3
gathering A main page 1
gathering B off:near page 17
)",
   Attestation::published_part,
   "twelves with the off-cut gathered apart",
   "Bosquet, Guide manuel de l'ouvrier relieur (1903), folding: inner side of the off-cut; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; Cim, Le Livre III (1907), pp. 89-90, 99; Voet, The Golden Compasses II, App. 8; Roberts & Etherington, Bookbinding and the Conservation of Books, s.v. twelvemo"},
  {R"(scheme 12_in_8s 12°
sheet S1 rows 3 columns 4 long-side far-near
sheet S2 rows 3 columns 4 long-side far-near
cut S1 row 1 off1 main1
cut S2 row 1 off2 main2
fold main1 right-over-left 2
fold main1 far-over-near 2
fold main1 right-over-left 1
fold main2 right-over-left 2
fold main2 far-over-near 2
fold main2 right-over-left 1
fold off1 left-over-right 2
fold off1 right-over-left 3
fold off2 left-over-right 2
fold off2 right-over-left 3
gathering A main1 page 1
gathering B main2 page 17
gathering C off1:near off2:near page 33
)",
   Attestation::published_structure,
   "two sheets of twelves in three gatherings of eight, the off-cuts one in the other",
   "McKerrow, Introduction to Bibliography (1927), quoted in Studies in Bibliography 7, note 5"},
  {R"(scheme 12_long_accordion long 12°
sheet S rows 2 columns 6 long-side left-right
fold S right-over-left 4 under
fold S right-over-left 2
fold S far-over-near 1
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::memory,
   "long twelves, columns folded to and fro",
   "Roberts & Etherington, Bookbinding and the Conservation of Books, s.v. twelvemo: two rows of six; the grid from memory"},
  {R"(scheme 12_long_rolled long 12°
sheet S rows 2 columns 6 long-side left-right
fold S right-over-left 4
fold S right-over-left 2
fold S far-over-near 1
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::derived,
   "long twelves, columns rolled",
   "derived by folding"},
  {R"(scheme 12_without_cutting 12°
sheet S rows 3 columns 4 long-side far-near
fold S far-over-near 1 under
fold S far-over-near 2
fold S right-over-left 2
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_structure,
   "square twelves, not cut, rows folded to and fro",
   "Roberts & Etherington, Bookbinding and the Conservation of Books, s.v. twelvemo: two parallel folds and two at right angles"},
  {R"(scheme 12_half_sheet 12°
sheet S rows 3 columns 4 long-side far-near turned about far-near
cut S column 2 H H2
cut H row 1 off main
fold main far-over-near 2
fold main right-over-left 1
fold off right-over-left 1
cut H2 row 1 off2 main2
fold main2 far-over-near 2 under
fold main2 left-over-right 3 under
fold off2 left-over-right 3 under
gathering A main off:near page 1
gathering A main2 off2:near page 1
)",
   Attestation::derived,
   "half-sheet of twelves: one forme of twelve pages, two copies",
   "from memory"},
  {R"(scheme 12_two_half_sheets 12°
sheet S rows 3 columns 4 long-side far-near
cut S column 2 a b
cut a row 1 ao am
cut b row 1 bo bm
fold am far-over-near 2
fold am right-over-left 1
fold ao right-over-left 1
fold bm far-over-near 2
fold bm right-over-left 3
fold bo right-over-left 3
gathering A am ao:near page 1
gathering B bm bo:near page 13
)",
   Attestation::derived,
   "two different half-sheets of twelves worked together",
   "Tanselle, Studies in Bibliography 53, note 65"},
  {R"(scheme 16_one_gathering 16°
sheet S rows 4 columns 4 long-side far-near
fold S far-over-near 2
fold S right-over-left 2
fold S far-over-near 3
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_grid,
   "sixteens in one gathering",
   "Boulanger, La Typographie, ch. L'imposition; Savage, Dictionary of the Art of Printing (1841), s.v. Imposing, p. 329; Brossard, Le Correcteur typographe II (1934), ch. VIII: great heads"},
  {R"(scheme 16_two_8s 16°
sheet S rows 4 columns 4 long-side far-near
cut S row 2 b a
fold a right-over-left 2
fold a far-over-near 3
fold a right-over-left 1
fold b right-over-left 2
fold b far-over-near 1
fold b right-over-left 1
gathering A a page 1
gathering B b page 17
)",
   Attestation::published_structure,
   "sixteens in two gatherings of eight",
   "MacKellar, The American Printer (1893), Imposition; Cim, Le Livre III (1907), pp. 89-90, 99; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37"},
  {R"(scheme 16_half_sheet 16°
sheet S rows 4 columns 4 long-side far-near turned about left-right
cut S row 2 H2 H
fold H right-over-left 2
fold H far-over-near 3
fold H right-over-left 1
fold H2 right-over-left 2 under
fold H2 near-over-far 1 under
fold H2 right-over-left 1 under
gathering A H page 1
gathering A H2:near page 1
)",
   Attestation::published_structure,
   "half-sheet of sixteens, the halves one above the other",
   "MacKellar, The American Printer (1893), Imposition; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37"},
  {R"(scheme 16_half_sheet_side 16°
sheet S rows 4 columns 4 long-side far-near turned about far-near
cut S column 2 H H2
fold H far-over-near 2
fold H far-over-near 3
fold H right-over-left 1
fold H2 far-over-near 2 under
fold H2 far-over-near 3 under
fold H2 left-over-right 3 under
gathering A H page 1
gathering A H2 page 1
)",
   Attestation::memory,
   "half-sheet of sixteens, the halves side by side",
   "from memory of the English manuals"},
  {R"(scheme 18_one_rolled 18°
sheet S rows 3 columns 6 long-side left-right
fold S right-over-left 4
fold S right-over-left 2
fold S far-over-near 1
fold S far-over-near 2
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_structure,
   "eighteens in one gathering, not cut, columns and rows rolled",
   "Brossard, Le Correcteur typographe II (1934), ch. VIII: rolled, the third row foot to foot with the second"},
  {R"(scheme 18_one_rolled_b 18°
sheet S rows 3 columns 6 long-side left-right
fold S right-over-left 4
fold S right-over-left 2
fold S far-over-near 1 under
fold S far-over-near 2
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_structure,
   "eighteens in one gathering, columns rolled, rows to and fro",
   "Brossard, Le Correcteur typographe II (1934), ch. VIII; Roberts & Etherington, Bookbinding and the Conservation of Books, s.v. twelvemo"},
  {R"(scheme 18_12_plus_6 18°
sheet S rows 3 columns 6 long-side left-right
cut S column 4 A B
cut A row 1 o m
fold m right-over-left 2
fold m far-over-near 2
fold m right-over-left 1
fold o left-over-right 2
fold o right-over-left 3
cut B row 1 bo bm
fold bm far-over-near 2
fold bm right-over-left 5
fold bo right-over-left 5
gathering A m o:near page 1
gathering B bm bo:near page 25
)",
   Attestation::published_structure,
   "eighteens in twelve and six",
   "Boulanger, La Typographie, ch. L'imposition; Cim, Le Livre III (1907), pp. 89-90, 99; Bosquet, Guide manuel de l'ouvrier relieur (1903), folding; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37"},
  {R"(scheme 18_three_6s 18°
sheet S rows 3 columns 6 long-side left-right
cut S column 2 a right
cut right column 4 b c
cut a row 1 a_off a_main
cut b row 1 b_off b_main
cut c row 1 c_off c_main
fold a_main far-over-near 2
fold a_main right-over-left 1
fold a_off right-over-left 1
fold b_main far-over-near 2
fold b_main right-over-left 3
fold b_off right-over-left 3
fold c_main far-over-near 2
fold c_main right-over-left 5
fold c_off right-over-left 5
gathering A a_main a_off:near page 1
gathering B b_main b_off:near page 13
gathering C c_main c_off:near page 25
)",
   Attestation::published_structure,
   "eighteens in three gatherings of six",
   "Bosquet, Guide manuel de l'ouvrier relieur (1903), folding; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; Cim, Le Livre III (1907), pp. 89-90, 99"},
  {R"(scheme 18_half_sheet_9_transposed 18°
sheet S rows 3 columns 6 long-side left-right
cut S row 1 top low
cut low row 2 mid bot
cut top column 2 t1 tr
cut tr column 4 t2 t3
cut mid column 2 m1 mr
cut mr column 4 m2 m3
cut bot column 2 b1 br
cut br column 3 b2 br2
cut br2 column 4 b3 b4
fold t1 right-over-left 1
fold t2 right-over-left 3
fold t3 right-over-left 5 under
fold m1 right-over-left 1 under
fold m2 right-over-left 3 under
fold m3 right-over-left 5
fold b1 right-over-left 1
fold b4 right-over-left 5 under
gathering A b1 m1:near t1:near m2:near b2 page 1
gathering A b4 m3:near t3:near t2:near b3:inner page 1
)",
   Attestation::memory,
   "half-sheet of eighteens in nines, four pages exchanged between the impressions",
   "the pages exchanged from memory of the 18th-century grammars; Tanselle, Studies in Bibliography 53, note 65 and note 82"},
  {R"(scheme 18_half_sheet_9_not_transposed 18°
sheet S rows 3 columns 6 long-side left-right turned about far-near
cut S row 1 top low
cut low row 2 mid bot
cut top column 2 t1 tr
cut tr column 4 tm t3
cut tm column 3 ta tb
cut mid column 2 m1 mr
cut mr column 4 mm m3
cut mm column 3 ma mb
cut bot column 2 b1 br
cut br column 4 bm b4
cut bm column 3 ba bb
fold t1 right-over-left 1
fold t3 right-over-left 5 under
fold m1 right-over-left 1 under
fold m3 right-over-left 5
fold b1 right-over-left 1
fold b4 right-over-left 5 under
gathering A b1 m1:near t1:near ma:near:inner+ta:near:inner ba page 1
gathering A b4 m3:near t3:near mb:near+tb:near bb:inner page 1
)",
   Attestation::derived,
   "half-sheet of eighteens in nines, nothing exchanged: leaves 4, 5 and 6 single",
   "from memory of the manuals"},
  {R"(scheme 20_half_sheet_10 20°
sheet S rows 5 columns 4 long-side far-near turned about far-near
cut S column 2 H H2
cut H row 1 strip rest
cut rest row 3 inset main
fold main far-over-near 4
fold main right-over-left 1
fold inset far-over-near 2
fold inset right-over-left 1
fold strip right-over-left 1
cut H2 row 1 strip2 rest2
cut rest2 row 3 inset2 main2
fold main2 far-over-near 4 under
fold main2 left-over-right 3 under
fold inset2 far-over-near 2 under
fold inset2 left-over-right 3 under
fold strip2 left-over-right 3 under
gathering A main inset strip:near page 1
gathering A main2 inset2 strip2:near page 1
)",
   Attestation::published_structure,
   "half-sheet of twenties: two quartos one in the other and a strip inmost",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; MacKellar, The American Printer (1893), Imposition"},
  {R"(scheme 24_one_gathering_rolled 24°
sheet S rows 4 columns 6 long-side far-near
fold S right-over-left 4
fold S right-over-left 2
fold S far-over-near 2
fold S far-over-near 3
fold S right-over-left 1
gathering A S page 1
)",
   Attestation::published_structure,
   "twenty-fours in one gathering, not cut, columns rolled",
   "Brossard, Le Correcteur typographe II (1934), ch. VIII"},
  {R"(scheme 24_three_8s_french 24°
sheet S rows 4 columns 6 long-side far-near
cut S column 4 squares c
cut squares row 2 b a
fold a right-over-left 2
fold a far-over-near 3
fold a right-over-left 1
fold b right-over-left 2 under
fold b near-over-far 1 under
fold b right-over-left 1 under
fold c far-over-near 2
fold c far-over-near 3
fold c right-over-left 5
gathering A a page 1
gathering B b:near page 17
gathering C c page 33
)",
   Attestation::published_structure,
   "twenty-fours in three eights, the second inverted, its inner pages in the outer forme",
   "Brossard, Le Correcteur typographe II (1934), ch. VIII; Povey, Studies in Bibliography 9, p. 215, after Fertel (1723); Cim, Le Livre III (1907), pp. 89-90, 99"},
  {R"(scheme 24_three_8s_1671 24°
sheet S rows 4 columns 6 long-side far-near
cut S column 4 squares c
cut squares row 2 b a
fold a right-over-left 2
fold a far-over-near 3
fold a right-over-left 1
fold b left-over-right 2
fold b near-over-far 1
fold b left-over-right 3
fold c far-over-near 2
fold c far-over-near 3
fold c right-over-left 5
gathering A a page 1
gathering B b:near page 17
gathering C c page 33
)",
   Attestation::published_evidence,
   "twenty-fours in three eights, the second turned end for end",
   "Buhler, Studies in Bibliography 7: leaves of an uncut copy; Povey, Studies in Bibliography 9, p. 215"},
  {R"(scheme 24_16_plus_8 24°
sheet S rows 4 columns 6 long-side far-near
cut S column 4 a c
fold a far-over-near 2
fold a right-over-left 2
fold a far-over-near 3
fold a right-over-left 1
fold c far-over-near 2
fold c far-over-near 3
fold c right-over-left 5
gathering A a page 1
gathering B c page 33
)",
   Attestation::published_structure,
   "twenty-fours in sixteen and eight",
   "Brossard, Le Correcteur typographe II (1934), ch. VIII: two gatherings, of 32 and of 16 pages"},
  {R"(scheme 24_two_12s 24°
sheet S rows 3 columns 8 long-side left-right
cut S column 4 A B
cut A row 1 Ao Am
fold Am right-over-left 2
fold Am far-over-near 2
fold Am right-over-left 1
fold Ao left-over-right 2
fold Ao right-over-left 3
cut B row 1 Bo Bm
fold Bm right-over-left 6
fold Bm far-over-near 2
fold Bm right-over-left 5
fold Bo left-over-right 6
fold Bo right-over-left 7
gathering A Am Ao:near page 1
gathering B Bm Bo:near page 25
)",
   Attestation::published_structure,
   "twenty-fours as two common twelves",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; MacKellar, The American Printer (1893), Imposition; Luckombe (1771), pp. 419-420, heading"},
  {R"(scheme 24_half_sheet 24°
sheet S rows 3 columns 8 long-side left-right turned about far-near
cut S column 4 H H2
cut H row 1 Ho Hm
fold Hm right-over-left 2
fold Hm far-over-near 2
fold Hm right-over-left 1
fold Ho left-over-right 2
fold Ho right-over-left 3
cut H2 row 1 Ho2 Hm2
fold Hm2 left-over-right 6 under
fold Hm2 far-over-near 2 under
fold Hm2 left-over-right 7 under
fold Ho2 right-over-left 6 under
fold Ho2 left-over-right 5 under
gathering A Hm Ho:near page 1
gathering A Hm2 Ho2:near page 1
)",
   Attestation::published_structure,
   "half-sheet of twenty-fours",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; MacKellar, The American Printer (1893), Imposition"},
  {R"(scheme 24_half_sheet_long long 24°
sheet S rows 4 columns 6 long-side far-near turned about left-right
cut S row 2 H2 H
fold H right-over-left 4 under
fold H right-over-left 2
fold H far-over-near 3
fold H right-over-left 1
fold H2 right-over-left 4
fold H2 right-over-left 2 under
fold H2 near-over-far 1 under
fold H2 right-over-left 1 under
gathering A H page 1
gathering A H2:near page 1
)",
   Attestation::published_structure,
   "half-sheet of long twenty-fours",
   "Luckombe (1771), pp. 419-420, heading, cited by the OED s.v. twenty-four"},
  {R"(scheme 24_three_oblongs 24°
sheet S rows 4 columns 6 long-side far-near
cut S column 2 a x
cut x column 4 b c
fold a far-over-near 2
fold a far-over-near 3
fold a right-over-left 1
fold b far-over-near 2
fold b far-over-near 3
fold b right-over-left 3
fold c far-over-near 2
fold c far-over-near 3
fold c right-over-left 5
gathering A a page 1
gathering B b page 17
gathering C c page 33
)",
   Attestation::published_structure,
   "twenty-fours in three oblong strips of eight",
   "Povey, Studies in Bibliography 9, p. 215"},
  {R"(scheme 32_two_16s 32°
sheet S rows 4 columns 8 long-side left-right
cut S column 4 a b
fold a far-over-near 2
fold a right-over-left 2
fold a far-over-near 3
fold a right-over-left 1
fold b far-over-near 2
fold b right-over-left 6
fold b far-over-near 3
fold b right-over-left 5
gathering A a page 1
gathering B b page 33
)",
   Attestation::derived,
   "thirty-twos in two gatherings of sixteen",
   "from memory"},
  {R"(scheme 32_four_8s 32°
sheet S rows 4 columns 8 long-side left-right
cut S row 2 band2 band1
cut band1 column 4 a b
cut band2 column 4 c d
fold a right-over-left 2
fold a far-over-near 3
fold a right-over-left 1
fold b right-over-left 6
fold b far-over-near 3
fold b right-over-left 5
fold c right-over-left 2
fold c far-over-near 1
fold c right-over-left 1
fold d right-over-left 6
fold d far-over-near 1
fold d right-over-left 5
gathering A a page 1
gathering B b page 17
gathering C c page 33
gathering D d page 49
)",
   Attestation::published_structure,
   "thirty-twos in four gatherings of eight",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; MacKellar, The American Printer (1893), Imposition; Cim, Le Livre III (1907), pp. 89-90, 99"},
  {R"(scheme 32_half_sheet 32°
sheet S rows 4 columns 8 long-side left-right turned about far-near
cut S column 4 H H2
cut H row 2 b a
cut H2 row 2 b2 a2
fold a right-over-left 2
fold a far-over-near 3
fold a right-over-left 1
fold b right-over-left 2
fold b far-over-near 1
fold b right-over-left 1
fold a2 left-over-right 6 under
fold a2 far-over-near 3 under
fold a2 left-over-right 7 under
fold b2 left-over-right 6 under
fold b2 far-over-near 1 under
fold b2 left-over-right 7 under
gathering A a page 1
gathering B b page 17
gathering A a2 page 1
gathering B b2 page 17
)",
   Attestation::published_structure,
   "half-sheet of thirty-twos in two eights",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37: two copies, each half-sheet of two gatherings"},
  {R"(scheme 36_three_12s 36°
sheet S rows 6 columns 6 long-side far-near
cut S row 4 rest strip1
cut rest row 2 strip3 strip2
cut strip1 column 4 a a_off
cut strip2 column 4 b b_off
cut strip3 column 4 c c_off
fold a right-over-left 2
fold a far-over-near 5
fold a right-over-left 1
fold a_off far-over-near 5
fold a_off right-over-left 5
fold b right-over-left 2
fold b far-over-near 3
fold b right-over-left 1
fold b_off far-over-near 3
fold b_off right-over-left 5
fold c right-over-left 2
fold c far-over-near 1
fold c right-over-left 1
fold c_off far-over-near 1
fold c_off right-over-left 5
gathering A a a_off page 1
gathering B b b_off page 25
gathering C c c_off page 49
)",
   Attestation::published_structure,
   "thirty-sixes in three gatherings of twelve",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37: three strips, each as a sheet of twelves; MacKellar, The American Printer (1893), Imposition"},
  {R"(scheme 48_four_12s 48°
sheet S rows 6 columns 8 long-side far-near
cut S row 3 U D
cut U column 4 C Dd
cut D column 4 A B
cut A row 4 Ao Am
fold Am right-over-left 2
fold Am far-over-near 5
fold Am right-over-left 1
fold Ao left-over-right 2
fold Ao right-over-left 3
cut B row 4 Bo Bm
fold Bm right-over-left 6
fold Bm far-over-near 5
fold Bm right-over-left 5
fold Bo left-over-right 6
fold Bo right-over-left 7
cut C row 1 Co Cm
fold Cm right-over-left 2
fold Cm far-over-near 2
fold Cm right-over-left 1
fold Co left-over-right 2
fold Co right-over-left 3
cut Dd row 1 Ddo Ddm
fold Ddm right-over-left 6
fold Ddm far-over-near 2
fold Ddm right-over-left 5
fold Ddo left-over-right 6
fold Ddo right-over-left 7
gathering A Am Ao:near page 1
gathering B Bm Bo:near page 25
gathering C Cm Co:near page 49
gathering D Ddm Ddo:near page 73
)",
   Attestation::published_rule,
   "forty-eights in four gatherings of twelve",
   "MacKellar, The American Printer (1893), Imposition; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37"},
  {R"(scheme 48_six_8s 48°
sheet S rows 6 columns 8 long-side far-near
cut S row 4 rest1 band1
cut rest1 row 2 band3 band2
cut band1 column 4 a b
cut band2 column 4 c d
cut band3 column 4 e f
fold a right-over-left 2
fold a far-over-near 5
fold a right-over-left 1
fold b right-over-left 6
fold b far-over-near 5
fold b right-over-left 5
fold c right-over-left 2
fold c far-over-near 3
fold c right-over-left 1
fold d right-over-left 6
fold d far-over-near 3
fold d right-over-left 5
fold e right-over-left 2
fold e far-over-near 1
fold e right-over-left 1
fold f right-over-left 6
fold f far-over-near 1
fold f right-over-left 5
gathering A a page 1
gathering B b page 17
gathering C c page 33
gathering D d page 49
gathering E e page 65
gathering F f page 81
)",
   Attestation::published_rule,
   "forty-eights in six gatherings of eight",
   "MacKellar, The American Printer (1893), Imposition; Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37: pages divided by 16 give the gatherings"},
  {R"(scheme 64_eight_8s 64°
sheet S rows 8 columns 8 long-side far-near
cut S row 6 rest1 band1
cut rest1 row 4 rest2 band2
cut rest2 row 2 band4 band3
cut band1 column 4 a b
cut band2 column 4 c d
cut band3 column 4 e f
cut band4 column 4 g h
fold a right-over-left 2
fold a far-over-near 7
fold a right-over-left 1
fold b right-over-left 6
fold b far-over-near 7
fold b right-over-left 5
fold c right-over-left 2
fold c far-over-near 5
fold c right-over-left 1
fold d right-over-left 6
fold d far-over-near 5
fold d right-over-left 5
fold e right-over-left 2
fold e far-over-near 3
fold e right-over-left 1
fold f right-over-left 6
fold f far-over-near 3
fold f right-over-left 5
fold g right-over-left 2
fold g far-over-near 1
fold g right-over-left 1
fold h right-over-left 6
fold h far-over-near 1
fold h right-over-left 5
gathering A a page 1
gathering B b page 17
gathering C c page 33
gathering D d page 49
gathering E e page 65
gathering F f page 81
gathering G g page 97
gathering H h page 113
)",
   Attestation::published_structure,
   "sixty-fours in eight gatherings of eight",
   "Lenormand, Nouveau manuel complet du relieur (Roret, 1900), pp. 29-37; MacKellar, The American Printer (1893), Imposition"},
  {R"(scheme 72_nine_8s 72°
sheet S rows 6 columns 12 long-side left-right
cut S row 4 rest1 band1
cut rest1 row 2 band3 band2
cut band1 column 4 a right1_1
cut right1_1 column 8 b c
cut band2 column 4 d right2_1
cut right2_1 column 8 e f
cut band3 column 4 g right3_1
cut right3_1 column 8 h i
fold a right-over-left 2
fold a far-over-near 5
fold a right-over-left 1
fold b right-over-left 6
fold b far-over-near 5
fold b right-over-left 5
fold c right-over-left 10
fold c far-over-near 5
fold c right-over-left 9
fold d right-over-left 2
fold d far-over-near 3
fold d right-over-left 1
fold e right-over-left 6
fold e far-over-near 3
fold e right-over-left 5
fold f right-over-left 10
fold f far-over-near 3
fold f right-over-left 9
fold g right-over-left 2
fold g far-over-near 1
fold g right-over-left 1
fold h right-over-left 6
fold h far-over-near 1
fold h right-over-left 5
fold i right-over-left 10
fold i far-over-near 1
fold i right-over-left 9
gathering A a page 1
gathering B b page 17
gathering C c page 33
gathering D d page 49
gathering E e page 65
gathering F f page 81
gathering G g page 97
gathering H h page 113
gathering I i page 129
)",
   Attestation::published_rule,
   "seventy-twos in nine gatherings of eight",
   "MacKellar, The American Printer (1893), Imposition; Leclerc, quoted by Cim, Le Livre III, p. 99"},
  {R"(scheme 96_twelve_8s 96°
sheet S rows 8 columns 12 long-side left-right
cut S row 6 rest1 band1
cut rest1 row 4 rest2 band2
cut rest2 row 2 band4 band3
cut band1 column 4 a right1_1
cut right1_1 column 8 b c
cut band2 column 4 d right2_1
cut right2_1 column 8 e f
cut band3 column 4 g right3_1
cut right3_1 column 8 h i
cut band4 column 4 k right4_1
cut right4_1 column 8 l m
fold a right-over-left 2
fold a far-over-near 7
fold a right-over-left 1
fold b right-over-left 6
fold b far-over-near 7
fold b right-over-left 5
fold c right-over-left 10
fold c far-over-near 7
fold c right-over-left 9
fold d right-over-left 2
fold d far-over-near 5
fold d right-over-left 1
fold e right-over-left 6
fold e far-over-near 5
fold e right-over-left 5
fold f right-over-left 10
fold f far-over-near 5
fold f right-over-left 9
fold g right-over-left 2
fold g far-over-near 3
fold g right-over-left 1
fold h right-over-left 6
fold h far-over-near 3
fold h right-over-left 5
fold i right-over-left 10
fold i far-over-near 3
fold i right-over-left 9
fold k right-over-left 2
fold k far-over-near 1
fold k right-over-left 1
fold l right-over-left 6
fold l far-over-near 1
fold l right-over-left 5
fold m right-over-left 10
fold m far-over-near 1
fold m right-over-left 9
gathering A a page 1
gathering B b page 17
gathering C c page 33
gathering D d page 49
gathering E e page 65
gathering F f page 81
gathering G g page 97
gathering H h page 113
gathering I i page 129
gathering K k page 145
gathering L l page 161
gathering M m page 177
)",
   Attestation::published_rule,
   "ninety-sixes in twelve gatherings of eight",
   "MacKellar, The American Printer (1893), Imposition"},
  {R"(scheme 128_sixteen_8s 128°
sheet S rows 8 columns 16 long-side left-right
cut S row 6 rest1 band1
cut rest1 row 4 rest2 band2
cut rest2 row 2 band4 band3
cut band1 column 4 a right1_1
cut right1_1 column 8 b right1_2
cut right1_2 column 12 c d
cut band2 column 4 e right2_1
cut right2_1 column 8 f right2_2
cut right2_2 column 12 g h
cut band3 column 4 i right3_1
cut right3_1 column 8 k right3_2
cut right3_2 column 12 l m
cut band4 column 4 n right4_1
cut right4_1 column 8 o right4_2
cut right4_2 column 12 p q
fold a right-over-left 2
fold a far-over-near 7
fold a right-over-left 1
fold b right-over-left 6
fold b far-over-near 7
fold b right-over-left 5
fold c right-over-left 10
fold c far-over-near 7
fold c right-over-left 9
fold d right-over-left 14
fold d far-over-near 7
fold d right-over-left 13
fold e right-over-left 2
fold e far-over-near 5
fold e right-over-left 1
fold f right-over-left 6
fold f far-over-near 5
fold f right-over-left 5
fold g right-over-left 10
fold g far-over-near 5
fold g right-over-left 9
fold h right-over-left 14
fold h far-over-near 5
fold h right-over-left 13
fold i right-over-left 2
fold i far-over-near 3
fold i right-over-left 1
fold k right-over-left 6
fold k far-over-near 3
fold k right-over-left 5
fold l right-over-left 10
fold l far-over-near 3
fold l right-over-left 9
fold m right-over-left 14
fold m far-over-near 3
fold m right-over-left 13
fold n right-over-left 2
fold n far-over-near 1
fold n right-over-left 1
fold o right-over-left 6
fold o far-over-near 1
fold o right-over-left 5
fold p right-over-left 10
fold p far-over-near 1
fold p right-over-left 9
fold q right-over-left 14
fold q far-over-near 1
fold q right-over-left 13
gathering A a page 1
gathering B b page 17
gathering C c page 33
gathering D d page 49
gathering E e page 65
gathering F f page 81
gathering G g page 97
gathering H h page 113
gathering I i page 129
gathering K k page 145
gathering L l page 161
gathering M m page 177
gathering N n page 193
gathering O o page 209
gathering P p page 225
gathering Q q page 241
)",
   Attestation::published_rule,
   "one hundred and twenty-eights in sixteen gatherings of eight",
   "MacKellar, The American Printer (1893), Imposition"},
  {R"(scheme m32_work_and_turn_two_quires 32°
sheet S rows 4 columns 8 long-side left-right turned about far-near
cut S column 4 H2 H
cut H row 2 b a
cut H2 row 2 b2 a2
fold a right-over-left 6
fold a far-over-near 3
fold a right-over-left 5
fold b right-over-left 6
fold b far-over-near 1
fold b right-over-left 5
fold a2 left-over-right 2 under
fold a2 far-over-near 3 under
fold a2 left-over-right 3 under
fold b2 left-over-right 2 under
fold b2 far-over-near 1 under
fold b2 left-over-right 3 under
gathering A a page 1
gathering B b page 17
gathering A a2 page 1
gathering B b2 page 17
)",
   Attestation::published_evidence,
   "two quires of eight worked and turned in one forme of 32 pages",
   "Steele, Studies in Bibliography 15: edges of leaves"},
};
// clang-format on
inline constexpr std::size_t attested_count = sizeof attested_rows / sizeof *attested_rows;

} // namespace detail
} // namespace v0
} // namespace bifolium
