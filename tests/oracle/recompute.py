#!/usr/bin/env python3
"""Masses, salt, fat, water and pH of formulas, worked out once more from the knowledge and the equations alone.

    python3 recompute.py STANDIN [FORMULA...]

Without formulas it takes those of examples/. The program is asked for its prediction (`predict --json`) and for what it knows of each
ingredient (`lookup --json`); acid shares, tissues, preparations and model constants come from knowledge/. Nothing of the engine's own
reckoning is used: preparations are a mass balance, pH is the root of the charge balance
    strong + H+ - OH- - sum C z(pH) + sum over meat of L s (H(pH) - H(own pH)) + sum buffer (own pH - pH) = 0
with Davies activities, found by bisection. The program shows medians over its draws, this works at the middle of every band, hence the
tolerances.
"""
import json
import math
import pathlib
import re
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
KNOWLEDGE = ROOT / "knowledge"
NACL, SODIUM, LEAN_PROTEIN = 58.443, 22.990, 205.0
TITRATION_END = 8.2
# name: molar mass, protons given up to pH 8.2, dissociation steps
ACIDS = {"acetic": (60.05, 1, 1), "lactic": (90.08, 1, 1), "citric": (192.12, 3, 3), "malic": (134.09, 2, 2), "tartaric": (150.09, 2, 2),
         "oxalic": (90.03, 2, 2), "succinic": (118.09, 2, 2), "ascorbic": (176.12, 1, 2), "phosphoric": (98.00, 2, 3)}
# quantity: (absolute, relative) tolerance between a median of draws and the middle of all bands
TOLERANCE = {"batch_g": (0.01, 1e-5), "meat_g": (0.01, 1e-5), "salt_pct": (0.01, 0.01), "salt_pct_of_meat": (0.01, 0.01), "fat_pct": (0.1, 0.02),
             "protein_pct": (0.1, 0.02), "water_pct": (0.3, 0.01), "ph": (0.05, 0)}


def middle(value):
    return value["value"] if isinstance(value, dict) else value


def load_parameters():
    found = {}
    for file in (KNOWLEDGE / "models").glob("*.json"):
        for record in json.loads(file.read_text())["parameters"]:
            found[record["id"]] = record["value"]
    return found


PARAMETERS = load_parameters()
PREPARATIONS = {p["id"]: p for p in json.loads((KNOWLEDGE / "preparations.json").read_text())["preparations"]}
BY_NAME = {name: p for p in PREPARATIONS.values() for name in [p["id"], *p["names"]]}
RECORDS = {i["id"]: i for file in (KNOWLEDGE / "ingredients").glob("*.json") for i in json.loads(file.read_text())["ingredients"]}


def ask(binary, *words):
    run = subprocess.run([binary, *words, "--json"], capture_output=True, text=True, check=False)
    if run.returncode != 0:
        sys.exit(f"standin {' '.join(words)}: exit {run.returncode}: {run.stderr}{run.stdout}")
    return json.loads(run.stdout)


# --- masses ------------------------------------------------------------------------------------------------------------------------

def at_minutes(points, minutes):
    """The middle of a list of points at a time: linear between them, flat beyond."""
    if minutes is None or len(points) == 1:
        return points[0]["value"]
    if minutes <= points[0]["minutes"]:
        return points[0]["value"]
    for a, b in zip(points, points[1:]):
        if minutes <= b["minutes"]:
            return a["value"] + (minutes - a["minutes"]) / (b["minutes"] - a["minutes"]) * (b["value"] - a["value"])
    return points[-1]["value"]


def raw_gram(facts):
    c = {key: fact["value"] / 100 for key, fact in facts["composition"].items()}
    salt = c["salt_g"]
    food = {"protein": c["protein_g"], "fat": c["fat_g"], "carbohydrate": c["carbohydrate_g"], "ash": max(0.0, c["ash_g"] - salt), "salt": salt,
            "alcohol": c.get("alcohol_g", 0), "acid": c.get("acid_g", 0)}
    dry = sum(food.values())
    if dry > 1:
        food = {part: grams / dry for part, grams in food.items()}
    return dict(food, mass=1.0, water=max(0.0, 1 - dry), acid_share=1.0, acetic=0.0)


DRY = ("protein", "fat", "carbohydrate", "ash", "salt", "alcohol", "acid")


