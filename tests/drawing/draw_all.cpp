// SPDX-License-Identifier: MIT
// Writes one of every kind of drawing for every scheme into a directory, for programs that read drawings to judge.
//   bifolium_draw_all DIR
#include <bifolium/collation.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/fold.hpp>

#include <fstream>
#include <iostream>
#include <string>

using namespace bifolium;

namespace {

class Folder {
  std::string directory_;
  bool failed_{};
  int count_{};

public:
  explicit Folder(std::string directory) : directory_{std::move(directory)} {}
  void write(std::string const& name, std::string const& svg) {
    std::ofstream file{directory_ + "/" + name + ".svg", std::ios::binary};
    if (!(file << svg).flush()) failed_ = true;
    ++count_;
  }
  [[nodiscard]] int finish() const {
    std::cout << count_ << " drawings\n";
    return failed_ ? 1 : 0;
  }
};

void draw(Folder& folder, Scheme const& scheme, std::string const& name) {
  for (int s = 0; s < scheme.sheets(); ++s) {
    auto const number = name + "-" + std::to_string(s + 1);
    folder.write(number + "-formes", *forme_svg(scheme, s));
    folder.write(number + "-paper", *sheet_svg(scheme, Sheet<millimetres>{315_mm, 450_mm}, countermark_mould, s));
    auto const printed = *sheet_to_fold(scheme, s, s % 2 == 0 ? PageSize::a4 : PageSize::letter);
    folder.write(number + "-front", printed.front);
    folder.write(number + "-back", printed.back);
  }
  int page = 0;
  for (auto const& steps : *steps_svg(scheme)) folder.write(name + "-steps-" + std::to_string(++page), steps);
  auto const folded = *fold(scheme);
  auto const formes = impose(folded);
  auto const slip = formes.one_forme(0) ? Slip::turned_about_other_line : Slip::inner_forme_turned;
  folder.write(name + "-misread",
               book_svg(pages_met(formes, folded, 0, slip), title_of(scheme), folded.first_page(0), scheme.reads()));
}

} // namespace

int main(int argument_count, char** arguments) {
  if (argument_count != 2) {
    std::cerr << "usage: bifolium_draw_all DIR\n";
    return 2;
  }
  Folder folder{arguments[1]};
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    draw(folder, attested.scheme(), std::string{attested.id()});
    draw(folder, mirrored(attested.scheme()), std::string{attested.id()} + "-right-to-left");
  }
  auto const formula = *read_formula("8°: A8(±A3, A4+χ1.2, -A8) B8(±B4.5) C4(-C1.4, C2+χ1[=A8]) D12(±D2,3)");
  IdealCopy const book{formula};
  auto const copy = check_copy(book, (*read_leaves_present(book, "A1-2 A4-B7 C2 D1 D3-12")).spans);
  int number = 0;
  for (auto const gathering : book.gatherings()) {
    auto drawn = *drawn_gathering(formula, gathering.at, copy);
    drawn.leaves[0].note = "\"<&>\" وَرَقة 紙 WWWWWWWW"; // any text must stay inside
    folder.write("gathering-" + std::to_string(++number), gathering_svg(drawn));
    drawn.right_to_left = true;
    folder.write("gathering-" + std::to_string(number) + "-right-to-left", gathering_svg(drawn));
  }
  for (auto size : {PageSize::a4, PageSize::letter}) {
    auto const cancel = cancel_to_paste(size, size == PageSize::a4 ? Duplex::long_edge : Duplex::short_edge);
    std::string const name = size == PageSize::a4 ? "cancel-a4" : "cancel-letter";
    folder.write(name + "-front", cancel.front);
    folder.write(name + "-back", cancel.back);
  }
  return folder.finish();
}
