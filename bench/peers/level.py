"""The local level over 3,650 days by statsmodels and by our stats_state_space_bench, in
one run (processor time of both), the same values: /usr/bin/python3 level.py PROGRAM. As
level.R, which has R's. Needs Debian's python3-statsmodels, which nothing else here does."""

import csv
import subprocess
import sys
import time
import warnings

import numpy as np
from statsmodels.tsa.statespace.structural import UnobservedComponents

MS = {"ns": 1e-6, "us": 1e-3, "ms": 1.0, "s": 1e3}


def per_call(f, times):
    """Milliseconds of processor time that one call takes, the first left out."""
    f()
    start = time.process_time()
    for _ in range(times):
        f()
    return (time.process_time() - start) * 1000 / times


def main(program):
    day = np.arange(3650)
    y = 7.5 + np.sin(day / 50) + ((day * 37) % 11 - 5) / 10
    model = UnobservedComponents(y, "local level", use_exact_diffuse=True)
    theirs = {
        # Log-likelihood and smoothed level, noise 0.1 and walk 0.001 given.
        "level_of_ten_years": per_call(lambda: model.smooth([0.1, 0.001], cov_type="none"), 20),
        "fit_of_ten_years": per_call(lambda: model.fit(disp=False, cov_type="none"), 2),
    }
    out = subprocess.run(
        [program, "--benchmark_filter=ten_years", "--benchmark_format=csv"],
        check=True, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True).stdout
    lines = out.splitlines()
    first = next(i for i, line in enumerate(lines) if line.startswith("name,"))
    for row in csv.DictReader(lines[first:]):
        mine = float(row["cpu_time"]) * MS[row["time_unit"]]
        name = row["name"]
        print(f"{name:<34} statsmodels {theirs[name]:9.3f} ms   ours {mine:8.4f} ms"
              f"   ratio {theirs[name] / mine:6.1f}")


if __name__ == "__main__":
    warnings.simplefilter("ignore")
    main(sys.argv[1])
