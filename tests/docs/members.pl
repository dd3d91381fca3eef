# SPDX-License-Identifier: MIT
# The page of members has the types that users start from, no type of a header that it names is missing, and the compiler finds the same
# fields: as many as the page has, with these names and in this order. That it is what the headers give is held by functions.pl.
#   perl members.pl SOURCE WORK COMPILER [FLAGS AND LIBRARIES ...]
use strict;
use warnings;

my ($source, $work, @compiler) = @ARGV;
@compiler = grep !/\.a$/, @compiler;
chdir $source or die "$source: $!";
open my $file, '<:raw', 'cmake/doc/members.md' or die "cmake/doc/members.md: $!";
my $page = do { local $/; scalar <$file> };
my @wrong;
my @starts = qw(Description FieldTexts Finding Audit Error YearRange Range Bill Edition Presswork PressTerms LeafEvidence Inference
  FormatCandidate Reason CopyChecked LeavesPresent Misplaced Formula FormulaCount IdealCopy ReamCount PaperCount UnreadField FieldDoubt
  Stated Expected Limits Scheme Imposition SheetSize Pagination Extent Measured Sample CastOff);
for my $type (@starts) { push @wrong, "the page has no members of $type" unless $page =~ /^### $type\n\n[^\n]*\n\n\| member /m }
my %on_page = map { $_ => 1 } $page =~ /^### (\S+)$/mg;
for my $line (split /\n/, `perl cmake/public_names.pl include`) {
  my ($header, undef, $kind, $name) = split /\t/, $line;
  $header =~ s{^bifolium/}{};
  next if $kind ne 'type' || $name =~ /^(?:the_|LengthTraits$|SignatureKey$)/; # declared there without members
  push @wrong, "the page has other types of $header, but not $name" if $page =~ /^`\Q$header\E`/m && !$on_page{$name};
}

# Of a type whose members are all public, a structured binding takes exactly as many names as it has fields, in their order.
my @types = map { [split /\t/] } split /\n/, `perl cmake/members.pl include --fields`;
push @wrong, 'hardly a type was found' if @types < 100;
if (@wrong) { print "$_\n" for @wrong; exit 1 }
system('mkdir', '-p', $work) == 0 or die "$work: $!";
open my $unit, '>:raw', "$work/members.cpp" or die $!;
my %headers = map { $_->[0] => 1 } @types;
print $unit map { "#include <bifolium/$_>\n" } sort keys %headers;
print $unit "#include <iostream>\nusing namespace bifolium;\nbool wrong = false;\n";
print $unit "void see(bool same, char const* field) { if (!same) wrong = true, std::cout << \"another field stands in the place of \" << field << '\\n'; }\n";
my ($number, $calls) = (0, '');
for my $row (@types) {
  my ($header, $type, $names) = @$row;
  my @names = split / /, $names;
  my @bound = map { "f$_" } 0 .. $#names;
  ++$number;
  print $unit "void look_$number() {\n  alignas($type) static unsigned char room[sizeof($type)]{};\n  auto& it = reinterpret_cast<$type&>(room);\n" # addresses alone are taken
    . '  auto& [' . join(', ', @bound) . "] = it;\n";
  print $unit "  see(static_cast<void const*>(&$bound[$_]) == &it.$names[$_], \"$type\::$names[$_]\");\n" for 0 .. $#names;
  print $unit "}\n";
  $calls .= "  look_$number();\n";
}
print $unit "int main() {\n$calls  return wrong ? 1 : 0;\n}\n";
close $unit;
system(@compiler, '-std=c++20', '-O0', '-Iinclude', "$work/members.cpp", '-o', "$work/members") == 0 or die "the compiler finds other fields\n";
exit(system("$work/members") == 0 ? 0 : 1);
