"""What can be checked of the independent solution itself, by published numbers and identities.

Reads {"tyre": coefficients of the published road tyre, "cars": cars} and writes a list of
{what, found, expected, within}; within is absolute, or None where found must be at most expected.
"""

import json
import random
import sys
from math import degrees, radians, tan

from car import GRAVITY, Car, Coefficients
from equilibrium import Ground
from hardest_turn import hardest_turn
from magic_formula import RoadTyre
from margin import most_side_force
from roll import stances
from state import Drive, point_at
from wheels import axle_pushes, wheels_of

RESULTS = []
PHASES = {"braking": (-4, 0), "turn-in": (-1, 12), "middle": (0, 0), "power": (2, 0)}


def check(what, found, expected, within):
    RESULTS.append({"what": what, "found": found, "expected": expected, "within": within})


def peak_of(curve):
    """Greatest value of a curve of the slip angle in degrees, on a fine grid."""
    return max(curve(tan(radians(i / 100))) for i in range(-2500, 2501))


def check_side_force(q):
    """Pacejka 2012, Appendix 3: values worked out from its table by two methods."""
    known = {
        187e3: (58077.8, 0.90602, 3624.1),
        220e3: (53353.1, 0.87850, 3514.0),
        253e3: (48580.1, 0.86209, 3448.4),
    }
    for pressure, (stiffness, friction, peak) in known.items():
        t = RoadTyre(q, 4000, pressure, 0)
        both = (peak_of(t.pure_side) - min(t.pure_side(tan(radians(i / 100))) for i in range(2500))) / 2
        name = f"published tyre at {pressure / 1e3:.0f} kPa"
        check(f"{name}: cornering stiffness, N/rad", -t.Ky, stiffness, 0.06)
        check(f"{name}: friction", t.Dy / 4000, friction, 6e-6)
        check(f"{name}: mean peak, N", both, peak, 0.06)


def check_pair(q):
    """Mean peaks of a pair of the published tyre as load moves across it."""
    known = {0: 7028.0, 1000: 6990.7, 2000: 6886.6, 3000: 6726.7}
    for shift, expected in known.items():
        tyres = [RoadTyre(q, 4000 + d, 220e3, 0) for d in (-shift, shift)]
        slopes = [tan(radians(i / 100)) for i in range(-2500, 2501)]
        sums = [sum(t.pure_side(x) for t in tyres) for x in slopes]
        check(f"pair with {shift} N across: mean peak, N", (max(sums) - min(sums)) / 2, expected, 0.06)


def check_longitudinal(q):
    """At its peak the sine of the formula is 1: the force is D + SV; one slip leaves the other."""
    t = RoadTyre(q, 4500, 210e3, 0.03)
    check("peak push, N", t.pure_longitudinal(t.peak_slip()), t.Dx + t.SVx, 1e-6)
    check("no slip angle leaves the push, N", t.longitudinal(0.05, 0.0), t.pure_longitudinal(0.05), 1e-9)
    across, _ = t.side_parts(0.0, 0.08)
    check("no slip leaves the side force, N", across, t.pure_side(0.08), 1e-9)


def check_transfer():
    """Barton and Fieldhouse, Automotive Chassis Engineering, 2018, p. 174: 10.912 deg/g of roll,
    and what links and wheels move. Tyres rigid, axles on pins at their roll centres, as that book has them."""
    car = Car(barton())
    left = 0.6 * GRAVITY
    loads = [x.mass * GRAVITY for x in (car.front, car.rear)]
    both, _ = stances(car, left, loads, (0.0, 0.0))
    check("roll gradient, deg/g", degrees(both[0].body) / 0.6, 10.912, 0.02)
    moved = [(s.right - s.left) / 2 for s in both]
    total = sum(moved) * 1.46
    linked = (195.06 + 759.60 + 158.04 + 217.70) * 1.46
    check("moment of links and wheels, N·m", total - 28650 * both[0].body, linked, 0.001 * linked)


