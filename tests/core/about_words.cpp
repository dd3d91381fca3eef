// SPDX-License-Identifier: MIT
// Words that say that a number is not exact: DCRMR 5.23 and 6.21 (approximately), the rules before it (ca.), and those
// of other languages (common practice, no source).
#include <bifolium/core/about_words.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {

/// What is left after the word, or "-" if none was taken.
std::string after(std::string const& text) {
  TextCursor cursor{text};
  auto const taken = take_about(cursor);
  CHECK((taken || cursor.at() == 0));
  return taken ? std::string{cursor.rest()} : "-";
}

} // namespace

TEST_CASE("a word for about is taken with its full stop and its blanks, in every language") {
  for (std::string const word :
       {"approximately", "approx",   "about",    "around",   "roughly", "some",     "nearly",
        "almost",                                            // English
        "circa",         "ca",       "circa il", "verso il", // Latin and Italian
        "vers",          "environ",  "env",      "presque",  "um",      "rund",     "ungefähr",
        "etwa",                                                                             // French, German
        "hacia",         "cerca de", "cirka",    "omkring",  "omtrent", "ongeveer", "±"}) { // Spanish to Dutch
    CAPTURE(word);
    std::string capitals = word;
    for (auto& c : capitals)
      if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    for (auto const& written : {word, capitals}) {
      CHECK(after(written + " 200") == "200");
      CHECK(after(written + ". 200") == "200");
      CHECK(after(written + ".200") == "200");
      CHECK(after(written + "200") == "200");
      CHECK(after(written + "   [200]") == "[200]");
      CHECK(after(written) == "");
    }
    if (word != "±" && word.find(' ') == std::string::npos) CHECK(after(word + "x 200") == "-"); // another word
    CHECK(after("x" + word + " 200") == "-");
    CHECK(after(" " + word + " 200") == "-");
  }
}

TEST_CASE("a letter alone is a word for about only with its full stop or before a figure") { // c is a hundred as well
  CHECK(after("c. 1490") == "1490");
  CHECK(after("C.1490") == "1490");
  CHECK(after("c1490") == "1490");
  CHECK(after("c.") == "");
  for (std::string const none : {"c 1490", "c", "cc1490", "c?", "[c1490", "a. 1490", "", "1490", ". 1490"}) {
    CAPTURE(none);
    CHECK(after(none) == "-");
  }
}
