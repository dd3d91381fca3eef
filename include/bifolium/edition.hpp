// SPDX-License-Identifier: MIT
/// Everything in edition/: casting off, arrangement in gatherings, paper and presswork. With it come the names of the schemes by
/// which an edition is printed.
#pragma once

#include <bifolium/edition/account.hpp>
#include <bifolium/edition/arrange.hpp>
#include <bifolium/edition/arranging.hpp>
#include <bifolium/edition/attested_make_up.hpp>
#include <bifolium/edition/bill.hpp>
#include <bifolium/edition/casting_off.hpp>
#include <bifolium/edition/comparison.hpp>
#include <bifolium/edition/issues.hpp>
#include <bifolium/edition/make_up.hpp>
#include <bifolium/edition/plan.hpp>
#include <bifolium/edition/plan_formula.hpp>
#include <bifolium/edition/presswork.hpp>
#include <bifolium/edition/standing_type.hpp>
#include <bifolium/edition/working.hpp>
#include <bifolium/fold/scheme_names.hpp>
