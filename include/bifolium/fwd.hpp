// SPDX-License-Identifier: MIT
/// Declarations only, for headers that name a type without using it. The default template arguments of the library
/// are here and nowhere else.
#pragma once

#include <bifolium/core/config.hpp>

namespace bifolium {
inline namespace v0 {

/// The number of leaves is known only when the program runs (as `std::dynamic_extent` is to std::span).
inline constexpr int dynamic = -1;

// core
struct Error;
template <class T> class Expected;
class Fraction;
struct YearRange;
struct StatedDate;

// paper
template <class Rep, class Unit> class Length;
template <class L> class Sheet;
struct Mould;
struct SheetSize;
struct StatedPlace;

// leaf
template <int N = dynamic> class Gathering;
template <int N = dynamic> class Leaf;
template <int N = dynamic> class PageSide;
class Signature;

// fold
class Format;
class Scheme;
class Attested;
template <int N = dynamic> class Fold;

// imposition
template <int N = dynamic> class Imposition;

// collation
class Formula;
struct Run;
class Change;
struct FormulaCount;
class IdealCopy;
struct LeafOfBook;
struct Reference;

// evidence
struct LeafEvidence;
class Observation;
struct Assumptions;
struct Inference;
struct FormatCandidate;

// edition
struct Edition;
struct Plan;
struct Bill;

// copy
struct LeavesPresent;
struct CopyChecked;

// record
struct Pagination;
struct Extent;
struct Signing;
struct SizeStatement;
struct RecordedSize;
struct FormatStatement;
struct SignatureNote;
struct PhysicalDescription;

// book
struct FieldTexts;
struct Description;
struct Audit;
struct Finding;
struct Repair;
struct SheetsOfBook;

} // namespace v0
} // namespace bifolium
