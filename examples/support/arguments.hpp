// SPDX-License-Identifier: MIT
/// What the example programs have in common on the command line: --help, wrong usage, options with a value.
#pragma once

#include <initializer_list>
#include <iostream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace support {

/// The exit codes of all example programs.
enum Exit { all_done = 0, unreadable = 1, wrong_usage = 2 };

/// The words after the program's name, options apart.
class Arguments {
  std::vector<std::string> words_{};
  std::vector<std::pair<std::string, std::string>> options_{};
  bool wrong_{}, help_{};

public:
  /// `flags` stand alone (--list), `valued` take the next word (--svg FILE).
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
      else if (word.size() > 1 && word.starts_with("-"))
        wrong_ = true;
      else
        words_.push_back(word);
    }
  }

  /// The exit code when there is nothing more to do: help was asked for, or the usage was wrong.
  [[nodiscard]] std::optional<int> settled(std::string_view usage, std::size_t least, std::size_t most) const {
    if (help_) {
      std::cout << usage;
      return all_done;
    }
    if (!wrong_ && words_.size() >= least && words_.size() <= most) return std::nullopt;
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
};

} // namespace support
