#!/usr/bin/env python3
"""Would the tests notice? Changes the engine in one small place at a time (a sign, a constant, a comparison, a minimum, a negation), builds
what hangs on that file, runs the tests, and tells which changes nobody noticed. Not part of ctest: 200 mutants take an hour or more of a
machine's idle time (one job, lowest priority). Give it a checkout and a build folder of its own.

    python3 mutate.py BUILD_FOLDER [--count 200] [--seed 1] [--rooms models safety adapt optimize] [--tests unit published property]
                      [--only FILE[:LINE] ...]

The unit tests that include the header of the changed file come first, then all the rest of each program in turn, until one fails. The file
is put back after each mutant, whatever happens. What survived stands at the end, to be read: a test is missing there, or the place does not
matter (then it may be simpler), or the change is none (x <= limit for x < limit of a real number).
"""
import argparse
import os
import pathlib
import random
import re
import subprocess
import sys
import time

root = pathlib.Path(__file__).resolve().parents[2]
SKIPPED = []  # test cases left out of the long run, as Catch2 wants them
SLOWEST = 900  # s for one test program; a mutant that hangs counts as killed

# What is looked for in code, and what stands there instead. Templates, arrows, shifts and increments are no comparisons or signs.
KINDS = [
    ("comparison", re.compile(r"(?<=[\w)\]] )(<=|>=|<|>)(?= [\w(*-])"), {"<": ["<=", ">"], ">": [">=", "<"], "<=": ["<", ">"], ">=": [">", "<"]}),
    ("equality", re.compile(r"(?<=[\w)\]] )(==|!=)(?= )"), {"==": ["!="], "!=": ["=="]}),
    ("sign", re.compile(r"(?<=[\w)\]] )([+-])(?= [\w(*])"), {"+": ["-"], "-": ["+"]}),
    ("product", re.compile(r"(?<=[\w)\]] )([*/])(?= [\w(])"), {"*": ["/"], "/": ["*"]}),
    ("logic", re.compile(r"(&&|\|\|)"), {"&&": ["||"], "||": ["&&"]}),
    ("extreme", re.compile(r"\bstd::(min|max)\b"), {"min": ["max"], "max": ["min"]}),
    ("truth", re.compile(r"\breturn (true|false)\b"), {"true": ["false"], "false": ["true"]}),
    ("negation", re.compile(r"(?<=[( ])(!)(?=[a-z])"), {"!": [""]}),
    ("constant", re.compile(r"(?<![\w.])(\d+\.\d+|[1-9]\d*)(?![\w.])"), None),
]


def blanked(text):
    """The text with comments, strings and preprocessor lines blanked out, every other place where it was."""
    parts = re.compile(r'//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])*\'|^[ \t]*#[^\n]*', re.S | re.M)
    return parts.sub(lambda m: re.sub(r"[^\n]", " ", m[0]), text)


def instead_of(found, table):
    if table is not None:
        return table[found]
    return [str(float(found) * 1.25)] if "." in found else [str(int(found) + 1)]


def mutants_of(file):
    text = file.read_text()
    for kind, pattern, table in KINDS:
        for match in pattern.finditer(blanked(text)):
            for new in instead_of(match[1], table):
                yield file, match.start(1), match.end(1), new, kind


def line_of(mutant):
    return mutant[0].read_text().count("\n", 0, mutant[1]) + 1


def build(folder, test):
    command = ["cmake", "--build", str(folder), "--target", f"{test}_tests", "--", "-j1"]
    return subprocess.run(command, cwd=root, capture_output=True, text=True).returncode == 0


def likely(file):
    """The unit test files that are about this one: they include its header, or are called like it."""
    header = f'#include "{file.parent.name}/{file.stem}.hpp"'
    about = [t for t in sorted((root / "tests" / "unit").glob("*.cpp")) if t.stem == file.stem or header in t.read_text()]
    return ",".join(f"[#{t.stem}]" for t in about)


def fails(folder, test, which=""):
    command = [folder / "tests" / f"{test}_tests", "--abort", *(["-#", which] if which else [])]
    command += [] if which else SKIPPED
    try:
        return subprocess.run(command, cwd=folder, capture_output=True, timeout=SLOWEST).returncode != 0
    except subprocess.TimeoutExpired:
        return True


def verdict(folder, tests, file=None):
    for test in tests:
        if not build(folder, test):
            return "does not build"
        if file and test == "unit" and likely(file) and fails(folder, test, likely(file)):
            return "killed by its own tests"
        if fails(folder, test):
            return f"killed by {test}"
    return "SURVIVED"


def try_out(mutant, folder, tests):
    file, start, end, new, kind = mutant
    before = file.read_bytes()
    text = before.decode()
    line = text.count("\n", 0, start)
    was, becomes = text.splitlines()[line].strip(), (text[:start] + new + text[end:]).splitlines()[line].strip()
    began = time.monotonic()
    try:
        file.write_text(text[:start] + new + text[end:])
        result = verdict(folder, tests, file)
    finally:
        file.write_bytes(before)
    print(f"{result:24} {file.relative_to(root)}:{line + 1} {kind}: {was}  ->  {becomes}  [{time.monotonic() - began:.0f} s]", flush=True)
    return result


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("build", type=pathlib.Path)
    arguments.add_argument("--count", type=int, default=200)
    arguments.add_argument("--seed", type=int, default=1)
    arguments.add_argument("--rooms", nargs="+", default=["models", "safety", "adapt", "optimize"])
    arguments.add_argument("--tests", nargs="+", default=["unit", "published", "property"])
    arguments.add_argument("--only", nargs="+", default=[], help="FILE or FILE:LINE: mutants of these alone")
    arguments.add_argument("--skip", nargs="+", default=[], help="names of test cases that are slow and tell nothing here")
    asked = arguments.parse_args()
    SKIPPED.extend(f"~{name}" for name in asked.skip)
    folder = asked.build.resolve()

    os.nice(19)

    lines = {}
    for name, _, number in (only.partition(":") for only in asked.only):
        lines.setdefault(root / name, []).extend([int(number)] if number else [])
    files = list(lines) or sorted(f for room in asked.rooms for f in (root / "engine" / room).glob("*.cpp"))
    changed = subprocess.run(["git", "status", "--porcelain", *map(str, files)], cwd=root, capture_output=True, text=True).stdout
    if changed:
        sys.exit("commit first, so that nothing is lost:\n" + changed)
    if verdict(folder, asked.tests) != "SURVIVED":
        sys.exit("the tests must pass before anything is changed")
    mutants = [m for file in files for m in mutants_of(file) if not lines.get(file) or line_of(m) in lines[file]]
    random.Random(asked.seed).shuffle(mutants)
    results = [try_out(mutant, folder, asked.tests) for mutant in mutants[: asked.count]]
    for test in asked.tests:
        build(folder, test)
    counted = [r for r in results if r != "does not build"]
    killed = sum(r != "SURVIVED" for r in counted)
    print(f"{killed} of {len(counted)} killed ({len(results) - len(counted)} did not build); {len(mutants)} places in all")


if __name__ == "__main__":
    main()
