# SPDX-License-Identifier: MIT
"""Shows values of bifolium in gdb as the library writes them: 2A, 10 3/4, 187 mm, 8°, the runs of a formula, the value or the
error of an Expected. In gdb, or in ~/.gdbinit:

    source bifolium_gdb.py

It reads the members, calls nothing in the program, and so works on core files too. The standard library may be libstdc++ or
libc++. A test compares what it shows with what the program prints."""
import re

import gdb
import gdb.printing

RAISED = str.maketrans("0123456789", "⁰¹²³⁴⁵⁶⁷⁸⁹")


def raised(number):
    return str(number).translate(RAISED)


def enumerator(value):
    """The name of an enumerator without what it is in."""
    return str(value).rsplit("::", 1)[-1]


def text_of(array, size):
    return bytes(int(array[i]) & 0xFF for i in range(size)).decode("utf-8", "replace")


def text_to_zero(array, most):
    size = next((i for i in range(most) if int(array[i]) == 0), most)
    return text_of(array, size)


def member(value, *paths):
    """The first of these paths that the standard library in use has: libstdc++ and libc++ name their members differently."""
    for path in paths:
        try:
            found = value
            for name in path.split("."):
                found = found[name]
            return found
        except gdb.error:
            pass
    raise gdb.error(f"none of {paths} in {value.type}")


def optional(value):
    """The value of a std::optional, or None."""
    if not member(value, "_M_payload._M_engaged", "__engaged_"):
        return None
    return member(value, "_M_payload._M_payload._M_value", "__val_")


def elements(vector):
    """The values of a std::vector."""
    begin = member(vector, "_M_impl._M_start", "__begin_")
    end = member(vector, "_M_impl._M_finish", "__end_")
    while begin != end:
        yield begin.dereference()
        begin += 1


class Written:
    """A value that is shown as a text."""

    def __init__(self, value):
        self.value = value

    def to_string(self):
        return self.write(self.value)


def greek(place, capital):
    return chr((0x391 if capital else 0x3B1) + place - 1 + (1 if place >= 18 else 0))


