# SPDX-License-Identifier: MIT
# What a value gives of itself by reference, pointer, view or iterator ends with the value. Clang warns of that where the function has
# BIFOLIUM_LIFETIMEBOUND; g++ 12 says nothing. So a public member function that gives such a thing is for values that stay (`&`,
# `const&`), and beside it is one for a temporary (`&&`, `const&&`) that is deleted or gives a copy; or it is here with the reason why
# not. The classes are read token by token: a pattern for whole lines once passed over types that it did not know.
#   perl views_are_marked.pl INCLUDE
use strict;
use warnings;
use FindBin;
require "$FindBin::Bin/../../cmake/declarations.pl";

my %not_of_the_value = (    # class, or class::function => what is given lasts longer than the object, or why it may not
  Attested                 => 'rows of a table, which last as long as the program',
  BrokenPrecondition       => 'a literal, given by a function that std::exception declares',
  CastOff                  => 'a literal',
  FormeView                => 'a view itself: it gives parts of the imposition',
  Gathering                => 'its iterator holds numbers',
  HeightClass              => 'rows of a table',
  HeightClasses            => 'rows of a table',
  Iterator                 => 'a part of the range, not of the iterator',
  Range                    => 'its iterator holds a row of a table',
  SchemeFacts              => 'rows of a table, which the facts only look at',
  SheetSize                => 'rows of a table',
  ShortText                => 'a text that is passed on in its expression, as of std::string',
  TextCursor               => 'a part of the text that the caller keeps',
  TextSpan                 => 'a part of the text that is passed',
  iterator                 => 'a part of the range, not of the iterator',
  'Expected::operator->'   => 'until the end of the expression, and of no value that says it gives views',
  'OptionalLength::operator->' => 'until the end of the expression; a length gives no views',
);
my $own_views = qr/\b(?:[Ii]terator|\w+_iterator|FormeView|Gatherings|Range)$/;

