// SPDX-License-Identifier: MIT
// Every public value type: how large it is, whether it may be copied byte by byte, and which operators it has. A row that no
// longer holds stops the compiler; whoever changes a type changes its row, and sees what users will see. (constructed)
#include <bifolium/fwd.hpp>

// What fwd.hpp declares is named before anything else is included; -Wmismatched-tags tells where it says class for struct.
namespace bifolium {
void known_by_name(Error const*, Expected<Fraction> const*, YearRange const*, StatedDate const*, Mould const*,
                   SheetSize const*, StatedPlace const*, Gathering<> const*, Signature const*, Format const*,
                   Scheme const*, Attested const*, Fold<> const*, Imposition<> const*);
void known_by_name(Formula const*, Run const*, Change const*, FormulaCount const*, IdealCopy const*, LeafOfBook const*,
                   Reference const*, LeafEvidence const*, Observation const*, Assumptions const*, Inference const*,
                   FormatCandidate const*, Edition const*, Plan const*, Bill const*, LeavesPresent const*,
                   CopyChecked const*);
void known_by_name(Pagination const*, Extent const*, Signing const*, SizeStatement const*, RecordedSize const*,
                   FormatStatement const*, SignatureNote const*, PhysicalDescription const*, FieldTexts const*,
                   Description const*, Audit const*, Finding const*, Repair const*, SheetsOfBook const*);
} // namespace bifolium

#include <bifolium/bifolium.hpp>
#include <bifolium/book.hpp>
#include <bifolium/copy/paper_of_copy.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/count_foldings.hpp>
#include <bifolium/fold/find_foldings.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/formatter.hpp>
#include <bifolium/leaf/leaf_words.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/paper/sheet_size_sources.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/printed_number.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/record_lines.hpp>

#include "check.hpp"

#include <algorithm>
#include <concepts>
#include <functional>
#include <ranges>
#include <sstream>
#include <unordered_set>

using namespace bifolium;

// What is left out is one, the first, or what the sources call usual. (as each type says; constructed)
static_assert(Insertion{}.leaves == 1 && Identity{}.leaf == 1 && LeafOfBook{}.leaf == 1 && !LeafOfBook{}.inserted);
static_assert(Deletion{}.leaves == FoldedLeaves{1} && Deletion{.leaves = 3}.leaves.last(8) == 3);
static_assert(Dialect{}.flat_counts && Dialect{}.omitted == Omitted::error);
static_assert(Edition{}.scheme == Attested{schemes::octavo} && !Edition{}.ream);
static_assert(Arranging{}.sharing == Sharing::once && Arranging{}.parts == PartWork::turned);
static_assert(PressTerms{}.presses == 1 && PressTerms{}.crew == Crew::full_press);
static_assert(PressTerms{}.tokens_a_day == 12 && PressTerms{}.hours_a_day == 10); // Savage 1841; Febvre and Martin
static_assert(Plates{}.unit == PageUnit::leaves && PageRun{}.unit == PageUnit::pages);
static_assert(FindRules{}.turned_under && SheetsAllowed{}.half_sheets && FoldingGroup{}.sheets == 1 &&
              FoldingGroup{}.part == PaperPart::whole);

