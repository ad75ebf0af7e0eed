"""Ratio K of one sheave that gives a purchase the pull of the tenth rule, hauling part from the fixed block.

Solves K^N (K - 1) / (K^N - 1) = (1 + N/10) / N by bisection in plain Python, without the library.
Run: python3 tests/reference/tenth_rule_ratio.py
Printed on its last run: 2 1.1307, 4 1.1496, 6 1.1534, 8 1.1529
"""


def pull(ratio: float, parts: int) -> float:
    return ratio**parts * (ratio - 1) / (ratio**parts - 1)


def ratio_for(parts: int) -> float:
    wanted = (1 + 0.1 * parts) / parts
    low, high = 1 + 1e-9, 2.0
    for _ in range(200):
        middle = (low + high) / 2
        if pull(middle, parts) < wanted:
            low = middle
        else:
            high = middle
    return low


for parts in (2, 4, 6, 8):
    print(parts, f"{ratio_for(parts):.4f}")
