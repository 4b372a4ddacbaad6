"""The state of most side force, and the yaw moment that it leaves over.

Grid and Nelder–Mead over the slip angles of both axles; no derivative is taken.
"""

from math import radians

from scipy.optimize import minimize

from equilibrium import Ground

WIDEST = radians(20)
GRID = [radians(x) for x in (3.0, 5.0, 7.5, 10.5, 14.5)]


def most_side_force(car, drive):
    """The state of the greatest acceleration across the path, or None where the longitudinal
    acceleration can be given nowhere."""
    ground = Ground(car, drive)

    def lateral(front, rear):
        if abs(front) > WIDEST or abs(rear) > WIDEST:
            return -100.0
        p = ground.state(front, rear)
        return -100.0 if p is None else p.lateral

    best = None
    for start in starts(lateral):
        x, most = climb(lateral, start, radians(1.2))
        if best is None or most > best[1] + 1e-7:
            best = (x, most)
    if best is None:
        return None
    (front, rear), _ = climb(lateral, best[0], radians(0.15))
    return ground.state(front, rear)


def starts(lateral):
    """Tops of a coarse grid: no neighbour is higher. At most the three highest."""
    rows = []
    for i, front in enumerate(GRID):
        turn = GRID if i % 2 == 0 else GRID[::-1]  # to and fro: each is near the one before
        row = [lateral(front, rear) for rear in turn]
        rows.append(row if i % 2 == 0 else row[::-1])
    tops = []
    for i, row in enumerate(rows):
        for k, value in enumerate(row):
            near = [
                rows[i + di][k + dk]
                for di in (-1, 0, 1)
                for dk in (-1, 0, 1)
                if 0 <= i + di < len(rows) and 0 <= k + dk < len(row)
            ]
            if value > -100 and value >= max(near):
                tops.append((value, (GRID[i], GRID[k])))
    tops.sort(reverse=True)
    return [at for value, at in tops[:3] if value > tops[0][0] - 0.5]


def climb(lateral, start, size):
    """Nelder–Mead from a simplex of a size."""
    (x, y) = start
    simplex = [(x, y), (x + size, y), (x, y + size)]
    found = minimize(
        lambda at: -lateral(float(at[0]), float(at[1])),
        start,
        method="Nelder-Mead",
        options={"initial_simplex": simplex, "xatol": 3e-6, "fatol": 1e-8, "maxfev": 200},
    )
    return (float(found.x[0]), float(found.x[1])), -float(found.fun)


def margin_of(car, point):
    return -point.yaw * car.wheelbase / (car.mass * car.a * car.b)
