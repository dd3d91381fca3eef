// SPDX-License-Identifier: MIT
/// The blank leaves of an ideal copy, as the notes of its formula name them (K8 blank). The words are read by BlankWords.
#pragma once

#include <bifolium/collation/detail/blank_words.hpp>
#include <bifolium/collation/ideal_copy.hpp>

namespace bifolium {
inline namespace v0 {

inline void IdealCopy::note_blanks(Formula const& formula) {
  auto const& changes = formula.changes();
  for (std::size_t i = 0; i < changes.size(); ++i) {
    auto const* const note = changes[i].note();
    if (note == nullptr) continue;
    auto const& words = formula.notes()[note->words];
    auto const already = blanks_.size();
    bool const one = runs_[note->gathering.run].gatherings == 1;
    auto const said = detail::BlankWords{words, letters_}.read([&](detail::BlankNamed const& blank) {
      auto at = note->gathering;
      if (blank.gathering_named) {
        auto const found = find(signature_of(blank.gathering, words, letters_));
        if (!found) return;
        at = found->gathering;
      }
      auto const folded = leaves_folded(at);
      auto const leaf = blank.leaf < 0 ? folded + 1 + blank.leaf : blank.leaf;
      if (leaf >= 1 && leaf <= folded && (one || !blank.first)) blanks_.push_back({at, leaf, 0});
    });
    if (said == detail::BlanksSaid::unclear) blanks_.resize(already);
    bool const follows = said == detail::BlanksSaid::alone && i > 0 &&
                         formula.change_forms()[i].separator != ChangeForm::Separator::opens;
    auto const* const deletion = follows ? changes[i - 1].deletion() : nullptr;
    if (deletion == nullptr) continue; // else (−K8, blank), or with leaf 0 the whole gathering
    auto const last = deletion->leaf == 0 ? leaves_folded(deletion->gathering) : deletion->last;
    for (int k = deletion->leaf == 0 ? 1 : deletion->leaf; k <= last; ++k)
      blanks_.push_back({deletion->gathering, k, 0});
  }
  merge_sort(blanks_, [](LeafOfBook const& a, LeafOfBook const& b) { return a < b; });
  keep_each_once(blanks_); // a leaf may be noted twice
}
inline bool IdealCopy::is_blank(LeafOfBook const& leaf) const {
  auto const i = partition_point(blanks_.size(), [&](std::size_t k) { return blanks_[k] < leaf; });
  return i < blanks_.size() && blanks_[i] == leaf;
}

} // namespace v0
} // namespace bifolium
