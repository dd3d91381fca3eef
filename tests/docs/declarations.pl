# SPDX-License-Identifier: MIT
# The page of declarations has the functions that users start from, and the compiler finds each function of it: one with these
# parameters and this result, whatever its overloads. The declaration is written once more, with its defaults, in a namespace of its own,
# and the library's function of that name is converted to a pointer to it. Templates, and functions that run while compiling alone, have
# no address to convert: the compiler reads their declarations. That the page is what the headers give is held by functions.pl.
#   perl declarations.pl SOURCE WORK COMPILER [FLAGS AND LIBRARIES ...]
use strict;
use warnings;

my ($source, $work, @compiler) = @ARGV;
@compiler = grep !/\.a$/, @compiler;
chdir $source or die "$source: $!";
open my $file, '<:raw', 'cmake/doc/declarations.md' or die "cmake/doc/declarations.md: $!";
my $page = do { local $/; scalar <$file> };
my @wrong;
my @starts = qw(read_formula count_formula write_formula read_reference read_description examine edited observe infer_format verdict
  cataloguer_words explain_ranking reckon compare arrange working read_leaves_present check_copy wants read_format find_scheme read_scheme
  fold impose forme_text find_foldings read_pagination read_extent compare_extent find_sheets drawn_gathering steps_svg message);
for my $name (@starts) { push @wrong, "the page does not declare $name" unless $page =~ /^```cpp\n[^`]*\b\Q$name\E\(/m }
push @wrong, "the page has a declaration without words: $1" while $page =~ /^```cpp\n([^`]*)\n```\n\n/mg;
for my $text ($page =~ /^\| `([\w:]+) ?[^|]*\| `[^|]*` \|  \|$/mg) { push @wrong, "the page has a constant without words: $text" }

my @rows = map { [split /\t/] } split /\n/, `perl cmake/calls.pl include --declarations`;
my $plain = ($page =~ s/\s+/ /gr) =~ s/\( /(/gr;
for my $row (@rows) { push @wrong, "the page lacks $row->[3]" if index($plain, $row->[3] =~ s/\( /(/gr) < 0 }
my %on_page = map { ("$_->[0] $_->[2]" => 1) } @rows;
my %types;
for my $line (split /\n/, `perl cmake/public_names.pl include`) {
  my ($header, undef, $kind, $name) = split /\t/, $line;
  $header =~ s{^bifolium/}{};
  $types{$name} = 1 if $kind eq 'type';
  next if $kind !~ /^(?:function|literal)$/ || $types{$name}; # a deduction guide
  push @wrong, "the page lacks $name of $header" unless $on_page{"$header $name"};
}
if (@wrong) { print "$_\n" for @wrong; exit 1 }

system('mkdir', '-p', $work) == 0 or die "$work: $!";
open my $unit, '>:raw', "$work/declarations.cpp" or die $!;
my %headers = map { $_->[0] => 1 } @rows;
print $unit map { "#include <bifolium/$_>\n" } sort keys %headers;
my ($number, $found) = (0, 0);
for my $row (@rows) {
  my ($header, $space, $name, $declaration) = @$row;
  ++$number;
  my $within = join '', map { "using namespace bifolium::$_; " } grep { $_ ne '' && $_ ne 'literals' } $space;
  $declaration =~ s/\b\Q$space\E::(?=\Q$name\E\()// if $space ne '';
  my $is_template = $declaration =~ /^template\b/;
  my $has_address = !$is_template && $declaration !~ /^consteval\b|\bauto\b/;
  my $again = $declaration =~ s/^((?:template <.*?> )?)(?:constexpr|consteval) /$1/r;
  print $unit "namespace page_$number { using namespace bifolium; $within\n$again\n";
  if ($has_address) {
    ++$found;
    my $called = $space eq '' ? "bifolium::$name" : "bifolium::${space}::$name";
    print $unit "using Type = decltype(&$name);\n[[maybe_unused]] Type const library = static_cast<Type>(&$called);\n";
  }
  print $unit "}\n";
}
close $unit;
die "hardly a function was found: $found of $number\n" if $found < 300;
exit(system(@compiler, '-std=c++20', '-O0', '-fsyntax-only', '-Iinclude', "$work/declarations.cpp") == 0 ? 0 : 1);
