// SPDX-License-Identifier: MIT
// Whole millimetres hold no inches without loss; length_cast says that the loss is meant.
// says g++: conversion from
// says clang: no viable conversion
#include <bifolium/paper.hpp>
using namespace bifolium;
using WholeMillimetres = Length<int, Millimetre>;
#ifdef MISUSE
constexpr WholeMillimetres height = inches{4.75};
#else
constexpr WholeMillimetres height = length_cast<WholeMillimetres>(inches{4.75});
#endif
