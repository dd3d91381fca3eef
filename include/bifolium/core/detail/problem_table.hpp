// SPDX-License-Identifier: MIT
/// The table of problems: one row for each, with its number, its identifier and its sentence. Everything else about
/// problems is made from these rows: the enumerators of `Problem`, `identifier`, `sentence` and the page of errors.
///
/// In a sentence `{found}` is the text that was found, or the name of the field if there is no text; `{limit}` is the
/// number or bound that belongs to the problem; of two words in braces, `{leaf|leaves}`, the first stands beside 1. A sentence says what was found, what is expected and how to write it. A
/// comment above a row belongs to its enumerator. A number keeps its meaning for ever: never give it to another
/// problem.
///
/// This file has no `#pragma once`, because it is included once for each use. The includer defines BIFOLIUM_PROBLEM to
/// say what becomes of a row; this file undefines it at its end.
#ifndef BIFOLIUM_PROBLEM
#define BIFOLIUM_PROBLEM(number, identifier, sentence)
#endif

// clang-format off
/// There is no problem. An error never has this value.
BIFOLIUM_PROBLEM(0, none, "there is no problem")

// 1-99: numbers, lengths, text in general
/// A whole number is expected.
BIFOLIUM_PROBLEM(1, not_a_number, "found '{found}' where a whole number is expected")
/// The number does not fit in the type that holds it.
BIFOLIUM_PROBLEM(2, number_too_large, "'{found}' is too large to calculate with")
/// The text continues after the value that was to be read.
BIFOLIUM_PROBLEM(3, trailing_text, "found '{found}' where the text should end")
/// The text ends too early.
BIFOLIUM_PROBLEM(4, unexpected_end, "the text ends where more is expected")
/// A byte that does not begin a UTF-8 character.
BIFOLIUM_PROBLEM(5, not_utf8, "this byte does not belong to a UTF-8 character: the text must be UTF-8")
/// A measurement or count that must be more than zero.
BIFOLIUM_PROBLEM(6, not_positive, "'{found}' must be more than zero")
/// A length in a unit that the library does not know.
BIFOLIUM_PROBLEM(7, unknown_unit, "'{found}' is not a known unit of length: write mm, cm, in, pouces or lignes")
/// The text does not name a format.
BIFOLIUM_PROBLEM(8, unknown_format, "'{found}' is not the name of a format: write it as 8°, 8vo or octavo")
/// A number with its unit is expected.
BIFOLIUM_PROBLEM(9, not_a_length, "found '{found}' where a length is expected: write 187 mm, 18.7 cm or 4 3/4 in")
/// A number without a unit.
BIFOLIUM_PROBLEM(10, unit_missing, "'{found}' has no unit: write mm, cm, in, pouces or lignes after the number")
/// A computed result does not fit in 64 bits.
BIFOLIUM_PROBLEM(11, result_too_large, "the result is too large: it does not fit in 64 bits")
/// A whole number, a decimal or a fraction is expected.
BIFOLIUM_PROBLEM(12, not_a_fraction, "found '{found}' where a number is expected: write 3, 3.2, 16/5 or 3 1/5")

/// A least or most value that is on the wrong side of the stated one.
BIFOLIUM_PROBLEM(13, out_of_order, "the least value must not be above the stated one, and the greatest must not be below it")
/// A list of which at least one is needed.
BIFOLIUM_PROBLEM(14, list_empty, "'{found}' must name at least one")
/// A character reference of HTML that stands for no character, or whose name is not known.
BIFOLIUM_PROBLEM(15, bad_character_reference, "'{found}' is no character reference that is known: write the character itself, or its number as in &#8312;")
/// A number that was made a value of a type which has no name for it.
BIFOLIUM_PROBLEM(16, no_such_value, "'{found}' has a number that its type does not name: look at what it was converted from")

// 20-29: limits, core/limits.hpp
/// A text of more bytes than the limit.
BIFOLIUM_PROBLEM(20, text_too_long, "the text has more than {limit} {byte|bytes}, which is what '{found}' of Limits allows")
/// More runs than the limit.
BIFOLIUM_PROBLEM(21, too_many_runs, "with '{found}' there are more than {limit} {run|runs}, which is what 'runs' of Limits allows")
/// More changes than the limit.
BIFOLIUM_PROBLEM(22, too_many_changes, "with '{found}' there are more than {limit} {change|changes}, which is what 'changes' of Limits allows")
/// More leaves to draw than the limit.
BIFOLIUM_PROBLEM(23, too_many_leaves_drawn, "there are more than {limit} {leaf|leaves} to draw, which is what '{found}' of Limits allows")