def barton():
    even = {"left": 0, "right": 0}
    tyre = {"valid": {x: {"minimum": 0, "maximum": 1} for x in ("load", "pressure", "inclination")}}

    def axle(centre, mass, height):
        return {
            "track": 1.46,
            "rollStiffness": 14325,
            "rollCentreHeight": centre,
            "ownForceShare": 1,
            "unsprungMass": mass,
            "unsprungHeight": height,
            "tyre": tyre,
            "pressure": even,
            "camber": even,
            "toe": even,
            "independent": False,
            "wheelRate": 2e4,
        }

    # 0.365 m above the line between the roll centres at the body's centre of gravity
    height = 0.365 + 0.54 * 0.07 + 0.46 * 0.32
    return {
        "sprungMass": 1280,
        "sprungHeight": height,
        "sprungFrontShare": 0.54,
        "wheelbase": 2.5,
        "brakeFrontShare": 0.6,
        "driveFrontShare": 0,
        "dragFactor": 0,
        "front": axle(0.07, 140, 0.28),
        "rear": axle(0.32, 180, 0.30),
    }


def check_rigid(given, number):
    """On springs and tyres that do not give, the tyres hold m·B·h."""
    stiff = json.loads(json.dumps(given))
    for end in ("front", "rear"):
        stiff[end].update(rollStiffness=1e12, tyreRollStiffness=None, stops=None)
    stiff.pop("torsionStiffness", None)
    car = Car(stiff)
    loads = [x.mass * GRAVITY for x in (car.front, car.rear)]
    both, _ = stances(car, 1.5, loads, (0.0, 0.0))
    check(f"car {number}: sum of loads, N", sum(s.left + s.right for s in both), car.mass * GRAVITY, 1e-6)
    moment = sum(
        x.track * ((s.right - s.left) / 2 + x.excess) for x, s in zip((car.front, car.rear), both)
    )
    check(f"car {number}: moment of a rigid car, N·m", moment, car.mass * 1.5 * car.height, 1e-4)


def check_roll(given, number):
    """The energy of springs, tyres, weights and forces is stationary at the angles found."""
    car = Car({**given, "front": {**given["front"], "stops": None}, "rear": {**given["rear"], "stops": None}})
    loads = [x.mass * GRAVITY for x in (car.front, car.rear)]
    lateral = 2.0
    both, _ = stances(car, lateral, loads, (0.0, 0.0))
    angles = [both[0].body, both[1].body, both[0].tyres, both[1].tyres]
    ways = [(0, 1), (2,), (3,)] if car.torsion is None else [(0,), (1,), (2,), (3,)]
    for way in ways:
        up, down = list(angles), list(angles)
        for i in way:
            up[i] += 1e-4
            down[i] -= 1e-4
        slope = (energy(car, lateral, up) - energy(car, lateral, down)) / 2e-4
        check(f"car {number}: gradient of energy {way}, N·m", slope, 0.0, 1e-3)


def energy(car, lateral, angles):
    """Springs, tyres and twist, less what gravity and the turn do as the masses move, J."""
    total = 0.0
    for i, x in enumerate((car.front, car.rear)):
        body, tyres = angles[i], angles[2 + i]
        total += x.stiffness * (body - tyres) ** 2 / 2 + x.tyre_stiffness * tyres**2 / 2
        total -= x.sprung_mass * x.centre_height * (lateral * tyres + GRAVITY * tyres**2 / 2)
        total -= x.sprung_mass * x.arm * (lateral * body + GRAVITY * body**2 / 2)
        own = (1 - x.own_share) * body + x.own_share * tyres
        hung = x.unsprung_mass * x.unsprung_height
        total -= hung * (lateral * own + GRAVITY * own**2 / 2)
    if car.torsion is not None:
        total += car.torsion * (angles[0] - angles[1]) ** 2 / 2
    return total


