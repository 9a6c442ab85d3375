"""Fits sixty generated sets of lives beside R's survreg: parameters and log-likelihood within 1e-6.

    BAYWALK=target/release/baywalk tests/.venv/bin/python tests/loosening_bench/survreg.py

Needs R with its package survival (Debian: r-cran-survival).
"""

import csv
import json
import math
import pathlib
import subprocess
import sys
import tempfile

sys.path.append(str(pathlib.Path(__file__).parents[1] / "python"))
from conftest import call  # noqa: E402
from lives import generated, given  # noqa: E402

SETS = range(1000, 1060)
CLOSE = 1e-6

R = """
suppressMessages(library(survival))
d <- read.csv(commandArgs(TRUE)[1], header=FALSE)
for (one in split(d, d$V1)) {
  low <- ifelse(one$V2 == 0, NA, one$V2)
  fit <- survreg(Surv(low, one$V3, type="interval2") ~ 1, dist="weibull",
                 control=survreg.control(rel.tolerance=1e-14, maxiter=200))
  cat(sprintf("%d,%.15g,%.15g,%.15g\\n", one$V1[1], -log(fit$scale), coef(fit), fit$loglik[1]))
}
"""


def ours(lives):
    answer = call("loosening", json.dumps({"lives": given(lives)}))
    assert answer.returncode == 0, answer.stderr
    law = json.loads(answer.stdout)["law"]
    return math.log(law["shape"]), math.log(law["scale"]), law["log_likelihood"]


def telling(lives):
    """Lives that tell something: survreg refuses a life of no age that still held."""
    return [life for life in lives if life[0] > 0 or life[1] is not None]


with tempfile.TemporaryDirectory() as folder:
    rows, script = pathlib.Path(folder, "lives.csv"), pathlib.Path(folder, "fit.R")
    sets = {seed: telling(generated(seed)) for seed in SETS}
    with rows.open("w") as file:
        writer = csv.writer(file)
        writer.writerows((seed, after, "NA" if by is None else by) for seed in sets for after, by, _ in sets[seed])
    script.write_text(R)
    said = subprocess.run(["Rscript", script, rows], capture_output=True, text=True, check=True).stdout
    peers = {int(row[0]): tuple(map(float, row[1:])) for row in csv.reader(said.splitlines())}

assert set(peers) == set(sets), "a set is missing"
apart = {seed: max(abs(x - y) for x, y in zip(ours(sets[seed]), peers[seed])) for seed in sets}
worst = max(apart, key=apart.get)
print(f"{len(apart)} sets; the furthest apart is set {worst}, by {apart[worst]:.1e}")
sys.exit(apart[worst] > CLOSE)
