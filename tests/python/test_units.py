"""Unit factors and conversions against pint and scipy.constants (both exact by definition)."""

import pint
import pytest
from scipy import constants

UNITS = pint.UnitRegistry()
PINT = {
    "N.m": UNITS.newton * UNITS.meter,
    "lbf.in": UNITS.force_pound * UNITS.inch,
    "lbf.ft": UNITS.force_pound * UNITS.foot,
    "kgf.cm": UNITS.force_kilogram * UNITS.centimeter,
}
SCIPY = {
    "N.m": 1.0,
    "lbf.in": constants.pound_force * constants.inch,
    "lbf.ft": constants.pound_force * constants.foot,
    "kgf.cm": constants.kilogram_force * constants.centi,
}
NUMBERS = ["1", "4.5", "20", "45", "62.5", "99.99"]


def of_maker(calc, number, unit):
    maker = {"torque": f"{number} {unit}", "basis": "label", "source": "label"}
    return calc("torque", fastening="stud", maker=maker)["target"]["torque"]


@pytest.mark.parametrize("unit", SCIPY)
@pytest.mark.parametrize("number", NUMBERS)
def test_torque_in_newton_metres_by_scipy_constants(calc, number, unit):
    found = of_maker(calc, number, unit)
    assert found["newton_metres"] == pytest.approx(float(number) * SCIPY[unit], rel=1e-12)


@pytest.mark.parametrize("unit", PINT)
@pytest.mark.parametrize("number", NUMBERS)
def test_torque_in_newton_metres_by_pint(calc, number, unit):
    wanted = (float(number) * PINT[unit]).to("newton * meter").magnitude
    assert of_maker(calc, number, unit)["newton_metres"] == pytest.approx(wanted, rel=1e-12)


@pytest.mark.parametrize("number", ["45", "45.0", "4,50", "007.5"])
def test_typed_text_comes_back_verbatim(calc, number):
    assert of_maker(calc, number, "lbf.in")["text"] == number


@pytest.mark.parametrize("unit", ["lbf.in", "lbf.ft", "kgf.cm", "N.m"])
@pytest.mark.parametrize("tool_unit", ["lbf.in", "N.m"])
def test_a_setting_in_another_unit_is_the_step_below(calc, unit, tool_unit):
    """The setting is the step at or below the torque as pint converts it, and within one step."""
    step = {"N.m": "0.1", "lbf.in": "1"}[tool_unit]
    tool = {
        "code": "T1",
        "kind": "click_wrench",
        "least": f"1 {tool_unit}",
        "most": f"500 {tool_unit}",
        "step": f"{step} {tool_unit}",
    }
    found = calc("tool-setting", torque=f"31 {unit}", tools=[tool])["fit"][0]["setting"]
    wanted = (31 * PINT[unit]).to(PINT[tool_unit]).magnitude
    assert found["unit"] == tool_unit
    assert -1e-9 <= wanted - found["value"] < float(step) + 1e-9
