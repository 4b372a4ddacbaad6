import type { SafetyFact } from "@rollbook/lib";
import { sheets } from "./sheets.js";

/** What a change card says of safety. */
export const safety = {
  smallest: "Smallest step first: this is one step of the adjuster.",
  more: (steps: string) =>
    `This is ${steps} of the adjuster, more than the smallest: one step would hardly be felt.`,
  mayDo: (steps: string) =>
    `This is ${steps} of the adjuster, more than the smallest, and one step may be felt already: drive one step first.`,
  alike: "Left and right alike: count aloud, mark, and check both sides.",
  stands: "Work only on a car that cannot move and that stands on stands made for it.",
  check: "A second person checks every fastener that was touched, against the maker’s figures.",
  first: "First lap slowly: any change may let either end slide earlier.",
  stop: "Stop and come in at once for a noise, a smell, a leak, or anything that surprises you twice. Anybody may stop the run, nobody has to say why.",
  rules: "The maker’s manual, the class rules, local codes and licensed people come first.",
  brakesRearwards:
    "This moves brake force rearwards. Never on a road car: rear wheels that lock first turn a car round.",
  levers: {
    springRate: [
      "A loaded spring can kill: only with the spring free of load, by the maker’s method and with the maker’s compressor. Leave it to a licensed workshop if you have not been taught it.",
      "Wheel nuts to the maker’s torque before the car rolls, and again after the first laps.",
      "A spring moves height, camber and toe: check all three before the run.",
    ],
    seatTurns: [
      "Wind seats only as the maker of the strut says: keep the thread engagement, and see that the spring stays seated at full droop.",
      "A seat moves height, camber and toe: check all three before the run.",
    ],
    barPosition: [
      "A link may be loaded and jump: level ground, or both wheels of the axle hanging alike.",
      "No twist in the bar at rest; nothing touches over full travel and lock.",
    ],
    rollCentreHeight: [
      "Check every torque, the brake hoses and the steering at full travel and full lock.",
      "Wheel nuts to the maker’s torque before the car rolls, and again after the first laps.",
      "Links move camber and toe: check both before the run.",
    ],
    camber: ["Camber moves toe: check it before the run, with the steering straight."],
    toe: ["See that the steering is straight and free from lock to lock, and its nuts are tight."],
    damperBump: [
      "Inside the maker’s range, never fully open or closed; force nothing.",
      "Dampers get very hot and some hold gas at high pressure: let them cool, never open one.",
    ],
    damperRebound: [
      "Inside the maker’s range, never fully open or closed; force nothing.",
      "Dampers get very hot and some hold gas at high pressure: let them cool, never open one.",
    ],
    tyrePressure: [
      "Never below the least nor above the greatest pressure of tyre maker and class. Stand aside from the tyre while you pump.",
      "Before the road home, set the road pressures again, cold.",
    ],
    brakeFrontShare: [
      "Brakes only by the maker’s instructions, and only if the class allows it.",
      "Try it in a straight line first, slowly, with nobody near, before any corner.",
    ],
    driver: ["Seat, belts and pedals are set for whoever drives, before the car rolls."],
    passenger: [
      "A passenger only where the organiser allows it, belted and equipped as the rules ask.",
    ],
    fuel: ["Fuel only where the venue allows it: engine off, no flame, an extinguisher at hand."],
    ballast: [
      "Ballast is bolted down as the maker and the class rules say, never strapped in for a trial.",
      "Stay within the load rating of the tyres.",
    ],
  },
} as const;

/** What to beware of while hands are at the car: what these changes ask for, then what any work does. */
export function safetyLines(facts: readonly SafetyFact[]): string[] {
  const own = new Set(facts.flatMap(linesOf));
  return [...own, safety.stands, safety.check, safety.first, safety.stop, safety.rules];
}

function linesOf(fact: SafetyFact): readonly string[] {
  switch (fact.code) {
    case "brakes-rearwards":
      return [safety.brakesRearwards];
    case "lever":
      return safety.levers[fact.lever];
    case "alike":
      return [safety.alike];
    case "smallest-step":
      return [safety.smallest];
    case "more-steps":
      return [(fact.oneIsFelt ? safety.mayDo : safety.more)(sheets.step(fact.steps))];
  }
}