// 100-199: the language of folding
/// A word of a scheme that is unknown or in the wrong place.
BIFOLIUM_PROBLEM(100, unknown_word, "'{found}' is not a word that can stand here")
/// A name is expected.
BIFOLIUM_PROBLEM(101, name_expected, "found '{found}' where a name is expected: a letter, then letters, digits or _")
/// A word of the language used as a name.
BIFOLIUM_PROBLEM(102, name_is_reserved, "'{found}' is a word of the folding language: choose another name")
/// A name longer than the library can store.
BIFOLIUM_PROBLEM(103, name_too_long, "the name '{found}' has more than {limit} {character|characters}")
/// The name belongs to another piece already.
BIFOLIUM_PROBLEM(104, name_taken, "another piece has the name '{found}' already: choose another name")
/// A step names a piece that does not exist.
BIFOLIUM_PROBLEM(105, no_such_piece, "no piece has the name '{found}'")
/// A step names a piece that was cut into others.
BIFOLIUM_PROBLEM(106, piece_is_cut_up, "'{found}' has been cut: name one of the pieces it was cut into")
/// A cut of a piece that is folded already.
BIFOLIUM_PROBLEM(107, piece_is_folded, "'{found}' is folded already: cut a piece before it is folded")
/// One piece in two gatherings.
BIFOLIUM_PROBLEM(108, piece_used_twice, "'{found}' is in a gathering already: use each piece once")
/// A piece in no gathering.
BIFOLIUM_PROBLEM(109, piece_left_over, "'{found}' is in no gathering: put every piece into a gathering")
/// A cut or fold along a line that is outside the piece.
BIFOLIUM_PROBLEM(110, line_outside_piece, "line {found} is not inside the piece in its present position")
/// More sheets than a scheme can have.
BIFOLIUM_PROBLEM(111, too_many_sheets, "a scheme has at most {limit} {sheet|sheets}")
/// More pieces than a scheme can have.
BIFOLIUM_PROBLEM(112, too_many_pieces, "a scheme has at most {limit} {piece|pieces}")
/// More cuts and folds than a scheme can have.
BIFOLIUM_PROBLEM(113, too_many_steps, "a scheme has at most {limit} {cut or fold|cuts and folds}")
/// More leaves than the sheets of a scheme can have.
BIFOLIUM_PROBLEM(114, too_many_cells, "the sheets of a scheme have at most {limit} {leaf|leaves} together")
/// More gatherings than a scheme can have.
BIFOLIUM_PROBLEM(115, too_many_gatherings, "a scheme has at most {limit} {gathering|gatherings}")
/// The first line does not name the scheme.
BIFOLIUM_PROBLEM(116, scheme_line_first, "found '{found}' where the first line is expected: write scheme NAME FORMAT")
/// A sheet described after the first cut, fold or gathering.
BIFOLIUM_PROBLEM(117, sheets_come_first, "describe all sheets before the first cut, fold or gathering")
/// A scheme without a sheet.
BIFOLIUM_PROBLEM(118, no_sheet, "the scheme has no sheet: write a line that begins with sheet")
/// A scheme without a gathering.
BIFOLIUM_PROBLEM(119, no_gathering, "the scheme has no gathering: write a line that begins with gathering")
/// A pair x+y of pieces that are more than single leaves.
BIFOLIUM_PROBLEM(120, pair_needs_single_leaves, "'{found}' has more than one leaf: x+y joins two single leaves")
/// The suffix ':inner' at a piece of more than one leaf.
BIFOLIUM_PROBLEM(121, inner_needs_single_leaf, "'{found}' has more than one leaf: ':inner' is for a single leaf")
// pieces that fold, but to something that cannot be a book
/// A piece that is wider than one leaf after the last fold.
BIFOLIUM_PROBLEM(130, not_folded_up, "'{found}' is still {limit} {leaf|leaves} wide: fold it until it is one leaf wide")
/// No crease runs far-near, so the gathering has no spine.
BIFOLIUM_PROBLEM(131, no_spine, "'{found}' has no spine: one of its creases must run far-near")
/// The folded piece cannot be sewn as a gathering.
BIFOLIUM_PROBLEM(132, leaves_not_conjugate, "in '{found}' leaf {limit} is not joined to its conjugate across the gutter: this folds, but not to a gathering")
/// A forme would have one page twice.
BIFOLIUM_PROBLEM(133, page_twice_in_forme, "page {limit} would be in one forme twice")
/// Two gatherings with the same first page that are not copies of each other.
BIFOLIUM_PROBLEM(134, copies_differ, "gathering '{found}' begins with page {limit} as another one does, but has other leaves")
/// The way of turning puts pages of two leaves back to back.
BIFOLIUM_PROBLEM(135, backed_by_other_leaf, "with this way of turning, page {limit} is backed by a page of another leaf")
/// The way of turning puts the head of a page against the tail of the other.
BIFOLIUM_PROBLEM(136, backed_head_to_tail, "with this way of turning, page {limit} is backed head to tail")
// the inverse of folding: from formes back to a folding
/// A forme with another number of pages than rows times columns, or a sheet without a forme.
BIFOLIUM_PROBLEM(140, forme_not_whole, "a forme must have rows times columns pages, and every sheet must have a forme")
/// The formes of one sheet differ in rows or columns, or a sheet with only one forme has an inner one.
BIFOLIUM_PROBLEM(141, formes_unlike, "the two formes of a sheet must have the same rows and columns: an outer and an inner one")
/// Two outer formes, or two inner ones, of one sheet.
BIFOLIUM_PROBLEM(142, forme_given_twice, "one forme of a sheet is given twice")
/// The page on the back of a page is not the other page of its leaf.
BIFOLIUM_PROBLEM(143, pages_not_backed, "the page on the back of page {limit} is not the other page of its leaf")
/// A page and the page on its back point their heads in opposite directions.
BIFOLIUM_PROBLEM(144, heads_not_backed, "page {limit} and the page on its back are head to tail")
/// The pages make no gatherings within the limits of a scheme.
BIFOLIUM_PROBLEM(145, no_folding, "no cuts and folds make gatherings of these pages, with at most {limit} {piece|pieces}")
/// More leaves without a page number than the search can supply.
BIFOLIUM_PROBLEM(146, too_many_illegible, "too many pages are illegible: the search can supply at most {limit} {leaf|leaves}")
/// A line that is not part of the text of a forme.
BIFOLIUM_PROBLEM(147, not_a_forme, "found '{found}' in the text of a forme: write outer, inner or forme, then rows of pages: 8, 8↓ with its head near, ? if it is illegible")
/// A count that would need more memory than was allowed.
BIFOLIUM_PROBLEM(148, too_many_arrangements, "the search passes through more than {limit} {arrangement|arrangements} of the leaves: use fewer leaves, say more of them, or allow more")
/// A gathering of zero leaves, or of more leaves than the search takes.
BIFOLIUM_PROBLEM(149, gathering_too_large, "the search takes gatherings of 1 to {limit} {leaf|leaves}, and at most 63 leaves together")
/// The pages can be cut apart in more ways than the search tries, and none of those that it tried makes gatherings.
BIFOLIUM_PROBLEM(150, cuts_not_all_tried, "none of the simplest ways to cut the sheets makes gatherings of these pages, and there are too many to try all: check the page numbers")
/// An illegible page and the page on its back, also illegible, point their heads in opposite directions.
BIFOLIUM_PROBLEM(151, illegible_head_to_tail, "an illegible page and the page on its back are head to tail")
/// A row of a forme with more or fewer pages than the row above.
BIFOLIUM_PROBLEM(152, row_of_other_length, "this row does not have {limit} {page|pages} as the rows above: write ? for a page that is illegible or missing")
/// The line that begins a gathering does not say how many leaves it has.
BIFOLIUM_PROBLEM(153, gathering_without_leaves, "found '{found}' where the leaves of a gathering are counted: write gathering of 8")
/// A page that the scheme does not have.
BIFOLIUM_PROBLEM(154, no_such_page, "'{found}' must be a page of the scheme, the last of which is {limit}")

