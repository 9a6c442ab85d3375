"""A report of many photos beside its peers, in one run: python tests/paper_bench/bench.py target/release/baywalk

Peers: reading the same photos and writing them as one file (the limit), and reportlab (PyPI), which sets as many
lines and passes the same photos through. All bring what they wrote to the disk. Each is a process of its own under /usr/bin/time (Debian `time`);
medians of five. Needs the virtual environment of tests/python, and `pip install reportlab` in it.
"""

import pathlib
import statistics
import subprocess
import sys
import tempfile

import numpy as np
from PIL import Image, ImageFilter

ROOT = pathlib.Path(__file__).resolve().parents[2]
WREN = ROOT / "bindings" / "terminal" / "scripts" / "wren.jsonl"
PHOTOS = 120
ROUNDS = 5

LIMIT = """
import os, pathlib, sys
out = open(sys.argv[1], "wb")
for photo in sorted(pathlib.Path(sys.argv[2]).glob("*.jpg")):
    out.write(photo.read_bytes())
out.flush()
os.fsync(out.fileno())
"""

REPORTLAB = """
import os, pathlib, sys
from reportlab import rl_config
rl_config.useA85 = 0
from reportlab.lib.pagesizes import A4
from reportlab.pdfgen import canvas
page = canvas.Canvas(sys.argv[1], pagesize=A4, pageCompression=1)
photos = sorted(pathlib.Path(sys.argv[2]).glob("*.jpg"))
for place in range(0, len(photos), 2):
    for half, photo in enumerate(photos[place:place + 2]):
        page.drawImage(str(photo), 40 + half * 260, 500, 250, 188)
    for line in range(20):
        page.drawString(40, 480 - line * 12, f"line {line}: terminal, as found, as left, torque and its basis, tool, day")
    page.showPage()
page.save()
with open(sys.argv[1], "rb") as out:
    os.fsync(out.fileno())
"""


def photo(chance, file):
    """A smooth picture with edges and grain, about as large as a photo of a bay."""
    low = Image.fromarray(chance.integers(0, 256, (75, 100, 3), dtype=np.uint8)).resize((1600, 1200), Image.BICUBIC)
    grain = chance.normal(0, 3.2, (1200, 1600, 1))
    image = np.clip(np.asarray(low.filter(ImageFilter.SHARPEN), dtype=float) + grain, 0, 255)
    Image.fromarray(image.astype(np.uint8)).save(file, "JPEG", quality=90)


def store(baywalk, folder):
    """A logbook with a walk and many photos."""
    script = folder / "part.jsonl"
    script.write_text("\n".join(WREN.read_text().splitlines()[:-40]) + "\n")
    run = [baywalk, "--language", "en", "--store", str(folder / "store")]
    subprocess.run([*run, "walk", "--script", str(script)], check=True, capture_output=True)
    chance = np.random.default_rng(7)
    for _ in range(PHOTOS):
        photo(chance, folder / "photo.jpg")
        subprocess.run([*run, "photo", "add", "F", str(folder / "photo.jpg"), "--caption", "lower row, before"], check=True, capture_output=True)
    return run


def measured(command, out):
    """Seconds, megabytes at most, bytes written: the median run by its time."""
    runs = []
    for _ in range(ROUNDS):
        out.unlink(missing_ok=True)
        answer = subprocess.run(["/usr/bin/time", "-f", "%e %U %M", *command], check=True, capture_output=True, text=True)
        wall, user, peak = map(float, answer.stderr.split()[-3:])
        runs.append((wall, user, peak / 1024))
    return [statistics.median(column) for column in zip(*runs, strict=True)] + [out.stat().st_size / 1e6]


def main():
    baywalk = str(pathlib.Path(sys.argv[1]).resolve())
    print("load", pathlib.Path("/proc/loadavg").read_text().strip())
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        run = store(baywalk, folder)
        photos = folder / "store" / "photos"
        size = sum(file.stat().st_size for file in photos.glob("*.jpg")) / 1e6
        out = folder / "out.pdf"
        python = sys.executable
        limit = measured([python, "-c", LIMIT, str(out), str(photos)], out)
        rows = {
            "limit: read and write": limit,
            "report, PDF": measured([*run, "report", str(out), "--paper", "a4"], out),
            "reportlab": measured([python, "-c", REPORTLAB, str(out), str(photos)], out),
        }
        page = folder / "out.html"
        rows["report, HTML"] = measured([*run, "report", str(page)], page)
        subprocess.run([*run, "report", str(out)], check=True, capture_output=True)
        told = subprocess.run(["pdfinfo", str(out)], check=True, capture_output=True, text=True).stdout
        print(f"{PHOTOS} photos, {size:.2f} MB;", next(line for line in told.splitlines() if line.startswith("Pages")))
        print("| | s | ÷ limit | user s | MB at most | ÷ output | MB written | ÷ photos |")
        for label, (wall, user, peak, written) in rows.items():
            print(
                f"| {label} | {wall:.2f} | {wall / limit[0]:.2f} | {user:.2f} | {peak:.0f} | {peak / written:.2f} | {written:.2f} | {written / size:.3f} |"
            )


if __name__ == "__main__":
    main()
