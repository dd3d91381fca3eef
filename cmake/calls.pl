# SPDX-License-Identifier: MIT
# Writes the page "how it is called", cmake/doc/declarations.md: of each header for users its functions as they are declared, with the
# whole comment of each, and its constants. Passed over are `namespace detail`, the detail/ folders, what is deleted, comparisons, and
# the words of a declaration that tell a caller nothing (attributes, inline, noexcept, macros).
#   perl cmake/calls.pl include >cmake/doc/declarations.md
#   perl cmake/calls.pl include --declarations     a line for each function: header, namespace below bifolium, name, declaration
#   perl -i cmake/calls.pl include --link cmake/doc/functions.md     writes the links of the index to that page
use strict;
use warnings;
use FindBin;
require "$FindBin::Bin/declarations.pl";

my $include = shift // die "perl calls.pl INCLUDE\n";
my $asked = shift // '';
my $declarations_only = $asked eq '--declarations';
my $width = 112; # of a line of code

if ($asked eq '--link') { # a header in the last cell of a row leads to its heading, the cell's * stays behind it
  while (<>) {
    if (my ($row, $headers) = /^(\| .* \| `.*` \| )(.*) \|$/) {
      $headers =~ s/\[(`[^`]*`)\]\([^)]*\)/$1/g;
      $headers =~ s/`([^`]*)`/"[`$1`](declarations.md#" . anchor($1) . ')'/ge;
      $_ = "$row$headers |\n";
    }
    print;
  }
  exit;
}

# The words of a declaration that are for a caller.
sub for_caller {
  my @head = @_;
  my @words;
  while (@head) {
    my $word = shift @head;
    if ($word eq '[' && ($head[0] // '') eq '[') { shift @head while $head[0] ne ']'; splice @head, 0, 2; next }
    if ($word eq 'noexcept') {
      next if ($head[0] // '') ne '(';
      my $depth = 0;
      do { $depth += $head[0] eq '('; $depth -= $head[0] eq ')'; shift @head } while $depth > 0;
      next;
    }
    push @words, $word unless $word =~ /^(?:inline|extern|BIFOLIUM_\w+)$/;
  }
  return @words;
}

# A declaration in its parts: what is before the parameters, each parameter, what is behind them.
sub parts {
  my ($name, $space, @words) = @_;
  my $literal = $name =~ s/^operator""//;
  my ($at) = grep { $literal ? $words[$_] eq $name && $words[$_ - 1] eq '""'
    : $name =~ /^operator/ ? $words[$_] eq 'operator' : $words[$_] eq $name && ($words[$_ + 1] // '') eq '(' } 0 .. $#words;
  die "$name is not in: @words\n" unless defined $at;
  $at++ while $words[$at + 1] ne '('; # of an operator
  my @before = @words[0 .. $at];
  my (@parameters, @one);
  my ($depth, $angles) = (0, 0);
  for ($at += 2; $depth || $words[$at] ne ')'; $at++) {
    my $word = $words[$at];
    $depth += $word =~ /^[({<\[]$/;
    $depth -= $word =~ /^[)}>\]]$/;
    if ($word eq ',' && !$depth) { push @parameters, written(@one); @one = (); next }
    push @one, $word;
  }
  push @parameters, written(@one) if @one;
  my $heads = words_before(@before);
  my @heads = splice @before, 0, $heads;
  my ($condition) = grep { $heads[$_] eq 'requires' } 0 .. $#heads;
  my $template = written(@heads[0 .. ($condition // @heads) - 1]) =~ s/^template</template </r;
  $template .= ' ' . (written(@heads[$condition .. $#heads]) =~ s/\)\{/) { /r =~ s/;\}$/; }/r =~ s/\* (?=\w)/*/gr) if defined $condition;
  my $before = written(@before);
  $before =~ s/operator ""/operator""/;
  my $said = $name =~ /^\w+$/ && !$literal ? $name : '';
  $before =~ s/\b\Q$said\E$/${space}::$said/ if $said && $space ne '' && $space ne 'literals';
  my $behind = written(@words[$at + 1 .. $#words]);
  $behind = " $behind" if $behind ne '';
  s/->/ -> /, s/ +/ /g for $behind;
  s/\.\.\.(?=\w)/... / for $before, @parameters;
  return ($before, \@parameters, $behind, $template);
}
sub as_one_line { my ($before, $parameters, $behind, $template) = @_; return ($template eq '' ? '' : "$template ") . "$before(" . join(', ', @$parameters) . ")$behind;" }
sub as_code {
  my ($before, $parameters, $behind, $template) = @_;
  my $line = as_one_line(@_);
  return $line if length $line <= $width && $template !~ /\brequires\b/;
  my @lines = $template eq '' ? () : ($template);
  my $now = "$before(";
  for my $i (0 .. $#$parameters) {
    my $piece = $parameters->[$i] . ($i < $#$parameters ? ',' : ")$behind;");
    if (length("$now $piece") > $width && $now =~ /\S/) { push @lines, $now; $now = "    $piece"; next }
    $now .= ($now =~ /\($/ && $i == 0 ? '' : ' ') . $piece;
  }
  return join "\n", @lines, $now;
}

# Words of a comment as paragraphs, with nothing in them that Markdown would read as its own.
sub paragraphs {
  my ($comment) = @_;
  my @paragraphs = map { s/\s+/ /gr =~ s/^ | $//gr } split /\n[ \t]*\n/, $comment;
  return join "\n\n", map { join '', map { /^`/ ? $_ : s/([*])/\\$1/gr =~ s/</&lt;/gr } split /(`[^`]*`)/ } grep { $_ ne '' } @paragraphs;
}

my %of; # header => what it declares
for my $header (headers_in($include, 'bifolium')) {
  next if $header eq 'bifolium/fwd.hpp'; # what it declares is declared elsewhere
  open my $file, '<:raw', "$include/$header" or die "$include/$header: $!";
  my @found = public_declarations(do { local $/; scalar <$file> }, {});
  my %types = map { $_->{kind} eq 'type' ? ($_->{name} => 1) : () } @found;
  $header =~ s{^bifolium/}{};
  my %seen;
  for my $one (@found) {
    next if $one->{kind} =~ /^(?:type|concept)$/ || $types{$one->{name}}; # a deduction guide has the name of its type
    next if $one->{name} =~ /^operator(?:==|<=>)$/ || "@{$one->{head}}" =~ /= delete$/;
    my %row = (kind => $one->{kind}, name => $one->{name}, words => paragraphs($one->{comment} ne '' ? $one->{comment} : $one->{behind}),
      space => join '::', grep { $_ ne 'bifolium' && $_ ne 'v0' } @{$one->{spaces}});
    if ($one->{kind} eq 'value') {
      my @words = for_caller(@{$one->{head}});
      my ($at) = grep { $words[$_] eq $one->{name} } 0 .. $#words;
      $row{type} = written(grep { $_ !~ /^(?:constexpr|const)$/ } @words[0 .. $at - 1]);
    } else {
      $row{parts} = [parts($one->{name}, $row{space}, for_caller(@{$one->{head}}))];
      next if $seen{as_one_line(@{$row{parts}}) =~ s/ = [^,;]*(?=[,)])//gr}++; # it is defined after it was declared
    }
    push @{$of{$header}}, \%row;
  }
}
my @headers = sort keys %of;

if ($declarations_only) {
  for my $header (@headers) {
    print join("\t", $header, $_->{space}, $_->{name}, as_one_line(@{$_->{parts}})), "\n" for grep { $_->{parts} } @{$of{$header}};
  }
  exit;
}

print <<'TEXT';
<!-- SPDX-License-Identifier: MIT -->
# How it is called

The functions of each header for users, with what they take and give, and the whole comment of each: units, errors, preconditions, an
example. `Expected<T>` is a T or an error, and a name after `Errors:` is a `Problem` ([errors by their text](errors.md)); what breaks a
precondition throws `BrokenPrecondition`. A parameter with a default may be left out. Everything is in namespace `bifolium`; literals are
in `bifolium::literals`, which `using namespace bifolium` brings. What is `constexpr` may be called while compiling. Values of one type
are compared with `==` and written with `<<`, which is not said again for each.
[What to call](functions.md) goes from the work to the function, [what a type holds](members.md) has the members of the types named
here. The page is written from the headers by `perl cmake/calls.pl include`; a test compares both, and lets a compiler look for each
function. Find a function with your browser's search, or here:

TEXT
my %by; # first letter => name => headers
for my $header (@headers) {
  for my $row (grep { $_->{kind} =~ /^(?:function|literal)$/ } @{$of{$header}}) {
    my $name = ($row->{space} =~ /^(?:literals)?$/ ? '' : "$row->{space}::") . $row->{name} =~ s/^operator//r;
    $by{$name =~ /^(\w)/ ? lc $1 : '"'}{$name}{$header} = 1;
  }
}
sub link_to { my ($words, $header) = @_; return "[$words](#" . anchor($header) . ')' }
print join(' | ', map {
  my $names = $by{$_};
  join ', ', map {
    my @in = sort keys %{$names->{$_}};
    @in == 1 ? link_to("`$_`", $in[0]) : "`$_` (" . join(', ', map { link_to($_ =~ s/\.hpp$//r, $_) } @in) . ')';
  } sort { lc $a cmp lc $b } keys %$names;
} sort keys %by), "\n";

for my $folder (folders()) {
  my ($name, $words) = @$folder;
  print "\n## $words\n";
  for my $header (grep { m{^$name/} } @headers) {
    print "\n### $header\n";
    for my $row (grep { $_->{parts} } @{$of{$header}}) { print "\n```cpp\n", as_code(@{$row->{parts}}), "\n```\n$row->{words}\n" }
    my @values = grep { !$_->{parts} } @{$of{$header}};
    next unless @values;
    print "\n| constant | type | meaning |\n|---|---|---|\n";
    print '| ', code($_->{space} eq '' ? $_->{name} : "$_->{space}::$_->{name}"), ' | ', code($_->{type}), ' | ', $_->{words} =~ s/\|/\\|/gr =~ s/\n+/ /gr, " |\n" for @values;
  }
}
