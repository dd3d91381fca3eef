// SPDX-License-Identifier: MIT
#include <bifolium/evidence.hpp>
#include <bifolium/evidence/read_seen.hpp>

#include <algorithm>
#include <doctest/doctest.h>
#include <iterator>
#include <ostream>
#include <string>
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

/// The words are these, each for its value, and no others: any other is this problem, which names all of them.
template <class T, std::size_t N> void are_the_words(Problem problem, std::pair<char const*, T> const (&words)[N]) {
  for (auto const& [word, value] : words) {
    CAPTURE(word);
    auto const read = read_word<T>(word);
    REQUIRE(read);
    CHECK(*read == value);
    CHECK(to_words(value) == word);
  }
  CHECK(std::distance(std::begin(words_of<T>()), std::end(words_of<T>())) == static_cast<std::ptrdiff_t>(N));
  for (auto const* none : {"", "no", "heads", "hea", "unknow"}) {
    auto const read = read_word<T>(none);
    REQUIRE_FALSE(read);
    CHECK(identifier(read.error().problem) == identifier(problem));
    CHECK(read.error().place->line == 1);
    CHECK(read.error().place->column == 1);
    CHECK(read.error().found == std::string_view{none});
    for (auto const& one : words_of<T>()) CHECK(has_word(sentence(problem), one.word));
  }
}

} // namespace

TEST_CASE("every word of what is seen of a leaf stands for its value") {
  are_the_words<Material>(Problem::no_such_material, {{"laid", Material::laid},
                                                      {"wove", Material::wove},
                                                      {"vellum", Material::vellum},
                                                      {"unknown", Material::unknown}});
  are_the_words<ChainLines>(Problem::no_such_chain_lines, {{"vertical", ChainLines::vertical},
                                                           {"horizontal", ChainLines::horizontal},
                                                           {"both", ChainLines::both},
                                                           {"unknown", ChainLines::unknown}});
  are_the_words<MarkPlace>(Problem::no_such_mark_place, {{"centre", MarkPlace::centre},
                                                         {"gutter", MarkPlace::gutter},
                                                         {"head-of-gutter", MarkPlace::head_of_gutter},
                                                         {"fore-edge", MarkPlace::fore_edge},
                                                         {"head-or-tail-edge", MarkPlace::head_or_tail_edge},
                                                         {"corner", MarkPlace::corner},
                                                         {"absent", MarkPlace::absent},
                                                         {"unknown", MarkPlace::unknown}});
  are_the_words<EdgeSeen>(Problem::no_such_edge_seen, {{"bolt", EdgeSeen::bolt},
                                                       {"deckle", EdgeSeen::deckle},
                                                       {"tranchefile", EdgeSeen::tranchefile},
                                                       {"unknown", EdgeSeen::unknown}});
  are_the_words<HolePlace>(Problem::no_such_hole_place, {{"spine-fold", HolePlace::spine_fold},
                                                         {"head", HolePlace::head},
                                                         {"tail", HolePlace::tail},
                                                         {"fore-edge", HolePlace::fore_edge},
                                                         {"inside", HolePlace::inside},
                                                         {"unknown", HolePlace::unknown}});
  are_the_words<LeafState>(Problem::no_such_leaf_state, {{"uncut", LeafState::uncut},
                                                         {"trimmed", LeafState::trimmed},
                                                         {"rebound", LeafState::rebound},
                                                         {"cropped", LeafState::cropped},
                                                         {"inlaid", LeafState::inlaid},
                                                         {"unknown", LeafState::unknown}});
  are_the_words<MeasureOf>(Problem::no_such_measure_of,
                           {{"leaf", MeasureOf::leaf}, {"binding", MeasureOf::binding}, {"either", MeasureOf::either}});
}

TEST_CASE("as many leaves are read as their evidence has room for, and one more is told where it stands") {
  std::string text;
  for (int leaf = 1; leaf <= 24; ++leaf) text += std::to_string(leaf) + " gutter; ";
  auto const read = read_leaves_seen(text.substr(0, text.size() - 2));
  REQUIRE(read);
  CHECK(read->back().leaf == 24);
  auto const more = read_leaves_seen(text + "25 gutter");
  REQUIRE_FALSE(more);
  CHECK(more.error().problem == Problem::too_many_leaves_seen);
  CHECK(more.error().place->line == 1);
  CHECK(more.error().place->column == text.size() + 1);
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
