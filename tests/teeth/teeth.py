#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Would the tests see a mistake? Makes small changes to the headers, one at a time and by seed - an operator, a bound, a
number, a line left out - compiles the tests that could see the change, runs them, and lists the changes that no test sees.

    tests/teeth/teeth.py SEED COUNT [--folder edition]... [--compiler clang++-16] [--map FILE] [--only N] [--own] [--quick]

In each folder named, or in every folder, COUNT lines are changed, one at a time; all its lines if there are fewer.

Which tests could see a change is measured first: every file of tests is compiled by itself, and it is noted which lines of the
headers it runs (clang's source-based coverage) and how long each test takes. That takes half an hour of one processor, and --map keeps it in a
file from run to run; a file of tests is measured again where it or a header it includes has changed. A change is then shown to the
files that run its line, those of its own folder first and the quickest of them first: the first few one by one, all others
folder by folder. A line that runs only while something compiles, such as a table's, is shown to all files that include it.
Tests that take more than half a second come last.

A change is seen where an assertion stops the compiler, or a test fails, crashes or runs ten times as long as
before. One that is no C++ proves nothing: the next line is taken in its place. One that no test sees is printed as a difference.
harmless.tsv beside this script lists changes that nobody could see, each with the reason; they are told and not counted. The
exit code is 0 where in every folder at most 5 of 100 live. The tree is not touched: changes are made in a copy of the
headers. With --only so many programs are asked about each change, with --own only the tests of the folder are
measured and asked, and with --quick no slow test is, so that more may seem
to live than do. Needs doctest, pugixml and clang 16 with its coverage (Debian: clang-16 llvm-16 libclang-rt-16-dev)."""

import argparse
import concurrent.futures
import hashlib
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
ACROSS = ["extremes.cpp", "lines_of_errors.cpp", "moved_from.cpp", "values_out_of_range.cpp", "headers/value_types.cpp"]  # tests of several folders at once
ALONE = 6  # so many files are asked one by one before the others are asked by folder
SLOW = 0.5  # seconds
FLAGS = ["-std=c++20", "-O0", "-w", "-D_GLIBCXX_ASSERTIONS", f'-DBIFOLIUM_TEST_DATA="{ROOT}/tests/data"', f"-I{ROOT}/tests",
         f"-I{ROOT}/examples", f"-I{ROOT}"]
COVERAGE = ["-fprofile-instr-generate", "-fcoverage-mapping"]
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


class TestFile:
    """A file of tests, and what is known of it."""

    def __init__(self, path):
        self.path = path
        self.name = str(path.relative_to(ROOT / "tests"))
        self.room = path.parent.name
        parts = [path]
        if "fitting.hpp" in path.read_text(encoding="utf8"):  # the fit of the paper model is run on parts of the books
            parts.append(ROOT / "bench" / "paper_model" / "fitting.cpp")
        self.includes = "".join(f'#include "{p}"\n' for p in parts)
        self.headers = included_by(parts)
        self.digest = hashlib.sha256(b"".join(p.read_bytes() for p in sorted({*parts, *self.headers}))).hexdigest()
        self.times = {}  # seconds of each test
        self.lines = {}  # of each header: the lines that these tests run
        self.counted = {}  # of each header: the lines that could be run
        self.cost = 0.0  # seconds to compile it and to run its quick tests

    def keep(self):
        return {"digest": self.digest, "times": self.times, "cost": self.cost,
                "lines": {h: sorted(n) for h, n in self.lines.items()}, "counted": {h: sorted(n) for h, n in self.counted.items()}}

    def recall(self, kept):
        if kept.get("digest") != self.digest:
            return False
        self.times, self.cost = kept["times"], kept["cost"]
        self.lines = {h: set(n) for h, n in kept["lines"].items()}
        self.counted = {h: set(n) for h, n in kept["counted"].items()}
        return True


class Compiler:
    def __init__(self, command, base):
        self.command, self.base = command, base

    def prepare(self):
        common = self.base / "common.hpp"
        common.write_text("".join(f"#include <{header}>\n" for header in COMMON))
        for flags, name in (([], "plain"), (COVERAGE, "coverage")):
            subprocess.run([self.command, *FLAGS, *flags, "-x", "c++-header", str(common), "-o", str(self.base / f"{name}.pch")], check=True)
            subprocess.run([self.command, *FLAGS, *flags, "-c", str(ROOT / "tests" / "main.cpp"), "-o", str(self.base / f"{name}.o")], check=True)

    def build(self, files, include, out, name="plain"):
        """The words of the compiler where it fails."""
        flags = COVERAGE if name == "coverage" else []
        source = pathlib.Path(f"{out}.cpp")
        source.write_text("".join(f.includes for f in files))
        run = subprocess.run([self.command, *FLAGS, *flags, f"-I{include}", "-include-pch", f"{self.base}/{name}.pch", "-c", str(source), "-o",
                              f"{out}.o"], capture_output=True, text=True)
        if run.returncode != 0:
            return run.stderr or "it crashed"
        libraries = ["-lpugixml"] if any(f.room in ("drawing", "explain") for f in files) else []
        run = subprocess.run([self.command, *flags, f"{out}.o", f"{self.base}/{name}.o", "-o", str(out), *libraries], capture_output=True, text=True)
        pathlib.Path(f"{out}.o").unlink(missing_ok=True)
        return run.stderr if run.returncode != 0 else ""

    def measure(self, file):
        """What the file's tests run, on the headers as they are, where they must pass."""
        out = self.base / f"measured_{file.name.replace('/', '_')}"
        started = time.monotonic()
        if said := self.build([file], ROOT / "include", out, "coverage"):
            sys.exit(f"{file.name} does not compile by itself: {said[:2000]}")
        file.cost = time.monotonic() - started
        run = subprocess.run([str(out), "--duration=true"], capture_output=True, text=True, cwd=ROOT,
                             env={**os.environ, "LLVM_PROFILE_FILE": f"{out}.profraw"})
        if run.returncode != 0:
            sys.exit(f"the tests of {file.name} fail before anything was changed: {run.stdout[:2000]}")
        file.times = {name: float(seconds) for seconds, name in re.findall(r"^([\d.]+) s: (.*)", run.stdout, re.M)}
        file.cost += sum(s for s in file.times.values() if s <= SLOW)
        tool = re.search(r"-\d+$", self.command)
        version = tool[0] if tool else ""
        subprocess.run([f"llvm-profdata{version}", "merge", "-sparse", f"{out}.profraw", "-o", f"{out}.profdata"], check=True)
        told = subprocess.run([f"llvm-cov{version}", "export", "--format=lcov", str(out), f"-instr-profile={out}.profdata", str(LIBRARY)],
                              capture_output=True, text=True, check=True).stdout
        for part in told.split("end_of_record"):
            if not (source := re.search(r"^SF:(.*)$", part, re.M)):
                continue
            header = str(pathlib.Path(source[1]).resolve().relative_to(LIBRARY))
            lines = [(int(n), int(times)) for n, times in re.findall(r"^DA:(\d+),(\d+)", part, re.M)]
            file.counted[header] = {n for n, _ in lines}
            file.lines[header] = {n for n, times in lines if times > 0}
        for old in self.base.glob(f"{out.name}*"):
            old.unlink()


def choice(times, slow_ones):
    """What to ask the test program for, to run the slow tests or all others; '' where there are no slow ones."""
    slow = ",".join(sorted(name.replace(",", "?") for name, seconds in times.items() if seconds > SLOW))  # commas part the names
    if slow_ones:
        return f"--test-case={slow}" if slow else ""
    return f"--test-case-exclude={slow}" if slow else "--count=false"


def run_tests(program, files, slow_ones):
    """What of the quick tests or the slow ones sees the change, or ''."""
    times = {name: seconds for f in files for name, seconds in f.times.items()}
    asked = choice(times, slow_ones)
    if not asked:
        return ""
    usual = sum(seconds for seconds in times.values() if (seconds > SLOW) == slow_ones)
    try:
        run = subprocess.run([str(program), "--abort-after=1", asked], capture_output=True, text=True, errors="replace", cwd=ROOT,
                             timeout=20 + 10 * usual)
    except subprocess.TimeoutExpired:
        return f"{files[0].name}, which does not end"
    if run.returncode == 0:
        return ""
    failed = re.search(r"(\w+/\w+\.[ch]pp|\w+\.cpp):(\d+): (?:FATAL )?ERROR", run.stdout)
    return f"{failed[1]}:{failed[2]}" if failed else f"{files[0].name}, which crashes"


def programs(files, header, line):
    """The files of tests that could see a change of the line, in the groups that are compiled as one."""
    name = str(header.relative_to(LIBRARY))
    including = [f for f in files if header.resolve() in f.headers]
    running = [f for f in including if line in f.lines.get(name, ())]
    counted = any(line in f.counted.get(name, ()) for f in including)
    order = lambda f: (f.room != name.split("/")[0], f.cost)
    asked = sorted(running if running and counted else including, key=order)
    groups = [[f] for f in asked[:ALONE]]
    rest = asked[ALONE:]
    for room in dict.fromkeys(f.room for f in rest):
        groups.append([f for f in rest if f.room == room])
    return groups


def what_sees(compiler, files, header, line, text, given):
    """Words, '' for nothing, or None where the change is no C++."""
    base = compiler.base
    include = base / "changed"
    shutil.copytree(ROOT / "include", include)
    (include / header.relative_to(ROOT / "include")).write_text(text, encoding="utf8")
    built = []
    try:
        for number, group in enumerate(programs(files, header, line)[:given.only]):
            out = base / f"changed_{number}"
            if said := compiler.build(group, include, out):
                asserted = re.search(r"static assertion failed|static_assert|is not a constant expression|must be initialized by a constant", said)
                return f"an assertion while {group[0].name} compiles" if asserted else None
            built.append((out, group))
            if (seen := run_tests(out, group, False)) != "":
                return seen
        for out, group in [] if given.quick else built:
            if (seen := run_tests(out, group, True)) != "":
                return seen
        return ""
    finally:
        shutil.rmtree(include)
        for old in base.glob("changed_*"):
            old.unlink()


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


def try_room(room, given, compiler, files, argued):
    """How many changes of the folder are seen, and how many were made."""
    places = []  # every line of code is as likely as any other
    for header in sorted((LIBRARY / room).rglob("*.hpp")):
        text = header.read_text(encoding="utf8")
        lines = text.split("\n")
        places += [(header, lines, n) for n in code_lines(text) if changes_of(lines[n])]
    random.seed(f"{given.seed} {room}")  # a folder's changes do not depend on which others are asked for
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
        by = what_sees(compiler, files, header, n + 1, "\n".join([*lines[:n], new, *lines[n + 1:]]), given)
        if by is None:
            continue
        made += 1
        seen += by != ""
        print(f"seen  {where}  by {by}" if by else f"LIVES {where}\n  - {old.strip()}\n  + {new.strip()}", flush=True)
    return seen, made


def test_files():
    paths = [f for room in ROOMS for f in sorted((ROOT / "tests" / room).glob("*.cpp")) if f.name != "draw_all.cpp"]
    return [TestFile(f) for f in [*paths, *(ROOT / "tests" / name for name in ACROSS)]]


def measure_all(compiler, files, kept_in):
    """What each file of tests runs: recalled where nothing has changed, and otherwise measured."""
    known = json.loads(kept_in.read_text()) if kept_in and kept_in.exists() else {}
    unknown = [f for f in files if not f.recall(known.get(f.name, {}))]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as workers:
        for number, _ in enumerate(workers.map(compiler.measure, unknown), 1):
            print(f"\r{number} of {len(unknown)} files of tests measured", end="", file=sys.stderr, flush=True)
            if kept_in:
                kept_in.write_text(json.dumps({f.name: f.keep() for f in files if f.times}))
    if unknown:
        print(file=sys.stderr)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("seed", type=int)
    parser.add_argument("count", type=int)
    parser.add_argument("--folder", action="append", choices=ROOMS)
    found = next((c for c in ("clang++-16", "clang++-19", "clang++") if shutil.which(c)), "clang++")
    parser.add_argument("--compiler", default=found)
    parser.add_argument("--map", type=pathlib.Path)
    parser.add_argument("--only", type=int)
    parser.add_argument("--own", action="store_true")
    parser.add_argument("--quick", action="store_true")
    given = parser.parse_args()
    argued, tally = harmless(), {}
    with tempfile.TemporaryDirectory() as base:
        compiler = Compiler(given.compiler, pathlib.Path(base))
        compiler.prepare()
        files = [f for f in test_files() if not given.own or not given.folder or f.room in given.folder]
        measure_all(compiler, files, given.map)
        for room in given.folder or ROOMS:
            tally[room] = try_room(room, given, compiler, [f for f in files if not given.own or f.room == room], argued)
    for folder, (seen, all_of) in tally.items():
        print(f"{folder:12} seen {seen} of {all_of}")
    sys.exit(0 if all(20 * (a - s) <= a for s, a in tally.values()) else 1)


if __name__ == "__main__":
    main()