// 200-229: signatures and the collation formula: what cannot be read
/// A signature is expected.
BIFOLIUM_PROBLEM(200, no_signature, "found '{found}' where a signature is expected: write A, 2B, *, π or [par.]")
/// A character that is neither a signature nor a note.
BIFOLIUM_PROBLEM(201, unknown_mark, "'{found}' is not a signature: write the name of a symbol in square brackets")
/// A name, symbol or quoted mark longer than the library can store.
BIFOLIUM_PROBLEM(202, mark_too_long, "'{found}' is too long for a signature: write at most {limit} {byte|bytes}")
/// A gathering without a leaf count, in a dialect that supplies none.
BIFOLIUM_PROBLEM(203, no_leaf_count, "'{found}' has no leaf count: write one, as in A⁸, or state with 'omitted' which count is meant")
/// A leaf count that is not raised, in a dialect that requires it.
BIFOLIUM_PROBLEM(204, flat_count, "the count '{found}' is not raised: this dialect requires A⁸ or A^8")
/// A gathering without leaves.
BIFOLIUM_PROBLEM(205, zero_leaf_count, "'{found}' is a gathering of zero leaves: write a count from 1")
/// The ends of a run belong to different series.
BIFOLIUM_PROBLEM(206, run_crosses_series, "the run '{found}' crosses from one series to another: write one run for each series")
/// The last signature of a run comes before the first.
BIFOLIUM_PROBLEM(207, run_goes_backwards, "the run '{found}' ends before it begins: write the first signature first")
/// The numbers of the gatherings and their counts cannot be separated.
BIFOLIUM_PROBLEM(208, flat_numbers, "in '{found}' the number of the gathering and its leaf count cannot be separated: raise the count, or put it in parentheses, as in 12-20(4)")
/// A closing bracket without an opening one.
BIFOLIUM_PROBLEM(209, bracket_not_opened, "'{found}' closes a bracket that was not opened")
/// An opening parenthesis without a closing one.
BIFOLIUM_PROBLEM(210, parenthesis_not_closed, "the parenthesis '{found}' is not closed: write )")
/// A change before the first gathering.
BIFOLIUM_PROBLEM(211, change_without_gathering, "the change '{found}' comes before the first gathering: write it after the gathering it changes")
/// A change names a gathering that the formula does not have yet.
BIFOLIUM_PROBLEM(212, no_such_gathering, "'{found}' names a gathering that the formula does not have; a change must come after the gathering that it names")
/// A change names a leaf that the gathering does not have.
BIFOLIUM_PROBLEM(213, no_such_leaf, "'{found}' names a leaf after the last: the gathering has {limit} {leaf|leaves}")
/// One leaf deleted or cancelled twice.
BIFOLIUM_PROBLEM(214, leaf_changed_twice, "leaf '{found}' is deleted or cancelled already")
/// A change that cannot be read.
BIFOLIUM_PROBLEM(215, change_not_understood, "'{found}' is not a change: write (-A4), (±A4), (A3+1), (A3+χ1.2) or [=B2]")
/// A signature multiplied more often than the library can store.
BIFOLIUM_PROBLEM(216, multiple_too_high, "'{found}' multiplies a signature by more than {limit}")
/// An alternation of more counts than the library can store.
BIFOLIUM_PROBLEM(217, cycle_too_long, "'{found}' alternates between more than {limit} {leaf count|leaf counts}")
/// Aa-Az, in which the first letter is the alphabet and the second the letter in it.
BIFOLIUM_PROBLEM(218, second_letter_is_place, "in '{found}' the first letter is the alphabet and the second the letter in it (Aa, Ab ... Az), which is not a doubled letter: number the gatherings, or put each mark in quotation marks")
/// ã-õ⁸, [par.]-[et]⁸: between the two come marks that nobody has put in an order.
BIFOLIUM_PROBLEM(219, order_not_known, "the run '{found}' passes marks whose order is not known: write each gathering")
/// A1+a-9z⁴.
BIFOLIUM_PROBLEM(220, too_many_inserted, "'{found}' inserts more than {limit} {gathering|gatherings} at one place")
/// A change inside an inserted gathering other than leaves that it lacks.
BIFOLIUM_PROBLEM(273, change_in_insertion, "'{found}' changes inserted leaves, which is not read: only the leaves that one inserted gathering lacks are, written after it, as in (A1+a⁴(-a4))")
/// (A1+a⁷⁰(-a4)).
BIFOLIUM_PROBLEM(274, inserted_too_thick, "'{found}' deletes a leaf of an inserted gathering of more than {limit} {leaf|leaves}, which cannot be stored")
/// (A1+a⁴(-a1-4)).
BIFOLIUM_PROBLEM(275, inserted_not_there, "with '{found}' every leaf of the inserted gathering is deleted: leave the gathering out")
/// A⁵⁰⁰⁰; 8° (5000s).
BIFOLIUM_PROBLEM(276, leaf_count_too_high, "'{found}' is a gathering of more than {limit} {leaf|leaves}, which is more than can be sewn: write a lower count")

