// SPDX-License-Identifier: MIT
// A field that is an enumerator or a plain number cannot refuse a text with a sentence: the compiler says only that the list in
// braces is not the argument. Write the list into a variable, LeafEvidence const seen{...}, and it names the value. A word that was
// typed in is read by read_word, evidence/words.hpp.
// says g++: invalid initialization of reference of type
// says clang: no matching function for call to 'observe'
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.height = 201_mm, .chain_lines = "vertical"});
#else
inline auto const leaf = observe({.height = 201_mm, .chain_lines = ChainLines::vertical});
#endif
