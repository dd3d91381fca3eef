# SPDX-License-Identifier: MIT
# Each header includes, by itself or through what it includes, whatever declares the types of the library that it names: no
# header counts on what was included before it. That each compiles alone takes a compiler two hundred runs and is checked by
# .ci/full; this takes a second, and looks into detail/ too.
#   perl names_included.pl INCLUDE
use strict;
use warnings;

my ($include) = @ARGV;
chdir $include or die "$include: $!";
my @headers = split /\n/, `find bifolium -name '*.hpp' | sort`;
die "hardly a header was found\n" if @headers < 100;

my (%code, %includes, %declared_in, %declares);
for my $header (@headers) {
  open my $file, '<:raw', $header or die "$header: $!";
  my $text = do { local $/; scalar <$file> };
  $includes{$header} = [$text =~ /^#include <(bifolium\/[^>]+)>/mg];
  $text =~ s/R"(\w*)\(.*?\)\1"/ /gs;
  $text =~ s{//[^\n]*|/\*.*?\*/|"(?:[^"\\\n]|\\.)*"|^#[^\n]*}{ }gms;
  $code{$header} = $text;
  $declares{$header}{$_} = 1 for $text =~ /\b(?:struct|class|enum|concept|typename|using)\s+([A-Z]\w+)/g; # in whatever place
  # at the beginning of a line: in a namespace, not in a class
  $declared_in{$1}{$header} = 1 while $text =~ /^(?:template <[^;{]*?>\s*)?(?:struct|class|enum class|concept)\s+([A-Z]\w+)\s*(?:final\s*)?(?::[^:;{]*)?(?:\{|=)/mg;
}

my %closure;
sub closure {
  my ($header) = @_;
  return $closure{$header} if $closure{$header};
  my %all = ($header => 1);
  $closure{$header} = \%all; # a circle ends here
  for my $one (@{$includes{$header}}) {
    $all{$_} = 1 for $one, keys %{closure($one)};
  }
  return \%all;
}

my ($wrong, $uses) = (0, 0);
for my $header (@headers) {
  my $known = closure($header);
  my %named;
  $named{$_} = 1 for $code{$header} =~ /(?<!::)\b([A-Z]\w+)\b/g;
  for my $name (sort grep $declared_in{$_}, keys %named) {
    ++$uses;
    next if grep $known->{$_}, keys %{$declared_in{$name}};
    next if grep $declares{$_}{$name}, keys %$known; # another, inside a class or a function
    print "$header names $name, of ", join(' or ', sort keys %{$declared_in{$name}}), ", and does not include it\n";
    ++$wrong;
  }
}
die "hardly a name was found\n" if $uses < 1000;
print "$uses names of ", scalar(@headers), " headers\n";
exit($wrong ? 1 : 0);