// 230-299: signatures and the collation formula: what can be read but is doubtful
/// A gathering of an odd number of leaves.
BIFOLIUM_PROBLEM(230, odd_gathering, "'{found}' has an odd number of leaves, but leaves are conjugate in pairs: write it as in A⁸(-A8), or write the single leaf separately")
/// J, U or W as the end of a run in an alphabet without that letter.
BIFOLIUM_PROBLEM(231, letter_not_in_alphabet, "'{found}' is not in the alphabet of this formula: J was read as I, U as V, W as the letter at its position; declare the letter if the book uses it")
/// A cycle of counts that does not divide the number of gatherings.
BIFOLIUM_PROBLEM(232, alternation_over_odd_run, "'{found}' alternates over {limit} {gathering|gatherings}, and the cycle does not divide that number: write the last gathering separately")
/// A '+' at the end: the book once had more leaves.
BIFOLIUM_PROBLEM(233, imperfect, "'+' says that the book once had more leaves: the count is a lower bound")
/// An opening bracket without a closing one.
BIFOLIUM_PROBLEM(234, bracket_not_closed, "the bracket '{found}' is not closed")
/// J or another character in place of an opening bracket, as in scanned texts.
BIFOLIUM_PROBLEM(235, bracket_misread, "'{found}' was read as an opening bracket: scanned texts have this mistake")
/// The leaf count that the dialect supplies for a gathering without one.
BIFOLIUM_PROBLEM(236, count_supplied, "'{found}' has no leaf count: the dialect supplied {limit}")
/// A blank between a signature and its count.
BIFOLIUM_PROBLEM(237, count_apart, "the leaf count '{found}' is separated from its signature: write them without a blank")
/// A run from a signature to itself.
BIFOLIUM_PROBLEM(238, run_of_one, "the run '{found}' has one gathering: write its signature alone")
/// 2A read as the second series of A.
BIFOLIUM_PROBLEM(239, series_read_flat, "'{found}' was read as a series number before the letter: otherwise the run would end before it begins")
/// πA, which may be π and then A.
BIFOLIUM_PROBLEM(240, duplicate_read_flat, "'{found}' was read as a duplicate of a letter: if π or χ is a gathering of its own, write a blank after it")
/// A signature that was used before, without a mark of a new series.
BIFOLIUM_PROBLEM(241, series_starts_again, "'{found}' is repeated or out of order, and no mark says that a new series begins")
/// A comma between leaves that are conjugate.
BIFOLIUM_PROBLEM(242, joined_leaves_listed_apart, "'{found}' lists conjugate leaves with a comma: write a point between them")
/// A point between leaves that are not conjugate.
BIFOLIUM_PROBLEM(243, apart_leaves_listed_joined, "'{found}' lists leaves that are not conjugate with a point: write a comma between them")
/// Leaves after the last one, which are the next gathering.
BIFOLIUM_PROBLEM(244, pair_after_last_leaf, "'{found}' comes after the last leaf: it is the next gathering, and its letter can be inferred")
/// The letter l read as the digit 1.
BIFOLIUM_PROBLEM(245, letter_read_as_figure, "in '{found}' the letter l was read as the digit 1")
/// m1-3: leaves 1 to 3 counted as three leaves.
BIFOLIUM_PROBLEM(246, leaves_read_as_count, "'{found}' was read as leaves of one gathering, {limit} of them")
/// Words that are not part of the formula.
BIFOLIUM_PROBLEM(247, text_not_read, "'{found}' was kept as a note and not read")
/// A stated total that is not the total of the formula.
BIFOLIUM_PROBLEM(248, total_contradicts, "the total '{found}' is stated, but the formula has {limit} {leaf|leaves}")
/// An insertion that does not say after which leaf.
BIFOLIUM_PROBLEM(249, place_not_stated, "'{found}' does not say which leaf it adds or takes away: the end of the gathering was assumed")
/// A change in square brackets.
BIFOLIUM_PROBLEM(250, change_in_square_brackets, "'{found}' was read as a change: write changes in parentheses")
/// A = B, where B has another number of leaves.
BIFOLIUM_PROBLEM(251, second_statement_differs, "'{found}' is given as the same book, but it has {limit} {leaf|leaves}")
/// A single leaf without the fraction of a sheet.
BIFOLIUM_PROBLEM(252, part_of_sheet_not_stated, "'{found}' does not say what part of a sheet the leaf is")
/// par⁴ for [par.]⁴.
BIFOLIUM_PROBLEM(253, name_without_brackets, "'{found}' was read as the name of a symbol: write such names in square brackets")
/// π1+A8: one leaf, or a gathering whose raised count was lost.
BIFOLIUM_PROBLEM(254, inserted_leaf_or_gathering, "'{found}' was read as one leaf, numbered {limit}: if a whole gathering is inserted, raise its count (π1+A⁸)")
/// [=B2] in a formula without B2.
BIFOLIUM_PROBLEM(255, identity_not_in_formula, "'{found}' is said to be the same leaf, but the formula has no such leaf")
/// More leaves than are folded together, perhaps two counts without a separator.
BIFOLIUM_PROBLEM(256, very_thick_gathering, "'{found}' has {limit} {leaf|leaves} in one gathering: if two counts alternate, write them as in A-K8/4")
/// 1-210 312: numbers and counts separated so that the numbers are consecutive.
BIFOLIUM_PROBLEM(257, numbers_read_by_sequence, "'{found}' was separated so that the numbers of the gatherings are consecutive: raise the count, or put it in parentheses, as in 12-20(4)")
/// A name of several gatherings or leaves, or a name that the formula has only with a raised digit, π or χ.
BIFOLIUM_PROBLEM(258, name_of_several, "'{found}' may mean more than one gathering or leaf: the first of the book was taken, or in a list the next after the leaves before it")
/// I-II¹⁰: gatherings numbered in Roman numerals.
BIFOLIUM_PROBLEM(259, roman_numbers, "'{found}' was read as numbers of gatherings in Roman numerals")
/// A-K⁸(−K8?): a change with a question mark.
BIFOLIUM_PROBLEM(260, doubtful_change, "'{found}' is marked as doubtful: the book may have the leaf or lack it")
/// A⁸ D⁸: letters between the two are in no run.
BIFOLIUM_PROBLEM(261, letters_skipped, "'{found}' does not follow the last letter or number of its series: some are skipped")
/// A-Z, Aa-Zz⁴ where each run should have its count.
BIFOLIUM_PROBLEM(262, count_shared, "'{found}' has no count: it was given that of the runs listed with it")
/// 2A-CC: doubled letters of two kinds.
BIFOLIUM_PROBLEM(263, mixed_notation, "'{found}' writes doubled letters in two ways in one run: write 2A-2C, or AA-CC")
/// А-Я, א-ת: which letters are counted is a habit.
BIFOLIUM_PROBLEM(264, alphabet_not_settled, "'{found}' passes letters that printers counted differently: {limit} {gathering|gatherings} were counted")
/// less K8; M8 blank and wanting.
BIFOLIUM_PROBLEM(265, wanting_read_as_deletion, "'{found}' was read as a deletion: if the leaf is wanting in one copy only, it is not part of the formula")
/// A-K⁸ (±).
BIFOLIUM_PROBLEM(266, change_of_which_gathering, "'{found}' names no gathering: it was read as a change of the last one")
/// A⁸ -A1.
BIFOLIUM_PROBLEM(267, change_outside_parentheses, "'{found}' was read as a change: write changes in parentheses after the gathering")
/// (-B5-B8).
BIFOLIUM_PROBLEM(268, two_leaves_or_range, "'{found}' was read as two leaves: if those between are meant too, write them as in (-B5-8)")
/// 2 unsigned leaves, A-K⁸.
BIFOLIUM_PROBLEM(269, unsigned_leaves_as_gathering, "'{found}' was read as one gathering without a signature: write π and the count")
/// A figure before the first gathering that is the number of a part, or a format without its sign.
BIFOLIUM_PROBLEM(290, figure_read_as_part, "'{found}' was read as the number of a part: if it is the format, write the degree sign after it, as in 8°")
/// ±A3².
BIFOLIUM_PROBLEM(270, cancelled_by_several, "'{found}' was read as the number of leaves in the place of the one that was cut out: {limit}")
/// (A)-K⁸, A-(K)⁸.
BIFOLIUM_PROBLEM(271, parentheses_at_one_end, "'{found}' has parentheses at one end of the run: that signature was read as inferred, which is written [A]")
/// 8° in fours: A-K⁸.
BIFOLIUM_PROBLEM(272, gathered_otherwise, "'{found}' states a number of leaves that no gathering of the formula has")
/// (A1 cancelled).
BIFOLIUM_PROBLEM(277, cancelled_read_as_replaced, "'{found}' was read as ±: if no leaf was put in the place of the one that was cut out, write − before it")
/// (−E7+8).
BIFOLIUM_PROBLEM(278, inserted_or_deleted_too, "'{found}' was read as {limit} {leaf|leaves} in the place of the deleted one: if leaf {limit} is deleted too, write a comma, as in (−E7,8)")
/// A page, r or v, where a change needs a leaf.
BIFOLIUM_PROBLEM(279, page_read_as_leaf, "'{found}' names a page and was read as its leaf: leaves are put in, taken out or replaced, and not pages")
/// π1[=A8] A⁸, where A8 is still in its place.
BIFOLIUM_PROBLEM(280, identity_in_both_places, "'{found}' is said to be the same leaf, but the formula has a leaf in both places, or in neither: delete it in the place where it is not, as in π1[=A8] A⁸(−A8)")
/// A⁸(−A1[=B2]) B⁸, where B2 and B7 are one fold of B.
BIFOLIUM_PROBLEM(281, identity_of_half_fold, "'{found}' is said to be the same leaf, but by the formula one of the two is half of a fold that stayed whole: name both leaves of the fold, as in π²[=B4.5], or delete the other half and insert it as a single leaf")
/// I-V¹⁰ without A to H before it.
BIFOLIUM_PROBLEM(282, letters_or_roman_numbers, "'{found}' was read as {limit} {gathering|gatherings} signed with letters: if they are numbered in Roman numerals, write figures, as in 1-5⁸")
/// A⁸ π² B⁸; χ² A⁸.
BIFOLIUM_PROBLEM(292, unsigned_mark_misplaced, "'{found}' is not in the place that its mark stands for: π is for unsigned leaves before the other gatherings, χ for those after them")
/// A⁸(A3+A3), A⁸(A3+χ1) B⁸(B3+χ1).
BIFOLIUM_PROBLEM(293, inserted_name_taken, "'{found}' inserts leaves under a name that others of the book have: give them another, as in (A3+χ1), or write (±A3) for a leaf put in the place of one that was cut out")
/// C-F⁸ and no other letters.
BIFOLIUM_PROBLEM(294, alphabet_begins_late, "'{found}' is the first run of letters, and none begins at A or B: write the gatherings before it if the book has them")
/// A-K⁸; 11 gatherings.
BIFOLIUM_PROBLEM(295, gatherings_contradict, "'{found}' is stated, but the formula has {limit} {gathering|gatherings}")
/// 8°: A-K⁸; 12 sheets.
BIFOLIUM_PROBLEM(296, sheets_contradict, "'{found}' is stated, but {limit} {leaf|leaves} of the stated format are made of another number of sheets")
/// A quotation mark at the beginning or the end of a text that has no other.
BIFOLIUM_PROBLEM(291, lone_quotation_mark, "{found} is the only quotation mark of the text and was left out")

