"""Photos taken in, against Pillow and piexif: which way is up, what is told of them, their colours."""

import hashlib
import io
import json
import subprocess

import numpy as np
import piexif
import pytest
from conftest import BAYWALK, ROOT
from PIL import Image, ImageCms, ImageOps

WREN = ROOT / "bindings" / "terminal" / "scripts" / "wren.jsonl"
#: A JPEG coded anew moves a channel by a few steps; more on average is another picture. Ours.
NEAR = 4.0


def scene(size=(480, 320)):
    """A picture no two corners of which are alike, smooth enough to survive coding."""
    x, y = np.meshgrid(np.linspace(0, 1, size[0]), np.linspace(0, 1, size[1]))
    red, green, blue = 255 * x, 255 * y, 127 + 120 * np.sin(6 * x + 3 * y)
    return Image.fromarray(np.stack([red, green, blue], axis=-1).astype(np.uint8))


@pytest.fixture
def take(tmp_path):
    """Takes a photo in during a walk; gives the master and the thumbnail that are kept."""
    script = tmp_path / "part.jsonl"
    script.write_text("\n".join(WREN.read_text().splitlines()[:24]) + "\n")
    store = tmp_path / "store"

    def run(*args):
        answer = subprocess.run(
            [BAYWALK, "--language", "en", "--store", store, *args],
            capture_output=True, text=True, timeout=60, check=False,
        )
        assert answer.returncode == 0, answer.stderr
        return answer.stdout

    run("walk", "--script", script)

    def taken(photo: bytes, ending="jpg"):
        file = tmp_path / f"photo.{ending}"
        file.write_bytes(photo)
        before = set((store / "photos").glob("*.jpg")) if (store / "photos").exists() else set()
        run("photo", "add", "F", file)
        [master] = set((store / "photos").glob("*.jpg")) - before
        small = store / "photos" / "small" / master.name
        assert hashlib.sha256(master.read_bytes()).hexdigest() == master.stem
        assert json.loads(run("verify", "--json"))["photos"]["missing"] == 0
        return master, small

    taken.run = run
    return taken


def jpeg(image, **options):
    out = io.BytesIO()
    image.save(out, "JPEG", quality=92, **options)
    return out.getvalue()


def away(left, right):
    """The mean distance of two pictures, a channel and pixel."""
    return np.abs(np.asarray(left, float) - np.asarray(right, float)).mean()


@pytest.mark.parametrize("orientation", range(1, 9))
def test_each_orientation_ends_upright(take, orientation):
    """Exif 2.32 tag 0x0112 (values as Pillow's ImageOps.exif_transpose has them)."""
    exif = piexif.dump({"0th": {piexif.ImageIFD.Orientation: orientation}})
    photo = jpeg(scene(), exif=exif)
    upright = ImageOps.exif_transpose(Image.open(io.BytesIO(photo)))
    master, small = take(photo)
    kept = Image.open(master)
    assert kept.size == upright.size
    assert away(kept.convert("RGB"), upright) < NEAR
    assert piexif.ImageIFD.Orientation not in piexif.load(str(master))["0th"]
    thumbnail = Image.open(small)
    assert max(thumbnail.size) == 320
    assert away(thumbnail.convert("RGB"), upright.resize(thumbnail.size, Image.Resampling.LANCZOS)) < NEAR


