"""Fits a side force curve to readings with SciPy: the formula written anew, another optimiser.

Pacejka, Tire and Vehicle Dynamics, 3rd ed. 2012, eqs 4.E19 to 4.E26, upright and at nominal pressure.
"""

import json
import sys

import numpy as np
from scipy.optimize import least_squares

asked = json.load(sys.stdin)
club = asked["club"]
load, slip, force = (np.array(asked[name]) for name in ("load", "slip", "force"))


def side_force(numbers):
    pdy1, pdy2, pky1 = numbers
    df = load / club["FNOMIN"] - 1
    peak = (pdy1 + pdy2 * df) * load
    stiffness = -pky1 * club["FNOMIN"] * np.sin(club["PKY4"] * np.arctan(load / (club["PKY2"] * club["FNOMIN"])))
    curvature = np.minimum(1, club["PEY1"] + club["PEY2"] * df)
    x = stiffness / (club["PCY1"] * peak) * np.tan(slip)
    return peak * np.sin(club["PCY1"] * np.arctan(x - curvature * (x - np.arctan(x))))


found = least_squares(
    lambda numbers: side_force(numbers) - force,
    [1, -0.1, -20],
    method="trf",
    loss="linear",
    x_scale=[1, 0.1, 20],
    xtol=1e-14,
    ftol=1e-14,
    gtol=1e-14,
)
freedom = len(force) - 3
covariance = np.linalg.inv(found.jac.T @ found.jac) * 2 * found.cost / freedom
print(json.dumps({"found": list(found.x), "spread": list(np.sqrt(np.diag(covariance)))}))
