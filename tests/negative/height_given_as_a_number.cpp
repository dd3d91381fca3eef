// SPDX-License-Identifier: MIT
// A field that may be missing asks for a length too.
// says g++: could not convert '190' from 'int' to 'std::optional<bifolium::v0::Length<double, bifolium::v0::Millimetre> >'
// says clang: no viable conversion from 'int' to 'std::optional<millimetres>'
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline LeafEvidence const leaf{.height = 190};
#else
inline LeafEvidence const leaf{.height = 190_mm};
#endif
