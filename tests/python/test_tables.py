"""Exports read by others: CSV by Python and DuckDB, lines by a JSON Schema validator.

Form of CSV: RFC 4180. Schema: JSON Schema draft 2020-12. Canonical JSON: RFC 8785.
"""

import copy
import csv
import io
import json
import os
import subprocess

import duckdb
import jsonschema
import openpyxl
import pytest
import rfc8785

from conftest import BAYWALK
from years import script

NASTY = '=HYPERLINK("x")\n"; -1,\u202e\u05d0 \U0001f469\u200d\U0001f527' + "W" * 200
ROWS = {"walks": 1, "points": 178, "readings": 20, "findings": 14, "lives": 0, "usage": 1, "photos": 0}


def baywalk(store, *args, fails=False):
    command = [BAYWALK, "--language", "en", "--store", str(store), *map(str, args)]
    answer = subprocess.run(command, capture_output=True, text=True, timeout=120, check=False)
    assert (answer.returncode != 0) == fails, answer.stderr
    return answer.stderr if fails else answer.stdout


@pytest.fixture(scope="module")
def sample(tmp_path_factory):
    """The sample walk: its store, its tables, its lines."""
    folder = tmp_path_factory.mktemp("sample")
    subprocess.run([BAYWALK, "try", "--folder", folder / "store"], capture_output=True, timeout=120, check=True)
    baywalk(folder / "store", "export", "--to", folder / "lines.jsonl", "--csv", folder / "csv")
    return folder


@pytest.fixture(scope="module")
def many(tmp_path_factory):
    """Nine years of the sample rig."""
    folder = tmp_path_factory.mktemp("many")
    (folder / "years.jsonl").write_text(script(8))
    baywalk(folder / "store", "walk", "--script", folder / "years.jsonl")
    return folder


def rows(path):
    with open(path, newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file, strict=True))


@pytest.mark.parametrize("name", ROWS)
def test_python_and_duckdb_read_each_table_alike(sample, name):
    path = sample / "csv" / f"{name}.csv"
    raw = path.read_bytes()
    assert raw.count(b"\n") == raw.count(b"\r\n") and raw.endswith(b"\r\n") and not raw.startswith(b"\xef\xbb\xbf")
    by_python = rows(path)
    assert len(by_python) == ROWS[name]
    query = f"SELECT * FROM read_csv('{path}', header = true, all_varchar = true, delim = ',', quote = '\"')"
    by_duckdb = duckdb.sql(query).fetchall()
    assert [list(row.values()) for row in by_python] == [[cell or "" for cell in row] for row in by_duckdb]


def test_columns_have_their_types(sample):
    kinds = lambda name: {row[0]: row[1] for row in duckdb.sql(
        f"DESCRIBE SELECT * FROM read_csv('{sample}/csv/{name}.csv', sample_size = -1)").fetchall()}
    readings, points, walks = kinds("readings"), kinds("points"), kinds("walks")
    assert readings["volts"] == "DOUBLE" and readings["day"] == "DATE" and readings["number"] == "BIGINT"
    assert points["found_torque"] == "DOUBLE" and points["corrected"] == "BOOLEAN" and points["basis"] == "VARCHAR"
    assert walks["started"].startswith("TIMESTAMP") and walks["held"] == "BIGINT"
    torque = duckdb.sql(f"SELECT max(left_torque) FROM '{sample}/csv/points.csv' WHERE left_unit = 'lbf.in'").fetchall()
    assert torque == [(45,)]


def test_the_tables_say_what_the_lines_say(sample):
    """Counted a second time from the lines, undone acts left out."""
    lines = [json.loads(line) for line in (sample / "lines.jsonl").read_text().splitlines()][:-1]
    acts = {line["entry"]["id"]: line["entry"]["body"]["act"] for line in lines}
    for act in [act for act in acts.values() if "strike" in act]:
        acts.pop(act["strike"]["act"])
    found = [act["found"] for act in acts.values() if "found" in act]
    table = [row for row in rows(sample / "csv" / "points.csv") if row["found"]]
    assert len({act["point"] for act in found}) == len(table)
    grades = lambda word: sum(word in json.dumps(act["found"]) for act in found)
    assert grades('"moved"') == sum(row["found"] == "moved" for row in table)
    assert sum("measure" in act for act in acts.values()) == len(rows(sample / "csv" / "readings.csv"))


def test_hostile_text_is_no_formula_and_comes_back(tmp_path):
    head = {"script": 1, "seed": "hostile"}
    acts = [
        {"act": "layout", "at": "2027-03-20T09:00:00-07:00", "layout": "sample-trailer"},
        {"act": "start", "at": "2027-03-20T09:01:00-07:00", "person": NASTY},
        {"act": "end", "at": "2027-03-20T09:02:00-07:00", "early": "-0.5"},
    ]
    (tmp_path / "s.jsonl").write_text("\n".join(map(json.dumps, [head, *acts])) + "\n")
    baywalk(tmp_path / "store", "walk", "--script", tmp_path / "s.jsonl")
    baywalk(tmp_path / "store", "export", "--csv", tmp_path / "csv")
    [row] = rows(tmp_path / "csv" / "walks.csv")
    assert row["why"] == "-0.5"
    assert row["person"].startswith("'=HYPERLINK") and "' -1" in row["person"]
    assert row["person"].replace("'=", "=", 1).replace("' -1", " -1", 1) == NASTY
    sheet = openpyxl.Workbook().active
    sheet.append(list(row.values()))
    assert all(cell.data_type != "f" for cell in sheet[1])


