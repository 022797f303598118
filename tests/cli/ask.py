#!/usr/bin/env python3
"""`convert --ask` asks about each doubt and writes a formula that leaves none; `standin` alone tells a newcomer what to type next.

    python3 ask.py BINARY
"""
import os
import pathlib
import pty
import select
import subprocess
import sys
import tempfile
import time

PATIENCE = 60  # s
RECIPE = """A pasted recipe
2 kg pork
18 g salt
1 bunch parsley
300 g spinach
200 g spinahc
salt to taste
core: 71 C
"""
# pork: yes; parsley: the usual weight; spinach: weighed raw, then blanched; the slip: the first guess; salt to taste: left out.
ANSWERS = "1\n1\n2\n1\n1\nx\n"


class Fault(Exception):
    pass


def expect(condition, text):
    if not condition:
        raise Fault(text)


def run(args, answers="", folder=None):
    return subprocess.run([sys.argv[1], *args], input=answers, capture_output=True, text=True, cwd=folder, timeout=PATIENCE)


def answered_from_a_pipe(folder):
    done = run(["convert", "recipe.txt", "--ask"], ANSWERS, folder)
    expect(done.returncode == 0, f"exit code {done.returncode}: {done.stdout}{done.stderr}")
    for text in ("pork shoulder", "parsley", "spinach", "core: 71"):
        expect(text in done.stdout, f"the formula lacks {text!r}: {done.stdout}")
    expect("blanched" in done.stdout and "spinahc" not in done.stdout, f"an answer was not taken: {done.stdout}")
    for text in ("How heavy is it?", "Does it go in raw?", "1 yes: 2 kg pork shoulder"):
        expect(text in done.stderr, f"was not asked: {text!r}: {done.stderr}")
    pathlib.Path(folder, "formula.txt").write_text(done.stdout)
    again = run(["convert", "formula.txt"], "", folder)
    expect(again.returncode == 0, "what was written does not read")
    expect("unsure" not in again.stdout and "asked back" not in again.stdout, f"a doubt is left: {again.stdout}")


def without_answers_as_before(folder):
    plain, asked = run(["convert", "recipe.txt"], "", folder), run(["convert", "recipe.txt", "--ask"], "", folder)
    expect(asked.stdout == plain.stdout and asked.returncode == plain.returncode, "without answers the page differs from that without --ask")


def saved(folder):
    done = run(["convert", "recipe.txt", "--ask", "--save", "saved.txt"], ANSWERS, folder)
    expect(done.returncode == 0, f"exit code {done.returncode}: {done.stderr}")
    expect("pork shoulder" in pathlib.Path(folder, "saved.txt").read_text(), "nothing was saved")
    over = run(["convert", "recipe.txt", "--ask", "--save", "recipe.txt"], ANSWERS, folder)
    expect(over.returncode != 0 and pathlib.Path(folder, "recipe.txt").read_text() == RECIPE, "the recipe itself was written over")


def read_until(terminal, text):
    seen, end = b"", time.monotonic() + PATIENCE
    while time.monotonic() < end and text not in seen:
        if select.select([terminal], [], [], 0.1)[0]:
            try:
                seen += os.read(terminal, 4096)
            except OSError:
                break
    expect(text in seen, f"the terminal never showed {text!r}: {seen.decode(errors='replace')}")


def said_to_be_like(folder):
    pathlib.Path(folder, "likeness.txt").write_text("A\n2 kg pork shoulder\n18 g salt\n40 g brindleleaf\n")
    done = run(["convert", "likeness.txt", "--ask"], "like dandelion greens\n\n", folder)
    expect("brindleleaf, like dandelion greens" in done.stdout, f"the likeness was not taken: {done.stdout}{done.stderr}")


def on_a_terminal(folder):
    ours, theirs = pty.openpty()
    process = subprocess.Popen([sys.argv[1], "convert", "recipe.txt", "--ask"], stdin=theirs, stdout=theirs, stderr=theirs, cwd=folder)
    os.close(theirs)
    for answer in ANSWERS.splitlines():
        read_until(ours, b"> ")
        os.write(ours, answer.encode() + b"\n")
    read_until(ours, b"core: 71")
    expect(process.wait(PATIENCE) == 0, "the conversation did not end well")


def name_alone():
    ours, theirs = pty.openpty()
    process = subprocess.Popen([sys.argv[1]], stdin=theirs, stdout=theirs, stderr=theirs)
    os.close(theirs)
    read_until(ours, b"--help")
    expect(process.wait(PATIENCE) == 0, "the first page did not end well")
    silent = run([])
    expect(silent.returncode == 64 and not silent.stdout, "without a terminal the name alone must stay a wrong use")


def main():
    faults = []
    for test in (answered_from_a_pipe, without_answers_as_before, saved, said_to_be_like, on_a_terminal):
        with tempfile.TemporaryDirectory() as folder:
            pathlib.Path(folder, "recipe.txt").write_text(RECIPE)
            try:
                test(folder)
            except Fault as fault:
                faults.append(f"{test.__name__}: {fault}")
    try:
        name_alone()
    except Fault as fault:
        faults.append(f"name_alone: {fault}")
    print("\n".join(faults) or "asked, answered and written")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
