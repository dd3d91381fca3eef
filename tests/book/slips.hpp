// SPDX-License-Identifier: MIT
/// Slips put into sound descriptions, in their texts, as a hand makes them: for measuring how often the true
/// description is found again. The rates of the kinds are argued; each kind is drawn as often as every other.
#pragma once

#include <bifolium/collation/write_formula.hpp>

#include "book_of.hpp"

#include <random>

namespace book {

/// Part of a hundred; 0 where there is nothing to count.
inline int percent(int part, int of) { return of == 0 ? 0 : 100 * part / of; }

class Slips {
  std::mt19937 random_;

  std::size_t below(std::size_t n) { return random_() % n; }
  /// A number with one slip of its figures; empty where there is none that changes it.
  std::string figures(std::string text, std::string const& kind) {
    auto const old = text;
    if (kind == "transposed") {
      if (text.size() < 2) return "";
      auto const i = below(text.size() - 1);
      std::swap(text[i], text[i + 1]);
    } else if (kind == "dropped") {
      if (text.size() < 2) return "";
      text.erase(below(text.size()), 1);
    } else if (kind == "doubled") {
      auto const i = below(text.size());
      text.insert(i, 1, text[i]);
    } else {
      auto const i = below(text.size());
      text[i] = static_cast<char>('0' + below(10));
    }
    return text == old || text[0] == '0' ? "" : text;
  }
  struct Figure {
    std::size_t at, size;
    bool bracketed;
  };
  static std::vector<Figure> figures_of(std::string const& text) {
    std::vector<Figure> all;
    for (std::size_t i = 0; i < text.size(); ++i) {
      if (!is_digit(text[i]) || (i > 0 && is_digit(text[i - 1]))) continue;
      auto end = i;
      while (end < text.size() && is_digit(text[end])) ++end;
      all.push_back({i, end - i, i > 0 && text[i - 1] == '['});
    }
    return all;
  }
  static bool is_digit(char c) { return c >= '0' && c <= '9'; }
  static std::vector<std::string> words_of(std::string const& text) {
    std::vector<std::string> words{""};
    for (char c : text)
      if (c == ' ')
        words.emplace_back();
      else
        words.back() += c;
    return words;
  }
  static std::string joined(std::vector<std::string> const& words) {
    std::string text;
    for (auto const& word : words) text += (text.empty() ? "" : " ") + word;
    return text;
  }

  bool formula_slip(std::string const& kind, std::string& text) {
    auto words = words_of(text);
    if (text.find('(') != text.npos || text.find('[') != text.npos) return false;
    auto const w = below(words.size());
    if (kind == "exponent") {
      constexpr char const* usual[]{"²", "⁴", "⁶", "⁸", "¹²"};
      auto const at = words[w].find_first_of("\xC2\xE2");
      if (at == std::string::npos || words[w].find('/') != std::string::npos) return false;
      words[w] = words[w].substr(0, at) + usual[below(5)];
    } else if (kind == "end_letter") {
      auto const dash = words[w].find('-');
      if (dash == std::string::npos) return false;
      auto& letter = words[w][dash + 1];
      if (letter < 'B' || letter > 'H') return false;
      letter = static_cast<char>(letter + (below(2) == 0 ? 1 : -1));
    } else if (kind == "gathering_missing") {
      if (words.size() < 3) return false;
      words.erase(words.begin() + static_cast<std::ptrdiff_t>(1 + below(words.size() - 2)));
    } else if (kind == "last_missing") {
      if (words.size() < 2 || words.back().find('-') != std::string::npos) return false;
      words.pop_back();
    } else if (kind == "first_missing") {
      if (words.size() < 2 || words[0].find('-') != std::string::npos) return false;
      words.erase(words.begin());
    } else if (kind == "gathering_twice") {
      if (words.size() < 2 || words[0].find('-') != std::string::npos) return false;
      words.insert(words.begin(), words[0]);
    } else
      return false;
    text = joined(words);
    return true;
  }
  bool page_slip(std::string const& kind, std::string& text) {
    auto const all = figures_of(text);
    if (all.empty()) return false;
    auto const& one = all[below(all.size())];
    if (kind == "unnumbered_missing" || kind == "unnumbered_value") {
      if (!one.bracketed || all.size() < 2 || text[one.at + one.size] != ']') return false;
      if (kind == "unnumbered_value") {
        auto const value = std::stoi(text.substr(one.at, one.size)) + (below(2) == 0 ? 2 : -2);
        if (value < 1) return false;
        text.replace(one.at, one.size, std::to_string(value));
        return true;
      }
      auto const from = one.at > 2 ? one.at - 3 : 0;
      text.erase(from, one.size + 4);
      return true;
    }
    auto const slipped = figures(text.substr(one.at, one.size), kind);
    if (slipped.empty()) return false;
    text.replace(one.at, one.size, slipped);
    return true;
  }

public:
  explicit Slips(unsigned seed) : random_{seed} {}

  template <class Rows> auto const& any_of(Rows const& rows) { return rows[below(rows.size())]; }

  /// Puts a slip of a kind (`formula exponent`, `pages transposed`, `leaves dropped`) into texts; false where it cannot
  /// be made.
  bool put(std::string const& kind, Texts& texts) {
    auto const blank = kind.find(' ');
    auto const field = kind.substr(0, blank), what = kind.substr(blank + 1);
    if (field == "formula") return formula_slip(what, texts.formula);
    if (field == "pages") return !texts.pagination.empty() && page_slip(what, texts.pagination);
    auto const slipped = what == "pages_for_leaves"    ? std::to_string(2 * std::stoll(texts.leaves))
                         : what == "blank_not_counted" ? std::to_string(std::stoll(texts.leaves) - 1)
                                                       : figures(texts.leaves, what);
    if (slipped.empty() || slipped == "0") return false;
    texts.leaves = slipped;
    return true;
  }
};

/// Where in the answer the true description is, from 0; none where it is not there.
inline std::optional<std::size_t> place_of_truth(Audit const& audit, Texts const& slipped, Counts const& truth) {
  std::size_t place = 0;
  for (auto const& repair : audit.repairs) {
    Texts const after{repair.formula.value_or(slipped.formula), repair.pagination.value_or(slipped.pagination),
                      repair.leaves_text.value_or(slipped.leaves)};
    if (auto const counts = counts_of(after, repair.letters.value_or(Letters{})); counts && *counts == truth)
      return place;
    ++place;
  }
  return std::nullopt;
}

} // namespace book
