import { fibres } from "../materials/fibres.js";
import { practice } from "../materials/practice.js";
import { grooveFilling, handComfort, safetyFactors } from "../materials/safety.js";
import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import { type Margins, type Outcome, outcomeOf } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import { breakLoad, ropeStiffness } from "./break-load.js";
import type { RopeMake } from "./make.js";
import { retainedStrength, type Weakening } from "./retained.js";

/** The job that a line has to do; what is left out does not limit it. */
export interface LineJob extends Pick<Weakening, "ends" | "use" | "wet" | "daysInSun"> {
  /** Largest tension in the rope that is planned for [N]. */
  readonly workingLoad: number;
  readonly safetyFactor: number;
  /** Largest tension that a bare hand holds [N]. */
  readonly handTension?: number;
  /** Thinnest and thickest rope that the cleat takes [m]. */
  readonly cleat?: { readonly thinnest: number; readonly thickest: number };
  /** Tightest sheave under load [m]. */
  readonly sheave?: { readonly diameter: number; readonly grooveWidth: number };
  /** Stretch that the trim allows under a change of tension. */
  readonly stretch?: { readonly length: number; readonly tensionChange: number; readonly allowed: number };
}

/** What can stop a line from getting thinner. */
export type LimitName = "strength" | "hand comfort" | "stretch" | "cleat" | "groove";

/** One limit of a line at one size. */
export interface LineLimit {
  readonly name: LimitName;
  /** What there is over what is asked for, with its range [-]. */
  readonly margin: Band;
  /** The same at the middle and at the bad end [-]. */
  readonly margins: Margins;
  /** What the bad end has to reach [-]. */
  readonly least: number;
  readonly outcome: Outcome;
  /** What there is and what is asked for, in words. */
  readonly reason: string;
}

/**
 * How a line stands against every limit of its job.
 *
 *     strength      η_s F_b / (SF · F_w); the middle has to reach 1, and the weak end of the range half of it: both are asked
 *     hand comfort  comfortable force a metre of diameter · d / T_hand
 *     stretch       allowed · EA / (ΔT · L)
 *     cleat         the nearer of d / thinnest and thickest / d
 *     groove        the nearer of (b / d) / 1.10 and (d / b) / least filling
 *
 * @param make  rope at the size that is asked about
 * @param job  loads [N], lengths [m], hardware
 * @returns limits in this order, margins [-]; those that the job leaves out are left out
 * @throws ValueError for a load, length or ratio that cannot be
 * Valid as an estimate for comparing sizes; the safety factor is there for what the estimate does not know.
 * Source: cordage-institute-1401, section 4, for the safety factor; common practice for the groove. Each coefficient is a record.
 */
export function lineLimits(make: RopeMake, job: LineJob): LineLimit[] {
  const limits = [strength(make, job)];
  if (job.handTension !== undefined) limits.push(comfort(make.diameter, within("handTension", job.handTension)));
  if (job.stretch !== undefined) limits.push(stretch(make, job.stretch));
  if (job.cleat !== undefined) limits.push(cleat(make.diameter, job.cleat));
  if (job.sheave !== undefined) limits.push(groove(make.diameter, job.sheave.grooveWidth));
  return limits;
}

const millimetres = (length: number) => `${figures(1000 * length)} mm`;
const newtons = (band: Band) =>
  `${figures(band.value)} N, likely ${figures(band.low, 2)} to ${figures(band.high, 2)} N`;

function limit(name: LimitName, margin: Band, reason: string, least = 1): LineLimit {
  const margins = { middle: margin.value, worst: margin.low };
  return { name, margin, margins, least, outcome: outcomeOf(margins, least), reason };
}

function strength(make: RopeMake, job: LineJob): LineLimit {
  const diameterRatio = job.sheave === undefined ? {} : { diameterRatio: job.sheave.diameter / make.diameter };
  const retained = retainedStrength({ ...job, ...diameterRatio, fibre: make.fibre });
  const left = bandOf({ straight: breakLoad(make), retained }, (values) => values.straight * values.retained);
  const needed = within("safetyFactor", job.safetyFactor) * within("workingLoad", job.workingLoad, 1e-9);
  return limit(
    "strength",
    { value: left.value / needed, low: left.low / needed, high: left.high / needed },
    `${millimetres(make.diameter)} ${fibres[make.fibre].name} breaks at ${newtons(left)} (weakest: ${retained.weakestPlace}${retained.slips ? ", which may slip before it breaks" : ""}); ` +
      `${figures(job.workingLoad)} N with a safety factor of ${figures(job.safetyFactor)} ask for ${figures(needed)} N, and for ${figures(safetyFactors.weakEndShare.value * needed)} N at the weak end`,
    safetyFactors.weakEndShare.value,
  );
}

function comfort(diameter: number, hand: number): LineLimit {
  const { value, low, high } = handComfort;
  return limit(
    "hand comfort",
    { value: (value * diameter) / hand, low: (low * diameter) / hand, high: (high * diameter) / hand },
    `a hand holds about ${figures(value * diameter, 2)} N on ${millimetres(diameter)} in comfort, at least ${figures(low * diameter, 2)} N; it has to hold ${figures(hand)} N`,
  );
}

function stretch(make: RopeMake, { length, tensionChange, allowed }: NonNullable<LineJob["stretch"]>): LineLimit {
  const pull = within("tension", tensionChange) * within("lineLength", length);
  const longer = bandOf({ stiffness: ropeStiffness(make) }, ({ stiffness }) => pull / stiffness);
  const most = within("stretch", allowed);
  return limit(
    "stretch",
    { value: most / longer.value, low: most / longer.high, high: most / longer.low },
    `${figures(tensionChange)} N more stretch ${figures(length)} m by ${millimetres(longer.value)}, likely up to ${millimetres(longer.high)}; the trim allows ${millimetres(most)}`,
  );
}

function cleat(diameter: number, { thinnest, thickest }: NonNullable<LineJob["cleat"]>): LineLimit {
  const margin = Math.min(
    diameter / within("ropeDiameter", thinnest),
    within("ropeDiameter", thickest, thinnest) / diameter,
  );
  return limit(
    "cleat",
    { value: margin, low: margin, high: margin },
    `the cleat takes ${millimetres(thinnest)} to ${millimetres(thickest)}; the line has ${millimetres(diameter)}`,
  );
}

function groove(diameter: number, width: number): LineLimit {
  const ratio = within("grooveRatio", within("grooveWidth", width) / diameter, 1e-3, 1e3);
  const clear = practice.cheekContactRatio;
  const value = Math.min(ratio / clear.value, 1 / ratio / grooveFilling.value);
  const low = Math.min(ratio / clear.high, 1 / ratio / grooveFilling.high);
  const high = Math.min(ratio / clear.low, 1 / ratio / grooveFilling.low);
  return limit(
    "groove",
    { value, low, high },
    `a groove of ${millimetres(width)} is ${figures(ratio)} times as wide as the line; it should be ${figures(clear.value)} to ${figures(1 / grooveFilling.value)} times`,
  );
}
