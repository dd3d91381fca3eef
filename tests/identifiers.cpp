// SPDX-License-Identifier: MIT
// What programs print for a value is the name that the value has in the headers, so that one is found from the other.
#include <bifolium/book.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/foldings_left.hpp>

#include "check.hpp"

#include <set>
#include <string_view>

using namespace bifolium;

#define IS_NAMED(type, name) CHECK(identifier(type::name) == std::string_view{#name})

TEST_CASE("the identifier of a value is its name") {
  IS_NAMED(Severity, note);
  IS_NAMED(Severity, doubt);
  IS_NAMED(Severity, error);

  IS_NAMED(Certainty, not_determined);
  IS_NAMED(Certainty, one_of_two);
  IS_NAMED(Certainty, probable);
  IS_NAMED(Certainty, very_probable);
  IS_NAMED(Certainty, established);

  IS_NAMED(PaperOrigin, whole_sheet);
  IS_NAMED(PaperOrigin, turned_mould);
  IS_NAMED(PaperOrigin, machine_web);
  IS_NAMED(PaperOrigin, cut_half);

  IS_NAMED(EvidenceKind, size);
  IS_NAMED(EvidenceKind, chain_lines);
  IS_NAMED(EvidenceKind, watermark);
  IS_NAMED(EvidenceKind, gathering);
  IS_NAMED(EvidenceKind, type_page);
  IS_NAMED(EvidenceKind, edges);
  IS_NAMED(EvidenceKind, point_hole);
  IS_NAMED(EvidenceKind, leaves);
  IS_NAMED(EvidenceKind, year);

  IS_NAMED(Matter, preliminaries);
  IS_NAMED(Matter, text);
  IS_NAMED(Matter, end_matter);
  IS_NAMED(Matter, cancels);

  IS_NAMED(Correction::Kind, pages_exchanged);
  IS_NAMED(Correction::Kind, number_wrong);
  IS_NAMED(Correction::Kind, head_turned);
  IS_NAMED(Correction::Kind, printed_side);
  IS_NAMED(Correction::Kind, pages_and_heads_exchanged);

  IS_NAMED(LookNext::What, chain_lines);
  IS_NAMED(LookNext::What, watermark);
  IS_NAMED(LookNext::What, head);
  IS_NAMED(LookNext::What, tail);
  IS_NAMED(LookNext::What, fore_edge);
  IS_NAMED(LookNext::What, conjugate);

  IS_NAMED(Field, formula);
  IS_NAMED(Field, pagination);
  IS_NAMED(Field, leaves);
  IS_NAMED(Field, plates);
  IS_NAMED(Field, format);
  IS_NAMED(Field, signing);
  IS_NAMED(Field, gatherings);
  IS_NAMED(Field, height);
  IS_NAMED(Field, width);
  IS_NAMED(Field, binding);
  IS_NAMED(Field, chain_lines);
  IS_NAMED(Field, material);
  IS_NAMED(Field, year);
  IS_NAMED(Field, place);
  IS_NAMED(Field, coded_year);
  IS_NAMED(Field, coded_place);
}

TEST_CASE("every attestation of a scheme has words of its own") {
  std::set<std::string_view> words;
  for (auto one :
       {Attestation::published_grid, Attestation::published_part, Attestation::published_evidence,
        Attestation::published_rule, Attestation::published_structure, Attestation::memory, Attestation::derived}) {
    std::string_view const said{to_words(one)};
    CHECK_FALSE(said.empty());
    CHECK(words.insert(said).second);
  }
}
