import { practice } from "../materials/practice.js";
import { type Band, bandOf } from "../sources/band.js";
import { type Line, prepareLine } from "./line.js";
import type { Station } from "./reeving.js";
import type { Ring } from "./station.js";

/** Lines that go through one ring, and the rest of each of them. */
export interface SharedLead {
  readonly ring: Ring;
  readonly rope: Line["rope"];
  /** Stations between ring and hand; none when absent. */
  readonly towardsHand?: readonly Station[];
  /** Lines through the ring, this one counted [-], 2 to 8. */
  readonly lines: number;
  readonly load: number;
}

/** What the hand feels with a ring to each line, and with one for all. */
export interface SharedLeadForces {
  readonly alone: { readonly hauling: number; readonly easing: number; readonly runOutLoad: number };
  /** With the range of the shared-lead factor [N]. */
  readonly shared: { readonly hauling: Band; readonly easing: Band; readonly runOutLoad: Band };
  /** Pull that separating the lines saves while hauling [N]. */
  readonly saved: Band;
  readonly flags: readonly string[];
}

/**
 * What it costs when lines share a ring.
 *
 *     ln k_shared = f · ln k_alone,   f about 1.25
 *
 * Other factors in the range of f are taken in the logarithm of the force: exact for a ring of constant friction
 * without drag, and close for the others.
 *
 * @param lead  ring, rope, lines [-] and load [N]
 * @returns hauling, easing and run-out load, alone and shared [N]
 * @throws ValueError for an impossible ring, load or number of lines
 * Source: common practice for the factor.
 */
export function sharedLead({ ring, rope, towardsHand = [], lines, load }: SharedLead): SharedLeadForces {
  const forces = (count: number) =>
    prepareLine({ rope, stations: [{ ...ring, lines: count }, ...towardsHand] }).handForces(load);
  const alone = forces(1);
  const together = forces(lines);
  const factor = practice.sharedLeadFactor;
  const over = (factorValue: number) => (factorValue - 1) / (factor.value - 1);
  const band = (one: number, all: number) =>
    one > 0 && all > 0
      ? bandOf({ factor }, (values) => one * (all / one) ** over(values.factor))
      : { value: all, low: Math.min(one, all), high: Math.max(one, all) };
  const hauling = band(alone.hauling, together.hauling);
  const { easing, runOutLoad } = alone;
  return {
    alone: { hauling: alone.hauling, easing, runOutLoad },
    shared: {
      hauling,
      easing: band(easing, together.easing),
      runOutLoad: band(runOutLoad, together.runOutLoad),
    },
    saved: {
      value: hauling.value - alone.hauling,
      low: hauling.low - alone.hauling,
      high: hauling.high - alone.hauling,
    },
    flags: together.flags,
  };
}
