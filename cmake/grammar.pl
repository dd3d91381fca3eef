# SPDX-License-Identifier: MIT
# Writes the page of the grammar, cmake/doc/grammar.md, from the comments at the head of the headers that read it; and holds that
# every name in it is explained once: by a production, or by a sentence below.
#   perl cmake/grammar.pl include >cmake/doc/grammar.md
use strict;
use warnings;
use utf8;
binmode STDOUT, ':utf8';
binmode STDERR, ':utf8';

my $include = shift // die "perl grammar.pl INCLUDE\n";
# in the order of reading: from the whole to its parts
my @headers = ((map { "collation/detail/$_" } qw(grammar/grammar.hpp grammar/unplaced_grammar.hpp grammar/format_grammar.hpp grammar/volume_grammar.hpp grammar/appendix_grammar.hpp grammar/unsigned_leaves_grammar.hpp grammar/engraved_grammar.hpp scan/element_reader.hpp scan/count_reader.hpp)),
    'leaf/counts_in_words.hpp', 'fold/read_gathered.hpp', (map { "collation/detail/$_" } qw(grammar/bracket_grammar.hpp grammar/change_grammar.hpp words/cancel_words.hpp grammar/insertion_grammar.hpp grammar/inserted_run_grammar.hpp scan/leaf_pieces.hpp grammar/lacking_grammar.hpp grammar/identity_grammar.hpp grammar/wanting_grammar.hpp grammar/outside_grammar.hpp words/blank_words.hpp scan/leaf_reader.hpp
    grammar/passage_grammar.hpp)), 'leaf/signature_reader.hpp');
my %explained = (
  'letter' => 'A to Z or a to z', 'Greek letter' => 'α to ω or Α to Ω', 'Cyrillic letter' => 'а to я or А to Я, without Й',
  'Hebrew letters' => 'a number in Hebrew letters', 'Greek letter of its place' => 'α after a, β after b ... ψ after z',
  'the same letter' => 'the letter before it, as a capital or small', 'the same' => 'the character before it',
  'symbol' => 'one character that is set as type and means nothing else: * † ¶ & ⁂', 'figure' => 'digits together',
  'raised figure' => 'digits above the line: ⁸, ^8, ^{8}, <sup>8</sup>, [superscript 8]', 'roman' => 'a Roman numeral',
  'number' => 'one, two ... twenty, twenty-four, thirty-two ... ninety-six', 'ordinal' => 'first, prima, seconda ...', 'quoted' => 'a mark in quotation marks', 'quote' => 'a quotation mark of any kind: " ‘ „ «; after the text, the one that belongs to it',
  'words' => 'text that ends where the brackets, the comma or the semicolon round it do', 'blank' => 'one or more blanks',
  'heading words' => 'Signatures, Collation, Coll., Segn. ...', 'blank in another language' => 'leer, weiß, vakat, blanc, bianco, blanco, leeg in the forms that stand beside a leaf (all are in `leaf/leaf_words.hpp`)', 'paper class' => 'Royal, median, gr.', 'format symbol' => 'a format: 8°, 4to, fol., in-12',
);
my (%defined, %used, @wrong, $page);
for my $header (@headers) {
  open my $file, '<:utf8', "$include/bifolium/$header" or die "$header: $!";
  my ($block, $in) = ('', 0);
  while (my $line = <$file>) {
    last if $line =~ /^#pragma once/;
    if ($line =~ m{^///   (\S.*|  .*)$}) { $block .= "$1\n" }
  }
  push @wrong, "$header has no production" if $block eq '';
  (my $text = $block) =~ s/\(\*.*?\*\)//gs;
  my $name = '';
  while ($text =~ /\G\s*("[^"]*"|[\[\]{}()|,;=]|[^"\[\]{}()|,;=\s]+(?: [^"\[\]{}()|,;=\s]+)*|)/gc) {
    my $token = $1;
    last if $token eq '';
    next if $token =~ /^"/;
    if ($token eq ';') { $name = ''; next }
    next if $token =~ /^[\[\]{}()|,=]$/;
    if ($name eq '') {
      $name = $token;
      push @wrong, "$name has a production in $defined{$name} and in $header" if $defined{$name};
      $defined{$name} = $header;
    } else { $used{$token} = $header }
  }
  $page .= "From `$header`:\n\n```ebnf\n$block```\n\n";
}
push @wrong, map { "$_ is used in $used{$_} and explained nowhere" } grep { !$defined{$_} && !$explained{$_} } sort keys %used;
push @wrong, map { "$_ is explained and not used" } grep { !$used{$_} } sort keys %explained;
push @wrong, map { "$_ has a production in $defined{$_} and is used nowhere" }
  grep { !$used{$_} && $_ ne 'description' } sort keys %defined;
die map({ "$_\n" } @wrong) if @wrong;
print <<"TEXT";
<!-- SPDX-License-Identifier: MIT -->
# The grammar of a collation formula

This is what `read_formula` and `count_formula` read, as EBNF: `,` is one after the other, `|` one or the other, `[ ]` perhaps,
`{ }` any number of times, `(* *)` a remark. The page is written from the headers that read it (`perl cmake/grammar.pl include`).

Blanks between two parts mean nothing unless a production says so; figures, letters and signs may be typed in several ways
(`leaf/token.hpp`), and characters as references of HTML (`&#8312;`, `&deg;`: `core/character_references.hpp`). What the grammar cannot say - which gathering a change names, whether letters were skipped, what an omitted count
means - the reader decides afterwards, and tells whatever is doubtful in a warning.

$page## What is not spelled out

TEXT
print map { "* *$_*: $explained{$_}.\n" } sort keys %explained;
