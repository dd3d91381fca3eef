// SPDX-License-Identifier: MIT
/// Reads a scheme line by line into a `Scheme`, and checks words, names and cuts. fold/read_scheme.hpp has the language.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/fold/detail/scheme_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The rectangle of the flat sheet that a piece is, and whether it is folded, cut up or placed.
struct PieceState {
  std::uint8_t sheet{}, row{}, column{}, rows{}, columns{};
  bool cut_up{}, folded{}, used{};
  std::uint8_t key{}; ///< two bytes and the length of the name in one number, so that few names need to be compared
  SourcePlace place{};

  static constexpr std::uint8_t key_of(std::string_view name) {
    if (name.empty()) return 0;
    return static_cast<std::uint8_t>(name.front() + 5 * name.back() + 11 * static_cast<int>(name.size()));
  }
};

/// Reads one text. A function that fails returns false and stores the reason in `error_`.
class SchemeReader : SchemeWords {
  Scheme scheme_{};
  std::array<PieceState, Scheme::most_pieces> state_{};
  bool begun_{false};

  /// Returns true if word_ is a name: a letter, then letters, digits or underscores, and not a reserved word.
  constexpr bool is_name() {
    if (word_ == "page" || word_ == "under") return fail(Problem::name_is_reserved);
    bool good = !word_.empty() && is_latin_letter(word_[0]);
    for (char c : word_) good = good && (is_word_character(c) || c == '_');
    if (!good) return fail(word_.empty() ? Problem::unexpected_end : Problem::name_expected);
    return word_.size() <= Scheme::longest_name || fail(Problem::name_too_long, Scheme::longest_name);
  }
  constexpr int find(std::string_view name) const {
    auto const key = PieceState::key_of(name);
    for (int i = 0; i < scheme_.piece_count_; ++i)
      if (auto const at = static_cast<std::size_t>(i); state_[at].key == key && scheme_.names_[at].view() == name)
        return i;
    return -1;
  }
  /// Finds a piece that exists and has not been cut up.
  constexpr bool piece(std::string_view name, std::uint8_t& which) {
    auto const found = find(name);
    if (found < 0) return fail(Problem::no_such_piece);
    which = static_cast<std::uint8_t>(found);
    return !state_[which].cut_up || fail(Problem::piece_is_cut_up);
  }
  constexpr bool new_piece(PieceState state, std::uint8_t& which) {
    next();
    if (!is_name()) return false;
    if (find(word_) >= 0) return fail(Problem::name_taken);
    if (scheme_.piece_count_ == Scheme::most_pieces) return fail(Problem::too_many_pieces, Scheme::most_pieces);
    which = scheme_.piece_count_++;
    scheme_.names_[which] = word_;
    state.place = here();
    state.key = PieceState::key_of(word_);
    state_[which] = state;
    return true;
  }
  /// Returns true if the scheme can have one more cut or fold.
  constexpr bool room_for_step() {
    return scheme_.step_count_ < Scheme::most_steps || fail(Problem::too_many_steps, Scheme::most_steps);
  }
  constexpr void new_step(Step const& step) { scheme_.steps_[scheme_.step_count_++] = step; }

  constexpr bool scheme_line() {
    if (!expect("scheme")) return fail(Problem::scheme_line_first);
    if (!next()) return fail(Problem::unexpected_end);
    for (char c : word_)
      if (!is_word_character(c) && c != '_' && c != '-') return fail(Problem::name_expected);
    if (!scheme_.id_.assign(word_)) return fail(Problem::name_too_long, Scheme::longest_id);
    skip_blanks();
    auto const rest = cursor_.rest();
    auto const found = format_at_start(rest.substr(0, rest.find_first_of("\n#")));
    if (!found) {
      next();
      return fail(word_.empty() ? Problem::unexpected_end : Problem::unknown_format);
    }
    scheme_.format_ = found->format;
    cursor_.skip(found->bytes);
    if (take_if("reads")) {
      if (!next()) return fail(Problem::unexpected_end);
      if (word_ != "right-to-left" && word_ != "left-to-right") return fail(Problem::unknown_word);
      scheme_.reads_ = word_ == "right-to-left" ? Reads::right_to_left : Reads::left_to_right;
    }
    return true;
  }

