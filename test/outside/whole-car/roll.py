"""Wheel loads and attitude of the car under given accelerations in its own axes."""

from math import inf

from car import GRAVITY


class Stance:
    """Attitude of one axle: angles rad, heave of the wheels against the body m, loads N."""

    __slots__ = ("body", "tyres", "heave", "left", "right", "lifted")

    @property
    def spring(self):
        return self.body - self.tyres


def held(low, x, high):
    return low if x < low else high if x > high else x


def axle_loads(car, specific_normal, speed2, force_forward):
    """Loads of both tyres of the front and of the rear, N."""
    shift = force_forward * car.height / car.wheelbase
    front = car.front.mass * specific_normal + car.front.downforce * speed2 - shift
    rear = car.rear.mass * specific_normal + car.rear.downforce * speed2 + shift
    both = front + rear
    return held(0.0, front, both), held(0.0, rear, both)


def stop_force(axle, side, travel):
    """Force of the stops at a wheel, N, above zero in bump, and its rate, N/m."""
    over = travel - axle.bump_left[side]
    if over > 0:
        return 0.5 * axle.bump_stop * over * over, axle.bump_stop * over
    over = -travel - axle.droop_left[side]
    if over > 0:
        return -0.5 * axle.droop_stop * over * over, axle.droop_stop * over
    return 0.0, 0.0


def heave(axle, load, spring_angle):
    """How far both wheels have risen towards the body, m, with the moment of the stops and its
    slope by the angle of the springs: (heave, N·m, N·m/rad)."""
    extra = load - axle.mass * GRAVITY
    z = extra / (2 * axle.wheel_rate)
    if not axle.stops:
        return z, 0.0, 0.0
    half = axle.track / 2
    for _ in range(60):
        outer, outer_rate = stop_force(axle, 1, z + half * spring_angle)
        inner, inner_rate = stop_force(axle, 0, z - half * spring_angle)
        rate = 2 * axle.wheel_rate + outer_rate + inner_rate
        step = (extra - 2 * axle.wheel_rate * z - outer - inner) / rate
        z += step
        if abs(step) < 1e-13:
            break
    turn = outer_rate + inner_rate - (outer_rate - inner_rate) ** 2 / rate
    return z, half * (outer - inner), half * half * turn


def axle_line(axle, stiffness, extra, lateral, given):
    """Tyre angle as slope·(body angle) + offset; given is the moment of a lifted axle or None."""
    s, hanging = axle.own_share, axle.unsprung_mass * axle.unsprung_height
    linked = axle.sprung_mass * axle.centre_height
    if given is None and axle.tyre_stiffness == inf:
        return 0.0, 0.0
    resist = stiffness - GRAVITY * (linked + s * s * hanging)
    push = extra + lateral * (linked + s * hanging)
    if given is None:
        resist += axle.tyre_stiffness
    else:  # it turns about the outer wheel, goes up, and side force has the longer lever
        up = (axle.sprung_mass + axle.unsprung_mass) * axle.track / 2 * lateral
        resist -= up
        push -= given * (1 + up / axle.tyre_stiffness)
    return (stiffness + s * (1 - s) * hanging * GRAVITY) / resist, push / resist


def body_line(axle, stiffness, extra, lateral, line):
    """Moment that the body's angle must hold at an axle: (resistance, push)."""
    slope, offset = line
    s = axle.own_share
    hanging = (1 - s) * axle.unsprung_mass * axle.unsprung_height
    leaning = axle.sprung_mass * axle.arm
    resist = stiffness * (1 - slope) - GRAVITY * (leaning + hanging * (1 - s + s * slope))
    push = stiffness * offset - extra + lateral * (leaning + hanging)
    return resist, push + hanging * GRAVITY * s * offset


