import { figures } from "../../quantity/print.js";
import { spreadLabels } from "../labels.js";
import { type Course, courseOf, type Reach, type Way } from "./course.js";
import { labelBoxes, leader } from "./label-room.js";
import type { Spot } from "./pen.js";
import { courseBox, placedCourse } from "./placed-course.js";
import {
  type Box,
  moved,
  overlapping,
  type Shape,
  shapeBox,
  type TextLine,
  textLead,
  textSize,
  textWidth,
} from "./shapes.js";
import { drawnCourse, labelTexts, textIn, textRoom } from "./strip.js";
import { directions, type Strips } from "./strips.js";
import { pieces, takenRoom } from "./taken-room.js";
import { ropeWidth } from "./thickness.js";
import { type EndWords, footNote, stripTitle } from "./words.js";
import { wrapped } from "./wrapped.js";

/** A drawing for one width of page. */
export interface Arrangement {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** A course with the places of its labels. */
interface LaidOut {
  readonly course: Course;
  readonly boxes: readonly Box[];
  readonly labelRoom: number;
  readonly anchor: "start" | "middle";
  /** Factor on the thickness of ropes, where the drawing is small. */
  readonly thickness: number;
}

const margin = 8;
const narrowWidth = 360;
const stripGap = 26;
const widestNote = 640;
/** From this room on a note stands beside the samples of rope [px]. */
const leastNote = 400;
const largestScale = 1.3;
const wideWidth = 900;
/** Least scale at which two strips stand beside each other. */
const leastBeside = 0.6;

/** From the load at the left to the hand at the right, labels around; both ways beside each other where they fit. */
export function wideArrangement(strips: Strips, way: Way, words: EndWords): Arrangement {
  const half = laidInWidth(strips, way, words, wideWidth / 2);
  if (half.scale >= leastBeside && leadersAreClear(half.laid))
    return arranged(wideWidth, strips, words, half.laid, wideWidth / 2);
  return arranged(wideWidth, strips, words, laidInWidth(strips, way, words, wideWidth).laid);
}

/** Whether no thin line from a spot to its label runs through another label. */
function leadersAreClear({ course, boxes }: LaidOut): boolean {
  return spotsOf(course).every((spot, index) => {
    const line = pieces(leader(spot, boxes[index]!) ?? [], 0);
    return boxes.every((box, other) => other === index || !line.some((piece) => overlapping(piece, box)));
  });
}

/** A course with its labels in a width of the page, as long as it may get there. */
function laidInWidth(strips: Strips, way: Way, words: EndWords, width: number): { laid: LaidOut; scale: number } {
  const labelRoom = 150;
  const room = width - 250;
  const reaches: Reach[] = [210, 180, 150, 125, 100, 75, 50].map((along) => ({ along, aside: 112 }));
  const widthOf = (one: Course) => courseBox(one).right - courseBox(one).left;
  let course = courseOf(strips, way, reaches[0]!);
  for (const reach of reaches.slice(1)) if (widthOf(course) > room) course = courseOf(strips, way, reach);
  const scale = Math.min(largestScale, room / widthOf(course));
  const box = courseBox(course);
  const left = Math.min(125, (width - scale * (box.right - box.left)) / 2);
  const placed = placedCourse(course, { scale, down: false, shift: [left - scale * box.left, 0] });
  const spots = spotsOf(placed);
  const sizes = labelSizes(strips, words, labelRoom);
  const order = [0, spots.length - 1, ...spots.keys()].filter((spot, index, all) => all.indexOf(spot) === index);
  const found = labelBoxes(
    order.map((index) => ({ spot: spots[index]!, ...sizes[index]! })),
    takenRoom(placed),
    { left: margin, right: width - margin },
  );
  const boxes = spots.map((_, index) => found[order.indexOf(index)]!);
  return { laid: { course: placed, boxes, labelRoom, anchor: "middle", thickness: thicknessAt(scale) }, scale };
}

/** From the load at the top to the hand below, labels in a column beside. */
export function narrowArrangement(strips: Strips, way: Way, words: EndWords): Arrangement {
  const laid = laidDown(strips, words, courseOf(strips, way, { along: 78, aside: 62 }));
  return arranged(narrowWidth, strips, words, laid);
}

/** For a sheet of paper that holds other things as well: both ways beside each other, with short pieces of rope. */
export function sheetArrangement(strips: Strips, way: Way, words: EndWords): Arrangement {
  const laid = laidDown(strips, words, courseOf(strips, way, { along: 50, aside: 62 }));
  return arranged(2 * narrowWidth, strips, words, laid, narrowWidth);
}

function laidDown(strips: Strips, words: EndWords, course: Course): LaidOut {
  const room = 146;
  const box = courseBox(course);
  const scale = Math.min(1, room / (box.bottom - box.top));
  const column = margin + scale * (box.bottom - box.top) + 16;
  const labelRoom = narrowWidth - margin - column;
  const placed = placedCourse(course, { scale, down: true, shift: [margin - scale * box.top, -scale * box.left] });
  const spots = spotsOf(placed);
  const sizes = labelSizes(strips, words, labelRoom);
  let reached = Number.NEGATIVE_INFINITY;
  const wanted = spots.map(({ at }, index) => {
    // Labels keep the order of the line, even where it runs up again.
    reached = Math.max(reached, at[1]);
    return { at: reached, room: sizes[index]!.height + 10 };
  });
  const reach = wanted.reduce((sum, { room: one }) => sum + one, courseBox(course).right - courseBox(course).left);
  const heights = spreadLabels(wanted, -reach, 2 * reach);
  const boxes = sizes.map(({ width: across, height }, index): Box => {
    const top = heights[index]! - height / 2;
    return { left: column, right: column + across, top, bottom: top + height };
  });
  return { course: placed, boxes, labelRoom, anchor: "start", thickness: thicknessAt(scale) };
}

function thicknessAt(scale: number): number {
  return Math.max(0.6, Math.min(1, scale));
}

function spotsOf({ load, stations, hand }: Course): Spot[] {
  return [load, ...stations, hand];
}

/** The larger room of both ways: labels stand at the same place in both strips. */
function labelSizes(strips: Strips, words: EndWords, labelRoom: number): { width: number; height: number }[] {
  const [hauling, easing] = directions.map((direction) =>
    labelTexts(strips, direction, { words, room: labelRoom }).map(textRoom),
  );
  return hauling!.map((one, index) => ({
    width: Math.max(one.width, easing![index]!.width),
    height: Math.max(one.height, easing![index]!.height),
  }));
}

/** Both strips under each other, or one `aside` to the right of the other, each with its heading, and the scale of thickness. */
function arranged(width: number, strips: Strips, words: EndWords, laid: LaidOut, aside = 0): Arrangement {
  const shapes: Shape[] = [];
  let top = 0;
  let bottom = 0;
  for (const [index, direction] of directions.entries()) {
    const strip = stripShapes(strips, words, direction, laid);
    const highest = Math.min(...strip.map((shape) => shapeBox(shape).top));
    const titles = directions.map((one) =>
      textBlock(stripTitle(strips, one), { width: width - aside, top: top + 4, bold: true }),
    );
    const titled = aside > 0 ? Math.max(...titles.map((one) => one.bottom)) : titles[index]!.bottom;
    const shift = titled + 14 - highest;
    const put = [titles[index]!.shape, ...strip.map((shape) => moved(shape, ([x, y]) => [x, y + shift]))];
    shapes.push(...put.map((shape) => moved(shape, ([x, y]) => [x + index * aside, y])));
    bottom = Math.max(bottom, ...put.map((shape) => shapeBox(shape).bottom));
    if (aside > 0 && index === 0) continue;
    bottom += stripGap;
    shapes.push(rule(width, bottom - stripGap / 2));
    top = bottom;
  }
  const scale = thicknessScale(strips, { width, top: bottom + 2, thickness: laid.thickness });
  return { width, height: Math.ceil(scale.bottom + margin), shapes: [...shapes, ...scale.shapes] };
}

/** A thin line across the page. */
function rule(width: number, y: number): Shape {
  return {
    kind: "line",
    points: [
      [margin, y],
      [width - margin, y],
    ],
    stroke: "grid",
    width: 1,
  };
}

function stripShapes(strips: Strips, words: EndWords, direction: (typeof directions)[number], laid: LaidOut): Shape[] {
  const { course, boxes, labelRoom, anchor } = laid;
  const texts = labelTexts(strips, direction, { words, room: labelRoom });
  const spots = spotsOf(course);
  const leaders = spots.flatMap((spot, index): Shape[] => {
    const points = leader(spot, boxes[index]!);
    return points ? [{ kind: "line", points, stroke: "quiet1", width: 0.8 }] : [];
  });
  const labels = texts.map((lines, index) =>
    textIn(boxes[index]!, lines, anchorAt(spots[index]!, boxes[index]!, anchor)),
  );
  return [...leaders, ...drawnCourse(course, strips, direction, laid.thickness), ...labels];
}

/** Text beside its spot starts or ends there. */
function anchorAt({ at: [x] }: Spot, { left, right }: Box, usual: "start" | "middle"): "start" | "middle" | "end" {
  return left > x ? "start" : right < x ? "end" : usual;
}

interface TextPlace {
  readonly width: number;
  readonly top: number;
  readonly left?: number;
  readonly bold?: boolean;
}

/** A sentence from a left edge over the width of the page. */
function textBlock(text: string, { width, top, left = margin, bold = false }: TextPlace) {
  const lines = wrapped({ text, role: bold ? "ink" : "quiet1", bold }, Math.min(width - left - margin, widestNote));
  const box = { left, right: width - margin, top, bottom: top + lines.length * textLead };
  return { shape: textIn(box, lines, "start"), bottom: box.bottom };
}

/** Three samples of rope with their tensions, and what else is to be known, beside or below them. */
function thicknessScale(
  strips: Strips,
  { width, top, thickness }: { readonly width: number; readonly top: number; readonly thickness: number },
): { shapes: Shape[]; bottom: number } {
  const samples = [0, 0.5, 1].map((share) => share * strips.largest);
  const y = top + textLead / 2;
  let x = margin;
  const shapes = samples.flatMap((tension): Shape[] => {
    const text: TextLine = { text: `${figures(tension)} N`, role: "quiet1" };
    const from = x;
    x += 40 + textWidth(text) + 18;
    return [
      {
        kind: "rope",
        points: [
          [from, y],
          [from + 32, y],
        ],
        width: thickness * ropeWidth(tension, strips.largest),
      },
      { kind: "text", at: [from + 38, y + 0.35 * textSize], lines: [text], anchor: "start" },
    ];
  });
  const beside = width - x >= leastNote;
  const note = textBlock(`The harder the rope pulls, the thicker it is drawn, up to five times. ${footNote(strips)}`, {
    width,
    top: beside ? top : top + textLead + 6,
    left: beside ? x : margin,
  });
  return { shapes: [...shapes, note.shape], bottom: note.bottom };
}
