#!/usr/bin/env python3
"""Runs the command line as people do and checks what comes back.

    python3 run.py BINARY [--only WORD] [--show]

cases/*.json hold lists of cases:
    args      the command line; {knowledge} is the project's knowledge folder
    stdin     text for standard input (none: empty)
    env       variables to set
    exit      expected exit code (0)
    stdout    texts that must be there          not_stdout  texts that must not
    stderr    texts that must be there          not_stderr  texts that must not
    json      paths that must be there: "lines[].grams" (each of a list that is not empty)
    equals    path: value
    records   how many JSON Lines (1)
    renders   true: Graphviz, where it is installed, draws standard output without a word
They run in a copy of files/. What holds for every case is checked for every case: see `always`.
"""
import json
import math
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unicodedata

here = pathlib.Path(__file__).resolve().parent
knowledge = here.parent.parent / "knowledge"


def prints_page(args):
    """Graphs and converted formulas are no pages."""
    to_output = any(option == "--save" and value == "-" for option, value in zip(args, args[1:]))
    return bool(args) and args[0] != "graph" and not to_output and not (args[0] == "convert" and "--to" in args)


def reports_faults(args):
    """Commands whose answer is what is wrong with a file."""
    return bool(args) and (args[0] == "check" or args[0] == "convert" and "--to" not in args)


def width(line):
    return sum(2 if unicodedata.east_asian_width(c) in "WF" else 0 if unicodedata.combining(c) else 1 for c in line)


def at(document, path):
    """Values under a path; raises KeyError where any is missing."""
    found = [document]
    for part in path.split("."):
        name, each = (part[:-2], True) if part.endswith("[]") else (part, False)
        found = [value[name] for value in found]
        if each:
            found = [item for value in found for item in value]
            if not found:
                raise KeyError(path + " is empty")
    return found


def bands(value):
    """Every band in a document."""
    if isinstance(value, dict):
        if {"low", "mid", "high"} <= value.keys():
            yield value
        for inner in value.values():
            yield from bands(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from bands(inner)


def unordered(band):
    low, mid, high = band["low"], band["mid"], band["high"]
    if any(not isinstance(v, (int, float)) or not math.isfinite(v) for v in (low, mid, high)):
        return True
    slack = 1e-5 * max(abs(low), abs(mid), abs(high))
    return low > mid + slack or mid > high + slack


def always(case, code, out, err):
    args = case["args"]
    if code < 0:
        yield f"died of signal {-code}"
    if code >= 64 and not (reports_faults(args) and out):
        if out:
            yield "wrote to standard output although it failed"
        if not err.startswith("standin: error: "):
            yield "standard error does not start with `standin: error: `"
    if "\x1b" in out + err and "always" not in args:
        yield "colour codes though this is no terminal"
    if "--json" not in args and prints_page(args) and "\x1b" not in out and not out.startswith("<!doctype"):
        for line in out.splitlines():
            if width(line) > 80:
                yield f"wider than 80 columns: {line!r}"
    if code == 0 and prints_page(args) and args[0] in {"predict", "adapt", "compare", "swaps", "sheet"} and "--json" not in args and "--help" not in args:
        for word in ("Mind",) if args[0] == "swaps" else ("Mind", "Allergens"):
            if word not in re.sub("\x1b[^m]*m", "", out):
                yield f"page without the part `{word}`"


def parsed(case, code, out):
    wants_json = "--json" in case["args"] or case.get("json") or case.get("equals")
    if not wants_json or code >= 64 and not reports_faults(case["args"]) or "--help" in case["args"]:
        return []
    texts = out.splitlines() if case.get("records") else [out]
    return [json.loads(text, parse_constant=lambda c: math.nan) for text in texts]


def complaints(case, code, out, err):
    if code != case.get("exit", 0):
        yield f"exit code {code}, expected {case.get('exit', 0)}"
    yield from always(case, code, out, err)
    plain = " ".join(out.split())
    for text in case.get("stdout", []):
        if text not in plain:
            yield f"standard output lacks `{text}`"
    for text in case.get("not_stdout", []):
        if text in plain:
            yield f"standard output has `{text}`"
    for text in case.get("not_stderr", []):
        if text in err:
            yield f"standard error has `{text}`"
    for text in case.get("stderr", []):
        if text not in err:
            yield f"standard error lacks `{text}`"
    if case.get("renders") and (dot := shutil.which("dot")):
        drawn = subprocess.run([dot, "-Tsvg"], input=out.encode(), capture_output=True, timeout=120)
        if drawn.returncode or drawn.stderr or b"</svg>" not in drawn.stdout:
            yield f"dot: {drawn.stderr.decode(errors='replace')[:200]}"
    try:
        documents = parsed(case, code, out)
    except ValueError as trouble:
        yield f"not JSON: {trouble}"
        return
    if case.get("records") and len(documents) != case["records"]:
        yield f"{len(documents)} records, expected {case['records']}"
    for document in documents:
        yield from about(case, document)


def about(case, document):
    for path in case.get("json", []):
        try:
            at(document, path)
        except (KeyError, TypeError) as trouble:
            yield f"JSON lacks {path}: {trouble}"
    for path, value in case.get("equals", {}).items():
        try:
            if any(v != value for v in at(document, path)):
                yield f"{path} is {at(document, path)}, expected {value}"
        except (KeyError, TypeError) as trouble:
            yield f"JSON lacks {path}: {trouble}"
    if any(unordered(band) for band in bands(document)):
        yield "a band is out of order or not finite"


def listing(folder):
    return {str(p.relative_to(folder)): p.stat().st_size for p in folder.rglob("*") if p.is_file()}


def run(binary, case, folder):
    args = [arg.replace("{knowledge}", str(knowledge)) for arg in case["args"]]
    env = {k: v for k, v in os.environ.items() if k not in {"NO_COLOR", "TERM"}} | {"TERM": "xterm"} | case.get("env", {})
    before = listing(folder)
    done = subprocess.run([binary, *args], cwd=folder, env=env, input=case.get("stdin", "").encode(), capture_output=True, timeout=120)
    out, err = done.stdout.decode(errors="replace"), done.stderr.decode(errors="replace")
    found = list(complaints(case, done.returncode, out, err))
    if listing(folder) != before:
        found.append("files were written")
    return found, out, err


def main():
    binary = str(pathlib.Path(sys.argv[1]).resolve())
    only = sys.argv[sys.argv.index("--only") + 1] if "--only" in sys.argv else ""
    failed = ran = 0
    with tempfile.TemporaryDirectory() as place:
        folder = pathlib.Path(place) / "files"
        shutil.copytree(here / "files", folder)
        for file in sorted((here / "cases").glob("*.json")):
            for case in json.loads(file.read_text()):
                name = f"{file.stem}: standin {' '.join(case['args'])}"
                if only not in name:
                    continue
                ran += 1
                found, out, err = run(binary, case, folder)
                if found:
                    failed += 1
                    print(f"FAILED {name}")
                    for complaint in found:
                        print(f"    {complaint}")
                    if "--show" in sys.argv:
                        print(out + err)
    print(f"{ran - failed} of {ran} cases passed")
    return 1 if failed or not ran else 0


if __name__ == "__main__":
    sys.exit(main())
