// SPDX-License-Identifier: MIT
// Every problem keeps the number and the identifier under which it was made known: programs store them.
#include <bifolium/core/problem.hpp>

#include "check.hpp"

#include <fstream>
#include <map>
#include <string>

using namespace bifolium;

TEST_CASE("problems have the numbers and identifiers of the page of errors, each of them once") {
  std::map<int, std::string> published; // cmake/doc/errors.md: | 134 | `copies_differ` | the sentence |
  std::string path{BIFOLIUM_TEST_DATA};
  path.append("/../../cmake/doc/errors.md");
  std::ifstream page{path};
  REQUIRE(page);
  for (std::string line; std::getline(page, line);) {
    auto const tick = line.find("| `"), end = line.find("` |");
    if (line.substr(0, 2) != "| " || line[2] < '0' || line[2] > '9' || tick == std::string::npos) continue;
    CHECK(published.emplace(std::stoi(line.substr(2)), line.substr(tick + 3, end - tick - 3)).second);
  }
  CHECK(published.size() > 200);
  std::map<std::string, int> numbers;
  int known = 0;
  for (int number = 1; number < 65536; ++number) {
    auto const problem = static_cast<Problem>(number);
    auto const listed = published.find(number);
    bool const is_listed = listed != published.end();
    std::string const name{identifier(problem)};
    if (name != (is_listed ? listed->second : "unknown")) FAIL_CHECK(number << " is " << name);
    if (!is_listed) continue;
    ++known;
    CHECK(find_problem(name) == problem);
    CHECK(numbers.emplace(name, number).second);
    CHECK_FALSE(sentence(problem).empty());
  }
  CHECK(known == static_cast<int>(published.size()));
  for (auto const* none : {"", "unknown", "Copies_differ", "copies_differ ", "copies"}) CHECK_FALSE(find_problem(none));
}
