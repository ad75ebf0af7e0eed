import type { Chosen, Piece } from "./plan-option.js";
import { piecesOf } from "./shopping-list.js";

/** One line to make: what to cut for it, and the work. */
export interface LineCut {
  readonly line: string;
  readonly words: string;
  readonly pieces: readonly Piece[];
  readonly splices: number;
  /** [min] */
  readonly minutes: number;
}

/** All pieces of one rope, longest first, as they come off the reel. */
export interface RopeCut {
  readonly rope: string;
  /** [m] */
  readonly total: number;
  readonly pieces: readonly (Piece & { readonly line: string })[];
}

/** What to cut and make, line by line and rope by rope. */
export interface CutList {
  readonly lines: readonly LineCut[];
  readonly ropes: readonly RopeCut[];
  readonly splices: number;
  /** [min] */
  readonly minutes: number;
}

/** What is said of rope that stays; at its tail, so that its splices stay as well. */
const cutShorter = "the old rope, cut shorter";

/**
 * Lists what to cut for a plan: lengths, tapers, splices and minutes.
 *
 * @param choice  option of each line to make
 * @param before  what the boat has now: rope that a line keeps at its length is not cut, nor is work counted for a line that keeps all of it
 * @returns pieces by line and by rope [m], splices [-], time [min]
 * Example: cutList([]).minutes → 0
 */
export function cutList(choice: readonly Chosen[], before: readonly Chosen[] = []): CutList {
  const lines = choice.flatMap((one): LineCut[] => {
    const { words, splices, minutes } = one.option;
    const old = before.find(({ line }) => line.name === one.line.name)?.option.pieces ?? [];
    const lengths = new Set(old.map(({ rope, length }) => `${rope} ${length}`));
    const pieces = piecesOf(one, before)
      .filter(({ stays, rope, length }) => !(stays && lengths.has(`${rope} ${length}`)))
      .map(({ line: _, stays, ...piece }) => ({ ...piece, ...(stays && { use: cutShorter }) }));
    if (pieces.length === 0) return [];
    const work = pieces.some(({ use }) => use !== cutShorter) ? { splices, minutes } : { splices: 0, minutes: 0 };
    return [{ line: one.line.name, words, pieces, ...work }];
  });
  const all = lines.flatMap(({ line, pieces }) => pieces.map((piece) => ({ ...piece, line })));
  const ropes = [...new Set(all.map(({ rope }) => rope))].sort().map((rope): RopeCut => {
    const pieces = all.filter((piece) => piece.rope === rope).sort((a, b) => b.length - a.length);
    return { rope, total: pieces.reduce((sum, { length }) => sum + length, 0), pieces };
  });
  return {
    lines,
    ropes,
    splices: lines.reduce((sum, one) => sum + one.splices, 0),
    minutes: lines.reduce((sum, one) => sum + one.minutes, 0),
  };
}
