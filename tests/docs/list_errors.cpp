// SPDX-License-Identifier: MIT
/// Prints the page of errors by their text: every problem with its number and sentence, and every broken precondition with
/// the header that asks for it. Preconditions are read from the headers, problems from the library.
///   list_errors INCLUDE_DIRECTORY
#include <bifolium/core/message.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <utility>

namespace {
std::string all_of(std::filesystem::path const& file) {
  std::ifstream in{file, std::ios::binary};
  return {std::istreambuf_iterator<char>{in}, {}};
}

std::string replaced(std::string text, std::string const& what, std::string const& by) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size())
    text.replace(at, what.size(), by);
  return text;
}

std::string cell(std::string const& text) {
  return replaced(replaced(replaced(text, "<", "&lt;"), "*", "\\*"), "|", "\\|");
}
} // namespace

int main(int count, char** arguments) {
  if (count != 2) return std::cerr << "list_errors INCLUDE_DIRECTORY\n", 2;
  std::filesystem::path const include{arguments[1]};

  std::cout
      << "<!-- SPDX-License-Identifier: MIT -->\n"
         "# Errors by their text\n\n"
         "Find the words you were shown with your browser's search. `...` stands for what was found in the text, `N` "
         "for a number.\n\n"
         "## What is wrong with a text or a measurement\n\n"
         "These are returned in `Expected<T>`, or as warnings beside a value. They have the line and the column in the "
         "text, or the name of the field if there is no text. The number and the identifier of a `Problem` never "
         "change their meaning: a program compares them and not the sentence.\n\n"
         "| number | identifier (`Problem::`) | sentence |\n|---|---|---|\n";
  for (int number = 1; number < 1000; ++number) {
    auto const problem = static_cast<bifolium::Problem>(number);
    auto const identifier = bifolium::identifier(problem);
    if (identifier == "unknown") continue;
    auto text = replaced(replaced(std::string{bifolium::sentence(problem)}, "{found}", "..."), "{limit}", "N");
    text = std::regex_replace(text, std::regex{"\\{[^|}]*\\|([^}]*)\\}"}, "$1");
    std::cout << "| " << number << " | `" << identifier << "` | " << cell(text) << " |\n";
  }

  std::map<std::string, std::set<std::string>> preconditions;
  std::regex const call{"\\bbroken\\(\\s*(?:[^\"();]*\\? *)?\"([^\"]*)\"(?:\\s*\"([^\"]*)\")?"};
  for (auto const& entry : std::filesystem::recursive_directory_iterator{include}) {
    if (entry.path().extension() != ".hpp") continue;
    auto const text = all_of(entry.path());
    for (std::sregex_iterator it{text.begin(), text.end(), call}, end; it != end; ++it) {
      auto const words = (*it)[1].str() + (*it)[2].str();
      if (words != "sentence" && !words.empty())
        preconditions[words].insert(std::filesystem::relative(entry.path(), include / "bifolium").generic_string());
    }
  }
  std::cout << "\n## What a program did wrong\n\n"
               "A broken precondition stops the compiler in a constant expression, and the compiler shows the "
               "sentence. When the "
               "program runs, it throws `BrokenPrecondition`, and `what()` is the sentence.\n\n"
               "| sentence | header |\n|---|---|\n";
  for (auto const& [words, headers] : preconditions) {
    std::cout << "| " << cell(words) << " | ";
    char const* comma = "";
    for (auto const& header : headers) std::cout << std::exchange(comma, ", ") << '`' << header << '`';
    std::cout << " |\n";
  }
}
