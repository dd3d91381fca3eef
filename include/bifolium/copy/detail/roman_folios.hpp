// SPDX-License-Identifier: MIT
/// Leaves that are numbered by Roman numerals after a word for leaves: ff. I-III, fols. v-viii, Bll. II und III (common practice, no
/// source). Letters such as I and v are gatherings, too, and xi can be leaf x1; but leaves are counted by numbers and a
/// gathering is no leaf, so the numerals of one list are all read as numbers if the book has so many leaves. From one
/// numeral to a greater one, I-III, it is certain, and it is for the others of the list; alone a numeral is doubted.
#pragma once

#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Leaves by number, as numerals name them.
struct RomanRun {
  std::string_view word{};
  std::int64_t from{}, to{};
  bool joined{};   ///< "and" comes before it
  Problem doubt{}; ///< what else it can be, if nothing else of the list says what is meant
  bool likely{};   ///< false for c, d, l and m, which are rather gatherings in most books
};

class RomanFolios {
  IdealCopy const& book_;
  std::vector<RomanRun> runs_{};
  std::uint64_t gatherings_{},
      leaves_{}; // letters of numerals that are gatherings, and of those that are leaves of one: X, XI
  bool sure_{};  // one of the runs can only be of numbers
  bool ended_{}; // a full point comes after the last of them

  /// What a numeral is beside a number.
  struct Numeral {
    std::int64_t value{};
    bool letters{}, gathering{}, leaf{};
    bool only_in_run{}; ///< leaf cij is c2, and leaves ci-cv are 101 to 105
  };
  [[nodiscard]] static std::string_view take_token(TextCursor& cursor) {
    return take_until_beside_names(cursor,
                                   [](char32_t one) { return is_between_items(one) || is_dash(one) || one == '.'; });
  }
  /// Reads a numeral in letters or figures.
  [[nodiscard]] std::optional<Numeral> numeral_of(std::string_view word) const {
    if (word.empty() || word.size() > 15) return std::nullopt;
    if (auto const figure = whole_number(word, book_.leaves()); figure && *figure > 0)
      return names_gathering(book_, word) ? std::nullopt : std::optional{Numeral{*figure}};
    if (!is_roman_numeral(word)) return std::nullopt;
    Numeral found{roman_numeral(word)->value, true, names_gathering(book_, word), false};
    found.leaf = !found.gathering && find_reference(book_, word);
    found.only_in_run = found.leaf && std::string_view{"ivxIVX"}.find(word[0]) == word.npos;
    return found;
  }
  /// Takes one numeral, or two with a dash or "to" between them. Returns false if they cannot be numbers of leaves.
  bool take_run(TextCursor& cursor, bool joined) {
    auto c = cursor;
    auto const word = take_token(c);
    auto const first = numeral_of(word);
    if (!first) return false;
    auto last = first;
    auto end = c;
    end.take_blanks();
    bool dash = end.take_dash();
    if (!dash) {
      auto const to = end.take_until(is_between_items);
      dash = c.at() < end.at() && is_word_of_run(to) && end.take_blanks();
    }
    std::string_view last_word;
    if (dash) end.take_blanks(), last_word = take_token(end), last = numeral_of(last_word);
    if (dash ? !last.has_value() : first->only_in_run) return false;
    if (dash) c = end;
    if (first->value > last->value || last->value > book_.leaves()) return false;
    auto const to = c.at();
    ended_ = c.take('.');
    auto after = c;
    if (after.take_blanks() ? after.at_digit() : ended_ && !c.at_end()) return false; // C 3, i.1
    bool const letters = first->letters || last->letters;
    bool const greater = dash && first->value < last->value && letters && !(first->leaf && last->leaf);
    bool const plain = !first->gathering && !first->leaf && !last->gathering && !last->leaf;
    bool const leaf = first->leaf || last->leaf;
    auto const is_letter = [](std::string_view one) {
      return one.size() == 1 && std::string_view{"cdlmCDLM"}.find(one[0]) != one.npos;
    };
    // leaves C-D of a book of 600 leaves
    bool const letters_only = dash && first->gathering && last->gathering && (is_letter(word) || is_letter(last_word));
    auto const bit = std::uint64_t{1} << (static_cast<unsigned char>(word[0]) % 64U); // letters differ in it
    if (word.size() == 1 && first->gathering && !dash) gatherings_ |= bit;
    if (first->leaf) leaves_ |= bit;
    sure_ = sure_ || (greater && !letters_only) || plain || (gatherings_ & leaves_) != 0;
    auto const from = cursor.at();
    bool const likely = word.size() == 1 && std::string_view{"ivxIVX"}.find(word[0]) != word.npos;
    auto const other = leaf ? Problem::leaf_or_word : Problem::name_in_two_ways;
    runs_.push_back({cursor.text().substr(from, to - from), first->value, last->value, joined,
                     plain || (greater && !letters_only) ? Problem::none : other,
                     likely || (dash && !letters_only) || word.size() > 1});
    cursor = c;
    return true;
  }

public:
  explicit RomanFolios(IdealCopy const& book) : book_{book} {}

  /// Takes a word for leaves and the numerals after it. Returns false if one of them is no number of a leaf, and takes nothing.
  [[nodiscard]] bool take(TextCursor& cursor) {
    auto c = cursor;
    auto noun = c.take_until(is_between_items);
    for (int words = 0; words < 2 && (is_article(noun) || noun == "i") && c.take_blanks(); ++words)
      noun = c.take_until(is_between_items);
    if (noun.starts_with('(')) noun.remove_prefix(1);
    auto const bare = without_point(noun);
    bool const folio = bare.size() < noun.size() && noun[0] == 'f';
    if (!is_leaf_noun(noun) || (bare.size() <= 2 && !folio && names_gathering(book_, bare))) return false;
    if (!c.take_blanks() || c.at_digit() || !take_run(c, false)) return false;
    auto end = c; // what comes after the last numeral
    while (!ended_) {
      c.take_blanks();
      bool const parted = c.take(',');
      c.take_blanks();
      auto next = c;
      bool const joined = is_joining_word(next.take_until(is_between_items)) && next.take_blanks();
      if (joined) c = next;
      if (!joined && !parted) break;
      if (take_run(c, joined)) {
        end = c;
        continue;
      }
      // ff. I and C of a book of 86 leaves: the list is one of gatherings
      if (!sure_ && is_roman_numeral(take_token(c))) return false;
      break;
    }
    cursor = end;
    return true;
  }
  [[nodiscard]] std::vector<RomanRun> const& runs() const noexcept { return runs_; }
  /// Returns what a run may also be, or Problem::none.
  [[nodiscard]] Problem doubt(RomanRun const& run) const noexcept {
    return sure_ && run.likely ? Problem::none : run.doubt;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
