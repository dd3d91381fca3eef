// SPDX-License-Identifier: MIT
/// Compares the paper of the leaves of a copy with the formula. The leaves of a gathering were one sheet or a few, so
/// their chain lines, marks, bolts and rough edges must agree with one folding (fold/foldings_showing.hpp), and that
/// folding must be of the format that the formula states. A cancel was printed on other paper, and shows by it even if
/// its stub is hidden. Nothing that is seen in a copy changes the formula.
///
/// This header is included by name: the search for foldings costs a compiler more than the rest of copy.hpp.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/copy/joints.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The evidence of the paper of one gathering of a book.
struct PaperSeen {
  GatheringAt gathering{}; ///< the gathering
  SeenGathering seen{};    ///< its leaves that were looked at
  friend bool operator==(PaperSeen const&, PaperSeen const&) = default;
};

/// The evidence of a gathering compared with the formula.
struct PaperJudged {
  GatheringAt gathering{}; ///< the gathering
  FoldingsLeft left{};     ///< the foldings that agree with the evidence
  /// the leaf that is of other paper than the rest; several if the evidence does not tell which of them it is
  std::vector<LeafOfBook> other_paper{};
  /// true if the leaves agree with a folding of the format of the formula, or with any folding if it states no format,
  /// and if a leaf of other paper is a cancel in the formula
  bool agrees{};
  std::string words{}; ///< a description, for example "B3 is not of the paper of the rest of B: a cancel?"
  friend bool operator==(PaperJudged const&, PaperJudged const&) = default;
};

namespace detail {

/// Reads the evidence item by item.
class PaperSeenReader {
  IdealCopy const& book_;
  std::string_view text_;
  Limits limits_;
  struct Item {
    GatheringAt at;
    std::string line;       // as read_seen_leaves reads it
    std::string_view words; // as it is in the text
  };
  std::vector<Item> items_{};

  /// Returns the line and the column of a part of the text.
  [[nodiscard]] TextPlace place_of_part(std::string_view part) const {
    return place_in(text_, static_cast<std::size_t>(part.data() - text_.data()));
  }
  /// Returns an error with the place of an item, at its first letter.
  [[nodiscard]] Error at_item(Error const& error, std::string_view item) const {
    return error_at(error.problem, place_of_part(item), error.found_text(), error.limit);
  }
  /// Makes the line that comes before the leaves of a gathering.
  [[nodiscard]] std::string heading(GatheringAt at) const {
    return "gathering of " + std::to_string(book_.leaves_folded(at)) + "\n";
  }
  std::optional<Error> item(std::string_view item) {
    TextCursor cursor{item};
    auto const leaves = take_until_beside_names(cursor, is_blank), facts = cursor.rest();
    TextCursor head{leaves};
    auto const point = take_until_beside_names(head, [](char32_t c) { return c == '.'; }).size();
    auto const first = find_reference(book_, leaves.substr(0, point));
    if (!first) return at_item(first.error(), item);
    if (first->leaf.inserted)
      return error_at(Problem::leaf_outside_gathering, place_of_part(item), leaves,
                      book_.leaves_folded(first->leaf.gathering));
    auto line = std::to_string(first->leaf.leaf);
    line.append(leaves.substr(point));
    auto const number_length = line.size();
    line.append(facts).append("\n");
    if (auto const read = read_seen_leaves(heading(first->leaf.gathering) + line); !read) {
      // the column counts from the number of the leaf; the text has its signature, too
      auto const& wrong = read.error();
      if (!wrong.place || wrong.place->column <= number_length) return at_item(wrong, item);
      auto const in_facts = static_cast<std::uint32_t>(wrong.place->column - number_length);
      return error_at(wrong.problem, place_after(place_of_part(facts), {1, in_facts}), wrong.found_text(), wrong.limit);
    }
    items_.push_back({first->leaf.gathering, static_cast<std::string&&>(line), item});
    return std::nullopt;
  }
  /// Brings the items of each gathering together and returns the first item of each, in the order of the text. Sorting
  /// takes n log n steps, whatever order the items are in.
  [[nodiscard]] std::vector<std::size_t> gather() {
    merge_sort(items_, [](Item const& a, Item const& b) { return a.at < b.at; });
    std::vector<std::size_t> firsts;
    for (std::size_t i = 0; i < items_.size(); ++i)
      if (i == 0 || items_[i].at != items_[i - 1].at) firsts.push_back(i);
    merge_sort(firsts, [&](auto a, auto b) { return items_[a].words.data() < items_[b].words.data(); });
    return firsts;
  }
  /// Reads the items of one gathering together, since several of them may be about one leaf.
  [[nodiscard]] Expected<PaperSeen> together(std::size_t first) const {
    auto const at = items_[first].at;
    auto text = heading(at);
    for (auto i = first; i < items_.size() && items_[i].at == at; ++i) text.append(items_[i].line);
    auto const read = read_seen_leaves(text);
    if (!read) { // line 1 is the heading, and each item is a line
      auto const line = std::size_t{read.error().place.value_or(TextPlace{}).line};
      return at_item(read.error(), items_[line < 2 ? first : first + line - 2].words);
    }
    return PaperSeen{at, read->front()};
  }

public:
  PaperSeenReader(IdealCopy const& book, std::string_view text, Limits const& limits)
      : book_{book}, text_{text}, limits_{limits} {}