// 300-399: references, pagination, extents, the check of a copy
/// A reference to a leaf or page is expected.
BIFOLIUM_PROBLEM(300, not_a_reference, "'{found}' is not a reference to a leaf or page: write A3r, 2B1v, 36/10, 10b or f. 12v")
/// A reference to a leaf that the formula does not have.
BIFOLIUM_PROBLEM(301, reference_not_in_book, "the formula has no leaf '{found}'")
/// Pages, a number of leaves or words in a list of leaves: p. 5-6, 2 leaves, title.
BIFOLIUM_PROBLEM(329, leaves_not_named, "'{found}' does not say which leaves of the formula are meant: name them by signature, as in B3.6 and C1-4, or by number, as in f. 5-6")
/// A reference to a leaf of a gathering that the formula does not have.
BIFOLIUM_PROBLEM(328, gathering_not_in_book, "'{found}' is of a gathering that is not in the book: name one that the formula has")
/// `K8 wanting` at the end of a list of leaves, which may be said of one leaf or of all.
BIFOLIUM_PROBLEM(330, wanting_after_leaves, "it is not clear of which leaves '{found}' is said: write it before them, as in 'wants K8'")
/// Doubtful: `A1 in facsimile` or `B3 bound after B6`, where no other leaf of the copy is named.
BIFOLIUM_PROBLEM(338, only_states_of_leaves, "'{found}' says in what state leaves are or where they are bound, and not which leaves the copy has: the others were taken to be there")
/// Doubtful: `ii` in a book with gatherings i and 2i, `2/1, 3` in one with a gathering 3, or `z & A` in one with &.
BIFOLIUM_PROBLEM(350, name_in_two_ways, "'{found}' can be the name of a gathering of this book, but also a leaf of another or a word between leaves: name the leaves of the gathering, as in 3/1-8")
/// Doubtful: `Ej.`, ejemplar or leaf E1; `di`, of or leaf d1.
BIFOLIUM_PROBLEM(360, leaf_or_word, "'{found}' is a word, but can also be a leaf with its number in Roman numerals: write leaves in figures, as in E1")
/// Doubtful: `π2 A-K8 L4`, the leaves π2 and L4, or the gatherings with their counts.
BIFOLIUM_PROBLEM(361, counts_of_gatherings, "the list has the form of a formula, so '{found}' was read as a gathering and the number of its leaves: for that leaf alone write the word leaf before it, as in leaf A8")
/// `π2 A-I8 K7 L4` of a book in which K has eight leaves: which of them is wanting is not said.
BIFOLIUM_PROBLEM(362, counts_differ, "the list has the form of a formula, but '{found}' is not the number of leaves of the gathering: name the leaves that are there, as in A-I K1-6 K8")
/// Doubtful: `A-K, lacks L` of a book with leaves before A.
BIFOLIUM_PROBLEM(363, leaves_left_out, "the list says what is there and that '{found}' is wanting, and {limit} other {leaf is|leaves are} named in neither place: they were taken to be wanting too")
/// Doubtful: `lacks three leaves (A1 and B3)`.
BIFOLIUM_PROBLEM(364, leaves_miscounted, "'{found}' leaves are counted, and {limit} {is|are} named")
/// `lacks the outer sheet of B`: in a folio one pair of leaves, in a quarto two.
BIFOLIUM_PROBLEM(365, sheet_of_gathering, "'{found}' does not say which leaves are meant, since the format decides how many a sheet has: name them, as in B1.8")
/// Doubtful: `B3 misbound`, or `B3 bound after B6` of a copy that lacks B6.
BIFOLIUM_PROBLEM(366, bound_elsewhere, "'{found}' does not say where in this copy the leaf is bound: it was taken to be there, in the order of the formula")
/// Doubtful: `lacks A1r`, `A1r in facsimile`: a leaf of paper has both sides.
BIFOLIUM_PROBLEM(368, side_of_leaf, "'{found}' is one side of a leaf, and a leaf of paper is there or wanting with both: it was read as the whole leaf")
/// Doubtful: `lacks A1, i. e. A2`: the leaves after it are not those before it.
BIFOLIUM_PROBLEM(369, said_in_two_ways, "the leaves after '{found}' should be those before it, and are not: all of them were read")
/// `wants A-C except D1`: the leaf that is excepted is not among those that are wanting.
BIFOLIUM_PROBLEM(351, exception_of_nothing, "'{found}' is taken out of leaves that are wanting and is not one of them")
/// A range of pages in the parenthesis of several volumes.
BIFOLIUM_PROBLEM(339, range_or_volumes, "'{found}' was read as {limit} {page|pages}, from the first number to the last: for the last pages of two volumes write a semicolon between them")
/// A statement of extent is expected.
BIFOLIUM_PROBLEM(303, not_an_extent, "'{found}' is not a statement of extent: write [8], 205, [3] p. or [2], 152 leaves")
/// A statement of pagination or foliation is expected.
BIFOLIUM_PROBLEM(304, not_a_pagination, "'{found}' is not part of a pagination: write pp. [8] 1-205 [206] or ff. [2] 1-152")
/// Doubtful: a misprint, omission or repetition of a number that no page has.
BIFOLIUM_PROBLEM(306, fault_of_no_page, "'{found}' names a number that no page of the statement has")
/// Doubtful: 205 read as 1-205.
BIFOLIUM_PROBLEM(307, number_read_as_total, "'{found}' was read as the last number of a sequence that begins with 1")
/// Doubtful: [2] read as page 2, not as two pages.
BIFOLIUM_PROBLEM(308, bracket_read_as_number, "'{found}' was read as the number of one page, not as a number of pages without numbers")
/// A statement of signing is expected.
BIFOLIUM_PROBLEM(309, not_a_signing, "'{found}' is not part of a statement of signing: write [$4 (-A3, B4) signed]")
/// Doubtful: an exception that names a leaf the formula does not have.
BIFOLIUM_PROBLEM(310, signing_of_no_leaf, "'{found}' names a leaf that the formula does not have")
/// Doubtful: -A5 if only four leaves are signed.
BIFOLIUM_PROBLEM(311, exception_changes_nothing, "'{found}' is not an exception: the rule says the same already")
/// Doubtful: `$2 (of 4)` of a formula with gatherings of another number of leaves.
BIFOLIUM_PROBLEM(367, signing_of_others, "'{found}' says of which gatherings the rule is, and {limit} {gathering of the formula has|gatherings of the formula have} another number of leaves: it was taken for {this one|these} too")
/// Evidence of conjugacy is expected.
BIFOLIUM_PROBLEM(312, not_evidence, "'{found}' is not evidence of conjugacy: write A1.4 conjugate, A1.4 disjunct, B2 stub or A2 sewing")
/// The text after the formula does not state the signing or the pagination.
BIFOLIUM_PROBLEM(313, not_stated, "the text after the formula does not state this")
/// Doubtful: numbers of pages after the last unit of an extent.
BIFOLIUM_PROBLEM(314, pages_without_unit, "'{found}' has no unit: the unit before it was taken")
/// Doubtful: a-z, which are 23 pages or up to 26.
BIFOLIUM_PROBLEM(315, pages_lettered, "'{found}' was counted by the alphabet of 23 letters; by that of 26 it is {limit}")
/// A range of leaves longer than any gathering is signed, or of more gatherings than are named one by one.
BIFOLIUM_PROBLEM(316, signing_range_too_long, "'{found}' names more than {limit} {leaf or gathering|leaves or gatherings} one by one: write the gathering alone for all its leaves")
/// Doubtful: (−title), of which the statement does not say which leaf it is.
BIFOLIUM_PROBLEM(344, title_leaf_taken, "'{found}' was read as the first leaf of the book that is not blank: if the title is on another, write its signature")
/// Doubtful: `[8], 205`, without a word for what is counted.
BIFOLIUM_PROBLEM(317, pages_taken, "'{found}' does not say what it counts: pages were taken")
/// Doubtful: [8]-320 p. read as eight pages and 320 pages.
BIFOLIUM_PROBLEM(318, bracket_read_as_count, "'{found}' was read as {limit} {page|pages} without numbers before the numbers, not as the number of the first page")
/// Doubtful: 120 leaves, 240 p.
BIFOLIUM_PROBLEM(358, pages_stated_again, "'{found}' can be the {limit} {page|pages} before it, counted again in another unit: state each page once")
/// Doubtful: a leaf that the formula takes away, in a list of the leaves that a copy lacks.
BIFOLIUM_PROBLEM(319, wanting_in_every_copy, "every copy lacks '{found}', because the formula does not have this leaf")
/// Doubtful: `ca. 200 p.`, `about 100 leaves`.
BIFOLIUM_PROBLEM(340, pages_approximate, "'{found}' is not an exact number, so that it is compared with no other")
/// A statement says which format the book is not: `not 8vo`.
BIFOLIUM_PROBLEM(341, format_denied, "'{found}' says which format the book does not have: write the one that it has")
/// Doubtful: a format is stated with a question mark, or with a word such as `perhaps`.
BIFOLIUM_PROBLEM(342, format_doubted, "'{found}' states the format with a doubt")
/// Doubtful: a statement names several formats, of which none can be taken for the whole book: `4to or 8vo`.
BIFOLIUM_PROBLEM(343, several_formats, "'{found}' names several formats, so that none of them was compared with the rest")
/// An extent whose numbers have no unit.
BIFOLIUM_PROBLEM(331, unit_of_pages_missing, "'{found}' does not say what it counts: write p. or leaves after it")
/// A word after the numbers of an extent that is not a unit of pages.
BIFOLIUM_PROBLEM(332, not_a_unit_of_pages, "'{found}' is not a unit of pages: write p., leaves or columns after the numbers")
/// A size of a type page, a box or an image, without a height of the book.
BIFOLIUM_PROBLEM(333, size_of_no_leaf, "'{found}' is not the size of the leaf or the binding: write that, as 187 mm or 19 cm")

