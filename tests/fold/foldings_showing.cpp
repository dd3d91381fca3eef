// SPDX-License-Identifier: MIT
// From what leaves show to the foldings that show it: published marks, every attested scheme, leaves of other paper.
#include <bifolium/fold.hpp>

#include "check.hpp"
#include "fold/foldings_left.hpp"

#include <algorithm>
#include <array>
#include <random>
#include <set>
#include <string>
#include <string_view>
#include <vector>

using namespace foldings;

namespace {

SeenMark around(std::optional<PointOfLeaf> const& point) {
  if (!point) return {};
  constexpr double near = 0.1;
  return {true, point->from_head - near, point->from_head + near, point->from_gutter - near, point->from_gutter + near};
}
SeenEdge seen(Edge const& edge) {
  auto const kind = edge.kind == Edge::Kind::deckle_or_cut ? Edge::Kind::deckle : edge.kind;
  return {kind, edge.mate ? std::optional{edge.mate->leaf.number()} : std::nullopt};
}
/// Everything that the leaves of a gathering show, the sheets lying so.
SeenGathering everything(Fold<> const& fold, int gathering, std::array<Lie, 8> const& lies) {
  SeenGathering all{fold.gathering(gathering).leaves(), {}};
  for (int k = 1; k <= all.leaves; ++k) {
    LeafAt const at{gathering, fold.gathering(gathering).leaf(k)};
    auto const shown = shows(fold, at);
    SeenLeaf leaf;
    leaf.leaf = k;
    leaf.chain_lines = shown.chain_lines;
    leaf.watermark = around(shown.watermark_lying(lies[fold.cell(at).sheet]));
    leaf.head = seen(shown.head), leaf.tail = seen(shown.tail), leaf.fore_edge = seen(shown.fore_edge);
    if (auto const mate = fold.conjugate(at))
      leaf.conjugate = mate->leaf.number();
    else
      leaf.disjunct = true;
    all.seen.push_back(leaf);
  }
  return all;
}
constexpr std::array<Lie, 8> as_given{};

FoldingGroup const* group_of(FoldingsLeft const& all, Format format) {
  for (auto const& group : all.groups)
    if (group.format == format && group.foldings > 0) return &group;
  return nullptr;
}

} // namespace

TEST_CASE("chain lines and mark of folio, quarto and octavo give the format they are taught for") {
  // Aldis, The Printed Book (1916), 'Construction of a Book': folio, chain lines vertical, mark in the middle of the leaf;
  // quarto, horizontal, middle of the inner margin; octavo, vertical, top of the inner margin
  auto const folio = left("gathering of 2; 1 centre vertical; 2 absent vertical; 1.2 conjugate");
  CHECK(folio.groups[0].format == Format::of(2));
  CHECK(has_scheme(folio.groups[0], schemes::folio));
  auto const quarto = left("gathering of 4; 1 gutter horizontal; 2 absent; 3 absent; 4 gutter");
  CHECK(quarto.groups[0].format == Format::of(4));
  CHECK(has_scheme(quarto.groups[0], schemes::quarto));
  auto const octavo = left("gathering of 8; 1 head-of-gutter vertical; 2 absent; 3 absent; 4 head-of-gutter; "
                           "5 head-of-gutter; 6 absent; 7 absent; 8 head-of-gutter");
  CHECK(octavo.groups[0].format == Format::of(8));
  CHECK(octavo.groups[0].sheets == 1);
  CHECK_FALSE(octavo.groups[0].cut);
  CHECK(has_scheme(octavo.groups[0], schemes::octavo));
}

TEST_CASE("the mark of twelves in leaves 7 and 8, or 11 and 12, at the fore-edge") {
  // Letter to R. B. McKerrow, 17 August 1924 (Trinity College Cambridge): watermark leaves of a 12mo imposed for cutting
  for (auto const* const text :
       {"gathering of 12; 1 absent horizontal; 7 fore-edge; 8 fore-edge; 11 absent; 12 absent",
        "gathering of 12; 1 absent horizontal; 7 absent; 8 absent; 11 fore-edge; 12 fore-edge"}) {
    auto const found = left(text);
    CHECK(has_scheme(found, schemes::duodecimo));
    CHECK(group_of(found, Format::of(12)) != nullptr);
  }
  CHECK_FALSE(has_scheme(left("gathering of 12; 1 absent horizontal; 7 fore-edge; 8 absent; 11 fore-edge"),
                         schemes::duodecimo));
}

