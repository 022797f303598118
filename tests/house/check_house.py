#!/usr/bin/env python3
"""The rules of the house that no compiler enforces: which room may include which, where third-party headers may stand, sizes, names.

    python3 check_house.py
"""
import os
import pathlib
import re
import statistics
import subprocess
import sys

root = pathlib.Path(__file__).resolve().parents[2]
top_level = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "engine", "cli", "knowledge", "tests", "examples"}
folders = ("engine", "cli", "knowledge", "tests", "examples")

# Who may see whom: a room includes itself and the rooms named beside it, nothing else.
below_advice = {"core", "knowledge", "models", "evaluate", "safety"}
rooms = {
    "core": set(),
    "knowledge": {"core"},
    "formula": {"core", "knowledge"},
    "models": {"core", "knowledge"},
    "evaluate": {"core", "knowledge", "models"},
    "safety": {"core", "knowledge", "models", "evaluate"},
    "optimize": {"core"},
    "substitute": below_advice | {"optimize"},
    "adapt": below_advice | {"optimize", "substitute"},
    "worksheet": below_advice | {"formula"},
    "narrate": {"core", "knowledge"},
    "mend": below_advice | {"optimize", "substitute", "adapt", "worksheet"},
    "plan": below_advice | {"optimize", "substitute", "adapt", "worksheet"},
    "face": below_advice | {"formula", "optimize", "substitute", "adapt", "worksheet", "narrate", "mend", "plan"},
}
# A room that has rooms of its own: files at its top see all of them, the others those named.
inner = {
    "formula": {
        "lexer": set(),
        "words": {"lexer"},
        "amounts": {"lexer", "words"},
        "hazards": {"lexer", "words", "amounts"},
        "food": {"lexer", "words", "amounts", "hazards"},
        "line": {"lexer", "words", "amounts", "hazards", "food"},
        "formats": {"lexer", "words", "amounts", "hazards", "food", "line"},
        "stock": {"lexer", "words", "amounts", "hazards", "food", "line", "formats"},
        "kitchen": {"lexer", "words", "amounts", "hazards", "food", "line", "formats", "stock"},
    },
    "knowledge": {
        "records": set(),
        "words": {"records"},
        "readers": {"records", "words"},
        "index": {"records", "words"},
        "told": {"records", "words", "index"},
        "checks": {"records", "words", "readers", "index"},
        "packing": {"records", "words", "readers", "index", "checks"},
    },
    "adapt": {
        "goals": set(),
        "distance": {"goals"},
        "moves": {"goals", "distance"},
        "search": {"goals", "distance", "moves"},
        "variants": {"goals", "distance", "moves", "search"},
        "verification": {"moves", "distance"},
        "infeasibility": {"goals", "distance", "moves", "search", "variants"},
    },
}
third_party = re.compile(r"(nlohmann|boost|spdlog|fmt|CLI|utf8|tl|libxml|glpk)(/|\.h|\.hpp$)")
allowed = {  # third-party header: the only places for it; others may stand in any .cpp file
    "tl/": {"engine/include/standin/result.hpp"},
    "boost/": {"engine/knowledge/index/swap_graph.cpp"},
    "libxml/": {"engine/formula/formats/html_text.cpp"},
    "glpk.h": {"engine/optimize/mixed_integer.cpp"},
    "nlohmann/json_fwd.hpp": {"cli/render/json/json_parts.hpp"},
}
longest_file, longest_median = 500, 130

# Spelt in two halves, so that this file passes.
foreign = re.compile("|".join([r"(?<![\w.])/(work|root|home|Users)/", r"/tm" r"p/\w", r"\.\./sha" r"red", r"dos" r"sier"]), re.I)


def files(*parts):
    for part in parts:
        yield from (p for p in sorted((root / part).rglob("*")) if p.is_file() and "__pycache__" not in p.parts)


def tracked():
    """What git holds at the top level; nothing where there is no git."""
    try:
        listing = subprocess.run(["git", "ls-files", "-z"], cwd=root, capture_output=True, text=True, check=True).stdout
    except (OSError, subprocess.CalledProcessError):
        return set()
    return {name.split("/")[0] for name in listing.split("\0") if name}


def includes(text):
    for number, line in enumerate(text.splitlines(), 1):
        found = re.match(r'\s*#\s*include\s*([<"])([^>"]+)', line)
        if found:
            yield number, found[1], found[2]


def check_engine(name, header):
    here = name.split("/")[1]
    there = header.split("/")[0]
    if here == "include":
        if there != "standin":
            yield "a public header includes the inside of the engine"
    elif there == "standin":
        return
    elif there not in rooms:
        yield "no room of the engine (write \"room/file.hpp\")"
    elif there != here and there not in rooms.get(here, ()):
        yield f"{here} may not include {there}"
    elif there == here and here in inner:
        yield from check_inner(inner[here], name.split("/")[2:-1], header.split("/")[1:-1])


def check_inner(sees, here, there):
    if here and here[0] not in sees:
        yield f"{here[0]} is no room of the house"
    elif here and (not there or there[0] != here[0] and there[0] not in sees[here[0]]):
        yield f"{here[0]} may not include {there[0] if there else 'what stands above it'}"


def check_cli(header):
    if header.startswith("standin/"):
        wanted = root / "engine" / "include" / header
    else:
        wanted = root / "cli" / header
    if not wanted.is_file():
        yield "cli includes its own headers and the public ones (standin/*) only"


def check_third_party(name, header):
    if not third_party.match(header):
        return
    for start, places in allowed.items():
        if header.startswith(start):
            if name not in places and not name.startswith("tests/"):
                yield f"belongs in {', '.join(sorted(places))} only"
            return
    if not name.endswith(".cpp"):
        yield "third-party headers stay in .cpp files"


