"""`calc due`, `calc forecast` and the calendar file against dateutil, numpy and icalendar."""

import datetime as dt
import subprocess
from random import Random

import numpy as np
import pytest
from dateutil.relativedelta import relativedelta

from conftest import BAYWALK

MILE = 1.609344


def day(text):
    return dt.date.fromisoformat(text)


@pytest.mark.parametrize("seed", range(40))
def test_months_by_dateutil(calc, seed):
    """Civil months, ends of months and leap days as dateutil counts them."""
    random = Random(seed)
    last = dt.date(2024, 1, 1) + dt.timedelta(random.randrange(3650))
    last = random.choice([last, dt.date(2028, 2, 29), dt.date(2027, 1, 31), dt.date(2027, 12, 31)])
    months = random.randint(1, 12)
    found = calc("due", today=str(last), months=months, last={"on": str(last)})
    assert day(found["on"]) == last + relativedelta(months=months)
    longer = {"months": 18, "word": "it stands in a hall"}
    found = calc("due", today=str(last), months=months, last={"on": str(last)}, rule=longer)
    assert day(found["on"]) == last + relativedelta(months=18)


@pytest.mark.parametrize("seed", range(20))
def test_whichever_comes_first(calc, seed):
    """Steady driving: the day of a distance by arithmetic, against the months."""
    random = Random(seed)
    last, pace, limit = dt.date(2027, 3, 20), random.randint(5, 40), random.choice([3000, 5000, 9000])
    days = random.randint(30, 200)
    notes = [{"on": str(last + dt.timedelta(n)), "odometer": f"{40000 + pace * n} mi"} for n in (0, days)]
    found = calc("due", today=str(last), months=12, distance=f"{limit} mi", last=notes[0], notes=notes)
    by_road = last + dt.timedelta(-(-limit // pace))
    by_months = last + relativedelta(years=1)
    # The notes may already be beyond the limit, or a whole day away from it by rounding.
    assert abs((day(found["on"]) - min(by_road, by_months)).days) <= 1
    assert found["reason"] == ("distance" if by_road < by_months else "months")
    assert found["at_odometer"] == f"{40000 + limit} mi"


def test_what_is_put_off_and_what_happened(calc):
    given = {"today": "2028-01-01", "months": 12, "last": {"on": "2027-03-20"}}
    put = calc("due", **given, put_off={"on": "2028-03-21", "until": "2028-04-30"})
    assert (put["on"], put["put_off_from"]) == ("2028-04-30", "2028-03-20")
    learned = calc("due", **given, learned="2027-11-02")
    assert (learned["on"], learned["reason"]) == ("2027-11-02", "learned")
    assert calc("due", **given, learned="2029-11-02")["reason"] == "months"
    hit = calc("due", **given, events=[{"on": "2027-06-01", "event": "hard_impact"}])
    assert hit["events"] == [{"on": "2027-06-01", "reason": "hard_impact"}]


def test_a_rule_beyond_a_year_needs_a_word(refused):
    text = '{"today": "2028-01-01", "months": 12, "last": {"on": "2027-03-20"}, "rule": {"months": 18}}'
    assert refused("due", text).strip().endswith(".")


@pytest.mark.parametrize("seed", range(30))
def test_a_steady_pace_by_least_squares(calc, seed):
    """Notes about a steady pace: numpy's line through them tells the same day within the range."""
    rng = np.random.default_rng(seed)
    days = np.unique(np.concatenate([[0], np.sort(rng.integers(1, 330, 12))]))
    km = np.maximum.accumulate(50 * days + rng.normal(0, 60, len(days)).clip(-100, 100)) + 20000
    notes = [
        {"on": str(dt.date(2027, 1, 1) + dt.timedelta(int(d))), "reading": f"{k:.0f} km"} for d, k in zip(days, km)
    ]
    found = calc("forecast", odometer=notes, further="3000 km")
    slope, _ = np.polyfit(days, km, 1)
    assert found["per_day"] == pytest.approx(slope, rel=0.1)
    reached = day(notes[-1]["on"]) + dt.timedelta(int(3000 / slope))
    assert day(found["from"]) <= reached <= day(found["to"])
    assert day(found["from"]) <= day(found["on"]) <= day(found["to"])


def test_trips_hours_and_a_replaced_odometer(calc):
    trips = [{"on": f"2027-0{m}-01", "reading": "310 km"} for m in range(1, 8)]
    found = calc("forecast", trips=trips, further="620 km")
    assert abs((day(found["on"]) - dt.date(2027, 9, 1)).days) <= 5
    hours = [{"on": "2027-01-01", "reading": "400 h"}, {"on": "2027-04-11", "reading": "500 h"}]
    assert calc("forecast", hours=hours, further="20 h")["on"] == "2027-05-01"
    replaced = [
        {"on": "2027-01-01", "reading": "90000 km"}, {"on": "2027-02-10", "reading": "92000 km"},
        {"on": "2027-02-10", "reading": "0 km", "restart": "replaced"}, {"on": "2027-03-22", "reading": "2000 km"},
    ]
    found = calc("forecast", odometer=replaced, further="500 km")
    assert (found["gone"], found["on"]) == (4000, "2027-04-01")


def run(store, *words):
    done = subprocess.run([BAYWALK, "--language", "en", "--store", store, *words], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_the_calendar_file_by_icalendar_and_dateutil(tmp_path):
    """RFC 5545: all-day events, stable names, a sequence that grows, alarms before and on the day."""
    from icalendar import Calendar

    store, out = str(tmp_path / "store"), tmp_path / "walks.ics"
    run(store, "rig", "start", "sample-motorhome", "Wren; the old, \\ long one" + " north" * 12)
    run(store, "rule", "set", "about=battery_post", "months=3", "distance=900 mi")

    def events():
        out.unlink(missing_ok=True)
        run(store, "calendar", str(out))
        text = out.read_bytes()
        assert all(len(line) <= 75 for line in text.split(b"\r\n")), "folded"
        assert b"\n" not in text.replace(b"\r\n", b""), "CRLF alone"
        calendar = Calendar.from_ical(text)
        assert calendar["VERSION"] == "2.0" and "Wren; the old, \\ long one" in calendar["NAME"]
        return {str(event["UID"]): event for event in calendar.walk("VEVENT")}

    before = events()
    assert len(before) == 2
    for event in before.values():
        start = event["DTSTART"].dt
        assert type(start) is dt.date and event["DTSTART"].params["VALUE"] == "DATE"
        rings = sorted(dt.datetime.combine(start, dt.time()) + a["TRIGGER"].dt for a in event.walk("VALARM"))
        morning = dt.datetime.combine(start, dt.time(9))
        assert rings == [morning - relativedelta(days=14), morning]
        assert "DTSTAMP" in event and event["SUMMARY"].startswith("Wren; the old, \\ long")
    run(store, "due", "put-off", "1", str(dt.date.today() + dt.timedelta(30)), "snow, ice")
    after = events()
    assert set(after) == set(before), "the same names"
    assert all(after[uid]["SEQUENCE"] > before[uid]["SEQUENCE"] for uid in before)
    assert {uid for uid in after if after[uid]["DTSTART"].dt != before[uid]["DTSTART"].dt}
    again = events()
    assert all(again[uid]["SEQUENCE"] == after[uid]["SEQUENCE"] for uid in after), "nothing moved"
    assert all(event["STATUS"] == "CONFIRMED" for event in again.values())
    # What is asked no longer is called off under its name (3.8.1.11), with a higher sequence and no alarm.
    run(store, "rule", "drop", "1")
    called_off = events()
    assert set(called_off) == set(before)
    (gone,) = [uid for uid, event in called_off.items() if event["STATUS"] == "CANCELLED"]
    assert called_off[gone]["SEQUENCE"] > again[gone]["SEQUENCE"]
    assert called_off[gone]["DTSTART"].dt == again[gone]["DTSTART"].dt
    assert not called_off[gone].walk("VALARM")
    # Without what a phone may lose, and told once more, it says the same.
    other = str(tmp_path / "restored")
    run(store, "backup", str(tmp_path / "all.zip"))
    run(other, "restore", str(tmp_path / "all.zip"))
    store = other
    told_again = events()
    statuses = {uid: (str(event["STATUS"]), int(event["SEQUENCE"])) for uid, event in told_again.items()}
    assert statuses == {uid: (str(event["STATUS"]), int(event["SEQUENCE"])) for uid, event in called_off.items()}
