// SPDX-License-Identifier: MIT
/// Divides a list of leaves where it changes from the leaves that are there to those that are wanting. Most catalogues
/// say only what is wanting, so a list may begin with it.
///
///   list    = leaves , { [ imperfect word , [ ":" ] ] , ( wanting , leaves , [ ")" ] | leaves after , [ ")" ] ) } ;
///   wanting = [ "(" ] , ( word before leaves | exception | "−" ) , [ ":" ] ;
///   exception = "except" | "but" , [ "for" ] | "save" , [ "for" ] | "excepting" ;   (* and in other languages *)
///   leaves after = [ "(" ] , leaves , word after leaves ;
///             (* these words: absence_word and is_imperfect_word in leaf/leaf_words.hpp *)
///
/// A word that a copy is imperfect says nothing of any leaf, so it may only come before those that are wanting. In
/// B3, imperfect or imperfect, B3 the leaf may be there or not.
///
/// After leaves that are wanting an exception is of leaves that are there: wants A-C except B4.
///
/// Where the word comes after the leaves, it is said of those in its parentheses, or else of the last ones, which `and`
/// may join: A-L, E8 and F1 lacking. A comma after it ends what it is said of: A1 missing, A8 missing.
#pragma once

#include <bifolium/copy/detail/content_words.hpp>
#include <bifolium/copy/detail/leaves_before_word.hpp>
#include <bifolium/copy/detail/state_words.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/leaf_words.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A part of a list of leaves.
struct ListPassage {
  TextSpan text{};
  bool wanting{};       ///< true for leaves that the copy lacks
  bool except{};        ///< true for leaves that are taken out of those: wants A-C except B4
  bool after{};         ///< true if the word for it comes after the leaves, and no parentheses say which are meant
  TextSpan word{};      ///< the word, if it comes after the leaves
  TextSpan imperfect{}; ///< the word before the passage that says that the copy is not whole, or empty
};

/// Finds the passages of a list, from the first to the last.
class ListPassages {
  TextCursor cursor_;
  ListPassage passage_{}; // the one that is being looked through, as if the text ended with it
  std::size_t close_{0};  // the next parenthesis that closes a remark, when it was last looked for
  std::size_t last_{0};   // where the last word before it begins
  std::size_t after_sign_{std::string_view::npos}; // the position after the last sign of a deletion
  bool in_parentheses_{false};
  bool wanting_outside_{false};                // what comes after the parenthesis is wanting
  bool follows_imperfect_{false};              // nothing but the word that the copy is not whole comes before
  bool follows_wanting_{false};                // the passage comes after leaves that a word after them calls wanting
  std::optional<ListPassage> queued_{};        // the passage after the one that was returned last
  std::size_t inside_{std::string_view::npos}; // where the leaves begin in a parenthesis that is not closed

