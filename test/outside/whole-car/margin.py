"""The state of most side force, and the yaw moment that it leaves over.

A grid and Nelder–Mead over the slip angles of both axles find the top; sequential quadratic
programming on the whole problem then sharpens it, also where all the push there is holds it back.
"""

from math import radians

from scipy.optimize import minimize

from equilibrium import Ground
from state import point_at

WIDEST = radians(20)
GRID = [radians(x) for x in (3.0, 5.0, 7.5, 10.5, 14.5)]
LAST = 1 - 1e-7  # of all the push there is
DEAR = 10.0  # what a missing m/s² along costs across, more than it can ever bring


def most_side_force(car, drive):
    """The state of the greatest acceleration across the path, or None where the longitudinal
    acceleration can be given nowhere."""
    ground = Ground(car, drive)

    def worth(front, rear):
        outside = max(0.0, abs(front) - WIDEST, abs(rear) - WIDEST)
        if outside:
            return -100.0 - outside
        p = ground.state_or_most(front, rear)
        if p is None:
            return -100.0
        return p.lateral - (DEAR * abs(p.ahead) if p.level in ground.ends else 0.0)

    tops = [climb(worth, at, radians(1.2), 3e-3) for at in starts(worth)]
    found = [sharpened(ground, car, drive, at) for at, _ in tops]
    found = sorted((p for p in found if p), key=lambda p: p.lateral)
    at, most = max(tops, key=lambda top: top[1])
    if not found or found[-1].lateral < most - 1e-5:  # sharpening went astray: climb on
        at, most = climb(worth, at, radians(0.3), 2e-6)
        found.append(sharpened(ground, car, drive, at) or ground.state_or_most(*at))
    top = found[-1]
    return top if top and abs(top.ahead) < 1e-3 else None


def starts(worth):
    """Tops of a coarse grid: no neighbour is higher. At most the three highest."""
    rows = []
    for i, front in enumerate(GRID):
        turn = GRID if i % 2 == 0 else GRID[::-1]  # to and fro: each is near the one before
        row = [worth(front, rear) for rear in turn]
        rows.append(row if i % 2 == 0 else row[::-1])
    tops = []
    for i, row in enumerate(rows):
        for k, value in enumerate(row):
            near = [x for r in rows[max(0, i - 1) : i + 2] for x in r[max(0, k - 1) : k + 2]]
            if value >= max(near):
                tops.append((value, (GRID[i], GRID[k])))
    tops.sort(reverse=True)
    return [at for value, at in tops[:3] if value > tops[0][0] - 0.5]


def climb(worth, start, size, close):
    """Nelder–Mead from a simplex of a size: where, and how much."""
    (x, y) = start
    found = minimize(
        lambda at: -worth(float(at[0]), float(at[1])),
        start,
        method="Nelder-Mead",
        options={
            "initial_simplex": [(x, y), (x + size, y), (x, y + size)],
            "xatol": close,
            "fatol": close / 10,
            "maxfev": 150,
        },
    )
    return (float(found.x[0]), float(found.x[1])), -float(found.fun)


def sharpened(ground, car, drive, at):
    """The top near a point by SLSQP in slip angles, push and acceleration, or None.

    The push stands as level = s·w/(1 − w⁶)^(1/6), so that w = 1 is all the push there is.
    """
    near = ground.state_or_most(*at)
    if near is None:
        return None
    scale = car.mass * max(1.0, abs(drive.along))

    def state(x):
        w = min(max(float(x[2]), -LAST), LAST)
        level = scale * w / (1 - w**6) ** (1 / 6)
        return point_at(car, drive, float(x[0]) / 10, float(x[1]) / 10, level, float(x[3]) * 10)

    def left_over(x):
        p = state(x)
        return [p.ahead, p.across]

    push = near.level / scale
    w = push / (1 + abs(push) ** 6) ** (1 / 6)
    wide = 10 * WIDEST
    found = minimize(
        lambda x: -x[3],
        [10 * near.front, 10 * near.rear, w, near.lateral / 10],
        jac=lambda x: [0.0, 0.0, 0.0, -1.0],
        method="SLSQP",
        bounds=[(-wide, wide), (-wide, wide), (-LAST, LAST), (None, None)],
        constraints={"type": "eq", "fun": left_over},
        options={"ftol": 1e-11, "maxiter": 40, "eps": 1e-7},
    )
    p = state(found.x)
    return p if abs(p.ahead) + abs(p.across) < 1e-5 else None


def margin_of(car, point):
    return -point.yaw * car.wheelbase / (car.mass * car.a * car.b)
