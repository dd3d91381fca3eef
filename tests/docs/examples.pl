# SPDX-License-Identifier: MIT
# Each example in a comment of a header for users holds when it is compiled and run, and each function that a user starts from has one.
#   perl examples.pl SOURCE WORK COMPILER [FLAGS AND LIBRARIES ...]
use strict;
use warnings;

my ($source, $work, @compiler) = @ARGV;
my @libraries = grep /\.a$/, @compiler;
@compiler = grep !/\.a$/, @compiler;
chdir $source or die "$source: $!";
my %functions = map { (split /\t/)[2] eq 'function' ? ((split /\t/)[3] => 1) : () } split /\n/, `perl cmake/public_names.pl include`;
my @starts = qw(read_formula count_formula write_formula observe infer_format reckon examine read_description fold impose
  find_foldings check_copy read_format read_signature find_scheme read_scheme cast_off read_pagination recorded_size counted);
my @headers = grep { !m{/detail/|formatter\.hpp} } split /\n/, `find include -name '*.hpp' | sort`;
my (@examples, %used);
for my $header (@headers) {
  open my $file, '<:raw', $header or die "$header: $!";
  my $text = do { local $/; scalar <$file> };
  $text =~ s{\n///(?=[^\n]*\S)}{}g; # lines of one comment as one line
  while ($text =~ /\bExample: `([^`]*)`/g) {
    push @examples, [$header, $1];
    $used{$_} = 1 for $1 =~ /\b(\w+)(?:<[^<>]*>)?\(/g;
  }
}
my @wrong = map { "no example in a comment calls $_" } grep { !$used{$_} } @starts;
push @wrong, map { "$_ is no function for users" } grep { !$functions{$_} } @starts;
push @wrong, 'hardly an example was found' if @examples < 20;
if (@wrong) { print "$_\n" for @wrong; exit 1 }

system('mkdir', '-p', $work) == 0 or die "$work: $!";
open my $unit, '>:raw', "$work/examples.cpp" or die $!;
print $unit map { my $header = $_; $header =~ s{^include/}{}; "#include <$header>\n" } @headers;
print $unit "#include <iostream>\nusing namespace bifolium;\nint main() {\n  int wrong = 0;\n";
for (@examples) {
  my ($header, $example) = @$_;
  print $unit "  if (!($example)) wrong = 1, std::cout << R\"said($header: $example\n)said\";\n";
}
print $unit "  return wrong;\n}\n";
close $unit;
system(@compiler, '-std=c++20', '-O0', "-Iinclude", "$work/examples.cpp", @libraries, '-o', "$work/examples") == 0 or die "an example does not compile\n";
exit(system("$work/examples") == 0 ? 0 : 1);