// 320-339: dates and places of printing, as catalogues state them
/// Doubtful: `MDCCXXV [1752]`.
BIFOLIUM_PROBLEM(320, date_numerals_differ, "'{found}' in brackets is not the year {limit} printed before it: one of the two is a slip")
/// Doubtful: years that the statement does not join.
BIFOLIUM_PROBLEM(321, several_dates, "'{found}' is a second date, and the statement does not say which is the date of printing")
/// Doubtful: 742 read as 1742; MDC. L. Torrentinus, where the L may be an initial, as 1650.
BIFOLIUM_PROBLEM(322, year_clipped, "'{found}' was read as {limit}")
/// Doubtful: M. D. X. V. Kal. Maii, which is 1510 and a day, or 1515.
BIFOLIUM_PROBLEM(334, year_with_day, "'{found}' may be a year, or the year {limit} with the day of the month: both were taken")
/// Doubtful: I499, l607, 16o7.
BIFOLIUM_PROBLEM(354, typed_figures, "'{found}' has letters where figures are expected: it was taken for {limit}")
/// Doubtful: c1890.
BIFOLIUM_PROBLEM(323, circa_or_copyright, "'{found}' was read as 'about'; c may also mean copyright")
/// 1725 BC, AH 1221, -1725, with no year of our era beside it.
BIFOLIUM_PROBLEM(324, other_era, "'{found}' says that the year is not of our era: write that of our era in brackets after it, as in AH 1221 [1806]")
/// No place of printing has this name.
BIFOLIUM_PROBLEM(325, unknown_place, "no place of printing is known as '{found}'")
/// Doubtful: a name of several towns.
BIFOLIUM_PROBLEM(326, ambiguous_place, "'{found}' is the name of {limit} {place|places}")
/// Doubtful: a name that false imprints use.
BIFOLIUM_PROBLEM(327, fictitious_place, "'{found}' is a name that false imprints use: the book may have been printed elsewhere")
/// Doubtful: a place with a question mark, or with a word such as `perhaps`.
BIFOLIUM_PROBLEM(352, place_doubted, "'{found}' names the place with a doubt")
/// Doubtful: a name with words beside it that can make it that of another place: New London; Paris, Kentucky.
BIFOLIUM_PROBLEM(353, place_qualified, "'{found}' may be another place than the one of this name that is known, so that none was taken")

