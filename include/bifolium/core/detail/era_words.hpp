// SPDX-License-Identifier: MIT
/// Words for other eras. The number before or after such a word is not a year of ours, and nobody may take it for one.
/// Common practice, no source.
#pragma once

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// A word for another era. It stands directly after the year: 1221 AH, 50 v. Chr. Some stand before it as well: AH 1221, anno
/// mundi 5521. Before a year since printing began such letters are the initials of a printer or bookseller.
struct EraWord {
  std::string_view word;
  bool before_year;
};
inline constexpr EraWord era_words[]{{"b.c"sv, false},
                                     {"bc"sv, false},
                                     {"b. c"sv, false},
                                     {"b.c.e"sv, false},
                                     {"bce"sv, false},
                                     {"v.chr"sv, false},
                                     {"v. chr"sv, false},
                                     {"vor chr"sv, false},
                                     {"vor christus"sv, false},
                                     {"vor christi geburt"sv, false},
                                     {"av. j.-c"sv, false},
                                     {"av. j. c"sv, false},
                                     {"av. j.c"sv, false},
                                     {"avant j.-c"sv, false},
                                     {"avant jésus-christ"sv, false},
                                     {"a.c"sv, false},
                                     {"a. c"sv, false},
                                     {"a.chr"sv, false},
                                     {"a. chr"sv, false},
                                     {"ante christum"sv, false},
                                     {"ante christum natum"sv, false},
                                     {"avanti cristo"sv, false},
                                     {"antes de cristo"sv, false},
                                     {"voor christus"sv, false},
                                     {"v.c"sv, false},
                                     {"a.h"sv, true},
                                     {"a. h"sv, true},
                                     {"ah"sv, true},
                                     {"h"sv, false},
                                     {"hijri"sv, true},
                                     {"hijra"sv, true},
                                     {"hegira"sv, true},
                                     {"anno hegirae"sv, true},
                                     {"de l'hégire"sv, false},
                                     {"hégire"sv, false},
                                     {"a.m"sv, true},
                                     {"a. m"sv, true},
                                     {"am"sv, true},
                                     {"anno mundi"sv, true},
                                     {"a.u.c"sv, true},
                                     {"a. u. c"sv, true},
                                     {"auc"sv, true},
                                     {"ab urbe condita"sv, true},
                                     {"saka"sv, true},
                                     {"śaka"sv, true},
                                     {"samvat"sv, true},
                                     {"saṃvat"sv, true},
                                     {"vikram samvat"sv, true},
                                     {"vikrama"sv, true}};

} // namespace detail
} // namespace v0
} // namespace bifolium
