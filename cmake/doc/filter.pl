# SPDX-License-Identifier: MIT
# What Doxygen reads instead of a header. A comment at several declarators is given to each of them. Specialisations of
# templates and variables of std are passed over, as Doxygen 1.9 cannot place them. The enumerators of Problem, which are made from a table by
# the preprocessor, are written out with the comments of the table. No function gets words that its header does not have.
use strict;
use warnings;

open my $header, '<:raw', $ARGV[0] or die "$ARGV[0]: $!";
local $/;
my $text = <$header>;
# a page with links to its own headings, or to those of such a page: Doxygen has to be told their names
if ($ARGV[0] =~ /\.md$/) {
  $text =~ s{^(#+ ([^\n]*))$}{my ($line, $name) = ($1, lc $2); $name =~ s/[^\w]//g; $text =~ /\(#$name\)/ ? "$line {#$name}" : $line}gme;
  $text =~ s{\]\((?:declarations|members)\.md#(\w+)\)}{](\@ref $1)}g;
  $text =~ s{`"`}{<code>&quot;</code>}g; # Doxygen 1.9 loses the end of it
  print $text;
  exit;
}
# the rows of the table of problems, as enumerators with their comments
if ($text =~ /#include <bifolium\/core\/detail\/problem_table\.hpp>/) {
  (my $name = $ARGV[0]) =~ s{problem\.hpp$}{detail/problem_table.hpp};
  open my $table, '<:raw', $name or die "$name: $!";
  my ($rows, $comment) = ('', '');
  for my $line (split /^/, scalar <$table>) {
    if ($line =~ m{^///}) { $comment .= "  $line" }
    elsif ($line =~ /^BIFOLIUM_PROBLEM\((\d+), (\w+),/) { $rows .= "$comment  $2 = $1,\n"; $comment = '' }
    else { $comment = '' }
  }
  $text =~ s/#define BIFOLIUM_PROBLEM\(number, identifier, sentence\) identifier = \(number\),\n#include [^\n]*\n/$rows/;
  $text =~ s/#define BIFOLIUM_PROBLEM(?:[^\n]*\\\n)*[^\n]*\n#include [^\n]*\n//g;
}
# the first comment of a header is about the file; a header name in angle brackets is no HTML
$text =~ s{^// SPDX[^\n]*}{/// \@file};
$text =~ s{^(.*?///.*)$}{my $line = $1; $line =~ s/(?<!`)(<\/?[a-z_]+>)(?!`)/`$1`/g if $line =~ m|^\s*///|; $line}gme;
$text =~ s{(///<.*)$}{my $words = $1; $words =~ s/(?<=.)(?<!`)(<\/?[a-z_]+>)(?!`)/`$1`/g; $words}gme;
my $blank = sub { my $lines = ($_[0] =~ tr/\n//); "\n" x $lines };
$text =~ s/^(template <[^;{]*?>[ \n](?:requires [^\n]*\n)?struct std::\w+<.*?^\};\n)/$blank->($1)/gmse;
$text =~ s/^template <[^;{]*?> inline constexpr bool std::ranges::[^;\n]*;//gm;

my $before = '';
my $comment = ''; # the /// lines right above, as one text
my $declarator = qr/\w+(?:\[\w*\])?(?:\{[^{}]*(?:\{[^{}]*\})?[^{}]*\}| = [^,;{}]+)?/;
for my $line (split /^/, $text) {
  if ($line =~ /^ +((?:static |constexpr |inline )*[\w:]+(?:<[^;{}]*>)?(?: const)?(?: ?[*&])?) ($declarator(?:, $declarator)+);(?: *\/\/\/< *(.*))?$/) {
    my ($type, $names, $behind) = ($1, $2, $3);
    my $words = defined $behind ? $behind : $comment;
    if ($words ne '') {
      my @one = $names =~ /($declarator)(?:, |$)/g;
      my $first = defined $behind ? "/** $words */ " : '';
      $line = "  $first$type " . join("; /** $words */ $type ", @one) . ";\n";
    }
  }
  print $line;
  $before = $line;
  $comment = $line =~ m{^\s*///(?!<)\s*(.*)$} ? ($comment eq '' ? $1 : "$comment $1") : '';
}
