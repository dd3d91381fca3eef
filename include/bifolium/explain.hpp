// SPDX-License-Identifier: MIT
/// Everything in explain/: schemes, formulas, rankings and bills in words, and formes as text.
#pragma once

#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/explain/explain_ranking.hpp>
#include <bifolium/explain/explain_scheme.hpp>
#include <bifolium/explain/forme_text.hpp>
#include <bifolium/explain/inference_words.hpp>
#include <bifolium/explain/trade_words.hpp>
#include <bifolium/explain/working.hpp>