// 400-499: observations and inference
/// A height, width or type height that cannot be a length.
BIFOLIUM_PROBLEM(400, impossible_measure, "'{found}' must be a length of more than zero and less than a kilometre")
/// A range of years that ends before it begins, or a year of more than four digits.
BIFOLIUM_PROBLEM(401, impossible_years, "a range of years must not end before it begins, and a year has at most four digits")
/// A number of leaves that a gathering cannot have.
BIFOLIUM_PROBLEM(402, impossible_gathering, "a gathering has from 1 to 4096 leaves, not {limit}")
/// Leaves are described, but not how many leaves the gathering has.
BIFOLIUM_PROBLEM(403, gathering_size_needed, "leaves of a gathering are described: say also how many leaves the gathering has")
/// A leaf is described that the gathering does not have.
BIFOLIUM_PROBLEM(404, leaf_outside_gathering, "the leaves of this gathering are numbered from 1 to {limit}")
/// One leaf is described twice.
BIFOLIUM_PROBLEM(405, leaf_seen_twice, "leaf {limit} of the gathering is described twice")
/// A year or a range of years is expected.
BIFOLIUM_PROBLEM(406, not_years, "found '{found}' where years are expected: write 1487 or 1450-1500")
/// A number of leaves is expected.
BIFOLIUM_PROBLEM(407, not_a_gathering_size, "found '{found}' where a number of leaves is expected: write 8, or 8.4 where two numbers alternate")
/// A leaf and its evidence are expected.
BIFOLIUM_PROBLEM(408, not_leaves_seen, "found '{found}' where a leaf and its evidence are expected: write 3 gutter or 7 fore-edge horizontal")
/// More leaves described than the library can store.
BIFOLIUM_PROBLEM(409, too_many_leaves_seen, "at most 24 leaves of a gathering can be described")
/// Doubtful: chain lines and wove paper in one book.
BIFOLIUM_PROBLEM(410, chain_lines_on_wove, "wove paper has no chain lines: the book may be printed on two stocks")
/// Doubtful: the shape of an agenda.
BIFOLIUM_PROBLEM(411, very_narrow_leaf, "the leaf is at least three times as high as wide: this is the shape of an agenda")
/// Doubtful: vellum with the marks of a paper mould.
BIFOLIUM_PROBLEM(412, marks_in_vellum, "vellum has neither chain lines nor watermarks")
/// A warning: a height or width that leaves of books seldom have, as where centimetres were taken for millimetres.
BIFOLIUM_PROBLEM(413, unlikely_measure, "'{found}' is hardly a measure of a leaf: check the unit and the digits")
/// A warning: a type page that is higher than the leaf on which it is printed.
BIFOLIUM_PROBLEM(414, type_page_above_leaf, "the type page is higher than the leaf: one of the two was measured or written wrongly")
/// A step to which measures were rounded up that is less than zero, or more than one of them.
BIFOLIUM_PROBLEM(415, impossible_step, "'{found}' must be zero or more, and at most the height and the width that were rounded up to it")
/// A warning: years of which the model of paper knows nothing.
BIFOLIUM_PROBLEM(416, years_not_known, "'{found}' is outside the years of which paper and formats are known: what is known of {limit} was carried on")
/// A warning: bolts, deckle or tranchefile of a leaf of which binders have cut all edges.
BIFOLIUM_PROBLEM(417, edges_of_cropped_leaf, "a leaf that was cropped keeps neither bolts nor deckle: the state or the edge was written wrongly, or not every edge was cut")
/// The tallest volume of a set is lower than the lowest.
BIFOLIUM_PROBLEM(420, tallest_below_lowest, "the tallest volume must not be lower than the lowest")
/// A year in a watermark before the first watermarks.
BIFOLIUM_PROBLEM(421, watermark_too_early, "a watermark cannot have the year {limit}: the first watermarks are of 1282")
/// Doubtful: a range of heights, of copies or of the volumes of a set.
BIFOLIUM_PROBLEM(422, several_heights, "'{found}' states several sizes, of copies or volumes, of which the greatest was compared with the rest")
/// A word that is not one of those for the material of a leaf.
BIFOLIUM_PROBLEM(430, no_such_material, "found '{found}' where laid, wove, vellum or unknown is expected")
/// A word that is not one of those for the direction of chain lines.
BIFOLIUM_PROBLEM(431, no_such_chain_lines, "found '{found}' where vertical, horizontal, both or unknown is expected")
/// A word that is not one of those for the place of a watermark in a leaf.
BIFOLIUM_PROBLEM(432, no_such_mark_place, "found '{found}' where centre, gutter, head-of-gutter, fore-edge, head-or-tail-edge, corner, absent or unknown is expected")
/// A word that is not one of those for how a leaf was cut.
BIFOLIUM_PROBLEM(433, no_such_leaf_state, "found '{found}' where uncut, trimmed, rebound, cropped, inlaid or unknown is expected")
/// A word that is not one of those for what an edge of a leaf shows.
BIFOLIUM_PROBLEM(434, no_such_edge_seen, "found '{found}' where bolt, deckle, tranchefile or unknown is expected")
/// A word that is not one of those for the place of point-holes.
BIFOLIUM_PROBLEM(435, no_such_hole_place, "found '{found}' where spine-fold, head, tail, fore-edge, inside or unknown is expected")
/// A word that is not one of those for what was measured.
BIFOLIUM_PROBLEM(436, no_such_measure_of, "found '{found}' where leaf, binding or either is expected")

