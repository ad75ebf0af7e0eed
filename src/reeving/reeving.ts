import type { Cleat, Turn } from "./station.js";

/** Place in the plane [m]; only directions matter. A single number lies on the line of the load. */
export type Place = number | readonly [number, number];

/** Something that ropes run through or are fastened to: an anchor or a moving block. */
export interface Body {
  readonly at: Place;
  /** True when the block can move. */
  readonly moves: boolean;
  /** Direction in which it moves; along the load when absent. */
  readonly axis?: readonly [number, number];
}

/** A rope passing round a block. */
export interface ReevingTurn {
  readonly body: string;
  /** Sheave, ring, ratchet or measured turn that the rope meets there. */
  readonly turn: Turn;
}

/** One rope from end to end: fastened, led round blocks in order, fastened again or held in the hand. */
export interface RopeRun {
  readonly name: string;
  readonly start: string;
  readonly turns: readonly ReevingTurn[];
  /** A body, or "hand". */
  readonly end: string;
}

/** Blocks and ropes of a purchase, however complex. */
export interface Reeving {
  readonly bodies: Readonly<Record<string, Body>>;
  readonly ropes: readonly RopeRun[];
  /** Body that carries the load, and the direction in which the load pulls; along +x when absent. */
  readonly load: { readonly body: string; readonly direction?: readonly [number, number] };
  /** Where the hand stands. */
  readonly hand: Place;
}

/** Name that a rope's end carries when it is held. */
export const handEnd = "hand";

/** A purchase: one or more ropes between fixed and moving blocks. */
export interface Tackle {
  readonly kind: "tackle";
  readonly name: string;
  readonly reeving: Reeving;
}

/** Anything that a line meets between sail and hand. */
export type Station = Turn | Cleat | Tackle;
