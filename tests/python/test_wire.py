"""Conductors against ASTM B258 (formula second hand), NEC chapter 9 table 8 and IEC 60228 (second
hand), and resistivity of annealed copper (IEC 60028, second hand)."""

import math

import pint
import pytest
from scipy import constants

UNITS = pint.UnitRegistry()
GAUGES = {f"{number} AWG": number for number in range(1, 37)} | {f"{n}/0 AWG": 1 - n for n in range(1, 5)}


@pytest.mark.parametrize(("size", "number"), GAUGES.items())
def test_gauges_by_astm_b258_second_hand(calc, size, number):
    found = calc("wire", size=size)
    inches = 0.005 * 92 ** ((36 - number) / 39)
    assert found["diameter_mm"] == pytest.approx(inches * constants.inch * 1000, rel=1e-12)
    assert found["circular_mils"] == pytest.approx((inches * 1000) ** 2, rel=1e-12)
    assert found["area_mm2"] == pytest.approx(math.pi / 4 * (inches * 25.4) ** 2, rel=1e-12)


@pytest.mark.parametrize("thousands", [250, 350, 500, 1000])
def test_circular_mils_by_pint(calc, thousands):
    wanted = (thousands * 1000 * UNITS.circular_mil).to("millimeter ** 2").magnitude
    assert calc("wire", size=f"{thousands} kcmil")["area_mm2"] == pytest.approx(wanted, rel=1e-9)


# NEC chapter 9 table 8, stranded uncoated copper at 75 degrees, ohm per 1000 ft: second hand.
TABLE_8 = {"18 AWG": 7.95, "14 AWG": 3.14, "12 AWG": 1.98, "10 AWG": 1.24, "8 AWG": 0.778, "6 AWG": 0.491, "4 AWG": 0.308, "2 AWG": 0.194, "1/0 AWG": 0.122, "2/0 AWG": 0.0967, "4/0 AWG": 0.0608}


@pytest.mark.parametrize(("size", "ohms"), TABLE_8.items())
def test_nec_table_8_second_hand(calc, size, ohms):
    found = calc("wire", size=size, celsius=75)
    assert found["ohm_per_thousand_feet"] == pytest.approx(ohms, rel=1e-12)
    assert found["ohm_per_metre"] == pytest.approx(ohms / (1000 * constants.foot), rel=1e-12)


@pytest.mark.parametrize("size", TABLE_8)
def test_nec_table_8_by_resistivity_within_4_percent(calc, size):
    """Copper of 100 % IACS at 75 degrees and 2 % for stranding, within the rounding of the table."""
    found = calc("wire", size=size, celsius=75)
    ohms = 17.241e-9 * (1 + 0.00393 * 55) / (found["area_mm2"] * 1e-6) * 1.02
    assert found["ohm_per_metre"] == pytest.approx(ohms, rel=0.04)


# IEC 60228, ohm per km at 20 degrees, class 2 and class 5 copper: second hand.
IEC = {"1.5 mm2": (12.1, 13.3), "2.5 mm2": (7.41, 7.98), "6 mm2": (3.08, 3.30), "16 mm2": (1.15, 1.21), "35 mm2": (0.524, 0.554), "50 mm2": (0.387, 0.386), "120 mm2": (0.153, 0.161)}


@pytest.mark.parametrize(("size", "ohms"), IEC.items())
def test_iec_60228_second_hand(calc, size, ohms):
    for strands, published in zip(("stranded", "fine"), ohms):
        found = calc("wire", size=size, strands=strands, celsius=20)
        assert found["ohm_per_kilometre"] == pytest.approx(published, rel=1e-12)


@pytest.mark.parametrize("celsius", [-40, 0, 20, 50, 75, 90, 150])
@pytest.mark.parametrize(("material", "alpha"), [("copper", 0.00393), ("aluminium", 0.00403)])
def test_temperature_by_iec_60028_second_hand(calc, celsius, material, alpha):
    at_20 = calc("wire", size="2 AWG", material=material, celsius=20)["ohm_per_metre"]
    found = calc("wire", size="2 AWG", material=material, celsius=celsius)["ohm_per_metre"]
    assert found / at_20 == pytest.approx(1 + alpha * (celsius - 20), rel=1e-12)