@pytest.fixture(scope="module")
def schema():
    answer = subprocess.run([BAYWALK, "export", "--schema"], capture_output=True, text=True, timeout=20, check=True)
    schema = json.loads(answer.stdout)
    jsonschema.Draft202012Validator.check_schema(schema)
    return jsonschema.Draft202012Validator(schema)


def test_the_schema_fits_every_line_and_every_frozen_entry(sample, schema):
    text = (sample / "lines.jsonl").read_text()
    for line in text.splitlines():
        schema.validate(json.loads(line))
        assert rfc8785.dumps(json.loads(line)) == line.encode()
    root = os.path.join(os.path.dirname(__file__), "..", "..", "core", "logbook", "samples", "entries")
    names = os.listdir(root)
    for name in names:
        with open(os.path.join(root, name), encoding="utf-8") as file:
            schema.validate({"digest": "0" * 64, "entry": json.load(file)})
    assert len(names) > 30


def test_the_schema_that_is_kept_is_the_one_that_is_printed(schema):
    path = os.path.join(os.path.dirname(__file__), "..", "..", "docs", "lines.schema.json")
    with open(path, encoding="utf-8") as file:
        assert json.load(file) == schema.schema


def planted():
    """Faults, each as a change of one line."""

    def entry(change):
        return lambda line: change(line["entry"])

    def act(entry):
        return next(iter(entry["body"]["act"].values()))

    return {
        "no digest": lambda line: line.pop("digest"),
        "short digest": lambda line: line.update(digest="ab"),
        "a field too many": entry(lambda e: e.update(extra=1)),
        "no name": entry(lambda e: e.pop("id")),
        "a name that is none": entry(lambda e: e.update(rig="wren")),
        "no such time": entry(lambda e: e.update(at="yesterday")),
        "no such kind": entry(lambda e: e.update(kind="hover")),
        "a newer version": entry(lambda e: e.update(version=99)),
        "another kind than its act": entry(lambda e: e.update(kind="pause")),
        "a number as text": entry(lambda e: e.update(seq="7")),
        "a negative number": entry(lambda e: e.update(seq=-1)),
        "no unit": entry(lambda e: act(e)["volts"].pop("unit")),
        "no such unit": entry(lambda e: act(e)["volts"].update(unit="volts")),
        "a float": entry(lambda e: act(e)["volts"].update(value=0.3)),
        "no such supply": entry(lambda e: act(e)["check"].update(supply="three_phase")),
    }


@pytest.mark.parametrize("fault", planted())
def test_the_schema_rejects_a_planted_fault(sample, schema, fault):
    lines = map(json.loads, (sample / "lines.jsonl").read_text().splitlines())
    line = next(line for line in lines if "read" in line["entry"]["body"]["act"])
    schema.validate(line)
    broken = copy.deepcopy(line)
    planted()[fault](broken)
    assert not schema.is_valid(broken)


def test_lines_go_into_an_empty_logbook_and_come_out_the_same(sample, tmp_path):
    lines = sample / "lines.jsonl"
    baywalk(tmp_path / "store", "import", lines)
    baywalk(tmp_path / "store", "export", "--to", tmp_path / "again.jsonl", "--csv", tmp_path / "csv")
    assert (tmp_path / "again.jsonl").read_bytes() == lines.read_bytes()
    for name in ROWS:
        again, first = tmp_path / "csv" / f"{name}.csv", sample / "csv" / f"{name}.csv"
        assert again.read_bytes() == first.read_bytes(), name
    said = baywalk(tmp_path / "store", "import", lines, fails=True)
    assert "can't be joined" in said
    said = baywalk(tmp_path / "store", "export", "--csv", tmp_path / "csv", fails=True)
    assert "not written over" in said


def test_a_line_edited_by_hand_is_refused_with_its_line_and_field(sample, tmp_path):
    text = (sample / "lines.jsonl").read_text()
    for number, (was, now, told) in enumerate([
        ('"unit":"lbf.in"', '"unit":"lbf.inch"', "lbf.inch"),
        ('"kind":"start"', '"kind":"start","lid":1', "lid"),
        ('"person":"Tove', '"person":"Tova', "belongs to its bytes"),
    ]):
        line = next(n for n, line in enumerate(text.splitlines(), 1) if was in line)
        (tmp_path / "edited.jsonl").write_text(text.replace(was, now, 1))
        said = baywalk(tmp_path / f"store{number}", "import", tmp_path / "edited.jsonl", fails=True)
        assert f"Line {line} " in said and told in said, said


def test_a_byte_mark_or_foreign_line_ends_are_refused(sample, tmp_path):
    raw = (sample / "lines.jsonl").read_bytes()
    for name, text in {"mark": b"\xef\xbb\xbf" + raw, "ends": raw.replace(b"\n", b"\r\n"), "empty": b""}.items():
        (tmp_path / name).write_bytes(text)
        assert "Line 1 " in baywalk(tmp_path / f"store-{name}", "import", tmp_path / name, fails=True)


def test_tables_of_many_years_are_read(many):
    baywalk(many / "store", "export", "--csv", many / "csv")
    lives = rows(many / "csv" / "lives.csv")
    assert len(lives) > 200
    for life in lives:
        assert float(life["held_months"] or 0) < float(life["moved_months"] or "inf")
    buffer = io.StringIO((many / "csv" / "walks.csv").read_text())
    assert [row["started"][:4] for row in csv.DictReader(buffer)] == [str(year) for year in range(2027, 2036)]
