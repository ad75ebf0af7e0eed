import type { Reeving } from "../../reeving/reeving.js";
import { barMark, turnMark } from "./marks.js";
import type { Point, Shape } from "./shapes.js";
import { type RopeSlots, ropeSlots, type Slot } from "./tackle-slots.js";
import { type Arc, across, ahead, arcPoints, dot, headed, less, unit } from "./vector.js";

/** A straight part of a tackle, or a turn between two of them; parts count through all ropes. */
export interface TackleRope {
  readonly points: readonly Point[];
  readonly part: number;
  /** Given: the way from the first part to the next, at these shares of the turn. */
  readonly share?: number;
}

/** A tackle laid out; along is from the load to the boat. */
export interface TackleShape {
  readonly ropes: readonly TackleRope[];
  readonly marks: readonly Shape[];
  /** Where the load or the rope before pulls. */
  readonly eye: Point;
  /** Where the hauling part leaves its last block, and which way. */
  readonly exit: Point;
  readonly leaves: Point;
}

/** Body of a tackle with all that is fastened to it. */
interface Block {
  readonly outward: Point;
  /** How far out its bar lies. */
  readonly reach: number;
  readonly slots: readonly Slot[];
}

/**
 * Lays out a tackle of any number of ropes.
 *
 * @param reeving  bodies and ropes, such as the solver accepts
 * @returns ropes, blocks, and where load and hauling part join [px]
 */
export function tackleShape(reeving: Reeving): TackleShape {
  const ropes = ropeSlots(reeving);
  const all = ropes.flatMap(({ slots }) => slots);
  const blocks = new Map(Object.keys(reeving.bodies).map((name) => [name, blockOf(reeving, name, all)]));
  const fastened = ropes.map((rope) => ({
    ...rope,
    slots: rope.slots.map((slot) => (slot.turn ? slot : { ...slot, at: onBar(slot.at, blocks.get(slot.body)!) })),
  }));
  const runs: TackleRope[] = [];
  let exit: Point = [0, 0];
  let part = 0;
  for (const rope of fastened) {
    const { pieces, end } = runOf(rope, part);
    runs.push(...pieces);
    if (rope.leaves) exit = end;
    part += rope.slots.length - (rope.leaves ? 0 : 1);
  }
  const load = blocks.get(reeving.load.body)!;
  const box = barOf(load);
  return {
    ropes: runs,
    marks: [...blocks].flatMap(([name, block]) => blockMarks(reeving, name, block)),
    eye: ahead([(box.from[0] + box.to[0]) / 2, (box.from[1] + box.to[1]) / 2], load.outward, 9),
    exit,
    leaves: ropes.find(({ leaves }) => leaves)?.leaves ?? [1, 0],
  };
}

/** Outward is away from the pull of the wheels, or of the ends where there is no wheel; the load hangs along its pull. */
function blockOf(reeving: Reeving, name: string, all: readonly Slot[]): Block {
  const slots = all.filter(({ body }) => body === name);
  const wheels = slots.filter(({ turn }) => turn);
  const pulls = (wheels.length > 0 ? wheels : slots).flatMap((slot) => slot.pulls);
  const sum: Point = [pulls.reduce((total, [x]) => total - x, 0), pulls.reduce((total, [, y]) => total - y, 0)];
  const rest: Point = reeving.bodies[name]!.moves ? [-1, 0] : [1, 0];
  const outward = name === reeving.load.body ? ([-1, 0] as const) : unit(sum, rest);
  const gap = wheels.reduce((most, { radius }) => Math.max(most, radius + 6), 0);
  return { outward, slots, reach: Math.max(...slots.map(({ at }) => dot(at, outward))) + gap };
}

function onBar(at: Point, { outward, reach }: Block): Point {
  return ahead(at, outward, reach - dot(at, outward));
}

function barOf(block: Block): { from: Point; to: Point } {
  const side = across(block.outward);
  const places = block.slots.map(({ at }) => dot(at, side));
  const room = places.length === 1 ? 9 : 6;
  const at = (place: number): Point => ahead(ahead([0, 0], block.outward, block.reach), side, place);
  return { from: at(Math.min(...places) - room), to: at(Math.max(...places) + room) };
}

function blockMarks(reeving: Reeving, name: string, block: Block): Shape[] {
  const { outward, slots } = block;
  const bar = barOf(block);
  const middle: Point = [(bar.from[0] + bar.to[0]) / 2, (bar.from[1] + bar.to[1]) / 2];
  const hung: Shape[] =
    name === reeving.load.body
      ? [{ kind: "line", points: [middle, ahead(middle, outward, 9)], stroke: "ink", width: 1.6 }]
      : [];
  return [
    ...hung,
    ...barMark({ ...bar, outward, fixed: !reeving.bodies[name]!.moves }),
    ...slots.flatMap(({ at, turn, radius }): Shape[] => {
      const foot = onBar(at, block);
      if (!turn) return [{ kind: "circle", at: foot, radius: 2.8, stroke: "ink", width: 1.4, fill: "paper" }];
      return [{ kind: "line", points: [at, foot], stroke: "ink", width: 1.3 }, ...turnMark(turn.kind, at, radius - 2)];
    }),
  ];
}

/** Straight parts and turns of one rope, in their order. */
function runOf({ slots, leaves }: RopeSlots, firstPart: number): { pieces: TackleRope[]; end: Point } {
  const pieces: TackleRope[] = [];
  let place = slots[0]!.at;
  let heading: Point | undefined;
  slots.forEach((slot, index) => {
    const next = slots[index + 1];
    if (!next && !leaves) return;
    const out = next ? tangent(slot, next) : leaves!;
    const touch = leaving(slot, out);
    if (slot.turn && heading) pieces.push(...turnPieces(arcOf(slot, heading, out), firstPart + index - 1));
    place = touch;
    heading = out;
    if (!next) return;
    const end = leaving(next, out);
    pieces.push({ points: [touch, end], part: firstPart + index });
    place = end;
  });
  return { pieces, end: place };
}

/** Where a part along a direction touches a wheel: the wheel lies on the side to which the rope turns. */
function leaving(slot: Slot, direction: Point): Point {
  return ahead(slot.at, across(direction), -slot.sense * slot.radius);
}

/** Direction of the straight part that touches two wheels. */
function tangent(one: Slot, other: Slot): Point {
  const between = less(other.at, one.at);
  const distance = Math.hypot(...between);
  const offset = other.sense * other.radius - one.sense * one.radius;
  const lean = distance > 0 ? Math.asin(Math.max(-1, Math.min(1, offset / distance))) : 0;
  return headed(Math.atan2(between[1], between[0]) - lean);
}

function arcOf(slot: Slot, before: Point, after: Point): Arc {
  const from = less(leaving(slot, before), slot.at);
  const cross = before[0] * after[1] - before[1] * after[0];
  const angle = Math.atan2(cross, dot(before, after));
  const against = slot.sense * angle < 0;
  // A nearly straight run that bends a little to the other side is no whole turn.
  const sweep = !against ? angle : Math.abs(angle) < 0.6 ? 0 : angle + slot.sense * 2 * Math.PI;
  return { centre: slot.at, radius: slot.radius, from: Math.atan2(from[1], from[0]), sweep };
}

/** A turn in a few steps from the tension of one part to that of the next. */
function turnPieces(arc: Arc, part: number): TackleRope[] {
  if (arc.sweep === 0) return [];
  const steps = 4;
  return Array.from({ length: steps }, (_, step) => ({
    points: arcPoints(arc, step / steps, (step + 1) / steps),
    part,
    share: (step + 0.5) / steps,
  }));
}
