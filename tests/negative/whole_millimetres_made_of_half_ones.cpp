// SPDX-License-Identifier: MIT
// says g++: conversion from 'Length<double,[...]>' to non-scalar type 'Length<int,[...]>' requested
// says clang: no viable conversion from 'Length<double, [...]>' to 'const Length<int, [...]>'
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Length<int, Millimetre> height = 187.5_mm;
#else
constexpr auto height = length_cast<Length<int, Millimetre>>(187.5_mm);
#endif
