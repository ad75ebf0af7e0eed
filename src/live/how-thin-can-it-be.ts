import type { RopeUse } from "../materials/ageing.js";
import { handComfort, safetyFactors } from "../materials/safety.js";
import type { Series } from "../notebook/output.js";
import { breakLoad } from "../rope/break-load.js";
import { retainedStrength } from "../rope/retained.js";
import { type LimitName, type LineJob, lineLimits } from "../rope/thin-limits.js";
import { howThin, type RopeKind } from "../rope/thinnest.js";
import { type Band, bandOf } from "../sources/band.js";
import { choice, slide, toggle } from "./control.js";
import { evenly } from "./demo-skiff.js";
import { type Found, liveModel } from "./model.js";

const kinds = {
  hmpe: { fibre: "hmpeHighModulus", construction: "bareBraid" },
  covered: { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester" },
  polyester: { fibre: "polyester", construction: "doubleBraid" },
} as const satisfies Record<string, RopeKind>;

/** What there is of strength over what is asked for, with its range. */
function strengthBand(kind: RopeKind, job: LineJob, diameter: number): Band {
  const bend = job.sheave === undefined ? {} : { diameterRatio: job.sheave.diameter / diameter };
  const parts = {
    straight: breakLoad({ ...kind, diameter }),
    retained: retainedStrength({ ...job, ...bend, fibre: kind.fibre }),
  };
  return bandOf(parts, ({ straight, retained }) => (straight * retained) / (job.safetyFactor * job.workingLoad));
}

/** What there is of comfort for the hand over what is asked for, with its range. */
function comfortBand(job: LineJob, diameter: number): Band {
  const over = ({ value, low, high }: Band, by: number): Band => ({
    value: by * value,
    low: by * low,
    high: by * high,
  });
  return over(handComfort, diameter / (job.handTension ?? 1));
}

const [thinnestDrawn, thickestDrawn] = [1, 10];
const drawn = evenly(thinnestDrawn, thickestDrawn, 28);
const mostDrawn = 4;
const cut = (values: readonly number[]) => values.map((value) => (value > mostDrawn ? null : value));
/** A band leaves the chart where its low end does; above that its high end lies on the edge. */
const cutBand = (bands: readonly Band[]) => ({
  low: bands.map(({ low }) => (low > mostDrawn ? null : low)),
  high: bands.map(({ low, high }) => (low > mostDrawn ? null : Math.min(mostDrawn, high))),
});

/** How thin a control line may get, and what stops it. */
export const howThinCanItBe = liveModel({
  name: "how-thin-can-it-be",
  controls: {
    load: slide({ label: "Largest tension", measure: "force", minimum: 50, maximum: 3000, step: 10, initial: 450 }),
    hand: slide({
      label: "Of this the hand holds",
      measure: "force",
      minimum: 10,
      maximum: 400,
      step: 5,
      initial: 120,
    }),
    rope: choice("Rope", { hmpe: "bare HMPE", covered: "covered HMPE", polyester: "polyester" }, "hmpe"),
    end: choice("Ends in", { splice: "a splice", bowline: "a bowline" }, "splice"),
    use: choice("State", { new: "new", season: "a season old", worn: "worn" }, "season"),
    sheave: slide({ label: "Smallest sheave", measure: "length", minimum: 8, maximum: 60, step: 1, initial: 20 }),
    groove: slide({ label: "Width of its groove", measure: "length", minimum: 3, maximum: 14, step: 0.5, initial: 6 }),
    cleat: toggle("Held by a cleat for 3 to 8 mm", true),
  },
  compute: ({ load, hand, rope, end, use, sheave, groove, cleat }, { say }) => {
    const kind: RopeKind = kinds[rope];
    const job: LineJob = {
      workingLoad: load,
      handTension: hand,
      safetyFactor: safetyFactors.general.value,
      ends: [end],
      use: use satisfies RopeUse,
      wet: false,
      sheave: { diameter: sheave / 1000, grooveWidth: groove / 1000 },
      ...(cleat && { cleat: { thinnest: 0.003, thickest: 0.008 } }),
    };
    const { sizes, thinnest, firstLimit } = howThin(kind, job);
    const strongEnough = sizes.find(({ limits }) =>
      limits.some((one) => one.name === "strength" && one.margins.middle >= 1),
    );
    const millimetres = (metres: number) => say("length", 1000 * metres);
    const size = thinnest?.diameter ?? strongEnough?.diameter;
    const limitsDrawn = drawn.map((diameter) => lineLimits({ ...kind, diameter: diameter / 1000 }, job));
    const over = (name: LimitName) =>
      limitsDrawn.map((limits) => limits.find((one) => one.name === name)?.margins.middle ?? 0);
    const bandsOver = (bandAt: (diameter: number) => Band) => drawn.map((diameter) => bandAt(diameter / 1000));
    const series: Series[] = [
      {
        name: "strength",
        x: drawn,
        line: cut(over("strength")),
        bands: { line: cutBand(bandsOver((diameter) => strengthBand(kind, job, diameter))) },
        highlight: true,
      },
      {
        name: "hand comfort",
        x: drawn,
        line: cut(over("hand comfort")),
        bands: { line: cutBand(bandsOver((diameter) => comfortBand(job, diameter))) },
      },
      ...(cleat ? [{ name: "cleat", x: drawn, line: cut(over("cleat")) }] : []),
      { name: "groove", x: drawn, line: cut(over("groove")) },
    ];
    const stopped = firstLimit === undefined ? "" : `; ${firstLimit.name} stops it there`;
    const sentence =
      thinnest === undefined
        ? `No size in stock does all that is asked: ${firstLimit?.name ?? "something"} is in the way.`
        : `The thinnest that does it is ${millimetres(thinnest.diameter)}${stopped}.`;
    const sized = (label: string, metres: number | undefined): Found[] =>
      metres === undefined ? [] : [{ label, measure: "length", value: 1000 * metres }];
    const plain = (label: string, band: (diameter: number) => Band): Found[] =>
      size === undefined ? [] : [{ label, measure: "plain", ...band(size) }];
    return {
      results: [
        ...sized("Thinnest that does it", thinnest?.diameter),
        ...sized("On strength alone", strongEnough?.diameter),
        ...plain("Strength over what is asked, at that size", (diameter) => strengthBand(kind, job, diameter)),
        ...plain("Comfort over what is asked, at that size", (diameter) => comfortBand(job, diameter)),
        { label: "Safety factor that stays", measure: "plain", value: job.safetyFactor },
      ],
      figure: {
        name: "your-line",
        title: sentence.replace(/\.$/u, ""),
        caption:
          "What there is over what is asked for, by size of the line; above 1 is enough. Grey tint: 90 % bands of strength and of hand comfort.",
        altText: `Margins of each limit against rope diameter from ${thinnestDrawn} to ${thickestDrawn} mm. ${sentence}`,
        x: { title: "Rope diameter", measure: "length", minimum: thinnestDrawn, maximum: thickestDrawn },
        y: { title: "What there is over what is asked for", measure: "plain", minimum: 0, maximum: mostDrawn },
        panels: [{ title: "", series, limits: [{ name: "just enough", value: 1 }] }],
      },
      sentence,
    };
  },
});
