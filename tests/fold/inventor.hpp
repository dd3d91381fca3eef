// SPDX-License-Identifier: MIT
/// Schemes made up at random, for tests that need more foldings than anybody ever attested. All constructed; no source.
#pragma once

#include <algorithm>
#include <cstdlib>
#include <random>
#include <string>
#include <utility>
#include <vector>

/// How many schemes to make up: BIFOLIUM_RANDOM_SCHEMES, or `usual` where that is not set.
inline int random_schemes(int usual) {
  char const* const asked = std::getenv("BIFOLIUM_RANDOM_SCHEMES");
  return asked != nullptr ? std::atoi(asked) : usual;
}

/// Texts in the language of folding, mostly such as a folder could wish for.
class Inventor {
  std::mt19937 random_;
  std::string steps_{};

  struct Box {
    int top, bottom, left, right;
  };

  int below(int n) { return static_cast<int>(random_() % static_cast<unsigned>(n)); }
  bool chance(int percent) { return below(100) < percent; }
  static std::string num(int n) { return std::to_string(n); }

public:
  explicit Inventor(unsigned seed) : random_{seed} {}

  struct Crease {
    bool far_near, first_moves, under;
    int line;
  };

private:
  /// Creases that fold the box, usually up to one leaf, usually far-near creases last.
  std::vector<Crease> creases(Box box) {
    std::vector<Crease> made;
    bool const orderly = chance(75);
    while (box.bottom - box.top > 1 || box.right - box.left > 1) {
      if (chance(2)) break;
      bool const wide = box.right - box.left > 1, high = box.bottom - box.top > 1;
      bool const far_near = wide && (!high || (!orderly && chance(50)));
      auto& low = far_near ? box.left : box.top;
      auto& end = far_near ? box.right : box.bottom;
      int const size = end - low;
      int line = chance(60) && size % 2 == 0 ? low + size / 2 : low + 1 + below(size - 1);
      if (chance(1)) line = end; // not inside
      bool const first_moves = chance(50);
      made.push_back({far_near, first_moves, chance(25), line});
      auto const before = line - low, after = end - line;
      if (line < 1 || after < 1 || before < 1) break;
      // the part that stays, and what of the other hangs over
      if (first_moves)
        low = line, end = line + (std::max)(before, after);
      else
        end = line, low = line - (std::max)(before, after);
      if (low < 0) break; // the language has no names for lines off the sheet
    }
    return made;
  }

  void write(std::string const& piece, std::vector<Crease> const& creases) {
    for (auto const& c : creases) {
      char const* const way = c.far_near ? (c.first_moves ? " left-over-right " : " right-over-left ")
                                         : (c.first_moves ? " far-over-near " : " near-over-far ");
      steps_ += "fold " + piece + way + num(c.line) + (c.under ? " under\n" : "\n");
    }
  }

  std::string placed(std::string const& name, bool single) {
    return name + (chance(50) ? ":near" : "") + (single && chance(30) ? ":inner" : "");
  }

