"""The pages under test, made by the program itself, one whose words try to break out of the HTML and one with much of everything."""
import json
import pathlib
import subprocess

ROOT = pathlib.Path(__file__).resolve().parents[2]
EXAMPLES = ROOT / "examples"
HOSTILE = """<script>document.title = "broken out"</script><b>&amp; "quoted" 'single'
2 kg pork shoulder
300 g spinach, blanched
60 g walnuts, toasted
36 g salt
"""

LONG = """Everything at once
1200 g chicken thigh
300 g pork backfat, chopped
150 g dry breadcrumbs, soaked
2 bunches flat-leaf parsley, washed, chopped
4 dried ancho chiles, stemmed, seeded, rehydrated
200 g blanched spinach
1 head garlic, peeled, minced
80 g walnuts, toasted, chopped
2 eggs
1 onion, peeled, caramelised
30 g soy sauce
12 g salt
0.4 g nutmeg
60 ml olive oil
120 g ice water
50 g lemon juice
15 g dry milk powder
diameter: 32 mm
cook: poach
order: acid first
"""

PAGES = {  # name: command line; HTML and JSON of each are made
    "predict": ["predict", "{examples}/garden/formula.txt"],
    "swaps": ["swaps", "{examples}/garden/formula.txt", "spinach"],
    "adapt": ["adapt", "{examples}/firmer/formula.txt", "--want", "firmer"],
    "compare": ["compare", "{examples}/garden/formula.txt", "{examples}/milder/formula.txt", "{hostile}"],
    "sheet": ["sheet", "{examples}/garden/formula.txt", "--meat", "5 kg"],
    "sheet-both": ["sheet", "{examples}/firmer/formula.txt", "--meat", "10 lb", "--units", "both"],
    "sheet-long": ["sheet", "{long}"],
    "hostile": ["predict", "{hostile}"],
}


def make(binary, folder):
    """Name: (file, JSON answer)."""
    folder.mkdir(parents=True, exist_ok=True)
    hostile, long = folder / "hostile.txt", folder / "long.txt"
    hostile.write_text(HOSTILE, encoding="utf-8")
    long.write_text(LONG, encoding="utf-8")
    made = {}
    for name, words in PAGES.items():
        file = folder / f"{name}.html"
        file.unlink(missing_ok=True)
        words = [word.format(examples=EXAMPLES, hostile=hostile, long=long) for word in words]
        done = subprocess.run([binary, *words, "--json", "--html", str(file)], capture_output=True, text=True, timeout=120, check=False)
        if done.returncode not in (0, 1) or not file.is_file():
            raise SystemExit(f"{name}: no page: exit code {done.returncode}: {done.stderr}")
        made[name] = (file, json.loads(done.stdout))
    return made
