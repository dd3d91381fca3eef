// SPDX-License-Identifier: MIT
/// The formes of a sheet, and with them the schemes and the folding they come from. Included by name: `imposition/misread.hpp`,
/// books misread after a mistake at the press, and `imposition/seen_formes.hpp`, for the searches of fold/.
#pragma once

#include <bifolium/imposition/imposition.hpp>
#include <bifolium/imposition/static_impose.hpp>
