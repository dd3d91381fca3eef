# SPDX-License-Identifier: MIT
# What a value gives of itself by reference, pointer or view ends with the value. Clang warns of that where the function has
# BIFOLIUM_LIFETIMEBOUND, so every public member function that gives such a thing has it, or cannot be called for a temporary, or
# is here with the reason why not.
#   perl views_are_marked.pl INCLUDE
use strict;
use warnings;

my %not_of_the_value = (    # class => what its functions give lasts longer than the object
  Attested     => 'rows of a table, which last as long as the program',
  CastOff      => 'a literal',
  FormeView    => 'a view itself: it gives parts of the imposition',
  HeightClass  => 'rows of a table',
  HeightClasses => 'rows of a table',
  Iterator     => 'a part of the range, not of the iterator',
  iterator     => 'a part of the range, not of the iterator',
  SchemeFacts  => 'rows of a table, which the facts only look at',
  SheetSize    => 'rows of a table',
  TextCursor   => 'a part of the text that the caller keeps',
  TextSpan     => 'a part of the text that is passed',
);
my $view = qr/(?:[\w:<>, ]+ const\s*&|[\w:<>, ]+[&*]|[\w:<>, ]+ const\s*\*|std::string_view|std::optional<std::string_view>|std::span<[^;{}]*?>)/;

sub unmarked {
  my ($text) = @_;
  $text =~ s{//[^\n]*}{}g;
  $text =~ s{^namespace detail[\w:]* \{.*?^\}}{}gms;
  my @found;
  my ($class, $depth, @classes) = ('', 0);
  for my $line (split /(?<=[;{}])|(?<=[^:]:)\n/, $text) {
    if ($line =~ /\b(class|struct) (\w+)[^;(]*\{$/ && $line !~ /\benum\b/) {
      push @classes, { name => $2, open => $depth, public => $1 eq 'struct' };
    }
    my $top = $classes[-1];
    if ($top) {
      $top->{public} = 1 if $line =~ /\bpublic:\s*/;
      $top->{public} = 0 if $line =~ /\b(private|protected):\s*/ && $line !~ /public:/;
      if ($depth == $top->{open} + 1 && $top->{public}
        && $line =~ /(?:^|\s)((?:\[\[nodiscard\]\] )?(?:constexpr )?)($view|auto)\s*(begin|end|\w+|operator\S+)\(([^()]*)\) const&?(?: noexcept)?([^{;]*)[{;]$/
        && $line !~ /\b(friend|static|using|return)\b/) {
        my ($type, $name, $rest) = ($2, $3, $5);
        my $gives = $type ne 'auto' || $name =~ /^(begin|end)$/;
        $gives = 0 if $text =~ /\b\Q$name\E\([^()]*\) const&& = delete/;
        push @found, "$top->{name}::$name" if $gives && $rest !~ /LIFETIMEBOUND|= delete/ && !$not_of_the_value{ $top->{name} };
      }
    }
    $depth += () = $line =~ /\{/g;
    $depth -= () = $line =~ /\}/g;
    pop @classes while @classes && $depth <= $classes[-1]{open} && $line =~ /\}/;
  }
  return @found;
}

my @control = unmarked("struct A {\n  [[nodiscard]] int const& a() const { return a_; }\n  std::string_view b() const BIFOLIUM_LIFETIMEBOUND;\n"
    . "private:\n  int& c() const;\n};\nclass B {\n  int* d() const;\npublic:\n  auto begin() const noexcept { return 1; }\n"
    . "  int const& e() const& { return e_; }\n  int const& e() const&& = delete;\n};\n");
die "the pattern does not find what it is for: @control\n" unless "@control" eq 'A::a B::begin';

my $include = shift // die "which folder?\n";
my @headers = grep { !m{/detail/} } split /\n/, `find "$include" -name '*.hpp'`;
die "no headers in $include\n" unless @headers > 50;
my $bad = 0;
for my $header (sort @headers) {
  open my $in, '<', $header or die "$header: $!\n";
  local $/;
  for my $one (unmarked(scalar <$in>)) { print "$header: $one gives a view of the value: write BIFOLIUM_LIFETIMEBOUND\n"; ++$bad }
}
exit($bad ? 1 : 0);
