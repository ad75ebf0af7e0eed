import { bearings } from "../materials/bearings.js";
import { blockLosses } from "../materials/block-losses.js";
import { coverFriction } from "../materials/covers.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { type TreadName, treads } from "../materials/surfaces.js";
import type { Line } from "../reeving/line.js";
import type { Station } from "../reeving/reeving.js";
import type { Sheave } from "../reeving/station.js";
import { tackle } from "../reeving/tackle.js";
import { bandOf } from "../sources/band.js";
import { coefficient } from "../sources/coefficient.js";
import { bandAtLoad } from "../uncertainty/line-band.js";
import { lineSensitivity } from "../uncertainty/line-sensitivity.js";
import type { UncertainInput } from "../uncertainty/uncertain-input.js";
import { choice, slide } from "./control.js";
import { coverControls, coverOf, treadWords } from "./covers.js";
import { braidedRope, gennakerLoad, radians } from "./demo-skiff.js";
import { liveModel } from "./model.js";

const sailLoad = coefficient({
  value: 1,
  low: 0.8,
  high: 1.25,
  unit: "1",
  status: "invented for the demo",
  place: "load of a sail in a wind that is read off, over the load worked out: trim, waves, how well the wind is read",
});

const { ball } = bearings;
const drag = blockLosses.ballDrag;

interface Rigged {
  readonly rope: number;
  readonly sheave: number;
  readonly parts: number;
  readonly angle: number;
  readonly last: TreadName | "free";
  readonly tread: number;
}

/** A sheet: a purchase where one is wanted, then a last block, with a ratchet or without. Sizes in mm, angle in degrees. */
function lineOf({ rope, sheave, parts, angle, last, tread }: Rigged): Line {
  const wheel = (name: string, wrapAngle: number): Sheave => ({
    kind: "sheave",
    name,
    diameter: sheave / 1000,
    wrapAngle,
    pinRadius: (ball.radiusShare.value * sheave) / 2000,
    bearingFriction: ball.friction.value,
    drag: drag.value,
  });
  const purchase: Station[] =
    parts === 1
      ? []
      : [
          {
            kind: "tackle",
            name: "purchase",
            reeving: tackle({ parts, hauledFrom: "moving", turn: wheel("clew block", Math.PI) }),
          },
        ];
  const end = wheel("last block", radians(angle));
  return {
    rope: braidedRope(rope / 1000),
    stations: [...purchase, last === "free" ? end : { ...end, kind: "ratchet", treadFriction: tread }],
  };
}

const quantities = { hauling: "haul", easing: "hold", deadBand: "dead band" } as const;
const labels = {
  sail: "Load of the sail",
  bearings: "Bearings",
  rope: "Bending of the rope",
  surface: "Cover on the tread",
  grit: "Grit and seals",
} as const;

/** Draws of a band, and points and repeats of the shares: few enough for a slider, and the errors are shown. */
const draws = 2048;
const points = { samples: 512, repeats: 4 };

/** Shares below this are not told [%]. */
const leastShown = 0.5;

const share = bandOf(
  { friction: ball.friction, radius: ball.radiusShare },
  ({ friction, radius }) => friction * radius,
);

/** Which number moves the hand force most, for a sheet as the reader rigs it. */
export const whatMattersMost = liveModel({
  name: "what-matters-most",
  controls: {
    asked: choice("Asked about", { easing: "hold", hauling: "haul", deadBand: "dead band" }, "easing"),
    wind: slide({ label: "Apparent wind", measure: "wind", minimum: 4, maximum: 20, step: 0.5, initial: 12 }),
    parts: choice("Purchase at the clew", { "1": "none", "2": "2:1", "3": "3:1", "4": "4:1" }, "1"),
    last: choice("Last block", { free: "no ratchet", ...treadWords }, "faceted"),
    strands: coverControls.strands,
    angle: slide({
      label: "Turn at the last block",
      measure: "angle",
      minimum: 20,
      maximum: 180,
      step: 5,
      initial: 160,
    }),
    rope: slide({ label: "Rope", measure: "length", minimum: 4, maximum: 12, step: 0.5, initial: 7 }),
    sheave: slide({ label: "Sheaves", measure: "length", minimum: 20, maximum: 80, step: 1, initial: 63 }),
    known: choice(
      "Measured, so known exactly",
      {
        nothing: "nothing yet",
        sail: labels.sail,
        surface: labels.surface,
        rope: labels.rope,
        bearings: labels.bearings,
      },
      "nothing",
    ),
  },
  compute: ({ asked, wind, parts, last, known, strands, ...sizes }, { say, sayFound }) => {
    const tread = last === "free" ? undefined : coverFriction(coverOf({ strands, wet: false }), treads[last]);
    const line = lineOf({ ...sizes, parts: Number(parts), last, tread: tread?.value ?? 0 });
    const all: readonly UncertainInput[] = [
      { name: "sail", turns: "load", record: sailLoad },
      { name: "bearings", turns: "bearing", record: share },
      { name: "rope", turns: "bending", record: stiffnessLaws.braidedCover.tensionTerm },
      ...(tread === undefined ? [] : [{ name: "surface", turns: "tread", record: tread } as const]),
      { name: "grit", turns: "drag", record: drag },
    ];
    const uncertainInputs = all.filter(({ name }) => name !== known);
    const load = gennakerLoad(wind);
    const band = bandAtLoad({ line, uncertainInputs }, load, { samples: draws })[asked];
    const ranked = lineSensitivity({ line, uncertainInputs, load, quantity: asked, options: points });
    const found = { label: `The ${quantities[asked]}`, measure: "force", ...band } as const;
    const shares = ranked.map(({ name, total }) => {
      const [value, error] = [100 * total.value, 200 * total.error];
      return {
        label: labels[name as keyof typeof labels],
        measure: "share",
        value,
        low: Math.max(0, value - error),
        high: value + error,
      } as const;
    });
    const told = shares.filter(({ value }) => value >= leastShown);
    const [first] = told;
    return {
      results: [found, ...told],
      figure: {
        name: "your-doubt",
        title: `${first!.label}: ${say("share", first!.value, 2)} of the doubt about the ${quantities[asked]}`,
        caption: `Share of the doubt (the variance) that each number makes, with all that it does together with others. The ranges beside the shares are twice their sampling error. Numbers that make less than ${say("share", leastShown)} are left out.`,
        altText: `${told.map(({ label, value }) => `${label} ${say("share", value, 2)}`).join(", ")}.`,
        x: { title: "Place", measure: "plain", minimum: 0, maximum: Object.keys(labels).length + 0.9 },
        y: { title: "Share of the doubt", measure: "share", minimum: 0, maximum: 105 },
        panels: [
          {
            title: "",
            series: told.map(({ label, value }, index) => ({
              name: label,
              x: [index + 1, index + 1],
              line: [0, value],
              points: [null, value],
              ...(index === 0 && { highlight: true }),
            })),
          },
        ],
      },
      sentence: `In ${say("wind", wind)} the ${quantities[asked]} is ${sayFound(found)}. ${first!.label} makes ${say("share", first!.value, 2)} of the doubt: measure that next.`,
    };
  },
});
