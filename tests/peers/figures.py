"""SciPy and NumPy beside regression, distributions and binomial intervals, on fresh data."""
import os
import subprocess
import sys

import numpy as np
from scipy import stats

program = sys.argv[1]
first_seed = int(os.environ.get("BAIZE_PEER_SEED", "1"))
compared = 0
different = 0


def ours(columns):
    names = list(columns)
    lines = ["\t".join(names)]
    for row in zip(*columns.values()):
        lines.append("\t".join(f"{value:.17g}" for value in row))
    said = subprocess.run([program], input="\n".join(lines) + "\n", text=True, check=True, capture_output=True)
    return {name: float(value) for name, value in (line.split("\t") for line in said.stdout.splitlines())}


def same(label, mine, theirs, digits=8, scale=1e-6):
    """To `digits` significant digits; near zero to that many decimals of `scale`."""
    global compared, different
    compared += 1
    if not abs(mine - theirs) <= 10.0**-digits * max(abs(theirs), scale):
        different += 1
        print(f"DIFFERENT {label}: ours {mine:.15g}, theirs {theirs:.15g}")


for chance in range(1, 7):
    rng = np.random.default_rng(4000 * first_seed + chance)
    n = int(rng.integers(12, 30))
    data = {
        "y": rng.normal(8, 1, n), "x1": rng.normal(0, 2, n), "x2": rng.normal(5, 1, n),
        "q": rng.uniform(0.3, 6, n), "k": rng.integers(2, 12, n), "df": rng.integers(3, 60, n),
        "trials": rng.integers(5, 200, n),
    }
    data["successes"] = np.array([rng.integers(0, t + 1) for t in data["trials"]])
    mine = ours(data)

    x = np.column_stack([np.ones(n), data["x1"], data["x2"]])
    inverse = np.linalg.inv(x.T @ x)
    coefficients = inverse @ x.T @ data["y"]
    rest = data["y"] - x @ coefficients
    df = n - 3
    errors = np.sqrt(np.diag(inverse) * (rest @ rest) / df)
    for i in range(3):
        same(f"coefficient {i}", mine[f"coefficient {i}"], coefficients[i])
        same(f"coefficient {i} error", mine[f"coefficient {i} error"], errors[i])
        same(f"coefficient {i} p", mine[f"coefficient {i} p"], 2 * stats.t.sf(abs(coefficients[i] / errors[i]), df))
    about_mean = np.sum((data["y"] - data["y"].mean()) ** 2)
    f = ((about_mean - rest @ rest) / 2) / (rest @ rest / df)
    same("f", mine["f"], f)
    same("f p", mine["f p"], stats.f.sf(f, 2, df))

    for i in range(n):
        q, k, df = data["q"][i], int(data["k"][i]), int(data["df"][i])
        # SciPy integrates to about 1e-11 absolute.
        same(f"range {i}", mine[f"range {i}"], stats.studentized_range.sf(q, k, df), 8, 1e-2)
        same(f"t {i}", mine[f"t {i}"], stats.t.sf(q, df))
        same(f"chi {i}", mine[f"chi {i}"], stats.chi2.sf(q, df))
        same(f"F {i}", mine[f"F {i}"], stats.f.sf(q, k, df))
        same(f"beta {i}", mine[f"beta {i}"], stats.beta.ppf(0.1 + 0.8 / (1 + q), k, df))
        found = stats.binomtest(int(data["successes"][i]), int(data["trials"][i]))
        for name, method in (("exact", "exact"), ("wilson", "wilson")):
            interval = found.proportion_ci(0.95, method)
            same(f"{name} low {i}", mine[f"{name} low {i}"], interval.low)
            same(f"{name} high {i}", mine[f"{name} high {i}"], interval.high)

print(f"{compared} compared, {different} different")
sys.exit(1 if different or compared == 0 else 0)