  /// Returns the text without blanks and a full stop at its end.
  static std::string_view sentence(std::string_view text) noexcept {
    std::size_t end = 0; // after the last character that is not a blank
    for (std::size_t at = 0; at < text.size();) {
      auto const c = decode(text, at);
      at += c.bytes;
      if (!is_space(c.value)) end = at;
    }
    text = text.substr(0, end);
    if (text.ends_with('.') && !text.ends_with("..")) text.remove_suffix(1);
    return text;
  }
  /// Returns the number of bytes of the sign of a deletion with which an item begins: −E8, and -E8 at the beginning or
  /// in parentheses, where it is between no leaves. Returns 0 if there is none.
  [[nodiscard]] static std::size_t minus_at(std::string_view word, bool begins) noexcept {
    constexpr std::string_view minus{"\xE2\x88\x92"};
    if (word.starts_with(minus)) return word.size() > minus.size() ? minus.size() : 0;
    return begins && word.starts_with('-') && word.size() > 1 ? 1 : 0;
  }
  /// Returns true if leaves that are wanting come directly before an exception at `from`.
  [[nodiscard]] bool excepts_from_wanting(std::size_t from) const noexcept {
    if (passage_.wanting) return !says_nothing(from);
    return follows_wanting_ && trimmed(cursor_.text(), {passage_.text.from, from}, " ,;:(").empty();
  }
  /// Returns true if the passage up to `to` says that nothing is wanting: lacks nothing but A1.
  [[nodiscard]] bool says_nothing(std::size_t to) const noexcept {
    auto const text = cursor_.text();
    return is_row(trimmed(text, {passage_.text.from, to}, " ,;:(").of(text), nothing_words);
  }
  /// Ends the passage before leaves that a word after them calls wanting. Returns no value if it is not said of leaves
  /// before it.
  [[nodiscard]] std::optional<ListPassage> wanting_after(TextSpan word) noexcept {
    auto to = word.to;
    auto remark = TextCursor{cursor_.text(), to};
    remark.take_blanks();
    if (take_blank_remark(remark) || take_content_remark(remark)) to = remark.at(); // K8 wanting (a blank)
    auto const next = cursor_.text().substr(to);
    auto rest = TextCursor{next};
    rest.take_blanks();
    bool const closes = next.starts_with(')') && inside_ != next.npos;
    auto const before = before_blanks(cursor_.text(), word.from);
    bool const comma = rest.peek() == ',' && before > 0 && cursor_.text()[before - 1] != ',';
    auto next_word = TextCursor{rest}.take_until(is_between_items);
    while (next_word.ends_with(':')) next_word.remove_suffix(1);
    bool const excepts = is_exception(next_word);
    if (passage_.wanting || !(closes || comma || excepts || rest.at_end() || rest.peek() == ';')) return std::nullopt;
    auto const leaves = closes ? inside_ : group_before(cursor_.text(), passage_.text.from, word.from);
    auto const end = end_before_wanting(cursor_.text(), word.from);
    if (end <= leaves) return std::nullopt; // only separators stand before the word
    ListPassage const group{{leaves, end}, true, false, !closes, word};
    if (trimmed(cursor_.text(), group.text, " ,;").from >= word.from) return std::nullopt; // no leaves
    queued_ = group;
    inside_ = next.npos;
    bool const opened = closes && leaves > passage_.text.from; // the parenthesis itself is of no passage
    auto const ended = turn(opened ? leaves - 1 : leaves, closes ? to + 1 : to, false);
    cursor_.go_to(passage_.text.from);
    follows_wanting_ = true;
    return ended;
  }
  /// Ends the passage at `to` and begins the next one at `from`. Returns the one that has ended.
  ListPassage turn(std::size_t to, std::size_t from, bool wanting, bool except = false) noexcept {
    auto ended = passage_;
    ended.text.to = to;
    passage_ = {{from, cursor_.text().size()}, wanting, except};
    follows_imperfect_ = follows_wanting_ = false;
    return ended;
  }
  /// Notes that a parenthesis opens before leaves that are wanting.
  void open_parenthesis() noexcept {
    in_parentheses_ = true;
    wanting_outside_ = passage_.wanting && !passage_.except;
  }
  /// Ends the passage before `word`, which says that the copy is not whole, in the item that begins at `from`.
  ListPassage turn_imperfect(std::size_t from, std::string_view word, bool opens_parenthesis) noexcept {
    if (opens_parenthesis) in_parentheses_ = true, wanting_outside_ = false, inside_ = cursor_.at();
    auto const begin = static_cast<std::size_t>(word.data() - cursor_.text().data());
    auto const ended = turn(from, cursor_.at(), false);
    passage_.imperfect = {begin, begin + word.size()};
    follows_imperfect_ = true;
    return ended;
  }
  /// Returns where a remark in parentheses ends that only says which of the wanting leaves are blank: (G4 blank). Returns npos if
  /// there is none.
  [[nodiscard]] std::size_t end_of_remark(std::size_t from) noexcept {
    auto const text = cursor_.text();
    auto const ends_item = [&](std::size_t at) { // which one in the name of a leaf does not: ((*)4 blank)
      return at + 1 == text.size() || is_between_items(decode(text, at + 1).value);
    };
    auto const looked_at = close_;
    while (close_ != text.npos && (close_ < from || !ends_item(close_)))
      close_ = text.find(')', close_ < from ? from : close_ + 1);
    if (close_ == text.npos) return text.npos;
    if (close_ != looked_at) // many parentheses may open before this one
      for (last_ = close_; last_ > 0 && blank_before(text, last_) == 0;) --last_;
    return last_ > from && is_blank_word(text.substr(last_, close_ - last_)) ? close_ + 1 : text.npos;
  }

