#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Have the tests teeth? Makes small changes to the headers, one at a time and by seed - an operator, a bound, a number, a
line left out - compiles the tests that include the changed header, runs them, and lists the changes that no test sees.

    tests/teeth/teeth.py SEED COUNT [--folder edition] [--compiler g++] [--jobs 2] [--most-tests N]

A change that does not compile, or makes a test fail, crash or run ten times as long as before, is seen. One that lives is
printed as a difference; whether it changes anything that anybody could see is for a reader to judge. The exit code is 0
where in every folder at most 5 of 100 live. The tree is not touched: changes are made in a copy of the headers. With
--most-tests only so many files are asked for each change, nearest first, so that more may seem to live than do. Needs
doctest and pugixml, as the tests do."""

import argparse
import concurrent.futures
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
FLAGS = ["-std=c++20", "-O0", "-w", f'-DBIFOLIUM_TEST_DATA="{ROOT}/tests/data"', f"-I{ROOT}/tests", f"-I{ROOT}/examples"]
SWAPS = [("<=", "<"), (">=", ">"), ("==", "!="), ("!=", "=="), ("&&", "||"), ("||", "&&"), (" < ", " <= "), (" > ", " >= "),
         (" + ", " - "), (" - ", " + "), (" * ", " + "), (" / ", " * "), (" % ", " / "), ("++", "--"), ("--", "++"),
         ("+= ", "-= "), ("-= ", "+= "), ("true", "false"), ("false", "true"), ("(!", "("), (" !", " "),
         ("first", "last"), ("last", "first"), ("least", "most"), ("most", "least"), ("front()", "back()")]


def code_lines(text):
    """Numbers of the lines that hold code: no comments, includes, assertions or lone brackets."""
    for number, line in enumerate(text.split("\n")):
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


class Tests:
    """The test files, what each includes, and the time that it takes."""

    def __init__(self, compiler, jobs):
        self.compiler, self.jobs = compiler, jobs
        folders = ["core", "paper", "leaf", "fold", "imposition", "collation", "edition", "evidence", "copy", "record", "book", "explain", "drawing"]
        files = [f for folder in folders for f in sorted((ROOT / "tests" / folder).glob("*.cpp")) if f.name != "draw_all.cpp"]
        files += [ROOT / "tests" / "extremes.cpp"]
        with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
            self.includes = dict(zip(files, pool.map(self.headers_of, files)))
        self.usual = {}

    def headers_of(self, file):
        run = subprocess.run([self.compiler, *FLAGS, f"-I{ROOT}/include", "-MM", str(file)], capture_output=True, text=True)
        return {str(pathlib.Path(p).resolve()) for p in run.stdout.replace("\\\n", " ").split()[1:]}

    def that_see(self, header):
        """Those of the header's own folder first, then those that include least."""
        folder = header.relative_to(ROOT / "include" / "bifolium").parts[0]
        seeing = [f for f, headers in self.includes.items() if str(header.resolve()) in headers]
        return sorted(seeing, key=lambda f: (f.parent.name != folder, len(self.includes[f])))

    def build(self, file, include, out):
        library = ["-lpugixml"] if file.parent.name in ("drawing", "explain") else []
        run = subprocess.run([self.compiler, *FLAGS, f"-I{include}", str(file), str(self.main), "-o", str(out), *library], capture_output=True)
        return run.returncode == 0

    def passes(self, file, program):
        limit = 20 + 10 * self.usual.get(file, 30)
        started = time.time()
        try:
            run = subprocess.run([str(program)], capture_output=True, timeout=limit, cwd=ROOT)
        except subprocess.TimeoutExpired:
            return False
        if run.returncode == 0:
            self.usual[file] = min(self.usual.get(file, 1e9), time.time() - started)
        return run.returncode == 0


def is_seen(tests, header, text, work, most_tests):
    """What sees the change: the name of a test file, 'the compiler', or nothing."""
    include = work / "include"
    shutil.copytree(ROOT / "include", include)
    changed = include / header.relative_to(ROOT / "include")
    changed.write_text(text, encoding="utf8")
    seeing = tests.that_see(header)
    for file in seeing[:most_tests]:
        if not tests.build(file, include, work / "test"):
            return "the compiler"
        if not tests.passes(file, work / "test"):
            return str(file.relative_to(ROOT))
    return None if seeing else "no test includes it"


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("seed", type=int)
    parser.add_argument("count", type=int)
    parser.add_argument("--folder")
    parser.add_argument("--compiler", default=os.environ.get("CXX", "g++"))
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--most-tests", type=int)
    given = parser.parse_args()
    random.seed(given.seed)
    headers = sorted((ROOT / "include" / "bifolium").rglob("*.hpp"))
    if given.folder:
        headers = [h for h in headers if h.relative_to(ROOT / "include" / "bifolium").parts[0] == given.folder]
    places = []  # every line of code is as likely as any other
    for header in headers:
        lines = header.read_text(encoding="utf8").split("\n")
        places += [(header, n) for n in code_lines("\n".join(lines)) if changes_of(lines[n])]
    tests = Tests(given.compiler, given.jobs)
    base = pathlib.Path(tempfile.mkdtemp())
    tests.main = base / "main.o"
    subprocess.run([given.compiler, *FLAGS, "-c", str(ROOT / "tests" / "main.cpp"), "-o", str(tests.main)], check=True)

    def trial(number):
        header, n = chosen[number]
        lines = header.read_text(encoding="utf8").split("\n")
        old, new = lines[n], picked[number]
        lines[n] = new
        with tempfile.TemporaryDirectory(dir=base) as work:
            return header, n, old, new, is_seen(tests, header, "\n".join(lines), pathlib.Path(work), given.most_tests)

    chosen = [random.choice(places) for _ in range(given.count)]
    picked = [random.choice(changes_of(h.read_text(encoding="utf8").split("\n")[n])) for h, n in chosen]
    by_folder = {}
    with concurrent.futures.ThreadPoolExecutor(given.jobs) as pool:
        for done in concurrent.futures.as_completed([pool.submit(trial, i) for i in range(given.count)]):
            header, n, old, new, seen = done.result()
            folder = header.relative_to(ROOT / "include" / "bifolium").parts[0]
            tally = by_folder.setdefault(folder, [0, 0])
            tally[1] += 1
            tally[0] += seen is not None and seen != "no test includes it"
            lives = seen is None or seen == "no test includes it"
            print(f"{'LIVES' if lives else 'seen '} {header.relative_to(ROOT)}:{n + 1}  {'' if lives else 'by ' + seen}")
            if lives:
                print(f"  - {old.strip()}\n  + {new.strip()}")
            sys.stdout.flush()
    for folder, (seen, all_of) in sorted(by_folder.items()):
        print(f"{folder:12} seen {seen} of {all_of}")
    shutil.rmtree(base)
    sys.exit(0 if all(20 * (a - s) <= a for s, a in by_folder.values()) else 1)


if __name__ == "__main__":
    main()
