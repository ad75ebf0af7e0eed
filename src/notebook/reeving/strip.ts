import type { Direction } from "../../reeving/mechanism-loads.js";
import type { Course } from "./course.js";
import { type Box, type Point, type Shape, type TextLine, textLead, textSize, textWidth } from "./shapes.js";
import type { Strips } from "./strips.js";
import { ropeWidth } from "./thickness.js";
import { type EndWords, endLines, stationLines } from "./words.js";

/** Words at the load, at every station, at the hand. */
export function labelTexts(
  strips: Strips,
  direction: Direction,
  { words, room }: { readonly words: EndWords; readonly room: number },
): TextLine[][] {
  const { stations, handForce, moves } = strips.states[direction];
  return [
    endLines(words.load ?? "load", strips.load, "rope", room),
    ...stations.map((state, index) => stationLines(strips.stations[index]!, state, { moves, room })),
    endLines(words.hand ?? "hand", handForce, "water", room),
  ];
}

/** Room that lines of text take [px]. */
export function textRoom(lines: readonly TextLine[]): { width: number; height: number } {
  return { width: Math.max(0, ...lines.map(textWidth)), height: lines.length * textLead };
}

/** Lines of text in a box, from its top. */
export function textIn(box: Box, lines: readonly TextLine[], anchor: "start" | "middle" | "end"): Shape {
  const x = anchor === "start" ? box.left : anchor === "end" ? box.right : (box.left + box.right) / 2;
  return { kind: "text", at: [x, box.top + 0.9 * textSize], lines, anchor };
}

/** Everything of a course but its words, for one way, with ropes of their thickness times a factor. */
export function drawnCourse(course: Course, strips: Strips, direction: Direction, thickness: number): Shape[] {
  let along = 0;
  const ropes = course.ropes
    .filter(({ points }) => lengthOf(points) > 0)
    .map(({ points, tensions }): Shape => {
      const width = thickness * ropeWidth(tensions[direction], strips.largest);
      const from = along;
      along += lengthOf(points);
      return { kind: "rope", points, width, ...(direction === "easing" && { dashedFrom: from }) };
    });
  const motion = strips.states[direction].moves ? course.motion[direction] : [];
  return [...course.marks, ...ropes, ...course.over, ...motion];
}

function lengthOf(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, [x, y], index) => {
    const [x0, y0] = points[index]!;
    return sum + Math.hypot(x - x0, y - y0);
  }, 0);
}
