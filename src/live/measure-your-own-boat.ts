import { calibrate, type LineCalibration } from "../calibration/calibrate.js";
import { expectedHandForce, type LawBands } from "../calibration/measured-law.js";
import type { Reading, Way } from "../calibration/reading.js";
import { unknownLine } from "../calibration/unknown-line.js";
import type { RangeControl } from "../notebook/control.js";
import type { PanelFacts, Series } from "../notebook/output.js";
import { ValueError } from "../quantity/errors.js";
import { choice, slideFrom } from "./control.js";
import { evenly } from "./demo-skiff.js";
import { liveModel, modelOfFacts } from "./model.js";

/** What a scale showed under one load, up and down [N]. */
interface WholeReading {
  readonly load: number;
  readonly haul: number;
  readonly ease: number;
}

/** Three readings of a line, and what was known of it before. */
export interface ReadingFacts extends PanelFacts {
  readonly about: "readings of a line";
  readonly line: string;
  readonly readings: readonly WholeReading[];
  /** Step of the scale [N]. */
  readonly resolution: number;
  readonly prior: LawBands;
  /** Load that is asked about [N]. */
  readonly load: number;
}

/** As many readings as the panel has sliders for. */
const asMany = 3;

/**
 * Readings of a line as a panel takes them: the first three that were read both ways.
 *
 * @param readings  of one line [N]
 * @param prior  what was known of its ratio [-] and drag [N]
 * @param load  that is asked about [N]
 * @returns facts for the panel
 * @throws ValueError for fewer than three readings up and down
 */
export function readingFacts({
  readings,
  prior,
  load,
}: {
  readonly readings: readonly Reading[];
  readonly prior: LawBands;
  readonly load: number;
}): ReadingFacts {
  const whole = readings.flatMap(({ load: hung, haul, ease }) =>
    haul === undefined || ease === undefined ? [] : [{ load: hung, haul, ease }],
  );
  const [first] = readings;
  if (first === undefined || whole.length < asMany)
    throw new ValueError({
      quantity: "readings up and down, for the panel",
      value: String(whole.length),
      allowed: `${asMany} or more`,
      advice: "Read further loads both ways.",
    });
  return {
    about: "readings of a line",
    line: first.line,
    readings: whole.slice(0, asMany),
    resolution: first.resolution,
    prior,
    load,
  };
}

const places = ["First", "Second", "Third"] as const;
/** What the largest slider reaches, in steps of the scale. */
const mostSteps = 400;

/** The numbers of the three readings, one slider each. */
function readingControls({ readings, resolution: step }: ReadingFacts) {
  const read = (initial: number, label: string): RangeControl =>
    slideFrom({ label, measure: "force", minimum: 0, maximum: mostSteps * step, step, initial });
  const [one, two, three] = readings as readonly [WholeReading, WholeReading, WholeReading];
  return {
    load1: read(one.load, `${places[0]} load`),
    haul1: read(one.haul, `${places[0]}, pulled up`),
    ease1: read(one.ease, `${places[0]}, let down`),
    load2: read(two.load, `${places[1]} load`),
    haul2: read(two.haul, `${places[1]}, pulled up`),
    ease2: read(two.ease, `${places[1]}, let down`),
    load3: read(three.load, `${places[2]} load`),
    haul3: read(three.haul, `${places[2]}, pulled up`),
    ease3: read(three.ease, `${places[2]}, let down`),
  };
}

/** Readings of a sheet of an invented skiff, for a panel whose page gives none. */
const demo: ReadingFacts = {
  about: "readings of a line",
  line: "jib sheet",
  readings: [
    { load: 50, haul: 69, ease: 34 },
    { load: 100, haul: 142, ease: 66 },
    { load: 150, haul: 216, ease: 100 },
  ],
  resolution: 1,
  prior: unknownLine(),
  load: 150,
};

/** Hand forces over their load, by what was known and by what was read. */
function curvesOf(
  way: Way,
  { before, after, most }: { before: LineCalibration; after: LineCalibration; most: number },
) {
  const loads = evenly(most / 10, most, 10);
  const seriesOf = (name: string, { posterior }: LineCalibration, highlight: boolean): Series => {
    const bands = loads.map((load) => expectedHandForce(posterior, { load, way }));
    const over = (forces: readonly number[]) => forces.map((force, index) => force / loads[index]!);
    return {
      name,
      x: loads,
      line: over(bands.map(({ value }) => value)),
      bands: { line: { low: over(bands.map(({ low }) => low)), high: over(bands.map(({ high }) => high)) } },
      ...(highlight && { highlight }),
    };
  };
  const read = after.pulls.filter((pull) => pull.way === way);
  return [
    seriesOf("known before", before, false),
    seriesOf("with your readings", after, true),
    ...(read.length === 0
      ? []
      : [
          {
            name: "read",
            x: read.map(({ tension }) => tension),
            points: read.map(({ force, tension }) => force / tension),
          },
        ]),
  ];
}

