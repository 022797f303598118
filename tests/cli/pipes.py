#!/usr/bin/env python3
"""Where the answer goes: a terminal, a pipe that closes early, a disk that is full.

    python3 pipes.py BINARY
"""
import os
import pathlib
import pty
import signal
import subprocess
import sys

FORMULA = str(pathlib.Path(__file__).resolve().parent / "files" / "hedge.txt")


def environment(**more):
    return {k: v for k, v in os.environ.items() if k not in {"NO_COLOR", "TERM"}} | {"TERM": "xterm"} | more


def on_terminal(binary, *args, **more):
    """What a command writes to a terminal."""
    ours, theirs = pty.openpty()
    process = subprocess.Popen([binary, *args], stdin=subprocess.DEVNULL, stdout=theirs, stderr=theirs, env=environment(**more))
    os.close(theirs)
    text = b""
    while True:
        try:
            piece = os.read(ours, 1 << 16)
        except OSError:  # Linux says so where others say nothing more comes
            break
        if not piece:
            break
        text += piece
    os.close(ours)
    process.wait(timeout=60)
    return text


def colour(binary):
    call = ("predict", FORMULA, "--draws", "16")
    coloured = {"plain": on_terminal(binary, *call), "always": on_terminal(binary, *call, "--color", "always", NO_COLOR="1")}
    plain = {"NO_COLOR": on_terminal(binary, *call, NO_COLOR="1"), "TERM=dumb": on_terminal(binary, *call, TERM="dumb"),
             "never": on_terminal(binary, *call, "--color", "never")}
    yield from (f"no colour on a terminal: {name}" for name, text in coloured.items() if b"\x1b[" not in text)
    yield from (f"colour in spite of {name}" for name, text in plain.items() if b"\x1b" in text or b"Hedge row" not in text)


def closed_early(binary):
    for command in (("predict", FORMULA), ("sheet", FORMULA, "--html", "-"), ("graph",)):
        process = subprocess.Popen([binary, *command], stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=environment())
        process.stdout.read(1)
        process.stdout.close()
        told = process.stderr.read().decode()
        code = process.wait(timeout=60)
        if code not in (0, -signal.SIGPIPE):
            yield f"{command[0]} into a closed pipe: exit code {code}"
        if told:
            yield f"{command[0]} into a closed pipe says {told!r}"


def full_disk(binary):
    if not os.path.exists("/dev/full"):
        return
    with open("/dev/full", "wb") as full:
        done = subprocess.run([binary, "sheet", FORMULA], stdout=full, stderr=subprocess.PIPE, env=environment(), timeout=60, check=False)
    if done.returncode != 74 or b"cannot write to standard output" not in done.stderr:
        yield f"a full disk behind standard output: exit code {done.returncode}, {done.stderr!r}"
    done = subprocess.run([binary, "sheet", FORMULA, "--html", "/dev/full"], capture_output=True, env=environment(), timeout=60, check=False)
    if done.returncode != 74 or done.stdout or b"/dev/full: cannot write this file" not in done.stderr:
        yield f"a full disk behind --html: exit code {done.returncode}, {done.stderr!r}"


def main():
    binary = str(pathlib.Path(sys.argv[1]).resolve())
    found = [complaint for look in (colour, closed_early, full_disk) for complaint in look(binary)]
    print("\n".join(found) or "terminals, closed pipes and full disks are met as they should be")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
