import type { Direction } from "../../reeving/mechanism-loads.js";
import { type Headings, headingsOf } from "./headings.js";
import { eyeMark, handMark, loadMark, motionMark } from "./marks.js";
import {
  drawCleat,
  drawPlain,
  drawStraight,
  drawTackle,
  drawTurn,
  type Pen,
  type RopeStretch,
  type Spot,
  type Tensions,
} from "./pen.js";
import { boxAround, overlapping, type Point, type Shape, shapeBox } from "./shapes.js";
import type { RopeAtStation, Strips } from "./strips.js";
import { type TackleShape, tackleShape } from "./tackle-shape.js";
import { across, ahead, headed, turned } from "./vector.js";

/** A line laid out from the load to the hand, along to the right, the same for both ways. */
export interface Course {
  readonly ropes: readonly RopeStretch[];
  /** What lies under the rope, and what lies on it. */
  readonly marks: readonly Shape[];
  readonly over: readonly Shape[];
  /** Which way the rope runs. */
  readonly motion: Readonly<Record<Direction, readonly Shape[]>>;
  readonly load: Spot;
  readonly stations: readonly Spot[];
  readonly hand: Spot;
}

/** How long straight pieces may be: along, and aside [px]. */
export interface Reach {
  readonly along: number;
  readonly aside: number;
}

const leastLeg = 44;
const handRoom = 10;
const mostWrap = 6 * Math.PI;
const wheels = { smallest: 9, largest: 15, ring: 8 };

/** How a line turns: what does not depend on the length of its pieces. */
export interface Way extends Headings {
  /** Angle by which every station turns the line [rad]. */
  readonly turns: readonly number[];
  /** The tackles among the stations, laid out. */
  readonly shapes: readonly (TackleShape | undefined)[];
}

export function wayOf({ stations }: Strips): Way {
  const shapes = stations.map(({ station }) => (station.kind === "tackle" ? tackleShape(station.reeving) : undefined));
  const turns = stations.map(({ station }, index) => turnOf(station, shapes[index]));
  return { ...headingsOf(turns, shapes[0] ? 1 : -1), turns, shapes };
}

/**
 * Lays out a line: every station turns it by its own angle, to the side on which it gets on towards the hand.
 *
 * @param strips  stations and states
 * @param way  how it turns
 * @param reach  length of straight pieces [px]
 * @returns ropes, marks and the places of labels
 */
export function courseOf(strips: Strips, way: Way, reach: Reach): Course {
  const { stations } = strips;
  const { headings, sides, turns, shapes } = way;
  const pen: Pen = { at: [0, 0], ropes: [], marks: loadMark([0, 0], headed(headings[0]! + Math.PI)), spots: [] };
  const largest = largestDiameter(stations);
  stations.forEach(({ station }, index) => {
    const heading = headings[index]!;
    const before = tensionsAt(strips, index);
    const step = { heading, side: sides[index]!, before, after: tensionsAt(strips, index + 1) };
    const shape = shapes[index];
    drawStraight(pen, heading, index === 0 && shape ? 6 : legLength(heading, reach), before);
    if (station.kind === "tackle") {
      const parts = partTensions(strips, index);
      drawTackle(pen, { shape: shape!, parts, straight: isStraight(turns[index]!) }, step);
    } else if (station.kind === "cleat") drawCleat(pen, step, station.closed);
    else if (station.kind === "measured" && station.wrapAngle === undefined) drawPlain(pen, step);
    else {
      const wrap = Math.min(station.wrapAngle ?? 0, mostWrap);
      const radius =
        station.kind === "ring"
          ? wheels.ring
          : station.kind === "measured"
            ? wheels.smallest
            : wheels.smallest + (wheels.largest - wheels.smallest) * (station.diameter / largest);
      drawTurn(pen, station, { ...step, wrap, radius });
    }
  });
  return { ...finished(pen, strips, headings.at(-1)!, reach), load: loadSpot(headings[0]!) };
}

/** The piece to the hand, the hand, and the marks of motion. */
function finished(pen: Pen, strips: Strips, heading: number, reach: Reach): Omit<Course, "load"> {
  const tensions = tensionsAt(strips, strips.stations.length);
  const last = headed(heading);
  const length = freeLength(pen, last, legLength(heading, reach));
  const middle = ahead(ahead(pen.at, last, 0.55 * length), across(last), 12);
  drawStraight(pen, heading, length, tensions);
  const hand = pen.at;
  drawStraight(pen, heading, 21, tensions);
  const { ropes, marks, spots } = pen;
  return {
    ropes,
    marks,
    over: [eyeMark([0, 0]), ...handMark(hand, last)],
    motion: { hauling: motionMark(middle, last), easing: motionMark(middle, headed(heading + Math.PI)) },
    stations: spots,
    hand: { at: ahead(hand, last, 25), room: [20, 20], outward: last },
  };
}

/** A length of the last piece with which the hand does not lie on anything drawn before. */
function freeLength({ at, marks }: Pen, along: Point, length: number): number {
  const taken = marks.map(shapeBox);
  const lengths = [1, 1.3, 0.75, 1.6, 2].map((factor) => factor * length);
  const free = (one: number) =>
    [0, 9, 18, 27, 36, 45, 54].every((further) => {
      const box = boxAround([ahead(at, along, one + further)], handRoom);
      return !taken.some((other) => overlapping(box, other));
    });
  return lengths.find(free) ?? length;
}

function loadSpot(heading: number): Spot {
  const away = headed(heading + Math.PI);
  return { at: ahead([0, 0], away, 22), room: [20, 20], outward: away };
}

/** Angle by which a station turns the line [rad], 0 to π. */
function turnOf(station: RopeAtStation["station"], shape: TackleShape | undefined): number {
  if (shape) return Math.abs(Math.atan2(shape.leaves[1], shape.leaves[0]));
  if (station.kind === "cleat" || station.kind === "tackle") return 0;
  return Math.abs(turned(Math.min(station.wrapAngle ?? 0, mostWrap)));
}

/** Whether the hauling part of a tackle runs along the load's line: either side is free to it then. */
function isStraight(turn: number): boolean {
  return turn < 1e-6 || turn > Math.PI - 1e-6;
}

function legLength(heading: number, { along, aside }: Reach): number {
  const [x, y] = headed(heading);
  return Math.max(leastLeg, Math.min(along / Math.max(1e-9, Math.abs(x)), aside / Math.max(1e-9, Math.abs(y))));
}

/** Tension on the load side of a station; after the last one that of the hand. */
function tensionsAt({ states, load }: Strips, index: number): Tensions {
  const of = (direction: Direction) => states[direction].stations[index - 1]?.handTension ?? load;
  return { hauling: of("hauling"), easing: of("easing") };
}

function partTensions({ states }: Strips, index: number): Tensions[] {
  const easing = states.easing.stations[index]!.parts;
  return states.hauling.stations[index]!.parts.map((hauling, part) => ({ hauling, easing: easing[part] ?? 0 }));
}

function largestDiameter(stations: readonly RopeAtStation[]): number {
  return stations.reduce(
    (most, { station }) => ("diameter" in station ? Math.max(most, station.diameter) : most),
    1e-9,
  );
}
