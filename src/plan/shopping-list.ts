import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import type { Chosen, Piece } from "./plan-option.js";

/** Rope to buy. */
export interface RopePurchase {
  readonly rope: string;
  /** [m] */
  readonly needed: number;
  /** Needed and spare, rounded up [m]. */
  readonly toBuy: number;
  readonly pieces: number;
  readonly lines: readonly string[];
}

/** Hardware to buy. */
export interface PartPurchase {
  readonly part: string;
  readonly needed: number;
  /** Taken over from the lines as they were. */
  readonly atHand: number;
  readonly toBuy: number;
}

/** A piece of rope of a changed line that stays on board, cut shorter perhaps. */
export interface KeptRope {
  readonly line: string;
  readonly rope: string;
  /** [m] */
  readonly length: number;
}

/** What to buy, and what hardware is left over. */
export interface ShoppingList {
  readonly ropes: readonly RopePurchase[];
  /** Old rope of changed lines that is used on. */
  readonly kept: readonly KeptRope[];
  readonly parts: readonly PartPurchase[];
  readonly leftOver: readonly { readonly part: string; readonly count: number }[];
}

/**
 * Adds up what a plan needs: ropes by the metre with some spare, hardware by the piece.
 *
 *     to buy = needed · (1 + spare), rounded up to whole steps; parts = needed − at hand
 *
 * Lines that stay as they are need nothing. Hardware of changed lines is used again; so is old rope where the line keeps it, at
 * the same length or shorter.
 *
 * @param choice  option of each line
 * @param before  what the boat has now; without it everything is bought
 * @param spare  share of rope added to what is needed [-], 0 to 1, by default 0.05
 * @param rounding  rope is bought in steps of this [m], by default 0.5
 * @returns ropes [m] and parts [-], by name
 * @throws ValueError for a share or a step that cannot be
 * Example: shoppingList({ choice: [] }).ropes → []
 */
export function shoppingList({
  choice,
  before = [],
  spare = 0.05,
  rounding = 0.5,
}: {
  readonly choice: readonly Chosen[];
  readonly before?: readonly Chosen[];
  readonly spare?: number;
  readonly rounding?: number;
}): ShoppingList {
  refuseSpare(spare);
  const step = within("lineLength", rounding);
  const same = (one: Chosen, other: Chosen) => one.line.name === other.line.name && one.option.id === other.option.id;
  const made = choice.filter((one) => !before.some((old) => same(one, old)));
  const given = before.filter((old) => !choice.some((one) => same(one, old)));
  const [needed, atHand] = [countParts(made), countParts(given)];
  const left = [...atHand].map(([part, count]) => ({ part, count: count - (needed.get(part) ?? 0) }));
  const pieces = made.flatMap((one) => piecesOf(one, before));
  return {
    ropes: ropesOf(
      pieces.filter(({ stays }) => !stays),
      (length) => Math.ceil((length * (1 + spare)) / step - 1e-9) * step,
    ),
    kept: pieces.filter(({ stays }) => stays).map(({ line, rope, length }) => ({ line, rope, length })),
    parts: [...needed].map(([part, count]) => {
      const taken = Math.min(count, atHand.get(part) ?? 0);
      return { part, needed: count, atHand: taken, toBuy: count - taken };
    }),
    leftOver: left.filter(({ count }) => count > 0),
  };
}

/** A piece of a line that is made, and whether the old rope of that line serves for it. */
interface PieceToMake extends Piece {
  readonly line: string;
  readonly stays: boolean;
}

/** Pieces of a line; each old piece serves once, for a piece of the same rope and use that is no longer. */
export function piecesOf({ line, option }: Chosen, before: readonly Chosen[]): PieceToMake[] {
  const old = [...(before.find((one) => one.line.name === line.name)?.option.pieces ?? [])];
  return option.pieces.map((piece) => {
    const at = old.findIndex((one) => serves(one, piece));
    if (at >= 0) old.splice(at, 1);
    return { ...piece, line: line.name, stays: at >= 0 };
  });
}

/** A stripped or spliced piece is cut for its place: it serves only unchanged. */
function serves(old: Piece, piece: Piece): boolean {
  if (old.rope !== piece.rope || old.use !== piece.use) return false;
  if (old.taper === undefined && piece.taper === undefined) return old.length >= piece.length - 1e-9;
  return JSON.stringify([old.taper, old.length]) === JSON.stringify([piece.taper, piece.length]);
}

function ropesOf(all: readonly PieceToMake[], rounded: (length: number) => number): RopePurchase[] {
  const names = [...new Set(all.map(({ rope }) => rope))].sort();
  return names.map((rope) => {
    const own = all.filter((piece) => piece.rope === rope);
    const needed = own.reduce((sum, { length }) => sum + length, 0);
    const lines = [...new Set(own.map(({ line }) => line))];
    return { rope, needed, toBuy: rounded(needed), pieces: own.length, lines };
  });
}

/** Parts by name, in the order of their names. */
function countParts(choice: readonly Chosen[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { option } of choice)
    for (const { part, count } of option.parts) counts.set(part, (counts.get(part) ?? 0) + count);
  return new Map([...counts].filter(([, count]) => count > 0).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function refuseSpare(spare: number): void {
  if (spare >= 0 && spare <= 1) return;
  throw new ValueError({
    quantity: "spare rope, as a share of what is needed",
    value: String(spare),
    allowed: "a number from 0 to 1",
    advice: "0.05 adds five metres in a hundred.",
  });
}
