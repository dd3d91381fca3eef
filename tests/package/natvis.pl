# SPDX-License-Identifier: MIT
# The views in natvis cannot be tried without the debugger that reads them. What can be held: each type they name is in the headers,
# and the members they name are words of the header that has the type.
#   perl natvis.pl SOURCE
use strict;
use warnings;

chdir $ARGV[0] or die "$ARGV[0]: $!";
sub text { my ($path) = @_; open my $file, '<:raw', $path or die "$path: $!"; local $/; return scalar <$file> }
my %header;
for my $line (split /\n/, `perl cmake/public_names.pl include`) {
  my ($path, undef, $kind, $name) = split /\t/, $line;
  $header{$name} //= $path if $kind eq 'type';
}
my ($wrong, $types) = (0, 0);
my $views = text('cmake/debugger/bifolium.natvis');
while ($views =~ m{<Type Name="bifolium::v0::(\w+)[^"]*">(.*?)</Type>}gs) {
  my ($type, $view) = ($1, $2);
  ++$types;
  if (!$header{$type}) { print "there is no type $type\n"; $wrong = 1; next }
  my $known = text("include/$header{$type}");
  $known =~ s{//[^\n]*}{}g;
  my %words;
  $words{$1} = 1 while $known =~ /\b([A-Za-z_]\w*)\b/g;
  my @expressions = ($view =~ /\{([^}]*)\}/g, $view =~ /Condition="([^"]*)"/g, $view =~ />([^<>{}]+)<\/Item>/g);
  for my $expression (@expressions) {
    $expression =~ s/bifolium::v0::\w+(::\w+)*|'.'|\(char\)|,\[?\w*\]?\w*$|&amp;//g;
    for my $name ($expression =~ /\b([a-z]\w*)\b/g) {
      next if $words{$name};
      print "$type has no member $name\n";
      $wrong = 1;
    }
  }
}
print "no type was found\n" if !$types;
exit($wrong || !$types);
