#!/usr/bin/env python3
"""What the commands write: whole or not there, never over what was read, and read back as what was shown.

    python3 written.py BINARY
"""
import json
import os
import pathlib
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import time

FILES = pathlib.Path(__file__).resolve().parent / "files"
DAY = {"SOURCE_DATE_EPOCH": "1777593600", "TZ": "UTC"}  # 2026-05-01
KILLS = 500


class Place:
    """A folder of its own with a formula, a list of what is on hand, and the binary."""

    def __init__(self, binary, folder):
        self.binary, self.folder = binary, pathlib.Path(folder)
        for name in ("hedge.txt", "fridge.txt"):
            shutil.copy(FILES / name, self.folder / name)

    def run(self, *args, **more):
        return subprocess.run([self.binary, *args], cwd=self.folder, env=os.environ | DAY, capture_output=True, text=True, timeout=120,
                              check=False, **more)

    def strays(self):
        return [p.name for p in self.folder.iterdir() if p.name.startswith(".")]


def a_variant_to_paper(place):
    shown = place.run("adapt", "hedge.txt", "--have", "fridge.txt", "--json")
    variant = json.loads(shown.stdout)["variants"][0]
    done = place.run("adapt", "hedge.txt", "--have", "fridge.txt", "--save", "today.txt")
    if done.returncode != 0:
        yield f"adapt --save: exit code {done.returncode}, {done.stderr}"
        return
    text = (place.folder / "today.txt").read_text()
    for words in ("chard", "parent: Hedge row test", "date: 2026-05-01", "do: chard: "):
        if words not in text:
            yield f"the saved variant lacks `{words}`:\n{text}"
    if text.splitlines()[0] == "Hedge row test":
        yield "the saved variant has no title of its own"
    again = json.loads(place.run("predict", "today.txt", "--json").stdout)
    for line, was in zip(again["lines"], variant["prediction"]["lines"], strict=True):
        if line["ingredient"] != was["ingredient"] or abs(line["weighed_g"] - was["weighed_g"]) > 0.01:
            yield f"saved as {line['ingredient']} {line['weighed_g']} g, shown as {was['ingredient']} {was['weighed_g']} g"
    sheet = place.run("sheet", "today.txt", "--have", "fridge.txt").stdout
    if "Chard: strip the ribs" not in sheet:
        yield "the sheet of the saved variant does not say what the stand-in asks for"
    if place.run("adapt", "hedge.txt", "--have", "fridge.txt", "--sheet").stdout != sheet:
        yield "adapt --sheet is not the sheet of what adapt --save writes"
    piped = place.run("sheet", "-", "--have", "fridge.txt", input=shown.stdout)
    if piped.stdout != sheet:
        yield "a piped answer does not give the same sheet"
    second = place.run("sheet", "-", "--variant", "2", input=shown.stdout)
    if second.returncode != 0 or second.stdout == sheet:
        yield "--variant 2 of a piped answer is not another sheet"
    if place.run("sheet", "-", "--variant", "9", input=shown.stdout).returncode != 64:
        yield "a variant that is not there is no wrong use"


def in_the_makers_units(place):
    (place.folder / "pounds.txt").write_text("Pound test\n5 lb pork shoulder\n1 bunch parsley\n10 oz spinach, blanched\n1 1/2 oz salt\n")
    place.run("adapt", "pounds.txt", "--have", "-", "--save", "pounds-2.txt", input="chard plenty\nno spinach\n")
    text = (place.folder / "pounds-2.txt").read_text()
    for words in ("5 lb pork shoulder", "1 bunch", " oz chard"):
        if words not in text:
            yield f"a formula in pounds is not saved in pounds, `{words}` is missing:\n{text}"
    page = place.run("adapt", "pounds.txt", "--have", "-", input="chard plenty\nno spinach\n").stdout
    if "5 lb" not in page or " oz  chard" not in page:
        yield f"a formula in pounds is not shown in pounds:\n{page}"


