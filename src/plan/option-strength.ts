import type { Margins } from "../quantity/verdict.js";
import { prepareLine } from "../reeving/line.js";
import type { SizedLine } from "../reeving/size-gain.js";
import { type Running, rangesOf, sized } from "../reeving/sized-block.js";
import type { RopeMake } from "../rope/make.js";
import { type LineJob, lineLimits } from "../rope/thin-limits.js";
import { type Band, bandOf } from "../sources/band.js";

/** Measures at the middle and at the bad end of the range. */
export interface BothMeasures {
  readonly measures: Record<string, number>;
  readonly measuresRobust: Record<string, number>;
}

/** Margins of the limits of a rope, as measures: `strength margin`, `groove margin` and so on. */
export function marginMeasures(
  held: { readonly make: RopeMake; readonly job: LineJob },
  running: { readonly make: RopeMake; readonly job: LineJob },
): BothMeasures {
  const all = [...lineLimits(held.make, held.job), ...lineLimits(running.make, running.job)];
  const names = [...new Set(all.map(({ name }) => name))];
  const least = (end: keyof Margins) =>
    Object.fromEntries(
      names.map((name) => [
        `${name} margin`,
        Math.min(...all.filter((limit) => limit.name === name).map(({ margins }) => margins[end])),
      ]),
    );
  return { measures: least("middle"), measuresRobust: least("worst") };
}

/** Largest pull on a block of the line while hauling, with its range [N]; 0 without blocks. */
export function largestBlockLoad(line: SizedLine, sheaveDiameter: number, load: number): Band {
  return bandOf(rangesOf(line as Running), (values) => {
    const { rope, sheave } = sized(line, { sheaveDiameter, wrapAngle: Math.PI }, values);
    const { stations } = prepareLine({ rope, stations: line.stations(sheave) }).state(load, "hauling");
    return Math.max(0, ...stations.flatMap(({ blocks }) => blocks.map((block) => block.load)));
  });
}
