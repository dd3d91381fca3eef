// SPDX-License-Identifier: MIT
// A bare number has no unit: 187 of what?
// says g++: conversion from 'double' to non-scalar type
// says clang: no viable conversion from 'double' to
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr millimetres height = 187.0;
#else
constexpr millimetres height = 187_mm;
#endif
