"""The car of a case with everything that does not change with its state."""

from math import inf

GRAVITY = 9.80665


class Coefficients:
    """Coefficients of a tyre by their published names; those that are missing are zero."""

    def __init__(self, given):
        self.__dict__.update(given)
        valid = given["valid"]
        self.loads = (valid["load"]["minimum"], valid["load"]["maximum"])
        self.pressures = (valid["pressure"]["minimum"], valid["pressure"]["maximum"])
        self.inclinations = (valid["inclination"]["minimum"], valid["inclination"]["maximum"])

    def __getattr__(self, name):
        if name[:2] in ("QB", "QC", "QD", "QE", "QH", "PP", "SS") and name.isupper():
            self.__dict__[name] = 0.0
            return 0.0
        raise AttributeError(name)


class Axle:
    """One axle. x is its distance ahead of the centre of gravity, m."""

    def __init__(self, given, sprung_mass, sprung_height, x, front, drive_share):
        g = given
        self.front = front
        self.x = x
        self.track = g["track"]
        self.stiffness = g["rollStiffness"]
        tyres = g.get("tyreRollStiffness")
        self.tyre_stiffness = inf if tyres in (None, "Infinity") else tyres
        self.own_share = g.get("ownForceShare", 0.0)
        self.sprung_mass = sprung_mass
        self.centre_height = g["rollCentreHeight"]
        self.arm = sprung_height - g["rollCentreHeight"]
        self.unsprung_mass = g["unsprungMass"]
        self.unsprung_height = g["unsprungHeight"]
        self.mass = sprung_mass + g["unsprungMass"]
        self.tyre = Coefficients(g["tyre"])
        self.pressure = both(g["pressure"])
        self.excess = g.get("leftExcessLoad", 0.0)
        self.camber = both(g["camber"])
        self.toe = both(g["toe"])
        self.independent = g["independent"]
        if self.independent:  # springs press along the leaning body
            self.stiffness += 9.80665 * self.sprung_mass * self.centre_height
        self.camber_gain = g.get("camberGain", 0.0)
        self.toe_gain = g.get("toeGain", 0.0)
        self.roll_steer = g.get("rollSteer", 0.0)
        self.wheel_rate = g["wheelRate"]
        self.damping = g.get("rollDamping", 0.0)
        self.downforce = g.get("downforceFactor", 0.0)
        self.compliance = g.get("complianceSteer", 0.0)
        self.drive_share = drive_share
        self._set_differential(g.get("differential") or {"kind": "open"})
        self._set_stops(g.get("stops"))

    def _set_differential(self, given):
        self.kind = given["kind"] if self.drive_share > 0 else "none"
        power = given.get("power", 0.0)
        self.lock = {"locked": 1.0, "limited-slip": power}.get(self.kind, 0.0)
        self.overrun = given.get("overrun", 0.0)

    def _set_stops(self, given):
        self.stops = given is not None
        if given is None:
            return
        self.bump_left = both(given["bumpLeft"])
        self.droop_left = both(given["droopLeft"])
        self.bump_stop = given["bumpStop"]
        self.droop_stop = given["droopStop"]


class Car:
    def __init__(self, given):
        sprung, share = given["sprungMass"], given["sprungFrontShare"]
        height, base = given["sprungHeight"], given["wheelbase"]
        front, rear = given["front"], given["rear"]
        mass_front = sprung * share + front["unsprungMass"]
        mass_rear = sprung * (1 - share) + rear["unsprungMass"]
        self.mass = mass_front + mass_rear
        self.wheelbase = base
        self.a = base * mass_rear / self.mass
        self.b = base * mass_front / self.mass
        moment = sprung * height + sum(x["unsprungMass"] * x["unsprungHeight"] for x in (front, rear))
        self.height = moment / self.mass
        drive = given["driveFrontShare"]
        self.front = Axle(front, sprung * share, height, self.a, True, drive)
        self.rear = Axle(rear, sprung * (1 - share), height, -self.b, False, 1 - drive)
        self.brake_front = given["brakeFrontShare"]
        self.drive_front = drive
        self.drag = given["dragFactor"]
        self.torsion = given.get("torsionStiffness")
        self.aligning = bool(given.get("aligning", True))
        self.yaw_inertia = given.get("yawInertia", 0.9 * self.mass * self.a * self.b)


def both(sides):
    """Left and right, by the names of the file."""
    return (sides["left"], sides["right"])