# The place after the bracket that is closed again.
sub past {
  my ($tokens, $at) = @_;
  my %closes = ('(' => ')', '{' => '}', '[' => ']', '<' => '>');
  my ($opens, $depth) = ($tokens->[$at], 0);
  for (; $at <= $#$tokens; $at++) {
    $depth += $tokens->[$at] eq $opens;
    $depth -= $tokens->[$at] eq $closes{$opens};
    return $at + 1 if $depth == 0;
  }
  die "a bracket is not closed\n";
}
# The name of a class from its head, without attributes; of one defined outside its class, the last.
sub class_name {
  my @head = @_;
  shift @head;
  splice @head, 0, past(\@head, 0) if $head[0] eq '[';
  shift @head, shift @head while ($head[1] // '') eq '::';
  return $head[0];
}

# The functions of one class and of those in it, from the token after its `{`; returns the place of its `}`.
sub functions {
  my ($class, $tokens, $at, $public, $found) = @_;
  my @words;
  for (; $tokens->[$at] ne '}'; $at++) {
    my $token = $tokens->[$at];
    next if $token =~ m{^///};
    if (!@words && $token =~ /^(?:public|private|protected)$/) { $public = $token eq 'public'; $at++; next }
    my $has_bracket = grep { $_ eq '(' } @words;
    if ($token eq '(') { my $end = past($tokens, $at); push @words, grep { !m{^///} } @$tokens[$at .. $end - 1]; $at = $end - 1; next }
    if ($token eq ':' && $has_bracket) { # what a constructor makes first
      while ($tokens->[$at] ne '{' || $tokens->[$at - 1] =~ /^(?:\w+|>)$/) { $at = $tokens->[$at] =~ /^[({]$/ ? past($tokens, $at) : $at + 1 }
      $at--;
      next;
    }
    if ($token ne ';' && $token ne '{') { push @words, $token; next }
    my @bare = @words[words_before(@words) .. $#words];
    if ($token eq '{' && @bare && $bare[0] =~ /^(?:struct|class)$/) {
      $at = functions(class_name(@bare), $tokens, $at + 1, $public && $bare[0] eq 'struct', $found);
    } elsif ($token eq '{') { $at = past($tokens, $at) - 1 }
    if ($token eq '{' && !$has_bracket && (!@bare || $bare[0] !~ /^(?:struct|class|enum|union)$/)) { push @words, '0'; next } # a value: more may follow
    @words = ();
    next if !$public || !$has_bracket || $bare[0] =~ /^(?:friend|using|static_assert|enum|struct|class)$/;
    my ($paren, $angles) = (undef, 0); # of the parameters
    my ($operator) = grep { $bare[$_] eq 'operator' } 0 .. $#bare;
    for my $i (0 .. $#bare) {
      $angles += ($bare[$i] eq '<') - ($bare[$i] eq '>') unless defined $operator && $i > $operator;
      $paren //= $i if !$angles && $bare[$i] eq '(' && $bare[$i - 1] ne 'operator' && $bare[$i - 1] ne 'explicit';
    }
    next if !defined $paren || grep { /^(?:=|static)$/ } @bare[0 .. ($operator // $paren) - 1];
    my $name_at = $operator // $paren - 1;
    my $name = join '', @bare[$name_at .. $paren - 1];
    my @gives = grep { !/^(?:constexpr|consteval|virtual|explicit|inline)$/ } @bare[0 .. $name_at - 1];
    @gives = @bare[$operator + 1 .. $paren - 1] if defined $operator && !@gives; # of a conversion
    push @{$found->{"${class}::$name"}}, {gives => join(' ', @gives), behind => join(' ', @bare[past(\@bare, $paren) .. $#bare])};
  }
  return $at;
}
sub is_view {
  my ($one, $name) = @_;
  return 0 if $one->{behind} =~ /= delete$/ || $name =~ /::operator(?:\+\+|--|.?=)$/; # what changes a value gives that value
  my $gives = $one->{gives};
  return $name =~ /::(?:begin|end)$/ if $gives =~ /^(?:auto|decltype)/ && $gives !~ /[&*]$/; # else what another function gives
  return $gives =~ /[&*]$/ || $gives =~ /\bstring_view(?: >)?$/ || $gives =~ /\bspan <.*>$/ || $gives =~ $own_views;
}

# What is wrong with the classes of a text.
sub unmarked {
  my ($text) = @_;
  my @tokens = tokens($text);
  my (@spaces, @words, %found, @wrong);
  for (my $at = 0; $at <= $#tokens; $at++) {
    my $token = $tokens[$at];
    next if $token =~ m{^///};
    if (!@words && ($token eq 'namespace' || $token eq 'inline' && $tokens[$at + 1] eq 'namespace')) {
      my $name = '';
      for ($at += $token eq 'inline' ? 2 : 1; $tokens[$at] !~ /^[{;=]$/; $at++) { $name .= $tokens[$at] }
      if ($tokens[$at] eq '{') { push @spaces, $name } else { $at++ until $tokens[$at] eq ';' }
      next;
    }
    if ($token eq '}' && !@words) { pop @spaces; next }
    if ($token eq '(') { my $end = past(\@tokens, $at); push @words, @tokens[$at .. $end - 1]; $at = $end - 1; next }
    if ($token ne ';' && $token ne '{') { push @words, $token; next }
    my @bare = @words[words_before(@words) .. $#words];
    @words = ();
    next if $token eq ';';
    my $is_class = @bare && $bare[0] =~ /^(?:struct|class)$/ && !grep { /\bdetail\b/ } @spaces;
    $at = $is_class ? functions(class_name(@bare), \@tokens, $at + 1, $bare[0] eq 'struct', \%found) : past(\@tokens, $at) - 1;
  }
  for my $name (sort keys %found) {
    my ($class) = $name =~ /^(\w+)::/;
    my @views = grep { is_view($_, $name) } @{$found{$name}};
    next if !@views || $not_of_the_value{$class} || $not_of_the_value{$name};
    my @of_temporary = grep { $_->{behind} =~ /^(?:const )?&&/ } @{$found{$name}};
    @of_temporary = grep { $_->{behind} =~ /^const &/ } @{$found{$name}} unless @of_temporary; # which takes a temporary as well
    if (!@of_temporary || grep { is_view($_, $name) } @of_temporary) { push @wrong, "$name gives a view of a temporary"; next }
    for my $one (@views) {
      my $marked = $one->{behind} =~ /LIFETIMEBOUND/ || grep { $_->{behind} =~ /= delete$/ } @of_temporary;
      push @wrong, "$name gives a view of the value: write BIFOLIUM_LIFETIMEBOUND" unless $marked;
    }
  }
  return (\@wrong, scalar keys %found);
}

my ($control) = unmarked(<<'END');
namespace mine {
struct A {
  [[nodiscard]] int const& a() const { return a_; }
  std::string_view b() const BIFOLIUM_LIFETIMEBOUND;
  std::string_view c() const& BIFOLIUM_LIFETIMEBOUND;
  std::string c() const&&;
  std::optional<std::string_view> d() const& BIFOLIUM_LIFETIMEBOUND;
  std::optional<std::string_view> d() const&&;
  A& operator++() { return *this; }
  int e() const;
  std::array<int, 3> f{}; ///< a field
private:
  int& hidden() const;
};
class [[nodiscard]] B {
  int* hidden() const;
public:
  explicit B(int a) : a_{a}, b_(a) {}
  auto begin() const noexcept { return 1; }
  int const& e() const& { return e_; }
  int const& e() const&& = delete;
  int& f(int i) & BIFOLIUM_LIFETIMEBOUND { return e_[i]; }
  class leaf_iterator;
  leaf_iterator g() const;
  operator std::string_view() const;
  int const& h() const& { return e_; }
  int h() const&&;
  int& i() & BIFOLIUM_LIFETIMEBOUND;
  int i() const&;
};
}
END
my $expected = 'A::a gives a view of a temporary; A::b gives a view of a temporary; A::d gives a view of a temporary; '
  . 'B::begin gives a view of a temporary; B::f gives a view of a temporary; B::g gives a view of a temporary; '
  . 'B::h gives a view of the value: write BIFOLIUM_LIFETIMEBOUND; B::operatorstd::string_view gives a view of a temporary';
die "the control finds: @$control\n" unless join('; ', @$control) eq $expected;

my $include = shift // die "which folder?\n";
my @headers = headers_in($include, 'bifolium');
die "no headers in $include\n" unless @headers > 50;
my ($bad, $functions) = (0, 0);
for my $header (@headers) {
  open my $in, '<:raw', "$include/$header" or die "$header: $!\n";
  local $/;
  my ($wrong, $count) = unmarked(scalar <$in>);
  $functions += $count;
  for my $one (@$wrong) { print "$header: $one\n"; ++$bad }
}
die "only $functions functions were found\n" unless $functions > 500;
exit($bad ? 1 : 0);
