// SPDX-License-Identifier: MIT
/// Records of library catalogues in MARC 21, and what they say of a book in the columns that `audit_records` reads. Where each
/// datum is: MARC 21 Format for Bibliographic Data, Library of Congress (008, 300, 340); that signatures are in a general note
/// (500) that begins with "Signatures:" or "Collation:" is a rule of DCRMR (6.215.44). 264 before 260, and 590 for local notes,
/// are common practice, no source.
#pragma once

#include "audit_answer.hpp"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace support {

/// A field of a record: a tag and its subfields, or a tag and data alone (tags below 010).
struct MarcField {
  std::string tag{};
  char first_indicator{' '}, second_indicator{' '};
  std::string data{};                                    ///< of a control field
  std::vector<std::pair<char, std::string>> subfields{}; ///< code and text
};

/// A record.
class MarcRecord {
  std::vector<MarcField> fields_{};

  [[nodiscard]] MarcField const* field(std::string_view tag, char second = '\0') const {
    for (auto const& one : fields_)
      if (one.tag == tag && (second == '\0' || one.second_indicator == second)) return &one;
    return nullptr;
  }
  [[nodiscard]] static std::string subfield(MarcField const* field, char code) {
    if (field != nullptr)
      for (auto const& [name, text] : field->subfields)
        if (name == code) return text;
    return "";
  }
  /// Without the punctuation that ISBD puts between elements.
  static std::string bare(std::string text) {
    while (!text.empty() && (text.back() == ' ' || text.back() == ':' || text.back() == ';' || text.back() == ',' ||
                             text.back() == '/' || text.back() == '+'))
      text.pop_back();
    return text;
  }
  static bool begins(std::string_view text, std::string_view word) { return text.substr(0, word.size()) == word; }

  /// `19 cm (8vo)`, `19 x 12 cm`, `12 cm bound to 20 cm`.
  static void dimensions(std::string text, RecordTexts& texts) {
    if (auto const open = text.find('('); open != text.npos) {
      auto const close = text.find(')', open);
      if (texts["format"].empty() && close != text.npos) texts.at("format") = text.substr(open + 1, close - open - 1);
      text.erase(open);
    }
    text = bare(text);
    auto unit = std::string{text.find("mm") != text.npos ? " mm" : " cm"};
    for (std::string_view sign : {" x ", " × "})
      if (auto const by = text.find(sign); by != text.npos) {
        texts.at("width_mm") = text.substr(by + sign.size());
        text = text.substr(0, by) + unit;
      }
    for (std::string_view words : {" bound to ", ", in binding "})
      if (auto const bound = text.find(words); bound != text.npos) {
        texts.at("binding_mm") = text.substr(bound + words.size());
        text.erase(bound);
      }
    texts.at("height_mm") = text;
  }
  /// "Signatures: A-K⁸ L⁴." and "Collation: 8vo: A-H⁴; 32 leaves".
  static void note(std::string const& text, RecordTexts& texts) {
    for (std::string_view word : {"Signatures", "Collation", "Signature statement"}) {
      if (!begins(text, word) || !texts["formula"].empty()) continue;
      auto const colon = text.find(':');
      if (colon == text.npos || colon > word.size() + 60) continue;
      auto const from = text.find_first_not_of(' ', colon + 1);
      if (from != text.npos) texts.at("formula") = text.substr(from);
    }
    for (std::string_view lines : {"hain lines vertical", "hain lines are vertical", "ertical chain lines"})
      if (text.find(lines) != text.npos) texts.at("chain_lines") = "vertical";
    for (std::string_view lines : {"hain lines horizontal", "hain lines are horizontal", "orizontal chain lines"})
      if (text.find(lines) != text.npos) texts.at("chain_lines") = "horizontal";
  }
  /// The years of 008: one of type s, t or r; a range of type q or m. `17uu` is 1700 to 1799.
  static std::string coded_years(std::string const& data) {
    if (data.size() < 15) return "";
    auto const year = [&](std::size_t at, char unknown) {
      auto digits = data.substr(at, 4);
      for (char& c : digits) {
        if (c == 'u') c = unknown;
        if (c < '0' || c > '9') return std::string{};
      }
      return digits;
    };
    auto const type = data[6];
    auto const low = year(7, '0'), high = year(type == 'q' || type == 'm' ? 11 : 7, '9');
    if (low.empty() || high.empty() || (type == 'n' || type == 'b')) return "";
    return low == high ? low : low + '-' + high;
  }

public:
  void add(MarcField field) { fields_.push_back(std::move(field)); }
  void clear() { fields_.clear(); }
  [[nodiscard]] bool empty() const { return fields_.empty(); }

  /// What the record says, by column.
  [[nodiscard]] RecordTexts texts() const {
    RecordTexts texts;
    if (auto const* number = field("001")) texts.at("record") = trimmed(number->data);
    auto const* imprint = field("264", '1');
    if (imprint == nullptr) imprint = field("260");
    texts.at("place") = bare(subfield(imprint, 'a'));
    texts.at("year") = bare(subfield(imprint, 'c'));
    if (auto const* coded = field("008"); coded != nullptr && texts["year"].empty())
      texts.at("year") = coded_years(coded->data);
    auto const* physical = field("300");
    texts.at("pagination") = bare(subfield(physical, 'a'));
    if (auto const medium = subfield(field("340"), 'm'); !medium.empty()) texts.at("format") = bare(medium);
    if (auto const size = subfield(physical, 'c'); !size.empty()) dimensions(size, texts);
    for (auto const& one : fields_)
      if (one.tag == "500" || one.tag == "590") note(subfield(&one, 'a'), texts);
    return texts;
  }
};

} // namespace support
