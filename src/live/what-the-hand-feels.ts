import { bearings } from "../materials/bearings.js";
import { type Cover, coverFriction } from "../materials/covers.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { type TreadName, treads } from "../materials/surfaces.js";
import type { Series } from "../notebook/output.js";
import { type Line, prepareLine } from "../reeving/line.js";
import type { Station } from "../reeving/reeving.js";
import { sweepLoads } from "../reeving/sweep.js";
import { tackle } from "../reeving/tackle.js";
import { bandSeries } from "../uncertainty/band-series.js";
import { bandAtLoad } from "../uncertainty/line-band.js";
import { uncertainInputsOf } from "../uncertainty/line-inputs.js";
import { choice, slide } from "./control.js";
import { coverControls, coverOf, treadWords } from "./covers.js";
import {
  ballSheave,
  blockDrag,
  braidedRope,
  evenly,
  gennakerLoad,
  radians,
  windForLoad,
  windMarks,
} from "./demo-skiff.js";
import { liveModel } from "./model.js";

type Block = TreadName | "plain";

const turning = { ...ballSheave({ diameter: 0.063, wrapAngle: radians(160) }), name: "turning block" };

/** Gennaker sheet of the demo skiff: a purchase at the clew where one is wanted, then a block or a ratchet. */
function sheet(block: Block, cover: Cover, parts: number): Line {
  const purchase: Station[] =
    parts === 1
      ? []
      : [
          {
            kind: "tackle",
            name: "purchase",
            reeving: tackle({ parts, hauledFrom: "moving", turn: ballSheave({ diameter: 0.063, wrapAngle: Math.PI }) }),
          },
        ];
  const last: Station =
    block === "plain"
      ? turning
      : {
          ...turning,
          kind: "ratchet",
          name: "ratchet block",
          treadFriction: coverFriction(cover, treads[block]).value,
        };
  return { rope: braidedRope(0.007), stations: [...purchase, last] };
}

function uncertainInputs(block: Block, cover: Cover) {
  const records = { bearing: bearings.ball, rope: stiffnessLaws.braidedCover, drag: blockDrag };
  return uncertainInputsOf(block === "plain" ? records : { ...records, tread: coverFriction(cover, treads[block]) });
}

const strongest = 18;
const loads = evenly(0, gennakerLoad(strongest), 13);
const top = windMarks([4, 8, 10, 12, 14, 16, 18]);
const samples = 2000;
const curveSamples = 512;

/** What the hand feels on the gennaker sheet of the demo skiff. */
export const whatTheHandFeels = liveModel({
  name: "what-the-hand-feels",
  controls: {
    wind: slide({ label: "Apparent wind", measure: "wind", minimum: 4, maximum: strongest, step: 0.5, initial: 12 }),
    block: choice("Last block", { plain: "plain block", ...treadWords }, "faceted"),
    strands: coverControls.strands,
    fibre: choice("Cover of", { polyester: "polyester", aramidBlend: "aramid blend" }, "polyester"),
    wet: coverControls.wet,
    purchase: choice("Purchase at the clew", { "1": "none", "2": "2:1", "3": "3:1" }, "1"),
  },
  compute: ({ wind, block, purchase, ...rest }, { say, sayFound }) => {
    const cover = coverOf(rest);
    const parts = Number(purchase);
    const line = sheet(block, cover, parts);
    const uncertain = { line, uncertainInputs: uncertainInputs(block, cover) };
    const load = gennakerLoad(wind);
    const prepared = prepareLine(line);
    const middle = prepared.handForces(load);
    const bands = bandAtLoad(uncertain, load, { samples });
    const found = (label: string, name: "hauling" | "easing" | "deadBand") =>
      ({ label, measure: "force", value: middle[name], low: bands[name].low, high: bands[name].high }) as const;
    const hold = found("Hold", "easing");
    const own = bandSeries({ name: "your sheet", loads, ...uncertain, options: { samples: curveSamples } });
    const plain: Series = {
      name: "hold, plain block",
      x: loads,
      easing: sweepLoads(sheet("plain", cover, 1), loads).easing,
    };
    const series: Series[] = [
      ...(block === "plain" && parts === 1 ? [] : [plain]),
      { ...own, ...sweepLoads(line, loads), highlight: true },
      { name: `at ${say("wind", wind)}`, x: [load, load], points: [middle.hauling, middle.easing] },
    ];
    return {
      results: [
        { label: "Sheet load", measure: "force", value: load },
        found("Haul", "hauling"),
        hold,
        found("Dead band", "deadBand"),
        { label: "Goes out by itself from", measure: "wind", value: windForLoad(prepared.runOutLoad()) },
      ],
      figure: {
        name: "your-sheet",
        title: `At ${say("wind", wind)} you haul with ${say("force", middle.hauling)} and hold with ${say("force", middle.easing)}`,
        caption: "Solid: hauling. Dashed: what is left to hold. Grey tint: 90 % band for a load that is known.",
        altText: `Hand force against sheet load. At ${say("force", load)} hauling takes ${say("force", middle.hauling)}, holding ${say("force", middle.easing)}.`,
        x: { title: "Sheet load", measure: "force", minimum: 0, maximum: gennakerLoad(strongest) },
        y: { title: "Hand force", measure: "force", minimum: 0 },
        top,
        panels: [{ title: "", series }],
      },
      sentence: `In ${say("wind", wind)} of apparent wind the sheet pulls ${say("force", load)}; you hold ${sayFound(hold)}.`,
    };
  },
});
