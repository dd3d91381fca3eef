# SPDX-License-Identifier: MIT
# What must not compile, compiled together: every misuse in a namespace of its own after all headers, so that the headers are
# read once and not once for each. A case holds where the compiler names its file and says one of its sentences in the same
# breath. A compiler may keep silent about a mistake that it told before, so a case that is not shown so is compiled alone, by
# check.cmake, whose word is final; so is a case with flags of its own.
#   perl together.pl SOURCE WORK EVERY CMAKE KIND PAGE COMPILER [FLAGS ...]
# EVERY is the folder of every_header.hpp, KIND is GNU or Clang. PAGE is the page of misuses, which must show the sentence, or -.
use strict;
use warnings;

my ($source, $work, $every, $cmake, $kind, $page, $compiler, @flags) = @ARGV;
$ENV{LC_ALL} = 'C';
sub slurp { my ($path) = @_; open my $file, '<:raw', $path or die "$path: $!"; local $/; return scalar <$file> }

my $own = $kind eq 'GNU' ? 'g\+\+' : 'clang';
my (@cases, %standard);
for my $path (sort glob "$source/tests/negative/*.cpp") {
  my $text = slurp($path);
  my ($name) = $path =~ m{(\w+)\.cpp$};
  $standard{$_} = 1 for $text =~ /^#include (<[a-z_]+>)/mg;
  push @cases, {name => $name, path => $path, says => [$text =~ /^\/\/ says(?: $own)?: (.*)$/mg], alone => scalar($text =~ /^\/\/ with: /m)};
}
die "hardly a case was found\n" if @cases < 50;

my $unit = join '', map("#include $_\n", sort keys %standard), "#include <every_header.hpp>\n#define MISUSE\n";
$unit .= "namespace $_->{name} {\n#include \"$_->{path}\"\n}\n" for grep !$_->{alone}, @cases;
open my $out, '>:raw', "$work/misuses.cpp" or die "$work: $!";
print $out $unit;
close $out;
my @all = $kind eq 'GNU' ? '-fmax-errors=0' : '-ferror-limit=0';
open my $said, '-|', 'sh', '-c', 'exec "$@" 2>&1', 'sh', $compiler, @flags, @all, '-std=c++20', '-fsyntax-only', "-I$source/include", "-I$every",
  "$work/misuses.cpp" or die "$compiler: $!";
my @lines = <$said>;
die "all misuses together compile\n" if close $said;

# Around an error stands where it comes from: before it with one compiler, after it with the other.
my @errors = grep $lines[$_] =~ /: (?:fatal )?error: /, 0 .. $#lines;
my @breaths = map join('', @lines[($_ ? $errors[$_ - 1] + 1 : 0) .. ($_ < $#errors ? $errors[$_ + 1] - 1 : $#lines)]), 0 .. $#errors;

my $shown_by = $page eq '-' ? '' : slurp($page);
my ($wrong, $together) = (0, 0);
for my $case (@cases) {
  my @breaths_of_case = $case->{alone} ? () : grep index($_, "/$case->{name}.cpp:") >= 0, @breaths;
  my ($sentence) = grep { my $one = $_; grep index($_, $one) >= 0, @breaths_of_case } @{$case->{says}};
  if (!defined $sentence) {
    my @paged = $page eq '-' ? () : "-DPAGE=$page";
    my $control = $case->{alone} ? 'ON' : 'OFF'; # the others' are compiled together too, by another test
    system($cmake, "-DCASE=$case->{path}", "-DCXX=$compiler", "-DCXX_FLAGS=@flags", "-DCONTROL=$control", "-DINCLUDE=$source/include",
           "-DCOMPILER=$kind", @paged, '-P', "$source/tests/negative/check.cmake") == 0
      or print("$case->{name}: see above\n"), ++$wrong;
    next;
  }
  ++$together;
  (my $title = $case->{name}) =~ tr/_/ /;
  my ($section) = $shown_by =~ /^## \Q$title\E\n(.*?)(?=^## |\z)/ms;
  next if $page eq '-' || (defined $section && index($section, $sentence) >= 0);
  print "$page does not show '$sentence' under '$title': run tests/negative/page.sh\n";
  ++$wrong;
}
print scalar(@cases), " misuses, $together of them shown together\n";
exit($wrong ? 1 : 0);
