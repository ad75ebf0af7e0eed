import type { Chosen, Piece } from "./plan-option.js";

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

/**
 * Lists what to cut for a plan: lengths, tapers, splices and minutes.
 *
 * @param choice  option of each line to make
 * @returns pieces by line and by rope [m], splices [-], time [min]
 * Example: cutList([]).minutes → 0
 */
export function cutList(choice: readonly Chosen[]): CutList {
  const lines = choice.map(({ line, option: { words, pieces, splices, minutes } }): LineCut => {
    return { line: line.name, words, pieces, splices, minutes };
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
