// SPDX-License-Identifier: MIT
/// Mistakes of numbering, as statements list them: "misprinting 45 as 54, '207' for 197; 33-34 omitted; repeating
/// 95-96". A misprint is stored beside the runs; a repeated or omitted number divides a run in two.
#pragma once

#include <bifolium/record/detail/page_fault_list.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageFaultScanner : protected PageScanner {
  PageFaultList faults_{};

protected:
  using PageScanner::PageScanner;

  [[nodiscard]] std::size_t fault_count() const noexcept { return faults_.size(); }
  [[nodiscard]] bool begins_faults() const {
    auto rest = cursor_.rest();
    if (rest.starts_with('[') || rest.starts_with('(')) rest.remove_prefix(1);
    for (std::string_view word : {"mis", "omit", "repeat", "numbers", "with "})
      if (rest.starts_with(word)) return true;
    // 33-34 omitted, '207' for 197: a number and then a word for a mistake
    for (std::size_t i = 0; i < rest.size() && i < 24; ++i) {
      for (std::string_view word : {" as ", " for ", " mis", " omitted", " repeated", " numbered"})
        if (TextCursor{rest, i}.starts_with(word)) return true;
      if (rest[i] == ',' || rest[i] == ';' || rest[i] == ']' || rest[i] == '[' || rest[i] == ')') return false;
    }
    return false;
  }

private:
  enum class Verb : std::uint8_t { none, misprinting, omitting, repeating };
  struct Quoted {
    Figure number{};
    std::uint8_t series{};
  };
  Quoted quoted() {
    cursor_.take_quotation_mark();
    auto const of_series = series();
    auto const number = figure();
    cursor_.take_quotation_mark();
    return {number, of_series};
  }
  bool take_verb(Verb& verb) {
    struct Row {
      char const* word;
      Verb verb;
    };
    for (auto const& row :
         {Row{"misprinting", Verb::misprinting}, Row{"misnumbering", Verb::misprinting},
          Row{"mispaging", Verb::misprinting}, Row{"misprinted", Verb::misprinting},
          Row{"misnumbered", Verb::misprinting}, Row{"omitting", Verb::omitting}, Row{"repeating", Verb::repeating}})
      if (cursor_.take_word(row.word)) return verb = row.verb, true;
    return false;
  }
  bool take_filler() {
    return cursor_.take_word("with") || cursor_.take_word("and") || cursor_.take_word("numbers") ||
           cursor_.take("pages") || cursor_.take("pp.") || cursor_.take("p.");
  }
  /// Reads the second number of a misprint: 45 as 54, '207' for 197.
  std::optional<Error> misprint(Quoted const& first, Figure const& last, std::size_t from, bool printed_first,
                                bool said) {
    cursor_.take_blanks();
    static_cast<void>(cursor_.take_word("as"));
    cursor_.take_blanks();
    auto const second = quoted();
    bool const same_numerals = second.number.numerals == first.number.numerals;
    if (!said || second.number.value < 0 || second.number.value > most || !same_numerals ||
        last.value != first.number.value)
      return cursor_.error_from(from, Problem::not_a_pagination);
    auto const series = printed_first ? second.series : first.series;
    auto const misprint = printed_first ? Misprint{second.number.value, last.value, last.numerals, series}
                                        : Misprint{last.value, second.number.value, last.numerals, series};
    faults_.add({PageFault::Kind::misprint,
                 last.numerals,
                 series,
                 misprint.should_be,
                 misprint.should_be,
                 {from, cursor_.at()},
                 read_.pagination.misprints.size(),
                 false});
    read_.pagination.misprints.push_back(misprint);
    return std::nullopt;
  }
  std::optional<Error> fault(Verb verb) {
    auto const from = cursor_.at();
    auto const first = quoted();
    auto last = first.number;
    if (first.number.value >= 1 && cursor_.take_dash()) last = figure();
    if (first.number.value < 1 || last.value < first.number.value || last.value > most ||
        last.numerals != first.number.numerals)
      return cursor_.error_from(from, Problem::not_a_pagination);
    cursor_.take_blanks();
    bool const printed_first = cursor_.take_word("for");
    bool const said = printed_first || cursor_.take_word("as") || cursor_.take_word("misprinted") ||
                      cursor_.take_word("misnumbered") || cursor_.take_word("numbered") || cursor_.take_word("printed");
    auto const list = [&](PageFault::Kind kind) {
      faults_.add({kind, last.numerals, first.series, first.number.value, last.value, {from, cursor_.at()}, 0, false});
      return std::optional<Error>{};
    };
    if (!said && (cursor_.take_word("omitted") || (verb == Verb::omitting && !cursor_.starts_with("repeated"))))
      return list(PageFault::Kind::omitted);
    if (!said && (cursor_.take_word("repeated") || verb == Verb::repeating)) return list(PageFault::Kind::repeated);
    return misprint(first, last, from, printed_first, said);
  }

protected:
  /// Reads a list of mistakes, in brackets or not.
  std::optional<Error> faults() {
    char const close = cursor_.take('[') ? ']' : cursor_.take('(') ? ')' : '\0';
    auto verb = Verb::none;
    while (true) {
      cursor_.take_blanks();
      while (cursor_.take(',') || cursor_.take(';')) cursor_.take_blanks();
      if (cursor_.at_end() || (close != '\0' && cursor_.peek() == close)) break;
      if (take_filler() || take_verb(verb)) continue;
      if (auto wrong = fault(verb)) return wrong;
    }
    if (close != '\0') static_cast<void>(cursor_.take(close)); // the text may end before the bracket
    return std::nullopt;
  }
  /// Divides the runs at omitted or repeated numbers, and adds warnings for mistakes in numbers that no page has.
  void apply_faults() {
    if (faults_.empty()) return;
    auto& pagination = read_.pagination;
    std::vector<Misprint> kept;
    for (auto const& fault : faults_.apply(pagination.runs)) {
      if (!fault.applies)
        pagination.warn(cursor_.error(Problem::fault_of_no_page, fault.at));
      else if (fault.kind == PageFault::Kind::misprint)
        kept.push_back(pagination.misprints[fault.misprint]);
    }
    pagination.misprints = kept;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
