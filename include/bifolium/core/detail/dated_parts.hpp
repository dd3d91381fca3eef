// SPDX-License-Identifier: MIT
/// Parts of a book that bear a date of their own. A date of printing may be read off the title or the end of a book, but the
/// date of a preface or a privilege may be older than the edition, so the reader must know where a year stands. Common
/// practice, no source.
#pragma once

#include <bifolium/core/detail/date_words.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Parts of the book beside a year that stands in them. What a colophon or a second title says is a date of printing
/// too; a preface or a privilege may be older than the edition.
inline constexpr DateWordRow parts_with_dates[]{
    {"colophon"sv, DateWord::colophon},   {"col"sv, DateWord::colophon},        {"kolophon"sv, DateWord::colophon},
    {"colofon"sv, DateWord::colophon},    {"colofón"sv, DateWord::colophon},    {"at end"sv, DateWord::colophon},
    {"in fine"sv, DateWord::colophon},    {"explicit"sv, DateWord::colophon},   {"title page"sv, DateWord::colophon},
    {"title-page"sv, DateWord::colophon}, {"title"sv, DateWord::colophon},      {"t.p"sv, DateWord::colophon},
    {"half-title"sv, DateWord::colophon}, {"half title"sv, DateWord::colophon}, {"cover"sv, DateWord::colophon},
    {"preface"sv, DateWord::preface},     {"pref"sv, DateWord::preface},        {"dedication"sv, DateWord::preface},
    {"ded"sv, DateWord::preface},         {"privilege"sv, DateWord::preface},   {"privilège"sv, DateWord::preface},
    {"priv"sv, DateWord::preface},        {"privilegio"sv, DateWord::preface},  {"imprimatur"sv, DateWord::preface},
    {"licence"sv, DateWord::preface},     {"license"sv, DateWord::preface},     {"approbation"sv, DateWord::preface},
    {"préface"sv, DateWord::preface},     {"dédicace"sv, DateWord::preface},    {"Vorrede"sv, DateWord::preface},
    {"Vorwort"sv, DateWord::preface},     {"Widmung"sv, DateWord::preface},     {"prefazione"sv, DateWord::preface},
    {"dedica"sv, DateWord::preface},      {"dedicatoria"sv, DateWord::preface},
};
/// Words between a year and the part of the book in which it stands: 1608 in the colophon.
inline constexpr std::string_view words_before_part[]{
    "in"sv,      "in the"sv, "on"sv,  "on the"sv, "at"sv,     "at the"sv,  "im"sv,      "in der"sv,
    "auf dem"sv, "am"sv,     "au"sv,  "à la"sv,   "sur le"sv, "dans le"sv, "dans la"sv, "nel"sv,
    "nella"sv,   "al"sv,     "sul"sv, "en el"sv,  "en la"sv,  "in het"sv,  "op de"sv};

} // namespace detail
} // namespace v0
} // namespace bifolium