def check_includes(name, text):
    for number, quote, header in includes(text):
        found = list(check_third_party(name, header))
        if quote == '"' and name.startswith("engine/"):
            found += check_engine(name, header)
        if name.startswith("cli/") and (quote == '"' or header.startswith("standin/")):
            found += check_cli(header)
        for complaint in found:
            yield f"{name}:{number}: {header}: {complaint}"


def code():
    for path in files("engine", "cli", "tests", "examples"):
        if path.suffix in {".cpp", ".hpp", ".py", ".sh"}:
            yield path.relative_to(root).as_posix(), path.read_text()


# Digits are made and read in one place, which no locale touches; the packer writes octal bytes.
digits = re.compile(r"\b(strtof|strtod|strtold|atof|sscanf|sprintf|snprintf|stof|stod|stold|[io]?stringstream|setprecision|put_money)\b")
digits_allowed = {"engine/knowledge/packing/pack.cpp"}


def check_digits(name, text):
    if name.startswith(("engine/", "cli/")) and name not in digits_allowed:
        for number, line in enumerate(text.splitlines(), 1):
            if found := digits.search(line):
                yield f"{name}:{number}: {found[0]}: numbers become text and back in standin/number_text.hpp"


# What an answer says is a reason, and its words are made in one room. Elsewhere five words in a row stand only in an error, which goes to
# whoever asked and is no part of an answer, and in the places named here.
wordless = {"adapt", "evaluate", "face", "formula", "mend", "models", "optimize", "plan", "safety", "substitute", "worksheet"}
worded = {
    "engine/evaluate/bind_factors.cpp": "names of figures",
    "engine/face/engine_check.cpp": "what `check` complains of",
    "engine/face/engine_lookup.cpp": "what is asked back",
    "engine/face/engine_kitchen.cpp": "errors, put together by whoever calls",
    "engine/formula/formats/formula_json.cpp": "what an error calls a part of the file",
    "engine/formula/words/stock_words.cpp": "errors, likewise",
    "engine/formula/lexer/trouble.cpp": "errors, likewise",
    "engine/formula/amounts/amount.cpp": "errors, likewise",
    "engine/formula/amounts/own_share.cpp": "as a line is written",
    "engine/safety/caps.cpp": "names of figures",
    "engine/safety/cautions.cpp": "fills the places that a rule's own words leave open",
    "engine/safety/conditions.cpp": "likewise",
    "engine/safety/label.cpp": "the label itself",
    "engine/worksheet/label_draft.cpp": "likewise",
}
literal = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
sentence = re.compile(r"[A-Za-z][a-z,;:']*(?: [a-z][a-z,;:']*){4,}")
of_an_error = re.compile(r"\b(Error|[Ff]ailure|failed|Trouble|faults?_?|open_question|expected|troubles_?|problems_?|beyond|no_such|wrong|miss)\b")
tokens = re.compile(r'"(?:[^"\\\n]|\\.)*"|//[^\n]*|\'(?:[^\'\\\n]|\\.)+\'|;|[^;"/\']+|.', re.S)


def statements(text):
    """Each statement with the number of its first line, without comments; neighbouring literals are one."""
    line, first, now = 1, 1, ""
    for found in tokens.finditer(text):
        token = found[0]
        if token == ";":
            yield first, now
            now = ""
        elif not token.startswith("//"):
            if not now.strip():
                first = line + token[: len(token) - len(token.lstrip())].count("\n")
            now = now.rstrip()[:-1] + token[1:] if token[0] == '"' and now.rstrip().endswith('"') else now + token
        line += token.count("\n")
    yield first, now


def check_sentences(name, text):
    parts = name.split("/")
    if parts[0] != "engine" or parts[1] not in wordless:
        return
    for number, statement in statements(text):
        said = [found[1] for found in literal.finditer(statement) if sentence.search(found[1])]
        if said and not of_an_error.search(literal.sub('""', statement)):
            if name in worded:
                yield f"worded {name}"
            else:
                yield f'{name}:{number}: "{said[0]}": sentences are made in engine/narrate, of reasons'


def check_code():
    lengths, told = [], set()
    for name, text in code():
        yield from check_includes(name, text)
        yield from check_digits(name, text)
        for complaint in check_sentences(name, text):
            if complaint.startswith("worded "):
                told.add(complaint.removeprefix("worded "))
            else:
                yield complaint
        if name.startswith("engine/") and name.split("/")[1] not in [*rooms, "include"]:
            yield f"{name}: no room of the house"
        lengths.append(text.count("\n"))
        if lengths[-1] > longest_file:
            yield f"{name}: {lengths[-1]} lines, at most {longest_file}"
    for name in sorted(set(worded) - told):
        yield f"{name}: has no sentence any more, and need not be allowed one"
    if statistics.median(lengths) > longest_median:
        yield f"the median code file has {statistics.median(lengths)} lines, at most {longest_median}"


def check_names():
    names = tracked()
    for name in sorted(names):
        if not name.startswith(".") and name not in top_level:
            yield f"{name}: has no place at the top level"
    loose = [root / name for name in (names or top_level) if (root / name).is_file()]
    for path in [*loose, *files(*folders, ".ci")]:
        text = path.read_bytes().decode(errors="replace")
        for number, line in enumerate(text.splitlines(), 1):
            if found := foreign.search(line):
                yield f"{os.path.relpath(path, root)}:{number}: `{found[0]}` means nothing outside one machine"


def main():
    found = [*check_code(), *check_names()]
    print("\n".join(found) or "the house is in order")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