namespace {

enum Can : unsigned {
  nothing = 0,
  empty = 1,               ///< can be made of nothing
  equal = 2,               ///< == and !=
  regular = empty | equal, ///< std::regular
  ordered = 4,             ///< std::totally_ordered
  hashed = 8,              ///< std::hash
  printed = 16             ///< <<
};
constexpr Can operator|(Can a, Can b) { return static_cast<Can>(static_cast<unsigned>(a) | static_cast<unsigned>(b)); }

template <class T>
concept Hashed = requires(T const& value) {
  { std::hash<T>{}(value) } -> std::same_as<std::size_t>;
};
template <class T>
concept Printed = requires(std::ostream& out, T const& value) {
  { out << value } -> std::same_as<std::ostream&>;
};

/// `->` of a temporary result: a loop over a row that is reached by it would walk through what has gone.
template <class T>
concept ArrowOfTemporary = requires(Expected<T> (*read)()) {
  read().operator->();
};

template <class T, Can can> struct Operators {
  static_assert(std::copyable<T>);
  static_assert(std::default_initializable<T> == ((can & empty) != 0), "can it be made of nothing?");
  static_assert(std::equality_comparable<T> == ((can & equal) != 0), "has it ==?");
  static_assert((can & empty) == 0 || std::is_empty_v<T> || !std::is_trivially_default_constructible_v<T>,
                "are its members set by themselves?");
  static_assert(std::regular<T> == ((can & regular) == regular), "is it regular?");
  static_assert(std::totally_ordered<T> == ((can & ordered) != 0), "has it an order?");
  static_assert(Hashed<T> == ((can & hashed) != 0), "has it a hash?");
  static_assert(Printed<T> == ((can & printed) != 0), "is it printed by <<?");
#ifdef __cpp_lib_format
  static_assert(std::default_initializable<std::formatter<T>> == ((can & printed) != 0), "does std::format spell it?");
#endif
};
/// Copied byte by byte; where pointers have 8 bytes it is that large.
template <class T, std::size_t size, Can can = nothing> struct Trivial : Operators<T, can> {
  static_assert(std::is_trivially_copyable_v<T>, "may it be copied byte by byte?");
  static_assert(sizeof(T) == size || sizeof(void*) != 8, "is it still as large?");
};
/// Holds std::string or std::vector: how large it is, the standard library says.
template <class T, Can can = nothing> struct Allocating : Operators<T, can> {
  static_assert(!std::is_trivially_copyable_v<T>);
  static_assert(!ArrowOfTemporary<T>, "may a temporary that holds texts or rows be reached into?");
  static_assert(std::is_nothrow_move_constructible_v<T>, "does moving it allocate nothing?");
};

// core
template struct Trivial<Error, 48, regular | hashed | printed>;
template struct Trivial<Limits, 20, regular>;
template struct Trivial<Expected<void>, 48, regular>;
template struct Trivial<Expected<int>, 56, equal>;
template struct Trivial<Expected<Fraction>, 72, equal>;
template struct Trivial<Fraction, 16, regular | ordered | hashed | printed>;
template struct Trivial<ShortText<15>, 16, regular | hashed | printed>;
template struct Trivial<CodePoint, 8, regular>;
template struct Trivial<RaisedDigit, 8, regular>;
static_assert(std::is_nothrow_copy_constructible_v<BrokenPrecondition>); // as whatever is thrown must be

// paper
template struct Trivial<millimetres, 8, regular | ordered | hashed | printed>;
template struct Trivial<OptionalLength, 16, regular | ordered>;
template struct Trivial<OptionalNumber<int>, 8, regular>;
template struct Trivial<Length<int, Millimetre>, 4, regular | ordered | hashed | printed>;
template struct Trivial<Length<Fraction, Inch>, 16, regular | ordered | hashed | printed>;
template struct Trivial<Sheet<millimetres>, 16, equal | hashed | printed>;
template struct Trivial<Sheet<double>, 16, equal | hashed | printed>;
template struct Trivial<PointOfSheet, 16, regular>;
template struct Trivial<Mould, 56, regular>;
template struct Trivial<ReamCount, 48, regular>;
template struct Trivial<PaperCount, 24, regular>;
template struct Trivial<PaperLot, 24, regular>;
template struct Trivial<AlphabetCount, 16, regular>;
template struct Trivial<SheetSize, 48, empty>;
template struct Trivial<SheetQuery, 32, regular>;
template struct Trivial<SheetSizes, 136>;
template struct Trivial<SheetRemark, 24, empty>;
template struct Trivial<SheetSizes::iterator, 16, regular>;

// leaf
template struct Trivial<Letters, 3, regular>;
template struct Trivial<Alphabet, 4, regular>;
template struct Trivial<RomanNumeral, 16, regular>;
template struct Trivial<Leaf<8>, 2, equal | ordered | hashed | printed>;
template struct Trivial<Leaf<>, 4, equal | ordered | hashed | printed>;
template struct Trivial<Gathering<8>, 1, regular | ordered | hashed | printed>;
template struct Trivial<Gathering<>, 2, equal | ordered | hashed | printed>;
template struct Trivial<PageSide<8>, 4, equal | ordered | hashed | printed>;
template struct Trivial<PageSide<>, 6, equal | ordered | hashed | printed>;
template struct Trivial<Signature, 36, regular | ordered | hashed | printed>;

// fold
template struct Trivial<Format, 3, regular | ordered | hashed | printed>;
template struct Trivial<FormatRead, 16, regular>;
template struct Trivial<SourcePlace, 4, regular>;
template struct Trivial<SheetLine, 10, regular>;
template struct Trivial<Step, 12, regular>;
template struct Trivial<Placed, 8, regular>;
template struct Trivial<GatheringLine, 26, regular>;
template struct Trivial<Scheme, 2282, equal>;
template struct Trivial<Attested, 1, equal | ordered | hashed | printed>;
template struct Trivial<PointOfLeaf, 16, regular>;
template struct Trivial<Edge, 16, regular>;
template struct Trivial<LeafShows, 312, empty>;
template struct Trivial<LeafAt, 8, equal | hashed | printed>;
template struct Trivial<Cell, 6, regular>;
template struct Trivial<LeafPages, 8, regular>;
template struct Trivial<Layer, 10, regular>;
template struct Trivial<LayerInPile, 20, regular>;
template struct Trivial<Layers, 1360, equal>;
template struct Trivial<CellSide, 4, regular>;
template struct Trivial<Meeting, 8, regular>;
template struct Trivial<WalkedStep, 2736>;
template struct Trivial<Fold<8>, 216, equal>;
template struct Trivial<Fold<>, 1056, equal>;
template struct Trivial<SeenPage, 6, regular>;
template struct Allocating<SeenForme, regular>;
template struct Trivial<FoldingPrices, 24, regular>;
template struct Trivial<FoldingWork, 24, regular>;
template struct Trivial<FindRules, 16, regular>;
template struct Trivial<FoundFolding, 2328, equal>;
template struct Trivial<Correction, 2368, equal>;
template struct Allocating<Misprints, regular>;
template struct Allocating<FoldingCount, regular>;
template struct Trivial<SeenMark, 40, regular>;
template struct Trivial<SeenEdge, 12, regular>;
template struct Trivial<SeenLeaf, 168, regular>;
template struct Allocating<SeenGathering, regular>;
template struct Trivial<SheetsAllowed, 80, regular>;
template struct Trivial<FoldingWeights, 488, regular>;
template struct Allocating<FoldingGroup, regular>;
template struct Trivial<BlamedLeaf, 12, regular>;
template struct Trivial<LookNext, 12, regular>;
template struct Allocating<FoldingsLeft, regular>;
template struct Trivial<LeafSize<millimetres>, 16, regular>;
template struct Trivial<ImpliedSheet<millimetres>, 24, equal>;

// imposition
template struct Trivial<ImposedPage, 4, regular | printed>;
template struct Trivial<FormePosition, 5, regular>;
template struct Trivial<FormeView, 16>;
template struct Trivial<Imposition<8>, 332, equal>;
template struct Trivial<Imposition<>, 2492, equal>;

// collation
template struct Trivial<SharedSheet, 12, regular>;
template struct Allocating<PaperOfFormula, regular>;
template struct Trivial<Dialect, 5, regular>;
template struct Trivial<Reference, 40, regular | ordered | hashed>;
template struct Allocating<Formula, equal | hashed>;
template struct Trivial<SigningPlace, 60, regular>;
template struct Trivial<SigningException, 64, regular>;
template struct Allocating<Missigned, regular>;
template struct Allocating<Signing, regular>;
template struct Allocating<LeafSigned, regular>;
template struct Trivial<FormulaCount, 24, regular>;
template struct Trivial<JointSeen, 72, regular>;
template struct Allocating<JointJudged, regular>;
template struct Trivial<LeafSpan, 88, regular>;
template struct Allocating<LeavesPresent, regular>;
template struct Trivial<PageRun, 144, regular>;
template struct Trivial<Misprint, 24, regular>;
template struct Allocating<Pagination, regular>;
template struct Allocating<StatedDate, regular>;
template struct Allocating<StatedPlace, regular>;
template struct Allocating<NamedPlace, regular>;
template struct Trivial<YearRange, 8, regular | hashed>;
template struct Trivial<TextSpan, 16, regular>;
template struct Trivial<TextCursor, 40>;
template struct Trivial<TextPlace, 8, regular | ordered>;
template struct Trivial<PlaceCounter, 16, empty>;
template struct Trivial<Place, 40, regular>;
template struct Trivial<CountryCode, 40, regular>;
template struct Trivial<PrintedNumber, 48, regular>;
template struct Trivial<NumberedPage, 56, regular>;
template struct Trivial<Misplaced, 128, regular>;
template struct Allocating<CopyChecked, regular>;
template struct Trivial<MissingLeaf, 80, regular>;
template struct Trivial<WantingPortion, 24, regular>;
template struct Trivial<LeafOfBook, 32, regular | ordered | hashed>;
template struct Trivial<GatheringOfBook, 72, regular>;
template struct Trivial<NumbersOfLeaves, 16, regular>;
template struct Trivial<InsertedLeaf, 96, regular>;
template struct Trivial<FoundGathering, 24, regular>;
template struct Trivial<FoundLeaf, 40, regular>;
template struct Allocating<IdealCopy>;
template struct Trivial<IdealCopy::Gatherings, 8>;
template struct Trivial<IdealCopy::gathering_iterator, 24, regular>;
template struct Trivial<IdealCopy::leaf_iterator, 16, regular>;
template struct Trivial<AbsenceWord, 3, regular>;
template struct Trivial<CharacterReference, 12, regular>;
template struct Trivial<CountedLeaves, 8, regular>;
template struct Trivial<Cycle, 18, regular>;
template struct Trivial<Markup, 8, regular>;
template struct Trivial<Entity, 8, regular>;
template struct Trivial<CountsRead, 20, regular>;
template struct Trivial<NumberInWords, 16, regular>;
template struct Trivial<GatheredRead, 48, regular>;
template struct Trivial<Run, 104, regular>;
template struct Trivial<GatheringAt, 16, regular | ordered | hashed>;
template struct Allocating<FormulaPart, regular>;
template struct Trivial<Deletion, 32, regular>;
template struct Trivial<FoldedLeaves, 12, regular>;
template struct Trivial<Cancel, 32, regular>;
template struct Trivial<Insertion, 88, regular>;
template struct Trivial<Identity, 80, regular>;
template struct Trivial<Note, 24, regular>;
template struct Trivial<Change, 112, equal>;
template struct Trivial<Passage, 24, regular>;
template struct Trivial<ChangeForm, 8, regular>;
template struct Trivial<Plates, 56, regular>;
template struct Allocating<Extent, regular>;
template struct Allocating<SizeStatement, regular>;
template struct Allocating<SignatureNote, equal>;
template struct Allocating<FormatStatement, regular>;
template struct Allocating<PhysicalDescription, regular>;
template struct Allocating<StatedBeside, empty>;
template struct Allocating<ExtentCompared, regular>;

template struct Trivial<SizeRange, 16, regular>;
template struct Allocating<PaperSeen, regular>;
template struct Allocating<PaperJudged, regular>;

// edition
template struct Trivial<CopiesOfAccount, 104, regular>;
template struct Trivial<PaperOfAccount, 48, regular>;
template struct Trivial<Edition, 256, regular>;
template struct Trivial<Range<int>, 12, regular>;
template struct Trivial<Bill, 1296, regular>;
template struct Trivial<Issue, 128, regular>;
template struct Allocating<IssuesBill, regular>;
template struct Trivial<Pages, 32, regular>;
template struct Trivial<Arranging, 3, regular>;
template struct Trivial<EvenWorking, 16, regular>;
template struct Trivial<FormeType, 24, regular>;
template struct Trivial<SheetMakeUp, 36, regular>;
template struct Trivial<Sample, 88, regular>;
template struct Trivial<CastOff, 48, regular>;
template struct Trivial<SolidType, 24, regular>;
template struct Trivial<Working, 16, regular>;
template struct Trivial<Plan, 720, regular>;
template struct Trivial<PressFigure, 16, regular>;
template struct Trivial<Presswork, 80, regular>;
template struct Trivial<PressTerms, 48, regular>;
template struct Trivial<PrintingOption, 976, empty>;
template struct Allocating<Stretch, regular>;

// evidence
template struct Trivial<SheetPopulation, 40, empty>;
template struct Trivial<SheetCount, 8, empty>;
template struct Trivial<YearShares, 72, empty>;
template struct Trivial<GatheringShare, 8, empty>;
template struct Trivial<PaperCounts, 456, empty>;
template struct Trivial<KnownBook, 32, empty>;
template struct Trivial<PaperOfYear, 504, empty>;
template struct Trivial<PaperModel, 250776>;
template struct Trivial<LossOfState, 16, empty>;
template struct Trivial<ChanceOfEvidence, 72, empty>;
template struct Trivial<EvidenceParameters, 344, empty>;
template struct Trivial<PaperAge, 40, empty>;
template struct Trivial<LeafShape, 904, empty>;
template struct Trivial<EvidenceOfLeaf, 8, regular>;
template struct Trivial<LeafEvidence, 304, regular>;
template struct Trivial<Measured, 112, regular>;
template struct Trivial<StatedSize, 24, regular>;
template struct Trivial<RecordedSize, 80, regular>;
template struct Trivial<PeriodSigns, 64, regular>;
template struct Trivial<PeriodBound, 32, empty>;
template struct Trivial<PeriodBounds, 520, empty>;
template struct Trivial<HeightClass, 40, empty>;
template struct Trivial<HeightClasses, 40, empty>;
template struct Trivial<Observation, 648, equal>;
template struct Trivial<GatheringSizes, 12, regular>;
template struct Trivial<Priors, 328, empty>;
template struct Trivial<Priors::Share, 16, empty>;
template struct Trivial<PaperStock, 32, empty>;
template struct Trivial<Reason, 16, regular>;
template struct Trivial<FormatCandidate, 280, regular>;
template struct Trivial<MixedFormats, 568, regular>;
template struct Allocating<Inference, regular>;
template struct Trivial<Assumptions, 368, empty>;
template struct Trivial<EdgeFacts, 16, regular>;
template struct Trivial<EdgeLook, 64, empty>;
template struct Trivial<LeafFacts, 72, empty>;
template struct Trivial<SchemeFacts, 128, empty>;
template struct Trivial<LeafLoss, 16, regular>;
template struct Trivial<LossLimits, 24, empty>;
template struct Trivial<NamedOrigin, 48, empty>;
template struct Allocating<LeafOrigin, empty>;

static_assert(!ArrowOfTemporary<Observation> && !ArrowOfTemporary<Scheme> && ArrowOfTemporary<FormulaCount>);

// book
template struct Trivial<FieldSet, 4, regular>;
template struct Trivial<Implied, 24, regular>;
template struct Allocating<Edit, regular>;
template struct Allocating<Finding, regular>;
template struct Allocating<Repair, regular>;
template struct Allocating<Audit, regular>;
template struct Trivial<GatheringCounts, 1232, empty>;
template struct Trivial<AuditWeights, 3336, empty>;
template struct Trivial<CataloguingRules, 24, empty>;
template struct Trivial<WeightCounts, 3236, empty>;
template struct Trivial<Conventions, 7, regular>;
template struct Allocating<UnreadField, regular>;
template struct Trivial<FieldDoubt, 56, regular>;
template struct Allocating<SecondStatement, regular>;
template struct Allocating<Description, regular>;
template struct Allocating<Stated<int>, regular>;
template struct Trivial<FieldTexts, 368, regular>;
template struct Allocating<Remnant, regular>;
template struct Allocating<RemnantEvidence, regular>;
template struct Allocating<FreePlace, regular>;
template struct Allocating<SheetGrouping, regular>;
template struct Trivial<SheetQuestion, 32, regular>;
template struct Allocating<SheetsOfBook, regular>;

// drawing
template struct Allocating<DrawnLeaf, empty>;
template struct Allocating<DrawnGathering, empty>;
template struct Trivial<ClassPageOptions, 2, empty>;
template struct Trivial<Spot, 16, regular>;
template struct Trivial<Stroke, 48, empty>;
template struct Trivial<Joins, 56, empty>;
template struct Trivial<Lettering, 56, empty>;
template struct Allocating<Svg>;
template struct Allocating<SheetToFold, empty>;
template struct Trivial<PageRead, 8, regular>;

} // namespace

