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
  const first = positions[0] as number;
  const last = positions[positions.length - 1] as number;
  return (position) => {
    if (!(position >= first && position <= last)) {
      throw new OutsideModelError({
        quantity: "position on a curve",
        value: String(position),
        allowed: `${first} to ${last}`,
        advice: "A curve through nodes says nothing outside them.",
      });
    }
    const piece = pieces.find(({ start, width }) => position <= start + width) ?? pieces[pieces.length - 1];
    return hermite(piece as Piece, position);
  };
}

function makePieces(x: readonly number[], y: readonly number[]): Piece[] {
  refuseBadNodes(x, y);
  const width = x.slice(1).map((next, i) => next - (x[i] as number));
  const secant = width.map((w, i) => ((y[i + 1] as number) - (y[i] as number)) / w);
  const slope = x.map((_, i) => nodeSlope(i, width, secant));
  return width.map((w, i) => ({
    start: x[i] as number,
    width: w,
    value: y[i] as number,
    slope: slope[i] as number,
    nextValue: y[i + 1] as number,
    nextSlope: slope[i + 1] as number,
  }));
}

function refuseBadNodes(x: readonly number[], y: readonly number[]): void {
  const rises = x.every((value, i) => i === 0 || value > (x[i - 1] as number));
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
  if (last === 0) return secant[0] as number;
  if (i === 0) return endSlope([width[0], width[1]], [secant[0], secant[1]]);
  if (i > last) return endSlope([width[last], width[last - 1]], [secant[last], secant[last - 1]]);
  const before = secant[i - 1] as number;
  const after = secant[i] as number;
  if (before * after <= 0) return 0;
  const weightBefore = 2 * (width[i] as number) + (width[i - 1] as number);
  const weightAfter = (width[i] as number) + 2 * (width[i - 1] as number);
  return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
}

/** Three-point slope at an end, held to what keeps the end piece monotone. */
function endSlope(width: readonly (number | undefined)[], secant: readonly (number | undefined)[]): number {
  const [w0, w1] = width as [number, number];
  const [s0, s1] = secant as [number, number];
  const slope = ((2 * w0 + w1) * s0 - w0 * s1) / (w0 + w1);
  if (slope * s0 <= 0) return 0;
  return s0 * s1 <= 0 && Math.abs(slope) > 3 * Math.abs(s0) ? 3 * s0 : slope;
}

function hermite({ start, width, value, slope, nextValue, nextSlope }: Piece, x: number): number {
  const t = (x - start) / width;
  if (t === 1) return nextValue;
  const u = 1 - t;
  return (
    value * (1 + 2 * t) * u * u +
    width * slope * t * u * u +
    nextValue * t * t * (3 - 2 * t) -
    width * nextSlope * t * t * u
  );
}