  std::string page() { return chance(15) ? " page " + num(chance(50) ? 1 : 1 + below(8)) + "\n" : "\n"; }

public:
  std::string scheme() {
    steps_.clear();
    int const rows_high = 1 + below(4);
    std::string sheets, gatherings;
    std::string const head = std::string{"scheme made_up 8°"} + (chance(35) ? " reads right-to-left\n" : "\n");
    if (chance(35)) { // half-sheets: two copies out of one sheet, or two that only claim to be
      bool const far_near = chance(50);
      int const rows = far_near ? rows_high : 2 * (1 + below(2)),
                columns = far_near ? 2 * (1 + below(3)) : 1 + below(6);
      sheets =
          "sheet S rows " + num(rows) + " columns " + num(columns) + " long-side far-near" +
          (chance(75) ? std::string{" turned about "} + (chance(85) == far_near ? "far-near" : "left-right") : "") +
          "\n";
      int const line = far_near ? columns / 2 : rows / 2;
      steps_ = std::string{"cut S "} + (far_near ? "column " : "row ") + num(line) + " p q\n";
      auto first = creases(far_near ? Box{0, rows, 0, line} : Box{0, line, 0, columns});
      write("p", first);
      // Mostly q is p as the turned sheet would bring it there: mirrored across the cut, over made under.
      bool const turned = chance(70), near = chance(50);
      bool const flip_x = turned ? far_near : chance(60), flip_y = turned ? !far_near : chance(60);
      bool const other_order = chance(5);
      for (auto& c : first) {
        if (c.far_near ? flip_x : flip_y) {
          c.first_moves = !c.first_moves;
          c.line = (c.far_near ? columns : rows) - c.line;
        } else if (c.far_near == far_near) {
          c.line += line;
        }
        if (turned != (other_order && chance(50))) c.under = !c.under;
      }
      while (std::any_of(first.begin(), first.end(), [](Crease const& c) { return c.line < 1; })) first.pop_back();
      write("q", first);
      bool const single = far_near ? rows == 1 && line == 1 : columns == 1 && line == 1;
      auto const lies = [&](bool heads_near) {
        return std::string{chance(5) != heads_near ? ":near" : ""} + (single && chance(30) ? ":inner" : "");
      };
      return head + sheets + steps_ + "gathering A p" + lies(near) + " page 1\ngathering B q" + lies(near == far_near) +
             (chance(90) ? " page 1\n" : " page 3\n");
    }
    int const count = chance(60) ? 1 : 2 + below(2);
    struct Piece {
      std::string name;
      Box box;
    };
    std::vector<Piece> done;
    for (int s = 0; s < count; ++s) {
      int const rows = 1 + below(4), columns = 1 + below(6);
      std::string const name = "S" + num(s);
      sheets += "sheet " + name + " rows " + num(rows) + " columns " + num(columns) + " long-side " +
                (chance(50) ? "far-near" : "left-right") + (chance(3) ? " turned about far-near\n" : "\n");
      std::vector<Piece> open{{name, {0, rows, 0, columns}}};
      int cuts = 0;
      while (!open.empty()) {
        auto const piece = open.back();
        open.pop_back();
        auto const box = piece.box;
        int const high = box.bottom - box.top, wide = box.right - box.left;
        if (high * wide > 1 && chance(cuts == 0 ? 45 : 15)) {
          bool const column = high == 1 || (wide > 1 && chance(50));
          int const line = column ? box.left + 1 + below(wide - 1) : box.top + 1 + below(high - 1);
          auto one = box, two = box;
          (column ? one.right : one.bottom) = line;
          (column ? two.left : two.top) = line;
          std::string const a = name + "a" + num(cuts), b = name + "b" + num(cuts);
          ++cuts;
          steps_ += "cut " + piece.name + (column ? " column " : " row ") + num(line) + " " + a + " " + b + "\n";
          open.push_back({a, one});
          open.push_back({b, two});
          continue;
        }
        write(piece.name, creases(box));
        done.push_back(piece);
      }
    }
    // Not std::shuffle: every standard library is to make up the same schemes.
    for (std::size_t i = done.size(); i > 1; --i) std::swap(done[i - 1], done[random_() % i]);
    int number = 0;
    for (std::size_t i = 0; i < done.size(); ++i) {
      auto const is_single = [&](std::size_t k) {
        auto const& b = done[k].box;
        return (b.bottom - b.top) * (b.right - b.left) == 1;
      };
      if (i == 0 || chance(35)) gatherings += (i == 0 ? "gathering G" : page() + "gathering G") + num(number++);
      gatherings += " " + placed(done[i].name, is_single(i));
      if (is_single(i) && i + 1 < done.size() && is_single(i + 1) && chance(50)) {
        ++i;
        gatherings += "+" + placed(done[i].name, true);
      }
    }
    return head + sheets + steps_ + gatherings + page();
  }
};
