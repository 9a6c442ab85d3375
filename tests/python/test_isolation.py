"""`calc isolation` against networkx: which sources reach which sets, on random rigs.

The graph is built here anew from the rules that docs/rig-files.md tells, and searched by a library.
"""

import itertools
import random

import networkx
import pytest

ONE_WAY = {"transfer_switch", "inverter", "converter", "solar_controller", "dc_link"}
LASTING = {"chassis_battery", "house_battery", "solar"}
KINDS = ["outlet", "disconnect", "busbar", "transfer_switch", "inverter", "solar_controller"]
SOURCES = ["shore", "generator", "inverter", "solar", "house_battery", "chassis_battery", "tow_link"]
WAYS = ["unplug", "switch", "lead_off", "never"]


def random_rig(seed):
    draw = random.Random(seed)
    sources = [
        {"code": f"S{n}", "kind": draw.choice(SOURCES), "isolation": draw.choice(WAYS)}
        for n in range(draw.randint(1, 4))
    ]
    devices = [
        {"code": f"D{n}", "kind": draw.choice(KINDS), "sets": ["in", "out"][: draw.randint(1, 2)]}
        for n in range(draw.randint(1, 6))
    ]
    places = [(device["code"], name) for device in devices for name in device["sets"]]
    wires = {
        place: draw.sample(
            [source["code"] for source in sources] + [f"{d}/{s}" for d, s in places], draw.randint(0, 2)
        )
        for place in places
    }
    for source in sources:
        if draw.random() < 0.4:
            source["opens"] = draw.choice([draw.choice(devices)["code"], "/".join(draw.choice(places))])
    away = [source["code"] for source in sources if draw.random() < 0.5]
    return sources, devices, wires, away


def written(sources, devices, wires):
    lines = ["format = 2", '[rig]\nname = "Wren"\nkind = "motorhome"\nservice = "none"', "[yearly]\nmonths = 12"]
    for source in sources:
        opens = f'opens = "{source["opens"]}"\n' if "opens" in source else ""
        lines.append(
            f'[[source]]\ncode = "{source["code"]}"\nname = "x"\nkind = "{source["kind"]}"\n'
            f'presence = "not_sure"\nsupply = "dc"\nisolation = "{source["isolation"]}"\n{opens}'
        )
    lines.append(
        '[[bay]]\ncode = "B"\nname = "bay"\nstation = 1\nside = "left"\nopen_minutes = 1\nclose_minutes = 1'
    )
    for device in devices:
        sets = ", ".join(
            f'{{ name = "{name}", system = "dc", from = {wires[device["code"], name]!r} }}'.replace("'", '"')
            for name in device["sets"]
        )
        lines.append(
            f'[[device]]\ncode = "{device["code"]}"\nname = "x"\nbay = "B"\nkind = "{device["kind"]}"\nsets = [{sets}]'
        )
    return "\n".join(lines)


def reach(sources, devices, wires, away, failed=False):
    """The sources that reach each set, by a search of a directed graph."""
    kinds = {device["code"]: device["kind"] for device in devices}
    edges = []
    for place, feeds in wires.items():
        for feed in (f for f in feeds if "/" in f):
            start = tuple(feed.split("/"))
            within = start[0] == place[0]
            edges.append((start, place, within))
            if failed or not (within and kinds[place[0]] in ONE_WAY):
                edges.append((place, start, within))
    gone = [s for s in sources if s["code"] in away and s["isolation"] != "never"]
    direct = {s["code"]: [p for p, feeds in wires.items() if s["code"] in feeds] for s in sources}

    def parted(start, end, within):
        for source in gone:
            opens = source.get("opens")
            if opens and within:
                device, _, name = opens.partition("/")
                if any(p[0] == device and (not name or p[1] == name) for p in (start, end)):
                    return True
            at_posts = opens is None or source["isolation"] != "switch"
            own = direct[source["code"]]
            if source["kind"] in LASTING and at_posts and ((start in own) != (end in own)):
                return True
        return False

    graph = networkx.DiGraph()
    graph.add_nodes_from(wires)
    graph.add_edges_from((a, b) for a, b, within in edges if not parted(a, b, within))
    found = {place: set() for place in wires}
    for source in sources:
        starts = []
        if source not in gone or source["kind"] in LASTING:
            starts += direct[source["code"]]
        if source not in gone:
            starts += [place for place, feeds in wires.items() if not feeds]
            if not direct[source["code"]]:
                starts += list(wires)
        for start in starts:
            for place in {start} | networkx.descendants(graph, start):
                found[place].add(source["code"])
    return found


@pytest.mark.parametrize("seed", range(60))
def test_what_reaches_what_equals_an_independent_search(calc, seed):
    sources, devices, wires, away = random_rig(seed)
    told = calc("isolation", rig=written(sources, devices, wires), away=away)
    everything = [source["code"] for source in sources]
    expected = {
        "fed_by": reach(sources, devices, wires, []),
        "still": reach(sources, devices, wires, away),
        "still_if_failed": reach(sources, devices, wires, away, failed=True),
        "stays": reach(sources, devices, wires, everything),
    }
    for one in told["sets"]:
        place = tuple(one["set"].split("/"))
        for field, by_place in expected.items():
            assert set(one[field]) == by_place[place], (seed, one["set"], field)
    assert sorted(told["take_away"]) == sorted(told["bring_back"]) == sorted(everything)


def test_the_order_keeps_solar_before_batteries_and_batteries_before_solar_on_the_way_back(calc):
    """Common practice, no source: panels open before the battery leaves them, and come back after it."""
    for seed in range(40):
        sources, devices, wires, _ = random_rig(seed)
        told = calc("isolation", rig=written(sources, devices, wires))
        kind = {source["code"]: source["kind"] for source in sources}
        for first, second in itertools.combinations(told["take_away"], 2):
            assert not (kind[first].endswith("battery") and not kind[second].endswith("battery"))
        for first, second in itertools.combinations(told["bring_back"], 2):
            assert not (kind[first] == "solar" and kind[second].endswith("battery"))


def test_every_pair_of_a_set_is_read_as_ac_then_dc(calc):
    """NFPA 70E 120.5 (second hand, as method): every two conductors; between sets line to line."""
    rig = written([], [{"code": "D0", "kind": "transfer_switch", "sets": ["in", "out"]}], {("D0", "in"): [], ("D0", "out"): []})
    rig = rig.replace('system = "dc"', 'system = "split_phase"')
    first = calc("isolation", rig=rig)["sets"][0]["pairs"]
    supplies = [pair.rsplit(" ", 1)[1] for pair in first]
    assert supplies == ["ac"] * 10 + ["dc"] * 10


def test_a_wire_to_nothing_is_refused_with_its_place(refused):
    rig = written([], [{"code": "D0", "kind": "outlet", "sets": ["in"]}], {("D0", "in"): ["S9"]})
    import json

    assert "S9" in refused("isolation", json.dumps({"rig": rig}))
