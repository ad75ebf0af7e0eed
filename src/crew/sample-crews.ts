import { fatigueSets, type MuscleGroup, personalSpread } from "../materials/people-fatigue.js";
import { protocolFactor } from "../materials/people-grip.js";
import { normalQuantile } from "../numerics/normal.js";
import { bandAt, spreadPoints } from "../numerics/spread-points.js";
import { within } from "../quantity/guard.js";
import { prepareLine } from "../reeving/line.js";
import type { Band } from "../sources/band.js";
import type { Crews } from "./crew-days.js";
import { type HoldValues, heldPerNewton, holdCauses } from "./grip-demand.js";
import type { GripStrength } from "./grip-strength.js";
import { middleValues, type SheetOption } from "./sheet-option.js";

/** People, and the sheet that they hold. */
export interface CrewSample {
  readonly count: number;
  readonly seed: number;
  /** Grip of the people of one age group: mean [N] and deviation [N]. */
  readonly strength: GripStrength;
  readonly option: SheetOption;
  /** Load at which the friction of the line is weighed [N]. */
  readonly referenceLoad: number;
  /** The hand when absent. */
  readonly group?: MuscleGroup;
}

/** Nobody of the sample is weaker than this share of the mean [-]. */
const leastShare = 0.2;

/**
 * Crews drawn from the spreads of strength, friction, fatigue and recovery: the same ones for the same seed.
 *
 *     strength normal, all factors log-normal by halves, on evenly spread points;
 *     more left to hold than in the middle counts as less holding tension
 *
 * @param count  crews [-], 1 or more
 * @param seed  whole number [-]
 * @param strength  mean and deviation of the grip [N]
 * @param option  the sheet: how it is held, what its line loses
 * @param referenceLoad  load at which the line is weighed [N], above 0
 * @param group  muscles; the hand when absent
 * @returns holding tension [N], rates [1/s], rest factor [-]
 * @throws ValueError for a count, seed or load out of range
 * Valid for inputs that do not depend on each other: strong people do not tire sooner here, rough covers do not grip palm and tread at once.
 * Source: common practice, sampling of judged ranges; the ranges are those of the records.
 * Example: sampleCrews({ count: 3, seed: 1, strength: gripStrength({ norm: "steiber-2016", sex: "women", age: 30 }), referenceLoad: 100, option: { name: "bare", parts: [], hold: { cover: { strands: 16, fibre: "polyester", wet: false }, diameter: 0.008, hands: 1 }, causes: {}, lineWith: () => ({ rope: { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }) } }).holdingTension.length → 3
 */
export function sampleCrews({ count, seed, strength, option, referenceLoad, group = "hand" }: CrewSample): Crews {
  within("loadTension", referenceLoad, 1e-9);
  const set = fatigueSets[group];
  const people: Record<string, Band> = {
    ...holdCauses(option.hold),
    protocol: protocolFactor,
    fatigue: personalSpread.fatigue,
    recovery: personalSpread.recovery,
    rest: set.restFactor,
  };
  const peopleNames = Object.keys(people);
  const lineNames = Object.keys(option.causes);
  const columns = spreadPoints({ count, seed, dimensions: 1 + peopleNames.length + lineNames.length });
  const middleForce = easing(option, middleValues(option), referenceLoad);
  const crews: Crews = {
    holdingTension: new Float64Array(count),
    fatigueRate: new Float64Array(count),
    recoveryRate: new Float64Array(count),
    restFactor: new Float64Array(count),
  };
  for (let crew = 0; crew < count; crew++) {
    const shareOf = (column: number) => columns[column]![crew]!;
    const drawn = (names: readonly string[], bands: Readonly<Record<string, Band>>, first: number) =>
      Object.fromEntries(names.map((name, i) => [name, bandAt(bands[name]!, shareOf(first + i))]));
    const person = drawn(peopleNames, people, 1);
    const line = drawn(lineNames, option.causes, 1 + peopleNames.length);
    const grip = Math.max(
      leastShare * strength.mean.value,
      strength.mean.value + normalQuantile(shareOf(0)) * strength.deviation,
    );
    const harder = middleForce > 0 ? Math.max(1e-6, easing(option, line, referenceLoad) / middleForce) : 1;
    const perNewton = heldPerNewton(option.hold, person as HoldValues);
    crews.holdingTension[crew] = (grip * person.protocol! * perNewton) / harder;
    crews.fatigueRate[crew] = set.fatigueRate.value * person.fatigue!;
    crews.recoveryRate[crew] = set.recoveryRate.value * person.recovery!;
    crews.restFactor[crew] = person.rest!;
  }
  return crews;
}

function easing(option: SheetOption, values: Readonly<Record<string, number>>, load: number): number {
  return prepareLine(option.lineWith(values)).handForces(load).easing;
}
