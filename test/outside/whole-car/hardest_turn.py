"""The balanced path from straight running, followed by arc length in the slip angles of both
axles, and the greatest acceleration across on it."""

from math import atan2, cos, pi, radians, sin

from scipy.optimize import minimize_scalar

from car import GRAVITY
from equilibrium import Ground

WIDEST = radians(20)
STEP = radians(0.8)
LEAST_STEP = radians(0.004)
CLOSE = 1e-7  # of m·g·L


class BalancedPath:
    """In steps of 0.8°, or finely: near a fork a long step may go over to the other branch."""

    def __init__(self, car, drive, finely=False):
        self.finer = 8 if finely else 1
        self.sharpest = 0.15 if finely else 0.5
        self.car = car
        self.ground = Ground(car, drive)
        self.unit = car.mass * GRAVITY * car.wheelbase
        self.slope = None  # of the yaw moment across the path

    def on(self, at, way):
        """The balanced state nearest to a point, sought across a direction, or None."""
        nx, ny = -sin(way), cos(way)

        def state(offset):
            return self.ground.state(at[0] + offset * nx, at[1] + offset * ny)

        p = state(0.0)
        if p is None:
            return None
        x0, y0 = 0.0, p.yaw
        if abs(y0) < CLOSE * self.unit:
            return p
        slope = self.slope
        for _ in range(25):
            step = -y0 / slope if slope else radians(0.02)
            step = max(-STEP, min(STEP, step))
            x1 = x0 + step
            if abs(x1) > 2 * STEP:
                return None
            p = state(x1)
            if p is None:
                return None
            y1 = p.yaw
            if y1 != y0:
                slope = (y1 - y0) / step
            x0, y0 = x1, y1
            if abs(y0) < CLOSE * self.unit:
                self.slope = slope
                return p
        return None

    def start(self):
        """A state of slight turning, or None."""
        for degrees in (0.15, 0.4, 0.8, 1.2, 1.8):
            rear = radians(degrees)
            for front in (rear, 0.0, 2 * rear, 3 * rear, 5 * rear):
                self.slope = None
                p = self.on((front, rear), atan2(1, 0))
                if p is not None and p.lateral > 0.02:
                    return p
        return None

    def follow(self):
        """States along the path up to slip angles of 20°, the tipping point or where the
        acceleration along can no longer be given; and why it ended."""
        first = self.start()
        if first is None:
            return [], "impossible"
        longest, least = STEP / self.finer, LEAST_STEP / self.finer
        states, way, step = [first], atan2(1, 1), longest / 4
        self.slope = None
        while len(states) < 300 * self.finer:
            last = states[-1]
            at = (last.front + step * cos(way), last.rear + step * sin(way))
            p = self.on(at, way)
            if p is not None and not p.tips and max(abs(p.front), abs(p.rear)) <= WIDEST:
                new = atan2(p.rear - last.rear, p.front - last.front)
                turned = abs((new - way + pi) % (2 * pi) - pi)
                if turned < self.sharpest or step < 4 * least:
                    states.append(p)
                    way = new
                    step = min(longest, step * 1.6)
                    if p.lateral < 0:
                        return states, "back"
                    continue
            why = "end" if p is None else "tips" if p.tips else "wide"
            step /= 2.5
            self.slope = None if p is None else self.slope
            self.ground.level, self.ground.lateral = last.level, last.lateral
            if step < least:
                return states, why
        return states, "long"

    def top(self, before, middle, after):
        """The greatest acceleration between two states around a third."""

        def between(u):
            w0, w1, w2 = u * (u - 1) / 2, 1 - u * u, u * (u + 1) / 2
            front = w0 * before.front + w1 * middle.front + w2 * after.front
            rear = w0 * before.rear + w1 * middle.rear + w2 * after.rear
            return self.on((front, rear), way) or middle

        way = atan2(after.rear - before.rear, after.front - before.front)
        found = minimize_scalar(
            lambda u: -between(float(u)).lateral,
            bounds=(-1, 1),
            method="bounded",
            options={"xatol": 4e-3},
        )
        return between(float(found.x))


def hardest_turn(car, drive, finely=False):
    """The state of the hardest turn and why the path ended, or (None, why)."""
    path = BalancedPath(car, drive, finely)
    states, why = path.follow()
    if not states:
        return None, why
    best = max(range(len(states)), key=lambda i: states[i].lateral)
    top = states[best]
    if 0 < best < len(states) - 1:
        path.ground.level, path.ground.lateral = top.level, top.lateral
        refined = path.top(states[best - 1], top, states[best + 1])
        top = refined if refined.lateral > top.lateral else top
    return top, "top" if best < len(states) - 1 else why
