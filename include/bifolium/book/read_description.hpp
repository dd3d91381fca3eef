// SPDX-License-Identifier: MIT
/// A description from the texts of its fields, as a row of a table or a record of a catalogue gives them. What cannot
/// be read is kept with its reason beside what can: one bad field does not cost the others, and no text is dropped
/// without a word. What a field says beside its own matter fills a field that is empty: the pages after a formula, the
/// format after a size.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/book/field_texts.hpp>
#include <bifolium/core/limits.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads the fields. Texts that cannot be read are in `unread`, doubtful ones in `doubts`. Where a field has character
/// references of HTML (`A&#8312;`), its text is taken to be the text with the characters: that is kept in the description,
/// and places and edits are of it. A field that reaches a limit is in `unread`, with the error that names the limit; a
/// text that is too long is not kept. The function allocates memory.
/// Example: `read_description({.format = "8vo"}).format->value == Format::of(8)`.
[[nodiscard]] BIFOLIUM_INLINE Description read_description(FieldTexts const& texts, Conventions const& conventions = {},
                                                           Limits const& limits = {});

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/book/detail/reading/read_description.hpp>
#endif
