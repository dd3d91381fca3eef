// SPDX-License-Identifier: MIT
/// The headers of the folders that most programs use. Included by name, as each costs a compiler half as much again: book.hpp
/// (a whole description, examined), record.hpp (the fields of a record) and formatter.hpp (std::formatter); and in each folder what
/// its own header leaves out. Who needs one folder includes that: it costs from a quarter of this to two thirds.
#pragma once

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
