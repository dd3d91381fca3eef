// SPDX-License-Identifier: MIT
/// The headers of all folders. Who needs one folder includes that: it costs a compiler half or less. std::formatter is
/// included by name (formatter.hpp).
#pragma once

#include <bifolium/book.hpp>
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/version.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>
#include <bifolium/record.hpp>
