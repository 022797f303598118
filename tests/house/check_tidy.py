#!/usr/bin/env python3
"""Runs clang-tidy (.clang-tidy) over the sources of engine and cli.    check_tidy.py CLANG_TIDY BUILD_FOLDER [SOURCE...]"""
import concurrent.futures
import json
import os
import pathlib
import subprocess
import sys

root = pathlib.Path(__file__).resolve().parents[2]


def sources(build):
    for entry in json.loads((build / "compile_commands.json").read_text()):
        file = pathlib.Path(entry["file"]).resolve()
        if file.is_relative_to(root / "engine") or file.is_relative_to(root / "cli"):
            yield str(file)


def main():
    tidy, build = sys.argv[1], pathlib.Path(sys.argv[2]).resolve()
    files = sys.argv[3:] or sorted(set(sources(build)))

    def look(file):
        return subprocess.run([tidy, "--quiet", "-p", str(build), file], capture_output=True, text=True)

    failed = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for file, done in zip(files, pool.map(look, files)):
            if done.returncode:
                failed += 1
                print(f"{os.path.relpath(file, root)}\n{done.stdout}{'' if done.stdout else done.stderr}")
    print(f"{len(files) - failed} of {len(files)} sources are tidy")
    return 1 if failed or not files else 0


if __name__ == "__main__":
    sys.exit(main())
