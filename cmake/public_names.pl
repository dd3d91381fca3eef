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
  $comment =~ s/^ //;
  return $comment =~ /^(.*?[.:;])(?:\s|$)/ ? $1 : $comment;
}

my @headers = headers_in($include, 'bifolium');
for my $header (@headers) {

  open my $file, '<:raw', "$include/$header" or die "$include/$header: $!";
  local $/;
  my @tokens = grep { !m{^///<} } tokens(scalar <$file>);
  my (@spaces, @words, $comment, $fresh);
  $comment = '';
  for (my $at = 0; $at <= $#tokens; $at++) {
    my $token = $tokens[$at];
    if ($token =~ m{^///(.*)}) {
      $comment = '' unless $fresh;
      $comment .= " $1" unless @words;
      $fresh = 1;
      next;
    }
    $fresh = 0 unless @words; # what follows belongs to the comment
    if (!@words && ($token eq 'namespace' || $token eq 'inline' && ($tokens[$at + 1] // '') eq 'namespace')) {
      my $inline = $token eq 'inline';
      $at++ if $inline;
      my $name = '';
      for ($at++; $tokens[$at] ne '{' && $tokens[$at] ne ';' && $tokens[$at] ne '='; $at++) { $name .= $tokens[$at] }
      if ($tokens[$at] eq '{') { push @spaces, $name; $is_inline{$name} = $inline }
      else { $at++ until $tokens[$at] eq ';' }
      $comment = '';
      next;
    }
    if ($token eq '}' && !@words) { pop @spaces; $comment = ''; next }
    if ($token eq ';' && !@words) { next }
    if ($token eq '{' || $token eq ';') {
      my @head = @words;
      push @head, '{' if $token eq '{';
      my $public = join('::', @spaces);
      if (@spaces && $spaces[0] eq 'bifolium' && $public !~ /\bdetail\b/) {
        my ($kind, $name) = declared(@head);
        # fwd.hpp says again what other headers declare, except a value
        if (defined $kind && defined $name && ($header ne "bifolium/fwd.hpp" || $kind eq "value")) {
          my $space = join '::', grep { $_ ne 'bifolium' && $_ ne 'v0' } @spaces;
          push @names, [$header, $space, $kind, $name, sentence($comment)];
        }
      }
      if ($token eq '{') { # past the body
        my $depth = 0;
        for (; $at <= $#tokens; $at++) { $depth += $tokens[$at] eq '{'; $depth -= $tokens[$at] eq '}'; last if $depth == 0 }
        # a value, or a class, ends with a semicolon; a function does not
        my ($kind) = declared(@head);
        if (($tokens[$at + 1] // '') eq ';') { $at++ }
        elsif (defined $kind && $kind eq 'value') { $at++ until ($tokens[$at] // ';') eq ';' }
      }
      @words = ();
      $comment = '';
      next;
    }
    # a brace initialiser inside a parameter list, or a requires-expression
    if ($token eq '(') {
      my $depth = 0;
      for (; $at <= $#tokens; $at++) {
        next if $tokens[$at] =~ m{^///};
        push @words, $tokens[$at];
        $depth += $tokens[$at] eq '(';
        $depth -= $tokens[$at] eq ')';
        last if $depth == 0;
      }
      next;
    }
    if ($token eq ':' && grep { $_ eq ')' } @words) { # the initialisers of a constructor defined outside its class
      do {
        $at++ until $tokens[$at] =~ /^[({]$/;
        my $depth = 0;
        for (; $at <= $#tokens; $at++) {
          $depth += $tokens[$at] =~ /^[({]$/;
          $depth -= $tokens[$at] =~ /^[)}]$/;
          last if $depth == 0;
        }
        $at++;
      } while ($tokens[$at] eq ',');
      $at--;
      next;
    }
    if ($token eq '=' && (grep { $_ eq 'using' || $_ eq 'concept' || $_ eq 'constexpr' || $_ eq 'inline' } @words) && !grep { $_ eq 'operator' } @words) {
      push @words, '=';
      my $depth = 0;
      for ($at++; $at <= $#tokens; $at++) {
        last if $depth == 0 && $tokens[$at] eq ';';
        $depth++ if $tokens[$at] eq '{' || $tokens[$at] eq '(';
        $depth-- if $tokens[$at] eq '}' || $tokens[$at] eq ')';
      }
      $at--;
      next;
    }
    push @words, $token;
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
