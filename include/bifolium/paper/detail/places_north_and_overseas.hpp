// SPDX-License-Identifier: MIT
/// Names of towns of printing: the towns of the Low Countries, Britain, Ireland, Scandinavia and America.
/// A name that belongs to several towns is in the row of each. Names that differ only in case, accents, points, or u
/// and v, i and j, are in a row once.
///
/// Source: the Latin Place Names File of the Bibliographic Standards Committee of the RBMS (as CSV, MIT licence), but
/// for the last names of a row, which are from memory.
#pragma once

#include <bifolium/paper/detail/place_row.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

// name, country of today, region of printing; names as the source has them; names from memory
inline constexpr PlaceRow places_of_north_and_overseas[]{
    {"Amsterdam", "Netherlands", Region::netherlands,
     "Amstelodami; Amstelaedami; Alenthopoli; Alentopholi; Alentopoli; Amstaelodami; Amsteledami; Amstellaedami; "
     "Amstelraedami; Amstelredami; Amstelreodami; Amstelrodami; Amsteraedami; Amsterdami; Amsterodami; Amsterdam; "
     "Amstelredamme",
     "Amst.; Amstel.; Amstelod.; Amsteldam; Amstelredam; Amsterdamme; Amsterdamo"},
    {"Antwerp", "Belgium", Region::netherlands,
     "Antverpiae; Antverp.; Antwerpiae; Antwerp; Antwerpen; Anvers; Andorp; T'Antwerpen",
     "Antverpia; Antorff; Antorf; Anversa; Amberes; Thantwerpen"},
    {"Leiden", "Netherlands", Region::netherlands,
     "Lugduni; Lugdunum; Lugd.; Lugdun.; Lugduni Batavorum; Lugdunum Batavorum; Lugd. Batav.; Leidae; Leidae "
     "Batauorum; Leydae; Leydae in Batauis; Lug. Bat.; Lug. Batau.; Lug. Batauor.; Lug. Batauorum; Lugd. Bat.; Lugd. "
     "Batauor.; Lugd. Batauorum; Lugdu. Batau.; Lugdun. Batau.; Lugdun. Batauorum; Lugduni Bat.; Lugduni Batau.; "
     "Lugduni Batauor.; Lugduni Batauori; Lugduni apud Batauos; Lugduni in Batauis; Lugduno-Bat.; Lugduno-Batauae; "
     "Leiden; Leyden; Leyde; Leide",
     "L. Bat.; Leida"},
    {"The Hague", "Netherlands", Region::netherlands,
     "Hagae Comitum; Hagae Com.; Hagae-Comitis; 's-Gravenhage; La Haye",
     "Haga Comitis; Hagae; The Hague; 's-Gravenhaghe; Den Haag; Haag; L'Aia"},
    {"Utrecht", "Netherlands", Region::netherlands,
     "Ultrajecti; Trajecti ad Rhenum; Traiect. Batau.; Traiecti Batauorum; Utrecht; Autrecht",
     "Ultrajectum; Trajectum ad Rhenum; Traj. ad Rhen.; Uytrecht; Wtrecht"},
    {"Rotterdam", "Netherlands", Region::netherlands,
     "Roterod.; Roteraedami; Roterodami; Rotterdami; Rotterodami; Rotterdam", "Roterodamum; Roterdam"},
    {"Louvain", "Belgium", Region::netherlands, "Lovanii; Louvain",
     "Lovanium; Lovan.; Leuven; Loven; Löwen; Lovanio; Lovaina"},
    {"Brussels", "Belgium", Region::netherlands, "Bruxellae; Bruxellis; Brussels; Bruxelles",
     "Bruxella; Bruxell.; Brussel; Bruxellas; Bruselas"},
    {"Ghent", "Belgium", Region::netherlands, "Gandavi; Gandae; Ghent", "Gandavum; Gand.; Gent; Ghendt; Gante"},
    {"Liège", "Belgium", Region::netherlands, "Leodii; Liège",
     "Leodium; Leod.; Augustae Eburonum; Luik; Luyck; Lüttich; Lieja"},
    {"Douai", "France", Region::netherlands, "Duaci; Douai",
     "Duacum; Duac.; Duaci Catuacorum; Douay; Doway; Dowaye; Dowaij"},
    {"Saint-Omer", "France", Region::netherlands, "",
     "Audomaropoli; Audomari; Fano Sancti Audomari; Saint-Omer; St. Omer; S. Omers; Saint Omers; Sint-Omaars"},
    {"Cambrai", "France", Region::netherlands, "Cameraci; Cambrai", "Cameracum; Cambray; Kamerijk"},
    {"Delft", "Netherlands", Region::netherlands, "Delfis; Delphis; Delphis Batauorum; Delft", "Delphi; Delf"},
    {"Haarlem", "Netherlands", Region::netherlands, "Harlemi; Haarlem", "Harlemum; Haerlem; Harlem"},
    {"Franeker", "Netherlands", Region::netherlands, "Franekerae; Franekerae Frisiorum; Franequerae; Franeker",
     "Franequera; Franecker; Franequer"},
    {"Groningen", "Netherlands", Region::netherlands, "Groningae; Groningen", "Groninga; Groeningen; Groningue"},
    {"Leeuwarden", "Netherlands", Region::netherlands, "Leovardiae; Leeuwarden", "Leovardia; Leuwarden"},
    {"Harderwijk", "Netherlands", Region::netherlands,
     "Hardervici; Harderouici; Harderouici Gelrorum; Harderuici Gelrorum; Herder-Wiici; Harderwijk",
     "Hardervicum; Harderwyk"},
    {"Middelburg", "Netherlands", Region::netherlands,
     "Medioburgi; Middelburgi; Middelburgi Zelandiae; Middelburg; Middelburgh",
     "Mediolburgi; Middelburgum; Middleburgh"},
    {"Dordrecht", "Netherlands", Region::netherlands, "Dordraci; Dordrechti; Durdrechti; Dordrecht; Dort",
     "Dordracum; Dordrechtum"},
    {"Gouda", "Netherlands", Region::netherlands, "Gouda; Gaudae; Gaudani; Goldae; Goudae; Gudae; Tergi",
     "Tergou; Ter Goude"},
    {"Deventer", "Netherlands", Region::netherlands, "Daventriae; Dauentriensis; Deventer", "Daventria"},
    {"Nijmegen", "Netherlands", Region::netherlands, "Noviomagi; Neomagi; Nouiomagi Batauorum; Nijmegen",
     "Noviomagum; Nimeguen; Nymegen; Nimègue; Nimwegen"},
    {"'s-Hertogenbosch", "Netherlands", Region::netherlands, "Sylvae Ducis; Buscoducis; 's-Hertogenbosch",
     "Buscoduci; Silvaeducis; Bois-le-Duc; Den Bosch"},
    {"Maastricht", "Netherlands", Region::netherlands, "Trajecti ad Mosam; Maastricht; Maestricht", "Trajecti Mosae"},
    {"Bruges", "Belgium", Region::netherlands, "Brugis Flandror; Brugis Flandrorum; Bruges",
     "Brugis; Brugae; Brugge; Brujas"},
    {"Mechelen", "Belgium", Region::netherlands, "Mechliniae; Mechelen", "Mechlinia; Malines; Mechlin"},
    {"Tournai", "Belgium", Region::netherlands, "Tornaci; Tornaci Neruiorum; Tournai", "Tornacum; Tournay; Doornik"},
    {"Mons", "Belgium", Region::netherlands, "Montibus; Mons",
     "Montibus Hannoniae; Montes Hannoniae; Bergen in Henegouwen"},
    {"London", "Great Britain", Region::britain,
     "Londini; Londinum; Augustae Trinobantum; Londoni; Londoniae; London; Londres",
     "Lond.; Augusta Trinobantum; Londra; Londen; Londyn; Augustae"},
    {"Edinburgh", "Great Britain", Region::britain,
     "Edimburgi; Edinburgense; Edinburghi; Edinburgi; Eleutheropoli Natoliae; Edinburgh",
     "Edinburgum; Edinb.; Edinbrough; Edinburg; Edimbourg; Edimburgo"},
    {"Oxford", "Great Britain", Region::britain,
     "Oxon.; Bellositi Dobunorum; Oxoniae; Oxonias; Oxonii; Oxoniis; Oxonioe; Oxonni; Oxford",
     "Oxonia; Oxonium; Oxenford; Oxenforde; Oxforde"},
    {"Cambridge", "Great Britain", Region::britain, "Cantabridgiae; Cantabrigae; Cantabrigiae; Cambridge",
     "Cantabrigia; Cantab.; Cantabr.; Cambrige"},
    {"Glasgow", "Great Britain", Region::britain, "Glasguae; Glasquae; Glasgow", "Glasgua; Glasgo"},
    {"Aberdeen", "Great Britain", Region::britain, "Aberdoniae; Aberdoniis; Aberdeen",
     "Abredoniae; Aberdonia; Abredeis; Aberdene"},
    {"St Andrews", "Great Britain", Region::britain, "",
     "Andreapoli; Sancti Andreae; Fani Sancti Andreae; St Andrews; Saint Andrews; Sanctandrous"},
    {"York", "Great Britain", Region::britain, "Eboraci; York", "Eboracum; Yorke"},
    {"Bristol", "Great Britain", Region::britain, "Bristol", "Bristoliae; Bristolii; Bristoll"},
    {"Birmingham", "Great Britain", Region::britain, "Birminghamae; Birminghamiae; Birmingham", "Birminghamia"},
    {"Newcastle upon Tyne", "Great Britain", Region::britain, "Newcastle; Newcastle upon Tyne",
     "Novicastri; Novi Castri super Tinam"},
    {"Norwich", "Great Britain", Region::britain, "Norwich", "Nordovici; Norvici; Norwitch"},
    {"Exeter", "Great Britain", Region::britain, "Exoniae; Iscae Dumnoniorum; Exeter", "Exonia; Exon"},
    {"Bath", "Great Britain", Region::britain, "Bathoniae; Bath", "Bathonia; Aquis Solis"},
    {"Eton", "Great Britain", Region::britain, "", "Etonae; Etona; Eton; Eaton"},
    {"Westminster", "Great Britain", Region::britain, "Westmonasterii; Westminster", "Westmonasterium; Westmynster"},
    {"Boston in Lincolnshire", "Great Britain", Region::britain, "Boston", ""},
    {"Dublin", "Ireland", Region::ireland, "Dublini; Dubliniae; Dublinii; Dublinii in Hibernia; Dublin",
     "Dublinum; Dubl.; Dubline; Divelin; Dublino"},
    {"Cork", "Ireland", Region::ireland, "Cork; Corke", "Corcagiae; Corcagia"},
    {"Belfast", "Great Britain", Region::ireland, "", "Belfasti; Belfast"},
    {"Copenhagen", "Denmark", Region::europe,
     "Havniae; Coppenhagii; Hafniae; Hauaniae; Copenhagen; København; Kjøbenhavn; Kopenhagen; Kiobenhaffn",
     "Hafnia; Haffniae; Hafn.; Kopenhagae; Copenhague"},
    {"Stockholm", "Sweden", Region::europe, "Holmiae; Stocholmiae; Stockholmae; Stockholmiae; Stockholm",
     "Holmia; Stockholmia; Holm.; Stokholm; Stockholmo"},
    {"Uppsala", "Sweden", Region::europe, "Upsaliae; Vppsalae; Uppsala; Upsala", "Upsalia"},
    {"Lund", "Sweden", Region::europe, "Londini; Londini Scanorum; Londini Gothorum; Lundae; Lund", "Lunda"},
    {"Turku", "Finland", Region::europe, "Aboae; Turku", "Aboa; Åbo"},
    {"Christiania (Oslo)", "Norway", Region::europe, "", "Christianiae; Christiania; Oslo; Kristiania"},
    {"Landskrona", "Sweden", Region::europe, "", "Coronae"},
    {"Boston", "United States", Region::usa,
     "Bostonae Nou-Anglorum; Bostoni Nou-Anglorum; Bostoni in Nou-Anglia; Bostoni-Massachusettensium; Bostoniae; "
     "Bostoniae Americae; Boston",
     "Bostonia; Bostonii"},
    {"Philadelphia", "United States", Region::usa, "Philadelphia; Philadelphiae; Philadelphie", "Filadelfia"},
    {"New York", "United States", Region::usa, "Novi Eboraci; Moronopolis; Neo-Eboraci; New York",
     "Novum Eboracum; Nueva York"},
    {"Cambridge (Massachusetts)", "United States", Region::usa,
     "Cantabrigiae; Cambridge; Cantabrigiae Nov-Anglorum; Cantabrigiae Nou-Angl.; Cantabrigiae Nou-Angliae",
     "Cambridge in New-England"},
    {"Baltimore", "United States", Region::usa, "Baltimori; Baltimore", "Baltimorae"},
    {"New Haven", "United States", Region::usa, "Nouo-Portu Connecticutensium; New Haven", "Novi Portus"},
    {"Hartford", "United States", Region::usa, "Hartfordiae; Hartford", "Hartfordia"},
    {"Mexico City", "Mexico", Region::anywhere, "Mexici; Mexicana ciuitate; Tenochtitlani; Themistitlani; Mexico City",
     "Mexicum; Mexico; Mexique"},
    {"Puebla", "Mexico", Region::anywhere, "Angelopoli; Angelorum ciuitate",
     "Angelopolis; Puebla; Puebla de los Angeles"},
    {"Lima", "Peru", Region::anywhere, "Lima; Limae", "Civitate Regum; Ciudad de los Reyes; Los Reyes"},
    {"Quebec", "Canada", Region::anywhere, "", "Quebeci; Quebec"},
    {"Argentina (the country)", "Argentina", Region::anywhere, "", "Argentina"},
    {"Córdoba in Argentina", "Argentina", Region::anywhere, "", "Cordubae"},
    {"York (Pennsylvania)", "United States", Region::usa, "York", ""},
    {"Norwich (Connecticut)", "United States", Region::usa, "Norwich", ""},
};

} // namespace detail
} // namespace v0
} // namespace bifolium
