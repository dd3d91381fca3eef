// SPDX-License-Identifier: MIT
/// A page for a class: one file of HTML without other files. The sheet folds step by step, forward and back, by button
/// or arrow key. Formes, printed paper, the paper itself, the gathering and every opening are below it, and a page that
/// is selected with the pointer or the keyboard is marked wherever it is shown. A switch shows the book that results
/// from a mistake. When printed, the page gives the sheets to fold, their steps and the questions.
///
/// The page works with a screen reader, by keyboard, in black and white, at the width of a telephone, and with motion
/// turned off. All its content follows from the scheme. Elements carry `data-page`, `data-leaf` and `data-place`.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/drawing/foldable.hpp>

namespace bifolium {
inline namespace v0 {

/// The paper on which the class page will be printed.
struct ClassPageOptions {
  PageSize paper{PageSize::a4};     ///< A4 or letter
  Duplex duplex{Duplex::long_edge}; ///< how the printer turns the page between front and back
};

/// Returns the page of a scheme. The function allocates memory. Errors: those of `fold`.
BIFOLIUM_INLINE Expected<std::string> class_page(Scheme const& scheme, ClassPageOptions options = {});

/// Returns the page of a formula: all its gatherings with the sheet and forme of each leaf, and the sheet of the most
/// frequent gathering to fold. `written` is the name of the book on the page. The function allocates memory. Errors:
/// format_not_stated; no_scheme_for_gatherings; too_many_leaves_drawn, which counts the leaves of all gatherings.
BIFOLIUM_INLINE Expected<std::string> class_page(Formula const& formula, std::string_view written,
                                                 ClassPageOptions options = {}, Limits const& limits = {});

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/drawing/detail/class_page.hpp>
#endif
