// SPDX-License-Identifier: MIT
/// The names of characters in HTML that catalogues hold: those that HTML has had since version 4, without arrows and
/// mathematics, and those of HTML 5 for fractions, ASCII and signs that are set as signatures.
///
/// Source: HTML Living Standard, 13.5 (named character references) and 13.2.5.80 (numbers from 128 to 159).
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {
namespace detail {

struct CharacterName {
  char const* name;
  std::uint16_t value;
};
/// In the order of the characters.
inline constexpr CharacterName character_names[]{
    {"excl", 0x0021},    {"quot", 0x0022},     {"num", 0x0023},     {"dollar", 0x0024}, {"percnt", 0x0025},
    {"amp", 0x0026},     {"apos", 0x0027},     {"lpar", 0x0028},    {"rpar", 0x0029},   {"ast", 0x002A},
    {"plus", 0x002B},    {"comma", 0x002C},    {"period", 0x002E},  {"sol", 0x002F},    {"colon", 0x003A},
    {"semi", 0x003B},    {"lt", 0x003C},       {"equals", 0x003D},  {"gt", 0x003E},     {"quest", 0x003F},
    {"commat", 0x0040},  {"lbrack", 0x005B},   {"lsqb", 0x005B},    {"rbrack", 0x005D}, {"rsqb", 0x005D},
    {"Hat", 0x005E},     {"lowbar", 0x005F},   {"nbsp", 0x00A0},    {"iexcl", 0x00A1},  {"cent", 0x00A2},
    {"pound", 0x00A3},   {"curren", 0x00A4},   {"yen", 0x00A5},     {"brvbar", 0x00A6}, {"sect", 0x00A7},
    {"uml", 0x00A8},     {"copy", 0x00A9},     {"ordf", 0x00AA},    {"laquo", 0x00AB},  {"not", 0x00AC},
    {"shy", 0x00AD},     {"reg", 0x00AE},      {"macr", 0x00AF},    {"deg", 0x00B0},    {"plusmn", 0x00B1},
    {"pm", 0x00B1},      {"sup2", 0x00B2},     {"sup3", 0x00B3},    {"acute", 0x00B4},  {"micro", 0x00B5},
    {"para", 0x00B6},    {"middot", 0x00B7},   {"cedil", 0x00B8},   {"sup1", 0x00B9},   {"ordm", 0x00BA},
    {"raquo", 0x00BB},   {"frac14", 0x00BC},   {"frac12", 0x00BD},  {"half", 0x00BD},   {"frac34", 0x00BE},
    {"iquest", 0x00BF},  {"Agrave", 0x00C0},   {"Aacute", 0x00C1},  {"Acirc", 0x00C2},  {"Atilde", 0x00C3},
    {"Auml", 0x00C4},    {"Aring", 0x00C5},    {"AElig", 0x00C6},   {"Ccedil", 0x00C7}, {"Egrave", 0x00C8},
    {"Eacute", 0x00C9},  {"Ecirc", 0x00CA},    {"Euml", 0x00CB},    {"Igrave", 0x00CC}, {"Iacute", 0x00CD},
    {"Icirc", 0x00CE},   {"Iuml", 0x00CF},     {"ETH", 0x00D0},     {"Ntilde", 0x00D1}, {"Ograve", 0x00D2},
    {"Oacute", 0x00D3},  {"Ocirc", 0x00D4},    {"Otilde", 0x00D5},  {"Ouml", 0x00D6},   {"times", 0x00D7},
    {"Oslash", 0x00D8},  {"Ugrave", 0x00D9},   {"Uacute", 0x00DA},  {"Ucirc", 0x00DB},  {"Uuml", 0x00DC},
    {"Yacute", 0x00DD},  {"THORN", 0x00DE},    {"szlig", 0x00DF},   {"agrave", 0x00E0}, {"aacute", 0x00E1},
    {"acirc", 0x00E2},   {"atilde", 0x00E3},   {"auml", 0x00E4},    {"aring", 0x00E5},  {"aelig", 0x00E6},
    {"ccedil", 0x00E7},  {"egrave", 0x00E8},   {"eacute", 0x00E9},  {"ecirc", 0x00EA},  {"euml", 0x00EB},
    {"igrave", 0x00EC},  {"iacute", 0x00ED},   {"icirc", 0x00EE},   {"iuml", 0x00EF},   {"eth", 0x00F0},
    {"ntilde", 0x00F1},  {"ograve", 0x00F2},   {"oacute", 0x00F3},  {"ocirc", 0x00F4},  {"otilde", 0x00F5},
    {"ouml", 0x00F6},    {"divide", 0x00F7},   {"oslash", 0x00F8},  {"ugrave", 0x00F9}, {"uacute", 0x00FA},
    {"ucirc", 0x00FB},   {"uuml", 0x00FC},     {"yacute", 0x00FD},  {"thorn", 0x00FE},  {"yuml", 0x00FF},
    {"OElig", 0x0152},   {"oelig", 0x0153},    {"Scaron", 0x0160},  {"scaron", 0x0161}, {"Yuml", 0x0178},
    {"circ", 0x02C6},    {"tilde", 0x02DC},    {"Alpha", 0x0391},   {"Beta", 0x0392},   {"Gamma", 0x0393},
    {"Delta", 0x0394},   {"Epsilon", 0x0395},  {"Zeta", 0x0396},    {"Eta", 0x0397},    {"Theta", 0x0398},
    {"Iota", 0x0399},    {"Kappa", 0x039A},    {"Lambda", 0x039B},  {"Mu", 0x039C},     {"Nu", 0x039D},
    {"Xi", 0x039E},      {"Omicron", 0x039F},  {"Pi", 0x03A0},      {"Rho", 0x03A1},    {"Sigma", 0x03A3},
    {"Tau", 0x03A4},     {"Upsilon", 0x03A5},  {"Phi", 0x03A6},     {"Chi", 0x03A7},    {"Psi", 0x03A8},
    {"Omega", 0x03A9},   {"alpha", 0x03B1},    {"beta", 0x03B2},    {"gamma", 0x03B3},  {"delta", 0x03B4},
    {"epsilon", 0x03B5}, {"zeta", 0x03B6},     {"eta", 0x03B7},     {"theta", 0x03B8},  {"iota", 0x03B9},
    {"kappa", 0x03BA},   {"lambda", 0x03BB},   {"mu", 0x03BC},      {"nu", 0x03BD},     {"xi", 0x03BE},
    {"omicron", 0x03BF}, {"pi", 0x03C0},       {"rho", 0x03C1},     {"sigmaf", 0x03C2}, {"sigma", 0x03C3},
    {"tau", 0x03C4},     {"upsilon", 0x03C5},  {"phi", 0x03C6},     {"chi", 0x03C7},    {"psi", 0x03C8},
    {"omega", 0x03C9},   {"thetasym", 0x03D1}, {"upsih", 0x03D2},   {"piv", 0x03D6},    {"ensp", 0x2002},
    {"emsp", 0x2003},    {"numsp", 0x2007},    {"puncsp", 0x2008},  {"thinsp", 0x2009}, {"hairsp", 0x200A},
    {"dash", 0x2010},    {"hyphen", 0x2010},   {"ndash", 0x2013},   {"mdash", 0x2014},  {"lsquo", 0x2018},
    {"rsquo", 0x2019},   {"sbquo", 0x201A},    {"ldquo", 0x201C},   {"rdquo", 0x201D},  {"bdquo", 0x201E},
    {"dagger", 0x2020},  {"Dagger", 0x2021},   {"ddagger", 0x2021}, {"bull", 0x2022},   {"hellip", 0x2026},
    {"permil", 0x2030},  {"prime", 0x2032},    {"Prime", 0x2033},   {"lsaquo", 0x2039}, {"rsaquo", 0x203A},
    {"frasl", 0x2044},   {"ell", 0x2113},      {"numero", 0x2116},  {"frac13", 0x2153}, {"frac23", 0x2154},
    {"frac15", 0x2155},  {"frac25", 0x2156},   {"frac35", 0x2157},  {"frac45", 0x2158}, {"frac16", 0x2159},
    {"frac56", 0x215A},  {"frac18", 0x215B},   {"frac38", 0x215C},  {"frac58", 0x215D}, {"frac78", 0x215E},
    {"minus", 0x2212},   {"mnplus", 0x2213},   {"lowast", 0x2217},  {"loz", 0x25CA},    {"starf", 0x2605},
    {"star", 0x2606},    {"phone", 0x260E},    {"female", 0x2640},  {"male", 0x2642},   {"spades", 0x2660},
    {"clubs", 0x2663},   {"hearts", 0x2665},   {"diams", 0x2666},   {"sung", 0x266A},   {"flat", 0x266D},
    {"natural", 0x266E}, {"sharp", 0x266F},    {"check", 0x2713},   {"cross", 0x2717},  {"malt", 0x2720},
    {"maltese", 0x2720}, {"sext", 0x2736}};
/// What the numbers from 128 to 159 mean, since many programs wrote them for characters of Windows; 0 for no character.
inline constexpr std::uint16_t characters_of_windows[32]{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

} // namespace detail
} // namespace v0
} // namespace bifolium
