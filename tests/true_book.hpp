// SPDX-License-Identifier: MIT
/// Generators of truth: a structure is made at random and gives both a text and what a reader must find in it. The answer is
/// made leaf by leaf in plain lists and shares no code with the library. BIFOLIUM_ROUNDS=N makes each test try N times as
/// many.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <random>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace truth {

/// So many rounds, or more where the environment asks for more.
inline int rounds(int usual) {
  auto const* const asked = std::getenv("BIFOLIUM_ROUNDS");
  return asked == nullptr ? usual : usual * std::max(1, std::atoi(asked));
}

/// Random choices that are the same on every machine.
class Draw {
  std::mt19937 source_;

public:
  explicit Draw(std::uint32_t seed) : source_{seed} {}
  /// A number from 0, less than `below`.
  int number(int below) { return static_cast<int>(source_() % static_cast<std::uint32_t>(below)); }
  int from_to(int from, int to) { return from + number(to - from + 1); }
  bool one_in(int times) { return number(times) == 0; }
  template <class T> T const& of(std::vector<T> const& all) {
    return all[static_cast<std::size_t>(number(static_cast<int>(all.size())))];
  }
};

/// A leaf of a book, and how it is called: B3, or χ1 where it was inserted.
struct Leaf {
  std::string gathering; ///< or the name it was inserted under
  int number{};
  bool deleted{}, cancel{}, inserted{};
  std::string name() const { return gathering + std::to_string(number); }
};
struct Gathering {
  std::string signature;
  int folded{};
  std::vector<Leaf> leaves; ///< in order, those deleted and inserted among them
};

/// How counts, dashes and signs are written: each choice is one that catalogues make.
struct Manner {
  bool raised{true};             ///< A⁸ or A8
  bool caret{};                  ///< A^8
  std::string dash{"-"};         ///< or –
  std::string minus{"−"};        ///< or -
  std::string cancel{"±"};       ///< or +/-
  bool own_parentheses{};        ///< each change in its own
  bool comma_without_sign{true}; ///< (−A1,3) for (−A1, −A3)
};

/// A book of letters: gatherings, and what was done to their leaves.
class Book {
  static constexpr std::string_view letters = "ABCDEFGHIKLMNOPQRSTVXYZ";
  std::vector<Gathering> gatherings_;
  std::string text_;
  int inserted_leaves_{}, inserted_gatherings_{};