TEST_CASE("a quired quarto is told from a single octavo sheet") {
  // chain lines horizontal, marks in 1 8 and 3 6: two quarto sheets, one in the other (computed from the folding)
  auto const found =
      left("gathering of 8; 1 gutter horizontal; 2 absent; 3 gutter; 4 absent; 5 absent; 6 gutter; 7 absent; "
           "8 gutter");
  CHECK(found.groups[0].format == Format::of(4));
  CHECK(found.groups[0].sheets == 2);
  CHECK(has_scheme(found.groups[0], schemes::quarto_in_eights));
}

TEST_CASE("whatever an attested scheme shows, the scheme is among the answers") {
  // Outside the rules are sheets of more than 64 leaves, unequal sheets in a gathering, and nines with many single leaves.
  std::set<std::string_view> const outside{
      "4_quarto_in_6s", "18_half_sheet_9_transposed", "18_half_sheet_9_not_transposed", "72_nine_8s", "96_twelve_8s",
      "128_sixteen_8s"};
  std::mt19937 random{1912};
  int right_first = 0, looked = 0;
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const folded = *fold(attested.scheme());
    if (folded.gathering(0).leaves() > 12) continue;
    std::array<Lie, 8> lies{};
    for (auto& lie : lies) lie = random() % 2 == 0 ? Lie::as_given : Lie::end_for_end;
    auto const found = *foldings_showing(std::vector{everything(folded, 0, lies)});
    auto const format = format_of(folded, FormatReading::paper_fraction);
    CHECK(has_scheme(found, attested));
    auto const* const group = group_of(found, format);
    CHECK((group != nullptr) != outside.contains(attested.id()));
    CHECK(found.blamed.empty());
    ++looked;
    right_first += found.groups[0].format == format ? 1 : 0;
    auto const likely = [](auto const& one) { return one.probability >= FoldingGroup::likely_enough; };
    CHECK(std::is_sorted(found.groups.begin(), found.groups.end(), [&](auto const& a, auto const& b) {
      if (likely(a) || likely(b)) return a.probability > b.probability;
      return a.price < b.price;
    }));
    double all = 0;
    for (auto const& one : found.groups) all += one.probability;
    CHECK(all == doctest::Approx(1));
  }
  CHECK(looked == 54);
  CHECK(right_first >= 48); // one gathering of a sheet that makes several cannot always tell
}

namespace {

/// A gathering of a scheme with one leaf of other paper: a single leaf whose chain lines run the other way, its edges not to
/// be seen, and nothing told of it by the others.
SeenGathering with_cancel(SeenGathering gathering, int other) {
  for (auto& leaf : gathering.seen) {
    if (leaf.leaf == other) {
      leaf.chain_lines = leaf.chain_lines == ChainLines::vertical ? ChainLines::horizontal : ChainLines::vertical;
      leaf.conjugate.reset(), leaf.head.reset(), leaf.tail.reset(), leaf.fore_edge.reset();
      leaf.disjunct = true;
      continue;
    }
    if (leaf.conjugate == other) leaf.conjugate.reset();
    for (auto* const edge : {&leaf.head, &leaf.tail, &leaf.fore_edge})
      if (*edge && (*edge)->mate == other) edge->reset();
  }
  return gathering;
}
bool blames(SeenGathering const& gathering, int leaf) {
  auto const found = *foldings_showing(std::vector{gathering});
  return !found.blamed.empty() && found.blamed[0].leaf == leaf &&
         (found.blamed.size() == 1 || found.blamed[0].price < found.blamed[1].price);
}

} // namespace

TEST_CASE("a leaf of other paper is blamed, and no other leaf") {
  // constructed; the three schemes that the rules of the search leave out are among them
  int number = 0;
  for (auto const attested : Attested::all()) {
    auto const folded = *fold(attested.scheme());
    auto const leaves = folded.gathering(0).leaves();
    if (leaves < 4 || leaves > 12) continue;
    CAPTURE(attested.id());
    auto const whole = everything(folded, 0, as_given);
    bool const every_leaf = attested == schemes::octavo || attested == schemes::quarto_in_eights;
    for (int other = 1; other <= leaves; ++other) {
      if (!every_leaf && other != 1 + number % leaves) continue;
      CAPTURE(other);
      CHECK(blames(with_cancel(whole, other), other));
    }
    ++number;
  }
  CHECK(number > 45);
}

TEST_CASE("leaves of several sheets, cut into pieces of odd sizes, are told apart") {
  // Heads that are joined are both folded: no folding has one of them rough and the other joined to it.
  auto const found = left("gathering of 8; 7 deckle head; 4 bolt head 7");
  CHECK(found.groups.empty());
  REQUIRE(found.blamed.size() == 2);
  CHECK(found.blamed[0].leaf == 4);
  CHECK(found.blamed[1].leaf == 7);
}

