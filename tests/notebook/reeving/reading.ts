import type { Arrangement } from "../../../src/notebook/reeving/arrangement.js";
import { type Drawing, type DrawingInput, reevingDrawing } from "../../../src/notebook/reeving/reeving-drawing.js";
import type { Point, RopeShape, Shape, TextShape } from "../../../src/notebook/reeving/shapes.js";

/** The arrangements for a wide page, for a sheet of paper and for a narrow page. */
export const everyArrangement = (input: DrawingInput): readonly Arrangement[] => reevingDrawing(input).arrangements;

export const textsOf = ({ shapes }: Arrangement): TextShape[] =>
  shapes.filter((shape): shape is TextShape => shape.kind === "text");

export const ropesOf = ({ shapes }: Arrangement): RopeShape[] =>
  shapes.filter((shape): shape is RopeShape => shape.kind === "rope");

/** Labels of load, stations and hand: texts that begin with bold lines, but for the headings of the strips. */
export const labelsOf = (arrangement: Arrangement): TextShape[] =>
  textsOf(arrangement).filter(
    ({ lines }) => lines.length > 1 && lines[0]?.bold === true && lines.at(-1)!.role !== "ink",
  );

/** Words of a label's bold lines. */
export const nameOf = ({ lines }: TextShape): string =>
  lines
    .filter(({ bold }) => bold === true)
    .map(({ text }) => text)
    .join(" ");

export const placesOf = (shape: Shape): readonly Point[] => ("points" in shape ? shape.points : [shape.at]);

export const allNumbers = ({ arrangements }: Drawing): number[] => {
  const found: number[] = [];
  JSON.stringify(arrangements, (_key, value: unknown) => {
    if (typeof value === "number") found.push(value);
    return value;
  });
  return found;
};
