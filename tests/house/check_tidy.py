#!/usr/bin/env python3
"""Runs clang-tidy (.clang-tidy) over the sources of engine and cli that changed since the branch left main, and over a source for each
header that changed, its own where it has one; on main itself, in its latest commits; over all of them with STANDIN_TIDY_ALL=1.

    python3 check_tidy.py CLANG_TIDY BUILD_FOLDER

A source found tidy is not looked at again until it, a header it includes, the checks or its compile command change.
"""
import concurrent.futures
import functools
import hashlib
import json
import os
import pathlib
import re
import subprocess
import sys

LATEST = 5  # commits looked at on main itself; all of it is for a run that asks with STANDIN_TIDY_ALL=1

root = pathlib.Path(__file__).resolve().parents[2]
ours = (root / "engine", root / "cli")
include_paths = (root / "engine", root / "engine" / "include", root / "cli")


def commands(build):
    """Source: the command that compiles it."""
    for entry in json.loads((build / "compile_commands.json").read_text()):
        file = pathlib.Path(entry["file"]).resolve()
        if any(file.is_relative_to(folder) for folder in ours):
            yield file, entry["command"]


def one_by_one(build):
    """The build folder, or one configured beside it where the build compiles files together: clang-tidy looks at each alone."""
    if "STANDIN_TOGETHER:BOOL=ON" not in (build / "CMakeCache.txt").read_text():
        return build
    alone = build / "one_by_one"
    call = ["cmake", "-S", root, "-B", alone, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Release", "-DSTANDIN_TESTS=OFF", "-DSTANDIN_TOGETHER=OFF"]
    subprocess.run(call, capture_output=True, check=True)
    return alone


def as_clang_reads(build, folder):
    """The compile commands with g++'s precompiled headers, which clang cannot read, as plain headers; written to `folder`."""
    def plain(match):
        copy = folder / (hashlib.sha256(match[1].encode()).hexdigest()[:12] + ".hxx")
        if pathlib.Path(match[1]).is_file():
            copy.write_bytes(pathlib.Path(match[1]).read_bytes())
        return f"-include {copy}"

    entries = json.loads((build / "compile_commands.json").read_text())
    for entry in entries:
        command = re.sub(r"-include (\S*cmake_pch\.hxx)\b", plain, entry["command"])
        entry["command"] = command.replace("-Winvalid-pch", "").replace("-fpch-preprocess", "")
    (folder / "compile_commands.json").write_text(json.dumps(entries))
    return folder


def git(*words):
    try:
        done = subprocess.run(["git", *words], cwd=root, capture_output=True, text=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        return None
    return done.stdout.split("\n")


def really_changed(base):
    """Files that differ in more than their includes: what only moved reads as before. None where git cannot tell."""
    lines, found, here = git("diff", "-M", "-U0", base), set(), None
    for line in lines or ():
        if line.startswith("+++ "):
            here = line[6:] if line.startswith("+++ b/") else None
        elif here and line[:1] in "+-" and not line.startswith("---") and line[1:].strip() and not re.match(r"\s*#\s*include", line[1:]):
            found.add(here)
    return None if lines is None else found


def changed():
    """Files that differ from where the branch left main, or from a few commits ago; None: everything counts, as was asked."""
    if os.environ.get("STANDIN_TIDY_ALL"):
        return None
    head = git("rev-parse", "HEAD")
    for main in ("origin/main", "main"):
        base = git("merge-base", main, "HEAD")
        if base and base == head:
            base = git("rev-parse", "--verify", "--quiet", f"HEAD~{LATEST}")  # on main itself nothing has left it
        if not base:
            continue
        differs, new = really_changed(base[0]), git("ls-files", "--others", "--exclude-standard")
        if differs is not None and new is not None:
            return {root / name for name in [*differs, *new] if name}
    return set()


@functools.cache
def included(file):
    """The file and all of ours that it includes, however far down."""
    found, todo = set(), [file]
    while todo:
        here = todo.pop()
        if here in found:
            continue
        found.add(here)
        for name in re.findall(r'^\s*#\s*include\s*"([^"]+)"', here.read_text(), re.M):
            todo += [path / name for path in include_paths if (path / name).is_file()][:1]
    return frozenset(found)


def to_look_at(sources, differs):
    """The sources that changed, and for each header that changed one that shows it."""
    shown = {file for file in sources if file in differs}
    for header in sorted(differs):
        if header.suffix == ".hpp" and not any(header in included(file) for file in shown):
            own = header.with_suffix(".cpp")
            shown |= {own} if own in sources else set([file for file in sources if header in included(file)][:1])
    return shown


def main():
    tidy, build = sys.argv[1], one_by_one(pathlib.Path(sys.argv[2]).resolve())
    stamps = build / "tidy"
    stamps.mkdir(exist_ok=True)
    database = as_clang_reads(build, stamps)
    common = hashlib.sha256(subprocess.run([tidy, "--version"], capture_output=True, check=True).stdout)
    common.update((root / ".clang-tidy").read_bytes())

    def look(file, command):
        digest = common.copy()
        digest.update(command.encode())
        for part in sorted(included(file)):
            digest.update(part.read_bytes())
        stamp = stamps / digest.hexdigest()
        if stamp.exists():
            return ""
        call = [tidy, "--quiet", "-p", str(database), "--extra-arg=-Wno-unknown-warning-option", str(file)]
        done = subprocess.run(call, capture_output=True, text=True)
        if done.returncode == 0:
            stamp.touch()
            return ""
        return done.stdout or done.stderr

    sources, differs = sorted(dict(commands(build)).items()), changed()
    wanted = None if differs is None else to_look_at([file for file, _ in sources], differs)
    todo = [(file, command) for file, command in sources if wanted is None or file in wanted]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        found = [text for text in pool.map(lambda pair: look(*pair), todo) if text]
    which = "all" if differs is None else "changed"
    print("\n".join(found), f"{len(todo) - len(found)} of {len(todo)} sources are tidy ({which}; {len(sources)} in all)", sep="\n")
    return 1 if found or not sources else 0


if __name__ == "__main__":
    sys.exit(main())