TEST_CASE("gatherings of which little was seen are counted by what they take of the sheet") {
  auto const found = left("gathering of 8; 1 absent\ngathering of 8; 1 absent");
  CHECK(has_scheme(found, schemes::sextodecimo_in_eights));
  // A gathering in one piece and its mirror image, first leaf for last, are foldings alike.
  SheetsAllowed const one_piece{.most_pieces = 1};
  auto const alike =
      *foldings_showing(*read_seen_leaves("gathering of 8; 1 absent\ngathering of 8; 1 absent"), one_piece);
  auto const mirror =
      *foldings_showing(*read_seen_leaves("gathering of 8; 1 absent\ngathering of 8; 8 absent"), one_piece);
  REQUIRE(alike.groups.size() == mirror.groups.size());
  CHECK(alike.foldings() > 0);
  CHECK(alike.foldings() == mirror.foldings());
  auto const too_little =
      foldings_showing(*read_seen_leaves("gathering of 4; 1 absent\ngathering of 4\ngathering of 4\n"
                                         "gathering of 4\ngathering of 4\ngathering of 4\n"));
  REQUIRE_FALSE(too_little);
  CHECK(too_little.error().problem == Problem::too_many_arrangements);
  CHECK(too_little.error().limit == 200000);
}

TEST_CASE("of schemes that show the same, those come first that were the commoner") {
  auto const gatherings = *read_seen_leaves("gathering of 8; 1 horizontal");
  FoldingWeights weights;
  weights.of(schemes::quarto_in_eights) = 3;
  weights.of(schemes::sextodecimo_in_eights) = 1;
  auto const found = *foldings_showing(gatherings, {}, weights);
  CHECK(has_scheme(found.groups[0], schemes::quarto_in_eights));
  CHECK(found.groups[0].probability == doctest::Approx(0.75)); // both show it whichever gathering it is
  CHECK(has_scheme(found.groups[1], schemes::sextodecimo_in_eights));
  CHECK(found.groups[1].probability == doctest::Approx(0.25));
  weights.of(schemes::sextodecimo_in_eights) = 9;
  CHECK(has_scheme((*foldings_showing(gatherings, {}, weights)).groups[0], schemes::sextodecimo_in_eights));
  // the mark of a 16° in eights is in one gathering of two, and of that gathering in one lie of two
  auto const marked = *foldings_showing(*read_seen_leaves("gathering of 8; 1 absent horizontal; 3 absent; 5 absent; "
                                                          "2 absent; 4 absent; 6 absent; 7 absent; 8 absent"),
                                        {}, weights);
  CHECK(has_scheme(marked.groups[0], schemes::sextodecimo_in_eights));
  CHECK(marked.groups[0].probability == doctest::Approx(1)); // a quired quarto has one in each sheet
  CHECK(weights_by_price().of(schemes::folio) > weights_by_price().of(schemes::octavo));
}

TEST_CASE("what contradicts an earlier line about a leaf is an error, and what adds to it is not") {
  for (auto const* second :
       {"1 horizontal", "1 centre", "1 absent", "1 deckle head", "1 bolt head 4", "1 no-hole", "1 hole at head",
        "1.5 conjugate", "1 disjunct", "8 disjunct", "2.8 conjugate", "1-3 horizontal"}) {
    CAPTURE(second);
    auto const read = read_seen_leaves(
        std::string{"gathering of 8\n1 vertical gutter bolt head 3 hole at tail\n1.8 conjugate\n"}.append(second));
    REQUIRE_FALSE(read);
    CHECK(read.error().problem == Problem::leaf_seen_twice);
    CHECK(read.error().place->line == 4);
  }
  for (auto const* second : {"1 vertical", "1 gutter", "1 marked", "1 bolt head", "1 bolt head 3", "1 hole",
                             "1 hole at tail", "8.1 conjugate", "2-3 horizontal", "1 deckle tail"}) {
    CAPTURE(second);
    CHECK(read_seen_leaves(
        std::string{"gathering of 8\n1 vertical gutter bolt head 3 hole at tail\n1.8 conjugate\n"}.append(second)));
  }
  auto const closer = read_seen_leaves("gathering of 8\n1 marked hole bolt head\n1 gutter hole at tail bolt head 3");
  REQUIRE(closer);
  CHECK(closer->front().seen == (*read_seen_leaves("gathering of 8\n1 gutter hole at tail bolt head 3")).front().seen);
}

