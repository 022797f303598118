#!/usr/bin/env python3
"""Looks at the HTML pages as readers do: in light and dark, on a phone, on paper, by ear.

    python3 run.py BINARY WORK_FOLDER [--write] [--pictures]

Pages are made by the binary, validated by html-validate, opened in headless Chromium and examined by axe-core. What the pages are made of
(headings, captions, columns) is compared with outlines/, numbers and names left out; --write puts the present ones there. Bench sheets are
printed on A4 and Letter in all units and their pages counted. --pictures leaves PNGs and PDFs in WORK_FOLDER. Packages come from npm by package-lock.json: without them the test fails.
"""
import pathlib
import re
import shutil
import subprocess
import sys

here = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(here))
from browser import PAPER, SPOILERS, Browser  # noqa: E402
from made import make, make_sheets  # noqa: E402

SIZES = [(1280, "light"), (1280, "dark"), (360, "light"), (360, "dark")]
ALL_RULES = {(1280, "light"), (360, "dark")}  # there axe tries all it knows, else contrast alone
MOST_SHEETS = 2  # of paper, front and back of one


def fetch(work):
    """axe-core and html-validate, once for a lock file."""
    lock = (here / "package-lock.json").read_bytes()
    stamp = work / "package-lock.json"
    if not (stamp.is_file() and stamp.read_bytes() == lock and (work / "node_modules" / ".package-lock.json").is_file()):
        for name in ("package.json", "package-lock.json"):
            shutil.copy(here / name, work / name)
        npm = shutil.which("npm")
        if not npm:
            raise SystemExit("the page tests need npm to fetch axe-core and html-validate")
        call = [npm, "ci", "--ignore-scripts", "--no-audit", "--no-fund", "--omit=optional"]
        done = subprocess.run(call, cwd=work, capture_output=True, text=True, timeout=300, check=False)
        if done.returncode:
            stamp.unlink(missing_ok=True)
            raise SystemExit("npm could not fetch axe-core and html-validate; nothing was tested\n" + done.stdout + done.stderr)
    return work / "node_modules"


def invalid(modules, files):
    """What html-validate says of all files together."""
    tool = modules / "html-validate" / "bin" / "html-validate.js"
    call = ["node", str(tool), "--config", str(here / "html-validate.json"), "--formatter", "text", *map(str, files)]
    done = subprocess.run(call, capture_output=True, text=True, timeout=120, check=False)
    if done.returncode:
        yield from (done.stdout + done.stderr).splitlines()[:40] or ["html-validate failed without a word"]


def plain(text):
    """An outline's line without its numbers: they may move."""
    return re.sub(r"\d+(?:[.]\d+)?", "#", text)


def in_celsius(text):
    """Without the Fahrenheit beside it: the JSON is metric, a page is in the maker's units."""
    return re.sub(r" [(]-?\d+(?:[.]\d+)? F[)]", "", text)


def wrong_facts(name, answer, facts, width):
    none = dict.fromkeys(("jumps", "scripts", "asked", "away", "untitled", "unspoken", "headless"), 0)
    expected = {"lang": "en", "h1": 1, "first": 1, "safety": True, "small": [], **none}
    for key, value in expected.items():
        if facts[key] != value:
            yield f"{key} is {facts[key]}, expected {value}"
    if facts["wider"] > 0:
        yield f"{facts['wider']} pixels wider than a screen of {width}"
    if facts["pictures"] < 1:
        yield "no picture"
    text = in_celsius(" ".join(facts["text"].split()))
    # Of an answer with variants what they are is on the page; what only the original holds is told by its own heading.
    shown = answer.get("formulas") or [v["prediction"] for v in answer.get("variants", []) if "prediction" in v] or [answer.get("base", answer)]
    for prediction in shown:
        for caution in prediction["cautions"]:
            # A page says a caution once, with the foods of everything on it.
            says, _, foods = in_celsius(" ".join(caution["text"].split())).partition(" Here: ")
            if says not in text or any(food not in text for food in foods.rstrip(".").split(", ") if food):
                yield f"caution `{caution['id']}` is not on the page"
        for allergen in prediction["allergens"]:
            if allergen["allergen"] not in text:
                yield f"allergen {allergen['allergen']} is not on the page"
    if name == "hostile" and ("<script>" not in text or facts["title"].startswith("broken out")):
        yield "the title of the formula was not escaped"


