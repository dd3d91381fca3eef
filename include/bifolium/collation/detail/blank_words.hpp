// SPDX-License-Identifier: MIT
/// Words that say of leaves that they are blank: "K8 blank", "A1, K7,8 blank", "last two leaves blank". A copy that has
/// lost a blank has lost no text, so it is worth knowing which leaves are meant. Words of any other form say nothing here.
#pragma once

#include <bifolium/collation/detail/leaf_name.hpp>

#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A leaf that the words name; or leaves counted from the end or the beginning of the gathering.
struct BlankNamed {
  bool gathering_named{};
  Signature gathering{};
  int leaf{}; ///< from 1; counted from the end where it is below 0: -1 is the last
};

class BlankWords {
  FormulaText text_;
  std::size_t at_{0};
  std::vector<BlankNamed> found_{};

  [[nodiscard]] bool take(std::string_view word) {
    if (text_.view().substr(at_, word.size()) != word || is_latin_letter(text_.at(at_ + word.size()))) return false;
    at_ = text_.skip(at_ + word.size());
    return true;
  }
  /// "last leaf", "last two leaves", "first leaf", "final leaf"; also "last" alone.
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
    auto const name = leaf_name(text_, at_, text_.view().size());
    if (!name.found || name.whole || name.leaf < 1) return false;
    at_ = name.end;
    BlankNamed one{name.gathering_named, name.signature, name.leaf};
    if (!one.gathering_named && !found_.empty())
      one.gathering_named = found_.back().gathering_named, one.gathering = found_.back().gathering;
    found_.push_back(one);
    if (auto const to = text_.dash(at_); to != at_ && is_digit(text_.at(to)))
      if (auto const last = leaf_name(text_, to, text_.view().size());
          last.found && !last.gathering_named && last.leaf < most_leaves_in_gathering) {
        at_ = last.end;
        for (one.leaf = name.leaf + 1; one.leaf <= last.leaf; ++one.leaf) found_.push_back(one);
      }
    at_ = text_.skip(at_);
    return true;
  }
  bool separator() {
    auto const from = at_;
    while (text_.at(at_) == ',' || text_.at(at_) == '.' || text_.at(at_) == '&') at_ = text_.skip(at_ + 1);
    return take("and") || at_ != from;
  }

public:
  explicit BlankWords(std::string_view words, Letters letters) : text_{words, {{}, letters, true}} {}

  /// The leaves said to be blank; none where the words say anything else.
  std::vector<BlankNamed> read() {
    at_ = text_.skip(0);
    do
      if (!counted() && !leaf()) return {};
    while (separator());
    static_cast<void>(take("is") || take("are") || take("both") || take("all") || take("a"));
    if (!take("blank") && !take("blanks")) return {};
    while (text_.at(at_) == '?' || text_.at(at_) == '.') at_ = text_.skip(at_ + 1);
    if (at_ < text_.view().size()) return {};
    return static_cast<std::vector<BlankNamed>&&>(found_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