def hebrew(figure):
    letters = "אבגדהוזחטיכלמנסעפצקרשת"
    out = ""
    while figure >= 400:
        out, figure = out + letters[21], figure - 400
    if figure >= 100:
        out += letters[17 + figure // 100]
    figure %= 100
    instead = figure in (15, 16)  # written as 9 and 6 or 7
    if figure >= 10:
        out += letters[8] if instead else letters[8 + figure // 10]
    units = figure - 9 if instead else figure % 10
    return out + (letters[units - 1] if units else "") + "\u200e"


def place_of_23(letter):
    """The position of a letter in the alphabet without J, U and W."""
    return letter - (letter > 10) - (letter > 21) - (letter > 23)


class Signature(Written):
    @staticmethod
    def write(of):
        mark, text = enumerator(of["mark_"]), text_of(of["text_"], int(of["size_"]))
        multiple, letter = int(of["multiple_"]), int(of["letter_"])
        is_letter = mark in ("capital", "small_letter", "greek", "greek_capital", "cyrillic", "cyrillic_capital")
        beside, enclosed = enumerator(of["beside_"]), bool(of["enclosed_"])
        out = raised(int(of["series_"])) if int(of["series_"]) else ""
        out += {"none": "", "pi": "π", "chi": "χ"}[enumerator(of["duplicate_"])]
        out += ("(" if is_letter else "'") if enclosed else ""
        out += text if beside == "before" else ""
        repeated = mark == "symbol" and text in (":", "+") and multiple < 10
        if repeated:
            out += text * (multiple - 1)
        elif (multiple > 1 and mark != "hebrew") or mark == "number":
            out += str(multiple)
        cyrillic = letter - 1 + (1 if letter >= 10 else 0)
        out += {
            "capital": lambda: chr(ord("A") + letter - 1),
            "small_letter": lambda: chr(ord("a") + letter - 1),
            "greek": lambda: greek(letter, False),
            "greek_capital": lambda: greek(letter, True),
            "cyrillic": lambda: chr(0x430 + cyrillic),
            "cyrillic_capital": lambda: chr(0x410 + cyrillic),
            "number": lambda: "",
            "hebrew": lambda: hebrew(multiple),
            "symbol": lambda: text,
            "name": lambda: "[" + text + "]",
            "printed": lambda: '"' + text + '"',
            "pi": lambda: "π",
            "chi": lambda: "χ",
        }[mark]()
        out += greek(place_of_23(letter), False) if beside == "greek" else ""
        out += text if beside == "after" else ""
        return out + ((")" if is_letter else "'") if enclosed else "")


class Fraction(Written):
    @staticmethod
    def write(of):
        above, below = int(of["numerator_"]), int(of["denominator_"])
        sign, above = ("-" if above < 0 else ""), abs(above)
        if below == 1:
            return sign + str(above)
        whole, rest = divmod(above, below)
        return f"{sign}{whole} {rest}/{below}" if whole else f"{sign}{rest}/{below}"


UNITS = {"Millimetre": "mm", "Centimetre": "cm", "Inch": "in", "ParisInch": "pouces", "ParisLine": "lignes"}


class Length(Written):
    @staticmethod
    def write(of):
        unit = enumerator(of.type.strip_typedefs().template_argument(1))
        count = of["count_"]
        number = f"{float(count):g}" if count.type.strip_typedefs().code == gdb.TYPE_CODE_FLT else str(shown(count))
        return f"{number} {UNITS.get(unit, unit)}"


class Sheet(Written):
    @staticmethod
    def write(of):
        return f"{shown(of['short_'])} x {shown(of['long_'])}"


class Format(Written):
    @staticmethod
    def write(of):
        kind, shape, number = enumerator(of["kind_"]), enumerator(of["shape_"]), int(of["number_"])
        text = {"leaves": f"{number}°", "part": f"1/{number}°", "single_sheet": "single sheet", "not_determined": "not determined"}[kind]
        words = {"usual": "", "longer": "long "}
        return words.get(shape, shape + " ") + text


class ShortText(Written):
    @staticmethod
    def write(of):
        return text_of(of["bytes_"], int(of["size_"]))


class Error(Written):
    @staticmethod
    def write(of):
        found, problem = text_to_zero(of["found"], 24), enumerator(of["problem"])
        place = optional(of["place"])
        if place is None:
            return f"{problem} in the field '{found}'"
        return f"{problem} at line {int(place['line'])}, column {int(place['column'])}: '{found}'"


class Cycle(Written):
    @staticmethod
    def write(of):
        terms = of["terms_"]
        return "/".join(raised(int(terms[i])) for i in range(int(of["size_"])))


class Run(Written):
    @staticmethod
    def write(of):
        first, last = shown(of["first"]), shown(of["last"])
        ends = first if int(of["gatherings"]) == 1 else f"{first}-{last}"
        return ends + shown(of["leaves"])


class Change:
    """The kind of the change, and below it what that kind says."""

    def __init__(self, value):
        self.value, self.kind = value, enumerator(value["kind_"])

    def to_string(self):
        return self.kind

    def children(self):
        try:
            yield self.kind, self.value[self.kind + "_"]
        except gdb.error:
            pass


class Formula:
    """In a line: the format, the runs and the leaves; changes and warnings below it."""

    def __init__(self, value):
        self.value = value

    def to_string(self):
        of = self.value
        book_format = optional(of["format_"]["value"])
        text = f"{shown(book_format)}: " if book_format is not None else ""
        text += " ".join(shown(run) for run in elements(of["runs_"]))
        changes = sum(1 for _ in elements(of["changes_"]))
        if changes:
            text += f" with {changes} change" + ("s" if changes > 1 else "")
        return f"{text}; {int(of['leaves_']['value'])} leaves"

    def children(self):
        for name in ("changes_", "notes_", "warnings_"):
            if next(elements(self.value[name]), None) is not None:
                yield name.rstrip("_"), self.value[name]


class Expected:
    """The value, or the error."""

    def __init__(self, value):
        self.value = value

    def to_string(self):
        if "void" in str(self.value.type.strip_typedefs().template_argument(0)):
            failed = enumerator(self.value["error_"]["problem"]) != "none"
            return shown(self.value["error_"]) if failed else "success"
        held = optional(self.value["value_"])
        return "error: " + shown(self.value["error_"]) if held is None else shown(held)


PRINTERS = {
    printer.__name__: printer
    for printer in (Signature, Fraction, Length, Sheet, Format, ShortText, Error, Cycle, Run, Change, Formula, Expected)
}


def shown(value):
    """The text for a value: from a printer above where there is one, from gdb otherwise."""
    printer = find(value)
    return printer.to_string() if printer else value.format_string(raw=False)


def find(value):
    name = value.type.strip_typedefs().unqualified().name or ""
    found = re.match(r"^bifolium::v\d+::(\w+)(<.*>)?$", name)
    printer = PRINTERS.get(found.group(1)) if found else None
    return printer(value) if printer else None


class Views(gdb.printing.PrettyPrinter):
    def __init__(self):
        super().__init__("bifolium")

    def __call__(self, value):
        return find(value)


gdb.printing.register_pretty_printer(gdb.current_objfile(), Views(), replace=True)
