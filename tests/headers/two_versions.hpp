// SPDX-License-Identifier: MIT
/// One source for two units, each with another version of the library: everything that has linkage must have two names.
#include <bifolium/collation/count.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/version.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>

#include <string>
#include <typeinfo>

/// A page of a fold made when run, leaves of a formula, the sentence of an error: templates, tables and inline functions.
inline namespace unit {
static std::string seen_by_this_unit() {
  auto const fold = bifolium::fold(bifolium::schemes::octavo.scheme());
  auto const count = bifolium::count_formula("8°: A–K⁸");
  std::string text = std::to_string(bifolium::impose(*fold).outer(0, 0).page);
  text += ' ' + std::to_string(count->leaves) + ' ' + bifolium::message(bifolium::count_formula("8°: A–K").error());
  try {
    static_cast<void>(*bifolium::read_format("8"));
  } catch (bifolium::BrokenPrecondition const&) {
    text += " broken";
  }
  return text + ' ' + typeid(bifolium::Signature).name() + ' ' + std::to_string(BIFOLIUM_VERSION_MAJOR);
}
} // namespace unit
