"""The car at given slip angles of its axles: what the road must give, and what the tyres give."""

from math import asin, atan2, cos, sin

from car import GRAVITY
from roll import axle_loads, damper_moments, stances
from wheels import axle_forces


class Drive:
    """How the car is driven; along the path, and its dampers' moments while the turn tightens."""

    def __init__(self, car, given):
        self.speed, self.radius = given.get("speed"), given.get("cornerRadius")
        self.along = given.get("longitudinalAcceleration", 0.0)
        grade, bank = given.get("grade", 0.0), given.get("bank", 0.0)
        self.uphill, self.downhill = GRAVITY * sin(grade), GRAVITY * sin(bank)
        self.cos_bank, self.sin_bank = cos(bank), sin(bank)
        self.flat = GRAVITY * cos(grade) * cos(bank)
        self.dampers = damper_moments(car, given.get("lateralJerk", 0.0))

    def path(self, lateral):
        """Curvature of the path, 1/m, and speed squared at an acceleration across it."""
        if self.speed is None:
            return 1 / self.radius, max(0.0, lateral * self.radius)
        return lateral / self.speed**2, self.speed**2


class Point:
    """One state. lateral is the acceleration across the path, m/s², level the push, N; ahead and
    across are what the tyres give too much, as accelerations, and yaw what they leave over, N·m."""

    __slots__ = (
        "front", "rear", "level", "lateral", "beta", "steer", "curve", "body_lateral",
        "stances", "tips", "ahead", "across", "yaw",
    )  # fmt: skip


def angles_at(car, front, rear, curve):
    """Side-slip and steer at which the axles' midpoints have these slip angles."""
    beta = asin(curve * car.b * cos(rear)) - rear
    return beta, front + atan2(sin(beta) + curve * car.a, cos(beta))


def point_at(car, drive, front, rear, level, lateral):
    """The car at slip angles of its axles, rad, a level of push and an acceleration across."""
    p = Point()
    p.front, p.rear, p.level, p.lateral = front, rear, level, lateral
    p.curve, speed2 = drive.path(lateral)
    p.beta, p.steer = angles_at(car, front, rear, p.curve)
    c, s, m = cos(p.beta), sin(p.beta), car.mass
    need_ahead = m * (drive.along + drive.uphill) + car.drag * speed2
    need_across = m * (lateral * drive.cos_bank - drive.downhill)
    forward = need_ahead * c - need_across * s
    p.body_lateral = (need_ahead * s + need_across * c) / m
    normal = drive.flat + lateral * drive.sin_bank
    loads = axle_loads(car, normal, speed2, forward)
    p.stances, p.tips = stances(car, p.body_lateral, loads, drive.dampers)
    fx = fy = p.yaw = 0.0
    for axle, stance, steer in zip((car.front, car.rear), p.stances, (p.steer, 0.0)):
        x, y, n = axle_forces(car, axle, stance, steer, p.beta, p.curve, p.body_lateral, level)
        fx, fy, p.yaw = fx + x, fy + y, p.yaw + n
    p.ahead = (fx * c + fy * s - need_ahead) / m
    p.across = (fy * c - fx * s - need_across) / m
    return p
