"""Calls the built `baywalk calc NAME`; its path comes from the environment as BAYWALK."""

import json
import os
import pathlib
import subprocess

import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
BAYWALK = os.environ.get("BAYWALK", str(ROOT / "target" / "release" / "baywalk"))


def call(name, text):
    return subprocess.run(
        [BAYWALK, "calc", name], input=text, capture_output=True, text=True, timeout=20, check=False
    )


@pytest.fixture(scope="session")
def calc():
    """Does a calculation on keyword arguments and gives the object that comes out."""

    def run(name, **given):
        answer = call(name, json.dumps(given))
        assert answer.returncode == 0, answer.stderr
        return json.loads(answer.stdout)

    return run


@pytest.fixture(scope="session")
def refused():
    """Gives the sentence with which a calculation refuses a text."""

    def run(name, text):
        answer = call(name, text)
        assert answer.returncode != 0 and answer.stdout == ""
        return answer.stderr

    return run


@pytest.fixture(scope="session")
def schemas():
    """Gives both JSON Schemas of a calculation."""

    def run(name):
        answer = subprocess.run(
            [BAYWALK, "calc", name, "--schema"], capture_output=True, text=True, timeout=20, check=True
        )
        return json.loads(answer.stdout)

    return run
