# SPDX-License-Identifier: MIT
# Lists what the headers declare at namespace scope for users, a name a line: header, namespace below bifolium, kind, name, the
# first sentence of its comment, parted by tabs. Kinds: type, concept, value, function, operator, literal. Passed over are
# `namespace detail`, the detail/ folders, specialisations and friends. With --module it writes the C++20 module instead:
#   perl cmake/public_names.pl include
#   perl cmake/public_names.pl include --module >cmake/bifolium.cppm
# Tests hold the module, and the index of functions in cmake/doc/functions.md, to this list.
use strict;
use warnings;

my $include = shift // 'include';
my $module = (shift // '') eq '--module';

my (@headers, @names, %is_inline);

sub find_headers {
  my ($folder) = @_;
  opendir my $listing, "$include/$folder" or die "$include/$folder: $!";
  for my $entry (sort readdir $listing) {
    next if $entry =~ /^\./ or $entry eq 'detail';
    if (-d "$include/$folder/$entry") { find_headers("$folder/$entry") }
    elsif ($entry =~ /\.hpp$/) { push @headers, "$folder/$entry" }
  }
}

# Tokens: words, strings, comments of documentation (kept apart), single characters; directives and other comments are dropped.
sub tokens {
  my ($text) = @_;
  $text =~ s/\\\n/ /g;
  $text =~ s/^[ \t]*#[^\n]*//mg;
  my @tokens;
  while ($text =~ m{\G(?:
      \s+ | (?<doc>///(?!<)[^\n]*) | //[^\n]* | /\*.*?\*/ |
      (?<raw>R"(?<mark>[^(\s]*)\(.*?\)\g{mark}") | (?<string>"(?:[^"\\]|\\.)*") | (?<char>'(?:[^'\\]|\\.)+') |
      (?<word>[A-Za-z_]\w*) | (?<number>\.?\d(?:[\w.']|[eEpP][+-])*) | (?<pair>::|->|<=>|<<=|>>=|==|!=|<=|>=|&&|\|\|) | (?<other>.)
    )}gsx) {
    if (defined $+{doc}) { push @tokens, $+{doc} }
    elsif (defined $+{raw}) { push @tokens, '""' }
    elsif (defined $+{string}) { push @tokens, '""' }
    elsif (defined $+{char}) { push @tokens, "' '" }
    else { my $token = $+{word} // $+{number} // $+{pair} // $+{other}; push @tokens, $token if defined $token }
  }
  return @tokens;
}

# What a declaration, given as tokens without its body, declares: kind and name, or none.
sub declared {
  my @words = @_;
  return if grep { $_ eq 'friend' || $_ eq 'static_assert' } @words[0 .. ($#words < 0 ? -1 : 0)];
  my $i = 0;
  while ($i <= $#words) { # attributes, template heads, requires-clauses
    if ($words[$i] eq '[' && ($words[$i + 1] // '') eq '[') { $i++ until $words[$i] eq ']'; $i += 2 }
    elsif ($words[$i] eq 'template') {
      return if ($words[$i + 1] // '') ne '<'; # an explicit instantiation
      return if $words[$i + 2] eq '>';         # a specialisation
      my $depth = 0;
      for ($i++; $i <= $#words; $i++) {
        $depth++ if $words[$i] eq '<' || $words[$i] eq '(' || $words[$i] eq '{';
        $depth-- if $words[$i] eq '>' || $words[$i] eq ')' || $words[$i] eq '}';
        last if $depth == 0;
      }
      $i++;
    }
    elsif ($words[$i] eq 'requires') { # up to the declaration's first word that cannot be of a condition
      $i++;
      while ($i <= $#words) {
        if ($words[$i] eq '(') { my $d = 0; do { $d += $words[$i] eq '('; $d -= $words[$i] eq ')'; $i++ } while $d > 0; }
        else { # a concept, perhaps with arguments
          $i++ while ($words[$i] =~ /^(\w+|::)$/ && ($words[$i + 1] // '') =~ /^(::|\w+)$/ && ($words[$i] eq '::' || $words[$i + 1] eq '::'));
          $i++;
          if (($words[$i] // '') eq '<') { my $d = 0; do { $d += $words[$i] eq '<'; $d -= $words[$i] eq '>'; $i++ } while $d > 0; }
        }
        last unless ($words[$i] // '') =~ /^(&&|\|\|)$/;
        $i++;
      }
    }
    else { last }
  }
  @words = @words[$i .. $#words];
  return unless @words;
  return ('concept', $words[1]) if $words[0] eq 'concept';
  return if $words[0] eq 'using' && ($words[2] // '') ne '=';
  return ('type', $words[1]) if $words[0] eq 'using';
  if ($words[0] =~ /^(struct|class|union|enum)$/) {
    my $at = 1;
    $at++ if $words[$at] =~ /^(struct|class)$/;
    while ($words[$at] eq '[') { $at++ until $words[$at] eq ']'; $at += 2 }
    return if ($words[$at + 1] // '') =~ /^(<|::)$/; # a specialisation, or a class defined outside its class
    return ('type', $words[$at]);
  }
  # a function, an operator or a value
  my ($depth, $name) = (0, undef);
  for (my $at = 0; $at <= $#words; $at++) {
    my $word = $words[$at];
    if ($word eq 'operator' && $depth == 0) {
      return ('literal', "operator\"\"$words[$at + 2]") if $words[$at + 1] eq '""';
      my $symbol = '';
      for (my $s = $at + 1; $s <= $#words; $s++) { last if $words[$s] eq '(' && $symbol ne ''; $symbol .= $words[$s] }
      return ('operator', "operator$symbol");
    }
    if ($word eq '<' && $at > 0 && $words[$at - 1] =~ /^\w+$/) { $depth++; next }
    if ($word eq '>' && $depth > 0) { $depth--; next }
    next if $depth > 0;
    if ($word eq '(') {
      if (defined $name && $name =~ /^(decltype|alignas|explicit|noexcept|requires)$/) {
        my $d = 0;
        for (; $at <= $#words; $at++) { $d += $words[$at] eq '('; $d -= $words[$at] eq ')'; last if $d == 0 }
        $name = undef;
        next;
      }
      return if ($at >= 2 && $words[$at - 2] eq '::'); # a member defined outside its class
      return ('function', $name);
    }
    return ('value', $name) if $word eq '=' || $word eq '{' || $word eq '[' && ($words[$at + 1] // '') ne '[' && defined $name && $name !~ /^(const|constexpr|inline)$/;
    $name = $word if $word =~ /^[A-Za-z_]\w*$/;
  }
  return ('value', $name) if grep { $_ eq 'constexpr' || $_ eq 'inline' } @words;
  return;
}

sub sentence {
  my ($comment) = @_;
  $comment =~ s/\s+/ /g;
  $comment =~ s/^ //;
  return $comment =~ /^(.*?[.:;])(?:\s|$)/ ? $1 : $comment;
}

find_headers('bifolium');
for my $header (@headers) {

  open my $file, '<:raw', "$include/$header" or die "$include/$header: $!";
  local $/;
  my @tokens = tokens(scalar <$file>);
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
