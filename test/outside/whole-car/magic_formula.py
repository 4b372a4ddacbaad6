"""One tyre by Magic Formula 6.1, in the signs of the book (ISO 8855).

Pacejka, Tire and Vehicle Dynamics, 3rd ed. 2012, section 4.3.2, eqs 4.E1 to 4.E78, without turn
slip, all scaling factors 1. A slip angle above zero makes a force to the right here, and so does
an inclination above zero.
"""

from math import atan, cos, exp, pi, sin, sqrt, tan


def bent(x, e):
    """The argument of every arctangent of the formula."""
    return x - e * (x - atan(x))


def sign(x):
    return (x > 0) - (x < 0)


class RoadTyre:
    """A tyre under one load (N, above 0), pressure (Pa) and inclination (rad, book's sign)."""

    def __init__(self, q, load, pressure, inclination):
        self.q = q
        self.load = load
        self.df = df = (load - q.FNOMIN) / q.FNOMIN  # 4.E2a
        self.dp = dp = (pressure - q.NOMPRES) / q.NOMPRES  # 4.E2b
        self.gamma = gamma = sin(inclination)  # 4.E4
        self._set_longitudinal(q, load, df, dp, gamma)
        self._set_side(q, load, df, dp, gamma)
        self._set_combined(q, df, gamma)

    def _set_longitudinal(self, q, load, df, dp, gamma):
        friction = (q.PDX1 + q.PDX2 * df) * (1 + q.PPX3 * dp + q.PPX4 * dp * dp)
        friction *= 1 - q.PDX3 * gamma * gamma  # 4.E13
        self.Dx = friction * load  # 4.E12
        self.Ex = q.PEX1 + q.PEX2 * df + q.PEX3 * df * df  # 4.E14
        self.Kx = load * (q.PKX1 + q.PKX2 * df) * exp(q.PKX3 * df)
        self.Kx *= 1 + q.PPX1 * dp + q.PPX2 * dp * dp  # 4.E15
        self.Bx = self.Kx / (q.PCX1 * self.Dx)  # 4.E16
        self.SHx = q.PHX1 + q.PHX2 * df  # 4.E17
        self.SVx = load * (q.PVX1 + q.PVX2 * df)  # 4.E18

    def _set_side(self, q, load, df, dp, gamma):
        friction = (q.PDY1 + q.PDY2 * df) * (1 + q.PPY3 * dp + q.PPY4 * dp * dp)
        friction *= 1 - q.PDY3 * gamma * gamma  # 4.E23
        self.Dy = friction * load  # 4.E22
        at_load = load / q.FNOMIN / ((q.PKY2 + q.PKY5 * gamma * gamma) * (1 + q.PPY2 * dp))
        self.Ky = q.PKY1 * q.FNOMIN * (1 + q.PPY1 * dp) * (1 - q.PKY3 * abs(gamma))
        self.Ky *= sin(q.PKY4 * atan(at_load))  # 4.E25, below zero
        self.By = self.Ky / (q.PCY1 * self.Dy)  # 4.E26
        leaning = load * (q.PVY3 + q.PVY4 * df) * gamma  # 4.E28
        self.SVy = load * (q.PVY1 + q.PVY2 * df) + leaning  # 4.E29
        thrust = load * (q.PKY6 + q.PKY7 * df) * (1 + q.PPY5 * dp)  # 4.E30
        self.SHy = q.PHY1 + q.PHY2 * df + (thrust * gamma - leaning) / self.Ky  # 4.E27
        base = q.PEY1 + q.PEY2 * df  # 4.E24, for both signs of slip
        even, odd = 1 + q.PEY5 * gamma * gamma, q.PEY3 + q.PEY4 * gamma
        self.Ey_right = min(1.0, base * (even - odd))
        self.Ey_left = min(1.0, base * (even + odd))

    def _set_combined(self, q, df, gamma):
        self.Bxa = q.RBX1 + q.RBX3 * gamma * gamma  # 4.E54 at no slip
        self.Exa = min(1.0, q.REX1 + q.REX2 * df)  # 4.E56
        self.Gxa0 = cos(q.RCX1 * atan(bent(self.Bxa * q.RHX1, self.Exa))) if q.RHX1 else 1.0
        self.Byk = q.RBY1 + q.RBY4 * gamma * gamma  # 4.E62 at no slip angle
        self.Eyk = min(1.0, q.REY1 + q.REY2 * df)  # 4.E64
        self.SHyk = q.RHY1 + q.RHY2 * df  # 4.E65
        self.DVyk = self.Dy * (q.RVY1 + q.RVY2 * df + q.RVY3 * gamma)  # 4.E67 at no slip angle

    def pure_longitudinal(self, kappa):
        """Force forward, N, at a slip and no slip angle: 4.E9, 4.E10."""
        q = self.q
        slip = kappa + self.SHx
        e = min(1.0, self.Ex * (1 - q.PEX4 * sign(slip)))
        return self.Dx * sin(q.PCX1 * atan(bent(self.Bx * slip, e))) + self.SVx

    def pure_side(self, slope):
        """Force to the left, N, at the tangent of a slip angle: 4.E19, 4.E20."""
        slip = slope + self.SHy
        e = self.Ey_right if slip > 0 else self.Ey_left
        return self.Dy * sin(self.q.PCY1 * atan(bent(self.By * slip, e))) + self.SVy

    def longitudinal(self, kappa, slope):
        """Force forward, N, under both slips: 4.E50 to 4.E57."""
        q = self.q
        steep = self.Bxa / sqrt(1 + (q.RBX2 * kappa) ** 2)
        left = cos(q.RCX1 * atan(bent(steep * (slope + q.RHX1), self.Exa)))
        top = self.Gxa0
        if q.RHX1:
            top = cos(q.RCX1 * atan(bent(steep * q.RHX1, self.Exa)))
        return max(0.0, left / top) * self.pure_longitudinal(kappa)

    def side_parts(self, kappa, slope):
        """Force to the left under both slips in its two parts, N: 4.E58 to 4.E67."""
        q = self.q
        steep = self.Byk / sqrt(1 + (q.RBY2 * (slope - q.RBY3)) ** 2)
        left = cos(q.RCY1 * atan(bent(steep * (kappa + self.SHyk), self.Eyk)))
        top = cos(q.RCY1 * atan(bent(steep * self.SHyk, self.Eyk))) if self.SHyk else 1.0
        pull = 0.0
        if self.DVyk:
            pull = self.DVyk / sqrt(1 + (q.RVY4 * slope) ** 2)
            pull *= sin(q.RVY5 * atan(q.RVY6 * kappa))
        return max(0.0, left / top) * self.pure_side(slope), pull

    def side(self, kappa, slope):
        across, pull = self.side_parts(kappa, slope)
        return across + pull

    def peak_slip(self):
        """Slip above zero at which the pure force forward is greatest."""
        e = min(1.0, self.Ex * (1 - self.q.PEX4))
        goal = tan(pi / (2 * self.q.PCX1))
        x = goal  # the root of x − e(x − atan x) = goal, by Newton; the left side is monotone
        for _ in range(50):
            step = (bent(x, e) - goal) / (1 - e + e / (1 + x * x))
            x -= step
            if abs(step) < 1e-12 * (1 + abs(x)):
                break
        return x / self.Bx - self.SHx

    def upright(self):
        """The same tyre without lean, for its side force alone."""
        if self.gamma == 0:
            return self
        t = RoadTyre.__new__(RoadTyre)
        t.q = self.q
        t._set_side(self.q, self.load, self.df, self.dp, 0.0)
        t._set_combined(self.q, self.df, 0.0)
        return t

    def moment(self, kappa, slope, forward, left):
        """Aligning moment, N·m, anticlockwise from above: 4.E71 to 4.E78 with 4.E33 to 4.E49.

        forward and left are the forces under both slips.
        """
        q, df, gamma, load = self.q, self.df, self.gamma, self.load
        cosine = 1 / sqrt(1 + slope * slope)
        ratio = (self.Kx / self.Ky * kappa) ** 2
        at = slope + q.QHZ1 + q.QHZ2 * df + (q.QHZ3 + q.QHZ4 * df) * gamma  # 4.E34, 4.E35
        bt = (q.QBZ1 + q.QBZ2 * df + q.QBZ3 * df * df) * (
            1 + q.QBZ4 * gamma + q.QBZ5 * abs(gamma)
        )
        et = q.QEZ1 + q.QEZ2 * df + q.QEZ3 * df * df
        et *= 1 + (q.QEZ4 + q.QEZ5 * gamma) * 2 / pi * atan(bt * q.QCZ1 * at)
        et = min(1.0, et)  # 4.E44
        dt = load * q.UNLOADED_RADIUS / q.FNOMIN * (q.QDZ1 + q.QDZ2 * df)
        dt *= (1 - q.PPZ1 * self.dp) * (1 + q.QDZ3 * abs(gamma) + q.QDZ4 * gamma * gamma)
        equal = sqrt(at * at + ratio) * sign(at)  # 4.E77
        trail = dt * cos(q.QCZ1 * atan(bent(bt * equal, et))) * cosine  # 4.E73
        ar = slope + self.SHy + self.SVy / self.Ky  # 4.E37, 4.E38
        equal = sqrt(ar * ar + ratio) * sign(ar)  # 4.E78
        br = q.QBZ9 + q.QBZ10 * self.By * q.PCY1  # 4.E45
        lean = (q.QDZ8 + q.QDZ9 * df) * (1 - q.PPZ2 * self.dp)
        lean += (q.QDZ10 + q.QDZ11 * df) * abs(gamma)
        dr = load * q.UNLOADED_RADIUS * (q.QDZ6 + q.QDZ7 * df + lean * gamma)
        residual = dr * cosine * cos(atan(br * equal))  # 4.E75, 4.E47
        arm = q.SSZ1 + q.SSZ2 * left / q.FNOMIN + (q.SSZ3 + q.SSZ4 * df) * gamma
        across, _ = self.upright().side_parts(kappa, slope)  # 4.E74
        return -trail * across + residual + q.UNLOADED_RADIUS * arm * forward  # 4.E71
