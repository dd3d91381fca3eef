# SPDX-License-Identifier: MIT
# Lists what the headers declare at namespace scope for users, a name a line: header, namespace below bifolium, kind, name, the
# first sentence of its comment, parted by tabs. Kinds: type, concept, value, function, operator, literal. Passed over are
# `namespace detail`, the detail/ folders, specialisations and friends. With --module it writes the C++20 module instead:
#   perl cmake/public_names.pl include
#   perl cmake/public_names.pl include --module >cmake/bifolium.cppm
# Tests hold the module, and the index of functions in cmake/doc/functions.md, to this list.
use strict;
use warnings;
use FindBin;
require "$FindBin::Bin/declarations.pl";

my $include = shift // 'include';
my $module = (shift // '') eq '--module';

my (@names, %is_inline);

sub sentence {
  my ($comment) = @_;
  $comment =~ s/\s+/ /g;
  $comment =~ s/^ | $//g;
  return $comment =~ /^(.*?[.:;])(?:\s|$)/ ? $1 : $comment;
}

my @headers = headers_in($include, 'bifolium');
for my $header (@headers) {
  open my $file, '<:raw', "$include/$header" or die "$include/$header: $!";
  local $/;
  for my $one (public_declarations(scalar <$file>, \%is_inline)) {
    # fwd.hpp says again what other headers declare, except a value
    next if $header eq 'bifolium/fwd.hpp' && $one->{kind} ne 'value';
    my $space = join '::', grep { $_ ne 'bifolium' && $_ ne 'v0' } @{$one->{spaces}};
    push @names, [$header, $space, $one->{kind}, $one->{name}, sentence($one->{comment})];
  }
}

if (!$module) {
  print join("\t", @$_), "\n" for @names;
  exit;
}
my %in; # namespace => { name => 1 }
$in{$_->[1]}{$_->[3]} = 1 for @names;
print <<'TEXT';
// SPDX-License-Identifier: MIT
// The library as a C++20 module: `import bifolium;`. Written by `perl cmake/public_names.pl include --module`; what it exports
// is what the headers declare for users. Macros do not pass through a module: the version is in <bifolium/core/version.hpp>.
// The headers are the source, so that both ways give one library, and a program may use the two side by side.
module;

TEXT
print "#include <$_>\n" for grep { $_ ne 'bifolium/fwd.hpp' } @headers;
print "\nexport module bifolium;\n";
for my $space (sort keys %in) {
  my $prefix = $space eq '' ? 'bifolium::' : "bifolium::${space}::";
  my $open = $space eq '' ? 'bifolium' : $is_inline{$space} ? "bifolium::inline $space" : "bifolium::$space";
  print "\nexport namespace $open {\n";
  print "using $prefix$_;\n" for sort keys %{$in{$space}};
  print "}\n";
}
