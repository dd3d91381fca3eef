# SPDX-License-Identifier: MIT
# What the scripts that list the headers share: the headers for users, the tokens of one, and what a declaration declares.
use strict;
use warnings;

# The headers of a folder and of those below it, but for detail/.
sub headers_in {
  my ($include, $folder) = @_;
  opendir my $listing, "$include/$folder" or die "$include/$folder: $!";
  return map {
    my $entry = $_;
    $entry =~ /^\./ || $entry eq 'detail' ? () : -d "$include/$folder/$entry" ? headers_in($include, "$folder/$entry")
      : $entry =~ /\.hpp$/ ? "$folder/$entry" : ();
  } sort readdir $listing;
}

# Tokens: words, strings, comments of documentation (kept apart), single characters; directives and other comments are dropped.
sub tokens {
  my ($text) = @_;
  $text =~ s/\\\n/ /g;
  $text =~ s/^[ \t]*#[^\n]*//mg;
  my @tokens;
  while ($text =~ m{\G(?:
      \s+ | (?<doc>///[^\n]*) | //[^\n]* | /\*.*?\*/ |
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

1;
