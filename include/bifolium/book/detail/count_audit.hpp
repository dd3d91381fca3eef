// SPDX-License-Identifier: MIT
/// The number of leaves, of which formula, pagination and stated leaves all speak: whether they agree, and if not, which edits
/// would make them agree. What agrees is never given a repair, and costs next to no time.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/description.hpp>
#include <bifolium/book/detail/formula_edit_text.hpp>
#include <bifolium/book/detail/page_places.hpp>
#include <bifolium/book/detail/search.hpp>
#include <bifolium/book/detail/slip_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class CountAudit {
  static constexpr std::size_t most_runs = 64, most_page_runs = 32; // a search costs the square of it
  static constexpr std::size_t most_repairs = 10;
  static constexpr double least_share = .0005; // of what comes after the first three
  Description const& book_;
  AuditWeights const& weights_;
  Audit& audit_;
  std::optional<std::int64_t> formula_leaves_{}, pages_{};
  int blanks_{};
  std::optional<Letters> read_with_{};        ///< other letters than stated make the formula agree
  std::string formula_text_{};                // with blanks for the parentheses that could not be read
  std::vector<ChangePlace> unread_changes_{}; // those, and how many leaves they seem to add
  bool on_verso_{};                           // odd page numbers would be on versos
  enum class Verdict : std::uint8_t { agrees, blank_missing, contradicts };

  [[nodiscard]] Verdict pages_verdict(std::int64_t leaves) const {
    auto const missing = 2 * leaves - *pages_;
    if (missing == 0) return Verdict::agrees;
    // "p. l." may be counted again by the numbers that follow
    if (auto const total = book_.pagination->value.total();
        total.least < total.stated && 2 * leaves >= total.least && missing <= 1)
      return Verdict::agrees;
    bool const by_leaf = book_.pagination->value.by_leaf();
    if (missing == 1 && !by_leaf) return Verdict::agrees;
    if (missing > 1 && missing <= 2 * blanks_ + 1) return Verdict::agrees; // the formula says that it is blank
    bool const may_be_blank = missing > 1 && missing <= 3 && book_.conventions.blanks != BlankLeaves::counted;
    return may_be_blank ? Verdict::blank_missing : Verdict::contradicts;
  }
  [[nodiscard]] Verdict verdict(std::optional<std::int64_t> formula) const {
    auto result = Verdict::agrees;
    auto const worse = [&](Verdict other) { result = other > result ? other : result; };
    auto const leaves = formula ? formula : book_.leaves ? std::optional{book_.leaves->value} : std::nullopt;
    if (leaves && pages_) worse(pages_verdict(*leaves));
    if (formula && book_.leaves && *formula != book_.leaves->value) {
      bool const blank = blanks_ > 0 && *formula - book_.leaves->value > 0 && *formula - book_.leaves->value <= blanks_;
      worse(blank ? Verdict::agrees : Verdict::contradicts);
    }
    return result;
  }

  void imply() {
    auto const add = [&](Field field, std::int64_t low, std::int64_t high) {
      audit_.implied.push_back({field, Implied::Quantity::leaves, low, high});
    };
    if (formula_leaves_) add(Field::formula, *formula_leaves_, *formula_leaves_);
    if (pages_) {
      auto const least = (*pages_ + 1) / 2;
      add(Field::pagination, least, book_.conventions.blanks == BlankLeaves::counted ? least : least + 1);
    }
    if (book_.leaves) add(Field::leaves, book_.leaves->value, book_.leaves->value);
  }
  /// How many leaves a parenthesis seems to add that names a gathering or leaf the formula does not have: (-A1,2) takes two.
  [[nodiscard]] static std::int32_t leaves_added_by(std::string_view parenthesis) {
    auto const inside = parenthesis.substr(1, parenthesis.size() < 2 ? 0 : parenthesis.size() - 2);
    auto const first = inside.find_first_not_of(' ');
    if (first == inside.npos) return 0;
    auto const sign = decode(inside, first).value;
    if (!is_dash(sign) && sign != 0x2212) return inside.find('+', first + 1) != inside.npos ? 1 : 0;
    std::int32_t taken = 0;
    bool counted = false, begins = true;
    for (auto i = first; i < inside.size(); ++i) {
      auto const c = inside[i];
      if (c == ',' || c == '.') {
        counted = false, begins = true;
        continue;
      }
      if (c == ' ') continue;
      // a part of the list that begins with another sign is another change
      if (begins && i > first && !is_digit(c) && !is_latin_letter(c)) begins = false, counted = true;
      if (begins && !counted && is_digit(c)) --taken, counted = true;
      if (!is_digit(c) && i > first && begins && counted) begins = false;
    }
    return taken;
  }
  void leave_out_unread() {
    formula_text_ = book_.formula->text;
    for (auto const& piece : book_.unread) {
      if (piece.field != Field::formula || piece.text.empty() || piece.text[0] != '(') continue;
      auto const end = piece.from + piece.text.size();
      if (end > formula_text_.size()) continue;
      auto const added = leaves_added_by(piece.text);
      for (auto i = piece.from; i < end; ++i) formula_text_[i] = ' ';
      unread_changes_.push_back({{piece.from, end}, added});
      *formula_leaves_ += added;
    }
  }
  /// Odd numbers are on rectos, so an even number of pages comes before page 1.
  void look_at_versos() {
    if (!pages_ || book_.pagination->value.by_leaf()) return;
    std::int64_t before = 0;
    for (auto const& run : book_.pagination->value.runs) {
      if (run.numbering == Numbering::printed && run.numerals == Numerals::arabic && before > 0) {
        if ((before + run.first) % 2 == 0) {
          on_verso_ = true;
          Finding finding{
              FindingId::numbers_begin_on_verso, Severity::doubt, FieldSet{Field::pagination}, 0, {}, {}, {}};
          finding.says = count_of(before, "page comes", "pages come") + " before page " + std::to_string(run.first) +
                         " in the pagination, so odd numbers would be on versos";
          finding.settle =
              "whether page " + std::to_string(run.first) + " is a recto, and how many pages come before it";
          audit_.findings.push_back(finding);
        }
        return;
      }
      before += run.pages();
    }
  }
  /// What the reader supplied for a gathering without a number of leaves, and how to write it out.
  void omitted_counts() {
    if (!book_.formula) return;
    bool any = false;
    for (auto const& warning : book_.formula->value.warnings()) any = any || warning.problem == Problem::count_supplied;
    if (!any) return;
    Finding note{FindingId::exponent_omitted, Severity::note, FieldSet{Field::formula}, 0, {}, {}, {}};
    note.says = "the formula has gatherings without a number of leaves, read as eight as the catalogue writes";
    if (audit_.leaves && (pages_ || book_.leaves)) {
      note.says += "; with them the fields agree";
      FormulaPlaces const places{formula_text_, book_.formula->value, book_.conventions.dialect()};
      auto shape = shape_of(book_.formula->value);
      for (std::size_t r = 0; r < shape.runs.size(); ++r) shape.runs[r].omitted = places.omitted(r);
      FormulaEditText const writer{formula_text_, book_.formula->value, places, shape};
      FormulaEdit edit;
      edit.what = FormulaEdit::What::supply_all;
      edit.a = 8;
      for (auto const& one : writer.of_all_counts(edit))
        note.edits.push_back(
            edit_of(Field::formula, SlipKind::omitted_exponent, book_.formula->text, book_.formula->column, one));
    }
    note.settle = "the number of leaves of these gatherings";
    audit_.findings.push_back(note);
  }
  [[nodiscard]] static std::string count_of(std::int64_t number, std::string_view one, std::string_view many) {
    return std::to_string(number) + ' ' + std::string{number == 1 ? one : many};
  }
  [[nodiscard]] std::string pages_say() const {
    std::string sum;
    auto const& runs = book_.pagination->value.runs;
    bool const by_leaf = book_.pagination->value.by_leaf();
    for (std::size_t r = 0; r < runs.size(); ++r)
      sum += (r == 0 ? "" : " + ") + std::to_string(by_leaf ? runs[r].count : runs[r].pages());
    auto const total = by_leaf ? *pages_ / 2 : *pages_;
    auto const counted = by_leaf ? count_of(total, "leaf", "leaves") : count_of(total, "page", "pages");
    return "the pagination has " + (runs.size() > 1 ? sum + " = " : std::string{}) + counted;
  }
  void contradiction_of_pages(std::int64_t leaves, Field with) {
    auto const missing = 2 * leaves - *pages_;
    Finding finding{
        FindingId::pages_contradict, Severity::error, FieldSet{with} | Field::pagination, -missing, {}, {}, {}};
    auto const off = missing < 0 ? -missing : missing;
    auto const by_leaf = book_.pagination->value.by_leaf();
    finding.says = (with == Field::formula ? "the formula has " : "the leaves stated are ") +
                   count_of(leaves, "leaf", "leaves") +
                   (by_leaf ? "" : " (" + count_of(2 * leaves, "page", "pages") + ')') + "; " + pages_say() + ", " +
                   std::to_string(by_leaf ? off / 2 : off) + (missing < 0 ? " too many" : " too few");
    audit_.findings.push_back(finding);
  }
  void find() {
    bool const leaves_known = formula_leaves_ || book_.leaves;
    std::int64_t const leaves = formula_leaves_ ? *formula_leaves_ : book_.leaves ? book_.leaves->value : 0;
    auto const with = formula_leaves_ ? Field::formula : Field::leaves;
    if (leaves_known && pages_) {
      auto const pages = pages_verdict(leaves);
      auto const missing = 2 * leaves - *pages_;
      if (pages == Verdict::contradicts) contradiction_of_pages(leaves, with);
      if (pages == Verdict::blank_missing) {
        Finding note{FindingId::last_blank_not_counted,
                     Severity::note,
                     FieldSet{with} | Field::pagination,
                     -missing,
                     {},
                     {},
                     {}};
        note.says = (with == Field::formula ? "the formula has " : "the leaves stated are ") +
                    count_of(leaves, "leaf", "leaves") + " and " + pages_say() + ": " +
                    count_of(missing, "page", "pages") + " too few, as when a blank leaf is not counted";
        note.settle = "whether the first or the last leaf is blank";
        audit_.findings.push_back(note);
      }
    }
    if (formula_leaves_ && book_.leaves && *formula_leaves_ != book_.leaves->value) {
      auto const more = book_.leaves->value - *formula_leaves_;
      auto const blank = more < 0 && -more <= blanks_;
      Finding finding{blank ? FindingId::last_blank_not_counted : FindingId::leaves_contradict,
                      blank ? Severity::note : Severity::error,
                      FieldSet{Field::formula} | Field::leaves,
                      more,
                      {},
                      {},
                      {}};
      finding.says = "the formula has " + count_of(*formula_leaves_, "leaf", "leaves") + "; stated " +
                     (book_.leaves->value == 1 ? "is " : "are ") + std::to_string(book_.leaves->value) + ", " +
                     std::to_string(more < 0 ? -more : more) + (more < 0 ? " too few" : " too many");
      if (book_.plates && more == book_.plates->value && more > 0) {
        finding.id = FindingId::plates_in_leaves;
        finding.fields = finding.fields | Field::plates;
        finding.says += ", just as many as there are plates";
        finding.settle = "whether plates are among the leaves counted";
      }
      audit_.findings.push_back(finding);
    }
  }

  // what the search works on, kept for writing the edits
  std::optional<FormulaPlaces> formula_places_{};
  std::optional<PagePlaces> page_places_{};
  SearchInput input_{};

  [[nodiscard]] std::optional<Formula> read_with(Letters letters) const {
    auto dialect = book_.conventions.dialect();
    dialect.letters = letters;
    auto read = read_formula(formula_text_, dialect);
    if (!read) return std::nullopt;
    return *read;
  }
  /// J, U and W as they are printed at the end of a run: a letter with no other letter beside it.
  [[nodiscard]] Letters letters_printed() const {
    Letters printed;
    std::string_view const text = formula_text_;
    int depth = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
      depth += text[i] == '(' ? 1 : text[i] == ')' && depth > 0 ? -1 : 0;
      auto const c = small_letter(text[i]);
      if (depth > 0 || (c != 'j' && c != 'u' && c != 'w')) continue;
      auto const other = [&](std::size_t k) { return is_latin_letter(text[k]) && small_letter(text[k]) != c; };
      if ((i > 0 && other(i - 1)) || (i + 1 < text.size() && other(i + 1))) continue;
      printed.j = printed.j || c == 'j';
      printed.u = printed.u || c == 'u';
      printed.w = printed.w || c == 'w';
    }
    return printed;
  }
  /// Other alphabets: as printed, which is a reading; or as the book may use them, which is a repair.
  void other_alphabets() {
    if (book_.conventions.letters) return;
    auto const printed = letters_printed();
    if (printed != Letters{}) {
      auto const other = read_with(printed);
      if (other && leaf_count(*other) != leaf_count(book_.formula->value)) add_reading(*other, real::log(.5), false);
      return;
    }
    struct Use {
      Letters letters;
      double share;
    };
    constexpr Use uses[]{{{true, true, true}, .3},   {{false, false, true}, .2}, {{true, true, false}, .2},
                         {{false, true, false}, .1}, {{true, false, false}, .1}, {{false, true, true}, .1}};
    auto const kind = weights_.in_formula[static_cast<std::size_t>(SlipKind::alphabet)] * weights_.field_wrong;
    for (auto const& use : uses)
      if (auto const other = read_with(use.letters); other && leaf_count(*other) != leaf_count(book_.formula->value))
        add_reading(*other, real::log(use.share * kind), true);
  }
  void add_reading(Formula const& formula, double weight, bool is_edit) {
    input_.formulas.push_back(shape_of(formula));
    for (auto const& change : unread_changes_) input_.formulas.back().changed += change.added;
    for (std::size_t r = 0; r < input_.formulas.back().runs.size(); ++r)
      input_.formulas.back().runs[r].omitted = formula_places_->omitted(r);
    input_.formula_weights.push_back(weight);
    input_.formula_is_edit.push_back(is_edit);
  }
  void prepare() {
    if (book_.formula) {
      auto const& formula = book_.formula->value;
      formula_places_.emplace(formula_text_, formula, book_.conventions.dialect());
      add_reading(formula, 0, false);
      other_alphabets();
      for (auto const& change : unread_changes_) formula_places_->add(change);
      for (auto const& change : formula_places_->changes()) input_.changes.push_back(change.added);
    }
    if (pages_) {
      page_places_.emplace(book_.pagination->text, book_.pagination->value);
      input_.pages = page_places_->shape();
    }
    if (book_.leaves) input_.leaves = book_.leaves->value;
    if (book_.plates) input_.plates = book_.plates->value;
    input_.blanks_noted = blanks_;
    input_.early = book_.year ? book_.year->value.to < 1501 : !pages_;
  }

  [[nodiscard]] static Edit edit_of(Field field, SlipKind kind, std::string_view text, std::uint32_t column,
                                    TextEdit const& edit) {
    return {field,
            kind,
            edit.span.from,
            edit.span.to,
            column + column_of(text, edit.span.from) - 1,
            std::string{text.substr(edit.span.from, edit.span.to - edit.span.from)},
            edit.put};
  }
  /// The edits of the formula in its text; false where they cannot be written so that they read back.
  bool write_formula_edits(FormulaVariant const& variant, Repair& repair) const {
    auto const& stated = *book_.formula;
    FormulaEditText const writer{stated.text, stated.value, *formula_places_, input_.formulas[0]};
    std::int32_t unread = 0;
    for (auto const& change : unread_changes_) unread += change.added;
    auto dialect = book_.conventions.dialect();
    if (variant.reading != 0 || variant.shape.added != input_.formulas[0].added) {
      dialect.letters = variant.shape.added;
      repair.letters = variant.shape.added;
    }
    for (int number = 0; number < 6; ++number) {
      std::vector<TextEdit> edits;
      std::vector<SlipKind> kinds;
      for (int e = 0; e < variant.count; ++e) {
        auto const& edit = variant.edits[e];
        if (edit.what == FormulaEdit::What::alphabet) continue;
        if (edit.what == FormulaEdit::What::supply_all || edit.what == FormulaEdit::What::supply_next) {
          for (auto const& one : writer.of_all_counts(edit)) edits.push_back(one), kinds.push_back(edit.kind);
          continue;
        }
        auto const one = writer.of(edit, number);
        if (!one) return false;
        edits.push_back(*one), kinds.push_back(edit.kind);
      }
      auto const text = edited(stated.text, edits);
      auto const count = count_formula(text, dialect);
      auto const without_unread =
          unread_changes_.empty() ? count : count_formula(edited(formula_text_, edits), dialect);
      if ((count && count->leaves == variant.leaves) ||
          (without_unread && without_unread->leaves + unread == variant.leaves)) {
        repair.formula = text;
        for (std::size_t i = 0; i < edits.size(); ++i)
          repair.edits.push_back(edit_of(Field::formula, kinds[i], stated.text, stated.column, edits[i]));
        return true;
      }
    }
    return false;
  }
  bool write_page_edits(PageVariant const& variant, Repair& repair) const {
    auto const& stated = *book_.pagination;
    std::vector<TextEdit> edits;
    for (int e = 0; e < variant.count; ++e) {
      if (!page_places_->complete()) return false;
      auto const one = page_places_->of(variant.edits[e]);
      if (!one) return false;
      edits.push_back(*one);
    }
    repair.pagination = edited(stated.text, edits);
    auto const read = read_extent(*repair.pagination);
    if (!read || read->pages() != variant.shape.pages()) return false;
    for (std::size_t i = 0; i < edits.size(); ++i)
      repair.edits.push_back(edit_of(Field::pagination, variant.edits[i].kind, stated.text, stated.column, edits[i]));
    return true;
  }
  bool write_leaves_edit(LeavesVariant const& variant, Repair& repair) const {
    auto const& stated = *book_.leaves;
    repair.leaves_text = stated.text;
    if (variant.count == 0) return true;
    auto const figure = std::to_string(stated.value);
    auto const at = stated.text.find(figure);
    if (at == stated.text.npos) return false;
    TextEdit const edit{{at, at + figure.size()}, std::to_string(variant.leaves)};
    repair.leaves_text = edited(stated.text, {edit});
    repair.edits.push_back(edit_of(Field::leaves, variant.kind, stated.text, stated.column, edit));
    return true;
  }
  [[nodiscard]] std::string words_of(Repair const& repair) const {
    std::string words;
    for (auto const& edit : repair.edits) words += (words.empty() ? "" : "; and ") + in_words(edit);
    if (repair.letters && *repair.letters != Letters{}) {
      words += words.empty() ? "" : "; and ";
      words += "the letters of the book include";
      if (repair.letters->j) words += " J";
      if (repair.letters->u) words += " U";
      if (repair.letters->w) words += " W";
    }
    return words.empty() ? "as it reads" : words;
  }

  /// `agrees`: as it reads the description holds together, and comes first, though something in it is unlikely.
  void propose(bool agrees) {
    Search search{input_, weights_};
    auto const& found = search.find();
    if (found.empty()) {
      audit_.share_none = 1;
      return;
    }
    auto const best = found.front().score;
    double none = real::exp(search.score_of_none() - best), total = none;
    for (auto const& one : found) total += real::exp(one.score - best);
    audit_.share_none = 1;
    for (auto const& one : found) {
      if (audit_.repairs.size() == most_repairs) break;
      if (audit_.repairs.size() >= 3 && real::exp(one.score - best) / total < least_share) break;
      Repair repair;
      repair.share = real::exp(one.score - best) / total;
      bool written = true;
      if (one.formula >= 0) {
        auto const& variant = search.formula(one);
        repair.leaves = variant.leaves;
        written = write_formula_edits(variant, repair);
      }
      if (written && one.pages >= 0) written = write_page_edits(search.pages(one), repair);
      if (written && one.leaves >= 0) {
        repair.leaves = search.leaves(one).leaves;
        written = write_leaves_edit(search.leaves(one), repair);
      }
      if (!written) continue;
      repair.says = words_of(repair);
      audit_.share_none -= repair.share;
      audit_.repairs.push_back(static_cast<Repair&&>(repair));
      for (auto i = audit_.repairs.size() - 1; agrees && i > 0 && audit_.repairs[i].edits.empty(); --i) {
        auto moved = static_cast<Repair&&>(audit_.repairs[i]);
        audit_.repairs[i] = static_cast<Repair&&>(audit_.repairs[i - 1]);
        audit_.repairs[i - 1] = static_cast<Repair&&>(moved);
      }
    }
    if (audit_.share_none < 0) audit_.share_none = 0;
  }