  constexpr bool sheet_line() {
    if (scheme_.step_count_ != 0 || scheme_.gathering_count_ != 0) return fail(Problem::sheets_come_first);
    if (scheme_.sheet_count_ == Scheme::most_sheets) return fail(Problem::too_many_sheets, Scheme::most_sheets);
    auto& sheet = scheme_.sheets_[scheme_.sheet_count_];
    std::uint8_t which{};
    if (!new_piece({}, which)) return false;
    sheet.place = here();
    int rows{}, columns{};
    if (!expect("rows") || !number(rows, Scheme::most_cells)) return false;
    if (rows == 0) return fail(Problem::not_positive);
    if (!expect("columns") || !number(columns, Scheme::most_cells)) return false;
    if (columns == 0) return fail(Problem::not_positive);
    if (scheme_.cells() + rows * columns > Scheme::most_cells) return fail(Problem::too_many_cells, Scheme::most_cells);
    sheet.rows = static_cast<std::uint8_t>(rows);
    sheet.columns = static_cast<std::uint8_t>(columns);
    next();
    if (word_ == "half" || word_ == "quarter") {
      sheet.part = word_ == "half" ? PaperPart::half : PaperPart::quarter;
      next();
    }
    if (word_ != "long-side") return fail(word_.empty() ? Problem::unexpected_end : Problem::unknown_word);
    if (!axis(sheet.long_side)) return false;
    if (take_if("turned")) {
      sheet.one_forme = true;
      if (!expect("about") || !axis(sheet.turned_about)) return false;
    }
    auto& state = state_[which];
    state.sheet = scheme_.sheet_count_++;
    state.rows = sheet.rows;
    state.columns = sheet.columns;
    return true;
  }

  constexpr bool cut_line() {
    if (!room_for_step()) return false;
    Step step{Step::Kind::cut, Axis::far_near, 0, 0, false, false, 0, 0, here()};
    int line{};
    next();
    if (!piece(word_, step.piece)) return false;
    auto& whole = state_[step.piece];
    if (whole.folded) return fail(Problem::piece_is_folded);
    if (whole.used) return fail(Problem::piece_used_twice);
    if (!next() || (word_ != "row" && word_ != "column"))
      return fail(word_.empty() ? Problem::unexpected_end : Problem::unknown_word);
    bool const by_row = word_ == "row";
    step.along = by_row ? Axis::left_right : Axis::far_near;
    if (!number(line, Scheme::most_cells)) return false;
    auto const from = by_row ? whole.row : whole.column, size = by_row ? whole.rows : whole.columns;
    if (line <= from || line >= from + size) return fail(Problem::line_outside_piece);
    step.line = static_cast<std::uint8_t>(line);
    auto one = whole, other = whole;
    auto const first_part = static_cast<std::uint8_t>(line - from), rest = static_cast<std::uint8_t>(size - first_part);
    (by_row ? one.rows : one.columns) = first_part;
    (by_row ? other.rows : other.columns) = rest;
    (by_row ? other.row : other.column) = step.line;
    if (!new_piece(one, step.far_or_left_piece) || !new_piece(other, step.near_or_right_piece)) return false;
    whole.cut_up = true;
    new_step(step);
    return true;
  }

  constexpr bool fold_line() {
    if (!room_for_step()) return false;
    Step step{Step::Kind::fold, Axis::far_near, 0, 0, false, false, 0, 0, here()};
    int line{};
    next();
    if (!piece(word_, step.piece)) return false;
    if (!next()) return fail(Problem::unexpected_end);
    if (word_ != "right-over-left" && word_ != "left-over-right" && word_ != "far-over-near" &&
        word_ != "near-over-far")
      return fail(Problem::unknown_word);
    bool const by_row = word_ == "far-over-near" || word_ == "near-over-far";
    step.along = by_row ? Axis::left_right : Axis::far_near;
    step.far_or_left_moves = word_ == "far-over-near" || word_ == "left-over-right";
    if (!number(line, Scheme::most_cells)) return false;
    step.place = here();
    step.line = static_cast<std::uint8_t>(line);
    step.under = take_if("under");
    state_[step.piece].folded = true;
    new_step(step);
    return true;
  }

