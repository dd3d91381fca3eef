// SPDX-License-Identifier: MIT
// Whole millimetres hold no inches without loss; length_cast says that the loss is meant.
// says g++: conversion from 'Length<double,bifolium::v0::Inch>' to non-scalar type 'Length<int,bifolium::v0::Millimetre>' requested
// says clang: no viable conversion from 'Length<double, Inch>' to 'const Length<int, Millimetre>'
#include <bifolium/paper.hpp>
using namespace bifolium;
using WholeMillimetres = Length<int, Millimetre>;
#ifdef MISUSE
constexpr WholeMillimetres height = inches{4.75};
#else
constexpr WholeMillimetres height = length_cast<WholeMillimetres>(inches{4.75});
#endif
