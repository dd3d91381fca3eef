// SPDX-License-Identifier: MIT
// The functions of bifolium with the most machinery, compiled once for a whole program. The target bifolium::compiled is
// made of this one file; without CMake, compile it along with the program, all of it with -DBIFOLIUM_COMPILED.
#ifndef BIFOLIUM_COMPILED
#define BIFOLIUM_COMPILED
#endif

// Declared in their own headers, defined here.
#include <bifolium/book/detail/audit/examine.hpp>
#include <bifolium/book/detail/reading/read_description.hpp>
#include <bifolium/book/detail/sheets/sheets_of_book.hpp>
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/detail/formula_reader.hpp>
#include <bifolium/copy/detail/check_copy.hpp>
#include <bifolium/copy/detail/read_leaves_present.hpp>
#include <bifolium/core/detail/broken_value.hpp>
#include <bifolium/drawing/detail/class_page.hpp>
#include <bifolium/edition/bill.hpp>
#include <bifolium/evidence/detail/infer_format.hpp>
#include <bifolium/fold/detail/foldings_showing.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/read_scheme.hpp>
#include <bifolium/record/detail/read_extent.hpp>

// constexpr functions, when the program runs
namespace bifolium {
inline namespace v0 {
namespace detail::compiled {

Expected<Scheme> read_scheme(std::string_view text) { return scheme_of_text(text); }
Expected<Fold<>> fold(Scheme const& scheme) { return Folder{scheme}.result(); }
Expected<Plan> arrange(SheetMakeUp const& by, Pages const& pages, Arranging how) { return arranged(by, pages, how); }
Expected<Plan> arrange_in_whole_sheets(SheetMakeUp const& by, Pages const& pages, Arranging how) {
  return arranged_in_whole_sheets(by, pages, how);
}
Expected<Bill> reckon(Edition const& edition, Plan const& plan) { return bill_of(edition, plan); }

Expected<FormulaCount> count_in_full(std::string_view text, Dialect dialect, Limits const& limits) {
  return detail::count_in_full(text, dialect, limits);
}
Expected<std::vector<FoundFolding>> find_foldings(std::span<SeenForme const> formes, FindRules const& rules) {
  return foldings_found(formes, rules);
}
Expected<Misprints> find_misprints(std::span<SeenForme const> formes, FindRules const& rules) {
  return misprints_found(formes, rules);
}

} // namespace detail::compiled
} // namespace v0
} // namespace bifolium
