import { within } from "../quantity/guard.js";
import type { Solid } from "./effusivity.js";
import { effusivity } from "./effusivity.js";
import { fluxRise } from "./half-space.js";
import { heatHistory, warmingElsewhere } from "./heat-history.js";
import { type Layered, layerResponse } from "./layer-response.js";
import { ropeHeatTransfer } from "./rope-stream.js";

/** A rope in a hand, as plain numbers. */
export interface HandContact {
  readonly ropeDiameter: number;
  /** Of the yarn. */
  readonly yarn: Solid;
  /** [K] */
  readonly ropeTemperature: number;
  readonly touchingShare: number;
  readonly contactLength: number;
  /** Part of the girth of the rope that lies on skin or glove [-]. */
  readonly girthShare: number;
  readonly skin: Solid;
  /** [K] */
  readonly handTemperature: number;
  /** Of the living skin [m]. */
  readonly livingDepth: number;
  readonly glove?: { readonly leather: Solid; readonly thickness: number };
}

/** How a hand warms up while a rope runs through it, and after it was let go. */
export interface HandCourse {
  /** From the start, closer while the rope runs [s]. */
  readonly times: readonly number[];
  /** Temperatures of the outer surface at these times, at a lost force [K]. */
  readonly outside: (lostForce: number) => number[];
  /** Temperatures of the living skin at these times, at a lost force [K]. */
  readonly living: (lostForce: number) => number[];
}

const stepsRunning = 36;

/** The living skin goes on warming after the rope has stopped, under a glove for many seconds: so long it is watched [s]. */
const watchedAfter = 10;
const looksAfter = 24;

/** Counts of steps at which temperatures are looked at: each step while the rope runs, then ever more seldom. */
function instantsOf(step: number): number[] {
  const during = Array.from({ length: stepsRunning }, (_, index) => index + 1);
  const after = Array.from({ length: looksAfter }, (_, index) => {
    const steps = (watchedAfter / step) * ((index + 1) / looksAfter) ** 2;
    return stepsRunning + Math.max(index + 1, Math.ceil(steps));
  });
  return [...during, ...after];
}

/** Warming after so many steps of a unit of steady flux [m² K/W], by what it hangs on: many contacts differ in their rope only. */
export type KnownResponses = Map<string, Map<number, number>>;

/**
 * Course of temperatures in a hand through which a rope runs at a steady speed, then stops.
 *
 *     heat made q = F_lost · v / A, shared out between hand and rope step by step; all temperatures are linear in q
 *
 * @param contact  sizes [m], shares [-], temperatures [K], solids
 * @param speed  v [m/s], 0 to 100
 * @param duration  for which the rope runs [s], above 0
 * @param known  responses of skin and glove that were worked out before; what is new is added
 * @returns times [s], to 10 s after the rope has stopped, and the temperatures at any lost force [K]
 * @throws ValueError outside these ranges
 * Valid for some seconds: blood flow, sweat and the air are left out.
 * Source: carslaw-jaeger, superposition.
 */
export function handCourse(
  contact: HandContact,
  speed: number,
  duration: number,
  known: KnownResponses = new Map(),
): HandCourse {
  const step = within("duration", duration, 1e-6) / stepsRunning;
  const instants = instantsOf(step);
  const h = ropeHeatTransfer({
    effusivity: effusivity(contact.yarn),
    contactLength: contact.contactLength,
    speed,
    touchingShare: contact.touchingShare,
  });
  const { outer, living } = responses(contact);
  const body = JSON.stringify([contact.skin, contact.livingDepth, contact.glove, step]);
  /** Worked out for those steps only that are asked for: a short run has millions of its steps in the seconds after it. */
  const responseOf = (at: (time: number) => number) => {
    const key = `${at === outer ? "outer" : "living"} ${body}`;
    const before = known.get(key) ?? new Map<number, number>();
    known.set(key, before);
    return (steps: number) => {
      const found = before.get(steps) ?? at(steps * step);
      before.set(steps, found);
      return found;
    };
  };
  const running = (value: number) => Array.from({ length: stepsRunning }, () => value);
  const outerAfter = responseOf(outer);
  const outerWhileRunning = Array.from({ length: stepsRunning }, (_, index) => outerAfter(index + 1));
  const intoBody = (flux: number, ropeExcess: number) =>
    heatHistory({ response: outerWhileRunning, flux: running(flux), heatTransfer: running(h), ropeExcess }).intoBody;
  const unit = intoBody(1, 0);
  const coldRope = intoBody(0, contact.ropeTemperature - contact.handTemperature);
  const fluxOf = speed / handArea(contact);
  const temperaturesAt = (at: (time: number) => number) => {
    const response = responseOf(at);
    const rise = warmingElsewhere(unit, response, instants);
    const offset = warmingElsewhere(coldRope, response, instants);
    return (lostForce: number) => {
      const flux = within("lostForce", lostForce) * fluxOf;
      return [contact.handTemperature, ...rise.map((one, n) => contact.handTemperature + flux * one + offset[n]!)];
    };
  };
  return {
    times: [0, ...instants.map((instant) => instant * step)],
    outside: (lostForce) => temperaturesAt(outer)(lostForce),
    living: temperaturesAt(living),
  };
}

/**
 * Area over which a rope lies on a hand.
 *
 *     A = π d · girth share · length
 *
 * @param contact  rope diameter [m], girth share [-], contact length [m]
 * @returns area [m²]
 * Source: statics, geometry.
 */
export function handArea({
  ropeDiameter,
  girthShare,
  contactLength,
}: Pick<HandContact, "ropeDiameter" | "girthShare" | "contactLength">): number {
  return (
    Math.PI *
    within("ropeDiameter", ropeDiameter) *
    within("touchingShare", girthShare) *
    within("contactLength", contactLength)
  );
}

/** Warming of the outside and of the living skin for a unit of steady flux. */
function responses({ skin, livingDepth, glove }: HandContact) {
  if (glove === undefined) {
    const at = (depth: number) => (time: number) => fluxRise({ flux: 1, depth, time, solid: skin });
    return { outer: at(0), living: at(livingDepth) };
  }
  const layered: Layered = { layer: glove.leather, thickness: glove.thickness, body: skin };
  return {
    outer: (time: number) => layerResponse(layered, time),
    living: (time: number) => layerResponse(layered, time, livingDepth),
  };
}
