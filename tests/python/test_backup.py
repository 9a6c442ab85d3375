"""Backups read by others: Python's zipfile, an RFC 8785 library, hashlib, and the age format written
down a second time here on OpenSSL (https://c2sp.org/age) beside a library that is Rust like ours."""

import base64
import hashlib
import hmac
import io
import json
import os
import pathlib
import subprocess
import warnings
import zipfile

import pyrage
import pytest
import rfc8785
from conftest import BAYWALK
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.ciphers.aead import ChaCha20Poly1305
from cryptography.hazmat.primitives.kdf.hkdf import HKDF

SECRET = "four tired owls"


def run(*args, typed="", store=None):
    return subprocess.run(
        [BAYWALK, "--language", "en", "--store", str(store), *map(str, args)],
        input=typed, capture_output=True, text=True, timeout=60, check=False,
    )


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    """A logbook with the sample walk, backed up in the clear and with a passphrase, and exported."""
    folder = tmp_path_factory.mktemp("backup")
    store = folder / "walk"
    subprocess.run([BAYWALK, "try", "--folder", str(store)], capture_output=True, check=True)
    for args, typed in [
        (["backup", folder / "clear.zip"], ""),
        (["backup", folder / "locked.age", "--passphrase"], SECRET + "\n"),
        (["export", "--to", folder / "lines.jsonl"], ""),
    ]:
        done = run(*args, typed=typed, store=store)
        assert done.returncode == 0, done.stderr
    return folder


def chain(lines):
    """Verifies a ledger as lines, from nothing but the format; gives the last number and digest."""
    digest, seq = bytes(32), 0
    *entries, end = lines.decode().splitlines()
    for line in entries:
        value = json.loads(line)
        assert rfc8785.dumps(value).decode() == line
        body = rfc8785.dumps(value["entry"])
        digest = hashlib.sha256(digest + body).digest()
        seq += 1
        assert value["digest"] == digest.hex() and value["entry"]["seq"] == seq
    assert json.loads(end) == {"end": {"digest": digest.hex(), "seq": seq}}
    return seq, digest.hex()


def test_the_archive_is_a_plain_zip_whose_manifest_and_chain_others_verify(made):
    with zipfile.ZipFile(made / "clear.zip") as archive:
        assert archive.testzip() is None
        manifest = json.loads(archive.read("manifest.json"))
        assert rfc8785.dumps(manifest) == archive.read("manifest.json")
        for member in manifest["members"]:
            data = archive.read(member["name"])
            assert len(data) == member["size"]
            assert hashlib.sha256(data).hexdigest() == member["sha256"]
        assert all(info.compress_type == zipfile.ZIP_STORED for info in archive.infolist())
        assert not any("baywalk.db" in name for name in archive.namelist())
        assert chain(archive.read("ledger.jsonl")) == (manifest["entries"], manifest["head"])
        assert archive.read("ledger.jsonl") == (made / "lines.jsonl").read_bytes()


def seal(data):
    """The seal by the format: SHA-256 over all but the bytes of photos and the seal itself."""
    digest, at = hashlib.sha256(), 0
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        for info in archive.infolist():
            if info.filename.startswith("photos/"):
                head = data[info.header_offset:info.header_offset + 30]
                start = info.header_offset + 30 + int.from_bytes(head[26:28], "little")
                start += int.from_bytes(head[28:30], "little")
                digest.update(data[at:start])
                at = start + info.file_size
    digest.update(data[at:-64])
    return digest.hexdigest().encode()


def test_the_seal_is_what_the_format_says(made):
    data = (made / "clear.zip").read_bytes()
    assert seal(data) == data[-64:]


def decrypt(data, passphrase):
    """The age format, version 1, for one scrypt recipient, after its published description."""
    end = data.index(b"\n---") + 4
    lines = data[:end].split(b"\n")
    assert lines[0] == b"age-encryption.org/v1"
    arrow, kind, salt, work = lines[1].split(b" ")
    assert (arrow, kind, work) == (b"->", b"scrypt", b"16")
    unpad = lambda text: base64.b64decode(text + b"=" * (-len(text) % 4))
    key = hashlib.scrypt(
        passphrase.encode(), salt=b"age-encryption.org/v1/scrypt" + unpad(salt),
        n=1 << int(work), r=8, p=1, maxmem=1 << 28, dklen=32,
    )
    file_key = ChaCha20Poly1305(key).decrypt(bytes(12), unpad(b"".join(lines[2:-1])), None)
    derive = lambda salt, info: HKDF(hashes.SHA256(), 32, salt, info).derive(file_key)
    line_end = data.index(b"\n", end)
    mac = hmac.digest(derive(b"", b"header"), data[:end], "sha256")
    assert unpad(data[end + 1:line_end]) == mac
    payload = data[line_end + 1:]
    cipher = ChaCha20Poly1305(derive(payload[:16], b"payload"))
    payload, clear, count = payload[16:], b"", 0
    while payload:
        chunk, payload = payload[:65552], payload[65552:]
        clear += cipher.decrypt(count.to_bytes(11, "big") + bytes([not payload]), chunk, None)
        count += 1
    return clear


def test_a_passphrase_is_opened_by_others_and_the_archive_in_it_is_the_same(made):
    data = (made / "locked.age").read_bytes()
    clear = decrypt(data, SECRET)
    assert pyrage.passphrase.decrypt(data, SECRET) == clear
    with zipfile.ZipFile(io.BytesIO(clear)) as archive:
        assert archive.read("ledger.jsonl") == (made / "lines.jsonl").read_bytes()
    with pytest.raises(pyrage.DecryptError):
        pyrage.passphrase.decrypt(data, "five")


