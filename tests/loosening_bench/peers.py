"""Times the fit of 10,000 intervals beside scipy, lifelines and R survreg in one run.

    cargo build --release -p baywalk-tests --example loosening_bench
    tests/.venv/bin/python tests/loosening_bench/peers.py target/release/examples/loosening_bench
"""

import pathlib
import subprocess
import sys
import tempfile
import time
import warnings

import numpy as np
from lifelines import WeibullFitter

sys.path.append(str(pathlib.Path(__file__).parents[1] / "python"))
from lives import weibull  # noqa: E402

R = """
suppressMessages(library(survival))
d <- read.csv(commandArgs(TRUE)[1], header=FALSE)
low <- ifelse(d$V1 == 0, NA, d$V1)
run <- function() survreg(Surv(low, d$V2, type="interval2") ~ 1, dist="weibull",
                          control=survreg.control(rel.tolerance=1e-12))
fit <- run()
t <- sort(sapply(1:11, function(i) system.time(run())[3]))[6]
cat(sprintf("survreg %.12f %.12f %.9f %.1f ms\\n", 1/fit$scale, exp(coef(fit)), fit$loglik[1], 1000*t))
"""


def made(count, seed=1):
    """Joints checked about yearly, each from its own day on."""
    rng = np.random.default_rng(seed)
    ages = 60 * rng.weibull(1.3, count)
    lives = []
    for age in ages:
        checks = np.cumsum(np.round(rng.uniform(6, 18, 6), 2))
        later, earlier = checks[checks >= age], checks[checks < age]
        lives.append((float(earlier[-1]) if len(earlier) else 0.0, float(later[0]) if len(later) else None, 1))
    return lives


def middle(rounds, work):
    times = []
    for _ in range(rounds):
        begun = time.perf_counter()
        answer = work()
        times.append(time.perf_counter() - begun)
    return sorted(times)[rounds // 2] * 1e3, answer


lives = made(10_000)
with tempfile.TemporaryDirectory() as folder, warnings.catch_warnings():
    warnings.simplefilter("ignore")
    path = pathlib.Path(folder, "lives.csv")
    path.write_text("".join(f"{a},{'' if b is None else b}\n" for a, b, _ in lives))
    print(subprocess.run([sys.argv[1], path], capture_output=True, text=True, check=True).stdout, end="")
    took, (at, log_likelihood) = middle(5, lambda: weibull(lives))
    print(f"scipy {np.exp(at[0]):.12f} {np.exp(at[1]):.12f} {log_likelihood:.9f} {took:.1f} ms")
    lower = np.array([a for a, _, _ in lives])
    upper = np.array([np.inf if b is None else b for _, b, _ in lives])
    took, peer = middle(5, lambda: WeibullFitter().fit_interval_censoring(lower, upper))
    print(f"lifelines {peer.rho_:.12f} {peer.lambda_:.12f} {peer.log_likelihood_:.9f} {took:.1f} ms")
    script = pathlib.Path(folder, "fit.R")
    script.write_text(R)
    print(subprocess.run(["Rscript", script, path], capture_output=True, text=True, check=False).stdout, end="")
