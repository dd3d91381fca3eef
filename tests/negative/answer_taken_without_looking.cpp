// SPDX-License-Identifier: MIT
// says g++: conversion from 'bifolium::v0::Expected<bifolium::v0::Format>' to non-scalar type 'bifolium::v0::Format' requested
// says clang: no viable conversion from 'Expected<Format>' to 'Format'
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Format format = read_format("8°");
#else
inline Format format = read_format("8°").value_or(Format::of(8));
#endif
