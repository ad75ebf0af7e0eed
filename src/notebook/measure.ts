import { knot, poundForce, standardGravity } from "../quantity/constants.js";
import { figures } from "../quantity/print.js";

/** Units that a reader may choose among; the first is the one in which numbers are kept. */
export const chosenUnits = {
  force: { N: 1, kgf: 1 / standardGravity, lbf: 1 / poundForce },
  wind: { kn: 1, "m/s": knot },
} as const;

/** Units of everything else: one each. */
const fixedUnits = {
  angle: "°",
  share: "%",
  length: "mm",
  metres: "m",
  mass: "g",
  time: "min",
  hours: "h",
  seconds: "s",
  speed: "m/s",
  temperature: "°C",
  power: "W",
  area: "m²",
  plain: "",
} as const;

/** What a number measures; it tells the units in which it can be shown. */
export type Measure = keyof typeof chosenUnits | keyof typeof fixedUnits;

/** Names of all measures. */
export const measures = [...Object.keys(chosenUnits), ...Object.keys(fixedUnits)] as readonly Measure[];

/** Units that a reader has chosen. */
export interface Units {
  readonly force: keyof typeof chosenUnits.force;
  readonly wind: keyof typeof chosenUnits.wind;
}

/** Newtons and knots. */
export const firstUnits: Units = { force: "N", wind: "kn" };

/** How a measure is shown: what its numbers are multiplied by, and the unit behind them. */
export function shownIn(measure: Measure, units: Units): { readonly scale: number; readonly unit: string } {
  switch (measure) {
    case "force":
      return { scale: chosenUnits.force[units.force], unit: units.force };
    case "wind":
      return { scale: chosenUnits.wind[units.wind], unit: units.wind };
    default:
      return { scale: 1, unit: fixedUnits[measure] };
  }
}

/** A unit behind its number: degrees stand close. */
function behind(unit: string): string {
  return unit === "" || unit === "°" ? unit : `\u00a0${unit}`;
}

/** A number in the reader's unit, such as `86.3 N`; three figures where nothing else is asked, of a light wind two. */
export function printed(measure: Measure, value: number, units: Units, digits?: number): string {
  const { scale, unit } = shownIn(measure, units);
  const shown = scale * value;
  return `${figures(shown, digits ?? (measure === "wind" && shown < 10 ? 2 : 3))}${behind(unit)}`;
}

/** Least and most of a range that stands beside a middle value. */
export interface PrintedRange {
  readonly measure: Measure;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A range in the reader's unit, such as `70 to 105 N`: two figures, or three where two would spoil it; undefined where it has no width. */
export function printedRange({ measure, value, low, high }: PrintedRange, units: Units): string | undefined {
  const { scale, unit } = shownIn(measure, units);
  const [middle, bottom, top] = [scale * value, scale * low, scale * high];
  const [least, most] = [Number(bottom.toPrecision(2)), Number(top.toPrecision(2))];
  const moved = Math.max(Math.abs(least - bottom), Math.abs(most - top));
  const digits = least <= middle && middle <= most && moved <= 0.15 * (top - bottom) ? 2 : 3;
  const [first, last] = [figures(bottom, digits), figures(top, digits)];
  return first === last ? undefined : `${first} to ${last}${behind(unit)}`;
}
