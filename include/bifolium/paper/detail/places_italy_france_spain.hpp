// SPDX-License-Identifier: MIT
/// Names of towns of printing: the towns of Italy, France, Spain and Portugal.
/// A name that belongs to several towns is in the row of each. Names that differ only in case, accents, points, or u
/// and v, i and j, are in a row once.
///
/// Source: the Latin Place Names File of the Bibliographic Standards Committee of the RBMS (as CSV, MIT licence), but
/// for the last names of a row, which are from memory. The part of Italy is that in which the British Museum's
/// catalogue of incunables counts the town, since papers and formats are learnt by its parts: IV Rome; V Venice; VI
/// Foligno, Ferrara, Florence, Milan, Bologna, Naples, Perugia and Treviso; VII Genoa and all others (titles of the
/// parts, from memory). Geography would put Padua with Venice, but Padua's books are not among those that were counted
/// for Venice.
#pragma once

#include <bifolium/paper/detail/place_row.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

// name, country of today, region of printing; names as the source has them; names from memory
inline constexpr PlaceRow places_of_italy_france_spain[]{
    {"Venice", "Italy", Region::venice,
     "Venetiae; Venetiis; Venet.; Veneciis; Veneti; Venetiarum urbe; Venetio; Venetis; Venetiss; Venetius; Venettis; "
     "Venetum; Venice; Venezia; Venetia; Vinegia; Vinetia; Venegia",
     "Ven.; Venise; Venedig; Venecia; Veneza; Venetië"},
    {"Padua", "Italy", Region::other_italy,
     "Patavii; Padauii; Padue; Pataui; Patauie; Patauiensi; Padua; Padova; Padoa", "Patavium; Patav.; Padoue"},
    {"Verona", "Italy", Region::other_italy, "Verona; Veronae; Vérone", "Veron."},
    {"Vicenza", "Italy", Region::other_italy, "Vicetiae; Vicentiae; Vicentie; Vincentiae; Vicenza",
     "Vicentia; Vicence"},
    {"Brescia", "Italy", Region::other_italy, "Brixiae; Brixiaeae; Brixie; Brescia", "Brixia; Bressa; Bresse"},
    {"Bergamo", "Italy", Region::other_italy, "Bergomi; Bergomo; Bergamo", "Bergomum"},
    {"Treviso", "Italy", Region::north_italy, "Tarvisii; Teruisii; Treviso", "Tarvisium; Trevigi; Trivigi"},
    {"Bassano del Grappa", "Italy", Region::other_italy, "Bassani; Bassano", "Bassanum"},
    {"Udine", "Italy", Region::other_italy, "Utini; Udine", "Utinum"},
    {"Rome", "Italy", Region::rome, "Romae; Roma; Rome", "Rom."},
    {"Florence", "Italy", Region::north_italy, "Florentiae; Florentie; Florentinae; Florence; Firenze; Fiorenza",
     "Florentia; Flor.; Florenz; Florencia"},
    {"Milan", "Italy", Region::north_italy, "Mediolani; Milan; Milano", "Mediolanum; Mediol.; Mailand; Meylandt"},
    {"Bologna", "Italy", Region::north_italy, "Bonon.; Bononiae; Bononieae; Bologna", "Bononia; Bologne; Bolonia"},
    {"Turin", "Italy", Region::other_italy, "Augustae Taurinorum; Taurini; Tavrinorum; Turin; Torino",
     "Augustae; Augusta; Augusta Taurinorum; Taurinum; Aug. Taur.; Turino"},
    {"Genoa", "Italy", Region::other_italy, "Genuae; Genoa; Genova; Gênes", "Genua; Januae"},
    {"Modena", "Italy", Region::other_italy, "Mutinae; Modena; Modona", "Mutina; Modène"},
    {"Parma", "Italy", Region::other_italy, "Parma; Parmae", "Parme"},
    {"Ferrara", "Italy", Region::north_italy, "Ferrariae; Ferrarie; Ferrara", "Ferraria; Ferrare"},
    {"Mantua", "Italy", Region::other_italy, "Mantua; Mantuae; Mantue; Mantova", "Mantoue"},
    {"Pavia", "Italy", Region::other_italy, "Ticini Regii; Papiae; Papie; Ticini; Pavia", "Ticinum; Papia; Pavie"},
    {"Piacenza", "Italy", Region::other_italy, "Placentiae; Piacenza", "Placentia; Plaisance"},
    {"Reggio Emilia", "Italy", Region::other_italy, "Regii; Rhegii Lingobardiae; Reggio Emilia",
     "Regii Lepidi; Regium Lepidi; Reggio"},
    {"Cremona", "Italy", Region::other_italy, "Cremona; Cremonae", "Crémone"},
    {"Lucca", "Italy", Region::other_italy, "Lucae; Lucca", "Luca; Lucques"},
    {"Pisa", "Italy", Region::other_italy, "Pisis; Pisa", "Pisae; Pise"},
    {"Siena", "Italy", Region::other_italy, "Senis; Siena; Sienna; Sienne", "Senae; Senarum"},
    {"Livorno", "Italy", Region::other_italy, "Liburni; Livorno", "Liburnum; Leghorn; Livourne"},
    {"Trento", "Italy", Region::other_italy, "Tridenti; Trento", "Tridentum; Trent; Trient; Trente"},
    {"Faenza", "Italy", Region::other_italy, "Faventiae; Faenza", "Faventia"},
    {"Naples", "Italy", Region::north_italy, "Neap.; Neapoli; Naples; Napoli", "Neapolis; Parthenope; Neapel; Nápoles"},
    {"Perugia", "Italy", Region::north_italy, "Perusiae; Perusie; Perugia", "Perusia; Pérouse; Perosa"},
    {"Palermo", "Italy", Region::other_italy, "Panhormi; Panormi; Palermo", "Panormus; Palerme"},
    {"Messina", "Italy", Region::other_italy, "Messanae; Messina", "Messana; Messine"},
    {"Macerata", "Italy", Region::other_italy, "Macerata", "Maceratae"},
    {"Ancona", "Italy", Region::other_italy, "Ancona; Anconae", "Ancône"},
    {"Pesaro", "Italy", Region::other_italy, "Pisauri; Pesaro", "Pisaurum"},
    {"Viterbo", "Italy", Region::other_italy, "Viterbii; Viterbo", "Viterbium"},
    {"Reggio di Calabria", "Italy", Region::other_italy, "Regii", "Reggio"},
    {"Paris", "France", Region::france,
     "Lutetiae; Parisiis; Lutetiae Parisiorum; Paris.; Luteciae; Luteciae Parisiorum; Lutetia; Lutetiae Parisior.; "
     "Lutetie Parisiorum; Lutitiae; Lutitiae Parisiorum; Lutotiae; Lytetiae; Parhisii; Parhisiis; Parisii; Parisis; "
     "Parisius; Parissius; Parrhisiis; Parrhisio; Parrhisios; Parrhysiis; Parrisiis; Parigi",
     "Lutet.; Lut. Paris.; Parrhisiorum; Parys; Parijs; Pariss"},
    {"Lyon", "France", Region::france,
     "Lugduni; Lugdunum; Lugd.; Lugdoni; Lugdun.; Lugdynensem; Lygduni; Lygdunum; Lyon; Lyons; Lion",
     "Lione; León de Francia"},
    {"Rouen", "France", Region::france, "Rothomagi; Rotomagi; Rouen", "Rothomagum; Rothom.; Roan"},
    {"Toulouse", "France", Region::france, "Tolosae; Tolosae Tectosagum; Toulouse",
     "Tolosa; Tolos.; Tolose; Tholose; Tholoze"},
    {"Bordeaux", "France", Region::france, "Burdigalae; Bordeaux", "Burdigala; Burdeg.; Bourdeaux; Bordeos; Burdeos"},
    {"Avignon", "France", Region::france, "Avenione; Avenioni; Avignon", "Avenio; Avignone; Aviñón"},
    {"Caen", "France", Region::france, "Cadomi; Caen", "Cadomum"},
    {"Poitiers", "France", Region::france, "Pictavii; Pictavis; Poitiers",
     "Augustoriti Pictonum; Poictiers; Augustoriti"},
    {"Troyes", "France", Region::france, "Trecis; Tricassibus; Troyes", "Trecae; Augustobonae; Tricassium"},
    {"Orléans", "France", Region::france, "Aureliae; Aurelianis; Orléans", "Aurelianum"},
    {"Reims", "France", Region::france, "Durocortori; Rhemis; Reims; Rheims", "Remis; Rhemi; Remorum"},
    {"Bourges", "France", Region::france,
     "Avarici Biturigum; Biturigibus; Biturigum; Gallicum Biturigibus; Maximae Biturigum; Bourges", "Bituricum"},
    {"Montpellier", "France", Region::france, "Monspelii; Monspessulanii; Montpellier; Montpelier",
     "Monspeliensi; Monspessulani; Monspessuli; Monspel.; Mompelier"},
    {"Grenoble", "France", Region::france, "Grantianopoli; Grenoble", "Gratianopoli; Gratianopolis"},
    {"Dijon", "France", Region::france, "Divione; Dijon", "Divio; Divioni"},
    {"Besançon", "France", Region::france, "Vesontione; Besançon", "Vesontio; Bisuntii; Besanzon; Bisanz"},
    {"Nancy", "France", Region::france, "Nanceii; Nancy", "Nancei; Nanci"},
    {"Metz", "France", Region::france, "Metis; Metz", "Mettis; Divoduri; Mets"},
    {"Lille", "France", Region::france, "Lille", "Insulis; Insulae; Insulis Flandrorum; Lisle; Rijsel; Ryssel"},
    {"Sedan", "France", Region::france, "Sedani; Sedan", "Sedanum"},
    {"Saumur", "France", Region::france, "Salmurii; Saumur", "Salmurium"},
    {"La Rochelle", "France", Region::france, "Rupellae; La Rochelle", "Rupella; Rochelle"},
    {"Nantes", "France", Region::france, "", "Nannetibus; Nannetes; Namnetum; Nantes"},
    {"Rennes", "France", Region::france, "", "Rhedonis; Redonis; Rhedones; Rennes"},
    {"Angers", "France", Region::france, "Andegavi; Angers", "Andegavis; Andegavum; Juliomagi"},
    {"Tours", "France", Region::france, "Caesaroduni Turonum; Tours", "Turonis; Turones; Caesarodunum"},
    {"Limoges", "France", Region::france, "Lemovicum; Limoges", "Lemovicis; Lemovicibus; Augustoriti"},
    {"Marseille", "France", Region::france, "Marseille", "Massiliae; Massilia; Marseilles; Marsella"},
    {"Aix-en-Provence", "France", Region::france, "Aix; Aix-en-Provence", "Aquis Sextiis; Aquae Sextiae"},
    {"Trévoux", "France", Region::france, "Trévoux", "Trevoltii; Trivultii"},
    {"Pont-à-Mousson", "France", Region::france, "Ponti Mussi; Pons-ad-Monticulum; Pont-à-Mousson", "Mussiponti"},
    {"Vienne in Dauphiné", "France", Region::france, "Viennae; Vienne", ""},
    {"Valence in Dauphiné", "France", Region::france, "Valentiae", "Valence"},
    {"Coutances", "France", Region::france, "Constantiae", "Constantia"},
    {"Boulogne-sur-Mer", "France", Region::france, "Bononiae", ""},
    {"Madrid", "Spain", Region::spain,
     "Madriti; Madridii; Mantuae Carpentanae; Mantuae Carpentanorum; Matriti; Madrid; Mantuae",
     "Mantuae Carpetanorum; Matritum; Matrit."},
    {"Seville", "Spain", Region::spain, "Hispalensi; Hispali; Seville; Sevilla", "Hispalis; Hispal.; Siviglia"},
    {"Barcelona", "Spain", Region::spain, "Barcinonae; Barcinone; Barcelona",
     "Barchinonae; Barcino; Barcinon.; Barcelone; Barçalona"},
    {"Valencia", "Spain", Region::spain, "Valentiae; Valentiae Edetanorum; Valencia",
     "Valentia Edetanorum; Valentiae Hedetanorum; Valence; Valenza"},
    {"Zaragoza", "Spain", Region::spain, "Caesar-Augustae; Caragoça; Cesaragustana Ciuitate; Zaragoza",
     "Caesaraugusta; Saragossa; Saragosse"},
    {"Salamanca", "Spain", Region::spain, "Salamanticae; Salmanticae; Salmanticen.; Salmaticen.; Salamanca",
     "Salmantica; Helmanticae; Salamanque"},
    {"Alcalá de Henares", "Spain", Region::spain, "Compluti; Alcalá de Henares", "Complutum; Alcala"},
    {"Valladolid", "Spain", Region::spain, "Pintiae; Vallesoleti; Valladolid", "Vallisoleti; Pincia"},
    {"Toledo", "Spain", Region::spain, "Toleti; Toledo", "Toletum; Tolède"},
    {"Granada", "Spain", Region::spain, "Garnatae; Granada", "Granatae; Granata; Grenade"},
    {"Burgos", "Spain", Region::spain, "", "Burgis; Burgi; Burgos"},
    {"Pamplona", "Spain", Region::spain, "Pamplona", "Pampilonae; Pompelonae; Pompaelonis; Pampelune"},
    {"Córdoba", "Spain", Region::spain, "Córdoba; Cordova", "Cordubae; Corduba; Cordoue"},
    {"Tolosa in Spain", "Spain", Region::spain, "Tolosae", ""},
    {"Plasencia", "Spain", Region::spain, "Placentiae", ""},
    {"Lisbon", "Portugal", Region::spain,
     "Ulyssipone; Ulysipone; Olisipone; Olissipone; Olysipone; Olysippone; Olyssipone; Lisbon; Lisboa; Lisbonne",
     "Ulissipone; Olisipo; Lissabon; Lixboa"},
    {"Coimbra", "Portugal", Region::spain, "Conimbricae; Coimbra", "Conimbrica; Conimbr.; Coïmbre"},
    {"Évora", "Portugal", Region::spain, "Eborae; Évora", "Ebora"},
    {"Porto", "Portugal", Region::spain, "Portucale; Porto", "Portu; Portus Cale; Oporto"},
};

} // namespace detail
} // namespace v0
} // namespace bifolium