def one_stand_in(place):
    answer = json.loads(place.run("swaps", "hedge.txt", "spinach", "--json").stdout)["stand_ins"][1]
    done = place.run("swaps", "hedge.txt", "spinach", "--take", "2", "--save", "taken.json")
    taken = json.loads((place.folder / "taken.json").read_text())
    if done.returncode or taken["parent"] != "Hedge row test" or answer["name"] not in [line["ingredient"] for line in taken["lines"]]:
        yield f"swaps --take 2 --save: {done.stderr}{taken}"


def never_over_what_is_read(place):
    formula, have = place.folder / "hedge.txt", place.folder / "fridge.txt"
    before = formula.read_text(), have.read_text()
    (place.folder / "soft.txt").symlink_to("hedge.txt")
    os.link(formula, place.folder / "hard.txt")
    (place.folder / "below").mkdir()
    for name in ("hedge.txt", "./hedge.txt", "below/../hedge.txt", "soft.txt", "hard.txt", str(formula), "fridge.txt"):
        for option in ("--html", "--save"):
            done = place.run("adapt", "hedge.txt", "--have", "fridge.txt", option, name)
            if done.returncode < 64 or done.stdout or (formula.read_text(), have.read_text()) != before:
                yield f"{option} {name}: exit code {done.returncode}, {done.stderr}"
    for name in ("prices.txt", "kitchen.txt"):
        (place.folder / name).write_text({"prices.txt": "spinach 2/kg\n", "kitchen.txt": "pork shoulder: 25 % fat\n"}[name])
    links = {"prices.txt": "prices-link.txt", "kitchen.txt": "kitchen-link.txt"}
    for name, link in links.items():
        (place.folder / link).symlink_to(name)
        was = (place.folder / name).read_text()
        for way in (name, "below/../" + name, link):
            for call in (("sheet", "hedge.txt", "--html", way), ("predict", "hedge.txt", "--html", way), ("swaps", "hedge.txt", "spinach", "--save", way),
                         ("compare", "hedge.txt", "hedge.txt", "--html", way)):
                done = place.run(*call)
                if done.returncode < 64 or done.stdout or (place.folder / name).read_text() != was:
                    yield f"{call}: exit code {done.returncode}, {done.stderr}"
        (place.folder / name).unlink()
    for call in (("convert", "hedge.txt", "--to", "json", "--save", "hard.txt"), ("swaps", "hedge.txt", "spinach", "--html", "soft.txt")):
        if place.run(*call).returncode < 64 or formula.read_text() != before[0]:
            yield f"{call} overwrites what it reads"
    if place.run("predict", "soft.txt", "--html", "hedge.txt").returncode < 64 or formula.read_text() != before[0]:
        yield "a formula read through a link is overwritten"
    if place.run("adapt", "hedge.txt", "--have", "fridge.txt", "--save", "x.txt", "--html", "x.txt").returncode != 64:
        yield "one file for two texts is no wrong use"


def no_room(place):
    def little_room():
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (1000, 1000))

    for there in (False, True):
        page = place.folder / "page.html"
        if there:
            page.write_text("as it was")
        done = place.run("sheet", "hedge.txt", "--html", "page.html", preexec_fn=little_room)
        left = page.read_text() if page.exists() else None
        if done.returncode != 74 or done.stdout or left != ("as it was" if there else None) or place.strays():
            yield f"no room: exit code {done.returncode}, left {left!r} and {place.strays()}, {done.stderr}"
    (place.folder / "shut").mkdir()
    if place.run("sheet", "hedge.txt", "--html", "shut").returncode != 73 or place.run("sheet", "hedge.txt", "--html", "no/x").returncode != 73:
        yield "a folder in the place of the file, or no folder for it, are no 73"
    if os.path.exists("/dev/full") and place.run("adapt", "hedge.txt", "--have", "fridge.txt", "--save", "/dev/full").returncode != 74:
        yield "a full device behind --save is no 74"