def body_angles(car, parts):
    """Angle of the body at both ends from (resistance, push) of both."""
    (kf, pf), (kr, pr) = parts
    if car.torsion is None or car.torsion == "Infinity":
        angle = (pf + pr) / (kf + kr)
        return angle, angle
    twist = car.torsion
    det = (kf + twist) * (kr + twist) - twist * twist
    return ((kr + twist) * pf + twist * pr) / det, ((kf + twist) * pr + twist * pf) / det


def angles_with(car, lateral, stiffness, extra, given):
    """Body and tyre angles of both axles for spring stiffness and extra moment of each."""
    axles = (car.front, car.rear)
    lines = [axle_line(x, k, e, lateral, t) for x, k, e, t in zip(axles, stiffness, extra, given)]
    parts = [body_line(x, k, e, lateral, n) for x, k, e, n in zip(axles, stiffness, extra, lines)]
    return [(body, n[0] * body + n[1]) for body, n in zip(body_angles(car, parts), lines)]


def spring_gradients(car):
    """Angle of each axle's springs per lateral acceleration on four wheels, rad/(m/s²)."""
    stiff = (car.front.stiffness, car.rear.stiffness)
    found = angles_with(car, 1.0, stiff, (0.0, 0.0), (None, None))
    return [body - tyres for body, tyres in found]


def damper_moments(car, jerk):
    if jerk == 0:
        return (0.0, 0.0)
    front, rear = spring_gradients(car)
    return (car.front.damping * jerk * front, car.rear.damping * jerk * rear)


def settled(car, lateral, loads, dampers, given):
    """Angles with the stops, whose force bends, and the moment that they and the dampers add."""
    axles = (car.front, car.rear)
    stiff, extra = [x.stiffness for x in axles], list(dampers)
    found = angles_with(car, lateral, stiff, extra, given)
    if not (car.front.stops or car.rear.stops):
        return found, dampers
    for _ in range(100):
        moments = []
        for i, x in enumerate(axles):
            angle = found[i][0] - found[i][1]
            _, moment, slope = heave(x, loads[i], angle)
            stiff[i] = x.stiffness + slope
            extra[i] = dampers[i] + moment - slope * angle
            moments.append(dampers[i] + moment)
        before = found
        found = angles_with(car, lateral, stiff, extra, given)
        if all(abs(p[0] - n[0]) + abs(p[1] - n[1]) < 1e-13 for p, n in zip(before, found)):
            break
    return found, moments


def tyre_moment(axle, lateral, angles, extra):
    """Moment that an axle's two tyres hold, N·m."""
    body, tyres = angles
    s = axle.own_share
    own = lateral + GRAVITY * ((1 - s) * body + s * tyres)
    linked = axle.sprung_mass * axle.centre_height * (lateral + GRAVITY * tyres)
    hanging = s * axle.unsprung_mass * axle.unsprung_height * own
    return axle.stiffness * (body - tyres) + extra + linked + hanging


def stances(car, lateral, loads, dampers):
    """Both axles' stance, and whether the car tips: both inner wheels off the ground."""
    axles = (car.front, car.rear)
    rest = [held(0.0, n / 2 + x.excess, n) for x, n in zip(axles, loads)]  # left load at no moment
    most = [r * x.track for x, r in zip(axles, rest)]  # the moment that lifts the left wheel
    given = [None, None]
    for _ in range(3):
        found, extra = settled(car, lateral, loads, dampers, given)
        moments = [
            tyre_moment(x, lateral, f, e) if t is None else t
            for x, f, e, t in zip(axles, found, extra, given)
        ]
        over = [t is None and m > limit for t, m, limit in zip(given, moments, most)]
        if not any(over):
            break
        given = [limit if o else t for o, t, limit in zip(over, given, most)]
        if None not in given:
            moments = most
            break
    out = []
    for i, x in enumerate(axles):
        now = Stance()
        now.body, now.tyres = found[i]
        now.heave = heave(x, loads[i], now.spring)[0]
        now.left = held(0.0, rest[i] - moments[i] / x.track, loads[i])
        now.right = loads[i] - now.left
        now.lifted = given[i] is not None
        out.append(now)
    return out, None not in given
