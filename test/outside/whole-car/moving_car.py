"""The car in motion on a flat road: a plane body on its tyres, integrated in time.

A driver asks for more and more yaw rate, slowly, and steers after it; the push holds the speed.
Loads follow the forces with a short lag. What it holds hardest and which end lets go first is
seen, not worked out.
"""

from math import atan2, cos, hypot, radians, sin

from car import GRAVITY
from roll import axle_loads, stances
from wheels import axle_forces

STEP = 0.04  # s
LAG = 0.1  # s, of loads behind forces and of the push behind what is wanted
GONE = radians(24)  # slip angle at which an axle has let go
SLOW = radians(3)  # slip angle from which on the turn tightens slowly
STEADY = 0.01  # m/s² along the path up to which the speed is held
CALM = 0.08  # rad/s² of yaw acceleration up to which a turn is held


class Motion:
    def __init__(self, car, speed):
        self.car, self.speed = car, speed
        drag = car.drag * speed**2
        # speed forward and to the left, yaw rate, specific force forward and to the left,
        # push, steer kept by the driver, yaw rate asked for
        self.state = (speed, 0.0, 0.0, drag / car.mass, 0.0, drag, 0.0, 0.0)

    def rates(self, state):
        """Time derivatives, and what is worth seeing of this moment."""
        car = self.car
        vx, vy, yaw, ahead, left, push, kept, asked = state
        speed, beta = hypot(vx, vy), atan2(vy, vx)
        steer = kept + 0.25 * (asked - yaw)  # a driver acts at once and goes on acting
        loads = axle_loads(car, GRAVITY, speed**2, car.mass * ahead)
        both, _ = stances(car, left, loads, (0.0, 0.0))
        curve = yaw / speed
        fx = fy = moment = 0.0
        for axle, stance, angle in zip((car.front, car.rear), both, (steer, 0.0)):
            x, y, n = axle_forces(car, axle, stance, angle, beta, curve, left, push)
            fx, fy, moment = fx + x, fy + y, moment + n
        drag, mass = car.drag * speed, car.mass
        gain = (fx * cos(beta) + fy * sin(beta) - drag * speed) / mass
        front = steer - atan2(vy + yaw * car.a, vx)
        rear = -atan2(vy - yaw * car.b, vx)
        turning = moment / car.yaw_inertia
        tighter = 0.6 if max(front, rear) < 0.8 * SLOW else 0.12  # m/s³
        rates = (
            (fx - drag * vx) / mass + yaw * vy,
            (fy - drag * vy) / mass - yaw * vx,
            turning,
            (fx / mass - ahead) / LAG,
            (fy / mass - left) / LAG,
            mass * (0.8 * (self.speed - speed) - gain) / LAG,
            max(-0.1, min(0.1, 0.4 * (asked - yaw))),
            tighter / self.speed if asked - yaw < 0.1 else 0.0,
        )
        lateral = (fy * cos(beta) - fx * sin(beta)) / mass
        return rates, (lateral, front, rear, turning, speed, gain)

    def advance(self):
        """One step by the classic method of Runge and Kutta; what was seen at its start."""
        s, h = self.state, STEP
        k1, seen = self.rates(s)
        k2, _ = self.rates(tuple(x + h / 2 * k for x, k in zip(s, k1)))
        k3, _ = self.rates(tuple(x + h / 2 * k for x, k in zip(s, k2)))
        k4, _ = self.rates(tuple(x + h * k for x, k in zip(s, k3)))
        slopes = zip(s, k1, k2, k3, k4)
        new = [x + h / 6 * (a + 2 * b + 2 * c + d) for x, a, b, c, d in slopes]
        most = 12 * self.car.mass
        new[5] = max(-most, min(most, new[5]))
        self.state = tuple(new)
        return seen


def tightening_turn(car, speed, longest=150.0):
    """Hardest lateral acceleration held, m/s², the end that let go first, and the slip angles and
    speed at the hardest turn."""
    motion, best, end, calm = Motion(car, speed), None, None, True
    for _ in range(int(longest / STEP)):
        seen = lateral, front, rear, turning, now, gain = motion.advance()
        calm = calm and (max(front, rear) < SLOW or abs(turning) < CALM)
        holds = calm and abs(gain) < STEADY and abs(now / speed - 1) < 0.003
        if best is None or (holds and lateral > best[0]):
            best = seen
        if front > GONE or rear > GONE or abs(now / speed - 1) > 0.1:
            end = "front" if front > rear else "rear"
            break
    return {
        "lateralAcceleration": best[0],
        "first": end,
        "slipAngle": {"front": best[1], "rear": best[2]},
        "speed": best[4],
        "lastSlipAngle": {"front": front, "rear": rear},
        "lastSpeed": now,
    }
