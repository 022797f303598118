#!/usr/bin/env python3
"""Runs clang-tidy (.clang-tidy) over the sources of engine and cli.

    python3 check_tidy.py CLANG_TIDY BUILD_FOLDER

A source found tidy is not looked at again until it, a header, the checks or its compile command change.
"""
import concurrent.futures
import hashlib
import json
import os
import pathlib
import subprocess
import sys

root = pathlib.Path(__file__).resolve().parents[2]
ours = (root / "engine", root / "cli")


def commands(build):
    """Source: the command that compiles it."""
    for entry in json.loads((build / "compile_commands.json").read_text()):
        file = pathlib.Path(entry["file"]).resolve()
        if any(file.is_relative_to(folder) for folder in ours):
            yield file, entry["command"]


def everywhere(tidy):
    """What every source depends on."""
    digest = hashlib.sha256(subprocess.run([tidy, "--version"], capture_output=True, check=True).stdout)
    for file in [root / ".clang-tidy", *sorted(h for folder in ours for h in folder.rglob("*.hpp"))]:
        digest.update(file.read_bytes())
    return digest


def main():
    tidy, build = sys.argv[1], pathlib.Path(sys.argv[2]).resolve()
    stamps = build / "tidy"
    stamps.mkdir(exist_ok=True)
    common = everywhere(tidy)

    def look(file, command):
        digest = common.copy()
        digest.update(command.encode() + file.read_bytes())
        stamp = stamps / digest.hexdigest()
        if stamp.exists():
            return ""
        call = [tidy, "--quiet", "-p", str(build), "--extra-arg=-Wno-unknown-warning-option", str(file)]
        done = subprocess.run(call, capture_output=True, text=True)
        if done.returncode == 0:
            stamp.touch()
            return ""
        return done.stdout or done.stderr

    todo = sorted(dict(commands(build)).items())
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        found = [text for text in pool.map(lambda pair: look(*pair), todo) if text]
    print("\n".join(found), f"{len(todo) - len(found)} of {len(todo)} sources are tidy", sep="\n")
    return 1 if found or not todo else 0


if __name__ == "__main__":
    sys.exit(main())
