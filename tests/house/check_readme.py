#!/usr/bin/env python3
"""Is what README.md and the stories of the examples show what the program prints? `check_readme.py BINARY` compares, `--write` puts the present
output in.

Words must agree to the letter; numbers within 3 %, or two of the last figure shown, and line breaks anyhow: another processor rounds
the last bit of a logarithm otherwise, and a solver may then stop a gram away.
"""
import json
import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SAFETY = r"(Allergens|How the formula was read)$"  # from there on a page goes on beyond what is shown
SECOND = r"2\. "  # the next variant


def run(binary, *words):
    return subprocess.run([binary, *words], capture_output=True, text=True, cwd=ROOT, check=False).stdout


def until(text, stop):
    """The lines of `text` before the first that `stop` matches."""
    lines = []
    for line in text.split("\n"):
        if re.match(stop, line):
            break
        lines.append(line)
    return "\n".join(lines).rstrip()


def blocks(binary):
    """File, mark in it, and what is to stand there."""
    garden = run(binary, "adapt", "examples/garden/formula.txt", "--have", "examples/garden/inventory.txt")
    firmer = run(binary, "adapt", "examples/firmer/formula.txt", "--want", "firmer")
    milder = run(binary, "adapt", "examples/milder/formula.txt", "--want", "milder")
    yield "README.md", "GARDEN", f"```\n{until(garden, SECOND)}\n```"
    yield "examples/garden/README.md", "GARDEN", f"```\n{until(garden, SAFETY)}\n```"
    yield "examples/firmer/README.md", "FIRMER", f"```\n{until(firmer, SAFETY)}\n```"
    yield "examples/milder/README.md", "MILDER", f"```\n{until(milder, SAFETY)}\n```"
    checked = json.loads(run(binary, "check", "knowledge", "--json"))
    counts, kinds = checked["counts"], checked["by_source_kind"]
    yield "README.md", "COUNTS", (
        f"{counts['ingredients']} ingredients under {counts['names']} names, {counts['preparations']} preparations, "
        f"{counts['swaps']} swaps, {counts['rules']} rules and cautions.\nEvery number names its source: {kinds['published']} published, "
        f"{kinds['common-practice']} common practice, {kinds['from-memory']} from memory, {kinds['judgement']} judgement.\n"
        "`standin lookup` shows which; `standin check knowledge` counts them anew."
    )


NUMBER = re.compile(r"[-+]?\d+(?:[.]\d+)?")


def alike(shown, printed):
    """Whether two texts say the same, as the head of this file has it."""
    words, numbers = zip(*((" ".join(NUMBER.sub("#", text).split()), NUMBER.findall(text)) for text in (shown, printed)))
    return words[0] == words[1] and all(close(a, b) for a, b in zip(*numbers))


def close(shown, printed):
    last_figure = 10.0 ** -len(shown.partition(".")[2])
    a, b = float(shown), float(printed)
    return abs(a - b) <= max(0.03 * max(abs(a), abs(b)), 2 * last_figure)


def main():
    binary, write = sys.argv[1], "--write" in sys.argv
    stale = []
    for file, mark, block in blocks(binary):
        path = ROOT / file
        text = path.read_text(encoding="utf-8")
        pattern = re.compile(rf"(<!-- {mark} -->\n).*?(\n<!-- end -->)", re.S)
        found = pattern.search(text)
        if not found:
            sys.exit(f"{file} has no place marked {mark}")
        if not alike(found.group(0), found.group(1) + block + found.group(2)):
            stale.append(f"{mark} of {file}")
        if write:
            path.write_text(pattern.sub(lambda m, b=block: m.group(1) + b + m.group(2), text), encoding="utf-8")
    if stale and not write:
        sys.exit(f"old output is shown: {', '.join(stale)}. Refresh it with check_readme.py {binary} --write")


if __name__ == "__main__":
    main()
