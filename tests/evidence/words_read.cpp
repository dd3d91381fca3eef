// SPDX-License-Identifier: MIT
#include <bifolium/evidence.hpp>
#include <bifolium/evidence/read_seen.hpp>

#include <algorithm>
#include <doctest/doctest.h>
#include <iterator>
#include <ostream>
#include <string_view>
#include <utility>

using namespace bifolium;

namespace {

/// Returns true if a sentence has this word, apart from others: "head" is not in "head-of-gutter".
bool has_word(std::string_view sentence, std::string_view word) {
  for (auto at = sentence.find(word); at != sentence.npos; at = sentence.find(word, at + 1)) {
    auto const end = at + word.size();
    if (sentence[at - 1] == ' ' && (sentence[end] == ' ' || sentence[end] == ',')) return true;
  }
  return false;
}

/// The words are these, each for its value, and no others.
template <class T, std::size_t N> void are_the_words(std::pair<char const*, T> const (&words)[N]) {
  for (auto const& [word, value] : words) {
    CAPTURE(word);
    auto const read = read_word<T>(word);
    REQUIRE(read);
    CHECK(*read == value);
  }
  CHECK(std::distance(std::begin(words_of<T>()), std::end(words_of<T>())) == static_cast<std::ptrdiff_t>(N));
  for (auto const* none : {"", "no", "heads", "hea", "unknow"}) {
    auto const read = read_word<T>(none);
    REQUIRE_FALSE(read);
    for (auto const& one : words_of<T>()) CHECK(has_word(sentence(read.error().problem), one.word));
  }
}

} // namespace

TEST_CASE("every word of what is seen of a leaf stands for its value") {
  are_the_words<Material>({{"laid", Material::laid},
                           {"wove", Material::wove},
                           {"vellum", Material::vellum},
                           {"unknown", Material::unknown}});
  are_the_words<ChainLines>({{"vertical", ChainLines::vertical},
                             {"horizontal", ChainLines::horizontal},
                             {"both", ChainLines::both},
                             {"unknown", ChainLines::unknown}});
  are_the_words<MarkPlace>({{"centre", MarkPlace::centre},
                            {"gutter", MarkPlace::gutter},
                            {"head-of-gutter", MarkPlace::head_of_gutter},
                            {"fore-edge", MarkPlace::fore_edge},
                            {"head-or-tail-edge", MarkPlace::head_or_tail_edge},
                            {"corner", MarkPlace::corner},
                            {"absent", MarkPlace::absent},
                            {"unknown", MarkPlace::unknown}});
  are_the_words<EdgeSeen>({{"bolt", EdgeSeen::bolt},
                           {"deckle", EdgeSeen::deckle},
                           {"tranchefile", EdgeSeen::tranchefile},
                           {"unknown", EdgeSeen::unknown}});
  are_the_words<HolePlace>({{"spine-fold", HolePlace::spine_fold},
                            {"head", HolePlace::head},
                            {"tail", HolePlace::tail},
                            {"fore-edge", HolePlace::fore_edge},
                            {"inside", HolePlace::inside},
                            {"unknown", HolePlace::unknown}});
  are_the_words<LeafState>({{"uncut", LeafState::uncut},
                            {"trimmed", LeafState::trimmed},
                            {"rebound", LeafState::rebound},
                            {"cropped", LeafState::cropped},
                            {"inlaid", LeafState::inlaid},
                            {"unknown", LeafState::unknown}});
}

TEST_CASE("marks in vellum are doubted, the watermark as well as the countermark") {
  auto const doubted = [](LeafEvidence const& seen) {
    auto const observation = observe(seen);
    REQUIRE(observation);
    bool found = false;
    for (auto const& warning : observation->warnings()) found = found || warning.problem == Problem::marks_in_vellum;
    return found;
  };
  LeafEvidence seen;
  seen.material = Material::vellum;
  CHECK_FALSE(doubted(seen));
  for (auto place : {MarkPlace::centre, MarkPlace::gutter, MarkPlace::corner}) {
    auto mark = seen, counter = seen;
    mark.watermark = place;
    counter.countermark = place;
    CHECK(doubted(mark));
    CHECK(doubted(counter));
    mark.material = counter.material = Material::laid;
    CHECK_FALSE(doubted(mark));
    CHECK_FALSE(doubted(counter));
  }
}
