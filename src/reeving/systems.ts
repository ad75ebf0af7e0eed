import { type Body, handEnd, type Reeving, type RopeRun } from "./reeving.js";
import type { Turn } from "./station.js";
import { whole } from "./whole.js";

/** Purchases of several ropes, with the same sheave everywhere. */
export interface SystemInput {
  /** Number of ropes, 1 to 8. */
  readonly ropes: number;
  readonly turn: Turn;
}

/**
 * First system of pulleys: every moving block hangs in the bight of its own rope and hauls on the next.
 *
 *     VR = 2^n without a lead; the last rope is led down over a fixed block
 *
 * @param ropes  n [-], 1 to 8
 * @param turn  every sheave [m, rad, N]
 * @returns reeving for the force balance
 * @throws ReevingError when the number of ropes is not whole or out of range
 * Source: statics. Example: firstSystem({ ropes: 3, turn: { kind: "measured", name: "sheave", tensionRatio: 1 } }).ropes.length → 3
 */
export function firstSystem({ ropes, turn }: SystemInput): Reeving {
  const n = count(ropes);
  const block = (index: number) => `block ${index}`;
  const bodies: Record<string, Body> = { beam: { at: 0, moves: false }, lead: { at: 0, moves: false } };
  const runs: RopeRun[] = [];
  for (let index = 1; index <= n; index++) {
    bodies[block(index)] = { at: 1 - (0.5 * (index - 1)) / n, moves: true };
    const last = index === n;
    const turns = [{ body: block(index), turn }, ...(last ? [{ body: "lead", turn }] : [])];
    runs.push({ name: `rope ${index}`, start: "beam", turns, end: last ? handEnd : block(index + 1) });
  }
  return { bodies, ropes: runs, load: { body: block(1) }, hand: 1 };
}

/**
 * Third system of pulleys: every rope is fastened to the load and hauls on the next block; two ropes make a single burton.
 *
 *     VR = 2^n − 1
 *
 * @param ropes  n [-], 1 to 8
 * @param turn  every sheave [m, rad, N]
 * @returns reeving for the force balance
 * @throws ReevingError when the number of ropes is not whole or out of range
 * Source: statics. Example: thirdSystem({ ropes: 2, turn: { kind: "measured", name: "sheave", tensionRatio: 1 } }).ropes.length → 2
 */
export function thirdSystem({ ropes, turn }: SystemInput): Reeving {
  const n = count(ropes);
  const block = (index: number) => (index === 1 ? "top" : `block ${index}`);
  const bodies: Record<string, Body> = { load: { at: 1, moves: true } };
  const runs: RopeRun[] = [];
  for (let index = 1; index <= n; index++) {
    bodies[block(index)] = { at: (0.5 * (index - 1)) / n, moves: index > 1 };
    const end = index === n ? handEnd : block(index + 1);
    runs.push({ name: `rope ${index}`, start: "load", turns: [{ body: block(index), turn }], end });
  }
  return { bodies, ropes: runs, load: { body: "load" }, hand: 1 };
}

/**
 * Double burton: a runner over the top block holds the block through which the fall is hauled.
 *
 *     VR = 5 in both forms
 *
 * @param form  `three singles`: the fall starts at the hauling block's becket; `double and singles`: it starts at the load and passes the top block too
 * @param turn  every sheave [m, rad, N]
 * @returns reeving for the force balance
 * Source: statics. Example: doubleBurton({ form: "three singles", turn: { kind: "measured", name: "sheave", tensionRatio: 1 } }).ropes.length → 2
 */
export function doubleBurton({
  form,
  turn,
}: {
  readonly form: "three singles" | "double and singles";
  readonly turn: Turn;
}): Reeving {
  const through = (...names: string[]) => names.map((body) => ({ body, turn }));
  const fall: RopeRun =
    form === "three singles"
      ? { name: "fall", start: "hauling block", turns: through("load block", "hauling block"), end: handEnd }
      : { name: "fall", start: "load block", turns: through("top", "load block", "hauling block"), end: handEnd };
  return {
    bodies: {
      top: { at: 0, moves: false },
      "hauling block": { at: 0.5, moves: true },
      "load block": { at: 1, moves: true },
    },
    ropes: [{ name: "runner", start: "load block", turns: through("top"), end: "hauling block" }, fall],
    load: { body: "load block" },
    hand: 1,
  };
}

function count(ropes: number): number {
  return whole({ quantity: "ropes of the system", value: ropes, least: 1, most: 8 });
}