// 500-599: the edition: casting off, paper, presswork
/// A number of pages, copies, sheets or a price that is less than zero.
BIFOLIUM_PROBLEM(500, negative_count, "'{found}' must not be less than zero")
/// An edition without pages or without copies.
BIFOLIUM_PROBLEM(501, nothing_to_print, "an edition must have at least one page and one copy")
/// Overs of more than the edition itself.
BIFOLIUM_PROBLEM(502, too_many_overs, "overs must be from 0 to 100 per cent")
/// A price or weight of a ream without a ream.
BIFOLIUM_PROBLEM(503, ream_needed, "a price or weight of the ream is given: say also how many sheets the ream has")
/// A comparison of costs without a price.
BIFOLIUM_PROBLEM(504, price_needed, "a comparison of costs needs a price of the ream, the forme or the token for each option")
/// A size of type that the table of words to the square inch does not have.
BIFOLIUM_PROBLEM(505, no_such_type, "the table of words to the square inch has types of 5, 5 1/2, 6, 7 and 8 points only")
/// A formula without a statement of format, or with two.
BIFOLIUM_PROBLEM(506, format_not_stated, "the formula does not state one format: write it first, as in 8°: A-K⁸")
/// A formula and a scheme that divide the sheet into different numbers of leaves.
BIFOLIUM_PROBLEM(507, formats_differ, "the formula and the scheme divide the sheet into different numbers of leaves")
/// A range of numbers of copies that ends before it begins.
BIFOLIUM_PROBLEM(508, range_goes_backwards, "'{found}' must not be less than {limit}, with which the range begins")
/// A ream with more good sheets than it has sheets.
BIFOLIUM_PROBLEM(509, too_many_good_sheets, "a '{found}' of {limit} {sheet|sheets} cannot have more good sheets than that")
/// A quire with more sheets than the ream.
BIFOLIUM_PROBLEM(511, quire_above_ream, "a '{found}' of {limit} {sheet|sheets} cannot have quires of more: write the sheets of the ream first, then those of the quire")
/// More leaves to be printed anew than the book has.
BIFOLIUM_PROBLEM(512, too_many_cancels, "'{found}' must be at most {limit}, the leaves of the book: a cancel takes the place of a leaf")
/// A formula and a scheme of the same format that makes other gatherings.
BIFOLIUM_PROBLEM(513, scheme_not_in_formula, "the scheme makes none of the gatherings of the formula: name one that gathers as many leaves, or leave it empty and state the format in the formula")
/// Options of printing a text, to be compared by cost, that do not name the same prices.
BIFOLIUM_PROBLEM(510, prices_differ, "a comparison of costs needs the same prices for every option: write 0 for what costs nothing")
/// More options of printing a text than are compared with one another.
BIFOLIUM_PROBLEM(514, too_many_options, "a comparison takes at most {limit} {option|options}: compare some of them, and then the least of each comparison")
/// The order of options changes more often than is kept.
BIFOLIUM_PROBLEM(515, too_many_changes_of_order, "the order of the '{found}' changes more than {limit} {time|times}: compare fewer of them, or a smaller range of copies")

// 600-619: the sheets of a book
/// Something was seen of a gathering, cancel or insert that the formula does not have.
BIFOLIUM_PROBLEM(600, no_such_remnant, "the formula has no gathering, cancel or insert '{found}': write A, ±C3 or +χ1")
/// Two different stocks of paper, or two different numbers of marked leaves, are stated of one unit.
BIFOLIUM_PROBLEM(601, remnant_seen_twice, "two different things were seen of '{found}': state one stock of paper and one number of marked leaves")
/// More leaves with a part of a watermark than the unit has leaves.
BIFOLIUM_PROBLEM(602, too_many_marked_leaves, "at most {limit} {leaf|leaves} of '{found}' can show a part of a watermark: those of whole sheets before them are not counted")

// 700-799: pictures
/// A formula none of whose gatherings an attested scheme makes in its format.
BIFOLIUM_PROBLEM(700, no_scheme_for_gatherings, "no attested scheme makes a gathering of this formula in its format")
// clang-format on

#undef BIFOLIUM_PROBLEM
