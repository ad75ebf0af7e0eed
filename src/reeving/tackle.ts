import { ReevingError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Body, handEnd, type Place, type Reeving, type ReevingTurn } from "./reeving.js";
import type { Turn } from "./station.js";
import { whole } from "./whole.js";

/** A purchase with one moving block. */
export interface TackleInput {
  /** Number of rope parts that pull on the moving block, 1 to 12. */
  readonly parts: number;
  /** Block that the hauling part leaves: `moving` is rove to advantage, `fixed` to disadvantage. */
  readonly hauledFrom: "moving" | "fixed";
  /** Each sheave in the order in which the rope meets them from its fastened end, or one for all. */
  readonly turn: Turn | readonly Turn[];
  /** Lead blocks after the tackle, each turning the hauling part back; 0 when absent. */
  readonly leadBlocks?: number;
  /** Sheave of the lead blocks; the last one of the tackle when absent. */
  readonly leadTurn?: Turn;
  /** Angle between the parts and the line of the load [rad]; 0 when absent: parallel parts. */
  readonly spreadAngle?: number;
}

/**
 * Reeving of a simple purchase between a fixed block at x = 0 and a moving block at x = 1.
 *
 * With parts at an angle the fixed sheaves sit alternately to port and starboard of the line of the load, as in a bridle.
 *
 * @param parts  [-], whole number 1 to 12
 * @param hauledFrom  block that the hauling part leaves
 * @param turn  sheave, or one for every sheave in rove order [m, rad, N]
 * @param leadBlocks  [-], 0 to 8
 * @param spreadAngle  [rad], 0 to below a quarter turn
 * @returns reeving for the force balance
 * @throws ReevingError for an impossible number of parts or sheaves
 * Source: statics, parts and sheaves counted on the reeving. Example: tackle({ parts: 4, hauledFrom: "fixed", turn: { kind: "measured", name: "sheave", tensionRatio: 1.09 } }).ropes.length → 1
 */
export function tackle(input: TackleInput): Reeving {
  const { parts, hauledFrom, leadBlocks = 0 } = input;
  whole({ quantity: "parts on the moving block", value: parts, least: 1, most: 12 });
  whole({ quantity: "lead blocks", value: leadBlocks, least: 0, most: 8 });
  const spread = within("wrapAngle", input.spreadAngle ?? 0, 0, 1.5);
  const sheaves = parts - (hauledFrom === "moving" ? 1 : 0);
  // Walking back from the hauling part, sheaves lie alternately on the block it leaves and on the other.
  const side = (fromHand: number) => ((fromHand % 2 === 0) === (hauledFrom === "fixed") ? "fixed" : "moving");
  const order = Array.from({ length: sheaves + 1 }, (_, index) => side(sheaves - index));
  const { bodies, nextAnchor, nextPlace } = anchors(spread);
  const names = order.map((kind) => (kind === "moving" ? "moving" : nextAnchor()));
  const wheels = wheelsOf(input.turn, sheaves);
  const turns: ReevingTurn[] = names.slice(1).map((body, index) => ({ body, turn: wheels[index]! }));
  const lead = input.leadTurn ?? wheels.at(-1) ?? wheelsOf(input.turn, 1)[0]!;
  let x = hauledFrom === "fixed" ? 1 : 0;
  for (let index = 1; index <= leadBlocks; index++) {
    bodies[`lead ${index}`] = { at: x, moves: false };
    turns.push({ body: `lead ${index}`, turn: lead });
    x = 1 - x;
  }
  const hand = leadBlocks === 0 && hauledFrom === "moving" ? nextPlace() : x;
  return {
    bodies,
    ropes: [{ name: "fall", start: names[0]!, turns, end: handEnd }],
    load: { body: "moving" },
    hand,
  };
}

/** The moving block and its anchors; with a spread they sit to port and starboard and are used in turn. */
function anchors(spread: number): { bodies: Record<string, Body>; nextAnchor: () => string; nextPlace: () => Place } {
  const bodies: Record<string, Body> = { moving: { at: 1, moves: true } };
  let used = 0;
  const nextPlace = (): Place => (spread === 0 ? 0 : [0, (used % 2 === 0 ? 1 : -1) * Math.tan(spread)]);
  const nextAnchor = () => {
    const at = nextPlace();
    const name = spread === 0 ? "fixed" : used % 2 === 0 ? "fixed to port" : "fixed to starboard";
    bodies[name] = { at, moves: false };
    used += 1;
    return name;
  };
  return { bodies, nextAnchor, nextPlace };
}

function wheelsOf(turn: Turn | readonly Turn[], sheaves: number): readonly Turn[] {
  if (!("length" in turn)) return Array.from({ length: sheaves }, () => turn);
  if (turn.length === sheaves) return turn;
  throw new ReevingError({
    quantity: "sheaves of the tackle",
    value: `${turn.length} given`,
    allowed: `one for all, or ${sheaves}`,
    advice: "Give every sheave, from the fastened end of the rope to the hauling part.",
  });
}
