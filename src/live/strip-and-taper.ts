import type { Series } from "../notebook/output.js";
import { breakLoad } from "../rope/break-load.js";
import type { RopeMake } from "../rope/make.js";
import { strippedCore, type Taper, type TaperPlan, taper, taperVerdict } from "../rope/taper.js";
import type { Band } from "../sources/band.js";
import { choice, slide } from "./control.js";
import { liveModel } from "./model.js";

/** Covered rope behind the cleat when all is let out [m]: that of the demo skiff's outhaul. */
const tail = 0.5;

const partsWords = { "1": "1:1", "2": "2:1", "3": "3:1", "4": "4:1", "6": "6:1", "8": "8:1" } as const;

/** Thickness of the line from its tail to the sail end, by the distance before the cleat [m, mm]. */
function thickness({ covered, bare, reach, clearance, velocityRatio, travel }: TaperPlan, one: Taper, start: number) {
  const out = start - clearance;
  const { value, low, high } = one.joinLength;
  const x = [out - velocityRatio * travel - tail, start, start + low, start + value, start + high, reach + out];
  const [thick, thin] = [1000 * covered.diameter, 1000 * bare.diameter];
  const along = (join: number) => x.map((at) => thick + (thin - thick) * Math.min(1, Math.max(0, (at - start) / join)));
  return { x, line: along(value), bands: { line: { low: along(low), high: along(high) } } };
}

/** Where the cover of a line ends, and what that saves. */
export const stripAndTaper = liveModel({
  name: "strip-and-taper",
  controls: {
    rope: slide({ label: "Line with its cover", measure: "length", minimum: 4, maximum: 12, step: 0.5, initial: 5 }),
    fibre: choice("Fibre that carries", { hmpe: "HMPE", aramid: "aramid", polyester: "polyester" }, "hmpe"),
    join: choice("Beyond the cover", { strip: "its own core", splice: "a thinner line, spliced on" }, "splice"),
    thin: slide({
      label: "Thinner line, if spliced",
      measure: "length",
      minimum: 1,
      maximum: 3.5,
      step: 0.5,
      initial: 2,
    }),
    cover: slide({
      label: "Cover before the cleat",
      measure: "metres",
      minimum: 0.1,
      maximum: 2,
      step: 0.1,
      initial: 0.4,
    }),
    reach: slide({
      label: "Sail end to cleat",
      measure: "metres",
      minimum: 3,
      maximum: 15,
      step: 0.1,
      initial: 5.5,
    }),
    block: slide({
      label: "Cleat to first block",
      measure: "metres",
      minimum: 0.2,
      maximum: 12,
      step: 0.1,
      initial: 1.8,
    }),
    travel: slide({
      label: "The sail travels",
      measure: "metres",
      minimum: 0.05,
      maximum: 7,
      step: 0.05,
      initial: 0.3,
    }),
    parts: choice("Purchase", partsWords, "4"),
  },
  compute: ({ rope, fibre, join, thin, cover, reach, block, travel, parts }, { say, sayFound }) => {
    const covered: RopeMake = {
      fibre,
      construction: "coveredCore",
      coverFibre: "polyester",
      diameter: rope / 1000,
    };
    const diameter = join === "strip" ? strippedCore(covered).value : thin / 1000;
    const bare: RopeMake = { fibre, construction: "bareBraid", diameter };
    const lengths = { reach, travel, clearance: cover, tail, velocityRatio: Number(parts) };
    const plan: TaperPlan = { covered, bare, join, ...lengths };
    const one = taper(plan);
    const { letOut, hauledIn } = one.joinFromCleat;
    const grams = ({ value, low, high }: Band): Band => ({ value: 1000 * value, low: 1000 * low, high: 1000 * high });
    const wet = { label: "Saved wet", measure: "mass", ...grams(one.saved.wet) } as const;
    const { outcome, change } = taperVerdict(plan, block);
    const clear = outcome === "enough";
    const helps = block > cover && change !== undefined ? ` What helps: ${change}.` : "";
    const where = `let out, the cover begins ${say("metres", letOut)} before the cleat`;
    const [behind, before] = [-tail - plan.velocityRatio * travel, reach + letOut - hauledIn];
    const post = (name: string, at: number): Series => ({ name, x: [at, at], line: [0, 1.2 * rope] });
    return {
      results: [
        { label: "Cover begins before the cleat, let out", measure: "metres", value: letOut },
        { label: "Thin part", measure: "metres", value: one.bareLength },
        { label: "Saved dry", measure: "mass", ...grams(one.saved.dry) },
        wet,
        { label: "Thin part breaks at, new and straight", measure: "force", ...breakLoad(bare) },
      ],
      figure: {
        name: "your-taper",
        title: clear
          ? `Let out, the cover stays ${say("metres", block - letOut, 2)} clear of the first block`
          : `Let out, the cover runs ${say("metres", letOut - block, 2)} into the first block`,
        caption:
          "Thickness of the line by its distance from the cleat, towards the sail. Below zero is the tail. Cover and way to the sail are set for a sail that is hauled in. Grey tint: 90 % band of the join.",
        altText: `Two charts of thickness along the line. Hauled in, the cover begins ${say("metres", hauledIn)} before the cleat; ${where}. The first block is ${say("metres", block)} away.`,
        x: { title: "Before the cleat", measure: "metres", minimum: behind, maximum: Math.max(before, block) },
        y: { title: "Thickness", measure: "length", minimum: 0, maximum: 1.3 * rope },
        panels: (
          [
            ["hauled in", hauledIn],
            ["let out", letOut],
          ] as const
        ).map(([title, start]) => ({
          title,
          series: [
            { name: "line", ...thickness(plan, one, start), highlight: true },
            post("cleat", 0),
            post("first block", block),
          ],
        })),
      },
      sentence: clear
        ? `Let out, the cover begins ${say("metres", letOut)} before the cleat and clears the first block. Wet, the line is lighter by ${sayFound(wet)}.`
        : `This cover jams: ${where}, and the first block is nearer.${helps}`,
    };
  },
});
