# SPDX-License-Identifier: MIT
# What Doxygen reads instead of a header, line for line. Names the C++ standard asks for - the members of iterators and
# ranges, arithmetic that assigns, what Expected has from std::expected - get the standard as their documentation where
# the header has no words of its own. A comment at several declarators is given to each of them. Specialisations of templates of std are passed over: Doxygen 1.9 cannot place them.
use strict;
use warnings;

open my $header, '<:raw', $ARGV[0] or die "$ARGV[0]: $!";
local $/;
my $text = <$header>;
# the first comment of a header is about the file; a header name in angle brackets is no HTML
$text =~ s{^// SPDX[^\n]*}{/// \@file};
$text =~ s{^(.*?///.*)$}{my $line = $1; $line =~ s/(?<!`)(<\/?[a-z_]+>)(?!`)/`$1`/g if $line =~ m|^\s*///|; $line}gme;
$text =~ s{(///<.*)$}{my $words = $1; $words =~ s/(?<=.)(?<!`)(<\/?[a-z_]+>)(?!`)/`$1`/g; $words}gme;
my $blank = sub { my $lines = ($_[0] =~ tr/\n//); "\n" x $lines };
$text =~ s/^(template <[^;{]*?>[ \n](?:requires [^\n]*\n)?struct std::\w+<.*?^\};\n)/$blank->($1)/gmse;

my $standard = qr/\b(?:begin|end|empty|size|data|swap|has_value|value_or|what)\(|operator(?:\+\+|--|\*|->|\[\]|\+=|-=|\(\)|\s*bool)\s*\(/;
my $type = qr/^\s*using (?:value_type|error_type|difference_type|reference|pointer|const_iterator|iterator_category|iterator_concept) = /;
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
  my $documented = $before =~ m{^\s*///} || $line =~ m{///<};
  if (!$documented && $line =~ /$type/) {
    $line =~ s{\n}{ ///< as the standard asks\n};
  } elsif (!$documented && $line =~ /^  .*$standard/ && $line =~ /^  +(?:\[\[nodiscard\]\] |constexpr |explicit )/ && $line !~ /friend|return [^}]*$/) {
    $line =~ s{^(\s*)}{$1/** As the standard has it. */ };
  }
  print $line;
  $before = $line;
  $comment = $line =~ m{^\s*///(?!<)\s*(.*)$} ? ($comment eq '' ? $1 : "$comment $1") : '';
}
