// SPDX-License-Identifier: MIT
/// std::format for the types that print: `std::format("{:>8}", format)`. Opt-in, as <format> and <sstream> cost more than
/// the rest of the library together; where the standard library has no <format> (g++ 12) this header is empty.
///
/// A value is spelled by its own `<<`, so that a format string and a stream never disagree. Width, fill, alignment and
/// precision are those of a text, and count what is seen: "8°" is two columns wide and not three bytes.
#pragma once

#include <version>

#ifdef __cpp_lib_format
#include <bifolium/core/error.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>

#include <cstddef>
#include <format>
#include <locale>
#include <sstream>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class T> struct AsPrinted : std::formatter<std::string_view> {
  template <class Context> auto format(T const& value, Context& context) const {
    std::ostringstream out;
    out.imbue(std::locale::classic()); // as std::format is: the same text whatever locale the program has set
    out << value;
    return std::formatter<std::string_view>::format(out.str(), context);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium

template <std::size_t N>
struct std::formatter<bifolium::ShortText<N>> : bifolium::detail::AsPrinted<bifolium::ShortText<N>> {};
template <> struct std::formatter<bifolium::Error> : bifolium::detail::AsPrinted<bifolium::Error> {};
template <> struct std::formatter<bifolium::Fraction> : bifolium::detail::AsPrinted<bifolium::Fraction> {};
template <class Rep, class Unit>
struct std::formatter<bifolium::Length<Rep, Unit>> : bifolium::detail::AsPrinted<bifolium::Length<Rep, Unit>> {};
template <class L> struct std::formatter<bifolium::Sheet<L>> : bifolium::detail::AsPrinted<bifolium::Sheet<L>> {};
template <int N> struct std::formatter<bifolium::Gathering<N>> : bifolium::detail::AsPrinted<bifolium::Gathering<N>> {};
template <int N> struct std::formatter<bifolium::Leaf<N>> : bifolium::detail::AsPrinted<bifolium::Leaf<N>> {};
template <int N> struct std::formatter<bifolium::PageSide<N>> : bifolium::detail::AsPrinted<bifolium::PageSide<N>> {};
template <> struct std::formatter<bifolium::Signature> : bifolium::detail::AsPrinted<bifolium::Signature> {};
template <> struct std::formatter<bifolium::Format> : bifolium::detail::AsPrinted<bifolium::Format> {};
template <> struct std::formatter<bifolium::Attested> : bifolium::detail::AsPrinted<bifolium::Attested> {};
template <> struct std::formatter<bifolium::LeafAt> : bifolium::detail::AsPrinted<bifolium::LeafAt> {};
template <> struct std::formatter<bifolium::ImposedPage> : bifolium::detail::AsPrinted<bifolium::ImposedPage> {};
#endif
