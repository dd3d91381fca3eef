// SPDX-License-Identifier: MIT
/// Reads a statement of place: divides it into words, finds the longest names among them, and evaluates the words about
/// each name.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/core/title_page_words.hpp>
#include <bifolium/paper/detail/place_index.hpp>
#include <bifolium/paper/detail/words_beside_place.hpp>
#include <bifolium/paper/stated_place.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PlaceReader {
  struct Word {
    TextSpan at{};
    int group{};      // words of one name have no comma or bracket between them
    char parted{};    // what is between the group and the one before
    bool bracketed{}; // true if the word is in brackets
    bool capital{}, in_name{};
    std::string key{};
  };
  /// A name in the text, with the places that it can mean.
  struct Found {
    NamedPlace named{};
    bool country{}, bracketed{};
    std::size_t first{}, last{}; // indices of its words
    bool or_next{};              // the next name is that of another place that it may be
  };
  static constexpr std::size_t longest_name = 6; // in words

  TextCursor cursor_;
  std::vector<Word> words_{};
  std::vector<Found> found_{};
  StatedPlace read_{};
  bool reprinted_{}, any_capital_{};

  [[nodiscard]] Error error(Problem problem, TextSpan span, std::int64_t limit = 0) {
    return cursor_.error(problem, span, limit);
  }

  void part_into_words() {
    int group = 0, depth = 0;
    char parted = '\0';
    for (; !cursor_.at_end(); cursor_.skip(cursor_.character().bytes)) {
      auto const c = cursor_.character();
      auto const key = plain_letters(c.value);
      bool const combining = c.value >= 0x300 && c.value < 0x370;
      auto const at = cursor_.at(), end = at + c.bytes;
      if (!key.empty() || combining) {
        bool const goes_on = !words_.empty() && words_.back().at.to == at;
        if (!goes_on)
          words_.push_back(
              {{at, at}, group, parted, depth > 0, c.value < 0x80 ? is_capital(cursor_.peek()) : true, {}});
        words_.back().at.to = end;
        words_.back().key += key;
        any_capital_ = any_capital_ || words_.back().capital;
      } else if (c.value == '[' || c.value == '(') {
        ++depth, ++group, parted = '(';
      } else if (c.value == ']' || c.value == ')') {
        depth = depth > 0 ? depth - 1 : 0;
        ++group, parted = ')';
      } else if (c.value == ',' || c.value == ';' || c.value == ':' || c.value == '/' || c.value == '=')
        ++group, parted = static_cast<char>(c.value);
    }
  }
  /// Returns true if the words from `first` have these keys and belong to one group.
  [[nodiscard]] bool words_are(std::size_t first, std::initializer_list<std::string_view> keys) const {
    auto i = first;
    for (auto key : keys) {
      if (i == words_.size() || words_[i].key != key || words_[i].group != words_[first].group) return false;
      ++i;
    }
    return true;
  }
  /// Returns the number of words from `first` that say that the place is unknown.
  [[nodiscard]] std::size_t not_known(std::size_t first) const {
    if (words_are(first, {"place", "of", "publication", "not", "identified"}) ||
        words_are(first, {"place", "of", "production", "not", "identified"}))
      return 5;
    for (auto const& pair :
         {std::pair{"s", "l"}, {"n", "p"}, {"o", "o"}, {"z", "p"}, {"sine", "loco"}, {"sans", "lieu"}})
      if (words_are(first, {pair.first, pair.second})) return 2;
    return words_.size() == 1 && (words_are(first, {"sl"}) || words_are(first, {"np"})) ? 1 : 0;
  }
  /// Finds the name that begins with word `first`. Returns the number of its words.
  [[nodiscard]] std::size_t name_at(std::size_t first, std::span<PlaceIndex::Entry const>& entries) const {
    std::size_t count = 0;
    std::string key;
    bool capital = !any_capital_; // a name has a capital, unless no word of the text has one
    for (auto i = first; i < words_.size() && i < first + longest_name && words_[i].group == words_[first].group; ++i) {
      key += words_[i].key;
      capital = capital || words_[i].capital;
      if (key.size() > 60) break; // longer than the longest name
      if (!capital) continue;
      if (auto const found = place_index().find(key); !found.empty()) entries = found, count = i - first + 1;
    }
    return count;
  }
  void keep(std::size_t first, std::size_t count, std::span<PlaceIndex::Entry const> entries) {
    Found found{{}, true, words_[first].bracketed, first, first + count - 1};
    found.named.at = {words_[first].at.from, words_[found.last].at.to};
    for (auto i = first; i < first + count; ++i) words_[i].in_name = true;
    for (auto const& entry : entries)
      if (entry.place == PlaceIndex::no_town)
        found.named.of_false_imprints = true;
      else {
        found.named.places.push_back(place_index().place(entry));
        found.country = found.country && place_index().is_country(entry);
      }
    found.country = found.country && !found.named.places.empty();
    found.named.supplied = found.bracketed;
    auto const before = [&](std::size_t back) { return first >= back ? words_[first - back].key : std::string{}; };
    auto const same_bracket = found.bracketed || (first > 0 && !words_[first - 1].bracketed);
    found.named.corrected =
        same_bracket && ((before(2) == "that" && before(1) == "is") || (before(2) == "i" && before(1) == "e") ||
                         before(1) == "ie" || before(1) == "recte" || before(1) == "uere" || before(1) == "really");
    auto const back = is_small_word(before(1)) ? 2U : 1U; // not at London
    found.named.called_false = before(1) == "false" || before(1) == "falsely" || before(1) == "pseudo" ||
                               is_key_of(words_of_place_denial, before(back));
    found.named.probable =
        cursor_.text().substr(found.named.at.to).starts_with("?") || is_key_of(words_of_place_doubt, before(back));
    found_.push_back(found);
  }
  static bool is_small_word(std::string_view key) {
    for (std::string_view known :
         {"a",   "at",   "in", "en", "te", "t",  "tot",   "zu",    "im",      "and", "et",
          "und", "that", "is", "i",  "e",  "ie", "recte", "false", "printed", "re",  "reprinted"})
      if (key == known) return true;
    return false;
  }
  void find_names() {
    std::size_t told = words_.size(); // the first word that is not yet listed as unread
    auto const tell = [&](std::size_t to) {
      if (told < to) read_.unread.push_back({words_[told].at.from, words_[to - 1].at.to});
      told = words_.size();
    };
    for (std::size_t i = 0; i < words_.size();) {
      std::span<PlaceIndex::Entry const> entries;
      auto const none = not_known(i);
      auto const count = none > 0 ? none : name_at(i, entries);
      reprinted_ = reprinted_ || words_[i].key == "reprinted" || words_are(i, {"re", "printed"});
      if (count > 0 || is_small_word(words_[i].key))
        tell(i);
      else if (told == words_.size())
        told = i;
      if (none > 0)
        read_.not_known = true;
      else if (count > 0)
        keep(i, count, entries);
      i += count > 0 ? count : 1;
    }
    if (told < words_.size()) read_.unread.push_back({words_[told].at.from, words_.back().at.to});
  }

  /// Returns those of `places` that are among `others`, or in the same country if `others` are countries.
  [[nodiscard]] static std::vector<Place> narrowed(std::vector<Place> const& places, Found const& by) {
    std::vector<Place> kept;
    for (auto const& place : places)
      for (auto const& other : by.named.places)
        if (place == other || (by.country && (place.country == other.country))) {
          kept.push_back(place);
          break;
        }
    return kept;
  }
  /// Returns true if a country beside a town is that of one of its places, today or in the time of the hand press.
  [[nodiscard]] static bool can_be_in(std::vector<Place> const& places, Found const& country) {
    for (auto const& place : places)
      for (auto const& other : country.named.places)
        if (place.country == other.country || is_in(place.region, other.region) ||
            (place.region != Region::anywhere && is_in(other.region, place.region)))
          return true;
    return places.empty();
  }
  /// Decides ambiguous names by a country after a town, or by a name in brackets after another.
  void settle_by_neighbours() {
    for (std::size_t i = 0; i + 1 < found_.size(); ++i) {
      auto& here = found_[i];
      auto const& next = found_[i + 1];
      bool const beside = next.first == here.last + 1 && !next.named.corrected && !next.named.called_false;
      here.or_next = next.first == here.last + 2 && is_key_of(words_of_other_place, words_[here.last + 1].key);
      if (!beside || (!next.country && !(next.bracketed && !here.bracketed))) continue;
      auto const kept = narrowed(here.named.places, next);
      if (!kept.empty())
        here.named.places = kept;
      else if (!next.country)
        found_[i + 1].named.corrected = true; // another town in brackets is the true one
      else
        here.named.qualified = !can_be_in(here.named.places, next);
    }
  }
  /// Returns true if a word beside a name may make it that of another place: it has a capital as names have, and is not
  /// known to be anything else.
  [[nodiscard]] bool may_be_of_name(std::size_t word) const {
    auto const& one = words_[word];
    return (one.capital || !any_capital_) && one.key.size() > 1 && !is_number_key(one.key) && !is_small_word(one.key) &&
           !is_title_page_word(one.at.of(cursor_.text())) && !is_key_of(words_of_place_doubt, one.key) &&
           !words_[word].in_name;
  }
  /// Returns true if the words from `word` name a part of the United States: Kentucky, N.Y.
  [[nodiscard]] bool is_of_united_states(std::size_t word) const {
    auto const& one = words_[word];
    bool const pair = word + 1 < words_.size() && words_[word + 1].group == one.group;
    return one.capital && !words_[word].in_name &&
           (is_key_of(parts_of_united_states, one.key) ||
            (pair && is_key_of(parts_of_united_states, one.key + words_[word + 1].key)));
  }
  void qualify(Found& found) const {
    auto& named = found.named;
    auto const group = words_[found.last].group;
    if (found.first > 0 && words_[found.first - 1].group == words_[found.first].group &&
        may_be_of_name(found.first - 1))
      named.qualified = true;
    auto const next = found.last + 1;
    if (next >= words_.size() || found.or_next) return;
    if (is_key_of(words_of_other_place, words_[next].key) && !words_[next].capital) named.qualified = true;
    bool const of_name = words_[next].group == group || (words_[next].group == group + 1 &&
                                                         (words_[next].parted == ',' || words_[next].parted == '('));
    if (!of_name) return;
    if (is_of_united_states(next)) {
      std::erase_if(named.places, [](Place const& place) { return place.country != "United States"; });
      named.qualified = named.places.empty();
    } else if (may_be_of_name(next) && !is_country_of(named.places, next))
      named.qualified = true;
  }
  /// Returns true if the words from `word` are the country of one of the places, which need not be in the table of names:
  /// Riga, Latvia.
  [[nodiscard]] bool is_country_of(std::vector<Place> const& places, std::size_t word) const {
    std::string key;
    for (auto i = word; i < words_.size() && i < word + longest_name && words_[i].group == words_[word].group; ++i) {
      key += words_[i].key;
      for (auto const& place : places) {
        std::string country;
        append_place_key(country, place.country);
        if (key == country) return true;
      }
    }
    return false;
  }
  [[nodiscard]] Found const* meant() const {
    Found const* best = nullptr;
    for (auto const& found : found_) {
      if (found.named.called_false) continue;
      bool const later = reprinted_ && !found.bracketed;
      if (best == nullptr || found.named.corrected || (later && !best->named.corrected)) best = &found;
    }
    return best;
  }

  /// The places that are meant, and the doubts about them.
  void settle(Found const& best) {
    auto places = best.named.places;
    auto at = best.named.at;
    bool qualified = best.named.qualified;
    for (auto const* one = &best; one->or_next; ++one) { // London or Paris
      auto const& other = one[1].named;
      at.to = other.at.to, qualified = qualified || other.qualified;
      places.insert(places.end(), other.places.begin(), other.places.end());
    }
    if (qualified) {
      auto const from = best.first > 0 ? words_[best.first - 1].at.from : at.from;
      auto const last = words_[best.last + 1 < words_.size() ? best.last + 1 : best.last].at.to;
      read_.warn(error(Problem::place_qualified, {from, last > at.to ? last : at.to}));
      return;
    }
    read_.settle(places);
    if (places.size() > 1) read_.warn(error(Problem::ambiguous_place, at, static_cast<std::int64_t>(places.size())));
    if (best.named.of_false_imprints && !best.named.supplied) read_.warn(error(Problem::fictitious_place, at));
    if (best.named.probable) read_.warn(error(Problem::place_doubted, best.named.at));
  }

public:
  explicit PlaceReader(std::string_view text) : cursor_{text} {}

  Expected<StatedPlace> read() {
    part_into_words();
    find_names();
    if (words_.empty()) return error(Problem::unexpected_end, {0, 0});
    if (found_.empty() && !read_.not_known)
      return error(Problem::unknown_place,
                   read_.unread.empty() ? TextSpan{0, cursor_.text().size()} : read_.unread.front());
    settle_by_neighbours();
    for (auto& found : found_)
      if (!found.country) qualify(found);
    if (auto const* best = meant()) settle(*best);
    for (auto const& found : found_) read_.named.push_back(found.named);
    return static_cast<StatedPlace&&>(read_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
