// SPDX-License-Identifier: MIT
/// Everything in fold/ but the searches from a forme or from leaves back to the folding: formats, schemes and their
/// language, the fold, the attested schemes, what each leaf shows.
///
/// The searches are included by name, since most programs only fold, and each search costs a compiler as much again as all
/// the rest, or twice as much: `fold/find_foldings.hpp` and `fold/find_misprints.hpp` for the pages of formes, with
/// `fold/read_formes.hpp` for formes as text; `fold/foldings_showing.hpp` for what leaves show, with
/// `fold/read_seen_leaves.hpp`; `fold/count_foldings.hpp`.
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/format.hpp>
#include <bifolium/fold/layers.hpp>
#include <bifolium/fold/leaf_size.hpp>
#include <bifolium/fold/mirror.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/fold/read_scheme.hpp>
#include <bifolium/fold/scheme.hpp>
#include <bifolium/fold/scheme_names.hpp>
#include <bifolium/fold/shows.hpp>
#include <bifolium/fold/static_fold.hpp>
#include <bifolium/fold/walk.hpp>
#include <bifolium/fold/write_scheme.hpp>
