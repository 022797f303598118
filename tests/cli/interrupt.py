#!/usr/bin/env python3
"""One interrupt (Ctrl-C) ends a long search with the best so far; before that, a terminal shows how far it has come.

    python3 interrupt.py BINARY
"""
import os
import pathlib
import pty
import re
import select
import signal
import subprocess
import sys
import time

formula = pathlib.Path(__file__).resolve().parents[1] / "bench/data/twenty_lines.txt"
LONG = ["adapt", str(formula), "--want", "milder", "--want", "greener", "--want", "leaner", "--want", "firmer", "--top", "99"]
PATIENCE = 60  # s, until progress shows
ITS_END = 1400  # plans; left alone it stops somewhat later, and well after the first progress


def shown_on(terminal, text):
    seen, end = b"", time.monotonic() + PATIENCE
    while time.monotonic() < end:
        if select.select([terminal], [], [], 0.1)[0]:
            seen += os.read(terminal, 4096)
        if text in seen:
            return True
    return False


def main():
    ours, theirs = pty.openpty()
    process = subprocess.Popen([sys.argv[1], *LONG], stdout=subprocess.PIPE, stderr=theirs)
    os.close(theirs)
    faults = []
    if not shown_on(ours, b"the best so far"):
        faults.append("no progress was shown on the terminal")
    start = time.monotonic()
    process.send_signal(signal.SIGINT)
    page = process.stdout.read().decode()
    code, late = process.wait(), time.monotonic() - start
    if code != 0:
        faults.append(f"exit code {code}, expected 0")
    for text in ("Not proved", "1. ", "Mind"):
        if text not in page:
            faults.append(f"the page lacks {text!r}")
    looked = re.search(r"(\d+) plans looked at", page)
    if not looked or int(looked[1]) >= ITS_END:
        faults.append(f"it was to stop before {ITS_END} plans: {looked and looked[0]}")
    print("\n".join(faults) or f"the best so far came {late:.2f} s after the interrupt")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
