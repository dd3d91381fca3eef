// SPDX-License-Identifier: MIT
/// Which leaves bear a signature. A statement of signing gives the rule for any gathering, `$`, and what departs from it:
/// [$4 (-A3, B4; +C5) signed; missigning V4 as U4]. `$4` is the first four leaves, `$1,3` the first and the third alone,
/// `$½` half the leaves of each gathering, `$½+1` one more (the last two: common practice, no source). Whether
/// the numbers were Roman or arabic the statement does not say. Signing does not count leaves: the formula does.
/// Made by reading: record/read_signing.hpp; written by record/write_signing.hpp.
#pragma once

#include <bifolium/collation/reference.hpp>

namespace bifolium {
inline namespace v0 {

/// The mark of some gathering, or `$`, of any; and a leaf of it, 0 for the whole gathering.
struct SigningPlace {
  bool any{};              ///< `$`: of whatever gathering
  Signature gathering{};   ///< whose mark it is; of no meaning with `any`
  int leaf{};              ///< in the gathering, from 1; 0 for all of it
  std::uint32_t column{1}; ///< where it is in the statement, in code points from 1; not compared
  friend constexpr bool operator==(SigningPlace const& a, SigningPlace const& b) {
    return a.any == b.any && a.gathering == b.gathering && a.leaf == b.leaf;
  }
};
/// A leaf that is signed against the rule, or is not.
struct SigningException {
  bool is_signed{};     ///< + or "signed"; else − or "unsigned"
  SigningPlace place{}; ///< the leaf, or all leaves of a gathering
  friend constexpr bool operator==(SigningException const&, SigningException const&) = default;
};
/// A leaf that bears another mark than its own.
struct Missigned {
  SigningPlace place{}; ///< the leaf; never a whole gathering
  std::string as{};     ///< as printed: U4, $* (with $ for the letter of the gathering)
  friend bool operator==(Missigned const&, Missigned const&) = default;
};
/// A statement of signing. Equality leaves doubts out.
struct Signing {
  int first{};                                ///< $4: the first four leaves; 0 where leaves are listed or halves signed
  bool half{};                                ///< $½
  int beyond_half{};                          ///< 1 for $½+1
  std::vector<int> listed{};                  ///< $1,3
  std::vector<SigningException> exceptions{}; ///< in the order of the statement: a later one overrules
  std::vector<Missigned> missigned{};         ///< leaves that bear another mark than their own

  /// The rule alone, for leaf `leaf` of a gathering of `leaves`. pre: 1 <= leaf <= leaves.
  [[nodiscard]] bool by_rule(int leaf, int leaves) const {
    if (half) return leaf <= leaves / 2 + beyond_half;
    for (int one : listed)
      if (one == leaf) return true;
    return leaf <= first;
  }
  /// What is doubtful: exceptions of leaves that are not there, and exceptions that say what the rule says. `signing_of`
  /// gives them, since only a formula can tell.
  [[nodiscard]] std::vector<Error> const& warnings() const noexcept { return warnings_; }
  /// Adds a doubt; for readers.
  void warn(Error const& doubt) { warnings_.push_back(doubt); }

  friend bool operator==(Signing const& a, Signing const& b) {
    return a.first == b.first && a.half == b.half && a.beyond_half == b.beyond_half && a.listed == b.listed &&
           a.exceptions == b.exceptions && a.missigned == b.missigned;
  }

private:
  std::vector<Error> warnings_{};
};

/// Whether a leaf is signed, and how.
struct LeafSigned {
  bool is_signed{};        ///< the leaf bears a mark, its own or a wrong one
  bool against_the_rule{}; ///< an exception says so
  std::string as{};        ///< the mark it bears: "A3"; empty where it bears none
  bool missigned{};        ///< `as` is not its own
  friend bool operator==(LeafSigned const&, LeafSigned const&) = default;
};

namespace detail {

inline bool stands_for(IdealCopy const& book, SigningPlace const& place, LeafOfBook const& leaf) {
  if (place.leaf != 0 && place.leaf != leaf.leaf) return false;
  if (place.any) return true;
  auto const found = book.find(place.gathering);
  return found && found->gathering == leaf.gathering;
}
/// No mark was printed in the gathering: its signature is the bibliographer's.
inline bool is_unsigned(IdealCopy const& book, GatheringAt at) {
  auto const& run = book.runs()[at.run];
  auto const mark = run.first.mark();
  bool const at_first = at.index == 0, at_last = at.index + 1 == run.gatherings;
  return run.unsigned_throughout || mark == Mark::pi || mark == Mark::chi || (run.first_inferred && at_first) ||
         (run.last_inferred && at_last);
}
/// The leaf as a statement names it: $, $3, A3, and with a stroke where the mark is a number, 2/3.
inline std::string place_words(SigningPlace const& place) {
  std::string text = place.any ? std::string{"$"} : std::string{to_text(place.gathering).view()};
  if (!place.any && place.gathering.mark() == Mark::number && place.leaf > 0) text += '/';
  if (place.leaf > 0) text += std::to_string(place.leaf);
  return text;
}

} // namespace detail

/// Whether a leaf is signed, by the statement; missing for a leaf that the ideal copy does not have. In a gathering whose signature is
/// inferred ([A], π) no leaf is signed unless the statement names it. An inserted leaf bears the name it was given, and
/// none where it has none; an inserted gathering is signed by the rule.
[[nodiscard]] inline std::optional<LeafSigned> leaf_signed(IdealCopy const& book, Signing const& signing,
                                                           LeafOfBook const& leaf) {
  if (!book.leaf_number(leaf)) return std::nullopt;
  LeafSigned result;
  auto const own = write_reference(book, {leaf, LeafSide::not_said});
  if (leaf.inserted > 0) {
    auto const one = book.inserted(leaf);
    if (!one || !one->insertion.named) return result;
    auto const& name = one->insertion.name;
    if (name.mark() == Mark::pi || name.mark() == Mark::chi) return result;
    bool const gathering = one->insertion.joined == Joined::gathering;
    result.is_signed = !gathering || signing.by_rule(one->number, one->insertion.leaves);
    if (!result.is_signed) return result;
    result.as = name.mark() == Mark::printed ? std::string{name.text()} : std::string{to_text(name).view()};
    if (gathering || one->insertion.first_figure > 0) result.as += std::to_string(one->figure());
    return result;
  }
  bool const by_rule =
      !detail::is_unsigned(book, leaf.gathering) && signing.by_rule(leaf.leaf, book.leaves_folded(leaf.gathering));
  result.is_signed = by_rule;
  for (auto const& exception : signing.exceptions) // a later one overrules: (-B; +B2)
    if (detail::stands_for(book, exception.place, leaf)) result.is_signed = exception.is_signed;
  result.against_the_rule = result.is_signed != by_rule;
  if (result.is_signed) result.as = own;
  for (auto const& wrong : signing.missigned)
    if (wrong.place.leaf != 0 && detail::stands_for(book, wrong.place, leaf) &&
        (!wrong.place.any || !detail::is_unsigned(book, leaf.gathering))) {
      result.is_signed = result.missigned = true;
      result.as.clear();
      for (char c : wrong.as)
        if (c == '$')
          result.as += to_text(book.signature(leaf.gathering)).view();
        else
          result.as += c;
    }
  return result;
}

/// "A3 is signed A3", "V4 is missigned U4", "B2 is not signed, against the rule".
[[nodiscard]] inline std::string to_words(IdealCopy const& book, LeafOfBook const& leaf, LeafSigned const& how) {
  auto text = write_reference(book, {leaf, LeafSide::not_said});
  if (!how.is_signed)
    text += " is not signed";
  else
    text += (how.missigned ? " is missigned " : " is signed ") + how.as;
  if (how.against_the_rule) text += ", against the rule";
  return text;
}

} // namespace v0
} // namespace bifolium