  /// Returns true if only blanks are between a word at `from` and the item before it: A1 lacks lower corner, and not A-D, lacks
  /// lower margins.
  [[nodiscard]] bool follows_item(std::size_t from) const noexcept {
    auto const text = cursor_.text();
    for (std::size_t blank = blank_before(text, from); blank != 0; blank = blank_before(text, from)) from -= blank;
    return from > passage_.text.from && std::string_view{",;("}.find(text[from - 1]) == std::string_view::npos;
  }

public:
  explicit ListPassages(std::string_view text) : cursor_{sentence(text)} { passage_.text = {0, cursor_.text().size()}; }

  /// Returns the next passage, which may be empty, or no value at the end of the text.
  std::optional<ListPassage> next() noexcept {
    if (queued_) {
      auto const queued = *queued_;
      queued_.reset();
      return queued;
    }
    auto const size = cursor_.text().size();
    while (true) {
      cursor_.take_while(is_between_items);
      if (cursor_.at_end()) break;
      auto const from = cursor_.at();
      auto const whole = take_until_beside_names(cursor_, is_between_items);
      auto word = whole;
      bool const opens = word.starts_with('(');
      if (opens) word.remove_prefix(1), inside_ = from + 1;
      bool const described = follows_imperfect_;
      follows_imperfect_ = described && trimmed(whole, " ,;:.?").empty();
      // a second sign, as in −−A1, says nothing more: with it the name that follows is none
      auto const sign = from == after_sign_ ? 0 : minus_at(word, opens || from == 0 || described);
      if (sign != 0) {
        if (opens) open_parenthesis();
        cursor_.go_to(from + (opens ? 1 : 0) + sign);
        after_sign_ = cursor_.at();
        return turn(from, after_sign_, true);
      }
      while (word.ends_with(':') || word.ends_with('.')) word.remove_suffix(1);
      auto const bare = word.substr(0, word.find(')'));
      if (!opens && absence_word(bare).after)
        if (auto const before = wanting_after({from, from + bare.size()})) return before;
      if (!opens && whole.ends_with(')')) inside_ = whole.npos;
      auto phrase_end = TextCursor{cursor_.text(), from};
      static_cast<void>(opens && phrase_end.take('('));
      bool const is_phrase = begins_phrase(phrase_end) && take_phrase(phrase_end, exception_phrases);
      if (is_phrase) cursor_.go_to(phrase_end.at());
      bool const exception = is_phrase || is_exception(word);
      if (auto phrase = TextCursor{cursor_.text(), from}; !opens && follows_item(from) && take_damage_phrase(phrase)) {
        cursor_ = phrase;
        continue;
      }
      if (exception || absence_word(word).before || is_row(word, without_words) ||
          (described && is_row(word, words_for_of))) {
        if (opens) open_parenthesis();
        return turn(from, cursor_.at(), true, exception && excepts_from_wanting(from));
      }
      if (auto const state = trimmed(bare, ":.?"); is_imperfect_word(state) || is_row(state, imperfect_words_of_copies))
        return turn_imperfect(from, state, opens && bare.size() == word.size());
      if (!passage_.wanting) continue;
      if (opens && opened_in(whole) > 0)
        if (auto const end = end_of_remark(from); end != std::string_view::npos) {
          cursor_.go_to(end);
          return turn(from, end, true, passage_.except);
        }
      if (in_parentheses_ && closes_parenthesis(whole)) {
        in_parentheses_ = false;
        return turn(cursor_.at() - 1, cursor_.at(), wanting_outside_);
      }
    }
    if (passage_.text.from >= size && !passage_.wanting && passage_.imperfect.empty()) return std::nullopt;
    return turn(size, size, false);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
