import { bearings } from "../materials/bearings.js";
import { blockLosses } from "../materials/block-losses.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import type { Station } from "../reeving/reeving.js";
import { handForcesOfSize, type SizedLine } from "../reeving/size-gain.js";
import { tackle } from "../reeving/tackle.js";
import type { Band } from "../sources/band.js";
import { choice, slide } from "./control.js";
import { radians } from "./demo-skiff.js";
import { liveModel } from "./model.js";

type Bearings = keyof typeof bearings;

/** A sheet whose blocks are all of one size: a purchase, and one turn to the hand. */
function sheetOf({ rope, parts, bearing }: { rope: number; parts: number; bearing: Bearings }): SizedLine {
  return {
    ropeDiameter: rope,
    stiffness: stiffnessLaws.braidedCover,
    bearing: bearings[bearing],
    drag: bearing === "ball" ? blockLosses.ballDrag : blockLosses.plainDrag,
    stations: (sheave): Station[] => [
      { kind: "tackle", name: `${parts}:1`, reeving: tackle({ parts, hauledFrom: "fixed", turn: sheave }) },
      { ...sheave, name: "last block", wrapAngle: radians(90) },
    ],
  };
}

const [least, most] = [12, 80];
const diameters = [12, 16, 22, 31, 43, 59, 80];
const partsWords = { "1": "1:1", "2": "2:1", "3": "3:1", "4": "4:1", "5": "5:1", "6": "6:1" } as const;

const ends = (bands: readonly Band[]) => ({ low: bands.map(({ low }) => low), high: bands.map(({ high }) => high) });
const middles = (bands: readonly Band[]) => bands.map(({ value }) => value);

/** A sheet with blocks of another size. */
export const bigSheaveSmallSheave = liveModel({
  name: "big-sheave-small-sheave",
  controls: {
    sheave: slide({ label: "Sheave", measure: "length", minimum: least, maximum: most, step: 1, initial: 40 }),
    rope: slide({ label: "Rope", measure: "length", minimum: 3, maximum: 12, step: 0.5, initial: 8 }),
    load: slide({ label: "Load", measure: "force", minimum: 10, maximum: 2000, step: 10, initial: 600 }),
    parts: choice("Purchase", partsWords, "4"),
    bearing: choice("Bearings", { ball: "balls", plain: "plain" }, "ball"),
  },
  compute: ({ sheave, rope, load, parts, bearing }, { say, sayFound }) => {
    const line = sheetOf({ rope: rope / 1000, parts: Number(parts), bearing });
    const at = handForcesOfSize(line, sheave / 1000, load);
    const haul = { label: "Haul", measure: "force", ...at.hauling } as const;
    const hold = { label: "Hold", measure: "force", ...at.easing } as const;
    const all = diameters.map((diameter) => handForcesOfSize(line, diameter / 1000, load));
    const [hauling, easing] = [all.map((one) => one.hauling), all.map((one) => one.easing)];
    const ratio = sheave / rope;
    const bare = load / Number(parts);
    return {
      results: [
        haul,
        hold,
        { label: "Sheave ratio D/d", measure: "plain", value: ratio },
        { label: "Without friction", measure: "force", value: bare },
      ],
      figure: {
        name: "your-sheaves",
        title: `With ${say("length", sheave)} sheaves, ${say("plain", ratio, 2)} times the rope, you haul with ${say("force", haul.value)}`,
        caption:
          "Hand force against the size of all the sheaves in the line. Solid: hauling. Dashed: holding. Grey tint: 90 % band.",
        altText: `Hand force against sheave diameter from ${least} to ${most} mm. With ${say("length", sheave)} hauling takes ${say("force", haul.value)}, holding ${say("force", hold.value)}.`,
        x: { title: "Sheave diameter", measure: "length", minimum: 10, maximum: most },
        y: { title: "Hand force", measure: "force", minimum: 0 },
        panels: [
          {
            title: "",
            series: [
              {
                name: "hand",
                x: diameters,
                hauling: middles(hauling),
                easing: middles(easing),
                bands: { hauling: ends(hauling), easing: ends(easing) },
                highlight: true,
              },
              { name: "yours", x: [sheave, sheave], points: [haul.value, hold.value] },
            ],
            limits: [{ name: "no friction", value: bare }],
          },
        ],
      },
      sentence: `With ${say("length", sheave)} sheaves on ${say("length", rope)} rope, ${say("force", load)} on a ${parts}:1 take ${sayFound(haul)}, to haul.`,
    };
  },
});
