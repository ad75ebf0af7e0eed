import type { Point } from "./shapes.js";

/** The place a step further: a direction times a length. */
export function ahead([x, y]: Point, [dx, dy]: Point, length: number): Point {
  return [x + length * dx, y + length * dy];
}

/** Direction of a heading [rad]. */
export function headed(heading: number): Point {
  return [Math.cos(heading), Math.sin(heading)];
}

/** A quarter turn further: from along to across. */
export function across([x, y]: Point): Point {
  return [-y, x];
}

export function less([x1, y1]: Point, [x2, y2]: Point): Point {
  return [x1 - x2, y1 - y2];
}

export function dot([x1, y1]: Point, [x2, y2]: Point): number {
  return x1 * x2 + y1 * y2;
}

/** Direction of the same heading with length 1; the other one where there is none. */
export function unit([x, y]: Point, otherwise: Point = [1, 0]): Point {
  const length = Math.hypot(x, y);
  return length > 1e-9 ? [x / length, y / length] : otherwise;
}

/** An angle brought to above −π, up to π [rad]. */
export function turned(angle: number): number {
  const rest = angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
  return rest <= -Math.PI + 1e-12 ? rest + 2 * Math.PI : rest;
}

/** Part of a circle. */
export interface Arc {
  readonly centre: Point;
  readonly radius: number;
  /** Heading from the centre to the first place [rad]. */
  readonly from: number;
  /** Angle to the last place, with its sign [rad]. */
  readonly sweep: number;
}

/** Places along an arc, both ends among them, from one share of it to another. */
export function arcPoints({ centre, radius, from, sweep }: Arc, start = 0, end = 1): Point[] {
  const steps = Math.max(1, Math.ceil(Math.abs(sweep * (end - start)) / 0.22));
  return Array.from({ length: steps + 1 }, (_, step) =>
    ahead(centre, headed(from + sweep * (start + ((end - start) * step) / steps)), radius),
  );
}
