import type { Line } from "../reeving/line.js";
import type { Station } from "../reeving/reeving.js";
import type { Measured } from "../reeving/station.js";
import { tackle } from "../reeving/tackle.js";
import { calibrationRecords } from "./records.js";

/** How a line was rove, as far as it was written down. */
export interface Rove {
  /** Equal turns; absent where nobody counted. */
  readonly turns?: number | undefined;
  /** Metres hauled for each metre that the load moves; 1 when absent. */
  readonly purchase?: number | undefined;
}

/** A line of equal turns, each with the loss and the drag of one that nobody knows. */
export interface EqualTurns {
  readonly line: Line;
  readonly turns: number;
  /** Loss of each turn, as a ratio [-]. */
  readonly ratio: number;
  /** Drag of each turn [N]. */
  readonly drag: number;
  /** How the turns were taken to lie, for the reader. */
  readonly words: string;
}

const mostParts = 12;
const mostLeads = 8;
const drag = 1;

/**
 * The reeving that turns and purchase tell, of equal turns.
 *
 *     purchase 1: turns in a row;   turns = purchase: hauled from the fixed block, one less: from the moving block, more: leads;
 *     purchase = 2^turns: whip upon whip
 *
 * @param rove  turns [-] and purchase [-]; a tackle of which nobody counted the turns is taken as hauled from the fixed block
 * @returns the line with its turns; nothing where the two do not tell how the line is rove
 * Source: statics, parts and sheaves counted on the reeving. Example: equalTurns({ turns: 8, purchase: 8 }).words → "a tackle of 8 parts hauled from the fixed block"
 */
export function equalTurns({ turns, purchase = 1 }: Rove): EqualTurns | undefined {
  if (purchase === 1) return turns === undefined ? undefined : made(inARow(turns, "turn"), turns, "turns in a row");
  if (!Number.isInteger(purchase) || purchase < 2) return undefined;
  if (turns !== undefined && 2 ** turns === purchase && turns > 1)
    return made(
      Array.from({ length: turns }, (_, index) => tackleOf(`whip ${index + 1}`, 2, "moving", 0)),
      turns,
      `${turns} whips, one upon the other`,
    );
  const count = turns ?? purchase;
  const leads = Math.max(0, count - purchase);
  if (purchase > mostParts || count < purchase - 1 || leads > mostLeads) return undefined;
  const from = count < purchase ? "moving" : "fixed";
  const led = leads === 0 ? "" : `, with ${leads} ${leads === 1 ? "lead" : "leads"} behind it`;
  return made(
    [tackleOf("tackle", purchase, from, leads)],
    count,
    `a tackle of ${purchase} parts hauled from the ${from} block${led}`,
  );
}

function made(stations: readonly Station[], turns: number, words: string): EqualTurns {
  const rope = { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
  return { line: { rope, stations }, turns, ratio: calibrationRecords.turnRatio.value, drag, words };
}

function measured(name: string): Measured {
  return { kind: "measured", name, tensionRatio: calibrationRecords.turnRatio.value, drag };
}

function inARow(turns: number, name: string): Station[] {
  return Array.from({ length: turns }, (_, index) => measured(`${name} ${index + 1}`));
}

function tackleOf(name: string, parts: number, hauledFrom: "moving" | "fixed", leadBlocks: number): Station {
  return { kind: "tackle", name, reeving: tackle({ parts, hauledFrom, turn: measured("sheave"), leadBlocks }) };
}
