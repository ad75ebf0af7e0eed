import { quantilesInPlace } from "../numerics/order-statistics.js";
import { vocabulary } from "../quantity/vocabulary.js";
import { compileBatch } from "../reeving/batch.js";
import type { Line } from "../reeving/line.js";
import type { Turn } from "../reeving/station.js";
import { factorsOfLine, type InputFactors } from "./uncertain-input.js";

/** A sample of one hand force: takes a load and puts its quantiles into a place. */
export type QuantilesAt = (load: number, shares: readonly number[], into: Float64Array) => void;

/** Samples of what the hand feels. */
export interface SampledAnswers {
  readonly hauling: QuantilesAt;
  readonly easing: QuantilesAt;
  readonly deadBand: QuantilesAt;
}

/**
 * Samples of the hand forces of a line, ready for any load.
 *
 * Where every station passes on a straight line of its load, so does the whole line, draw by draw: two solutions of the
 * batch solver then give all others. Otherwise every load is solved.
 */
export function sampledAnswers(line: Line, factors: InputFactors, samples: number): SampledAnswers {
  const solve = solverOf(line, factors, samples);
  return (isStraight(line) && straightAnswers(solve, samples)) || solvedAnswers(solve, samples);
}

interface Forces {
  readonly hauling: Float64Array;
  readonly easing: Float64Array;
}

type Solve = (load: number) => Forces;

function solverOf(line: Line, factors: InputFactors, samples: number): Solve {
  const solver = compileBatch(line);
  const lineFactors = factorsOfLine(factors);
  return (load) => {
    const loads = new Float64Array(samples).fill(load);
    if (factors.load) for (let i = 0; i < samples; i++) loads[i]! *= factors.load[i]!;
    const forces = { hauling: new Float64Array(samples), easing: new Float64Array(samples) };
    solver.solve({ load: loads, factors: lineFactors }, forces);
    return forces;
  };
}

/** Whether no station bends the line of hand force over load: rings whose friction falls with load, ratchets that sense it. */
function isStraight(line: Line): boolean {
  const bends = (turn: Turn) =>
    (turn.kind === "ring" && turn.loadDependence !== undefined) ||
    (turn.kind === "ratchet" && turn.engageLoad !== undefined);
  return line.stations.every((station) => {
    if (station.kind === "cleat") return true;
    if (station.kind === "tackle")
      return station.reeving.ropes.every(({ turns }) => !turns.some(({ turn }) => bends(turn)));
    return !bends(station);
  });
}

/** Two loads so far apart, and so heavy, that the straight lines through them are found to the last digits. */
const probes = [vocabulary.loadTension.maximum / 1000, vocabulary.loadTension.maximum / 500] as const;

function straightAnswers(solve: Solve, samples: number): SampledAnswers | undefined {
  const [near, far] = probes;
  const first = solve(near);
  const second = solve(far);
  if (first.easing.some((force) => !(force > 0))) return undefined;
  const slopeOf = (one: Float64Array, other: Float64Array) => other.map((force, i) => (force - one[i]!) / (far - near));
  const offsetOf = (one: Float64Array, slope: Float64Array) => one.map((force, i) => force - slope[i]! * near);
  const haulSlope = slopeOf(first.hauling, second.hauling);
  const haulOffset = offsetOf(first.hauling, haulSlope);
  const easeSlope = slopeOf(first.easing, second.easing);
  const easeOffset = offsetOf(first.easing, easeSlope);
  const values = new Float64Array(samples);
  const wide = [haulSlope, haulOffset, easeSlope, easeOffset].map((column) => column.slice());
  const [wideHaul, wideHaulOffset, wideEase, wideEaseOffset] = wide as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  return {
    hauling: (load, shares, into) => {
      for (let i = 0; i < samples; i++) values[i] = haulSlope[i]! * load + haulOffset[i]!;
      quantilesInPlace(values, shares, into, [haulSlope, haulOffset]);
    },
    easing: (load, shares, into) => {
      for (let i = 0; i < samples; i++) values[i] = easeSlope[i]! * load + easeOffset[i]!;
      quantilesInPlace(values, shares, into, [easeSlope, easeOffset]);
      for (let i = 0; i < into.length; i++) into[i] = Math.max(0, into[i]!);
    },
    deadBand: (load, shares, into) => {
      for (let i = 0; i < samples; i++) {
        const ease = wideEase[i]! * load + wideEaseOffset[i]!;
        values[i] = wideHaul[i]! * load + wideHaulOffset[i]! - Math.max(0, ease);
      }
      quantilesInPlace(values, shares, into, wide);
    },
  };
}

function solvedAnswers(solve: Solve, samples: number): SampledAnswers {
  let at = Number.NaN;
  let forces: Forces = { hauling: new Float64Array(0), easing: new Float64Array(0) };
  const values = new Float64Array(samples);
  const asked =
    (fill: (forces: Forces) => void): QuantilesAt =>
    (load, shares, into) => {
      if (load !== at) forces = solve(load);
      at = load;
      fill(forces);
      quantilesInPlace(values, shares, into);
    };
  return {
    hauling: asked(({ hauling }) => values.set(hauling)),
    easing: asked(({ easing }) => values.set(easing)),
    deadBand: asked(({ hauling, easing }) => {
      for (let i = 0; i < samples; i++) values[i] = hauling[i]! - easing[i]!;
    }),
  };
}
