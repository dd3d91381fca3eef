// SPDX-License-Identifier: MIT
/// Says which leaves are signed. A statement of signing gives the rule for any gathering, written `$`, and the
/// exceptions: [$4 (-A3, B4; +C5) signed; missigning V4 as U4]. `$4` means the first four leaves, `$1,3` only the first
/// and the third, `$½` half the leaves of each gathering, `$½+1` one more (the last two are common practice, no
/// source). It may say whether the numbers are Roman or arabic. Signing does not count leaves; the formula does.
/// record/read_signing.hpp makes it from a text, record/write_signing.hpp writes it.
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/core/character_references.hpp>
#include <bifolium/core/error.hpp>
#include <bifolium/core/text_place.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf of a gathering, or the whole gathering. The gathering has a mark, or is any gathering, written `$`. A
/// statement may also name the title leaf, (−title), without its mark: it is taken for the first leaf of the book
/// that is not noted as blank.
struct SigningPlace {
  bool any{};                ///< true for `$`: any gathering
  Signature gathering{};     ///< the mark of the gathering; it has no meaning if `any` or `title` is true
  std::optional<int> leaf{}; ///< the leaf in the gathering, from 1; no value for all leaves
  TextPlace at{};            ///< the line and the column in the statement; comparison ignores them
  bool title{};              ///< true for the title leaf: no gathering and no leaf is named
  friend constexpr bool operator==(SigningPlace const& a, SigningPlace const& b) {
    return a.any == b.any && a.title == b.title && a.gathering == b.gathering && a.leaf == b.leaf;
  }
};
/// A leaf that is signed, or is not signed, against the rule.
struct SigningException {
  bool is_signed{};     ///< true for + or "signed", false for − or "unsigned"
  SigningPlace place{}; ///< the leaf, or all leaves of a gathering
  friend constexpr bool operator==(SigningException const&, SigningException const&) = default;
};
/// A leaf with another mark than its own.
struct Missigned {
  SigningPlace place{}; ///< the leaf; never a whole gathering
  std::string as{};     ///< the mark as printed: U4, or $* with $ for the letter of the gathering
  friend bool operator==(Missigned const&, Missigned const&) = default;
};
/// The numerals in which the leaves of a gathering are numbered: B2 or B ij.
enum class SigningNumerals : std::uint8_t {
  not_said,
  arabic,
  roman,
  both ///< some leaves in the one, some in the other
};
/// A statement of signing. Comparison ignores doubts.
struct Signing {
  /// 4 for $4: the first four leaves; no value if leaves are listed or half of them are signed
  std::optional<int> first{};
  bool half{};               ///< true for $½
  int beyond_half{};         ///< 1 for $½+1
  std::vector<int> listed{}; ///< the leaves listed in $1,3
  std::optional<int> of{};   ///< 4 for $2 (of 4): the rule is said of gatherings of four leaves
  /// in the order of the statement; a later exception overrules an earlier one
  std::vector<SigningException> exceptions{};
  std::vector<Missigned> missigned{}; ///< leaves with another mark than their own
  SigningNumerals numerals{};         ///< the numerals of the leaves

  /// Returns true if the rule alone says that leaf `leaf` of a gathering of `leaves` is signed. Precondition: 1 <= leaf
  /// <= leaves.
  [[nodiscard]] bool by_rule(int leaf, int leaves) const {
    if (half) return leaf <= leaves / 2 + beyond_half;
    for (int one : listed)
      if (one == leaf) return true;
    return first && leaf <= *first;
  }
  /// Returns the doubts: exceptions for leaves that do not exist, and exceptions that repeat the rule. `signing_of`
  /// adds them, since they can only be found with a formula.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND { return warnings_; }
  /// Returns the doubts of a temporary statement by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<std::vector<Error>&&>(warnings_); }
  /// Adds a doubt. Readers of statements call it.
  void warn(Error const& doubt) { warnings_.push_back(doubt); }
  /// Moves its places from a text of characters into the text with the references. Readers of statements call it.
  void move_back(TextOfCharacters const& text) { text.move_back(warnings_); }

  friend bool operator==(Signing const& a, Signing const& b) {
    return a.first == b.first && a.half == b.half && a.beyond_half == b.beyond_half && a.listed == b.listed &&
           a.of == b.of && a.exceptions == b.exceptions && a.missigned == b.missigned && a.numerals == b.numerals;
  }

private:
  std::vector<Error> warnings_{};
};

/// Whether a leaf is signed, and with which mark.
struct LeafSigned {
  bool is_signed{};                ///< true if the leaf has a mark, its own or a wrong one
  bool against_the_rule{};         ///< true if an exception decides it
  std::optional<std::string> as{}; ///< the mark on the leaf, if it has one: "A3"
  bool missigned{};                ///< true if `as` is not its own mark
  friend bool operator==(LeafSigned const&, LeafSigned const&) = default;
};

