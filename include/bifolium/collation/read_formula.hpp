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
  std::size_t list_{0}; // the change with which a list of identities begins
  int list_leaf_{0};    // the leaf written before it

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

  template <class One> void keep(One const& one, ChangeForm const& form, bool doubtful) {
    formula_.changes_.push_back(Change{one, {}, doubtful});
    formula_.forms_.push_back(form);
  }
  static Joined joined(ScannedChange::Joined joined) {
    return joined == ScannedChange::Joined::apart       ? Joined::apart
           : joined == ScannedChange::Joined::conjugate ? Joined::conjugate
                                                        : Joined::gathering;
  }
  /// The two leaves of a fold that are cancelled together know it of each other.
  void cancel(ScannedChange const& change, ChangeForm const& form) {
    Cancel one{change.gathering, change.leaf, change.leaf == 0};
    auto const* const before = formula_.changes_.empty() ? nullptr : formula_.changes_.back().cancel();
    if (before != nullptr && form.separator == ChangeForm::Separator::point && before->gathering == one.gathering &&
        before->leaf + one.leaf == formula_.leaves_folded(one.gathering) + 1) {
      one.of_fold = true;
      auto both = *before;
      both.of_fold = true;
      auto& last = formula_.changes_.back();
      last = Change{both, last.text(), last.doubtful()};
    }
    keep(one, form, change.doubtful);
  }
  /// An identity belongs to the change before it, or else to the gathering; those of a list to one leaf after another.
  void identity(ScannedChange const& change, ChangeForm const& form) {
    auto const& changes = formula_.changes_;
    bool const goes_on =
        !changes.empty() && changes.back().identity() != nullptr && form.separator != ChangeForm::Separator::opens;
    if (!goes_on) list_ = changes.size(), list_leaf_ = change.leaf;
    auto const place = static_cast<int>(changes.size() - list_);
    Identity one{change.gathering, (list_leaf_ == 0 ? 1 : list_leaf_) + place, {}, change.named, change.name,
                 change.name_leaf};
    if (change.of_change && list_ > 0) {
      auto const& of = changes[list_ - 1];
      auto const leaf = of.deletion() != nullptr ? of.deletion()->leaf : of.cancel() != nullptr ? of.cancel()->leaf : 0;
      one.leaf = (leaf == 0 ? 1 : leaf) + place;
      if (of.insertion() != nullptr) one.insertion = static_cast<std::uint32_t>(list_ - 1);
    }
    keep(one, form, change.doubtful);
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
    keep(Deletion{gathering, leaf}, {gathering.run, ChangeForm::Separator::opens, false}, false);
  }
  void change(ScannedChange const& change) {
    using Joint = ScannedChange::Joint;
    auto const separator = change.joint == Joint::opens   ? ChangeForm::Separator::opens
                           : change.joint == Joint::apart ? ChangeForm::Separator::comma
                                                          : ChangeForm::Separator::point;
    ChangeForm const form{change.stands_after, separator,
                          change.kind == ScannedChange::Kind::identity && change.leaf > 0};
    switch (change.kind) {
    case ScannedChange::Kind::deletion:
      return keep(Deletion{change.gathering, change.leaf}, form, change.doubtful);
    case ScannedChange::Kind::cancel:
      return cancel(change, form);
    case ScannedChange::Kind::insertion:
      return keep(Insertion{change.gathering, change.leaf, change.added, joined(change.joined), change.named,
                            change.place_named, change.name, change.name_leaf},
                  form, change.doubtful);
    case ScannedChange::Kind::identity:
      return identity(change, form);
    case ScannedChange::Kind::note:
      return keep(Note{change.gathering, change.note}, form, change.doubtful);
    }
  }
  void note(ScannedChange change, std::size_t from, std::size_t to) {
    change.note = static_cast<std::uint32_t>(formula_.notes_.size());
    formula_.notes_.push_back(words(from, to));
    this->change(change);
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
