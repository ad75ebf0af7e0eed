import type { Line } from "../reeving/line.js";
import { prepareLine } from "../reeving/line.js";
import { tackle } from "../reeving/tackle.js";
import { coefficient } from "../sources/coefficient.js";
import { bandAtLoad } from "../uncertainty/line-band.js";
import { choice, slide } from "./control.js";
import { evenly } from "./demo-skiff.js";
import { liveModel } from "./model.js";

/** How a purchase is rove. */
interface Purchase {
  readonly parts: number;
  /** Share of the pull that each sheave takes [%]. */
  readonly loss: number;
  readonly from: "fixed" | "moving";
  readonly leads: number;
}

/** K of a sheave on plain bearings, as the wire-rope tables take it. */
const plainRatio = coefficient({
  value: 1.09,
  unit: "1",
  low: 1.06,
  high: 1.15,
  status: "published",
  source: "wire-rope-users-manual",
  place: "lead-line factors; the range is judged",
});

const limp = { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };

function lineOf({ parts, loss, from, leads }: Purchase): Line {
  const turn = { kind: "measured", name: "sheave", tensionRatio: 1 + loss / 100 } as const;
  const reeving = tackle({ parts, hauledFrom: from, turn, leadBlocks: leads });
  return { rope: limp, stations: [{ kind: "tackle", name: "tackle", reeving }] };
}

/** What a sheave takes, K less 1, is the number that is not sure: as far as for plain bearings, whatever its middle. */
const taken = { value: plainRatio.value - 1, low: plainRatio.low - 1, high: plainRatio.high - 1 };
const uncertainInputs = [{ name: "K of the sheaves", turns: "bearing", record: taken }] as const;

function forcesOf(purchase: Purchase, load: number, samples: number) {
  const line = lineOf(purchase);
  const middle = prepareLine(line).handForces(load);
  return {
    middle,
    bands: bandAtLoad({ line, uncertainInputs: purchase.loss === 0 ? [] : uncertainInputs }, load, { samples }),
  };
}

const mostParts = 12;
const allParts = evenly(1, mostParts, mostParts);
const samples = 2000;
const curveSamples = 128;

/** A purchase of some parts whose sheaves each keep a share. */
export const purchasesAndLostForce = liveModel({
  name: "purchases-and-lost-force",
  controls: {
    load: slide({ label: "Load", measure: "force", minimum: 50, maximum: 3000, step: 50, initial: 1000 }),
    parts: slide({ label: "Parts", measure: "plain", minimum: 1, maximum: mostParts, step: 1, initial: 4 }),
    loss: slide({ label: "Each sheave takes", measure: "share", minimum: 0, maximum: 25, step: 0.5, initial: 9 }),
    from: choice("Hauled from", { fixed: "the fixed block", moving: "the moving block" }, "fixed"),
    leads: choice("Lead blocks", { "0": "none", "1": "one", "2": "two" }, "0"),
  },
  compute: ({ load, parts, loss, from, leads }, { say, sayFound }) => {
    const purchase = { parts: Math.round(parts), loss, from, leads: Number(leads) };
    const least = from === "moving" ? 2 : 1;
    const counts = allParts.filter((count) => count >= least);
    const count = Math.max(least, purchase.parts);
    const refusal =
      count === purchase.parts ? "" : ` One part from the moving block is no purchase: this is a ${count}:1.`;
    const { middle, bands } = forcesOf({ ...purchase, parts: count }, load, samples);
    const found = (label: string, name: "hauling" | "easing" | "deadBand") =>
      ({ label, measure: "force", value: middle[name], low: bands[name].low, high: bands[name].high }) as const;
    const haul = found("Haul", "hauling");
    const hold = found("Hold", "easing");
    const percent = (pull: number) => (100 * load) / (middle.velocityRatio * pull);
    const all = counts.map((one) => forcesOf({ ...purchase, parts: one }, load, curveSamples));
    const curve = (name: "hauling" | "easing") => all.map((one) => one.middle[name]);
    const band = (name: "hauling" | "easing") => ({
      low: all.map((one) => one.bands[name].low),
      high: all.map((one) => one.bands[name].high),
    });
    return {
      results: [
        haul,
        hold,
        found("Dead band", "deadBand"),
        {
          label: "Efficiency",
          measure: "share",
          value: 100 * middle.efficiency,
          low: percent(bands.hauling.high),
          high: percent(bands.hauling.low),
        },
        { label: "Without friction", measure: "force", value: load / middle.velocityRatio },
        { label: "Line to haul for a metre at the load", measure: "metres", value: middle.velocityRatio },
      ],
      figure: {
        name: "your-purchase",
        title: `A ${count}:1 asks for ${say("force", haul.value)} to haul and leaves ${say("force", hold.value)} to hold`,
        caption:
          "Hand force by number of parts. Thin line: without friction. Solid: hauling. Dashed: holding. Grey tint: 90 % band.",
        altText: `Hand force against parts. At ${count} parts hauling takes ${say("force", haul.value)}, holding ${say("force", hold.value)}.`,
        x: { title: "Parts on the moving block", measure: "plain", minimum: 0, maximum: mostParts },
        y: { title: "Hand force", measure: "force", minimum: 0 },
        panels: [
          {
            title: "",
            series: [
              { name: "no friction", x: counts, line: counts.map((one) => load / one) },
              {
                name: "hand",
                x: counts,
                hauling: curve("hauling"),
                easing: curve("easing"),
                bands: { hauling: band("hauling"), easing: band("easing") },
                highlight: true,
              },
              { name: `${count}:1`, x: [count, count], points: [haul.value, hold.value] },
            ],
          },
        ],
      },
      sentence: `For ${say("force", load)} a ${count}:1 whose sheaves each take ${say("share", loss)} asks for ${sayFound(haul)}, and gives back ${say("share", 100 * middle.efficiency, 2)} of your work.${refusal}`,
    };
  },
});
