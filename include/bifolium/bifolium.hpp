// SPDX-License-Identifier: MIT
/// The headers of the folders that most programs use. Included by name, as each costs a compiler half as much again: book.hpp
/// (a whole description, examined), record.hpp (the fields of a record) and formatter.hpp (std::formatter). Who needs one
/// folder includes that: it costs a third or less.
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
