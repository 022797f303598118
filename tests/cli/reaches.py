#!/usr/bin/env python3
"""Every caution, allergen, limit of the making and cap reaches every command and every format: a new record cannot be forgotten.

    python3 reaches.py BINARY
"""
import html
import json
import pathlib
import re
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMMANDS = ("predict", "sheet", "compare", "swaps", "adapt")
FOODS_A_BATCH = 14
RULES = ("us", "uk", "eu", "codex")
LEAST = {p["id"]: p["value"] for p in json.loads((ROOT / "knowledge/models/caution.json").read_text())["parameters"]}


def records():
    foods = [i for path in sorted((ROOT / "knowledge/ingredients").glob("*.json")) for i in json.loads(path.read_text())["ingredients"]]
    rules = {path.stem: json.loads(path.read_text()) for path in sorted((ROOT / "knowledge/rules").glob("*.json"))}
    return foods, rules


def written(binary, food):
    """A line that the reader takes for this food: what is dangerous raw must be said to be made safe. None where there is no such line."""
    for more in ("", ", boiled", ", toasted"):
        text = f"Try\n1000 g pork shoulder\n12 g {food['names'][0]}{more}\n"
        done = subprocess.run([binary, "predict", "-", "--json", "--draws", "16", "-q"], input=text, capture_output=True, text=True, timeout=60, check=False)
        if done.returncode == 0 and json.loads(done.stdout)["lines"][-1]["ingredient"] == food["id"]:
            return food["names"][0] + more
    return None


def bearers(binary, foods):
    """One food for each caution word and each allergen, the first that bears it and can be written."""
    wanted = {(kind, word) for food in foods for kind in ("cautions", "allergens") for word in food.get(kind, [])}
    chosen = {}
    for food in foods:
        mine = {(kind, word) for kind in ("cautions", "allergens") for word in food.get(kind, [])}
        if food["id"] in ("pork-shoulder", "table-salt") or not mine & wanted:
            continue
        name = written(binary, food)
        if name:
            chosen[food["id"]] = (food, name)
            wanted -= mine
    return chosen, sorted(word for _, word in wanted)


def run(binary, command, formula, rules, folder, form):
    args = [binary, command, formula]
    if command == "compare":
        args.append(formula)
    if command == "swaps":
        args += ["table salt", "--top", "2"]
    if command == "adapt":
        args += ["--changes", "1", "--top", "1"]
    args += ["--rules", rules, "-q", "--draws", "32"]
    if form == "json":
        args.append("--json")
    if form == "html":
        args += ["--html", str(pathlib.Path(folder) / "page.html")]
    done = subprocess.run(args, capture_output=True, text=True, timeout=300, check=False)
    if done.returncode not in (0, 1):
        raise RuntimeError(f"{command} {form}: exit code {done.returncode}: {done.stderr}")
    text = (pathlib.Path(folder) / "page.html").read_text() if form == "html" else done.stdout
    return text


def flat(text, form):
    if form == "html":
        text = html.unescape(re.sub(r"<[^>]*>", "", text))
    if form == "json":
        text = text.encode().decode("unicode_escape", errors="ignore") if "\\u" in text else text
        text = text.replace('\\"', '"')
    return " ".join(text.split())


def opening(text):
    """The part of a record's text before the first thing filled in, long enough to know it by."""
    return " ".join(text.split("{")[0].split())


def look(binary, formula_text, expected, rules, commands):
    with tempfile.TemporaryDirectory() as folder:
        formula = str(pathlib.Path(folder) / "batch.txt")
        pathlib.Path(formula).write_text(formula_text)
        for command in commands:
            for form in ("text", "json", "html"):
                page = flat(run(binary, command, formula, rules, folder, form), form)
                for what, words, *brief in expected:
                    # A first page may have the line of the record that is made for it; the sheet, JSON and HTML have all of it.
                    short = brief and form == "text" and command != "sheet" and brief[0][1:] in page  # the first letter may be a capital
                    if words not in page and not short:
                        yield f"{command}, {form}, rules {rules}: {what} is not on the page (`{words[:60]}`)"


def batch(lines, process=""):
    return "Reach test\n2000 g pork shoulder\n36 g table salt\n" + "".join(f"{grams} g {name}\n" for name, grams in lines) + "\n" + process


def grams_of(food):
    """Enough of it for the cautions that are said from a dose on."""
    enough = max([LEAST.get(f"caution.least.{word}", 0) for word in food.get("cautions", [])], default=0)
    return max(12, round(5 * enough))  # of a batch under five kilos


def of_foods(chosen, rules):
    """Batches of a few foods each, with what must be said of them under each rule set."""
    names = sorted(chosen)
    for start in range(0, len(names), FOODS_A_BATCH):
        part = [chosen[i][0] for i in names[start:start + FOODS_A_BATCH]]
        inside = {word for food in part for word in food.get("cautions", [])}
        listed = {allergen for food in part for allergen in food.get("allergens", [])}
        code = RULES[(start // FOODS_A_BATCH) % len(RULES)]
        expected = [(f"allergen {a}", a) for a in sorted(listed)]
        for rule_set in ("general", code):
            for caution in rules[rule_set]["cautions"]:
                if any(only.startswith("no-species:") for only in caution.get("only", [])):
                    continue  # every batch here holds pork: tests/unit/law_of_what_is_in_it.cpp tries these
                when = caution["when"]
                if not when or any(w.startswith("ingredient:") and w[11:] in inside for w in when):
                    expected.append((f"caution {caution['id']}", opening(caution["text"]), *([opening(caution["brief"])] if "brief" in caution else [])))
        lines = [(chosen[food["id"]][1], grams_of(food)) for food in part]
        oil = [("olive oil", 60)] if any(f"caution.oil.{word}" in LEAST for word in inside) else []
        yield batch(lines + oil), expected, code


def of_making(rules):
    process = "rest: 100 h\nrest at: 25 C\nmixed at: 18 C\ncore: 60 C\n"
    general = rules["general"]
    expected = [(f"limit {m['id']}", opening(m["text"])) for m in general["making"] if not m["when"]]
    expected += [("core-low", opening(c["text"]), opening(c["brief"])) for c in general["cautions"] if c["id"] == "core-low"]
    return batch([], process), expected, "us"


def of_most(binary, foods):
    strong = [food for food in foods if food.get("most_g_per_kg", {}).get("value", 1000) <= 3]
    over = [food for food in strong[:2 * FOODS_A_BATCH] if written(binary, food) == food["names"][0]][:FOODS_A_BATCH]
    expected = [("the most in a kilo", "More of it than is good")] + [(f"dose of {f['id']}", f["names"][0] + " (") for f in over]
    return batch([(food["names"][0], 30) for food in over]), expected, "us"


def of_caps():
    text = "Fresh pork sausage\n1000 g pork shoulder\n16 g table salt\n120 g water\n60 g rusk\n"
    return text, [("cap on water", "9 CFR 319.141"), ("cap over", "Over the limit")], "us"


def main():
    binary = sys.argv[1]
    foods, rules = records()
    chosen, unborne = bearers(binary, foods)
    cases = [*of_foods(chosen, rules), of_making(rules), of_most(binary, foods), of_caps()]
    found = [f"no food that can be written bears `{word}`" for word in unborne]
    for number, (formula, expected, code) in enumerate(cases):
        # The search is slow: it has every third batch of foods, and all the others.
        commands = COMMANDS if number % 3 == 0 or number >= len(cases) - 3 else COMMANDS[:-1]
        found += look(binary, formula, expected, code, commands)
    print("\n".join(found) or f"every caution, allergen, limit and cap reaches every page: {len(cases)} batches")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
