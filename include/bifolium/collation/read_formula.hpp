// SPDX-License-Identifier: MIT
/// Reading a collation formula. Grammar and conventions follow Bowers as the manuals report him (ICCU; STCV; Modena), the
/// habits of BMC, GW and the STC where the dialect says so.
#pragma once

#include <bifolium/collation/detail/scan_formula.hpp>
#include <bifolium/collation/formula.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The sink that keeps everything.
class FormulaReader {
  std::string_view text_;
  Formula& formula_;
  std::size_t column_at_{0};
  std::uint32_t column_{1};

  /// Runs are parted by blanks; a vector that grew by copying would cost a long text twice its reading.
  static std::size_t runs_at_most(std::string_view text) noexcept {
    std::size_t blanks = 0;
    for (char c : text) blanks += c == ' ' ? 1U : 0U;
    return blanks < text.size() / 4 ? blanks + 1 : text.size() / 4 + 1;
  }

  /// Columns are asked for almost in order, so the last one is a good place to count from.
  std::uint32_t column(std::size_t at) {
    if (at < column_at_) column_at_ = 0, column_ = 1;
    for (; column_at_ < at; column_at_ += decode(text_, column_at_).bytes) ++column_;
    return column_;
  }

  /// Words as they are meant, without the entities of HTML and TEI.
  [[nodiscard]] std::string words(std::size_t from, std::size_t to) const {
    std::string result{text_.substr(from, to - from)};
    std::size_t kept = 0;
    for (std::size_t i = 0; i < result.size(); ++kept) {
      std::size_t bytes = 0;
      auto const c = entity(result, i, bytes);
      result[kept] = bytes == 0 ? result[i] : c;
      i += bytes == 0 ? 1 : bytes;
    }
    result.resize(kept);
    return result;
  }

  FormulaReader(std::string_view text, Formula& formula) : text_{text}, formula_{formula} {
    formula_.runs_.reserve(text.size() < 80 ? text.size() / 4 + 1 : runs_at_most(text));
  }

public:
  void run(Run const& run) { formula_.runs_.push_back(run); }
  /// Most runs are plain. They are made where they stay: a copy would wait for the bytes just written.
  void plain_run(PlainRun const& plain, std::int64_t gatherings, bool begins_part, bool unsigned_throughout,
                 Letters letters) {
    static constexpr Run blank{};
    formula_.runs_.push_back(blank);
    auto& run = formula_.runs_.back();
    ::new (static_cast<void*>(&run.first)) Signature(Signature::letter(plain.first, plain.first_multiple, letters));
    ::new (static_cast<void*>(&run.last)) Signature(Signature::letter(plain.last, plain.last_multiple, letters));
    run.gatherings = gatherings;
    run.leaves.push(plain.leaves);
    run.begins_part = begins_part;
    run.unsigned_throughout = unsigned_throughout;
  }
  void plain_deletion(GatheringAt gathering, int leaf) {
    static constexpr Change blank{};
    formula_.changes_.push_back(blank);
    auto& change = formula_.changes_.back();
    change.kind = Change::Kind::deletion;
    change.stands_after = gathering.run;
    change.gathering = gathering;
    change.leaf = leaf;
  }
  void change(Change const& change) { formula_.changes_.push_back(change); }
  void note(Change change, std::size_t from, std::size_t to) {
    change.note = static_cast<std::uint32_t>(formula_.notes_.size());
    formula_.notes_.push_back(words(from, to));
    formula_.changes_.push_back(change);
  }
  void warn(Problem problem, std::size_t from, std::size_t to, std::int64_t limit) {
    formula_.warnings_.push_back(error_at(problem, 1, column(from), text_.data() + from, to - from, limit));
  }
  void format(Format format) { formula_.format_ = format; }
  void second_format(Format format) { formula_.second_format_ = format; }
  void paper_class(std::size_t from, std::size_t to) { formula_.paper_class_ = text_.substr(from, to - from); }
  void passage(Passage passage, std::size_t from, std::size_t to) {
    while (to > from && (text_[to - 1] == ' ' || text_[to - 1] == '\n' || text_[to - 1] == '\r')) --to;
    auto& place = passage == Passage::signing ? formula_.signing_ : formula_.tail_;
    if (passage == Passage::signing && !place.empty()) place += ' ';
    place += words(from, to);
  }
  void imperfect() { formula_.runs_.back().imperfect = true; }

  /// The formula is made where it is returned: it is seven vectors and strings to move otherwise, twice.
  static Expected<Formula> read(std::string_view text, Dialect dialect) {
    Expected<Formula> result{Formula{}};
    FormulaReader reader{text, *result};
    FormulaScanner<FormulaReader> scanner{text, dialect, reader};
    if (scanner.scan()) {
      result->letters_ = dialect.letters;
      result->leaves_ = scanner.leaves();
      result->gatherings_ = scanner.gatherings();
    } else
      result = scanner.error();
    return result;
  }
};

} // namespace detail

/// Reads a formula, with its format statement, changes, statement of signing and what follows it.
/// error: the first thing that cannot be read, with its column in code points. What is doubtful is in warnings().
inline Expected<Formula> read_formula(std::string_view text, Dialect dialect = {}) {
  return detail::FormulaReader::read(text, dialect);
}

} // namespace v0
} // namespace bifolium
