import { bearings } from "../materials/bearings.js";
import type { Cover } from "../materials/covers.js";
import { type TreadName, treads } from "../materials/surfaces.js";
import { wearVerdict } from "../materials/wear.js";
import { outcomeOf } from "../quantity/verdict.js";
import { type CoverEffect, coverEffects, type LineFriction } from "../reeving/cover-effect.js";
import type { Line } from "../reeving/line.js";
import { type Band, bandOf } from "../sources/band.js";
import { coefficient } from "../sources/coefficient.js";
import { choice, slide } from "./control.js";
import { coverControls, coverOf, treadWords } from "./covers.js";
import { blockDrag, gennakerLoad, windForLoad } from "./demo-skiff.js";
import { liveModel } from "./model.js";

const kept = coefficient({
  value: 80,
  unit: "N",
  low: 65,
  high: 95,
  status: "invented for the demo",
  place: "what the crew of the demo skiff keeps up",
});
const tailDrag = coefficient({
  value: 2,
  unit: "N",
  low: 1,
  high: 3,
  status: "invented for the demo",
  place: "a few metres of damp tail lying on the deck",
});

/** What a hand keeps up: as wide as that of the demo crew. */
function handOf(value: number): Band {
  return { value, low: (value * kept.low) / kept.value, high: (value * kept.high) / kept.value };
}

/** One 7 mm sheet over one 63 mm ratchet block, turned back by half a turn. */
function sheetWith({ treadFriction, bearingFriction, radiusShare, stiffness }: LineFriction): Line {
  const diameter = 0.063;
  return {
    rope: { diameter: 0.007, stiffness },
    stations: [
      {
        kind: "ratchet",
        name: "ratchet block",
        diameter,
        wrapAngle: Math.PI,
        pinRadius: (diameter / 2) * radiusShare,
        bearingFriction,
        drag: blockDrag.value,
        treadFriction,
      },
    ],
  };
}

function effectOf(tread: TreadName, cover: Cover, wind: number, tail: Band = tailDrag): CoverEffect {
  const [effect] = coverEffects({
    lineWith: sheetWith,
    covers: [cover],
    tread,
    bearing: bearings.ball,
    load: gennakerLoad(wind),
    tailDrag: tail,
  });
  return effect!;
}

function windsOf({ value, low, high }: Band): Band {
  return { value: windForLoad(value), low: windForLoad(low), high: windForLoad(high) };
}

const [lightest, strongest] = [3, 18];
const winds = [4, 5.5, 7, 8.5, 10, 11.5, 13, 14.5, 16, 18];

const enough = {
  enough: "A hand like yours keeps that up.",
  "can't tell": "A hand like yours may just keep that up, or may not.",
  "not enough": "That is more than a hand like yours keeps up.",
} as const;

/** What a cover on a tread leaves in the hand, and from which wind the sheet still runs. */
export const gripWithoutStrain = liveModel({
  name: "grip-without-strain",
  controls: {
    wind: slide({
      label: "Apparent wind",
      measure: "wind",
      minimum: lightest,
      maximum: strongest,
      step: 0.5,
      initial: 10,
    }),
    strands: { ...coverControls.strands, initial: "16" },
    fibre: { ...coverControls.fibre, initial: "aramidBlend" },
    wet: coverControls.wet,
    tread: choice("Ratchet", treadWords, "faceted"),
    hand: slide({
      label: "Your hand keeps up",
      measure: "force",
      minimum: 20,
      maximum: 250,
      step: 5,
      initial: kept.value,
    }),
  },
  compute: ({ wind, tread, hand, ...rest }, { say, sayFound }) => {
    const cover = coverOf(rest);
    const limit = handOf(hand);
    const effect = effectOf(tread, cover, wind);
    const hold = { label: "Hold", measure: "force", ...effect.easing } as const;
    const free = { label: "Goes out by itself from", measure: "wind", ...windsOf(effect.runOutLoad) } as const;
    const reach = windsOf(effectOf(tread, cover, wind, limit).runOutLoad);
    const used = bandOf({ hold: effect.easing, limit }, (one) => one.hold / one.limit);
    const outcome = outcomeOf({ middle: 1 / used.value, worst: 1 / used.high });
    const wear = wearVerdict({ tread, cover });
    const holds = winds.map((one) => effectOf(tread, cover, one).easing);
    return {
      results: [
        hold,
        { label: "Haul", measure: "force", ...effect.hauling },
        { label: "Your hand is enough up to", measure: "wind", ...reach },
        free,
      ],
      figure: {
        name: "your-hold",
        title: `Your hand is enough up to ${say("wind", reach.value, 2)}, and the sheet goes out by itself from ${say("wind", free.value, 2)}`,
        caption:
          "What is left to hold on the gennaker sheet. Grey tint: 90 % band. The rule is what your hand keeps up.",
        altText: `Hand force against apparent wind. At ${say("wind", wind)} the hold is ${say("force", hold.value)}; the hand keeps up ${say("force", hand)}.`,
        x: { title: "Apparent wind", measure: "wind", minimum: lightest, maximum: strongest },
        y: { title: "Hand force", measure: "force", minimum: 0 },
        panels: [
          {
            title: "",
            series: [
              {
                name: "hold",
                x: winds,
                line: holds.map(({ value }) => value),
                bands: { line: { low: holds.map(({ low }) => low), high: holds.map(({ high }) => high) } },
                highlight: true,
              },
              { name: `at ${say("wind", wind)}`, x: [wind], points: [hold.value] },
            ],
            limits: [{ name: "hand keeps up", ...limit }],
          },
        ],
      },
      sentence: `In ${say("wind", wind)} a ${treads[tread].name} and this cover leave ${sayFound(hold)}. ${enough[outcome]}${wear.outcome === "enough" ? "" : " This tread wears out this cover."}`,
    };
  },
});
