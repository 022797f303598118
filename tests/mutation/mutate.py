#!/usr/bin/env python3
"""Would the tests notice? Changes the engine in one small place at a time (a sign, a constant, a comparison, a minimum, a negation, half of
an `and`), runs the tests that come by the place, and tells which changes nobody noticed. Not part of ctest; 200 mutants take half an hour of
a machine's idle time.

    python3 mutate.py FOLDER [--count 200] [--seed 1] [--rooms models safety adapt optimize] [--tests unit published property scenarios]
                      [--only FILE[:LINE] ...] [--build 'cmake --build {build} --target {targets}']

FOLDER gets a copy of the checkout in which all the mutants stand beside each other (schema.py), built once; an environment variable chooses
one (mutant.hpp). A first run tells which tests come by which place and how long each takes: of those the quickest run first, and a mutant
is killed by the first that fails. One that survives them runs against all the tests of every program, as a value that is kept from one test
to the next hides who comes by. What survived stands at the end, to be read: a test is missing there, or the place does not matter (then it
may be simpler), or the change is none (x <= limit for x < limit of a real number).
"""
import argparse
import concurrent.futures
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import time

import schema

root = pathlib.Path(__file__).resolve().parents[2]
PARTS = ("CMakeLists.txt", "cli", "engine", "examples", "knowledge", "tests")
SLOWEST = 900  # s for one run of tests; a mutant that hangs counts as killed


class Mutant:
    def __init__(self, number, file, place, text):
        line = text.count("\n", 0, place.start)
        self.number, self.file, self.place, self.line = number, file, place, line + 1
        self.code = text.splitlines()[line].strip()
        self.was = text[place.start : place.end]

    def __str__(self):
        becomes = {"logic": "left side alone", "truth": "the other", "negation": "as it is", "extreme": "the other end"}
        return f"{self.file}:{self.line} {self.place.kind} `{self.was}` -> {self.place.new or becomes[self.place.kind]}: {self.code}"


def chosen_mutants(asked):
    lines = {}
    for name, _, number in (only.partition(":") for only in asked.only):
        lines.setdefault(name, set()).update([int(number)] if number else [])
    names = list(lines) or sorted(str(f.relative_to(root)) for room in asked.rooms for f in (root / "engine" / room).glob("*.cpp"))
    every = []
    for name in names:
        text = (root / name).read_text()
        for place in schema.places_in(text):
            mutant = Mutant(0, name, place, text)
            if not lines.get(name) or mutant.line in lines[name]:
                every.append(mutant)
    random.Random(asked.seed).shuffle(every)
    chosen, spots = [], set()
    for mutant in every:
        if len(chosen) < asked.count and (mutant.file, mutant.place.start) not in spots:
            spots.add((mutant.file, mutant.place.start))
            mutant.number = len(chosen) + 1
            chosen.append(mutant)
    return chosen, len(every)


def copied(folder, left_out):
    for part in PARTS:
        target = folder / part
        if target.is_dir():
            shutil.rmtree(target)
        copy = shutil.copytree if (root / part).is_dir() else shutil.copy2
        copy(root / part, target)
    for header in ("mutant.hpp", "hits.hpp"):
        (folder / "engine" / "mutation").mkdir(exist_ok=True)
        shutil.copy2(root / "tests" / "mutation" / header, folder / "engine" / "mutation" / header)
    main = folder / "tests" / "support" / "main.cpp"
    main.write_text(main.read_text() + '#include "../../engine/mutation/hits.hpp"\n')
    for pattern in left_out:
        for path in (folder / "tests").glob(pattern):
            path.unlink()
    hits = folder / "engine" / "mutation" / "hits.hpp"
    hits.write_text(hits.read_text().replace('"mutation/mutant.hpp"', '"mutant.hpp"'))


def write_mutants(folder, mutants):
    for file in {m.file for m in mutants} | {str(p.relative_to(folder)) for p in (folder / "engine").rglob("*.cpp") if "mutant_" in p.read_text()}:
        text = (root / file).read_text()
        mine = {m.number: m.place for m in mutants if m.file == file}
        new = schema.written(text, mine) if mine else text
        if (folder / file).read_text() != new:
            (folder / file).write_text(new)


def build(folder, asked):
    targets = [f"{test}_tests" for test in asked.tests]
    command = asked.build.format(folder=folder, build=folder / "build", targets=" ".join(targets))
    return subprocess.run(command, shell=True, cwd=folder, capture_output=True, text=True)


def built(folder, asked, mutants):
    """The mutants that compile; a line that the compiler refuses loses its own."""
    for _ in range(12):
        write_mutants(folder, mutants)
        done = build(folder, asked)
        if done.returncode == 0:
            return mutants
        faults = {(m[1], int(m[2])) for m in re.finditer(r"(engine/\w+/\w+\.cpp):(\d+):\d+: error", done.stdout + done.stderr)}
        faults |= {(m[1], int(m[2])) for m in re.finditer(r"(engine/\w+/\w+\.cpp):(\d+):\d+:   required from", done.stdout + done.stderr)}
        refused = [m for m in mutants if any(m.file == file and abs(m.line - line) <= 1 for file, line in faults)]
        if not refused:
            sys.exit("does not build:\n" + (done.stdout + done.stderr)[-4000:])
        for mutant in refused:
            print(f"does not build: {mutant}", flush=True)
        mutants = [m for m in mutants if m not in refused]
    sys.exit("does not build")


