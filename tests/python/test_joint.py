"""`calc joint`, `calc heat-rise` and `calc bank` against Ohm's law, pint and published tables."""

import jsonschema
import numpy as np
import pint
import pytest

UNITS = pint.UnitRegistry()


@pytest.mark.parametrize(("amperes", "milliohms", "watts"), [(50, 1, 2.5), (100, 0.5, 5), (200, 1, 40), (30, 10, 9)])
def test_heat_of_a_joint(calc, amperes, milliohms, watts):
    """P = I²R (computed)."""
    drop = (UNITS.Quantity(amperes, "A") * UNITS.Quantity(milliohms, "mohm")).to("mV").magnitude
    [joint] = calc("joint", joints=[{"millivolts": drop, "amperes": amperes}])["joints"]
    assert joint["micro_ohms"] == pytest.approx(milliohms * 1000)
    assert joint["watts"] == pytest.approx(watts)
    assert joint["like"] is None and joint["wire"] is None


def test_a_random_row_of_joints_by_ohms_law(calc):
    rng = np.random.default_rng(6)
    ohms, amps = rng.uniform(20e-6, 2e-3, 200), rng.uniform(1, 200, 200)
    error = rng.uniform(0, 0.2, 200)
    given = [
        {"millivolts": r * i * 1e3, "amperes": i, "error_millivolts": e} for r, i, e in zip(ohms, amps, error)
    ]
    found = calc("joint", joints=given, wire={"metres": 0.1, "ohm_per_metre": 0.00161})["joints"]
    for r, i, e, one in zip(ohms, amps, error, found, strict=True):
        assert one["micro_ohms"] == pytest.approx(r * 1e6)
        assert one["watts"] == pytest.approx(r * i * i)
        assert one["least_micro_ohms"] == pytest.approx(max(0, r * 1e6 - e * 1e3 / i))
        assert one["most_micro_ohms"] == pytest.approx(r * 1e6 + e * 1e3 / i)
        assert one["like"]["ratio"] == pytest.approx(r / ohms.min())
        # More than 50 % above the lowest is investigated (NETA, from memory).
        assert one["like"]["investigate"] == (r > 1.5 * ohms.min())
        assert one["wire"]["ratio"] == pytest.approx(r / 161e-6)
        assert one["wire"]["above"] == (r > 161e-6)


def test_the_wire_of_the_wire_calculation(calc):
    """6 AWG stranded copper: 0.491 Ω in 1,000 ft at 75 °C (NEC chapter 9 table 8, second hand)."""
    wire = calc("wire", size="6 AWG", celsius=75)
    given = {"metres": 0.3048, "ohm_per_metre": wire["ohm_per_metre"]}
    [joint] = calc("joint", joints=[{"millivolts": 10, "amperes": 20}], wire=given)["joints"]
    assert joint["wire"]["micro_ohms"] == pytest.approx(491, rel=0.005)


@pytest.mark.parametrize("joints", ["[]", '[{"millivolts": 1, "amperes": 0.1}]', '[{"millivolts": 0, "amperes": 9}, {"millivolts": 1, "amperes": 9}]'])
def test_what_says_nothing_of_a_joint_is_refused(refused, joints):
    assert "joint" in refused("joint", f'{{"joints": {joints}}}')


# NETA table 100.18 (second hand), whole degrees as printed.
SIMILAR = {"possible": (1, 3), "probable": (4, 15), "major": (16, 90)}
AMBIENT = {"possible": (1, 10), "probable": (11, 20), "monitor": (21, 40), "major": (41, 90)}


@pytest.mark.parametrize(("compared", "rows"), [("similar", SIMILAR), ("ambient", AMBIENT)])
def test_every_whole_degree_of_the_table(calc, compared, rows):
    for name, (least, most) in rows.items():
        for kelvin in range(least, most + 1):
            found = calc("heat-rise", rise=kelvin, compared=compared, surface="covered")
            assert found["class"] == name, kelvin
            assert found["normal"] is None and "load_unknown" in found["cautions"]


def test_a_rise_at_normal_load_is_a_range(calc):
    """10 °C at 30 A: 22.64 (n = 1.6) to 27.78 °C (n = 2) at 50 A (computed)."""
    load = {"now": 30, "normal": 50}
    found = calc("heat-rise", rise=10, compared="similar", surface="bare_metal", load=load)
    assert found["normal"]["least"] == pytest.approx(22.64, abs=0.005)
    assert found["normal"]["most"] == pytest.approx(27.78, abs=0.005)
    assert (found["class"], found["normal"]["most_class"]) == ("probable", "major")
    assert {"bare_metal_reads_low", "not_constant", "no_trip"} <= set(found["cautions"])


def test_below_forty_percent_of_load_it_is_refused(refused):
    given = '{"rise": 5, "compared": "similar", "surface": "covered", "load": {"now": 19, "normal": 50}}'
    assert "0.38 of normal load" in refused("heat-rise", given)


@pytest.mark.parametrize(
    ("rest", "load", "findings"),
    [
        (12.8, None, []), (-12.8, None, ["reversed"]), (0.0, None, ["no_voltage"]), (16.0, None, ["high"]),
        (11.0, None, ["low"]), (12.8, (12.7, 50), []), (12.8, (12.2, 50), ["drop"]),
        (12.8, (11.0, 50), ["large_drop"]), (12.8, (13.4, 50), ["rises"]),
    ],
)
def test_a_bank(calc, rest, load, findings):
    """3 % and 10 % of 12 V: 0.36 and 1.2 V (ABYC E-11, from memory)."""
    given = {"nominal": "12V", "rest": rest, "error": 0.01}
    if load:
        given["load"] = {"volts": load[0], "amperes": load[1]}
    found = calc("bank", **given)
    assert found["findings"] == findings
    if load and rest > load[0]:
        least, most = found["ohms"]
        assert least <= (rest - load[0]) / load[1] <= most


@pytest.mark.parametrize("name", ["joint", "heat-rise", "bank"])
def test_the_shapes_are_told(schemas, name):
    for schema in (schemas(name)["input"], schemas(name)["output"]):
        jsonschema.Draft202012Validator.check_schema(schema)