public:
  CountAudit(Description const& book, AuditWeights const& weights, Audit& audit)
      : book_{book}, weights_{weights}, audit_{audit} {
    if (book.formula) {
      formula_leaves_ = leaf_count(book.formula->value);
      leave_out_unread();
      blanks_ = blank_leaves_noted(book.formula->value);
    }
    if (book.pagination && !book.pagination->value.runs.empty() && !book.pagination->value.incomplete)
      pages_ = book.pagination->value.pages();
  }

  void run() {
    imply();
    auto const fields = (formula_leaves_ ? 1 : 0) + (pages_ ? 1 : 0) + (book_.leaves ? 1 : 0);
    auto result = verdict(formula_leaves_);
    if (result != Verdict::agrees && formula_leaves_ && !book_.conventions.letters)
      if (auto const printed = letters_printed(); printed != Letters{})
        if (auto const other = read_with(printed); other && verdict(leaf_count(*other)) == Verdict::agrees) {
          formula_leaves_ = leaf_count(*other);
          read_with_ = printed;
          audit_.implied[0].low = audit_.implied[0].high = *formula_leaves_;
          result = Verdict::agrees;
        }
    find();
    look_at_versos();
    if (result == Verdict::agrees)
      audit_.leaves = formula_leaves_ ? formula_leaves_
                      : book_.leaves  ? std::optional{book_.leaves->value}
                                      : std::nullopt;
    omitted_counts();
    if (result == Verdict::agrees && !on_verso_) return;
    if (fields < 2) return;
    if ((book_.formula && book_.formula->value.runs().size() > most_runs) ||
        (pages_ && book_.pagination->value.runs.size() > most_page_runs)) {
      audit_.share_none = 1;
      Finding note{
          FindingId::not_searched, Severity::note, FieldSet{Field::formula} | Field::pagination, 0, {}, {}, {}};
      note.says = "no repairs are looked for in more than " + std::to_string(most_runs) + " runs of gatherings or " +
                  std::to_string(most_page_runs) + " runs of pages";
      audit_.findings.push_back(note);
      return;
    }
    prepare();
    propose(result == Verdict::agrees);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
