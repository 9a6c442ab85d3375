"""The planner beside HiGHS and CP-SAT on the same tasks in one run, and its growth; as Markdown.

    tests/.venv/bin/python tests/plan_bench/bench.py

It writes the tasks, has criterion measure `plan` on each (the median of its samples), then solves each
task once with either solver. Every worth must be the same three times. No timed test: the machine's
load is printed with the figures.
"""

import json
import os
import pathlib
import statistics
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tests" / "python"))

import plans  # noqa: E402

OUT = ROOT / "target" / "plan_bench"
COUNT = int(os.environ.get("BAYWALK_BENCH_TASKS", "20"))
GROWTH = {
    "points": [25, 50, 100, 200, 400],
    "bays": [4, 6, 8, 10, 12, 15],
    "minutes": [5, 10, 20, 30, 60, 120],
}
USUAL = {"points": 200, "bays": 12, "minutes": 30}


def text(task):
    number = {bay["code"]: n for n, bay in enumerate(task["bays"])}
    words = [task["seconds"], len(task["bays"]), *(bay["open"] + bay["close"] for bay in task["bays"])]
    words.append(len(task["points"]))
    for point in task["points"]:
        words += [number[point["bay"]], point["seconds"], point["worth"]]
    legs = task["legs"] or []
    words.append(len(legs))
    words += [leg for row in legs for leg in row]
    return " ".join(map(str, words))


def drawn(seed, walks, **sizes):
    task = plans.drawn(seed, walks=walks, **{**USUAL, **sizes})
    task["points"] = [{**point, "must": False} for point in task["points"]]
    return task


def tasks():
    made = {}
    for seed in range(COUNT):
        for walks in (False, True):
            made[f"main-{'walk' if walks else 'bays'}-{seed:02}"] = drawn(seed, walks)
    for axis, sizes in GROWTH.items():
        for size in sizes:
            for seed in range(3):
                made[f"grow-{axis}-{size:03}-{seed}"] = drawn(100 + seed, True, **{axis: size})
    return made


def measured(folder):
    run = subprocess.run(
        ["cargo", "bench", "--locked", "-p", "baywalk-plan-bench", "--bench", "plan"],
        cwd=ROOT,
        env={**os.environ, "BAYWALK_TASKS": str(folder)},
        capture_output=True,
        text=True,
        check=True,
    )
    worth = {}
    for line in run.stdout.splitlines():
        if line.startswith("worth "):
            _, name, value, bound, proved = line.split()
            assert proved == "true" and value == bound, line
            worth[name] = int(value)
    estimate = lambda name: ROOT / "target" / "criterion" / name / "new" / "estimates.json"
    times = {
        name: json.loads(estimate(name).read_text())["median"]["point_estimate"] / 1e6 for name in worth
    }
    return worth, times


def solved(solver, task):
    begun = time.perf_counter()
    worth = solver(task)
    return worth, 1e3 * (time.perf_counter() - begun)


def told(times):
    return f"{statistics.median(times):.2f} / {max(times):.2f}"


def main():
    folder = OUT / "tasks"
    folder.mkdir(parents=True, exist_ok=True)
    for old in folder.iterdir():
        old.unlink()
    made = tasks()
    for name, task in made.items():
        (folder / f"{name}.txt").write_text(text(task))
    worth, times = measured(folder)
    print(f"load {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores, {COUNT} tasks, ms: median / most\n")
    print("| 200 points, 12 bays, 30 min | ours | HiGHS | CP-SAT | the better ÷ ours |\n|---|---|---|---|---|")
    for kind in ("bays", "walk"):
        names = [name for name in made if name.startswith(f"main-{kind}")]
        beside = {}
        for solver in (plans.highs, plans.cp_sat):
            beside[solver] = []
            for name in names:
                best, took = solved(solver, made[name])
                assert best == worth[name], (name, best, worth[name])
                beside[solver].append(took)
        ours = [times[name] for name in names]
        better = min(statistics.median(took) for took in beside.values())
        what = "with the round on foot" if kind == "walk" else "without walking"
        peers = " | ".join(told(took) for took in beside.values())
        print(f"| {what} | {told(ours)} | {peers} | {better / statistics.median(ours):.0f} |")
    for axis, sizes in GROWTH.items():
        print(f"\n| {axis} | " + " | ".join(map(str, sizes)) + " |\n|---|" + "---|" * len(sizes))
        cells = [
            told([took for name, took in times.items() if name.startswith(f"grow-{axis}-{size:03}")])
            for size in sizes
        ]
        print("| ms | " + " | ".join(cells) + " |")


if __name__ == "__main__":
    main()