// A temporary gives what it holds by value, or not at all; what has a name gives a reference.
template <class T>
concept GivesRuns = requires(T&& value) {
  static_cast<T&&>(value).runs();
};
static_assert(std::same_as<decltype(std::declval<Formula const&>().runs()), std::vector<Run> const&>);
static_assert(std::same_as<decltype(std::declval<Formula>().runs()), std::vector<Run>>);
static_assert(std::same_as<decltype(std::declval<Formula>().changes()), std::vector<Change>>);
static_assert(std::same_as<decltype(std::declval<Formula>().warnings()), std::vector<Error>>);
static_assert(std::same_as<decltype(std::declval<Formula>().tail()), std::string>);
static_assert(std::same_as<decltype(std::declval<Pagination>().warnings()), std::vector<Error>>);
static_assert(std::same_as<decltype(std::declval<Signing>().warnings()), std::vector<Error>>);
static_assert(std::same_as<decltype(std::declval<StatedDate>().warnings()), std::vector<Error>>);
static_assert(std::same_as<decltype(std::declval<StatedPlace>().places()), std::vector<Place>>);
static_assert(GivesRuns<IdealCopy const&> && !GivesRuns<IdealCopy>);

// What is walked through is a range of the standard, in the kind that its users may count on.
static_assert(std::ranges::forward_range<SheetSizes> && std::ranges::common_range<SheetSizes>);
static_assert(std::forward_iterator<SheetSizes::iterator>);
static_assert(std::same_as<std::ranges::range_reference_t<SheetSizes>, SheetSize const&>);
static_assert(std::ranges::forward_range<IdealCopy::Gatherings> && std::ranges::common_range<IdealCopy::Gatherings>);
static_assert(std::ranges::forward_range<IdealCopy const&> && std::ranges::common_range<IdealCopy const&>);
static_assert(std::ranges::forward_range<Gathering<> const> && std::ranges::forward_range<Gathering<8> const>);
static_assert(std::same_as<std::ranges::range_value_t<Gathering<8>>, Leaf<8>>);
static_assert(std::ranges::contiguous_range<Formula const> && std::ranges::sized_range<Formula const>);
static_assert(std::same_as<std::ranges::range_reference_t<Formula const>, Run const&>);
static_assert(std::ranges::contiguous_range<Scheme const>);
static_assert(std::same_as<std::ranges::range_reference_t<Scheme const>, Step const&>);
static_assert(std::ranges::forward_range<Fold<> const> && std::ranges::forward_range<Fold<8> const>);
static_assert(std::ranges::forward_range<decltype(Attested::all())>);
static_assert(std::ranges::contiguous_range<FormeView> && std::ranges::sized_range<FormeView>);
static_assert(std::ranges::contiguous_range<PeriodBounds> && std::ranges::sized_range<PeriodBounds>);
static_assert(std::ranges::contiguous_range<std::span<LeafShape const>> &&
              std::ranges::sized_range<std::span<LeafShape const>>);
