// SPDX-License-Identifier: MIT
/// A row of the table of places, and the rows that are not towns: countries, and the places of false imprints.
#pragma once

#include <bifolium/paper/place.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A place and its names, in Latin and the languages of Europe, with `; ` between the names.
struct PlaceRow {
  char const *name, *country; ///< as in `Place`
  Region region;
  char const* names;       ///< as published
  char const* from_memory; ///< not checked
};

// Countries in the languages of imprints and catalogues: common practice, no source
inline constexpr PlaceRow countries[]{
    {"England", "Great Britain", Region::britain, "", "Anglia; Angliae; Angleterre; Inghilterra"},
    {"Scotland", "Great Britain", Region::britain, "", "Scotia; Scotiae; Écosse; Schottland"},
    {"Wales", "Great Britain", Region::britain, "", ""},
    {"Britain", "Great Britain", Region::britain, "", "Great Britain; United Kingdom; Britannia"},
    {"Ireland", "Ireland", Region::ireland, "", "Hibernia; Hiberniae; Irlande; Irland"},
    {"France", "France", Region::france, "", "Gallia; Galliae; Frankreich; Francia"},
    {"Netherlands", "Netherlands", Region::netherlands, "",
     "The Netherlands; Holland; Hollande; Hollandia; Low Countries; Nederland; Pays-Bas; Niederlande"},
    {"Belgium", "Belgium", Region::netherlands, "", "Belgique; Belgica; Flanders; Flandre; Vlaanderen; Belgien"},
    {"Germany", "Germany", Region::germany, "", "Germania; Germaniae; Deutschland; Allemagne; Alemania"},
    {"Switzerland", "Switzerland", Region::switzerland, "", "Helvetia; Schweiz; Suisse; Svizzera"},
    {"Austria", "Austria", Region::germany, "", "Österreich; Autriche"},
    {"Bohemia", "Czech Republic", Region::europe, "", "Bohemiae; Böhmen; Bohême; Moravia"},
    {"Poland", "Poland", Region::europe, "", "Polonia; Poloniae; Polska; Polen; Pologne"},
    {"Hungary", "Hungary", Region::europe, "", "Hungaria; Ungarn; Hongrie; Magyarország"},
    {"Italy", "Italy", Region::italy, "", "Italia; Italiae; Italie; Italien"},
    {"Spain", "Spain", Region::spain, "", "España; Hispania; Hispaniae; Espagne; Spanien"},
    {"Portugal", "Portugal", Region::spain, "", "Lusitania; Lusitaniae"},
    {"Denmark", "Denmark", Region::europe, "", "Dania; Daniae; Danmark"},
    {"Sweden", "Sweden", Region::europe, "", "Suecia; Sueciae; Sverige"},
    {"Norway", "Norway", Region::europe, "", "Norge; Norvegia"},
    {"Finland", "Finland", Region::europe, "", "Suomi"},
    {"Scandinavia", "", Region::europe, "", ""},
    {"Russia", "Russia", Region::europe, "", "Rossiia; Russland; Russie"},
    {"United States", "United States", Region::usa, "",
     "USA; U.S.A.; America; New England; Nova Anglia; Massachusetts; Mass.; Pennsylvania; Penn.; Connecticut; Conn."},
};
/// Names of places in which books were not printed. Some are also names of towns, and then give only a doubt.
inline constexpr char const* false_imprints[]{"Cosmopoli",     "Eleutheropoli", "Vtopiae", "Philadelphia",
                                              "Philadelphiae", "Londres",       "Cologne"};

} // namespace detail
} // namespace v0
} // namespace bifolium
