// SPDX-License-Identifier: MIT
/// Records of library catalogues in MARC 21, and what they say of a book in the columns that `audit_records` reads. Where each
/// datum is, and where that was read:
///
/// | datum | field | source |
/// |---|---|---|
/// | coded date and place | 008/06-14, /15-17 | MARC 21, Library of Congress (008, all materials) |
/// | extent, details, dimensions, several of them | 300 $a (repeated), $b, $c (repeated), $3 | MARC 21, Library of Congress (3XX) |
/// | format | 340 $m; in parentheses after 300 $c | MARC 21, Library of Congress (340); DCRM(B) 5D1.3 |
/// | signatures | 500 $a with Signatures: or Collation: | DCRMR 6.215.44.1, .9 |
/// | rules followed | 040 $e | DCRMR A1, A6 |
/// | publication rather than manufacture | 264, second indicator 1 | MARC 21 264, Biblioteca de Catalunya's copy |
/// | place and date of an imprint | 260 and 264 $a, $c | examples in records read; that both repeat, from memory |
/// | local notes | 590 | common practice, no source |
/// | codes of places | 008/15-17 | paper/country_code.hpp |
#pragma once

#include <bifolium/paper/country_code.hpp>

#include "audit_answer.hpp"

#include <initializer_list>
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

  /// Texts that a record gives one after another, as one; what follows a semicolon is a part of its own.
  static void append(std::string& to, std::string const& text) {
    if (!text.empty()) to += (to.empty() ? "" : "; ") + text;
  }
  /// All subfields of a code, of all fields with the tag.
  [[nodiscard]] std::vector<std::string> all(std::string_view tag, char code) const {
    std::vector<std::string> found;
    for (auto const& one : fields_)
      if (one.tag == tag)
        for (auto const& [name, text] : one.subfields)
          if (name == code && !bare(text).empty()) found.push_back(bare(text));
    return found;
  }
  void physical(RecordTexts& texts) const {
    for (auto const& extent : all("300", 'a')) append(texts.at("pagination"), extent);
    for (auto const& size : all("300", 'c')) {
      auto const height = size.find("mm") != size.npos || size.find("cm") != size.npos ? size : size + " cm";
      if (texts["height_mm"].empty())
        texts.at("height_mm") = height;
      else if (height != texts["height_mm"])
        texts.left_out.push_back("300 $c: '" + size + "' is a second size and was not read");
    }
    if (auto const media = all("340", 'm'); !media.empty()) texts.at("format") = media.front();
  }
  /// "Signatures: A-K⁸ L⁴." and "Collation: 8vo: A-H⁴; 32 leaves".
  static void note(std::string const& text, RecordTexts& texts) {
    for (std::string_view word : {"Signatures", "Signature statement", "Collation", "Sigs.", "Sig."}) {
      if (!begins(text, word)) continue;
      auto const colon = text.find(':');
      if (colon == text.npos || colon > word.size() + 60) continue;
      if (texts["formula"].empty())
        texts.at("formula") = text;
      else if (text != texts["formula"])
        texts.left_out.push_back("'" + text + "' is a second note of signatures and was not read");
      break;
    }
    chain_lines(text, texts, "vertical",
                {"hain lines vertical", "hain lines are vertical", "ertical chain lines", "hain lines: vertical",
                 "hainlines vertical", "ertical chainlines"});
    chain_lines(text, texts, "horizontal",
                {"hain lines horizontal", "hain lines are horizontal", "orizontal chain lines",
                 "hain lines: horizontal", "hainlines horizontal", "orizontal chainlines"});
  }
  /// What a note says of chain lines of one direction. Notes may say both, of different gatherings, and may deny one.
  static void chain_lines(std::string const& text, RecordTexts& texts, std::string const& direction,
                          std::initializer_list<std::string_view> phrases) {
    for (auto const phrase : phrases)
      for (auto at = text.find(phrase); at != text.npos; at = text.find(phrase, at + 1)) {
        auto const word = text.find_last_of(" \t", at);
        auto before = word == text.npos ? std::string{} : text.substr(0, word);
        for (auto& letter : before)
          letter = letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
        bool denied = false;
        for (std::string_view no : {"without", "no", "not", "lacks"})
          denied = denied || before == no || before.ends_with(" " + std::string{no});
        if (denied) {
          texts.left_out.push_back("'" + text + "' denies chain lines of a direction and was not read");
          continue;
        }
        auto const& known = texts["chain_lines"];
        texts.at("chain_lines") = known.empty() || known == direction ? direction : "both";
      }
  }
  /// The years of 008. Of one year: s, t (and copyright), r (and the original), e (and month and day), p; of a range: q, m, i, k,
  /// c, d, u. `17uu` is 1700 to 1799; 9999 is an end that is not reached.
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
    bool const range =
        type == 'q' || type == 'm' || type == 'i' || type == 'k' || type == 'c' || type == 'd' || type == 'u';
    if (!range && std::string_view{"strep"}.find(type) == std::string_view::npos) return "";
    auto const low = year(7, '0'), high = year(range ? 11 : 7, '9');
    if (low.empty() || low == "0000" || (range && high.empty())) return "";
    return high.empty() || low == high || high < low ? low : low + '-' + high;
  }
  /// The code of 008/15-17.
  static std::string coded_place(std::string const& data) {
    return data.size() < 18 ? std::string{} : trimmed(data.substr(15, 3));
  }
  /// The imprint: of publication, else as older records have it, else of production or manufacture.
  [[nodiscard]] MarcField const* imprint() const {
    auto const* found = field("264", '1');
    if (found == nullptr) found = field("260");
    return found != nullptr ? found : field("264");
  }

public:
  void add(MarcField field) { fields_.push_back(std::move(field)); }
  void clear() { fields_.clear(); }
  [[nodiscard]] bool empty() const { return fields_.empty(); }

  /// What the record says, by column.
  [[nodiscard]] RecordTexts texts() const {
    RecordTexts texts;
    if (auto const* number = field("001")) texts.at("record") = trimmed(number->data);
    texts.at("place") = bare(subfield(imprint(), 'a'));
    texts.at("year") = bare(subfield(imprint(), 'c'));
    if (auto const* coded = field("008"); coded != nullptr) {
      texts.at("coded_year") = coded_years(coded->data);
      texts.at("coded_place") = coded_place(coded->data);
      if (auto const code = bifolium::country_of_code(texts["coded_place"]); code && texts["place"].empty())
        texts.at("place") = std::string{code->country};
    }
    for (auto const& code : all("040", 'e')) texts.at("rules") += (texts["rules"].empty() ? "" : " ") + code;
    physical(texts);
    for (auto const& one : fields_)
      if (one.tag == "500" || one.tag == "590") note(subfield(&one, 'a'), texts);
    return texts;
  }
};

} // namespace support
