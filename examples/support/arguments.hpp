// SPDX-License-Identifier: MIT
/// What the example programs have in common on the command line: --help, wrong usage, options with a value.
#pragma once

#include <bifolium/collation/dialect.hpp>
#include <bifolium/core/letters_apart.hpp>

#include "input.hpp"
#include "program.hpp"

#include <charconv>
#include <cstdint>
#include <initializer_list>
#include <iostream>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace support {

/// The words after the program's name, options apart.
class Arguments {
  std::vector<std::string> words_{};
  std::vector<std::pair<std::string, std::string>> options_{};
  std::string wrong_{};
  bool help_{};

  /// Names an option that is spelt nearly as the one that there is not; one letter in four may be wrong.
  void refuse_unknown(std::string const& word, std::initializer_list<std::initializer_list<std::string_view>> known) {
    wrong_ = "there is no option " + word;
    std::string_view meant;
    int least = 1 + static_cast<int>(word.size()) / 4;
    for (auto const& options : known)
      for (auto const option : options)
        if (auto const apart = bifolium::letters_apart(word, option); apart < least) least = apart, meant = option;
    if (!meant.empty()) wrong_.append("; is it ").append(meant).append("?");
  }

public:
  /// `flags` have no value (--list), `valued` take the next word (--svg FILE) or what is after an equals sign (--svg=FILE).
  Arguments(int count, char** words, std::initializer_list<std::string_view> flags,
            std::initializer_list<std::string_view> valued) {
    auto const among = [](std::string_view word, std::initializer_list<std::string_view> all) {
      for (auto one : all)
        if (one == word) return true;
      return false;
    };
    for (int i = 1; i < count; ++i) {
      std::string const word = words[i];
      if (word == "--help" || word == "-h")
        help_ = true;
      else if (among(word, flags))
        options_.emplace_back(word, "");
      else if (among(word, valued) && i + 1 < count)
        options_.emplace_back(word, words[++i]);
      else if (among(word, valued))
        wrong_ = "the option " + word + " needs a value";
      else if (auto const equals = word.find('='); equals != word.npos && among(word.substr(0, equals), valued))
        options_.emplace_back(word.substr(0, equals), word.substr(equals + 1));
      else if (word.size() > 1 && word.starts_with("-"))
        refuse_unknown(word, {flags, valued});
      else
        words_.push_back(word);
    }
  }

  /// The exit code where the work is done or cannot be begun: help was asked for, or the usage was wrong.
  [[nodiscard]] std::optional<int> settled(std::string_view usage, std::size_t least, std::size_t most) const {
    if (help_) {
      std::cout << usage;
      return all_done;
    }
    auto wrong = wrong_;
    auto const given = words_.size();
    if (wrong.empty() && given < least)
      wrong = given == 0 ? "an argument is missing" : "an argument is missing after '" + words_.back() + "'";
    if (wrong.empty() && given > most) wrong = "'" + words_[most] + "' is one argument too many";
    if (wrong.empty()) return std::nullopt;
    tell(wrong);
    std::cerr << usage;
    return wrong_usage;
  }

  [[nodiscard]] std::vector<std::string> const& words() const { return words_; }
  [[nodiscard]] bool has(std::string_view option) const { return value(option).has_value(); }
  /// The value of the last of several.
  [[nodiscard]] std::optional<std::string> value(std::string_view option) const {
    std::optional<std::string> found;
    for (auto const& [name, given] : options_)
      if (name == option) found = given;
    return found;
  }
  /// A whole number in a range. Another value is wrong usage, so this is asked before `settled`.
  std::optional<std::uint64_t> number(std::string_view option, std::uint64_t least, std::uint64_t most) {
    auto const text = value(option);
    if (!text) return std::nullopt;
    std::uint64_t number{};
    auto const read = std::from_chars(text->data(), text->data() + text->size(), number);
    if (read.ec == std::errc{} && read.ptr == text->data() + text->size() && number >= least && number <= most)
      return number;
    wrong_ = "the option " + std::string{option} + " takes a number from " + std::to_string(least) + " to " +
             std::to_string(most) + ", not '" + *text + "'";
    return std::nullopt;
  }
  /// One of some words; the first where the option is not given. Another word is wrong usage, so this is asked before
  /// `settled`.
  std::string choice(std::string_view option, std::initializer_list<std::string_view> words) {
    auto given = value(option).value_or(std::string{*words.begin()});
    std::string list;
    for (auto const& word : words) {
      if (word == given) return given;
      list.append(list.empty() ? "" : &word + 1 == words.end() ? " or " : ", ").append(word);
    }
    refuse("the option " + std::string{option} + " takes " + list + ", not '" + given + "'");
    return std::string{*words.begin()};
  }
  /// What `--omitted error|next|8` says. Asked before `settled`.
  bifolium::Omitted omitted() {
    auto const word = choice("--omitted", {"error", "next", "8"});
    return word == "8" ? bifolium::Omitted::eight : word == "next" ? bifolium::Omitted::next : bifolium::Omitted::error;
  }
  /// What `--letters JUW` says; none where it is not given. Asked before `settled`.
  std::optional<bifolium::Letters> letters() {
    auto const names = value("--letters");
    if (!names) return std::nullopt;
    bifolium::Letters letters;
    for (char c : *names)
      if (c == 'J' || c == 'U' || c == 'W')
        (c == 'J' ? letters.j : c == 'U' ? letters.u : letters.w) = true;
      else
        refuse("the option --letters takes letters of J, U and W, not '" + *names + "'");
    return letters;
  }
  /// Wrong usage that only the program can tell, asked before `settled`. The first that is told counts.
  void refuse(std::string sentence) {
    if (wrong_.empty()) wrong_ = std::move(sentence);
  }
  /// The value of an option that must be given. Asked before `settled`.
  std::string needed(std::string_view option) {
    if (!has(option) && !help_) refuse("the option " + std::string{option} + " is missing");
    return value(option).value_or("");
  }
  /// What `--longest-line BYTES` says. Asked before `settled`.
  InputLimits input_limits() {
    InputLimits limits;
    if (auto const bytes = number("--longest-line", 1, std::uint64_t{1} << 30U))
      limits.line_bytes = static_cast<std::size_t>(*bytes);
    return limits;
  }
};

/// What the filters' usage says of that option.
inline constexpr std::string_view longest_line_usage =
    "  --longest-line BYTES  the limit of one line, 16777216 unless told; a longer one is a row in error\n";

} // namespace support