static_assert(std::ranges::contiguous_range<Plan> && std::ranges::sized_range<Plan>);
static_assert(std::ranges::random_access_range<Inference const>);
// An algorithm that is given a passing view gives an iterator that may be used; of a passing value it gives
// std::ranges::dangling. ([range.range])
static_assert(std::ranges::borrowed_range<decltype(Attested::all())>);
static_assert(std::ranges::borrowed_range<Gathering<>> && std::ranges::borrowed_range<Gathering<8>>);
static_assert(std::ranges::borrowed_range<IdealCopy::Gatherings> && std::ranges::borrowed_range<FormeView>);
static_assert(!std::ranges::borrowed_range<Formula> && !std::ranges::borrowed_range<Fold<8>>);
static_assert(!std::ranges::borrowed_range<SheetSizes> && !std::ranges::borrowed_range<PeriodBounds>);
static_assert(!std::ranges::borrowed_range<Plan> && !std::ranges::borrowed_range<Inference>);
static_assert(!std::ranges::borrowed_range<Scheme> && !std::ranges::borrowed_range<IdealCopy>);

TEST_CASE("a scheme, a leaf, a gathering and a page are found in a passing view") {
  auto const half = std::ranges::find_if(Attested::all(), [](Attested one) { return one.id() == "12_common"; });
  CHECK(*half == Attested{"12_common"_scheme});
  CHECK(*std::ranges::find(Gathering{8}, Gathering{8}.leaf(3)) == Gathering{8}.leaf(3));
  IdealCopy const book{*read_formula("8°: A–K⁸ L⁴")};
  CHECK((*std::ranges::find(book.gatherings(), 4, &GatheringOfBook::folded)).first_leaf == 81);
  CHECK(std::ranges::find(impose<schemes::octavo>().forme(Side::outer), head_up(16))->page == 16);
  // and the containers of the standard take each of these ranges
  auto const all = Attested::all();
  CHECK(std::vector(all.begin(), all.end()).size() == Attested::count);
  CHECK(std::vector(book.begin(), book.end()).size() == 84);
}

