// SPDX-License-Identifier: MIT
/// Formulas counted, read and written, beside a Boost.Spirit X3 grammar for the plain subset (runs of letters with a
/// multiple, counts raised or on the line, single deletions) and beside one scalar pass over the characters. Every
/// bench handles the same texts in the same run: read the ratios. The grammar knows neither J and U nor order, doubts,
/// columns of errors or which leaf is gone, so it does less for its time.
#include <bifolium/collation.hpp>

#include "ratios.hpp"

#include <array>
#include <benchmark/benchmark.h>
#include <boost/fusion/include/adapt_struct.hpp>
#include <boost/optional.hpp>
#include <boost/spirit/home/x3.hpp>
#include <regex>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// Formulas of the shapes catalogues have.
std::array<std::string, 8> const formulas{"a-k8",         "A⁴(-A1) B-G⁴ H²", "a8 b-g6 h8 i-z6",
                                          "A² B-5H⁴ 5I²", "a-x⁸ y⁶ A-P⁸ Q⁶", "A-K8 L4 M-Z8 2A-2Z8 3A2(-3A2)",
                                          "A⁶ B-H¹²",     "A-H⁴ I²"};
std::size_t bytes() {
  std::size_t sum = 0;
  for (auto const& text : formulas) sum += text.size();
  return sum;
}

namespace x3 = boost::spirit::x3;

struct PlainMark {
  unsigned multiple{};
  char letter{};
};
struct PlainLeaf {
  PlainMark mark;
  unsigned leaf{};
};
struct PlainElement {
  PlainMark first;
  boost::optional<PlainMark> last;
  unsigned leaves{};
  std::vector<PlainLeaf> gone;
};
} // namespace
BOOST_FUSION_ADAPT_STRUCT(PlainMark, multiple, letter)
BOOST_FUSION_ADAPT_STRUCT(PlainLeaf, mark, leaf)
BOOST_FUSION_ADAPT_STRUCT(PlainElement, first, last, leaves, gone)
namespace {

struct RaisedDigit : x3::symbols<unsigned> {
  RaisedDigit() {
    unsigned value = 0;
    for (auto digit : {"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"}) add(digit, value++);
  }
} const raised_digit;

auto const add_digit = [](auto& context) { x3::_val(context) = x3::_val(context) * 10 + x3::_attr(context); };
auto const raised = x3::rule<struct RaisedRule, unsigned>{"raised"} = +raised_digit[add_digit];
auto const figure = x3::rule<struct FigureRule, unsigned>{"figure"} = x3::uint_ | raised;
auto const mark = x3::rule<struct MarkRule, PlainMark>{"mark"} = (x3::uint_ | x3::attr(1U)) >> x3::alpha;
auto const gone_leaf = x3::rule<struct LeafRule, PlainLeaf>{"leaf"} = "(-" >> mark >> x3::uint_ >> ')';
auto const element = x3::rule<struct ElementRule, PlainElement>{"element"} = mark >> -('-' >> mark) >> figure >>
                                                                             *gone_leaf;

int place_of(PlainMark const& m) {
  auto const letter = (m.letter | 0x20) - 'a' + 1;
  return static_cast<int>(m.multiple - 1) * 23 + letter - (letter > 10) - (letter > 21) - (letter > 23);
}
/// Reading into a vector of elements.
bool read_with_x3(std::string const& text, std::vector<PlainElement>& elements) {
  auto begin = text.begin();
  return x3::parse(begin, text.end(), element % ' ', elements) && begin == text.end();
}
/// Counting with semantic actions; nothing is kept but the sum.
bool count_with_x3(std::string const& text, long& sum) {
  int first = 0, last = 0;
  auto const one = [&](auto& context) { first = last = place_of(x3::_attr(context)); };
  auto const two = [&](auto& context) { last = place_of(x3::_attr(context)); };
  auto const leaves = [&](auto& context) { sum += (last - first + 1) * static_cast<long>(x3::_attr(context)); };
  auto const less = [&](auto&) { --sum; };
  auto const run = mark[one] >> -('-' >> mark[two]) >> figure[leaves] >> *gone_leaf[less];
  auto begin = text.begin();
  return x3::parse(begin, text.end(), run % ' ') && begin == text.end();
}
/// What is written first, and often last, in catalogue software: a pattern for the plain subset, over and over.
bool count_with_regex(std::string const& text, long& sum) {
  static std::regex const pattern{
      "(\\d*)([A-Za-z])(?:-(\\d*)([A-Za-z]))?((?:\\d|⁰|¹|²|³|⁴|⁵|⁶|⁷|⁸|⁹)+)(\\(-\\d*[A-Za-z]\\d+\\))* ?"};
  auto const value_of = [](std::string const& digits) {
    long value = 0;
    for (std::size_t i = 0; i < digits.size();) {
      auto const c = decode(digits, i);
      auto const raised_figure = superscript_digit(c.value);
      value = value * 10 + (raised_figure ? *raised_figure : static_cast<long>(c.value) - '0');
      i += c.bytes;
    }
    return value;
  };
  auto const place = [&](std::string const& multiple, std::string const& letter) {
    return place_of({multiple.empty() ? 1U : static_cast<unsigned>(value_of(multiple)), letter[0]});
  };
  std::ptrdiff_t behind = 0;
  for (std::sregex_iterator at{text.begin(), text.end(), pattern}, end; at != end; ++at) {
    if (at->position() != behind) return false;
    behind = at->position() + at->length();
    auto const first = place((*at)[1], (*at)[2]), last = (*at)[4].matched ? place((*at)[3], (*at)[4]) : first;
    sum += (last - first + 1) * value_of((*at)[5]) - ((*at)[6].matched ? 1 : 0);
  }
  return behind == static_cast<std::ptrdiff_t>(text.size());
}
/// The least a reader can do: look at each character once, one after the other.
std::uint32_t pass_over(std::string_view text) {
  std::uint32_t sum = 0;
  for (std::size_t i = 0; i < text.size();) {
    auto const c = decode(text, i);
    sum += static_cast<std::uint32_t>(c.value);
    benchmark::DoNotOptimize(sum); // one at a time: the loop must not be vectorised
    i += c.bytes;
  }
  return sum;
}

template <class Each> void over_formulas(benchmark::State& state, Each&& each) {
  for (auto _ : state)
    for (auto const& text : formulas) each(text);
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(bytes()));
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(formulas.size()));
}

