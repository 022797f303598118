#!/usr/bin/env python3
"""The stories of the examples, run as their README tells them: at most three commands from what somebody wrote to a sheet or an answer.

    python3 stories.py BINARY

A command stands in a README as four blanks and `standin ...`. Each runs in a copy of `examples`, so that what it saves is there for the next.
"""
import pathlib
import shlex
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
MOST_COMMANDS = 3
ON_PAPER = ("Makes", "Weigh", "Work, in this order", "Buy", "Allergens")  # what the last page of a story to paper holds
TO_PAPER = {"pasted", "kleingarten", "lamb"}  # stories that end on a bench sheet
CAUTIONS = ("Mind",)


def commands(story):
    """As told, in order."""
    for line in (story / "README.md").read_text(encoding="utf-8").splitlines():
        if line.startswith("    standin "):
            yield shlex.split(line.strip())[1:]


def told(binary, folder, story):
    """What is wrong with a story."""
    asked = list(commands(ROOT / "examples" / story))
    if not asked or len(asked) > MOST_COMMANDS:
        yield f"{story}: {len(asked)} commands, 1 to {MOST_COMMANDS} expected"
        return
    page = ""
    for words in asked:
        done = subprocess.run([binary, *words], cwd=folder, capture_output=True, text=True, timeout=120, check=False)
        page = done.stdout
        if done.returncode or done.stderr or not page.strip():
            yield f"{story}: `standin {shlex.join(words)}` ends with {done.returncode}: {done.stderr.strip()[:300]}"
            return
    if story in TO_PAPER:
        low = page.lower()
        yield from (f"{story}: no \"{word}\" on the sheet" for word in ON_PAPER if word.lower() not in low)
    else:
        yield from (f"{story}: no \"{word}\" on the last page" for word in CAUTIONS if word not in page)


def main():
    binary = str(pathlib.Path(sys.argv[1]).resolve())
    with tempfile.TemporaryDirectory() as folder:
        shutil.copytree(ROOT / "examples", pathlib.Path(folder) / "examples")
        stories = sorted(path.parent.name for path in ROOT.glob("examples/*/README.md") if path.parent.name != "library")
        wrong = [fault for story in stories for fault in told(binary, folder, story)]
    print("\n".join(wrong) or f"{len(stories)} stories run as told")
    return 1 if wrong or TO_PAPER - set(stories) else 0


if __name__ == "__main__":
    sys.exit(main())
