#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Would the tests see a mistake? Makes small changes to the headers, one at a time and by seed - an operator, a bound, a
number, a line left out - compiles the tests that could see the change, runs them, and lists the changes that no test sees.

    tests/teeth/teeth.py SEED COUNT [--folder edition]... [--compiler g++] [--nearest N] [--quick] [--times FILE]

In each folder named, or in every folder, COUNT lines are changed, one at a time; all its lines if there are fewer.

The tests of a folder are compiled as one unit: those of the changed header's folder first, then those of each folder that
includes it; tests that take more than half a second come after the quick ones of all folders. A change is seen where an assertion stops the compiler, or a test fails, crashes or runs ten times as long as
before. One that is no C++ proves nothing: the next line is taken in its place. One that no test sees is printed as a difference.
harmless.tsv beside this script lists changes that nobody could see, each with the reason; they are told and not counted. The
exit code is 0 where in every folder at most 5 of 100 live. The tree is not touched: changes are made in a copy of the
headers. With --nearest only so many folders are asked for each change, and with --quick no slow test is, so that more may seem
to live than do. --times keeps in a file how long each test takes, from run to run. Needs doctest and pugixml, as the tests do;
clang takes half the time of g++."""

import argparse
import json
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]
LIBRARY = ROOT / "include" / "bifolium"
ROOMS = ["core", "paper", "leaf", "fold", "imposition", "collation", "edition", "evidence", "copy", "record", "book", "explain", "drawing"]
FLAGS = ["-std=c++20", "-O0", "-w", "-D_GLIBCXX_ASSERTIONS", f'-DBIFOLIUM_TEST_DATA="{ROOT}/tests/data"', f"-I{ROOT}/tests",
         f"-I{ROOT}/examples", f"-I{ROOT}"]
# What is read once for all: the headers under test are not among them.
COMMON = """doctest/doctest.h algorithm array bit charconv cmath compare concepts cstdint cstdio cstdlib cstring fstream functional
iomanip iostream iterator limits locale map memory numeric optional random ranges regex set span sstream string string_view
type_traits unordered_set utility vector""".split()
SWAPS = [("<=", "<"), (">=", ">"), ("==", "!="), ("!=", "=="), ("&&", "||"), ("||", "&&"), (" < ", " <= "), (" > ", " >= "),
         (" + ", " - "), (" - ", " + "), (" * ", " + "), (" / ", " * "), (" % ", " / "), ("++", "--"), ("--", "++"),
         ("+= ", "-= "), ("-= ", "+= "), ("true", "false"), ("false", "true"), ("(!", "("), (" !", " "),
         ("first", "last"), ("last", "first"), ("least", "most"), ("most", "least"), ("front()", "back()")]


def code_lines(text):
    """Numbers of the lines that hold code: no comments, includes, assertions or lone brackets, and no lines of a raw string,
    such as the script of a page, which a browser tests (tests/drawing/browser.sh)."""
    script = None  # how the raw string ends
    for number, line in enumerate(text.split("\n")):
        if script:
            script = None if script in line else script
            continue
        if (opens := re.search(r'R"(js|css)\(', line)) and f'){opens[1]}"' not in line[opens.end():]:
            script = f'){opens[1]}"'
            continue
        bare = line.split("//")[0].strip()
        if len(bare) > 3 and not bare.startswith(("#", "namespace", "static_assert", "template", "using ", "case ", "}")):
            yield number


def changes_of(line):
    """All small changes of a line of code; comments and texts in quotation marks stay, but a number in a table may move."""
    code = line.split("//")[0]
    texts = [m.span() for m in re.finditer(r'"(?:[^"\\]|\\.)*"', code)]
    inside = lambda at: any(a <= at < b for a, b in texts)
    found = []
    for old, new in SWAPS:
        start = 0
        while (at := code.find(old, start)) >= 0:
            start = at + 1
            word = old.isalpha()
            if word and (code[at - 1:at].isalnum() or code[at - 1:at] == "_" or re.match(r"\w", code[at + len(old):])):
                continue
            if not inside(at) and not (old in ("<=", ">=") and code[at:at + 3] == "<=>"):
                found.append(line[:at] + new + line[at + len(old):])
    for number in re.finditer(r"(?<![\w.\"'])\d+(?:\.\d+)?(?![\w.'])", code):
        if inside(number.start()):
            continue
        old = number.group()
        for new in ([f"{float(old) * 1.1:.6g}", f"{float(old) * 0.9:.6g}"] if "." in old else [str(int(old) + 1), str(max(0, int(old) - 1))]):
            if new != old:
                found.append(line[:number.start()] + new + line[number.end():])
    statement = code.strip()
    if statement.endswith(";") and not re.match(r"(return|auto|int|bool|std::|constexpr|struct|class|enum|friend|\[\[|[A-Z]\w+ \w+)", statement):
        found.append("")  # the line is left out
    return found


def included_by(files):
    """For each file, the headers of the library that it includes, directly or by others."""
    known = {}

    def of(path):
        if path not in known:
            known[path] = set()  # a circle ends here
            for kind, name in re.findall(r'^#include ([<"])([^>"]+)', path.read_text(encoding="utf8"), re.M):
                places = [ROOT / "include"] if name.startswith("bifolium/") else [path.parent, ROOT / "tests", ROOT / "examples", ROOT]
                for place in places:
                    found = (place / name).resolve()
                    if found.is_file():
                        known[path] |= {found} | of(found)
                        break
        return known[path]

    return set().union(*(of(f) for f in files))


class Unit:
    """The tests of a folder as one program."""

    def __init__(self, name, files, compiler, base, libraries=()):
        self.name, self.compiler, self.base, self.libraries = name, compiler, base, libraries
        self.source = base / f"{name}.cpp"
        self.source.write_text("".join(f'#include "{f}"\n' for f in files))
        self.headers = included_by(files)
        self.times = None  # seconds of each test on the headers as they are

    def build(self, include, out):
        """The words of the compiler where it fails."""
        clang = "clang" in self.compiler
        common = ["-include-pch", f"{self.base}/common.pch"] if clang else ["-include", f"{self.base}/common.hpp"]
        run = subprocess.run([self.compiler, *FLAGS, f"-I{include}", *common, "-c", str(self.source), "-o", f"{out}.o"],
                             capture_output=True, text=True)
        if run.returncode != 0:
            return run.stderr or "it crashed"
        run = subprocess.run([self.compiler, f"{out}.o", f"{self.base}/main.o", "-o", str(out), *self.libraries], capture_output=True, text=True)
        return run.stderr if run.returncode != 0 else ""

    def measure(self, known):
        """How long the tests take on the headers as they are, where they must pass."""
        if self.times is not None:
            return
        if self.name not in known:
            said = self.build(ROOT / "include", self.base / "unchanged")
            if said:
                sys.exit(f"the tests of {self.name} do not compile: {said[:2000]}")
            times = known[self.name] = {}
            while True:  # the quick tests once more by themselves: one may do the work that a slow one has done for it
                slow = self.choice(times, False)
                run = subprocess.run([str(self.base / "unchanged"), "--duration=true", slow], capture_output=True, text=True, cwd=ROOT)
                if run.returncode != 0:
                    sys.exit(f"the tests of {self.name} fail before anything was changed: {run.stdout[:2000]}")
                times.update((name, float(seconds)) for seconds, name in re.findall(r"^([\d.]+) s: (.*)", run.stdout, re.M))
                if self.choice(times, False) == slow:
                    break
        self.times = known[self.name]

    @staticmethod
    def choice(times, slow_ones):
        """What to ask the test program for, to run the slow tests or all others; '' where there are no slow ones."""
        slow = ",".join(sorted(name.replace(",", "?") for name, seconds in times.items() if seconds > 0.5))  # commas part the names
        if slow_ones:
            return f"--test-case={slow}" if slow else ""
        return f"--test-case-exclude={slow}" if slow else "--count=false"

    def run(self, program, slow_ones):
        """Runs the quick tests or the slow ones; what sees the change, or ''."""
        choice = self.choice(self.times, slow_ones)
        if not choice:
            return ""
        usual = sum(seconds for seconds in self.times.values() if (seconds > 0.5) == slow_ones)
        try:
            run = subprocess.run([str(program), "--abort-after=1", choice], capture_output=True, text=True, errors="replace", cwd=ROOT,
                                 timeout=20 + 10 * usual)
        except subprocess.TimeoutExpired:
            return f"{self.name}, which do not end"
        if run.returncode == 0:
            return ""
        failed = re.search(r"(\w+/\w+\.[ch]pp):(\d+): (?:FATAL )?ERROR", run.stdout)
        return f"{failed[1]}:{failed[2]}" if failed else f"{self.name}, which crash"

    def sees(self, include, known):
        """What of the quick tests sees the change: words, '' for nothing, or None where it is no C++."""
        said = self.build(include, self.program())
        self.measure(known)  # the tests compile and pass as long as nothing is changed
        if said:
            asserted = re.search(r"static assertion failed|static_assert|is not a constant expression|must be initialized by a constant", said)
            return "an assertion while compiling" if asserted else None
        return self.run(self.program(), False)

    def program(self):
        return self.base / f"{self.name}_changed"


def units(compiler, base):
    all_of = []
    for room in ROOMS:
        files = [f for f in sorted((ROOT / "tests" / room).glob("*.cpp")) if f.name != "draw_all.cpp"]
        if room == "evidence":
            files.append(ROOT / "bench" / "paper_model" / "fitting.cpp")
        all_of.append(Unit(room, files, compiler, base, ["-lpugixml"] if room in ("drawing", "explain") else []))
    all_of.append(Unit("extremes", [ROOT / "tests" / "extremes.cpp", ROOT / "tests" / "lines_of_errors.cpp", ROOT / "tests" / "headers" / "value_types.cpp"], compiler, base))
    return all_of


def prepare(compiler, base):
    common = base / "common.hpp"
    common.write_text("".join(f"#include <{header}>\n" for header in COMMON))
    out = base / ("common.pch" if "clang" in compiler else "common.hpp.gch")
    subprocess.run([compiler, *FLAGS, "-x", "c++-header", str(common), "-o", str(out)], check=True)
    subprocess.run([compiler, *FLAGS, "-c", str(ROOT / "tests" / "main.cpp"), "-o", str(base / "main.o")], check=True)


def room_of(header):
    return header.relative_to(LIBRARY).parts[0]


def harmless():
    """(header, old line, new line) of the changes argued to be invisible; a row whose line is gone is an error."""
    rows = {}
    for line in (HERE / "harmless.tsv").read_text(encoding="utf8").split("\n"):
        if line and not line.startswith("#"):
            header, old, new, why = line.split("\t")
            if old not in (text.strip() for text in (LIBRARY / header).read_text(encoding="utf8").split("\n")):
                sys.exit(f"harmless.tsv: {header} has no line '{old}'")
            rows[header, old, new] = why
    return rows


def what_sees(all_units, header, text, base, given, known):
    """Words, '' for nothing, or None where the change is no C++."""
    include = base / "changed"
    shutil.copytree(ROOT / "include", include)
    (include / header.relative_to(ROOT / "include")).write_text(text, encoding="utf8")
    seeing = [u for u in all_units if header.resolve() in u.headers]
    seeing.sort(key=lambda u: u.name != room_of(header))
    try:
        for unit in seeing[:given.nearest]:
            if (said := unit.sees(include, known)) != "":
                return said
        for unit in [] if given.quick else seeing[:given.nearest]:
            if (said := unit.run(unit.program(), True)) != "":
                return said
        return ""
    finally:
        shutil.rmtree(include)


def try_room(room, given, all_units, argued, base, known):
    """How many changes of the folder are seen, and how many were made."""
    places = []  # every line of code is as likely as any other
    for header in sorted((LIBRARY / room).rglob("*.hpp")):
        text = header.read_text(encoding="utf8")
        lines = text.split("\n")
        places += [(header, lines, n) for n in code_lines(text) if changes_of(lines[n])]
    random.shuffle(places)
    seen, made = 0, 0
    for header, lines, n in places:
        if made == given.count:
            break
        old, new = lines[n], random.choice(changes_of(lines[n]))
        where = f"{header.relative_to(ROOT)}:{n + 1}"
        if why := argued.get((str(header.relative_to(LIBRARY)), old.strip(), new.strip())):
            print(f"none  {where}  {why}", flush=True)
            continue
        by = what_sees(all_units, header, "\n".join([*lines[:n], new, *lines[n + 1:]]), base, given, known)
        if by is None:
            continue
        made += 1
        seen += by != ""
        print(f"seen  {where}  by {by}" if by else f"LIVES {where}\n  - {old.strip()}\n  + {new.strip()}", flush=True)
    return seen, made


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("seed", type=int)
    parser.add_argument("count", type=int)
    parser.add_argument("--folder", action="append", choices=ROOMS)
    found = next((c for c in ("clang++-16", "clang++-19", "g++") if shutil.which(c)), "c++")
    parser.add_argument("--compiler", default=os.environ.get("CXX", found))
    parser.add_argument("--nearest", type=int)
    parser.add_argument("--quick", action="store_true")
    parser.add_argument("--times", type=pathlib.Path)
    given = parser.parse_args()
    random.seed(given.seed)
    argued, tally = harmless(), {}
    known = json.loads(given.times.read_text()) if given.times and given.times.exists() else {}
    with tempfile.TemporaryDirectory() as base:
        base = pathlib.Path(base)
        prepare(given.compiler, base)
        all_units = units(given.compiler, base)
        for room in given.folder or ROOMS:
            tally[room] = try_room(room, given, all_units, argued, base, known)
            if given.times:
                given.times.write_text(json.dumps(known, indent=1))
    for folder, (seen, all_of) in tally.items():
        print(f"{folder:12} seen {seen} of {all_of}")
    sys.exit(0 if all(20 * (a - s) <= a for s, a in tally.values()) else 1)


if __name__ == "__main__":
    main()
