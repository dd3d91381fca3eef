// SPDX-License-Identifier: MIT
/// The words of statements of signing (common practice, no source). Letters of a statement are signatures, so a word that is
/// not here is refused and not passed over. A longer word comes before its beginning.
#pragma once

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words for the leaf with the title, the longer before the shorter.
inline constexpr char const* title_leaf_words[]{
    "title-page", "title page", "title-leaf", "title leaf", "titlepage",     "title", "t.p.",        "t. p.",
    "t.-p.",      "tp",         "Titelblatt", "Titel",      "page de titre", "titre", "frontespizio"};
/// Words for what is on a leaf that is not signed: -A1 blank.
inline constexpr char const* words_for_unsigned_leaves[]{"blank",      "half-title", "half title", "errata",
                                                         "dedication", "contents",   "preface"};
/// Words after roman or arabic.
inline constexpr char const* words_for_signing_numerals[]{"numerals", "figures", "numbers"};
/// Words before the gatherings of an exception: -$2 in quires A, C.
inline constexpr char const* words_for_signed_gatherings[]{"gatherings", "gathering", "quires", "quire",
                                                           "signatures", "sigs.",     "sig."};
/// Words before leaves that are not signed.
inline constexpr char const* words_for_signing_exceptions[]{"except for", "excepting", "except", "but not",
                                                            "not",        "omitting",  "save",   "less"};

} // namespace detail
} // namespace v0
} // namespace bifolium
