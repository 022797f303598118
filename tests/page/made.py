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

FULL = """A full bench (invented)
1800 g pork shoulder
400 g pork backfat, chopped
300 g spinach, blanched, squeezed
200 g kale, stemmed, steamed
150 g sorrel, washed
2 bunches flat-leaf parsley, chopped
250 g poblano, roasted and peeled
6 serranos, seeded, minced
4 dried ancho chiles, stemmed, seeded, rehydrated
300 g tomatillos, husked, roasted
1 head garlic, peeled, crushed
2 onions, peeled, caramelised
200 g zucchini, grated, salted
100 g white mushrooms, sliced, cooked
100 g pumpkin seeds, toasted, ground
120 g dry breadcrumbs, soaked
2 eggs, beaten
60 ml lime juice
42 g salt
6 g cumin, toasted, ground
diameter: 32 mm
cook: poach
"""

HARD = """\u05e0\u05e7\u05e0\u05d9\u05e7 \u05d9\u05e8\u05d5\u05e7 \u7dd1\u306e\u8178\u8a70\u3081 """ + "Verylongwordwithoutanyspaceinit" * 4 + """ <i>&
2 kg pork shoulder
36 g salt
"""

MANY = "Forty lines (invented)\n1500 g pork shoulder\n" + "".join(f"{20 + n} g {food}\n" for n, food in enumerate(
    "spinach chard kale sorrel parsley cilantro basil dill mint tarragon chervil arugula watercress purslane nettle collard amaranth mizuna "
    "serrano jalapeno poblano habanero tomatillo garlic onion shallot leek scallion walnut almond pistachio hazelnut breadcrumbs milk "
    "cumin coriander-seed salt".split()))

ALONE = "Nothing but meat\n1 kg pork shoulder\n"

PAGES = {  # name: command line; HTML and JSON of each are made
    "predict": ["predict", "{examples}/garden/formula.txt"],
    "swaps": ["swaps", "{examples}/garden/formula.txt", "spinach"],
    "adapt": ["adapt", "{examples}/firmer/formula.txt", "--want", "firmer"],
    "compare": ["compare", "{examples}/garden/formula.txt", "{examples}/milder/formula.txt", "{hostile}"],
    "sheet": ["sheet", "{examples}/garden/formula.txt", "--meat", "5 kg"],
    "sheet-both": ["sheet", "{examples}/firmer/formula.txt", "--meat", "10 lb", "--units", "both"],
    "sheet-long": ["sheet", "{long}"],
    "hostile": ["predict", "{hostile}"],
    "hard": ["predict", "{hard}"],
    "hard-compare": ["compare", "{hard}", "{alone}", "{many}"],
    "hard-sheet": ["sheet", "{hard}"],
    "many": ["predict", "{many}"],
    "alone": ["predict", "{alone}"],
}
FILES = {"hostile": HOSTILE, "long": LONG, "full": FULL, "hard": HARD, "many": MANY, "alone": ALONE}
ON_PAPER = ("allergy", "binder", "firmer", "garden", "milder", "long", "full")
UNITS = ("metric", "us", "both")


def written(folder):
    """Name: file of every formula a page is made of."""
    folder.mkdir(parents=True, exist_ok=True)
    files = {name: EXAMPLES / name / "formula.txt" for name in ON_PAPER if name not in FILES}
    for name, text in FILES.items():
        files[name] = folder / f"{name}.txt"
        files[name].write_text(text, encoding="utf-8")
    return files


def made_page(binary, words, file):
    """The JSON answer to a command line; its page goes to `file`."""
    file.unlink(missing_ok=True)
    done = subprocess.run([binary, *words, "--json", "--html", str(file)], capture_output=True, text=True, timeout=120, check=False)
    if done.returncode not in (0, 1) or not file.is_file():
        raise SystemExit(f"{file.stem}: no page: exit code {done.returncode}: {done.stderr}")
    return json.loads(done.stdout)


def make(binary, folder):
    """Name: (file, JSON answer)."""
    files = written(folder)
    made = {}
    for name, words in PAGES.items():
        file = folder / f"{name}.html"
        made[name] = (file, made_page(binary, [word.format(examples=EXAMPLES, **files) for word in words], file))
    return made


def make_sheets(binary, folder):
    """Name: file of a bench sheet, each formula in all units."""
    files = written(folder)
    made = {}
    for name in ON_PAPER:
        for units in UNITS:
            file = made[f"paper-{name}-{units}"] = folder / f"paper-{name}-{units}.html"
            made_page(binary, ["sheet", str(files[name]), "--units", units, "--draws", "64"], file)
    return made