/** Friction and drag of a line from three readings with a hand scale. */
export const measureYourOwnBoat = modelOfFacts(demo, (facts) => {
  const { line, prior } = facts;
  const step = facts.resolution;
  return liveModel({
    name: "measure-your-own-boat",
    controls: {
      ...readingControls(facts),
      resolution: slideFrom({
        label: "The scale reads to",
        measure: "force",
        minimum: step / 10,
        maximum: 10 * step,
        step: step / 2,
        initial: step,
      }),
      load: slideFrom({
        label: "Load that you ask about",
        measure: "force",
        minimum: 5,
        maximum: 4 * facts.load,
        step: 5,
        initial: facts.load,
      }),
      known: choice("Known before", { catalogue: "this line's blocks and rope", nothing: "nothing" }, "catalogue"),
    },
    compute: ({ resolution, known, load, ...read }, { say, sayFound }) => {
      const { load1, haul1, ease1, load2, haul2, ease2, load3, haul3, ease3 } = read;
      const numbers = [
        [load1, haul1, ease1],
        [load2, haul2, ease2],
        [load3, haul3, ease3],
      ] as const;
      const readings = numbers.map(
        ([hung, haul, ease], index): Reading => ({
          row: index + 1,
          line,
          load: hung,
          haul,
          ease,
          resolution,
          wet: false,
        }),
      );
      const options = { prior: () => (known === "catalogue" ? prior : unknownLine()) };
      const after = calibrate(readings, options)[0]!;
      // One impossible reading leaves what was known.
      const before = calibrate([{ row: 1, line, load: 0, haul: 0, resolution, wet: false }], options)[0]!;
      const { ratio, drag } = after.posterior;
      const at = ({ posterior }: LineCalibration, way: Way) => expectedHandForce(posterior, { load, way });
      const notBelowNothing = {
        value: Math.max(0, drag.value),
        low: Math.max(0, drag.low),
        high: Math.max(0, drag.high),
      };
      const haul = { label: "Haul at that load", measure: "force", ...at(after, "hauling") } as const;
      const unread = { label: "The same haul before reading", measure: "force", ...at(before, "hauling") } as const;
      const most = 1.2 * Math.max(load, ...numbers.map(([hung]) => hung));
      const outside = after.leftOut.map(({ row }) => `${places[row - 1]!.toLowerCase()} reading`);
      return {
        results: [
          { label: "Friction, as a ratio", measure: "plain", value: ratio.value, low: ratio.low, high: ratio.high },
          { label: "Drag", measure: "force", ...notBelowNothing },
          haul,
          { label: "Hold at that load", measure: "force", ...at(after, "easing") },
          unread,
        ],
        figure: {
          name: "your-readings",
          title: `Your readings put the haul at ${sayFound(haul)}`,
          caption:
            "Hand force over load, against the load. Wide tint: 90 % band of what was known before. Narrow tint: what is left of it with your readings. The ranges of friction and drag hold 95 of 100, those of the forces 90.",
          altText: `Two charts of hand force over load. At ${say("force", load)} hauling takes ${sayFound(haul)}; before reading ${sayFound(unread)}.`,
          x: { title: "Load", measure: "force", minimum: 0 },
          y: { title: "Hand force over load", measure: "plain", minimum: 0 },
          panels: [
            { title: "Hauling", series: curvesOf("hauling", { before, after, most }) },
            { title: "Easing", series: curvesOf("easing", { before, after, most }) },
          ],
        },
        sentence: `${say("force", load)} take ${sayFound(haul)}, to haul; before reading it was ${sayFound(unread)}.${outside.length === 0 ? "" : ` Left out, because no line does that: ${[...new Set(outside)].join(", ")}.`}${after.noiseFactor > 1 ? " The readings scatter more than scale and hand explain, so the ranges are wider." : ""}`,
      };
    },
  });
});
