"""Reports, labels and sheets, read by other programs: qpdf and Poppler (Debian), Pillow, a QR decoder, Chromium.

The structure is that of tagged PDF (ISO 32000-1, 14.8), read back by Poppler's `pdfinfo -struct-text`.
"""

import collections
import hashlib
import html.parser
import pathlib
import re
import subprocess
import uuid

import numpy as np
import pytest
import zxingcpp
from conftest import BAYWALK, ROOT
from PIL import Image

WREN = ROOT / "bindings" / "terminal" / "scripts" / "wren.jsonl"
#: A caption that tries to be more than text: markup, a formula, letters that turn the line, signs the type lacks.
CAPTION = "=1+1 <script>alert(1)</script> \u05d0\u05d1 \U0001f527 \u202e" + "W" * 500


def command(*args, good=True):
    answer = subprocess.run([str(arg) for arg in args], capture_output=True, text=True, errors="replace", timeout=240, check=False)
    assert (answer.returncode == 0) == good, answer.stderr
    return answer.stdout if good else answer.stderr


@pytest.fixture(scope="module")
def paper(tmp_path_factory):
    """Runs a command on a logbook with a walk that is not ended and sixteen photos of more than 10 MB in all."""
    folder = tmp_path_factory.mktemp("paper")
    script = folder / "part.jsonl"
    script.write_text("\n".join(WREN.read_text().splitlines()[:200]) + "\n")

    def run(*args, language="en", good=True):
        return command(BAYWALK, "--language", language, "--store", folder / "store", *args, good=good)

    run("walk", "--script", script)
    chance = np.random.default_rng(5)
    for place in range(16):
        noise = chance.integers(0, 256, (1200, 1600, 3), dtype=np.uint8)
        Image.fromarray(noise).save(folder / "noise.jpg", "JPEG", quality=80)
        run("photo", "add", "F", folder / "noise.jpg", "--caption", CAPTION if place == 0 else f"picture {place}")
    run.folder = folder
    return run


@pytest.fixture(scope="module")
def report(paper):
    """The report in both formats, without photos: their bytes are checked by themselves."""
    for name, size in [("a.html", "none"), ("a.pdf", "none")]:
        paper("report", paper.folder / name, "--photos", size, "--paper", "a4", language="es")
    return paper.folder / "a.html", paper.folder / "a.pdf"


class Visible(html.parser.HTMLParser):
    """The text of a page as a reader meets it."""

    HIDDEN = {"style", "title", "desc"}

    def __init__(self):
        super().__init__()
        self.hidden = 0
        self.told = []

    def handle_starttag(self, tag, attrs):
        self.hidden += tag in self.HIDDEN

    def handle_endtag(self, tag):
        self.hidden -= tag in self.HIDDEN

    def handle_data(self, data):
        if not self.hidden:
            self.told.append(data)


def bare(text):
    """A text without blanks and what only parts it, and without what Poppler's tree does not tell: letters that run from
    right to left come in the order in which they stand, and what a line says in place of its boxes is left out."""
    return re.sub(r"[\s\u00b7\u2022\u200b-\u200f\ufe00-\ufe0f\u0590-\u05ff\u25a1\U0001f527]", "", text)


def of_page(file):
    reader = Visible()
    reader.feed(file.read_text())
    return bare("".join(reader.told))


def tagged(file):
    """What stands in the tree of a tagged file: its text, artifacts left out."""
    told = command("pdfinfo", "-struct-text", file)
    pieces = re.findall(r'^\s*"(.*)"$', told, re.MULTILINE)
    return bare("".join(pieces))


def test_each_file_is_sound_tagged_and_carries_its_type(paper, report):
    paper("labels", paper.folder / "l.pdf")
    for name in ["a.pdf", "l.pdf"]:
        file = paper.folder / name
        command("qpdf", "--check", file)
        told = command("pdfinfo", file)
        assert re.search(r"Tagged: +yes", told) and re.search(r"PDF version: +1\.7", told)
        assert re.search(r"JavaScript: +no", told) and re.search(r"Title: +\S", told)
        fonts = [line.split() for line in command("pdffonts", file).splitlines()[2:]]
        assert fonts and all(line[-5:-2] == ["yes", "yes", "yes"] for line in fonts)


def test_a4_and_letter_are_what_they_are_called(paper):
    for name, size in [("a4", "595.28 x 841.89"), ("letter", "612 x 792")]:
        file = paper.folder / f"{name}.pdf"
        paper("report", file, "--paper", name, "--photos", "none")
        assert size in command("pdfinfo", file)


def test_both_formats_say_the_same_in_the_same_order(report):
    page, file = report
    on_page, on_paper = of_page(page), tagged(file)
    # What the type lacks is told at the end of the PDF alone.
    on_paper, note = on_paper[: len(on_page)], on_paper[len(on_page) :]
    assert "U+1F527" in note
    for place, (left, right) in enumerate(zip(on_page, on_paper, strict=False)):
        around = slice(max(0, place - 40), place + 40)
        assert left == right, (on_page[around], on_paper[around])
    assert len(on_page) == len(on_paper)


