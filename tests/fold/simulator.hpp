// SPDX-License-Identifier: MIT
/// Folding done over again by another method, to judge the library's by: every leaf is a rigid plate in space with a pose
/// of its own, a crease turns the plates of one part through half a circle about an axis, and the packet is picked up,
/// turned until spine and heads are where the reader wants them, and read from the top. Nothing here calls the library's
/// folding; only the parsed `Scheme` is shared.
#pragma once

#include <bifolium/fold/scheme.hpp>
#include <bifolium/imposition.hpp>

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace simulator {

using namespace bifolium;

/// x to the right, y towards the compositor, z up; x and y in half leaves, so that centres are odd and lines even.
using Point = std::array<std::int64_t, 3>;

/// A rigid motion that only ever turns by half circles: point -> sign * point + shift, axis by axis.
struct Pose {
  std::array<int, 3> sign{1, 1, 1};
  Point shift{};
  [[nodiscard]] Point operator()(Point p) const {
    for (std::size_t i = 0; i < 3; ++i) p[i] = sign[i] * p[i] + shift[i];
    return p;
  }
  [[nodiscard]] Point undo(Point p) const {
    for (std::size_t i = 0; i < 3; ++i) p[i] = sign[i] * (p[i] - shift[i]);
    return p;
  }
  /// Half a turn about the line where coordinate `across` is twice_across / 2 and z is twice_height / 2.
  void turn(std::size_t across, std::int64_t twice_across, std::int64_t twice_height) {
    for (auto [axis, twice] : {std::pair{across, twice_across}, std::pair{std::size_t{2}, twice_height}}) {
      sign[axis] = -sign[axis];
      shift[axis] = twice - shift[axis];
    }
  }
};

struct Plate {
  int sheet, row, column, piece;
  Pose pose{};
  int recto_page{};   ///< once gathered
  bool recto_outer{}; ///< the recto is on the side that lay on the type
  bool head_far{};    ///< on the flat sheet
  std::optional<std::array<int, 3>> conjugate{};
  [[nodiscard]] Point home() const { return {2 * column + 1, 2 * row + 1, 0}; }
  [[nodiscard]] Point centre() const { return pose(home()); }
  [[nodiscard]] int page(bool outer) const { return recto_page + (outer == recto_outer ? 0 : 1); }
};

/// Both formes of every sheet as plain tables: [sheet][row][column].
using Grid = std::vector<std::vector<ImposedPage>>;
struct Formes {
  std::vector<Grid> outer, inner;                            ///< inner is empty for a sheet worked from one forme
  std::vector<std::optional<std::array<int, 3>>> conjugates; ///< cell by cell: sheet, row, column of the other leaf
  friend bool operator==(Formes const&, Formes const&) = default;
};

struct Result {
  std::string refused{}; ///< why it gives no gatherings; empty when it does
  Formes formes{};
};

class Simulator {
  Scheme const& scheme_;
  std::vector<Plate> plates_{};
  std::map<int, int> spine_{};                // piece -> line of its last far-near crease
  std::vector<std::pair<int, int>> ranges_{}; // first page and end of each gathering
  std::string refused_{};

  bool refuse(char const* why) { return refused_ = why, false; }

  std::vector<Plate*> piece(int which) {
    std::vector<Plate*> found;
    for (auto& plate : plates_)
      if (plate.piece == which) found.push_back(&plate);
    return found;
  }
  Plate& at(int sheet, int row, int column) {
    return *std::find_if(plates_.begin(), plates_.end(),
                         [&](Plate const& p) { return p.sheet == sheet && p.row == row && p.column == column; });
  }

  bool take(Step const& step) {
    auto const across = step.along == Axis::far_near ? std::size_t{0} : std::size_t{1};
    std::int64_t const line = 2 * step.line;
    std::vector<Plate*> before, after;
    std::int64_t top = 0, bottom = 0;
    for (auto* plate : piece(step.piece)) {
      auto const centre = plate->centre();
      (centre[across] < line ? before : after).push_back(plate);
      top = std::max(top, centre[2]), bottom = std::min(bottom, centre[2]);
    }
    if (before.empty() || after.empty()) return refuse("the line is not inside the piece");
    if (step.kind == Step::Kind::cut) {
      for (auto* plate : before) plate->piece = step.far_or_left_piece;
      for (auto* plate : after) plate->piece = step.near_or_right_piece;
      return true;
    }
    for (auto* plate : step.far_or_left_moves ? before : after)
      plate->pose.turn(across, 2 * line, step.under ? 2 * bottom - 1 : 2 * top + 1);
    if (across == 0) spine_[step.piece] = step.line;
    return true;
  }

  /// The leaves of a piece in the order of reading.
  bool read(Placed const& placed, std::vector<Plate*>& leaves) {
    leaves = piece(placed.piece);
    auto const lies = leaves.front()->centre();
    for (auto* leaf : leaves)
      if (leaf->centre()[0] != lies[0] || leaf->centre()[1] != lies[1]) return refuse("not folded up");
    // How the packet is turned in the hands, x, y and z: two of the three change sign or none does.
    std::array<int, 3> hand{0, placed.heads_near ? -1 : 1, 0};
    std::int64_t spine = 0;
    if (leaves.size() == 1) {
      hand[2] = placed.recto_inner ? 1 : -1; // the outer side lies down
    } else {
      if (!spine_.count(placed.piece)) return refuse("no spine");
      spine = 2 * spine_[placed.piece];
      hand[0] = (spine < lies[0]) == (scheme_.reads() == Reads::left_to_right) ? 1 : -1;
      hand[2] = hand[0] * hand[1];
    }
    std::sort(leaves.begin(), leaves.end(),
              [&](Plate* a, Plate* b) { return hand[2] * a->centre()[2] > hand[2] * b->centre()[2]; });
    for (auto* leaf : leaves) {
      leaf->recto_outer = hand[2] * leaf->pose.sign[2] < 0;
      leaf->head_far = hand[1] * leaf->pose.sign[1] > 0;
    }
    auto const n = leaves.size();
    for (std::size_t k = 0; n > 1 && k < n; ++k) {
      // Follow the paper from the leaf over the spine: what hangs there?
      auto* const leaf = leaves[k];
      auto const edge = leaf->pose.undo({spine, leaf->centre()[1], leaf->centre()[2]});
      auto const beyond = (2 * edge[0] - leaf->home()[0] - 1) / 2;
      for (std::size_t other = 0; other < n; ++other) {
        auto const& mate = *leaves[other];
        if (mate.sheet != leaf->sheet || mate.row != leaf->row || mate.column != beyond) continue;
        if (mate.pose(edge)[0] == spine) leaf->conjugate = {mate.sheet, mate.row, mate.column};
        if (leaf->conjugate && other != n - 1 - k) return refuse("a leaf hangs on another than its conjugate");
      }
      if (!leaf->conjugate && k != n - 1 - k) return refuse("a leaf does not hang on its conjugate");
    }
    return true;
  }

  bool gather(GatheringLine const& line, int first_page, int& end_page) {
    // The odd leaf of a packet, and a leaf that is no second of a pair, stand before what lies inside.
    std::vector<Plate*> front, back;
    for (int i = 0; i < line.count; ++i) {
      std::vector<Plate*> leaves;
      if (!read(scheme_.placed(line.first + i), leaves)) return false;
      bool const second_of_pair = i > 0 && scheme_.placed(line.first + i - 1).opens_pair;
      auto const middle = leaves.begin() + (second_of_pair ? 0 : static_cast<std::ptrdiff_t>((leaves.size() + 1) / 2));
      front.insert(front.end(), leaves.begin(), middle);
      back.insert(back.begin(), middle, leaves.end());
    }
    front.insert(front.end(), back.begin(), back.end());
    end_page = first_page;
    for (auto* leaf : front) leaf->recto_page = end_page, end_page += 2;
    return true;
  }

  bool print(Formes& formes) {
    for (int s = 0; s < scheme_.sheets(); ++s) {
      auto const& lay = scheme_.sheet(s);
      auto const index = [](int i) { return static_cast<std::size_t>(i); };
      Grid outer(lay.rows, std::vector<ImposedPage>(lay.columns)), inner = outer;
      std::set<int> in_outer, in_inner;
      for (int r = 0; r < lay.rows; ++r)
        for (int c = 0; c < lay.columns; ++c) {
          auto const& leaf = at(s, r, c);
          auto const head = leaf.head_far ? Head::far_edge : Head::near_edge;
          outer[index(r)][index(c)] = {static_cast<std::uint16_t>(leaf.page(true)), head};
          inner[index(r)][index(lay.columns - 1 - c)] = {static_cast<std::uint16_t>(leaf.page(false)), head};
          if (!in_outer.insert(leaf.page(true)).second || !in_inner.insert(leaf.page(false)).second)
            return refuse("a page twice in a forme");
        }
      if (lay.one_forme) {
        // Turn the sheet; what the same type now prints must be what the inner forme would have printed. Turned about
        // the left-right axis the sheet comes with its far edge near, which is half a turn of the inner forme.
        if (lay.turned_about == Axis::left_right) {
          std::reverse(inner.begin(), inner.end());
          for (auto& row : inner) {
            std::reverse(row.begin(), row.end());
            for (auto& page : row) page.head = page.head == Head::far_edge ? Head::near_edge : Head::far_edge;
          }
        }
        if (inner != outer) return refuse("backed by another page or head to tail");
        inner.clear();
      }
      formes.outer.push_back(outer);
      formes.inner.push_back(inner);
    }
    for (auto const& plate : plates_) formes.conjugates.push_back(plate.conjugate);
    return true;
  }

  bool copies_alike() {
    std::map<int, int> made; // first page -> its gathering's end
    std::set<int> rectos, versos;
    for (auto const& [first, end] : ranges_)
      if (made.emplace(first, end).first->second != end) return refuse("copies differ in size");
    for (auto const& plate : plates_) rectos.insert(plate.recto_page), versos.insert(plate.recto_page + 1);
    for (int page : rectos)
      if (versos.count(page)) return refuse("a recto in one copy is a verso in another");
    return true;
  }

  bool whole(Formes& formes) {
    for (int s = 0; s < scheme_.sheets(); ++s)
      for (int r = 0; r < scheme_.sheet(s).rows; ++r)
        for (int c = 0; c < scheme_.sheet(s).columns; ++c) plates_.push_back({s, r, c, s});
    for (int i = 0; i < scheme_.steps(); ++i)
      if (!take(scheme_.step(i))) return false;
    int page = 1;
    for (int g = 0; g < scheme_.gatherings(); ++g) {
      auto const& line = scheme_.gathering(g);
      int const first = line.first_page ? *line.first_page : page;
      if (!gather(line, first, page)) return false;
      ranges_.emplace_back(first, page);
    }
    return copies_alike() && print(formes);
  }

public:
  explicit Simulator(Scheme const& of) : scheme_{of} {}
  Result result() {
    Result result;
    whole(result.formes);
    result.refused = refused_;
    return result;
  }
};

inline Result simulate(Scheme const& scheme) { return Simulator{scheme}.result(); }

} // namespace simulator
