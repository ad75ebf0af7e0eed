"""Hoist and drop of a sail on a halyard, integrated with scipy (DOP853), without the library.

Momentum balance of sail and rope on both sides of the masthead, written down anew: two turns with
T_pulled = k T_other + c, a sail that leaves its bag evenly, a crew after Hill, a tail that is picked up from rest.
Run: python3 tests/reference/hoist_and_drop.py
Printed on its last run: hoist 3.4331 s, drop 2.3115 s at 4.1260 m/s at most
"""

from scipy.integrate import solve_ivp

g = 9.80665
lift, sail, head, rub, air = 7.0, 2.0, 0.1, 0.25 * 20.0, 0.3
rope, hand_side, hand_drop = 0.025, 8.0, 7.0
k1, c1, k2, c2 = 1.1, 0.5, 1.2, 0.3
pull, top, bend = 250.0, 3.0, 0.25


def share(height):
    return head + (1 - head) * height / lift


def hoist(_, state):
    height, speed = state
    u = speed / top
    force = pull * (1 - u) / (1 + u / bend)
    mass = sail * share(height) + rope * (lift - height)
    joins = sail * (1 - head) / lift
    resting = mass * g + rub * share(height) + air * speed**2 + joins * speed**2
    # force + hanging rope - inertia = k2 (k1 (resting + mass a) + c1) + c2
    given = force + rope * g * hand_drop - (k2 * (k1 * resting + c1) + c2)
    return [speed, given / (k1 * k2 * mass + rope * hand_side)]


def drop(_, state):
    fallen, speed = state
    height = lift - fallen
    mass = sail * share(height) + rope * fallen
    driving = mass * g - rub * share(height) - air * speed**2
    # driving - mass a = k1 (k2 (hanging rope + tail + inertia) + c2) + c1
    held = k1 * (k2 * (rope * g * hand_drop + rope * speed**2) + c2) + c1
    return [speed, (driving - held) / (mass + k1 * k2 * rope * hand_side)]


def there(_, state):
    return state[0] - lift


there.terminal = True
options = {"method": "DOP853", "events": there, "rtol": 1e-11, "atol": 1e-12}
up = solve_ivp(hoist, (0, 60), [0, 0], **options)
down = solve_ivp(drop, (0, 60), [0, 0], max_step=0.001, **options)
print(f"hoist {up.t_events[0][0]:.4f} s, drop {down.t_events[0][0]:.4f} s at {down.y[1].max():.4f} m/s at most")
