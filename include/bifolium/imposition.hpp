// SPDX-License-Identifier: MIT
/// Everything in imposition/, and with it the schemes and the folding they come from.
#pragma once

#include <bifolium/imposition/imposition.hpp>
#include <bifolium/imposition/static_impose.hpp>
