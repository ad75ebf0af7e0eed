import { fastening } from "../materials/lashing-shackle.js";
import { OutsideModelError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { breakLoad } from "./break-load.js";
import { type RopeMake, ropeLinearDensity } from "./make.js";
import { retainedStrength } from "./retained.js";
import { squareRule, squareRuleSize } from "./rules.js";
import { roundLinearDensity } from "./yarn.js";

/** A lashing of twine between two eyes. */
export interface Lashing {
  readonly twine: RopeMake;
  /** Whole rounds; each has two parts that carry. */
  readonly rounds: number;
  /** Distance between the eyes [m]. */
  readonly gap: number;
  /** Diameter of the thinner eye's bar [m]. */
  readonly eyeDiameter: number;
}

/** What a fastening carries and weighs. */
export interface Fastening {
  /** Load at which it breaks; of a shackle the working load times the safety factor [N]. */
  readonly breakLoad: Band;
  /** Mass [kg]. */
  readonly mass: Band;
}

/**
 * Break load and mass of a lashing.
 *
 *     F = 2 n · s · η_s(bend, knot outside) · F_b,   m = m' · gap · (n · round + tail)
 *
 * @param lashing  twine, rounds [-] 1 to 30, gap [m], bar of the eye [m]
 * @returns break load [N] and mass [kg] with their ranges
 * @throws ValueError outside these ranges
 * Valid for a lashing drawn tight and hitched round its own parts, so that the hitches carry little.
 * Source: common practice for the way it is tied; shares are records. Example: lashing({ twine: { fibre: "hmpe", construction: "bareBraid", diameter: 0.0015 }, rounds: 3, gap: 0.03, eyeDiameter: 0.005 }).mass.value → 0.00049
 */
export function lashing({ twine, rounds, gap, eyeDiameter }: Lashing): Fastening {
  within("turnCount", rounds, 1);
  within("lineLength", gap);
  const diameterRatio = within("diameterRatio", eyeDiameter / twine.diameter);
  const retained = retainedStrength({ fibre: twine.fibre, ends: [], diameterRatio, use: "new", wet: false });
  const { lashingSharing: sharing, lashingRound: round, lashingTail: tail } = fastening;
  return {
    breakLoad: bandOf(
      { one: breakLoad(twine), sharing, retained },
      (values) => 2 * rounds * values.sharing * values.retained * values.one,
    ),
    mass: bandOf(
      { density: ropeLinearDensity(twine), round, tail },
      (values) => values.density * gap * (rounds * values.round + values.tail),
    ),
  };
}

/**
 * Least number of rounds with which a lashing carries a load at the weak end of its range.
 *
 * @param plan  twine, gap [m] and bar [m] as in a lashing; load that it must carry before it breaks [N]
 * @returns rounds [-]
 * @throws OutsideModelError when 30 rounds are not enough
 * Source: common practice. Example: lashingRounds({ twine: { fibre: "hmpe", construction: "bareBraid", diameter: 0.0015 }, gap: 0.03, eyeDiameter: 0.005, load: 5000 }) → 5
 */
export function lashingRounds({ load, ...plan }: Omit<Lashing, "rounds"> & { readonly load: number }): number {
  within("breakLoad", load);
  for (let rounds = 1; rounds <= 30; rounds += 1) if (lashing({ ...plan, rounds }).breakLoad.low >= load) return rounds;
  throw new OutsideModelError({
    quantity: "rounds of a lashing",
    value: `more than 30 for ${load} N`,
    allowed: "at most 30",
    advice: "Take thicker twine or a stronger fibre.",
  });
}

/**
 * Working load and mass of a steel shackle.
 *
 *     F_w = 3 short tons a square inch · D²,   m = ρ · π/4 · D² · (bar length over D) · D
 *
 * @param barDiameter  D [m], above 0
 * @returns working load [N] and mass [kg] with their ranges
 * Valid for plain steel shackles loaded in line; the marked working load decides.
 * Source: navy-steelworker, shackles. Example: shackle({ barDiameter: 0.005 }).mass.value → 0.0157
 */
export function shackle({ barDiameter }: { readonly barDiameter: number }): {
  readonly workingLoad: Band;
  readonly mass: Band;
} {
  const { shackleWorkingStress: factor, steelDensity: density, shackleBarLength: length } = fastening;
  return {
    workingLoad: bandOf({ factor }, (values) => squareRule({ factor: values.factor, size: barDiameter })),
    mass: bandOf(
      { density, length },
      (values) => roundLinearDensity({ diameter: barDiameter, density: values.density }) * values.length * barDiameter,
    ),
  };
}

/**
 * Bar diameter of the shackle that a working load asks for.
 *
 * @param load  working load [N], 0 to 1 MN
 * @returns bar diameter [m], by the middle of the rule
 * Source: navy-steelworker, shackles. Example: shackleFor(3000) → 0.0085
 */
export function shackleFor(load: number): number {
  return squareRuleSize({ factor: fastening.shackleWorkingStress.value, load });
}
