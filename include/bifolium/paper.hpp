// SPDX-License-Identifier: MIT
/// Everything in paper/ that the other folders build on: lengths, sheets, the named sizes and the counts. Reading a length from text
/// (paper/read_length.hpp) and the sources of the sizes (paper/sheet_size_sources.hpp) are included by those who need
/// them.
#pragma once

#include <bifolium/paper/count.hpp>
#include <bifolium/paper/length.hpp>
#include <bifolium/paper/region.hpp>
#include <bifolium/paper/sheet.hpp>
#include <bifolium/paper/sheet_sizes.hpp>
