"""Margin, hardest turn and motion of cars, worked out apart from the library.

Reads a JSON list of cases {car, driving, want, finely?} and writes a list of results; docs/model.md has the
definition. Written from it and from Pacejka 2012 alone, with other methods than the library's.
"""

import json
import sys
from multiprocessing import Pool

from car import Car
from hardest_turn import hardest_turn
from margin import margin_of, most_side_force
from moving_car import tightening_turn
from state import Drive


def described(car, p):
    return {
        "lateralAcceleration": p.lateral,
        "steer": p.steer,
        "sideSlip": p.beta,
        "push": p.level,
        "yawMoment": p.yaw,
        "slipAngle": {"front": p.front, "rear": p.rear},
        "load": {
            "front": {"left": p.stances[0].left, "right": p.stances[0].right},
            "rear": {"left": p.stances[1].left, "right": p.stances[1].right},
        },
        "lifted": {"front": p.stances[0].lifted, "rear": p.stances[1].lifted},
        "tips": p.tips,
    }


def margin_result(car, drive, _finely):
    p = most_side_force(car, drive)
    if p is None:
        return None
    return {"margin": margin_of(car, p), **described(car, p)}


def hardest_result(car, drive, finely):
    p, why = hardest_turn(car, drive, finely)
    if p is None:
        return None
    return {**described(car, p), "end": why, "tips": why == "tips"}


def moving_result(car, drive, _finely):
    return tightening_turn(car, drive.speed)


WORK = {"margin": margin_result, "hardest": hardest_result, "moving": moving_result}


def result_of(case):
    car = Car(case["car"])
    drive = Drive(car, case["driving"])
    finely = case.get("finely", False)
    return {name: WORK[name](car, drive, finely) for name in case["want"]}


def main():
    cases = json.load(sys.stdin)
    if len(cases) < 4:
        results = [result_of(x) for x in cases]
    else:
        with Pool(2) as pool:
            results = pool.map(result_of, cases, chunksize=1)
    json.dump(results, sys.stdout)


if __name__ == "__main__":
    main()
