"""Advice, tool settings and bolts against published tables and independent arithmetic.

Tables of NEC Annex I (UL 486A-B column B) are known second hand; SAE J429 and ISO 898-1 proof
stresses and the stress area formulas are from memory.
"""

import math

import jsonschema
import pytest
from scipy import constants

# NEC Annex I table I.3, across flats in inches to lbf.in: second hand.
SOCKETS = {"1/8": 45, "5/32": 100, "3/16": 120, "7/32": 150, "1/4": 200, "5/16": 275, "3/8": 375, "1/2": 500, "9/16": 600}
# NEC Annex I table I.1, hexagon heads other than split bolts, lbf.in: second hand.
HEXAGONS = {"10 AWG": 75, "8 AWG": 75, "6 AWG": 110, "4 AWG": 110, "3 AWG": 150, "2 AWG": 150, "1 AWG": 150, "1/0 AWG": 180, "2/0 AWG": 180, "3/0 AWG": 250, "4/0 AWG": 250, "250 kcmil": 325, "350 kcmil": 325, "400 kcmil": 325, "500 kcmil": 375}


@pytest.mark.parametrize(("across", "torque"), SOCKETS.items())
def test_sockets_by_table_i_3_second_hand(calc, across, torque):
    found = calc("torque", fastening="pressure_screw", drives=[{"kind": "square", "across": f"{across} in"}])
    assert found["target"]["torque"]["text"] == str(torque)
    assert found["target"]["basis"]["table"]["head"]["known"] == "second_hand"
    assert found["check"]["value"] == pytest.approx(0.8 * torque, abs=1e-12)


@pytest.mark.parametrize(("size", "torque"), HEXAGONS.items())
def test_hexagons_by_table_i_1_second_hand(calc, size, torque):
    found = calc("torque", fastening="pressure_screw", wire={"size": size}, drives=[{"kind": "hex"}])
    assert found["target"]["torque"]["text"] == str(torque)


@pytest.mark.parametrize("kind", ["battery_post", "board_screw", "device_screw", "block_screw", "stud"])
def test_no_number_without_the_maker_rule_of_this_project(calc, kind):
    found = calc(
        "torque",
        fastening=kind,
        thread="5/16-18",
        grade="sae5",
        wire={"size": "6 AWG"},
        drives=[{"kind": "hex"}],
    )
    assert (found["action"], found["target"], found["check"]) == ("ask_maker", None, None)
    assert "maker_torque" in found["missing"]


# L/(L + E cos) by statics; T, L, E, degrees, setting as worked out by hand.
ADAPTERS = [(25, 10, 1.5, 0, 21.739), (25, 10, 1.5, 45, 22.603), (25, 10, 1.5, 90, 25.0), (35, 9, 1.25, 0, 30.732)]


@pytest.mark.parametrize(("torque", "lever", "length", "degrees", "setting"), ADAPTERS)
def test_adapters_by_statics(calc, torque, lever, length, degrees, setting):
    adapter = {"lever": f"{lever} in", "length": f"{length} in", "degrees": degrees}
    found = calc("tool-setting", torque=f"{torque} lbf.in", adapter=adapter)["at_tool"]
    assert found == pytest.approx(setting, abs=6e-4)
    exact = torque * lever / (lever + length * math.cos(math.radians(degrees)))
    assert found == pytest.approx(exact, rel=1e-12)


def area_mm2(thread):
    """ASME B1.1 and ISO 898-1 stress areas, from memory."""
    if thread.startswith("M"):
        diameter, pitch = (float(part) for part in thread[1:].split("x"))
        return math.pi / 4 * (diameter - 0.938194 * pitch) ** 2
    size, per_inch = thread.split("-")
    if size.startswith("#"):
        inches = 0.060 + 0.013 * int(size[1:])
    else:
        over, under = size.split("/")
        inches = int(over) / int(under)
    return math.pi / 4 * (inches - 0.9743 / float(per_inch)) ** 2 * 645.16


PROOF_MPA = {
    "sae2": 55e3 * constants.psi / 1e6,
    "sae5": 85e3 * constants.psi / 1e6,
    "sae8": 120e3 * constants.psi / 1e6,
    "iso4.6": 225,
    "iso8.8": 580,
    "iso10.9": 830,
}


@pytest.mark.parametrize("thread", ["#10-32", "1/4-20", "3/8-16", "1/2-13", "M5x0.8", "M8x1.25", "M12x1.75"])
@pytest.mark.parametrize("grade", PROOF_MPA)
def test_bolts_by_the_textbook_form_from_memory(calc, thread, grade):
    found = calc("bolt", thread=thread, grade=grade)
    area = area_mm2(thread)
    preload = 0.75 * PROOF_MPA[grade] * area
    assert found["stress_area_mm2"] == pytest.approx(area, rel=1e-9)
    assert found["preload_newtons"] == pytest.approx(preload, rel=1e-9)
    torque = 0.2 * found["diameter_mm"] / 1000 * preload
    assert found["torque_newton_metres"] == pytest.approx(torque, rel=1e-9)


# A published table of a DC power plant, grade 2, head-tightened, lbf.in: second hand.
PLANT = {"#8-32": 19, "#10-24": 27, "1/4-20": 65, "5/16-18": 135, "3/8-16": 240, "7/16-14": 385, "1/2-13": 585}


@pytest.mark.parametrize(("thread", "published"), PLANT.items())
def test_a_published_stud_row_within_2_percent_second_hand(calc, thread, published):
    assert calc("bolt", thread=thread, grade="sae2")["torque_inch_pounds"] == pytest.approx(published, rel=0.02)


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("torque", "not json"),
        ("torque", '{"fastening": "nail"}'),
        ("torque", '{"fastening": "stud", "thread": "M0"}'),
        ("torque", '{"fastening": "stud", "size": 1}'),
        ("torque", '{"fastening": "stud", "maker": {"torque": "-1 N.m", "basis": "label", "source": ""}}'),
        ("tool-setting", '{"torque": "0 N.m"}'),
        ("tool-setting", '{"torque": "NaN N.m"}'),
        ("tool-setting", '{"torque": "1e9 N.m"}'),
        ("tool-setting", '{"torque": "45 lbf"}'),
        ("bolt", '{"thread": "M8", "grade": "brass"}'),
        ("bolt", '{"thread": "1/4", "grade": "sae5"}'),
        ("wire", '{"size": "6"}'),
        ("wire", '{"size": "6 AWG", "celsius": 1000}'),
        ("wire", '{"size": "6 AWG", "celsius": NaN}'),
        ("no-such", "{}"),
    ],
)
def test_bad_input_is_refused_in_a_sentence(refused, name, text):
    sentence = refused(name, text).strip()
    assert sentence.endswith(".") and len(sentence) > 20


GIVEN = {
    "torque": {"fastening": "pressure_screw", "wire": {"size": "6 AWG"}, "drives": [{"kind": "hex"}]},
    "tool-setting": {"torque": "45 lbf.in"},
    "bolt": {"thread": "M8", "grade": "iso8.8"},
    "wire": {"size": "6 AWG"},
}


@pytest.mark.parametrize(("name", "given"), GIVEN.items())
def test_what_goes_in_and_comes_out_fits_its_schema(calc, schemas, name, given):
    both = schemas(name)
    for schema in ("input", "output"):
        jsonschema.Draft202012Validator.check_schema(both[schema])
    jsonschema.validate(given, both["input"])
    jsonschema.validate(calc(name, **given), both["output"])
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate({**given, "no_such_field": 1}, both["input"])