TEST_CASE("two gatherings of one sheet tell more than one") {
  auto const attested = schemes::sextodecimo_in_eights;
  auto const folded = *fold(attested.scheme());
  auto const first = everything(folded, 0, as_given), second = everything(folded, 1, as_given);
  auto const one = *foldings_showing(std::vector{first}), both = *foldings_showing(std::vector{first, second});
  CHECK(has_scheme(both, attested));
  CHECK(both.foldings() < one.foldings());
  CHECK(both.groups[0].format == Format::of(16));
  // the mark cannot be in both halves of the sheet
  auto wrong = second;
  for (auto& leaf : wrong.seen) leaf.watermark = first.seen[static_cast<std::size_t>(leaf.leaf - 1)].watermark;
  CHECK_FALSE(has_scheme(*foldings_showing(std::vector{first, wrong}), attested));
}

TEST_CASE("what to look at next parts the schemes that are left") {
  std::string text = "gathering of 8\n1 vertical\n";
  auto const before = left(text);
  REQUIRE(before.look_next);
  auto const folded = *fold(schemes::octavo.scheme());
  auto const all = everything(folded, 0, as_given);
  auto gatherings = *read_seen_leaves(text);
  std::size_t schemes_left = 100;
  for (int step = 0; step < 8; ++step) {
    auto const found = *foldings_showing(gatherings);
    std::size_t now = 0;
    for (auto const& group : found.groups) now += group.attested.size();
    CHECK(has_scheme(found, schemes::octavo));
    CHECK(now <= schemes_left); // a mark may be there or not in the same scheme
    schemes_left = now;
    if (!found.look_next) break;
    auto const& fact = all.seen[static_cast<std::size_t>(found.look_next->leaf - 1)];
    auto& seen_leaves = gatherings[0].seen;
    auto at =
        std::find_if(seen_leaves.begin(), seen_leaves.end(), [&](auto const& one) { return one.leaf == fact.leaf; });
    if (at == seen_leaves.end()) at = seen_leaves.insert(at, SeenLeaf{.leaf = fact.leaf});
    switch (found.look_next->what) {
    case LookNext::What::chain_lines:
      at->chain_lines = fact.chain_lines;
      break;
    case LookNext::What::watermark:
      at->watermark = fact.watermark;
      break;
    case LookNext::What::head:
      at->head = fact.head;
      break;
    case LookNext::What::tail:
      at->tail = fact.tail;
      break;
    case LookNext::What::fore_edge:
      at->fore_edge = fact.fore_edge;
      break;
    case LookNext::What::conjugate:
      at->conjugate = fact.conjugate;
      break;
    }
  }
  CHECK(schemes_left <= 2);
}

TEST_CASE("facts of leaves are read from text") {
  auto const read = read_seen_leaves(
      "# an octavo\ngathering of 8\r\n1 head-of-gutter vertical ; 2 absent # none\n"
      "1.8 conjugate; 3 disjunct hole\n2 bolt head 3 deckle tail; 4 cut fore-edge no-hole\n"
      "gathering of 4; 1 marked horizontal; 2 hole at tail fore-edge absent; 3 hole at head; 4 hole gutter");
  REQUIRE(read);
  REQUIRE(read->size() == 2);
  auto const& first = (*read)[0];
  CHECK(first.leaves == 8);
  REQUIRE(first.seen.size() == 5);
  CHECK(first.seen[0].watermark->there);
  CHECK(first.seen[0].watermark->gutter_to < 0.5);
  CHECK(first.seen[0].chain_lines == ChainLines::vertical);
  CHECK(first.seen[0].conjugate == 8);
  CHECK_FALSE(first.seen[1].watermark->there);
  CHECK(first.seen[1].head == SeenEdge{Edge::Kind::bolt, 3});
  CHECK(first.seen[1].tail == SeenEdge{Edge::Kind::deckle, {}});
  CHECK(first.seen[2].conjugate == 1); // leaf 8
  CHECK(first.seen[3].disjunct);
  CHECK(first.seen[3].point_hole->there);
  CHECK(first.seen[4].fore_edge == SeenEdge{Edge::Kind::cut, {}});
  CHECK_FALSE(first.seen[4].point_hole->there);
  auto const& second = (*read)[1].seen;
  CHECK(second[0].watermark == SeenMark{true});
  CHECK(second[1].point_hole == SeenMark{true, 0.8, 1, 0.8, 1});
  CHECK(second[1].watermark == seen_marks::absent);
  CHECK(second[2].point_hole == seen_marks::near_head);
  CHECK(second[3].point_hole == seen_marks::somewhere); // the mark is in the gutter
  CHECK(second[3].watermark == seen_marks::gutter);
}

