// SPDX-License-Identifier: MIT
/// read_description: each field by its reader, after the character references of its text were read.
#pragma once

#include <bifolium/book/detail/reading/description_reader.hpp>
#include <bifolium/book/read_description.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
/// The texts of a description with characters in the places of references, so that repairs are edits of texts without any.
/// A text that is too long is not read, and none with a malformed reference; that of the formula is told by its reader.
class FieldsOfCharacters {
  struct Row {
    std::string_view FieldTexts::*text;
    Field field;
  };
  static constexpr Row rows[]{{&FieldTexts::formula, Field::formula},
                              {&FieldTexts::pagination, Field::pagination},
                              {&FieldTexts::leaves, Field::leaves},
                              {&FieldTexts::plates, Field::plates},
                              {&FieldTexts::format, Field::format},
                              {&FieldTexts::signing, Field::signing},
                              {&FieldTexts::gatherings, Field::gatherings},
                              {&FieldTexts::height, Field::height},
                              {&FieldTexts::width, Field::width},
                              {&FieldTexts::binding, Field::binding},
                              {&FieldTexts::chain_lines, Field::chain_lines},
                              {&FieldTexts::watermark, Field::watermark},
                              {&FieldTexts::countermark, Field::countermark},
                              {&FieldTexts::head_edge, Field::head_edge},
                              {&FieldTexts::tail_edge, Field::tail_edge},
                              {&FieldTexts::fore_edge, Field::fore_edge},
                              {&FieldTexts::point_hole, Field::point_hole},
                              {&FieldTexts::leaves_seen, Field::leaves_seen},
                              {&FieldTexts::material, Field::material},
                              {&FieldTexts::year, Field::year},
                              {&FieldTexts::coded_year, Field::coded_year},
                              {&FieldTexts::place, Field::place},
                              {&FieldTexts::coded_place, Field::coded_place}};
  std::string kept_[sizeof rows / sizeof rows[0]];

public:
  FieldTexts texts;
  std::vector<UnreadField> refused{};

  FieldsOfCharacters(FieldTexts const& given, Limits const& limits) : texts{given} {
    for (auto const& row : rows) {
      auto& text = texts.*row.text;
      if (is_too_long(text, limits)) {
        refused.push_back({row.field, too_long(limits), {}, 0, false});
        text = {};
      }
      if (text.find('&') == text.npos) continue;
      using Escapes = TextOfCharacters::Escapes; // of a formula &lt; is no markup
      TextOfCharacters const characters{text, row.field == Field::formula ? Escapes::kept : Escapes::read};
      if (characters.malformed() && row.field != Field::formula) {
        refused.push_back({row.field, characters.error(), std::string{text}, 0, false});
        text = {};
      } else if (characters.changed()) {
        auto& kept = kept_[&row - rows];
        kept = characters.text();
        text = kept;
      }
    }
  }
};
} // namespace detail

BIFOLIUM_INLINE Description read_description(FieldTexts const& texts, Conventions const& conventions,
                                             Limits const& limits) {
  detail::FieldsOfCharacters const fields{texts, limits};
  auto read = detail::DescriptionReader{fields.texts, conventions, limits}.description();
  for (auto const& one : fields.refused) read.unread.push_back(one);
  return read;
}

} // namespace v0
} // namespace bifolium
