// SPDX-License-Identifier: MIT
/// Words that describe leaves as blank: "K8 blank", "A1, K7,8 blank", "last two leaves blank". A copy that has lost a
/// blank has lost no text, so it is useful to know which leaves are blank. Words in other forms are ignored here.
#pragma once

#include <bifolium/collation/detail/leaf_reader.hpp>

#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A leaf that the words name; or leaves counted from the end or the beginning of the gathering.
struct BlankNamed {
  bool gathering_named{};
  Signature gathering{};
  int leaf{}; ///< from 1; below 0 it counts from the end: -1 is the last
};

class BlankWords {
  std::string_view words_;
  Letters letters_;
  TokenCursor c_;
  std::vector<BlankNamed> found_{};

  [[nodiscard]] bool take(std::string_view word) {
    if (!c_.at(TokenKind::letter) || word_at(words_, c_.token.from) != word) return false;
    c_ = TokenCursor{words_, c_.token.from + word.size()};
    return true;
  }
  /// Reads "last leaf", "last two leaves", "first leaf" or "final leaf"; also "last" alone.
  bool counted() {
    static_cast<void>(take("the"));
    bool const last = take("last") || take("final"), first = !last && take("first");
    if (!last && !first) return false;
    int leaves = 1;
    constexpr std::string_view numbers[]{"one", "two", "three", "four"};
    for (int n = 0; n < 4; ++n)
      if (take(numbers[n])) leaves = n + 1;
    static_cast<void>(take("leaf") || take("leaves"));
    for (int n = 1; n <= leaves; ++n) found_.push_back({false, {}, last ? -n : n});
    return true;
  }
  bool leaf() {
    LeafInWords const names{words_, letters_};
    auto const name = names.find(c_.token.from);
    if (!name.found || name.whole || name.leaf < 1) return false;
    c_ = TokenCursor{words_, name.end};
    BlankNamed one{name.gathering_named, {}, name.leaf};
    if (name.gathering_named)
      one.gathering = signature_of(name.key, words_, letters_);
    else if (!found_.empty())
      one.gathering_named = found_.back().gathering_named, one.gathering = found_.back().gathering;
    found_.push_back(one);
    if (!c_.at(TokenKind::dash)) return true;
    auto to = c_;
    to.take();
    auto const last = to.is_flat_figure() ? names.find(to.token.from) : NamedLeaf{};
    if (!last.found || last.gathering_named || last.leaf > name.leaf + thick_gathering) return true;
    c_ = TokenCursor{words_, last.end};
    for (one.leaf = name.leaf + 1; one.leaf <= last.leaf; ++one.leaf) found_.push_back(one);
    return true;
  }
  bool separator() {
    bool found = false;
    for (; is_separator(c_.token) || (c_.at(TokenKind::symbol) && c_.token.value == '&'); c_.take()) found = true;
    return take("and") || found;
  }

public:
  BlankWords(std::string_view words, Letters letters) : words_{words}, letters_{letters}, c_{words} {}

  /// Returns the leaves that the words call blank, or none if the words say anything else.
  std::vector<BlankNamed> read() {
    do
      if (!counted() && !leaf()) return {};
    while (separator());
    static_cast<void>(take("is") || take("are") || take("both") || take("all") || take("a"));
    if (!take("blank") && !take("blanks")) return {};
    while (c_.at(TokenKind::question) || c_.at(TokenKind::point)) c_.take();
    if (!c_.ended()) return {};
    return static_cast<std::vector<BlankNamed>&&>(found_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
