import { ReevingError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import type { Outcome } from "../quantity/verdict.js";
import { segmentStretch } from "../rope/stretch.js";
import { type Band, bandOf } from "../sources/band.js";
import { holdOutcome } from "./hold.js";
import { type Line, type PreparedLine, prepareLine } from "./line.js";
import type { Direction } from "./mechanism-loads.js";

/** A piece of the line between the sail and the cleat that holds it. */
export interface Span {
  /** How many stations lie between the sail and this piece; with `inside`, the tackle itself is not counted. */
  readonly after: number;
  readonly length: number;
  readonly axialStiffness: number;
  /** True for the parts inside the tackle that comes next; length is that of one part. */
  readonly inside?: boolean;
}

/** A line under load, and its pieces up to the cleat. */
export interface StretchInput {
  readonly line: PreparedLine;
  readonly load: number;
  readonly direction: Direction;
  readonly spans: readonly Span[];
}

/** A piece under its own tension, and how far it moves the sail. */
interface LoadedSpan {
  readonly span: Span;
  /** Tension of each rope part of the piece [N]. */
  readonly tensions: readonly number[];
  /** Metres that the sail moves for each metre that the piece gains. */
  readonly atSail: number;
}

/** Tension of every piece, and its weight at the sail: a piece behind a purchase moves the sail by its stretch over the velocity ratio. */
function loadedSpans({ line, load, direction, spans }: StretchInput): LoadedSpan[] {
  const { stations } = line.state(load, direction);
  /** Metres of line there for each metre at the sail. */
  const speedAfter = (count: number) => (count === 0 ? 1 : stations[count - 1]!.lineSpeed * line.velocityRatio);
  return spans.map((span) => {
    const last = span.inside === true ? stations.length - 1 : stations.length;
    if (!(Number.isInteger(span.after) && span.after >= 0 && span.after <= last)) {
      throw new ReevingError({
        quantity: "place of a piece of line",
        value: `after ${span.after} stations`,
        allowed: `a whole number from 0 to ${last}`,
        advice: "Count the stations between the sail and the piece.",
      });
    }
    if (span.inside === true) {
      return { span, tensions: stations[span.after]!.parts, atSail: 1 / speedAfter(span.after + 1) };
    }
    const tension = span.after === 0 ? load : stations[span.after - 1]!.handTension;
    return { span, tensions: [tension], atSail: 1 / speedAfter(span.after) };
  });
}

/**
 * How far a sail moves because the line behind it stretches.
 *
 *     ΔL_sail = Σ T_i · L_i / (EA_i · VR_i)
 *
 * T_i is the tension of the piece, which friction changes from station to station; VR_i the metres of line there for each metre at the sail.
 *
 * @param line  prepared line
 * @param load  at the sail [N], 0 or more
 * @param direction  hauling: just after the line was hauled in; easing: while the sail pulls it out
 * @param spans  pieces from the sail to the cleat [m, N]; what lies behind the cleat does not count
 * @returns movement at the sail [m]
 * @throws ReevingError for a piece that lies nowhere, ValueError for impossible numbers
 * Valid for a purchase of one rope where `inside` is used.
 * Source: statics, law of Hooke and virtual work. Example: stretchAtSail({ line: prepareLine({ rope: { diameter: 0.005, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }), load: 500, direction: "easing", spans: [{ after: 0, length: 10, axialStiffness: 50000 }] }) → 0.1
 */
export function stretchAtSail(input: StretchInput): number {
  return loadedSpans(input).reduce((sum, { span, tensions, atSail }) => {
    const { length, axialStiffness } = span;
    return tensions.reduce(
      (inner, tension) => inner + atSail * segmentStretch({ length, axialStiffness, tension }),
      sum,
    );
  }, 0);
}

/**
 * Load at the sail at which a line slips through its closed cleat, friction on the way helping.
 *
 *     least load that goes out by itself, with T_hold at the cleat
 *
 * @param line  stations with one closed cleat, whose hold load is replaced [N]
 * @param slipLoad  T_hold at the cleat with its range [N]
 * @returns load at the sail with its range [N]
 * @throws ReevingError when no closed cleat is among the stations
 * Source: statics. Example: slipLoadAtSail({ line: { rope: { diameter: 0.005, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "cleat", name: "cleat", closed: true, holdLoad: 0 }] }, slipLoad: { value: 300, low: 300, high: 300 } }).value → 300
 */
export function slipLoadAtSail({ line, slipLoad }: { readonly line: Line; readonly slipLoad: Band }): Band {
  if (!line.stations.some((station) => station.kind === "cleat" && station.closed)) {
    throw new ReevingError({
      quantity: "line",
      value: "no closed cleat",
      allowed: "one closed cleat among the stations",
      advice: "Add a cleat with closed: true.",
    });
  }
  const atSail = (holdLoad: number) =>
    prepareLine({
      ...line,
      stations: line.stations.map((station) =>
        station.kind === "cleat" && station.closed ? { ...station, holdLoad } : station,
      ),
    }).runOutLoad();
  return bandOf({ slipLoad }, (values) => atSail(Math.max(0, values.slipLoad)));
}

/** A line that was set and left. */
export interface ShapeInput {
  readonly line: PreparedLine;
  readonly spans: readonly Span[];
  /** True stiffness over the stiffness given in the spans, with its range [-]. */
  readonly stiffnessFactor: Band;
  /** Load at the sail when the line was set [N]. */
  readonly setLoad: number;
  /** Load at the sail in the gusts, with its range [N]. */
  readonly gustLoad: Band;
  /** Strain gained by creep at a tension, over the time in question, with its range [-]. */
  readonly creep: (tension: number) => Band;
  /** Load at the sail at which the line slips, with its range [N]. */
  readonly slipLoad: Band;
  /** Load that the sail drops for each metre of line that it is given, with its range [N/m]. */
  readonly giveStiffness: Band;
}

/** What a set shape loses, in metres at the sail, each with its range. */
export interface ShapeLost {
  /** In a gust; comes back after it. */
  readonly stretch: Band;
  /** By the end of the time; stays. */
  readonly creep: Band;
  /** After the first gust that slips; stays. */
  readonly slip: Band;
  readonly total: Band;
  /** Whether the cleat holds the gusts. */
  readonly holds: Outcome;
}

/**
 * How much of a set shape is lost after a time: stretch in a gust, creep, and slip at the cleat.
 *
 *     stretch = ΔL(T_gust) − ΔL(T_set),   creep = Σ ε(T_i) · L_i / VR_i,   slip = max(0, T_gust − T_slip) / k_g
 *
 * A line that slips stops when the sail has lost so much load that the cleat holds again.
 *
 * @param line  prepared line
 * @param spans  pieces from the sail to the cleat [m, N]
 * @param stiffnessFactor  true stiffness over the one given, with its range [-]
 * @param setLoad  T_set at the sail [N]
 * @param gustLoad  T_gust at the sail with its range [N]
 * @param creep  strain gained over the time, from the tension in newtons, with its range [-]
 * @param slipLoad  T_slip at the sail with its range [N]
 * @param giveStiffness  k_g with its range [N/m]
 * @returns losses at the sail with their ranges [m], and whether the cleat holds
 * @throws ReevingError, ValueError for what cannot be
 * Valid for gusts above the load at which the line was set. Creep is taken at the load at which it was set.
 * Source: statics; creep as its law says. Example: shapeLost({ line: prepareLine({ rope: { diameter: 0.005, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }), spans: [{ after: 0, length: 10, axialStiffness: 50000 }], stiffnessFactor: { value: 1, low: 1, high: 1 }, setLoad: 500, gustLoad: { value: 700, low: 700, high: 700 }, creep: () => ({ value: 0.001, low: 0.001, high: 0.001 }), slipLoad: { value: 600, low: 600, high: 600 }, giveStiffness: { value: 1000, low: 1000, high: 1000 } }).total.value → 0.15
 */
export function shapeLost(input: ShapeInput): ShapeLost {
  const { line, spans, stiffnessFactor, setLoad, gustLoad, slipLoad, giveStiffness } = input;
  const stretchUnder = (load: number) => stretchAtSail({ line, load, direction: "easing", spans });
  const atSet = stretchUnder(within("loadTension", setLoad));
  const stretch = bandOf({ stiffnessFactor, gustLoad }, (values) =>
    Math.max(
      0,
      (stretchUnder(Math.max(0, values.gustLoad)) - atSet) / within("loadFactor", values.stiffnessFactor, 1e-3),
    ),
  );
  const creep = creepAtSail(loadedSpans({ line, load: setLoad, direction: "easing", spans }), input.creep);
  const slip = bandOf(
    { gustLoad, slipLoad, giveStiffness },
    (values) => Math.max(0, values.gustLoad - values.slipLoad) / within("giveStiffness", values.giveStiffness),
  );
  const parts = [stretch, creep, slip].map(notBelowZero);
  const [stretched, crept, slipped] = parts as [Band, Band, Band];
  return {
    stretch: stretched,
    creep: crept,
    slip: slipped,
    total: sumOf(parts),
    holds: holdOutcome({ slipLoad, load: gustLoad }),
  };
}

/** The same rope in every piece creeps alike: its ends are added, not mixed. */
function creepAtSail(spans: readonly LoadedSpan[], creep: ShapeInput["creep"]): Band {
  const sum = (end: (band: Band) => number) =>
    spans.reduce(
      (total, { span, tensions, atSail }) =>
        total + tensions.reduce((inner, tension) => inner + end(creep(tension)) * span.length * atSail, 0),
      0,
    );
  return { value: sum(({ value }) => value), low: sum(({ low }) => low), high: sum(({ high }) => high) };
}

function notBelowZero({ value, low, high }: Band): Band {
  return { value, low: Math.max(0, low), high };
}

function sumOf(parts: readonly Band[]): Band {
  const value = parts.reduce((sum, part) => sum + part.value, 0);
  const low = value - Math.hypot(...parts.map((part) => part.value - part.low));
  return { value, low: Math.max(0, low), high: value + Math.hypot(...parts.map((part) => part.high - part.value)) };
}
