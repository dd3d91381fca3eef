// SPDX-License-Identifier: MIT
// The functions of bifolium with the most machinery, compiled once for a whole program. The target bifolium::compiled is
// made of this one file; without CMake, compile it along with the program, all of it with -DBIFOLIUM_COMPILED.
#ifndef BIFOLIUM_COMPILED
#define BIFOLIUM_COMPILED
#endif

// Declared in their own headers, defined here.
#include <bifolium/collation/detail/formula_reader.hpp>
#include <bifolium/core/detail/broken_value.hpp>
#include <bifolium/edition/bill.hpp>
#include <bifolium/evidence/detail/infer_format.hpp>
#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/read_scheme.hpp>

// constexpr functions, when the program runs
namespace bifolium {
inline namespace v0 {
namespace detail::compiled {

Expected<Scheme> read_scheme(std::string_view text) { return SchemeReader{text}.read(); }
Expected<Fold<>> fold(Scheme const& scheme) { return Folder{scheme}.result(); }
Expected<Plan> arrange(SheetMakeUp const& by, Pages const& pages, Arranging how) { return arranged(by, pages, how); }
Expected<Plan> arrange_in_whole_sheets(SheetMakeUp const& by, Pages const& pages, Arranging how) {
  return arranged_in_whole_sheets(by, pages, how);
}
Expected<Bill> reckon(Edition const& edition, Plan const& plan) { return bill_of(edition, plan); }

} // namespace detail::compiled
} // namespace v0
} // namespace bifolium
