// SPDX-License-Identifier: MIT
/// Formulas counted, read and written, beside a Boost.Spirit X3 grammar for the plain subset (runs of single letters with
/// a multiple, raised or flat counts, (-A1)) and beside one scalar pass over the characters. Read the ratios: every bench
/// of a group handles the same texts in the same run. The grammar checks no order of letters and keeps no signatures.
#include <bifolium/collation.hpp>

#include <array>
#include <benchmark/benchmark.h>
#include <boost/spirit/home/x3.hpp>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// Formulas of the shapes a catalogue has, flat so that both sides read the same bytes.
std::array<std::string, 6> const formulas{"a-k8",         "A4(-A1) B-G4 H2", "a8 b-g6 h8 i-z6",
                                          "A2 B-5H4 5I2", "a-x8 y6 A-P8 Q6", "A-K8 L4 M-Z8 2A-2Z8 3A2(-3A2)"};
std::size_t bytes() {
  std::size_t sum = 0;
  for (auto const& text : formulas) sum += text.size();
  return sum;
}

namespace x3 = boost::spirit::x3;
struct PlainElement {
  int first{}, last{}, leaves{};
};
int letter_of(char c) { return (c | 0x20) - 'a' + 1; }

/// Counting with semantic actions; nothing is kept but the sum.
bool count_with_x3(std::string const& text, long& sum) {
  int multiple = 1, first = 0, last = 0;
  auto const reset = [&](auto&) { multiple = 1; };
  auto const times = [&](auto& context) { multiple = static_cast<int>(x3::_attr(context)); };
  auto const one = [&](auto& context) { first = last = (multiple - 1) * 23 + letter_of(x3::_attr(context)); };
  auto const two = [&](auto& context) { last = (multiple - 1) * 23 + letter_of(x3::_attr(context)); };
  auto const leaves = [&](auto& context) {
    sum += static_cast<long>(last - first + 1) * static_cast<long>(x3::_attr(context));
  };
  auto const gone = [&](auto&) { --sum; };
  auto const figure = x3::eps[reset] >> -x3::uint_[times];
  auto const change = x3::lit('(') >> '-' >> -x3::uint_ >> x3::alpha >> x3::uint_[gone] >> ')';
  auto const run = figure >> x3::alpha[one] >> -('-' >> figure >> x3::alpha[two]) >> x3::uint_[leaves] >> *change;
  auto begin = text.begin();
  return x3::parse(begin, text.end(), run % ' ') && begin == text.end();
}
/// Reading into a vector of elements.
bool read_with_x3(std::string const& text, std::vector<PlainElement>& elements) {
  int multiple = 1;
  PlainElement element;
  auto const reset = [&](auto&) { multiple = 1; };
  auto const times = [&](auto& context) { multiple = static_cast<int>(x3::_attr(context)); };
  auto const one = [&](auto& context) {
    element.first = element.last = (multiple - 1) * 23 + letter_of(x3::_attr(context));
  };
  auto const two = [&](auto& context) { element.last = (multiple - 1) * 23 + letter_of(x3::_attr(context)); };
  auto const leaves = [&](auto& context) {
    element.leaves = static_cast<int>(x3::_attr(context));
    elements.push_back(element);
  };
  auto const gone = [&](auto&) { --elements.back().leaves; };
  auto const figure = x3::eps[reset] >> -x3::uint_[times];
  auto const change = x3::lit('(') >> '-' >> -x3::uint_ >> x3::alpha >> x3::uint_[gone] >> ')';
  auto const run = figure >> x3::alpha[one] >> -('-' >> figure >> x3::alpha[two]) >> x3::uint_[leaves] >> *change;
  auto begin = text.begin();
  return x3::parse(begin, text.end(), run % ' ') && begin == text.end();
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
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * bytes()));
  state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations() * formulas.size()));
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
void pass_over_characters(benchmark::State& state) {
  over_formulas(state, [](auto const& text) { benchmark::DoNotOptimize(pass_over(text)); });
}
void read_bifolium(benchmark::State& state) {
  over_formulas(state, [](auto const& text) { benchmark::DoNotOptimize(read_formula(text)); });
}
void read_x3(benchmark::State& state) {
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
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * bytes()));
  state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations() * formulas.size()));
}
/// Cost against length, 10 bytes to 1 MB: the exponent is that of the fit.
void count_growth(benchmark::State& state) {
  std::string text;
  while (text.size() < static_cast<std::size_t>(state.range(0))) text += "A-K8 L4; ";
  for (auto _ : state) benchmark::DoNotOptimize(count_formula(text));
  state.SetComplexityN(state.range(0));
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * text.size()));
}
void read_growth(benchmark::State& state) {
  std::string text;
  while (text.size() < static_cast<std::size_t>(state.range(0))) text += "A-K8 L4; ";
  for (auto _ : state) benchmark::DoNotOptimize(read_formula(text));
  state.SetComplexityN(state.range(0));
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * text.size()));
}

BENCHMARK(pass_over_characters);
BENCHMARK(count_bifolium);
BENCHMARK(count_x3);
BENCHMARK(read_bifolium);
BENCHMARK(read_x3);
BENCHMARK(write_bifolium);
BENCHMARK(count_growth)->RangeMultiplier(10)->Range(10, 1000000)->Complexity();
BENCHMARK(read_growth)->RangeMultiplier(10)->Range(10, 1000000)->Complexity();

} // namespace
