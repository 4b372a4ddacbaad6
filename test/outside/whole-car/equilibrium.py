"""Push and acceleration that go with given slip angles of the axles."""

from math import isfinite

from scipy.optimize import brentq

from state import point_at

CLOSE = 2e-8  # m/s² that may be left over
MOST_PUSH = 50.0  # m/s²: a push of more than this much asks for what no tyre can give


class Ground:
    """Finds the state at slip angles of the axles, warm from the state found before.

    Broyden's method on the push and the acceleration across the path; a nested bracketed search
    where that does not arrive.
    """

    def __init__(self, car, drive):
        self.car, self.drive = car, drive
        self.level, self.lateral = car.mass * drive.along, 0.0
        self.inverse = (1.0, 0.0, 0.0, -1.0)
        self.ends = (MOST_PUSH * car.mass, -MOST_PUSH * car.mass)
        self.end = None  # the end at which the push of the state before was
        self.calls = 0

    def point(self, front, rear, level, lateral):
        self.calls += 1
        return point_at(self.car, self.drive, front, rear, level, lateral)

    def state(self, front, rear):
        """The state in which forces along and across are those that the road asks for, or None."""
        p = self.state_or_most(front, rear)
        return None if p is None or p.level in self.ends else p

    def state_or_most(self, front, rear):
        """As state; with all the push there is where that is less than the road asks for."""
        p = self._with_most(front, rear, self.end) if self.end else None
        if p is None:
            p = self._broyden(front, rear, self.level, self.lateral, self.inverse)
        if p is None:
            p = self._broyden(front, rear, self.level, self.lateral, (1.0, 0.0, 0.0, -0.8))
        for end in self.ends:
            p = p or self._with_most(front, rear, end)
        p = p or self._nested(front, rear)
        if p is None:
            return None
        self.end = p.level if p.level in self.ends else None
        self.lateral = p.lateral
        if not self.end:
            self.level = p.level
        return p

    def _with_most(self, front, rear, end):
        """The state with all the push there is one way, if that is still not enough."""
        x, slope = self.lateral, -0.9
        p = self.point(front, rear, end, x)
        for _ in range(20):
            if abs(p.across) < CLOSE:
                return p if p.ahead * end < 0 else None
            step = max(-3.0, min(3.0, -p.across / slope))
            before, x = p, x + step
            p = self.point(front, rear, end, x)
            if p.across != before.across:
                slope = (p.across - before.across) / step
        return None

    def _broyden(self, front, rear, level, lateral, inverse):
        mass = self.car.mass
        a, b, c, d = inverse  # of the Jacobian
        u = level / mass
        p = self.point(front, rear, level, lateral)
        for _ in range(14):
            if abs(p.ahead) + abs(p.across) < CLOSE:
                self.inverse = (a, b, c, d)
                return p
            du = -(a * p.ahead + b * p.across)
            dv = -(c * p.ahead + d * p.across)
            big = max(abs(du) / 3, abs(dv) / 3, 1.0)
            du, dv = du / big, dv / big
            u, lateral = u + du, lateral + dv
            if abs(u) > MOST_PUSH or not isfinite(u + lateral):
                return None
            before = p
            p = self.point(front, rear, u * mass, lateral)
            y1, y2 = p.ahead - before.ahead, p.across - before.across
            h1, h2 = a * y1 + b * y2, c * y1 + d * y2
            s1, s2 = du * a + dv * c, du * b + dv * d
            below = du * h1 + dv * h2
            if abs(below) < 1e-30:
                continue
            e1, e2 = (du - h1) / below, (dv - h2) / below
            a, b, c, d = a + e1 * s1, b + e1 * s2, c + e2 * s1, d + e2 * s2
        return None

    def _with_push(self, front, rear, lateral):
        """The state whose push is right at an acceleration across, or None."""
        mass, found = self.car.mass, {}

        def ahead(u):
            found[u] = p = self.point(front, rear, u * mass, lateral)
            return p.ahead

        if ahead(-MOST_PUSH) > 0 or ahead(MOST_PUSH) < 0:
            return None
        u = brentq(ahead, -MOST_PUSH, MOST_PUSH, xtol=1e-11, rtol=1e-14)
        return found.get(u) or self.point(front, rear, u * mass, lateral)

    def _nested(self, front, rear):
        """False position across; the push is found anew at each acceleration."""
        low, high, step = None, None, 0.5
        x = self.lateral
        for turn in range(60):
            p = self._with_push(front, rear, x)
            if p is None:
                return None
            if abs(p.across) < CLOSE:
                return p
            if p.across > 0:
                low = (x, p.across)
            else:
                high = (x, p.across)
            if low and high:
                x = (low[0] * high[1] - high[0] * low[1]) / (high[1] - low[1])
                if not min(low[0], high[0]) < x < max(low[0], high[0]):
                    return p if abs(p.across) < 1e-6 else None
                if turn % 3 == 2:  # false position can stand still at one end
                    x = (low[0] + high[0]) / 2
            else:
                x, step = (x + step, 2 * step) if low else (x - step, 2 * step)
                if abs(x) > 60:
                    return None
        return None