  /// Reads one piece of a gathering line: `name`, `name:near`, `name:near:inner`.
  constexpr bool place_piece(std::string_view item, bool opens_pair, bool in_pair) {
    auto const colon = item.find(':');
    word_start_ = static_cast<std::size_t>(item.data() - cursor_.text().data());
    word_ = item.substr(0, colon);
    if (!is_name()) return false;
    Placed placed{0, false, false, opens_pair, here()};
    if (!piece(word_, placed.piece)) return false;
    auto& state = state_[placed.piece];
    if (state.used) return fail(Problem::piece_used_twice);
    state.used = true;
    bool const single = state.rows == 1 && state.columns == 1;
    if (in_pair && !single) return fail(Problem::pair_needs_single_leaves);
    for (auto mark = colon; mark != item.npos;) {
      auto const end = item.find(':', mark + 1);
      auto const name = word_;
      word_start_ = static_cast<std::size_t>(item.data() - cursor_.text().data()) + mark + 1;
      word_ = item.substr(mark + 1, end == item.npos ? end : end - mark - 1);
      if (word_ == "near")
        placed.heads_near = true;
      else if (word_ == "inner" && single)
        placed.recto_inner = true;
      else if (word_ == "inner")
        return word_ = name, fail(Problem::inner_needs_single_leaf);
      else
        return fail(Problem::unknown_word);
      mark = end;
    }
    scheme_.placed_[scheme_.placed_count_++] = placed;
    return true;
  }

  constexpr bool gathering_line() {
    if (scheme_.gathering_count_ == Scheme::most_gatherings)
      return fail(Problem::too_many_gatherings, Scheme::most_gatherings);
    GatheringLine gathering{{}, scheme_.placed_count_, 0, {}, here()};
    next();
    if (!is_name()) return false;
    gathering.name = word_;
    while (next() && word_ != "page") {
      auto const item = word_;
      auto const plus = item.find('+');
      if (!place_piece(item.substr(0, plus), plus != item.npos, plus != item.npos)) return false;
      if (plus != item.npos && !place_piece(item.substr(plus + 1), false, true)) return false;
    }
    gathering.count = static_cast<std::uint8_t>(scheme_.placed_count_ - gathering.first);
    if (word_ == "page") {
      int page{};
      if (!number(page, 60000)) return false;
      if (page == 0) return fail(Problem::not_positive);
      gathering.first_page = static_cast<std::uint16_t>(page);
    }
    if (gathering.count == 0) return fail(Problem::unexpected_end);
    scheme_.gatherings_[scheme_.gathering_count_++] = gathering;
    return true;
  }

  constexpr bool line() {
    auto const start = cursor_.at();
    if (!next()) return true;
    auto const word = word_;
    if (!begun_) {
      cursor_.go_to(start);
      begun_ = true;
      return scheme_line() && end_of_line();
    }
    if (word == "sheet") return sheet_line() && end_of_line();
    if (word != "cut" && word != "fold" && word != "gathering") return fail(Problem::unknown_word);
    if (scheme_.sheet_count_ == 0) return fail(Problem::no_sheet);
    return (word == "cut" ? cut_line() : word == "fold" ? fold_line() : gathering_line()) && end_of_line();
  }

  constexpr bool whole_text() {
    for (;;) {
      if (!line()) return false;
      auto const end = cursor_.rest().find('\n');
      if (end == std::string_view::npos) break;
      cursor_.skip(end + 1);
      line_start_ = cursor_.at();
      ++line_;
      bits_ = 0;
    }
    word_ = {};
    cursor_.skip(cursor_.rest().size());
    word_start_ = cursor_.at();
    if (!begun_) return fail(Problem::scheme_line_first);
    if (scheme_.sheet_count_ == 0) return fail(Problem::no_sheet);
    if (scheme_.gathering_count_ == 0) return fail(Problem::no_gathering);
    for (int i = 0; i < scheme_.piece_count_; ++i) {
      auto const& state = state_[static_cast<std::size_t>(i)];
      if (state.used || state.cut_up) continue;
      auto const name = scheme_.names_[static_cast<std::size_t>(i)].view();
      error_ = error_in_scheme(Problem::piece_left_over, state.place, name);
      return false;
    }
    return true;
  }

public:
  constexpr explicit SchemeReader(std::string_view text) : SchemeWords{text} {}
  constexpr Expected<Scheme> read() {
    if (whole_text()) return scheme_;
    return error_;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
