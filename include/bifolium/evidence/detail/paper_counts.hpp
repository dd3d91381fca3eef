// SPDX-License-Identifier: MIT
/// Written by bench/fit_paper_model.cpp from the tables of tests/data and bench/paper_model, which name their sources: 3922 books.
/// See paper_model.hpp for what the numbers mean.
#pragma once

#include <bifolium/evidence/paper_model.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
namespace paper_rows {

using enum Region;
// clang-format off

/// Region, year, group of formats, population, books.
inline constexpr SheetCount sheets[]{
    {anywhere,5,1,2,0.7F}, {anywhere,5,1,4,0.1F}, {anywhere,5,4,0,0.2F}, {anywhere,5,4,3,0.1F}, {anywhere,5,4,4,0.3F}, {anywhere,6,1,2,0.2F}, {anywhere,6,2,3,1.1F}, {anywhere,6,2,5,0.1F},
    {anywhere,6,4,0,1.8F}, {anywhere,6,4,4,0.2F}, {anywhere,7,0,0,0.1F}, {anywhere,7,0,2,0.4F}, {anywhere,7,0,3,0.1F}, {anywhere,7,0,4,0.4F}, {anywhere,7,2,3,1.6F}, {anywhere,7,2,5,0.2F},
    {anywhere,7,4,0,0.7F}, {anywhere,8,2,3,0.2F}, {anywhere,8,3,2,0.2F}, {anywhere,8,3,3,3.2F}, {anywhere,8,3,5,0.2F}, {anywhere,8,3,6,0.1F}, {anywhere,8,4,0,0.5F}, {anywhere,9,1,6,0.1F},
    {anywhere,9,2,3,0.8F}, {anywhere,9,2,6,0.8F}, {anywhere,9,3,2,0.2F}, {anywhere,9,3,3,2.F}, {anywhere,9,3,5,0.2F}, {anywhere,9,3,6,2.4F}, {anywhere,10,1,2,0.6F}, {anywhere,10,1,4,0.1F},
    {anywhere,10,1,6,0.9F}, {anywhere,10,1,7,0.5F}, {anywhere,10,1,8,0.4F}, {anywhere,10,2,3,1.F}, {anywhere,10,2,5,0.3F}, {anywhere,10,2,6,2.5F}, {anywhere,10,3,6,2.6F}, {anywhere,10,3,7,0.3F},
    {anywhere,10,4,6,0.7F}, {anywhere,11,1,2,0.2F}, {anywhere,11,1,4,0.4F}, {anywhere,11,1,6,0.7F}, {anywhere,11,1,7,1.2F}, {anywhere,11,1,8,0.5F}, {anywhere,11,2,3,0.3F}, {anywhere,11,2,6,1.9F},
    {anywhere,11,2,7,0.1F}, {anywhere,11,2,8,0.3F}, {anywhere,11,3,3,0.6F}, {anywhere,11,3,4,0.1F}, {anywhere,11,3,5,0.4F}, {anywhere,11,3,6,10.F}, {anywhere,11,3,7,2.7F}, {anywhere,11,3,8,0.2F},
    {anywhere,11,4,6,0.2F}, {anywhere,12,2,6,0.2F}, {anywhere,12,2,8,1.4F}, {anywhere,12,3,5,0.1F}, {anywhere,12,3,6,3.2F}, {anywhere,12,3,7,1.1F}, {anywhere,12,3,8,0.1F}, {rome,0,0,0,0.1F},
    {rome,0,0,2,0.4F}, {rome,0,0,4,0.3F}, {rome,0,0,7,0.4F}, {rome,0,1,0,0.2F}, {rome,0,1,2,5.2F}, {rome,0,1,4,0.2F}, {rome,0,1,7,0.2F}, {rome,0,2,2,0.3F},
    {rome,0,2,7,0.1F}, {rome,1,0,0,2.2F}, {rome,1,0,1,0.2F}, {rome,1,0,2,13.5F}, {rome,1,0,4,12.4F}, {rome,1,0,7,11.7F}, {rome,1,1,0,1.1F}, {rome,1,1,2,23.5F},
    {rome,1,1,4,1.5F}, {rome,1,1,7,8.9F}, {rome,1,1,8,0.1F}, {rome,1,2,2,2.4F}, {rome,1,2,6,0.1F}, {rome,1,2,7,1.6F}, {rome,1,2,8,0.1F}, {rome,2,0,0,1.9F},
    {rome,2,0,1,0.7F}, {rome,2,0,2,10.8F}, {rome,2,0,4,5.5F}, {rome,2,0,7,12.9F}, {rome,2,1,0,1.5F}, {rome,2,1,2,54.5F}, {rome,2,1,4,2.5F}, {rome,2,1,7,5.6F},
    {rome,2,1,8,0.1F}, {rome,2,2,2,2.1F}, {rome,2,2,6,0.2F}, {rome,2,2,7,3.5F}, {rome,2,2,8,0.9F}, {rome,3,0,0,0.3F}, {rome,3,0,2,5.3F}, {rome,3,0,4,1.5F},
    {rome,3,0,7,2.F}, {rome,3,1,0,1.2F}, {rome,3,1,2,96.5F}, {rome,3,1,4,2.F}, {rome,3,1,7,0.8F}, {rome,3,2,2,2.9F}, {rome,3,2,4,0.5F}, {rome,3,2,7,0.8F},
    {rome,4,0,0,0.3F}, {rome,4,0,2,4.4F}, {rome,4,0,4,2.2F}, {rome,4,0,7,2.1F}, {rome,4,1,0,1.1F}, {rome,4,1,2,55.2F}, {rome,4,1,4,1.7F}, {rome,4,1,7,0.8F},
    {rome,4,2,1,0.5F}, {rome,4,2,2,4.4F}, {rome,4,2,4,0.5F}, {rome,4,2,7,0.8F}, {rome,6,1,2,0.1F}, {rome,7,1,2,0.8F}, {rome,7,1,4,0.1F}, {venice,0,0,2,0.6F},
    {venice,0,0,7,0.1F}, {venice,0,1,0,0.1F}, {venice,0,1,2,1.F}, {venice,0,1,4,0.1F}, {venice,0,2,7,0.2F}, {venice,1,0,1,0.1F}, {venice,1,0,2,4.3F}, {venice,1,0,4,2.F},
    {venice,1,0,7,0.7F}, {venice,1,1,0,0.5F}, {venice,1,1,2,5.F}, {venice,1,1,4,0.4F}, {venice,1,1,7,3.2F}, {venice,1,2,2,0.1F}, {venice,1,2,4,0.1F}, {venice,1,2,7,0.8F},
    {venice,2,0,0,0.2F}, {venice,2,0,1,0.2F}, {venice,2,0,2,30.7F}, {venice,2,0,4,2.9F}, {venice,2,0,7,6.6F}, {venice,2,1,0,1.7F}, {venice,2,1,2,22.6F}, {venice,2,1,4,2.9F},
    {venice,2,1,7,1.9F}, {venice,2,2,2,0.4F}, {venice,2,2,4,0.3F}, {venice,2,2,7,1.2F}, {venice,3,0,0,0.2F}, {venice,3,0,1,0.1F}, {venice,3,0,2,34.F}, {venice,3,0,3,0.1F},
    {venice,3,0,4,2.8F}, {venice,3,0,7,6.F}, {venice,3,1,0,1.F}, {venice,3,1,2,25.3F}, {venice,3,1,4,5.4F}, {venice,3,1,7,0.9F}, {venice,3,2,2,4.4F}, {venice,3,2,3,0.1F},
    {venice,3,2,4,1.1F}, {venice,3,2,7,1.4F}, {venice,4,0,0,0.1F}, {venice,4,0,1,0.1F}, {venice,4,0,2,15.9F}, {venice,4,0,3,0.1F}, {venice,4,0,4,3.5F}, {venice,4,0,7,4.9F},
    {venice,4,1,0,0.9F}, {venice,4,1,2,20.5F}, {venice,4,1,4,3.F}, {venice,4,1,7,0.8F}, {venice,4,2,2,2.8F}, {venice,4,2,3,0.1F}, {venice,4,2,4,0.7F}, {venice,4,2,7,2.F},
    {venice,5,0,2,0.5F}, {venice,5,0,4,0.3F}, {venice,6,0,0,0.1F}, {venice,6,0,2,0.8F}, {venice,6,0,4,1.2F}, {venice,6,1,0,0.1F}, {venice,6,1,4,0.1F}, {venice,6,1,7,0.8F},
    {venice,7,1,0,0.1F}, {venice,7,1,2,0.1F}, {venice,7,1,4,0.4F}, {venice,7,1,7,0.9F}, {venice,8,1,2,0.1F}, {venice,8,1,4,0.4F}, {north_italy,0,0,2,1.3F}, {north_italy,0,0,4,0.2F},
    {north_italy,0,0,7,0.4F}, {north_italy,0,1,2,5.2F}, {north_italy,0,1,4,0.5F}, {north_italy,0,1,7,0.7F}, {north_italy,0,2,2,0.1F}, {north_italy,0,2,4,0.4F}, {north_italy,0,2,7,0.4F}, {north_italy,1,0,0,0.2F},
    {north_italy,1,0,1,0.3F}, {north_italy,1,0,2,8.5F}, {north_italy,1,0,4,3.3F}, {north_italy,1,0,7,5.2F}, {north_italy,1,1,0,0.2F}, {north_italy,1,1,2,25.3F}, {north_italy,1,1,4,7.8F}, {north_italy,1,1,7,8.4F},
    {north_italy,1,2,2,0.5F}, {north_italy,1,2,3,0.1F}, {north_italy,1,2,4,1.8F}, {north_italy,1,2,7,5.9F}, {north_italy,2,0,0,1.8F}, {north_italy,2,0,1,1.3F}, {north_italy,2,0,2,44.6F}, {north_italy,2,0,4,11.1F},
    {north_italy,2,0,7,19.1F}, {north_italy,2,1,0,1.6F}, {north_italy,2,1,2,64.3F}, {north_italy,2,1,4,13.4F}, {north_italy,2,1,7,22.9F}, {north_italy,2,2,2,0.6F}, {north_italy,2,2,3,0.1F}, {north_italy,2,2,4,3.9F},
    {north_italy,2,2,7,11.5F}, {north_italy,2,2,8,0.5F}, {north_italy,3,0,0,0.6F}, {north_italy,3,0,1,1.4F}, {north_italy,3,0,2,55.F}, {north_italy,3,0,3,0.1F}, {north_italy,3,0,4,3.8F}, {north_italy,3,0,7,10.F},
    {north_italy,3,1,0,0.7F}, {north_italy,3,1,2,111.4F}, {north_italy,3,1,4,8.F}, {north_italy,3,1,7,8.7F}, {north_italy,3,2,2,1.6F}, {north_italy,3,2,3,0.1F}, {north_italy,3,2,4,4.4F}, {north_italy,3,2,7,3.8F},
    {north_italy,3,2,8,0.1F}, {north_italy,4,0,0,0.3F}, {north_italy,4,0,1,0.3F}, {north_italy,4,0,2,40.8F}, {north_italy,4,0,4,2.5F}, {north_italy,4,0,7,7.8F}, {north_italy,4,1,0,0.7F}, {north_italy,4,1,2,109.8F},
    {north_italy,4,1,4,10.2F}, {north_italy,4,1,7,4.1F}, {north_italy,4,2,2,3.9F}, {north_italy,4,2,3,0.2F}, {north_italy,4,2,4,2.8F}, {north_italy,4,2,7,2.3F}, {north_italy,5,2,3,0.5F}, {north_italy,6,2,3,1.4F},
    {north_italy,6,2,5,0.1F}, {north_italy,7,0,2,0.4F}, {north_italy,7,0,4,0.5F}, {north_italy,7,1,2,0.3F}, {north_italy,7,1,4,0.1F}, {north_italy,7,2,3,0.8F}, {north_italy,8,1,2,0.4F}, {north_italy,8,1,4,1.F},
    {north_italy,8,2,3,0.1F}, {north_italy,9,1,4,0.1F}, {other_italy,0,0,2,0.7F}, {other_italy,0,0,4,0.1F}, {other_italy,0,0,7,0.2F}, {other_italy,0,1,2,1.2F}, {other_italy,0,1,4,0.1F}, {other_italy,0,1,7,0.2F},
    {other_italy,0,2,2,0.1F}, {other_italy,0,2,7,0.1F}, {other_italy,1,0,0,0.7F}, {other_italy,1,0,1,0.5F}, {other_italy,1,0,2,7.4F}, {other_italy,1,0,4,1.F}, {other_italy,1,0,7,2.3F}, {other_italy,1,1,0,0.4F},
    {other_italy,1,1,2,6.4F}, {other_italy,1,1,4,0.3F}, {other_italy,1,1,7,1.4F}, {other_italy,1,2,0,0.1F}, {other_italy,1,2,1,0.1F}, {other_italy,1,2,2,0.4F}, {other_italy,1,2,7,0.7F}, {other_italy,2,0,0,1.9F},
    {other_italy,2,0,1,0.7F}, {other_italy,2,0,2,24.4F}, {other_italy,2,0,4,2.F}, {other_italy,2,0,7,5.2F}, {other_italy,2,1,0,1.1F}, {other_italy,2,1,2,20.4F}, {other_italy,2,1,4,0.8F}, {other_italy,2,1,7,4.7F},
    {other_italy,2,2,0,0.1F}, {other_italy,2,2,1,0.2F}, {other_italy,2,2,2,0.8F}, {other_italy,2,2,4,0.1F}, {other_italy,2,2,7,3.1F}, {other_italy,2,2,8,0.1F}, {other_italy,3,0,0,2.5F}, {other_italy,3,0,1,0.6F},
    {other_italy,3,0,2,18.7F}, {other_italy,3,0,3,0.1F}, {other_italy,3,0,4,1.7F}, {other_italy,3,0,7,7.4F}, {other_italy,3,1,0,0.3F}, {other_italy,3,1,2,15.3F}, {other_italy,3,1,4,1.4F}, {other_italy,3,1,7,1.6F},
    {other_italy,3,2,0,0.1F}, {other_italy,3,2,1,0.3F}, {other_italy,3,2,2,1.F}, {other_italy,3,2,7,1.8F}, {other_italy,4,0,0,0.2F}, {other_italy,4,0,1,0.1F}, {other_italy,4,0,2,10.6F}, {other_italy,4,0,4,0.9F},
    {other_italy,4,0,7,9.F}, {other_italy,4,1,0,1.2F}, {other_italy,4,1,2,10.5F}, {other_italy,4,1,4,0.7F}, {other_italy,4,1,7,1.F}, {other_italy,4,2,0,0.1F}, {other_italy,4,2,1,0.1F}, {other_italy,4,2,2,0.5F},
    {other_italy,4,2,7,3.1F}, {britain,7,1,0,1.4F}, {britain,7,1,1,4.3F}, {britain,7,1,2,14.3F}, {britain,7,1,3,1.3F}, {britain,7,1,4,0.3F}, {britain,7,2,3,0.2F}, {britain,8,0,0,0.1F},
    {britain,8,0,2,0.7F}, {britain,8,0,3,0.1F}, {britain,8,0,4,0.6F}, {britain,8,1,0,0.6F}, {britain,8,1,1,2.3F}, {britain,8,1,2,12.9F}, {britain,8,1,3,1.6F}, {britain,8,1,4,1.8F},
    {britain,8,1,5,0.2F}, {britain,8,2,2,0.1F}, {britain,8,2,3,2.1F}, {britain,8,4,0,0.1F}, {britain,9,0,0,0.7F}, {britain,9,0,2,1.3F}, {britain,9,0,3,0.1F}, {britain,9,0,4,0.9F},
    {britain,9,1,0,0.1F}, {britain,9,1,2,2.F}, {britain,9,1,3,0.7F}, {britain,9,1,4,3.2F}, {britain,9,1,5,0.4F}, {britain,9,1,6,0.1F}, {britain,9,1,7,0.3F}, {britain,9,2,2,0.1F},
    {britain,9,2,3,3.5F}, {britain,9,2,4,0.3F}, {britain,9,2,5,1.F}, {britain,9,2,6,14.9F}, {britain,9,2,7,0.7F}, {britain,9,3,3,0.3F}, {britain,9,3,4,0.1F}, {britain,9,3,5,0.5F},
    {britain,9,3,6,10.6F}, {britain,9,3,7,0.1F}, {britain,9,4,0,0.9F}, {britain,10,0,0,0.4F}, {britain,10,0,1,0.6F}, {britain,10,0,2,0.4F}, {britain,10,1,0,0.1F}, {britain,10,1,2,1.F},
    {britain,10,1,3,0.2F}, {britain,10,1,4,0.6F}, {britain,10,1,5,0.1F}, {britain,10,1,6,1.5F}, {britain,10,1,7,2.3F}, {britain,10,1,8,0.1F}, {britain,10,2,2,0.1F}, {britain,10,2,3,26.8F},
    {britain,10,2,4,1.8F}, {britain,10,2,5,1.8F}, {britain,10,2,6,37.8F}, {britain,10,2,7,2.F}, {britain,10,2,8,0.2F}, {britain,10,3,1,2.F}, {britain,10,3,3,1.5F}, {britain,10,3,4,0.6F},
    {britain,10,3,5,1.8F}, {britain,10,3,6,169.7F}, {britain,10,3,7,5.5F}, {britain,10,3,8,0.2F}, {britain,11,0,1,0.5F}, {britain,11,0,2,0.4F}, {britain,11,1,2,0.7F}, {britain,11,1,3,0.1F},
    {britain,11,1,4,0.1F}, {britain,11,1,6,0.2F}, {britain,11,1,7,0.7F}, {britain,11,1,8,0.1F}, {britain,11,2,3,23.9F}, {britain,11,2,4,1.6F}, {britain,11,2,5,1.3F}, {britain,11,2,6,23.3F},
    {britain,11,2,7,1.4F}, {britain,11,2,8,0.4F}, {britain,11,3,1,0.5F}, {britain,11,3,3,0.3F}, {britain,11,3,4,0.3F}, {britain,11,3,5,1.1F}, {britain,11,3,6,133.1F}, {britain,11,3,7,14.3F},
    {britain,11,3,8,1.6F}, {britain,12,1,2,0.2F}, {britain,12,2,3,0.9F}, {britain,12,2,4,0.1F}, {britain,12,2,5,0.1F}, {britain,12,2,6,2.4F}, {britain,12,2,7,0.2F}, {britain,12,2,8,0.1F},
    {britain,12,3,5,0.1F}, {britain,12,3,6,11.8F}, {britain,12,3,7,2.7F}, {britain,12,3,8,8.2F}, {ireland,9,2,6,0.1F}, {ireland,9,3,3,0.1F}, {ireland,9,3,5,0.1F}, {ireland,9,3,6,1.F},
    {ireland,10,2,3,0.3F}, {ireland,10,2,6,2.F}, {ireland,10,2,7,0.1F}, {ireland,10,3,3,0.3F}, {ireland,10,3,4,0.1F}, {ireland,10,3,5,0.5F}, {ireland,10,3,6,26.3F}, {ireland,10,3,7,0.5F},
    {ireland,11,2,3,0.5F}, {ireland,11,2,6,0.8F}, {ireland,11,3,5,0.1F}, {ireland,11,3,6,25.1F}, {ireland,11,3,7,0.8F}, {france,0,0,0,0.1F}, {france,0,0,1,0.1F}, {france,0,0,2,1.8F},
    {france,0,0,4,0.1F}, {france,0,0,7,0.3F}, {france,0,1,0,0.1F}, {france,0,1,2,7.2F}, {france,0,1,4,0.3F}, {france,0,1,7,0.2F}, {france,0,2,1,0.1F}, {france,0,2,2,1.4F},
    {france,0,2,3,0.1F}, {france,0,2,4,0.1F}, {france,1,0,0,0.3F}, {france,1,0,1,0.3F}, {france,1,0,2,10.8F}, {france,1,0,4,0.6F}, {france,1,0,7,1.8F}, {france,1,1,0,0.5F},
    {france,1,1,2,28.9F}, {france,1,1,4,1.3F}, {france,1,1,7,0.9F}, {france,1,2,1,0.5F}, {france,1,2,2,5.5F}, {france,1,2,3,0.2F}, {france,1,2,4,0.3F}, {france,2,0,0,0.4F},
    {france,2,0,1,0.7F}, {france,2,0,2,26.5F}, {france,2,0,4,2.F}, {france,2,0,7,4.1F}, {france,2,1,0,1.2F}, {france,2,1,2,50.9F}, {france,2,1,4,3.1F}, {france,2,1,7,1.9F},
    {france,2,2,1,0.7F}, {france,2,2,2,7.1F}, {france,2,2,3,0.3F}, {france,2,2,4,0.4F}, {france,2,2,7,0.1F}, {france,3,0,0,1.F}, {france,3,0,1,1.2F}, {france,3,0,2,41.7F},
    {france,3,0,4,4.9F}, {france,3,0,7,4.4F}, {france,3,1,0,1.F}, {france,3,1,2,80.5F}, {france,3,1,4,9.F}, {france,3,1,7,1.2F}, {france,3,2,1,2.2F}, {france,3,2,2,16.3F},
    {france,3,2,3,1.1F}, {france,3,2,4,2.4F}, {france,3,2,5,0.1F}, {france,3,2,7,0.3F}, {france,4,0,0,0.8F}, {france,4,0,1,0.7F}, {france,4,0,2,46.F}, {france,4,0,4,3.8F},
    {france,4,0,7,7.2F}, {france,4,1,0,1.4F}, {france,4,1,1,0.1F}, {france,4,1,2,105.5F}, {france,4,1,4,13.4F}, {france,4,1,7,1.5F}, {france,4,2,1,2.F}, {france,4,2,2,32.1F},
    {france,4,2,3,1.5F}, {france,4,2,4,2.F}, {france,4,2,5,0.9F}, {france,4,2,6,0.1F}, {france,4,2,7,1.F}, {france,5,0,2,0.5F}, {france,5,0,4,0.1F}, {france,5,1,4,0.1F},
    {france,5,2,1,1.9F}, {france,5,2,2,0.1F}, {france,5,2,3,0.4F}, {france,5,2,4,0.1F}, {france,5,2,5,0.3F}, {france,5,4,0,0.1F}, {france,6,0,0,0.1F}, {france,6,0,3,0.1F},
    {france,6,0,4,0.5F}, {france,6,0,5,0.2F}, {france,6,1,0,0.1F}, {france,6,1,2,0.1F}, {france,6,1,4,1.3F}, {france,6,1,7,0.1F}, {france,6,2,1,2.8F}, {france,6,2,2,0.1F},
    {france,6,2,3,1.8F}, {france,6,2,4,1.3F}, {france,6,2,5,0.8F}, {france,6,2,6,0.1F}, {france,6,2,7,0.1F}, {france,6,4,0,5.9F}, {france,6,4,4,0.3F}, {france,7,0,0,0.1F},
    {france,7,0,4,0.1F}, {france,7,0,5,1.3F}, {france,7,0,7,0.1F}, {france,7,1,0,0.1F}, {france,7,1,4,0.6F}, {france,7,1,7,0.4F}, {france,7,2,3,2.3F}, {france,7,2,4,0.2F},
    {france,7,2,5,1.F}, {france,7,4,0,1.3F}, {france,7,4,4,0.3F}, {france,8,0,5,0.1F}, {france,8,1,0,0.1F}, {france,8,1,3,0.1F}, {france,8,1,4,0.8F}, {france,8,1,5,0.4F},
    {france,8,1,6,0.2F}, {france,8,1,7,0.4F}, {france,8,2,3,1.3F}, {france,8,2,5,0.5F}, {france,8,3,3,1.F}, {france,8,3,4,0.1F}, {france,8,3,5,2.3F}, {france,8,3,6,3.2F},
    {france,9,1,3,0.1F}, {france,9,1,4,0.3F}, {france,9,1,5,0.1F}, {france,9,1,6,0.1F}, {france,9,1,7,0.4F}, {france,9,2,3,0.1F}, {france,9,3,3,0.8F}, {france,9,3,4,0.2F},
    {france,9,3,5,1.6F}, {france,9,3,6,11.F}, {france,9,3,7,0.1F}, {france,10,2,6,1.8F}, {france,10,3,3,0.6F}, {france,10,3,4,0.5F}, {france,10,3,5,0.4F}, {france,10,3,6,9.9F},
    {france,10,3,7,0.1F}, {france,10,4,6,0.3F}, {france,11,1,8,0.9F}, {france,11,2,5,0.1F}, {france,11,2,6,2.7F}, {france,11,2,7,0.1F}, {france,11,2,8,0.3F}, {france,11,3,3,0.6F},
    {france,11,3,5,0.4F}, {france,11,3,6,11.1F}, {france,11,3,7,0.5F}, {france,11,4,6,0.7F}, {france,12,1,8,0.1F}, {france,12,3,5,0.1F}, {france,12,3,6,1.3F}, {france,12,3,7,0.1F},
    {germany,0,0,0,0.2F}, {germany,0,0,1,0.4F}, {germany,0,0,2,8.1F}, {germany,0,0,4,0.1F}, {germany,0,0,7,2.8F}, {germany,0,0,8,0.1F}, {germany,0,1,0,0.1F}, {germany,0,1,2,12.8F},
    {germany,0,1,4,0.2F}, {germany,0,1,7,0.4F}, {germany,0,2,2,0.3F}, {germany,1,0,0,0.8F}, {germany,1,0,1,1.6F}, {germany,1,0,2,50.F}, {germany,1,0,4,0.8F}, {germany,1,0,7,18.2F},
    {germany,1,0,8,1.F}, {germany,1,1,0,1.2F}, {germany,1,1,2,60.F}, {germany,1,1,4,0.7F}, {germany,1,1,7,1.6F}, {germany,1,2,1,0.1F}, {germany,1,2,2,1.3F}, {germany,1,2,3,0.2F},
    {germany,1,2,4,0.5F}, {germany,2,0,0,1.6F}, {germany,2,0,1,0.9F}, {germany,2,0,2,93.6F}, {germany,2,0,4,2.2F}, {germany,2,0,7,22.6F}, {germany,2,0,8,0.7F}, {germany,2,1,0,2.F},
    {germany,2,1,2,88.9F}, {germany,2,1,4,1.8F}, {germany,2,1,7,4.7F}, {germany,2,2,1,0.2F}, {germany,2,2,2,1.9F}, {germany,2,2,3,0.4F}, {germany,2,2,4,0.8F}, {germany,2,2,7,0.9F},
    {germany,3,0,0,1.8F}, {germany,3,0,1,1.9F}, {germany,3,0,2,112.7F}, {germany,3,0,3,0.2F}, {germany,3,0,4,2.8F}, {germany,3,0,7,10.1F}, {germany,3,0,8,0.3F}, {germany,3,1,0,1.1F},
    {germany,3,1,2,146.F}, {germany,3,1,4,4.1F}, {germany,3,1,7,3.3F}, {germany,3,2,1,0.3F}, {germany,3,2,2,6.6F}, {germany,3,2,3,0.1F}, {germany,3,2,4,1.8F}, {germany,3,2,7,0.8F},
    {germany,3,2,8,0.3F}, {germany,4,0,0,1.7F}, {germany,4,0,1,0.9F}, {germany,4,0,2,69.7F}, {germany,4,0,3,0.1F}, {germany,4,0,4,2.2F}, {germany,4,0,7,8.6F}, {germany,4,0,8,0.3F},
    {germany,4,1,0,1.8F}, {germany,4,1,2,170.3F}, {germany,4,1,4,3.1F}, {germany,4,1,7,2.F}, {germany,4,2,1,0.3F}, {germany,4,2,2,6.9F}, {germany,4,2,3,0.1F}, {germany,4,2,4,1.7F},
    {germany,4,2,7,1.4F}, {germany,4,2,8,0.1F}, {switzerland,5,1,2,0.4F}, {switzerland,6,1,2,0.6F}, {netherlands,0,1,0,0.1F}, {netherlands,0,1,2,0.3F}, {netherlands,1,0,2,0.1F}, {netherlands,1,1,0,0.2F},
    {netherlands,1,1,2,1.2F}, {netherlands,2,0,2,2.2F}, {netherlands,2,1,0,0.3F}, {netherlands,2,1,2,3.1F}, {netherlands,3,0,2,0.7F}, {netherlands,3,1,0,0.3F}, {netherlands,3,1,2,7.6F}, {netherlands,4,0,0,0.3F},
    {netherlands,4,0,1,0.1F}, {netherlands,4,0,2,0.6F}, {netherlands,4,1,0,0.3F}, {netherlands,4,1,2,1.7F}, {netherlands,6,1,2,0.7F}, {netherlands,7,1,2,0.3F}, {netherlands,7,3,3,1.F}, {netherlands,7,3,5,0.1F},
    {netherlands,8,0,8,0.6F}, {netherlands,8,1,2,0.9F}, {netherlands,8,1,3,0.2F}, {netherlands,8,1,4,0.4F}, {netherlands,8,2,3,0.9F}, {netherlands,8,3,2,0.3F}, {netherlands,8,3,3,6.7F}, {netherlands,8,3,5,0.5F},
    {netherlands,8,3,6,0.1F}, {netherlands,8,4,6,0.5F}, {netherlands,9,0,8,0.3F}, {netherlands,9,1,2,0.1F}, {netherlands,9,1,3,0.4F}, {netherlands,9,1,4,0.7F}, {netherlands,9,1,5,0.1F}, {netherlands,9,3,3,1.7F},
    {netherlands,9,3,4,0.1F}, {netherlands,9,3,5,0.4F}, {netherlands,9,3,6,0.6F}, {netherlands,9,4,6,0.4F}, {netherlands,10,3,3,0.7F}, {netherlands,10,3,4,0.1F}, {netherlands,10,3,5,0.2F}, {netherlands,10,3,6,0.4F},
    {spain,0,0,2,0.2F}, {spain,0,1,2,0.2F}, {spain,1,0,2,1.7F}, {spain,1,1,2,0.8F}, {spain,1,1,7,0.2F}, {spain,2,0,2,4.F}, {spain,2,1,2,1.F}, {spain,2,1,7,0.2F},
    {spain,3,0,2,4.2F}, {spain,3,0,4,0.1F}, {spain,3,1,2,4.8F}, {spain,3,1,7,0.2F}, {spain,4,0,2,5.3F}, {spain,4,0,4,0.4F}, {spain,4,1,2,8.F}, {spain,4,1,4,0.1F},
    {spain,4,1,7,0.2F}, {spain,4,2,2,2.F}, {usa,10,2,3,0.1F}, {usa,10,2,6,1.F}, {usa,10,3,6,1.4F}, {usa,10,4,3,0.1F}, {usa,11,0,1,0.1F}, {usa,11,0,2,0.1F},
    {usa,11,1,0,0.1F}, {usa,11,1,1,0.6F}, {usa,11,1,2,1.8F}, {usa,11,1,3,0.3F}, {usa,11,1,4,0.2F}, {usa,11,2,3,0.8F}, {usa,11,2,4,0.1F}, {usa,11,2,5,0.1F},
    {usa,11,2,6,3.2F}, {usa,11,2,7,0.2F}, {usa,11,2,8,1.7F}, {usa,11,3,3,0.7F}, {usa,11,3,4,0.2F}, {usa,11,3,5,1.F}, {usa,11,3,6,22.6F}, {usa,11,3,7,4.1F},
    {usa,11,3,8,1.1F}, {usa,11,4,0,0.1F}, {usa,11,4,2,0.1F}, {usa,11,4,3,0.7F}, {usa,11,4,6,0.1F}, {usa,12,0,1,1.7F}, {usa,12,0,2,1.F}, {usa,12,1,0,0.1F},
    {usa,12,1,1,0.2F}, {usa,12,1,2,0.6F}, {usa,12,1,3,0.1F}, {usa,12,1,4,1.5F}, {usa,12,1,5,0.1F}, {usa,12,1,6,0.1F}, {usa,12,1,7,0.1F}, {usa,12,2,6,1.2F},
    {usa,12,2,7,0.1F}, {usa,12,2,8,11.5F}, {usa,12,3,3,0.3F}, {usa,12,3,4,0.3F}, {usa,12,3,5,1.3F}, {usa,12,3,6,21.1F}, {usa,12,3,7,9.4F}, {usa,12,3,8,2.4F},
};
/// Region, year, leaves to the sheet, books.
inline constexpr FormatCount formats[]{
    {rome,1,2,35.6F}, {rome,1,4,12.3F}, {rome,1,8,2.5F}, {rome,2,2,26.3F}, {rome,2,4,35.6F}, {rome,2,8,4.5F}, {rome,3,2,3.6F}, {rome,3,4,71.9F},
    {rome,3,8,2.F}, {rome,4,2,3.5F}, {rome,4,4,30.2F}, {rome,4,8,4.F}, {rome,5,2,22.F}, {rome,5,4,114.F}, {rome,5,8,9.F}, {venice,1,2,4.5F},
    {venice,1,4,4.F}, {venice,2,2,37.3F}, {venice,2,4,22.8F}, {venice,2,8,0.7F}, {venice,3,2,39.9F}, {venice,3,4,26.3F}, {venice,3,8,5.8F}, {venice,4,2,21.3F},
    {venice,4,4,18.9F}, {venice,4,8,4.5F}, {venice,5,2,13.F}, {venice,5,4,25.F}, {venice,5,8,5.F}, {north_italy,1,2,9.4F}, {north_italy,1,4,16.1F}, {north_italy,1,8,4.2F},
    {north_italy,2,2,68.F}, {north_italy,2,4,70.3F}, {north_italy,2,8,11.5F}, {north_italy,3,2,60.9F}, {north_italy,3,4,96.8F}, {north_italy,3,8,5.1F}, {north_italy,4,2,41.7F}, {north_italy,4,4,92.8F},
    {north_italy,4,8,4.2F}, {north_italy,5,2,40.F}, {north_italy,5,4,128.F}, {north_italy,5,8,20.F}, {other_italy,1,2,7.5F}, {other_italy,1,4,2.5F}, {other_italy,1,8,0.3F}, {other_italy,2,2,28.7F},
    {other_italy,2,4,19.5F}, {other_italy,2,8,3.2F}, {other_italy,3,2,25.5F}, {other_italy,3,4,11.1F}, {other_italy,3,8,1.9F}, {other_italy,4,2,15.3F}, {other_italy,4,4,5.9F}, {other_italy,4,8,2.6F},
    {other_italy,5,2,22.F}, {other_italy,5,4,30.F}, {other_italy,5,8,5.F}, {france,1,2,4.3F}, {france,1,4,0.6F}, {france,2,2,22.F}, {france,2,4,18.3F}, {france,2,8,0.3F},
    {france,3,2,41.5F}, {france,3,4,53.F}, {france,3,8,14.3F}, {france,4,2,46.7F}, {france,4,4,83.1F}, {france,4,8,31.4F}, {france,5,2,47.5F}, {france,5,4,155.F},
    {france,5,8,33.F}, {germany,0,2,4.4F}, {germany,0,4,0.9F}, {germany,1,2,43.2F}, {germany,1,4,13.3F}, {germany,1,8,0.7F}, {germany,2,2,85.2F}, {germany,2,4,34.7F},
    {germany,2,8,2.4F}, {germany,3,2,93.4F}, {germany,3,4,91.7F}, {germany,3,8,8.1F}, {germany,4,2,46.8F}, {germany,4,4,114.4F}, {germany,4,8,8.8F}, {germany,5,2,146.F},
    {germany,5,4,251.F}, {germany,5,8,7.F}, {netherlands,1,2,0.1F}, {netherlands,2,2,2.2F}, {netherlands,2,4,1.6F}, {netherlands,3,2,0.7F}, {netherlands,3,4,6.2F}, {netherlands,4,2,1.F},
    {netherlands,4,4,0.2F}, {netherlands,5,4,7.F}, {spain,1,2,0.9F}, {spain,2,2,3.1F}, {spain,3,2,3.3F}, {spain,3,4,3.9F}, {spain,3,8,0.F}, {spain,4,2,4.7F},
    {spain,4,4,7.1F}, {spain,4,8,2.F}, {spain,5,2,4.F}, {spain,5,4,5.F},};
/// Region, year, books of a year about then, shares.
inline constexpr AssumedShares assumed[]{
    {anywhere,6,0.0018F,{{0.003F,0.2F,0.28F,0.002F,0.38F,0.014F,0.08F,0.003F,0.001F,0.012F,0.006F,0.0005F,0.0005F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {anywhere,7,0.0025F,{{0.003F,0.16F,0.27F,0.002F,0.35F,0.13F,0.04F,0.004F,0.001F,0.02F,0.006F,0.001F,0.001F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {anywhere,8,0.0025F,{{0.003F,0.12F,0.26F,0.002F,0.34F,0.22F,0.015F,0.005F,0.001F,0.02F,0.006F,0.001F,0.001F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {anywhere,9,0.0028F,{{0.003F,0.07F,0.2F,0.002F,0.38F,0.29F,0.013F,0.012F,0.001F,0.015F,0.006F,0.001F,0.001F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {anywhere,10,0.003F,{{0.003F,0.04F,0.14F,0.002F,0.42F,0.34F,0.012F,0.02F,0.001F,0.01F,0.006F,0.001F,0.001F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {anywhere,11,0.0028F,{{0.003F,0.035F,0.1F,0.002F,0.45F,0.3F,0.03F,0.045F,0.001F,0.015F,0.018F,0.002F,0.002F,0.001F,0.0002F,0.0002F,0.0002F}}},
    {anywhere,12,0.0015F,{{0.003F,0.03F,0.06F,0.002F,0.48F,0.24F,0.05F,0.07F,0.002F,0.02F,0.03F,0.003F,0.003F,0.001F,0.0002F,0.0002F,0.0002F}}},
    {britain,6,0.0018F,{{0.003F,0.2F,0.33F,0.002F,0.36F,0.012F,0.05F,0.002F,0.001F,0.01F,0.004F,0.0005F,0.0005F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {britain,7,0.0025F,{{0.003F,0.16F,0.4F,0.002F,0.33F,0.06F,0.02F,0.003F,0.001F,0.012F,0.004F,0.001F,0.001F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {britain,8,0.0025F,{{0.003F,0.13F,0.36F,0.002F,0.35F,0.12F,0.01F,0.004F,0.001F,0.012F,0.004F,0.001F,0.001F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {britain,9,0.0028F,{{0.003F,0.1F,0.25F,0.002F,0.44F,0.17F,0.006F,0.006F,0.001F,0.006F,0.003F,0.0005F,0.0005F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {britain,10,0.003F,{{0.003F,0.08F,0.2F,0.002F,0.475F,0.2F,0.006F,0.008F,0.001F,0.005F,0.003F,0.0005F,0.0005F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {britain,11,0.0028F,{{0.003F,0.05F,0.13F,0.002F,0.5F,0.24F,0.01F,0.02F,0.001F,0.008F,0.006F,0.001F,0.001F,0.0005F,0.0002F,0.0002F,0.0002F}}},
    {britain,12,0.0015F,{{0.003F,0.03F,0.06F,0.002F,0.48F,0.24F,0.05F,0.06F,0.002F,0.02F,0.03F,0.003F,0.003F,0.001F,0.0002F,0.0002F,0.0002F}}},
};
/// Late, leaves of the format, larger and smaller gathering, share.
inline constexpr GatheringShare gatherings[]{
    {false,2,8,0,0.54F}, {false,2,6,0,0.42F}, {false,2,10,0,0.02F}, {false,2,4,0,0.01F}, {false,4,8,0,0.63F}, {false,4,6,0,0.34F}, {false,4,4,0,0.02F}, {false,8,8,0,0.93F},
    {false,8,6,0,0.05F}, {false,8,4,0,0.01F}, {true,2,2,0,0.22F}, {true,2,4,0,0.3F}, {true,2,6,0,0.3F}, {true,2,8,0,0.14F}, {true,2,10,0,0.03F}, {true,4,2,0,0.03F},
    {true,4,4,0,0.6F}, {true,4,6,0,0.03F}, {true,4,8,0,0.33F}, {true,6,6,0,0.8F}, {true,6,12,0,0.1F}, {true,8,2,0,0.01F}, {true,8,4,0,0.22F}, {true,8,6,0,0.01F},
    {true,8,8,0,0.74F}, {true,8,16,0,0.01F}, {true,12,12,0,0.6F}, {true,12,6,0,0.25F}, {true,12,8,0,0.02F}, {true,12,4,0,0.02F}, {true,12,8,4,0.1F}, {true,12,24,0,0.005F},
    {true,16,8,0,0.75F}, {true,16,16,0,0.23F}, {true,16,4,0,0.01F}, {true,18,6,0,0.35F}, {true,18,12,0,0.15F}, {true,18,18,0,0.15F}, {true,18,9,0,0.05F}, {true,18,12,6,0.28F},
    {true,20,10,0,0.5F}, {true,20,20,0,0.4F}, {true,24,12,0,0.58F}, {true,24,8,0,0.3F}, {true,24,24,0,0.06F}, {true,24,6,0,0.02F}, {true,24,16,8,0.02F}, {true,24,8,4,0.02F},
    {true,32,8,0,0.7F}, {true,32,16,0,0.28F}, {true,36,12,0,0.4F}, {true,36,18,0,0.2F}, {true,36,6,0,0.2F}, {true,36,9,0,0.02F}, {true,48,12,0,0.4F}, {true,48,8,0,0.3F},
    {true,48,6,0,0.1F}, {true,48,24,0,0.1F}, {true,64,8,0,0.6F}, {true,64,16,0,0.35F},};

} // namespace paper_rows

/// The populations start at small, chancery, foolscap, median, crown, demy, royal, imperial; the first is odd paper.
inline constexpr PaperCounts paper_counts{
    .populations{{
        {6.0803, 5.7591, 0.1, 0.08, 0.1},
        {5.8875, 5.5794, 0.003, 0.00131, 0.0031},
        {6.0379, 5.6808, 0.00137, 0.00082, 0.0017},
        {6.0474, 5.7929, 0.00271, 0.00115, 0.00241},
        {6.1628, 5.8271, 0.00258, 0.0013, 0.00163},
        {6.1541, 5.9123, 0.00276, 0.00115, 0.00268},
        {6.2837, 6.0358, 0.00191, 0.00101, 0.00276},
        {6.3704, 6.0374, 0.00155, 0.00104, 0.00191},
        {6.5521, 6.2339, 0.00506, 0.00028, 0.00294},
    }},
    .tail = 25.72,
    .sheets = paper_rows::sheets,
    .formats = paper_rows::formats,
    .assumed = paper_rows::assumed};
// clang-format on

} // namespace detail
} // namespace v0
} // namespace bifolium