def prepare(food, words, tissue):
    """One preparation, as it stands on the page: "blanched 3 min"."""
    said = re.fullmatch(r"(.*?)(?: ([0-9.]+) min)?", words)
    preparation = BY_NAME[said[1]]
    minutes = float(said[2]) if said[2] else preparation.get("minutes")
    effect = next((e for e in preparation["effects"] if tissue in e["tissues"]), None) or next(e for e in preparation["effects"] if "*" in e["tissues"])
    kept = {what: at_minutes(points, minutes) for what, points in effect.get("kept", {}).items()}
    solids = kept.get("solids", 1)
    after = dict(food)
    for part in ("protein", "carbohydrate", "ash", "alcohol"):
        after[part] *= solids
    after["fat"] *= kept.get("fat", 1)
    after["acid"] *= kept.get("acid", 1)
    if "water_left" in effect:  # dried to a share of water: the solids decide the weight
        dry = sum(after[part] for part in DRY if part != "salt") + food["salt"] * kept.get("salt", solids)
        mass = min(food["mass"], dry / (1 - middle(effect["water_left"])))
    else:
        mass = food["mass"] * at_minutes(effect["yield"], minutes)
    after["salt"] = food["salt"] * kept.get("salt", solids) + effect.get("adds_salt", 0) * mass
    after["acid_share"] *= kept.get("acid", 1)
    after["acetic"] += effect.get("adds_acetic_mmol", 0) * mass
    after["mass"] = max(mass, sum(after[part] for part in DRY))
    after["water"] = after["mass"] - sum(after[part] for part in DRY)
    return after


# --- pH ----------------------------------------------------------------------------------------------------------------------------

def activity(charge, strength):
    root = math.sqrt(min(strength, PARAMETERS["acid.davies.limit"]))
    return 10 ** (-PARAMETERS["acid.davies.a"] * charge ** 2 * (root / (1 + root) - PARAMETERS["acid.davies.b"] * root ** 2))


def shares_of_ions(acid, ph, strength):
    """How an acid's molecules are shared out over the charges 0, 1, 2, ..."""
    terms, constant = [1.0], 0.0
    for step in range(1, ACIDS[acid][2] + 1):
        constant += PARAMETERS[f"acid.pka.{acid}.{step}"]
        terms.append(10 ** (step * ph - constant) / activity(step, strength))
    return [term / sum(terms) for term in terms]


def charge_of(acid, ph, strength):
    return sum(charge * share for charge, share in enumerate(shares_of_ions(acid, ph, strength)))


def free_hydrogen(ph, strength):
    """H+ less OH-, mol/kg water."""
    return (10 ** -ph - 10 ** (ph - PARAMETERS["acid.pkw"])) / activity(1, strength)


def held_by_lean(ph):
    return sum(PARAMETERS[f"acid.sites.{site}"] / (1 + 10 ** (ph - PARAMETERS[f"acid.site_pk.{site}"]))
               for site in ("carboxyl", "histidine", "dipeptide", "phosphate", "lactate"))


def take_apart(ph, titratable, shares, water):
    """Acids (mmol), strong charge (mmol) and buffer (mmol/pH) of a kilogram of an acid food, from its own pH and its titration."""
    strength = 0.0
    for _ in range(200):
        acids, rest, squares = {}, titratable, 1000 * water * (10 ** -ph + 10 ** (ph - PARAMETERS["acid.pkw"])) / activity(1, strength)
        for acid, share in shares.items():
            given = charge_of(acid, TITRATION_END, strength) - charge_of(acid, ph, strength)
            acids[acid] = share * titratable / max(given, ACIDS[acid][1] / PARAMETERS["acid.equivalents_limit"])
            rest -= acids[acid] * max(0.0, given)
            squares += acids[acid] * sum(z * z * share for z, share in enumerate(shares_of_ions(acid, ph, strength)))
        strong = sum(mmol * charge_of(acid, ph, strength) for acid, mmol in acids.items()) - 1000 * water * free_hydrogen(ph, strength)
        last, strength = strength, (squares + abs(strong)) / (2000 * water)
        if abs(last - strength) < 1e-12:
            break
    return acids, strong, max(0.0, rest) / max(TITRATION_END - ph, 0.5)


def titratable_mmol(quantity):
    if quantity["unit"] == "mmol/kg":
        return quantity["value"]
    molar_mass, protons, _ = ACIDS[quantity["unit"].split()[-1]]
    return 1000 * quantity["value"] / molar_mass * protons