TEST_CASE("the sheets of a place go through the algorithms and views of the standard") {
  auto const british = find_sheets({.region = Region::britain});
  CHECK(std::ranges::distance(british) == british.count());
  auto const large =
      std::ranges::count_if(british, [](SheetSize const& size) { return size.sheet().long_side() > 600_mm; });
  auto narrow = british | std::views::filter([](SheetSize const& size) { return size.sheet().long_side() <= 600_mm; });
  CHECK(large > 0);
  CHECK(std::ranges::distance(narrow) + large == british.count());
  auto const formula = read_formula("8°: π² A–K⁸ L⁴");
  std::int64_t leaves = 0;
  IdealCopy const book{*formula};
  for (auto const gathering : book.gatherings() | std::views::drop(1)) leaves += gathering.leaves;
  CHECK(leaves == 84); // ten eights and a four
  STATIC_CHECK(std::ranges::count(impose<schemes::octavo>().forme(Side::outer), head_up(1)) == 1);
}

TEST_CASE("leaves of a book, references and short texts are found again in hashed sets") {
  auto const formula = read_formula("8°: A–K⁸ L⁴");
  std::unordered_set<LeafOfBook> leaves;
  std::unordered_set<Reference> pages;
  for (std::int64_t n = 1; n <= formula->leaves(); ++n) {
    auto const leaf = IdealCopy{*formula}.leaf_of_number(n);
    REQUIRE(leaf);
    leaves.insert(*leaf);
    pages.insert({*leaf, LeafSide::recto});
    pages.insert({*leaf, LeafSide::verso});
  }
  CHECK(leaves.size() == 84);
  CHECK(pages.size() == 168);
  CHECK(pages.contains(*read_reference(*formula, "B3v")));
  std::unordered_set<LeafAt> places;
  for (int g = 0; g < 2; ++g)
    for (int n = 1; n <= 4; ++n) places.insert({g, Leaf<>{n, Gathering<>{4}}});
  CHECK(places.size() == 8);
  std::unordered_set<ShortText<8>> const words{"A", "B", "A"};
  CHECK(words.size() == 2);
  CHECK(words.contains("B"));
}