  Expected<std::vector<PaperSeen>> read() {
    if (is_too_long(text_, limits_)) return too_long(limits_);
    for (TextCursor cursor{text_};;) {
      while (cursor.take_blanks() || cursor.take(';')) continue;
      if (cursor.at_end()) break;
      auto const piece = cursor.take_until([](char32_t c) { return c == ';' || c == '\n'; });
      if (auto const wrong = item(trimmed(piece, " \t\r"))) return *wrong;
    }
    auto const firsts = gather();
    if (firsts.size() > limits_.runs) {
      auto const over = items_[firsts[limits_.runs]].words;
      return error_at(Problem::too_many_runs, place_of_part(over), over, limits_.runs);
    }
    std::vector<PaperSeen> all;
    for (auto const first : firsts) {
      auto const gathering = together(first);
      if (!gathering) return gathering.error();
      all.push_back(*gathering);
    }
    return all;
  }
};

/// Describes a gathering whose leaves agree with one another.
inline std::string agreeing_words(std::string name, FoldingsLeft const& left, std::optional<Format> format,
                                  FoldingGroup const* of_format) {
  if (of_format == nullptr) {
    auto const& first = left.groups.front();
    name.append(": contradicts ")
        .append(format->symbol())
        .append("; the leaves agree with ")
        .append(first.format.symbol());
    if (first.sheets > 1) name.append(", ").append(std::to_string(first.sheets)).append(" sheets to the gathering");
    return name;
  }
  name.append(": agrees with ").append(of_format->format.symbol());
  bool other_shape = format.has_value(); // an oblong octavo alone, where the formula has 8°
  for (auto const scheme : of_format->attested)
    other_shape = other_shape && scheme.scheme().format().shape() != format->shape();
  for (std::size_t i = 0; i < of_format->attested.size(); ++i)
    name.append(i == 0 ? (other_shape ? " only as " : " as ") : " or ").append(of_format->attested[i].id());
  return of_format->attested.empty() ? name.append(", by a folding that is not attested") : name.append(" folds");
}
/// Describes leaves of which one is of other paper.
inline std::string other_paper_words(IdealCopy const& book, std::string_view gathering, PaperJudged const& judged) {
  std::string words;
  for (auto const& leaf : judged.other_paper) words.append(words.empty() ? "" : " or ").append(leaf_words(book, leaf));
  words.append(" is not of the paper of the rest of ").append(gathering);
  if (judged.agrees) return words.append(": agrees, the formula has a cancel there");
  return words.append(judged.other_paper.size() == 1 ? ": a cancel?" : ": is one of them a cancel?")
      .append(" The formula has none there");
}

} // namespace detail

/// Reads what leaves of a book show of their paper, for example "B1 head-of-gutter vertical; B2 absent; B1.8 conjugate;
/// B3 horizontal; C5 deckle tail": a leaf, or two conjugate leaves, and then words as in fold/read_seen_leaves.hpp.
/// Items are separated by semicolons or line ends. The function allocates memory. Errors, with the column: as for
/// `read_reference` and `read_seen_leaves`; leaf_outside_gathering for an inserted leaf, which is not a part of the
/// sheet; the limits of core/limits.hpp, where a run is a gathering.
[[nodiscard]] inline Expected<std::vector<PaperSeen>> read_paper_seen(IdealCopy const& book, std::string_view text,
                                                                      Limits const& limits = {}) {
  return read_utf8(text, [&](std::string_view given) { return detail::PaperSeenReader{book, given, limits}.read(); });
}

/// Compares the paper of one gathering with the formula. `format` is the format of the formula, if it states one. The
/// function allocates memory. Errors: as for `foldings_showing`. Precondition: the gathering is of the book, and the
/// evidence has its number of leaves.
[[nodiscard]] inline Expected<PaperJudged> judge_paper(IdealCopy const& book, PaperSeen const& paper,
                                                       std::optional<Format> format) {
  if (paper.seen.leaves != book.leaves_folded(paper.gathering))
    broken("the evidence must have as many leaves as the gathering of the formula");
  auto left = foldings_showing(std::span{&paper.seen, 1});
  if (!left) return left.error();
  PaperJudged judged{paper.gathering, *left, {}, false, std::string{to_text(book.signature(paper.gathering))}};
  auto const name = judged.words;
  for (auto const& blamed : judged.left.blamed)
    if (blamed.price == judged.left.blamed.front().price) judged.other_paper.push_back({paper.gathering, blamed.leaf});
  if (!judged.other_paper.empty()) {
    judged.agrees = judged.other_paper.size() == 1 && book.is_cancel(judged.other_paper.front());
    judged.words = detail::other_paper_words(book, name, judged);
    return judged;
  }
  if (judged.left.groups.empty()) {
    judged.words.append(": no folding agrees with all of this, even without one leaf");
    return judged;
  }
  // A folding of the format that nobody attests counts only if the leaves agree with no attested one.
  bool const attested = !judged.left.groups.front().attested.empty();
  FoldingGroup const* found = nullptr;
  for (auto const& group : judged.left.groups)
    if (found == nullptr && (!format || group.format.leaves_to_sheet() == format->leaves_to_sheet()) &&
        (!attested || !group.attested.empty()))
      found = &group;
  judged.agrees = found != nullptr;
  judged.words = detail::agreeing_words(name, judged.left, format, found);
  return judged;
}

} // namespace v0
} // namespace bifolium
