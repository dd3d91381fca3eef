// SPDX-License-Identifier: MIT
/// Everything in leaf/ that takes no text: leaves, pages, gatherings, signatures.
#pragma once

#include <bifolium/leaf/cycle.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/leaf.hpp>
#include <bifolium/leaf/page_side.hpp>
#include <bifolium/leaf/signature.hpp>
#include <bifolium/leaf/signature_run.hpp>