def test_headings_lists_tables_and_figures_are_told_as_such(report):
    told = command("pdfinfo", "-struct", report[1])
    kinds = collections.Counter(line.split()[0].rstrip(":") for line in told.splitlines() if line.strip())
    for kind in ["Sect", "H1", "H2", "H3", "P", "L", "LI", "LBody", "Table", "THead", "TBody", "TR", "TH", "TD", "Caption", "Figure"]:
        assert kinds[kind] > 0, (kind, kinds)


def test_bookmarks_follow_the_parts(report):
    told = command("qpdf", "--json", "--json-key=outlines", report[1])
    titles = re.findall(r'"title": "(.*)"', told)
    page = report[0].read_text()
    parts = [re.sub("<[^>]*>", "", part) for part in re.findall(r"<h[12][^>]*>(.*?)</h[12]>", page)]
    known = [title for title in titles if title in parts]
    assert known == parts


def test_letters_that_the_type_lacks_are_boxes_that_can_be_copied(report):
    told = command("pdftotext", "-raw", report[1], "-")
    assert "\U0001f527" in told and "U+1F527" in told
    assert "\u202e" not in told


def test_hostile_text_stays_text(report):
    page = report[0].read_text()
    assert "<script" not in page and "&#60;script" in page or "&lt;script" in page


def masters(paper):
    return {hashlib.sha256(file.read_bytes()).hexdigest() for file in (paper.folder / "store" / "photos").glob("*.jpg")}


def pictures(paper, file):
    folder = paper.folder / "pictures"
    folder.mkdir(exist_ok=True)
    for old in folder.iterdir():
        old.unlink()
    command("pdfimages", "-all", file, folder / "p")
    return [picture.read_bytes() for picture in folder.iterdir()]


def test_photos_stay_byte_for_byte_what_is_stored(paper):
    file = paper.folder / "whole.pdf"
    paper("report", file)
    inside = {hashlib.sha256(picture).hexdigest() for picture in pictures(paper, file)}
    assert len(inside) == 16 and inside == masters(paper)
    stored = sum(photo.stat().st_size for photo in (paper.folder / "store" / "photos").glob("*.jpg"))
    without = paper.folder / "letter.pdf"
    paper("report", without, "--photos", "none")
    # Goal: photos and text, and one part in a hundred for what holds them together.
    assert file.stat().st_size <= (stored + without.stat().st_size) * 1.01


def test_a_report_to_mail_stays_below_ten_megabytes(paper):
    for name in ["mail.pdf", "mail.html"]:
        file = paper.folder / name
        paper("report", file, "--photos", "mail")
        assert 1_000_000 < file.stat().st_size < 10_000_000
    assert len(pictures(paper, paper.folder / "mail.pdf")) == 16


def test_every_label_is_read_by_a_decoder_and_names_a_record(paper):
    file = paper.folder / "labels.pdf"
    printed = int(re.match(r"(\d+) labels", paper("labels", file, "--paper", "a4"))[1])
    command("pdftoppm", "-r", "200", "-gray", "-png", file, paper.folder / "label")
    read = []
    for page in sorted(paper.folder.glob("label-*.png")):
        found = zxingcpp.read_barcodes(Image.open(page), formats=zxingcpp.BarcodeFormat.QRCode)
        read += [code.text for code in found]
    assert len(read) == len(set(read)) == printed > 180
    paper("export", "--to", paper.folder / "all.jsonl")
    ledger = (paper.folder / "all.jsonl").read_text()
    assert all(str(uuid.UUID(text)) == text and text in ledger for text in read)


def test_a_sheet_goes_to_a_licensed_person(paper):
    finding = paper.folder / "sheet.pdf"
    paper("findings", "sheet", "1", finding)
    command("qpdf", "--check", finding)
    told = command("pdftotext", finding, "-")
    assert "Before it is used again" in told and "Licence or qualification" in told


def test_what_can_not_be_written_is_told_in_sentences(paper):
    for args, sentence in [
        (["report", "x.docx"], "The name x.docx does not say what kind of file is asked for."),
        (["report", "x.pdf", "--paper", "napkin"], "napkin is no paper known here."),
        (["report", "x.pdf", "--photos", "big"], "big is no size of photos known here."),
        (["labels", "x.pdf", "--only", "Q9"], "There is no record with the code Q9"),
        (["findings", "sheet", "99", "x.pdf"], "There is no finding number 99."),
        (["report", "/proc/nowhere/x.pdf"], "can't be written"),
    ]:
        assert sentence in paper(*args, good=False)
        assert not pathlib.Path("x.pdf").exists()


@pytest.mark.parametrize("width", [320, 360, 794])
def test_a_page_is_no_wider_than_its_window(report, width):
    """794 px are A4 at 96 px an inch."""
    page = report[0]
    measured = page.with_name(f"measured-{width}.html")
    ask = "<script>document.title = document.documentElement.scrollWidth</script></body>"
    frame = f"<iframe style='width:{width}px;height:900px;border:0' srcdoc=\"{{}}\"></iframe>"
    inner = page.read_text().replace("</body>", ask.replace("document.title", "parent.document.title"))
    measured.write_text("<body>" + frame.format(inner.replace("&", "&amp;").replace('"', "&quot;")) + "</body>")
    told = command(
        "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--virtual-time-budget=5000", "--dump-dom", measured.as_uri()
    )
    assert re.search(r"<title>(\d+)</title>", told), told[:300]
    assert int(re.search(r"<title>(\d+)</title>", told)[1]) <= width
