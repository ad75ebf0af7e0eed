import { practice } from "../materials/practice.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { type HandForces, prepareLine } from "./line.js";
import type { Station } from "./reeving.js";
import { type RunningRing, ringOf, ringRanges } from "./running-ring.js";

/** Lines that go through one ring, and the rest of each of them. */
export interface SharedLead extends RunningRing {
  readonly wrapAngle: number;
  /** Stations between ring and hand; none when absent. */
  readonly towardsHand?: readonly Station[];
  /** Lines through the ring, this one counted [-], 2 to 8. */
  readonly lines: number;
  readonly load: number;
}

/** What the hand feels of one lead, with ranges. */
export interface LeadForces {
  /** [N] */
  readonly hauling: Band;
  /** [N] */
  readonly easing: Band;
  /** Least load at which the line goes out by itself [N]. */
  readonly runOutLoad: Band;
}

/** What the hand feels with a ring to each line, and with one for all. */
export interface SharedLeadForces {
  readonly alone: LeadForces;
  readonly shared: LeadForces;
  /** Pull that separating the lines saves while hauling [N]. */
  readonly saved: Band;
  /** Load less by which the line goes out when it is separated [N]. */
  readonly runOutSaved: Band;
}

/**
 * What it costs when lines share a ring, and what separating them buys.
 *
 *     ln k_shared = f · ln k_alone,   f about 1.25
 *
 * Other factors in the range of f are taken in the logarithm of the force: exact for a ring of constant friction
 * without drag, and close for the others.
 *
 * @param lead  ring, rope, wrap angle [rad], lines [-] and load [N], with ranges
 * @returns hauling, easing and run-out load, alone and shared, and what is saved [N]
 * @throws ValueError for an impossible ring, load or number of lines
 * Source: common practice for the factor.
 */
export function sharedLead(lead: SharedLead): SharedLeadForces {
  const { wrapAngle, towardsHand = [], load } = lead;
  const lines = within("lineCount", lead.lines, 2);
  const factor = practice.sharedLeadFactor;
  const ranges = { ...ringRanges(lead), factor };
  const both = (values: Record<keyof typeof ranges, number>) => {
    const { rope, ring } = ringOf(lead, wrapAngle, values);
    const through = (count: number) =>
      prepareLine({ rope, stations: [{ ...ring, lines: count }, ...towardsHand] }).handForces(load);
    return { one: through(1), all: through(lines), over: (values.factor - 1) / (factor.value - 1) };
  };
  type Both = ReturnType<typeof both>;
  const shared = ({ one, all, over }: Both, name: keyof LeadForces) => between(one, all, over, name);
  const band = (pick: (forces: Both) => number) => bandOf(ranges, (values) => pick(both(values)));
  const leadForces = (pick: (forces: Both, name: keyof LeadForces) => number): LeadForces => ({
    hauling: band((forces) => pick(forces, "hauling")),
    easing: band((forces) => pick(forces, "easing")),
    runOutLoad: band((forces) => pick(forces, "runOutLoad")),
  });
  return {
    alone: leadForces(({ one }, name) => one[name]),
    shared: leadForces(shared),
    saved: band((forces) => shared(forces, "hauling") - forces.one.hauling),
    runOutSaved: band((forces) => shared(forces, "runOutLoad") - forces.one.runOutLoad),
  };
}

/** Force at another shared-lead factor than that of the ring; a force that vanishes stays as it is. */
function between(one: HandForces, all: HandForces, over: number, name: keyof LeadForces): number {
  return one[name] > 0 && all[name] > 0 ? one[name] * (all[name] / one[name]) ** over : all[name];
}