TEST_CASE("what is equal hashes alike, however it was written") {
  auto const alike = [](auto const& a, auto const& b) {
    REQUIRE(a == b);
    return std::hash<std::remove_cvref_t<decltype(a)>>{}(a) == std::hash<std::remove_cvref_t<decltype(b)>>{}(b);
  };
  CHECK(alike(Fraction{2, 4}, Fraction{1, 2}));
  CHECK(alike(millimetres{0.0}, millimetres{-0.0}));
  CHECK(alike(Sheet{315_mm, 445_mm}, Sheet{445_mm, 315_mm}));
  CHECK(alike(*read_signature("AA"), *read_signature("2A")));
  CHECK(alike(*read_signature("I"), *read_signature("J"))); // one letter of the 23
  CHECK(alike(*read_format("8vo"), Format::of(8)));
  CHECK(alike(Leaf<>{Leaf<8>{3}}, Leaf<>{3, Gathering{8}}));
  CHECK(alike(Gathering<>{Gathering<8>{}}, Gathering{8}));
  CHECK(alike(Attested{schemes::octavo}, *Attested::find("8_octavo")));
  CHECK(alike(YearRange{1725}, YearRange{1725, 1725}));
  CHECK(alike(read_format("doormat").error(), read_format("doormat").error()));
  CHECK(alike(*read_formula("8°: A–K⁸ L⁴ (−L4)"), *read_formula("8vo: A-K8, L4(-L4)")));
  std::unordered_set<Formula> formulas;
  for (char const* text : {"A⁸", "A⁴", "B⁸", "A-B⁸", "A⁸ B⁸", "A⁸(−A8)", "2A⁸", "8°: A⁸"})
    formulas.insert(*read_formula(text));
  CHECK(formulas.size() == 8);
  CHECK(formulas.contains(*read_formula("A8(-A8)")));
  // and a book of many leaves is not piled up on a few hashes
  std::unordered_set<std::size_t> hashes;
  for (int leaves = 1; leaves <= 64; ++leaves)
    for (int k = 1; k <= leaves; ++k) hashes.insert(std::hash<Leaf<>>{}(Gathering{leaves}.leaf(k)));
  CHECK(hashes.size() == 64 * 65 / 2);
}