def test_nothing_is_told_of_a_photo_but_its_time(take):
    """Place, camera, owner, comments, XMP, IPTC and the second picture of a camera are gone."""
    inner = io.BytesIO()
    scene((160, 120)).save(inner, "JPEG")
    told = {
        "0th": {piexif.ImageIFD.Make: b"Camera", piexif.ImageIFD.Artist: b"Tove", piexif.ImageIFD.Software: b"1.0"},
        "Exif": {
            piexif.ExifIFD.DateTimeOriginal: b"2026:11:25 10:11:12",
            piexif.ExifIFD.MakerNote: b"secret" * 40,
            piexif.ExifIFD.BodySerialNumber: b"SERIAL-7",
            piexif.ExifIFD.UserComment: b"ASCII\0\0\0at home",
        },
        "GPS": {piexif.GPSIFD.GPSLatitudeRef: b"N", piexif.GPSIFD.GPSLatitude: ((48, 1), (8, 1), (0, 1))},
        "1st": {piexif.ImageIFD.Compression: 6},
        "thumbnail": inner.getvalue(),
    }
    photo = jpeg(scene(), exif=piexif.dump(told), comment=b"a comment")
    app1 = b"http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>place</x:xmpmeta>"
    app13 = b"Photoshop 3.0\0" + b"8BIM\x04\x04\0\0\0\0\0\x05place"
    for marker, body in ((b"\xff\xe1", app1), (b"\xff\xed", app13)):
        photo = photo[:2] + marker + (len(body) + 2).to_bytes(2, "big") + body + photo[2:]
    master, small = take(photo + b"a film behind the picture")
    for file in (master, small):
        raw = file.read_bytes()
        for word in (b"place", b"Camera", b"Tove", b"secret", b"SERIAL", b"at home", b"a comment", b"film", b"8BIM"):
            assert word not in raw, (file.name, word)
    exif = piexif.load(str(master))
    assert exif["GPS"] == {} and exif["1st"] == {} and exif["thumbnail"] is None
    said = {**exif["0th"], **exif["Exif"]}
    times = {piexif.ExifIFD.DateTimeOriginal, piexif.ImageIFD.DateTime, piexif.ImageIFD.ExifTag}
    assert b"2026:11:25 10:11:12" in said.values()
    assert set(said) <= times | {piexif.ExifIFD.ExifVersion, piexif.ExifIFD.OffsetTimeOriginal}, said


def test_colours_of_another_space_are_brought_to_srgb(take):
    """A profile (ICC.1) is applied, not kept: what is shown is what was seen. Peer: LittleCMS by Pillow."""
    srgb = ImageCms.createProfile("sRGB")
    # A matrix profile with red and green exchanged: anything that ignores it is far off.
    profile = bytearray(ImageCms.ImageCmsProfile(srgb).tobytes())
    red, green = profile.find(b"rXYZ"), profile.find(b"gXYZ")
    profile[red : red + 4], profile[green : green + 4] = b"gXYZ", b"rXYZ"
    other = ImageCms.ImageCmsProfile(io.BytesIO(bytes(profile)))
    photo = jpeg(scene(), icc_profile=bytes(profile))
    expected = ImageCms.profileToProfile(Image.open(io.BytesIO(photo)), other, srgb, outputMode="RGB")
    master, _ = take(photo)
    kept = Image.open(master)
    assert "icc_profile" not in kept.info
    assert away(kept.convert("RGB"), expected) < NEAR
    assert away(kept.convert("RGB"), scene()) > 10 * NEAR


def test_a_large_photo_is_kept_in_two_sizes(take):
    photo = jpeg(scene((2400, 1800)))
    master, small = take(photo)
    assert Image.open(master).size == (1600, 1200)
    assert Image.open(small).size == (320, 240)
    expected = Image.open(io.BytesIO(photo)).resize((1600, 1200), Image.Resampling.LANCZOS)
    assert away(Image.open(master).convert("RGB"), expected) < NEAR


def test_thumbnails_are_made_again_as_they_were(take):
    _, small = take(jpeg(scene((2400, 1800))))
    before = small.read_bytes()
    small.unlink()
    take.run("photo", "thumbnails")
    assert small.read_bytes() == before


@pytest.mark.parametrize("mode", ["RGB", "L", "RGBA", "P"])
def test_a_png_of_each_kind_is_taken_in(take, mode):
    out = io.BytesIO()
    # Without dithering: its dots are no picture for a JPEG.
    image = scene((200, 120)).quantize(64, dither=Image.Dither.NONE) if mode == "P" else scene((200, 120)).convert(mode)
    image.save(out, "PNG")
    master, _ = take(out.getvalue(), "png")
    kept = Image.open(master).convert("RGB")
    # Colours in steps leave edges that a JPEG blurs.
    assert away(kept, image.convert("RGBA").convert("RGB")) < (2 * NEAR if mode == "P" else NEAR)


