// SPDX-License-Identifier: MIT
/// Everything in explain/ but `explain/explain_foldings.hpp`, which brings the searches of fold/ with it: schemes, formulas,
/// rankings and bills in words, and formes as text.
#pragma once

#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/explain/explain_ranking.hpp>
#include <bifolium/explain/explain_scheme.hpp>
#include <bifolium/explain/forme_text.hpp>
#include <bifolium/explain/hundredths.hpp>
#include <bifolium/explain/inference_words.hpp>
#include <bifolium/explain/reason_words.hpp>
#include <bifolium/explain/trade_words.hpp>
#include <bifolium/explain/verdict.hpp>
#include <bifolium/explain/working.hpp>
