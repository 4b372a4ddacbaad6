"""Forces of the wheels of an axle that is asked to push, in the car's signs: a slip angle and an
inclination above zero make a force to the left, against the book's."""

from math import atan2, cos, inf, sin, tan

from car import GRAVITY
from magic_formula import RoadTyre
from roll import held

LEAST_LOAD = 1e-3  # N
WIDEST = 1.2  # rad of slip angle


class Wheel:
    """A wheel that points θ from the car's x axis and whose centre moves at (vx, vy), as shares of
    the car's speed."""

    def __init__(self, q, load, pressure, inclination, points, vx, vy):
        self.points = points
        self.angle = held(-WIDEST, points - atan2(vy, vx), WIDEST)
        self.speed = vx * cos(points) + vy * sin(points)
        self.loaded = load > LEAST_LOAD
        if not self.loaded:
            self.most = 0.0
            return
        self.tyre = RoadTyre(
            q,
            held(q.loads[0], load, q.loads[1]),
            held(q.pressures[0], pressure, q.pressures[1]),
            held(q.inclinations[0], -inclination, q.inclinations[1]),
        )
        self.slope = tan(-self.angle)
        self.most = self.tyre.peak_slip()
        self.ends = {}

    def push(self, kappa):
        return self.tyre.longitudinal(kappa, self.slope) if self.loaded else 0.0

    def end(self, direction):
        """Push at the slip of the greatest push that way, N."""
        if direction not in self.ends:
            self.ends[direction] = self.push(direction * self.most)
        return self.ends[direction]

    def cap(self, direction):
        """The most that it can push at its slip angle that way, N."""
        return max(0.0, direction * self.end(direction)) if self.loaded else 0.0

    def slip_for(self, push):
        """Slip that gives a push, N, within the slips of the greatest, by false position."""
        if not self.loaded:
            return 0.0
        rolling = self.push(0.0) - push
        if abs(rolling) < 1e-7:
            return 0.0
        way = -1 if rolling > 0 else 1
        end = self.end(way) - push
        if end * way <= 0:
            return way * self.most
        low, below, high, above = 0.0, rolling, self.most, end
        if way < 0:
            low, below, high, above = -self.most, end, 0.0, rolling
        side = 0
        for _ in range(100):
            x = (low * above - high * below) / (above - below)
            y = self.push(x) - push
            if abs(y) < 1e-7 or high - low < 1e-13:
                return x
            if y > 0:
                high, above = x, y
                if side > 0:
                    below /= 2
                side = 1
            else:
                low, below = x, y
                if side < 0:
                    above /= 2
                side = -1
        return x

    def forces(self, kappa, aligning):
        """Forward and left in the car's axes, N, and the moment of the tyre itself, N·m."""
        if not self.loaded:
            return 0.0, 0.0, 0.0
        along, across = self.push(kappa), self.tyre.side(kappa, self.slope)
        moment = self.tyre.moment(kappa, self.slope, along, across) if aligning else 0.0
        c, s = cos(self.points), sin(self.points)
        return along * c - across * s, along * s + across * c, moment


def eased(asked, most):
    """What comes of what is asked where there is a most."""
    if most <= 0:
        return 0.0
    x = asked / most
    if x > 1e50:
        return most
    return asked / (1 + x**6) ** (1 / 6)


def left_push(left, right, total):
    """What the left wheel pushes when both turn equally fast, N, with the sum given."""
    fast, slow = 1e-9, inf
    for w in (left, right):
        if w.loaded:
            slow = min(slow, w.speed * (1 - w.most))
            fast = max(fast, w.speed * (1 + w.most))

    def pushes(spin):
        return [w.push(held(-w.most, spin / w.speed - 1, w.most)) for w in (left, right)]

    low, high = slow, fast
    below, above = sum(pushes(low)) - total, sum(pushes(high)) - total
    if below >= 0 or above <= 0:
        return pushes(low if below >= 0 else high)[0] if left.loaded else 0.0
    side, x = 0, low
    for _ in range(200):
        x = (low * above - high * below) / (above - below)
        p = pushes(x)
        y = p[0] + p[1] - total
        if abs(y) < 1e-7 or high - low < 1e-14:
            return p[0]
        if y > 0:
            high, above = x, y
            below /= 2 if side > 0 else 1
            side = 1
        else:
            low, below = x, y
            above /= 2 if side < 0 else 1
            side = -1
    return pushes(x)[0]


def axle_pushes(car, axle, left, right, level):
    """Push of the left and the right wheel, N, at a level of the whole car's push, N."""
    if level < 0:
        asked = -level * (car.brake_front if axle.front else 1 - car.brake_front) / 2
        base = [-eased(asked, w.cap(-1)) for w in (left, right)]
        most = brake_coupling(car, axle, abs(base[0] + base[1]))
    else:
        lock = axle.lock
        caps = left.cap(1), right.cap(1)
        most = caps[0] + caps[1]
        if lock < 1:
            most = min(most, 2 / (1 - lock) * min(caps))
        total = eased(level * axle.drive_share, most)
        base = [total / 2, total / 2]
        most = inf if axle.kind == "locked" else lock * total / 2
    if most == 0 or not (left.loaded or right.loaded):
        return base
    total = base[0] + base[1]
    shift = held(-most, left_push(left, right, total) - base[0], most)
    return [base[0] + shift, base[1] - shift]


def brake_coupling(car, axle, given):
    if axle.kind == "locked":
        return inf
    if axle.kind != "limited-slip":
        return 0.0
    return axle.overrun / 2 * min(given, 0.06 * car.mass * GRAVITY * axle.drive_share)


def wheels_of(axle, stance, steer, beta, curve, lateral):
    """Both wheels of an axle at the car's side-slip and the curvature of its path, 1/m."""
    half, z = axle.track / 2, stance.heave
    spring = stance.spring
    if axle.independent:
        lean = -stance.body - axle.camber_gain * half * spring
        turn = axle.toe_gain * half * spring
    else:
        lean, turn = -stance.tyres, axle.roll_steer * spring
    turn += steer - axle.compliance * axle.mass * lateral
    toe_z, camber_z = axle.toe_gain * z, axle.camber_gain * z
    forward, side = cos(beta), sin(beta) + curve * axle.x
    left = Wheel(
        axle.tyre,
        stance.left,
        axle.pressure[0],
        axle.camber[0] + camber_z + lean,
        turn - axle.toe[0] - toe_z,
        forward - curve * half,
        side,
    )
    right = Wheel(
        axle.tyre,
        stance.right,
        axle.pressure[1],
        -axle.camber[1] - camber_z + lean,
        turn + axle.toe[1] + toe_z,
        forward + curve * half,
        side,
    )
    return left, right


def axle_forces(car, axle, stance, steer, beta, curve, lateral, level):
    """Forward and left in the car's axes, N, and yaw moment about the centre of gravity, N·m."""
    wheels = wheels_of(axle, stance, steer, beta, curve, lateral)
    pushes = axle_pushes(car, axle, *wheels, level)
    forward = left = yaw = 0.0
    for wheel, push, y in zip(wheels, pushes, (axle.track / 2, -axle.track / 2)):
        fx, fy, moment = wheel.forces(wheel.slip_for(push), car.aligning)
        forward += fx
        left += fy
        yaw += axle.x * fy - y * fx + moment
    return forward, left, yaw
