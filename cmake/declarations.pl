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
# Strings and characters are empty, unless `$whole` asks for them.
sub tokens {
  my ($text, $whole) = @_;
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
    elsif (defined $+{string}) { push @tokens, $whole ? $+{string} : '""' }
    elsif (defined $+{char}) { push @tokens, $whole ? $+{char} : "' '" }
    else { my $token = $+{word} // $+{number} // $+{pair} // $+{other}; push @tokens, $token if defined $token }
  }
  return @tokens;
}

# The number of words before a declaration itself: attributes, template heads, requires-clauses.
sub words_before {
  my @words = @_;
  my $i = 0;
  while ($i <= $#words) {
    if ($words[$i] eq '[' && ($words[$i + 1] // '') eq '[') { $i++ until $words[$i] eq ']'; $i += 2 }
    elsif ($words[$i] eq 'template') {
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
        if ($words[$i] eq 'requires') { # an expression: its parameters, if it has any, and its body
          my $d = 0;
          do { $i++; $d += $words[$i] =~ /^[({]$/; $d -= $words[$i] =~ /^[)}]$/ } until $d == 0 && $words[$i] eq '}' || $i >= $#words;
          $i++;
        }
        elsif ($words[$i] eq '(') { my $d = 0; do { $d += $words[$i] eq '('; $d -= $words[$i] eq ')'; $i++ } while $d > 0; }
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
  return $i;
}

# What a declaration, given as tokens without its body, declares: kind and name, or none.
sub declared {
  my @words = @_;
  return if @words && $words[0] =~ /^(?:friend|static_assert)$/;
  for my $i (grep { $words[$_] eq 'template' } 0 .. $#words) {
    return if ($words[$i + 1] // '') ne '<';      # an explicit instantiation
    return if $i == 0 && $words[$i + 2] eq '>'; # a specialisation
  }
  @words = @words[words_before(@words) .. $#words];
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

# What a text declares for users at namespace scope, in its order: each with the namespaces around it, its kind and name, its tokens
# without the body, the comment before it and the one behind it. `namespace detail` is passed over. The last argument takes which
# namespaces are inline.
sub public_declarations {
  my ($text, $is_inline) = @_;
  my @tokens = tokens($text, 1);
  my (@found, @spaces, @words, $fresh);
  my $comment = '';
  my $past = sub { # the place of the bracket that closes the one at $at
    my ($at, $opens, $closes) = @_;
    for (my $depth = 0; $at <= $#tokens; $at++) { $depth += $tokens[$at] =~ $opens; $depth -= $tokens[$at] =~ $closes; return $at if $depth == 0 }
    return $#tokens + 1;
  };
  my $ends_with_requires = sub { # `requires` or `requires(...)` is last
    my $i = $#words;
    if ($i >= 0 && $words[$i] eq ')') { my $depth = 0; do { $depth += $words[$i] eq ')'; $depth -= $words[$i] eq '('; $i-- } while $depth > 0 && $i >= 0 }
    return $i >= 0 && $words[$i] eq 'requires' && $i > 0 && $words[$i - 1] =~ /^(?:requires|&&|\|\|)$/;
  };
  for (my $at = 0; $at <= $#tokens; $at++) {
    my $token = $tokens[$at];
    if ($token =~ m{^///<(.*)}) { $found[-1]{behind} .= $1 if @found && !@words; next }
    if ($token =~ m{^///(.*)}) {
      $comment = '' unless $fresh;
      $comment .= "$1\n" unless @words;
      $fresh = 1;
      next;
    }
    $fresh = 0 unless @words; # what follows belongs to the comment
    if (!@words && ($token eq 'namespace' || $token eq 'inline' && ($tokens[$at + 1] // '') eq 'namespace')) {
      my $inline = $token eq 'inline';
      $at++ if $inline;
      my $name = '';
      for ($at++; $tokens[$at] ne '{' && $tokens[$at] ne ';' && $tokens[$at] ne '='; $at++) { $name .= $tokens[$at] }
      if ($tokens[$at] eq '{') { push @spaces, $name; $is_inline->{$name} = $inline }
      else { $at++ until $tokens[$at] eq ';' }
      $comment = '';
      next;
    }
    if ($token eq '}' && !@words) { pop @spaces; $comment = ''; next }
    if ($token eq ';' && !@words) { next }
    if ($token eq '{' && $ends_with_requires->()) { # the body of an expression in a requires-clause
      my $end = $past->($at, qr/^\{$/, qr/^\}$/);
      push @words, @tokens[$at .. $end];
      $at = $end;
      next;
    }
    if ($token eq '{' || $token eq ';') {
      my @head = @words;
      push @head, '{' if $token eq '{';
      my ($kind, $name) = declared(@head);
      if (@spaces && $spaces[0] eq 'bifolium' && join('::', @spaces) !~ /\bdetail\b/ && defined $kind && defined $name) {
        push @found, {spaces => [@spaces], kind => $kind, name => $name, head => [@words], comment => $comment, behind => ''};
      }
      if ($token eq '{') { # past the body
        $at = $past->($at, qr/^\{$/, qr/^\}$/);
        # a value, or a class, ends with a semicolon; a function does not
        if (($tokens[$at + 1] // '') eq ';') { $at++ }
        elsif (defined $kind && $kind eq 'value') { $at++ until ($tokens[$at] // ';') eq ';' }
      }
      @words = ();
      $comment = '';
      next;
    }
    # a brace initialiser inside a parameter list, or a requires-expression
    if ($token eq '(') {
      my $end = $past->($at, qr/^\($/, qr/^\)$/);
      push @words, grep { !m{^///} } @tokens[$at .. $end];
      $at = $end;
      next;
    }
    if ($token eq ':' && grep { $_ eq ')' } @words) { # the initialisers of a constructor defined outside its class
      do {
        $at++ until $tokens[$at] =~ /^[({]$/;
        $at = $past->($at, qr/^[({]$/, qr/^[)}]$/) + 1;
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
  return @found;
}

# The folders in the order of use, with words for each.
sub folders {
  return (
    [book => 'A whole description'], [record => 'The statements of a record'], [collation => 'Collation formulas'],
    [copy => 'One copy'], [evidence => 'The evidence of a leaf, and its format'], [edition => 'Paper and presswork of an edition'],
    [paper => 'Paper, lengths and places'], [fold => 'Formats and schemes of folding'], [imposition => 'Formes'],
    [leaf => 'Leaves, gatherings, signatures'], [explain => 'Words for the reader'], [drawing => 'Pictures'],
    [core => 'Errors, numbers and text'],
  );
}

# Tokens as a person writes them.
sub written {
  my ($text, $before) = ('', '');
  for my $token (@_) {
    $text .= ' ' if $token =~ /^\w/ && $before =~ /[\w>&*]$/ || $before eq ',' || $token =~ /^"/ && $before =~ /\w$/;
    $text .= ' ' if $text ne '' && grep { /^(?:=|\|\||==|\?|:)$/ } $before, $token;
    $text .= $token;
    $before = $token;
  }
  return $text;
}

# For a page of Markdown: words with nothing in them that it would read as its own, code in a cell, the name of a heading.
sub cell {
  my ($text) = @_;
  $text =~ s/\|/\\|/g;
  return join '', map { /^`/ ? $_ : s/</&lt;/gr } split /(`[^`]*`)/, $text;
}
sub code { my ($text) = @_; return $text eq '' ? '' : '`' . ($text =~ s/\|/\\|/gr) . '`' }
sub anchor { return lc($_[0]) =~ s/[^\w]//gr }

1;
