// SPDX-License-Identifier: MIT
/// A record of one book, as `describe_book` reads it: one `name: value` a line, in any order, '#' begins a comment line.
/// The record knows lines, names and values; what a value means is for the program that reads it.
#pragma once

#include <bifolium/core/ascii.hpp>

#include "input.hpp"
#include "name_meant.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace support {

struct Field {
  std::string name, value;
  unsigned line{}, column{}; ///< where the value begins, in characters from 1
};

/// What is wrong in a record, and where.
struct RecordError {
  unsigned line{}, column{1};
  std::string sentence;
  std::string_view identifier; ///< of the problem, for programs
};

/// The fields of a record, each name once.
class Record {
  std::vector<Field> fields_{};

  static std::string trimmed(std::string_view text) {
    auto const first = text.find_first_not_of(" \t");
    return first == text.npos ? "" : std::string{text.substr(first, text.find_last_not_of(" \t") - first + 1)};
  }

public:
  [[nodiscard]] bool empty() const { return fields_.empty(); }

  /// Reads a record; every line that is wrong goes to `errors`.
  static Record read(Lines& lines, std::span<std::string_view const> names, std::vector<RecordError>& errors) {
    Record record;
    while (lines.next()) {
      auto const number = static_cast<unsigned>(lines.number());
      auto const& text = lines.text();
      if (lines.too_long()) {
        errors.push_back({number, 1, lines.length_told(), "line_too_long"});
        continue;
      }
      auto const line = trimmed(text);
      if (line.empty() || line[0] == '#') continue;
      auto const colon = line.find(':');
      if (colon == line.npos) {
        errors.push_back({number, 1, "found '" + line + "' where 'name: value' is expected", "not_a_field"});
        continue;
      }
      auto const start = line.find_first_not_of(" \t", colon + 1);
      unsigned column = 1; // of the value, counting characters in the whole line
      auto const before = text.find(line) + (start == line.npos ? line.size() : start);
      for (std::size_t i = 0; i < before; ++i)
        column += (static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80U ? 1U : 0U;
      Field field{trimmed(line.substr(0, colon)), trimmed(line.substr(colon + 1)), number, column};
      bool known = false;
      for (auto name : names)
        if (bifolium::equal_in_any_case(name, field.name)) known = true, field.name = name;
      if (!known) {
        auto sentence = "no field is called '" + field.name + "'; ";
        if (auto const meant = name_meant(field.name, names))
          sentence += "is it '" + *meant + "'?";
        else
          for (auto name : names) sentence.append(name == names.front() ? "there are " : ", ").append(name);
        errors.push_back({number, 1, sentence, "unknown_field"});
      } else if (auto const other = record.find(field.name)) {
        errors.push_back({number, 1, "'" + field.name + "' is in line " + std::to_string(other->line) + " already",
                          "repeated_field"});
      } else if (!field.value.empty()) {
        record.fields_.push_back(field);
      }
    }
    if (record.fields_.empty() && errors.empty())
      errors.push_back({1, 1, "the record is empty: no field has a value", "empty_record"});
    return record;
  }

  /// The field of that name in the record; null where there is none.
  [[nodiscard]] Field const* look_up(std::string_view name) const {
    for (auto const& field : fields_)
      if (field.name == name) return &field;
    return nullptr;
  }
  [[nodiscard]] std::optional<Field> find(std::string_view name) const {
    for (auto const& field : fields_)
      if (field.name == name) return field;
    return std::nullopt;
  }
};

} // namespace support