  static std::string signature(int i) {
    auto const multiple = i / 23 + 1;
    return (multiple > 1 ? std::to_string(multiple) : "") + letters[static_cast<std::size_t>(i % 23)];
  }
  static std::string count(int leaves, Manner const& manner) {
    auto digits = std::to_string(leaves);
    if (manner.caret) return "^" + digits;
    if (!manner.raised) return digits;
    constexpr char const* raised[]{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
    std::string text;
    for (char c : digits) text += raised[c - '0'];
    return text;
  }
  Gathering& named(std::string const& signature) {
    return *std::find_if(gatherings_.begin(), gatherings_.end(),
                         [&](auto const& one) { return one.signature == signature; });
  }
  /// A change of one gathering: its text, and what it does.
  std::string change(Draw& draw, Gathering& gathering, Manner const& manner) {
    std::vector<int> free; // leaves that nothing has happened to
    for (auto const& leaf : gathering.leaves)
      if (!leaf.inserted && !leaf.deleted && !leaf.cancel) free.push_back(leaf.number);
    auto const at = [&](int number) {
      return std::find_if(gathering.leaves.begin(), gathering.leaves.end(),
                          [&](Leaf const& leaf) { return !leaf.inserted && leaf.number == number; });
    };
    auto const kind = draw.number(free.empty() ? 1 : 5);
    if (kind == 0 || free.empty()) { // an insertion after a leaf, of one of three kinds
      auto const after = draw.from_to(1, gathering.folded - 1);
      // insertions at one place follow one another, so each place is taken once
      auto const place = at(after) + 1;
      if (place != gathering.leaves.end() && place->inserted) return "";
      auto const shape = draw.number(3);
      std::vector<Leaf> put;
      std::string name;
      if (shape == 2 && inserted_gatherings_ < 23) {
        auto const small =
            std::string{static_cast<char>(letters[static_cast<std::size_t>(inserted_gatherings_++)] - 'A' + 'a')};
        auto const leaves = 2 * draw.from_to(1, 4);
        for (int i = 1; i <= leaves; ++i) put.push_back({small, i, false, false, true});
        name = small + count(leaves, {});
      } else {
        auto const first = inserted_leaves_ + 1;
        auto const leaves = shape == 0 ? 1 : 2;
        inserted_leaves_ += leaves;
        for (int i = 0; i < leaves; ++i) put.push_back({"χ", first + i, false, false, true});
        name = "χ" + std::to_string(first) + (leaves == 2 ? "." + std::to_string(first + 1) : "");
      }
      gathering.leaves.insert(place, put.begin(), put.end());
      return gathering.signature + std::to_string(after) + "+" + name;
    }
    auto const first = draw.of(free);
    if (kind == 1) {
      at(first)->cancel = true;
      return manner.cancel + gathering.signature + std::to_string(first);
    }
    at(first)->deleted = true;
    auto text = manner.minus + gathering.signature + std::to_string(first);
    auto const conjugate = gathering.folded + 1 - first;
    if (kind == 2 && conjugate != first && !at(conjugate)->deleted && !at(conjugate)->cancel) { // the whole fold
      at(conjugate)->deleted = true;
      text = manner.minus + gathering.signature + std::to_string(std::min(first, conjugate)) + "." +
             std::to_string(std::max(first, conjugate));
    } else if (kind == 3 && manner.comma_without_sign) { // another leaf of the same gathering, not its conjugate
      for (auto const second : free)
        if (second > first && second != conjugate) {
          at(second)->deleted = true;
          return text + "," + std::to_string(second);
        }
    }
    return text;
  }

public:
  Book(Draw& draw, Manner const& manner) {
    text_ = draw.of<std::string>({"8°: ", "4°: ", "2°: ", "12°: ", "8° (4s): ", "12° (8/4): ", "4° in eights: ", ""});
    int next = draw.one_in(4) ? 20 : 0;
    for (auto runs = draw.from_to(1, 5); runs > 0; --runs) {
      auto const length = draw.one_in(3) ? 1 : draw.from_to(2, 12);
      std::vector<int> counts{2 * draw.from_to(1, 6)};
      if (length > 1 && length % 2 == 0 && draw.one_in(3)) { // an alternation that comes out even
        auto const other = 2 * draw.from_to(1, 6);
        if (other != counts[0]) counts.push_back(other);
      }
      std::vector<std::string> of_run;
      for (int i = 0; i < length; ++i) {
        Gathering gathering{signature(next + i), counts[static_cast<std::size_t>(i) % counts.size()], {}};
        for (int leaf = 1; leaf <= gathering.folded; ++leaf) gathering.leaves.push_back({gathering.signature, leaf});
        of_run.push_back(gathering.signature);
        gatherings_.push_back(std::move(gathering));
      }
      text_ += of_run.front() + (length > 1 ? manner.dash + of_run.back() : "") + count(counts[0], manner);
      if (counts.size() > 1) text_ += "/" + count(counts[1], manner);
      next += length;
      add_changes(draw, manner, of_run);
      text_ += ' ';
    }
    text_.pop_back();
  }
  void add_changes(Draw& draw, Manner const& manner, std::vector<std::string> const& of_run) {
    std::vector<std::string> changes;
    for (auto times = draw.number(4); times > 0; --times)
      if (auto one = change(draw, named(draw.of(of_run)), manner); !one.empty()) changes.push_back(std::move(one));
    if (changes.empty()) return;
    text_ += "(";
    for (auto const& one : changes)
      text_ += (&one == &changes.front() ? "" : manner.own_parentheses ? ")(" : ", ") + one;
    text_ += ")";
  }

  [[nodiscard]] std::string const& text() const { return text_; }
  [[nodiscard]] std::vector<Gathering> const& gatherings() const { return gatherings_; }
  /// The leaves of the ideal copy in their order: what was deleted is gone, what was inserted is there.
  [[nodiscard]] std::vector<Leaf> leaves() const {
    std::vector<Leaf> all;
    for (auto const& gathering : gatherings_)
      for (auto const& leaf : gathering.leaves)
        if (!leaf.deleted) all.push_back(leaf);
    return all;
  }
};

/// A manner at random.
inline Manner manner(Draw& draw) {
  Manner one;
  one.raised = !draw.one_in(3);
  one.caret = draw.one_in(4);
  one.dash = draw.of<std::string>({"-", "–"});
  one.minus = draw.of<std::string>({"−", "-"});
  one.cancel = draw.of<std::string>({"±", "+/-"});
  one.own_parentheses = draw.one_in(3);
  one.comma_without_sign = !draw.one_in(3);
  return one;
}

} // namespace truth
