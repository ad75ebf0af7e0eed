"""The fatigue of many crews by scipy's solver: a stretch of a day, and a steady hold with a closed form.

Reads JSON from standard input, prints seconds, the capacities at the end, and the capacity after the steady hold.
"""
import json
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

given = json.load(sys.stdin)
step = given["step"]
law = given["law"]
forces = np.array(given["handForces"])
holding, fatigue, recovery, rest = (np.array(given[name]) for name in ("holdingTension", "fatigueRate", "recoveryRate", "restFactor"))


def slope(force, tired):
    if force == 0:
        return -rest * recovery * tired
    share = force / holding
    active = np.minimum(share, 1 - tired)
    above = (share > law["seam"]) & (share < 1) & (tired <= 1 - share)
    if not above.any():
        return fatigue * active - recovery * tired
    f = np.where(above, share, 0.5)
    lost = -np.expm1(-law["recoveryRate"] * law["factor"] * f ** law["exponent"])
    slowed = law["recoveryRate"] * (1 - f) / (f * law["fatigueRate"] * lost)
    return fatigue * np.where(above, slowed, 1) * active - recovery * tired


def solved(force_at, length):
    options = {"method": "RK23", "rtol": 1e-6, "atol": 1e-9, "max_step": step, "t_eval": [length]}
    return solve_ivp(lambda t, tired: slope(force_at(t), tired), (0, length), np.zeros_like(holding), **options).y[:, -1]


start = time.perf_counter()
tired = solved(lambda t: forces[min(int(t / step), len(forces) - 1)], step * len(forces))
seconds = time.perf_counter() - start
steady = solved(lambda t: given["steadyForce"], given["steadyTime"])
print(json.dumps({"seconds": seconds, "capacity": (1 - tired).tolist(), "steady": (1 - steady).tolist()}))
