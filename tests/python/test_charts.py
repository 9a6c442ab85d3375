"""Charts: read by an XML parser, their numbers against lifelines and scipy.

Steps: the product limit (Kaplan and Meier 1958), by lifelines. Laws: Weibull by lifelines and scipy, fitted anew to `lives.csv`.
"""

import subprocess
import warnings
import xml.etree.ElementTree as tree

import numpy as np
import pytest
from lifelines import KaplanMeierFitter, WeibullFitter
from scipy.stats import beta

from conftest import BAYWALK
from test_tables import baywalk, many, rows  # noqa: F401
from years import SCALE, SHAPE

SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def kinds(many):
    baywalk(many / "store", "export", "--csv", many / "tables")
    baywalk(many / "store", "chart", "kinds", "--to", many / "kinds.svg", "--numbers", many / "kinds.csv")
    return rows(many / "tables" / "lives.csv"), rows(many / "kinds.csv")


def intervals(lives, kind):
    lives = [life for life in lives if life["fastening"] == kind]
    after = np.array([float(life["held_months"] or 0) for life in lives])
    by = np.array([float(life["moved_months"] or "inf") for life in lives])
    return after, by


def test_counts_and_proportions_by_scipy(kinds):
    lives, numbers = kinds
    whole = [row for row in numbers if row["share"]]
    assert len(whole) == len({row["fastening"] if "fastening" in row else row["kind"] for row in whole})
    for row in whole:
        after, by = intervals(lives, row["kind"])
        n, k = len(after), int(np.isfinite(by).sum())
        assert (int(row["joints"]), int(row["moved"])) == (n, k)
        least = 0.0 if k == 0 else beta.ppf(0.05, k, n - k + 1)
        most = 1.0 if k == n else beta.ppf(0.95, k + 1, n - k)
        assert (float(row["share_least"]), float(row["share_most"])) == pytest.approx((least, most), abs=2e-6)


def test_a_law_stands_only_where_five_have_moved(kinds):
    _, numbers = kinds
    lawful = {row["kind"] for row in numbers if row["law"]}
    assert lawful == {row["kind"] for row in numbers if row["share"] and int(row["moved"]) >= 5}
    assert len(lawful) > 3


def test_steps_by_lifelines(kinds):
    """All are checked on the same days of each year, so that the estimate is the product limit of those days."""
    lives, numbers = kinds
    after, by = intervals(lives, "pressure_screw")
    moved = np.isfinite(by)
    fitter = KaplanMeierFitter().fit(np.where(moved, by, after), moved)
    days = np.unique(by[moved])
    compared = 0
    for row in (row for row in numbers if row["kind"] == "pressure_screw" and row["months"]):
        age = float(row["months"])
        # On the very day it can be told on either side.
        if age == 0 or np.min(np.abs(days - age)) < 0.01:
            continue
        least = 1 - fitter.predict(age)
        later = days[days > age]
        most = 1 - fitter.predict(later[0]) if len(later) else least
        assert float(row["steps_least"]) == pytest.approx(least, abs=2e-6), age
        assert float(row["steps_most"]) == pytest.approx(most, abs=2e-6), age
        compared += 1
    assert compared > 30


def test_the_curve_by_lifelines_and_by_the_law_that_made_the_lives(kinds):
    """Kinds are fitted together with weak beliefs, so that the curve is near the most likely one, not on it."""
    lives, numbers = kinds
    after, by = intervals(lives, "pressure_screw")
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        law = WeibullFitter().fit_interval_censoring(np.maximum(after, 1e-9), by)
    curve = [row for row in numbers if row["kind"] == "pressure_screw" and row["law"]][1:]
    ages, share, least, most = (
        np.array([float(row[name]) for row in curve]) for name in ("months", "law", "law_least", "law_most")
    )
    fitted = 1 - law.survival_function_at_times(ages).to_numpy()
    assert np.all((least <= fitted) & (fitted <= most)) and np.max(np.abs(fitted - share)) < 0.12
    made = -np.expm1(-((ages / SCALE) ** SHAPE))
    assert np.mean((least <= made) & (made <= most)) > 0.8 and np.max(np.abs(made - share)) < 0.2
    assert np.all(np.diff(share) > 0) and np.all((least <= share) & (share <= most))


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("chart", [["kinds"], ["minutes"], ["volts"], ["point", "F8"], ["point", "D1"]])
def test_each_chart_is_xml_with_its_words_inside(many, tmp_path, language, chart):
    path = tmp_path / "chart.svg"
    command = [BAYWALK, "--language", language, "--store", many / "store", "chart", *chart, "--to", path]
    said = subprocess.run(command, capture_output=True, text=True, timeout=60, check=True).stdout
    root = tree.parse(path).getroot()
    title, told = root.find(f"{SVG}title").text, root.find(f"{SVG}desc").text
    assert title in said and told in said.replace("\n", " ")
    assert root.get("{http://www.w3.org/XML/1998/namespace}lang") == language
    texts = [text.text for text in root.iter(f"{SVG}text")]
    assert texts and all(texts)
    assert not list(root.iter(f"{SVG}script")) and "href" not in path.read_text()
    colours = {part.get(name) for part in root.iter() for name in ("fill", "stroke")} - {None, "none"}
    assert colours <= {"#11151a", "#394148", "#7c868c", "#ffffff"}


def test_the_median_of_minutes_and_the_volts_by_numpy(many, tmp_path):
    baywalk(many / "store", "chart", "minutes", "--numbers", tmp_path / "minutes.csv")
    baywalk(many / "store", "chart", "volts", "--numbers", tmp_path / "volts.csv")
    minutes = rows(tmp_path / "minutes.csv")
    last = [float(row["minutes"]) for row in minutes if row["day"].startswith("2035")]
    said = baywalk(many / "store", "past")
    assert f"for {round(sum(last))} minutes in all" in said
    volts = [float(row["volts"]) for row in rows(tmp_path / "volts.csv") if row["reading"] == "leg_1"]
    assert len(volts) == 9 and f"{volts[-1]:.1f} V in" in said
