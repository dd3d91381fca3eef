// SPDX-License-Identifier: MIT
// Values of all kinds that the views for debuggers know. It prints each as the library writes it; debugger.sh stops in `stop` and
// compares what gdb shows.
#include <bifolium/collation.hpp>
#include <bifolium/core/fraction_text.hpp>
#include <bifolium/paper.hpp>

#include <iostream>

using namespace bifolium;

[[gnu::noinline]] void stop() { std::cout << std::flush; }

int main() {
  auto const plain = *read_signature("2A"), series = *read_signature("²πB"), small = *read_signature("c"),
             greek = *read_signature("σ"), number = *read_signature("12"), symbol = *read_signature("††"),
             name = *read_signature("[par.]"), beside = *read_signature("†A"), after = *read_signature("H*"),
             printed = *read_signature("\"G&H\""), unsigned_one = *read_signature("π"), quoted = *read_signature("'1'");
  auto const cyrillic = *read_signature("Л"), hebrew = *read_signature("טו"), two = *read_signature("xφ"),
             enclosed = Signature::letter('B').in_parentheses();
  Fraction const whole{3}, mixed{-43, 4}, part{3, 4};
  auto const length = 187_mm;
  auto const inches = 15_in;
  Sheet const sheet{312_mm, 440_mm};
  auto const octavo = *read_format("8°"), oblong = *read_format("oblong 4°"), half = *read_format("1/2°");
  ShortText<16> const text{"short"};
  auto const expected = read_format("12mo"), refused = read_format("12x");
  std::cout << plain << '\n' << series << '\n' << small << '\n' << greek << '\n' << number << '\n' << symbol << '\n';
  std::cout << name << '\n'
            << beside << '\n'
            << after << '\n'
            << printed << '\n'
            << unsigned_one << '\n'
            << quoted << '\n';
  std::cout << cyrillic << '\n' << hebrew << '\n' << two << '\n' << enclosed << '\n';
  std::cout << whole << '\n' << mixed << '\n' << part << '\n' << length << '\n' << inches << '\n' << sheet << '\n';
  std::cout << octavo << '\n' << oblong << '\n' << half << '\n' << text << '\n' << *expected << '\n';
  auto const formula = read_formula("8°: π² A–K⁸ L⁴ (−L4)");
  auto const wrong = read_formula("8°: A–K⁸ L");
  std::cout << identifier(refused.error().problem) << ' ' << formula->leaves() << ' '
            << identifier(wrong.error().problem) << '\n';
  stop();
}
