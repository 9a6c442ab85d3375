"""A rig of the sample layout through many years, as a script, by a law that is known."""

import datetime
import json
import pathlib

import numpy as np

SAMPLE = pathlib.Path(__file__).resolve().parents[2] / "bindings" / "terminal" / "scripts" / "wren.jsonl"
SHAPE, SCALE = 1.6, 40.0
# What was out of order in the first year and is checked like the others later.
SOUND = {
    "F8": ("36 lbf.in", "T1"), "F11": ("36 lbf.in", "T1"), "H6": ("28 lbf.in", "T1"),
    "H11": ("28 lbf.in", "T1"), "H14": ("28 lbf.in", "T1"), "M2": ("16 lbf.in", "T1"), "L2": None,
}
DROPPED = {"correct", "undo", "decide", "add", "layout", "damage", "left", "odometer"}


def year_lines():
    """The lines of a year in which all is sound."""
    lines, undone = [], None
    for line in map(json.loads, SAMPLE.read_text().splitlines()[1:]):
        if line.get("refused") or line["act"] in DROPPED:
            if line["act"] == "undo":
                lines.pop()
            continue
        line.pop("trouble", None)
        if line["act"] == "found" and line["point"] in SOUND:
            check = SOUND[line["point"]]
            line["found"] = {"grade": "held"} if check is None else {"grade": "held", "at": check[0], "tool": check[1]}
        if line["act"] == "found" and line["point"] == "J2":
            line["found"] = {"grade": "not_judged", "why": "other", "note": "out of service"}
        lines.append(line)
    return lines


def later(at, days):
    return (datetime.datetime.fromisoformat(at) + datetime.timedelta(days=days)).isoformat()


def script(years, seed=7):
    """The first year as it stands, then so many years in which joints move by a Weibull law."""
    rng = np.random.default_rng(seed)
    text = SAMPLE.read_text()
    lines, template, age, ends = [], year_lines(), {}, {}
    for year in range(1, years + 1):
        days = 365 * year
        reading = f"{41230 + 7400 * year} mi"
        lines.append({"act": "odometer", "at": later("2027-03-20T09:02:06-07:00", days), "reading": reading})
        for line in template:
            line = json.loads(json.dumps(line)) | {"at": later(line["at"], days)}
            lines.append(line)
            if line["act"] != "found" or line["found"]["grade"] != "held":
                continue
            point = line["point"]
            if point not in age:
                age[point], ends[point] = 0.0, SCALE * rng.weibull(SHAPE)
                continue
            age[point] += 12.0
            if age[point] < ends[point]:
                continue
            del age[point]
            line["found"] |= {"grade": "moved"} | ({"angle": "eighth"} if "at" in line["found"] else {})
            left = {"left": "alone", "why": "for_qualified"}
            at = later(line["at"], 0)
            lines.append({"act": "left", "at": at, "point": point, "left": left})
    return text + "".join(json.dumps(line) + "\n" for line in lines)