def a_full_disk(place):
    """A disk of two pages, where this system lets one be made: what was there stays, and nothing else comes."""
    script = ("mount -t tmpfs -o size=8k none small && cp hedge.txt small/old.html && "
              "\"$0\" sheet hedge.txt --html small/old.html; code=$?; cmp hedge.txt small/old.html && ls -A small; exit $code")
    (place.folder / "small").mkdir()
    call = ["unshare", "--user", "--map-root-user", "--mount", "sh", "-c", script, place.binary]
    if not shutil.which("unshare") or subprocess.run(call[:4] + ["sh", "-c", "mount -t tmpfs none small"], cwd=place.folder, capture_output=True,
                                                     check=False).returncode:
        print("no disk of our own here: the full disk is left to no_room")
        return
    done = subprocess.run(call, cwd=place.folder, env=os.environ | DAY, capture_output=True, text=True, timeout=120, check=False)
    if done.returncode != 74 or done.stdout.split() != ["old.html"]:
        yield f"full disk: exit code {done.returncode}, left {done.stdout.split()}, {done.stderr}"


def every_format_tells_the_same(place):
    """What raised a caution or an allergen is told beside the formula and in it, in every format, and is told again of what is read."""
    text = ("Spring links\n1 kg pork shoulder\n18 g salt\n30 g milk powder\nnote: for my son, who is allergic to milk\n\nMethod\n"
            "Thaw the meat on the counter.\nCook to 60 C. Keeps three weeks in the fridge.\n")
    (place.folder / "spring.txt").write_text(text)

    def ids(name):
        page = json.loads(place.run("predict", name, "--json").stdout)
        same = {"core-said": "core-low"}  # the core that JSON-LD is given is that of the rule
        return {(same.get(c["id"], c["id"])) for c in page["cautions"]}, {a["allergen"] for a in page["allergens"]}

    asked = ids("spring.txt")
    page = place.run("convert", "spring.txt").stdout
    for words in ("milk, from", "core temperature in the process is below the rule", "keeps three weeks"):
        if words not in page:
            yield f"convert lacks `{words}`:\n{page}"
    read = json.loads(place.run("convert", "spring.txt", "--json").stdout)
    if {a["allergen"] for a in read["allergens"]} != asked[1] or not {"core-low", "guest-clash"} <= {c["id"] for c in read["cautions"]}:
        yield "convert --json lacks allergens or cautions"
    for form in ("text", "json", "jsonld"):
        done = place.run("convert", "spring.txt", "--to", form)
        (place.folder / form).write_text(done.stdout)
        for words in ("milk", "core temperature in the process is below the rule" if form != "jsonld" else "60 C", "keeps three weeks", "on the counter",
                      "must not eat this"):
            if words not in done.stdout.split("18 g")[-1] or (words != "60 C" and words not in done.stderr):
                yield f"convert --to {form} does not tell `{words}`:\n{done.stdout}{done.stderr}"
        if ids(form) != asked:
            yield f"read back from {form}: {ids(form)}, and not {asked}"
        for again in ("text", "json"):
            twice = place.run("convert", form, "--to", again).stdout
            if form == again and twice != done.stdout:
                yield f"{form} is written otherwise when it is read back:\n{twice}"


def killed(place):
    """Whatever the moment: the old page or the new one, never a part."""
    page = place.folder / "kept.html"
    start = time.monotonic()
    place.run("sheet", "hedge.txt", "--html", "kept.html", "--draws", "16")
    whole, took = page.read_text(), time.monotonic() - start
    for n in range(KILLS):
        page.write_text("as it was")
        process = subprocess.Popen([place.binary, "sheet", "hedge.txt", "--html", "kept.html", "--draws", "16"], cwd=place.folder,
                                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        time.sleep(took * (0.4 + 0.7 * n / KILLS))
        process.send_signal(signal.SIGKILL)
        process.wait(timeout=60)
        if page.read_text() not in ("as it was", whole):
            yield f"killed at {n}: half a page"


def main():
    binary = str(pathlib.Path(sys.argv[1]).resolve())
    found = []
    for look in (a_variant_to_paper, in_the_makers_units, one_stand_in, never_over_what_is_read, no_room, a_full_disk,
                 every_format_tells_the_same, killed):
        with tempfile.TemporaryDirectory() as folder:
            found += [f"{look.__name__}: {complaint}" for complaint in look(Place(binary, folder))]
    print("\n".join(found) or "what is written is whole and reads back")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