class Broth:
    """Everything in the batch that gives or takes protons; grams and mmol."""

    def __init__(self):
        self.water = self.salt = self.strong = 0.0
        self.acids, self.lean, self.buffers = {}, [], []

    def add(self, grams, food, facts, record):
        doses, acidity = facts["doses"], record.get("acidity", {})
        self.water += grams * food["water"]
        self.salt += grams * food["salt"]
        self.acids["acetic"] = self.acids.get("acetic", 0) + grams * food["acetic"]
        if "ph" in acidity or "titratable" in acidity or "buffer" in acidity:
            ph, buffer = doses["ph"]["value"], doses["buffer"]["value"] if "buffer" in doses and "meat" not in record else 0.0
            if "titratable" in doses and doses["titratable"]["value"] > 0:
                water = max(facts["composition"]["water_g"]["value"] / 100, 0.05)
                acids, strong, more = take_apart(ph, titratable_mmol(doses["titratable"]), acidity["acids"], water)
                for acid, mmol in acids.items():
                    self.acids[acid] = self.acids.get(acid, 0) + grams / 1000 * mmol * food["acid_share"]
                self.strong += grams / 1000 * strong * food["acid_share"]
                buffer += more
            self.buffers.append((grams / 1000 * buffer, ph))
        if "meat" in record:
            lean_kg = grams * food["protein"] / LEAN_PROTEIN
            self.lean.append((lean_kg * doses["buffer_scale"]["value"], doses["ph"]["value"]))

    def ph(self):
        strength = PARAMETERS["acid.native_ionic"] + (1000 * self.salt / NACL + abs(self.strong)) / self.water

        def balance(ph):
            total = self.strong + self.water * free_hydrogen(ph, strength)
            total -= sum(mmol * charge_of(acid, ph, strength) for acid, mmol in self.acids.items())
            total += sum(kg * (held_by_lean(ph) - held_by_lean(own)) for kg, own in self.lean)
            return total + sum(buffer * (own - ph) for buffer, own in self.buffers)

        low, high = -1.0, 15.0
        for _ in range(100):
            ph = (low + high) / 2
            low, high = (ph, high) if balance(ph) > 0 else (low, ph)
        return ph + PARAMETERS["acid.model_error"]


# --- comparison --------------------------------------------------------------------------------------------------------------------

def recompute(binary, prediction):
    total = dict.fromkeys(("mass", "meat", "salt", "fat", "protein", "water"), 0.0)
    broth, faults = Broth(), []
    for line in prediction["lines"]:
        facts = ask(binary, "lookup", line["ingredient"])["matches"][0]
        record = RECORDS[line["ingredient"]]
        food = raw_gram(facts)
        for words in line["prepared"]:
            food = prepare(food, words, record["tissue"])
        # Weighed first and then prepared, or weighed as it goes in.
        grams = line["weighed_g"] if abs(line["grams"] - line["weighed_g"] * food["mass"]) < 1e-5 * line["grams"] else line["weighed_g"] / food["mass"]
        if abs(grams * food["mass"] - line["grams"]) > 1e-5 * line["grams"]:
            faults.append(f"{line['ingredient']}: {line['grams']} g in the batch, recomputed {grams * food['mass']}")
        total["mass"] += grams * food["mass"]
        if "meat" in record:
            total["meat"] += grams * food["mass"]
        for part in ("salt", "fat", "protein", "water"):
            total[part] += grams * food[part]
        broth.add(grams, food, facts, record)
    mass = total["mass"]
    values = {"batch_g": mass, "meat_g": total["meat"], "salt_pct_of_meat": 100 * total["salt"] / total["meat"], "ph": broth.ph()}
    values.update({f"{part}_pct": 100 * total[part] / mass for part in ("salt", "fat", "protein", "water")})
    return values, faults


def compare(binary, formula):
    prediction = ask(binary, "predict", "--kitchen", "none", str(formula))
    mine, faults = recompute(binary, prediction)
    shown = []
    for key, (absolute, relative) in TOLERANCE.items():
        theirs = prediction[key] if key in prediction else prediction["properties"][key]["mid"]
        shown.append(f"{key} {theirs:.4g}/{mine[key]:.4g}")
        if not abs(theirs - mine[key]) <= absolute + relative * abs(mine[key]):
            faults.append(f"{key}: standin says {theirs}, recomputed {mine[key]}")
    name = formula.relative_to(ROOT) if formula.is_relative_to(ROOT) else formula
    print(f"{name}: " + ", ".join(shown))
    return [f"{name}: {fault}" for fault in faults]


def main():
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    formulas = [pathlib.Path(name) for name in sys.argv[2:]]
    formulas = formulas or sorted(f for f in (ROOT / "examples").glob("*/formula*.*") if f.suffix in (".txt", ".json"))
    if not formulas:
        sys.exit("no formulas in examples/")
    faults = [fault for formula in formulas for fault in compare(sys.argv[1], formula.resolve())]
    for fault in faults:
        print("FAILED", fault)
    print(f"{len(formulas)} formulas recomputed, standin/own; {len(faults)} beyond tolerance")
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    main()
