// SPDX-License-Identifier: MIT
/// Lengths from elsewhere, as a user would bring them to a sheet: Boost.Units in metres, bare fractions of
/// Boost.Rational, and the one over the other.
#pragma once

#include <bifolium/paper/sheet.hpp>

#include <boost/rational.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/length.hpp>

using metres = boost::units::quantity<boost::units::si::length, double>;
using rational = boost::rational<int>;
using rational_metres = boost::units::quantity<boost::units::si::length, rational>;
constexpr auto metre = boost::units::si::metre;

template <> struct bifolium::LengthTraits<metres> {
  static metres part(metres const& whole, int of) { return whole * (1.0 / of); }
  static double ratio(metres const& a, metres const& b) { return a.value() / b.value(); }
};
template <> struct bifolium::LengthTraits<rational> {
  static rational part(rational const& whole, int of) { return whole / rational{of}; }
  static double ratio(rational const& a, rational const& b) { return boost::rational_cast<double>(a / b); }
};
template <> struct bifolium::LengthTraits<rational_metres> {
  static rational_metres part(rational_metres const& whole, int of) {
    return rational_metres::from_value(whole.value() / of);
  }
  static double ratio(rational_metres const& a, rational_metres const& b) {
    return boost::rational_cast<double>(a.value() / b.value());
  }
};