def test_what_another_wraps_is_restored_and_too_much_work_is_refused(made, tmp_path):
    locked = tmp_path / "other.age"
    clear = (made / "clear.zip").read_bytes()
    locked.write_bytes(pyrage.passphrase.encrypt(clear, SECRET))
    work = int(locked.read_bytes().split(b"\n")[1].split(b" ")[3])
    done = run("restore", locked, "--passphrase", typed=SECRET + "\n", store=tmp_path / "to")
    assert done.returncode == (0 if work <= 18 else 2), done.stderr
    head = locked.read_bytes().replace(f" {work}\n".encode(), b" 30\n", 1)
    locked.write_bytes(head)
    done = run("restore", locked, "--passphrase", typed=SECRET + "\n", store=tmp_path / "to2")
    assert done.returncode == 2 and "memory" in done.stderr, done.stderr


PHOTO = "photos/" + "0f" * 32 + ".jpg"


def rebuilt(made, change):
    """The archive made anew by Python with members changed, and sealed again: as a forger would."""
    with zipfile.ZipFile(made / "clear.zip") as archive:
        members = [(name, archive.read(name)) for name in archive.namelist()]
    out = io.BytesIO()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        with zipfile.ZipFile(out, "w") as archive:
            archive.comment = b"0" * 64
            for name, data, *how in change(members):
                info = name if isinstance(name, zipfile.ZipInfo) else zipfile.ZipInfo(name)
                archive.writestr(info, data, *how)
    data = out.getvalue()
    return data[:-64] + seal(data)


def relisted(members, **changes):
    """The manifest changed, its list made anew."""
    kept = [member for member in members if member[0] != "manifest.json"]
    manifest = json.loads(dict((m[0], m[1]) for m in members)["manifest.json"])
    manifest["members"] = [
        {"name": name, "size": len(data), "sha256": hashlib.sha256(data).hexdigest()}
        for name, data, *_ in kept
    ]
    manifest.update(changes)
    return [*kept, ("manifest.json", rfc8785.dumps(manifest))]


def link(members):
    info = zipfile.ZipInfo("ledger.jsonl")
    info.create_system, info.external_attr = 3, 0o120777 << 16
    return [(info, b"/etc/passwd"), members[-1]]


def retold(members, old, new):
    return relisted([(n, d.replace(old, new) if n == "ledger.jsonl" else d) for n, d in members])


HOSTILE = {
    "made anew, unchanged": (lambda m: m, 0, ""),
    "traversal": (lambda m: [*m, ("../../escape.jpg", b"x")], 8, "no backup has"),
    "absolute": (lambda m: [*m, ("/tmp/escape.jpg", b"x")], 8, "no backup has"),
    "backslashes": (lambda m: [*m, ("photos\\..\\x.jpg", b"x")], 8, "no backup has"),
    "a database": (lambda m: [*m, ("baywalk.db", b"SQLite format 3\0")], 8, "no backup has"),
    "case folded": (lambda m: [*m, ("LEDGER.JSONL", b"x")], 8, "no backup has"),
    "link": (link, 8, "a link or a folder"),
    "folder": (lambda m: [*m, ("photos/", b"")], 8, "a link or a folder"),
    "twice": (lambda m: [*m, m[0]], 8, "twice"),
    "one photo under two endings": (
        lambda m: relisted([*m, (PHOTO, b"x"), (PHOTO.replace("jpg", "png"), b"x")]), 8, "twice"),
    "bomb by ratio": (
        lambda m: [("ledger.jsonl", bytes(50_000_000), zipfile.ZIP_DEFLATED), m[-1]], 8, "compressed"),
    "photo of other bytes": (lambda m: relisted([*m, (PHOTO, b"x")]), 8, "not those"),
    "photo too large": (lambda m: [*m, (PHOTO, bytes(64 * 1024 * 1024 + 1))], 8, "larger"),
    "photo that no entry names": (
        lambda m: relisted([*m, ("photos/" + hashlib.sha256(b"x").hexdigest() + ".jpg", b"x")]),
        8, "no entry names it"),
    "not listed": (
        lambda m: [*m, ("photos/" + hashlib.sha256(b"x").hexdigest() + ".jpg", b"x")],
        8, "no entry names it"),
    "listed and missing": (lambda m: [m[-1]], 8, "missing"),
    "no manifest": (lambda m: m[:1], 8, "missing"),
    "newer format": (lambda m: relisted(m, format=2, later=[1]), 7, "newer version"),
    "newer store": (lambda m: relisted(m, store=99), 7, "newer version"),
    "other head": (lambda m: relisted(m, head="0f" * 32), 8, "not as it was written"),
    "other count": (lambda m: relisted(m, entries=3), 8, "not as it was written"),
    "manifest with more": (lambda m: relisted(m, more=1), 8, "not as it was written"),
    "entry changed": (lambda m: retold(m, b'"inlet', b'"outlet'), 8, "Line"),
    "lines cut": (
        lambda m: relisted([(m[0][0], b"\n".join(m[0][1].splitlines()[:9]) + b"\n"), m[1]]),
        8, "the end is missing"),
    "empty": (lambda m: [], 8, "missing"),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_archives_made_to_do_harm_are_refused_and_touch_nothing(made, tmp_path, name):
    change, code, told = HOSTILE[name]
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / "a.zip").write_bytes(rebuilt(made, change))
    done = run("restore", tmp_path / "in" / "a.zip", store=tmp_path / "in" / "to")
    assert done.returncode == code, done.stdout + done.stderr
    assert told in done.stderr
    there = sorted(os.listdir(tmp_path / "in"))
    assert there == (["a.zip", "to"] if code == 0 else ["a.zip"])
    assert os.listdir(tmp_path) == ["in"]
    assert not pathlib.Path("/tmp/escape.jpg").exists()