TEST_CASE("several leaves with the same evidence are read at once") {
  auto const one =
      *read_seen_leaves("gathering of 8; 1 vertical absent; 2 vertical absent; 3 vertical absent; 5 hole at head");
  CHECK(*read_seen_leaves("Gathering of 8, 1-3 vertical absent, leaf 5 hole at head") == one);
  CHECK(*read_seen_leaves("gathering of 8\nleaves 1-2 vertical absent\n3 vertical absent; 5-5 hole at head") == one);
  CHECK(read_seen_leaves("gathering of 8\n3-1 vertical").error().problem == Problem::not_leaves_seen);
  CHECK(read_seen_leaves("gathering of 8\n1-9 vertical").error().problem == Problem::leaf_outside_gathering);
  CHECK(read_seen_leaves("gathering of 4000\n1-4000 vertical").error().problem == Problem::not_leaves_seen);
  std::string many;
  for (int i = 0; i < 65; ++i) many += "gathering of 8\n";
  CHECK(read_seen_leaves(many).error().problem == Problem::gathering_too_large);
}

TEST_CASE("a gathering is counted in digits or words") {
  auto const plain = *read_seen_leaves("gathering of 8\n1 gutter");
  for (auto const* text : {"gathering of eight\n1 gutter", "gathering of 8 leaves\n1 gutter",
                           "Gathering of eight leaves; 1 gutter", "gathering of 8, 1 gutter"})
    CHECK(*read_seen_leaves(text) == plain);
}

TEST_CASE("what is no fact of a leaf is named with its place") {
  struct Wrong {
    std::string_view text;
    Problem problem;
    std::uint32_t line, column;
  };
  for (auto const& one :
       {Wrong{"", Problem::gathering_size_needed, 1, 1}, Wrong{"1 gutter", Problem::gathering_size_needed, 1, 1},
        Wrong{"gathering 8", Problem::gathering_without_leaves, 1, 11},
        Wrong{"gathering of many", Problem::gathering_without_leaves, 1, 14},
        Wrong{"gathering of", Problem::gathering_without_leaves, 1, 13},
        Wrong{"gathering of 0", Problem::gathering_without_leaves, 1, 14},
        Wrong{"gathering of 8x", Problem::gathering_without_leaves, 1, 14},
        Wrong{"gathering of 4097", Problem::gathering_without_leaves, 1, 14},
        Wrong{"gathering of 8\n9 gutter", Problem::leaf_outside_gathering, 2, 1},
        Wrong{"gathering of 8\n1.9 conjugate", Problem::leaf_outside_gathering, 2, 3},
        Wrong{"gathering of 8\n1.8 joined", Problem::not_leaves_seen, 2, 5},
        Wrong{"gathering of 8\n1 bolt side", Problem::not_leaves_seen, 2, 8},
        Wrong{"gathering of 8\n1 bolt head 9", Problem::leaf_outside_gathering, 2, 13},
        Wrong{"gathering of 8\n1 hole at", Problem::not_leaves_seen, 2, 10},
        Wrong{"gathering of 8\n1 hole at centre", Problem::not_leaves_seen, 2, 11},
        Wrong{"gathering of 8\n1 hole tail", Problem::not_leaves_seen, 2, 8},
        Wrong{"gathering of 8\n1", Problem::not_leaves_seen, 2, 2},
        Wrong{"gathering of 8\nx gutter", Problem::not_leaves_seen, 2, 1}}) {
    CAPTURE(one.text);
    auto const read = read_seen_leaves(one.text);
    REQUIRE_FALSE(read);
    CHECK(read.error().problem == one.problem);
    CHECK(read.error().place->line == one.line);
    CHECK(read.error().place->column == one.column);
  }
}

TEST_CASE("gatherings that cannot be are refused") {
  auto const refused = [](std::vector<SeenGathering> const& given) { return foldings_showing(given).error().problem; };
  CHECK(refused({}) == Problem::gathering_size_needed);
  CHECK(refused({{0, {}}}) == Problem::gathering_too_large);
  CHECK(refused({{33, {}}}) == Problem::gathering_too_large);
  CHECK(refused({{32, {}}, {32, {}}}) == Problem::gathering_too_large);
  CHECK(refused({{4, {SeenLeaf{.leaf = 5}}}}) == Problem::leaf_outside_gathering);
  CHECK(refused({{4, {SeenLeaf{.leaf = 1, .conjugate = 5}}}}) == Problem::leaf_outside_gathering);
  CHECK(refused({{4, {SeenLeaf{.leaf = 1}, SeenLeaf{.leaf = 1}}}}) == Problem::leaf_seen_twice);
}
