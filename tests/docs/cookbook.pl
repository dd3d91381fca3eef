# SPDX-License-Identifier: MIT
# One task of the cookbook: its block of C++ or of shell is compiled or run in a folder of its own, and what it prints is
# compared with the block of text that follows. With task 0: the tasks are in order, each with both blocks.
#   perl cookbook.pl PAGE TASK WORK BIN COMPILER INCLUDE [FLAGS AND LIBRARIES ...]
# BIN is where the programs are. COOKBOOK_WRITE=1 writes into the page what was printed, for somebody to read.
use strict;
use warnings;

my ($page, $task, $work, $bin, $compiler, $include, @flags) = @ARGV;
my @libraries = grep /\.a$/, @flags;
@flags = grep !/\.a$/, @flags;
open my $file, '<:raw', $page or die "$page: $!";
my $text = do { local $/; scalar <$file> };
my @parts = split /^(?=### \d+\. )/m, $text;
my $head = shift @parts;

if ($task == 0) {
  my $number = 0;
  for my $part (@parts) {
    $part =~ /^### (\d+)\. / && $1 == ++$number or die "task $number is out of order\n";
    $part =~ /^```(?:cpp|sh)\n.*?^```\n```text\n.+?^```\n/ms or die "task $number shows no program with its output\n";
    (() = $part =~ /^```\w/mg) == 2 or die "task $number has more than a program and its output\n";
  }
  die "hardly a task was found\n" if $number < 20;
  exit;
}

my ($kind, $program) = $parts[$task - 1] =~ /^```(cpp|sh)\n(.*?)^```\n/ms or die "task $task shows no program\n";
my ($expected) = $parts[$task - 1] =~ /^```\n```text\n(.*?)^```\n/ms;
system('rm', '-rf', $work) == 0 && system('mkdir', '-p', "$work/in") == 0 or die "$work: $!";
my $run;
if ($kind eq 'cpp') {
  open my $source, '>:raw', "$work/task.cpp" or die $!;
  print $source $program;
  close $source;
  system($compiler, @flags, qw(-std=c++20 -O0 -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Werror), "-I$include", "$work/task.cpp", @libraries, '-o', "$work/task") == 0
    or die "task $task does not compile\n";
  $run = "$work/task";
} else {
  open my $script, '>:raw', "$work/task.sh" or die $!;
  print $script "set -e\n$program";
  close $script;
  $run = "sh $work/task.sh";
}
chdir "$work/in" or die $!;
$ENV{PATH} = "$bin:$ENV{PATH}";
$ENV{LC_ALL} = 'C'; # for the order of ls
my $printed = `$run`;
die "task $task ends with code " . ($? >> 8) . "\n$printed" if $?;
if ($ENV{COOKBOOK_WRITE}) {
  $parts[$task - 1] =~ s/^```\n(?:```text\n.*?^```\n)?/```\n```text\n$printed```\n/ms;
  open my $out, '>:raw', $page or die $!;
  print $out $head, @parts;
} elsif (!defined $expected || $printed ne $expected) {
  print "task $task prints\n$printed";
  print defined $expected ? "and the page says\n$expected" : "and the page says nothing\n";
  exit 1;
}