def mirrored(given):
    turned = json.loads(json.dumps(given))
    for end in ("front", "rear"):
        axle = turned[end]
        axle["leftExcessLoad"] = -axle["leftExcessLoad"]
        for where in (axle, axle.get("stops") or {}):
            for value in where.values():
                if isinstance(value, dict) and set(value) == {"left", "right"}:
                    value["left"], value["right"] = value["right"], value["left"]
    return turned


def check_mirror(given, number):
    """The mirrored car turning the other way has the mirrored forces."""
    cars = Car(given), Car(mirrored(given))
    driving = {"speed": 25, "longitudinalAcceleration": -1}
    drives = [Drive(c, {**driving, "lateralJerk": j}) for c, j in zip(cars, (6, -6))]
    args = 0.045, 0.035, 400.0, 4.0
    one = point_at(cars[0], drives[0], *args)
    other = point_at(cars[1], drives[1], -args[0], -args[1], args[2], -args[3])
    check(f"car {number} mirrored: forward", other.ahead, one.ahead, 1e-7)
    check(f"car {number} mirrored: across", -other.across, one.across, 1e-7)
    check(f"car {number} mirrored: yaw moment, N·m", -other.yaw, one.yaw, 1e-4)


def check_states(given, number, rng):
    """What is found is in balance, and nothing near turns harder."""
    car = Car(given)
    for name, (along, jerk) in PHASES.items():
        drive = Drive(car, {"cornerRadius": 60, "longitudinalAcceleration": along, "lateralJerk": jerk})
        what = f"car {number}, {name}"
        top = most_side_force(car, drive)
        if top is None:
            continue
        check(f"{what}: forces of the margin's state, m/s²", top.ahead + top.across, 0.0, 2e-5)
        ground = Ground(car, drive)
        ground.lateral, ground.level = top.lateral, top.level
        most = -1.0
        for k in range(40):
            size = radians(2.0) if k % 2 else radians(0.1)
            p = ground.state(top.front + rng.uniform(-size, size), top.rear + rng.uniform(-size, size))
            if p is not None:
                most = max(most, p.lateral)
        check(f"{what}: nothing near has more side force", most, top.lateral + 2e-5, None)
        turn, _ = hardest_turn(car, drive)
        left = abs(turn.ahead) + abs(turn.across)
        check(f"{what}: forces of the hardest turn, m/s²", left, 0.0, 1e-5)
        check(f"{what}: its yaw moment, N·m", turn.yaw, 0.0, 0.01)
        check(f"{what}: hardest turn within the most", turn.lateral, top.lateral + 2e-5, None)
        check_wheels(car, turn, what)


def check_wheels(car, p, what):
    """Wheel loads carry the weight, and a differential does to pushes what it is."""
    for axle, stance, steer in zip((car.front, car.rear), p.stances, (p.steer, 0.0)):
        left, right = wheels_of(axle, stance, steer, p.beta, p.curve, p.body_lateral)
        one, two = axle_pushes(car, axle, left, right, p.level)
        end = "front" if axle.front else "rear"
        if axle.kind == "open" and p.level > 0:
            check(f"{what}: an open {end} pushes alike, N", one - two, 0.0, 1e-6)
        held = abs(left.slip_for(one)) > 0.999 * left.most or abs(right.slip_for(two)) > 0.999 * right.most
        if axle.kind == "locked" and left.loaded and right.loaded and not held:
            fast = [(1 + w.slip_for(x)) * w.speed for w, x in ((left, one), (right, two))]
            check(f"{what}: a locked {end} turns as one", fast[0] / fast[1], 1.0, 1e-6)


def main():
    given = json.load(sys.stdin)
    q = Coefficients(given["tyre"])
    check_side_force(q)
    check_pair(q)
    check_longitudinal(q)
    check_transfer()
    rng = random.Random(7)
    for number, car in enumerate(given["cars"]):
        check_rigid(car, number)
        check_roll(car, number)
        check_mirror(car, number)
        check_states(car, number, rng)
    json.dump(RESULTS, sys.stdout)


if __name__ == "__main__":
    main()