def brightness(colour):
    return sum(int(part) for part in re.findall(r"\d+", colour)[:3]) / 3


def look(browser, name, file, answer, pictures):
    for width, scheme in SIZES:
        browser.show(file, width, scheme)
        facts = browser.facts()
        found = list(wrong_facts(name, answer, facts, width))
        paper, ink = brightness(facts["paper"]), brightness(facts["ink"])
        if (paper < ink) != (scheme == "dark"):
            found.append(f"paper {facts['paper']} and ink {facts['ink']} do not suit the scheme")
        found += browser.complaints()
        full = (width, scheme) in ALL_RULES
        bad, good = browser.axe_violations(not full)
        found += [f"axe: {violation}" for violation in bad]
        if good < (10 if full else 1):
            found.append(f"axe passed only {good} rules: did it run?")
        if pictures:
            browser.picture(file.with_name(f"{name}-{width}-{scheme}.png"))
        for complaint in found:
            yield f"{name}, {width} px, {scheme}: {complaint}"


def print_out(browser, name, pictures, file, most=None):
    for paper in PAPER:
        pages = browser.printed_pages(paper, file.with_name(f"{name}-{paper}.pdf") if pictures else None)
        if pages < 1 or most and pages > most:
            yield f"{name}: {pages} pages of {paper}, at most {most}"


def print_sheet(browser, name, file, pictures):
    browser.show(file, 1280, "light")
    yield from print_out(browser, name, pictures, file, MOST_SHEETS + ("full" in name))  # the whole of it has one more
    facts = browser.on_paper()
    if facts.pop("read") < 10:
        yield f"{name}: hardly anything to read on paper"
    for what, which in facts.items():
        if which:
            yield f"{name}: {what} on paper: {which[:3]}"


def outline(browser):
    # Each line once: how many variants or steps there are is not the page's matter.
    return "\n".join(dict.fromkeys(plain(line) for line in browser.outline())) + "\n"


def spoiled_unseen(browser, name, file):
    """Spoils the page in every way and says which the outline does not notice."""
    browser.show(file, 1280, "light")
    sound = outline(browser)
    for how in SPOILERS:
        browser.show(file, 1280, "light")
        if browser.spoil(how) and outline(browser) == sound:
            yield f"{name}: the outline does not notice {how}"


def outline_differs(browser, name, write):
    file = here / "outlines" / f"{name}.txt"
    now = outline(browser)
    if write:
        file.parent.mkdir(exist_ok=True)
        file.write_text(now, encoding="utf-8")
    elif not file.is_file() or file.read_text(encoding="utf-8") != now:
        yield f"{name}: the page is made of other parts than {file.relative_to(here)} says; if they are right: run.py BINARY FOLDER --write"


def main():
    binary, work = str(pathlib.Path(sys.argv[1]).resolve()), pathlib.Path(sys.argv[2]).resolve()
    pictures, write = "--pictures" in sys.argv, "--write" in sys.argv
    work.mkdir(parents=True, exist_ok=True)
    modules = fetch(work)
    made = make(binary, work / "html")
    sheets = make_sheets(binary, work / "html")
    found = list(invalid(modules, [file for file, _ in made.values()]))
    browser = Browser(modules / "axe-core" / "axe.min.js")
    try:
        for name, (file, answer) in made.items():
            found += look(browser, name, file, answer, pictures)
            found += print_out(browser, name, pictures, file)
            found += outline_differs(browser, name, write)
            found += spoiled_unseen(browser, name, file)
        for name, file in sheets.items():
            found += print_sheet(browser, name, file, pictures)
    finally:
        browser.close()
    print("\n".join(found) or f"{len(made)} pages in {len(SIZES)} lights and widths, and {len(sheets)} sheets on paper, are as they should be")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
