# SPDX-License-Identifier: MIT
# Writes the page of members, cmake/doc/members.md: of each type for users what it holds and what can be asked of it, in the order
# of the header, with the words that the header has for each. Passed over are `namespace detail`, the detail/ folders, what is
# private, friends, operators, and constructors without a comment.
#   perl cmake/members.pl include >cmake/doc/members.md
#   perl cmake/members.pl include --fields     a line for each type that holds public members alone: header, type, their names
use strict;
use warnings;
use FindBin;
require "$FindBin::Bin/declarations.pl";

my $include = shift // die "perl members.pl INCLUDE\n";
my $fields_only = (shift // '') eq '--fields';

# Headers for whoever reads texts of his own, fits the model anew or draws pictures of his own: their types are passed over.
my %passed_over = map { ("bifolium/$_.hpp" => 1) } qw(fwd formatter book/weight_counts core/character_references core/text_cursor
  core/utf8 drawing/svg evidence/paper_counts evidence/parameters evidence/ranked_formats leaf/book_nouns leaf/counts_in_words leaf/found_signature
  leaf/leaf_words leaf/lexer leaf/markup leaf/signature_key leaf/signature_reader leaf/token leaf/token_cursor);
my %nothing = map { $_ => 1 } qw(BIFOLIUM_LIFETIMEBOUND BIFOLIUM_INLINE noexcept explicit inline virtual override mutable);
my @types; # each: name, header, words, rows of [name, type, words, kind], is it a class with something private

# The token after the bracket that is closed again, from one that opens.
sub past {
  my ($tokens, $at) = @_;
  my %closes = ('(' => ')', '{' => '}', '[' => ']', '<' => '>');
  my ($opens, $closes) = ($tokens->[$at], $closes{$tokens->[$at]});
  for (my $depth = 0; $at <= $#$tokens; $at++) {
    $depth += $tokens->[$at] eq $opens;
    $depth -= $tokens->[$at] eq $closes;
    return $at + 1 if $depth == 0;
  }
  die "a bracket is not closed\n";
}
sub without_head { # template heads, attributes and the words that say nothing of the type
  my @words = @_;
  while (@words) {
    if ($words[0] eq 'template') { splice @words, 0, past(\@words, 1) }
    elsif ($words[0] eq '[' && ($words[1] // '') eq '[') { splice @words, 0, past(\@words, 0) }
    elsif ($words[0] eq 'requires') { splice @words, 0, ($words[1] eq '(' ? past(\@words, 1) : 2 + ($words[2] eq '::') * 2);
      splice @words, 0, past(\@words, 0) if $words[0] eq '<' }
    elsif ($words[0] eq 'explicit' && $words[1] eq '(') { splice @words, 0, past(\@words, 1) }
    elsif ($nothing{$words[0]} || $words[0] =~ /^(?:static|constexpr|consteval|const)$/) { shift @words }
    else { last }
  }
  return @words;
}
sub first_sentences { # of a function: what it returns, and what must hold before
  my ($words) = @_;
  $words =~ s/\bExample: `.*//;
  my ($first) = $words =~ /^(.*?\.)(?=\s+[A-Z`"]|\s*$)/ ? $1 : $words;
  my ($needs) = $words =~ /(Preconditions?: .*?\.)(?=\s+[A-Z`]|\s*$)/;
  return defined $needs && index($first, $needs) < 0 ? "$first $needs" : $first;
}
sub names_and_defaults { # of `a{1}, b{}, c[3]{}`
  my @words = @_;
  my @found;
  while (@words) {
    my $name = shift @words;
    while (@words && $words[0] eq '[') { my $end = past(\@words, 0); $name .= written(splice @words, 0, $end) }
    my @default;
    if (@words && $words[0] eq '{') { my $end = past(\@words, 0); @default = splice @words, 0, $end }
    elsif (@words && $words[0] eq '=') { shift @words; push @default, shift @words while @words && $words[0] ne ','; }
    shift @words if @words && $words[0] eq ',';
    my $default = written(@default);
    $default =~ s/^\{(.*)\}$/$1/s;
    push @found, [$name, $default];
  }
  return @found;
}

# One class or enumeration, from the token after its `{`; returns its rows and what is within it.
sub members {
  my ($type, $tokens, $at, $public) = @_;
  my ($comment, @words, @last) = ('');
  my $words_of = sub { my $text = $comment; $comment = ''; $text =~ s/\s+/ /g; $text =~ s/^ | $//g; return $text };
  for (; $tokens->[$at] ne '}'; $at++) {
    my $token = $tokens->[$at];
    if ($token =~ m{^///<(.*)}) { my $more = $1; $_->[2] = ($_->[2] . $more) =~ s/^\s+//r for @last; next }
    if ($token =~ m{^///(.*)}) { $comment .= $1; next }
    if (!@words && $token =~ /^(?:public|private|protected)$/ && $tokens->[$at + 1] eq ':') { $public = $token eq 'public'; $comment = ''; $at++; next }
    if ($token eq '(') { my $end = past($tokens, $at); push @words, grep { !m{^///} } @$tokens[$at .. $end - 1]; $at = $end - 1; next }
    if ($token eq '{' && !(grep { $_ eq '(' } @words) && ($words[0] // '') !~ /^(?:struct|class|enum|union|template)$/) { # a value
      my $end = past($tokens, $at); push @words, @$tokens[$at .. $end - 1]; $at = $end - 1; next;
    }
    if ($token eq ':' && @words && grep({ $_ eq ')' } @words) && $words[0] ne 'class') { # what a constructor makes first
      while ($tokens->[$at] ne '{' || $tokens->[$at - 1] =~ /^\w+$/ || $tokens->[$at - 1] eq '>') { $at = $tokens->[$at] =~ /^[({]$/ ? past($tokens, $at) : $at + 1 }
      $at--;
      next;
    }
    if ($token ne ';' && $token ne '{') { push @words, $token; next }
    my $begins = $token eq '{';
    my @all = @words;
    @words = ();
    my $said = $words_of->();
    @last = ();
    if ($begins) {
      if ($all[0] =~ /^(?:struct|class|enum|union|template)$/ && ((declared(@all, '{'))[0] // '') eq 'type') {
        $at = nested($type, \@all, $said, $tokens, $at, $public);
        next;
      }
      $at = past($tokens, $at) - 1;
      $at++ if ($tokens->[$at + 1] // '') eq ';';
    }
    next if !@all || $all[0] =~ /^(?:using|static_assert|class|struct)$/ || grep { $_ eq 'friend' || $_ eq 'operator' } @all;
    if (!$public) { $type->{hides} = 1 unless grep { $_ eq '(' || $_ eq 'static' } @all; next }
    next if "@all" =~ /= (?:delete|default)$/;
    my ($bare) = [without_head(@all)];
    my ($paren, $angles) = (undef, 0); # the first bracket outside angle brackets
    for my $i (0 .. $#$bare) { $angles += ($bare->[$i] eq '<') - ($bare->[$i] eq '>'); $paren //= $i if !$angles && $bare->[$i] eq '(' }
    my $is_static = grep { $_ eq 'static' } @all;
    if (!defined $paren || grep { $_ eq '{' || $_ eq '=' } @$bare[0 .. $paren]) { # a value
      my $depth = 0;
      my $name_at;
      for my $i (0 .. $#$bare) { # the last word before the first `{`, `=`, `,` or `[` outside angle brackets
        $depth += $bare->[$i] eq '<', next if $bare->[$i] =~ /^[<]$/;
        $depth -= $bare->[$i] eq '>', next if $bare->[$i] eq '>';
        last if !$depth && $bare->[$i] =~ /^[{=,\[]$/;
        $name_at = $i if !$depth && $bare->[$i] =~ /^\w+$/;
      }
      my $of = written(@$bare[0 .. $name_at - 1]);
      for my $one (names_and_defaults(@$bare[$name_at .. $#$bare])) {
        my ($name, $default) = @$one;
        push @last, [$name, $of, $said, $is_static ? 'constant' : 'field', $default];
      }
      push @{$type->{rows}}, @last;
      next;
    }
    my $end = past($bare, $paren);
    my @before = @$bare[0 .. $paren - 1];
    my $made = $before[-1] eq $type->{short};
    if ($made && @before == 1) { next if $said eq '' }
    my $name = written(@$bare[$#before .. $end - 1]);
    next if $said =~ /^(?:Refuses|Stops the compiler|Does not compile)/; # it is there for its sentence
    next if grep { $_->[0] eq $name && $_->[3] eq 'function' } @{$type->{rows}}; # the same of a temporary
    push @{$type->{rows}}, [$name, $made ? '' : ($is_static ? 'static ' : '') . written(grep { !$nothing{$_} } @before[0 .. $#before - 1]), first_sentences($said), 'function', ''];
  }
  return $at;
}
sub enumerators {
  my ($type, $tokens, $at) = @_;
  my ($comment, @last) = ('');
  for (; $tokens->[$at] ne '}'; $at++) {
    my $token = $tokens->[$at];
    if ($token =~ m{^///<(.*)}) { $last[-1][2] .= $1; $last[-1][2] =~ s/^ +//; next }
    if ($token =~ m{^///(.*)}) { $comment .= $1; next }
    next if $token eq ',';
    push @last, [$token, '', $comment =~ s/^ +//r, 'enumerator', ''];
    $comment = '';
    if ($tokens->[$at + 1] eq '=') { $at += 1; $at++ until $tokens->[$at + 1] =~ /^[,}]$/ }
  }
  $type->{rows} = \@last;
  $type->{enum} = 1;
  return $at;
}
# A type with its body at `{`; returns the place of its `}`.
sub nested {
  my ($outer, $head, $words, $tokens, $at, $public) = @_;
  my ($kind, $name) = declared(@$head, '{');
  return past($tokens, $at) - 1 unless defined $name && ($kind // '') eq 'type';
  my @bare = without_head(@$head);
  my ($parameters) = $head->[0] eq 'template' ? written(@$head[1 .. past($head, 1) - 1]) : '';
  my %type = (name => $outer ? "$outer->{name}::$name" : $name, short => $name, header => $outer ? $outer->{header} : '', words => $words,
    rows => [], template => $parameters, hides => 0);
  ($type{short}) = $name =~ /(\w+)$/;
  my ($colon) = grep { $bare[$_] eq ':' } 0 .. $#bare;
  $type{base} = written(grep { $_ ne 'public' } @bare[$colon + 1 .. $#bare]) if defined $colon && $bare[0] ne 'enum';
  push @types, \%type if $public;
  return $bare[0] eq 'enum' ? enumerators(\%type, $tokens, $at + 1) : members(\%type, $tokens, $at + 1, $bare[0] eq 'struct');
}

for my $header (headers_in($include, 'bifolium')) {
  next if delete $passed_over{$header};
  open my $file, '<:raw', "$include/$header" or die "$include/$header: $!";
  my @tokens = tokens(do { local $/; scalar <$file> });
  my (@spaces, @words, $comment, $fresh);
  my $known = @types;
  ($comment, $fresh) = ('', 0);
  for (my $at = 0; $at <= $#tokens; $at++) {
    my $token = $tokens[$at];
    next if $token =~ m{^///<};
    if ($token =~ m{^///(.*)}) { $comment = '' unless $fresh; $comment .= $1 unless @words; $fresh = 1; next }
    $fresh = 0 unless @words;
    if (!@words && ($token eq 'namespace' || $token eq 'inline' && $tokens[$at + 1] eq 'namespace')) {
      my $name = '';
      for ($at += $token eq 'inline' ? 2 : 1; $tokens[$at] !~ /^[{;=]$/; $at++) { $name .= $tokens[$at] }
      if ($tokens[$at] eq '{') { push @spaces, $name } else { $at++ until $tokens[$at] eq ';' }
      $comment = '';
      next;
    }
    if ($token eq '}' && !@words) { pop @spaces; $comment = ''; next }
    if ($token eq '(') { my $end = past(\@tokens, $at); push @words, @tokens[$at .. $end - 1]; $at = $end - 1; next }
    if ($token ne ';' && $token ne '{') { push @words, $token; next }
    my $mine = @spaces && $spaces[0] eq 'bifolium' && !grep { /\bdetail\b/ } @spaces;
    if ($token eq '{') {
      my ($kind, $name) = declared(@words, '{');
      my @bare = without_head(@words);
      my $is_type = @bare && $bare[0] =~ /^(?:struct|class|enum)$/;
      my $outside = $is_type && ($bare[2] // '') eq '::'; # a class within another, defined after it
      if ($mine && ($is_type && defined $kind || $outside)) {
        $comment =~ s/\s+/ /g;
        if ($outside) {
          my %type = (name => "$bare[1]::$bare[3]", short => $bare[3], words => $comment =~ s/^ //r, rows => [], hides => 0, template => '');
          push @types, \%type;
          $at = members(\%type, \@tokens, $at + 1, 0);
        } else {
          $at = nested(undef, \@words, $comment =~ s/^ //r, \@tokens, $at, 1);
        }
      } else { $at = past(\@tokens, $at) - 1 }
    } elsif ($mine && @words && $words[0] eq 'using' && ($words[2] // '') eq '=') {
      push @types, {name => $words[1], short => $words[1], words => $comment =~ s/^ //r, alias => written(@words[3 .. $#words]), rows => [], template => ''};
    }
    @words = ();
    $comment = '';
  }
  $_->{header} = $header =~ s{^bifolium/}{}r for @types[$known .. $#types];
}

die "there is no header $_\n" for keys %passed_over;
@types = grep { $_->{name} !~ /iterator$/i } @types;

if ($fields_only) {
  for my $type (grep { !$_->{enum} && !$_->{alias} && !$_->{hides} && !$_->{base} && $_->{template} eq '' } @types) {
    my @fields = map { $_->[0] =~ s/\[.*//r } grep { $_->[3] eq 'field' } @{$type->{rows}};
    print join("\t", $type->{header}, $type->{name}, "@fields"), "\n" if @fields;
  }
  exit;
}

print <<'TEXT';
<!-- SPDX-License-Identifier: MIT -->
# What a type holds

The members of the types for users, in the order of their declaration: that is the order in which `{.field = value}` is written. A field
that is left out is empty, unknown or zero, unless a default is named. Units are in the type (`millimetres`, `YearRange`) or in the
words. [What to call](functions.md) has the functions that take and give these values by their purpose,
[how it is called](declarations.md) by their header. The page is written from the headers by `perl cmake/members.pl include`; a test
compares both, and lets a compiler count the fields. Find a type with your browser's search, or here:

TEXT
my %by; push @{$by{lc substr($_->{name}, 0, 1)}}, $_->{name} for @types;
print join(' | ', map { my $letter = $_; join ', ', map { "[$_](#" . anchor($_) . ')' } sort { lc $a cmp lc $b } grep { !/::/ } @{$by{$letter}} } sort keys %by), "\n";
for my $folder (folders()) {
  my ($name, $words) = @$folder;
  my @here = grep { $_->{header} =~ m{^$name/} } @types;
  next unless @here;
  print "\n## $words\n";
  for my $type (@here) {
    print "\n### $type->{name}\n\n`$type->{header}`", $type->{template} ne '' ? ", `template $type->{template}`" : '', ": ", cell($type->{words}), "\n";
    print "Each is in [errors by their text](errors.md).\n" if $type->{name} eq 'Problem'; # made from a table
    if ($type->{alias}) { print "It is ", code($type->{alias}), ".\n"; next }
    print "It has all members of `$type->{base}`.\n" if $type->{base} && $type->{base} !~ /^(?:std|detail)::/;
    next unless @{$type->{rows}};
    if ($type->{enum} && !grep { $_->[2] ne '' } @{$type->{rows}}) { print "\n", join(', ', map { "`$_->[0]`" } @{$type->{rows}}), "\n"; next }
    print $type->{enum} ? "\n| value | meaning |\n|---|---|\n" : "\n| member | type | meaning |\n|---|---|---|\n";
    for my $row (@{$type->{rows}}) {
      my ($member, $of, $said, $kind, $default) = @$row;
      $said .= ($said eq '' ? '' : '; ') . "default `$default`" if $kind eq 'field' && $default ne '' && $default ne '""';
      $member .= " = $default" if $kind eq 'constant' && $default ne '';
      print $kind eq 'enumerator' ? '| ' . code($member) . ' | ' . cell($said) . " |\n"
        : '| ' . code($member) . ' | ' . code($kind eq 'constant' ? "static $of" : $of) . ' | ' . cell($said) . " |\n";
    }
  }
}
