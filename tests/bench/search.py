#!/usr/bin/env python3
"""How long answers take from a cold start, against the same program that only prints its help.

    python3 search.py BINARY [RUNS]

Medians of wall clock and processor time over RUNS (15) runs, and the ratio of the former to the help page's. Nothing is judged here.
"""
import pathlib
import resource
import statistics
import subprocess
import sys
import time

root = pathlib.Path(__file__).resolve().parents[2]
examples, data = root / "examples", pathlib.Path(__file__).resolve().parent / "data"

JOBS = {
    "help": ["--help"],
    "predict": ["predict", examples / "garden/formula.txt"],
    "swaps": ["swaps", examples / "garden/formula.txt", "spinach"],
    "garden": ["adapt", examples / "garden/formula.txt", "--have", examples / "garden/inventory.txt"],
    "firmer": ["adapt", examples / "firmer/formula.txt", "--want", "firmer"],
    "milder": ["adapt", examples / "milder/formula.txt", "--want", "milder"],
    "20 lines, 40 items, 3 wants, top 5": [
        "adapt", data / "twenty_lines.txt", "--have", data / "forty_items.txt", "--want", "firmer", "--want", "milder", "--want", "greener",
        "--top", "5"],
}


def once(command):
    before, start = resource.getrusage(resource.RUSAGE_CHILDREN), time.perf_counter()
    subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
    wall, after = time.perf_counter() - start, resource.getrusage(resource.RUSAGE_CHILDREN)
    return 1000 * wall, 1000 * (after.ru_utime - before.ru_utime + after.ru_stime - before.ru_stime)


def main():
    binary, runs = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 15
    idle = None
    print(f"{'':36} {'wall ms':>8} {'cpu ms':>8} {'of help':>8}")
    for name, arguments in JOBS.items():
        times = [once([binary, *map(str, arguments)]) for _ in range(runs)]
        wall, cpu = (statistics.median(t[i] for t in times) for i in (0, 1))
        idle = idle or wall
        print(f"{name:36} {wall:8.0f} {cpu:8.0f} {wall / idle:8.1f}")


if __name__ == "__main__":
    main()
