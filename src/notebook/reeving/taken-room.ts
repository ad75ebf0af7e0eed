import type { Course } from "./course.js";
import { type Box, boxAround, type Point, type Shape, shapeBox } from "./shapes.js";
import { thickestRope } from "./thickness.js";

const piece = 7;

/** Boxes of everything drawn of a course: long strokes in small pieces, so that room beside a slanted one is free. */
export function takenRoom({ ropes, marks, over, motion }: Course): Box[] {
  return [
    ...ropes.flatMap(({ points }) => pieces(points, thickestRope / 2)),
    ...[...marks, ...over, ...motion.hauling].flatMap((shape) => boxes(shape)),
  ];
}

function boxes(shape: Shape): Box[] {
  return shape.kind === "line" && shape.fill === undefined ? pieces(shape.points, 1) : [shapeBox(shape)];
}

/** Boxes along a stroke, in small pieces. */
export function pieces(points: readonly Point[], room: number): Box[] {
  return points.slice(1).flatMap(([x2, y2], index) => {
    const [x1, y1] = points[index]!;
    const count = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / piece));
    const at = (step: number): Point => [x1 + ((x2 - x1) * step) / count, y1 + ((y2 - y1) * step) / count];
    return Array.from({ length: count }, (_, step) => boxAround([at(step), at(step + 1)], room));
  });
}
