import type { Direction } from "../../reeving/mechanism-loads.js";
import type { Turn } from "../../reeving/station.js";
import { cleatMark, sharerMark, stropMark, turnMark } from "./marks.js";
import { type Box, boxAround, moved, type Point, type Shape, shapeBox } from "./shapes.js";
import type { TackleShape } from "./tackle-shape.js";
import { across, ahead, arcPoints, dot, headed, turned } from "./vector.js";

/** Tension for each way [N]. */
export type Tensions = Readonly<Record<Direction, number>>;

/** A stretch of rope with its tension. */
export interface RopeStretch {
  readonly points: readonly Point[];
  readonly tensions: Tensions;
}

/** Where something stands that has a label. */
export interface Spot {
  readonly at: Point;
  /** Half the room that it fills, across and down [px]. */
  readonly room: Point;
  /** Side to which the rope leaves most space. */
  readonly outward: Point;
}

/** What has been drawn of a line, and how far it has got. */
export interface Pen {
  at: Point;
  readonly ropes: RopeStretch[];
  readonly marks: Shape[];
  readonly spots: Spot[];
}

/** The passage of a line through one station. */
export interface Step {
  /** Heading in which the line comes [rad]. */
  readonly heading: number;
  /** To which side the station turns it: 1 or −1. */
  readonly side: number;
  readonly before: Tensions;
  readonly after: Tensions;
}

const stropLength = 17;
const cleatRoom = 11;
const plainRadius = 10;

/** A straight piece. */
export function drawStraight(pen: Pen, heading: number, length: number, tensions: Tensions): void {
  const end = ahead(pen.at, headed(heading), length);
  pen.ropes.push({ points: [pen.at, end], tensions });
  pen.at = end;
}

/** A piece through something that does not turn the line: the tension changes in its middle. */
function drawThrough(pen: Pen, { heading, before, after }: Step, room: number): Point {
  drawStraight(pen, heading, room, before);
  const middle = pen.at;
  drawStraight(pen, heading, room, after);
  return middle;
}

export function drawCleat(pen: Pen, step: Step, closed: boolean): void {
  const along = headed(step.heading);
  const middle = drawThrough(pen, step, cleatRoom);
  pen.marks.push(...cleatMark(middle, along, closed));
  pen.spots.push({ at: middle, room: [15, 15], outward: across(along) });
}

/** A measured loss without an angle: the line goes straight on. */
export function drawPlain(pen: Pen, step: Step): void {
  const middle = drawThrough(pen, step, plainRadius);
  pen.marks.push(...turnMark("measured", middle, plainRadius));
  pen.spots.push({ at: middle, room: [plainRadius, plainRadius], outward: across(headed(step.heading)) });
}

/** A wheel, ring or measured turn of a radius, with the wrap as it is [rad]. */
export function drawTurn(pen: Pen, turn: Turn, step: Step & { readonly wrap: number; readonly radius: number }): void {
  const { heading, wrap, radius, before, after } = step;
  // Beyond half a turn the rope comes out on the other side.
  const side = step.side * (turned(wrap) < 0 ? -1 : 1);
  const along = headed(heading);
  const lying = radius + 2;
  const inward: Point = [side * across(along)[0], side * across(along)[1]];
  const centre = ahead(pen.at, inward, lying);
  const arc = { centre, radius: lying, from: Math.atan2(-inward[1], -inward[0]), sweep: side * wrap };
  const steps = Math.max(2, Math.ceil(wrap / 0.4));
  for (let index = 0; index < steps && wrap > 0; index++) {
    const share = (index + 0.5) / steps;
    const tensions = {
      hauling: between(before, after, share, "hauling"),
      easing: between(before, after, share, "easing"),
    };
    pen.ropes.push({ points: arcPoints(arc, index / steps, (index + 1) / steps), tensions });
  }
  pen.at = arcPoints(arc).at(-1)!;
  const outward = headed(arc.from + arc.sweep / 2);
  if (turn.kind !== "measured") {
    if ((turn.lines ?? 1) > 1) pen.marks.push(...sharerMark(centre, across(outward), radius));
    pen.marks.push(...stropMark(centre, outward, lying + stropLength));
  }
  pen.marks.push(...turnMark(turn.kind, centre, radius));
  pen.spots.push({ at: centre, room: [lying + 4, lying + 4], outward });
}

function between(before: Tensions, after: Tensions, share: number, direction: Direction): number {
  return before[direction] + share * (after[direction] - before[direction]);
}

/** A tackle: laid out on its own, turned into the line; its parts lie to the side of the hand where that is free. */
export function drawTackle(
  pen: Pen,
  {
    shape,
    parts,
    straight,
  }: { readonly shape: TackleShape; readonly parts: readonly Tensions[]; readonly straight: boolean },
  { heading, side, before, after }: Step,
): void {
  const along = headed(heading);
  const [sideways] = across(along);
  const mirror = straight ? (sideways < -1e-6 ? -1 : 1) : side * Math.sign(shape.leaves[1] || 1);
  const to = ([x, y]: Point): Point => ahead(ahead([0, 0], along, x), across(along), mirror * y);
  const [eyeX, eyeY] = to(shape.eye);
  const start = pen.at;
  const rule = (at: Point): Point => {
    const [x, y] = to(at);
    return [start[0] + x - eyeX, start[1] + y - eyeY];
  };
  pen.ropes.push({ points: [start, start], tensions: before });
  for (const { points, part, share } of shape.ropes) {
    const own = parts[part] ?? before;
    const next = parts[part + 1] ?? own;
    const tensions =
      share === undefined
        ? own
        : { hauling: between(own, next, share, "hauling"), easing: between(own, next, share, "easing") };
    pen.ropes.push({ points: points.map(rule), tensions });
  }
  const marks = shape.marks.map((mark) => moved(mark, rule));
  pen.marks.push(...marks);
  const points = [...marks.flatMap(cornersOf), ...shape.ropes.flatMap((rope) => rope.points.map(rule))];
  const box = boxAround(points);
  const exit = rule(shape.exit);
  const leaves = turnedBy(shape.leaves, heading, mirror);
  const clear = Math.max(...points.map((at) => dot([at[0] - exit[0], at[1] - exit[1]], leaves)));
  pen.at = exit;
  // A part that comes back beside the others has room there; any other leaves the tackle behind first.
  if (!straight || dot(leaves, along) > 0)
    drawStraight(pen, Math.atan2(leaves[1], leaves[0]), Math.max(0, clear) + 8, after);
  const outward: Point = [-along[0], -along[1]];
  // What is spread out has its label at the block that carries the load.
  if (straight) pen.spots.push({ at: middleOf(box), room: halfOf(box), outward });
  else pen.spots.push({ at: ahead(rule(shape.eye), along, 22), room: [16, 16], outward });
}

function turnedBy([x, y]: Point, heading: number, mirror: number): Point {
  return ahead(ahead([0, 0], headed(heading), x), across(headed(heading)), mirror * y);
}

function middleOf({ left, right, top, bottom }: Box): Point {
  return [(left + right) / 2, (top + bottom) / 2];
}

function halfOf({ left, right, top, bottom }: Box): Point {
  return [(right - left) / 2, (bottom - top) / 2];
}

function cornersOf(mark: Shape): Point[] {
  const { left, right, top, bottom } = shapeBox(mark);
  return [
    [left, top],
    [right, bottom],
  ];
}
