// SPDX-License-Identifier: MIT
/// Everything in fold/: formats, schemes and their language, the fold, the attested schemes.
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
