"""The bands of the benchmark in numpy: 6-part tackle hauled from its fixed block, lead block, ratchet; hauling and easing.
Reads the number of samples; prints the time of the best pass in seconds and the medians of both forces at each load."""

import json
import sys
import time

import numpy as np

samples = int(sys.argv[1])
loads = 50.0 + 8.0 * np.arange(100)
z95 = 1.6448536269514722
ends = [5, 50, 95]


def draw(rng, value, low, high):
    z = rng.standard_normal(samples)
    return np.exp(np.where(z < 0, z * np.log(value / low), z * np.log(high / value)) / z95)


def run():
    rng = np.random.default_rng(1)
    bearing = draw(rng, 0.01, 0.004, 0.025)
    bending = draw(rng, 60.0, 30.0, 110.0)
    tread = draw(rng, 0.32, 0.2, 0.5)
    d = 0.006
    pitch = 0.04 + d
    scale = d * d / pitch
    m = 0.01 * bearing * 0.011 / (pitch / 2)
    own = (1 + m) / (1 - m)
    bent = 1 + 60.0 * scale * bending
    soft = (40.0 + 1e6 * d * d) * scale * bending
    grip = np.exp(0.32 * np.pi * tread)
    k, c = own * bent, own * soft + 0.05
    grip_k, grip_c = grip * bent, grip * soft + 0.05

    def through_tackle(load, k, c):
        series = all_series = 0.0
        for _ in range(5):
            series = 1 + k * series
            all_series = all_series + series
        first = (load - all_series * c) / (1 + k * series)
        return k * ((1 + (k - 1) * series) * first + series * c) + c

    hauling = np.empty((len(loads), 3))
    easing = np.empty((len(loads), 3))
    gaps = np.empty((len(loads), 3))
    inverse, back = 1 / k, -c / k
    for index, load in enumerate(loads):
        haul = through_tackle(load, k, c)
        for _ in range(2):
            haul = k * haul + c
        haul = np.maximum(0, haul)
        ease = np.maximum(0, inverse * through_tackle(load, inverse, back) + back)
        ease = np.maximum(0, (ease - grip_c) / grip_k)
        hauling[index] = np.percentile(haul, ends)
        easing[index] = np.percentile(ease, ends)
        gaps[index] = np.percentile(haul - ease, ends)
    return hauling, easing


best = float("inf")
for _ in range(3):
    start = time.perf_counter()
    hauling, easing = run()
    best = min(best, time.perf_counter() - start)
print(json.dumps([best, hauling[:, 1].tolist(), easing[:, 1].tolist()]))