def program(folder, test):
    return folder / "build" / "tests" / f"{test}_tests"


def run(folder, test, number, names=None):
    """Whether the tests fail; all of a program where no names are given."""
    command = [program(folder, test), "--abort"]
    if names is not None:
        listed = folder / f"names.{number}.txt"
        listed.write_text("".join(re.sub(r"([\\,\[])", r"\\\1", name) + "\n" for name in names))
        command += ["--input-file", listed]
    mutated = {**os.environ, "STANDIN_MUTANT": str(number)}
    try:
        done = subprocess.run(command, cwd=folder, capture_output=True, text=True, errors="replace", timeout=SLOWEST, env=mutated)
    except subprocess.TimeoutExpired:
        return True
    if "No tests ran" in done.stdout:
        sys.exit(f"no test of {test} goes by its name: {', '.join(names)}")
    return done.returncode != 0


def who_comes_by(folder, tests, longest, resumed=False):
    """place: [(seconds, program, test)], the quickest first."""
    visits = {}
    for test in tests:
        hits = folder / f"hits.{test}.txt"
        if not (resumed and hits.exists()):
            hits.unlink(missing_ok=True)
            counting = {**os.environ, "STANDIN_MUTANT_HITS": str(hits)}
            if subprocess.run([program(folder, test)], cwd=folder, capture_output=True, env=counting).returncode:
                sys.exit(f"the {test} tests must pass before anything is changed")
        for line in hits.read_text().splitlines():
            seconds, name, *places = line.split("\t")
            for place in places:
                visits.setdefault(int(place), []).append((float(seconds), test, name))
    return {place: sorted(visit for visit in all if visit[0] <= longest) for place, all in visits.items()}


def verdict(folder, asked, mutant, visits):
    mine = visits.get(mutant.number, [])
    if not mine:
        return "NO TEST COMES BY"
    for few in (mine[:6], mine[6:40], mine[40:]):
        for test in asked.tests:
            names = [name for _, program_, name in few if program_ == test]
            if names and run(folder, test, mutant.number, names):
                return f"killed by {test}"
    if asked.by_hits:
        return "SURVIVED"
    return "killed by all" if any(run(folder, test, mutant.number) for test in asked.tests) else "SURVIVED"


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("folder", type=pathlib.Path)
    arguments.add_argument("--count", type=int, default=200)
    arguments.add_argument("--seed", type=int, default=1)
    arguments.add_argument("--rooms", nargs="+", default=["models", "safety", "adapt", "optimize"])
    arguments.add_argument("--tests", nargs="+", default=["unit", "published", "property", "scenarios"])
    arguments.add_argument("--only", nargs="+", default=[], help="FILE or FILE:LINE: mutants of these alone")
    arguments.add_argument("--build", default="cmake -S {folder} -B {build} -G Ninja && cmake --build {build} --target {targets}")
    arguments.add_argument("--leave-out", nargs="+", default=[], help="files of tests not to build, such as unit/reading*.cpp")
    arguments.add_argument("--resume", action="store_true", help="take copy, build and hits of the last run with these arguments")
    arguments.add_argument("--longest", type=float, default=SLOWEST, help="seconds: leave out tests that take longer, so that fewer are killed")
    arguments.add_argument("--jobs", type=int, default=1, help="mutants tried beside each other")
    arguments.add_argument("--by-hits", action="store_true", help="ask only the tests that come by; a survivor is not run against all")
    asked = arguments.parse_args()
    folder = asked.folder.resolve()
    folder.mkdir(parents=True, exist_ok=True)
    os.nice(19)

    mutants, places = chosen_mutants(asked)
    if not asked.resume:
        copied(folder, asked.leave_out)
    chosen = len(mutants)
    mutants = built(folder, asked, mutants)
    visits = who_comes_by(folder, asked.tests, asked.longest, asked.resume)

    def tried(mutant):
        began = time.monotonic()
        result = verdict(folder, asked, mutant, visits)
        print(f"{result:18} {mutant}  [{time.monotonic() - began:.0f} s]", flush=True)
        return result, mutant

    with concurrent.futures.ThreadPoolExecutor(asked.jobs) as pool:
        results = list(pool.map(tried, mutants))
    left = [(result, mutant) for result, mutant in results if not result.startswith("killed")]
    killed = len(results) - len(left)
    print(f"\n{killed} of {len(mutants)} killed ({chosen - len(mutants)} did not build); {places} places in all")
    for result, mutant in left:
        print(f"{result}: {mutant}")


if __name__ == "__main__":
    main()