namespace detail {

/// Returns the leaf that is taken for the title leaf, or no value if there is none.
inline std::optional<LeafOfBook> title_leaf(IdealCopy const& book) {
  for (auto const& leaf : book)
    if (!book.is_blank(leaf)) return leaf;
  return std::nullopt;
}
inline bool stands_for(IdealCopy const& book, SigningPlace const& place, LeafOfBook const& leaf) {
  if (place.title) return title_leaf(book) == leaf;
  if (place.leaf && *place.leaf != leaf.leaf) return false;
  if (place.any) return true;
  auto const found = book.find(place.gathering);
  return found && found->gathering == leaf.gathering;
}
/// Returns true if the gathering has no printed mark: its signature was supplied by the bibliographer.
inline bool is_unsigned(IdealCopy const& book, GatheringAt at) {
  auto const& run = book.runs()[at.run];
  auto const mark = run.first.mark();
  bool const at_first = at.index == 0, at_last = at.index + 1 == run.gatherings;
  return run.unsigned_throughout || mark == Mark::pi || mark == Mark::chi || (run.first_inferred && at_first) ||
         (run.last_inferred && at_last);
}
/// Writes a leaf as a statement names it: $, $3, A3; with a stroke if the mark is a number: 2/3.
inline std::string place_words(SigningPlace const& place) {
  if (place.title) return "title";
  std::string text = place.any ? std::string{"$"} : std::string{to_text(place.gathering).view()};
  if (!place.any && place.gathering.mark() == Mark::number && place.leaf) text += '/';
  if (place.leaf) text += std::to_string(*place.leaf);
  return text;
}

} // namespace detail

/// Returns whether a leaf is signed according to the statement, or no value for a leaf that the ideal copy does not
/// have. In a gathering whose signature is inferred ([A], π), a leaf is signed only if the statement names it. An
/// inserted leaf has the name that it was given, or none. An inserted gathering follows the rule.
[[nodiscard]] inline std::optional<LeafSigned> leaf_signed(IdealCopy const& book, Signing const& signing,
                                                           LeafOfBook const& leaf) {
  if (!book.leaf_number(leaf)) return std::nullopt;
  LeafSigned result;
  auto const own = write_reference(book, {leaf, LeafSide::not_said});
  if (leaf.inserted) {
    auto const one = book.inserted(leaf);
    if (!one || !one->insertion.name) return result;
    auto const& name = *one->insertion.name;
    if (name.mark() == Mark::pi || name.mark() == Mark::chi) return result;
    bool const gathering = one->insertion.joined == Joined::gathering;
    result.is_signed = !gathering || signing.by_rule(one->figure(), one->insertion.leaves_folded());
    if (!result.is_signed) return result;
    result.as = name.mark() == Mark::printed ? std::string{name.text()} : std::string{to_text(name).view()};
    if (gathering || one->insertion.first_figure) *result.as += std::to_string(one->figure());
    return result;
  }
  bool const by_rule =
      !detail::is_unsigned(book, leaf.gathering) && signing.by_rule(leaf.leaf, book.leaves_folded(leaf.gathering));
  result.is_signed = by_rule;
  for (auto const& exception : signing.exceptions) // a later exception overrules an earlier one: (-B; +B2)
    if (detail::stands_for(book, exception.place, leaf)) result.is_signed = exception.is_signed;
  result.against_the_rule = result.is_signed != by_rule;
  if (result.is_signed) result.as = own;
  for (auto const& wrong : signing.missigned)
    if (wrong.place.leaf && detail::stands_for(book, wrong.place, leaf) &&
        (!wrong.place.any || !detail::is_unsigned(book, leaf.gathering))) {
      result.is_signed = result.missigned = true;
      std::string as;
      for (char c : wrong.as)
        if (c == '$')
          as += to_text(book.signature(leaf.gathering)).view();
        else
          as += c;
      result.as = as;
    }
  return result;
}

/// Describes the signing of a leaf: "A3 is signed A3", "V4 is missigned U4", "B2 is not signed, against the rule".
[[nodiscard]] inline std::string to_words(IdealCopy const& book, LeafOfBook const& leaf, LeafSigned const& how) {
  auto text = write_reference(book, {leaf, LeafSide::not_said});
  if (how.as)
    text += (how.missigned ? " is missigned " : " is signed ") + *how.as;
  else
    text += " is not signed";
  if (how.against_the_rule) text += ", against the rule";
  return text;
}

} // namespace v0
} // namespace bifolium
