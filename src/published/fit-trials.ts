import { calibrate, type LineCalibration } from "../calibration/calibrate.js";
import type { Estimate } from "../calibration/estimate.js";
import { pullSigma } from "../calibration/law-fit.js";
import { type LawBands, priorOf } from "../calibration/measured-law.js";
import type { Reading } from "../calibration/reading.js";
import { calibrationRecords } from "../calibration/records.js";
import { turnShare } from "../calibration/turn-share.js";
import { unknownLine } from "../calibration/unknown-line.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const trials = 1000;
const turns = 4;
const resolution = 1;
const loads = [25, 50, 100, 150, 200, 250] as const;

/** Numbers between 0 and 1 that look random and are the same each time. */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function normal(next: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

interface Truth {
  readonly ratio: number;
  readonly drag: number;
}

/** Readings of a line whose law is known, as hand and scale would give them. */
function readingsOf({ ratio, drag }: Truth, hung: readonly number[], next: () => number): Reading[] {
  const scatter = calibrationRecords.repeatability.value;
  const read = (pull: number) =>
    resolution * Math.max(0, Math.round((pull + pullSigma(pull, 0, scatter) * normal(next)) / resolution));
  return hung.map((load, index) => ({
    row: index + 1,
    line: "trial",
    load,
    haul: read(ratio * load + drag),
    ease: read((load - drag) / ratio),
    resolution,
    wet: false,
    turns,
  }));
}

/** Shares of the trials in which an interval holds the truth. */
interface Coverage {
  readonly ratio: number;
  readonly drag: number;
  readonly turnRatio: number;
  readonly turnDrag: number;
  readonly posteriorRatio: number;
  readonly posteriorDrag: number;
}

/** Whether an interval holds a number. */
const holds = ({ low, high }: Estimate, truth: number) => low <= truth && truth <= high;

let known: Coverage | undefined;

/**
 * Counts over seeded trials how often the 95 % intervals hold the truth: six loads, hauled and eased, for the readings
 * alone; three loads, with truths drawn from the prior, as far as it lets nobody gain by friction, for prior and readings together.
 *
 * @returns shares [-]
 */
export function coverage(): Coverage {
  known ??= counted();
  return known;
}

function counted(): Coverage {
  const next = numbersFrom(20);
  const count = { ratio: 0, drag: 0, turnRatio: 0, turnDrag: 0, posteriorRatio: 0, posteriorDrag: 0 };
  const prior = unknownLine(turns);
  for (let trial = 0; trial < trials; trial++) {
    const truth = { ratio: 1.05 + 0.55 * next(), drag: 0.5 + 5 * next() };
    const { fit } = only(readingsOf(truth, loads, next));
    if (fit) {
      const turn = turnShare(fit, { turns });
      const turnRatio = truth.ratio ** (1 / turns);
      const sum = Array.from({ length: turns }, (_, index) => turnRatio ** index).reduce((all, one) => all + one, 0);
      count.ratio += Number(holds(fit.ratio, truth.ratio));
      count.drag += Number(holds(fit.drag, truth.drag));
      count.turnRatio += Number(holds(turn.ratio, turnRatio));
      count.turnDrag += Number(holds(turn.drag, truth.drag / sum));
    }
    const drawn = drawnFrom(prior, next);
    const { posterior } = only(readingsOf(drawn, [50, 100, 200], next));
    count.posteriorRatio += Number(holds(posterior.ratio, drawn.ratio));
    count.posteriorDrag += Number(holds(posterior.drag, drawn.drag));
  }
  const share = (name: keyof Coverage) => count[name] / trials;
  return {
    ratio: share("ratio"),
    drag: share("drag"),
    turnRatio: share("turnRatio"),
    turnDrag: share("turnDrag"),
    posteriorRatio: share("posteriorRatio"),
    posteriorDrag: share("posteriorDrag"),
  };
}

/** A line as the prior has it; drawn again where it would gain by friction, which no line does. */
function drawnFrom(prior: LawBands, next: () => number): Truth {
  const { logRatio, drag: force } = priorOf(prior);
  for (;;) {
    const ratio = Math.exp(logRatio.mean + logRatio.sigma * normal(next));
    const drag = force.mean + force.sigma * normal(next);
    if (ratio >= 1 && drag >= 0) return { ratio, drag };
  }
}

function only(readings: readonly Reading[]): LineCalibration {
  const [calibration] = calibrate(readings);
  if (!calibration) throw new Error("readings of one line make one calibration");
  return calibration;
}

const words: Readonly<Record<keyof Coverage, string>> = {
  ratio: "ratio of the line, readings alone",
  drag: "drag of the line, readings alone",
  turnRatio: "ratio of one of four equal turns",
  turnDrag: "drag of one of four equal turns",
  posteriorRatio: "ratio, three readings and what was known before",
  posteriorDrag: "drag, three readings and what was known before",
};

const coverageRows = (Object.keys(words) as (keyof Coverage)[]).map(
  (name): CheckRow => ({
    id: `trials-${name.toLowerCase()}`,
    quantity: `share of ${trials} made-up lines whose 95 % interval holds the truth: ${words[name]}`,
    printed: "0.95",
    unit: "1",
    readingError: 0.02,
    evidence: "independent",
    status: "published",
    source: "statics",
    place: "meaning of a 95 % interval; two standard deviations of a count of 1000 and the rounding of the scale: 0.02",
    compute: () => coverage()[name],
  }),
);

/** One pair over a bar: the square root of 98 over 50. */
const onePair: CheckRow = {
  ...publishedRow(
    "delaney-2022",
    "one-pair",
    "ratio of one pair, 98 up and 50 down, 75 hung",
    "1.400000",
    "1",
    "p. 88, the ratio worked by hand",
    () => {
      const { fit } = only([{ row: 1, line: "bar", load: 75, haul: 98, ease: 50, resolution: 1e-9, wet: false }]);
      return fit?.ratio.value ?? Number.NaN;
    },
  ),
  evidence: "exact",
};

/** Fits of lines whose truth is known. */
export const fitTrials: CheckSet = { topic: "calibration", rows: [onePair, ...coverageRows] };
