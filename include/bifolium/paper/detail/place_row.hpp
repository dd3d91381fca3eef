// SPDX-License-Identifier: MIT
/// A row of the table of places, and the rows that are no towns: countries, and the places of false imprints.
#pragma once

#include <bifolium/paper/place.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A place and what it is called, in Latin and the languages of Europe, with `; ` between the names.
struct PlaceRow {
  char const *name, *country; ///< as in `Place`
  PrintingRegion region;
  char const* names;       ///< as published
  char const* from_memory; ///< not checked
};

// Countries in the languages of imprints and catalogues: common practice, no source
inline constexpr PlaceRow countries[]{
    {"England", "Great Britain", PrintingRegion::britain, "", "Anglia; Angliae; Angleterre; Inghilterra"},
    {"Scotland", "Great Britain", PrintingRegion::britain, "", "Scotia; Scotiae; Écosse; Schottland"},
    {"Wales", "Great Britain", PrintingRegion::britain, "", ""},
    {"Britain", "Great Britain", PrintingRegion::britain, "", "Great Britain; United Kingdom; Britannia"},
    {"Ireland", "Ireland", PrintingRegion::ireland, "", "Hibernia; Hiberniae; Irlande; Irland"},
    {"France", "France", PrintingRegion::france, "", "Gallia; Galliae; Frankreich; Francia"},
    {"Netherlands", "Netherlands", PrintingRegion::low_countries, "",
     "The Netherlands; Holland; Hollande; Hollandia; Low Countries; Nederland; Pays-Bas; Niederlande"},
    {"Belgium", "Belgium", PrintingRegion::low_countries, "",
     "Belgique; Belgica; Flanders; Flandre; Vlaanderen; Belgien"},
    {"Germany", "Germany", PrintingRegion::germany, "", "Germania; Germaniae; Deutschland; Allemagne; Alemania"},
    {"Switzerland", "Switzerland", PrintingRegion::switzerland, "", "Helvetia; Schweiz; Suisse; Svizzera"},
    {"Austria", "Austria", PrintingRegion::austria, "", "Österreich; Autriche"},
    {"Bohemia", "Czech Republic", PrintingRegion::bohemia_poland, "", "Bohemiae; Böhmen; Bohême; Moravia"},
    {"Poland", "Poland", PrintingRegion::bohemia_poland, "", "Polonia; Poloniae; Polska; Polen; Pologne"},
    {"Hungary", "Hungary", PrintingRegion::hungary, "", "Hungaria; Ungarn; Hongrie; Magyarország"},
    {"Italy", "Italy", PrintingRegion::italy, "", "Italia; Italiae; Italie; Italien"},
    {"Spain", "Spain", PrintingRegion::spain, "", "España; Hispania; Hispaniae; Espagne; Spanien"},
    {"Portugal", "Portugal", PrintingRegion::portugal, "", "Lusitania; Lusitaniae"},
    {"Denmark", "Denmark", PrintingRegion::scandinavia, "", "Dania; Daniae; Danmark"},
    {"Sweden", "Sweden", PrintingRegion::scandinavia, "", "Suecia; Sueciae; Sverige"},
    {"Norway", "Norway", PrintingRegion::scandinavia, "", "Norge; Norvegia"},
    {"Finland", "Finland", PrintingRegion::scandinavia, "", "Suomi"},
    {"Scandinavia", "", PrintingRegion::scandinavia, "", ""},
    {"Russia", "Russia", PrintingRegion::russia, "", "Rossiia; Russland; Russie"},
    {"United States", "United States", PrintingRegion::america, "",
     "USA; U.S.A.; America; New England; Nova Anglia; Massachusetts; Mass.; Pennsylvania; Penn.; Connecticut; Conn."},
};
/// Names of places that books were not printed in. Some are names of towns too, and then only a doubt.
inline constexpr char const* false_imprints[]{"Cosmopoli",     "Eleutheropoli", "Vtopiae", "Philadelphia",
                                              "Philadelphiae", "Londres",       "Cologne"};

} // namespace detail
} // namespace v0
} // namespace bifolium
