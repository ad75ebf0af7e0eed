import { OutsideModelError, ValueError } from "../quantity/errors.js";

/** Nodes of a curve: positions that rise strictly, and a value at each. */
export interface CurveNodes {
  readonly positions: readonly number[];
  readonly values: readonly number[];
}

/** One piece of the curve: its start, length, and the values and slopes at both ends. */
interface Piece {
  readonly start: number;
  readonly width: number;
  readonly value: number;
  readonly slope: number;
  readonly nextValue: number;
  readonly nextSlope: number;
}

/**
 * A smooth curve through given nodes that rises and falls only where the nodes do.
 *
 *     cubic Hermite pieces; slope at a node = weighted harmonic mean of the two neighbouring slopes, 0 at a turn
 *
 * @param positions  at least two finite numbers, strictly rising [any unit]
 * @param values     one finite number a position [any unit]
 * @returns a function of the position [unit of positions] that answers in the unit of values
 * @throws ValueError for nodes that make no curve; the function throws OutsideModelError outside the nodes
 * Valid between the first and the last node, where it never leaves the range of the two nodes around it.
 * Source: fritsch-butland-1984, monotone piecewise cubic interpolation, with three-point slopes at both ends.
 * Example: monotoneCurve({ positions: [0, 1, 2], values: [0, 1, 4] })(0.5) → 0.3125
 */
export function monotoneCurve({ positions, values }: CurveNodes): (position: number) => number {
  const pieces = makePieces(positions, values);
  const first = positions[0]!;
  const last = positions[positions.length - 1]!;
  return (position) => {
    if (!(position >= first && position <= last)) {
      throw new OutsideModelError({
        quantity: "position on a curve",
        value: String(position),
        allowed: `${first} to ${last}`,
        advice: "A curve through nodes says nothing outside them.",
      });
    }
    const after = positions.findIndex((node) => node >= position);
    return hermite(pieces[Math.max(after, 1) - 1]!, position);
  };
}

function makePieces(x: readonly number[], y: readonly number[]): Piece[] {
  refuseBadNodes(x, y);
  const width = x.slice(1).map((next, i) => next - x[i]!);
  const secant = width.map((w, i) => (y[i + 1]! - y[i]!) / w);
  const slope = x.map((_, i) => nodeSlope(i, width, secant));
  return width.map((w, i) => ({
    start: x[i]!,
    width: w,
    value: y[i]!,
    slope: slope[i]!,
    nextValue: y[i + 1]!,
    nextSlope: slope[i + 1]!,
  }));
}

function refuseBadNodes(x: readonly number[], y: readonly number[]): void {
  const rises = x.every((value, i) => i === 0 || value > x[i - 1]!);
  const finite = [...x, ...y].every(Number.isFinite);
  if (x.length >= 2 && x.length === y.length && rises && finite) return;
  throw new ValueError({
    quantity: "nodes of a curve",
    value: `positions [${x.join(", ")}], values [${y.join(", ")}]`,
    allowed: "at least two finite positions that rise strictly, with a finite value each",
    advice: "Sort the nodes by position and give every position once.",
  });
}

function nodeSlope(i: number, width: readonly number[], secant: readonly number[]): number {
  const last = secant.length - 1;
  if (last === 0) return secant[0]!;
  if (i === 0) return endSlope(width[0]!, width[1]!, secant[0]!, secant[1]!);
  if (i > last) return endSlope(width[last]!, width[last - 1]!, secant[last]!, secant[last - 1]!);
  const before = secant[i - 1]!;
  const after = secant[i]!;
  if (before * after <= 0) return 0;
  const weightBefore = 2 * width[i]! + width[i - 1]!;
  const weightAfter = width[i]! + 2 * width[i - 1]!;
  return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
}

/** Three-point slope at an end, held to what keeps the end piece monotone. */
function endSlope(w0: number, w1: number, s0: number, s1: number): number {
  const slope = ((2 * w0 + w1) * s0 - w0 * s1) / (w0 + w1);
  if (slope * s0 <= 0) return 0;
  return s0 * s1 <= 0 && Math.abs(slope) > 3 * Math.abs(s0) ? 3 * s0 : slope;
}

function hermite({ start, width, value, slope, nextValue, nextSlope }: Piece, x: number): number {
  const t = (x - start) / width;
  const u = 1 - t;
  return (
    value * (1 + 2 * t) * u * u +
    width * slope * t * u * u +
    nextValue * t * t * (3 - 2 * t) -
    width * nextSlope * t * t * u
  );
}
