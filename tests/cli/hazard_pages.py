#!/usr/bin/env python3
"""The wordings that could hurt, on the pages: what is refused gives no page and leaves no file, what is declared stands on each of them.

    python3 hazard_pages.py BINARY

The truths are those of tests/unit/hazard_wordings.csv, written before the reader was mended.
"""
import concurrent.futures
import csv
import html
import pathlib
import re
import subprocess
import sys
import tempfile

TABLE = pathlib.Path(__file__).resolve().parents[1] / "unit" / "hazard_wordings.csv"
PARTS = 2  # processes at a time


def rows():
    with open(TABLE, encoding="utf-8") as file:
        for row in csv.DictReader(line for line in file if not line.startswith("#")):
            if row["place"] == "line":
                yield f"{row['amount']} {row['words']}".strip(), row["must"]


def pages(binary, line, folder, number):
    """Exit codes and texts of the bench sheet and of the page of `predict`, and whether a file was left."""
    formula = f"Hazards (invented)\n1500 g pork shoulder\n{line}\n27 g table salt\n"
    sheet = subprocess.run([binary, "sheet", "-"], input=formula, capture_output=True, text=True, check=False)
    page = folder / f"{number}.html"
    predict = subprocess.run([binary, "predict", "-", "--html", str(page)], input=formula, capture_output=True, text=True, check=False)
    text = html.unescape(re.sub(r"<[^>]+>", " ", page.read_text(encoding="utf-8"))) if page.exists() else ""
    return [("sheet", sheet.returncode, sheet.stdout, sheet.stderr, bool(sheet.stdout)),
            ("page", predict.returncode, text, predict.stderr, page.exists())]


def faults(binary, line, must, folder, number):
    kind, _, what = must.partition(" ")
    for name, code, text, says, written in pages(binary, line, folder, number):
        where = f"{line}: {name}"
        if code not in (0, 65):
            yield f"{where}: exit {code}"
        if kind == "stopped" and code != 65:
            yield f"{where}: not stopped"
        if code == 65 and (written or not says.strip()):
            yield f"{where}: refused, yet something was written, or no reason given"
        if kind == "read" and code != 0:
            yield f"{where}: refused: {says.strip()[:120]}"
        if kind in ("allergen", "allergenorstopped") and code == 0 and what not in text.lower():
            yield f"{where}: {what} is not on it"


def main():
    with tempfile.TemporaryDirectory() as name, concurrent.futures.ThreadPoolExecutor(PARTS) as pool:
        todo = [(sys.argv[1], line, must, pathlib.Path(name), number) for number, (line, must) in enumerate(rows())]
        found = [fault for part in pool.map(lambda one: list(faults(*one)), todo) for fault in part]
    print("\n".join(found) or f"{len(todo)} wordings do on the sheet and on the page what they must")
    return 1 if found or len(todo) < 250 else 0


if __name__ == "__main__":
    sys.exit(main())
