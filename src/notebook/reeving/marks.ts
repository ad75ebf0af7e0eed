import type { Turn } from "../../reeving/station.js";
import type { CircleShape, LineShape, Point, Role, Shape } from "./shapes.js";
import { across, ahead, headed } from "./vector.js";

const line = (points: readonly Point[], stroke: Role = "ink", width = 1.3): LineShape => ({
  kind: "line",
  points,
  stroke,
  width,
});

const circle = (at: Point, radius: number, look: Omit<CircleShape, "kind" | "at" | "radius">): CircleShape => ({
  kind: "circle",
  at,
  radius,
  ...look,
});

const teeth = 9;

/** What a rope turns round: a wheel with its pin, a wheel with teeth, a solid ring, or a plain circle for a measured loss. */
export function turnMark(kind: Turn["kind"], at: Point, radius: number): Shape[] {
  if (kind === "measured") return [circle(at, radius, { stroke: "quiet1", width: 1.2, fill: "paper" })];
  if (kind === "ring") return [circle(at, 0.72 * radius, { stroke: "ink", width: 0.5 * radius, fill: "paper" })];
  const wheel = circle(at, radius, { stroke: "ink", width: 1.4, fill: "paper" });
  const pin = circle(at, Math.min(2, 0.3 * radius), { stroke: "ink", width: 1, fill: "ink" });
  return kind === "ratchet" ? [wheel, ...toothMarks(at, radius), pin] : [wheel, pin];
}

/** Slanted strokes inside the rim. */
function toothMarks(at: Point, radius: number): Shape[] {
  return Array.from({ length: teeth }, (_, tooth) => {
    const heading = (2 * Math.PI * tooth) / teeth;
    return line(
      [ahead(at, headed(heading), 0.92 * radius), ahead(at, headed(heading + 0.55), 0.6 * radius)],
      "ink",
      1.1,
    );
  });
}

/** A bar along which things are fastened, with strokes behind it where it belongs to the boat. */
export function barMark({
  from,
  to,
  outward,
  fixed,
}: {
  readonly from: Point;
  readonly to: Point;
  readonly outward: Point;
  readonly fixed: boolean;
}): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Point = length > 0 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : across(outward);
  const strokes = fixed ? Math.max(3, Math.round(length / 5)) : 0;
  return [
    line([from, to], "ink", 2),
    ...Array.from({ length: strokes }, (_, stroke) => {
      const foot = ahead(from, along, (length * (stroke + 0.5)) / strokes);
      return line([foot, ahead(ahead(foot, outward, 5), along, -3)], "ink", 0.9);
    }),
  ];
}

/** Strop from a pin to the boat. */
export function stropMark(pin: Point, outward: Point, length: number): Shape[] {
  const end = ahead(pin, outward, length);
  const side = across(outward);
  return [
    line([pin, end], "ink", 1.3),
    ...barMark({ from: ahead(end, side, -8), to: ahead(end, side, 8), outward, fixed: true }),
  ];
}

/** Jaws on both sides of the rope: apart and empty when open, on the rope and solid when closed. */
export function cleatMark(at: Point, along: Point, closed: boolean): Shape[] {
  const gap = closed ? 1.5 : 7.5;
  const radius = 8;
  return [1, -1].map((side): LineShape => {
    const points = Array.from({ length: 13 }, (_, step) => {
      const [forward, out] = headed((Math.PI * step) / 12);
      return ahead(ahead(at, along, radius * forward), across(along), side * (gap + radius * (1 - out)));
    });
    return { ...line(points, "ink", 1.4), fill: closed ? "ink" : "paper" };
  });
}

/** A broad arrow that pulls away from the line. */
export function loadMark(at: Point, pull: Point): Shape[] {
  const place = (forward: number, out: number) => ahead(ahead(at, pull, forward), across(pull), out);
  return [
    {
      ...line(
        [place(6, 4), place(24, 4), place(24, 10), place(42, 0), place(24, -10), place(24, -4), place(6, -4)],
        "rope",
        1.6,
      ),
      fill: "paper",
    },
  ];
}

/** Where the load is fastened. */
export function eyeMark(at: Point): Shape {
  return circle(at, 3.4, { stroke: "ink", width: 1.4, fill: "paper" });
}

/** Fingers across the rope, and the way they pull. */
export function handMark(at: Point, pull: Point): Shape[] {
  const place = (forward: number, out: number) => ahead(ahead(at, pull, forward), across(pull), out);
  return [
    ...[0, 6, 12, 18].map((forward) => line([place(forward, -7), place(forward, 7)], "water", 4.2)),
    line([place(27, 0), place(46, 0)], "water", 1.8),
    { ...line([place(44, -5), place(54, 0), place(44, 5)], "water", 1), fill: "water" },
  ];
}

/** Two small angles beside the rope that point where it runs. */
export function motionMark(at: Point, along: Point): Shape[] {
  return [-4, 4].map((forward) => {
    const place = (further: number, out: number) => ahead(ahead(at, along, forward + further), across(along), out);
    return line([place(-3, -4), place(1, 0), place(-3, 4)], "quiet1", 1.6);
  });
}

/** A second line through the same ring or wheel: it is not followed further. */
export function sharerMark(at: Point, along: Point, radius: number): Shape[] {
  return [-1, 1].flatMap((side) =>
    [1, 8, 15].map((from) =>
      line([ahead(at, along, side * (radius + from)), ahead(at, along, side * (radius + from + 4))], "quiet1", 1.6),
    ),
  );
}
