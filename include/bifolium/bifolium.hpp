// SPDX-License-Identifier: MIT
/// Everything but format.hpp (std::formatter), which is the one header to be asked for by name. Each folder has a header
/// of its own beside this one for those who need less.
#pragma once

#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/version.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>
