import { handEnd, type Place, type Reeving } from "../../reeving/reeving.js";
import type { Turn } from "../../reeving/station.js";
import type { Point } from "./shapes.js";
import { across, dot, unit } from "./vector.js";

/** Distance of blocks at different places [px]: of all together, and least. */
const spread = 116;
const leastSpread = 36;

/** Distance of neighbouring parts [px]: few parts have room for large wheels. */
function pitchOf(parts: number): number {
  return parts <= 3 ? 26 : parts <= 5 ? 21 : parts <= 8 ? 17 : 14;
}

/** Where a rope begins, turns or ends at a block. */
export interface Slot {
  readonly body: string;
  readonly at: Point;
  /** The turn; absent where the rope is fastened. */
  readonly turn?: Turn;
  /** Radius on which the rope lies; 0 where it is fastened. */
  readonly radius: number;
  /** 1 when the rope turns from along to across, −1 the other way. */
  readonly sense: number;
  /** Directions in which parts leave the block here. */
  readonly pulls: readonly Point[];
}

/** One rope of a tackle on its way through the blocks; without an end where the hand holds it. */
export interface RopeSlots {
  readonly slots: readonly Slot[];
  /** Direction of the hauling part. */
  readonly leaves?: Point;
}

interface Frame {
  /** Place of a body or of the hand: along from the load to the boat, and across. */
  readonly placeOf: (name: string) => Point;
  readonly flat: boolean;
}

/** Places seen from the load: along is against its pull. */
function frameOf(reeving: Reeving): Frame {
  const [x, y] = unit(reeving.load.direction ?? [1, 0]);
  const inward: Point = [-x, -y];
  const local = (place: Place): Point => {
    const at: Point = typeof place === "number" ? [place, 0] : place;
    return [dot(at, inward), dot(at, across(inward))];
  };
  const placeOf = (name: string) => local(name === handEnd ? reeving.hand : reeving.bodies[name]!.at);
  const names = [...Object.keys(reeving.bodies), handEnd];
  const [, side] = placeOf(reeving.load.body);
  return { placeOf, flat: names.every((name) => Math.abs(placeOf(name)[1] - side) < 1e-9) };
}

/** A slot before the room beside its neighbours is known. */
interface Loose extends Omit<Slot, "at" | "radius"> {
  /** Place across, in parts. */
  readonly lane: number;
}

/**
 * Lays out the ropes of a tackle: parts side by side in the order in which they are rove, blocks where they stand.
 *
 * @param reeving  bodies and ropes
 * @returns slots of every rope; along is from the load to the boat, across to the next part [px]
 */
export function ropeSlots(reeving: Reeving): RopeSlots[] {
  const frame = frameOf(reeving);
  let lane = 0;
  const ropes = reeving.ropes.map((rope) => {
    const names = [rope.start, ...rope.turns.map(({ body }) => body), rope.end];
    const directions = names.slice(1).map((name, part) => {
      const [x1, y1] = frame.placeOf(names[part]!);
      const [x2, y2] = frame.placeOf(name);
      return unit([x2 - x1, y2 - y1]);
    });
    const slots: Loose[] = [];
    names.forEach((body, index) => {
      if (body === handEnd && index === names.length - 1) return;
      const before = directions[index - 1];
      const after = directions[index];
      const turn = index > 0 && after !== undefined ? rope.turns[index - 1]?.turn : undefined;
      const pulls = [...(before ? [[-before[0], -before[1]] as const] : []), ...(after ? [after] : [])];
      const bend = before && after ? bendOf(before, after) : { sense: 1, back: false };
      slots.push({ body, sense: bend.sense, pulls, lane: lane + (bend.back ? 0.5 : 0), ...(turn && { turn }) });
      if (bend.back) lane += 1;
    });
    lane += 1;
    const leaves = directions.at(-1);
    return { slots, ...(rope.end === handEnd && leaves && { leaves }) };
  });
  const pitch = pitchOf(lane);
  const place = frame.flat
    ? inLevels(reeving, frame, pitch)
    : inPlane({ reeving, frame, pitch, slots: ropes.flatMap(({ slots }) => slots) });
  return ropes.map((rope) => ({
    ...rope,
    slots: rope.slots.map(({ lane: own, ...slot }) => ({
      ...slot,
      at: place(slot.body, own),
      radius: slot.turn ? pitch / 2 : 0,
    })),
  }));
}

/** To which side a part turns, and whether it comes back beside the part before. */
function bendOf(before: Point, after: Point): { sense: number; back: boolean } {
  const cross = before[0] * after[1] - before[1] * after[0];
  const back = dot(before, after) < -0.2;
  return { sense: Math.abs(cross) > 1e-6 ? Math.sign(cross) : before[0] >= 0 ? 1 : -1, back };
}

/** All on the line of the load: blocks evenly spaced in their order, parts parallel. */
function inLevels(reeving: Reeving, { placeOf }: Frame, pitch: number): (body: string, lane: number) => Point {
  const levels = [...new Set(Object.keys(reeving.bodies).map((name) => placeOf(name)[0]))].sort((a, b) => a - b);
  const distance = Math.max(leastSpread, spread / Math.max(1, levels.length - 1));
  return (body, lane) => [levels.indexOf(placeOf(body)[0]) * distance, lane * pitch];
}

interface InPlane {
  readonly reeving: Reeving;
  readonly frame: Frame;
  readonly pitch: number;
  readonly slots: readonly Loose[];
}

/** Blocks where they stand, what belongs to one block side by side. */
function inPlane({ reeving, frame, pitch, slots }: InPlane): (body: string, lane: number) => Point {
  const places = Object.keys(reeving.bodies).map(frame.placeOf);
  const extent = (axis: 0 | 1) => Math.max(...places.map((at) => at[axis])) - Math.min(...places.map((at) => at[axis]));
  const scale = (1.3 * spread) / Math.max(extent(0), extent(1), 1e-9);
  const middle = (body: string) => {
    const lanes = slots.filter((slot) => slot.body === body).map(({ lane }) => lane);
    return (Math.max(...lanes) + Math.min(...lanes)) / 2;
  };
  return (body, lane) => {
    const [x, y] = frame.placeOf(body);
    return [x * scale, y * scale + (lane - middle(body)) * pitch];
  };
}
