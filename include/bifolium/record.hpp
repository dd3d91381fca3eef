// SPDX-License-Identifier: MIT
/// Everything in record/: what a description says beside the formula (pagination, extent, signing), sizes as catalogues
/// record them, height classes, and the lines of a record.
#pragma once

#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/extent.hpp>
#include <bifolium/record/height_scale.hpp>
#include <bifolium/record/pagination.hpp>
#include <bifolium/record/printed_number.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_format_statement.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_physical_description.hpp>
#include <bifolium/record/read_signature_note.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/read_size.hpp>
#include <bifolium/record/record_lines.hpp>
#include <bifolium/record/recording.hpp>
#include <bifolium/record/signing.hpp>
#include <bifolium/record/size_statement.hpp>
#include <bifolium/record/write_extent.hpp>
#include <bifolium/record/write_pagination.hpp>
#include <bifolium/record/write_signing.hpp>