TEST_CASE("references are sorted in the order of the book, recto before verso") {
  auto const formula = read_formula("4°: A–C⁴");
  auto const at = [&](char const* text) { return *read_reference(*formula, text); };
  CHECK(at("A4v") < at("B1r"));
  CHECK(at("B1r") < at("B1v"));
  CHECK(at("B1") < at("B1r"));
}

TEST_CASE("a sheet comes apart into its sides") {
  constexpr Sheet sheet{445_mm, 315_mm};
  constexpr auto shorter = sheet.get<0>();
  auto const [short_side, long_side] = sheet;
  CHECK(short_side == shorter);
  CHECK(long_side == 445_mm);
  STATIC_CHECK(std::same_as<std::tuple_element_t<1, Sheet<inches>>, inches>);
}

// An enumeration in a database, or of a later version, may be any number. (constructed)
template <class Enum> void every_number_has_an_identifier(int first, int count) {
  for (int i = 0; i < (sizeof(Enum) == 1 ? 256 : 65536); ++i) {
    auto const name = identifier(static_cast<Enum>(i));
    bool const named = i >= first && i < first + count;
    CAPTURE(i);
    REQUIRE(!name.empty());
    REQUIRE((name != "unknown") == named);
  }
}
TEST_CASE("a number that no enumerator has is called unknown") {
  CHECK(identifier(Finding{}.id) == "unknown");
  every_number_has_an_identifier<FindingId>(first_finding, finding_count);
  every_number_has_an_identifier<Severity>(0, 3);
  every_number_has_an_identifier<Field>(0, field_count);
  every_number_has_an_identifier<SlipKind>(0, slip_count);
  every_number_has_an_identifier<Region>(0, region_count);
  every_number_has_an_identifier<Certainty>(0, 5);
  every_number_has_an_identifier<PaperOrigin>(0, 4);
  every_number_has_an_identifier<EvidenceKind>(0, evidence_kinds);
  every_number_has_an_identifier<Matter>(0, matters);
  every_number_has_an_identifier<LookNext::What>(0, 6);
  every_number_has_an_identifier<Correction::Kind>(0, 5);
  CHECK(to_words(static_cast<EvidenceKind>(200)) == "unknown");
  CHECK(what_settles(static_cast<SlipKind>(200)).empty());
  CHECK_THROWS_AS(static_cast<void>(to_words(static_cast<HeightScale>(200))), BrokenPrecondition);
  CHECK_THROWS_AS(static_cast<void>(source_of(static_cast<HeightScale>(11))), BrokenPrecondition);
}
TEST_CASE("what was stored by its identifier is found again") {
  for (int i = 0; i < 65536; ++i) {
    auto const problem = static_cast<Problem>(i);
    auto const finding = static_cast<FindingId>(i);
    if (identifier(problem) != "unknown") CHECK(find_problem(identifier(problem)) == problem);
    if (identifier(finding) != "unknown") CHECK(find_finding(identifier(finding)) == finding);
  }
  for (std::size_t i = 0; i < field_count; ++i)
    CHECK(find_field(identifier(static_cast<Field>(i))) == static_cast<Field>(i));
  for (char const* name : {"", "unknown", "Formula", "no_such_thing"}) {
    CHECK(!find_problem(name));
    CHECK(!find_finding(name));
    CHECK(!find_field(name));
  }
  for (auto const scheme : Attested::all()) CHECK(scheme.format() == scheme.scheme().format());
}
TEST_CASE("a row of the caller's own has words, and two lots of one size are one") {
  CHECK(std::string_view{ReamCount{500, 25}.name}.empty());
  CHECK(std::string_view{ReamCount{500, 25}.source}.empty());
  CHECK(PaperLot{"mine", 1000} == lots::bundle);
  CHECK(lots::bundle != lots::bale);
  CHECK(std::string_view{PressFigure{250}.source}.empty());
  CHECK(std::string_view{SheetSize{}.name}.empty());
  CHECK(std::string_view{PeriodBound{}.reason}.empty());
  CHECK(!HeightClass{}.borrowed_name());
}
TEST_CASE("a length that is not there is not taken") {
  OptionalLength const none;
  CHECK_THROWS_AS(*none, BrokenPrecondition);
  CHECK_THROWS_AS(static_cast<void>(none->count()), BrokenPrecondition);
  CHECK(*OptionalLength{201_mm} == 201_mm);
  static_assert(std::same_as<decltype(*OptionalLength{201_mm}), millimetres>);
}

// A catalogue asks whether a record, or what was found in it, has changed since it was stored. (constructed)
TEST_CASE("descriptions, audits, observations, rankings and bills are compared by their content") {
  FieldTexts const texts{.formula = "8°: A-C⁸ D", .pagination = "[8], 38 p.", .height = "187 mm", .year = "[1725?]"};
  auto const described = read_description(texts);
  CHECK(described == read_description(texts));
  CHECK(described != read_description({.formula = texts.formula, .pagination = "[8], 39 p."}));
  CHECK(examine(described) == examine(described));
  CHECK(examine(described) != examine(read_description({.formula = "8°: A-C⁸"})));
  auto const seen = observe({.height = 187_mm, .year = 1725}).value(), other = observe({.height = 187_mm}).value();
  CHECK(seen == observe(seen.seen()).value());
  CHECK(seen != other);
  CHECK(infer_format(seen) == infer_format(seen));
  CHECK(infer_format(seen) != infer_format(other));
  CHECK(reckon({.pages = 340, .copies = 750}) == reckon({.pages = 340, .copies = 750}));
  CHECK(reckon({.pages = 340, .copies = 750}) != reckon({.pages = 340, .copies = 751}));
}