void count_bifolium(benchmark::State& state) {
  over_formulas(state, [](auto const& text) { benchmark::DoNotOptimize(count_formula(text)); });
}
void count_x3(benchmark::State& state) {
  for (auto const& text : formulas) { // both must give one answer before their times mean anything
    long sum = 0;
    if (!count_with_x3(text, sum) || sum != count_formula(text)->leaves)
      return state.SkipWithError("the counts differ");
  }
  over_formulas(state, [](auto const& text) {
    long sum = 0;
    benchmark::DoNotOptimize(count_with_x3(text, sum));
    benchmark::DoNotOptimize(sum);
  });
}
void count_regex(benchmark::State& state) {
  for (auto const& text : formulas) {
    long sum = 0;
    if (!count_with_regex(text, sum) || sum != count_formula(text)->leaves)
      return state.SkipWithError("the counts differ");
  }
  over_formulas(state, [](auto const& text) {
    long sum = 0;
    benchmark::DoNotOptimize(count_with_regex(text, sum));
    benchmark::DoNotOptimize(sum);
  });
}
void pass_over_characters(benchmark::State& state) {
  over_formulas(state, [](auto const& text) { benchmark::DoNotOptimize(pass_over(text)); });
}
void read_bifolium(benchmark::State& state) {
  over_formulas(state, [](auto const& text) { benchmark::DoNotOptimize(read_formula(text)); });
}
void read_x3(benchmark::State& state) {
  for (auto const& text : formulas) {
    std::vector<PlainElement> elements;
    if (!read_with_x3(text, elements) || elements.size() != (*read_formula(text)).runs().size())
      return state.SkipWithError("the runs differ");
  }
  over_formulas(state, [](auto const& text) {
    std::vector<PlainElement> elements;
    benchmark::DoNotOptimize(read_with_x3(text, elements));
    benchmark::DoNotOptimize(elements.data());
  });
}
void write_bifolium(benchmark::State& state) {
  std::vector<Formula> read;
  for (auto const& text : formulas) read.push_back(*read_formula(text));
  for (auto _ : state)
    for (auto const& formula : read) benchmark::DoNotOptimize(write_formula(formula));
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(bytes()));
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(formulas.size()));
}
/// Cost against length, 10 bytes to 1 MB: the exponent is that of the fit.
void count_growth(benchmark::State& state) {
  std::string text;
  while (text.size() < static_cast<std::size_t>(state.range(0))) text += "A-K8 L4; ";
  for (auto _ : state) benchmark::DoNotOptimize(count_formula(text));
  state.SetComplexityN(state.range(0));
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(text.size()));
}
void read_growth(benchmark::State& state) {
  std::string text;
  while (text.size() < static_cast<std::size_t>(state.range(0))) text += "A-K8 L4; ";
  for (auto _ : state) benchmark::DoNotOptimize(read_formula(text));
  state.SetComplexityN(state.range(0));
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(text.size()));
}

void write_growth(benchmark::State& state) {
  std::string text;
  while (text.size() < static_cast<std::size_t>(state.range(0))) text += "A-K8 L4; ";
  auto const formula = *read_formula(text);
  for (auto _ : state) benchmark::DoNotOptimize(write_formula(formula));
  state.SetComplexityN(state.range(0));
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(text.size()));
}

BENCHMARK(pass_over_characters);
BENCHMARK(count_bifolium);
BENCHMARK(count_x3);
BENCHMARK(count_regex);
BENCHMARK(read_bifolium);
BENCHMARK(read_x3);
BENCHMARK(write_bifolium);
BENCHMARK(count_growth)->RangeMultiplier(10)->Range(10, 1000000)->Complexity();
BENCHMARK(read_growth)->RangeMultiplier(10)->Range(10, 1000000)->Complexity();
BENCHMARK(write_growth)->RangeMultiplier(10)->Range(10, 1000000)->Complexity();

} // namespace

int main(int count, char** arguments) {
  return bench::run(count, arguments,
                    {{"a formula counted", "count_bifolium", "count_x3", "a Boost.Spirit X3 grammar", "at most 0.25"},
                     {"a formula counted", "count_bifolium", "count_regex", "std::regex", ""},
                     {"a formula counted", "count_bifolium", "pass_over_characters",
                      "one pass over the characters, not vectorised", ""},
                     {"a formula read", "read_bifolium", "read_x3", "a Boost.Spirit X3 grammar", "at most 1"},
                     {"a formula written", "write_bifolium", "pass_over_characters",
                      "one pass over the characters, not vectorised", ""}});
}
