# SPDX-License-Identifier: MIT
# Lists that are kept and could differ from the headers: the exports of the module, the grammar, the members of types, the
# declarations, and the index of functions. Each function for users is in the index, in a row with its header, which links to the
# declarations of that header; each name in the index is a function of that header.
#   perl functions.pl SOURCE
use strict;
use warnings;

my $source = shift;
chdir $source or die "$source: $!";
sub text {
  my ($path) = @_;
  open my $file, '<:raw', $path or die "$path: $!";
  local $/;
  return scalar <$file>;
}
my @wrong;
my $module = `perl cmake/public_names.pl include --module`;
push @wrong, 'cmake/bifolium.cppm is not what `perl cmake/public_names.pl include --module` writes'
  if $module ne text('cmake/bifolium.cppm');

push @wrong, 'cmake/doc/grammar.md is not what `perl cmake/grammar.pl include` writes'
  if `perl cmake/grammar.pl include` ne text('cmake/doc/grammar.md');
push @wrong, 'cmake/doc/members.md is not what `perl cmake/members.pl include` writes'
  if `perl cmake/members.pl include` ne text('cmake/doc/members.md');
my $declarations = text('cmake/doc/declarations.md');
push @wrong, 'cmake/doc/declarations.md is not what `perl cmake/calls.pl include` writes' if `perl cmake/calls.pl include` ne $declarations;

my (%functions, %types);
for my $line (split /\n/, `perl cmake/public_names.pl include`) {
  my ($header, $space, $kind, $name) = split /\t/, $line;
  $types{$name} = 1 if $kind eq 'type';
  next unless $kind eq 'function' || $kind eq 'literal';
  $header =~ s{^bifolium/}{};
  $name =~ s/^operator//;
  $name = "${space}::$name" if $space ne '' && $space ne 'literals';
  $functions{"$name $header"} = $name;
}
delete @functions{grep { $types{$functions{$_}} } keys %functions}; # deduction guides
push @wrong, 'the headers have ' . keys(%functions) . ' functions: the list cannot be right' if keys %functions < 200;

# What the header of a folder brings; what it does not has a * in the index.
my %brings;
sub look_into {
  my ($folder, $header) = @_;
  return if $brings{$folder}{$header}++ || !-f "include/bifolium/$header";
  look_into($folder, $_) for text("include/bifolium/$header") =~ m{^#include <bifolium/([^>]+)>}mg;
}
sub is_brought {
  my ($header) = @_;
  my ($folder) = $header =~ m{^(\w+)/};
  look_into($folder, -f "include/bifolium/$folder.hpp" ? "$folder.hpp" : 'bifolium.hpp') unless $brings{$folder};
  return $brings{$folder}{$header};
}

my %named;
my %declared_in = map { $_ => 1 } $declarations =~ /^### (\S+)$/mg;
for my $row (grep { /^\| .* \| `.*` \| .* \|$/ } split /\n/, text('cmake/doc/functions.md')) {
  my (undef, $to, $calls, $headers) = split / ?\| ?/, $row;
  for my $cell (split /, /, $headers) { # GitHub's name of a heading: small letters, figures and _
    my ($header) = $cell =~ /`([^`]*)`/ or push @wrong, "no header is in '$cell'" and next;
    my $link = "[`$header`](declarations.md#" . (lc($header) =~ s/[^\w]//gr) . ')';
    push @wrong, "the index has '$cell' where $link is due: `perl -i cmake/calls.pl include --link cmake/doc/functions.md`" if $cell !~ /^\Q$link\E\*?$/;
    push @wrong, "cmake/doc/declarations.md has no heading $header" unless $declared_in{$header};
  }
  my @headers = $headers =~ /`([^`]*)`/g;
  for my $header (@headers) {
    my $has_star = $headers =~ /`\Q$header\E`\]\([^)]*\)\*/;
    push @wrong, "$header for $calls: " . ($has_star ? 'its folder\'s header brings it, so no * is due' : 'its folder\'s header does not bring it, so a * is due')
      if $has_star == !!is_brought($header);
  }
  for my $name ($calls =~ /`([^`]*)`/g) {
    my @of = grep { exists $functions{"$name $_"} } @headers;
    push @wrong, "the index has `$name`, which is in none of @headers" unless @of;
    $named{"$name $_"} = 1 for @of;
  }
  for my $header (@headers) {
    push @wrong, "the index names $header for $calls, which are not in it"
      unless grep { exists $functions{"$_ $header"} } $calls =~ /`([^`]*)`/g;
  }
}
for my $function (sort keys %functions) {
  push @wrong, "not in the index of functions, cmake/doc/functions.md: $function" unless $named{$function};
}
print "$_\n" for @wrong;
exit(@wrong ? 1 : 0);
