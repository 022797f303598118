#!/usr/bin/env python3
"""The pages as a maker reads them: short, the answer first, in the words of a bench; and every example of the help runs.

    python3 screens.py BINARY
"""
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
EXAMPLES = HERE.parent.parent / "examples"
WIDEST = 80
# The aim is 60. What stands over it in the firmer story is the steps of the making and the cautions, shown whole.
MOST_LINES = {"garden": 60, "firmer": 76, "milder": 60}
GARDEN = ("garden/formula.txt", "--have", str(EXAMPLES / "garden" / "inventory.txt"))
STORIES = {"garden": GARDEN, "firmer": ("firmer/formula.txt", "--want", "firmer"), "milder": ("milder/formula.txt", "--want", "milder")}
NOT_AT_A_BENCH = ("closeness", "by way of", "mmol", "bind factor", "CIEDE2000", "follows the other changes", "noticeable differences",
                  "price of trusting", "less bright", "brighter:")
NIL = re.compile(r"(-?\d+(?:[.]\d+)?) -> \1(?![.\d])")


def run(binary, *args, **more):
    return subprocess.run([binary, *args], capture_output=True, text=True, timeout=120, check=False, **more).stdout


def words(text):
    return set(re.findall(r"[a-zà-ÿ]{4,}", text.lower()))


def short(binary):
    for name, (formula, *args) in STORIES.items():
        page = run(binary, "adapt", str(EXAMPLES / formula), *args)
        lines = page.splitlines()
        if len(lines) > MOST_LINES[name]:
            yield f"{name}: {len(lines)} lines, at most {MOST_LINES[name]}"
        if any(len(line) > WIDEST for line in lines):
            yield f"{name}: a line wider than {WIDEST}"
        weigh = next((i for i, line in enumerate(lines) if line.split()[:1] == ["weigh"]), 99)
        if weigh > 12:
            yield f"{name}: the weights start in line {weigh + 1}"
        for command in (("adapt", str(EXAMPLES / formula), *args), ("swaps", str(EXAMPLES / formula), "3"), ("predict", str(EXAMPLES / formula)),
                        ("compare", str(EXAMPLES / formula), str(EXAMPLES / "garden/formula.txt"))):
            page = run(binary, *command)
            flat = " ".join(page.split())
            yield from (f"{command[0]} {name}: `{word}` means nothing at a bench" for word in NOT_AT_A_BENCH if word in flat)
            full = run(binary, *command, "--full")
            for text in (page, full):
                yield from (f"{command[0]} {name}: nothing changes in `{nil[0]}`" for nil in [NIL.search(text)] if nil)


def whole_words(binary):
    """Every word of a page stands unbroken: it is one of the words of the JSON answer, or of the page of a wider story."""
    for formula, *args in STORIES.values():
        page = run(binary, "adapt", str(EXAMPLES / formula), *args, "--full")
        for line, after in zip(page.splitlines(), page.splitlines()[1:]):
            if re.search(r"[a-z]-$", line.rstrip()) and after.strip()[:1].islower():
                yield f"a word broken at the end of {line!r}"


def everything_shown_counts(binary):
    """The first safety block of a page holds for every variant on it."""
    with tempfile.TemporaryDirectory() as folder:
        formula = pathlib.Path(folder) / "f.txt"
        formula.write_text("Union test\n2 kg pork shoulder\n300 g spinach\n80 g walnuts\n36 g salt\ncore: 71.1 C\n")
        page = " ".join(run(binary, "adapt", str(formula), "--have", "-", input="almonds plenty\npeanuts plenty\nno walnuts\n").split())
        swaps = " ".join(run(binary, "swaps", str(formula), "walnut").split())
        for name, text in (("adapt", page), ("swaps", swaps)):
            head = text.split("Allergens: ", 1)[-1][:200]
            brought = set(re.findall(r"[Bb]rings a new allergen: ([a-z ,-]+)", text))
            for allergen in {a.strip() for b in brought for a in re.split(",| and ", b)}:
                if allergen not in head:
                    yield f"{name}: {allergen} comes with a variant and is not in the first safety block: {head}"
        lean = pathlib.Path(folder) / "lean.txt"
        lean.write_text("Core test\n2 kg pork shoulder\n36 g salt\n")
        swapped = run(binary, "swaps", str(lean), "1", "--top", "30")
        if "chicken" in swapped and "Cook to 73.9 C" not in swapped:
            yield "swaps offers chicken and does not say its core temperature first"


def examples_run(binary):
    with tempfile.TemporaryDirectory() as folder:
        place = pathlib.Path(folder)
        for name, source in (("hedgerow.txt", "hedge.txt"), ("hedgerow-mild.json", "hedge-mild.json"), ("fridge.txt", "fridge.txt")):
            shutil.copy(HERE / "files" / source, place / name)
        (place / "standin").symlink_to(pathlib.Path(binary).resolve())
        path = f"{place}{os.pathsep}{os.environ['PATH']}"
        for command in re.findall(r"^  ([a-z]+) ", run(binary, "--help").split("Options")[0], re.M):
            examples = [line.strip() for line in run(binary, command, "--help").split("\nExamples\n")[-1].splitlines() if line.strip()]
            if len(examples) != 2 or len(set(examples)) != 2:
                yield f"{command} --help has {len(examples)} examples, not two"
            for example in examples:
                done = subprocess.run(["bash", "-o", "pipefail", "-c", example], cwd=place, env=os.environ | {"PATH": path}, capture_output=True,
                                      text=True, timeout=120, check=False)
                if done.returncode not in (0, 1) or done.stderr:
                    yield f"`{example}`: exit code {done.returncode}, {done.stderr}"


def main():
    found = [complaint for look in (short, whole_words, everything_shown_counts, examples_run) for complaint in look(sys.argv[1])]
    print("\n".join(found) or "the screens are short and in plain words, and the examples run")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
