// SPDX-License-Identifier: MIT
/// Reads which leaves words call blank: "K8 blank", "the last leaf blank", and "blank" alone after a deletion (−K8 blank),
/// which means the deleted leaf. A blank leaf is passed on only if it is clear which one is meant.
#pragma once

#include <bifolium/collation/detail/grammar/insertion_grammar.hpp>
#include <bifolium/collation/detail/words/blank_words.hpp>
#include <bifolium/collation/detail/words/stored_words.hpp>
#include <bifolium/collation/detail/words/words_of_change.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class BlankGrammar : protected InsertionGrammar<Sink> {
protected:
  using Base = InsertionGrammar<Sink>;
  using Base::Base;
  using Base::sink_, Base::runs_, Base::text_, Base::letters_, Base::last_;
  using Kind = Change::Kind;

  /// The deletions directly before words, which mean them with "blank" if there is one, and with "both blank" if there
  /// are two; null if there are none, or more.
  struct DeletedBefore {
    FoundChange const* last{};
    FoundChange const* other{};
  };
  [[nodiscard]] static constexpr DeletedBefore deleted_before(ChangeState const& s) {
    if (!s.after(Kind::deletion) || s.deletions > 2) return {};
    return {&s.previous, s.deletions == 2 ? &s.before : nullptr};
  }
  /// What words say about blank leaves: nothing; which they are; which they are, and something about a change; or that
  /// there are some, and not which.
  enum class Blanks : std::uint8_t { none, clear, with_change, unclear };
  /// Reads the words as they will be stored, without markup: what is written from them must be read the same.
  constexpr Blanks blanks_said(std::uint32_t from, std::uint32_t to, DeletedBefore deleted) {
    return with_stored_words(text_.substr(from, to - from),
                             [&](std::string_view words) { return blanks_in(words, from, to, deleted); });
  }
  /// Finds the gathering that the words name. Their bytes may differ from those of the text, where the name of a symbol
  /// must stand.
  [[nodiscard]] constexpr std::optional<Target> named_in_words(SignatureKey name, std::string_view words,
                                                               std::uint32_t from, std::uint32_t to) {
    if (name.text_size > 0) {
      auto const symbol = words.substr(name.text_from, name.text_size);
      auto const place = text_.substr(from, to - from).find(symbol);
      if (place == text_.npos) return std::nullopt;
      name.text_from = from + static_cast<std::uint32_t>(place);
    }
    return this->find(name);
  }

private:
  constexpr Blanks blanks_in(std::string_view words, std::uint32_t from, std::uint32_t to, DeletedBefore deleted) {
    if (!has_blank_word(words)) return Blanks::none;
    return take_blanks(words, from, to, deleted);
  }
  [[nodiscard]] constexpr int leaves_of(FoundChange const& deleted) const {
    return deleted.first == FoundChange::every_leaf ? runs_.leaves_folded(deleted.gathering)
                                                    : deleted.last - deleted.first + 1;
  }
  constexpr void pass_on_blanks(FoundChange const& deleted) {
    auto const first = deleted.first == FoundChange::every_leaf ? 1 : deleted.first;
    for (int k = 0; k < leaves_of(deleted); ++k) sink_.blank({deleted.gathering, first + k});
  }
  /// Passes on the leaves that the words call blank, if it is clear which they are and the book has them. If one of them
  /// is not clear, none is passed on. "First leaf" is not clear after a run: it may be that of the book. "Blank" alone is
  /// clear only after one deletion, "both blank" after one or two of two leaves.
  constexpr Blanks take_blanks(std::string_view words, std::uint32_t from, std::uint32_t to, DeletedBefore deleted) {
    struct Leaf { // without initialisers, as SmallList requires
      std::int64_t index;
      std::uint32_t run;
      int leaf;
    };
    SmallList<Leaf, 64> leaves;
    bool clear = true;
    BlankWords reader{words, letters_};
    auto const said = reader.read([&](BlankNamed const& one) {
      auto const of =
          one.gathering_named ? named_in_words(one.gathering, words, from, to) : std::optional{this->last_gathering()};
      clear = clear && of && one.leaf <= of->leaves && one.leaf >= -of->leaves && !(one.first && last_.gatherings > 1);
      if (!clear) return;
      auto const leaf = one.leaf < 0 ? of->leaves + 1 + one.leaf : one.leaf;
      leaves.push_back({of->gathering.index, of->gathering.run, leaf});
    });
    if (said == BlanksSaid::alone && deleted.last != nullptr && deleted.other == nullptr)
      return pass_on_blanks(*deleted.last), Blanks::clear;
    if (said == BlanksSaid::both && deleted.last != nullptr) {
      auto const together = leaves_of(*deleted.last) + (deleted.other == nullptr ? 0 : leaves_of(*deleted.other));
      if (together != 2) return Blanks::unclear;
      if (deleted.other != nullptr) pass_on_blanks(*deleted.other);
      return pass_on_blanks(*deleted.last), Blanks::clear;
    }
    if (!clear || said != BlanksSaid::leaves) return Blanks::unclear;
    for (std::size_t i = 0; i < leaves.size(); ++i) sink_.blank({{leaves[i].run, leaves[i].index}, leaves[i].leaf});
    bool const change = says_change(reader.words_before()) || says_change(reader.words_after());
    return change ? Blanks::with_change : Blanks::clear;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
