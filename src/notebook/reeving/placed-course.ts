import type { Course } from "./course.js";
import type { Spot } from "./pen.js";
import { type Box, boxAround, moved, type Point, type Shape, shapeBox } from "./shapes.js";

/** Box of everything that is drawn of a line but its words. */
export function courseBox({ ropes, marks, over, motion }: Course): Box {
  const shapes = [...marks, ...over, ...motion.hauling].map(shapeBox);
  const corners = shapes.flatMap(({ left, right, top, bottom }): Point[] => [
    [left, top],
    [right, bottom],
  ]);
  return boxAround([...corners, ...ropes.flatMap(({ points }) => points)], 4);
}

/** How a course is put on the page: its size changed, its axes swapped where it runs down, and moved. */
export interface Placing {
  readonly scale: number;
  readonly down: boolean;
  readonly shift: Point;
}

/** The same course at its place on the page. */
export function placedCourse(course: Course, { scale, down, shift }: Placing): Course {
  const turn = ([x, y]: Point): Point => (down ? [y, x] : [x, y]);
  const rule = (at: Point): Point => {
    const [x, y] = turn(at);
    return [scale * x + shift[0], scale * y + shift[1]];
  };
  const shape = (one: Shape): Shape => {
    const there = moved(one, rule);
    if (there.kind === "text" || there.kind === "rope") return there;
    const thinner = { ...there, width: Math.min(1, scale) * there.width };
    return thinner.kind === "circle" ? { ...thinner, radius: scale * thinner.radius } : thinner;
  };
  const spot = ({ at, room, outward }: Spot): Spot => ({
    at: rule(at),
    room: turn([scale * room[0], scale * room[1]]),
    outward: turn(outward),
  });
  return {
    ropes: course.ropes.map(({ points, tensions }) => ({ points: points.map(rule), tensions })),
    marks: course.marks.map(shape),
    over: course.over.map(shape),
    motion: { hauling: course.motion.hauling.map(shape), easing: course.motion.easing.map(shape) },
    load: spot(course.load),
    stations: course.stations.map(spot),
    hand: spot(course.hand),
  };
}
