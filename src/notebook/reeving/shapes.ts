/** A place in a drawing, or a direction in it: across and down [px]. */
export type Point = readonly [number, number];

/** Colours by role; the page says what they are. */
export type Role = "ink" | "quiet1" | "water" | "rope" | "paper" | "grid";

/** A stretch of rope; its width shows its tension. */
export interface RopeShape {
  readonly kind: "rope";
  readonly points: readonly Point[];
  /** [px] */
  readonly width: number;
  /** Rope from the load to here [px], so that dashes run on; given where the rope goes out. */
  readonly dashedFrom?: number;
}

/** A polygon or an open line. */
export interface LineShape {
  readonly kind: "line";
  readonly points: readonly Point[];
  readonly stroke: Role;
  readonly width: number;
  /** Given: closed, and filled. */
  readonly fill?: Role;
}

/** A whole circle. */
export interface CircleShape {
  readonly kind: "circle";
  readonly at: Point;
  readonly radius: number;
  readonly stroke: Role;
  readonly width: number;
  readonly fill: Role;
}

/** Lines of text under each other; the place is that of the first base line. */
export interface TextShape {
  readonly kind: "text";
  readonly at: Point;
  readonly lines: readonly TextLine[];
  readonly anchor: "start" | "middle" | "end";
}

/** One line of a text. */
export interface TextLine {
  readonly text: string;
  readonly role: Role;
  readonly bold?: boolean;
}

/** Whatever a drawing is made of. */
export type Shape = RopeShape | LineShape | CircleShape | TextShape;

/** Size of all texts [px]. */
export const textSize = 13;

/** From one base line to the next [px]. */
export const textLead = 16;

const averageCharacter = 0.56;
const boldCharacter = 0.61;
const wideCharacter = 1.02;

/** Room that a text takes across [px]: an estimate on the safe side, since the reader's own fonts are used. */
export function textWidth({ text, bold = false }: TextLine): number {
  let sum = 0;
  for (const character of text)
    sum +=
      character > "\u2e7f"
        ? wideCharacter
        : /[MWm@%]/u.test(character)
          ? 1
          : /[A-Zw]/u.test(character)
            ? 0.82
            : bold
              ? boldCharacter
              : averageCharacter;
  return textSize * sum;
}

/** An upright rectangle. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Smallest box around places, with some room; without places an empty one at the corner. */
export function boxAround(points: readonly Point[], room = 0): Box {
  if (points.length === 0) return { left: 0, right: 0, top: 0, bottom: 0 };
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x - room);
    right = Math.max(right, x + room);
    top = Math.min(top, y - room);
    bottom = Math.max(bottom, y + room);
  }
  return { left, right, top, bottom };
}

/** Box that a text fills. */
export function textBox({ at: [x, y], lines, anchor }: TextShape): Box {
  const width = Math.max(0, ...lines.map(textWidth));
  const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
  return {
    left,
    right: left + width,
    top: y - 0.8 * textSize,
    bottom: y + (lines.length - 1) * textLead + 0.25 * textSize,
  };
}

/** Box that a shape fills. */
export function shapeBox(shape: Shape): Box {
  switch (shape.kind) {
    case "text":
      return textBox(shape);
    case "circle":
      return boxAround([shape.at], shape.radius + shape.width / 2);
    default:
      return boxAround(shape.points, shape.width / 2);
  }
}

/** Whether two boxes cover a common area. */
export function overlapping(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/** The same shape with every place moved by a rule that keeps lengths. */
export function moved<Kind extends Shape>(shape: Kind, rule: (at: Point) => Point): Kind {
  return "points" in shape ? { ...shape, points: shape.points.map(rule) } : { ...shape, at: rule(shape.at) };
}
