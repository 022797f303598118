#!/usr/bin/env python3
"""The picture of a bench sheet that the README shows: is it of the page that the program makes today?

    python3 picture.py BINARY           compares; 1 when the page has changed since
    python3 picture.py BINARY --write   takes the picture anew, in headless Chromium

The picture carries the words of its page in a compressed text chunk (PNG, ISO/IEC 15948), so that telling needs no browser and no fonts. They are
held to today's as the output in README.md is: words to the letter, numbers within a rounding of another processor.
"""
import html
import pathlib
import re
import shutil
import struct
import subprocess
import sys
import tempfile
import zlib

root = pathlib.Path(__file__).resolve().parents[2]
sys.path.insert(0, str(root / "tests" / "house"))
from check_readme import alike  # noqa: E402

PICTURE = root / "examples" / "garden" / "sheet.png"
MAKE = ["adapt", "examples/garden/formula.txt", "--have", "examples/garden/inventory.txt", "--sheet", "--html"]
KEY = b"Page-Words"
SIGNATURE = b"\x89PNG\r\n\x1a\n"
SIZE = "900,1560"


def page(binary, folder):
    file = folder / "sheet.html"
    subprocess.run([binary, *MAKE, str(file)], cwd=root, check=True, stdout=subprocess.DEVNULL, timeout=120)
    return file


def chunks(data):
    """Kind and content of every chunk."""
    at = len(SIGNATURE)
    while at < len(data):
        (length,) = struct.unpack(">I", data[at:at + 4])
        yield data[at + 4:at + 8], data[at + 8:at + 8 + length]
        at += 12 + length


def chunk(kind, content):
    return struct.pack(">I", len(content)) + kind + content + struct.pack(">I", zlib.crc32(kind + content))


def words_of(page):
    """What is read on a page, tags and style left out."""
    text = re.sub(r"<(style|script)\b.*?</\1>|<[^>]*>", " ", page, flags=re.S)
    return " ".join(html.unescape(text).split())


def words_in(picture):
    for kind, content in chunks(picture):
        key, _, value = content.partition(b"\0")
        if kind == b"zTXt" and key == KEY:
            return zlib.decompress(value[1:]).decode("utf-8")  # the first byte names the method, of which there is one
    return ""


def shoot(file, words):
    """The picture of a page, with the page's words in it."""
    browser = shutil.which("chromium")
    if not browser:
        raise SystemExit("taking the picture needs Debian's chromium")
    shot = file.with_suffix(".png")
    call = [browser, "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", f"--window-size={SIZE}", f"--screenshot={shot}", file.as_uri()]
    subprocess.run(call, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=120)
    parts = list(chunks(shot.read_bytes()))
    parts.insert(1, (b"zTXt", KEY + b"\0\0" + zlib.compress(words.encode("utf-8"))))
    return SIGNATURE + b"".join(chunk(kind, content) for kind, content in parts)


def main():
    binary = str(pathlib.Path(sys.argv[1]).resolve())
    with tempfile.TemporaryDirectory() as folder:
        file = page(binary, pathlib.Path(folder))
        words = words_of(file.read_text(encoding="utf-8"))
        if "--write" in sys.argv:
            PICTURE.write_bytes(shoot(file, words))
            return 0
        if not PICTURE.is_file() or not alike(words_in(PICTURE.read_bytes()), words):
            print(f"{PICTURE.relative_to(root)} does not show today's page: python3 {sys.argv[0]} {sys.argv[1]} --write")
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
