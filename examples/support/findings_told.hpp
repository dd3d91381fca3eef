// SPDX-License-Identifier: MIT
/// What an examination of a description found, in lines for a reader: the verdict, each finding, the likely slips.
#pragma once

#include <bifolium/book/audit.hpp>

#include <cstddef>
#include <ostream>
#include <string>

namespace support {

/// The verdict in one sentence. `leaf_against`: what the leaf or its paper shows does not agree with a field.
inline std::string verdict_of(bifolium::Audit const& audit, bool leaf_against = false) {
  int contradictions = 0, doubts = 0, notes = 0;
  for (auto const& finding : audit.findings)
    ++(finding.level == bifolium::Severity::error   ? contradictions
       : finding.level == bifolium::Severity::doubt ? doubts
                                                    : notes);
  if (contradictions + doubts + notes == 0 && leaf_against)
    return "The fields agree with one another, but not with what the leaf or its paper shows.";
  if (contradictions + doubts + notes == 0) return "Nothing in the description contradicts the rest of it.";
  std::string sentence;
  auto const add = [&](int count, char const* one, char const* many) {
    if (count == 0) return;
    sentence += (sentence.empty() ? "" : ", ") + std::to_string(count) + ' ' + (count == 1 ? one : many);
  };
  add(contradictions, "contradiction", "contradictions");
  add(doubts, "doubt", "doubts");
  add(notes, "note", "notes");
  return "Found in the description: " + sentence + '.';
}

/// The findings, the gravest first, and after them the slips that would explain the contradictions.
inline void tell_findings(std::ostream& out, bifolium::Audit const& audit) {
  for (auto const& finding : audit.findings) {
    auto const word = finding.level == bifolium::Severity::error   ? "Contradiction"
                      : finding.level == bifolium::Severity::doubt ? "Doubtful"
                                                                   : "Note";
    out << "  " << word << ": " << finding.says << " [" << identifier(finding.id) << "]\n";
    if (finding.settle) out << "    Look at: " << *finding.settle << '\n';
  }
  constexpr std::size_t most_told = 3;
  constexpr double least_share = .01; // after the likeliest, what is less likely is no help
  std::size_t told = 0;
  for (auto const& repair : audit.repairs) {
    if (repair.edits.empty() && !repair.letters) continue;
    if (told == most_told || (told > 0 && repair.share < least_share)) break;
    ++told;
    // words and not figures, as the shares are estimates
    out << "  " << (repair.share >= 0.8 ? "Very likely: " : told == 1 ? "Likely: " : "Or: ") << repair.says << '\n';
    if (auto const look = what_settles(repair); look && told == 1) out << "    Look at: " << *look << '\n';
    if (repair.share >= 0.8) break;
  }
}

} // namespace support
